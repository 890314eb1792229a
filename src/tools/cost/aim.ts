/** The share that a price is to go by: a markup, a food cost or a margin, one at a time. */
import type { CostInputs } from "./cost.ts";

export const aims = ["markup_percent", "food_cost_percent", "margin_percent"] as const;
export type Aim = (typeof aims)[number];

/** The one that was said. */
export const aimOf = (inputs: Partial<CostInputs>): Aim | undefined =>
  aims.find((each) => inputs[each] !== undefined);
