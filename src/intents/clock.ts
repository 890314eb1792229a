/** Moments in a sentence: "3pm", "quarter past ten", "saturday the 21st", "by 8 this morning", "last sunday". */
import {
  dayParts,
  dayWords,
  months,
  namedTimes,
  shortWeekdays,
  weekdays,
} from "../../data/words/calendar.ts";
import { ordinals } from "../../data/words/numbers.ts";
import type { When } from "../tools/contract/index.ts";
import { readUnit } from "./amounts.ts";
import { readNumber } from "./numbers.ts";
import type { Token } from "./tokens.ts";

export type Piece = Omit<When, "text" | "at">;

export interface WhenRead {
  when: Piece;
  next: number;
}

const text = (token: Token | undefined) => token?.text ?? "";
/** Where "o'clock" ends, also in two words; `i` itself when it doesn't stand there. */
const pastOclock = (tokens: readonly Token[], i: number): number =>
  text(tokens[i]) === "oclock"
    ? i + 1
    : text(tokens[i]) === "o" && text(tokens[i + 1]) === "clock"
      ? i + 2
      : i;

const before = new Set([
  "at",
  "by",
  "until",
  "till",
  "before",
  "til",
  "from",
  "due",
  "ready",
  "ping",
  "since",
]);
const shortDayLeads = new Set([
  "on",
  "by",
  "for",
  "next",
  "last",
  "this",
  "till",
  "until",
  "til",
  "before",
  "from",
  "since",
]);

/** A moment that starts at `i`, all its neighbouring parts put together: "tomorrow at 9 am". */
export function readWhen(tokens: readonly Token[], i: number): WhenRead | undefined {
  const first = readPiece(tokens, i);
  if (!first) return undefined;
  let { when, next } = first;
  for (;;) {
    let at = next;
    while (
      ["at", "on", "by", "the", "in", "around", "about", ",", "for", "of"].includes(text(tokens[at])) &&
      at - next < 2
    )
      at += 1;
    const more = readPiece(tokens, at, at > next || when.minute === undefined);
    if (!more || clash(when, more.when)) break;
    when = { ...when, ...more.when };
    next = more.next;
  }
  return { when, next };
}

const clash = (a: Piece, b: Piece) =>
  Object.keys(b).some((key) => key !== "part" && key in a) ||
  ("weekday" in b && "days" in a) ||
  ("days" in b && "weekday" in a);

function readPiece(tokens: readonly Token[], i: number, loose = false): WhenRead | undefined {
  return (
    readIso(tokens, i) ??
    readDay(tokens, i) ??
    readSpoken(tokens, i) ??
    readClock(tokens, i, loose) ??
    readDate(tokens, i)
  );
}

/** 2026-03-20, with or without a time behind a T; 20.3.2026. */
function readIso(tokens: readonly Token[], i: number): WhenRead | undefined {
  const dotted = /^(\d{1,2})\.(\d{1,2})\.(\d{4}|\d{2})$/.exec(text(tokens[i]));
  if (dotted) {
    const [day = 0, month = 0, year = 0] = dotted.slice(1).map(Number);
    const fits = day >= 1 && day <= 31 && month >= 1 && month <= 12;
    return fits ? { when: { year: year < 100 ? 2000 + year : year, month, day }, next: i + 1 } : undefined;
  }
  const [year, a, month, b, day] = [0, 1, 2, 3, 4].map((k) => tokens[i + k]);
  if (
    year?.text.length !== 4 ||
    text(a) !== "-" ||
    text(b) !== "-" ||
    month?.kind !== "number" ||
    day?.kind !== "number"
  )
    return undefined;
  const when: Piece = { year: year.value, month: month.value, day: day.value };
  if (text(tokens[i + 5]) !== "t") return { when, next: i + 5 };
  const clock = readClock(tokens, i + 6, false);
  return clock ? { when: { ...when, ...clock.when }, next: clock.next } : { when, next: i + 5 };
}

const isDayName = (word: string) =>
  [word, word.replace(/s$/, "")].some(
    (each) => Object.hasOwn(weekdays, each) || Object.hasOwn(shortWeekdays, each),
  );

function readDay(tokens: readonly Token[], i: number): WhenRead | undefined {
  const word = text(tokens[i]);
  const lead = text(tokens[i - 1]);
  if (word === "day" && ["after", "before"].includes(text(tokens[i + 1]))) {
    const days = dayWords[text(tokens[i + 2])];
    if (days === 1 && text(tokens[i + 1]) === "after") return { when: { days: 2 }, next: i + 3 };
    if (days === -1 && text(tokens[i + 1]) === "before") return { when: { days: -2 }, next: i + 3 };
  }
  const days = Object.hasOwn(dayWords, word) ? dayWords[word] : undefined;
  if (days !== undefined)
    return { when: word === "tonight" ? { days, part: "night" } : { days }, next: i + 1 };
  if (word === "this" || word === "last" || word === "next") {
    const then = text(tokens[i + 1]);
    if (word === "last" && then === "night") return { when: { days: -1, part: "night" }, next: i + 2 };
    if (word === "this" && dayParts[then]) return { when: { days: 0, part: dayParts[then] }, next: i + 2 };
    const weekday = weekdays[then] ?? shortWeekdays[then];
    if (weekday !== undefined) return { when: { weekday, which: word }, next: i + 2 };
    return undefined;
  }
  const weekday =
    weekdays[word] ??
    weekdays[word.replace(/s$/, "")] ??
    (shortDayLeads.has(lead) || tokens[i + 1]?.kind === "number" ? shortWeekdays[word] : undefined);
  if (weekday !== undefined && isDayName(word)) return { when: { weekday }, next: i + 1 };
  const part = Object.hasOwn(dayParts, word) ? dayParts[word] : undefined;
  if (
    part &&
    (lead === "the" ||
      lead === "in" ||
      ["tomorrow", "yesterday"].includes(lead) ||
      weekdays[lead] !== undefined ||
      tokens[i - 1]?.kind === "number")
  )
    return { when: { part }, next: i + 1 };
  const ago = readNumber(tokens, i) ?? readVague(tokens, i);
  const unit = ago && readUnit(tokens, ago.next, ago.value);
  if (ago && unit && (unit.unit === "d" || unit.unit === "week") && text(tokens[unit.next]) === "ago")
    return { when: { days: -Math.round(ago.value * (unit.unit === "week" ? 7 : 1)) }, next: unit.next + 1 };
  return undefined;
}

/** "a week ago", "a couple of days ago", "a few days ago": the article and its like as numbers. */
function readVague(tokens: readonly Token[], i: number): { value: number; next: number } | undefined {
  if (text(tokens[i]) !== "a") return undefined;
  const many = { couple: 2, few: 3 }[text(tokens[i + 1])];
  if (many === undefined) return { value: 1, next: i + 1 };
  return { value: many, next: text(tokens[i + 2]) === "of" ? i + 3 : i + 2 };
}

/** "moved to half five". */
const isMoved = (tokens: readonly Token[], i: number): boolean =>
  text(tokens[i - 1]) === "to" &&
  /^(?:moved|changed|pushed|shifted|brought|forward|back)$/.test(text(tokens[i - 2]));

/** "in the morning", "am": what stands before it is an hour. */
const inTheMorning = (tokens: readonly Token[], at: number): boolean =>
  /^(?:am|pm|in (?:the )?(?:morning|afternoon|evening)|at night|tonight|tomorrow)\b/.test(
    tokens
      .slice(at, at + 3)
      .map(text)
      .join(" "),
  );

/** "quarter past ten", "half past 3", "ten to four", "twenty past three", "noon", "3 o'clock". */
function readSpoken(tokens: readonly Token[], i: number): WhenRead | undefined {
  // "noon", "12 noon"
  const name = ["12", "twelve"].includes(text(tokens[i])) ? i + 1 : i;
  const named = Object.hasOwn(namedTimes, text(tokens[name])) ? namedTimes[text(tokens[name])] : undefined;
  if (named !== undefined) return { when: { minute: named, half: "24" }, next: name + 1 };
  const start = text(tokens[i]) === "a" ? i + 1 : i;
  const part = { quarter: 15, qaurter: 15, qarter: 15, half: 30, haf: 30 }[text(tokens[start])];
  const number = part === undefined ? readNumber(tokens, start) : undefined;
  const minutes = part ?? number?.value;
  const at = part === undefined ? (number?.next ?? start) : start + 1;
  const skip = text(tokens[at]).startsWith("min") ? at + 1 : at;
  const joint = text(tokens[skip]);
  const lead = text(tokens[i - 1]);
  // "by half eight", "half eleven in the morning" is half past
  const bare =
    part === 30 && (before.has(lead) || isMoved(tokens, i) || inTheMorning(tokens, at + 1))
      ? readNumber(tokens, at)
      : undefined;
  if (bare && Number.isInteger(bare.value) && bare.value >= 1 && bare.value <= 12)
    if (!followedByThing(tokens, bare.next, bare.value))
      return withHalf(tokens, bare.next, bare.value * 60 + 30, false);
  // "from 9 to 5" goes on from nine
  if (joint === "to" && part === undefined && ["from", "since"].includes(lead)) return undefined;
  if (minutes === undefined || minutes >= 60 || !["past", "to", "after", "till", "of"].includes(joint))
    return undefined;
  const roundMinutes = number?.spelt === true && minutes % 5 === 0 && ["for", "its", "is"].includes(lead);
  if (joint !== "past" && part !== 15 && !before.has(lead) && !roundMinutes) return undefined;
  if (joint === "of") return undefined;
  const hour = readNumber(tokens, skip + 1);
  if (!hour || !Number.isInteger(hour.value) || hour.value < 1 || hour.value > 24) return undefined;
  if (readUnit(tokens, hour.next, hour.value)) return undefined;
  const past = joint === "past" || joint === "after";
  const minute = (hour.value % 24) * 60 + (past ? minutes : -minutes);
  return withHalf(tokens, hour.next, (minute + 1440) % 1440, hour.value > 12);
}

/** "8 this morning", "7 tonight", "9 tomorrow": the number is an hour. */
function dayPartFollows(tokens: readonly Token[], i: number): boolean {
  const [then, next] = [text(tokens[i]), text(tokens[i + 1])];
  // "ready for ten tomorrow morning"
  if (then === "this" || then === "tomorrow") return Object.hasOwn(dayParts, next);
  return (
    then === "tonight" || (then === "in" && next === "the" && Object.hasOwn(dayParts, text(tokens[i + 2])))
  );
}

/** "3pm", "15:00", "3.30 pm", "at 7", "7 o'clock". A bare hour counts only where a moment is expected. */
function readClock(tokens: readonly Token[], i: number, loose: boolean): WhenRead | undefined {
  const token = tokens[i];
  const lead = text(tokens[i - 1]);
  const expected = before.has(lead) || loose || dayPartFollows(tokens, i + 1);
  if (token?.kind === "word") {
    const hour = readNumber(tokens, i);
    if (!hour || hour.negative || hour.fraction || hour.value > 999) return undefined;
    // "two thirty" is half past two where a moment is expected
    const [h, m] = hour.value >= 100 ? [Math.floor(hour.value / 100), hour.value % 100] : [hour.value, 0];
    if (!Number.isInteger(h) || h > 24 || m >= 60) return undefined;
    const split = m === 0 && hour.value < 25 ? readMinutes(tokens, hour.next) : undefined;
    const two = split && withHalf(tokens, split.next, h * 60 + split.value, false);
    if (two && (two.when.half || (expected && !followedByThing(tokens, split.next, split.value)))) return two;
    const told = withHalf(tokens, hour.next, h * 60 + m, false);
    if (told.when.half || pastOclock(tokens, hour.next) > hour.next) return told;
    return expected && !followedByThing(tokens, hour.next, hour.value) ? told : undefined;
  }
  if (token?.kind !== "number" || token.value === undefined) return undefined;
  const colon = tokens[i + 1];
  const minutes = tokens[i + 2];
  if (
    text(colon) === ":" &&
    colon?.gap === false &&
    minutes?.kind === "number" &&
    minutes.gap === false &&
    minutes.text.length === 2 &&
    Number.isInteger(token.value) &&
    (minutes.value ?? 60) < 60 &&
    token.value < 25
  ) {
    const seconds = text(tokens[i + 3]) === ":" && tokens[i + 4]?.kind === "number" ? i + 5 : i + 3;
    return withHalf(
      tokens,
      seconds,
      token.value * 60 + (minutes.value ?? 0),
      token.text.length === 2 && token.value !== 12
        ? token.value > 12 || token.text[0] === "0"
        : token.value > 12,
    );
  }
  const dotted = /^(\d{1,2})\.(\d{2})$/.exec(token.text);
  if (dotted && Number(dotted[1]) < 25 && Number(dotted[2]) < 60) {
    const told = withHalf(tokens, i + 1, Number(dotted[1]) * 60 + Number(dotted[2]), Number(dotted[1]) > 12);
    if (
      told.when.half === "am" ||
      told.when.half === "pm" ||
      (before.has(lead) && !followedByThing(tokens, i + 1, token.value))
    )
      return told;
    return undefined;
  }
  if (!Number.isInteger(token.value)) return undefined;
  const hours = token.value >= 100 && token.text.length >= 3 ? Math.floor(token.value / 100) : token.value;
  const rest = token.value >= 100 ? token.value % 100 : 0;
  if (hours > 24 || rest >= 60) return undefined;
  const told = withHalf(tokens, i + 1, hours * 60 + rest, false);
  if (told.when.half) return told;
  if (pastOclock(tokens, i + 1) > i + 1) return told;
  if (token.value > 24) return undefined;
  return expected && !followedByThing(tokens, i + 1, token.value)
    ? { ...told, when: hours > 12 ? { ...told.when, half: "24" } : told.when }
    : undefined;
}

/** The minutes of an hour said in words: "ten fifteen", "nine oh five". */
function readMinutes(tokens: readonly Token[], i: number): { value: number; next: number } | undefined {
  const oh = text(tokens[i]) === "oh" ? i + 1 : i;
  const read = tokens[oh]?.kind === "word" ? readNumber(tokens, oh) : undefined;
  const fits = read && !read.fraction && Number.isInteger(read.value) && read.value < 60;
  return fits && read.value > 0 && read.value < 10 === oh > i ? read : undefined;
}

function withHalf(tokens: readonly Token[], next: number, minute: number, settled: boolean): WhenRead {
  let at = pastOclock(tokens, next);
  const said = text(tokens[at]);
  const dotted =
    (said === "a" || said === "p") && text(tokens[at + 1]) === "." && text(tokens[at + 2]) === "m"
      ? `${said}m`
      : said;
  if (dotted === "am" || dotted === "pm") {
    at += dotted === said ? 1 : text(tokens[at + 3]) === "." ? 4 : 3;
    const hour = Math.floor(minute / 60);
    const turned = hour <= 12 ? (hour % 12) * 60 + (minute % 60) + (dotted === "pm" ? 720 : 0) : minute;
    return { when: { minute: turned, half: dotted }, next: at };
  }
  return { when: settled ? { minute, half: "24" } : { minute }, next: at };
}

/** A number that something follows is no hour: "at 50 %", "at 150 c", "by 3 trays". */
function followedByThing(tokens: readonly Token[], i: number, value: number, second = false): boolean {
  if (readUnit(tokens, i, value)) return true;
  const then = text(tokens[i]);
  // "from 24 to 36 macarons", "from 3 to 5 %": what the second is, the first is too
  const upTo = then === "to" && !second ? readNumber(tokens, i + 1) : undefined;
  if (upTo && (upTo.value > 24 || followedByThing(tokens, upTo.next, upTo.value, true))) return true;
  if (["-", "/", "x", "*", "+", "times", "and", ":"].includes(then) && tokens[i + 1]?.kind === "number")
    return true;
  return (
    tokens[i]?.kind === "word" &&
    !whenFollows.has(then) &&
    !Object.hasOwn(dayWords, then) &&
    weekdays[then] === undefined
  );
}

const whenFollows = new Set([
  "now",
  "on",
  "in",
  "this",
  "please",
  "pls",
  "instead",
  "and",
  "when",
  "so",
  "for",
  "what",
  "work",
  "how",
  "then",
  "sharp",
  "today",
  "tonight",
  "the",
  "that",
  "with",
  "not",
  "but",
  "or",
  "next",
  "can",
  "do",
  "is",
  "i",
  "to",
  "start",
  "latest",
  "thanks",
  "tho",
  "though",
  "plan",
  "would",
  "will",
  "could",
  "make",
  "timer",
  "alarm",
  "if",
  "as",
]);

/** "for 3/19": month and day, where only one order makes a date and a word before it speaks of time. */
function readSlashed(tokens: readonly Token[], i: number): Piece | undefined {
  const written = [0, 1, 2].map((k) => text(tokens[i + k])).join("");
  const [, first, second] = /^(\d{1,2})\/(\d{1,2})$/.exec(written) ?? [];
  if (!first || !second || !["for", "on", "by", "until", "till", "from"].includes(text(tokens[i - 1])))
    return undefined;
  const [a, b] = [Number(first), Number(second)];
  if (a >= 1 && a <= 12 && b > 12 && b <= 31) return { month: a, day: b };
  return b >= 1 && b <= 12 && a > 12 && a <= 31 ? { month: b, day: a } : undefined;
}

/** "the 21st", "march 8", "8th of march", "on the ninth of march". */
function readDate(tokens: readonly Token[], i: number): WhenRead | undefined {
  const word = text(tokens[i]);
  const month = Object.hasOwn(months, word) ? months[word] : undefined;
  if (month) {
    const day = readOrdinal(tokens, text(tokens[i + 1]) === "the" ? i + 2 : i + 1, true);
    return day && { when: { month, day: day.value }, next: day.next };
  }
  const slashed = readSlashed(tokens, i);
  if (slashed) return { when: slashed, next: i + 3 };
  const day =
    readOrdinal(tokens, i, false) ??
    (tokens[i]?.kind === "number" ? { value: tokens[i]?.value ?? 0, next: i + 1, bare: true } : undefined);
  if (!day || day.value > 31 || day.value < 1) return undefined;
  const at = text(tokens[day.next]) === "of" ? day.next + 1 : day.next;
  const behind = months[text(tokens[at])];
  if (behind && Object.hasOwn(months, text(tokens[at])))
    return { when: { day: day.value, month: behind }, next: at + 1 };
  if ("bare" in day) return undefined;
  const lead = text(tokens[i - 1]);
  return lead === "the" || lead === "on" || weekdays[lead] !== undefined
    ? { when: { day: day.value }, next: day.next }
    : undefined;
}

/** "21st", "ninth", "twenty first"; a bare number too where `bare` allows it. */
function readOrdinal(
  tokens: readonly Token[],
  i: number,
  bare: boolean,
): { value: number; next: number } | undefined {
  const token = tokens[i];
  if (token?.kind === "number" && Number.isInteger(token.value)) {
    const ending = tokens[i + 1];
    if (["st", "nd", "rd", "th"].includes(text(ending)) && ending?.gap === false)
      return { value: token.value ?? 0, next: i + 2 };
    return bare && (token.value ?? 99) <= 31 ? { value: token.value ?? 0, next: i + 1 } : undefined;
  }
  const word = text(token);
  if (word === "twenty" || word === "thirty") {
    const one = Object.hasOwn(ordinals, text(tokens[i + 1])) ? ordinals[text(tokens[i + 1])] : undefined;
    if (one && one < 10) return { value: (word === "twenty" ? 20 : 30) + one, next: i + 2 };
  }
  const value = Object.hasOwn(ordinals, word) ? ordinals[word] : undefined;
  if (
    value === undefined ||
    word === "second" ||
    (["third", "first", "fourth"].includes(word) && text(tokens[i - 1]) !== "the" && !bare)
  )
    return undefined;
  // "the first batch", "a third pink": not a date unless a month or nothing follows
  const then = text(tokens[i + 1]);
  return value <= 5 && !["of", ""].includes(then) && months[then] === undefined
    ? undefined
    : { value, next: i + 1 };
}
