/** The record as its readers see it: all notes, read from their files when they are first asked for. */
import { merged } from "./fold.ts";
import type { Entry, RecordData, Seal } from "./schema.ts";

/**
 * A view of a record with its old notes in place. Most questions never look at `notes`, and then nothing is read.
 * Timers are the recent ones: nobody asks for those of last year. The view is frozen like the record itself.
 */
export function wholeRecord(record: RecordData, load: (seal: Seal) => readonly Entry[]): RecordData {
  const seals = record.sealed.filter(({ list }) => list === "notes");
  if (seals.length === 0) return record;
  let notes: RecordData["notes"] | undefined;
  const { notes: recent, ...rest } = record;
  return Object.freeze({
    ...rest,
    get notes() {
      notes ??= Object.freeze(merged(seals.flatMap(load), recent)) as RecordData["notes"];
      return notes;
    },
  });
}
