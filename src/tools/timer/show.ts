/** Timers as answers show them: a line, a figure, an item; the list, and how long is left. */
import type { Item, Outcome } from "../contract/index.ts";
import { friendly, lengthText, localIso } from "../lib/days.ts";
import { capital, listed } from "../lib/show.ts";
import { type Live, meant, unnamed } from "./find.ts";
import type { TimerInputs } from "./timer.ts";

/** A list with nothing in it. */
export const none = (): Outcome => ({ status: "answered", headline: "No timers are running.", items: [] });

/** " on tray 1"; nothing where it has no name. */
export const on = (label: string): string => (label === unnamed ? "" : ` on ${label}`);

/** A timer as `items` have it: `due` local, `left` in min. */
export const item = (timer: Pick<Live, "label" | "due_ms" | "left_min" | "isRung">): Item => ({
  label: timer.label,
  due: localIso(timer.due_ms),
  left: timer.left_min,
  state: timer.isRung ? "rung" : "running",
});

/** What is left, in min. */
export const figure = (timer: Live) => ({ name: "left", value: timer.left_min, unit: "min" });

/** "12 min left on tray 1, rings 9:42". */
export function line(timer: Live, now_ms: number, alone = false): string {
  if (timer.isRung) return `${timer.label} rang at ${friendly(timer.due_ms, now_ms)}`;
  return `${lengthText(timer.left_min)} left${alone ? on(timer.label) : ` on ${timer.label}`}, rings ${friendly(timer.due_ms, now_ms)}`;
}

/** All that run, and what rang lately. */
export function list(live: readonly Live[], now_ms: number): Outcome {
  if (live.length === 0) return none();
  const running = live.filter((each) => !each.isRung);
  return {
    status: "answered",
    headline: `${running.length === 1 ? "" : running.length ? `${running.length} running: ` : "Nothing is running; "}${live.map((each) => line(each, now_ms, live.length === 1)).join("; ")}`,
    figures: running.map(figure),
    items: live.map(item),
  };
}

/** How long a named one has, or "it"; all of them where none is named. */
export function left(inputs: TimerInputs, live: readonly Live[], now_ms: number): Outcome {
  const named = inputs.name
    ? meant(inputs.name, live, inputs.recent)
    : inputs.recent !== undefined
      ? live.filter((each) => each.label === inputs.recent)
      : [];
  if (inputs.name && named.length === 0)
    return {
      status: "answered",
      headline: `No timer is called ${inputs.name}. ${live.map((each) => line(each, now_ms)).join("; ")}`,
      items: live.map(item),
    };
  if (named.length === 0) return list(live, now_ms);
  return {
    status: "answered",
    headline: named.map((each) => line(each, now_ms, live.length === 1)).join("; "),
    figures: named.map(figure),
    items: named.map(item),
    leaves: { timer: named[0]?.label },
  };
}

/** Asks which of those that run. */
export function which(live: readonly Live[], now_ms: number, question: string): Outcome {
  const names = listed(
    live.map((each) => each.label),
    "or",
  );
  return {
    status: "asking",
    // once is enough: the list below has them with their time
    headline: `${question} ${capital(names)}?`,
    question: `${question} ${capital(names)}?`,
    slot: "name",
    items: live.map((each) => ({ ...item(each), line: line(each, now_ms) })),
  };
}
