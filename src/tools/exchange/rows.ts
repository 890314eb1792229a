/** From what a file held to notes: each checked, and what can't be read of it named by its line. */
import * as z from "zod/mini";
import type { Note } from "../contract/index.ts";
import { Note as NoteSchema } from "../contract/record.ts";
import { type Column, columnNamed, type NoteFields, noteColumns } from "./columns.ts";
import { dayIn, orderOf } from "./dates.ts";

/** What src/cli found in a file: a table's rows, or JSON as it stands. */
export const Found = z.union([
  z.object({
    columns: z.array(z.string()),
    rows: z.array(
      z.object({
        line: z.number(),
        cells: z.array(z.string()),
        /** What the text says, where the table has no columns for it. */
        facts: z.optional(z.record(z.string(), z.unknown())),
      }),
    ),
    problems: z.array(z.string()),
  }),
  z.object({ json: z.unknown() }),
]);

export type Found = z.infer<typeof Found>;

/** A note as it was found; `noted_ms` is left out where the file doesn't say it. */
export type Row = Omit<NoteFields, "noted_ms"> & { noted_ms?: number };

export interface Read {
  rows: Row[];
  /** "line 4: ...", in order. */
  unread: string[];
  /** Columns or fields that nothing is known of. */
  unknown: string[];
  /** Why there is nothing to read at all. */
  why?: string;
}

/** More than this is no baker's record. */
export const mostRows = 5000;

const most = 1_000_000;

export function readFound(found: Found): Read {
  const read = "json" in found ? fromJson(found.json) : fromTable(found);
  if (read.rows.length + read.unread.length > mostRows)
    return {
      rows: [],
      unread: [],
      unknown: [],
      why: `it has more than ${mostRows} rows; import it in parts.`,
    };
  return read;
}

function fromTable({ columns, rows, problems }: Exclude<Found, { json?: unknown }>): Read {
  const known = columns.map(columnNamed);
  const at = (key: keyof NoteFields) => known.findIndex((each) => each?.key === key);
  const unknown = columns.filter((name, n) => !known[n] && name !== "");
  const none = { rows: [], unread: [], unknown };
  const twice = known.find((each, n) => each && known.indexOf(each) !== n);
  if (twice) return { ...none, why: `its column "${twice.names[0]}" is there twice.` };
  if (at("date") < 0)
    return {
      ...none,
      why: 'its first row has no column "date". The names of the columns are those of an export.',
    };
  const order = orderOf(rows.map(({ cells }) => cells[at("date")] ?? ""));
  const done = rows.map(({ line, cells, facts }): Row | string => {
    if (cells.length > columns.length && cells.slice(columns.length).some((cell) => cell.trim() !== ""))
      return `line ${line}: it has ${cells.length} cells, the first row ${columns.length}`;
    const fields: Record<string, unknown> = { ...facts };
    for (const [n, column] of known.entries()) {
      const why = column && fill(fields, column, cells[n] ?? "", order);
      if (why) return `line ${line}: ${why}`;
    }
    return rowOf(fields, `line ${line}`);
  });
  return { ...apart(done), unknown, ...(problems.length ? withProblems(done, problems) : {}) };
}

const apart = (done: readonly (Row | string)[]): Pick<Read, "rows" | "unread"> => ({
  rows: done.filter((each) => typeof each !== "string"),
  unread: done.filter((each) => typeof each === "string"),
});

const withProblems = (done: readonly (Row | string)[], problems: readonly string[]) => ({
  unread: [...apart(done).unread, ...problems],
});

/** Puts a cell into the fields, or says why it can't. */
function fill(
  fields: Record<string, unknown>,
  column: Column,
  cell: string,
  order: ReturnType<typeof orderOf>,
) {
  if (column.key === "date") {
    if (cell.trim() === "") return "it has no date";
    const day = dayIn(cell, order);
    if (!day.ok) return day.why;
    fields.date = day.day;
    return undefined;
  }
  const read = column.read(cell);
  if (!read.ok) return read.why;
  if (read.value !== undefined) fields[column.key] = read.value;
  return undefined;
}

/** An export of notes or of everything, or a bare list of notes. */
const Exported = z.union([z.object({ notes: z.array(z.unknown()) }), z.array(z.unknown())]);

function fromJson(json: unknown): Read {
  const parsed = Exported.safeParse(json);
  if (!parsed.success) return { rows: [], unread: [], unknown: [], why: 'it holds no list of "notes".' };
  const list = Array.isArray(parsed.data) ? parsed.data : parsed.data.notes;
  const left = Object.entries(Array.isArray(json) ? {} : (json as object))
    .filter(([key, value]) => key !== "notes" && isSomething(value))
    .map(([key]) => `the ${key} beside the notes`);
  const keys = new Set<string>(["id", ...noteColumns.map(({ key }) => key)]);
  const unknown = new Set<string>();
  const done = list.map((each, n): Row | string => {
    if (typeof each !== "object" || each === null || Array.isArray(each))
      return `note ${n + 1}: it is no note`;
    for (const key of Object.keys(each)) if (!keys.has(key)) unknown.add(key);
    return rowOf(each as Record<string, unknown>, `note ${n + 1}`);
  });
  return { ...apart(done), unknown: [...unknown, ...left] };
}

const isSomething = (value: unknown): boolean =>
  typeof value === "object" && value !== null && Object.keys(value).length > 0;

/** Checks a note against the record's own schema, its day against the calendar, its numbers against what can be. */
function rowOf(fields: Record<string, unknown>, place: string): Row | string {
  const parsed = NoteSchema().safeParse({
    text: "",
    flavors: [],
    problems: [],
    noted_ms: 0,
    ...fields,
    id: 1,
  });
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    return `${place}: ${issue?.path.join(".") || "it"} isn't as it should be`;
  }
  const { id: _id, noted_ms, ...note } = tidied(parsed.data);
  const day = dayIn(note.date, undefined);
  if (!day.ok) return `${place}: ${day.why}`;
  const large = Object.entries(note).find(
    ([key, value]) => typeof value === "number" && !isLikely(key, value),
  );
  if (large) return `${place}: ${large[0].replaceAll("_", " ")} ${large[1]} can't be`;
  if (note.text.length > 10_000) return `${place}: its text is longer than 10000 letters`;
  if (note.text === "" && note.flavors.length === 0 && Object.keys(fields).length < 2)
    return `${place}: there is nothing in it but its day`;
  return { ...note, date: day.day, ...(fields.noted_ms === undefined ? {} : { noted_ms }) };
}

const isLikely = (key: string, value: number): boolean =>
  Number.isFinite(value) && value <= most && value >= (key === "oven_c" ? -100 : 0);

// biome-ignore lint/suspicious/noControlCharactersInRegex: taking them out is the point
const controls = /[\u0000-\u001f\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]+/g;

/** What is stored is rid of control characters and terminal escapes, wherever it comes from. */
function tidied(note: Note): Note {
  const deep = (value: unknown): unknown => {
    if (typeof value === "string") return value.replace(controls, " ").replace(/ {2,}/g, " ").trim();
    if (Array.isArray(value)) return value.map(deep);
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, deep(each)]));
  };
  return deep(note) as Note;
}
