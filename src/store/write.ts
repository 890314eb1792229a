/** One write of the record: new files of old entries, what is kept aside, the day's copy, then the record's own file. */
import { basename, join } from "node:path";
import type { Seen } from "./adapter.ts";
import { type Aside, keepAside } from "./aside.ts";
import type { Checked } from "./check.ts";
import { dayOf, makeCopy, tidyCopies } from "./copies.ts";
import { bytesOf, codeOf, type Files, tidyAway } from "./files.ts";
import { folded, isSame, merged, oldEntries } from "./fold.ts";
import { flushParts, fromOf, pathOf, writePart } from "./parts.ts";
import type { Place } from "./place.ts";
import { Failed, problemOf } from "./problem.ts";
import { replaceFile } from "./replace.ts";
import { type Entry, type RecordData, type Seal, version } from "./schema.ts";
import { cannotKeep } from "./tell.ts";
import { textOf } from "./text.ts";

export interface Writing {
  files: Files;
  place: Place;
  /** What was read before, and its bytes. */
  found: Checked | undefined;
  before: Buffer | undefined;
  now_ms: number;
  load(seal: Seal): readonly Entry[];
  seen: Seen;
}

/**
 * Writes a record. Everything new lies beside the old until the record's own file takes its place in one step; when
 * anything fails, what was made is taken away again. Throws Failed.
 */
export function writeAll(
  writing: Writing,
  record: RecordData,
): { written: RecordData; bytes: Buffer; aside?: string } {
  const { files, place, found, before } = writing;
  const made: string[] = [];
  let aside: Aside | undefined;
  try {
    const written = sealOld(writing, record, made);
    const bytes = Buffer.from(textOf(written));
    keepBroken(writing, written);
    const isOld = found?.version !== undefined && found.version < version;
    if (before && found && (found.state === "damaged" || isOld))
      aside = asideFor(
        files,
        place,
        before,
        found.state === "damaged" ? "damaged" : `version-${found.version}`,
      );
    const copied = before && found?.state === "sound" ? copyDay(writing, before, made) : false;
    replaceFile(files, place.file, bytes, before);
    if (copied) tidyCopies(files, place, bytes);
    return { written, bytes, ...(aside && found?.state === "damaged" ? { aside: aside.path } : {}) };
  } catch (error) {
    // Only where the record's file is as it was: otherwise it may name what was made, or be the last copy.
    if (isAsBefore(files, place.file, before)) {
      for (const path of made) tidyAway(files, path);
      if (aside?.made) tidyAway(files, aside.path);
    }
    throw new Failed(problemOf(error, "write", place.file));
  }
}

/** Puts what has become old into files of its own. */
function sealOld({ files, place, load, now_ms }: Writing, record: RecordData, made: string[]): RecordData {
  const folds = oldEntries(record, now_ms);
  if (folds.length === 0) return record;
  const seals = folds.map(({ list, part, entries }) => {
    const old = record.sealed.find((seal) => isSame(seal, { list, from: fromOf(part) }));
    const seal = writePart(files, place, list, part, old ? merged(load(old), entries) : entries);
    made.push(pathOf(place, seal));
    return seal;
  });
  flushParts(files, place);
  return folded(record, folds, seals);
}

/** Damaged files of old entries that the new record no longer names get a name under which nothing tidies them. */
function keepBroken({ files, place, found, seen }: Writing, written: RecordData): void {
  const named = new Set(written.sealed.map(({ file }) => file));
  for (const seal of found?.record.sealed ?? []) {
    if (named.has(seal.file) || seen.parts.get(seal.file)?.state !== "lost") continue;
    const path = pathOf(place, seal);
    try {
      files.linkSync(path, join(place.parts, `${basename(seal.file, ".json")}.damaged.json`));
    } catch (error) {
      if (codeOf(error) !== "EEXIST") throw new Failed(cannotKeep(path, problemOf(error, "write", path)));
    }
  }
}

function asideFor(files: Files, place: Place, before: Buffer, kind: string): Aside {
  try {
    return keepAside(files, place, kind, before);
  } catch (error) {
    throw new Failed(cannotKeep(place.file, problemOf(error, "write", place.file)));
  }
}

/** Before the first change of a day, the record as it stands is kept as the copy of the day of its last change. */
function copyDay({ files, place, found, now_ms }: Writing, before: Buffer, made: string[]): boolean {
  const { saved_ms } = found?.record ?? {};
  if (saved_ms === undefined || dayOf(saved_ms) === dayOf(now_ms)) return false;
  const path = makeCopy(files, place, dayOf(saved_ms), before);
  if (path) made.push(path);
  return true;
}

function isAsBefore(files: Files, path: string, before: Buffer | undefined): boolean {
  try {
    const now = bytesOf(files, path);
    return before ? now?.equals(before) === true : now === undefined;
  } catch {
    return false;
  }
}
