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
  const timers = timerLines(input.timers, input.now_ms, { ...input, most });
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

/** The question broken into rows between its words, and of those the ones around the cursor. */
function layQuestion(
  { columns, editor, signs }: FrameInput,
  most: number,
): { lines: string[]; x: number; y: number } {
  const margin = width(signs.prompt);
  // One cell stays free at the end of a row: the cursor stands there behind the last character.
  const room = Math.max(2, columns - margin - 1);
  const rows = rowsOf(editor.text, room);
  let y = rows.length - 1;
  while (y > 0 && (rows[y]?.at ?? 0) > editor.cursor) y -= 1;
  const before = editor.text.slice(rows[y]?.at ?? 0, editor.cursor);
  // behind a space that no longer fits, the cursor waits in the free cell
  const place = { x: margin + Math.min(width(before), room), y };
  const top = Math.max(0, Math.min(place.y - most + 1, rows.length - most));
  const lines = rows
    .slice(top, top + most)
    .map(({ text }, index) => (top + index === 0 ? signs.prompt : " ".repeat(margin)) + text);
  return { lines, x: place.x, y: place.y - top };
}

/** Rows of at most `room` cells, each with the index where it begins. A word longer than a row is cut. */
function rowsOf(text: string, room: number): { text: string; at: number }[] {
  const rows = [{ text: "", at: 0 }];
  let row = rows[0] as (typeof rows)[0];
  let at = 0;
  const turn = () => {
    row = { text: "", at };
    rows.push(row);
  };
  for (const [piece] of text.matchAll(/\s+|\S+/g)) {
    const isSpace = piece.trim() === "";
    if (!isSpace && row.text !== "" && width(row.text) + width(piece) > room) turn();
    for (const each of graphemes(piece)) {
      const fits = width(row.text) + cells(each) <= room;
      // a space at the end of a row needs no cell
      if (!fits && !isSpace) turn();
      if (fits || !isSpace) row.text += each;
      at += each.length;
    }
  }
  return rows;
}
