/**
 * A lock as a file that names its holder. It is put in place by a hard link: it appears whole or not at all, and to
 * one process only.
 */
import { codeOf, type Files, tidyAway, writeNew } from "./files.ts";
import { describeHolder, type Holder, isGone, newHolder, parseHolder } from "./holder.ts";

/** Takes the lock if it is free, without waiting. */
function take(files: Files, path: string): Holder | undefined {
  const mine = newHolder();
  const draft = draftOf(path, mine);
  try {
    writeNew(files, draft, describeHolder(mine), false);
    return linked(files, draft, path) ? mine : undefined;
  } finally {
    tidyAway(files, draft);
  }
}

/** Puts a draft in the lock's place, if that is free. */
export function linked(files: Files, draft: string, path: string): boolean {
  try {
    files.linkSync(draft, path);
    return true;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
}

/** Where a lock is written before it is put in place. Its name tells the process. */
export const draftOf = (path: string, holder: Holder): string => `${path}.${holder.token}.new`;

/**
 * Removes a lock whose holder is gone, if it still is the lock that was `seen`. Simply removing it would be wrong:
 * between the look and the removal another process may have done the same and taken the lock anew. So the right to
 * remove is itself a lock, named after the dead holder's token, and whoever gets it looks a second time. Should its
 * holder die too, its lock is cleared by the same rule. A living process's lock is removed by nobody else.
 */
export function clear(files: Files, path: string, seen: string): boolean {
  const claim = `${path}.${parseHolder(seen)?.token ?? "blank"}`;
  const other = look(files, claim);
  if (other !== undefined) {
    if (isAbandoned(other)) clear(files, claim, other);
    return false;
  }
  const mine = take(files, claim);
  if (!mine) return false;
  try {
    if (look(files, path) === seen) files.unlinkSync(path);
    return true;
  } finally {
    release(files, claim, mine);
  }
}

/** Gives a lock back. Never throws: the work under it is done and counts. */
export function release(files: Files, path: string, mine: Holder): void {
  try {
    // Someone may have deleted the lock by hand and another process may have taken it: theirs stays.
    if (look(files, path) === describeHolder(mine)) files.unlinkSync(path);
  } catch {
    // This process will know its own forgotten lock when it meets it.
    forgotten.add(mine.token);
  }
}

/** Locks that this process is done with but could not remove. */
const forgotten = new Set<string>();

/**
 * True for a lock that nobody will ever release. An empty one lost what it said when the machine's power went. One
 * that says something else is left alone: it may be of another version of this program, and in good order.
 */
export function isAbandoned(text: string): boolean {
  const holder = parseHolder(text);
  return holder ? forgotten.has(holder.token) || isGone(holder) : /^[\0\s]*$/.test(text);
}

/** What a lock says, or undefined where there is none. */
export function look(files: Files, path: string): string | undefined {
  try {
    return files.readFileSync(path, "utf8");
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}
