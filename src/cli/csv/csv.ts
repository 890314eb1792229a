/**
 * Tables as CSV (RFC 4180), out and in. A bundle of its own. A cell that a spreadsheet would take for a formula gets
 * an apostrophe before it, and loses it again when it is read back.
 */
import Papa from "papaparse";
import type { Sheet } from "../../tools/contract/index.ts";
import type { CsvRows } from "../hand-over.ts";

/** Signs that a spreadsheet begins a formula with, their wide forms too. */
const formula = /^'*[=+\-@\t\r＝＋－＠]/;
const defused = /^'+[=+\-@\t\r＝＋－＠]/;

/** One that begins with apostrophes already gets one more, so that reading back takes off what was put on. */
export const defuse = (cell: string): string => (formula.test(cell) ? `'${cell}` : cell);
export const fuse = (cell: string): string => (defused.test(cell) ? cell.slice(1) : cell);

/** Begins with a byte order mark: without it spreadsheets take UTF-8 for another encoding. Lines end in CRLF. */
export function csvText({ columns, rows }: Sheet): string {
  const table = [columns, ...rows].map((row) => row.map(defuse));
  return `\ufeff${Papa.unparse(table, { newline: "\r\n" })}\r\n`;
}

/** What the first line has most of, outside of quotes: spreadsheets of some countries put semicolons, or tabs. */
function delimiterOf(text: string): string {
  const [first = ""] = text.replace(/^[\r\n]+/, "").split(/[\r\n]/);
  const bare = first.replace(/"(?:[^"]|"")*"/g, "");
  const count = (sign: string) => bare.split(sign).length;
  return [",", ";", "\t"].reduce((most, each) => (count(each) > count(most) ? each : most));
}

/** Reads a table of commas, semicolons or tabs. Empty lines count for nothing; a row that is no CSV is named instead. */
export function csvRows(said: string): CsvRows {
  const text = said.replace(/^\ufeff/, "");
  const lines: CsvRows["rows"] = [];
  const problems: string[] = [];
  let line = 1;
  let at = 0;
  Papa.parse<string[]>(text, {
    delimiter: delimiterOf(text),
    step({ data, errors, meta }) {
      const [wrong] = errors;
      if (wrong) problems.push(`line ${line}: ${wrong.message.toLowerCase()}`);
      else if (data.some((cell) => cell.trim() !== "")) lines.push({ line, cells: data.map(fuse) });
      line += (text.slice(at, meta.cursor).match(/\r\n|\n|\r/g) ?? []).length;
      at = meta.cursor;
    },
  });
  const [first, ...rows] = lines;
  return { columns: first?.cells.map((cell) => cell.trim()) ?? [], rows, problems };
}
