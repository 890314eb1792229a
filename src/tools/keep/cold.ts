/** The cold itself: how cold fridge and freezer have to be, and how they thaw. */
import { fridge, frozen, keepingRules, outside } from "../../../data/rules/keeping.ts";
import type { Outcome } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import type { KeepInputs } from "./keep.ts";

export function cold(inputs: KeepInputs): Outcome {
  const limit = [
    { name: "fridge", value: fridge.limit_c, unit: "°C" },
    { name: "fridge", value: fridge.limit_f, unit: "°F" },
  ];
  const base = { status: "answered" as const, figures: limit, rule: keepingRules.fridge };
  if (inputs.air_c === undefined)
    return { ...base, headline: `${fridge.limit_c} °C (${fridge.limit_f} °F) or below` };
  const shown = `${plain(inputs.air_c, 1)} °C (${plain(fahrenheit(inputs.air_c), 0)} °F)`;
  const warm = inputs.fahrenheit
    ? fahrenheit(inputs.air_c) > fridge.limit_f + 1e-9
    : inputs.air_c > fridge.limit_c;
  return {
    ...base,
    headline: warm
      ? `Not cold enough: ${shown} is above ${fridge.limit_c} °C (${fridge.limit_f} °F). Time spent there counts as out of the fridge: ${outside.limit_h} h in all, a night is too long`
      : `Cold enough: ${shown} is at or below ${fridge.limit_c} °C (${fridge.limit_f} °F)`,
  };
}

/** A freezer's own cold against the rule's. */
export function freezerAt(told_c: number): Outcome {
  const shown = `${plain(told_c, 1)} °C (${plain(fahrenheit(told_c), 0)} °F)`.replaceAll("-", "−");
  const line = `${plain(frozen.at_c).replace("-", "−")} °C (${frozen.at_f} °F)`;
  return {
    status: "answered",
    headline:
      told_c > frozen.at_c + 0.25
        ? `Not cold enough: ${shown} is warmer than ${line}; the ${frozen.months} months hold only at ${line} or below`
        : `Cold enough: ${shown} is ${line} or below; airtight, best within ${frozen.months} months`,
    figures: [
      { name: "freezer", value: frozen.at_c, unit: "°C" },
      { name: "freezer", value: frozen.at_f, unit: "°F" },
      { name: "frozen", value: frozen.months, unit: "months" },
    ],
    rule: keepingRules.frozen,
  };
}

export const thawing: Outcome = {
  status: "answered",
  headline:
    "In the closed box in the fridge; open it only when they are no longer colder than the room, so that no water settles on them",
  rule: keepingRules.frozen,
  cautions: ["Thawing starts the 7 days again where freezing stopped them."],
};
