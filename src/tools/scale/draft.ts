import type { ScaleInputs } from "./scale.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<ScaleInputs>;
