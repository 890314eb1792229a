/** The plans that are kept in the record: which one is meant, and how an answer is written into it. */
import type { Effect, Plan, World } from "../contract/index.ts";
import { type DayPlan, wallSeconds } from "../day-plan/index.ts";
import { localIso } from "../lib/days.ts";
import type { DayInputs } from "./day.ts";

/** A kept plan stays this long after it is over, for the note of the batch and for "what's next". */
const keptFor_days = 60;

export const wallNow = (world: World): number => wallSeconds(localIso(world.now_ms));

/** The plan that the talk is about, else the one at work, the next to come, or the last that was. */
export function keptPlan(made_ms: number | undefined, world: World): Plan | undefined {
  const spoken = world.plans.findLast((each) => each.made_ms === made_ms);
  if (spoken) return spoken;
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
export function madeFor(inputs: DayInputs): Partial<DayInputs> {
  const { want: _want, late_min: _late, plan: _plan, step: _step, ...order } = inputs;
  return order;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a) === JSON.stringify(b);

/**
 * Writes a plan into the record: into the one that was spoken of, or one for the same hour that isn't begun; else as a
 * new one. Nothing is written where nothing has changed. `made_ms` tells it again.
 */
export function keep(
  plan: DayPlan,
  fields: Pick<Plan, "made_for" | "macarons" | "trays" | "diameter_mm" | "flavors">,
  kept: Plan | undefined,
  world: World,
): { effects: Effect[]; made_ms: number } {
  const now = wallNow(world);
  const patch = { ...fields, start: plan.start, ready: plan.ready, steps: [...plan.steps] };
  const old =
    kept ??
    world.plans.findLast(
      (each) => each.start > now && each.ready === plan.ready,
    );
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
