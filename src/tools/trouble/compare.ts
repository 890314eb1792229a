/** What her own batches say of a fault: how those with it differ from those that went well. */
import type { Note } from "../contract/index.ts";
import { plain } from "../lib/show.ts";

export interface Difference {
  what: string;
  here: number;
  well: number;
  unit: string;
  text: string;
}

const compared: readonly {
  key: "oven_c" | "bake_min" | "rest_min" | "mature_h" | "diameter_mm";
  what: string;
  unit: string;
}[] = [
  { key: "oven_c", what: "oven", unit: "°C" },
  { key: "bake_min", what: "bake", unit: "min" },
  { key: "rest_min", what: "rest", unit: "min" },
  { key: "mature_h", what: "mature", unit: "h" },
  { key: "diameter_mm", what: "size", unit: "mm" },
];

/**
 * What differed in the batches that went well: the middle value of each setting in batches with the fault against
 * batches noted without any. Heat, times, size and
 * doses, where both kinds of note carry them; equal ones say nothing.
 */
export function comparison(symptom: string, notes: readonly Note[]): Difference[] {
  return pairs(symptom, notes).flatMap(({ what, here, well, unit }) =>
    here === well
      ? []
      : [
          {
            what,
            here,
            well,
            unit,
            text: `${what} ${plain(here)} ${unit} when it happened, ${plain(well)} ${unit} when all was well`,
          },
        ],
  );
}

/** The settings that both kinds of batch carry and that don't differ: they aren't the cause. */
export const alike = (symptom: string, notes: readonly Note[]): string[] =>
  pairs(symptom, notes).flatMap(({ what, here, well }) => (here === well ? [what] : []));

/** The middle value with the fault and without any, of each setting and dose that both kinds of note carry. */
function pairs(symptom: string, notes: readonly Note[]): Omit<Difference, "text">[] {
  const kept = notes.filter((note) => !note.ignored);
  const bad = kept.filter((note) => note.problems.includes(symptom));
  const good = kept.filter((note) => note.problems.length === 0);
  const pair = (what: string, unit: string, of: (note: Note) => number | undefined) => {
    const middle = (list: readonly Note[]) =>
      median(list.flatMap((note) => (of(note) === undefined ? [] : [of(note) as number])));
    const [here, well] = [middle(bad), middle(good)];
    return here === undefined || well === undefined ? [] : [{ what, here, well, unit }];
  };
  const flavors = [...new Set(bad.flatMap((note) => (note.doses ?? []).map((each) => each.flavor)))];
  return [
    ...compared.flatMap(({ key, what, unit }) => pair(what, unit, (note) => note[key])),
    ...flavors.flatMap((flavor) =>
      pair(flavor, "%", (note) => note.doses?.find((each) => each.flavor === flavor)?.percent),
    ),
  ];
}

/** The middle of the values, the mean of the middle two; undefined of none. */
export function median(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const [low = 0, high = 0] = [sorted[half - 1], sorted[half]];
  return sorted.length % 2 === 1 ? high : (low + high) / 2;
}
