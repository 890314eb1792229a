/** How long they may be out of the fridge, and whether what was told of them says that they were out. */
import { outside } from "../../../data/rules/keeping.ts";
import { tidy } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import type { Draft } from "./draft.ts";

/** Above 90 °F where she said it in °F, above 32 °C where in °C: the rule names both. */
export const isHot = ({ hot, air_c, fahrenheit: said_f }: Draft): boolean =>
  hot === true ||
  (air_c !== undefined && (said_f ? fahrenheit(air_c) > outside.hot_f + 1e-9 : air_c > outside.hot_c));

/** Two hours in all, one when it is hot. */
export const limitOf = (inputs: Draft): number => (isHot(inputs) ? outside.hot_h : outside.limit_h);

/** What is left of the limit, in min; below zero where it is past. */
export const leftOf = (inputs: Draft, out_min: number): number => tidy(limitOf(inputs) * 60 - out_min);

/** What tells of time out of the fridge. */
export const outInputs = [
  "out_min",
  "out_since",
  "out_until",
  "out_earlier_min",
  "overnight",
  "out_since_made",
  "out_asked",
] as const;

export const wasOut = (inputs: Draft) =>
  !inputs.out_asked && outInputs.some((key) => inputs[key] && key !== "out_until");
/** Left in the heat, nobody said how long. */
export const wasHot = (inputs: Draft) => inputs.hot === true || (inputs.about === "outside" && isHot(inputs));
