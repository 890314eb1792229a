/** Timers as lines: the running ones under the answers, and what is said when one is due. */
import type { Timer } from "../../tools/contract/record.ts";
import { clockOf, countdown, minutes } from "./moments.ts";
import type { Signs } from "./signs.ts";
import { printable, shortened } from "./text.ts";

const barSize = 10;
/** Cells of a name that are left to it in any window. */
const leastName = 8;
/** From here on a ring is late and says by how much. */
const late_ms = 10_000;

export interface TimerView {
  /** Cells in a line; the last one stays free. */
  columns: number;
  signs: Signs;
  /** How many lines there are for timers. */
  most: number;
  /** For screen readers: the time it is due, which stands still, and no bar. */
  still: boolean;
}

/** The running timers, soonest first, a line each, and how many more there are. */
export function timerLines(
  timers: readonly Timer[],
  now_ms: number,
  { columns, signs, most, still }: TimerView,
): string[] {
  const soonest = [...timers].sort((a, b) => a.due_ms - b.due_ms || a.id - b.id);
  const shown = soonest.slice(0, soonest.length > most ? Math.max(0, most - 1) : most);
  const left = shown.map((timer) =>
    still ? `due ${clockOf(timer.due_ms)}` : countdown(timer.due_ms - now_ms),
  );
  const size = Math.max(0, ...left.map((each) => each.length));
  const lines = shown.map((timer, at) => {
    const time = (left[at] ?? "").padStart(size);
    const line = still ? `${time}  ` : `${time}  ${bar(timer, now_ms, signs)}  `;
    return (
      line + shortened(printable(timer.label), Math.max(leastName, columns - 1 - line.length), signs.gap)
    );
  });
  const more = soonest.length - shown.length;
  return more > 0 && most > 0 ? [...lines, `${" ".repeat(size)}  and ${more} more`] : lines;
}

/** Fills as the time passes. It is full only when the time is up. */
function bar(timer: Timer, now_ms: number, signs: Signs): string {
  const whole = timer.due_ms - timer.set_ms;
  const passed = whole > 0 ? Math.min(1, Math.max(0, (now_ms - timer.set_ms) / whole)) : 1;
  const full = Math.floor(passed * barSize);
  return signs.full.repeat(full) + signs.empty.repeat(barSize - full);
}

/** Running timers whose time is up, in the order in which they came due. */
export function dueTimers(timers: readonly Timer[], now_ms: number): Timer[] {
  return timers
    .filter((timer) => timer.state === "running" && timer.due_ms <= now_ms)
    .sort((a, b) => a.due_ms - b.due_ms);
}

/**
 * "Ring: shells is done", and how late that is.
 * @param opened_ms when the chat was opened: a timer due before that rang unheard
 */
export function ringText(timer: Timer, now_ms: number, opened_ms: number): string {
  const done = `Ring: ${printable(timer.label)} is done`;
  const ago = `came due ${minutes((now_ms - timer.due_ms) / 60_000)} ago`;
  if (timer.due_ms < opened_ms) return `${done}; ${ago}, while the chat was closed`;
  return now_ms - timer.due_ms >= late_ms ? `${done}; ${ago}` : done;
}
