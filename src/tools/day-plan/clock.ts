/**
 * Wall-clock text to and from the seconds that plans are made in. No time zone and no system clock come into
 * it.
 */

const wallClock = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}(:\d{2})?$/;

/**
 * Seconds since 1970-01-01T00:00 on the wall clock.
 * @param text `2026-03-15T15:00` or `2026-03-15T15:00:20`
 * @throws RangeError when the text is not such a time
 */
export function wallSeconds(text: string): number {
  const ms = wallClock.test(text) ? Date.parse(`${text}Z`) : Number.NaN;
  if (Number.isNaN(ms)) throw new RangeError(`not a local date and time: ${text}`);
  return ms / 1000;
}

/** The other way: `2026-03-14T11:37:00`. */
export function wallText(seconds: number): string {
  return new Date(seconds * 1000).toISOString().slice(0, 19);
}
