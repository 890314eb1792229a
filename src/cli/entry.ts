/** Where the bundle begins. It gets what only the launcher knows and sets the exit status. */
import { primeCues } from "../intents/chosen/choose.ts";
import { primeSigns, signTable } from "../intents/chosen/signs.ts";
import { phraseTable, primePhrases } from "../intents/found/lexicon.ts";
import { primeTurns, turnTable } from "../intents/text/phrases.ts";
import { primeVocabulary } from "../intents/text/vocabulary.ts";
import { wordTable } from "../intents/understanding.ts";
import { cueTable } from "../tools/lib/cue-table.ts";
import { tools } from "../tools/registry.ts";
import { main, type Outside, type Parts } from "./main.ts";
import { isTerminal, writeAll } from "./output.ts";

/** What the build keeps beside the program for `start`. */
export const tables = (): string[] => [
  cueTable(tools),
  phraseTable(),
  turnTable(),
  wordTable(tools),
  signTable(tools),
];

/** Each is read when it is needed, if it is there. */
type Written = readonly (() => string | undefined)[];

export function takeUp([cues, phrases, turns, words, signs]: Written): void {
  const [allCues, allPhrases, allTurns] = [cues?.(), phrases?.(), turns?.()];
  if (allCues) primeCues(tools, allCues);
  if (allPhrases) primePhrases(allPhrases);
  if (allTurns) primeTurns(allTurns);
  if (words) primeVocabulary(words);
  if (signs) primeSigns(tools, signs);
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

export * from "./warm.ts";
