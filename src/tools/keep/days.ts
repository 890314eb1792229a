/** The count of days: making is day 1, freezing stops it, thawing starts it again. */
import { inFridge, keepingRules } from "../../../data/rules/keeping.ts";
import type { Figure, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { daysBetween, localDay, plusDays } from "../lib/days.ts";
import { ahead, behind } from "../lib/when.ts";
import { behindOrAhead, dayOf, dayOn, inTheCold, named } from "./days-meant.ts";
import { fromDay, stopped } from "./frozen.ts";
import type { KeepInputs } from "./keep.ts";

const keeps: readonly Figure[] = [
  { name: "in the fridge", value: inFridge.days, unit: "d" },
  { name: "best within", value: inFridge.best, unit: "d" },
];

interface Clock {
  /** The last day it may be eaten. */
  useBy: string;
  bestBy: string;
  /** Days used before it was frozen; none where it never was. */
  used?: number;
  working: string[];
}

/**
 * The last day for something made on a day, by the Food Code's count: 1 July → 7 July; made 1 October, frozen the
 * 3rd, thawed the 10th → 14 October. Days are local ones, "2026-03-09".
 */
export function clockOf(made: string, frozenOn?: string, thawedOn?: string): Clock {
  if (frozenOn === undefined || thawedOn === undefined) {
    const useBy = plusDays(made, inFridge.days - 1);
    return {
      useBy,
      bestBy: plusDays(made, inFridge.best - 1),
      working: [`day 1 is ${made}, day ${inFridge.days} is ${useBy}`],
    };
  }
  const used = daysBetween(made, frozenOn);
  const on = (days: number) => plusDays(thawedOn, days - used - 1);
  return {
    useBy: on(inFridge.days),
    bestBy: on(inFridge.best),
    used,
    working: [
      `${used} of ${inFridge.days} days used before freezing on ${frozenOn}`,
      `${inFridge.days - used} left from ${thawedOn} on, which is the first of them: ${on(inFridge.days)}`,
    ],
  };
}

/** Nobody asks after a batch of that long ago, nor so far ahead; days, from memory. */
const near = { behind: 14, ahead: 14 };

/** "and the 16th?", said on the 14th of those filled on the 11th: the day that is asked about, not another making. */
function asked({ made_before = [], ...said }: KeepInputs, { now_ms }: World): KeepInputs {
  const [first, ...others] = [...made_before, ...(said.made ? [said.made] : [])];
  if (!first || others.length === 0) return said;
  const today = localDay(now_ms);
  const isToCome = (when: typeof first) => {
    if (when.day === undefined || when.month !== undefined) return false;
    const [past, next] = [behind(when, now_ms), ahead(when, now_ms)];
    return (
      past.ok &&
      next.ok &&
      daysBetween(past.day, today) > near.behind &&
      daysBetween(today, next.day) <= near.ahead
    );
  };
  let [made, on] = [first, said.on];
  for (const when of others) {
    const isAsked = isToCome(when);
    on = isAsked ? when : said.on;
    if (!isAsked) made = when;
  }
  return { ...said, made, ...(on ? { on } : {}) };
}

/** In the fridge: the rule alone, or the days counted from the one that was said. */
export function answerDays(said: KeepInputs, world: World): Outcome {
  const today = localDay(world.now_ms);
  const inputs = asked(said, world);
  const assumed =
    inputs.what && inputs.what !== "filling" ? [`${inputs.what} on its own keeps like filled macarons`] : [];
  if (!inputs.made && inputs.frozen_on_day !== undefined) return fromDay(inputs, world);
  if (!inputs.made) {
    if (inputs.still || inputs.thawed || inputs.frozen)
      return asking("Which day were they made and filled?", "made");
    return {
      status: "answered",
      headline: `${inFridge.days} days in the fridge at ${inTheCold}, the day of making counted as day 1; best within ${inFridge.best}`,
      figures: [...keeps],
      rule: keepingRules.inFridge,
      ...(assumed.length ? { assumed } : {}),
    };
  }
  const found = inputs.coming ? ahead(inputs.made, world.now_ms) : behindOrAhead(inputs.made, world.now_ms);
  if (!found.ok) return { status: "impossible", headline: found.why };
  // "filled last friday", said on a Saturday: yesterday, or the Friday of the week before?
  const ago = daysBetween(found.day, today);
  if (
    inputs.made.which === "last" &&
    inputs.made.weekday !== undefined &&
    !inputs.coming &&
    ago >= 0 &&
    ago <= 2
  )
    return asking(`Which day is that: ${named(found.day)}, or ${named(plusDays(found.day, -7))}?`, "made");
  const made = { ...found, day: plusDays(found.day, -7 * (inputs.weeks_before ?? 0)) };
  const dayAt = (when: KeepInputs["made"]) =>
    when && inputs.planned ? ahead(when, world.now_ms) : dayOf(when, world.now_ms);
  const frozenOn = dayAt(inputs.frozen);
  const thawedOn = dayAt(inputs.thawed);
  for (const each of [frozenOn, thawedOn])
    if (each && !each.ok) return { status: "impossible", headline: each.why };
  const [froze, thawed] = [frozenOn?.ok ? frozenOn.day : undefined, thawedOn?.ok ? thawedOn.day : undefined];
  if (thawed && !froze) return asking("Which day did you freeze them?", "frozen");
  if (froze && daysBetween(made.day, froze) < 0)
    return {
      status: "impossible",
      headline: `They can't be frozen on ${named(froze)}, before they were made on ${named(made.day)}.`,
    };
  if (froze && !thawed) return stopped(made.day, froze);
  if (froze && thawed && daysBetween(froze, thawed) < 0)
    return {
      status: "impossible",
      headline: `They can't be thawed on ${named(thawed)}, before they were frozen on ${named(froze)}.`,
    };
  const clock = clockOf(made.day, froze, thawed);
  if (clock.used !== undefined && clock.used >= inFridge.days)
    return { ...stopped(made.day, froze ?? made.day) };
  return verdict(inputs, world, clock, made.day, today, [...assumed, ...made.assumed]);
}

/** Still good, past it, or good until. */
function verdict(
  inputs: KeepInputs,
  world: World,
  clock: Clock,
  made: string,
  today: string,
  assumed: string[],
): Outcome {
  const asked = inputs.on ? dayOn(inputs.on, world.now_ms) : undefined;
  if (asked && !asked.ok) return { status: "impossible", headline: asked.why };
  const soonest = asked?.ok ? asked.day : today;
  // "from tuesday to sunday if i fill them tuesday": no Sunday before they are made
  const isEarly = inputs.on?.weekday !== undefined && daysBetween(made, soonest) < 0;
  const on = isEarly ? plusDays(soonest, 7) : soonest;
  const left = daysBetween(on, clock.useBy);
  const when = on === today ? "today" : `on ${named(on)}`;
  const headline =
    left < 0
      ? `No, not ${when}: the last day was ${named(clock.useBy)}, day ${inFridge.days}. Throw them out.`
      : `${inputs.still || asked ? `Yes, ${when}: ` : ""}${inFridge.days} days, use by ${named(clock.useBy)}; best by ${named(clock.bestBy)}`;
  const day = clock.used === undefined ? daysBetween(made, on) + 1 : undefined;
  return {
    status: "answered",
    headline,
    figures: [
      ...keeps,
      ...(day !== undefined && day > 0 ? [{ name: "day", value: day, unit: "d" }] : []),
      ...(left >= 0 ? [{ name: "days left", value: left, unit: "d" }] : []),
    ],
    rule: clock.used === undefined ? keepingRules.inFridge : keepingRules.clock,
    assumed: [...assumed, `kept at ${inTheCold} all the while`],
    working: clock.working,
    items: [{ made, best_by: clock.bestBy, use_by: clock.useBy }],
  };
}

/** The same day of a later month, or its last day. */
export function plusMonths(day: string, months: number): string {
  const [year = 0, month = 1, date = 1] = day.split("-").map(Number);
  const last = new Date(Date.UTC(year, month - 1 + months + 1, 0)).getUTCDate();
  return new Date(Date.UTC(year, month - 1 + months, Math.min(date, last))).toISOString().slice(0, 10);
}
