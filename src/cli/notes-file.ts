/** What a file of notes holds: the rows of a table, or JSON. Only read here; checking and adding is the calculator's. */
import { noteFacts } from "../intents/note-facts.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { Limit } from "./files.ts";
import type { CsvRows, Makers } from "./hand-over.ts";

/** What src/tools/exchange/rows.ts takes. */
export type FoundNotes =
  | (Omit<CsvRows, "rows"> & { rows: (CsvRows["rows"][number] & { facts?: object })[] })
  | { json: unknown };

interface Hands {
  makers?: Makers;
  readFile?(path: string, limit?: Limit): Promise<{ ok: true; text: string } | { ok: false; why: string }>;
}

const limit: Limit = { bytes: 5_000_000, why: "larger than 5 MB; import it in parts." };

/** @returns what was found, or why it can't be read */
export async function notesFromFile(
  file: string,
  { makers, readFile }: Hands,
  understanding: Understanding,
): Promise<FoundNotes | string> {
  const read = await readFile?.(file, limit);
  if (!read || !makers) return `${file} can't be read from here.`;
  if (!read.ok)
    return /UTF-8/.test(read.why) ? `${read.why} Save the table as CSV in UTF-8 first.` : read.why;
  if (/\.json$/i.test(file) || /^\s*[[{]/.test(read.text)) return jsonIn(read.text, file);
  const { csvRows } = await makers.csv();
  return withFacts(csvRows(read.text), understanding);
}

function jsonIn(text: string, file: string): FoundNotes | string {
  try {
    return { json: JSON.parse(text) };
  } catch (error) {
    return `${file} is no JSON: ${error instanceof Error ? error.message : error}.`;
  }
}

/** Columns of a table that was written by hand: a day and what she wrote, which is read as a note is. */
const plain = /^(?:date|day|baked(?: on)?|made(?: on)?|texts?|notes?|comments?|remarks|noted)$/i;

function withFacts(table: CsvRows, understanding: Understanding): FoundNotes {
  const at = table.columns.findIndex((name) => /^(?:text|notes?|comments?|remarks)$/i.test(name));
  if (at < 0 || !table.columns.every((name) => name === "" || plain.test(name))) return table;
  const rows = table.rows.map((row) => ({ ...row, facts: noteFacts(row.cells[at] ?? "", understanding) }));
  return { ...table, rows };
}
