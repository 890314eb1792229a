/**
 * lowdb's adapter for the record. How the record is laid out on disk is known here and in the files that this one
 * uses (parts, fold, copies): the record's own file with what is recent, files of old entries beside it, daily copies.
 */
import type { Adapter } from "lowdb";
import { adopted } from "./adopt.ts";
import { type Checked, checkRecord } from "./check.ts";
import { copiedDays } from "./copies.ts";
import { bytesOf, type Files } from "./files.ts";
import { frozen } from "./frozen.ts";
import { type Part, pathOf, readPart } from "./parts.ts";
import type { Place } from "./place.ts";
import { Failed, problemOf } from "./problem.ts";
import type { Entry, RecordData, Seal } from "./schema.ts";
import {
  copyHint,
  copyProblem,
  damagedNotice,
  lostFileNotice,
  newerNotice,
  newerProblem,
  partNotice,
} from "./tell.ts";
import { wholeRecord } from "./whole.ts";
import { writeAll } from "./write.ts";

/** What was read last, so that the same bytes are not checked again: a chat looks every second. */
export interface Seen {
  bytes?: Buffer;
  checked?: Checked;
  whole?: RecordData;
  /** Files of old entries by their names; they never change. */
  parts: Map<string, Part>;
  /** What came up while old entries were read. */
  late: string[];
}

export const nothingSeen = (): Seen => ({ parts: new Map(), late: [] });

export interface RecordAdapter extends Adapter<RecordData> {
  /** What the baker should know about the file that was read. */
  notice(): string | undefined;
  /** Whether the file holds what the record doesn't; the next write keeps it aside. */
  damaged(): boolean;
  /** A record with its old notes, for readers. */
  whole(record: RecordData): RecordData;
  /** Old entries of one file. Throws Failed where it can't be read. */
  load(seal: Seal): readonly Entry[];
  /** As `load`, for what has to be whole: throws Failed where the file is damaged or missing too. */
  loadWhole(seal: Seal): readonly Entry[];
  /** Files of old entries that are damaged, of those read so far. */
  broken(record: RecordData): Seal[];
}

/**
 * An adapter for one piece of work: read, then perhaps write, the latter under the lock. Both throw Failed.
 * A write that fails leaves the files and `seen` as they were.
 * @param now_ms ms since the epoch: what is old is measured by it
 */
export function recordAdapter(files: Files, place: Place, seen: Seen, now_ms: number): RecordAdapter {
  let found: Checked | undefined;
  let before: Buffer | undefined;
  let notice: string | undefined;

  function load(seal: Seal): readonly Entry[] {
    const known = seen.parts.get(seal.file);
    const part = known ?? readPart(files, place, seal);
    if (part.state !== "missing") seen.parts.set(seal.file, part);
    if (!known && part.state !== "sound") seen.late.push(partNotice(place, seal, part));
    return part.entries;
  }

  function loadWhole(seal: Seal): readonly Entry[] {
    const part = readPart(files, place, seal);
    if (part.state !== "sound") throw new Failed(copyProblem(pathOf(place, seal), part.state !== "missing"));
    return part.entries;
  }

  const withHint = (text: string): string => {
    try {
      return `${text}${copyHint(copiedDays(files, place))}`;
    } catch {
      return text;
    }
  };

  return {
    notice: () => notice,
    damaged: () => found?.state === "damaged",
    load,
    loadWhole,
    broken: (record) => record.sealed.filter(({ file }) => seen.parts.get(file)?.state === "lost"),

    whole(record) {
      if (seen.checked?.record !== record) return wholeRecord(record, load);
      seen.whole ??= wholeRecord(record, load);
      return seen.whole;
    },

    async read() {
      try {
        before = bytesOf(files, place.file);
        if (before && seen.checked && seen.bytes?.equals(before)) found = seen.checked;
        else {
          const checked = before ? checkRecord(before) : undefined;
          found = checked?.state === "damaged" || !checked ? adopted(files, place, checked) : checked;
          Object.assign(seen, { bytes: before, checked: found, whole: undefined });
        }
      } catch (error) {
        throw new Failed(problemOf(error, "read", place.file));
      }
      if (!found) return null;
      if (found.state === "newer") notice = newerNotice(place.file, found);
      if (found.state === "damaged")
        notice = withHint(
          before ? damagedNotice(place.file, found.record) : lostFileNotice(place, found.record),
        );
      return found.record;
    },

    async write(record) {
      if (found?.state === "newer") throw new Failed(newerProblem(place.file, found));
      const { written, bytes, aside } = writeAll({ files, place, found, before, now_ms, load, seen }, record);
      if (found && aside) notice = withHint(damagedNotice(place.file, found.record, aside));
      before = bytes;
      found = { record: frozen(written), state: "sound" };
      Object.assign(seen, { bytes, checked: found, whole: undefined });
    },
  };
}

/** The record that a copy of a day holds. Throws Failed, also where it isn't whole: going back to less would take away. */
export function readCopy(files: Files, path: string): RecordData {
  let bytes: Buffer | undefined;
  try {
    bytes = bytesOf(files, path);
  } catch (error) {
    throw new Failed(problemOf(error, "read", path));
  }
  const checked = bytes ? checkRecord(bytes) : undefined;
  if (checked?.state !== "sound") throw new Failed(copyProblem(path, checked !== undefined));
  return checked.record;
}
