import type { FormulaInputs } from "./formula.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<FormulaInputs>;
