/** Everything that reading needs, compiled once. */
import type { Tool } from "../tools/contract/index.ts";
import { compile, wordsOf } from "./found/lexicon.ts";
import type { Reader } from "./read.ts";
import { mender } from "./text/mend.ts";
import { vocabulary } from "./text/vocabulary.ts";

export interface Understanding {
  reader: Reader;
  tools: readonly Tool[];
}

/** Compiles the tables once; the calculators' own example phrases are words that typos are mended toward. */
export function understanding(tools: readonly Tool[]): Understanding {
  const lexicon = compile();
  const own = () =>
    tools
      .flatMap((tool) => [...tool.examples, ...tool.elsewhere])
      .flatMap(({ say }) => wordsOf(say))
      .filter((word) => /^[a-z]{3,}$/.test(word));
  const words = vocabulary(lexicon, own);
  return { reader: { lexicon, mender: mender(words) }, tools };
}
