/**
 * Which phrases have a mark in a text. Looking for each of thousands of marks costs more than all else in a turn, so they
 * are kept by how they begin, and only those are compared that begin as some letters of the text do. The table is a text,
 * since the build keeps it, and nothing of it is taken apart before it is needed:
 *
 *   line 1   how many phrases each book has
 *   then, three letters a number: where the marks of each beginning stand, and where each phrase's pattern is kept
 *   then a line a beginning, tabs between: a mark and the places of its phrases, in turn
 */
import type { Phrase } from "./phrase.ts";

/** So many beginnings are told apart; two that fall together cost a comparison. */
const beginnings = 4096;
/** As many letters of a mark are its beginning, if it has them. */
const longest = 3;
/** A number is written as three letters. */
const width = 3;

interface Marks {
  /** The places of those phrases of which the text holds a mark, in their order. */
  heldIn(text: string): number[];
  /** Which book a phrase is in, and which of it. */
  bookOf(place: number): [book: number, within: number];
  /** Where its pattern is kept, if it is kept apart, and whether something else is to be asked before it. */
  patternAt(place: number): { at: number; isLast: boolean } | undefined;
}

/** The number of a beginning of so many letters. */
function beginningAt(text: string, at: number, size: number): number {
  let sum = size;
  for (let next = at; next < at + size; next++) sum = (sum * 61 + text.charCodeAt(next)) % 65_521;
  return sum % beginnings;
}

const written = (number: number): string =>
  String.fromCharCode(number >> 16, (number >> 8) & 255, number & 255);
const numberIn = (text: string, at: number): number =>
  (text.charCodeAt(at) << 16) | (text.charCodeAt(at + 1) << 8) | text.charCodeAt(at + 2);

/** A letter that isn't kept as one byte can't stand in the table: what is before it does, and may be nothing at all. */
function keptOf(mark: string): string {
  const end = [...mark].findIndex((letter) => letter > "\u00ff");
  return end < 0 ? mark : mark.slice(0, end);
}

/** Writes the table of these books. */
export function marksTable(books: readonly (readonly Phrase[])[]): string {
  const phrases = books.flat();
  const rows = new Map<number, Map<string, number[]>>();
  for (const [place, { marks }] of phrases.entries())
    for (const mark of new Set(marks.map(keptOf))) {
      const beginning = beginningAt(mark, 0, Math.min(longest, mark.length));
      const row = rows.get(beginning) ?? new Map<string, number[]>();
      row.set(mark, [...(row.get(mark) ?? []), place]);
      rows.set(beginning, row);
    }
  let lines = "";
  const starts = Array.from({ length: beginnings }, (_, beginning) => {
    const row = rows.get(beginning);
    if (!row) return 0;
    const start = lines.length + 1;
    lines += `${[...row].flatMap(([mark, places]) => [mark, places.join(" ")]).join("\t")}\n`;
    return start;
  });
  const patterns = phrases.map(({ from, only }) =>
    "at" in from ? 2 * (Number(from.at) + 1) + (only ? 1 : 0) : 0,
  );
  const counts = books.map(({ length }) => length).join(" ");
  return `${counts}\n${[...starts, ...patterns].map(written).join("")}${lines}`;
}

/** @param table as `marksTable` wrote it */
export function marksIn(table: string): Marks {
  const head = table.indexOf("\n") + 1;
  const counts = table.slice(0, head).split(" ").map(Number);
  const patterns = head + beginnings * width;
  const lines = patterns + counts.reduce((sum, count) => sum + count, 0) * width;
  const rows: ([mark: string, places: number[]][] | undefined)[] = [];
  const rowAt = (start: number) => {
    rows[start] ??= readRow(table.slice(lines + start - 1, table.indexOf("\n", lines + start)));
    return rows[start];
  };
  return {
    heldIn(text) {
      const places = new Set<number>();
      for (let at = 0; at < text.length; at++)
        for (let size = at === 0 ? 0 : 1; size <= longest && at + size <= text.length; size++) {
          const start = numberIn(table, head + beginningAt(text, at, size) * width);
          if (start === 0) continue;
          for (const [mark, of] of rowAt(start))
            if (text.startsWith(mark, at)) for (const place of of) places.add(place);
        }
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
      const kept = numberIn(table, patterns + place * width);
      return kept === 0 ? undefined : { at: (kept >> 1) - 1, isLast: kept % 2 === 1 };
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
