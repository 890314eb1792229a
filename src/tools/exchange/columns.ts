/** The columns of notes as a table: what each is called, how its cell is written, and how it is read again. */
import type { Note } from "../contract/index.ts";

export type NoteFields = Omit<Note, "id">;

/** A cell read: its value, nothing where it is empty, or why it can't be read. */
export type Cell = { ok: true; value?: unknown } | { ok: false; why: string };

export interface Column {
  key: keyof NoteFields;
  /** The first is written; all of them are read. In lower case. */
  names: string[];
  write(note: NoteFields): string;
  read(cell: string): Cell;
}

const found = (value?: unknown): Cell => ({ ok: true, ...(value === undefined ? {} : { value }) });
const unread = (why: string): Cell => ({ ok: false, why });

/** "16", "1.5", never "16,5": whether that comma parts thousands nobody knows. */
const number = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

export function numberIn(cell: string): number | undefined {
  const value = number.test(cell.trim()) ? Number(cell) : Number.NaN;
  return Number.isFinite(value) ? value : undefined;
}

const text = (key: "text" | "rating_said", names: string[]): Column => ({
  key,
  names,
  write: (note) => note[key] ?? "",
  read: (cell) => found(cell.trim() === "" ? undefined : cell.trim()),
});

type NumberKey = {
  [K in keyof NoteFields]-?: NonNullable<NoteFields[K]> extends number ? K : never;
}[keyof NoteFields];

const numeric = (key: NumberKey, ...names: string[]): Column => ({
  key,
  names,
  write: (note) => (note[key] === undefined ? "" : String(note[key])),
  read(cell) {
    if (cell.trim() === "") return found();
    const value = numberIn(cell);
    return value === undefined
      ? unread(`${names[0]} "${cell.trim()}" is no number; write it like 16 or 16.5`)
      : found(value);
  },
});

/** Items of a list stand between semicolons; one inside of an item has a backslash before it. */
const joined = (items: readonly string[]): string =>
  items.map((each) => each.replace(/[\\;]/g, "\\$&")).join("; ");

export function parted(cell: string): string[] {
  const items = [...cell.matchAll(/(?:\\.|[^;\\]|\\$)+/gs)].map(([item]) =>
    item.trim().replace(/\\(.)/gs, "$1"),
  );
  return items.filter((each) => each !== "");
}

const list = (key: "flavors" | "problems" | "praise" | "planned", ...names: string[]): Column => ({
  key,
  names,
  write: (note) => joined(note[key] ?? []),
  read: (cell) => found(cell.trim() === "" ? undefined : parted(cell)),
});

/** "105 g whites; 130 g almond flour", "4 % pistachio". */
function pairs<T>(
  key: "weights" | "doses",
  unit: "g" | "%",
  write: (
    item: NonNullable<NoteFields["weights"]>[number] & NonNullable<NoteFields["doses"]>[number],
  ) => [number, string],
  read: (amount: number, name: string) => T,
  names: string[],
): Column {
  const pair = new RegExp(`^(\\S+) ?${unit} (.+)$`, "s");
  return {
    key,
    names,
    write: (note) =>
      joined(
        (note[key] ?? [])
          .map((item) => write(item as Parameters<typeof write>[0]))
          .map(([n, name]) => `${n} ${unit} ${name}`),
      ),
    read(cell) {
      if (cell.trim() === "") return found();
      const items = parted(cell).map((item) => {
        const [, amount = "", name = ""] = pair.exec(item) ?? [];
        const value = numberIn(amount);
        return value === undefined ? undefined : read(value, name);
      });
      return items.includes(undefined)
        ? unread(
            `${names[0]} "${cell.trim()}" isn't like "${unit === "g" ? "105 g whites; 130 g almond flour" : "4 % pistachio"}"`,
          )
        : found(items);
    },
  };
}

const flag: Column = {
  key: "ignored",
  names: ["ignored"],
  write: ({ ignored }) => (ignored === undefined ? "" : ignored ? "yes" : "no"),
  read(cell) {
    const said = cell.trim().toLowerCase();
    if (said === "") return found();
    if (/^(?:yes|y|true|1|x)$/.test(said)) return found(true);
    return /^(?:no|n|false|0)$/.test(said) ? found(false) : unread(`ignored "${cell}" is neither yes nor no`);
  },
};

/** When it was written down, in UTC: tells two notes of a day apart. */
const noted: Column = {
  key: "noted_ms",
  names: ["noted"],
  write: ({ noted_ms }) => new Date(noted_ms).toISOString(),
  read(cell) {
    if (cell.trim() === "") return found();
    const ms = /^[+-]?\d{4,6}-\d\d-\d\dT\d\d:\d\d/.test(cell.trim()) ? Date.parse(cell.trim()) : Number.NaN;
    return Number.isNaN(ms) ? unread(`noted "${cell}" is no moment like 2026-03-14T09:30:00Z`) : found(ms);
  },
};

const date: Column = {
  key: "date",
  names: ["date", "day", "baked", "baked on", "made", "made on"],
  write: (note) => note.date,
  // a table's dates are read together, in dates.ts
  read: (cell) => found(cell.trim() === "" ? undefined : cell.trim()),
};

export const noteColumns: readonly Column[] = [
  date,
  text("text", ["text", "note", "notes", "comment", "comments", "remarks"]),
  list("flavors", "flavors", "flavor", "flavours", "flavour"),
  list("problems", "problems", "problem", "faults"),
  list("praise", "praise"),
  numeric("rating", "rating", "score"),
  text("rating_said", ["rating said"]),
  numeric("macarons", "macarons"),
  numeric("shells", "shells"),
  numeric("trays", "trays"),
  numeric("diameter_mm", "diameter mm"),
  numeric("oven_c", "oven c"),
  numeric("bake_min", "bake min"),
  numeric("rest_min", "rest min"),
  numeric("mature_h", "mature h"),
  numeric("batter_g", "batter g"),
  numeric("filling_g", "filling g"),
  numeric("batter_left_g", "batter left g"),
  numeric("filling_left_g", "filling left g"),
  pairs(
    "weights",
    "g",
    (item) => [item.grams, item.name],
    (grams, name) => ({ name, grams }),
    ["weights"],
  ),
  pairs(
    "doses",
    "%",
    (item) => [item.percent, item.flavor],
    (percent, flavor) => ({ flavor, percent }),
    ["doses"],
  ),
  flag,
  list("planned", "planned"),
  noted,
];

/** "Oven °C", "oven_c" and "oven c" are one name. */
export const columnName = (said: string): string =>
  said
    .toLowerCase()
    .replace(/[°()[\]%]/g, " ")
    .replace(/[_\s]+/g, " ")
    .trim();

export const columnNamed = (said: string): Column | undefined =>
  noteColumns.find((each) => each.names.includes(columnName(said)));
