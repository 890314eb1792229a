/**
 * Words that make the number behind them an hour, though nothing of the clock stands beside it: "tell me when it is 11",
 * "an alarm for 7". An alarm rings at an hour; it is a timer that runs for minutes.
 */

import type { Token } from "../text/tokens.ts";
import { text } from "./piece.ts";

const before = (tokens: readonly Token[], i: number): string =>
  tokens
    .slice(Math.max(0, i - 12), i)
    .map(text)
    .join(" ");

const told = new RegExp(
  "\\b(?:tell|know|konw|shout|say|warn|ring|ping|buzz|beep|call|wake|nudge|poke|alert|remind|holler|yell|stop)\\b.*" +
    " (?:when|once|as soon as|til|till|until) " +
    "(?:its|(?:it|(?:the )?(?:clock|time))(?: (?:is|has|gets to|hits|says|reads|shows|reaches|strikes|turns|comes to))?)" +
    "(?: (?:just|exactly|nearly|almost|about|around|gone|turned|at))*$",
);

/** "tell me when it is eleven", "shout when the clock hits half ten". */
export const tellsWhen = (tokens: readonly Token[], i: number): boolean =>
  text(tokens[i - 1]) !== "" && told.test(before(tokens, i));

const alarm =
  /(?:\balarms?(?: (?:clock|please|pls|set|on|going|tomorrow|to (?:ring|go off)))*(?: (?:for|to))?|\bwake (?:me|us)(?: up)? for)(?: \S+(?: ,| and| , and))*$/;

/** "an alarm for 7", "alarm 6 30", the second of "alarms for 7 and 8". */
export const isAlarm = (tokens: readonly Token[], i: number): boolean => alarm.test(before(tokens, i));

/** "630", "0715" as an alarm is set: an hour and minutes. "120" and "90" are minutes. */
export function digitsOfAlarm({ text: said }: Token): number | undefined {
  const [, hour, minute] = /^(\d{1,2})(\d{2})$/.exec(said) ?? [];
  const [h, m] = [Number(hour), Number(minute)];
  if (!hour || h > 23 || m > 59) return undefined;
  const isClock = said.length === 4 || [15, 30, 45].includes(m) || (h >= 4 && m % 5 === 0);
  return isClock ? h * 60 + m : undefined;
}
