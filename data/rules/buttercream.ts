/** Meringue buttercream by weight, and the heat that makes its whites safe. */
import type { Basis } from "../../src/tools/contract/answer.ts";

/** Common practice. */
export const buttercreamParts: readonly { name: "whites" | "sugar" | "butter"; parts: number }[] = [
  { name: "whites", parts: 100 },
  { name: "sugar", parts: 150 },
  { name: "butter", parts: 250 },
];

export const buttercreamBasis: Basis = "common practice";

/** Whites and sugar are heated to this while stirring. */
export const safeHeat = {
  value_c: 71,
  value_f: 160,
  basis: "published" as Basis,
  source: "USDA FSIS, egg safety",
};
