/** The screen that is read from across the kitchen: the soonest timers and nothing else. Pure. */
import type { Timer } from "../../tools/contract/record.ts";
import { digitLines, largest } from "./digits.ts";
import { countdown } from "./moments.ts";
import type { Signs } from "./signs.ts";
import { printable, shortened } from "./text.ts";

/** More than this are too many for one look. */
const most = 3;
/** What a timer takes beside its digits: its name above, its bar below, a blank line before the next. */
const beside = 3;
/**
 * Digits of five lines are about 20 mm high on the screens that stand in a kitchen (4 mm a line): at three metres that
 * is 20 minutes of arc, which reads with ease (from memory). None is smaller.
 */
const least = 5;

export interface BigInput {
  /** Running ones, and those that came due while this screen was on. */
  timers: readonly Timer[];
  now_ms: number;
  columns: number;
  rows: number;
  signs: Signs;
}

/**
 * The lines of the screen, at most `rows` of them and each shorter than `columns`. The soonest timer has all the height
 * that the next ones leave; those are left out rather than that it is made small where it could be large.
 */
export function bigLines({ timers, now_ms, columns, rows, signs }: BigInput): string[] {
  const wide = columns - 1;
  const soonest = [...timers].sort((a, b) => a.due_ms - b.due_ms || a.id - b.id);
  const texts = soonest.slice(0, most).map((timer) => largeTime(timer.due_ms - now_ms));
  const room = rows - 1;
  const first = (count: number) =>
    largest(texts.slice(0, 1), wide, room - (count - 1) * (least + beside) - beside + 1);
  const fits = (count: number) =>
    count === 1 || (room + 1 >= count * (least + beside) && first(count).down >= Math.min(2, first(1).down));
  const count = [3, 2, 1].find((each) => each <= texts.length && fits(each)) ?? 1;
  const lines = soonest.slice(0, count).flatMap((timer, at) => {
    const text = texts[at] ?? "";
    const size = at === 0 ? first(count) : largest([text], wide, least);
    const name = printable(timer.label) + (timer.due_ms <= now_ms ? " is done" : "");
    return [
      ...(at > 0 ? [""] : []),
      shortened(name, wide, signs.gap),
      ...digitLines(text, size, signs.block),
      wideBar(timer, now_ms, wide, signs),
    ];
  });
  const more = soonest.length - count;
  const back = "any key goes back";
  return [...lines.slice(0, room), shortened(more > 0 ? `and ${more} more; ${back}` : back, wide, signs.gap)];
}

/** "4:05", or "1h05" from an hour on, rounded up: the seconds of hours can't be read from afar. */
export function largeTime(ms: number): string {
  if (ms <= 3_600_000) return countdown(ms).replace(/^1:00:00$/, "60:00");
  const minutes = Math.ceil(ms / 60_000);
  return `${Math.floor(minutes / 60)}h${String(minutes % 60).padStart(2, "0")}`;
}

function wideBar({ set_ms, due_ms }: Timer, now_ms: number, cells: number, signs: Signs): string {
  const whole = due_ms - set_ms;
  const passed = whole > 0 ? Math.min(1, Math.max(0, (now_ms - set_ms) / whole)) : 1;
  const full = Math.floor(passed * cells);
  return signs.full.repeat(full) + signs.empty.repeat(cells - full);
}
