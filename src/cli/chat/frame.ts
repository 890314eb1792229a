/** The live part of the screen: timers, the question being written, a hint. Short in any window. */
import type { Timer } from "../../tools/contract/record.ts";
import { timerLines } from "./countdown.ts";
import type { Editor } from "./editor.ts";
import type { Signs } from "./signs.ts";
import { cells, graphemes, width } from "./text.ts";
import type { Line } from "./tones.ts";

export interface FrameInput {
  columns: number;
  rows: number;
  editor: Pick<Editor, "text" | "cursor">;
  timers: readonly Timer[];
  now_ms: number;
  signs: Signs;
  still: boolean;
  /** The line with its likely end, in place of the hint; none or "" where nothing is likely. */
  likely?: string;
  /** An answer is taking long: said in place of the hint. */
  waits?: boolean;
  /** While the window is dragged the hint goes: what the terminal drops below the cursor is drawn anew. */
  settling?: boolean;
}

export interface Frame {
  lines: Line[];
  /** Where the cursor stands, counted from the frame's first cell. */
  cursor: { x: number; y: number };
}

const usualHint = '"help" for examples, "bye" to leave';
const mostTimers = 4;
const mostQuestion = 6;

/** Lays the live part out, at least two lines shorter than the window: that keeps the scrollback whole. */
export function layFrame(input: FrameInput): Frame {
  const room = Math.max(1, input.rows - 2);
  const most = Math.max(0, Math.min(mostTimers, room - 2));
  const timers = timerLines(input.timers, input.now_ms, { signs: input.signs, most, still: input.still });
  const hints = room - timers.length > 1 && !input.settling ? [hintOf(input)] : [];
  const question = layQuestion(
    input,
    Math.max(1, Math.min(mostQuestion, room - timers.length - hints.length)),
  );
  const cut = (text: string): string =>
    width(text) < input.columns ? text : text.slice(0, Math.max(0, input.columns - 1));
  return {
    lines: [
      ...timers.map((text): Line => ({ text: cut(text), tone: "plain" })),
      ...question.lines.map((text): Line => ({ text, tone: "plain" })),
      ...hints.map((text): Line => ({ text: cut(text), tone: "quiet" })),
    ],
    cursor: { x: question.x, y: timers.length + question.y },
  };
}

/** What Tab would take, its end in any case: on a line of its own, so that it can't be taken for what was typed. */
function hintOf({ likely, signs, columns, waits }: FrameInput): string {
  if (waits) return "Still at it ...";
  if (!likely) return usualHint;
  const room = columns - 1 - width(signs.take);
  if (width(likely) <= room) return signs.take + likely;
  const units = graphemes(likely);
  while (units.length > 0 && width(units.join("")) > room - width(signs.gap)) units.shift();
  return signs.take + signs.gap + units.join("").trimStart();
}

/** The question broken into rows of cells, and of those the ones around the cursor. */
function layQuestion(
  { columns, editor, signs }: FrameInput,
  most: number,
): { lines: string[]; x: number; y: number } {
  const margin = width(signs.prompt);
  // One cell stays free at the end of a row: the cursor stands there behind the last character.
  const room = Math.max(2, columns - margin - 1);
  const rows: string[] = [""];
  let used = 0;
  let at = 0;
  let place = { x: margin, y: 0 };
  for (const each of graphemes(editor.text)) {
    if (used + cells(each) > room) {
      rows.push("");
      used = 0;
    }
    if (at <= editor.cursor) place = { x: margin + used, y: rows.length - 1 };
    rows[rows.length - 1] += each;
    used += cells(each);
    at += each.length;
  }
  if (at <= editor.cursor) place = { x: margin + used, y: rows.length - 1 };
  const top = Math.max(0, Math.min(place.y - most + 1, rows.length - most));
  const lines = rows
    .slice(top, top + most)
    .map((row, index) => (top + index === 0 ? signs.prompt : " ".repeat(margin)) + row);
  return { lines, x: place.x, y: place.y - top };
}
