/** The usual: the median of what the notes say. */
import type { Figure, Note, Outcome } from "../contract/index.ts";
import { perList } from "../lib/memo.ts";
import { noteItem } from "../lib/notes.ts";
import { capital, counted, plain } from "../lib/show.ts";
import { fahrenheit } from "../lib/units.ts";
import type { measures, RecallInputs } from "./recall.ts";

type Measure = (typeof measures)[number];

interface Row {
  name: string;
  unit: string;
  value(note: Note, inputs: RecallInputs): number | undefined;
}

export const rows: Readonly<Record<Measure, Row>> = {
  bake: { name: "bake", unit: "min", value: (note) => note.bake_min },
  rest: { name: "rest", unit: "min", value: (note) => note.rest_min },
  mature: {
    name: "mature",
    unit: "min",
    value: (note) => (note.mature_h === undefined ? undefined : note.mature_h * 60),
  },
  oven: { name: "oven", unit: "°C", value: (note) => note.oven_c },
  macarons: { name: "macarons", unit: "macarons", value: (note) => note.macarons },
  shells: { name: "shells", unit: "shells", value: (note) => note.shells },
  trays: { name: "trays", unit: "trays", value: (note) => note.trays },
  diameter: { name: "diameter", unit: "mm", value: (note) => note.diameter_mm },
  dose: { name: "share", unit: "%", value: doseOf },
  batter: { name: "batter", unit: "g", value: (note) => note.batter_g },
  filling: { name: "filling", unit: "g", value: (note) => note.filling_g },
  rating: { name: "rating", unit: "", value: (note) => note.rating },
};

/** The dose of the flavor that is asked about; the only one of a note otherwise. */
function doseOf(note: Note, inputs: RecallInputs): number | undefined {
  const doses = note.doses ?? [];
  const asked = doses.find((each) => inputs.flavors?.includes(each.flavor));
  return (asked ?? (doses.length === 1 ? doses[0] : undefined))?.percent;
}

/** The middle of the values, the mean of the two middle ones where their number is even. */
export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return Number.isInteger(half)
    ? ((sorted[half - 1] ?? 0) + (sorted[half] ?? 0)) / 2
    : (sorted[Math.floor(half)] ?? 0);
}

interface Found {
  name: string;
  unit: string;
  /** Lowest first. */
  values: readonly number[];
  median: number;
}

/** What the notes say of one measure, or of all; notes set aside don't count. */
const said = perList(
  (notes: readonly Note[], inputs: RecallInputs): Found[] => {
    const used = notes.filter((note) => !note.ignored);
    const wanted = inputs.measure ? [inputs.measure] : (Object.keys(rows) as Measure[]);
    return wanted.flatMap((measure) => {
      const { name, unit, value } = rows[measure];
      const inF = inputs.fahrenheit && unit === "°C";
      const own = used.flatMap((note) => value(note, inputs) ?? []);
      const values = own.map((each) => (inF ? fahrenheit(each) : each)).sort((a, b) => a - b);
      return values.length ? [{ name, unit: inF ? "°F" : unit, values, median: median(values) }] : [];
    });
  },
  ({ measure, flavors, fahrenheit: inF }) => JSON.stringify([measure, flavors, inF]),
);

/** Every value is shown while they can be read; of more the middle half and the ends. */
const readable = 24;

function spread(values: readonly number[]): string {
  if (values.length <= readable) return values.map((each) => plain(each)).join(", ");
  const at = (part: number) => plain(values[Math.round(part * (values.length - 1))] ?? 0);
  return `${values.length} values from ${at(0)} to ${at(1)}, the middle half ${at(0.25)} to ${at(0.75)}`;
}

/** One measure, or all that the notes have. */
export function typical(inputs: RecallInputs, notes: readonly Note[], about: string): Outcome {
  const found = said(notes, inputs);
  if (found.length === 0)
    return {
      status: "answered",
      headline: `${counted(notes.length, "note")}${about}, and none says ${inputs.measure ? saidAs[inputs.measure] : "a number"}.`,
      items: [],
    };
  const figures = found.map(({ name, unit, values, median: value }): Figure => {
    return values.length === 1
      ? { name, value, unit }
      : { name, value, low: values[0] ?? value, high: values.at(-1) ?? value, unit };
  });
  const lines = found.map(({ name, unit, values }) => `${name}: ${spread(values)} ${unit}`);
  const count = Math.max(...found.map((each) => each.values.length));
  return {
    status: "answered",
    headline: `${capital(figures.map((each) => figureText(each, inputs.measure !== undefined)).join(", "))}${about}, the median of ${counted(count, "note")}`,
    figures,
    rule: { text: `the median of your notes, ${lines.join("; ")}`, basis: "your bench" },
    ...(count === 1 ? { cautions: ["One note is little to go by."] } : {}),
    working: lines,
    items: firstUsed(notes).map(noteItem),
  };
}

/** The newest twenty that count. */
function firstUsed(notes: readonly Note[]): Note[] {
  const used: Note[] = [];
  for (const note of notes) {
    if (!note.ignored) used.push(note);
    if (used.length === 20) break;
  }
  return used;
}

/** "16 min", or among others "16 min bake", "40 macarons", "4 % flavor", "rated 9". */
function figureText({ name, value = 0, unit }: Figure, isAlone: boolean): string {
  if (name === "rating") return isAlone ? plain(value) : `rated ${plain(value)}`;
  const what = isAlone || name === unit ? "" : name === "share" ? " flavor" : ` ${name}`;
  return `${plain(value)} ${unit}${what}`;
}

const saidAs: Readonly<Record<Measure, string>> = {
  bake: "how long it baked",
  rest: "how long it rested",
  mature: "how long it matured",
  oven: "how hot the oven was",
  macarons: "how many macarons",
  shells: "how many shells",
  trays: "how many trays",
  diameter: "how wide the shells were",
  dose: "how much flavor went in",
  batter: "how much batter",
  filling: "how much filling",
  rating: "a rating",
};
