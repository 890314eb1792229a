/** Which of batter, shells, macarons, trays, eggs or weights a sizing question wants. */
import type { Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { ShellsInputs } from "./shells.ts";
import { onTraySaid } from "./tray-said.ts";

type Want = NonNullable<ShellsInputs["want"]>;

/** "whats that in macs", "in trays?": nothing but what it comes to, in what is counted. Behind an answer only. */
export const comesTo =
  "^(?:(?:and|so|ok|then|now|how|many|much|whats|what|thats|is|are|does|do|would|will|be|make|makes|come|comes|work|works|out|to|it|that|this|these|those|all|of|i|we|me|us|get|give|gives) )*(?:in|as) (?:finished |filled )?\\S*<count=(?:macarons|shells|trays)>(?: (?:out of|from) (?:it|that|this|all that))?(?: (?:then|please|pls))?(?: [?])?$";
const comesToWhat = /(?:in|as) (?:finished |filled )?\S*<count=(macarons|shells|trays)>[^<]*$/;

/** "35 mm shells from the small one", "macarons out of it": what a bowl gives. */
const outOfBowl =
  /^(?:(?:and|so|ok|then|how about|what about) )*(?:\S*<(?:length|diameter)[^>]*> )?\S*<count=(macarons|shells)> (?:from|out of) (?:it|that|this|the|my|those|these)(?: |$)/;

interface Asked {
  reading: Reading;
  /** The thing behind "how many": `trays<count=trays>`. */
  what: string;
  namesMacarons: boolean;
}

const howMany =
  /(?:how|hw|what) (?:many|much|number)(?: more| of| \S*<color\S*| \S*<length>)* (?:of )?(?:my |the )?(\S*<[^>]*>)/;
const traysFirst =
  /^(?:and |so |ok |then )*\S*<count=trays>(?:(?: needed| then| now)?(?: \?)?$| (?:needed )?for \S*<number>| (?:with|from|out of) (?:(?:the|my|those|these|all|just|only) )*(?:\S*<|(?:it|that|this|them)(?: \?)?$))/;
const eggsFirst =
  /^(?:(?:and|so|ok|then|now|the|just|make it|number of|,) )*\S*<ingredient=egg> (?:needed )?for \S*<number>/;
const toBuy = /<ingredient=(?:egg|whites)> to (?:buy|purchase|order|get)(?: |$)/;
const afterBaking =
  /(?:once|after|when) (?:(?:it|they|its|theyre|that)(?: \S+)? )?\S*bak|^(?:and |what about |ok )*\S*bak\S*(?:<\S+)?(?: [?])?$|bak\S*<.*(?:(?<!<)weigh|heavy)|(?:(?<!<)weigh|heavy).*bak|baked weight|(?:how much|what|grams|weight)(?: (?:is|will|would|does|that|it|of|be|them|shells<\S*))* bak\S*(?:<\S+)?(?: [?])?$|bak\S*(?:<\S+)? (?:down )?to (?:how much|what)|(?:how much|how many \S*<unit=g>|what weight)(?: of)?(?: \S*<count=shells>)? bak\S*(?:<\S+)? (?:from|out of|off|do|does|will)/;
const onOneTray =
  /fit|per \S*<count=trays|on (?:a|one|1|my|the|each|\S*<number>) ?\S*<count=trays|(?:one|a|each) \S*<count=trays/;
const oneShell = /(?:one(?:<number>)?|a|each|per|single) (?:\S*<length> )?\S*<count=shells/;

/** Each want with what asks for it, in their order: "on one tray" before "how many trays". */
const wants: readonly (readonly [Want, (asked: Asked) => boolean])[] = [
  ["macarons", ({ reading }) => says(reading, /(?:gives|makes|yields) (?:me )?how many(?: \?)?$/)],
  ["trays", ({ reading }) => says(reading, traysFirst)],
  ["baked", ({ reading }) => says(reading, afterBaking)],
  // so many a tray, said with the question, make it one after all trays
  [
    "tray",
    ({ reading, namesMacarons }) =>
      !namesMacarons && says(reading, onOneTray) && onTraySaid(reading) === undefined,
  ],
  ["trays", ({ what }) => /count=trays/.test(what)],
  // "38 mm shells, my trays": a size alone asks what a tray holds
  [
    "tray",
    ({ reading, namesMacarons }) =>
      !namesMacarons &&
      says(reading, /<length>/) &&
      says(reading, /<count=trays/) &&
      !reading.amounts.some((each) => each.dim === "number" && each.value > 1),
  ],
  ["whites", ({ reading, what }) => /ingredient=(egg|whites)/.test(what) || says(reading, /crack(?!ed)/)],
  // "eggs for 75 macarons": named ahead of all else, it is what is asked for
  ["whites", ({ reading }) => says(reading, eggsFirst)],
  // "egg whites to buy for 60"
  ["whites", ({ reading }) => says(reading, toBuy)],
  ["one", ({ reading }) => says(reading, oneShell) && says(reading, /how much|batter|weigh/)],
  ["macarons", ({ what }) => /count=macarons/.test(what)],
  ["shells", ({ what }) => /count=shells/.test(what)],
  [
    "batter",
    ({ reading }) =>
      says(reading, /<base=batter/) && !reading.amounts.some((each) => each.of?.base === "batter"),
  ],
];

export function wantSaid(reading: Reading): Want | undefined {
  const counted = new RegExp(comesTo).test(reading.mask)
    ? comesToWhat.exec(reading.mask)?.[1]
    : outOfBowl.exec(reading.mask)?.[1];
  if (counted) return counted as Want;
  const asked: Asked = {
    reading,
    what: howMany.exec(reading.mask)?.[1] ?? "",
    namesMacarons: says(reading, /<count=macarons/),
  };
  return wants.find(([, isAsked]) => isAsked(asked))?.[0];
}

/** "trays if theyre 30 mm", behind an order: how many of them it takes then, where alone it would be what one holds. */
export const asksTraysAnew = (reading: Reading): boolean =>
  reading.things.some(({ count, text }) => count === "trays" && text.endsWith("s")) &&
  !says(reading, onOneTray);
