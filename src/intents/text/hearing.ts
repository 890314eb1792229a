/** Counts what src/intents/text/heard.ts looks up. Used when it is made anew, never by the program that answers. */
import { written } from "./heard.ts";
import { sanitise } from "./normalise.ts";
import { type Token, tokenise } from "./tokens.ts";

/** What was heard less often is no help. */
const least = 3;

/** A token among its neighbours: numbers are all alike. */
export const spoken = (token: Token): string => (token.kind === "number" ? "#" : token.text);

/** @returns the words and pairs of some sentences, those heard often enough, as heard.json holds them */
export function hear(sentences: readonly string[]): { words: string; pairs: string; total: number } {
  const words = new Map<string, number>();
  const pairs = new Map<string, Map<string, number>>();
  let total = 0;
  const count = (counts: Map<string, number>, word: string) => counts.set(word, (counts.get(word) ?? 0) + 1);
  for (const said of sentences) {
    const tokens = ["^", ...tokenise(sanitise(said).toLowerCase()).map(spoken), "$"];
    total += tokens.length;
    tokens.forEach((word, at) => {
      count(words, word);
      const next = tokens[at + 1];
      if (next === undefined) return;
      const behind = pairs.get(word) ?? new Map<string, number>();
      pairs.set(word, behind);
      count(behind, next);
    });
  }
  const listed = (counts: Map<string, number>) =>
    [...counts]
      .filter(([, times]) => times >= least)
      .sort(([a, x], [b, y]) => y - x || (a < b ? -1 : 1))
      .map(([word, times]) => `${word} ${written(times)}`)
      .join(" ");
  const lines = [...pairs]
    .map(([word, counts]) => [word, listed(counts)])
    .filter(([, list]) => list)
    .sort(([a = ""], [b = ""]) => (a < b ? -1 : 1))
    .map(([word, list]) => `${word}\t${list}`);
  return { words: listed(words), pairs: `\n${lines.join("\n")}\n`, total };
}
