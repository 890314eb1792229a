/** How bakers talk: which words they use how often, and which stand beside which. Counted by `npm run hear`. */
import heard from "../../../data/heard.json" with { type: "json" };

/** Counts are kept as quarters of their binary logarithm. */
const step = 4;
export const written = (count: number) => Math.round(step * Math.log2(count));
const meant = (kept: number) => 2 ** (kept / step);

/** Beside a word that says nothing of its neighbours, a neighbour is as likely as anywhere: weighed like so many times heard. */
const doubt = 8;

/** Of each word the counts beside it, looked up in the text as it is kept: few of them are ever asked for. */
const behind = new Map<string, string>();
/** So many words are remembered. */
const most = 3000;

/** How often a word was counted in a list: " how 50 much 48 ". */
function countIn(list: string, word: string): number {
  const at = list.indexOf(` ${word} `);
  if (at < 0) return 0;
  const from = at + word.length + 2;
  return meant(Number(list.slice(from, list.indexOf(" ", from))));
}

function listBehind(word: string): string {
  const known = behind.get(word);
  if (known !== undefined) return known;
  const at = heard.pairs.indexOf(`\n${word}\t`);
  const from = at + word.length + 2;
  const list = at < 0 ? "" : ` ${heard.pairs.slice(from, heard.pairs.indexOf("\n", from))} `;
  // of what was never heard there is no end
  if (behind.size > most) behind.clear();
  behind.set(word, list);
  return list;
}

let all: string | undefined;
const wordList = () => (all ??= ` ${heard.words} `);

/** Every word heard. */
export const heardWords = (): string[] => heard.words.split(" ").filter((_, at) => at % 2 === 0);

const counts = new Map<string, number>();
/** How often a word was heard; 0 where it was too seldom to be kept. */
export function often(word: string): number {
  const known = counts.get(word);
  if (known !== undefined) return known;
  const count = countIn(wordList(), word);
  if (counts.size > most) counts.clear();
  counts.set(word, count);
  return count;
}

const share = (word: string) => (often(word) + 0.5) / (heard.total + 2000);

/** How often a word was heard right behind another; 0 where it was too seldom to be kept. */
export const heardPair = (word: string, next: string): number => countIn(listBehind(word), next);

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
