/** A record that has grown: many notes and timers, put in through the store. */

import type { Files } from "../../src/store/files.ts";
import { openStore } from "../../src/store/open.ts";
import type { RecordData } from "../../src/store/schema.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addNote, doing, got, newHome, unflushed } from "./support.ts";

export const day_ms = 86_400_000;
/** A local noon, far from every change of day. */
export const noon = new Date(2026, 2, 10, 12).getTime();

export const numbered = (from: number, to: number): string[] =>
  Array.from({ length: to - from + 1 }, (_, n) => `note ${from + n}`);

export const addNotes = (from: number, to: number): Effect[] => numbered(from, to).map(addNote);

export const addTimer = (label: string, due_ms: number, state = "rung"): Effect => ({
  do: "add",
  list: "timers",
  entry: { label, set_ms: due_ms - 60_000, due_ms, state },
});

/** A home with so many notes, written at `noon`. */
export async function grown(notes: number, files: Files = unflushed): Promise<string> {
  const home = newHome();
  got(await openStore(home, { files, now_ms: () => noon }).change(doing(addNotes(1, notes), "the import")));
  return home;
}

/** A store of a home whose clock stands so many days after `noon`. */
export const later = (home: string, days: number, files: Files = unflushed) =>
  openStore(home, { files, now_ms: () => noon + days * day_ms });

export const textsOf = ({ notes }: Pick<RecordData, "notes">): string[] => notes.map(({ text }) => text);
