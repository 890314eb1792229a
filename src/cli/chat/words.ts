/** Lines that the chat says itself, beside the answers. */
import type { Timer } from "../../tools/contract/record.ts";
import type { Turn } from "../session.ts";
import { ringText } from "./countdown.ts";
import { answerLines } from "./lines.ts";
import type { Signs } from "./signs.ts";
import { printable, width } from "./text.ts";
import type { Line, Tone } from "./tones.ts";
import { wrapped } from "./wrap.ts";

const said = (text: string, tone: Tone, columns: number): Line[] =>
  wrapped(printable(text), columns, { first: "", rest: "  " }).map((line) => ({ text: line, tone }));

/** A finished turn: what was asked, then every answer to it. */
export function turnLines(turn: Turn, columns: number, signs: Signs, still = false): Line[] {
  const margin = { first: signs.prompt, rest: " ".repeat(width(signs.prompt)) };
  const asked = wrapped(printable(turn.asked), columns, margin).map(
    (text): Line => ({ text, tone: "asked" }),
  );
  return [
    ...asked,
    ...turn.answers.flatMap((answer) => answerLines(answer, columns, signs, still)),
    ...(isOverview(turn) ? said(ownHelp, "quiet", columns) : []),
  ];
}

const ownHelp =
  'Here in the chat: "big" for timers that read from afar, "speak" and "stop speaking", "copy" for the last answer, the arrow up to ask again, "new conversation" to set aside what was said, "bye" to leave.';

/** Help that lists what all there is. */
const isOverview = ({ answers: [answer] }: Turn) =>
  answer?.tool === "help" && (answer.items?.some(({ tool }) => tool !== undefined) ?? false);

/** What the chat says to one of its own words: what was typed, and what came of it. */
export function ownLines(asked: string, answer: string, columns: number, signs: Signs): Line[] {
  const margin = { first: signs.prompt, rest: " ".repeat(width(signs.prompt)) };
  return [
    ...wrapped(printable(asked), columns, margin).map((text): Line => ({ text, tone: "asked" })),
    ...said(answer, "plain", columns),
  ];
}

export const ownAnswers = {
  speaking: 'I read answers and rings aloud from here on. "stop speaking" ends it.',
  silent: "I no longer read aloud.",
  noTimers: 'No timer is running. "set a timer for 12 min" starts one.',
  stillTimers:
    "The timers are listed above the line that you write in, each with the time at which it is due.",
  nothingToCopy: "There is no answer to copy yet.",
  copied:
    "The last answer went to the terminal for its clipboard. Where the terminal doesn't take it, select the lines: they stand there without a frame.",
} as const;

/** What stands at the top: the lines handed in, and where the record is kept. */
export function introLines(intro: readonly string[], home: string, columns: number, isDemo = false): Line[] {
  return [
    ...intro.flatMap((text) => paragraph(text, columns)),
    ...said(`${isDemo ? "The demo's" : "Your"} record is in ${home}`, "quiet", columns),
  ];
}

/** What begins with spaces stays indented: something to type. */
function paragraph(text: string, columns: number): Line[] {
  const indent = /^ */.exec(text)?.[0] ?? "";
  const margin = indent ? { first: indent, rest: `${indent}  ` } : { first: "", rest: "" };
  return wrapped(printable(text.trim()), columns, margin).map((line) => ({ text: line, tone: "plain" }));
}

/** Timers that came due. */
export function ringLines(due: readonly Timer[], now_ms: number, opened_ms: number, columns: number): Line[] {
  return due.flatMap((timer) => said(ringText(timer, now_ms, opened_ms), "ring", columns));
}

/** What there is to know about the record's files. */
export function noticeLines(notice: string, columns: number): Line[] {
  return said(notice, "trouble", columns);
}

/** After a word for it. */
export const startOverLines = (asked: string, columns: number, signs: Signs): Line[] =>
  ownLines(asked, "A new conversation: what was said before is set aside, the record stays.", columns, signs);

/** What is said on leaving: nothing, unless timers are still running, or go with the demo. */
export function farewellLines(running: number, columns: number, isDemo = false): Line[] {
  if (isDemo) {
    const timers =
      running === 0 ? "" : running === 1 ? ", and its timer with it" : `, and its ${running} timers with it`;
    return said(`The demo's record is gone${timers}.`, "quiet", columns);
  }
  if (running === 0) return [];
  const which = running === 1 ? "1 timer runs on; it rings" : `${running} timers run on; they ring`;
  return said(`${which} when the chat is open.`, "quiet", columns);
}

/** Something that went wrong while the chat was open; it stays open. */
export function troubleLines(error: unknown, columns: number): Line[] {
  const message = error instanceof Error ? error.message : String(error);
  const hint = error instanceof Error && "hint" in error && typeof error.hint === "string" ? error.hint : "";
  return said(`That didn't work: ${message}${hint ? ` ${hint}` : ""}`, "trouble", columns);
}
