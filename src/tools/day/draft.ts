import type { DayInputs } from "./day.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<DayInputs>;
