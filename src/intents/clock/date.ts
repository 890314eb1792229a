/** Dates: "2026-03-20", "20.3.2026", "3/19", "march 8", "the 21st". */
import { months, namedTimes, shortWeekdays, weekdays } from "../../../data/words/calendar.ts";
import { ordinals } from "../../../data/words/numbers.ts";
import type { Token } from "../text/tokens.ts";
import { type Piece, text, type WhenRead } from "./piece.ts";
import { readClock } from "./time.ts";

/** 2026-03-20, with or without a time behind a T; 20.3.2026. */
export function readIso(tokens: readonly Token[], i: number): WhenRead | undefined {
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
export function readDate(tokens: readonly Token[], i: number): WhenRead | undefined {
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
  const lead = text(tokens[i - 1]);
  const isOfWeek = weekdays[lead] !== undefined || shortWeekdays[lead] !== undefined;
  if ("bare" in day)
    return isOfWeek && day.value > 12 && isTime(tokens, day.next)
      ? { when: { day: day.value }, next: day.next }
      : undefined;
  const numeric = tokens[i]?.kind === "number" && ["from", "since", "by", "until", "till"].includes(lead);
  return lead === "the" || lead === "on" || numeric || isOfWeek
    ? { when: { day: day.value }, next: day.next }
    : undefined;
}

/** "sat 21 4pm", "sun 22 noon": behind the day's number stands the hour, so the number is none. */
function isTime(tokens: readonly Token[], i: number): boolean {
  const at = text(tokens[i]) === "at" ? i + 1 : i;
  const [hour, sign] = [tokens[at], text(tokens[at + 1])];
  return (
    Object.hasOwn(namedTimes, text(hour)) ||
    (hour?.kind === "number" && /^(?:am|pm|:|a|p)$/.test(sign)) ||
    /^\d{1,2}(?::\d\d)?(?:am|pm)$/.test(text(hour))
  );
}

/** "the second of march", "march the second". */
function isBesideMonth(tokens: readonly Token[], i: number): boolean {
  const isMonth = (at: number) => Object.hasOwn(months, text(tokens[at]));
  return (
    (text(tokens[i + 1]) === "of" && isMonth(i + 2)) ||
    isMonth(i + 1) ||
    isMonth(text(tokens[i - 1]) === "the" ? i - 2 : i - 1)
  );
}

const deeds = /^(?:filled|made|baked|froze|frozen|thawed|boxed|assembled)$/;
const clauseBegins =
  /^(?:are|is|was|were|can|could|so|do|does|will|would|should|i|we|they|it|still|how|what|when|but|,|[.?!])$/;

/** "they were filled on the first are they all right": the day of it, where no noun follows. */
const isDayOfDeed = (tokens: readonly Token[], i: number): boolean =>
  text(tokens[i - 1]) === "the" &&
  text(tokens[i - 2]) === "on" &&
  tokens.slice(Math.max(0, i - 5), i - 2).some((each) => deeds.test(each.text)) &&
  clauseBegins.test(text(tokens[i + 1]));

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
    // "the second batch", "second" of time: a day only beside its month
    (word === "second" && !isBesideMonth(tokens, i) && !isDayOfDeed(tokens, i)) ||
    (["third", "first", "fourth"].includes(word) && text(tokens[i - 1]) !== "the" && !bare)
  )
    return undefined;
  // "the first batch", "a third pink": not a date unless a month or nothing follows
  const then = text(tokens[i + 1]);
  const isOther = bare
    ? /^(?:batch|bake|tray|time|lot|half|go|try|one|attempt)/.test(then)
    : !["of", ""].includes(then) && months[then] === undefined && !isDayOfDeed(tokens, i);
  return value <= 5 && isOther ? undefined : { value, next: i + 1 };
}
