/** How a dose is written: its name, its weight, spoons, and what a scale can show of it. */
import { type DoseRow, liquidTeaspoon_g } from "../../../data/rules/doses.ts";
import type { Figure } from "../contract/index.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { plain, weight, weightRange } from "../lib/show.ts";
import { inBase } from "../lib/units.ts";
import type { DoseInputs } from "./dose.ts";
import type { Dose } from "./in-force.ts";

/** How figures name it: "flavor" for a concentrated one, else the thing's own name. */
export function nameOf(inputs: DoseInputs, row: DoseRow | undefined): string {
  if (row?.id === "flavor" || inputs.dose === undefined) return "flavor";
  if (inputs.name && inputs.name !== inputs.taste) return inputs.name;
  const form: Record<string, string> = {
    extract: "extract",
    oil: "oil",
    "fruit powder": "freeze-dried powder",
    purée: "purée",
    "nut paste": "paste",
    zest: "zest",
    "vanilla paste": "bean paste",
    "fruit paste": "paste",
    "other powder": "powder",
    "tea powder": "powder",
    "coffee powder": "powder",
  };
  const word = form[inputs.dose];
  if (inputs.taste && word) return `${inputs.taste} ${word}`;
  return inputs.taste ?? row?.name ?? inputs.dose;
}

export const label = (inputs: DoseInputs, dose: Dose) =>
  dose.name === "flavor" && inputs.taste ? `${inputs.taste} flavor` : dose.name;

/** A dose is never nothing: what the scale would show as 0 is written out. */
export const doseText = (low: number, high: number, scale_g: number | undefined): string =>
  low > 0 && weight(low, scale_g) === "0"
    ? `${[...new Set([plain(low, 3), plain(high, 3)])].join(" to ")} g`
    : weightRange(low, high, scale_g);

/** A dose of few steps of the scale: what it can show instead, and for how much base that is right. */
export function scaleCaution(
  grams: number,
  scale_g: number | undefined,
  base_g: number,
  base: string,
): string[] {
  if (scale_g === undefined || grams <= 0 || grams >= scale_g * 5) return [];
  const shown = Math.max(1, Math.round(grams / scale_g)) * scale_g;
  const nearest =
    Math.abs(shown / grams - 1) < 1e-9
      ? ""
      : ` It can show ${plain(shown, 3)} g, right for ${plain((base_g * shown) / grams, 0)} g ${base}: make that much, or use a finer scale.`;
  return [
    `Your scale reads ${plain(scale_g)} g steps: ${plain(grams, 3)} g is only ${plain(grams / scale_g, 1)} of them.${nearest}`,
  ];
}

/** Spoons of a liquid by estimate; of a powder only where the portion table knows it. */
export function inSpoons(
  inputs: DoseInputs,
  dose: Dose,
  grams: Figure,
): { headline: string; figures: Figure[]; cautions: string[] } {
  const unit = inputs.spoon ?? "tsp";
  const each = dose.row.liquid
    ? unit === "tsp"
      ? liquidTeaspoon_g
      : inBase(1, unit)
    : gramsOfVolume(inputs.name ?? "", 1, unit)?.grams;
  if (each === undefined)
    return {
      headline: `${weightRange(grams.value ?? grams.low ?? 0, grams.value ?? grams.high ?? 0)} ${dose.name}; there is no known weight for a ${unit} of it`,
      figures: [],
      cautions: ["A spoon of this powder isn't in the table: weigh it."],
    };
  const convert = (value: number | undefined) => (value === undefined ? undefined : value / each);
  const [low, high, value] = [convert(grams.low), convert(grams.high), convert(grams.value)];
  const range = low !== undefined && high !== undefined ? { low, high } : {};
  const figure: Figure = { name: dose.name, ...(value !== undefined ? { value } : {}), ...range, unit };
  const text = value !== undefined ? plain(value, 2) : `${plain(low ?? 0, 2)} to ${plain(high ?? 0, 2)}`;
  return {
    headline: `about ${text} ${unit} ${dose.name}`,
    figures: [figure],
    cautions: [`An estimate: ${plain(each, 2)} g counted to the ${unit}. A scale is surer.`],
  };
}
