/** Typos in words, mended toward words that are known. Numbers and units are never touched. */
import porter from "natural/lib/natural/stemmers/porter_stemmer.js";
import distance from "natural/lib/natural/distance/levenshtein_distance.js";
import { plainEnglish } from "../../data/words/plain-english.ts";
import { months, weekdays, dayWords, dayParts } from "../../data/words/calendar.ts";
import { everyday } from "../../data/words/everyday.ts";
import { factorWords, groupWords, magnitudes, ordinals, partWords, smallNumbers, tens } from "../../data/words/numbers.ts";
import { units } from "../../data/words/units.ts";
import type { Lexicon } from "./lexicon.ts";
import type { Token } from "./tokens.ts";

export interface Mender {
  /** The word as it should have been, two words where a space was forgotten, or undefined when it is right or hopeless. */
  mend(word: string): string[] | undefined;
  knows(word: string): boolean;
}

/** Small words that carry a question's sense, so that a slip in them is mended too. */
const functionWords =
  "about above actually after again almost along already also another anything around because been before being below between both could does doing done down each either enough even every everything exactly first from going have having hello here instead into just know last leave left less like made make many maybe mean might more most much must need needs never next nothing only other over please quite rather really right same should since some something still such take tell than that their them then there these they thing think this those though through together under until want wants well were what whatever when where which while will with within without would your excellent difference different remember change amount".split(
    " ",
  );

/** Slips too short for edit distance. */
const shortSlips: Readonly<Record<string, string>> = { teh: "the", hte: "the", adn: "and", nad: "and", hw: "how", hwo: "how", waht: "what", wat: "what", taht: "that", mcuh: "much", fo: "of", si: "is", iwth: "with", cna: "can", ot: "to", yuo: "you", nto: "not", ahve: "have", thru: "through", u: "you", r: "are", hav: "have", wuld: "would", shud: "should", cud: "could", dat: "that", wiht: "with", gonig: "going", mych: "much", muhc: "much", ned: "need", mke: "make", mak: "make", giv: "give", tel: "tell", fr: "for", abt: "about" };

const plainVowels = /[aeiouy]/g;

/** Builds a mender over the lexicon's words, the calculators' own words, and everyday English. */
export function mender(lexicon: Lexicon, ownWords: Iterable<string>): Mender {
  const trade = new Set<string>();
  for (const phrases of lexicon.values()) for (const { words } of phrases) for (const word of words) if (word.length > 1) trade.add(word);
  for (const word of ownWords) trade.add(word);
  const numberWords = [...Object.keys(smallNumbers), ...Object.keys(tens), ...Object.keys(magnitudes), ...Object.keys(partWords)];
  const known = new Set<string>([
    ...trade,
    ...plainEnglish,
    ...everyday,
    ...numberWords,
    ...[weekdays, months, dayWords, dayParts, ordinals, factorWords, groupWords].flatMap((table) => Object.keys(table)),
    ...units.flatMap((row) => [...row.words, ...(row.risky ?? [])]).flatMap((word) => word.split(" ")),
  ]);
  const unitWords = new Set(units.flatMap((row) => row.words).flatMap((word) => word.split(" ")));
  // Misspellings that the tables list are matched as they stand; nothing is mended toward them.
  const targets = [...trade].filter((word) => word.length >= 4 && !unitWords.has(word));
  const talkTargets = [...everyday, ...functionWords].filter((word) => word.length >= 4 && !unitWords.has(word) && !trade.has(word));
  const slowTargets = [...numberWords.filter((word) => word.length >= 5), ...Object.keys(weekdays).slice(0, 7), "tomorrow", "yesterday", "morning", "afternoon", "evening"];
  const byLength = new Map<number, string[]>();
  for (const word of targets) byLength.set(word.length, [...(byLength.get(word.length) ?? []), word]);
  const bones = new Map<string, string>();
  for (const word of targets) if (word.replace(plainVowels, "").length >= 4) bones.set(word[0] + skeleton(word), word);
  const memo = new Map<string, string[] | undefined>();

  const nearest = (word: string): string | undefined => {
    const allowed = word.length >= 7 ? 2 : 1;
    let best: { word: string; cost: number } | undefined;
    let tied = false;
    const consider = (target: string, most: number, extra = 0) => {
      if (lettersApart(word, target) > 2 * most) return;
      const steps = distance.DamerauLevenshteinDistance(word, target, { restricted: true }) as number;
      if (steps > most) return;
      const doubled = word.replace(/(.)\1/g, "$1") === target.replace(/(.)\1/g, "$1");
      const cost = (doubled ? 0.4 : steps) + extra + (word[0] === target[0] ? 0 : 0.6) + (word.at(-1) === target.at(-1) ? 0 : 0.2) + (target.length < word.length ? 0.05 : 0);
      if (!best || cost < best.cost - 1e-9) {
        best = { word: target, cost };
        tied = false;
      } else if (Math.abs(cost - best.cost) < 1e-9 && target !== best.word) tied = true;
    };
    for (let length = word.length - allowed; length <= word.length + allowed; length++)
      for (const target of byLength.get(length) ?? []) consider(target, Math.min(allowed, target.length >= 7 ? 2 : 1));
    for (const target of talkTargets) if (Math.abs(target.length - word.length) <= 1) consider(target, word.length >= 8 ? 2 : 1, 0.3);
    for (const target of slowTargets) if (Math.abs(target.length - word.length) <= 1) consider(target, 1);
    if (best && !(tied && best.cost > 1.3)) return best.word;
    return word.length >= 4 ? bones.get(word[0] + skeleton(word)) : undefined;
  };

  const split = (word: string): string[] | undefined => {
    for (let cut = word.length - 3; cut >= 3; cut--) {
      const pair = [word.slice(0, cut), word.slice(cut)] as [string, string];
      if (pair.every((part) => trade.has(part))) return pair;
    }
    return undefined;
  };

  /** Right as it stands, or a form of a word that is: "tasted", "timers". */
  const right = (word: string) => {
    if (known.has(word)) return true;
    const root = porter.stem(word);
    return [root, `${root}e`, root.replace(/i$/, "y"), word.replace(/(es|s|ed|ing|er|ly)$/, "")].some((form) => form.length > 3 && known.has(form));
  };

  return {
    knows: (word) => right(word) || word in shortSlips,
    mend(word) {
      const slip = shortSlips[word];
      if (slip) return [slip];
      if (word.length < 4 || right(word)) return undefined;
      if (memo.has(word)) return memo.get(word);
      const near = nearest(word);
      const found = near ? [near] : split(word);
      if (memo.size > 5000) memo.clear();
      memo.set(word, found);
      return found;
    },
  };
}

const skeleton = (word: string) => word.slice(1).replace(plainVowels, "").replace(/(.)\1+/g, "$1");

/** How many letters the two words don't share: a cheap floor under twice their edit distance. */
function lettersApart(a: string, b: string): number {
  const counts = new Map<string, number>();
  for (const letter of a) counts.set(letter, (counts.get(letter) ?? 0) + 1);
  for (const letter of b) counts.set(letter, (counts.get(letter) ?? 0) - 1);
  let apart = 0;
  for (const count of counts.values()) apart += Math.abs(count);
  return apart;
}

/** The tokens with their words mended; a forgotten space makes two tokens on the same place. */
export function mendAll(tokens: readonly Token[], { mend }: Mender): { tokens: Token[]; mended: { said: string; read: string }[] } {
  const mended: { said: string; read: string }[] = [];
  const out = tokens.flatMap((token) => {
    const words = token.kind === "word" ? mend(token.text) : undefined;
    if (!words) return [token];
    mended.push({ said: token.text, read: words.join(" ") });
    return words.map((text, at) => ({ ...token, text, gap: at > 0 || token.gap }));
  });
  return { tokens: out, mended };
}
