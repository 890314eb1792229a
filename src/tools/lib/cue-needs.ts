/** What a sentence has to hold for a cue to have a chance, read off the cue's pattern. */

import { functionWords } from "../../../data/words/everyday.ts";
import { alternatives, closing } from "./cue-groups.ts";

/**
 * What a sentence has to contain for the pattern to have a chance: for each part of the pattern a list, one of which
 * must be there, as the beginning of a word, of a facet or of its value, or as a whole word where a space stands behind
 * it. Parts that may be missing, that say anything goes or that stand inside a word ask for nothing.
 */
export const needed = (pattern: string): string[][] => {
  const whole = pattern.trimEnd();
  const any = anyOf(alternatives(whole), { begins: true, ends: true });
  return alternatives(whole).length > 1
    ? any.length > 0
      ? [any]
      : []
    : needs(whole, { begins: true, ends: true });
};

/** Whether a word begins where a piece of a pattern begins, and one ends where it ends. */
interface Edges {
  begins: boolean;
  ends: boolean;
}

function needs(pattern: string, { begins: open, ends }: Edges): string[][] {
  const all: string[][] = [];
  let begins = open;
  for (let i = 0; i < pattern.length; ) {
    const part = partAt(pattern, i, { begins, ends });
    counted.lastIndex = part.next;
    const times = counted.exec(pattern)?.[0] ?? "";
    const loose = times !== "";
    if (part.needs?.length && !loose) all.push(part.needs);
    // behind "(?:the )?" a word begins where one began before it
    if (loose) {
      begins &&= part.begins;
      i = part.next + times.length;
    } else {
      begins = part.begins;
      i = part.next;
    }
  }
  return all;
}

/** What is behind a part that may be missing: "?", "*", "{0,3}". */
const counted = /[?*]|\{0,\d*\}/y;

interface Part {
  needs?: string[];
  next: number;
  /** A word begins behind it. */
  begins: boolean;
}

/** The part of a pattern that starts at `i`: a facet, a group, a word, or a sign that needs nothing. */
function partAt(pattern: string, i: number, { begins: open, ends }: Edges): Part {
  const letter = pattern[i] ?? "";
  if (letter === "\\") return { next: i + 2, begins: false };
  if (letter === "{" && /[a-z]/.test(pattern[i + 1] ?? "")) {
    const end = pattern.indexOf("}", i);
    return { needs: facetNeeds(pattern.slice(i + 1, end)), next: end + 1, begins: false };
  }
  if (letter === "(") {
    const end = closing(pattern, i);
    const body = pattern.slice(i + 1, end);
    const edges = { begins: open, ends: wordEnds(pattern, end + 1, ends) };
    // what only looks ahead or behind is no part of the text: a word begins behind it where one began before
    return { needs: groupNeeds(body, edges), next: end + 1, begins: looks.test(body) ? open : spaced(body) };
  }
  letters.lastIndex = i;
  const word = letters.exec(pattern)?.[0];
  if (!word) return { next: i + 1, begins: letter === "^" ? open : " <,".includes(letter) };
  // of "outs?" only "out" is sure
  const sure = /[?*]/.test(pattern[i + word.length] ?? "") ? word.slice(0, -1) : word;
  const next = i + word.length + (sure === word ? 0 : 1);
  const whole = sure === word && wordEnds(pattern, next, ends) ? `${word} ` : sure;
  return { needs: open && whole.length > 1 ? [whole] : [], next, begins: false };
}

/** A space stands at `i` of the pattern, or nothing more: also behind a group that begins with a space and may be missing. */
function wordEnds(pattern: string, i: number, ends: boolean): boolean {
  if (i >= pattern.length) return ends;
  // of "back ?up" the space may be missing
  if (" $".includes(pattern[i] ?? "")) return !/^(?:[?*]|\{\d)/.test(pattern.slice(i + 1, i + 3));
  if (!pattern.startsWith("(?: ", i)) return false;
  const end = closing(pattern, i);
  if (!alternatives(pattern.slice(i + 3, end)).every((each) => each.startsWith(" "))) return false;
  return !/[?*]/.test(pattern[end + 1] ?? "") || wordEnds(pattern, end + 2, ends);
}

const letters = /[a-z_]+/y;

const spaced = (body: string) => alternatives(body).every((each) => each.endsWith(" "));

const looks = /^\?[!=<]/;

const groupNeeds = (body: string, edges: Edges): string[] =>
  looks.test(body) ? [] : anyOf(alternatives(body.replace(/^\?:/, "")), edges);

/** One of these has to be there for one of the alternatives to fit. */
function anyOf(of: readonly string[], edges: Edges): string[] {
  const each = of.map((alternative) => rarest(needs(alternative, edges)));
  return each.some((any) => any.length === 0) ? [] : [...new Set(each.flat())];
}

/** Of several lists the one that is seldom there by chance: long words are, and one short one spoils a list. */
export const rarest = (lists: readonly string[][]): string[] =>
  [...lists].sort((a, b) => rarity(b) - rarity(a))[0] ?? [];

const rarity = (any: readonly string[]) => Math.min(...any.map(tells)) - any.length / 8;

/** They are in most sentences, however long they are. */
const small: ReadonlySet<string> = new Set([
  ...functionWords,
  ..."the an of for to in on at up one ones my it is and or you we with how much number".split(" "),
]);

const tells = (word: string) => (small.has(word.trim()) ? 1 : word.length);

function facetNeeds(facet: string): string[] {
  const [name = "", value] = facet.replaceAll(" ", "_").split("=");
  const values = value?.replace(/^\((.*)\)$/, "$1");
  if (values === undefined || /[\\+*?.]/.test(values)) return [name];
  return values.split("|").map((each) => (/^[a-z_]+$/.test(each) ? `${name}=${each}` : name));
}
