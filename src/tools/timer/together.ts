/** Orders for several timers at once: "stop both", "add 5 to all". */
import type { Outcome } from "../contract/index.ts";
import { type Live, meant } from "./find.ts";
import { which } from "./show.ts";
import type { TimerInputs } from "./timer.ts";

/** All that run, or both; of more than two it asks which two are meant. */
export function together(inputs: TimerInputs, live: readonly Live[], now_ms: number): Live[] | Outcome {
  const running = live.filter((each) => !each.isRung);
  if (inputs.all) return running.length > 0 ? running : [...live];
  if (inputs.name) {
    const found = inputs.name.split(/ and |, ?/).map((name) => meant(name, live, inputs.recent));
    const sure = found.flatMap((each) => (each.length === 1 ? each : []));
    return sure.length === found.length ? [...new Set(sure)] : which(live, now_ms, "Which two timers?");
  }
  if (running.length === 2) return running;
  if (live.length <= 2) return [...live];
  return which(live, now_ms, "Which two timers?");
}

/** The same done to each, told in one answer; what can't be done to one of them is done to none. */
export function inTurn(timers: readonly Live[], work: (timer: Live) => Outcome): Outcome {
  const outcomes = timers.map(work);
  const [first] = outcomes;
  const stuck = outcomes.find((each) => each.status !== "answered");
  if (stuck || !first || outcomes.length === 1) return stuck ?? first ?? none;
  const assumed = [...new Set(outcomes.flatMap((each) => each.assumed ?? []))];
  return {
    status: "answered",
    headline: outcomes.map((each) => each.headline).join("; "),
    figures: outcomes.flatMap((each) => each.figures ?? []),
    items: outcomes.flatMap((each) => each.items ?? []),
    effects: outcomes.flatMap((each) => each.effects ?? []),
    ...(assumed.length > 0 ? { assumed } : {}),
    change: "the new ends of the timers",
  };
}

const none: Outcome = { status: "answered", headline: "No timers are running.", items: [] };
