/**
 * Local days and times, for the record and for the eye. A day is its ISO text, "2026-03-14". All of it follows the
 * machine's time zone (TZ), and counts days on the calendar: one of 23 or 25 hours is one day.
 */
import { addDays } from "date-fns/addDays";

const weekdayNames = ["Sunday", "Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday"] as const;
const monthNames =
  "January February March April May June July August September October November December".split(" ");

const two = (value: number) => String(value).padStart(2, "0");

/** "2026-03-14", the local day of a moment. */
export function localDay(ms: number): string {
  const at = new Date(ms);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** ISO 8601, local and without offset: "2026-03-14T09:42:00". Parts of a second are dropped. */
export function localIso(ms: number): string {
  const at = new Date(ms);
  return `${localDay(ms)}T${two(at.getHours())}:${two(at.getMinutes())}:${two(at.getSeconds())}`;
}

/** Year, month (1 to 12) and date of a day. */
export function partsOf(day: string): readonly [year: number, month: number, date: number] {
  const [year = 1970, month = 1, date = 1] = day.split("-").map(Number);
  return [year, month, date];
}

/** A minute of a day, in ms. One that the clock skips becomes the one an hour later; `minute` may run past 1440. */
export function momentOf(day: string, minute: number): number {
  const [year, month, date] = partsOf(day);
  return new Date(year, month - 1, date, 0, minute).getTime();
}

/** The first moment of a day, in ms. */
export const startOf = (day: string): number => momentOf(day, 0);

/** A day by its numbers, or undefined where the calendar has none (30 February). Months may run over the year. */
export function dayOf(year: number, month: number, date: number): string | undefined {
  const at = new Date(year, month - 1, date, 12);
  return Number.isInteger(date) && date >= 1 && at.getDate() === date ? localDay(at.getTime()) : undefined;
}

/** A day so many days on (or back), on the calendar. */
export function plusDays(day: string, days: number): string {
  return localDay(addDays(momentOf(day, 720), days).getTime());
}

const noonUtc = (day: string) => Date.parse(`${day}T12:00:00Z`);

/** Calendar days from one day to another: 1 from today to tomorrow. */
export const daysBetween = (from: string, to: string): number =>
  Math.round((noonUtc(to) - noonUtc(from)) / 86_400_000);

/** 0 for Sunday to 6 for Saturday. */
export const weekdayOf = (day: string): number => new Date(noonUtc(day)).getUTCDay();

/** "Friday" for 5. */
export const dayName = (weekday: number): string => weekdayNames[weekday] ?? "";

/** "March" for 3. */
export const monthName = (month: number): string => monthNames[month - 1] ?? "";

/** "9:42", "15:00": 24 hours, no leading zero. */
export function clock(ms: number): string {
  const at = new Date(ms);
  return `${at.getHours()}:${two(at.getMinutes())}`;
}

/** "7:05" for 425 minutes after midnight; a minute of the next day is written as that day's. */
export const clockOfMinute = (minute: number): string =>
  `${Math.floor((minute % 1440) / 60)}:${two(minute % 60)}`;

/** "Fri 20 Mar" for "2026-03-20". */
export function shortDay(day: string): string {
  const [, month, date] = partsOf(day);
  return `${dayName(weekdayOf(day)).slice(0, 3)} ${date} ${monthName(month).slice(0, 3)}`;
}

/** "today", "tomorrow", "yesterday", else "Fri 20 Mar", with the year where it isn't this one. */
export function friendlyDay(day: string, now_ms: number): string {
  const today = localDay(now_ms);
  const near = ["yesterday", "today", "tomorrow"][daysBetween(today, day) + 1];
  if (near) return near;
  return day.slice(0, 4) === today.slice(0, 4) ? shortDay(day) : `${shortDay(day)} ${day.slice(0, 4)}`;
}

/** "9:42" today, "tomorrow 15:00", "Fri 20 Mar 18:00". */
export function friendly(ms: number, now_ms: number): string {
  const day = friendlyDay(localDay(ms), now_ms);
  return day === "today" ? clock(ms) : `${day} ${clock(ms)}`;
}

/** "45 s", "12 min", "1 h 20 min", "2 d 3 h": a length in min, to the second below ten minutes. */
export function lengthText(minutes: number): string {
  const all = Math.max(0, Math.round(minutes * 60));
  const s = all < 600 ? all : Math.round(all / 60) * 60;
  const parts = [
    [Math.floor(s / 86_400), "d"],
    [Math.floor(s / 3600) % 24, "h"],
    [Math.floor(s / 60) % 60, "min"],
    [s % 60, "s"],
  ] as const;
  const said = parts.filter(([count]) => count > 0).slice(0, 2);
  return said.length ? said.map(([count, unit]) => `${count} ${unit}`).join(" ") : "0 s";
}
