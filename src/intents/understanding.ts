/** Everything that reading needs, compiled once. */
import type { Tool } from "../tools/contract/index.ts";
import { compile, type Lexicon, wordsOf } from "./found/lexicon.ts";
import type { Reader } from "./read.ts";
import { mender } from "./text/mend.ts";
import { type Vocabulary, vocabulary } from "./text/vocabulary.ts";

/** What the build keeps of the words, for `primeVocabulary`. */
export const wordTable = (tools: readonly Tool[]): string => wordsFor(tools, compile()).written();

export interface Understanding {
  reader: Reader;
  tools: readonly Tool[];
}

/** Compiles the tables once; the calculators' own example phrases are words that typos are mended toward. */
export function understanding(tools: readonly Tool[]): Understanding {
  const lexicon = compile();
  return { reader: { lexicon, mender: mender(wordsFor(tools, lexicon)) }, tools };
}

function wordsFor(tools: readonly Tool[], lexicon: Lexicon): Vocabulary {
  const own = () =>
    tools
      .flatMap((tool) => [...tool.examples, ...tool.elsewhere])
      .flatMap(({ say }) => wordsOf(say))
      .filter((word) => /^[a-z]{3,}$/.test(word));
  return vocabulary(lexicon, own);
}
