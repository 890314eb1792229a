/** Two ovens in one sentence: the one a heat was told for, and the one that there is. */

export type Oven = "fan" | "conventional";

/** Where an oven is named, by its place among the words. */
export interface Mention {
  oven: Oven;
  at: number;
}

export const written = /^(?:recipes?|books?|cards?|instructions|directions)$/;

/** "my fan oven recipe": what it says is for that oven, whosever it is. */
export const isOfRecipe = (words: readonly string[], at: number): boolean =>
  written.test(words[/^ovens?$/.test(words[at + 1] ?? "") ? at + 2 : at + 1] ?? "");

const asks = /^(?:what|whats|which|how)$/;
const standsThere = /^(?:has|have|had|got|ive|weve|theres|only|just)$/;

/**
 * "i bake at 140 c in my fan oven, the cafe only has a conventional one": one clause tells the heat and its oven, a
 * later one the oven that there is.
 */
export function ovenThere(
  words: readonly string[],
  mentions: readonly Mention[],
  heat: number,
): Oven | undefined {
  const clause = (at: number) => {
    const isStop = (word: string) => /^[,.;:]$/.test(word);
    const start = words.findLastIndex((word, place) => place < at && isStop(word)) + 1;
    const end = words.findIndex((word, place) => place > at && isStop(word));
    return { start, words: words.slice(start, end < 0 ? undefined : end) };
  };
  const there = mentions.findLast(({ at }) => at > heat);
  if (heat < 0 || !there) return undefined;
  const [told, has] = [clause(heat), clause(there.at)];
  const own = mentions.filter(({ at }) => clause(at).start === told.start);
  if (has.start === told.start || own.length !== 1 || own[0]?.oven === there.oven) return undefined;
  if (told.words.some((word) => asks.test(word)) || has.words.some((word) => written.test(word)))
    return undefined;
  return has.words.some((word) => standsThere.test(word)) ? there.oven : undefined;
}
