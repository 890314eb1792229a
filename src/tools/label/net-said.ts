/** "net weight 120 g", "net 5 oz", "120 g net", "a box of 140 g": what is in the box, and no ingredient of it. */
import type { Amount, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import type { LabelInputs } from "./label.ts";

/** A bare number below this is of boxes or labels; no box holds so few grams. */
const least_g = 10;
/** So many letters before a weight are looked at for what it is: "net weight of each box: ". */
const near = 24;

const mayBeNet = ({ dim, unit, of, value }: Amount): boolean =>
  dim === "weight" || (dim === "number" && unit === "" && !of && value >= least_g);

/** @returns where it stands, so that it isn't taken for an ingredient's weight too */
export function netSaid({ amounts, text }: Reading): { input: Partial<LabelInputs>; at: number } | undefined {
  const weights = amounts.filter(mayBeNet);
  const before = ({ at }: Amount) => text.slice(Math.max(0, at[0] - near), at[0]);
  // "cream 3 oz. net weight 5 oz": the one that it stands before
  const said =
    weights.find((each) => /\bnet (?:weight|wt)\b[\s\w]{0,10}:?\s*$/.test(before(each))) ??
    weights.find(
      (each) =>
        /\bnet\b[\s\w:]{0,20}$/.test(before(each)) ||
        /^\s*net\b/.test(text.slice(each.at[1])) ||
        // "as a 90 g box"
        /^\s*(?:a |per |each )?(?:box|bag|pack)(?:es|s)?\b/.test(text.slice(each.at[1])) ||
        (!each.of && /\b(?:box|bag|pack|weighs?)\b[\s\w:]{0,12}$/.test(before(each))),
    );
  return said && { at: said.at[0], input: inUnit(said) };
}

/** Ounces stay ounces: the law of the US has them first. */
function inUnit({ dim, value, unit }: Amount): Partial<LabelInputs> {
  if (dim === "number") return { net_g: value };
  return unit === "oz" || unit === "lb"
    ? { net_oz: inBase(value, unit) / inBase(1, "oz") }
    : { net_g: inBase(value, unit) };
}
