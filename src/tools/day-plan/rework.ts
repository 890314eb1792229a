import { planDay } from "./plan.ts";
import type { DayImpossible, DayOrder, DayPlan, DayStep, DoneStep } from "./types.ts";

/** What has come between a plan and the bench. */
export interface DayChange {
  /** How far the bench is behind the plan, whole seconds; below zero when it is ahead. 0 when left out. */
  readonly late?: number;
  /** Nothing new is begun for this long from now, whole seconds, 0 or more. 0 when left out. */
  readonly away?: number;
  /** The trays go on without any more rest. */
  readonly skipRest?: boolean;
}

/**
 * The rest of a plan made anew: what is done or running is kept, what is ahead goes as late as it can from
 * now. The bench is taken to stand where the plan stood `late` ago, so all that had begun by then is moved by
 * as much. Without a change, the plan comes back as it was; with other orders (a later `due`), it serves
 * those.
 * @param order the order of the plan; its `now` and `done` are not used
 * @param now seconds on the plan's axis
 * @throws RangeError as `planDay` does
 */
export function rework(
  order: DayOrder,
  plan: DayPlan,
  now: number,
  change: DayChange = {},
): DayPlan | DayImpossible {
  const { late = 0, away = 0, skipRest = false } = change;
  const done = plan.steps
    .filter(({ start }) => start + late < now)
    .map(({ id, start, end }) => ({ id, start: start + late, end: end + late }));
  return planDay({
    ...order,
    now: now + away,
    settings: skipRest ? { ...order.settings, noRest: true } : order.settings,
    done: skipRest ? done.map((step) => cutRest(step, now)) : done,
  });
}

function cutRest(step: DoneStep, now: number): DoneStep {
  return step.id.startsWith("rest-") && step.end > now ? { ...step, end: now } : step;
}

/** What the bench is doing and what comes next. */
export interface WhatNext {
  /** The steps going on. */
  readonly running: readonly DayStep[];
  /** The first step ahead that the baker starts, by hand or by putting a tray in; absent after the last. */
  readonly next?: DayStep;
}

/** Where a plan stands at a moment. A step that starts at that very moment is going on. */
export function whatNext(plan: DayPlan, now: number): WhatNext {
  const running = plan.steps.filter(({ start, end }) => start <= now && now < end);
  const next = plan.steps.find(({ start, id, hands }) => start > now && (hands || id.startsWith("bake-")));
  return { running, ...(next && { next }) };
}
