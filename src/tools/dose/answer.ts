import { notFoodRules } from "../../../data/rules/not-food.ts";
import { whitener } from "../../../data/words/not-food.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { capital, percent, plain, weightRange } from "../lib/show.ts";
import type { DoseInputs } from "./dose.ts";
import { asking, type Dose, find } from "./in-force.ts";
import { doseText, inSpoons, label, scaleCaution } from "./shown.ts";

/**
 * @throws never: what can't be worked out comes back as `asking`, `impossible` or `declined`.
 */
export function answerDose(said: DoseInputs, world: World): Outcome {
  const inputs = shareAsWeight(said);
  if (inputs.not_food)
    return {
      status: "declined",
      headline: `No dose: ${inputs.not_food} is not for eating. Leave it out, and throw out what it went into: ${notFoodRules.food.text}. Ask me with a food flavor or color in its place.`,
      cautions: ["If somebody has eaten it, call your local poison center."],
    };
  if (inputs.unweighable)
    return asking(
      `How much does it weigh in grams? ${capital(inputs.unweighable)} can weigh many things.`,
      // a bowl that was weighed stays: what has no weight is what goes into it
      /drop/.test(inputs.unweighable) || inputs.base_g !== undefined ? "flavor_g" : "base_g",
    );
  if (inputs.asks_drops && inputs.base_g === undefined)
    return {
      status: "declined",
      headline:
        "A drop has no weight of its own: bottles and liquids differ, so I give no number of drops. Put the bowl on the scale, set it to zero and drop until it shows the grams.",
    };
  if (inputs.liquid_color)
    return {
      status: "declined",
      headline:
        "There is no rule here for liquid food color, so I give no figure: its water thins batter and buttercream. Gel or powder color has a dose.",
    };
  if (inputs.colorant)
    return whitener.test(inputs.colorant)
      ? {
          status: "declined",
          headline: `There is no rule here for ${inputs.colorant}, so I give no figure: ${notFoodRules.whitener.text}. Elsewhere its label and your local food authority have the last word.`,
        }
      : {
          status: "declined",
          headline: `There is no rule here for ${inputs.colorant}, so I give no figure. Gel or powder color has a dose; for this go by its label, and only if that says edible.`,
        };
  if (
    inputs.unknown &&
    inputs.flavor_g !== undefined &&
    inputs.dose === undefined &&
    inputs.taste === undefined
  )
    return asking(
      `What kind is ${inputs.unknown}: a spirit or liqueur, an extract, flavor drops, a paste or a powder? I don't know the name, and each has its own dose.`,
      "dose",
    );
  if (inputs.unknown && inputs.dose === undefined && inputs.taste === undefined)
    return {
      status: "declined",
      headline: `I don't know ${inputs.unknown}, so I give no figure. Say its form with it, as in "pistachio paste", "lemon extract" or "raspberry powder".`,
    };
  if (
    inputs.dose === undefined &&
    inputs.base === undefined &&
    inputs.base_g === undefined &&
    inputs.flavor_g === undefined
  )
    return asking("How much buttercream or ganache is it for, in grams?", "base_g");
  const found = find(inputs, world);
  // the bowl was told all the same: "fine, espresso in the ganache then"
  if ("status" in found)
    return found.status === "declined" && inputs.base_g !== undefined && inputs.base !== undefined
      ? { ...found, leaves: { mass: { grams: inputs.base_g, thing: inputs.base } } }
      : found;
  if (inputs.which_g !== undefined && inputs.flavor_g === undefined)
    return asking(
      `Is that ${plain(inputs.which_g)} g of ${found.name}, or ${plain(inputs.which_g)} g of ${found.base}?`,
      "which",
    );
  if (inputs.by_volume && inputs.flavor_g !== undefined && inputs.want !== "flavor" && !found.row.liquid)
    return asking(`How many grams of ${found.name} is it? A spoon of it isn't in the table.`, "flavor_g");
  const dose = inputs.want === "mend" || inputs.want === "check" ? found : atEnd(found, inputs.end);
  if (inputs.twice !== undefined)
    return asksOnly(`Twice as much ${inputs.twice} ${dose.base}, or twice the ${dose.name} in it?`);
  if (inputs.percent !== undefined && inputs.want !== "check" && inputs.far_over)
    return asksOnly(
      `Is ${plain(inputs.percent)} % the share of the ${dose.base} that gets it? As a dose it is far over the table: say that part's grams, or the percentage of ${dose.name} once more.`,
    );
  // "is 4 % too much for ganache": of any weight
  if (said.want === "check" && said.percent !== undefined && said.base_g === undefined)
    return ofAnyWeight(check({ ...inputs, base_g: 100, flavor_g: said.percent }, dose, world), dose);
  if (inputs.strength_unclear !== undefined) {
    const [times, word] = strengthWords[inputs.strength_unclear] ?? [];
    return asking(
      `Is the ${dose.name} itself ${times} as strong as usual? Say "it is ${word} strength" and the dose goes by that; for more or less taste ask for a percentage.`,
      "strength",
    );
  }
  const isNamed = (inputs.dose ?? inputs.taste ?? inputs.bare ?? inputs.usual) !== undefined;
  if (inputs.want === "check" && !isNamed && inputs.flavor_g === undefined)
    return asking("How many grams of flavor are in it?", "flavor_g");
  if (inputs.base_g === undefined && inputs.flavor_g === undefined)
    return asking(`How much ${dose.base} is it for, in grams?`, "base_g");
  if (inputs.more_g !== undefined && inputs.flavor_g === undefined)
    return asking(
      `How many grams of ${dose.name} are in it now, with the ${plain(inputs.more_g)} g?`,
      "flavor_g",
    );
  if (inputs.want === "check" && inputs.base_g === undefined && inputs.flavor_g !== undefined)
    return asking(`How many grams of ${dose.base} is it in?`, "base_g");
  const outcome =
    inputs.base_g === undefined
      ? backward(inputs, dose, world)
      : inputs.want === "mend" && (inputs.flavor_g !== undefined || inputs.percent === undefined)
        ? mend(inputs, dose, world)
        : inputs.flavor_g !== undefined && inputs.want !== "flavor"
          ? check(inputs, dose, world)
          : forward(inputs, dose, world);
  const assumed = [
    ...dose.assumed,
    ...(inputs.by_volume ? ["a liquid's ml counted as grams: an estimate"] : []),
    ...(inputs.share !== undefined && inputs.whole_g !== undefined && inputs.base_g !== undefined
      ? [`${plain(inputs.share)} % of the ${plain(inputs.whole_g)} g ${dose.base}: ${plain(inputs.base_g)} g`]
      : []),
  ];
  return {
    ...outcome,
    ...(outcome.rule || outcome.status !== "answered" ? {} : { rule: dose.rule }),
    ...(assumed.length ? { assumed } : {}),
    ...(outcome.status === "answered"
      ? {
          cautions: [
            ...(outcome.cautions ?? []),
            ...dose.cautions,
            ...(inputs.essential ? [notFoodRules.essential.text] : []),
          ],
        }
      : {}),
    ...(dose.items.length ? { items: dose.items } : {}),
    leaves: { ...outcome.leaves, filling: dose.base },
  };
}

/** A question that no single input answers: what was spoken of before stays. */
const asksOnly = (question: string): Outcome => ({ status: "asking", headline: question, question });

/** A verdict on a share alone: no grams were said, and none are given. */
function ofAnyWeight(outcome: Outcome, dose: Dose): Outcome {
  return {
    ...outcome,
    headline: (outcome.headline ?? "").replace(/,.*$/, "").replace(/; add base.*$/, ""),
    figures: (outcome.figures ?? []).filter(({ name }) => name === "share"),
    rule: dose.rule,
    cautions: dose.cautions,
    leaves: {},
  };
}

/** "is 5 % ok?": that share of the bowl, held against the table. */
function shareAsWeight(said: DoseInputs): DoseInputs {
  const { percent, percent_high: _high, ...rest } = said;
  return said.want === "check" && percent !== undefined && said.flavor_g === undefined
    ? { ...rest, ...(said.base_g === undefined ? {} : { flavor_g: (said.base_g * percent) / 100 }) }
    : said;
}

/** "right at the top of that": one figure in place of the range. */
function atEnd(dose: Dose, end: DoseInputs["end"]): Dose {
  if (end === undefined) return dose;
  const one = { low: dose.low, middle: (dose.low + dose.high) / 2, high: dose.high }[end];
  return { ...dose, low: one, high: one };
}

const strengthWords: Readonly<Record<number, readonly [times: string, word: string]>> = {
  0.5: ["half", "half"],
  2: ["twice", "double"],
  3: ["three times", "triple"],
};

function forward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const base_g = inputs.base_g ?? 0;
  const part = (p: number) => (inputs.of_finished ? (base_g * p) / (100 - p) : (base_g * p) / 100);
  const [low, high] = [part(dose.low), part(dose.high)];
  const one = dose.low === dose.high;
  const grams: Figure = one
    ? { name: dose.name, value: low, unit: "g" }
    : { name: dose.name, low, high, unit: "g" };
  const over = inputs.of_finished ? "(100 − p)" : "100";
  const sum = inputs.parts
    ? `${inputs.parts.map((each) => `${each.name} ${plain(each.grams)}`).join(" + ")} = ${plain(base_g)} g; `
    : "";
  const spoons = inputs.spoon && inputs.spoon !== "g" ? inSpoons(inputs, dose, grams) : undefined;
  const scaleNote = scaleCaution(low, world.bench.scale_g, base_g, dose.base);
  return {
    status: "answered",
    headline: spoons?.headline ?? `${doseText(low, high, world.bench.scale_g)} ${label(inputs, dose)}`,
    figures: [...(spoons?.figures ?? []), grams],
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

function backward(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const flavor_g = inputs.flavor_g ?? 0;
  const need = (p: number) => (inputs.of_finished ? (flavor_g * (100 - p)) / p : (flavor_g / p) * 100);
  const [low, high] = [need(dose.high), need(dose.low)];
  const figure: Figure =
    low === high ? { name: "base", value: low, unit: "g" } : { name: "base", low, high, unit: "g" };
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

function check(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g ?? 0, inputs.base_g ?? 1];
  const share = inputs.of_finished ? (flavor_g / (flavor_g + base_g)) * 100 : (flavor_g / base_g) * 100;
  if (share > unlikely_percent && inputs.want !== "check")
    return asking(
      `Is that ${plain(flavor_g)} g ${dose.name} in ${plain(base_g)} g ${dose.base}? Say both with their grams.`,
      "flavor_g",
    );
  const slack = 1e-9;
  const verdict = share < dose.low - slack ? "under" : share > dose.high + slack ? "over" : "within";
  const [low, high] = [(base_g * dose.low) / 100, (base_g * dose.high) / 100];
  const advice = {
    under: `, ${weightRange(low - flavor_g, high - flavor_g, world.bench.scale_g)} more would bring it in`,
    within: "",
    over: `; add base to bring it down, ask how much`,
  }[verdict];
  return {
    status: "answered",
    headline: `${plain(share)} %: ${verdict} the ${percent(dose.low, dose.high)}${advice}`,
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

function mend(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const [flavor_g, base_g] = [inputs.flavor_g, inputs.base_g ?? 1];
  if (flavor_g === undefined) return asking("How many grams of flavor went in?", "flavor_g");
  const share = (flavor_g / base_g) * 100;
  if (share <= dose.high + 1e-9) return check(inputs, dose, world);
  const middle = (dose.low + dose.high) / 2;
  const [low, high] = [(flavor_g / dose.high) * 100 - base_g, (flavor_g / middle) * 100 - base_g];
  return {
    status: "answered",
    headline: `Add ${weightRange(low, high, world.bench.scale_g)} plain ${dose.base}`,
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
