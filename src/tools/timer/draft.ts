import type { TimerInputs } from "./timer.ts";

/** Inputs as far as they are known. */
export type Draft = Partial<TimerInputs>;
