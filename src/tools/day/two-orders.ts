/** "60 macarons for sat 11am and 24 for sunday 2pm": two days to be ready for. One plan holds one; it is asked which. */
import type { Amount, Memory, Outcome, Reading, When } from "../contract/index.ts";
import { placeSaid } from "../lib/place.ts";
import { plain } from "../lib/show.ts";
import type { DayInputs } from "./day.ts";
import type { Draft } from "./draft.ts";

type Order = NonNullable<DayInputs["orders"]>[number];

const isDay = (when: When): boolean =>
  when.days !== undefined || when.weekday !== undefined || when.day !== undefined;

/** Each number stands right before its day: "24 macarons for friday". */
const isEachOf = (text: string, counts: readonly Amount[], days: readonly When[]): boolean =>
  counts.every((count, n) => {
    const day = days[n];
    return day !== undefined && betweenOne.test(text.slice(count.at[1], day.at[0]));
  });
const betweenOne =
  /^(?: (?:more|macarons?|macs|of them|of those))* (?:for|by|on|due|ready|to be ready|(?:needed|wanted) (?:for|by|on))(?: (?:by|on|this|next|the))* $/;

/** The orders of a sentence that names two days, each with its number; undefined where it names one. */
export function twoOrders({ whens, amounts, text }: Reading): Order[] | undefined {
  const timed = whens.filter((each) => isDay(each) && each.minute !== undefined);
  const counts = amounts.filter(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.fraction &&
      each.value >= 4 &&
      (!each.of || each.of.count === "macarons" || each.of.taste !== undefined),
  );
  // "24 for friday 3 pm and 10 for saturday": the hour of the other is asked for when it is planned
  const told = whens.filter(isDay);
  const days = told.length === counts.length && isEachOf(text, counts, told) ? told : timed;
  const isOne =
    new Set(days.map((each) => JSON.stringify([each.days, each.weekday, each.day, each.month]))).size < 2;
  if (isOne || counts.length !== days.length) return undefined;
  // "not saturday at 11, sunday at 2": the day before was wrong
  if (/\b(?:not|instead|rather|moved|changed|from)\b/.test(text)) return undefined;
  return days.map(({ at: _at, ...due }, n) => ({ macarons: counts[n]?.value ?? 0, due }));
}

/** "the first", "sunday's", "the 24": one of the orders that were named. */
function orderMeant({ text, amounts, whens }: Reading, orders: readonly Order[]): Draft | undefined {
  const place = placeSaid(text);
  const number = amounts.find((each) => each.dim === "number")?.value;
  const [day] = whens;
  const found =
    (place === undefined ? undefined : orders.at(place)) ??
    orders.find((each) => each.macarons === number) ??
    orders.find(({ due }) => day?.weekday !== undefined && (due as Partial<When>).weekday === day.weekday);
  return found && { macarons: found.macarons, due: found.due };
}

/** @returns nothing where no two orders were left open in the turn before */
export function leftOpen(reading: Reading, { last }: Memory): Draft | undefined {
  const { orders, due, macarons } = last?.tool === "day" ? (last.inputs as Draft) : {};
  if (!orders) return undefined;
  if (due === undefined) return orderMeant(reading, orders);
  // "and the other one", once one of them is planned
  if (
    !/^(?:(?:and|now|ok|what about|how about|so) )*the (?:first|second|third|last|other)(?: one| order)?(?: [?])?$/.test(
      reading.mask,
    )
  )
    return undefined;
  const other = orders.filter((each) => each.macarons !== macarons);
  return /\bother\b/.test(reading.text)
    ? other.length === 1
      ? other[0]
      : undefined
    : orderMeant(reading, orders);
}

export function whichOrder(orders: readonly Order[]): Outcome {
  const named = orders.map(({ macarons, due }) => `${plain(macarons)} for ${(due as Partial<When>).text}`);
  const question = `That is ${named.length === 2 ? "two orders" : `${named.length} orders`}: ${named.join(", ")}. I plan one at a time; which first?`;
  return { status: "asking", headline: question, question, slot: "orders" };
}
