/** Brings a cost and a price to the same number of macarons: what one costs against what a dozen sells for. */
import type { Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";

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
  if (part_of !== undefined && macarons !== undefined && part_of !== macarons)
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
  if (cost_for === undefined || price_for === undefined || cost_for === price_for)
    return { inputs: withCount(inputs, cost_for ?? price_for), sums: [] };
  const whole = Math.max(cost_for, price_for);
  const sums: string[] = [];
  const up = (name: string, amount: number | undefined, from: number) => {
    if (amount === undefined || from === whole) return amount;
    const times = whole / from;
    sums.push(
      `${name} for ${plain(whole)}: ${plain(times, 4)} × ${plain(amount)} = ${plain(amount * times)}`,
    );
    return amount * times;
  };
  return {
    inputs: {
      ...inputs,
      ...defined("cost", up("cost", inputs.cost, cost_for)),
      ...defined("ingredients", up("ingredients", inputs.ingredients, cost_for)),
      ...defined("price", up("price", inputs.price, price_for)),
      macarons: whole,
    },
    sums,
  };
}

/** What some of them cost, where a price of others is known. */
function ofPart(inputs: CostInputs, macarons: number, cost_for: number, packed = false): Level {
  const sums: string[] = [];
  const of = (name: string, amount: number | undefined) => {
    if (amount === undefined) return undefined;
    const share = (amount * macarons) / cost_for;
    sums.push(
      `${name} of ${plain(macarons)}: ${plain(amount)} × ${plain(macarons)} / ${plain(cost_for)} = ${plain(share, 4)}`,
    );
    return share;
  };
  const cost = defined("cost", of("cost", inputs.cost));
  const ingredients = defined("ingredients", of("ingredients", inputs.ingredients));
  // the hours went into all of them too
  const work = {
    ...defined("labor", of("work", inputs.labor)),
    ...defined("labor_min", of("minutes of work", inputs.labor_min)),
  };
  // what it all was packed in, unless it was said for this part alone
  const packaging = packed ? defined("packaging", of("packaging", inputs.packaging)) : {};
  return { inputs: { ...inputs, ...cost, ...ingredients, ...work, ...packaging, cost_for: macarons }, sums };
}

const defined = (key: string, value: number | undefined) => (value === undefined ? {} : { [key]: value });

/** "24 cost me $16": how many it is for is how many there are, where nothing else was said. */
const withCount = (inputs: CostInputs, count: number | undefined): CostInputs =>
  inputs.macarons === undefined && count !== undefined && count > 1 ? { ...inputs, macarons: count } : inputs;
