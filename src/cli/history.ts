/**
 * Questions of earlier sessions, one a line, the oldest first, in a file beside the record that only its owner reads.
 * Each new one is put behind the last, so that windows that are open together keep each other's.
 */
import { promises as disk } from "node:fs";
import { dirname, join } from "node:path";
import { sanitise } from "../intents/text/normalise.ts";
import { makeFolder, nodeFiles } from "../store/files.ts";

/** So many are offered again. */
export const keptLines = 500;
/** Longer than this no question is worth keeping. */
const longestLine = 2000;
/** The file is cut back when it has grown past this many bytes. */
const mostBytes = 200_000;
const ownerOnly = 0o600;

export interface History {
  /** Lines of earlier sessions; none where there is no file or it can't be read. */
  load(): Promise<string[]>;
  /** Puts lines behind the others. Throws as node:fs. */
  add(lines: readonly string[]): Promise<void>;
}

/** @param home the record's folder; it is made with the first line */
export function historyIn(home: string): History {
  const file = join(home, "history.txt");
  return {
    async load() {
      const text = await disk.readFile(file, "utf8").catch(() => "");
      const lines = text.split("\n").map(sanitise).filter(Boolean).slice(-keptLines);
      if (text !== "") await disk.chmod(file, ownerOnly).catch(() => {});
      if (Buffer.byteLength(text) > mostBytes) await replace(file, lines).catch(() => {});
      return lines;
    },
    async add(lines) {
      const kept = lines.map(sanitise).filter((line) => line !== "" && line.length <= longestLine);
      if (kept.length === 0) return;
      makeFolder(nodeFiles, dirname(file));
      await disk.appendFile(file, kept.map((line) => `${line}\n`).join(""), { mode: ownerOnly });
    },
  };
}

/** Whole or not at all. */
async function replace(file: string, lines: readonly string[]): Promise<void> {
  const draft = `${file}.${process.pid}.tmp`;
  try {
    const out = await disk.open(draft, "wx", ownerOnly);
    try {
      await out.writeFile(`${lines.join("\n")}\n`);
    } finally {
      await out.close();
    }
    await disk.rename(draft, file);
  } catch (error) {
    await disk.rm(draft, { force: true });
    throw error;
  }
}
