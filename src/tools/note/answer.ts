/** Writes notes, adds to them, puts them right. */
import type { Effect, Note, Outcome, World } from "../contract/index.ts";
import { answerImport } from "../exchange/in.ts";
import { answerExport } from "../exchange/out.ts";
import { friendlyDay, localDay } from "../lib/days.ts";
import { newestFirst, noteFigures, noteItem, noteLine, readAs } from "../lib/notes.ts";
import { capital, listed } from "../lib/show.ts";
import { isTaste } from "../lib/tastes.ts";
import { behind } from "../lib/when.ts";
import { correction } from "./correct.ts";
import { withoutUnread } from "./facts.ts";
import { fieldsOf } from "./fields.ts";
import { noteMeant, setAside } from "./ignoring.ts";
import type { NoteInputs } from "./note.ts";
import { fromPlan } from "./planned.ts";

/** @throws never: what can't be noted comes back as `asking` or `impossible` */
export function answerNote(inputs: NoteInputs, world: World): Outcome {
  if (inputs.do === "add") return add(inputs, world);
  if (inputs.do === "import") return answerImport(inputs.file, inputs.found, world);
  if (inputs.do === "export") return answerExport(inputs.what ?? "notes", inputs.as ?? "csv", world);
  if (inputs.do === "ignore" || inputs.do === "count") return aside(inputs.do, inputs, world);
  const target = targetOf(inputs, world.notes);
  if (!target)
    return {
      status: "impossible",
      headline: inputs.about?.length
        ? `There is no note of ${listed(inputs.about)}.`
        : "There is no note yet.",
    };
  if (inputs.do === "remove") return remove(target, world);
  if (!inputs.text)
    return asking(inputs.do === "append" ? "What shall I add?" : "What should it say?", "text");
  if (inputs.do === "append") return append(inputs, target, world);
  return correct(inputs, target, world);
}

function aside(does: "ignore" | "count", inputs: NoteInputs, world: World): Outcome {
  const day = inputs.when ? dayFor(inputs, world) : undefined;
  if (day && !day.ok) return { status: "impossible", headline: day.why };
  const target = noteMeant(inputs, day?.date, world.notes);
  if (target) return setAside(does, target, world);
  return {
    status: "impossible",
    headline: world.notes.length ? "There is no note of that batch." : "There is no note yet.",
  };
}

const asking = (question: string, slot: string): Outcome => ({
  status: "asking",
  headline: question,
  question,
  slot,
});

/** The note on the table, the last of a flavor, or the last that was written. */
function targetOf(inputs: NoteInputs, notes: readonly Note[]): Note | undefined {
  const onTable = notes.find((each) => each.id === inputs.note);
  if (onTable) return onTable;
  const about = inputs.about ?? [];
  const isOf = (each: Note, taste: string) => each.flavors.some((own) => isTaste(taste, own));
  const named = notes.filter((each) => about.every((taste) => isOf(each, taste)));
  // a flavor that no table knows stands in the note's own words, and is no part of one
  const inWords = (each: Note, taste: string) =>
    ` ${each.text.toLowerCase().replace(/[^a-z ]+/g, " ")} `.includes(` ${taste} `);
  const fitting =
    named.length > 0 || inputs.do === "remove"
      ? named
      : notes.filter((each) => about.every((taste) => inWords(each, taste)));
  return about.length ? [...fitting].sort(newestFirst)[0] : fitting.toSorted((a, b) => b.id - a.id)[0];
}

function add(inputs: NoteInputs, world: World): Outcome {
  const isEmpty =
    /^(?:(?:a|an|the|this|my|new|another|quick|little|(?:can|could|would) you|write|jot|take|put|for (?:me|us|later|today|next time)|please|pls|thanks|thank you|now|quickly|down|something|one thing|a thing|it|that|will you|would you|about (?:it|this|that|today)|if you (?:can|would|will|could)),?(?: |$))*(?:batch|bake|note|one)?[.!?]*$/i.test(
      inputs.text ?? "",
    );
  if (inputs.answer && world.last?.answer.status === "answered") return noteOf(world.last, inputs, world);
  if (!inputs.facts || !inputs.text || inputs.text.length < 3 || isEmpty)
    return asking("What shall I note?", "text");
  const day = dayFor(inputs, world);
  if (!day.ok) return { status: "impossible", headline: day.why };
  const fields = fieldsOf(inputs.facts);
  const plan = fromPlan(inputs.facts, inputs.when ? day.date : undefined, world);
  const entry: Omit<Note, "id"> = {
    date: day.date,
    noted_ms: world.now_ms,
    text: inputs.text,
    flavors: [],
    problems: [],
    ...fields,
    ...plan?.fields,
  };
  const { flavors } = entry;
  return {
    ...shown({ id: 0, ...entry }, `Noted for ${friendlyDay(entry.date, world.now_ms)}`),
    ...withAssumed([...inputs.facts.assumed, ...day.assumed, ...(plan?.assumed ?? [])]),
    effects: [{ do: "add", list: "notes", entry }, ...(plan?.effects ?? [])],
    change: flavors.length ? `the ${listed(flavors)} note` : "the note",
    leaves: { note: undefined },
  };
}

/** What was answered just before, as a note. */
function noteOf(last: NonNullable<World["last"]>, inputs: NoteInputs, world: World): Outcome {
  const text = answerText(last);
  const outcome = add({ ...inputs, answer: undefined, text }, world);
  return outcome.status === "answered"
    ? { ...outcome, headline: `Noted for ${friendlyDay(localDay(world.now_ms), world.now_ms)}: ${text}` }
    : outcome;
}

/** What was asked, without the order to note it, and what was answered. */
function answerText({ question, answer }: NonNullable<World["last"]>): string {
  const asked = question.replace(
    /[,.;?! ]+(?:(?:and|then|also|please) )*(?:can you |could you )?(?:keep|save|put|note|write|log|jot|record|store|add|pop|stick|make|remember|leave)\b[^,.;?!]*$/i,
    "",
  );
  return `${asked.trim()}: ${answer.headline}`;
}

function dayFor(
  inputs: NoteInputs,
  world: World,
): { ok: true; date: string; assumed: string[] } | { ok: false; why: string } {
  if (!inputs.when) return { ok: true, date: localDay(world.now_ms), assumed: [] };
  const { month = 0, day = 0 } = inputs.when;
  const dayFirst = world.bench.market === "eu" || ["EUR", "GBP"].includes(world.bench.currency ?? "");
  const isTurned = inputs.slashed && dayFirst && day <= 12;
  const moment = behind(isTurned ? { ...inputs.when, month: day, day: month } : inputs.when, world.now_ms);
  if (!moment.ok) return { ok: false, why: moment.why };
  const how =
    inputs.slashed && day <= 12 && day !== month
      ? [
          `${month}/${day} is ${friendlyDay(moment.day, world.now_ms)}, ${isTurned ? "the day" : "the month"} first`,
        ]
      : [];
  return { ok: true, date: moment.day, assumed: [...moment.assumed, ...how] };
}

const withAssumed = (assumed: readonly string[]) => (assumed.length ? { assumed: [...assumed] } : {});

/** The note as an answer: what was read from it, as a line, as figures and as an item. */
function shown(note: Note, head: string): Outcome {
  const read = readAs(note);
  return {
    status: "answered",
    headline: `${head}: ${read || note.text}`,
    figures: noteFigures(note),
    items: [noteItem(note)],
  };
}

function changed(target: Note, patch: Partial<Note>, head: string, change: string): Outcome {
  const effect: Effect = { do: "change", list: "notes", id: target.id, patch };
  return { ...shown({ ...target, ...patch }, head), effects: [effect], change, leaves: { note: target.id } };
}

const union = <T>(a: readonly T[] | undefined, b: readonly T[] | undefined): T[] => [
  ...new Set([...(a ?? []), ...(b ?? [])]),
];

/** What a note is called: "pistachio", else its day. */
const nameOf = (note: Note, world: World) =>
  note.flavors.length ? listed(note.flavors) : friendlyDay(note.date, world.now_ms);

/** A count that is said now is no longer the plan's. */
const stillPlanned = ({ planned }: Note, said: Partial<Note>): Partial<Note> =>
  planned ? { planned: planned.filter((name) => !(name in said)) } : {};

function append(inputs: NoteInputs, target: Note, world: World): Outcome {
  const fields = inputs.facts ? fieldsOf(inputs.facts) : {};
  const patch: Partial<Note> = {
    ...fields,
    ...stillPlanned(target, fields),
    text: `${target.text.replace(/[\s.,;]+$/, "")}; ${inputs.text}`,
    flavors: union(target.flavors, target.flavors.length ? [] : fields.flavors),
    problems: union(target.problems, fields.problems),
    ...(fields.praise || target.praise ? { praise: union(target.praise, fields.praise) } : {}),
    ...(fields.weights ? { weights: [...(target.weights ?? []), ...fields.weights] } : {}),
    ...(fields.doses ? { doses: [...(target.doses ?? []), ...fields.doses] } : {}),
  };
  const name = nameOf(target, world);
  return {
    ...changed(target, patch, "Added", `what was added to the ${name} note`),
    ...withAssumed(inputs.facts?.assumed ?? []),
  };
}

/** Whether a note says something of this already; empty lists say nothing. */
function isIn(note: Note, key: string): boolean {
  const value = note[key as keyof Note];
  return value !== undefined && !(Array.isArray(value) && value.length === 0);
}

function correct(inputs: NoteInputs, target: Note, world: World): Outcome {
  const day = inputs.when ? dayFor(inputs, world) : undefined;
  if (day && !day.ok) return { status: "impossible", headline: day.why };
  const found = inputs.facts ? correction(inputs.facts, target, inputs.step) : { patch: {} };
  if ("question" in found) return asking(found.question, found.slot);
  // told again: what the note didn't have is no correction
  const isMore = inputs.again === true && !Object.keys(found.patch).some((key) => isIn(target, key));
  const patch: Partial<Note> = {
    ...found.patch,
    ...stillPlanned(target, found.patch),
    ...(day ? { date: day.date } : {}),
    text: `${target.text.replace(/[\s.,;]+$/, "")}; ${isMore ? "" : "corrected: "}${inputs.text}`,
  };
  const name = nameOf({ ...target, ...patch }, world);
  return {
    ...changed(
      target,
      patch,
      day ? `Corrected, for ${friendlyDay(day.date, world.now_ms)}` : isMore ? "Added" : "Corrected",
      isMore ? `what was added to the ${name} note` : `the correction of the ${name} note`,
    ),
    ...withAssumed([...withoutUnread(inputs.facts?.assumed ?? []), ...(day?.assumed ?? [])]),
  };
}

function remove(target: Note, world: World): Outcome {
  return {
    status: "answered",
    headline: `Removed: ${capital(noteLine(target, world.now_ms))}`,
    items: [],
    effects: [{ do: "remove", list: "notes", id: target.id }],
    change: `removing the ${nameOf(target, world)} note`,
    leaves: { note: undefined },
  };
}
