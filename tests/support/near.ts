/** Figures as they are expected, to so many decimals: sums worked by hand are rounded, and the program's aren't. */
import { expect } from "vitest";

/** A figure with that value. */
export const near = (value: number, digits = 4) => ({ value: expect.closeTo(value, digits) });

/** A figure with those ends. */
export const range = (low: number, high: number) => ({
  low: expect.closeTo(low, 4),
  high: expect.closeTo(high, 4),
});
