/** Temperatures between scales, and between a fan oven and a conventional one. */
import { fanLower, gasMarks } from "../../../data/rules/heat.ts";
import type { Outcome, World } from "../contract/index.ts";
import { scaleOf } from "../lib/oven.ts";
import { plain } from "../lib/show.ts";
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

/** Marks of the table lie 20 °C apart at most: further off than half of that, a heat lies beyond them. */
const near_c = 10;

/** The gas mark nearest to a heat, and how far off it is. Above 230 without a scale it is °F, else °C. */
export function gasMarkFor({ value, unit }: ConvertInputs & { value: number }): Outcome {
  const scale = scaleOf({ value, unit });
  const heat_c = celsius(value, scale);
  const [mark, mark_c] = [...gasMarks.celsius].sort(
    (a, b) => Math.abs(a[1] - heat_c) - Math.abs(b[1] - heat_c),
  )[0] as [number, number];
  const off = heat_c - mark_c;
  if (Math.abs(off) > near_c)
    return {
      status: "impossible",
      headline: `No gas mark comes near ${plain(heat_c, 0)} °C: they go from 110 to 240 °C.`,
    };
  return {
    status: "answered",
    headline: `Gas mark ${plain(mark, 2)} (${mark_c} °C)${Math.abs(off) < 0.5 ? "" : ` is nearest to ${plain(heat_c, 0)} °C`}`,
    figures: [{ name: "result", value: mark, unit: "gas mark" }],
    rule: { text: gasMarks.text, basis: gasMarks.basis },
    working: [`gas mark ${plain(mark, 2)} = ${mark_c} °C, conventional`],
    ...(unit ? {} : { assumed: [`${plain(value)} ${scale}`] }),
    cautions: ["Ovens differ: a thermometer inside is surer than the dial."],
  };
}

/** A gas oven's mark as degrees; a mark between two of the table's is no mark. */
export function gasAnswer({ gas_mark, to = "°C" }: ConvertInputs & { gas_mark: number }): Outcome {
  const heat_c = gasMarks.celsius.get(gas_mark);
  if (heat_c === undefined)
    return {
      status: "impossible",
      headline: `Gas marks go from 1 to 9, with 1/4 and 1/2 below: there is no ${plain(gas_mark, 2)}.`,
    };
  const value = to === "°F" ? fahrenheit(heat_c) : heat_c;
  return {
    status: "answered",
    headline: `${plain(value, 0)} ${to} = gas mark ${plain(gas_mark, 2)}`,
    figures: [{ name: "result", value, unit: to }],
    rule: { text: gasMarks.text, basis: gasMarks.basis },
    working: [`gas mark ${plain(gas_mark, 2)} = ${heat_c} °C, conventional`],
    cautions: ["Ovens differ: a thermometer inside is surer than the dial."],
  };
}
