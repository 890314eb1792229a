/**
 * The latest moment at which something can start that needs the baker awake. All in seconds; -Infinity for
 * never.
 */

import type { Waking } from "./types.ts";

export const DAY = 86_400;

/** One waking window a day: it opens at `from` seconds of the day and lasts `length`. */
export interface Window {
  readonly from: number;
  readonly length: number;
}

/** The window of a setting; hours that end where they begin never close. */
export function windowOf({ from, to }: Waking): Window {
  const length = (to - from) * 60;
  return { from: from * 60, length: length > 0 ? length : length + DAY };
}

/** When the last window that opens at `time` or before it opened. */
function opening(window: Window, time: number): number {
  return Math.floor((time - window.from) / DAY) * DAY + window.from;
}

function latestAwake(window: Window, time: number): number {
  return Math.min(time, opening(window, time) + window.length);
}

/** The latest start of work that ends by `end` and lies wholly inside one waking window. */
export function latestHandsStart(window: Window, end: number, length: number): number {
  if (window.length >= DAY) return end - length;
  if (length > window.length) return -Infinity;
  const opened = opening(window, end);
  const start = Math.min(end, opened + window.length) - length;
  // Too little of this window is left: the work ends where the window of the day before closes.
  return start >= opened ? start : opened - DAY + window.length - length;
}

/** The latest start of a bake that ends by `end` with the baker awake at both of its ends. */
export function latestBakeStart(window: Window, end: number, length: number): number {
  // Each end in turn is moved back to the nearest waking moment. The windows repeat daily, so what has not
  // been found within two days does not exist.
  for (let out = latestAwake(window, end); out > end - 2 * DAY; ) {
    const into = latestAwake(window, out - length);
    if (into === out - length) return into;
    out = latestAwake(window, into + length);
  }
  return -Infinity;
}
