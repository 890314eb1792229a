/** How bakers talk: which words they use how often, and which stand beside which. Counted by `npm run hear`. */
import heard from "../../../data/heard.json" with { type: "json" };

/** Counts are kept as quarters of their binary logarithm. */
const step = 4;
export const written = (count: number) => Math.round(step * Math.log2(count));
const meant = (kept: number) => 2 ** (kept / step);

/** Beside a word that says nothing of its neighbours, a neighbour is as likely as anywhere: weighed like so many times heard. */
const doubt = 8;

let words: ReadonlyMap<string, number> | undefined;
let lines: ReadonlyMap<string, string> | undefined;
const pairs = new Map<string, ReadonlyMap<string, number>>();
const none: ReadonlyMap<string, number> = new Map();

const counted = (line: string): ReadonlyMap<string, number> => {
  const list = line.split(" ");
  const counts = new Map<string, number>();
  for (let at = 0; at + 1 < list.length; at += 2) counts.set(list[at] ?? "", meant(Number(list[at + 1])));
  return counts;
};

/** Every word heard, with how often. */
export const heardWords = (): ReadonlyMap<string, number> => (words ??= counted(heard.words));

function behind(word: string): ReadonlyMap<string, number> {
  const known = pairs.get(word);
  if (known) return known;
  lines ??= new Map(
    heard.pairs.split("\n").map((line): [string, string] => {
      const [first = "", rest = ""] = line.split("\t");
      return [first, rest];
    }),
  );
  const line = lines.get(word);
  if (line === undefined) return none;
  const found = counted(line);
  pairs.set(word, found);
  return found;
}

const often = (word: string) => heardWords().get(word) ?? 0;
const share = (word: string) => (often(word) + 0.5) / (heard.total + 2000);

/** How often a word was heard right behind another; 0 where it was too seldom to be kept. */
export const heardPair = (word: string, next: string): number => behind(word).get(next) ?? 0;

const follows = (word: string, next: string) =>
  (heardPair(word, next) + doubt * share(next)) / (often(word) + doubt);

/**
 * How likely a word is between its neighbours, as a natural logarithm. Begin "^", end "$", any number "#"; a neighbour
 * that isn't known is left out.
 */
export function likely(before: string | undefined, word: string, next: string | undefined): number {
  const forth = before === undefined ? share(word) : follows(before, word);
  const back = next === undefined ? 1 : follows(word, next) / share(next);
  return Math.log(forth) + Math.log(back);
}
