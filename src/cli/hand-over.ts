/** Files that an answer hands over: text as it is, papers as PDF, tables as CSV. The makers are loaded when needed. */
import type { Effect, FileContent, Outcome, Sheet } from "../tools/contract/index.ts";
import type { Made } from "./paper/paper.ts";

/** What makes files; each is a bundle of its own. */
export interface Makers {
  paper(): Promise<{ makePdf(paper: Extract<FileContent, { paper: unknown }>["paper"]): Promise<Made> }>;
  csv(): Promise<{ csvText(sheet: Sheet): string; csvRows(text: string): CsvRows }>;
}

/** A table as it was read: the first row's names, then each row with the line that it began on. */
export interface CsvRows {
  columns: string[];
  rows: { line: number; cells: string[] }[];
  /** What isn't CSV, and where. */
  problems: string[];
}

export interface Hands {
  writeFile?(name: string, content: string | Uint8Array): Promise<string>;
  makers?: Makers;
}

type Content = { ok: true; content: string | Uint8Array; assumed: string[] } | { ok: false; why: string };

async function contentOf(file: FileContent, makers: Makers | undefined): Promise<Content | undefined> {
  if ("text" in file) return { ok: true, content: file.text, assumed: [] };
  if (!makers) return undefined;
  if ("sheet" in file) return { ok: true, content: (await makers.csv()).csvText(file.sheet), assumed: [] };
  const made = await (await makers.paper()).makePdf(file.paper);
  return made.ok ? { ok: true, content: made.bytes, assumed: made.assumed } : made;
}

/** The answer with its files written and named; or why one of them can't be made or written. */
export async function handOver(outcome: Outcome, effects: readonly Effect[], hands: Hands): Promise<Outcome> {
  const paths: string[] = [];
  const assumed: string[] = [];
  for (const effect of effects) {
    if (effect.do !== "write file" || !hands.writeFile) continue;
    const made = await contentOf(effect, hands.makers);
    if (made && !made.ok) return { status: "impossible", headline: made.why };
    if (!made) continue;
    try {
      paths.push(await hands.writeFile(effect.name, made.content));
    } catch (error) {
      const why = notWritten(error);
      if (!why) throw error;
      return { status: "impossible", headline: `${effect.name} isn't written: ${why}` };
    }
    assumed.push(...made.assumed);
  }
  if (paths.length === 0) return outcome;
  const all = [...(outcome.assumed ?? []), ...assumed];
  return {
    ...outcome,
    headline: `${outcome.headline} (${paths.join(", ")})`,
    ...(all.length ? { assumed: all } : {}),
  };
}

/** What the system refuses, with what to try; anything else is a bug and goes on. */
function notWritten(error: unknown): string | undefined {
  const why: Record<string, string> = {
    EACCES: "this folder may not be written to. Start the program in one of your own.",
    EPERM: "this folder may not be written to. Start the program in one of your own.",
    EROFS: "this folder may not be written to. Start the program in one of your own.",
    ENOSPC: "the disk is full. Make room and ask again.",
    EDQUOT: "the disk is full. Make room and ask again.",
  };
  return why[(error as NodeJS.ErrnoException).code ?? ""];
}
