/** Where the record's files lie. */
import { dirname, join, resolve } from "node:path";
import { codeOf, type Files } from "./files.ts";
import { Failed, shown } from "./problem.ts";

export interface Place {
  /** The record itself, links followed. */
  file: string;
  /** Its folder. Everything that the store makes lies beside the record: only there does a rename replace it. */
  folder: string;
  /** The lock. It goes with the file and not with the home, so that two homes may share one record by a link. */
  lock: string;
  /** The folder of files with old entries, and the one of daily copies. */
  parts: string;
  copies: string;
}

/** Finds the record of a home. Throws as node:fs, or Failed where something else stands in its place. */
export function findPlace(files: Files, home: string): Place {
  let file = join(home, "record.json");
  // Followed by hand because the last link may point to a file that is yet to be written.
  for (let links = 0; links < 40; links++) {
    const kind = kindOf(files, file);
    if (kind === "other") throw new Failed(notAFile(file));
    if (kind !== "link") return placeOf(file);
    file = resolve(dirname(file), files.readlinkSync(file));
  }
  throw new Failed(notAFile(file));
}

function placeOf(file: string): Place {
  const stem = file.replace(/\.json$/, "");
  return {
    file,
    folder: dirname(file),
    lock: `${file}.lock`,
    parts: `${stem}.parts`,
    copies: `${stem}.copies`,
  };
}

function kindOf(files: Files, file: string): "file" | "link" | "missing" | "other" {
  try {
    const found = files.lstatSync(file);
    return found.isSymbolicLink() ? "link" : found.isFile() ? "file" : "other";
  } catch (error) {
    if (codeOf(error) === "ENOENT") return "missing";
    throw error;
  }
}

const notAFile = (file: string) => ({
  kind: "io" as const,
  message: `${shown(file)} is not a file that could hold the record.`,
  try: "Move it away, or name another folder with --home.",
  file,
});
