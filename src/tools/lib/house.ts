/** The shells' recipe in force: the book's house formula, or the baker's own where her bench names one. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { World } from "../contract/index.ts";
import { exact } from "./exact.ts";
import { listed } from "./show.ts";

export interface House {
  /** Her own recipe's name; none is the book's. */
  name?: string;
  /** Weights in g as saved, or the book's parts. */
  lines: { name: string; grams: number; low_g?: number; high_g?: number }[];
  /** What they come to, in g. */
  total: number;
  /** The whites of it, in g. */
  whites: number;
  /** Lines of it without a weight, in the baker's own words. */
  unweighed?: string[];
}

/**
 * A setting whose recipe is gone counts as none.
 * @param said a saved recipe that was named for this once
 */
export function houseOf({ bench, formulas }: Pick<World, "bench" | "formulas">, said?: string): House {
  const name = said ?? bench.house_formula;
  const own = name ? formulas.findLast((each) => each.name.toLowerCase() === name.toLowerCase()) : undefined;
  const lines = own
    ? own.lines.map((line) => ({ ...line }))
    : houseFormula.map(({ name, parts }) => ({ name, grams: parts }));
  const total = lines.reduce((sum, each) => sum + each.grams, 0);
  const whites = lines.find((each) => ["whites", "pasteurised whites"].includes(each.name))?.grams ?? 0;
  const unweighed = own?.unweighed?.length ? { unweighed: own.unweighed } : {};
  return { ...(own ? { name: own.name } : {}), lines, total, whites, ...unweighed };
}

/** The lines for a weight of batter, in g. */
export const houseFor = (house: House, batter_g: number): { name: string; grams: number }[] =>
  house.lines.map(({ name, grams }) => ({
    name,
    grams: exact(batter_g).mul(exact(grams)).div(exact(house.total)).valueOf(),
  }));

/** Names what of a recipe has no weight and so no part in any sum. */
export const unweighedLine = ({ name, unweighed = [] }: { name?: string; unweighed?: string[] }): string[] =>
  unweighed.length
    ? [
        `${listed(unweighed.map((each) => `"${each}"`))} of ${name} ${unweighed.length === 1 ? "has" : "have"} no weight: add ${unweighed.length === 1 ? "it" : "them"} by eye.`,
      ]
    : [];
