/** Answers a dose: what has none is turned down, what isn't clear is asked, the rest is worked out. */
import { notFoodRules } from "../../../data/rules/not-food.ts";
import type { Outcome, World } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import type { DoseInputs } from "./dose.ts";
import { type Dose, find } from "./in-force.ts";
import { noDose } from "./no-dose.ts";
import { missingIn, unclearIn } from "./open-question.ts";
import { backward, check, forward, mend } from "./sums.ts";
import { doseTable } from "./table-asked.ts";

/**
 * @throws never: what can't be worked out comes back as `asking`, `impossible` or `declined`.
 */
export function answerDose(said: DoseInputs, world: World): Outcome {
  if (said.list) return doseTable(said.list);
  const inputs = shareAsWeight(said);
  const refused = noDose(inputs);
  if (refused) return refused;
  const found = find(inputs, world);
  // the bowl was told all the same: "fine, espresso in the ganache then"
  if ("status" in found)
    return found.status === "declined" && inputs.base_g !== undefined && inputs.base !== undefined
      ? { ...found, leaves: { mass: { grams: inputs.base_g, thing: inputs.base } } }
      : found;
  const unclear = unclearIn(inputs, found);
  if (unclear) return unclear;
  const dose = inputs.want === "mend" || inputs.want === "check" ? found : atEnd(found, inputs.end);
  // "is 4 % too much for ganache": of any weight
  if (said.want === "check" && said.percent !== undefined && said.base_g === undefined)
    return ofAnyWeight(check({ ...inputs, base_g: 100, flavor_g: said.percent }, dose, world), dose);
  return missingIn(inputs, dose) ?? withRule(sumOf(inputs, dose, world), inputs, dose);
}

/** The sum that is asked for, by what is known and what is wanted. */
function sumOf(inputs: DoseInputs, dose: Dose, world: World): Outcome {
  const { base_g, flavor_g, percent, want } = inputs;
  if (base_g === undefined) return backward(inputs, dose, world);
  if (want === "mend" && (flavor_g !== undefined || percent === undefined)) return mend(inputs, dose, world);
  return flavor_g !== undefined && want !== "flavor"
    ? check(inputs, dose, world)
    : forward(inputs, dose, world);
}

/** The sum with its rule, what was assumed and what to watch for. */
function withRule(outcome: Outcome, inputs: DoseInputs, dose: Dose): Outcome {
  const { by_volume, share, whole_g, base_g, essential } = inputs;
  const isAnswer = outcome.status === "answered";
  const assumed = [
    ...dose.assumed,
    ...(by_volume ? ["a liquid's ml counted as grams: an estimate"] : []),
    ...(share !== undefined && whole_g !== undefined && base_g !== undefined
      ? [`${plain(share)} % of the ${plain(whole_g)} g ${dose.base}: ${plain(base_g)} g`]
      : []),
  ];
  const cautions = [
    ...(outcome.cautions ?? []),
    ...dose.cautions,
    ...(essential ? [notFoodRules.essential.text] : []),
  ];
  return {
    ...outcome,
    ...(isAnswer && !outcome.rule ? { rule: dose.rule } : {}),
    ...(assumed.length ? { assumed } : {}),
    ...(isAnswer ? { cautions } : {}),
    ...(dose.items.length ? { items: dose.items } : {}),
    leaves: {
      ...outcome.leaves,
      filling: dose.base,
      // "and how much lemon": of its own share
      ...(inputs.shared ? { parts: inputs.shared } : {}),
    },
  };
}

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
  return { ...dose, low: one, high: one, whole: [dose.low, dose.high] };
}
