/** The shells' recipe in force: the book's house formula, or the baker's own where her bench names one. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { World } from "../contract/index.ts";
import { exact } from "./exact.ts";

export interface House {
  /** Her own recipe's name; none is the book's. */
  name?: string;
  /** Weights in g as saved, or the book's parts. */
  lines: { name: string; grams: number }[];
  /** What they come to, in g. */
  total: number;
  /** The whites of it, in g. */
  whites: number;
}

/** A setting whose recipe is gone counts as none. */
export function houseOf({ bench, formulas }: Pick<World, "bench" | "formulas">): House {
  const own = bench.house_formula
    ? formulas.findLast((each) => each.name.toLowerCase() === bench.house_formula?.toLowerCase())
    : undefined;
  const lines = own
    ? own.lines.map(({ name, grams }) => ({ name, grams }))
    : houseFormula.map(({ name, parts }) => ({ name, grams: parts }));
  const total = lines.reduce((sum, each) => sum + each.grams, 0);
  const whites = lines.find((each) => ["whites", "pasteurised whites"].includes(each.name))?.grams ?? 0;
  return { ...(own ? { name: own.name } : {}), lines, total, whites };
}

/** The lines for a weight of batter, in g. */
export const houseFor = (house: House, batter_g: number): { name: string; grams: number }[] =>
  house.lines.map(({ name, grams }) => ({
    name,
    grams: exact(batter_g).mul(exact(grams)).div(exact(house.total)).valueOf(),
  }));
