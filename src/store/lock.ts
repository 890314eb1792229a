/**
 * One writer at a time between processes. The lock is a file that names its holder, put in place by a hard link: it
 * appears whole or not at all, and to one process only.
 */
import { basename, dirname } from "node:path";
import { codeOf, type Files, tidyAway, writeNew } from "./files.ts";
import { describeHolder, type Holder, isGone, isRunning, newHolder, parseHolder } from "./holder.ts";
import { Failed, shown } from "./problem.ts";

/** The longest step between two looks at a lock that is held, in ms. */
const longest_ms = 20;

/**
 * Runs `work` while holding the lock file `path`, whose folder must exist.
 * Waits for it about `wait_ms`, looking every few ms; then throws Failed with a "busy" problem. Throws as node:fs
 * when the lock can't be made.
 */
export async function underLock<T>(
  files: Files,
  path: string,
  wait_ms: number,
  work: () => Promise<T>,
): Promise<T> {
  if (yielding.delete(path)) await pause(2 * longest_ms);
  const mine = await takeInTime(files, path, wait_ms);
  try {
    return await work();
  } finally {
    release(files, path, mine);
    if (othersWait(files, path)) yielding.add(path);
  }
}

/**
 * Locks that others wait for. Whoever has just had such a lock stands back once before asking again: it is awake when
 * the lock comes free and they are not, so a steady writer would keep them out for as long as it goes on.
 */
const yielding = new Set<string>();

async function takeInTime(files: Files, path: string, wait_ms: number): Promise<Holder> {
  const mine = newHolder();
  const draft = draftOf(path, mine);
  try {
    // The draft lies there as long as this process waits: a sign to the others that somebody does.
    writeNew(files, draft, describeHolder(mine), false);
    for (let waited_ms = 0, step_ms = 1; ; step_ms = Math.min(longest_ms, step_ms * 2)) {
      if (linked(files, draft, path)) return mine;
      const seen = look(files, path);
      // After clearing a dead holder's lock away there is no reason to wait; others may be as quick.
      if (seen !== undefined && isAbandoned(seen) && clear(files, path, seen)) continue;
      if (waited_ms >= wait_ms) throw new Failed(busy(path, wait_ms));
      // Uneven steps, or processes that began to wait together would go on asking together.
      const uneven_ms = step_ms * (0.5 + Math.random() / 2);
      await pause(uneven_ms);
      waited_ms += uneven_ms;
    }
  } finally {
    tidyAway(files, draft);
  }
}

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

function linked(files: Files, draft: string, path: string): boolean {
  try {
    files.linkSync(draft, path);
    return true;
  } catch (error) {
    if (codeOf(error) === "EEXIST") return false;
    throw error;
  }
}

const draftOf = (path: string, holder: Holder): string => `${path}.${holder.token}.new`;

/** Whether a running process has a draft of this lock. Nothing depends on it but who comes first. */
function othersWait(files: Files, path: string): boolean {
  const start = `${basename(path)}.`;
  try {
    return files.readdirSync(dirname(path)).some((name) => {
      const pid = name.startsWith(start)
        ? /^(\d+)-[0-9a-f]{8}\.new$/.exec(name.slice(start.length))?.[1]
        : undefined;
      return pid !== undefined && isRunning(Number(pid));
    });
  } catch {
    return false;
  }
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/**
 * Removes a lock whose holder is gone, if it still is the lock that was `seen`. Simply removing it would be wrong:
 * between the look and the removal another process may have done the same and taken the lock anew. So the right to
 * remove is itself a lock, named after the dead holder's token, and whoever gets it looks a second time. Should its
 * holder die too, its lock is cleared by the same rule. A living process's lock is removed by nobody else.
 */
function clear(files: Files, path: string, seen: string): boolean {
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

function release(files: Files, path: string, mine: Holder): void {
  try {
    // Someone may have deleted the lock by hand and another process may have taken it: theirs stays.
    if (look(files, path) === describeHolder(mine)) files.unlinkSync(path);
  } catch {
    // The work is done and counts. This process will know its own forgotten lock when it meets it.
    forgotten.add(mine.token);
  }
}

/** Locks that this process is done with but could not remove. */
const forgotten = new Set<string>();

/** True for a lock that nobody will ever release. One that names nobody was cut short with the machine's power. */
function isAbandoned(text: string): boolean {
  const holder = parseHolder(text);
  return !holder || forgotten.has(holder.token) || isGone(holder);
}

function look(files: Files, path: string): string | undefined {
  try {
    return files.readFileSync(path, "utf8");
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}

const busy = (path: string, wait_ms: number) => ({
  kind: "busy" as const,
  message: `Something else has been writing to the record for ${wait_ms / 1000} s; nothing was written.`,
  try: `Say it again. If no other window is open, delete ${shown(path)}.`,
  file: path,
});
