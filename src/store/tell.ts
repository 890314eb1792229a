/** What the baker is told about a record that isn't as it should be. */
import type { Checked } from "./check.ts";
import { shown } from "./problem.ts";
import { listNames, type RecordData, version } from "./schema.ts";
import type { StoreProblem } from "./types.ts";

/** `aside`: where the file is kept now; without it the file still stands in its place. */
export function damagedNotice(file: string, record: RecordData, aside?: string): string {
  const kept = aside
    ? `The file as it was is kept as ${shown(aside)}.`
    : "It is as it was, and will be kept aside before anything is written.";
  return `${shown(file)} is damaged or was edited by hand; ${countOf(record)} could be read. ${kept}`;
}

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
    const { length } = record[name];
    return length ? [`${length} ${(length === 1 ? one : many)[name]}`] : [];
  });
  const settings = Object.keys(record.bench).length;
  if (settings) counts.push(settings === 1 ? "1 setting" : `${settings} settings`);
  return counts.length < 2
    ? (counts[0] ?? "nothing")
    : `${counts.slice(0, -1).join(", ")} and ${counts.at(-1)}`;
}
