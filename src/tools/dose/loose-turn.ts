/** What every way of taking a loose weight looks at, worked out once. */
import { putWords, wentWords } from "../../../data/words/putting.ts";
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says, type Weighed } from "../lib/find.ts";
import type { Way } from "../lib/ways.ts";
import { type Draft, doseBefore } from "./draft.ts";

export interface LooseTurn {
  reading: Reading;
  memory: Memory;
  /** Every weight that may be of a flavor, in g. */
  weights: readonly Weighed[];
  /** Those of them that are bound to nothing. */
  unbound: readonly Weighed[];
  /** Numbers without a unit, bound to nothing. */
  bare: readonly Amount[];
  /** The grams that are to be placed: of the first weight, or of a number that counts as one. */
  loose?: number;
  /** What the sentence has settled already. */
  found: Draft;
  /** The dose that was spoken of last. */
  before?: Draft;
  /** It speaks of what is in the bowl by now. */
  inBowl: boolean;
}

export type LooseWay = Way<LooseTurn, Draft>;

export function looseTurn(
  reading: Reading,
  memory: Memory,
  weights: readonly Weighed[],
  found: Draft,
): LooseTurn {
  const isList = weights.filter(({ thing }) => thing?.ingredient).length > 1;
  const unbound = weights.filter((each) => !each.thing && !(isList && isOfUnknown(reading, each)));
  return {
    reading,
    memory,
    weights,
    unbound,
    bare: bareNumbers(reading),
    loose: unbound[0]?.grams ?? looseNumber(reading, memory),
    found,
    before: doseBefore(memory),
    get inBowl() {
      return isInBowl.test(reading.mask.replace(agrees, ""));
    },
  };
}

/** "150 g cream cheese + 60 g btter + 90 g icing sugar": in a list, of something that nobody knows, and no flavor. */
const isOfUnknown = ({ text, unknown }: Reading, { amount }: Weighed): boolean =>
  unknown.includes(/^ (?:of )?([a-z]+)\b/.exec(text.slice(amount.at[1]))?.[1] ?? "");

/** "alright, just the buttercream" agrees, and judges nothing. */
const agrees = /^(?:(?:ok|okay|alright|right|so|and|now) (?:, )?)+/;

const isInBowl = new RegExp(
  `in there|<(?:weight|number)> in (?:so far|already|now|it(?: |$))|(?:i|ive|we|weve) (?:have |just |already )*(?:${putWords}|went with)|(?:is|was|would|will) (?:that|it|this)|would (?:\\S+ )?\\S*<(?:weight|number)\\S* be(?: |$)|is (?:she|he) (?:right|correct)|(?:${wentWords}) in|fell|verdict|enough|too (?:strong|weak|much|little)|already|inside the|(?:put|got|dropped|tipped) \\S*<(?:number|weight)> (?:inside|in)(?: |$)|within the|in range|went in|alright|okay|overd|<(?:weight|number)> (?:is |be )?ok(?: |$)`,
);

/** From here up a number behind a flavor is grams of a bowl: "matcha for 205". From memory. */
const leastBowl_g = 10;

/** "enough for 20", where the bowl's weight was asked for: macarons, not grams. Fewer fill no bowl. From memory. */
const leastAnswered_g = 25;

/** Into a bowl that is called by what it weighs. */
const intoThe =
  /(?:^| )(?:in|into|for|with|to) the (?:(?:whole|full|first|other|original|entire) )*\S*<number>(?: (?:bowl\S*|one|lot|\S*<[^>]*base=\S*|then|now|again|please|pls))*(?: \?)?$/;

/** A bare number counts as grams only when it answers, or stands in for a number said before. */
function looseNumber(reading: Reading, memory: Memory): number | undefined {
  const [bare] = bareNumbers(reading);
  if (!bare) return undefined;
  const { value } = bare;
  // "6 g of flavor in 150, ok?"
  const into = says(
    reading,
    /(?:^| )(?:in|into|to) (?:about |roughly )?\S*<number> (?:, )?(?:.*)(?:ok|okay|enough|fine|alright|right|too)(?: |$)/,
  );
  if (into && reading.amounts.some((each) => each.dim === "weight")) return value;
  if (value >= leastBowl_g && says(reading, /^(?:and |now )?\S*<[^>]*(?:dose|taste)=[^>]*> for \S*<number>/))
    return value;
  const before = doseBefore(memory);
  // "how much rose in the 380", with half of that bowl dosed since
  const isKnownBowl = before?.base_g !== undefined && value >= leastAnswered_g && says(reading, intoThe);
  if (isKnownBowl && ![memory.table.macarons, memory.table.shells].includes(value)) return value;
  const nothingYet = before && before.base_g === undefined && before.flavor_g === undefined;
  if ((memory.slot === "base_g" || nothingYet) && value < leastAnswered_g) return undefined;
  const answers = memory.slot === "base_g" || memory.slot === "flavor_g";
  return answers || (memory.follows && before && !countsBowls(reading, bare, before)) ? value : undefined;
}

/** "and the other two": fewer than ten are bowls, where grams were said before. */
const countsBowls = (reading: Reading, bare: Amount, before: Draft): boolean =>
  bare.value < 10 &&
  (before.base_g ?? 0) >= 30 &&
  /(?:other|all|those|these|first|last|next|both) $/.test(reading.text.slice(0, bare.at[0])) &&
  // "another 4 went in", behind what was put in: more of it
  !(before.flavor_g !== undefined && /\banother $/.test(reading.text.slice(0, bare.at[0])));
