/** Which part of a note a correction means: by the number that was wrong, by its size, else it asks. */
import type { Note } from "../contract/index.ts";
import { plain } from "../lib/show.ts";
import type { Facts } from "./facts.ts";
import { fieldsOf } from "./fields.ts";
import type { NoteInputs } from "./note.ts";

type Corrected = { patch: Partial<Note> } | { question: string; slot: string };

const timeFields = { bake: "bake_min", rest: "rest_min", mature: "mature_h" } as const;
type Step = keyof typeof timeFields;

/** What a note's number can be, for one that was said without a unit. °C, min, pieces. */
const plausible = {
  oven_c: [100, 260],
  bake_min: [5, 30],
  rest_min: [5, 240],
  macarons: [1, 1000],
  shells: [1, 2000],
  trays: [1, 20],
  rating: [0, 10],
} as const;
type Field = keyof typeof plausible;

export function correction(facts: Facts, note: Note, step: NoteInputs["step"]): Corrected {
  const fields = fieldsOf(facts);
  const patch: Partial<Note> = {
    ...fields,
    ...(fields.flavors ? { flavors: flavorsNow(facts, note) } : {}),
    ...(facts.problems.length || facts.absent.length ? { problems: problemsNow(facts, note) } : {}),
    ...(facts.praise.length ? { praise: [...new Set([...(note.praise ?? []), ...facts.praise])] } : {}),
    ...(fields.doses ? { doses: replaced(note.doses ?? [], fields.doses, (each) => each.flavor) } : {}),
    ...(fields.weights ? { weights: replaced(note.weights ?? [], fields.weights, (each) => each.name) } : {}),
  };
  const [minutes] = facts.loose_min;
  if (minutes !== undefined) {
    const meant = step ?? stepMeant(minutes, facts.wrong, note);
    if (!meant)
      return {
        question: `Was that the baking or the resting? ${plain(minutes)} min can be both.`,
        slot: "step",
      };
    patch[timeFields[meant]] = meant === "mature" ? minutes / 60 : minutes;
  }
  const [number] = facts.loose;
  const hasOther = minutes !== undefined || Object.keys(fields).length > 0;
  if (number === undefined || hasOther) return { patch };
  const field = fieldMeant(number, facts.wrong, note);
  return field
    ? { patch: { ...patch, [field]: number, ...(field === "rating" ? markOf(number, note) : {}) } }
    : {
        question: `What is ${plain(number)}? Say it with its unit, like ${plain(number)} min.`,
        slot: "text",
      };
}

/** A mark as it is said again, in the scale that the one before was said in: "4/5", then "3". */
function markOf(number: number, { rating_said = "" }: Note): Pick<Note, "rating" | "rating_said"> {
  const scale = Number(/(?:\/|out of) ?(\d+)$/.exec(rating_said)?.[1] ?? 10);
  const isOwn = scale === 5 && number <= scale;
  return isOwn
    ? { rating: (number * 10) / scale, rating_said: `${number}/${scale}` }
    : { rating: number, rating_said: `${number}/10` };
}

/** The time that had the wrong number, or the only one there is; a number that could be either is asked about. */
function stepMeant(minutes: number, wrong: readonly number[], note: Note): Step | undefined {
  const own: Record<Step, number | undefined> = {
    bake: note.bake_min,
    rest: note.rest_min,
    mature: note.mature_h === undefined ? undefined : note.mature_h * 60,
  };
  const steps = Object.keys(own) as Step[];
  const named = steps.find((each) => own[each] !== undefined && wrong.includes(own[each]));
  if (named) return named;
  // "15 min not 14", of what was never noted as 14: no time that is there is put wrong for it
  if (wrong.length > 0 && !steps.some((each) => isNear(own[each] ?? 0, minutes)))
    return note.bake_min === undefined && minutes <= 20 ? "bake" : undefined;
  const there = steps.filter((each) => own[each] !== undefined);
  // "and 40 min", where only a bake of 15 is noted: nobody bakes them so long
  if (there.length === 1 && there[0] === "bake" && minutes > plausible.bake_min[1]) return undefined;
  if (there.length === 1) return there[0];
  if (there.length > 1)
    return there.find(
      (each) =>
        isNear(own[each] ?? 0, minutes) &&
        there.every((other) => other === each || !isNear(own[other] ?? 0, minutes)),
    );
  return minutes <= 20 ? "bake" : undefined;
}

const isNear = (a: number, b: number) => a / b < 1.5 && b / a < 1.5;

function fieldMeant(number: number, wrong: readonly number[], note: Note): Field | undefined {
  const fields = Object.keys(plausible) as Field[];
  const named = fields.filter((each) => note[each] !== undefined && wrong.includes(note[each]));
  if (named.length === 1) return named[0];
  const there = fields.filter(
    (each) => note[each] !== undefined && number >= plausible[each][0] && number <= plausible[each][1],
  );
  if (there.length === 1) return there[0];
  // "make that 150", of 24 macarons at 148 °C: a little off the one, and far from every other
  const off = (each: Field) => Math.max((note[each] ?? 0) / number, number / (note[each] || 1));
  const [close, ...others] = there.toSorted((a, b) => off(a) - off(b));
  return close && off(close) < 1.25 && others.every((each) => off(each) >= 1.5) ? close : undefined;
}

/** "lime, not lemon": lime takes lemon's place; with one flavor in the note the new one takes its place. */
function flavorsNow(facts: Facts, note: Note): string[] {
  if (facts.wrong_flavors.length)
    return [
      ...new Set([...note.flavors.filter((each) => !facts.wrong_flavors.includes(each)), ...facts.flavors]),
    ];
  return note.flavors.length <= 1 ? facts.flavors : [...new Set([...note.flavors, ...facts.flavors])];
}

const problemsNow = (facts: Facts, note: Note): string[] => [
  ...new Set([...note.problems.filter((each) => !facts.absent.includes(each)), ...facts.problems]),
];

function replaced<T>(old: readonly T[], now: readonly T[], key: (each: T) => string): T[] {
  return [...old.filter((each) => !now.some((other) => key(other) === key(each))), ...now];
}
