/** Parts by their weights: listed with a unit, told as heavy bare numbers, put right, or taken off before the others share. */
import type { Amount, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { gramsOf, inBase } from "../lib/units.ts";
import { shareOf } from "./names.ts";
import { differing, partMore } from "./relations.ts";
import type { Draft, Said } from "./said.ts";

/** "pink 100 g more than white". */
export function grown({ reading, memory, before, bowl }: Said): Draft | undefined {
  const more = partMore(reading, (before && memory.table.parts) || []);
  if (more) return { weights: more, by: reading.said };
  const apart = differing(reading, bowl ? gramsOf(bowl) : memory.table.mass?.grams);
  return apart && { weights: apart, by: reading.said };
}

const weightsIn = ({ reading, bowl }: Said) =>
  reading.amounts.filter((each) => each.dim === "weight" && each !== bowl && !isBowlAgain(each, bowl));

/** "500 g batter: 200 g, 200 g, 100 g out of 500 g": said twice. */
const isBowlAgain = (each: Amount, bowl: Amount | undefined): boolean =>
  each.of?.base !== undefined && each.value === bowl?.value && each.unit === bowl.unit;

/** "divide 480 g into 5 g samples". */
export function portions(said: Said): Draft | undefined {
  const { reading, bowl } = said;
  const [portion, ...more] = weightsIn(said);
  const into =
    /(?:in|into) (?:lots of |pieces of )?\S*<weight> (?:samples?|portions?|pieces|bags?|lots|each|ones|balls|cups?)/;
  if (!portion || !bowl || more.length > 0 || !says(reading, into)) return undefined;
  const equal = inBase(bowl.value, bowl.unit) / inBase(portion.value, portion.unit);
  return Number.isInteger(equal) ? { equal } : undefined;
}

/** "the first one is 200 g, the others equal": of as many bowls as before, those that aren't named share what is left. */
export function othersEqual({ reading, before, memory }: Said): Draft | undefined {
  const [only, ...more] = reading.amounts;
  const ways = before?.equal ?? before?.parts?.length ?? before?.weights?.length;
  const total = before?.total_g ?? memory.table.mass?.grams;
  const says_so =
    /(?:others|other ones|other two|other three|rest|remaining\S*)\S*(?:<\S*>)? (?:are |is |be |stay |split |shared? )*(?:equal\S*|even\S*|the same)/;
  if (!only || more.length > 0 || !ways || ways < 2 || total === undefined || !says(reading, says_so))
    return undefined;
  const share = (total - gramsOf(only)) / (ways - 1);
  if (share <= 0) return undefined;
  return {
    total_g: total,
    weights: [{ size: gramsOf(only) }, ...Array.from({ length: ways - 1 }, () => ({ size: share }))],
  };
}

/** "into bowls of 200, 150 and 120 g": the unit holds for all of the list. */
export function listedWeights(said: Said): Draft | undefined {
  const { reading, bowl, named, rest } = said;
  const weights = weightsIn(said);
  const [first] = weights;
  if (!first) return undefined;
  const listed = [...listedBefore(reading, first, bowl), ...weights];
  return { weights: listed.map((each) => shareOf(inBase(each.value, each.unit), named(each))), ...rest };
}

/** The bare numbers of a list that ends in a weight: they have its unit. */
function listedBefore({ amounts, text }: Reading, weight: Amount, bowl: Amount | undefined): Amount[] {
  const found: Amount[] = [];
  let next = weight;
  for (const each of amounts.filter((other) => other.at[1] <= weight.at[0]).reverse()) {
    const joins = /^ ?(?:,|and|,? and|&) ?$/.test(text.slice(each.at[1], next.at[0]));
    if (each === bowl || each.dim !== "number" || each.unit !== "" || each.fraction || !joins) break;
    found.unshift({ ...each, dim: "weight", unit: weight.unit });
    next = each;
  }
  return found;
}

/** More than any number of bowls: a weight. "out of that 390" is the bowl again. */
const heavyIn = ({ reading, bowl }: Said) =>
  reading.amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      each !== bowl &&
      each.value > 40 &&
      !/\b(?:out of|of|from) (?:that|the|those|this) $/.test(reading.text.slice(0, each.at[0])),
  );

/** "actually 150 pink": one part of those said before takes its new weight. */
export function changedWeight(said: Said): Draft | undefined {
  const { before, named } = said;
  const [changed, ...others] = heavyIn(said);
  if (!before?.weights || !changed || others.length > 0) return undefined;
  const name = named(changed);
  if (!before.weights.some((each) => each.name === name)) return undefined;
  return {
    weights: before.weights.map((each) => (each.name === name ? { ...each, size: changed.value } : each)),
    ...(before.rest ? { rest: before.rest } : {}),
  };
}

/** "600 g batter: 200 pink, rest blue", "500 g into 100, 150 and the rest". */
export function heavyParts(said: Said): Draft | undefined {
  const { reading, named, rest } = said;
  const heavy = heavyIn(said);
  const others = says(reading, /the_rest\S*|(?:^| )(?:rest|remainder)(?:<| |$)/);
  if (
    heavy.length === 0 ||
    !(rest.rest || (others && heavy.length > 1) || heavy.every((each) => each.of?.color || each.of?.taste))
  )
    return undefined;
  return { weights: heavy.map((each) => shareOf(each.value, named(each))), ...rest };
}
