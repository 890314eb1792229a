/** The usual: the median of what the notes say. */
import type { Figure, Note, Outcome } from "../contract/index.ts";
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

const rows: Readonly<Record<Measure, Row>> = {
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

/** One measure, or all that the notes have. Notes set aside don't count. */
export function typical(inputs: RecallInputs, notes: readonly Note[], about: string): Outcome {
  const used = notes.filter((note) => !note.ignored);
  const wanted = inputs.measure ? [inputs.measure] : (Object.keys(rows) as Measure[]);
  const found = wanted.flatMap((measure) => {
    const row = rows[measure];
    const values = used.flatMap((note) => row.value(note, inputs) ?? []);
    return values.length
      ? [
          {
            ...row,
            values: values.map((each) => (inputs.fahrenheit && row.unit === "°C" ? fahrenheit(each) : each)),
            unit: inputs.fahrenheit && row.unit === "°C" ? "°F" : row.unit,
          },
        ]
      : [];
  });
  if (found.length === 0)
    return {
      status: "answered",
      headline: `${counted(notes.length, "note")}${about}, and none says ${inputs.measure ? saidAs[inputs.measure] : "a number"}.`,
      items: [],
    };
  const figures = found.map(
    ({ name, unit, values }): Figure =>
      values.length === 1
        ? { name, value: median(values), unit }
        : { name, value: median(values), low: Math.min(...values), high: Math.max(...values), unit },
  );
  const lines = found.map(
    ({ name, unit, values }) =>
      `${name}: ${[...values]
        .sort((a, b) => a - b)
        .map((each) => plain(each))
        .join(", ")} ${unit}`,
  );
  const count = Math.max(...found.map((each) => each.values.length));
  return {
    status: "answered",
    headline: `${capital(figures.map((each) => figureText(each, inputs.measure !== undefined)).join(", "))}${about}, the median of ${counted(count, "note")}`,
    figures,
    rule: { text: `the median of your notes, ${lines.join("; ")}`, basis: "your bench" },
    ...(count === 1 ? { cautions: ["One note is little to go by."] } : {}),
    working: lines,
    items: used.slice(0, 20).map(noteItem),
  };
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
