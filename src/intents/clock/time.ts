/** Times of day: "3pm", "15:00", "quarter past ten", "half eight", "two thirty". */
import { dayParts, namedTimes } from "../../../data/words/calendar.ts";
import { readUnit } from "../found/amounts/unit.ts";
import { readNumber } from "../found/numbers.ts";
import type { Token } from "../text/tokens.ts";
import { digitsOfAlarm, isAlarm, tellsWhen } from "./expected.ts";
import { followedByThing, pastOclock, withHalf } from "./hour.ts";
import { text, type WhenRead } from "./piece.ts";

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

/** "moved to half five". */
const isMoved = (tokens: readonly Token[], i: number): boolean =>
  (text(tokens[i - 1]) === "to" &&
    /^(?:moved|changed|pushed|shifted|brought|forward|back)$/.test(text(tokens[i - 2]))) ||
  // "make that half eleven"
  (/^(?:that|it)$/.test(text(tokens[i - 1])) && text(tokens[i - 2]) === "make");

/** "in the morning", "am": what stands before it is an hour. */
const inTheMorning = (tokens: readonly Token[], at: number): boolean =>
  /^(?:am|pm|in (?:the )?(?:morning|afternoon|evening)|at night|tonight|tomorrow)\b/.test(
    tokens
      .slice(at, at + 3)
      .map(text)
      .join(" "),
  );

/** "quarter past ten", "half past 3", "ten to four", "twenty past three", "noon", "3 o'clock". */
export function readSpoken(tokens: readonly Token[], i: number): WhenRead | undefined {
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
    part === 30 &&
    (before.has(lead) ||
      isMoved(tokens, i) ||
      inTheMorning(tokens, at + 1) ||
      tellsWhen(tokens, i) ||
      isAlarm(tokens, i))
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
  if (joint !== "past" && part !== 15 && !before.has(lead) && !roundMinutes && !tellsWhen(tokens, i))
    return undefined;
  if (joint === "of") return undefined;
  const hour = readNumber(tokens, skip + 1);
  if (!hour || !Number.isInteger(hour.value) || hour.value < 1 || hour.value > 24) return undefined;
  if (readUnit(tokens, hour.next, hour.value)) return undefined;
  const past = joint === "past" || joint === "after";
  // "quarter to one" is before one, by day or by night
  const said = hour.value === 1 && !past ? 13 : hour.value % 24;
  const minute = said * 60 + (past ? minutes : -minutes);
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
export function readClock(tokens: readonly Token[], i: number, loose: boolean): WhenRead | undefined {
  const token = tokens[i];
  const [verb, lead] = [text(tokens[i - 2]), text(tokens[i - 1])];
  // "24 divided by 4" speaks of no hour
  if (lead === "by" && /^(?:divided?|multipl(?:y|ied))$/.test(verb)) return undefined;
  const hour = token?.kind === "word" ? readNumber(tokens, i) : undefined;
  if (!hour && token?.kind !== "number") return undefined;
  const ofAlarm = isAlarm(tokens, i) && text(tokens[i + 1]) !== "or";
  const expected =
    before.has(lead) || loose || dayPartFollows(tokens, i + 1) || tellsWhen(tokens, i) || ofAlarm;
  // "alarms for 7 and 8": each is an hour
  const isOther = (at: number, value: number) =>
    !(ofAlarm && text(tokens[at]) === "and") && followedByThing(tokens, at, value);
  if (hour) {
    if (hour.negative || hour.fraction || hour.value > 999) return undefined;
    // "two thirty" is half past two where a moment is expected
    const [h, m] = hour.value >= 100 ? [Math.floor(hour.value / 100), hour.value % 100] : [hour.value, 0];
    if (!Number.isInteger(h) || h > 24 || m >= 60) return undefined;
    const split = m === 0 && hour.value < 25 ? readMinutes(tokens, hour.next) : undefined;
    const two = split && withHalf(tokens, split.next, h * 60 + split.value, false);
    if (two && (two.when.half || (expected && !isOther(split.next, split.value)))) return two;
    const told = withHalf(tokens, hour.next, h * 60 + m, false);
    if (told.when.half || pastOclock(tokens, hour.next) > hour.next) return told;
    // an alarm for twenty is one in so many minutes
    if (ofAlarm && !before.has(lead) && h > 12) return undefined;
    return expected && !isOther(hour.next, hour.value) ? told : undefined;
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
      ((before.has(lead) || ofAlarm) && !isOther(i + 1, token.value))
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
  const asAlarm = ofAlarm && !isOther(i + 1, token.value);
  const digits = asAlarm ? digitsOfAlarm(token) : undefined;
  if (digits !== undefined) return withHalf(tokens, i + 1, digits, token.text[0] === "0" || digits >= 780);
  // "an alarm for 6 30"
  const next = tokens[i + 1];
  const behind = next?.kind === "number" && /^[0-5]\d$/.test(next.text) ? next.value : undefined;
  if (asAlarm && hours <= 12 && behind !== undefined && !isOther(i + 2, behind))
    return withHalf(tokens, i + 2, hours * 60 + behind, false);
  if (token.value > 24 || (ofAlarm && !before.has(lead) && hours > 12)) return undefined;
  return expected && !isOther(i + 1, token.value)
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
