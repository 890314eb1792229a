/** Chocolate to cream by weight: default and range, by chocolate and use. */
import type { Basis } from "../../src/tools/contract/answer.ts";

export type Chocolate = "dark" | "milk" | "white";
export type Use = "loose" | "piping" | "firm";

export interface RatioRow {
  ratio: number;
  low: number;
  high: number;
  basis: Basis;
  source?: string;
}

const mcgee = "1 soft and 2 firm: McGee, On Food and Cooking, 2004";
const practice = (ratio: number, low: number, high: number, source?: string): RatioRow => ({
  ratio,
  low,
  high,
  basis: "common practice",
  ...(source ? { source } : {}),
});

export const ratios: Readonly<Record<Chocolate, Readonly<Record<Use, RatioRow>>>> = {
  dark: {
    loose: practice(1, 0.8, 1, mcgee),
    piping: practice(1.25, 1, 1.5),
    firm: practice(2, 1.75, 2.25, mcgee),
  },
  milk: { loose: practice(1.5, 1.25, 1.75), piping: practice(2, 1.75, 2.25), firm: practice(2.5, 2.25, 3) },
  white: { loose: practice(2, 1.75, 2.25), piping: practice(2.5, 2, 3), firm: practice(3.5, 3, 4) },
};

/** White, set with butter, for filling: chocolate : cream : butter. */
export const whiteWithButter = { chocolate: 100, cream: 60, butter: 25, basis: "common practice" as Basis };

/** What each use is called in an answer. */
export const useNames: Readonly<Record<Use, string>> = {
  loose: "loose, to pour or drip",
  piping: "piping, to fill",
  firm: "firm, to roll or cut",
};

/** Mending a split: warm it, then a little warm liquid at a time. From memory. */
export const split = {
  low_c: 32,
  high_c: 40,
  atATime_percent: 2,
  atMost_percent: 10,
  basis: "from memory" as Basis,
};
