/** The plan that was made before and stands: a bake under way goes on from it, however late it has become. */
import type { World } from "../contract/index.ts";
import { type DayPlan, wallText } from "../day-plan/index.ts";
import { localDay } from "../lib/days.ts";
import { ahead, type Moment, type NoMoment, type Said } from "../lib/when.ts";
import type { DayInputs } from "./day.ts";

/** A plan as it lies on the table, with the inputs it was made for. */
export interface Standing extends DayPlan {
  made_for: Partial<DayInputs>;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

/** The plan that stands, unless another number, size or filling is wanted now: then it is made anew. */
export function standingPlan(inputs: DayInputs): Standing | undefined {
  const plan = inputs.plan as Standing | undefined;
  const keys = ["macarons", "diameter_mm", "fillings"] as const;
  return plan && keys.every((key) => same(plan.made_for[key], inputs[key])) ? plan : undefined;
}

const msOf = (seconds: number) => new Date(wallText(seconds)).getTime();

/**
 * When they have to be ready. "Tomorrow" was said when the plan was made and isn't counted again from today; a new
 * hour alone belongs to the day that was settled.
 */
export function dueOf(said: Said, standing: Standing | undefined, world: World): Moment | NoMoment {
  const { wake_min } = world.bench;
  const options = wake_min === undefined ? {} : { wake_min };
  if (!standing) return ahead(said, world.now_ms, options);
  const before = standing.made_for.due as Said | undefined;
  const at_ms = msOf(standing.ready);
  const day = localDay(at_ms);
  if (same(withoutText(said), withoutText(before))) return { ok: true, at_ms, day, timed: true, assumed: [] };
  const keys = ["days", "weekday", "which", "day", "month", "year"] as const;
  if (!keys.every((key) => same(said[key], before?.[key]))) return ahead(said, world.now_ms, options);
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
