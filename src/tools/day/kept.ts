/** The plans that are kept in the record: which one is meant, and how an answer is written into it. */
import { tastes } from "../../../data/words/flavors.ts";
import type { Effect, Outcome, Plan, Timer, World } from "../contract/index.ts";
import { type DayOrder, type DayPlan, wallSeconds, wallText } from "../day-plan/index.ts";
import { localIso } from "../lib/days.ts";
import { sizing } from "../lib/sizing.ts";
import type { DayInputs } from "./day.ts";
import { fillingsOf } from "./portions.ts";

/** A kept plan stays this long after it is over, for the note of the batch and for "what's next". */
const keptFor_days = 60;

export const wallNow = (world: World): number => wallSeconds(localIso(world.now_ms));

/** The plan that is at work, else the next to come, else the last that was. */
export function keptPlan(world: World): Plan | undefined {
  const now = wallNow(world);
  const open = world.plans.filter((each) => each.ready > now);
  const nearest = (plan: Plan): number => {
    const { start = plan.ready } = plan.steps.find((each) => each.end > now && each.hands) ?? {};
    return Math.max(start, now);
  };
  const next = [...open].sort((a, b) => nearest(a) - nearest(b) || b.made_ms - a.made_ms)[0];
  return next ?? [...world.plans].sort((a, b) => b.ready - a.ready)[0];
}

/** What was ordered, without what was asked about it now. */
function madeFor(inputs: DayInputs): Partial<DayInputs> {
  const {
    want: _want,
    late_min: _late,
    plan: _plan,
    step: _step,
    as_kept: _kept,
    paper: _paper,
    on: _on,
    by_record: _record,
    gone: _gone,
    start: _start,
    start_as: _as,
    start_min: _min,
    shift_min: _shift,
    unclear_min: _unclear,
    unclear_of: _of,
    idle: _idle,
    at: _at,
    ...order
  } = inputs;
  return Object.fromEntries(Object.entries(order).filter(([, value]) => value !== undefined));
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * Writes a plan into the record: into the one that was spoken of, or one for the same hour that isn't begun; else as a
 * new one. Nothing is written where nothing has changed. `made_ms` tells it again.
 */
function keep(
  plan: DayPlan,
  fields: Pick<Plan, "made_for" | "macarons" | "trays" | "diameter_mm" | "flavors">,
  kept: Plan | undefined,
  world: World,
): { effects: Effect[]; made_ms: number } {
  const now = wallNow(world);
  const patch = { ...fields, start: plan.start, ready: plan.ready, steps: [...plan.steps] };
  const old = kept ?? world.plans.findLast((each) => each.start > now && each.ready === plan.ready);
  if (old && Object.entries(patch).every(([key, value]) => same(old[key as keyof Plan], value)))
    return { effects: [], made_ms: old.made_ms };
  if (old) return { effects: [{ do: "change", list: "plans", id: old.id, patch }], made_ms: old.made_ms };
  const stale = world.plans.filter((each) => each.ready < now - keptFor_days * 86_400);
  return {
    effects: [
      ...stale.map(({ id }): Effect => ({ do: "remove", list: "plans", id })),
      { do: "add", list: "plans", entry: { made_ms: world.now_ms, ...patch } },
    ],
    made_ms: world.now_ms,
  };
}

/** What is told of the bake itself and moves the plan, in the words that undo has for it. */
const changes: Readonly<Record<string, string>> = { late: "the delay", done: "what was said to be done" };
export const changesIt = ({ want, no_rest }: DayInputs, kept: Plan): string | undefined =>
  changes[want ?? ""] ?? (no_rest && !kept.made_for.no_rest ? "skipping the rest" : undefined);

/** Ms since the epoch of a moment on the solver's axis. */
export const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();

/** The timer that was set for a step and still runs. */
export const timerOf = (
  step: Pick<Plan["steps"][number], "name" | "start">,
  world: World,
): Timer | undefined =>
  world.timers.find(
    (each) => each.state === "running" && each.label === step.name && each.due_ms === msOf(step.start),
  );

/**
 * Timers that were set for the plan's steps ring at their new times. One for a step that has begun keeps its time, but
 * for one that was done ahead of it: that is stopped.
 */
function movedTimers(kept: Plan, plan: DayPlan, world: World): Effect[] {
  return kept.steps.flatMap((old): Effect[] => {
    const now = plan.steps.find((step) => step.id === old.id);
    const timer = timerOf(old, world);
    if (!now || !timer || now.start === old.start) return [];
    const isBegun = msOf(now.start) <= world.now_ms;
    if (isBegun && timer.due_ms <= world.now_ms) return [];
    const patch = isBegun ? { state: "stopped" } : { due_ms: msOf(now.start) };
    return [{ do: "change", list: "timers", id: timer.id, patch }];
  });
}

/** The plan written into the record, and left on the table to go on from. Only what moves a kept one can be undone. */
export function written(
  inputs: DayInputs,
  plan: DayPlan,
  order: DayOrder,
  kept: Plan | undefined,
  world: World,
): Pick<Outcome, "effects" | "change" | "leaves"> {
  const made_for = madeFor(inputs);
  const size = sizing(inputs.diameter_mm, world.bench);
  const { effects, made_ms } = keep(
    plan,
    {
      made_for,
      macarons: order.macarons,
      trays: order.trays ?? 1,
      diameter_mm: size.diameter_mm,
      flavors: flavorsOf(inputs),
    },
    kept,
    world,
  );
  const change = kept && changesIt(inputs, kept);
  const all = [...effects, ...(effects.length && kept ? movedTimers(kept, plan, world) : [])];
  return {
    ...(all.length ? { effects: all, ...(change ? { change } : {}) } : {}),
    leaves: { macarons: order.macarons, order: { ...made_for, plan: made_ms } },
  };
}

/** The tastes in a recipe's name: "apricot ganache". */
const tastesNamed = (name = ""): string[] =>
  tastes.map((row) => row.taste).filter((taste) => ` ${name.toLowerCase()} `.includes(` ${taste} `));

const flavorsOf = (inputs: DayInputs): string[] => [
  ...new Set([
    ...fillingsOf(inputs).flatMap((each) => each.of || (each.flavor?.taste ?? tastesNamed(each.formula))),
    ...(inputs.unplaced ?? []),
  ]),
];
