/** Breaks text into lines that fit, at spaces where there are any. */
import { cells, graphemes, width } from "./text.ts";

/** What stands before the first line and before each further one. */
export interface Margin {
  first: string;
  rest: string;
}

/**
 * Wraps at `columns` cells, the margin included. A word longer than a line is cut.
 * Never gives an empty list: a blank text is one line with the margin alone.
 */
export function wrapped(text: string, columns: number, margin: Margin = { first: "", rest: "" }): string[] {
  const lines: string[] = [];
  let line = margin.first;
  let fresh = true;
  const turn = () => {
    lines.push(line.trimEnd());
    line = margin.rest;
    fresh = true;
  };
  const room = () => columns - width(line);
  // Spaces inside a line are kept, so that columns stay aligned; at a break they go.
  for (const [, gap = "", word = ""] of text.matchAll(/(\s*)(\S+)/g)) {
    if (!fresh && width(gap) + width(word) <= room()) {
      line += gap + word;
      continue;
    }
    if (!fresh) turn();
    for (const piece of cut(word, Math.max(1, room()), Math.max(1, columns - width(margin.rest)))) {
      if (!fresh) turn();
      line += piece;
      fresh = false;
    }
  }
  lines.push(line.trimEnd());
  return lines;
}

/** A word in pieces of at most `first`, then `rest` cells. */
function cut(word: string, first: number, rest: number): string[] {
  if (width(word) <= first) return [word];
  const pieces: string[] = [];
  let piece = "";
  let room = first;
  for (const each of graphemes(word)) {
    if (piece !== "" && cells(each) > room) {
      pieces.push(piece);
      piece = "";
      room = rest;
    }
    piece += each;
    room -= cells(each);
  }
  return [...pieces, piece];
}
