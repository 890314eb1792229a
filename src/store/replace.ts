/** Puts new bytes in a file's place: whole or not at all, and on the disk when it returns. */
import { dirname } from "node:path";
import { type Files, flushFolder, tidyAway, writeNew } from "./files.ts";
import { newToken } from "./holder.ts";
import { Failed, problemOf, shown } from "./problem.ts";

/**
 * Replaces the content of `path`, which held `before` (undefined: it was not there). To be called under the lock.
 * Throws as node:fs, or Failed; then the file is as it was.
 */
export function replaceFile(
  files: Files,
  path: string,
  bytes: Uint8Array,
  before: Uint8Array | undefined,
): void {
  putInPlace(files, path, bytes);
  try {
    flushFolder(files, dirname(path));
  } catch (error) {
    // The new content is in place but might not outlast a power cut. What isn't acknowledged must not be there.
    takeBack(files, path, before, error);
    throw error;
  }
}

/** Gives a path new bytes, flushed; not yet its name in the folder. Throws as node:fs. */
export function putInPlace(files: Files, path: string, bytes: Uint8Array): void {
  const draft = `${path}.${newToken()}.tmp`;
  try {
    writeNew(files, draft, bytes, true);
    files.renameSync(draft, path);
  } catch (error) {
    tidyAway(files, draft);
    throw error;
  }
}

function takeBack(files: Files, path: string, before: Uint8Array | undefined, cause: unknown): void {
  try {
    if (before) putInPlace(files, path, before);
    else files.unlinkSync(path);
  } catch {
    throw new Failed({
      ...problemOf(cause, "write", path),
      message: `Writing ${shown(path)} failed halfway: the last change may have been kept or not.`,
    });
  }
}
