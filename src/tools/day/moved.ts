/** A plan whose start is moved: worked forward from there, which is when they would be ready. */
import type { Outcome, Plan, When, World } from "../contract/index.ts";
import { type DayOrder, planDay, wallSeconds } from "../day-plan/index.ts";
import { asking } from "../lib/asking.ts";
import { clock, clockOfMinute, friendly, lengthText, localDay, localIso, momentOf } from "../lib/days.ts";
import { ahead, behind, minutesMeant, type Said } from "../lib/when.ts";
import type { DayInputs } from "./day.ts";
import { msOf } from "./kept.ts";
import { planRule } from "./making.ts";
import { shown } from "./shown.ts";
import type { Standing } from "./standing.ts";

/** A moment of the local clock as a due that no later day is counted from. */
export function dueAt(ms: number): NonNullable<DayInputs["due"]> {
  const [year, month, day, hour = 0, minute = 0] = localIso(ms).split(/\D/).map(Number);
  return { year, month, day, minute: hour * 60 + minute, half: "24" };
}

/** "forward" can be either way. */
export function whichWay({ unclear_min = 0, unclear_of }: DayInputs): Outcome {
  const by = lengthText(unclear_min);
  return asking(
    unclear_of === "start" ? `Do you start ${by} later or earlier?` : `By ${by}: later or earlier?`,
    "unclear_min",
  );
}

interface At {
  ok: true;
  at_ms: number;
  assumed: string[];
}

/** The moment of the new start: by so much from the old one, at an hour of its day, or on a day that was named. */
function startOf(
  inputs: DayInputs,
  first_ms: number | undefined,
  order: DayOrder,
  world: World,
): At | { ok: false; why: string } {
  const { start, start_min, start_as } = inputs;
  if (start_min !== undefined && first_ms !== undefined) {
    const at_ms = first_ms + start_min * 60_000;
    return at_ms >= world.now_ms
      ? { ok: true, at_ms, assumed: [] }
      : { ok: false, why: `${friendly(at_ms, world.now_ms)} has passed; it is ${clock(world.now_ms)}.` };
  }
  const { text: _text, ...said } = (start ?? {}) as Partial<When>;
  const { from } = order.settings.awake;
  const day = first_ms === undefined ? {} : { day: localDay(first_ms) };
  const found = ahead(said as Said, world.now_ms, { wake_min: from, ...day });
  if (!found.ok || found.timed) return found;
  // a day alone: asked about, its first hour; else the hour of before
  const minute =
    start_as === "asked" || start_as === "too late" || first_ms === undefined ? from : minuteOf(first_ms);
  return { ok: true, at_ms: Math.max(momentOf(found.day, minute), world.now_ms), assumed: [] };
}

/** When it was begun: an hour alone is of the day that the plan begins on, and none that is still to come. */
export function begunAt(
  start: DayInputs["start"],
  { start: first }: Standing,
  { now_ms }: World,
): { ok: true; at_ms: number } | { ok: false; why: string } {
  const { text: _text, ...said } = (start ?? {}) as Partial<When>;
  // "only just started"
  if (Object.keys(said).length === 0) return { ok: true, at_ms: now_ms };
  const meant = minutesMeant(said as Said).map((minute) => momentOf(localDay(msOf(first)), minute));
  const hours = meant.length > 0 && !isDated(said) ? meant.filter((at_ms) => at_ms <= now_ms) : [];
  const near = hours.toSorted((a, b) => Math.abs(a - msOf(first)) - Math.abs(b - msOf(first)))[0];
  if (near !== undefined) return { ok: true, at_ms: near };
  const found = behind(said as Said, now_ms);
  if (!found.ok) return found;
  return found.timed ? { ok: true, at_ms: found.at_ms } : { ok: false, why: "At what time was it begun?" };
}
const isDated = ({ days, weekday, day }: Partial<When>): boolean =>
  days !== undefined || weekday !== undefined || day !== undefined;

const minuteOf = (ms: number): number => {
  const [hour = 0, minute = 0] = localIso(ms).slice(11).split(":").map(Number);
  return hour * 60 + minute;
};

/** The answer to a start that was said behind a plan. */
export function started(
  inputs: DayInputs,
  order: DayOrder,
  standing: Standing | undefined,
  kept: Plan | undefined,
  world: World,
): Outcome {
  const first = standing ?? planDay(order);
  if (standing && standing.start < order.now)
    return {
      status: "impossible",
      headline: `That bake has begun, at ${friendly(msOf(standing.start), world.now_ms)}. What can move now is the hour they are ready: say "an hour later".`,
    };
  const moment = startOf(inputs, first.fits ? msOf(first.start) : undefined, order, world);
  if (!moment.ok) return { status: "impossible", headline: moment.why };
  const at = wallSeconds(localIso(moment.at_ms));
  const { start: _start, start_min: _min, start_as, ...rest } = inputs;
  // no sooner than that, and the plan is later anyway
  if (start_as === "from" && first.fits && first.start >= at)
    return shown(rest, first, order, msOf(order.due), moment.assumed, kept, world);
  const soonest = planDay({ ...order, now: at, due: at + 60 });
  const ready = soonest.fits ? at + 60 : soonest.readyAt;
  const plan = ready === undefined ? undefined : planDay({ ...order, now: at, due: ready });
  if (ready === undefined || !plan?.fits)
    return { status: "impossible", headline: "No start can do that: a step is longer than your day." };
  const said = friendly(moment.at_ms, world.now_ms);
  const note = plan.start > at ? `. ${notThen(at, plan.start, said, order, world)}` : "";
  const until = friendly(msOf(ready), world.now_ms);
  const against = spareText(ready, order.due, world);
  if (start_as === "asked" || start_as === "too late") {
    const fits = ready <= order.due;
    const lead = start_as === "asked" ? (fits ? "Yes" : "No") : fits ? "Not too late" : "Too late";
    return {
      status: "answered",
      headline: `${lead}: started ${said} they are ready ${until}, ${against}${note}`,
      rule: planRule(order, world),
      ...(moment.assumed.length ? { assumed: moment.assumed } : {}),
    };
  }
  const moved = shown(
    { ...rest, due: dueAt(msOf(ready)) },
    plan,
    { ...order, due: ready },
    msOf(ready),
    moment.assumed,
    kept,
    world,
  );
  return moved.status === "answered" ? { ...moved, headline: `${moved.headline}, ${against}${note}` } : moved;
}

/** Why the first step isn't at the hour that was said. */
function notThen(at: number, first: number, said: string, order: DayOrder, world: World): string {
  const { from, to } = order.settings.awake;
  const minute = (at % 86_400) / 60;
  const isAwake = from === to || (from < to ? minute >= from && minute < to : minute >= from || minute < to);
  const begins = friendly(msOf(first), world.now_ms);
  return isAwake
    ? `Begun ${said} they would be ready no sooner than begun ${begins}`
    : `At ${said} there are no hands, none between ${clockOfMinute(to)} and ${clockOfMinute(from)}: the first step is ${begins}`;
}

/** "42 min after 17:00". */
function spareText(ready: number, due: number, world: World): string {
  const by = lengthText(Math.abs(ready - due) / 60);
  const wanted = friendly(msOf(due), world.now_ms);
  return ready === due ? "just in time" : `${by} ${ready > due ? "after" : "before"} ${wanted}`;
}
