/** Days by name or by distance: "tomorrow", "last sunday", "tonight", "a couple of days ago". */
import { dayParts, dayWords, namedTimes, shortWeekdays, weekdays } from "../../../data/words/calendar.ts";
import { readUnit } from "../found/amounts/unit.ts";
import { readNumber } from "../found/numbers.ts";
import type { Token } from "../text/tokens.ts";
import { text, type WhenRead } from "./piece.ts";

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
  "filled",
  "boxed",
]);

const isDayName = (word: string) =>
  [word, word.replace(/s$/, "")].some(
    (each) => Object.hasOwn(weekdays, each) || Object.hasOwn(shortWeekdays, each),
  );

/** "they sat 3 hours": what somebody did, and no day; "24 macarons sat at 4 pm" is one. */
const hasSat: ReadonlySet<string> = new Set(
  "they it these those have has had just all macarons macs shells box batch boxes ones that which i we only".split(
    " ",
  ),
);
const isVerb = (tokens: readonly Token[], i: number): boolean =>
  text(tokens[i]) === "sat" &&
  hasSat.has(text(tokens[i - 1])) &&
  /^(?:h|hrs?|hours?|mins?|minutes?)$/.test(text(tokens[i + 2]));

/** "sat 4 pm", "wed noon", "fri at 3": what would else be no day of the week is one. */
const isTime = (next: Token | undefined, then: Token | undefined): boolean =>
  next?.kind === "number" ||
  Object.hasOwn(namedTimes, text(next)) ||
  Object.hasOwn(dayParts, text(next)) ||
  /^(?:half|quarter)$/.test(text(next)) ||
  (/^(?:at|by|around|before)$/.test(text(next)) &&
    (then?.kind === "number" || Object.hasOwn(namedTimes, text(then))));

export function readDay(tokens: readonly Token[], i: number): WhenRead | undefined {
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
    // "last night's batch", "this mornings tray"
    const then = text(tokens[i + 1]).replace(/^(night|evening|morning|afternoon)'?s$/, "$1");
    if (word === "last" && (then === "night" || then === "evening"))
      return { when: { days: -1, part: "night" }, next: i + 2 };
    if (word === "this" && dayParts[then]) return { when: { days: 0, part: dayParts[then] }, next: i + 2 };
    // "last saturday's bake"
    const weekday = weekdays[then] ?? shortWeekdays[then] ?? weekdays[then.replace(/s$/, "")];
    if (weekday !== undefined) return { when: { weekday, which: word }, next: i + 2 };
    return undefined;
  }
  const weekday =
    weekdays[word] ??
    weekdays[word.replace(/s$/, "")] ??
    (!isVerb(tokens, i) && (shortDayLeads.has(lead) || isTime(tokens[i + 1], tokens[i + 2]))
      ? shortWeekdays[word]
      : undefined);
  // "sunday week": the one after the next to come
  if (weekday !== undefined && isDayName(word) && text(tokens[i + 1]) === "week")
    return { when: { weekday, which: "week" }, next: i + 2 };
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
