/** Reads an order or a question about the shelf. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import { gramsOf } from "../lib/units.ts";
import { ofBottle, ofDosed, readBottle } from "./bottle-said.ts";
import { boughtList } from "./bought-list.ts";
import type { Draft } from "./draft.ts";
import { bought, entriesOf, prices } from "./entries.ts";
import { corrects, stands, takes, takingWord } from "./moves.ts";
import { stockAndPrice } from "./stock-and-price.ts";
import { doesWhat } from "./way.ts";
import { readPack, readWhole } from "./whole.ts";

export function readShelf(reading: Reading, memory: Memory): Draft {
  const whole = readWhole(reading, memory);
  if (whole) return whole;
  const pack = readPack(reading);
  if (pack) return pack;
  const both = stockAndPrice(reading);
  if (both) return both;
  const bottle = readBottle(reading);
  if (bottle) return bottle;
  const before = memory.last?.tool === "shelf" ? (memory.last.inputs as Draft) : undefined;
  const told =
    ofBottle(reading, memory, before) ?? ofDosed(reading, memory) ?? answered(reading, memory, before);
  if (told) return told;
  // "mint in 200 g buttercream": a dose, and no order
  if (says(reading, doses) || says(reading, dosed)) return {};
  // "save that", behind a bottle or a price: it is saved already, and told again
  if ((before?.does === "bottle" || before?.does === "price") && says(reading, savesIt)) return before;
  if (
    before?.does === "use" &&
    memory.follows &&
    says(reading, /zero|nothing|empty|all of it|use it up|go ahead|^(?:yes|yep|yeah|ok|okay|do it)/)
  )
    return { ...before, to_zero: true };
  const list = boughtList(reading);
  if (list) return { does: "add", entries: list };
  const came = bought(reading);
  if (came) return { does: "add", entries: [came] };
  const does = doesWhat(reading, before, memory);
  const priced = does === "price" ? prices(reading, before) : [];
  const loose =
    does === "add" || does === "set" || does === "use" ? looseOf(reading, memory, before) : undefined;
  // "used 260 g of each"
  const ofEach =
    loose !== undefined && says(reading, /of (?:each|both|every one)(?: of (?:them|those|these))?(?: |$)/);
  if (does && ofEach)
    return { does, entries: (before?.entries ?? []).map(({ name }) => ({ name, grams: loose })) };
  if (does && loose !== undefined) return { does, loose_g: loose, entries: before?.entries ?? [] };
  const all = priced.length > 0 ? priced : entriesOf(reading, before, memory, does);
  // "used some, 200 g left": which of two weights is there isn't sure
  const found = does === "set" && isTwofold(reading) ? all.map(({ name }) => ({ name })) : all;
  const entries = putRight(reading, memory, { does, entries: found });
  // "no, 100 g", behind a half of it: how much that was isn't known here
  const [wasOne, ...wereMore] = before?.entries ?? [];
  const ofShare =
    (before?.does === "use" || before?.does === "add") &&
    wasOne?.grams === undefined &&
    wereMore.length === 0 &&
    wasOne?.name === entries[0]?.name;
  if (memory.follows && does === before?.does && ofShare && corrects.test(reading.mask))
    return { does: "unsure", entries };
  const taste = reading.things.find((each) => each.taste && !each.ingredient)?.taste;
  if (does === "list" && says(reading, /(?:^| )bottles(?: |$)/)) return { does, bottles_only: true };
  if (does === "forget" && taste && says(reading, /bottle/)) return { does, taste };
  // "forget mint": what is in stock, else the bottle
  const bottled = reading.things.find((each) => each.taste && memory.names.bottles.includes(each.taste));
  const isWhole =
    bottled && /^(?: bottle\S*| flavou?r\S*| please| pls)*$/.test(reading.text.slice(bottled.at[1]));
  if (does === "forget" && bottled?.taste && isWhole)
    return { does, taste: bottled.taste, ...(entries.length > 0 ? { entries } : {}) };
  if (does === "list" && taste && says(reading, /bottle|label/)) return { does: "ask", taste };
  if (does === "list") return { does };
  return {
    ...(does ? { does } : {}),
    ...(entries.length > 0 ? { entries } : taste && (does === "forget" || does === "ask") ? { taste } : {}),
    ...(does === "use" && says(reading, /to zero|go to nothing|even so/) ? { to_zero: true } : {}),
  };
}

/** "no hang on, i used 150", "no, 800": in place of what was taken or put there just before. */
function putRight(reading: Reading, { follows, last }: Memory, { does, entries = [] }: Draft) {
  const before = follows && last?.tool === "shelf" ? (last.inputs as Draft) : undefined;
  const [now, ...others] = entries;
  const [was] = before?.entries ?? [];
  const isSame =
    others.length === 0 &&
    before?.entries?.length === 1 &&
    (does === "use" || does === "add") &&
    before.does === does &&
    now?.name === was?.name;
  // "actually used another 50 g" comes on top
  const onTop = /\b(?:another|more|extra|also|too|as well|again|plus)\b|(?:^| )add(?: |$)/.test(reading.mask);
  return isSame &&
    !onTop &&
    now?.grams !== undefined &&
    was?.grams !== undefined &&
    corrects.test(reading.mask)
    ? [{ ...now, instead_g: was.grams }]
    : entries;
}

const doses =
  /<(?:[^>]*,)?(?:taste|dose|ingredient)=[^>]*> (?:flavou?r\S* )?(?:in|into|for|to) (?:my |the |a )?\S*<weight> (?:of )?(?:my |the )?\S*<(?:[^>]*,)?base=/;

/** "300 g buttercream raspberry": a bowl and what goes into it, with no word of the shelf. */
const dosed =
  /^(?:(?:and|ok|so|for|now|then|the|my) )*\S*<weight> (?:of )?(?:the |my )?\S*<(?:[^>]*,)?base=[^>]*> (?:(?:with|and|,) )?\S*<(?:[^>]*,)?(?:taste|dose)=[^>]*>(?: flavou?r\S*)?$/;

const savesIt =
  /^(?:(?:ok|okay|yes|yeah|yep|please|pls|and|so|can you|now|,) )*(?:save|keep|remember|store|note|write)(?: (?:it|that|this|them|those|these|down|please|pls|then|for me|for later|for next time|the bottle|the price|bottle|price|now))*(?: [.!])?$/;

/** What was taken and what is left stand in one sentence. */
const isTwofold = ({ mask, amounts }: Reading): boolean =>
  stands.test(mask) &&
  takes.test(mask) &&
  amounts.filter(({ dim }) => dim === "weight").length > 1 &&
  !/(?:^| )(?:down|reduc\S*|lower\S*) .*to /.test(mask);

/** g that were said behind an order of several things, with none of them named. */
function looseOf({ things, amounts }: Reading, { follows }: Memory, before: Draft | undefined) {
  const [amount, ...others] = amounts.filter(
    ({ dim, fraction }) => dim === "weight" || (dim === "number" && !fraction),
  );
  const isNamed = things.some((each) => each.ingredient || each.chocolate || each.taste);
  return follows && amount && others.length === 0 && !isNamed && (before?.entries?.length ?? 0) > 1
    ? Math.abs(gramsOf(amount))
    : undefined;
}

/** "the butter", "taken off", behind a question of ours. */
function answered(reading: Reading, { slot, follows }: Memory, before: Draft | undefined): Draft | undefined {
  if (!before?.entries?.length) return undefined;
  const named = before.entries.find(({ name }) => reading.things.some((each) => nameOf(each) === name));
  if (before.loose_g !== undefined && named && reading.amounts.length === 0 && before.does)
    return { does: before.does, entries: [{ name: named.name, grams: before.loose_g }] };
  if (before.does !== "unsure" || !(slot === "does" || follows) || reading.amounts.length > 0)
    return undefined;
  const { entries } = before;
  const way = ways.find(([pattern]) => pattern.test(reading.mask))?.[1];
  return way === "none" ? { does: way } : way ? { does: way, entries } : undefined;
}

const talk =
  "(?:(?:i|it|was|is|its|thats|that|that is|it is|ok|yes|no|oh|sorry|they|were|just|them|the|my) )*";
const end =
  "(?: (?:it|that|them|there|of|the|my|off|out|on|onto|away|from|in|to|shelf|pantry|stock|now|please|is))*$";

/** What answers which way it went; whatever says more than that is no answer to it. */
const ways: readonly (readonly [RegExp, "add" | "set" | "use" | "none"])[] = [
  [
    /^(?:(?:no|nope|neither|none|nothing)(?: of (?:them|those|these|it))?|(?:(?:no|it|its|is|that|thats|was|into|in|to|for|with|goes|went|a|the|my) )*(?:bowl|mix|recipe|\S*<(?:[^>]*,)?(?:base|count=bowls))(?:<?\S*))$/,
    "none",
  ],
  [
    new RegExp(
      `^${talk}(?:all|everything|left|counted|the total|what (?:is|there is|i have|is left))(?: (?:there is|there|i have|is left|left|of it|now))*$`,
    ),
    "set",
  ],
  [new RegExp(`^${talk}(?:${takingWord}|off|out|away)${end}`), "use"],
  [new RegExp(`^${talk}(?:put|on|onto|add|added|bought|more|stored)${end}`), "add"],
];
