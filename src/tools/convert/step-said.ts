/** "take 50 off that", "plus 25", "30 g less than that": a step from what a conversion or a sum came to. */
import type { Memory, Reading } from "../contract/index.ts";
import { inBase, unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { digits } from "./sum-unit.ts";

type Draft = Partial<ConvertInputs>;

const lead =
  "(?:(?:and|so|ok|then|now|but|no|hm|oh|please|can|could|you|i|lets|what|whats|how much|is|it|that|if) )*";
const down = "(?:take|minus|subtract|less|knock|deduct|remove|drop|lop|shave|trim)";
const up = "(?:plus|add|adding)";
const amount = "(?:{number}|{weight})";
const ofIt =
  "(?: (?:off|away|from|to|on|onto|out of|of|than|more|less|on top of))*(?: (?:that|it|this|the result|the answer))?";
const end = "(?: (?:off|away|please|pls|then|again|is|makes|what|now))*(?: [?])?$";

/** In the mask's language; behind an answer of this calculator only. */
export const stepTurns: readonly string[] = [
  `^${lead}(?:${down}|${up})(?: (?:off|away|out|on|in))? ${amount}${ofIt}${end}`,
  `^${lead}${amount} (?:less|fewer|more|off)(?: (?:than|of|from|on top of))?(?: (?:that|it|this))?${end}`,
  `^${lead}(?=minus_)${amount}${ofIt}${end}`,
];

const tagged = (pattern: string) =>
  new RegExp(pattern.replaceAll("{number}", "\\S*<number>").replaceAll("{weight}", "\\S*<weight>"));
const steps = stepTurns.map(tagged);
const lowers = new RegExp(`(?:^| )${down} |<(?:number|weight)> (?:less|fewer|off)(?: |$)|(?:^| )minus_`);
const pointsAt = /(?:^| )(?:that|it|this|the result|the answer)(?: |$)/;
/** Fewer, of nothing said, may be so many more cups. */
const leastBare = 10;

export function stepOn({ mask, amounts }: Reading, before: Draft, { table }: Memory): Draft | undefined {
  const [by, ...others] = amounts;
  if (!by || others.length > 0 || by.high !== undefined || by.fraction || by.unit === "times")
    return undefined;
  if (!steps.some((each) => each.test(mask))) return undefined;
  const value = Math.abs(by.value);
  if (by.dim === "number" && value < leastBare && !pointsAt.test(mask)) return undefined;
  const sign = lowers.test(mask) ? "-" : "+";
  if (before.sum !== undefined) {
    const unit = before.sum_unit;
    if (by.dim === "weight" && (unit === undefined || unitRow(unit).dim !== "weight")) return undefined;
    const own = by.dim === "weight" && unit ? inBase(value, by.unit) / unitRow(unit).per : value;
    return { ...before, sum: `(${before.sum}) ${sign} ${digits(own)}` };
  }
  const to = before.to ?? "g";
  // "10 more than that", of a heat: of the one that was turned
  if (before.unit && before.unit !== "large" && unitRow(before.unit).dim === "temperature")
    return before.value === undefined ||
      by.dim !== "number" ||
      // "minus 18", behind a fridge's 4 °C: a cold of its own, and nothing taken off
      (/^minus|(?:^| )minus_/.test(mask) && before.value < (before.unit === "°F" ? 140 : 60))
      ? undefined
      : { ...before, value: before.value + (sign === "+" ? value : -value) };
  // a length that came out is no weight to take from
  if (!table.mass || unitRow(to).dim !== "weight" || before.value === undefined) return undefined;
  const step = by.dim === "weight" ? inBase(value, by.unit) / unitRow(to).per : value;
  return { sum: `${digits(table.mass.grams / unitRow(to).per)} ${sign} ${digits(step)}`, sum_unit: to };
}
