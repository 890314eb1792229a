/** What went wrong, as the baker is told: a sentence, and what to try. */
import { codeOf, isLink } from "./files.ts";
import type { StoreProblem } from "./types.ts";

/** Carries a problem through lowdb, whose adapters can only throw. It leaves src/store only when old entries
 * that are read late can't be read. */
export class Failed extends Error {
  constructor(readonly problem: StoreProblem) {
    super(problem.message);
  }

  /** What to try, under the name that the command and the chat look for. */
  get hint(): string {
    return this.problem.try;
  }
}

const full = ["ENOSPC", "EDQUOT", "EFBIG"];
const shut = ["EROFS", "EACCES", "EPERM"];
const linkless = ["ENOTSUP", "EOPNOTSUPP", "ENOSYS", "EMLINK"];
const elsewhere = "or name another folder with --home";

/** A path as it may be shown: a name made of escapes must not reach the terminal. */
export const shown = (path: string): string => path.replace(/\p{C}/gu, "?");

/** The problem behind an error. An error that the system didn't raise is a bug and is thrown on. */
export function problemOf(error: unknown, doing: "read" | "write", file: string): StoreProblem {
  if (error instanceof Failed) return error.problem;
  const code = codeOf(error);
  if (!/^E[A-Z0-9]+$|^ERR_FS_/.test(code)) throw error;
  const name = shown(file);
  if (doing === "read") {
    const hint = shut.includes(code)
      ? `Check who may read it, ${elsewhere}.`
      : `Check the disk, ${elsewhere}.`;
    return { kind: "io", message: `${name} could not be read (${code}).`, try: hint, file };
  }
  if (full.includes(code)) {
    return {
      kind: "full",
      message: `There is no space left to write ${name}; the record is as it was.`,
      try: `Free some space and say it again, ${elsewhere}.`,
      file,
    };
  }
  // Making a lock fails with EPERM where a file system has no hard links: not a matter of rights, so named apart.
  const noLinks = isLink(error) && (linkless.includes(code) || code === "EPERM");
  if (!noLinks && shut.includes(code)) {
    return {
      kind: "read-only",
      message: `${name} may not be written (${code}); the record is as it was.`,
      try: `Check who may write to its folder, ${elsewhere}.`,
      file,
    };
  }
  return {
    kind: "io",
    message: noLinks
      ? `${name} is on a disk where files can't be locked (${code}); nothing was written.`
      : `Writing ${name} failed (${code}); the record is as it was.`,
    try: noLinks
      ? "Name a folder on another disk with --home."
      : `Say it again; if it goes on, check the disk, ${elsewhere}.`,
    file,
  };
}
