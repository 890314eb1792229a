/**
 * The file operations that the store uses, in one place so that a test can make each of them fail. They are the
 * synchronous ones: between taking the lock and giving it back nothing else of this process gets a turn.
 */
import * as fs from "node:fs";
import { dirname } from "node:path";

export type Files = Pick<
  typeof fs,
  | "openSync"
  | "readFileSync"
  | "writeFileSync"
  | "fsyncSync"
  | "closeSync"
  | "renameSync"
  | "linkSync"
  | "unlinkSync"
  | "mkdirSync"
  | "readdirSync"
  | "readlinkSync"
  | "lstatSync"
>;

export const nodeFiles: Files = fs;

/** The system's short name for what went wrong ("ENOSPC"), or "" for an error that is none of the system's. */
export function codeOf(error: unknown): string {
  const code = error instanceof Error && "code" in error ? error.code : "";
  return typeof code === "string" ? code : "";
}

/** Whether it was giving a file a second name that failed. */
export const isLink = (error: unknown): boolean =>
  error instanceof Error && "syscall" in error && error.syscall === "link";

/** Writes a new file that its owner alone may read, on the disk before this returns if `flush`. Throws as node:fs. */
export function writeNew(files: Files, path: string, bytes: string | Uint8Array, flush: boolean): void {
  const fd = files.openSync(path, "wx", 0o600);
  try {
    files.writeFileSync(fd, bytes);
    if (flush) files.fsyncSync(fd);
  } finally {
    files.closeSync(fd);
  }
}

/** Makes names given, changed or taken in a folder last through a power cut. */
export function flushFolder(files: Files, folder: string): void {
  // Windows can't open a folder; its file system writes names through a journal of its own.
  if (process.platform === "win32") return;
  const fd = files.openSync(folder, "r");
  try {
    files.fsyncSync(fd);
  } catch (error) {
    // Some network and user-space file systems have no flush for folders. That is theirs, not a failed write.
    if (!["EINVAL", "ENOTSUP", "EOPNOTSUPP", "ENOSYS"].includes(codeOf(error))) throw error;
  } finally {
    files.closeSync(fd);
  }
}

/** Makes the folder, readable by its owner alone, and every folder above it that is missing. */
export function makeFolder(files: Files, folder: string): void {
  for (const made of madeFolders(files, folder)) {
    try {
      flushFolder(files, dirname(made));
    } catch (error) {
      // A folder that may be entered but not listed can't be flushed by us. The system does it in its own time.
      if (codeOf(error) !== "EACCES") throw error;
    }
  }
}

/**
 * Makes what is missing, one folder at a time, and gives what it made, the innermost first. Node's own recursive making
 * goes on for ever where a file system says "not there" of what can't be made, as /proc does.
 */
function madeFolders(files: Files, folder: string): string[] {
  try {
    files.mkdirSync(folder, { mode: 0o700 });
    return [folder];
  } catch (error) {
    // the dot goes through a link to a folder, which is as good as one
    if (codeOf(error) === "EEXIST" && files.lstatSync(`${folder}/.`).isDirectory()) return [];
    if (codeOf(error) !== "ENOENT" || dirname(folder) === folder) throw error;
  }
  const above = madeFolders(files, dirname(folder));
  files.mkdirSync(folder, { mode: 0o700 });
  return [folder, ...above];
}

/** Removes a file where that is only tidying: what can't be removed now is found again later. */
export function tidyAway(files: Files, path: string): void {
  try {
    files.unlinkSync(path);
  } catch {
    // Left for the next one who tidies.
  }
}

/** The bytes of a file, or undefined where there is none. Throws as node:fs for everything else. */
export function bytesOf(files: Files, path: string): Buffer | undefined {
  try {
    return files.readFileSync(path);
  } catch (error) {
    if (codeOf(error) === "ENOENT") return undefined;
    throw error;
  }
}
