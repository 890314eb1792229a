/** "20 g", right behind a range: so much of the flavor, another bowl, or not to be told from the words. */

import { doseRows } from "../../../data/rules/doses.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { isFlavor } from "./flavor-said.ts";

const bare =
  /^(?:(?:and|ok|so|hm|what about|how about|what if|now|then|or|with|only|just|about|like|maybe|say|plus|if|i|we|use|take|used|using) )*\S*<(?:weight|number)>(?: (?:then|please|ok|instead|maybe))*(?: \?)?$/;
const asDose = /(?:^| )(?:with|plus|use|take|used|using) \S*<(?:weight|number)>/;

/** From here up a bowl is as likely as a dose: 50 g fill some seven macarons of 38 mm (0.42 d² over 0.92, from memory). */
const leastBowl_g = 50;
/** So many times the most of the range is still a slip of the hand. Common practice: spoons slip by one. */
const slip = 2;
/** Nobody stirs more than a third of a bowl's weight of flavor into it; from a third up it is another bowl. From memory. */
const anotherBowl = 1 / 3;
/** "how about 60": with that, a smaller one may be meant too. */
const anotherBowlAsked = 1 / 4;
/** A twelfth of the bowl, 8 %: where the range of fruit powder in buttercream ends. */
const mostOfAny = 1 / 12;

/**
 * @param loose the grams that were said, bound to nothing
 * @returns undefined where the words say what it is, or where nothing but a range lies before
 */
export function readBareWeight(
  reading: Reading,
  loose: number,
  before: Draft | undefined,
  high_percent: number | undefined,
): Draft | undefined {
  const base_g = before?.base_g;
  if (base_g === undefined || before?.flavor_g !== undefined || before?.want === "check") return undefined;
  if (!bare.test(reading.mask) || loose <= 0 || loose >= base_g) return undefined;
  const flavor: Draft = { flavor_g: loose, want: "check" };
  const about = /\b(?:what|how) about\b/.test(reading.mask);
  const asks = about || reading.mask.endsWith("?");
  const most = ((high_percent ?? 0) * base_g) / 100;
  const which: Draft = { which_g: loose, base_g };
  if (asDose.test(reading.mask)) return loose < Math.max(base_g * anotherBowl, slip * most) ? flavor : which;
  const isSmallBowl = base_g < 2 * leastBowl_g && loose >= base_g * anotherBowl;
  if (loose <= Math.max(slip * most, base_g * mostOfAny) && (loose < leastBowl_g || asks)) return flavor;
  if (asks && loose < leastBowl_g) return isSmallBowl ? which : flavor;
  if (loose >= base_g * (about ? anotherBowlAsked : anotherBowl)) return { base_g: loose };
  return loose >= leastBowl_g && !asks ? { base_g: loose } : which;
}

/** The most that the table has for what was spoken of, in percent. */
export function mostOf({ dose = "flavor", base = "buttercream", percent }: Draft): number | undefined {
  const row = doseRows.find((each) => each.id === dose);
  const column = base === "ganache" || base === "batter" ? base : "buttercream";
  return percent ?? row?.[column]?.[1];
}

const ofDose =
  /^(?:(?:the|of|its|it is|that|thats|in|into|a|my|i mean|i meant|no|yes|g) )*(?:flavor|flavour|dose|first)\b/;

/** "salt", "the buttercream", where it was asked which of both the weight is. */
export function readWhichWeight(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  if (memory.slot !== "which" || before?.which_g === undefined || reading.amounts.length > 1)
    return undefined;
  const { which_g, base_g } = before;
  const isBowl =
    reading.things.some((each) => each.base) ||
    /\b(?:bowl|mix|filling|second|new one|batch)\b/.test(reading.text);
  const isDose = reading.things.some(isFlavor) || ofDose.test(reading.text);
  const known = Object.fromEntries(
    Object.entries({ ...before, which_g: undefined, base_g: undefined }).filter(
      ([, value]) => value !== undefined,
    ),
  );
  // "20 g of salt in the buttercream": what is put in is named first
  if (isDose) return { ...known, base_g, flavor_g: which_g, want: "check" };
  return isBowl ? { ...known, base_g: which_g } : undefined;
}
