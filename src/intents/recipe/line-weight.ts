/** What an amount of a recipe's line weighs: by itself, by the portion table, by the piece; and two that don't agree. */
import type { Amount } from "../../tools/contract/index.ts";
import { each_g, mostCounted } from "../../tools/lib/lines.ts";
import { gramsOfVolume } from "../../tools/lib/portions.ts";
import { listed, plain } from "../../tools/lib/show.ts";
import { inBase } from "../../tools/lib/units.ts";

/** A bare number below this is no weight in grams that anyone leaves the unit off. */
const leastBare = 5;
export const bareGrams = "numbers without a unit as grams";
/** Two weights may differ by a kitchen's rounding ("1 oz / 30 g"); a cup or a number of eggs by more. */
const pairTolerance = { weight: 0.06, estimate: 0.25 };

export interface Weight {
  low: number;
  high: number;
  amount: Amount;
  how?: string;
}

export const isMetric = ({ amount }: Weight) =>
  amount.dim === "weight" && ["g", "kg", "mg"].includes(amount.unit);

export function weightOf(amount: Amount, name: string, manner: string | undefined): Weight[] | undefined {
  const high = amount.high ?? amount.value;
  if (amount.dim === "weight")
    return [{ low: inBase(amount.value, amount.unit), high: inBase(high, amount.unit), amount }];
  if (amount.dim === "volume") {
    const [low, top] = [amount.value, high].map((value) => gramsOfVolume(name, value, amount.unit, manner));
    return low && top
      ? [{ low: low.grams, high: top.grams, amount, how: `${low.row}, by the portion table` }]
      : undefined;
  }
  const one = amount.value <= mostCounted ? each_g[name] : undefined;
  if (one !== undefined)
    return [{ low: amount.value * one, high: high * one, amount, how: `${one} g each, large` }];
  if (
    amount.fraction ||
    amount.value < leastBare ||
    !(isKnown(name) || amount.of?.ingredient || amount.of?.chocolate)
  )
    return undefined;
  return [{ low: amount.value, high, amount, how: bareGrams }];
}

const isKnown = (name: string) => / chocolate$/.test(name);

/** "90 g + 10 g sugar": one line of both. */
export function sumOf(weights: readonly Weight[], main: string): Weight | undefined {
  const [first, second] = weights;
  if (
    weights.length !== 2 ||
    !first ||
    !second ||
    first.amount.dim !== "weight" ||
    second.amount.dim !== "weight"
  )
    return undefined;
  const between = main.slice(first.amount.at[1], second.amount.at[0]).trim();
  if (!/^(?:\+|plus|and)$/.test(between)) return undefined;
  return { low: first.low + second.low, high: first.high + second.high, amount: first.amount };
}

/** What the other amount of a pair comes to, where it is not the same. */
export function doubtOf(used: Weight, other: Weight): string[] {
  const both = [used, other].every((each) => each.amount.dim === "weight");
  const middle = (other.low + other.high) / 2;
  const apart =
    used.low > other.high ? used.low / other.high - 1 : other.low > used.high ? other.low / used.high - 1 : 0;
  if (apart <= (both ? pairTolerance.weight : pairTolerance.estimate)) return [];
  return [
    `${listed([used.amount.text, other.amount.text], "and")} don't agree: ${other.amount.text} is ${plain(middle)} g; ${used.amount.text} is used`,
  ];
}
