/** What becomes of an order or of the plan that is meant: made, gone on with, moved, over, dropped. */
import { matures } from "../../../data/rules/step-times.ts";
import type { Outcome, Plan, World } from "../contract/index.ts";
import type { DayOrder, DayPlan } from "../day-plan/index.ts";
import { asking } from "../lib/asking.ts";
import { localDay, shortDay, weekdayOf } from "../lib/days.ts";
import { type Lesson, learned, lessonText, oddLines, taughtBench, taughtTo } from "../lib/learned.ts";
import { sizing } from "../lib/sizing.ts";
import type { Said } from "../lib/when.ts";
import { askedAbout } from "./at-moment.ts";
import type { DayInputs } from "./day.ts";
import { dropped, over } from "./ended.ts";
import { msOf, wallNow } from "./kept.ts";
import { orderOf, planNow } from "./making.ts";
import { begunAt, dueAt, started, whichWay } from "./moved.ts";
import { hasMoved } from "./moved-said.ts";
import { shareDone } from "./part-done.ts";
import { dayOf, isAbout, planMeant } from "./plan-meant.ts";
import { overWith, stepMeant } from "./progress.ts";
import { withRecipes } from "./recipes.ts";
import { undatedSheet } from "./sheet.ts";
import { cannot, shown } from "./shown.ts";
import { dueOf, type Standing, standingPlan } from "./standing.ts";
import { whichOrder } from "./two-orders.ts";

/** More trays than this the solver doesn't take. */
const mostTrays = 2000;

/**
 * Lengths and spares that the baker's batches teach stand where her bench sets none.
 * @throws never: what is missing, past or can't fit comes back as an outcome that says so.
 */
export function answerDay(order: DayInputs, given: World): Outcome {
  const said = withRecipes(order, given);
  const { diameter_mm, no_rest, wake_min, sleep_min, lengths } = {
    ...planMeant(said, given)?.made_for,
    ...said,
  } as DayInputs;
  const lessons = learned(given, sizing(diameter_mm, given.bench).diameter_mm);
  const taught = taughtTo(given.bench, lessons, no_rest ? ["bake", "spares"] : ["bake", "rest", "spares"]);
  const bench = {
    ...taughtBench(given.bench, taught),
    ...(wake_min !== undefined ? { wake_min } : {}),
    ...(sleep_min !== undefined ? { sleep_min } : {}),
    ...lengths,
  };
  const outcome = planned(said, { ...given, bench });
  return withLessons(outcome, taught, given.now_ms);
}

/** Names the batches that the plan's lengths are from, and those that were left out. */
function withLessons(outcome: Outcome, taught: readonly Lesson[], now_ms: number): Outcome {
  const { rule, cautions = [] } = outcome;
  if (!rule || taught.length === 0) return outcome;
  const odd = oddLines(taught, now_ms);
  return {
    ...outcome,
    rule: { ...rule, text: [rule.text, ...taught.map(lessonText)].join("; ") },
    ...(cautions.length + odd.length ? { cautions: [...cautions, ...odd] } : {}),
  };
}

function planned(asked: DayInputs, world: World): Outcome {
  if (asked.orders && asked.due === undefined) return whichOrder(asked.orders);
  if (asked.no_mature || (asked.lengths?.mature_h ?? matures.low_h) < matures.low_h)
    return {
      status: "impossible",
      headline:
        'Maturing is part of every plan: 24 h at least, boxed airtight in the fridge. What can be left out is the resting of the shells: say "skip the rest".',
    };
  if (asked.unclear_min !== undefined && !hasMoved(asked)) return whichWay(asked);
  const said = withHour(asked, world.now_ms);
  const kept = planMeant(said, world);
  const isLeft =
    said.as_kept ||
    said.macarons === undefined ||
    (said.want === "sheet" && said.due === undefined && kept?.macarons === said.macarons);
  const noRest = said.by_record && kept?.made_for.no_rest ? { no_rest: true } : {};
  const told: DayInputs = kept && isLeft ? goneOn(kept, said) : { ...said, ...noRest };
  const inputs = withShift(told, kept, world);
  if (kept && inputs.want === "drop") return dropped(kept, world);
  const isOld = hasMoved(told) || JSON.stringify(inputs.due) === JSON.stringify(kept?.made_for.due);
  if (kept && isOld && kept.ready <= wallNow(world)) return over(kept, inputs, world);
  if (!kept && inputs.on)
    return {
      status: "impossible",
      headline: `There is no plan with a step on ${shortDay(dayOf(inputs.on as Said, world))}. Say how many macarons you need and when.`,
    };
  if (inputs.macarons === undefined && (isAbout(inputs) || inputs.want === "drop" || inputs.gone))
    return {
      status: "impossible",
      headline: "There is no plan yet. Say how many macarons you need and when.",
    };
  if (inputs.due === undefined && inputs.want === "sheet" && inputs.macarons !== undefined)
    return anyDay(inputs, world);
  if (inputs.due === undefined) return asking("When do they have to be ready?", "due");
  const standing = standingPlan(inputs, kept);
  const due = dueOf(inputs.due as Said, standing, world);
  if (!due.ok) return { status: "impossible", headline: due.why };
  if (inputs.macarons === undefined) return asking("How many macarons?", "macarons");
  if (!due.timed) return asking("At what time do they have to be ready?", "due");
  const order = orderOf(inputs, due.at_ms, standing, world);
  if ((order.trays ?? 0) > mostTrays) return tooMany(order.trays ?? 0);
  const { step } = inputs;
  if (standing && inputs.want === "done" && step && (step.share ?? step.count) !== undefined) {
    const part = shareDone(standing, step, order.macarons);
    return "status" in part ? part : planned({ ...asked, step: part.step }, world);
  }
  const finished = inputs.want === "done" ? stepMeant(standing ?? noPlan, inputs.step) : undefined;
  if (inputs.want === "done" && !finished)
    return { status: "impossible", headline: "There is no such step in the plan." };
  if (standing && inputs.start !== undefined && inputs.start_as === "begun")
    return begunThen(inputs, order, standing, kept, due.at_ms, world);
  if (inputs.start !== undefined || inputs.start_min !== undefined)
    return started(inputs, order, standing, kept, world);
  const plan = planNow(inputs, order, standing);
  if (plan.fits && (inputs.want === "at" || inputs.want === "when" || inputs.want === "pin"))
    return askedAbout(inputs, plan, order, world);
  if (!plan.fits) {
    const later = inAWeek(inputs, due.at_ms, standing, world);
    if (later) return later;
    return cannot(inputs, plan, order, due.at_ms, standing, kept, world);
  }
  const done_ids =
    finished && standing
      ? { done_ids: [...new Set([...(inputs.done_ids ?? []), ...overWith(standing, finished, inputs.step)])] }
      : {};
  return shown({ ...inputs, ...done_ids }, plan, order, due.at_ms, due.assumed, kept, world);
}

/** A bake that was begun at another hour than planned: all of it stands as much later or earlier. */
function begunThen(
  { start, start_min: _min, start_as: _as, ...rest }: DayInputs,
  order: DayOrder,
  standing: Standing,
  kept: Plan | undefined,
  due_ms: number,
  world: World,
): Outcome {
  const begun = begunAt(start, standing, world);
  if (!begun.ok) return { status: "impossible", headline: begun.why };
  const inputs: DayInputs = {
    ...rest,
    want: "late",
    late_min: (begun.at_ms - msOf(standing.start)) / 60_000,
  };
  const plan = planNow(inputs, order, standing);
  return plan.fits
    ? shown(inputs, plan, order, due_ms, [], kept, world)
    : cannot(inputs, plan, order, due_ms, standing, kept, world);
}

/** "An hour later" is counted from the hour that was settled, and is then an hour of its own day. */
function withShift(inputs: DayInputs, kept: Plan | undefined, world: World): DayInputs {
  const { shift_min, ...rest } = inputs;
  if (shift_min === undefined || inputs.due === undefined) return inputs;
  const due = dueOf(inputs.due as Said, standingPlan(inputs, kept), world);
  return due.ok && due.timed ? { ...rest, due: dueAt(due.at_ms + shift_min * 60_000) } : inputs;
}

/** "In three hours" is a moment as soon as the clock is known. */
function withHour({ within_min, ...said }: DayInputs, now_ms: number): DayInputs {
  if (within_min === undefined || said.due !== undefined) return said;
  return { ...said, due: dueAt(now_ms + within_min * 60_000) };
}

/** What was said over what the plan was made for; where nothing of the order was said, the plan's own alone. */
function goneOn(kept: Plan, said: DayInputs): DayInputs {
  if (!said.as_kept) return { ...kept.made_for, ...said };
  const { want, late_min, step, plan, at } = said;
  return { ...kept.made_for, want, late_min, step, plan, ...(at ? { at } : {}) };
}

/** A sheet without an hour is planned for one that is far off. */
function anyDay(inputs: DayInputs, world: World): Outcome {
  const order = orderOf(inputs, world.now_ms + 60 * 86_400_000, undefined, world);
  return (order.trays ?? 0) > mostTrays ? tooMany(order.trays ?? 0) : undatedSheet(inputs, order, world);
}

const tooMany = (trays: number): Outcome => ({
  status: "impossible",
  headline: `${trays} trays are beyond a home kitchen; check the numbers.`,
});

const noPlan: DayPlan = { fits: true, start: 0, ready: 0, steps: [] };

/** "By saturday", said on a Saturday when it can't be done today any more: the one in a week. */
function inAWeek(inputs: DayInputs, due_ms: number, standing: Standing | undefined, world: World) {
  const due = inputs.due as Said;
  const today = localDay(world.now_ms);
  const isToday = due.weekday === weekdayOf(today) && due.which === undefined && localDay(due_ms) === today;
  const sameDay = (standing?.made_for.due as Said | undefined)?.weekday === due.weekday;
  if ((standing && sameDay) || !isToday) return undefined;
  const outcome = planned({ ...inputs, due: { ...inputs.due, which: "next" } }, world);
  return outcome.status === "answered"
    ? { ...outcome, assumed: [...(outcome.assumed ?? []), "that weekday in a week, as today can't be met"] }
    : undefined;
}
