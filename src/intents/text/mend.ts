/**
 * Typos in words: of all the words that could have been meant, the one that is likeliest between its neighbours and the
 * fewest slips away. Where two words are about as good, or none is good enough, the word is left as it was typed.
 * (The noisy channel of spelling correction: Kernighan, Church and Gale 1990.)
 */
import { shortSlips } from "../../../data/words/everyday.ts";
import { withoutVowels } from "../../../data/words/without-vowels.ts";
import { heardPair, likely } from "./heard.ts";
import { type Neighbours, type Rated, readingsOf } from "./readings.ts";
import { nearlyTogether } from "./together.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface Mender {
  /** The word as it should have been, two words where a space was forgotten, or undefined when it is right or hopeless. */
  mend(word: string, beside?: Neighbours): string[] | undefined;
  knows(word: string): boolean;
  /** A number, a unit or a day. */
  measures(word: string): boolean;
  /** A number word: to its neighbours as good as digits. */
  counts(word: string): boolean;
  /** The numbers that a word may be, where it is likely to be one. */
  numbers(word: string, beside: Neighbours): string[];
  /** Two pieces that are one word of the trade, torn apart. */
  joins(one: string, two: string): string | undefined;
}

/** By so much the best reading has to be better than the next: a word of talk, a thing, a number or unit. */
const margin = { word: 0.7, thing: 1.5, measure: 2.5 };
/** A right word is taken for a slip where another costs at most so much, and so much less than the word as it stands. */
const misread = { rare: { most: 9, apart: 5 }, heard: { most: 7, apart: 8 } };
/** A number that costs at most so much more than the best reading may have been meant. */
const doubt = 5;
/** What is a whole slip nearer is meant, though it costs so much more in all. */
const [wholeSlip, nearEnough] = [0.8, 5];
/** Beyond this no word is taken for another; a long word, or one a single easy slip away, hardly is anything else. */
const limit = (word: string, { slips }: Rated) =>
  20 + 2 * Math.max(0, word.length - 4) + (word.length > 3 && slips < wholeSlip ? 3 : 0);

/** Ways to type a word that are a habit more than a slip. */
const habit = (word: string): string | undefined =>
  [shortSlips, withoutVowels].find((table) => Object.hasOwn(table, word))?.[word];

/** Builds a mender over a vocabulary. */
export function mender(vocabulary: Vocabulary): Mender {
  const rated = readingsOf(vocabulary);
  const nearly = nearlyTogether(vocabulary);

  const alike = (one: Rated, two: Rated) =>
    one.words.length === two.words.length &&
    one.words.every((each, at) => vocabulary.alike(each, two.words[at] ?? ""));

  /** By how much a reading has to be better than others. */
  const marginOf = ({ words }: Rated) =>
    words.some(vocabulary.measures)
      ? margin.measure
      : words.some(vocabulary.names)
        ? margin.thing
        : margin.word;

  /** The reading that is better than all others, if one is. A number or a unit has to be the nearest one as well. */
  function decided(all: readonly Rated[]): string[] | undefined {
    const [best] = all;
    if (!best) return undefined;
    const others = all.filter((each) => !alike(best, each));
    const isMeasure = best.words.some(vocabulary.measures);
    const close = others.filter((each) => each.cost - best.cost < margin.measure);
    const isNearer = close.every((each) => best.slips < each.slips - 0.3);
    const apart = isMeasure && isNearer ? margin.word : marginOf(best);
    const rivals = others.filter(
      (each) => each.cost - best.cost < apart && each.slips < best.slips + wholeSlip,
    );
    // a whole slip less says more than what is said more often
    const nearest = all.filter(
      (each) => each.slips < best.slips - wholeSlip && each.cost - best.cost < nearEnough,
    );
    const [nearer] = nearest;
    if (nearer) return nearest.every((each) => alike(nearer, each)) ? [...nearer.words] : undefined;
    const isFarther = (each: Rated) => each.slips < best.slips && each.words.some(vocabulary.measures);
    return rivals.length > 0 || (isMeasure && others.some(isFarther)) ? undefined : [...best.words];
  }

  function mend(word: string, beside: Neighbours = {}): string[] | undefined {
    const slip = habit(word);
    if (slip) return slip.split(" ");
    if (word.length < 2 || word.length > 40) return undefined;
    if (vocabulary.knows(word)) return instead(word, beside);
    if (vocabulary.leaves(word)) return undefined;
    const all = rated(word, beside);
    const [best] = all;
    const right = best && best.cost <= limit(word, best) ? decided(all) : nearly(word);
    // "mli" is near "mlk", which is milk
    return right?.flatMap((each) => habit(each)?.split(" ") ?? [each]);
  }

  /** "how long is hat": a right word that bakers hardly say there, where another that is near fits far better. */
  function instead(word: string, beside: Neighbours): string[] | undefined {
    const sure = vocabulary.rare(word) ? misread.rare : vocabulary.plain(word) ? misread.heard : undefined;
    if (!sure || beside.before === undefined || beside.next === undefined) return undefined;
    // somebody said it so
    if (heardPair(beside.before, word) > 0 || heardPair(word, beside.next) > 0) return undefined;
    const asTyped = -likely(beside.before, word, beside.next);
    if (asTyped < sure.apart) return undefined;
    const all = rated(word, beside);
    const [best] = all;
    if (!best || best.words.length > 1 || vocabulary.alike(best.words[0] ?? "", word)) return undefined;
    // "500 grans": no unit, and near one
    const isUnit = sure === misread.rare && beside.before === "#" && best.words.some(vocabulary.measures);
    if (isUnit ? best.slips > 1 : best.words.some(vocabulary.measures)) return undefined;
    if (!isUnit && (best.cost > sure.most || asTyped - best.cost < sure.apart)) return undefined;
    return decided(all);
  }

  const isCounted = (word: string | undefined) =>
    word !== undefined && (word === "#" || vocabulary.measures(word));

  function numbers(word: string, beside: Neighbours): string[] {
    const all = word.length < 3 ? [] : rated(word, beside);
    const [best] = all;
    // beside a number or a unit; elsewhere only what is a number before it is anything else
    const isOne = vocabulary.counts(best?.words[0] ?? "");
    if (!isOne && !isCounted(beside.before) && !isCounted(beside.next)) return [];
    if (!best || best.cost > limit(word, best) + doubt) return [];
    const found = all
      .filter((each) => each.cost - best.cost < doubt || each.slips < best.slips)
      .flatMap(({ words: [only = "", ...more] }) =>
        vocabulary.counts(only) && more.length === 0 ? [only] : [],
      );
    return [...new Set(found)];
  }

  return {
    knows: vocabulary.knows,
    measures: vocabulary.measures,
    counts: vocabulary.counts,
    numbers,
    mend,
    joins: (one, two) =>
      one.length + two.length >= 5 && vocabulary.trade().has(one + two) ? one + two : undefined,
  };
}
