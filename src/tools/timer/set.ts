/** Reads new timers: each length of time or clock time in the sentence makes one, named by the words beside it. */
import { stepTimes } from "../../../data/rules/step-times.ts";
import type { Amount, Memory } from "../contract/index.ts";
import { isSign, type Piece, textOf } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import { placeless } from "../lib/when-said.ts";
import { hourOfAlarm, isAlarmsNumber, isOfStep } from "./alarm.ts";
import type { Draft } from "./draft.ts";
import { keptSaid } from "./kept-said.ts";
import { asMinutes, countedTimes, listedTimes, reminderBehind, wasBare } from "./listed.ts";
import { newName } from "./name.ts";

const isLength = (piece: Piece | undefined) => piece?.amount?.dim === "time";
const isClock = (piece: Piece | undefined) => piece?.when !== undefined;
const isJoint = (piece: Piece) => isSign(piece) || ["and", "then", "plus", "also"].includes(piece.text);
/** "rest timer 40", "45 for the ganache": a number that counts nothing. */
const isBare = (piece: Piece | undefined) => isNumber(piece) && !piece?.amount?.of;
/** "put 5 on the ganache": minutes, whatever stands behind them. */
const isPutOn = (some: readonly Piece[], at: number) =>
  isNumber(some[at]) &&
  /^(?:put|set|pop|bung)$/.test(some[at - 1]?.text ?? "") &&
  some[at + 1]?.text === "on";
const isNumber = (piece: Piece | undefined) =>
  piece?.amount?.dim === "number" && !piece.amount.fraction && piece.amount.unit === "";
/** "if I only have 150": something at hand, not minutes. */
const holds = /(?:^| )(?:have|got|weighs?)(?: |$)/;
const waitsForMoment = /(?:^| )(?:remind|ping|nudge|alarm|ring|wake|let me know|lemme know|tell)(?: |$)/;

export function readSet(heard: readonly Piece[], memory: Memory): Draft[] {
  const reminder = reminderBehind(heard);
  if (reminder !== undefined)
    return [...readSet(heard.slice(0, reminder - 1), memory), ...readSet(heard.slice(reminder), memory)];
  const counted = countedTimes(heard);
  const row = counted ?? listedTimes(heard);
  const some = row ? asMinutes(heard, row) : heard;
  const parts = segments(some, row);
  return parts.flatMap((part) => {
    const name = nameOf(part, parts.length === 1, memory);
    const time = timeOf(
      part,
      parts.length > 1 ||
        (memory.follows && !holds.test(textOf(part))) ||
        /(?:^| )(?:timer|alarm)(?: for| to)? (?:\d|[a-z]+teen|twenty|thirty|forty|fifty)|^(?:set|start) |^(?:ok |and |now |then )*(?:put|pop|bung) \d+ on |(?:tray|batch|sheet) \S+ .*\d$/.test(
          textOf(part),
        ),
    );
    const asked = name || time ? undefined : methodStep(part, memory);
    const step = stepIn(part, name) ?? asked;
    const again = time ? undefined : (sameAgain(part, memory) ?? thatMany(part, memory));
    const unclear = time?.when && lengthOrClock.exec(textOf(part))?.[1];
    if (unclear) return [{ do: "set", ...(name ? { name } : {}), unclear }];
    const draft: Draft = {
      do: "set",
      ...(name && !/^many /.test(name) ? { name } : asked ? { name: asked } : {}),
      ...time,
      ...(row && wasBare(heard, part) ? { bare: true } : {}),
      ...(time?.bare && isAlarmsNumber(part, time.for_min) ? { alarm: true } : {}),
      ...again,
      ...(step ? { step } : {}),
      ...(time?.for_min !== undefined && onceRung.test(textOf(part)) ? { after: true } : {}),
    };
    // "opened cream 4 days": asked about before a timer runs for days
    const kept = time?.for_min !== undefined && !memory.follows ? keptSaid(part) : undefined;
    if (kept) return [{ ...draft, kept }];
    const trays = traysEach(part);
    if (trays.length > 0) return trays.map((tray) => ({ ...draft, name: tray }));
    return Array.from({ length: counted ? 1 : copies(part) }, () => draft);
  });
}

/** "timer for that many min", behind a sum. */
const thatMany = (part: readonly Piece[], { last, table }: Memory): Draft | undefined =>
  last?.tool === "convert" &&
  table.number !== undefined &&
  /\bthat many (?:min|mins|minutes)\b/.test(textOf(part))
    ? { for_min: table.number }
    : undefined;

/** "same again for tray 2": as long as the one that was set last. */
function sameAgain(part: readonly Piece[], memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "timer" ? (memory.last.inputs as Draft) : undefined;
  if (
    before?.do !== "set" ||
    !/^(?:(?:and|now|ok) )*(?:the )?same(?: again| thing)?(?: |$)|^(?:(?:and|now|ok) )*tray \S+ (?:as well|too|also)(?: now)?$/.test(
      textOf(part),
    )
  )
    return undefined;
  const { for_min, step } = before;
  return { ...(for_min === undefined ? {} : { for_min }), ...(step ? { step } : {}) };
}

/** "14 min after that", "once that's done another 10". */
const onceRung =
  /(?:^| )(?:(?:straight |right )?after (?:that|this|it|the first(?: one)?)|afterwards|once (?:that|it|this)(?:s| is| has)? (?:done|rung|rings|over|finished|up))(?: |$|,)/;

/** "timer 1:30": an hour and a half, a minute and a half, or half past one? */
const lengthOrClock = /^(?:set |start )?(?:a |the )?timer (?:for )?([0-3]:[0-5]\d)$/;

/** "start that timer" behind "how long do they rest": the step that was spoken of. */
function methodStep(part: readonly Piece[], memory: Memory): string | undefined {
  const step =
    memory.last?.tool === "method"
      ? memory.last.inputs.step
      : memory.last?.tool === "ganache"
        ? "ganache"
        : undefined;
  const points =
    part.some((each) => ["that", "it", "the", "this"].includes(each.text)) ||
    !part.some((each) => each.thing ?? each.amount);
  return points && (step === "rest" || step === "bake" || step === "mature" || step === "ganache")
    ? step
    : undefined;
}

const most = 10;

/** "timer for 3 trays, 15 min each", "15 min each for tray 1 and tray 2": a timer a tray, by its number. */
function traysEach(part: readonly Piece[]): string[] {
  if (!part.some((each) => /^(?:each|apiece|every)$/.test(each.text))) return [];
  const named = part.flatMap((each, at) => {
    const number = part[at + 1]?.amount;
    return each.thing?.count === "trays" && number?.dim === "number" ? [`tray ${number.value}`] : [];
  });
  if (named.length > 1) return named;
  const count = part.find((each) => each.amount?.of?.count === "trays")?.amount?.value ?? 0;
  return Number.isInteger(count) && count > 1 && count <= most
    ? Array.from({ length: count }, (_, at) => `tray ${at + 1}`)
    : [];
}

/** "two 10 minute timers", "3 timers of 15 min each". */
function copies(part: readonly Piece[]): number {
  const timers = part.findIndex((each) => each.text === "timers");
  const before = part[timers - 1]?.amount;
  const first = part.findIndex(isLength);
  const isNext = part.slice(timers + 1, first).every((each) => /^(?:of|for|at|with|each)$/.test(each.text));
  if (timers > 0 && first > timers && isNext && before?.dim === "number" && Number.isInteger(before.value))
    return Math.min(Math.max(1, before.value), most);
  const at = first;
  const count = part[at - 1]?.amount;
  const many =
    count?.dim === "number" && !count.of && part.slice(at + 1).some((each) => each.text === "timers");
  return many && Number.isInteger(count.value) && count.value >= 1 && count.value <= 10 ? count.value : 1;
}

/** The sentence cut into one part a timer: at the joint before each further time, or each further step. */
function segments(some: readonly Piece[], row?: readonly number[]): Piece[][] {
  const lengths = some.flatMap((each, at) =>
    isLength(each) && !isShift(some, at) && !isMinutesOf(some, at) ? [at] : [],
  );
  const bare =
    lengths.length > 0 ? some.flatMap((each, at) => (isBare(each) && isListed(some, at) ? [at] : [])) : [];
  // "the oven timer for 14 and the rest for 35"
  const minutes = some.flatMap((each, at) => (isBare(each) && some[at - 1]?.text === "for" ? [at] : []));
  if (lengths.length === 0 && minutes.length > 1 && /(?:^| )timers?(?: |$)/.test(textOf(some)))
    bare.push(...minutes);
  // "tray 1 rest 30, tray 2 rest 40"
  const rested = some.flatMap((each, at) => (isBare(each) && some[at - 1]?.thing?.step ? [at] : []));
  if (lengths.length === 0 && rested.length > 1 && some[0]?.thing?.count === "trays") bare.push(...rested);
  const times = [...lengths, ...bare].sort((a, b) => a - b);
  const clocks = some.flatMap((each, at) => (isClock(each) && each.when?.minute !== undefined ? [at] : []));
  const marks = row
    ? [...row]
    : times.length > 0 && !(clocks.length > 0 && waitsForMoment.test(textOf(some)))
      ? times
      : clocks.length > 0
        ? clocks
        : stepMarks(some);
  const own = marks.length === 1 ? stepBefore(some, marks[0] ?? 0) : undefined;
  if (own !== undefined) marks.unshift(own);
  if (marks.length < 2) return [[...some]];
  const cuts = marks.slice(1).map((mark, i) => {
    const from = (marks[i] ?? 0) + 1;
    const joint = some.findLastIndex(
      (each, at) => at >= from && at < mark && (isJoint(each) || onceRung.test(textOf(some.slice(at, mark)))),
    );
    return joint < 0 ? from : joint;
  });
  return [0, ...cuts].map((from, i) => some.slice(from, cuts[i] ?? some.length));
}

/** "45 for the ganache" behind "20 min for the shells"; "for 10, 15 and 20 minutes", "10 and 12 minute timers". */
const isListed = (some: readonly Piece[], at: number) => {
  const [before, next] = [some[at - 1] ?? { text: "" }, some[at + 1] ?? { text: "" }];
  return (
    // "18 min for tray one and another 18"
    (before.text === "another" && (some[at + 1] === undefined || isJoint(next))) ||
    (next.text === "for" && before.text !== "at" && some[at + 2]?.amount?.dim !== "time") ||
    // "12 min on the oven, 15 on the syrup"
    (next.text === "on" &&
      isJoint(before) &&
      (/^(?:the|my)$/.test(some[at + 2]?.text ?? "") || some[at + 2]?.thing?.count === "trays")) ||
    (isJoint(next) &&
      (/^(?:for|timers?|alarms?)$/.test(before.text) ||
        isJoint(before) ||
        (at === 0 && some.some((each) => each.text === "timers"))))
  );
};

/** "start the rest and the bake timer": two steps without a time, joined. */
function stepMarks(some: readonly Piece[]): number[] {
  const marks = some.flatMap((each, at) =>
    each.thing?.step && stepTimes.some((row) => row.step === each.thing?.step) ? [at] : [],
  );
  const steps = new Set(marks.map((at) => some[at]?.thing?.step));
  const joined = marks.slice(1).every((mark, i) => some.slice(marks[i], mark).some(isJoint));
  return steps.size === marks.length && joined && some.some((each) => /^timers?$/.test(each.text))
    ? marks
    : [];
}

/** "a rest timer and a 10 min one for the oven": a step's timer without a time before another's with one. */
function stepBefore(some: readonly Piece[], mark: number): number | undefined {
  const joint = some.findLastIndex((each, at) => at < mark && each.text === "and");
  const isOther = some.slice(joint).some((each) => /^(?:timers?|one)$/.test(each.text));
  const step = some.findIndex(
    (each, at) => at < joint && stepTimes.some((row) => row.step === each.thing?.step),
  );
  return isOther && step >= 0 && some.slice(step, joint).some((each) => each.text === "timer")
    ? step
    : undefined;
}

/** "10 min before 3 pm": the length moves the moment. */
const isShift = (some: readonly Piece[], at: number) =>
  ["before", "after"].includes(some[at + 1]?.text ?? "") && isClock(some[at + 2]);

/** "1:30 minutes": read as a clock time and a unit, meant as a length. */
const isMinutesOf = (some: readonly Piece[], at: number) =>
  isClock(some[at]) && ["min", "h"].includes(some[at + 1]?.thing?.unit ?? "");

/**
 * The length or the moment in some pieces.
 * @param bareToo whether a number without a unit counts, as minutes
 */
export function timeOf(
  some: readonly Piece[],
  bareToo = false,
): Pick<Draft, "for_min" | "high_min" | "when" | "shift_min" | "bare" | "alarm"> | undefined {
  const glued = some.findIndex((_, at) => isMinutesOf(some, at));
  if (glued >= 0)
    return {
      for_min: ((some[glued]?.when?.minute ?? 0) * inBase(1, some[glued + 1]?.thing?.unit ?? "min")) / 60,
    };
  const shift = some.findIndex((each, at) => isLength(each) && isShift(some, at));
  const clock = some.find((each) => each.when?.minute !== undefined) ?? some.find((each) => each.when);
  const length = some.find((each, at) => isLength(each) && at !== shift);
  const useClock =
    clock && (!length || (clock.when?.minute !== undefined && waitsForMoment.test(textOf(some))));
  const hour = useClock ? hourOfAlarm(some, clock) : undefined;
  // "an alarm for 12 for tray 2": nothing is baked by the clock
  if (hour !== undefined && isOfStep(some)) return { for_min: hour, bare: true, alarm: true };
  if (hour !== undefined && clock?.when) return { when: placeless(clock.when), alarm: true };
  if (useClock && clock.when)
    return { when: placeless(clock.when), ...(shift >= 0 ? { shift_min: shifted(some, shift) } : {}) };
  if (length?.amount) return lengthOf(length.amount);
  const isCount = (at: number) => /^(?:timers?|alarms?)$/.test(some[at + 1]?.text ?? "");
  // "set timer 14 tray 1": minutes stand behind the timer, and the tray's number behind the tray
  const first = some.findIndex((each) => /^(?:timers?|alarms?)$/.test(each.text)) + 1;
  const behindTimer = first > 0 && isNumber(some[first]) ? some[first] : undefined;
  const isTray = (at: number) => some[at - 1]?.thing?.count === "trays";
  const number = bareToo
    ? (behindTimer ??
      some.find((each, at) => (isBare(each) && !isCount(at) && !isTray(at)) || isPutOn(some, at)))
    : undefined;
  return number?.amount ? { ...lengthOf({ ...number.amount, unit: "min" }), bare: true } : undefined;
}

const shifted = (some: readonly Piece[], at: number) =>
  inBase(some[at]?.amount?.value ?? 0, some[at]?.amount?.unit ?? "min") *
  (some[at + 1]?.text === "before" ? -1 : 1);

const lengthOf = ({ value, high, unit }: Amount) => ({
  for_min: inBase(value, unit),
  ...(high !== undefined ? { high_min: inBase(high, unit) } : {}),
});

/** "45 minutes on for it to set": what "it" is, the table says. */
function nameOf(part: readonly Piece[], alone: boolean, memory: Memory): string {
  // "tray 2 piped, rest 35"
  const tray = /^(?:the |my )?trays? (\d+) (?:is |are |all )?(?:piped|in|done|out|baked) ,/.exec(
    textOf(part),
  )?.[1];
  if (tray) return `tray ${tray}`;
  const named = newName(part, alone ? undefined : false);
  // "ganche timer": the word that it was read as
  const isGanache = part.some((each) => each.thing?.base === "ganache" && each.thing.text === named);
  const name = isGanache ? "ganache" : named;
  if (name && name !== "set") return name;
  const pronoun = /(?:^| )(?:it|them) to (?:set|firm|cool|chill|rest)/.test(textOf(part));
  const onTable = memory.table.mass?.thing || memory.table.filling;
  return pronoun && onTable === "ganache" ? "ganache" : "";
}

/** The step whose own time serves when none is said. */
function stepIn(part: readonly Piece[], name: string): string | undefined {
  const step = part.find((each) => each.thing?.step && stepTimes.some((row) => row.step === each.thing?.step))
    ?.thing?.step;
  if (step) return step;
  if (name === "rest") return name;
  const sets = /(?:^| )(?:it|them) to (?:set|firm)/.test(textOf(part));
  const ganache =
    (sets && name === "ganache") ||
    part.some((each) => each.thing?.base === "ganache" || each.thing?.step === "ganache sets");
  return ganache && (name === "" || name.includes("ganache")) ? "ganache" : undefined;
}
