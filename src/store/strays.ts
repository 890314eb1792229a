/** Removes what processes left lying that ended in the middle of a write. */
import { basename, join } from "node:path";
import { type Files, tidyAway } from "./files.ts";
import { isGone, isRunning, parseHolder, tokenForm } from "./holder.ts";
import type { Place } from "./place.ts";

const recordDraft = new RegExp(`^${tokenForm}\\.tmp$`);
const lockDraft = new RegExp(`lock\\.(?:.*\\.)?${tokenForm}\\.new$`);
const claim = new RegExp(`^lock(\\.(blank|${tokenForm}))+$`);

/** Tidies the record's folder. To be called under the lock. Never throws: what can't be tidied does no harm. */
export function tidyStrays(files: Files, place: Place): void {
  const record = `${basename(place.file)}.`;
  for (const name of namesIn(files, place.folder)) {
    if (!name.startsWith(record)) continue;
    const rest = name.slice(record.length);
    const path = join(place.folder, name);
    // Only the holder of the lock has a draft of the record, and has none yet: any other is a stray.
    if (recordDraft.test(rest)) tidyAway(files, path);
    // A lock's draft belongs to a process that may be waiting at this moment.
    else if (lockDraft.test(rest)) tidyDraft(files, path);
    // The right to remove a dead holder's lock. That lock is history, as the lock is ours now.
    else if (claim.test(rest)) tidyClaim(files, path);
  }
}

function tidyDraft(files: Files, path: string): void {
  const pid = Number(lockDraft.exec(basename(path))?.[1]);
  // A draft is empty for a moment, so its name counts as well.
  if (isLeft(files, path, () => !isRunning(pid))) tidyAway(files, path);
}

function tidyClaim(files: Files, path: string): void {
  if (isLeft(files, path, () => true)) tidyAway(files, path);
}

/** Whether the process that a lock's file names is gone; where it names none, `otherwise` tells. */
function isLeft(files: Files, path: string, otherwise: () => boolean): boolean {
  try {
    const holder = parseHolder(files.readFileSync(path, "utf8"));
    return holder ? isGone(holder) : otherwise();
  } catch {
    // Its owner was quicker.
    return false;
  }
}

function namesIn(files: Files, folder: string): string[] {
  try {
    return files.readdirSync(folder);
  } catch {
    return [];
  }
}
