/** Temperatures between scales, and between a fan oven and a conventional one. */
import { fanLower } from "../../../data/rules/heat.ts";
import type { Outcome, World } from "../contract/index.ts";
import { celsius, fahrenheit } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { result, unitRule } from "./result.ts";

const coldest_c = -273.15;

/** @param inputs with `unit` settled to °C or °F */
export function heatAnswer(inputs: ConvertInputs & { value: number; unit: string }, _world: World): Outcome {
  const { unit, value, oven } = inputs;
  if (celsius(value, unit) < coldest_c)
    return { status: "impossible", headline: "Nothing is colder than −273.15 °C." };
  const to = inputs.to ?? (oven ? unit : unit === "°F" ? "°C" : "°F");
  const turn = (each: number) => (to === unit ? each : to === "°C" ? celsius(each, unit) : fahrenheit(each));
  if (!oven) {
    return {
      ...result(inputs, to, turn, unitRule(unit, to)),
      ...(inputs.to ? {} : { assumed: [`into ${to}`] }),
    };
  }
  const step = to === "°F" ? fanLower.fahrenheit : fanLower.celsius;
  const ofOven = (each: number) => turn(each) + (oven === "fan" ? -step : step);
  const text = `${oven === "fan" ? "a fan oven is set" : "a conventional oven is set"} ${step} ${to} ${oven === "fan" ? "lower than a conventional one" : "higher than a fan oven"}${to === unit ? "" : "; °F = °C × 9/5 + 32"}`;
  const from = oven === "fan" ? "conventional" : "fan";
  const outcome = result(inputs, to, ofOven, { text, basis: fanLower.basis }, from);
  const [answer, asked] = outcome.headline.split(" = ");
  return {
    ...outcome,
    headline: `${answer} in a ${oven} oven, for ${asked}`,
    cautions: ["Ovens differ: a thermometer inside is surer than the dial."],
    assumed: [`the ${value} ${unit} is meant for a ${from} oven`],
  };
}
