/** Stretches of the calendar that are asked about: "in february", "last week", "the last 2 weeks", "since march 1". */
import * as z from "zod/mini";
import { months } from "../../../data/words/calendar.ts";
import { dayOf, localDay, monthName, partsOf, plusDays, shortDay, weekdayOf } from "../lib/days.ts";
import { type Piece, textOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { behind } from "../lib/when.ts";
import { placeless, whenSaid } from "../lib/when-said.ts";

const number = z.optional(z.number());

/** As said; held against the clock by `spanOf`. */
export const Period = z.object({
  when: z.optional(whenSaid),
  month: number,
  year: number,
  /** So many of `unit` back: 0 is this one, 1 the last. */
  back: number,
  unit: z.optional(z.enum(["week", "weekend", "month", "year"])),
  /** The last so many days. */
  days: number,
  since: z.optional(z.boolean()),
});

export type Period = z.infer<typeof Period>;

/** From and to, both days included, and how it is called. */
export interface Span {
  from: string;
  to: string;
  name: string;
}

const monthLead = new RegExp(
  `(?:^| )(?:in|during|since|for|from|of|last|this|all) (${Object.keys(months).join("|")})(?: (\\d{4}))?(?: |$)`,
);

/** The stretch that a sentence names, if it does. */
export function periodIn(some: readonly Piece[]): Period | undefined {
  const text = textOf(some);
  const since = /(?:^| )since(?: |$)/.test(text) ? { since: true } : {};
  const day = some.find(
    (each) =>
      each.when &&
      (each.when.days !== undefined || each.when.weekday !== undefined || each.when.day !== undefined),
  )?.when;
  if (day) return { when: placeless(day), ...since };
  const month = monthLead.exec(text);
  if (month)
    return { month: months[month[1] ?? ""], ...(month[2] ? { year: Number(month[2]) } : {}), ...since };
  const year = /(?:^| )(?:in|during|since) (20\d\d)(?: |$)/.exec(text);
  if (year) return { year: Number(year[1]), ...since };
  const stretch = some.find(
    (each, at) =>
      each.amount?.dim === "time" &&
      ["last", "past"].includes(some[at - 1]?.text ?? "") &&
      inBase(each.amount.value, each.amount.unit) >= 1440,
  )?.amount;
  if (stretch) return { days: Math.round(inBase(stretch.value, stretch.unit) / 1440) };
  const named = /(?:^| )(last|this|past|previous) (weekend|week|month|year)(?: |$)/.exec(text);
  if (!named) return undefined;
  return { back: named[1] === "this" ? 0 : 1, unit: named[2] as "week" };
}

/** The days of a stretch. A month without a year is the last one begun; weeks run from Monday to Sunday. */
export function spanOf(period: Period, now_ms: number): Span | { why: string } {
  const today = localDay(now_ms);
  const span = namedSpan(period, today, now_ms);
  if ("why" in span || !period.since) return span;
  return { from: span.from, to: today, name: `since ${span.name.replace(/^on /, "")}` };
}

function namedSpan(period: Period, today: string, now_ms: number): Span | { why: string } {
  if (period.when) {
    const moment = behind({ ...period.when, minute: undefined }, now_ms);
    return moment.ok
      ? { from: moment.day, to: moment.day, name: `on ${shortDay(moment.day)}` }
      : { why: moment.why };
  }
  const [year, month] = partsOf(today);
  if (period.month !== undefined)
    return monthSpan(period.year ?? (period.month > month ? year - 1 : year), period.month);
  if (period.year !== undefined)
    return { from: `${period.year}-01-01`, to: `${period.year}-12-31`, name: `in ${period.year}` };
  if (period.days !== undefined)
    return { from: plusDays(today, -period.days), to: today, name: `in the last ${period.days} days` };
  const back = period.back ?? 0;
  const which = back === 0 ? "this" : "last";
  if (period.unit === "month") return { ...monthSpan(year, month - back), name: `${which} month` };
  if (period.unit === "year")
    return { from: `${year - back}-01-01`, to: `${year - back}-12-31`, name: `${which} year` };
  const monday = plusDays(today, -((weekdayOf(today) + 6) % 7) - 7 * back);
  if (period.unit === "week") return { from: monday, to: plusDays(monday, 6), name: `${which} week` };
  // On a Saturday or Sunday "last weekend" is still the one before.
  return { from: plusDays(monday, 5), to: plusDays(monday, 6), name: `${which} weekend` };
}

/** Months may run below 1: month 0 is December of the year before. */
function monthSpan(year: number, month: number): Span {
  const from = dayOf(year, month, 1) ?? `${year}-01-01`;
  const next = dayOf(year, month + 1, 1) ?? from;
  const [of, which] = partsOf(from);
  return { from, to: plusDays(next, -1), name: `in ${monthName(which)} ${of}` };
}
