/**
 * The dose that rated best for a flavor, from the notes. It is told beside the table's range and replaces it only where
 * she asks for her usual dose; the directions on the bottle stay the limit.
 */
import type { Note, World } from "../contract/index.ts";
import { middle, teachers } from "./learned.ts";
import { newestFirst } from "./notes.ts";
import { isTaste } from "./tastes.ts";

/** From this rating out of 10 on a dose counts as liked. */
const liked = 8;
/** Doses that lie within so many percentage points of the best one agree with it. */
const agree_points = 0.5;
/** So many have to agree before a dose is a usual one. */
const least = 2;

export interface RatedDose {
  percent: number;
  rating: number;
  note: Note;
}

export interface BestDose {
  /** The best rated one, the latest where several are. */
  best: RatedDose;
  /** The dose that at least two liked batches agree on, the median of theirs, in % of the base. */
  usual?: { percent: number; batches: RatedDose[] };
}

/** Words of a note that tell in which form a flavor went in; a dose of another form is another dose. */
const forms: readonly [RegExp, string][] = [
  [/\bextracts?\b/, "extract"],
  [/\boils?\b/, "oil"],
  [/\b(?:paste|praline|bean)\b/, "paste"],
  [/\bpowder(?:ed)?\b|freeze.dried/, "powder"],
  [/\b(?:pur[eé]e|jam|curd)\b/, "purée"],
  [/\bzest\b/, "zest"],
];
const formIn = (text: string) => forms.find(([words]) => words.test(text.toLowerCase()))?.[1];

/** The mix that a text names, where it names one alone. */
function mixIn(text: string): string | undefined {
  const named = ["buttercream", "ganache"].filter((each) => text.toLowerCase().includes(each));
  return named.length === 1 ? named[0] : undefined;
}

/**
 * @param asked the taste, the dose table's row ("flavor", "nut paste") and the base it goes into
 */
export function bestDose(
  asked: { taste?: string; row: string; base: string },
  { notes, bench }: Pick<World, "notes" | "bench">,
): BestDose | undefined {
  const { taste } = asked;
  if (taste === undefined || bench.use_book) return undefined;
  const rated = teachers(notes, bench, "doses")
    .sort(newestFirst)
    .flatMap((note): RatedDose[] => {
      const dose =
        note.doses?.find((each) => each.flavor === taste) ??
        note.doses?.find((each) => isTaste(taste, each.flavor));
      const mix = mixIn(note.text);
      const fits =
        formIn(note.text) === formIn(asked.row) &&
        (mix === undefined || mix === asked.base || asked.base === "filling");
      return dose && fits && note.rating !== undefined
        ? [{ percent: dose.percent, rating: note.rating, note }]
        : [];
    });
  const top = Math.max(...rated.map((each) => each.rating));
  const best = rated.find((each) => each.rating === top);
  if (!best) return undefined;
  const batches = rated.filter(
    (each) => each.rating >= liked && Math.abs(each.percent - best.percent) <= agree_points + 1e-9,
  );
  return batches.length < least
    ? { best }
    : { best, usual: { percent: middle(batches.map((each) => each.percent)), batches } };
}
