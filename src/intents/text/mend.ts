/** Typos in words, mended toward words that are known. Numbers and units are never touched. */
import distance from "natural/lib/natural/distance/levenshtein_distance.js";
import { shortSlips } from "../../../data/words/everyday.ts";
import { bonesOf } from "./bones.ts";
import type { Token } from "./tokens.ts";
import type { Vocabulary } from "./vocabulary.ts";

export interface Mender {
  /** The word as it should have been, two words where a space was forgotten, or undefined when it is right or hopeless. */
  mend(word: string): string[] | undefined;
  knows(word: string): boolean;
}

interface Found {
  word: string;
  cost: number;
}

const vowels = /[aeiouy]/g;

/** Builds a mender over a vocabulary. What it costs is paid when the first unknown word comes. */
export function mender(vocabulary: Vocabulary): Mender {
  const memo = new Map<string, string[] | undefined>();
  const fromBones = bonesOf(vocabulary);
  let index: { byLength: Map<number, string[]>; bones: Map<string, string>; trade: Set<string> } | undefined;

  function indexed() {
    if (index) return index;
    index = { byLength: new Map(), bones: new Map(), trade: new Set(vocabulary.trade()) };
    for (const word of index.trade) {
      const list = index.byLength.get(word.length);
      if (list) list.push(word);
      else index.byLength.set(word.length, [word]);
      if (word.replace(vowels, "").length >= 4) index.bones.set(skeleton(word), word);
    }
    return index;
  }

  /** The nearest word: one slip, or two from seven letters on; on a tie of distant words none. */
  function nearest(word: string): string | undefined {
    const { byLength, bones } = indexed();
    const allowed = word.length >= 7 ? 2 : 1;
    let best: Found | undefined;
    let tied = false;
    const consider = (target: string, most: number, extra = 0) => {
      const cost = costOf(word, target, most);
      if (cost === undefined) return;
      if (!best || cost + extra < best.cost - 1e-9) {
        best = { word: target, cost: cost + extra };
        tied = false;
      } else if (Math.abs(cost + extra - best.cost) < 1e-9 && target !== best.word) tied = true;
    };
    for (let length = word.length - allowed; length <= word.length + allowed; length++)
      for (const target of byLength.get(length) ?? [])
        consider(target, Math.min(allowed, target.length >= 7 ? 2 : 1));
    for (const target of vocabulary.talk()) consider(target, word.length >= 8 ? 2 : 1, 0.3);
    for (const target of vocabulary.exact()) consider(target, 1);
    if (best && !(tied && best.cost > 1.3)) return best.word;
    return bones.get(skeleton(word));
  }

  /** "almondflour" as two words of the trade. */
  function split(word: string): string[] | undefined {
    const { trade } = indexed();
    for (let cut = word.length - 3; cut >= 3; cut--) {
      const pair = [word.slice(0, cut), word.slice(cut)];
      if (pair.every((part) => trade.has(part))) return pair;
    }
    return undefined;
  }

  /** "lemnzest": two words of the trade, one of them with a letter missing. */
  function splitNear(word: string): string[] | undefined {
    const { byLength } = indexed();
    const near = (part: string) =>
      (byLength.get(part.length + 1) ?? []).find(
        (target) => vocabulary.named(target) && costOf(part, target, 1) !== undefined,
      );
    for (let cut = word.length - 4; cut >= 4; cut--) {
      const [left, right] = [word.slice(0, cut), word.slice(cut)];
      const first = vocabulary.named(right) && near(left);
      if (first) return [first, right];
      const second = vocabulary.named(left) && near(right);
      if (second) return [left, second];
    }
    return undefined;
  }

  return {
    knows: vocabulary.knows,
    mend(word) {
      const slip = Object.hasOwn(shortSlips, word) ? shortSlips[word] : undefined;
      if (slip) return slip.split(" ");
      if (word.length < 3 || word.length > 40 || vocabulary.knows(word)) return undefined;
      if (memo.has(word)) return memo.get(word);
      const boned = fromBones(word);
      if (boned || word.length < 4) return boned ? [boned] : undefined;
      const near = nearest(word);
      const found = near ? [near] : (split(word) ?? splitNear(word));
      if (memo.size > 5000) memo.clear();
      memo.set(word, found);
      return found;
    },
  };
}

/** Slips between two words, less for a doubled letter, more where the first letter differs; undefined past `most`. */
function costOf(word: string, target: string, most: number): number | undefined {
  if (Math.abs(word.length - target.length) > most || lettersApart(word, target) > 2 * most) return undefined;
  const steps = distance.DamerauLevenshteinDistance(word, target, { restricted: true });
  if (steps > most) return undefined;
  const single = (text: string) => text.replace(/(.)\1+/g, "$1");
  const swapped = word.length === target.length && lettersApart(word, target) === 0;
  const replaced = word.length === target.length && !swapped;
  // four letters leave too little to go by when one of them is another
  if (replaced && word.length < 5) return undefined;
  const slips = single(word) === single(target) ? 0.4 : steps + (replaced ? 0.15 : 0);
  return (
    slips +
    (word[0] === target[0] ? 0 : 0.6) +
    (word.at(-1) === target.at(-1) ? 0 : 0.2) +
    (target.length < word.length ? 0.05 : 0)
  );
}

/** First letter and consonants: what is left of "chocolate" when the vowels are dropped. */
const skeleton = (word: string) =>
  word[0] +
  word
    .slice(1)
    .replace(vowels, "")
    .replace(/(.)\1+/g, "$1");

/** How many letters two words don't share: a cheap floor under twice their edit distance. */
function lettersApart(a: string, b: string): number {
  const counts = new Int8Array(128);
  const tally = (word: string, step: number) => {
    for (let i = 0; i < word.length; i++) {
      const slot = word.charCodeAt(i) & 127;
      counts[slot] = (counts[slot] ?? 0) + step;
    }
  };
  tally(a, 1);
  tally(b, -1);
  let apart = 0;
  for (const count of counts) apart += Math.abs(count);
  return apart;
}

/**
 * "annas batch", "note: bens, pink": whose it is. A short unknown word in "s" in front of a batch or right behind "note:"
 * is somebody's name, and no flavor.
 */
function isOwner(tokens: readonly Token[], at: number): boolean {
  const [two, one, own, next] = [at - 2, at - 1, at, at + 1].map((each) => tokens[each]?.text ?? "");
  return (
    /^[a-z]{3,5}s$/.test(own ?? "") &&
    (/^(?:batch|batches|order|orders|birthday|party|wedding|shower|cake)$/.test(next ?? "") ||
      (two === "note" && one === ":"))
  );
}

/** The tokens with their words mended; a forgotten space makes two tokens on the same place. */
export function mendAll(
  tokens: readonly Token[],
  { mend }: Mender,
): { tokens: Token[]; mended: { said: string; read: string }[] } {
  const mended: { said: string; read: string }[] = [];
  const out = tokens.flatMap((token, at) => {
    const words = token.kind === "word" && !isOwner(tokens, at) ? mend(token.text) : undefined;
    if (!words) return [token];
    mended.push({ said: token.text, read: words.join(" ") });
    return words.map((text, at) => ({ ...token, text, gap: at > 0 || token.gap }));
  });
  return { tokens: out, mended };
}
