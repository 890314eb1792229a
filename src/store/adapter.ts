/**
 * lowdb's adapter for the record. How the record is laid out on disk is known here and nowhere else: one file now.
 * A layout for many more entries replaces this file; the rest of the store sees whole records only.
 */
import type { Adapter } from "lowdb";
import { type Aside, keepAside } from "./aside.ts";
import { type Checked, checkRecord } from "./check.ts";
import { bytesOf, type Files, tidyAway } from "./files.ts";
import { frozen } from "./frozen.ts";
import type { Place } from "./place.ts";
import { Failed, problemOf } from "./problem.ts";
import { replaceFile } from "./replace.ts";
import type { RecordData } from "./schema.ts";
import { cannotKeep, damagedNotice, newerNotice, newerProblem } from "./tell.ts";
import { textOf } from "./text.ts";

/** What was read last, so that the same bytes are not checked again: a chat looks every second. */
export interface Seen {
  bytes?: Buffer;
  checked?: Checked;
}

export interface RecordAdapter extends Adapter<RecordData> {
  /** What the baker should know about the file that was read. */
  notice(): string | undefined;
  /** Whether the file holds what the record doesn't; the next write keeps it aside. */
  damaged(): boolean;
}

/**
 * An adapter for one piece of work: read, then perhaps write, the latter under the lock. Both throw Failed.
 * A write that fails leaves the file and `seen` as they were.
 */
export function recordAdapter(files: Files, place: Place, seen: Seen): RecordAdapter {
  let found: Checked | undefined;
  let before: Buffer | undefined;
  let notice: string | undefined;

  const holds = (bytes: Buffer | undefined): boolean => {
    try {
      return bytes !== undefined && bytesOf(files, place.file)?.equals(bytes) === true;
    } catch {
      return false;
    }
  };

  return {
    notice: () => notice,
    damaged: () => found?.state === "damaged",

    async read() {
      try {
        before = bytesOf(files, place.file);
      } catch (error) {
        throw new Failed(problemOf(error, "read", place.file));
      }
      if (!before) return null;
      const known = seen.checked && seen.bytes?.equals(before) ? seen.checked : undefined;
      found = known ?? checkRecord(before);
      Object.assign(seen, { bytes: before, checked: found });
      if (found.state === "damaged") notice = damagedNotice(place.file, found.record);
      if (found.state === "newer") notice = newerNotice(place.file, found);
      return found.record;
    },

    async write(record) {
      if (found?.state === "newer") throw new Failed(newerProblem(place.file, found));
      const bytes = Buffer.from(textOf(record));
      let aside: Aside | undefined;
      if (found?.state === "damaged" && before) {
        try {
          aside = keepAside(files, place, "damaged", before);
        } catch (error) {
          throw new Failed(cannotKeep(place.file, problemOf(error, "write", place.file)));
        }
      }
      try {
        replaceFile(files, place.file, bytes, before);
      } catch (error) {
        // Only where the file itself is still there: otherwise this is the last copy.
        if (aside?.made && holds(before)) tidyAway(files, aside.path);
        throw new Failed(problemOf(error, "write", place.file));
      }
      if (found && aside) notice = damagedNotice(place.file, found.record, aside.path);
      before = bytes;
      found = { record: frozen(record), state: "sound" };
      Object.assign(seen, { bytes, checked: found });
    },
  };
}
