/** Where the bundle begins. It gets what only the launcher knows and sets the exit status. */
import { freshState, next, questions, understanding } from "../intents/converse.ts";
import { phraseTable, primePhrases } from "../intents/lexicon.ts";
import { indexOf, prime } from "../tools/lib/cue.ts";
import { tools } from "../tools/registry.ts";
import { main, type Outside, type Parts } from "./main.ts";
import { isTerminal, writeAll } from "./output.ts";

const allCues = () => tools.flatMap((tool) => tool.cues);

/** What the build keeps beside the program for `start`. */
export const tables = (): [cues: string, phrases: string] => [indexOf(allCues()), phraseTable()];

type Written = readonly (string | undefined)[];

function takeUp([cues, phrases]: Written): void {
  if (!cues || !phrases) return;
  prime(allCues(), cues);
  primePhrases(phrases);
}

export function start(parts: Parts, version: string, written: Written): void {
  takeUp(written);
  void main(outside(process.argv.slice(2), parts, version)).then((status) => {
    process.exitCode = status;
  });
}

const outside = (argv: readonly string[], parts: Parts, version: string): Outside => ({
  argv,
  env: process.env,
  stdin: () => process.stdin,
  stdout: () => process.stdout,
  isTerminal,
  write: (text) => writeAll(1, text),
  complain: (text) => writeAll(2, text),
  version,
  parts,
});

/**
 * Runs what most questions run, so that the code cache made at build holds it compiled.
 * @param home a folder for a record that is thrown away
 */
export async function warm(parts: Parts, written: Written, home: string): Promise<void> {
  takeUp(written);
  const quiet = {
    ...outside(["--home", home, "230 g buttercream, how much flavor?"], parts, ""),
    write: () => {},
  };
  await main(quiet);
  const all = understanding(tools);
  const names = { formulas: [], bottles: [], timers: [] };
  for (const tool of tools)
    for (const { say } of tool.examples.slice(0, 1))
      for (const reading of questions(say, all)) next(reading, freshState(), names, all);
}
