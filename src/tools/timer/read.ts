/** Reads what is asked of the timers: which order, which timer, how long or until when. */
import { smallNumbers } from "../../../data/words/numbers.ts";
import { opening, takingBack } from "../../../data/words/openers.ts";
import type { Memory, Reading } from "../contract/index.ts";
import type { Piece } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import {
  calls,
  drops,
  fewer,
  isChange,
  isNew,
  pushes,
  putsBack,
  putsOn,
  remeasures,
  shortens,
} from "./changes.ts";
import type { Draft } from "./draft.ts";
import { fillOpen } from "./filled.ts";
import { matching, unnamed } from "./find.ts";
import { heard } from "./heard.ts";
import { leftAsked } from "./left-asked.ts";
import { nameFrom, pointedAt } from "./name.ts";
import { namedSaid } from "./named-said.ts";
import { isOrder, leads, stops, stopWords } from "./orders.ts";
import { named, putRight } from "./put-right.ts";
import { readRename, remembered, renamedEach } from "./rename.ts";
import { readSet, timeOf } from "./set.ts";
import { stopSaid } from "./stop-said.ts";
import { begunAgo, heatOrMinutes, inFront, nameAlone, ofPast, otherOne, overNow } from "./told.ts";
import { leftUntilDone } from "./until-done.ts";
import { whyAnew } from "./why-anew.ts";

const pauses = new RegExp(`^${leads}(?:pause|hold|freeze|resume|unpause)(?: |$)|put .* on hold`);
/** "another 20 min for the blue ones": nothing is given or added to one that runs. */
const isAnother =
  /^(?!.*\b(?:add|give|put|extend|needs?|wants?)\b)(?:.* )?(?:another|further)[ _](?:\S*<time[^ ]*|\S*<number>) (?:for|on) (?:the |my )?\S+/;
/** "plus twenty min for the oven to heat up": where none runs by that name, one more. */
const besides =
  /^(?:(?:oh|ok|and|also|then|so|now) )*(?:plus|also|and|then) (?:also )?(?:a |an )?\S*<(?:time|number)[^ ]* (?:for|on) (?:the |my )?\S+/;
const addsTo =
  /^(?:(?:and|ok|so|please|pls|can you|now|then|just) )*add (?:another )?\S*<(?:time|number)[^ ]*(?: (?:more|extra|min|minutes))* (?:to|on|onto) (?!.*<(?:time|number)[^ ]* (?:less|off|shorter))/;
const isState =
  /^(?:too |very |so |really |a bit )*(?:hot|cold|pale|dark|brown|raw|soft|wet|sticky|slow|fast)(?: (?:today|already|now|still|inside|on top|enough))*$/;
const renames = new RegExp(
  `^(?:(?:no|nope|sorry|actually|wait|oops|,) )*${leads}(?:call|rename|name)(?: |$)|^${leads}change the name`,
);
const restarts = new RegExp(
  `^${leads}(?:restart|reset)(?: |$)|start .*(?: over| from the (?:top|start|beginning))(?: |$)`,
);
const corrects = new RegExp(
  `^${opening}(?:${takingBack}|make (?:it|that|the \\S+|timer \\S+)|change .* to|set (?:it|that) (?:to|for)|should (?:be|have been)|its supposed to be)(?: |$)`,
);
const dashed = /(?:^| )(?:timers?|alarm|countdown)(?: for \S+)? - \S*<time[^ ]*(?: |$)/;
const pronoun = /(?:^| )(?:it|its|that|thats|this)(?: |$)/;
const moves = /(?:change|reset|move) .*(?:to|for) |^set \S*<count=trays\S* .*to /;
const asksLeft =
  /^(?:(?:and|the|ok|so) )*(?:time|minutes) (?:on|for) (?:the |my )?\S+(?: \S+)?(?: \?)?$|what (?:was|is) .* (?:set|on) (?:to|for|at)(?: |$)|how (?:long|much (?:time|longer)|many min)|(?:did|has|have) .*(?:timers?|alarms?|one|it) .*(?:ring|rung|go off|gone off)|time (?:left|remaining|to go)|(?:minutes|time|long)\S* (?:still|more|left) (?:for|on)|(?:minutes|time|long) (?:still|more) (?:for|on)|much longer|when (?:does|do|will|is) .*(?:ring|go off|up|finish|over|done|due)|hows .*(?:one|timer|doing|going|coming)|(?:is|are|has) .*(?:timers?|one|it) .*(?:done|up|finished|over|rung|still)|left(?: (?:now|then|still|on it))*(?: on| of| \?|$)|^(?:(?:and|so|ok|now) )*(?:remaining|to go)(?: (?:now|then|still))*(?: \?)?$/;
const isQuestion =
  /^(?:(?:and|so|ok|oh|but) )*(?:how|hows|what|whats|when|whens|which|is|are|does|do|did|has|have|any|anything)(?: |$)/;
const asksClock =
  /^(?:(?:and|so|ok) )*(?:what time|whats the time|what is the time|when|what hour) (?:will (?:it|that) be|is it|is(?= (?:in )?\S*<time>)|would (?:it|that) be)(?: (?:in|after|when|once) \S*<time>| \S*<time>| (?:is|are|have) (?:over|up|gone|passed)| then| now)*(?: \?)?$/;
const hasBeen =
  /^(?:(?:ok|and|so|well|hm|but) )*(?:its|it is|theyre|they are|still) (?:still |not |too )(?:\S+ ){1,3}after \S*<time>$|^(?:(?:ok|and|so|well|hm) )*(?:its|it has|thats|theyve|they have|theyre) been (?:in (?:there )?(?:for )?|about |over )*\S*<time>/;
const asksAll =
  /^(?:(?:please|pls|ok|and|now|so|can you|could you|just) )*(?:read|tell|give|run|go|hear|say|let|show|call|status|state|rundown|update|recap|summary|where|how) (?:(?:me|us|out|off|back|through|to|over|hear|have|see|know|of|on|about|the|my|all|a|do|does|are|stand|again|every|rundown|status|recap|update|readout|summary) )*(?:timers|alarms|countdowns)(?: (?:back|out|off|again|please|pls|now|stand|standing|at|to me|for me|doing|going))*(?: \?)?$|^(?:(?:please|pls|ok|and|now|so) )*read (?:them|those|em|all of them)(?: all)?(?: (?:out|back|off|to me|again|please))+$|running|going(?! in| into| to)|ticking|(?:any|list|show|what|which|my|all|see|check) (?:\S+ ){0,3}(?:timers?|alarms?)|on the go|^timers(?: \?)?$|^(?:(?:and|so|ok) )*timers?(?: (?:on|up|set|there|now))* (?:which|what|whats)(?: (?:on|up|set|there|are|is|now))*(?: \?)?$|^(?:please |ok |and )*(?:list|show) (?:me )?(?:them|those|all|em)(?: all)?(?: please| pls)?$/;

/** One draft an order; several where several timers are set at once. */
export function readTimer(reading: Reading, memory: Memory): Draft | Draft[] {
  const { some, mask } = heard(reading);
  // "syrup 2 less", where something else was asked: an order for the one that runs
  const isOrderFor =
    isChange.test(mask) && (labelFirst(mask, memory) !== undefined || isOfOther(some, memory));
  if (memory.slot !== undefined && memory.last?.tool === "timer" && !isOrderFor) {
    const filled = fillOpen(some, mask, memory);
    if (filled || !isOrder.test(mask)) return filled ?? {};
  }
  const pointer = pointing(some, mask, memory);
  // "its been 10 mins": told, and no length of a new one
  if (hasBeen.test(mask)) return { do: "left", ...pointer };
  const stopped = stopSaid(some, memory);
  if (stopped) return stopped;
  const left = leftAsked(some, memory);
  if (left) return left;
  const renamed = namedSaid(some, memory);
  if (renamed) return renamed;
  const waited = leftUntilDone(some, mask, memory);
  if (waited) return waited;
  const told =
    overNow(some, memory) ??
    nameAlone(some, memory) ??
    otherOne(mask, memory) ??
    begunAgo(some, memory) ??
    ofPast(some, memory);
  if (told) return told;
  const anew = whyAnew(some, mask, memory);
  if (anew) return anew;
  const time = timeOf(some);
  if (pauses.test(mask)) return { do: "pause", ...pointer };
  // "add time to tray 1": how much isn't said
  const longer = time || addsSome.exec(mask) === null ? undefined : named(some, memory);
  if (longer !== undefined && !some.some((each) => each.amount && !longer.includes(each.text)))
    return { do: "add", name: longer };
  const pushed = memory.last?.tool === "timer" ? pushes.exec(mask)?.[1] : undefined;
  const by = pushed === undefined ? undefined : (smallNumbers[pushed] ?? Number(pushed));
  if (by)
    return {
      do: "add",
      more_min: shortens.test(mask) ? -by : by,
      ...(pointer.name ? {} : pointer),
      ...ofName(some, memory),
    };
  // "call it 20", behind a timer: no name
  if (calls.test(mask) && memory.last?.tool === "timer") {
    const length = timeOf(some, true);
    if (length?.for_min !== undefined) return { do: "move", for_min: length.for_min, ...remembered(memory) };
  }
  if (remeasures.test(mask)) {
    const length = timeOf(some, true);
    if (length?.for_min !== undefined)
      return { do: "move", for_min: length.for_min, ...remembered(memory), ...ofName(some, memory) };
  }
  if (renames.test(mask) && !time) return renamedEach(some, memory) ?? readRename(some, memory);
  if (stops.test(mask)) return readStop(some, mask, memory);
  // "how long have we left, dear?": nobody's name
  if (
    !time &&
    /how (?:long|much time|many minutes) have (?:we|i|you) (?:still |got |still got )?left\b(?! (?:on|for|with|till|until) )/.test(
      mask,
    )
  )
    return { do: "left", ...(memory.follows ? remembered(memory) : {}) };
  // "how much time is missing for the ganache"
  if (!time && /(?:time|minutes|long) (?:is |are )?(?:still )?missing (?:for|on) /.test(mask))
    return { do: "left", name: nameFrom(some.slice(some.findIndex((each) => each.text === "missing") + 2)) };
  // "make timer 2 15": the first number is its name
  const itsNumber = /^timer (\d+)$/.exec(pointer.name ?? "")?.[1];
  const others = itsNumber ? some.filter((each) => each.text !== itsNumber) : some;
  // "take 3 off tray 2"
  const shaved = some.find(
    (each, at) =>
      each.amount?.dim === "number" &&
      /^(?:take|knock|shave|cut|add|put|drop|lop|trim|shed|dock|stick)$/.test(some[at - 1]?.text ?? ""),
  );
  const amount = (
    shaved ??
    others.find(
      (each, at) =>
        each.amount?.dim === "time" ||
        // "blue needs 2 more", "give lime 4 longer": the color and the taste are the timer's
        (each.amount?.dim === "number" &&
          (!each.amount.of ||
            each.amount.of.color ||
            (each.amount.of.taste &&
              /^(?:longer|more|extra|shorter|less)$/.test(others[at + 1]?.text ?? ""))) &&
          !each.amount.fraction),
    )
  )?.amount;
  const isPutOn =
    /(?:^| )put \S*<time\S* on(?:to)? /.test(mask) &&
    matching(
      pointer.name ?? "",
      memory.names.timers.map((label) => ({ label })),
    ).length > 0;
  // "and another 20 min for the ganache", which has none yet; the turn itself may have set one just now
  const just = memory.last?.tool === "timer" ? memory.last.inputs : undefined;
  const known = [
    ...memory.names.timers,
    ...[just?.do === "set" ? (just.name ?? "timer") : undefined].filter((each) => typeof each === "string"),
  ];
  const isSecond =
    (isAnother.test(mask) || besides.test(mask)) &&
    pointer.name !== undefined &&
    known.length > 0 &&
    matching(
      pointer.name,
      known.map((label) => ({ label })),
    ).length === 0;
  // "put 2 on", behind more or less of it
  const again =
    memory.last?.tool === "timer" &&
    memory.last.inputs.do === "add" &&
    /(?:^| )(?:put|stick) (?:another )?\S*<(?:number|time)[^ ]* on$/.test(mask);
  const isDrop = memory.last?.tool === "timer" && drops.test(mask);
  if (putsBack.test(mask) && amount && !isNew.test(mask.replace(/give me /, "")))
    return {
      do: "add",
      more_min: amount.dim === "time" ? inBase(amount.value, amount.unit) : amount.value,
      ...(several(mask) ?? (pointer.name ? pointer : { ...remembered(memory), ...ofName(some, memory) })),
    };
  // "rest timer - 40 minutes": a dash, where there is none to take time from
  const onNone = (putsOn.test(mask) || dashed.test(mask)) && memory.names.timers.length === 0;
  if (
    amount &&
    !onNone &&
    (isPutOn || again || isDrop || isChange.test(mask)) &&
    !isNew.test(mask) &&
    !isSecond
  ) {
    const minutes = amount.dim === "time" ? inBase(amount.value, amount.unit) : amount.value;
    const step = pointer.name ? undefined : some.find((each) => each.thing?.step)?.thing?.step;
    // "take 3 min off, the oven is hot today": why, and no timer's name
    const givesIt = /(?:^| )(?:give|add|put) (?:it|that|this) \S*<(?:number|time)/.test(mask);
    const first = labelFirst(mask, memory);
    const which = first
      ? { name: first }
      : givesIt
        ? remembered(memory)
        : step
          ? { name: step }
          : isState.test(pointer.name ?? "")
            ? {}
            : { ...pointer, ...inFront(some, memory) };
    // "add 15 min to the take the butter out timer": its name takes nothing off
    const isLess = fewer.test(mask) && !addsTo.test(mask);
    const more_min = isLess && minutes > 0 ? -minutes : minutes;
    return { do: "add", more_min, ...(several(mask) ?? which) };
  }
  if (/(?:^| )(?:snooze|extend|stretch|lengthen|shorten)(?: |$)/.test(mask)) return { do: "add", ...pointer };
  const corrected = corrects.test(mask) && memory.last?.tool === "timer" ? timeOf(others, true) : undefined;
  const before = memory.last?.tool === "timer" ? (memory.last.inputs as Draft).when : undefined;
  const hour = before && corrected?.bare && (corrected.for_min ?? 24) <= 12 ? corrected.for_min : undefined;
  // "at quarter to eleven", "actually eleven": another hour
  if (hour !== undefined && before)
    return {
      do: "move",
      when: { ...before, text: "", minute: hour * 60 },
      ...pointer,
      ...remembered(memory),
    };
  const righted = putRight(some, reading.said, memory, pointer);
  if (righted) return { ...righted, ...several(mask) };
  if (corrected) return { do: "move", ...corrected, ...pointer, ...remembered(memory) };
  // "tray 1 timer 12 instead", of one that runs
  const own = / instead(?: please)?$/.test(mask) ? labelFirst(mask, memory) : undefined;
  const other = own === undefined ? undefined : timeOf(some, true);
  if (own && other) return { do: "move", ...other, name: own };
  if (moves.test(mask) && time) return { do: "move", ...time, ...pointer, ...ofName(some, memory) };
  if (restarts.test(mask) && !time) return { do: "restart", ...pointer };
  if (
    !time &&
    asksLeft.test(mask) &&
    /^(?:everything|all(?: of them)?|each|them all)$/.test(pointer.name ?? "")
  )
    return { do: "left" };
  if (!time && asksLeft.test(mask)) {
    const name = pointer.name ?? subjectOf(some, memory) ?? ofName(some, memory).name;
    return { do: "left", ...(name ? { ...pointer, name } : pronoun.test(mask) ? pointer : {}) };
  }
  if (
    !time &&
    asksAll.test(mask) &&
    !/(?:^(?:(?:please|pls|ok|okay|and|now|right|yes|so|,|can you) )*|(?:in|out|on) , )(?:get|set|start|put) /.test(
      mask,
    )
  )
    return { do: "list" };
  if (time?.when && untilAsked.test(mask)) return { do: "until", ...time };
  // "what time will it be in 3 hours", "when is 45 min from now"
  if (asksClock.test(mask))
    return { do: "clock", ...(time?.for_min === undefined ? {} : { for_min: time.for_min }) };
  // A question without a time sets nothing.
  if (!time && isQuestion.test(mask))
    return pointer.name ? { do: "left", name: pointer.name } : { do: "list" };
  // "tray 3 in 5 minutes from now for 15 min": it rings when both are over
  const times = reading.amounts.filter((each) => each.dim === "time");
  const [wait, length, ...more] = times;
  if (
    wait &&
    length &&
    more.length === 0 &&
    /(?:^| )in \S*<time>(?: from now)?,? for \S*<time>(?: |$)/.test(mask)
  ) {
    const [set] = readSet(some, memory);
    const for_min = inBase(wait.value, wait.unit) + inBase(length.value, length.unit);
    return {
      do: "set",
      ...(set?.name ? { name: set.name } : {}),
      ...(set?.step ? { step: set.step } : {}),
      for_min,
    };
  }
  return heatOrMinutes(some, memory) ?? readSet(some, memory);
}

/** "the ganache needs how long still", "syrup, how long": what stands in front of the question. */
function subjectOf(some: readonly Piece[], { names }: Memory): string | undefined {
  const how = some.findIndex((each) => each.text === "how");
  const verb = some.findIndex((each, at) => at < how && asking.test(each.text));
  const name = how > 0 ? nameFrom(some.slice(0, verb < 0 ? how : verb)) : "";
  const live = names.timers.map((label) => ({ label }));
  return name && matching(name, live).length > 0 ? name : undefined;
}

const addsSome =
  /^(?:(?:ok|and|so|please|pls|can you|now|i|we|need|want|just|a|bit|little) )*(?:(?:(?:add|give|put|allow|some|a bit of|a little|bit) )*(?:more|extra|another|additional) (?:bit of )?(?:time|minutes)|(?:add|put) (?:some |a bit of )?(?:time|minutes)) (?:on|to|for|onto) (?:the |my )?\S+(?: \S+){0,2}$|^(?:(?:ok|and|so|please|pls|can you|now|just) )*(?:give|allow) (?:the |my )?\S+(?: \S+){0,2} (?:some |a bit |a little )?(?:more|extra|longer)(?: time| minutes)?(?: please)?$/;
const untilAsked =
  /^(?:(?:and|so|ok|but|now|oh) )*(?:how (?:long|much (?:time|longer)|many \S+|far)|(?:what|whats) (?:time|the time) (?:is )?left|(?:time|hours|days|minutes|hrs|mins)(?:<\S*)?)(?: (?:is|it|there|do|does|we|i|have|has|got|left|still|off|away|are|more|longer|time|now|remain|remaining|remains|to|go|the))*(?:,? (?:till|until|til|to|before)(?: (?:it is|its|the))?| is| off is| away is) \S*<when>/;
const asking = /^(?:needs?|has|have|takes?|wants?|gets?|got|still|is|are|,)$/;

/** "move bake to 10:20": the one that is called so. */
const ofName = (some: readonly Piece[], memory: Memory): Draft => {
  const name = named(some, memory);
  return name ? { name } : {};
};

/** Which running timer is meant: by the words that point at it, else by "it". */
function pointing(some: readonly Piece[], mask: string, memory: Memory): Draft {
  const name = pointedAt(some);
  if (name === "other") return { name, ...remembered(memory) };
  // "make the first 12": the number is no part of its place
  const place = /^(first|second|third|fourth|fifth|last) \d+$/.exec(name)?.[1];
  if (place) return { name: place };
  if (name) return { name };
  // "stop timer 2": so it is called where none was given a name
  const number = /(?:^| )(?:timer|number) (\d+)<number>(?= |$)/.exec(mask)?.[1];
  const known = memory.names.timers.includes(number === "1" ? unnamed : `timer ${number}`);
  if (number && (known || stops.test(mask) || asksLeft.test(mask))) return { name: `timer ${number}` };
  // "tray one needs 2 more"
  const tray = /(?:^| )tray\S* (?:(\d+)<number>|(one|two|three|four|five|six)(?:<number>)?)(?: |$)/.exec(
    mask,
  );
  if (tray) return { name: `tray ${tray[1] ?? numberWords.indexOf(tray[2] ?? "") + 1}` };
  return pronoun.test(mask) || memory.follows ? remembered(memory) : {};
}

function readStop(some: readonly Piece[], mask: string, memory: Memory): Draft | Draft[] {
  if (isBoth.test(mask)) return { do: "stop", both: true };
  if (/(?:^| )(?:all|everything|every|them|em|the lot|timers)(?: |$)/.test(mask))
    return { do: "stop", all: true, ...exceptSaid(mask, memory) };
  const number = pointing(some, mask, memory).name;
  if (number && /^timer \d+$/.test(number)) return { do: "stop", name: number };
  // "tray one looks done already, stop it"
  const tray =
    /^(?:the |my )?tray\S* (?:(\d+)<number>|(one|two|three|four|five|six)) .*, (?:stop|cancel|kill) it$/.exec(
      mask.replace(/<count=trays>/g, ""),
    );
  if (tray) return { do: "stop", name: `tray ${tray[1] ?? numberWords.indexOf(tray[2] ?? "") + 1}` };
  // "pink tray is out of oven, stop pink tray": the order, and no "of" before it
  const order = some.findIndex((each) => stopWords.has(each.text) && !/^off?$/.test(each.text));
  const verb = order >= 0 ? order : some.findIndex((each) => stopWords.has(each.text));
  // "pink tray out of the oven, stop it": of those that run, the one that was named
  const isIt = /^(?:it|that)$/.test(some[verb + 1]?.text ?? "") && some.length <= verb + 2;
  const told = isIt ? namedBefore(some.slice(0, verb), memory) : undefined;
  if (told) return { do: "stop", name: told };
  const joint = some.findIndex((each, at) => at > verb && each.text === "and");
  // "stop it, shells are already cold"
  const why = some.findIndex((each, at) => at > verb && each.text === ",");
  if (why === verb + 2 && pronoun.test(some[verb + 1]?.text ?? ""))
    return { do: "stop", ...remembered(memory) };
  const parts = joint < 0 ? [some.slice(verb + 1)] : [some.slice(verb + 1, joint), some.slice(joint + 1)];
  const names = parts.map((part) => pointedAt([{ text: "stop" }, ...part]) || nameFrom(part)).filter(Boolean);
  if (names.length > 0)
    return names.map((name, at) => ({
      do: "stop",
      name,
      ...(at < names.length - 1 ? { more_to_stop: true } : {}),
      ...(/^other(?: |$)/.test(name) ? remembered(memory) : {}),
    }));
  return { do: "stop", ...(pronoun.test(mask) ? remembered(memory) : {}) };
}

/** The one timer whose whole name stands in what is told; none where it could be two. */
function namedBefore(some: readonly Piece[], { names }: Memory): string | undefined {
  const said = ` ${some.map((each) => each.text).join(" ")} `;
  const named = names.timers.filter((label) => said.includes(` ${label.toLowerCase()} `));
  return named.length === 1 ? named[0] : undefined;
}

const isBoth = /(?:^| )(?:both|the two of them)(?: |$)/;

/** "add 5 to both", "to all of them". */
const several = (mask: string): Draft | undefined =>
  isBoth.test(mask)
    ? { both: true }
    : /(?:^| )(?:all|every one|each one|each of them|the lot)(?: (?:of )?(?:them|those|these|timers|the timers))?$/.test(
          mask,
        )
      ? { all: true }
      : undefined;

/** "everything except lemon", "all but tray 2": by the names of those that run. */
function exceptSaid(mask: string, { names }: Memory): Draft {
  const said =
    /(?:^| )(?:except|but|apart from|other than)(?: for)? (?:the |my )?(.+?)(?: (?:timer|one))?$/.exec(
      mask.replace(/<[^>]*>/g, ""),
    )?.[1];
  const label =
    said &&
    names.timers.find((each) => each.replaceAll(" ", "_") === said || each === said.replaceAll("_", " "));
  return label ? { except: label } : {};
}

/** The one timer whose name stands at the beginning: "lemon 5 min less". */
const labelFirst = (mask: string, { names }: Memory): string | undefined => {
  const text = mask.replace(/<[^>]*>/g, "").replaceAll("_", " ");
  const hits = names.timers.filter((each) =>
    new RegExp(`^(?:(?:and|the|my|ok|now) )*${each.replace(/[^a-z0-9 ]/gi, ".")} `).test(text),
  );
  return hits.length === 1 ? hits[0] : undefined;
};

/** "2 more on tray 1", where tray 2 was asked about: no answer to that. */
function isOfOther(some: readonly Piece[], memory: Memory): boolean {
  const label = named(some, memory);
  const asked = (memory.last?.inputs as Draft | undefined)?.name;
  return label !== undefined && memory.names.timers.includes(label) && label !== asked;
}

const numberWords = ["one", "two", "three", "four", "five", "six"];
