/** "i have 100 g almond flour what can i make" / "and 150 g whites": both are at hand, and the scarcer sets the size. */
import { settingAside, short } from "../../../data/words/amount-talk.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { says, white_g } from "../lib/find.ts";
import { sameIngredient } from "../lib/lines.ts";
import type { Draft } from "./draft.ts";

const tellsStock =
  /(?:^| )(?:i have|ive|we have|weve|got|have|theres|there is|there are|only|left|at home|in the (?:house|cupboard|pantry|fridge))(?: |$)/;
const asksWhatFor =
  /(?:^| )(?:what|how (?:much|many|big|large)|biggest|largest|most) .*(?:can|could) (?:i|we) (?:make|do|bake|get)|(?:^| )(?:what|how much) does (?:that|it) make/;

/** One more thing joins what is there; "or", "instead", "what if" put it in the place of that. */
const joins =
  /^(?:(?:oh|ok|so|well|hm|,) )*(?:and|also|plus|but)(?: |$)|(?:^| )(?:also|too|as well|on top)(?: |$)/;
const instead =
  /(?:^| )(?:or|instead|what if|if|rather|what about|how about|rest|others?|need|would)(?: |$)|^(?:and )?for /;

/** "forget the whites", "whites are plenty", "plenty of whites": the size no longer goes by them. */
const aside = new RegExp(
  `(?:^| )(?:${settingAside}|(?:plenty|enough|lots|loads|a lot)(?: of)?) (?:the |my )?\\S*<[^>]*ingredient=([a-z_]+)|<[^>]*ingredient=([a-z_]+)[^>]*> (?:are|is) (?:fine|plenty|enough|ok|okay|no problem)(?= |$)`,
  "g",
);
/** "forget that", "its the almond flour thats short": nothing else counts. */
const asideAll = new RegExp(
  `(?:^| )${settingAside} (?:that|it|those|them)(?: |$)|<[^>]*ingredient=[^>]*> (?:(?:is|are|was|whats|what|thats|that|the|one|thing|im|i|am) )*${short}(?: |$)`,
);

/** What was at hand before and still counts. */
export function stillThere(had: Draft["have"], reading: Reading): Draft["have"] {
  if (says(reading, asideAll)) return undefined;
  const gone = [...reading.mask.matchAll(aside)].map((each) =>
    (each[1] ?? each[2] ?? "").replaceAll("_", " "),
  );
  const left = had?.filter(({ name }) => !gone.some((each) => sameIngredient(each, name)));
  return left?.length ? left : undefined;
}

/** The draft with what was at hand before, where this names another thing that is at hand; marked as such. */
export function withCupboard(
  draft: Draft,
  reading: Reading,
  before: Draft | undefined,
  memory: Memory,
): Draft {
  const now = stockIn(draft);
  if (!now || draft.lines?.length) return draft;
  const isStock = says(reading, tellsStock);
  const asks = says(reading, asksWhatFor);
  const had =
    memory.follows && before && !before.lines?.length ? stillThere(stockIn(before), reading) : undefined;
  const isOther = had && now.every(({ name }) => !had.some((each) => sameIngredient(each.name, name)));
  const isCupboard = before?.at_hand || (isStock && says(reading, joins));
  if (had && isOther && isCupboard && (says(reading, joins) || isStock) && !says(reading, instead)) {
    const { whites_count: _whites, ...rest } = draft;
    const formula = rest.formula ?? before?.formula;
    return { ...rest, ...(formula ? { formula } : {}), have: [...had, ...now], at_hand: true };
  }
  return asks || isStock ? { ...draft, at_hand: true } : draft;
}

/** What is at hand by weight; whites that were counted as 33 g each. */
const stockIn = ({ have, whites_count }: Draft): Draft["have"] =>
  have?.length
    ? have
    : whites_count === undefined
      ? undefined
      : [{ name: "whites", grams: whites_count * white_g }];
