/**
 * Files of old entries. A year of notes would make every question slower if all of them stood in the record's own
 * file, which each process reads whole. So only what is recent stands there, and older entries lie in files of
 * `partSize` ids each. Such a file is never written again: a change to an old note makes a new file, and the record's
 * file, replaced at one instant, names the one that counts.
 */
import { join } from "node:path";
import { checkPart } from "./check.ts";
import { bytesOf, type Files, flushFolder, makeFolder, tidyAway, writeNew } from "./files.ts";
import { newToken } from "./holder.ts";
import type { Place } from "./place.ts";
import { Failed, problemOf } from "./problem.ts";
import { type Entry, type LongList, type Seal, version } from "./schema.ts";
import { textOf } from "./text.ts";

/** Ids in a file: few enough that writing one is quick, so many that ten years are some hundred files. */
export const partSize = 128;

/** The number of the file that an id belongs into, from 0. */
export const partOf = (id: number): number => Math.floor((id - 1) / partSize);

export const fromOf = (part: number): number => part * partSize + 1;

export const pathOf = (place: Place, seal: Pick<Seal, "file">): string => join(place.parts, seal.file);

/** What a part's file was found to hold. `missing`: it isn't there. `lost`: something of it can't be read. */
export interface Part {
  entries: readonly Entry[];
  state: "sound" | "missing" | "lost";
}

/** Writes entries of one part, flushed with their folder. Throws as node:fs. */
export function writePart(
  files: Files,
  place: Place,
  list: LongList,
  part: number,
  entries: readonly Entry[],
): Seal {
  const [from, to] = [fromOf(part), fromOf(part) + partSize - 1];
  const bytes = Buffer.from(textOf({ version, [list]: entries }));
  const crc = crcOf(bytes);
  const file = `${list}-${from}-${to}-${newToken()}.json`;
  const seal: Seal = { list, from, to, count: entries.length, ...(crc === undefined ? {} : { crc }), file };
  makeFolder(files, place.parts);
  try {
    writeNew(files, pathOf(place, seal), bytes, true);
  } catch (error) {
    tidyAway(files, pathOf(place, seal));
    throw error;
  }
  return seal;
}

/** To be called after the last part: their names last through a power cut from here on. */
export const flushParts = (files: Files, place: Place): void => flushFolder(files, place.parts);

/** Reads a part. Bytes that are as they were written are known to be sound; others are checked entry by entry. */
export function readPart(files: Files, place: Place, seal: Seal): Part {
  const path = pathOf(place, seal);
  let bytes: Buffer | undefined;
  try {
    bytes = bytesOf(files, path);
  } catch (error) {
    throw new Failed(problemOf(error, "read", path));
  }
  if (!bytes) return { entries: [], state: "missing" };
  if (seal.crc !== undefined && crcOf(bytes) === seal.crc) {
    const { [seal.list]: entries } = JSON.parse(bytes.toString("utf8")) as Record<string, Entry[]>;
    for (const entry of entries ?? []) Object.freeze(entry);
    return { entries: entries ?? [], state: "sound" };
  }
  const { read, lost } = checkPart(bytes, seal);
  for (const entry of read) Object.freeze(entry);
  return { entries: read, state: lost ? "lost" : "sound" };
}

/** Undefined where this node has no such sum: then every file is checked. Loaded late, as most questions need none. */
export const crcOf = (bytes: Uint8Array): number | undefined =>
  process.getBuiltinModule?.("node:zlib").crc32?.(bytes);
