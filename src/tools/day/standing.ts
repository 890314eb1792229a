/** The plan that was made before and stands: a bake under way goes on from it, however late it has become. */
import type { Plan, World } from "../contract/index.ts";
import type { DayPlan, DayStep } from "../day-plan/index.ts";
import { localDay } from "../lib/days.ts";
import { ahead, type Moment, type NoMoment, type Said } from "../lib/when.ts";
import type { DayInputs } from "./day.ts";
import { msOf } from "./kept.ts";

/** A plan as it was kept, with the inputs it was made for. */
export interface Standing extends DayPlan {
  made_for: Partial<DayInputs>;
  trays: number;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

/** The plan that stands, unless another number, size or filling is wanted now: then it is made anew. */
export function standingPlan(inputs: DayInputs, plan: Plan | undefined): Standing | undefined {
  if (!plan) return undefined;
  const { start, ready, steps, trays } = plan;
  const made_for: Partial<DayInputs> = plan.made_for;
  const keys = ["macarons", "diameter_mm", "fillings", "flavor", "lengths", "wake_min", "sleep_min"] as const;
  if (!keys.every((key) => same(made_for[key], inputs[key]))) return undefined;
  return { fits: true, start, ready, trays, steps: steps as DayStep[], made_for };
}

/**
 * When they have to be ready. "Tomorrow" was said when the plan was made and isn't counted again from today; a new
 * hour alone belongs to the day that was settled.
 */
export function dueOf(told: Said, standing: Standing | undefined, world: World): Moment | NoMoment {
  const { wake_min } = world.bench;
  const options = wake_min === undefined ? {} : { wake_min };
  if (!standing) return ahead(told, world.now_ms, options);
  const before = standing.made_for.due as Said | undefined;
  // "saturday", which the plan had to take for the one in a week
  const said: Said =
    before?.which !== undefined && told.which === undefined && told.weekday === before.weekday
      ? { ...told, which: before.which }
      : told;
  const at_ms = msOf(standing.ready);
  const day = localDay(at_ms);
  if (same(withoutText(said), withoutText(before))) return { ok: true, at_ms, day, timed: true, assumed: [] };
  const keys = ["days", "weekday", "which", "day", "month", "year"] as const;
  const isHourAlone = keys.every((key) => said[key] === undefined);
  if (!isHourAlone && !keys.every((key) => same(said[key], before?.[key])))
    return ahead(said, world.now_ms, options);
  const { minute, half, part } = said;
  const hour: Said = {
    ...(minute !== undefined ? { minute } : {}),
    ...(half ? { half } : {}),
    ...(part ? { part } : {}),
  };
  return ahead(hour, world.now_ms, { ...options, day });
}

function withoutText(said: Said | undefined): Record<string, unknown> {
  const { text: _text, ...rest } = (said ?? {}) as Record<string, unknown>;
  return Object.fromEntries(Object.entries(rest).sort(([a], [b]) => (a < b ? -1 : 1)));
}
