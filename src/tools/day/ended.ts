/** A plan that is over, or that is dropped. */
import type { Outcome, Plan, World } from "../contract/index.ts";
import { friendly } from "../lib/days.ts";
import { counted } from "../lib/show.ts";
import type { DayInputs } from "./day.ts";
import { msOf, timerOf } from "./kept.ts";

export function over(kept: Plan, { want }: DayInputs, world: World): Outcome {
  const what = `${counted(kept.macarons, "macaron")} ${kept.macarons === 1 ? "was" : "were"} due ${friendly(msOf(kept.ready), world.now_ms)}`;
  return {
    status: want === "next" ? "answered" : "impossible",
    headline: `That plan is over: ${what}. ${want === "next" ? "Nothing more is planned." : "Say how many you need next, and when."}`,
    ...(want === "next" ? { steps: [] } : {}),
  };
}

/** The plan goes, and the timers that were set for its steps with it. */
export function dropped(kept: Plan, world: World): Outcome {
  const timers = kept.steps.flatMap((step) => timerOf(step, world) ?? []);
  return {
    status: "answered",
    headline: `Dropped: the plan for ${counted(kept.macarons, "macaron")}, ${friendly(msOf(kept.ready), world.now_ms)}${timers.length ? `, and ${counted(timers.length, "timer")} with it` : ""}`,
    effects: [
      { do: "remove", list: "plans", id: kept.id },
      ...timers.map(({ id }) => ({ do: "remove", list: "timers", id }) as const),
    ],
    change: "dropping the plan",
  };
}
