/** What ends an hour, "am", "pm" or "o'clock", and what follows a number that is none. */
import { dayWords, weekdays } from "../../../data/words/calendar.ts";
import { readUnit } from "../found/amounts/unit.ts";
import { readNumber } from "../found/numbers.ts";
import type { Token } from "../text/tokens.ts";
import { text, type WhenRead } from "./piece.ts";

/** Where "o'clock" ends, also in two words; `i` itself when it doesn't stand there. */
export const pastOclock = (tokens: readonly Token[], i: number): number =>
  text(tokens[i]) === "oclock"
    ? i + 1
    : text(tokens[i]) === "o" && text(tokens[i + 1]) === "clock"
      ? i + 2
      : i;

export function withHalf(tokens: readonly Token[], next: number, minute: number, settled: boolean): WhenRead {
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
export function followedByThing(tokens: readonly Token[], i: number, value: number, second = false): boolean {
  if (readUnit(tokens, i, value)) return true;
  const then = text(tokens[i]);
  // "from 24 to 36 macarons", "from 3 to 5 %": what the second is, the first is too
  const upTo = then === "to" && !second ? readNumber(tokens, i + 1) : undefined;
  if (upTo && (upTo.value > 24 || followedByThing(tokens, upTo.next, upTo.value, true))) return true;
  if (["-", "/", "x", "*", "+", "times", "and", ":"].includes(then) && tokens[i + 1]?.kind === "number")
    return true;
  // "at 14.50/kg"
  if (then === "/" && readUnit(tokens, i + 1, 1)) return true;
  return (
    tokens[i]?.kind === "word" &&
    !whenFollows.has(then) &&
    !isAsWell(tokens, i) &&
    !Object.hasOwn(dayWords, then) &&
    weekdays[then] === undefined
  );
}

/** "ring me at 7 too"; not "at 7 too long". */
const isAsWell = (tokens: readonly Token[], i: number): boolean =>
  /^(?:too|also|aswell|cheers|ta)$/.test(text(tokens[i])) &&
  /^(?:|please|pls|thanks|ta|then|and|[.,!?;])$/.test(text(tokens[i + 1]));

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
