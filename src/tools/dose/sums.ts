/** The four sums of a dose: how much goes in, what it is enough for, whether it is right, and how to mend it. */
import type { Range } from "../../../data/rules/doses.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { percent, plain, weightRange } from "../lib/show.ts";
import type { DoseInputs } from "./dose.ts";
import { asking, type Dose } from "./in-force.ts";
import { doseText, inSpoons, label, scaleCaution } from "./shown.ts";

/** One weight or a range; "the most" is the one end of a range, which stays beside it. */
const figureOf = (name: string, [low, high]: Range, whole: Range | undefined): Figure => {
  if (low !== high) return { name, low, high, unit: "g" };
  return { name, value: low, ...(whole ? { low: whole[0], high: whole[1] } : {}), unit: "g" };
};

/** How much goes in. */
export function forward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const base_g = inputs.base_g ?? 0;
  const part = (p: number) => (inputs.of_finished ? (base_g * p) / (100 - p) : (base_g * p) / 100);
  const [low, high] = [part(dose.low), part(dose.high)];
  const grams = figureOf(dose.name, [low, high], dose.whole && [part(dose.whole[0]), part(dose.whole[1])]);
  const over = inputs.of_finished ? "(100 − p)" : "100";
  const sum = inputs.parts
    ? `${inputs.parts.map((each) => `${each.name} ${plain(each.grams)}`).join(" + ")} = ${plain(base_g)} g; `
    : "";
  const spoons = inputs.spoon && inputs.spoon !== "g" ? inSpoons(inputs, dose, grams) : undefined;
  const scaleNote = scaleCaution(low, world.bench.scale_g, base_g, dose.base);
  return {
    status: "answered",
    headline: `${spoons?.headline ?? `${doseText(low, high, world.bench.scale_g)} ${label(inputs, dose)}`}${inputs.asks_percent ? `: ${percent(dose.low, dose.high)}` : ""}`,
    figures: [...(spoons?.figures ?? []), grams, ...shareAsked(inputs, dose)],
    cautions: [...(spoons?.cautions ?? []), ...scaleNote],
    working: [
      `${sum}${dose.name} = base × p / ${over}`,
      ...[...new Set([dose.low, dose.high])].map(
        (p) =>
          `${plain(base_g)} × ${plain(p)} / ${inputs.of_finished ? `(100 − ${plain(p)})` : "100"} = ${plain(part(p), 3)} g`,
      ),
    ],
    // of a part that was colored the whole bowl stays on the table
    leaves: { mass: { grams: inputs.whole_g ?? base_g, thing: dose.base } },
  };
}

/** The range itself, where "what percentage" was asked for. */
const shareAsked = ({ asks_percent }: DoseInputs, { low, high }: Dose): Figure[] => {
  if (!asks_percent) return [];
  return [{ name: "range", ...(low === high ? { value: low } : { low, high }), unit: "%" }];
};

/** How much of the mix the flavor is enough for. */
export function backward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const flavor_g = inputs.flavor_g ?? 0;
  const need = (p: number) => (inputs.of_finished ? (flavor_g * (100 - p)) / p : (flavor_g / p) * 100);
  const [low, high] = [need(dose.high), need(dose.low)];
  const figure = figureOf("base", [low, high], dose.whole && [need(dose.whole[1]), need(dose.whole[0])]);
  return {
    status: "answered",
    headline: `${weightRange(low, high, world.bench.scale_g)} ${dose.base} for ${plain(flavor_g)} g ${label(inputs, dose)}`,
    figures: [figure],
    working: [
      `base = ${dose.name} / p`,
      ...[...new Set([dose.high, dose.low])].map(
        (p) => `${plain(flavor_g)} / ${plain(p)} % = ${plain(need(p), 2)} g`,
      ),
    ],
  };
}

/** As much flavor as mix, and not asked as a check: the sentence was misread rather than the bowl spoilt. */
const unlikely_percent = 80;

/** The share that is in the bowl, held against the range. */
export function check(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g ?? 0, inputs.base_g ?? 1];
  const share = inputs.of_finished ? (flavor_g / (flavor_g + base_g)) * 100 : (flavor_g / base_g) * 100;
  if (share > unlikely_percent && inputs.want !== "check")
    return asking(
      `Is that ${plain(flavor_g)} g ${dose.name} in ${plain(base_g)} g ${dose.base}? Say both with their grams.`,
      "flavor_g",
    );
  const slack = 1e-9;
  const held = (least: number, most: number) =>
    share < least - slack ? "under" : share > most + slack ? "over" : "within";
  const verdict = held(dose.low, dose.high);
  // "go 2.5 % then", and 12 g slipped in: over what she wanted, which says nothing of too much
  const beside =
    dose.beside && verdict !== "within"
      ? ` you asked for, ${held(...dose.beside.range)} the ${percent(...dose.beside.range)} of ${dose.beside.of}`
      : "";
  const [low, high] = [(base_g * dose.low) / 100, (base_g * dose.high) / 100];
  const advice = {
    under: `, ${weightRange(low - flavor_g, high - flavor_g, world.bench.scale_g)} more would bring it in`,
    within: "",
    over: `; add ${weightRange(...toBringDown(flavor_g, base_g, dose, inputs.of_finished), world.bench.scale_g)} plain ${dose.base} to bring it down`,
  }[verdict];
  return {
    status: "answered",
    headline: `${plain(share)} %: ${verdict} the ${percent(dose.low, dose.high)}${beside}${advice}`,
    figures: [
      { name: "share", value: share, unit: "%" },
      { name: dose.name, low, high, unit: "g" },
    ],
    working: [
      `share = ${dose.name} / base × 100`,
      `${plain(flavor_g)} / ${plain(base_g)} × 100 = ${plain(share)} %`,
    ],
    leaves: { mass: { grams: base_g, thing: dose.base } },
  };
}

/** Plain mix to the top of the range, and to its middle. */
function toBringDown(
  flavor_g: number,
  base_g: number,
  { low, high }: Dose,
  of_finished: boolean | undefined,
): [least: number, most: number] {
  const more = (p: number) => (flavor_g / p) * (of_finished ? 100 - p : 100) - base_g;
  return [more(high), more((low + high) / 2)];
}

/** How much plain mix brings it back into the range. */
export function mend(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g, inputs.base_g ?? 1];
  if (flavor_g === undefined) return asking("How many grams of flavor went in?", "flavor_g");
  const share = (flavor_g / base_g) * 100;
  if (share <= dose.high + 1e-9) return check(inputs, dose, world);
  const middle = (dose.low + dose.high) / 2;
  const [low, high] = toBringDown(flavor_g, base_g, dose, false);
  return {
    status: "answered",
    headline: `Add ${weightRange(low, high, world.bench.scale_g)} plain ${dose.base}${inputs.added_g === undefined ? "" : ` on top of the ${plain(inputs.added_g)} g`}`,
    figures: [
      { name: "add base", low, high, unit: "g" },
      { name: "share", value: share, unit: "%" },
    ],
    rule: { ...dose.rule, text: `${dose.rule.text}; down to the top of the range, or to its middle` },
    working: [
      `now ${plain(flavor_g)} / ${plain(base_g)} = ${plain(share)} %, over ${percent(dose.low, dose.high)}`,
      `to ${plain(dose.high)} %: ${plain(flavor_g)} / ${plain(dose.high)} % − ${plain(base_g)} = ${plain(low)} g`,
      `to ${plain(middle)} %: ${plain(flavor_g)} / ${plain(middle)} % − ${plain(base_g)} = ${plain(high)} g`,
    ],
  };
}
