import type { KeepInputs } from "./keep.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<KeepInputs>;
