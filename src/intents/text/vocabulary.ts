/** Which words are right as they stand, and which ones a typo may be mended toward. */
import porter from "natural/lib/natural/stemmers/porter_stemmer.js";
import { dayParts, dayWords, months, weekdays } from "../../../data/words/calendar.ts";
import { everyday, functionWords, shortSlips, twoLetters } from "../../../data/words/everyday.ts";
import { leftAlone } from "../../../data/words/left-alone.ts";
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
import { formsOf } from "./forms.ts";
import { often as heardOften, heardWords } from "./heard.ts";

export interface Vocabulary {
  /** Right as it stands, or a form of a word that is: "tasted", "timers". */
  knows(word: string): boolean;
  /** Right English, but no word of the trade and none that a baker was heard to say. */
  rare(word: string): boolean;
  /** Right English that names no thing, number or unit, and is none of the small words of talk. */
  plain(word: string): boolean;
  /** Not known, and yet no typo: somebody's name, a rarer word of English. */
  leaves(word: string): boolean;
  /** Words of the trade and of the calculators' examples. */
  trade(): ReadonlySet<string>;
  /** A word that begins the name of a thing of the trade. */
  named(word: string): boolean;
  /** A word that is a whole name of one. */
  names(word: string): boolean;
  /** All that a typo may have been meant for: the trade's words, those of talk, and what bakers were heard to say. */
  targets(): ReadonlySet<string>;
  /** A number, a unit or a day: to be taken for another would make a wrong figure. */
  measures(word: string): boolean;
  /** A number word. */
  counts(word: string): boolean;
  /** Two words for one thing: "flavor" and "flavour", "shell" and "shells". */
  alike(one: string, two: string): boolean;
  /** What takes long to make, for `primeVocabulary`. */
  written(): string;
}

let kept: () => readonly string[] | undefined = () => undefined;

/**
 * Hands over what `written` wrote, read when it is needed: a word that isn't known would else read every calculator and
 * try all that was heard.
 */
export function primeVocabulary(table: () => string | undefined): void {
  kept = once(() => table()?.split("\n"));
}

/** What is heard less often may be a slip itself; what is heard as often is a word of bakers. */
const [least, often] = [3, 4];

const numberTables = [smallNumbers, tens, magnitudes, partWords];
const tables = [...numberTables, factorWords, groupWords, ordinals, weekdays, months, dayWords, dayParts];

const english = once(() => `${plainEnglish()}${lookAlikes()}`.replaceAll("\n", " "));
const alone = once(leftAlone);

/** Everything but the lexicon's own words is made when it is first needed: most sentences are spelt right. */
export function vocabulary(lexicon: Lexicon, ownWords: () => Iterable<string>): Vocabulary {
  const own = once(() => new Set(kept()?.[0]?.split(" ") ?? [...lexicon.words(), ...ownWords()]));
  const small = new Set<string>([...functionWords, ...everyday, ...twoLetters]);
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
    english().includes(` ${word} `) ||
    strangers.has(word) ||
    own().has(word);

  // "thans" is no form of "than", "grmas" none of a misspelt unit
  const stiff = once(() => new Set([...functionWords, ...twoLetters]));
  const inflects = (word: string) => !stiff().has(word) && !unitWords().has(word) && listed(word);
  // "flavring" is no form of "flavr", which is itself a slip that is known
  const isForm = (word: string) =>
    formsOf(word).some(
      (form) => inflects(form) && (word.endsWith("s") || lexicon.get(form) === undefined || isSpelt(form)),
    );
  const isSpelt = (word: string) => small.has(word) || english().includes(` ${word} `);
  const isHeard = (word: string) => heardOften(word) >= least;
  // "tims tray": whose it is
  const leaves = (word: string) =>
    [word, word.replace(/s$/, "")].some((each) => alone().includes(` ${each} `));
  const isSlip = (word: string) => Object.hasOwn(shortSlips, word);
  const knows = (word: string): boolean => {
    const known = memo.get(word);
    if (known !== undefined) return known;
    if (memo.size > 5000) memo.clear();
    const right = listed(word) || isSlip(word) || isForm(word) || (leaves(word) && isHeard(word));
    memo.set(word, right);
    return right;
  };

  const isNumber = (word: string) => numberTables.some((table) => Object.hasOwn(table, word));
  const isDay = (word: string) => [word, word.replace(/s$/, "")].some((day) => Object.hasOwn(weekdays, day));
  const mendable = (word: string) =>
    word.length >= 4 && !unitWords().has(word) && !isNumber(word) && !isDay(word) && !isSlip(word);
  const isPlain = (word: string) =>
    word.length > 2 &&
    !isNumber(word) &&
    !isDay(word) &&
    !unitWords().has(word) &&
    lexicon.get(word) === undefined &&
    !strangers.has(word);
  const trade = once(() => new Set([...own()].filter(mendable)));
  const talk = () => [...small].filter((word) => mendable(word) && !own().has(word));
  const measured = () => [
    ...numberTables.flatMap((table) => Object.keys(table)).filter((word) => word.length >= 5),
    ...Object.keys(weekdays).slice(0, 7),
    ...Object.keys(months).filter((word) => word.length >= 4),
  ];
  // a unit of two letters is near too much
  const isTarget = (word: string) =>
    /^[a-z]{2,}$/.test(word) &&
    (word.length > 2 || !unitWords().has(word)) &&
    !isSlip(word) &&
    (listed(word) || leaves(word) || isForm(word));
  const heard = () => heardWords().filter((word) => isHeard(word) && isTarget(word));
  const targets = once(
    () => new Set(kept()?.[1]?.split(" ") ?? [...trade(), ...talk(), ...measured(), ...heard()]),
  );
  const things = (word: string): string[] =>
    (lexicon.get(word) ?? []).flatMap(({ words, facets: { id, taste = id } }) =>
      words.length === 1 ? [id, taste] : [],
    );
  return {
    knows,
    rare: (word) => isPlain(word) && heardOften(word) < often && !small.has(word) && !own().has(word),
    plain: (word) => isPlain(word) && !small.has(word),
    leaves,
    names: (word) => things(word).length > 0,
    named: (word) => lexicon.get(word) !== undefined,
    trade,
    targets,
    written: () => [own(), targets()].map((words) => [...words].join(" ")).join("\n"),
    counts: isNumber,
    measures: (word) => isNumber(word) || isDay(word) || unitWords().has(word),
    alike: (one, two) =>
      one === two ||
      porter.stem(one) === porter.stem(two) ||
      (unitWords().has(one) && units.some(({ words }) => words.includes(one) && words.includes(two))) ||
      things(one).some((id) => things(two).includes(id)),
  };
}

function once<T>(make: () => T): () => T {
  let made: { value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
