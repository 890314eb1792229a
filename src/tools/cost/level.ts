/** Brings a cost and a price to the same number of macarons: what one costs against what a dozen sells for. */
import type { Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";
import { type Scalable, scaled, spent, spentInAll, spentWithWork } from "./scaled.ts";

export interface Level {
  inputs: CostInputs;
  /** "12 × 0.8 = 9.6", for the sum written out. */
  sums: string[];
}

/**
 * Both sides for the larger number of macarons that was said. A side of which no number was said is taken to be for
 * the same as the other, unless one is a single macaron and the other a box: then it asks how many it holds.
 */
export function levelled(inputs: CostInputs): Level | Outcome {
  const { macarons, boxed, part_of } = inputs;
  // "24 cost 0.50 each, a box of 6?": what one costs is known, whatever there is of them
  const ofAll = inputs.cost_for !== 1;
  if (ofAll && part_of !== undefined && macarons !== undefined && part_of !== macarons)
    return ofPart(inputs, macarons, part_of, true);
  let { cost_for, price_for } = inputs;
  const single = cost_for === 1 ? "cost" : price_for === 1 ? "price" : undefined;
  if (single && cost_for !== price_for) {
    const other = single === "cost" ? price_for : cost_for;
    const priced = inputs.price !== undefined;
    if (other === undefined && macarons === undefined && boxed && boxed !== single && priced)
      return asking("How many macarons is that for?", "macarons");
    if (other === undefined && macarons !== undefined && macarons > 1) {
      if (single === "cost") price_for = macarons;
      else cost_for = macarons;
    }
  }
  // "a batch of 48 costs £14.40, what does a box of 6 cost"
  const part = inputs.price === undefined && macarons !== undefined && cost_for !== undefined;
  if (part && cost_for !== macarons && cost_for !== undefined) return ofPart(inputs, macarons, cost_for);
  if (inABox(inputs, cost_for, price_for)) return ofBox(inputs, macarons ?? 1, cost_for ?? 1);
  if (cost_for === undefined || price_for === undefined || cost_for === price_for)
    return { inputs: withCount(inputs, cost_for ?? price_for), sums: [] };
  const [few, whole] = [Math.min(cost_for, price_for), Math.max(cost_for, price_for)];
  const grown = scaled(inputs, cost_for < price_for ? spent : ["price"], whole, few);
  return {
    inputs: { ...inputs, ...grown, macarons: whole },
    sums: written(
      inputs,
      grown,
      (name, was, now) =>
        `${name} for ${plain(whole)}: ${plain(whole / few, 4)} × ${plain(was)} = ${plain(now)}`,
    ),
  };
}

/** "2.50 each, 6 in a box, box 0.60, ingredients 0.45 each": the box is for all six, and both sums for one. */
const inABox = (
  { macarons, box_of, box_packaging, price }: CostInputs,
  cost_for: number | undefined,
  price_for: number | undefined,
): boolean =>
  box_packaging !== undefined &&
  price !== undefined &&
  macarons !== undefined &&
  macarons === box_of &&
  cost_for !== undefined &&
  cost_for === price_for &&
  cost_for < macarons;

/** Both sides for the whole box. */
function ofBox(inputs: CostInputs, macarons: number, few: number): Level {
  const grown = scaled(inputs, [...spent, "price"], macarons, few);
  return {
    inputs: { ...inputs, ...grown, cost_for: macarons, price_for: macarons },
    sums: written(
      inputs,
      grown,
      (name, was, now) =>
        `${name} for ${plain(macarons)}: ${plain(macarons / few)} × ${plain(was)} = ${plain(now)}`,
    ),
  };
}

/** What some of them cost, where a price of others is known. What all was packed in counts where it was said for all. */
function ofPart(inputs: CostInputs, macarons: number, cost_for: number, packed = false): Level {
  const part = scaled(inputs, packed ? spentInAll : spentWithWork, macarons, cost_for);
  return {
    inputs: { ...inputs, ...part, cost_for: macarons },
    sums: written(
      inputs,
      part,
      (name, was, now) =>
        `${name} of ${plain(macarons)}: ${plain(was)} × ${plain(macarons)} / ${plain(cost_for)} = ${plain(now, 4)}`,
    ),
  };
}

const names: Readonly<Record<Scalable, string>> = {
  cost: "cost",
  ingredients: "ingredients",
  labor: "work",
  labor_min: "minutes of work",
  packaging: "packaging",
  price: "price",
};

/** Each sum that was scaled, written out. */
const written = (
  before: CostInputs,
  now: ReturnType<typeof scaled>,
  line: (name: string, was: number, now: number) => string,
): string[] =>
  (Object.entries(now) as [Scalable, number][]).map(([key, amount]) =>
    line(names[key], before[key] ?? 0, amount),
  );

/** "24 cost me $16": how many it is for is how many there are, where nothing else was said. */
const withCount = (inputs: CostInputs, count: number | undefined): CostInputs =>
  inputs.macarons === undefined && count !== undefined && count > 1 ? { ...inputs, macarons: count } : inputs;
