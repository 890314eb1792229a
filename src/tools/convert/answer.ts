/** Turns one thing into another: which conversion it is, and what is asked or refused first. */
import type { Figure, Outcome, World } from "../contract/index.ts";
import { weighing } from "../lib/ounces.ts";
import { plain } from "../lib/show.ts";
import { celsius, unitRow } from "../lib/units.ts";
import { workOut } from "./arithmetic.ts";
import type { ConvertInputs } from "./convert.ts";
import { gasAnswer, gasMarkFor, heatAnswer } from "./heat.ts";
import { massAnswer } from "./mass.ts";
import { asking, figureOf, impossible, result, shown, unitRule } from "./result.ts";

const kinds: Record<string, string> = {
  weight: "a weight",
  volume: "a volume",
  length: "a length",
  time: "a time",
  temperature: "a temperature",
};

/** What a length or a time is turned into when no target is said. */
const usual: Record<string, string> = {
  in: "mm",
  mm: "in",
  cm: "in",
  s: "min",
  min: "h",
  h: "min",
  d: "h",
  week: "d",
  month: "d",
};

/** @throws never: what can't be turned comes back as `asking`, `impossible` or `declined`. */
export function answerConvert(inputs: ConvertInputs, world: World): Outcome {
  if (inputs.exchange)
    return { status: "declined", headline: "I know no exchange rates, so money isn't converted." };
  if (inputs.sum !== undefined) return sumAnswer(inputs.sum, inputs.sum_unit ?? "");
  if (inputs.to_gas && inputs.value !== undefined) return gasMarkFor({ ...inputs, value: inputs.value });
  if (inputs.gas_mark !== undefined) return gasAnswer({ ...inputs, gas_mark: inputs.gas_mark });
  if (inputs.that) return lastAnswer(inputs, world);
  if (inputs.value === undefined) return asking("How much of what is it, and into which unit?", "value");
  if (inputs.unit === undefined && inputs.spoon)
    return asking("Which spoon is it: a teaspoon or a tablespoon?", "unit");
  if (inputs.unit === undefined) return asking(`${shown(inputs.value, "")} of which unit?`, "unit");
  const unit = settleDegree(inputs);
  if (unit === undefined) return asking(`Is that ${shown(inputs.value, "")} °C or °F?`, "unit");
  const assumed = unit === inputs.unit ? [] : [`${shown(inputs.value, "")} ${unit}`];
  const outcome = convertUnit({ ...inputs, unit, value: inputs.value }, world);
  if (outcome.status !== "answered" || assumed.length === 0) return outcome;
  return { ...outcome, assumed: [...assumed, ...(outcome.assumed ?? [])] };
}

type Ready = ConvertInputs & { value: number; unit: string };

function convertUnit(inputs: Ready, world: World): Outcome {
  const dim = inputs.unit === "large" ? "weight" : unitRow(inputs.unit).dim;
  const to = inputs.to;
  if (dim !== "temperature" && inputs.value <= 0)
    return impossible(
      `There is no ${dim} of ${shown(inputs.value, inputs.unit === "large" ? "" : inputs.unit)}: it has to be above zero.`,
    );
  if (to && unitRow(to).dim !== dim && !(isMass(dim) && isMass(unitRow(to).dim)))
    return impossible(
      `${kinds[dim] ?? dim} can't be turned into ${kinds[unitRow(to).dim] ?? to}.`.replace(/^a/, "A"),
    );
  if (dim === "temperature") return heatAnswer(inputs, world);
  if (isMass(dim)) return massAnswer(inputs, world);
  const target = to ?? usual[inputs.unit] ?? "mm";
  const factor = unitRow(inputs.unit).per / unitRow(target).per;
  return {
    ...result(inputs, target, (value) => value * factor, { ...unitRule(inputs.unit, target) }),
    ...(to ? {} : { assumed: [`into ${target}`] }),
  };
}

const isMass = (dim: string) => dim === "weight" || dim === "volume";

/** Degrees without a scale: the other one than is asked for; above any °C that an oven has, °F. */
function settleDegree({ unit, to, value, oven }: ConvertInputs): string | undefined {
  if (unit !== "°") return unit;
  // no shells bake at 140 °F: what is said of an oven so low is °C
  if (oven && value !== undefined && value > 80 && value <= 230) return "°C";
  if (to === "°C") return "°F";
  if (to === "°F") return "°C";
  return value !== undefined && value >= 270 ? "°F" : undefined;
}

/** "175.33 = 1 / 3 × 526, rounded": what never ends is shown as far as it can be weighed. */
function sumText(value: number, said: string): string {
  const full = shown(value, "");
  const before = Math.abs(value) < 1 ? 0 : Math.trunc(Math.abs(value)).toString().length;
  return /\.\d{6}$/.test(full)
    ? `${plain(value, Math.max(2, 5 - before))} = ${said}, rounded`
    : `${full} = ${said}`;
}

function sumAnswer(sum: string, unit: string): Outcome {
  const worked = workOut(sum);
  if (worked.ok) {
    const said = sum
      .replaceAll(" / 100)", " %)")
      .replaceAll("*", "×")
      .replaceAll("-", "−")
      // weights that were worked out, and not typed
      .replace(/\d+\.\d{5,}/g, (long) => plain(Number(long), 2));
    return {
      status: "answered",
      headline: unit === "" ? sumText(worked.value, said) : `${shown(worked.value, unit)} = ${said}`,
      figures: [{ name: "result", value: worked.value, unit }],
      rule: { text: said, basis: "arithmetic" },
      working: [`${said} = ${shown(worked.value, unit)}`],
      ...(unit !== "" && unitRow(unit).dim === "weight"
        ? { leaves: { mass: { grams: worked.value * unitRow(unit).per, thing: "" } } }
        : unit === ""
          ? { leaves: { number: worked.value } }
          : {}),
    };
  }
  if (worked.why === "division by zero") return impossible("Nothing can be divided by zero.");
  if (worked.why === "too long")
    return impossible("That sum is longer or larger than anything in a kitchen; check the numbers.");
  return {
    status: "declined",
    headline: "I only work out plain sums: plus, minus, times, divided by, powers and brackets.",
  };
}

/** "what's that in ounces": the one figure of the answer before. */
function lastAnswer({ to, from }: ConvertInputs, world: World): Outcome {
  const figures = world.last?.answer.figures ?? [];
  const dim = to && unitRow(to).dim;
  const fitting = figures.filter(
    (each) => each.unit !== "" && isUnit(each.unit) && unitRow(each.unit).dim === dim && each.unit !== to,
  );
  // "thats grams, whats it in oz", of a plain number
  const [plainNumber] = figures;
  if (from && to && plainNumber?.unit === "" && plainNumber.value !== undefined)
    return answerConvert({ value: plainNumber.value, unit: from, to }, world);
  // "same but in oz", of a ring and a center: each of them
  const all = fitting.length > 1 && weighing.has(world.last?.tool ?? "") ? fitting : undefined;
  // of several the first, where the answer began with it
  const figure = fitting.length === 1 || fitting[0] === figures[0] ? fitting[0] : undefined;
  const meant = all ?? (figure ? [figure] : []);
  const [first] = meant;
  if (!to || !first) return asking(`How much is it that you want in ${to ?? "another unit"}?`, "value");
  const turned = meant.map((each) => turnedInto(to, each));
  return {
    status: "answered",
    headline: turned
      .map(({ low, high, value = 0 }, at) => {
        const [least, most] = [low ?? value, high ?? value];
        return `${least === most ? shown(least, to) : `${shown(least, "", to)} to ${shown(most, to)}`} ${meant[at]?.name}`;
      })
      .join(", "),
    figures: all ? turned.map((each, at) => ({ ...each, name: meant[at]?.name ?? each.name })) : turned,
    rule: unitRule(first.unit, to),
    working: [meant.map((each, at) => worked(each, turned[at] ?? each)).join("; ")],
  };
}

const turnedInto = (to: string, figure: Figure): Figure =>
  figureOf(
    to,
    (value) =>
      unitRow(to).dim === "temperature"
        ? to === "°C"
          ? celsius(value, "°F")
          : (value * 9) / 5 + 32
        : (value * unitRow(figure.unit).per) / unitRow(to).per,
    figure,
  );

/** "ring: 237 g = 8.4 oz". */
function worked(was: Figure, is: Figure): string {
  const ends = (each: Figure) => [each.low, each.value, each.high].filter((end) => end !== undefined);
  return `${was.name}: ${ends(was)
    .map((end, at) => `${shown(end, was.unit)} = ${shown(ends(is)[at] ?? 0, is.unit)}`)
    .join("; ")}`;
}

function isUnit(unit: string): boolean {
  try {
    return Boolean(unitRow(unit));
  } catch {
    return false;
  }
}
