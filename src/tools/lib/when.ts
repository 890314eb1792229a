/**
 * Moments as said, held against the clock, in the machine's own time zone. Two ways to look:
 *
 *   const due = ahead(when, world.now_ms);    what is still to come: timers, plans
 *   const made = behind(when, world.now_ms);  what has been: notes, "made on the 9th"
 *   if (!due.ok) return { status: "impossible", headline: due.why };
 *   due.at_ms, due.day ("2026-03-15"), due.timed, due.assumed
 *
 * `timed` false means that no time of day was said; `at_ms` is then the first moment of the day. Nothing here reads
 * the system's clock: `now_ms` is the only "now". lib/days.ts writes moments out.
 */
import type { When } from "../contract/index.ts";
import { clock, clockOfMinute, localDay, momentOf, plusDays, shortDay, startOf } from "./days.ts";
import { dayAhead, dayBehind } from "./when-day.ts";

/** A moment settled. */
export interface Moment {
  ok: true;
  /** Ms since the epoch; the first moment of the day where no time was said. */
  at_ms: number;
  /** Its local day: "2026-03-14". */
  day: string;
  /** A time of day was said. */
  timed: boolean;
  part?: When["part"];
  /** What wasn't said and was taken as usual: "tomorrow, 9:00 has passed today". */
  assumed: string[];
}

/** A moment that can't be, and why, as a sentence. */
export interface NoMoment {
  ok: false;
  why: string;
}

/** What was said, without its place in the sentence; a `When` of a reading is one. */
export type Said = Omit<When, "text" | "at">;

export interface AheadOptions {
  /** The day that a bare time belongs to, where the talk has settled one: "they want them at 4 now". */
  day?: string;
  /** On a day to come, a bare hour is the first from here on, in minutes after midnight; 7:00 unless said. */
  wake_min?: number;
}

/** A day, in minutes. */
export const day_min = 24 * 60;
const half_min = 720;

/**
 * The next moment that fits. A clock time that has passed today is tomorrow's, and `assumed` says so; a bare hour is
 * the next time that the clock shows it; "today", "this morning" and a date gone by are taken at their word.
 */
export function ahead(when: Said, now_ms: number, options: AheadOptions = {}): Moment | NoMoment {
  const today = localDay(now_ms);
  const meant = minutesMeant(when);
  const isOver = (day: string) => meant.length > 0 && toCome(day, meant, now_ms).length === 0;
  const found = dayAhead(when, today, isOver);
  if (!found.ok) return found;
  const on = found.day ?? options.day;
  const why = found.assumed ? [found.assumed] : [];
  if (meant.length === 0) return untimed(on ?? dayOfPart(when, now_ms), when, why);
  for (const day of on ? [on] : [today, plusDays(today, 1)]) {
    const open = toCome(day, meant, now_ms);
    const choose = on !== undefined && on !== today && meant.length > 1;
    const awake = choose ? open.find((each) => each.minute >= (options.wake_min ?? 420)) : undefined;
    const best = awake ?? open[0];
    if (!best) continue;
    const turned = choose ? [`${clock(best.at_ms)}, not ${clockOfMinute(best.minute + half_min)}`] : [];
    const reasons = on ? turned : whyThen(best, now_ms, meant.length > 1);
    return { ...timedAt(best.at_ms, when), assumed: [...why, ...reasons, ...skipped(best)] };
  }
  const over = on !== undefined && on < today ? ` on ${shortDay(today)}` : "";
  return {
    ok: false,
    why: `${momentText(when, on ?? today, today)} has passed; it is ${clock(now_ms)}${over}.`,
  };
}

/**
 * The last moment that fits: yesterday, last sunday, march 8, the 9th, two weeks ago. A bare weekday is today or the
 * last one gone; "last" is always before today. A time without a day is the last time that the clock showed it.
 */
export function behind(when: Said, now_ms: number): Moment | NoMoment {
  const today = localDay(now_ms);
  const found = dayBehind(when, today);
  if (!found.ok) return found;
  const why = found.assumed ? [found.assumed] : [];
  if (found.day !== undefined && found.day > today)
    return { ok: false, why: `${shortDay(found.day)} is still to come.` };
  const meant = minutesMeant(when);
  if (meant.length === 0) return untimed(found.day ?? today, when, why);
  for (const day of found.day ? [found.day] : [today, plusDays(today, -1)]) {
    const gone = moments(day, meant).findLast((each) => each.at_ms <= now_ms);
    if (!gone) continue;
    const turned =
      localDay(gone.at_ms) === today || found.day ? [] : ["yesterday, that time has yet to come today"];
    return { ...timedAt(gone.at_ms, when), assumed: [...why, ...turned, ...skipped(gone)] };
  }
  return {
    ok: false,
    why: `${momentText(when, found.day ?? today, today)} is still to come; it is ${clock(now_ms)}.`,
  };
}

/**
 * The minutes after midnight that a time can mean: none without a time, one where the half of the day is settled,
 * two for a bare hour. From 1440 on it is the night behind the day: "tonight at 2".
 */
export function minutesMeant(when: Said): number[] {
  const { minute, half, part } = when;
  if (minute === undefined) return [];
  if (half || minute >= half_min + 60 || minute < 60) return [minute];
  const early = minute % half_min;
  const late = early + half_min;
  if (part === "morning") return [early];
  if (part === "afternoon") return [late];
  if (part === "evening") return [early < 60 ? early + day_min : late];
  if (part === "night") return early < 300 ? [when.days === undefined ? early : early + day_min] : [late];
  return [early, late];
}

interface At {
  at_ms: number;
  minute: number;
}

/** When the clock shows these minutes of a day, in order: twice for one that it is put back over. */
function moments(day: string, minutes: readonly number[]): At[] {
  return minutes
    .flatMap((minute) => {
      const first = momentOf(day, minute);
      const again = [30, 60]
        .map((shift) => first + shift * 60_000)
        .filter((each) => clock(each) === clock(first));
      return [first, ...again].map((at_ms) => ({ at_ms, minute }));
    })
    .sort((a, b) => a.at_ms - b.at_ms);
}

const toCome = (day: string, minutes: readonly number[], now_ms: number) =>
  moments(day, minutes).filter((each) => each.at_ms > now_ms);

const timedAt = (at_ms: number, when: Said) =>
  ({
    ok: true,
    at_ms,
    day: localDay(at_ms),
    timed: true,
    ...(when.part ? { part: when.part } : {}),
  }) as const;

const untimed = (day: string, when: Said, assumed: string[]): Moment => ({
  ok: true,
  at_ms: startOf(day),
  day,
  timed: false,
  ...(when.part ? { part: when.part } : {}),
  assumed,
});

const partStarts = { morning: 360, afternoon: 720, evening: 1080, night: 1260 };

/** "In the morning", said when the morning is under way, is tomorrow's. */
function dayOfPart(when: Said, now_ms: number): string {
  const today = localDay(now_ms);
  const begun = when.part !== undefined && momentOf(today, partStarts[when.part]) <= now_ms;
  return begun ? plusDays(today, 1) : today;
}

/** Why it is tomorrow's, where no day was said. */
function whyThen(best: At, now_ms: number, bare: boolean): string[] {
  if (localDay(best.at_ms) === localDay(now_ms)) return [];
  if (best.minute === day_min) return ["midnight tonight"];
  return [
    `tomorrow, ${bare ? "the next time that the clock shows it" : `${clock(best.at_ms)} has passed today`}`,
  ];
}

/** The night the clocks go forward has no such time. */
function skipped({ at_ms, minute }: At): string[] {
  const named = clockOfMinute(minute);
  return clock(at_ms) === named ? [] : [`${clock(at_ms)}, the clock skips ${named} that day`];
}

/** "8:00 this morning", "9:00 on Fri 13 Mar", "9:00 today". */
function momentText(when: Said, day: string, today: string): string {
  const time = clockOfMinute(minutesMeant(when)[0] ?? 0);
  if (day !== today) return `${time} on ${shortDay(day)}`;
  return when.part && when.part !== "night" ? `${time} this ${when.part}` : `${time} today`;
}
