/** Moments in a sentence: "3pm", "quarter past ten", "saturday the 21st", "by 8 this morning", "last sunday". */

import type { Token } from "../text/tokens.ts";
import { readDate, readIso } from "./date.ts";
import { readDay } from "./day.ts";
import { type Piece, text, type WhenRead } from "./piece.ts";
import { readClock, readSpoken } from "./time.ts";

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
  // "on the sixth of march, today can i ...": two days, where "tomorrow the 15th" is one
  ("days" in b && "day" in a) ||
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
