/** A batch sheet for the wall: weights to tick off, the day's steps, timers, room for notes. */
import type { Outcome, Paper, Rule, World } from "../contract/index.ts";
import { type DayOrder, type DayPlan, planDay } from "../day-plan/index.ts";
import { friendly, localDay } from "../lib/days.ts";
import { paperFor } from "../lib/paper-size.ts";
import { printablePaper } from "../lib/printable.ts";
import { capital, counted } from "../lib/show.ts";
import type { DayInputs } from "./day.ts";
import { msOf } from "./kept.ts";
import { planRule } from "./making.ts";
import { steps, timers, weights } from "./sheet-blocks.ts";
import { type Sized, sizedOrder } from "./sizes.ts";

const basisOf = ({ text, basis }: Rule) => `${text} (${basis})`;

interface Whole {
  inputs: DayInputs;
  order: DayOrder;
  plan: DayPlan;
  sized: Sized;
  /** "for Sun 15 Mar 15:00", or nothing where no hour was said. */
  due?: string;
  assumed: readonly string[];
  cautions: readonly string[];
}

function sheetOf({ inputs, order, plan, sized, due, assumed, cautions }: Whole, world: World): Outcome {
  const { size, assumed: onPaper } = paperFor(inputs.paper, world.bench);
  const what = `${counted(order.macarons, "macaron")}${due ? `, ready ${due}` : ""}`;
  const lengths = planRule(order, world);
  // begun at any hour, it knows of no night
  const rule = due ? lengths : { ...lengths, text: lengths.text.replace(/, none between .*$/, "") };
  const all = [
    ...assumed,
    ...sized.assumed.filter((each) => each !== "flavor and color not on the list to buy"),
  ];
  const whole: Paper = {
    title: `Batch sheet: ${what}`,
    size,
    made_ms: world.now_ms,
    blocks: [
      { is: "title", text: capital(what) },
      ...weights(sized, world),
      ...steps(plan, due !== undefined),
      ...timers(order, world),
      { is: "blank", caption: "Notes", lines: 3 },
      { is: "small", text: `Weights: ${sized.rule}. Lengths: ${basisOf(rule)}.` },
      ...(all.length ? [{ is: "small" as const, text: `Assumed: ${all.join("; ")}.` }] : []),
      { is: "small", text: cautions.join(" ") },
    ],
  };
  const { paper, cautions: missing } = printablePaper(whole);
  return {
    status: "answered",
    headline: `A batch sheet for ${what}, as a PDF`,
    figures: sized.figures,
    items: sized.items,
    rule: { text: `${rule.text}; ${sized.rule}`, basis: sized.own ? "your bench" : rule.basis },
    assumed: [...all, ...onPaper],
    cautions: [...missing, ...cautions],
    effects: [
      { do: "write file", name: `batch-${localDay(due ? msOf(plan.start) : world.now_ms)}.pdf`, paper },
    ],
  };
}

/** A plan's answer as a sheet; what the plan keeps in the record stays with it. */
export function onSheet(
  base: Outcome,
  inputs: DayInputs,
  order: DayOrder,
  plan: DayPlan,
  world: World,
): Outcome {
  const sized = sizedOrder(inputs, order.macarons, order.trays ?? 1, world);
  if ("status" in sized) return sized;
  const { effects = [], change, leaves } = base;
  const cautions = [...new Set([...(base.cautions ?? []), ...sized.cautions])];
  const due = friendly(msOf(plan.ready), Number.NEGATIVE_INFINITY);
  // whose plan it is, where the sentence names none
  const assumed = [
    ...(inputs.as_kept ? [`your kept plan for ${due}; say a number for another order`] : []),
    ...(base.assumed ?? []),
  ];
  const sheet = sheetOf({ inputs, order, plan, sized, due, assumed, cautions }, world);
  return {
    ...sheet,
    effects: [...effects, ...(sheet.effects ?? [])],
    ...(change ? { change } : {}),
    ...(leaves ? { leaves } : {}),
  };
}

/** No hour was said: the steps count from whenever it is begun, at any hour of the day. */
export function undatedSheet(inputs: DayInputs, order: DayOrder, world: World): Outcome {
  const sized = sizedOrder(inputs, order.macarons, order.trays ?? 1, world);
  if ("status" in sized) return sized;
  const settings = { ...order.settings, awake: { from: 0, to: 1440 } };
  const plan = planDay({ ...order, settings });
  if (!plan.fits)
    return {
      status: "impossible",
      headline: "That many can't be planned without an hour; say when they are due.",
    };
  const assumed = [
    ...(inputs.fillings ? [] : ["one ganache and one buttercream"]),
    ...(inputs.diameter_mm === undefined && world.bench.diameter_mm === undefined ? ["38 mm shells"] : []),
    ...(world.bench.spare_percent === undefined ? ["10 % spare shells"] : []),
    "no hour was said, so the steps count from the start",
  ];
  const cautions = [
    ...sized.cautions,
    "Keep them at 5 °C (41 °F) or below until they are boxed; your local food authority has the last word.",
  ];
  const outcome = sheetOf({ inputs, order, plan, sized, assumed, cautions }, world);
  return { ...outcome, leaves: { macarons: order.macarons } };
}
