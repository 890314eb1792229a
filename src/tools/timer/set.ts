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

export function readSet(said: readonly Piece[], memory: Memory): Draft[] {
  const heard = withSameTime(withoutUsual(said));
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
    const asked = time || (name && !saysThatLong.test(textOf(part))) ? undefined : methodStep(part, memory);
    const step = stepIn(part, name) ?? asked;
    const again = time ? undefined : (sameAgain(part, memory) ?? thatMany(part, memory));
    const unclear = time?.when && lengthOrClock.exec(textOf(part))?.[1];
    if (unclear) return [{ do: "set", ...(name ? { name } : {}), unclear }];
    const draft: Draft = {
      do: "set",
      ...(name && !/^many /.test(name) ? { name } : asked ? { name: asked } : {}),
      ...(again && trayNamed.test(textOf(part)) ? { name: trayNamed.exec(textOf(part))?.[0] ?? "" } : {}),
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
  if (before?.do !== "set" || !asTheLast.test(textOf(part))) return undefined;
  const { for_min, step } = before;
  return { ...(for_min === undefined ? {} : { for_min }), ...(step ? { step } : {}) };
}

const asTheLast =
  /^(?:(?:and|now|ok) )*(?:the )?(?:same|ditto)(?: again| thing)?(?: |$)|^(?:(?:and|now|ok|so|then|the|my|for|on) )*(?:tray|sheet|mat|batch) \S+(?: [,:])? (?:(?:gets|needs|wants|takes|has|for|is|just) )*(?:as well|too|also|likewise|ditto|as long|(?:the |exactly the )?same)(?: (?:time|again|thing|length|long|minutes|amount|one|as (?:that|before|the (?:first|other|last)(?: one)?|(?:the )?tray \S+)))*(?: (?:please|pls|now|too))*$/;

/** "tray 2: the same again": the tray, whatever else stands there. */
const trayNamed = /(?<= |^)(?:tray|sheet|mat|batch) (?:\d{1,2}|[a-d])(?= |$)/;

/** "14 min after that", "once that's done another 10". */
const onceRung =
  /(?:^| )(?:(?:straight |right )?after (?:that|this|it|the first(?: one)?)|afterwards|once (?:that|it|this)(?:s| is| has)? (?:done|rung|rings|over|finished|up))(?: |$|,)/;

/** "timer 1:30": an hour and a half, a minute and a half, or half past one? */
const lengthOrClock = /^(?:set |start )?(?:a |the )?timer (?:for )?([0-3]:[0-5]\d)$/;

/** "timer for that long, call it pink". */
const saysThatLong = /(?:^| )(?:that long|as long as that|that length|that time)(?: |$)/;

/** "start that timer" behind "how long do they rest": the step that was spoken of. */
function methodStep(part: readonly Piece[], memory: Memory): string | undefined {
  const step =
    memory.last?.tool === "method"
      ? memory.last.inputs.step
      : memory.last?.tool === "ganache"
        ? "ganache"
        : undefined;
  // "i need a timer", behind a ganache: for what, and how long, isn't said
  if (step === "ganache" && wantsOne.test(textOf(part))) return undefined;
  const points =
    part.some((each) => ["that", "it", "the", "this"].includes(each.text)) ||
    !part.some((each) => each.thing ?? each.amount);
  return points && (step === "rest" || step === "bake" || step === "mature" || step === "ganache")
    ? step
    : undefined;
}

const wantsOne =
  /^(?:.* )?(?:need|want|have|get|use|like) (?:a|another|one) ?(?:timer|alarm)?(?: (?:please|pls|now|too|also))*$/;

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

/** The step that has a time of its own; "one for the ganache" is to set, and "another for the oven" is asked about. */
function ownStep(some: readonly Piece[], at: number): string | undefined {
  const { thing, text = "" } = some[at] ?? {};
  if (thing?.step && stepTimes.some((row) => row.step === thing.step)) return thing.step;
  const lead = textOf(some.slice(Math.max(0, at - 4), at));
  const isOne = /(?:^| )(?:one|another)(?: (?:one|timer|more))? for(?: (?:the|my))?$/.test(lead);
  const isTimers =
    some[at + 1]?.text === "timer" && /(?:^|^(?:start|set)| (?:the|my|a|and|,|start|set))$/.test(lead);
  // "two timers: ganache and rest"
  const next = some[at + 1];
  const isListed =
    (!next || isJoint(next)) &&
    /(?:^| )timers(?: \S+){0,3}$/.test(lead) &&
    /(?:^| )(?:timers|and|[,:])$/.test(lead);
  if (thing?.base === "ganache" && isListed) return "ganache";
  if (thing?.base === "ganache" && (isOne || isTimers || /(?:^| )for(?: the)?$/.test(lead))) return "ganache";
  return isOne && text !== "the" && text !== "my" && !/^(?:it|that|them|me|us|later)$/.test(text)
    ? text
    : undefined;
}

/** "the lemon ones need 12 minutes, the lime ones too": as long as the one before. */
function withSameTime(some: readonly Piece[]): readonly Piece[] {
  if (!/(?:^| )timers(?: |$)/.test(textOf(some))) return some;
  const out: Piece[] = [];
  let last: Piece | undefined;
  for (let from = 0; from < some.length; ) {
    const next = some.findIndex((each, at) => at > from && isJoint(each) && each.text !== "also");
    const chunk = some.slice(from, next < 0 ? some.length : next);
    const own = chunk.find(isLength);
    const same = chunk.findIndex((each) => /^(?:too|also|likewise|same|as)$/.test(each.text));
    const isSame = last && !own && same > 1 && chunk.length <= 7 && asBefore.test(textOf(chunk));
    // "the same" is no name
    const end = chunk[same - 1]?.text === "the" ? same - 1 : same;
    out.push(...(last && isSame ? [...chunk.slice(0, end), last] : chunk));
    last = own ?? (isSame ? last : undefined);
    from = next < 0 ? some.length : next;
  }
  return out;
}
const asBefore =
  /^(?:, |and |then |plus )*(?:the |my )?(?!start|set|put|run|both)(?:[a-z]+ ){1,3}(?:too|also|likewise|as well|the same|same)$/;

const usual =
  /^(?:,? ?(?:all |both |each )?(?:(?:for|with|at|on) )?(?:the|their|my|its|our)? ?(?:usual|normal|standard|default|regular|ordinary) (?:times?|lengths?|durations?|minutes|time each|ones|amounts?)|, (?:the )?(?:usual|normal|standard|default)(?: ones?)?|,? ?(?:as|like) (?:usual|always|normal))(?: (?:please|pls|for each|each|for both|thanks))*$/;
/** "..., the usual times": said of no timer, since that is how long each of them runs anyway. */
function withoutUsual(some: readonly Piece[]): readonly Piece[] {
  const from = some.findIndex(
    (_, at) => at > 1 && some.length - at <= 9 && usual.test(textOf(some.slice(at))),
  );
  return from > 0 && !some.some((each) => isLength(each)) ? some.slice(0, from) : some;
}

/** "start the rest and the bake timer": two steps without a time, joined. */
function stepMarks(some: readonly Piece[]): number[] {
  const marks = some.flatMap((_, at) => (ownStep(some, at) ? [at] : []));
  const steps = new Set(marks.map((at) => ownStep(some, at)));
  const joined = marks.slice(1).every((mark, i) => some.slice(marks[i], mark).some(isJoint));
  const isOrdered = some.some(
    (each, at) =>
      /^timers?$/.test(each.text) || (/^(?:one|another)$/.test(each.text) && some[at + 1]?.text === "for"),
  );
  return steps.size === marks.length && joined && isOrdered ? marks : [];
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
