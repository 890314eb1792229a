/** Flavor and color by weight: percent of the base, by what goes in and what it goes into. */
import type { Basis } from "../../src/tools/contract/answer.ts";

export type Range = readonly [low: number, high: number];

export interface DoseRow {
  id: string;
  /** How the figure is named when the baker's own word doesn't say it better. */
  name: string;
  /** Percent of the base's weight; a missing column means that there is no rule. */
  buttercream?: Range;
  ganache?: Range;
  batter?: Range;
  basis: Basis;
  /** ml count as grams and a teaspoon as 4.93 g, by estimate. */
  liquid?: boolean;
  caution?: string;
}

export const doseRows: readonly DoseRow[] = [
  {
    id: "flavor",
    name: "flavor",
    buttercream: [3, 5],
    ganache: [3, 4],
    basis: "common practice",
    liquid: true,
  },
  {
    id: "extract",
    name: "extract",
    buttercream: [1, 2],
    ganache: [1, 2],
    basis: "from memory",
    liquid: true,
  },
  {
    id: "vanilla paste",
    name: "vanilla bean paste",
    buttercream: [1, 2],
    ganache: [1, 2],
    basis: "from memory",
  },
  {
    id: "oil",
    name: "flavoring oil",
    buttercream: [0.2, 0.5],
    ganache: [0.2, 0.5],
    basis: "from memory",
    liquid: true,
    caution: "Super-strength oil: weigh it, never pour. A drop too many spoils the bowl.",
  },
  {
    id: "fruit powder",
    name: "freeze-dried fruit powder",
    buttercream: [3, 8],
    ganache: [2, 5],
    basis: "from memory",
  },
  {
    id: "purée",
    name: "purée",
    buttercream: [5, 15],
    ganache: [5, 10],
    basis: "from memory",
    caution: "Reduce purée or jam first: its water splits butter and softens shells.",
  },
  {
    id: "nut paste",
    name: "nut paste",
    buttercream: [10, 20],
    ganache: [10, 20],
    basis: "from memory",
    caution: "Nut paste brings an allergen: name the nut to whoever eats it.",
  },
  { id: "cocoa powder", name: "cocoa powder", buttercream: [3, 6], basis: "from memory" },
  { id: "coffee powder", name: "coffee powder", buttercream: [1, 2], ganache: [1, 2], basis: "from memory" },
  { id: "tea powder", name: "tea powder", buttercream: [1.5, 3], ganache: [1.5, 3], basis: "from memory" },
  { id: "zest", name: "zest", buttercream: [0.5, 1.5], ganache: [0.5, 1.5], basis: "from memory" },
  {
    id: "citric acid",
    name: "citric acid",
    buttercream: [0.1, 0.3],
    ganache: [0.1, 0.3],
    basis: "from memory",
  },
  { id: "salt", name: "salt", buttercream: [0.2, 0.5], ganache: [0.2, 0.5], basis: "from memory" },
  { id: "spirit", name: "spirit", buttercream: [2, 5], ganache: [2, 5], basis: "from memory", liquid: true },
  { id: "powder color", name: "powder color", batter: [0.3, 1], basis: "from memory" },
  { id: "gel color", name: "gel color", batter: [0.5, 1.5], basis: "from memory" },
];

/** A teaspoon of a liquid flavor, by estimate: its volume counted as water. NIST Handbook 44's teaspoon. */
export const liquidTeaspoon_g = 4.92892159375;
