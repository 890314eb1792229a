/**
 * Daily copies: before the first change of a day, the record as it was left on the last day that it was changed. A
 * copy is the record's own file; the files of old entries that it names are kept with it.
 */
import { join } from "node:path";
import { bytesOf, codeOf, type Files, flushFolder, makeFolder, tidyAway } from "./files.ts";
import { pathOf } from "./parts.ts";
import type { Place } from "./place.ts";
import { putInPlace } from "./replace.ts";

/** So many copies are kept, the latest. */
export const copiesKept = 7;

const copyName = /^(\d{4}-\d{2}-\d{2})\.json$/;
const partName = /^(?:notes|timers)-\d+-\d+-\d+-[0-9a-z]+\.json$/;
const two = (n: number) => String(n).padStart(2, "0");

/** The local day of a moment, "2026-03-14". */
export function dayOf(ms: number): string {
  const at = new Date(ms);
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
}

/** The days that there are copies of, the oldest first. Throws as node:fs. */
export function copiedDays(files: Files, place: Place): string[] {
  return namesIn(files, place.copies)
    .flatMap((name) => copyName.exec(name)?.[1] ?? [])
    .sort();
}

export const copyOf = (place: Place, day: string): string => join(place.copies, `${day}.json`);

/** Keeps `bytes` as the copy of a day, flushed. Returns its path when that is new. Throws as node:fs. */
export function makeCopy(files: Files, place: Place, day: string, bytes: Buffer): string | undefined {
  const path = copyOf(place, day);
  makeFolder(files, place.copies);
  const before = bytesOf(files, path);
  if (before?.equals(bytes)) return undefined;
  putInPlace(files, path, bytes);
  try {
    flushFolder(files, place.copies);
  } catch (error) {
    if (!before) tidyAway(files, path);
    throw error;
  }
  return before ? undefined : path;
}

/**
 * Removes copies beyond the last seven, and files of old entries that neither the record nor a copy names any more.
 * Once a day, after a copy was made: whoever reads the record as it was a moment ago still finds all that it names.
 * Never throws: what can't be removed now is tried again.
 */
export function tidyCopies(files: Files, place: Place, record: Buffer): void {
  try {
    for (const day of copiedDays(files, place).slice(0, -copiesKept)) tidyAway(files, copyOf(place, day));
    const named = new Set(namedIn(record));
    for (const day of copiedDays(files, place))
      for (const file of namedIn(bytesOf(files, copyOf(place, day)) ?? Buffer.alloc(0))) named.add(file);
    for (const file of namesIn(files, place.parts))
      if (partName.test(file) && !named.has(file)) tidyAway(files, pathOf(place, { file }));
  } catch {
    // A folder that can't be listed now.
  }
}

/** Names of files that a record's text holds. By the letter, so that a damaged copy keeps its files too. */
const namedIn = (bytes: Buffer): string[] =>
  bytes.toString("latin1").match(/(?:notes|timers)-[0-9a-z-]+\.json/g) ?? [];

export function namesIn(files: Files, folder: string): string[] {
  try {
    return files.readdirSync(folder);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return [];
    throw error;
  }
}
