/** Days of a table: as the program writes them, or as a spreadsheet made them when the file went through it. */
import { dayOf } from "../lib/days.ts";

/** How a day's numbers are ordered; unknown where the table itself doesn't tell. */
export type Order = "day first" | "month first" | undefined;

const iso = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const parted = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/;

/** A number over 12 is no month: one such day tells the order of the whole column. Days that disagree tell nothing. */
export function orderOf(cells: readonly string[]): Order {
  const orders = new Set(
    cells.flatMap((cell): NonNullable<Order>[] => {
      const [, first, second] = (parted.exec(cell.trim()) ?? []).map(Number);
      if (first === undefined || second === undefined || Math.min(first, second) > 12) return [];
      return first > 12 ? ["day first"] : second > 12 ? ["month first"] : [];
    }),
  );
  return orders.size === 1 ? [...orders][0] : undefined;
}

/** The day as ISO text, or why it can't be read. Points part a day before its month, as countries with them write it. */
export function dayIn(cell: string, order: Order): { ok: true; day: string } | { ok: false; why: string } {
  const said = cell.trim();
  const wrong = { ok: false as const, why: `"${said}" is no day of the calendar; write it like 2026-03-14` };
  const [, year, month, date] = iso.exec(said) ?? [];
  if (year) return dayFrom(Number(year), Number(month), Number(date)) ?? wrong;
  const [, first, second, last] = parted.exec(said) ?? [];
  if (!last) return { ok: false, why: `"${said}" isn't a day like 2026-03-14` };
  const known = said.includes(".") ? "day first" : order;
  const [a, b] = [Number(first), Number(second)];
  if (!known && a !== b)
    return { ok: false, why: `"${said}" may be day ${a} or day ${b} of a month; write it like 2026-03-14` };
  return dayFrom(Number(last), known === "month first" ? a : b, known === "month first" ? b : a) ?? wrong;
}

function dayFrom(year: number, month: number, date: number): { ok: true; day: string } | undefined {
  const day = month >= 1 && month <= 12 && year >= 1900 ? dayOf(year, month, date) : undefined;
  return day ? { ok: true, day } : undefined;
}
