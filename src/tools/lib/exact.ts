/** Exact fractions where a count is cut off: 0.96 and 0.53 have no exact binary form, and a floor would feel it. */
import Fraction from "fraction.js";

export type Exact = Fraction;

/** The decimal that was written, exactly: 0.53 is 53/100, not the binary number nearest to it. */
export function exact(value: number): Exact {
  const [digits = "0", power] = Number(value.toPrecision(15)).toString().split("e");
  const written = new Fraction(digits);
  return power === undefined ? written : written.mul(new Fraction(10).pow(Number(power)));
}

/**
 * Whole pieces in a weight that may itself be the answer to a sum: 350.7716666666667 g was weighed out for 44 shells
 * and holds 44, though its last digit was cut off. A billionth of a piece is let pass; no weight that a scale shows
 * comes that close without reaching it.
 */
export const wholeIn = (value: Exact): number => floor(value.add(new Fraction(1, 1_000_000_000)));

/** Largest whole number that isn't above. */
export const floor = (value: Exact): number => value.floor().valueOf();

/** Smallest whole number that isn't below. */
export const ceil = (value: Exact): number => value.ceil().valueOf();
