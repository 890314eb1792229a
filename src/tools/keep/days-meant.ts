/** The day that was meant, done or to come, and how a day and the cold it is counted at are written. */
import { fridge } from "../../../data/rules/keeping.ts";
import { shortDay } from "../lib/days.ts";
import { ahead, behind, type Moment, type NoMoment, type Said } from "../lib/when.ts";
import type { KeepInputs } from "./keep.ts";

/** At which the days count. */
export const inTheCold = `${fridge.limit_c} °C (${fridge.limit_f} °F) or below`;

export const named = (day: string) => `${shortDay(day)} (${day})`;

export const dayOf = (when: KeepInputs["made"], now_ms: number) =>
  when ? behindOrAhead(when, now_ms) : undefined;

/** What was done lies behind; "tomorrow" can only lie ahead. */
export function behindOrAhead(when: Said, now_ms: number): Moment | NoMoment {
  const past = behind(when, now_ms);
  return past.ok ? past : (when.days ?? 0) > 0 || when.which === "next" ? ahead(when, now_ms) : past;
}

/** The day she asks about: to come, or, where that can't be, gone. */
export function dayOn(when: Said, now_ms: number): Moment | NoMoment {
  const next = ahead({ ...when, minute: undefined }, now_ms);
  return next.ok ? next : behind({ ...when, minute: undefined }, now_ms);
}
