/** What a word could have been meant for, and what each reading of it costs: its slips, and how seldom it is said there. */
import { bonesOf } from "./bones.ts";
import { likely } from "./heard.ts";
import { slipsBetween } from "./slip.ts";
import { type Meant, togetherOf } from "./together.ts";
import type { Vocabulary } from "./vocabulary.ts";

/** What stands beside a word: begin "^", end "$", any number "#". Undefined where it isn't known either. */
export interface Neighbours {
  before?: string | undefined;
  next?: string | undefined;
  /** Nothing stands between it and the number in front: "225gof". */
  glued?: boolean;
  /** Words of the names that the baker gave. */
  own?: ReadonlySet<string>;
}

export interface Rated extends Meant {
  cost: number;
}

/** What a slip costs against how likely a word is, in natural logarithms; from memory, tried on the learned conversations. */
const perSlip = 4.5;
/** What a word of a name that she gave costs beside its slips. */
const nameHeard = 6;
/** Dropping the vowels is a habit, and hardly a slip. */
const boned = 0.4;
/** The most slips in a word. */
const mostSlips = (word: string) => [0, 0, 1.2, 1.35, 1.5, 1.5, 1.6][word.length] ?? 2.4;
/** Up to here words are remembered. */
const room = 5000;

interface Target {
  word: string;
  letters: number;
}

/** The letters of a word, a bit for each: what two words don't share is a cheap floor under their slips. */
function lettersOf(word: string): number {
  let letters = 0;
  for (let at = 0; at < word.length; at++) letters |= 1 << (word.charCodeAt(at) - 97);
  return letters;
}

/** No slip brings in or loses a letter for less. */
const perLetter = 0.45;

function count(bits: number): number {
  let [left, ones] = [bits, 0];
  for (; left; ones++) left &= left - 1;
  return ones;
}

/** How likely some words are where one was typed, as a natural logarithm. */
const chance = (words: readonly string[], { before, next }: Neighbours) =>
  words.reduce(
    (sum, word, at) =>
      sum + likely(at ? words[at - 1] : before, word, at < words.length - 1 ? undefined : next),
    0,
  );

/** @returns every reading of a word, the best first; what it takes is made when the first word comes */
export function readingsOf(vocabulary: Vocabulary): (word: string, beside: Neighbours) => Rated[] {
  const fromBones = bonesOf(vocabulary);
  const together = togetherOf(vocabulary);
  const memo = new Map<string, readonly Meant[]>();
  let lengths: Map<number, Target[]> | undefined;

  const ofLength = (length: number): readonly Target[] => {
    if (!lengths) {
      lengths = new Map();
      for (const word of vocabulary.targets()) {
        const list = lengths.get(word.length) ?? [];
        lengths.set(word.length, list);
        list.push({ word, letters: lettersOf(word) });
      }
    }
    return lengths.get(length) ?? [];
  };

  /** All that a word could be, with its slips. */
  function near(word: string): readonly Meant[] {
    const known = memo.get(word);
    if (known) return known;
    const found: Meant[] = [];
    const most = mostSlips(word);
    const own = lettersOf(word);
    for (let length = word.length - 2; length <= word.length + 3; length++)
      for (const { word: target, letters } of ofLength(length)) {
        if (target === word || count(letters ^ own) * perLetter > most) continue;
        const slips = slipsBetween(word, target, most);
        if (slips !== undefined) found.push({ words: [target], slips });
      }
    for (const target of fromBones(word)) found.push({ words: [target], slips: boned });
    if (memo.size > room) memo.clear();
    memo.set(word, found);
    return found;
  }

  /** A word of a name that she gave is likely wherever it stands. */
  const ofHers = (word: string, own: ReadonlySet<string> | undefined): Rated[] =>
    [...(own ?? [])].flatMap((target) => {
      const slips = vocabulary.knows(target) ? undefined : slipsBetween(word, target, mostSlips(word));
      return slips === undefined ? [] : [{ words: [target], slips, cost: perSlip * slips + nameHeard }];
    });

  return (word, beside) =>
    [...near(word), ...together(word, beside.glued ?? false)]
      .map(({ words, slips }) => ({ words, slips, cost: perSlip * slips - chance(words, beside) }))
      .concat(ofHers(word, beside.own))
      .sort((a, b) => a.cost - b.cost || (a.words.join() < b.words.join() ? -1 : 1));
}
