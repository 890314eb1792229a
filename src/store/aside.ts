/** Keeps a file that will be replaced under another name, as it is. */
import { basename, join } from "node:path";
import { bytesOf, codeOf, type Files, flushFolder, tidyAway } from "./files.ts";
import type { Place } from "./place.ts";

export interface Aside {
  path: string;
  made: boolean;
}

/**
 * Gives the record's file a second name that is free, "record.damaged-1.json" with the kind "damaged", and returns
 * its path, and whether it is new. No byte is copied and no earlier file replaced. The same bytes are kept once: an attempt that ended
 * between keeping aside and writing anew leaves no second one. Throws as node:fs.
 */
export function keepAside(files: Files, place: Place, kind: string, bytes: Uint8Array): Aside {
  const stem = basename(place.file).replace(/\.json$/, "");
  for (let n = 1; ; n++) {
    const aside = join(place.folder, `${stem}.${kind}-${n}.json`);
    try {
      files.linkSync(place.file, aside);
    } catch (error) {
      if (codeOf(error) !== "EEXIST") throw error;
      if (!bytesOf(files, aside)?.equals(bytes)) continue;
      return { path: aside, made: false };
    }
    try {
      flushFolder(files, place.folder);
    } catch (error) {
      tidyAway(files, aside);
      throw error;
    }
    return { path: aside, made: true };
  }
}
