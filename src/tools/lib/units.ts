/** Conversion by the one unit table. A unit that isn't in it is an error, never "times one". */
import { type UnitRow, units } from "../../../data/words/units.ts";
import type { Amount } from "../contract/index.ts";

const rowOf = new Map<string, UnitRow>(units.map((row) => [row.unit, row]));

/** The row of a unit by its name ("oz"); throws on a name that the table lacks, which is a bug, not bad input. */
export function unitRow(unit: string): UnitRow {
  const row = rowOf.get(unit);
  if (!row) throw new Error(`No unit "${unit}" in data/words/units.ts`);
  return row;
}

/**
 * A value in its kind's base unit (g, ml, mm, min). Temperatures don't scale: use `celsius`.
 * @param value in `unit`
 */
export function inBase(value: number, unit: string): number {
  return value * unitRow(unit).per;
}

/** A value in base units back into `unit`. */
export function fromBase(value: number, unit: string): number {
  return value / unitRow(unit).per;
}

/** °C from a temperature in °C or °F: (F − 32) / 1.8. Source: NIST SP 811, B.8. */
export function celsius(value: number, unit: string): number {
  return unit === "°F" ? (value - 32) / 1.8 : value;
}

/** °F from °C: C × 9/5 + 32. Source: NIST SP 811, B.8. */
export function fahrenheit(value_c: number): number {
  return (value_c * 9) / 5 + 32;
}

/** Grams of a weight as said; undefined for anything that isn't a weight. */
export function grams(amount: Amount | undefined): number | undefined {
  return amount?.dim === "weight" ? inBase(amount.value, amount.unit) : undefined;
}

/** Grams of a weight, and of a bare number that stands where a weight was meant: "no, 90". */
export const gramsOf = (amount: Amount): number => grams(amount) ?? amount.value;
