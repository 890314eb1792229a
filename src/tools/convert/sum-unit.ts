/** The unit that a sum comes out in, where something in it was said in one. */
import { unitRow } from "../lib/units.ts";

/** A number, an operator or a word of a sum. */
export interface Piece {
  text: string;
  is: "value" | "sign" | "open" | "close" | "percent" | "part" | "talk" | "other";
  unit?: string;
}

/** A number as the parser takes it; "?" for what would need an exponent. */
export const digits = (value: number): string =>
  /e/.test(String(value)) ? "?" : value < 0 ? `(${value})` : String(value);

/**
 * "" without units; the first unit where all of an addition has one kind, or one factor of a product has it;
 * undefined where units don't work out ("200 g times 3 oz").
 */
export function unitOf(pieces: Piece[]): string | undefined {
  const united = pieces.filter((each) => each.unit);
  const first = united[0]?.unit;
  if (!first) return "";
  const plainSigns = pieces.filter((each) => each.is === "sign").map((each) => each.text);
  const adds = plainSigns.every((each) => each === "+" || each === "-");
  const values = pieces.filter((each) => ["value", "part", "percent"].includes(each.is));
  if (
    adds &&
    united.length === values.length &&
    united.every((each) => unitRow(each.unit as string).dim === unitRow(first).dim)
  ) {
    for (const each of united)
      each.text = digits((Number(each.text) * unitRow(each.unit as string).per) / unitRow(first).per);
    return first;
  }
  const at = pieces.findIndex((each) => each.unit);
  const divides = pieces[at - 1]?.text === "/";
  return united.length === 1 && plainSigns.every((each) => each === "*" || each === "/") && !divides
    ? first
    : undefined;
}
