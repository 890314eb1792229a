/** Causes and changes for a symptom, and what the baker's own record says of it. */
import { type TroubleRow, troubleBasis, troubles } from "../../../data/rules/troubles.ts";
import type { Figure, Item, Note, Outcome, World } from "../contract/index.ts";
import { listed, plain } from "../lib/show.ts";
import type { TroubleInputs } from "./trouble.ts";

/** How many of her own notes are laid beside the causes, the newest first. */
const mostNotes = 3;

/** @throws never: a missing symptom comes back as `asking`. */
export function answerTrouble({ symptom }: TroubleInputs, world: World): Outcome {
  const row = troubles.find((each) => each.id === symptom);
  if (!row) {
    const question =
      "What do you see: no feet, cracked or hollow shells, a split ganache, a curdled buttercream?";
    return { status: "asking", headline: question, question, slot: "symptom" };
  }
  const [first] = row.causes;
  const own = notesAbout(row.id, world.notes);
  const differs = comparison(row.id, world.notes);
  return {
    status: "answered",
    headline: `${row.title}: most often ${first?.cause}. ${sentence(first?.change ?? "")}${differs.length ? ` In your notes: ${listed(differs.map((each) => each.text))}.` : ""}`,
    figures: figuresOf(row),
    rule: {
      text: `${row.title.toLowerCase()}: ${row.causes.map(({ cause, change }, at) => `${at + 1}. ${cause}: ${change}`).join("; ")}`,
      basis: troubleBasis,
    },
    items: [
      ...row.causes.map(({ cause, check, change }, at): Item => ({ order: at + 1, cause, check, change })),
      ...differs.map(
        (each): Item => ({ differs: each.what, with: each.here, without: each.well, unit: each.unit }),
      ),
      ...own,
    ],
    ...(row.now || row.caution
      ? { cautions: [...(row.now ? [row.now] : []), ...(row.caution ? [row.caution] : [])] }
      : {}),
    working: row.causes.map(({ cause, check, change }, at) => `${at + 1}. ${cause} (${check}): ${change}`),
  };
}

const sentence = (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;

/** Each number to change to, once: the first cause that names it wins. */
function figuresOf(row: TroubleRow): Figure[] {
  const all = row.causes.flatMap((each) => (each.figure ? [each.figure] : []));
  return all.filter((figure, at) => all.findIndex((other) => other.name === figure.name) === at);
}

/** Her notes of the same fault, the newest first. */
function notesAbout(symptom: string, notes: readonly Note[]): Item[] {
  return notes
    .filter((note) => !note.ignored && note.problems.includes(symptom))
    .slice(-mostNotes)
    .reverse()
    .map(
      (note): Item => ({
        date: note.date,
        flavors: note.flavors,
        text: note.text,
        problems: note.problems,
        ...(note.rating !== undefined ? { rating: note.rating } : {}),
      }),
    );
}

interface Difference {
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
 * batches noted without any. Only settings that both kinds of note carry; equal ones say nothing.
 */
export function comparison(symptom: string, notes: readonly Note[]): Difference[] {
  const kept = notes.filter((note) => !note.ignored);
  return compared.flatMap(({ key, what, unit }) => {
    const values = (list: readonly Note[]) =>
      list.flatMap((note) => (note[key] === undefined ? [] : [note[key]]));
    const here = median(values(kept.filter((note) => note.problems.includes(symptom))));
    const well = median(values(kept.filter((note) => note.problems.length === 0)));
    if (here === undefined || well === undefined || here === well) return [];
    return [
      {
        what,
        here,
        well,
        unit,
        text: `${what} ${plain(here)} ${unit} when it happened, ${plain(well)} ${unit} when all was well`,
      },
    ];
  });
}

/** The middle of the values, the mean of the middle two; undefined of none. */
export function median(values: readonly number[]): number | undefined {
  if (values.length === 0) return undefined;
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >> 1;
  const [low = 0, high = 0] = [sorted[half - 1], sorted[half]];
  return sorted.length % 2 === 1 ? high : (low + high) / 2;
}
