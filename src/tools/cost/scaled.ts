/** The sums of a bill for more or fewer macarons than they were said for, each in proportion. */
import type { Draft } from "./draft.ts";

export type Scalable = "cost" | "ingredients" | "packaging" | "labor" | "labor_min" | "price";

/** What was spent on the macarons themselves. */
export const spent = ["cost", "ingredients"] as const;
/** The hours went into all of them too. */
export const spentWithWork = [...spent, "labor", "labor_min"] as const;
export const spentInAll = [...spentWithWork, "packaging"] as const;

/** Of the sums named, those that were said, for `many` where they were for `of`. */
export const scaled = (
  said: Draft,
  keys: readonly Scalable[],
  many: number,
  of: number,
): Partial<Record<Scalable, number>> =>
  Object.fromEntries(
    keys.flatMap((key) => {
      const amount = said[key];
      return amount === undefined ? [] : [[key, (amount * many) / of]];
    }),
  );
