/** "Ignore that batch", "count it again": a note that stays and teaches nothing, and one that teaches again. */
import type { Note, Outcome, Reading, World } from "../contract/index.ts";
import { friendlyDay } from "../lib/days.ts";
import { newestFirst } from "../lib/notes.ts";
import { listed } from "../lib/show.ts";
import { isTaste } from "../lib/tastes.ts";
import { placeless } from "../lib/when-said.ts";
import type { NoteInputs } from "./note.ts";

const lead = "(?:(?:please|pls|ok|okay|and|oh|no|actually|can you|could you|just|then|better) )*";
const batch =
  "(?:(?:that|this|the|my) )?(?:\\S+ )?(?:\\S+ )?(?:\\S*<count=batches>|one\\S*|notes?|entry)(?: (?:of|from|on) (?:the )?\\S*<when>)?";
const one = `(?:it|this|that|${batch})`;
const end = "(?: (?:out|again|after all|anymore|any more|either|please|pls|now|though|too|[.!]))*$";

/** Cues, each a whole sentence. */
export const ignoringCues: readonly string[] = [
  `^${lead}(?:ignore|disregard|exclude|discount|dont use|set aside|leave out) ${batch}${end}`,
  `^${lead}(?:dont|do not) count ${one}${end}`,
  `^${lead}leave ${batch} (?:out|aside)${end}`,
  `^${one} (?:doesnt|does not|shouldnt|should not) count${end}`,
  `^${lead}(?:count|include|use) ${one} (?:again|after all)${end}`,
];

/** What is asked for; undefined where it is about something else. */
export function readIgnoring(reading: Reading): Partial<NoteInputs> | undefined {
  const { mask } = reading;
  if (!ignoringCues.some((pattern) => new RegExp(pattern).test(mask))) return undefined;
  const about = reading.things.flatMap((each) => each.taste ?? []);
  const when = reading.whens[0];
  return {
    do: / (?:again|after all)(?: |$)/.test(mask) && !/ignore|dont count/.test(mask) ? "count" : "ignore",
    ...(about.length ? { about } : {}),
    ...(when ? { when: placeless(when) } : {}),
  };
}

/** The note that is meant: of that day and flavor, the one on the table, else the last that was written. */
export function noteMeant(
  { about = [], note }: NoteInputs,
  day: string | undefined,
  notes: readonly Note[],
): Note | undefined {
  const fitting = notes.filter(
    (each) =>
      about.every((taste) => each.flavors.some((own) => isTaste(taste, own))) &&
      (day === undefined || each.date === day),
  );
  if (about.length || day !== undefined) return [...fitting].sort(newestFirst)[0];
  return notes.find((each) => each.id === note) ?? fitting.toSorted((a, b) => b.id - a.id)[0];
}

/** Sets a note aside, or takes it up again; its words stay as they are. */
export function setAside(does: "ignore" | "count", target: Note, world: World): Outcome {
  const name = `the batch of ${friendlyDay(target.date, world.now_ms)}${target.flavors.length ? `, ${listed(target.flavors)}` : ""}`;
  const isAside = target.ignored === true;
  const wants = does === "ignore";
  if (isAside === wants)
    return {
      status: "answered",
      headline: wants ? `Left out already: ${name}` : `It counts already: ${name}`,
      leaves: { note: target.id },
    };
  return {
    status: "answered",
    headline: wants
      ? `Left out from now on: ${name}. The note stays; it teaches nothing. "Count it again" takes it back.`
      : `Counted again: ${name}`,
    effects: [{ do: "change", list: "notes", id: target.id, patch: { ignored: wants ? true : null } }],
    change: wants ? `leaving out ${name}` : `counting ${name} again`,
    leaves: { note: target.id },
  };
}
