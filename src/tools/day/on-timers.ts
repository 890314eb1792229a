/** A plan's steps as timers, each set once. */
import type { Effect, Outcome, World } from "../contract/index.ts";
import { type DayPlan, wallText } from "../day-plan/index.ts";
import { friendly } from "../lib/days.ts";
import { counted, plain } from "../lib/show.ts";
import { msOf, timerOf } from "./kept.ts";

/** A timer at the start of each step that wants hands or the oven. */
export function onTimers(base: Outcome, plan: DayPlan, world: World): Outcome {
  const calls = plan.steps.filter(
    (step) => (step.hands || step.id.startsWith("bake-")) && msOf(step.start) > world.now_ms,
  );
  if (calls.length === 0)
    return {
      status: "impossible",
      headline: "Every step of that plan has begun; there is nothing left to ring for.",
    };
  const fresh = calls.filter((step) => !timerOf(step, world));
  const first = friendly(msOf(calls[0]?.start ?? 0), world.now_ms);
  const already = calls.length - fresh.length;
  return {
    ...base,
    headline: fresh.length
      ? `${counted(fresh.length, "timer")} set${already ? `, ${plain(already)} ran already` : ""}; the first rings ${first}`
      : `All ${plain(calls.length)} timers run already; the first rings ${first}`,
    items: calls.map((step) => ({
      label: step.name,
      due: wallText(step.start),
      left: (msOf(step.start) - world.now_ms) / 60_000,
      state: "running",
    })),
    effects: [
      ...(base.effects ?? []),
      ...fresh.map(
        (step): Effect => ({
          do: "add",
          list: "timers",
          entry: { label: step.name, set_ms: world.now_ms, due_ms: msOf(step.start), state: "running" },
        }),
      ),
    ],
    ...(fresh.length ? { change: `${counted(fresh.length, "timer")} for the plan` } : {}),
  };
}
