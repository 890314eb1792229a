/** Which words are right as they stand, and which ones a typo may be mended toward. */
import porter from "natural/lib/natural/stemmers/porter_stemmer.js";
import { dayParts, dayWords, months, weekdays } from "../../../data/words/calendar.ts";
import { everyday, functionWords, shortSlips } from "../../../data/words/everyday.ts";
import { lookAlikes } from "../../../data/words/look-alikes.ts";
import {
  factorWords,
  groupWords,
  magnitudes,
  ordinals,
  partWords,
  smallNumbers,
  tens,
} from "../../../data/words/numbers.ts";
import { plainEnglish } from "../../../data/words/plain-english.ts";
import { strangers } from "../../../data/words/strangers.ts";
import { units } from "../../../data/words/units.ts";
import type { Lexicon } from "../found/lexicon.ts";

export interface Vocabulary {
  /** Right as it stands, or a form of a word that is: "tasted", "timers". */
  knows(word: string): boolean;
  /** Words of the trade and of the calculators' examples: what typos are mended toward first. */
  trade(): readonly string[];
  /** A word that names a thing of the trade. */
  named(word: string): boolean;
  /** Words of talk, second. */
  talk(): readonly string[];
  /** Number words and days, long ones only and by one slip only. */
  exact(): readonly string[];
}

const numberTables = [smallNumbers, tens, magnitudes, partWords];
const tables = [
  ...numberTables,
  factorWords,
  groupWords,
  ordinals,
  weekdays,
  months,
  dayWords,
  dayParts,
  shortSlips,
];
const english = `${plainEnglish}${lookAlikes}`.replaceAll("\n", " ");

/** Everything but the lexicon's own words is made when it is first needed: most sentences are spelt right. */
export function vocabulary(lexicon: Lexicon, ownWords: () => Iterable<string>): Vocabulary {
  const own = once(() => new Set([...lexicon.words(), ...ownWords()]));
  const small = new Set<string>([...functionWords, ...everyday]);
  const unitWords = once(
    () =>
      new Set(
        units.flatMap((row) => [...row.words, ...(row.risky ?? [])]).flatMap((word) => word.split(" ")),
      ),
  );
  const memo = new Map<string, boolean>();

  const listed = (word: string): boolean =>
    lexicon.get(word) !== undefined ||
    small.has(word) ||
    tables.some((table) => Object.hasOwn(table, word)) ||
    unitWords().has(word) ||
    english.includes(` ${word} `) ||
    strangers.has(word) ||
    own().has(word);

  const knows = (word: string): boolean => {
    const known = memo.get(word);
    if (known !== undefined) return known;
    if (memo.size > 5000) memo.clear();
    const right = listed(word) || formsOf(word).some((form) => form.length > 3 && listed(form));
    memo.set(word, right);
    return right;
  };

  // numbers and days are mended by `exact` alone
  const strict = (word: string) => [...numberTables, weekdays].some((table) => Object.hasOwn(table, word));
  const mendable = (word: string) => word.length >= 4 && !unitWords().has(word) && !strict(word);
  return {
    knows,
    named: (word) => lexicon.get(word) !== undefined,
    trade: once(() => [...own()].filter(mendable)),
    talk: once(() => [...small].filter((word) => mendable(word) && !own().has(word))),
    exact: once(() => [
      ...numberTables.flatMap((table) => Object.keys(table)).filter((word) => word.length >= 5),
      ...Object.keys(weekdays).slice(0, 7),
      ...["tomorrow", "yesterday", "morning", "afternoon", "evening"],
    ]),
  };
}

/** What a word may be a form of. */
function formsOf(word: string): string[] {
  const root = porter.stem(word);
  return [root, `${root}e`, root.replace(/i$/, "y"), word.replace(/(es|s|ed|ing|er|ly)$/, "")];
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
