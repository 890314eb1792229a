/** Where the bundle begins. It gets what only the launcher knows and sets the exit status. */
import { freshState, next, questions, understanding } from "../intents/converse.ts";
import { indexOf, prime } from "../tools/lib/cue.ts";
import { tools } from "../tools/registry.ts";
import { main, type Parts } from "./main.ts";
import { isTerminal, writeAll } from "./output.ts";

const allCues = () => tools.flatMap((tool) => tool.cues);

/** What the build keeps beside the program for `start`. */
export const cueTable = (): string => indexOf(allCues());

export function start(parts: Parts, version: string, cueTable: string | undefined): void {
  if (cueTable) prime(allCues(), cueTable);
  void main({
    argv: process.argv.slice(2),
    env: process.env,
    stdin: () => process.stdin,
    stdout: () => process.stdout,
    isTerminal,
    write: (text) => writeAll(1, text),
    complain: (text) => writeAll(2, text),
    version,
    parts,
  }).then((status) => {
    process.exitCode = status;
  });
}

/** Runs what most questions run, so that the code cache made at build holds it compiled. Touches no record. */
export function warm(): void {
  const all = understanding(tools);
  const names = { formulas: [], bottles: [], timers: [] };
  for (const tool of tools)
    for (const { say } of tool.examples.slice(0, 1))
      for (const reading of questions(say, all)) next(reading, freshState(), names, all);
}
