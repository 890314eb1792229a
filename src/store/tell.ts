/** What the baker is told about a record that isn't as it should be. */
import type { Checked } from "./check.ts";
import { type Part, pathOf } from "./parts.ts";
import type { Place } from "./place.ts";
import { shown } from "./problem.ts";
import { listNames, type RecordData, type Seal, version } from "./schema.ts";
import type { StoreProblem } from "./types.ts";

/** `aside`: where the file is kept now; without it the file still stands in its place. */
export function damagedNotice(file: string, record: RecordData, aside?: string): string {
  const kept = aside
    ? `The file as it was is kept as ${shown(aside)}.`
    : "It is as it was, and will be kept aside before anything is written.";
  return `${shown(file)} is damaged or was edited by hand; ${countOf(record)} could be read. ${kept}`;
}

/** The record's file is gone and files of old entries are there. */
export const lostFileNotice = (place: Place, record: RecordData): string =>
  `${shown(place.file)} is missing; ${countOf(record)} could be read from ${shown(place.parts)}.`;

/** A file of old entries that isn't as it should be. */
export function partNotice(place: Place, seal: Seal, part: Part): string {
  const path = shown(pathOf(place, seal));
  const kind = `${seal.count} ${many[seal.list]}`;
  return part.state === "missing"
    ? `${path} is missing, and with it ${kind}.`
    : `${path} is damaged or was edited by hand; ${part.entries.length} of ${kind} could be read. The file is kept.`;
}

/** A copy, or a file that it names, that can't be gone back to. */
export const copyProblem = (path: string, isThere: boolean): StoreProblem => ({
  kind: "damaged",
  message: `${shown(path)} is ${isThere ? "damaged" : "missing"}, so that copy can't be gone back to; nothing was changed.`,
  try: "Go back to the record of another day.",
  file: path,
});

/** Where a way back may be found. */
export const copyHint = (days: readonly string[]): string =>
  days.length ? ` There is a copy of the record as it was at the end of ${days.at(-1)}.` : "";

export const newerNotice = (file: string, found: Checked): string =>
  `${newer(file, found)} ${countOf(found.record)} could be read; nothing will be written to it.`;

export const newerProblem = (file: string, found: Checked): StoreProblem => ({
  kind: "newer",
  message: `${newer(file, found)} Nothing was written.`,
  try: "Bring the program up to date, or name another folder with --home.",
  file,
});

/** A damaged file that can't be kept aside is not written over. */
export const cannotKeep = (file: string, cause: StoreProblem): StoreProblem => ({
  kind: "damaged",
  message: `${shown(file)} is damaged and could not be kept aside. ${cause.message}`,
  try: cause.try,
  file,
});

const newer = (file: string, found: Checked): string =>
  `${shown(file)} was written by a newer version of the program (format ${found.version}, this one knows ${version}).`;

const one = {
  timers: "timer",
  notes: "note",
  bottles: "bottle",
  stock: "cupboard item",
  formulas: "formula",
  plans: "planned day",
};
const many = {
  timers: "timers",
  notes: "notes",
  bottles: "bottles",
  stock: "cupboard items",
  formulas: "formulas",
  plans: "planned days",
};

/** "12 notes and 1 timer", or "nothing". */
function countOf(record: RecordData): string {
  const counts = listNames.flatMap((name) => {
    const old = record.sealed.filter(({ list }) => list === name);
    const length = old.reduce((sum, { count }) => sum + count, record[name].length);
    return length ? [`${length} ${(length === 1 ? one : many)[name]}`] : [];
  });
  const settings = Object.keys(record.bench).length;
  if (settings) counts.push(settings === 1 ? "1 setting" : `${settings} settings`);
  return counts.length < 2
    ? (counts[0] ?? "nothing")
    : `${counts.slice(0, -1).join(", ")} and ${counts.at(-1)}`;
}
