/** What a weight or a number is that is bound to nothing: the flavor, the mix, or a percentage. */
import { putVerbs, putWords } from "../../../data/words/putting.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { says, type Weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { inBase } from "../lib/units.ts";
import { firstOf } from "../lib/ways.ts";
import { bowlOf, type Draft } from "./draft.ts";
import { isFlavor } from "./flavor-said.ts";
import { byVolume, liquidRows } from "./flavor-weight.ts";
import { gramsWays, ofGrams } from "./loose-grams.ts";
import { type LooseTurn, type LooseWay, looseTurn } from "./loose-turn.ts";
import { moreOfIt } from "./more-said.ts";
import { inTurn } from "./of-turn.ts";
import { saysSoMany } from "./so-many-of.ts";
import { tellsPut } from "./told-put.ts";

/** Where the flavor's weight was asked for, the weight that comes is it. */
const answersFlavor: LooseWay = ({ memory, found, weights, bare }) => {
  if (memory.slot !== "flavor_g" || found.flavor_g !== undefined) return undefined;
  const flavor_g = weights.find((each) => !each.thing || isFlavor(each.thing))?.grams ?? bare[0]?.value;
  return flavor_g === undefined ? undefined : { flavor_g };
};

/** "and 12", behind the flavor for 8 oz: ounces again, another bowl. */
const inSameUnit: LooseWay = ({ reading, found, before }) => {
  const [only, ...others] = reading.amounts;
  const { base_g, base_unit, flavor_g, percent } = before ?? {};
  if (found.base_g !== undefined || base_g === undefined || !base_unit || flavor_g !== undefined)
    return undefined;
  if (!only || others.length > 0 || only.dim !== "number" || only.unit !== "" || only.fraction || only.of)
    return undefined;
  // "make it 3.5", where a percentage was said
  if (percent !== undefined && only.value <= mostPercent) return undefined;
  const grams = inBase(only.value, base_unit);
  const isBowl = says(
    reading,
    /^(?:(?:and|ok|so|or|now|then|for|what|how|about|if|no|make|it|that|in) )*\S*<number>(?: (?:then|please|instead))*(?: \?)?$/,
  );
  // so much less than the bowl before it may be of the flavor
  return isBowl && grams >= base_g / 4 ? { base_g: grams, base_unit } : undefined;
};

const ofIt = new RegExp(
  `(?:^| )(?<!(?:${putVerbs}|went|got) )(?:for|in|into) (?:just |only |about )?\\S*<(?:number|weight)> of (?:it|that|this|them)(?: |$)`,
);

/** "how much raspberry powder for 150 of it": a part of what is on the table. */
const partOfIt: LooseWay = ({ reading, memory, unbound, bare }) => {
  const grams = unbound[0]?.grams ?? bare[0]?.value;
  return grams !== undefined && memory.table.mass && says(reading, ofIt) ? { base_g: grams } : undefined;
};

/** "i put 11", in a bare number too. */
const iPutSome = new RegExp(`(?:^| )i (?:${putWords}) \\S*<`);

/** "11 g in so far", "i put 11", where the weight of the mix was asked for: it is no answer to that. */
const putInSoFar: LooseWay = ({ reading, memory, unbound, bare }) => {
  if (memory.slot !== "base_g") return undefined;
  const weight = unbound[0]?.grams;
  const grams = weight ?? bare[0]?.value;
  const soFar = weight !== undefined && says(reading, /<weight> in (?:so far|already)(?: |$)/);
  const putIn = says(reading, iPutSome) || tellsPut(reading);
  return grams !== undefined && (soFar || putIn) ? { flavor_g: grams } : undefined;
};

/** Up to here a bare number may be a percentage: all that the table has but purée and nut paste ends below. */
const mostPercent = 10;

/** "no the max is 1.5": percent, as directions are. */
const mostSaid: LooseWay = ({ reading, bare }) => {
  const [most, ...others] = bare;
  return most &&
    others.length === 0 &&
    most.value <= mostPercent &&
    says(reading, /(?:^| )(?:max|maximum|limit) (?:is|was|dose is|says) \S*<number/)
    ? { percent: most.value }
    : undefined;
};

/** "12 drops": no two weigh the same. The bowl stays. */
const inDrops: LooseWay = ({ reading, before, found }) => {
  const drops = reading.amounts.find((each) => each.of?.count === "drops" && each.dim === "number");
  if (!drops) return undefined;
  const unweighable = drops.text.includes("drop") ? drops.text : `${drops.text} drops`;
  // "is 10 drops ok in 200 g buttercream", behind another bowl: in the one that is named
  const isOther = found.base_g !== undefined || (found.base !== undefined && found.base !== before?.base);
  return { ...(isOther ? {} : bowlOf(before ?? {})), unweighable };
};

/** "at 4", where a percentage was said before: another one. */
const percentAgain: LooseWay = ({ reading, found, before, bare }) => {
  const [share, ...others] = bare;
  if (before?.percent === undefined || found.percent !== undefined || !share || others.length > 0)
    return undefined;
  // a number as small as a percentage is one where a bowl was weighed
  const isSmall = share.value <= mostPercent && (before.base_g ?? 0) > 30;
  // "and to 250" names a bowl
  const canBe = share.value < 100 && says(reading, /(?:^| )(?:at|to) \S*<number/);
  return isSmall || canBe ? { percent: share.value } : undefined;
};

const supposes = inTurn(/\b(?:what if|if) (?:it|i|that)\b/);

/** A dozen spoons of flavor are more than any bowl takes; from there up a number is grams. From memory. */
const mostSpoons = 12;

/** "oops, i put 3", of the spoons that were said before. */
const spoonsAgain: LooseWay = ({ reading, weights, before, bare, inBowl }) => {
  const [spoons] = bare;
  if (!before?.flavor_unit || !spoons || spoons.value > mostSpoons || weights.length > 0) return undefined;
  return inBowl || supposes(reading.text)
    ? byVolume({ ...spoons, dim: "volume", unit: before.flavor_unit })
    : undefined;
};

/** No grams at all: a spoon of something, or nothing. */
const ofVolume: LooseWay = ({ reading, loose, found, before }) => {
  if (loose !== undefined) return undefined;
  const volume = reading.amounts.find((each) => each.dim === "volume" && !each.of);
  if (!volume || found.flavor_g !== undefined) return {};
  // "put 5 teaspoons in": of the coffee that was spoken of, weighed by the table
  if (before?.dose !== undefined && !liquidRows.has(before.dose)) {
    const portion = before.name ? gramsOfVolume(before.name, volume.value, volume.unit) : undefined;
    return portion ? { flavor_g: portion.grams } : { unweighable: volume.text };
  }
  return reading.things.some((each) => each.unit) ? {} : byVolume(volume);
};

const ways: readonly LooseWay[] = [
  answersFlavor,
  inSameUnit,
  partOfIt,
  putInSoFar,
  mostSaid,
  inDrops,
  percentAgain,
  ...gramsWays,
  spoonsAgain,
  moreOfIt,
  ofVolume,
];

/**
 * Weights bound to nothing: in the bowl already, or the base, by what the words and the turn before settle.
 * @param weights those of the sentence that may be of a flavor
 * @param found what the sentence has settled already
 */
export function readLoose(
  reading: Reading,
  memory: Memory,
  weights: readonly Weighed[],
  found: Draft,
): Draft {
  // "for two of them": bowls, and no grams
  if (saysSoMany(reading)) return {};
  const turn: LooseTurn = looseTurn(reading, memory, weights, found);
  return firstOf(ways, turn) ?? ofGrams(turn, turn.loose ?? 0);
}
