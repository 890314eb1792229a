/**
 * Which phrases have a mark in a text. Looking for each of thousands of marks costs more than all else in a turn, so they
 * are kept by how they begin, and only those are compared that begin as some letters of the text do. The table is a text,
 * since the build keeps it:
 *
 *   line 1   how many phrases each book has
 *   then a number a phrase: where its pattern is kept
 *   then a map: the first letters of marks; those marks, each with the places of its phrases, tabs between
 */
import { keptMap, numberAt, numberWidth, readMap, writtenNumber } from "../../../tools/lib/kept-map.ts";
import type { Phrase } from "./phrase.ts";

/** As many letters of a mark are its beginning, if it has them. */
const longest = 3;

interface Marks {
  /** The places of those phrases of which the text holds a mark, in their order. */
  heldIn(text: string): number[];
  /** Which book a phrase is in, and which of it. */
  bookOf(place: number): [book: number, within: number];
  /** Where its pattern is kept, if it is kept apart, and whether something else is to be asked before it. */
  patternAt(place: number): { at: number; asksMore: boolean } | undefined;
}

/** A letter that isn't kept as one byte can't stand in the table: what is before it does, and may be nothing at all. */
function keptOf(mark: string): string {
  const end = [...mark].findIndex((letter) => letter > "\u00ff");
  return end < 0 ? mark : mark.slice(0, end);
}

/** Writes the table of these books. */
export function marksTable(books: readonly (readonly Phrase[])[]): string {
  const phrases = books.flat();
  const placesOf = new Map<string, number[]>();
  for (const [place, { marks }] of phrases.entries())
    for (const mark of new Set(marks.map(keptOf))) placesOf.set(mark, [...(placesOf.get(mark) ?? []), place]);
  const rows = new Map<string, string>();
  for (const [mark, places] of placesOf) {
    const beginning = mark.slice(0, longest);
    const row = `${mark}\t${places.join(" ")}`;
    rows.set(beginning, rows.has(beginning) ? `${rows.get(beginning)}\t${row}` : row);
  }
  const patterns = phrases.map(({ from, only }) =>
    "at" in from ? 2 * (Number(from.at) + 1) + (only ? 1 : 0) : 0,
  );
  const counts = books.map(({ length }) => length).join(" ");
  return `${counts}\n${patterns.map(writtenNumber).join("")}${keptMap(rows)}`;
}

/** @param table as `marksTable` wrote it */
export function marksIn(table: string): Marks {
  const head = table.indexOf("\n") + 1;
  const counts = table.slice(0, head).split(" ").map(Number);
  const kept = readMap(table, head + counts.reduce((sum, count) => sum + count, 0) * numberWidth);
  const rows = new Map<string, [mark: string, places: number[]][]>();
  const readOnce = (line: string) => {
    const known = rows.get(line);
    if (known) return known;
    const row = readRow(line);
    rows.set(line, row);
    return row;
  };
  return {
    heldIn(text) {
      const places = new Set<number>();
      for (let at = 0; at < text.length; at++)
        for (const line of kept.startingAt(text, at, longest))
          for (const [mark, of] of readOnce(line))
            if (text.startsWith(mark, at)) for (const place of of) places.add(place);
      return [...places].sort((a, b) => a - b);
    },
    bookOf(place) {
      let within = place;
      for (const [book, count] of counts.entries()) {
        if (within < count) return [book, within];
        within -= count;
      }
      return [counts.length, within];
    },
    patternAt(place) {
      const written = numberAt(table, head + place * numberWidth);
      return written === 0 ? undefined : { at: (written >> 1) - 1, asksMore: written % 2 === 1 };
    },
  };
}

function readRow(line: string): [mark: string, places: number[]][] {
  const pieces = line.split("\t");
  const row: [string, number[]][] = [];
  for (let at = 0; at + 1 < pieces.length; at += 2)
    row.push([pieces[at] ?? "", (pieces[at + 1] ?? "").split(" ").map(Number)]);
  return row;
}
