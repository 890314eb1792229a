/** Exact fractions where a count is cut off: 0.96 and 0.53 have no exact binary form, and a floor would feel it. */
import Fraction from "fraction.js";

export type Exact = Fraction;

/** The decimal that was written, exactly: 0.53 is 53/100, not the binary number nearest to it. */
export function exact(value: number): Exact {
  return new Fraction(Number(value.toPrecision(15)).toString());
}

/** Largest whole number that isn't above. */
export const floor = (value: Exact): number => value.floor().valueOf();

/** Smallest whole number that isn't below. */
export const ceil = (value: Exact): number => value.ceil().valueOf();
