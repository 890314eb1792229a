/** Slips of fingers on a keyboard, by chance but always the same: for laws and benchmarks of mended typing. */

import type { Chance } from "./chance.ts";

/** Keys that touch, on the usual English keyboard. */
const beside: Readonly<Record<string, string>> = {
  q: "wa",
  w: "qesa",
  e: "wrds",
  r: "etfd",
  t: "rygf",
  y: "tuhg",
  u: "yijh",
  i: "uokj",
  o: "iplk",
  p: "ol",
  a: "qwsz",
  s: "awedxz",
  d: "serfcx",
  f: "drtgvc",
  g: "ftyhbv",
  h: "gyujnb",
  j: "huikmn",
  k: "jiolm",
  l: "kop",
  z: "asx",
  x: "zsdc",
  c: "xdfv",
  v: "cfgb",
  b: "vghn",
  n: "bhjm",
  m: "njk",
};

/** A word with one slip: two letters swapped, another key, a letter left out or twice; all vowels of a longer one. */
export function slipped(word: string, next: Chance): string {
  for (let tries = 0; tries < 20; tries++) {
    const at = Math.floor(next() * word.length);
    const kind = next();
    const keys = beside[word[at] ?? ""] ?? "";
    const typed =
      kind < 0.32
        ? word.slice(0, at) + (word[at + 1] ?? "") + word[at] + word.slice(at + 2)
        : kind < 0.55
          ? word.slice(0, at) + (keys[Math.floor(next() * keys.length)] ?? word[at]) + word.slice(at + 1)
          : kind < 0.82
            ? word.slice(0, at) + word.slice(at + 1)
            : kind < 0.92
              ? word.slice(0, at + 1) + word.slice(at)
              : word.length > 4
                ? word[0] + word.slice(1).replace(/[aeiou]/g, "")
                : word;
    if (typed !== word && typed.length > 1) return typed;
  }
  return word;
}

/** Left as they are: what one slip makes of them is a unit, an hour or nothing at all. */
const short = new Set("a the and am pm min mins tsp tbsp".split(" "));

/** The words of a sentence that a finger may slip in: of three letters on, and no part of a name or number. */
export const wordsToSlip = (say: string): { word: string; at: number }[] =>
  [...say.matchAll(/(?<![\w'’.:-])[a-z]{3,}(?![\w'’.:-])/gi)]
    .map((match) => ({ word: match[0], at: match.index }))
    .filter(({ word }) => !short.has(word.toLowerCase()));

/** A sentence with one of its words typed otherwise. */
export const withSlip = (say: string, { word, at }: { word: string; at: number }, typed: string): string =>
  say.slice(0, at) + typed + say.slice(at + word.length);
