/** The day that was said, held against today: to come, or gone by. Only lib/when.ts asks this. */
import { dayName, dayOf, daysBetween, monthName, partsOf, plusDays, shortDay, weekdayOf } from "./days.ts";
import type { NoMoment, Said } from "./when.ts";

/** The day, none where only a time was said, with what was taken for granted. */
export type DayFound = { ok: true; day?: string; assumed?: string } | NoMoment;

/** A date this near to come belongs to next year; further off, this year's has simply passed. Days. */
const halfYear = 183;

/** @param isOver whether the time that was said has passed on that day */
export function dayAhead(when: Said, today: string, isOver: (day: string) => boolean): DayFound {
  if (when.days !== undefined) {
    if (when.days >= 0) return { ok: true, day: plusDays(today, when.days) };
    return {
      ok: false,
      why: `${when.days === -1 ? "Yesterday" : shortDay(plusDays(today, when.days))} has passed.`,
    };
  }
  if (when.day !== undefined || when.month !== undefined) return dateAhead(when, today);
  if (when.weekday === undefined) return { ok: true };
  if (when.which === "last") return { ok: false, why: `Last ${dayName(when.weekday)} has passed.` };
  // Today's weekday means today while its time is still to come; "next" is never today.
  const gap = (when.weekday - weekdayOf(today) + 7) % 7;
  if (when.which === "week") return { ok: true, day: plusDays(today, gap + 7) };
  if (gap > 0) return { ok: true, day: plusDays(today, gap) };
  if (when.which === "next") return { ok: true, day: plusDays(today, 7) };
  if (!isOver(today)) return { ok: true, day: today };
  return {
    ok: true,
    day: plusDays(today, 7),
    assumed: `${dayName(when.weekday)} in a week, that time has passed today`,
  };
}

/** A calendar day to come. Without a month, the next month that has it; in December, "5 January" is next year's. */
function dateAhead(when: Said, today: string): DayFound {
  const [year, month] = partsOf(today);
  const date = when.day ?? 1;
  if (when.month === undefined) {
    const step = firstStep(12, (each) => (dayOf(year, month + each, date) ?? "") >= today);
    const day = step === undefined ? undefined : dayOf(year, month + step, date);
    if (!day) return noSuchDay(when);
    return { ok: true, day, ...(step ? { assumed: `${shortDay(day)}, the next one to come` } : {}) };
  }
  const day = dayOf(when.year ?? year, when.month, date);
  if (day && day >= today) return { ok: true, day };
  const later = when.year === undefined ? dayOf(year + 1, when.month, date) : undefined;
  if (later && daysBetween(today, later) < halfYear) return { ok: true, day: later };
  return day
    ? { ok: false, why: `${shortDay(day)} has passed; today is ${shortDay(today)}.` }
    : noSuchDay(when);
}

/** A day gone by, today included; a day to come comes back as it is, for the caller to refuse. */
export function dayBehind(when: Said, today: string): DayFound {
  if (when.days !== undefined) return { ok: true, day: plusDays(today, when.days) };
  if (when.day !== undefined || when.month !== undefined) return dateBehind(when, today);
  if (when.weekday === undefined) return { ok: true };
  if (when.which === "next" || when.which === "week")
    return { ok: false, why: `Next ${dayName(when.weekday)} is still to come.` };
  const gap = (weekdayOf(today) - when.weekday + 7) % 7;
  return { ok: true, day: plusDays(today, gap === 0 && when.which === "last" ? -7 : -gap) };
}

function dateBehind(when: Said, today: string): DayFound {
  const [year, month] = partsOf(today);
  const date = when.day ?? 1;
  if (when.month === undefined) {
    const step = firstStep(12, (each) => (dayOf(year, month - each, date) ?? "9") <= today);
    return step === undefined ? noSuchDay(when) : { ok: true, day: dayOf(year, month - step, date) };
  }
  const day = dayOf(when.year ?? year, when.month, date);
  if (day && (when.year !== undefined || day <= today)) return { ok: true, day };
  if (when.year !== undefined) return noSuchDay(when);
  // 29 February can lie eight years back.
  const step = firstStep(9, (each) => each > 0 && dayOf(year - each, when.month ?? 1, date) !== undefined);
  const earlier = step === undefined ? undefined : dayOf(year - step, when.month, date);
  if (!earlier) return noSuchDay(when);
  return {
    ok: true,
    day: earlier,
    assumed: `${shortDay(earlier)} ${earlier.slice(0, 4)}, the last one gone`,
  };
}

/** The first of 0, 1, 2 … that will do. */
function firstStep(most: number, will: (step: number) => boolean): number | undefined {
  for (let step = 0; step < most; step++) if (will(step)) return step;
  return undefined;
}

const noSuchDay = ({ day, month, year }: Said): NoMoment => ({
  ok: false,
  why: `There is no day ${day ?? ""} in ${month ? monthName(month) : "any month"}${year ? ` ${year}` : ""}.`,
});
