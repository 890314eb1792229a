/** Reads what is to be ready and when, or what is to be done with the plan there is. */
import type { Memory, Reading } from "../contract/index.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { askedOfPlan } from "./asked-of-plan.ts";
import type { Draft } from "./draft.ts";
import { dueSaid, withinSaid } from "./due-said.ts";
import { lengthsSaid } from "./lengths-said.ts";
import { movedSaid } from "./moved-said.ts";
import { timesSaid } from "./number-said.ts";
import { readDetails } from "./order.ts";
import { readOrder } from "./order-said.ts";
import { partAnswered, saysDone } from "./part-done.ts";
import { movedBefore, planBefore } from "./plan-before.ts";
import { asksSheet, readSheet } from "./sheet-said.ts";
import { leftOpen, twoOrders } from "./two-orders.ts";
import { readWant } from "./want-said.ts";

interface Turn {
  reading: Reading;
  memory: Memory;
  /** The kept plan that is spoken of, by when it was made. */
  plan: number | undefined;
  /** What it was made for. */
  before: Draft | undefined;
  /** What the turn before was, where it was about a day. */
  last: Draft | undefined;
}

const ways: readonly Way<Turn, Draft>[] = [
  ({ reading, memory }) => partAnswered(reading, memory),
  ({ reading, memory }) => leftOpen(reading, memory),
  ({ reading }) => {
    const orders = twoOrders(reading);
    return orders && { orders };
  },
  ({ reading, memory, plan }) =>
    asksSheet(reading)
      ? readSheet(reading, { ...readOrder(reading, memory), ...readDetails(reading) }, plan, memory)
      : undefined,
  ({ reading, memory, plan, last }) => {
    const asked = askedOfPlan(reading, last);
    // an order of its own is planned first
    if (
      !asked ||
      (plan === undefined && !memory.follows && memory.table.order === undefined && asked.want === "when")
    )
      return undefined;
    return { ...asked, ...(plan === undefined ? {} : { plan }) };
  },
  moved,
  ofThePlan,
];

export function readDay(reading: Reading, memory: Memory): Draft {
  const plan = (memory.table.order as Draft | undefined)?.plan;
  const before = planBefore(memory);
  const draft =
    firstOf(ways, {
      reading,
      memory,
      plan,
      // whether a kept plan rests its shells is the record's to say: it may have been taken back
      before: plan === undefined ? before : withoutRest(before),
      last: memory.last?.tool === "day" ? (memory.last.inputs as Draft) : undefined,
    }) ?? {};
  // the hour that a move came to, and not the one that was said before it
  const { due } = movedBefore(memory) ?? {};
  const isOf = memory.follows && Object.keys(draft).length > 0 && draft.due === undefined;
  return due && isOf && draft.within_min === undefined ? { ...draft, due } : draft;
}

/** "start at 2 pm instead", "push everything back an hour". */
function moved({ reading, memory, plan, before, last }: Turn): Draft | undefined {
  const said = movedSaid(reading, memory);
  return (
    said && {
      ...(plan === undefined ? before : before?.due ? { due: before.due } : {}),
      ...said,
      // the plan is asked for again, not another set of timers
      ...(last?.want && said.want === undefined ? { want: "plan" as const } : {}),
      ...(plan === undefined ? {} : { plan, by_record: true }),
    }
  );
}

/** A new order, a change to the one that is planned, or what is wanted of its plan. */
function ofThePlan({ reading, memory, plan, before, last }: Turn): Draft {
  const asked = readWant(reading);
  // behind the plan itself it is nothing new
  const want = asked?.want === "plan" && (last || !before) ? undefined : asked;
  // "what do i have planned", behind a plan that was dropped: none
  if (asked && (last?.want === "drop" || last?.gone)) return { ...asked, as_kept: true, gone: true };
  const told = want?.want === "done" ? want : { ...orderTold(reading, memory, before), ...want };
  const due = dueSaid(reading, before);
  const within = due ? undefined : withinSaid(reading);
  const draft: Draft = {
    ...((want || isAboutHours(told, memory)) && before ? { ...before, ...told } : told),
    ...(want && !due && Object.keys(told).every((key) => key in want) ? { as_kept: true } : {}),
    // a new hour asks for the plan again, not for another set of timers
    ...(!want && memory.follows && before?.want ? { want: "plan" as const } : {}),
    ...(due ? { due } : {}),
    ...(within === undefined ? {} : { within_min: within }),
    ...fromTable(told, memory),
  };
  const goesOn = plan !== undefined && (want !== undefined || memory.follows) && !isAnother(told, due);
  if (!goesOn) return draft;
  const isEmpty = Object.keys(draft).length === 0;
  return {
    ...draft,
    plan,
    ...(draft.no_rest !== undefined || isEmpty ? {} : { by_record: true }),
    ...(isEmpty && saysChange(reading) ? { idle: true } : {}),
  };
}

function orderTold(reading: Reading, memory: Memory, before: Draft | undefined): Draft {
  const told: Draft = {
    ...readOrder(reading, memory),
    ...readDetails(reading),
    ...lengthsSaid(reading, before),
  };
  // "only half of those", of a day that is planned
  // "half of them with lemon" are filled with something else, and no fewer
  const ofTaste = reading.things.some((each) => each.taste || each.chocolate || each.base || each.color);
  // nor does what is told to be over ask for fewer
  const isTold = saysDone(reading) && reading.whens.length === 0;
  const times =
    memory.follows && told.macarons === undefined && !ofTaste && !isTold ? timesSaid(reading) : undefined;
  return times !== undefined && before?.macarons !== undefined
    ? { ...told, macarons: Math.ceil(before.macarons * times) }
    : told;
}

/** Words that aren't about seeing the plan again: something was to be changed by them. */
const saysChange = ({ mask }: Reading): boolean =>
  mask.split(" ").length > 2 &&
  !/(?:^| )(?:plan|schedule|when|what|whats|show|again|start|steps?|list|times?|timeline|see|print|thanks?|ok|yes|great)(?: |$)|[?]$/.test(
    mask,
  );

/** "i can't start before 9", right behind the plan: of that plan. */
const isAboutHours = (told: Draft, memory: Memory): boolean =>
  (memory.last?.tool === "day" || memory.table.order !== undefined) &&
  (told.wake_min ?? told.sleep_min) !== undefined &&
  Object.keys(told).every((key) => ["wake_min", "sleep_min", "no_mature"].includes(key));

const withoutRest = (order: Draft | undefined): Draft | undefined => {
  const { no_rest: _rest, ...kept } = order ?? {};
  return order && kept;
};

/** A number and a day of its own are another order, not another number for this one. */
const isAnother = (told: Draft, due: Draft["due"]) =>
  told.macarons !== undefined &&
  due !== undefined &&
  ["days", "weekday", "day", "month"].some((key) => (due as Record<string, unknown>)[key] !== undefined);

/** The number of macarons that was sized before this was asked. */
const fromTable = (told: Draft, memory: Memory): Draft =>
  told.macarons === undefined &&
  memory.last?.tool !== "day" &&
  memory.table.macarons !== undefined &&
  !told.want
    ? { macarons: memory.table.macarons }
    : {};
