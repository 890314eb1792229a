/** The day worked back from when it is needed. */

export { wallSeconds, wallText } from "./clock.ts";
export { planDay } from "./plan.ts";
export { type DayChange, rework, type WhatNext, whatNext } from "./rework.ts";
export { traysFor } from "./trays.ts";
export * from "./types.ts";
