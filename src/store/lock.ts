/** One writer at a time between processes, for a time that is bounded and with turns for all. */
import { basename, dirname } from "node:path";
import { type Files, tidyAway, writeNew } from "./files.ts";
import { describeHolder, type Holder, isRunning, newHolder, tokenForm } from "./holder.ts";
import { clear, draftOf, isAbandoned, linked, look, release } from "./lockfile.ts";
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

const draftName = new RegExp(`^${tokenForm}\\.new$`);

/** Whether a running process has a draft of this lock. Nothing depends on it but who comes first. */
function othersWait(files: Files, path: string): boolean {
  const start = `${basename(path)}.`;
  try {
    return files.readdirSync(dirname(path)).some((name) => {
      const pid = name.startsWith(start) ? draftName.exec(name.slice(start.length))?.[1] : undefined;
      return pid !== undefined && isRunning(Number(pid));
    });
  } catch {
    return false;
  }
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

const busy = (path: string, wait_ms: number) => ({
  kind: "busy" as const,
  message: `Something else has been writing to the record for ${wait_ms / 1000} s; nothing was written.`,
  try: `Say it again. If no other window is open, delete ${shown(path)}.`,
  file: path,
});
