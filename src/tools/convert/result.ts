/** How a conversion is written down: its figure, its rule, its line. Rounding for the eye only. */
import type { Figure, Outcome, Rule } from "../contract/index.ts";
import { plain, weight } from "../lib/show.ts";
import { unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";

/** Decimals that a unit is shown with; grams and millilitres go by size. */
const places: Record<string, number> = {
  "°C": 1,
  "°F": 1,
  "°": 1,
  mm: 1,
  cm: 2,
  in: 3,
  mg: 0,
  kg: 3,
  l: 3,
  s: 0,
  "": 6,
};

/** A value with its unit as a baker reads it: "240 g", "2 cups", "148.9 °C". `as` sets decimals without showing a unit. */
export function shown(value: number, unit: string, as = unit): string {
  const digits = as === "g" || as === "ml" ? weight(value) : smallEnough(value, places[as] ?? 2);
  if (unit === "") return digits;
  const many =
    ["cup", "stick", "pint", "quart", "gallon", "week", "month"].includes(unit) && Math.abs(value) !== 1;
  return `${digits} ${unit}${many ? "s" : ""}`;
}

/** A value too small for its usual decimals gets more, so that nothing is shown as 0. */
function smallEnough(value: number, decimals: number): string {
  const text = plain(value, decimals);
  return Number(text) === 0 && value !== 0
    ? plain(value, Math.min(12, decimals + 2 - Math.floor(Math.log10(Math.abs(value)))))
    : text;
}

/** The result in the unit asked for: a value, or both ends of a range. */
export function figureOf(
  unit: string,
  turn: (value: number) => number,
  from: { value?: number; low?: number; high?: number },
): Figure {
  const ends = Object.fromEntries(
    (["value", "low", "high"] as const).flatMap((key) =>
      from[key] === undefined ? [] : [[key, turn(from[key])]],
    ),
  );
  return { name: "result", ...ends, unit };
}

/** What is said of one conversion: `what` is turned, `note` comes behind it in the headline. */
export interface Wording {
  text: Rule["text"];
  basis: Rule["basis"];
  source?: string;
}

/** An answered conversion of a value or a range. */
export function result(
  inputs: Pick<ConvertInputs, "value" | "high" | "unit">,
  to: string,
  turn: (value: number) => number,
  rule: Wording,
  name = "",
): Outcome {
  const value = inputs.value ?? 0;
  const from = inputs.unit ?? "";
  const high = inputs.high;
  const figure =
    high === undefined ? figureOf(to, turn, { value }) : ordered(figureOf(to, turn, { low: value, high }));
  const answer =
    figure.value !== undefined
      ? shown(figure.value, to)
      : `${shown(figure.low ?? 0, "", to)} to ${shown(figure.high ?? 0, to)}`;
  const asked =
    high === undefined
      ? shown(value, from, from === "" ? "" : from)
      : `${shown(value, "", from)} to ${shown(high, from)}`;
  return {
    status: "answered",
    headline: `${answer} = ${asked}${name ? ` ${name}` : ""}`,
    figures: [figure],
    rule,
    working: [`${rule.text}`, `${asked}${name ? ` ${name}` : ""} = ${answer}`],
  };
}

const ordered = (figure: Figure): Figure =>
  (figure.low ?? 0) <= (figure.high ?? 0) ? figure : { ...figure, low: figure.high, high: figure.low };

const baseOf: Record<string, string> = { weight: "g", volume: "ml", length: "mm", time: "min" };

/** The rule between two units of a kind, with its numbers and where they come from. */
export function unitRule(from: string, to: string): Wording {
  const rows = [...new Set([from, to])].map(unitRow);
  if (rows.some((row) => row.dim === "temperature"))
    return { text: "°F = °C × 9/5 + 32", basis: "published", source: "NIST SP 811, B.8" };
  const text = rows
    .filter((row) => row.per !== 1)
    .map((row) => `1 ${row.unit} = ${plain(row.per, 12)} ${baseOf[row.dim] ?? ""}`.trim());
  const sources = [...new Set(rows.map((row) => row.source))].filter(
    (each, _, all) => each !== "SI" || all.length === 1,
  );
  const custom = sources.find((each) => /common practice/.test(each));
  const said = text.join(", ") || `1 ${from} = 1 ${to}`;
  return custom
    ? { text: said, basis: "common practice" }
    : { text: said, basis: "published", source: sources.join("; ") };
}

/** A question back, and the input that it is about. */
export const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});
/** Understood, and it can't be. */
export const impossible = (headline: string): Outcome => ({ status: "impossible", headline });
