/** Notes as answers show them: as items, as figures and in a line. */
import type { Figure, Item, Note } from "../contract/index.ts";
import { friendlyDay } from "./days.ts";
import { listed, plain } from "./show.ts";

/** A note as `items` have it: the day, the baker's own words, and what was read from them. */
export function noteItem(note: Note): Item {
  const { id: _id, noted_ms: _noted, planned: _planned, weights, doses, praise, ...rest } = note;
  return {
    ...rest,
    ...(praise?.length ? { praise } : {}),
    ...(weights?.length ? { weights: weights.map((each) => `${plain(each.grams)} g ${each.name}`) } : {}),
    ...(doses?.length ? { doses: doses.map((each) => `${plain(each.percent)} % ${each.flavor}`) } : {}),
  };
}

/** Everything that a note has a number for, in the units of figures. */
export function noteFigures(note: Partial<Note>): Figure[] {
  const rows: [name: string, value: number | undefined, unit: string][] = [
    ["macarons", note.macarons, "macarons"],
    ["shells", note.shells, "shells"],
    ["trays", note.trays, "trays"],
    ["diameter", note.diameter_mm, "mm"],
    ["oven", note.oven_c, "°C"],
    ["bake", note.bake_min, "min"],
    ["rest", note.rest_min, "min"],
    ["mature", note.mature_h === undefined ? undefined : note.mature_h * 60, "min"],
    ...(note.weights ?? []).map((each): [string, number, string] => [each.name, each.grams, "g"]),
    ["batter left", note.batter_left_g, "g"],
    ["filling left", note.filling_left_g, "g"],
    ...(note.doses ?? []).map((each): [string, number, string] => [
      `share ${each.flavor}`,
      each.percent,
      "%",
    ]),
    ["rating", note.rating, ""],
  ];
  return rows.flatMap(([name, value, unit]) => (value === undefined ? [] : [{ name, value, unit }]));
}

/** What was read from a note, in a line: "pistachio, 36 macarons, 148 °C, baked 16 min, hollow, 9 out of 10". */
export function readAs(note: Partial<Note>): string {
  const bit = (value: number | undefined, text: (value: string) => string) =>
    value === undefined ? [] : [text(plain(value))];
  return [
    ...(note.flavors?.length ? [listed(note.flavors)] : []),
    ...bit(note.macarons, (n) => `${n} ${n === "1" ? "macaron" : "macarons"}`),
    ...bit(note.shells, (n) => `${n} ${n === "1" ? "shell" : "shells"}`),
    ...bit(note.trays, (n) => (n === "1" ? "1 tray" : `${n} trays`)),
    ...bit(note.diameter_mm, (n) => `${n} mm`),
    ...bit(note.oven_c && Math.round(note.oven_c), (n) => `oven ${n} °C`),
    ...bit(note.bake_min, (n) => `baked ${n} min`),
    ...bit(note.rest_min, (n) => `rested ${n} min`),
    ...bit(note.mature_h, (n) => `matured ${n} h`),
    ...(note.weights ?? []).map((each) => `${plain(each.grams)} g ${each.name}`),
    ...bit(note.batter_left_g, (n) => `${n} g batter left`),
    ...bit(note.filling_left_g, (n) => `${n} g filling left`),
    ...(note.doses ?? []).map((each) => `${plain(each.percent)} % ${each.flavor}`),
    ...(note.problems ?? []),
    ...(note.praise ?? []),
    ...(note.rating_said ? [note.rating_said] : []),
  ].join(", ");
}

/** "Fri 13 Mar: tops cracked, oven ran hot". */
export const noteLine = (note: Note, now_ms: number): string =>
  `${friendlyDay(note.date, now_ms)}: ${note.text}`;

/** Notes of the same day keep the order in which they were made; the newest first. */
export const newestFirst = (a: Note, b: Note): number =>
  a.date === b.date ? b.id - a.id : a.date < b.date ? 1 : -1;
