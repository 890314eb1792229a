/** Compiles the word tables of data/words into one index of phrases. Nothing here knows a word of its own. */
import { forms, readyFlavors, tastes } from "../../data/words/flavors.ts";
import { ingredients } from "../../data/words/ingredients.ts";
import { symptoms } from "../../data/words/symptoms.ts";
import { bases, chocolates, colors, counts, manners, steps, uses } from "../../data/words/things.ts";
import { units } from "../../data/words/units.ts";
import type { Thing } from "../tools/contract/index.ts";
import { normalise } from "./normalise.ts";
import { tokenise } from "./tokens.ts";

/** What a phrase can mean: the facets of a thing, without its place in a sentence. `form` waits for its taste. */
export type Facets = Omit<Thing, "text" | "at"> & { form?: string };

export interface Phrase {
  words: string[];
  facets: Facets;
}

/** Phrases by their first word, the longest first. */
export type Lexicon = ReadonlyMap<string, Phrase[]>;

export const wordsOf = (phrase: string): string[] =>
  // nearly all phrases are plain already, and there are thousands
  /^[a-z]+(?: [a-z]+)*$/.test(phrase)
    ? phrase.split(" ")
    : tokenise(normalise(phrase))
        .filter((token) => token.kind !== "sign" || token.text === "%" || token.text === "°")
        .map((token) => token.text);

const ingredientNames = new Set(ingredients.map((row) => row.name));

/** Singular and plural of a phrase's last word, so that a table row needs only one of them. */
function numbers(words: string[]): string[][] {
  const last = words.at(-1) ?? "";
  if (last.length < 4) return [words];
  const other = last.endsWith("ies")
    ? `${last.slice(0, -3)}y`
    : last.endsWith("s") && !last.endsWith("ss")
      ? last.slice(0, -1)
      : /[^aeiou]y$/.test(last)
        ? `${last.slice(0, -1)}ies`
        : `${last}s`;
  return [words, [...words.slice(0, -1), other]];
}

function* rows(): Generator<[phrase: string, facets: Facets, inflect: boolean]> {
  for (const row of ingredients)
    for (const word of [row.name, ...row.words])
      yield [word, { id: row.name, ingredient: row.name }, row.name !== "whites"];
  for (const row of bases) for (const word of row.words) yield [word, { id: row.id, base: row.id }, true];
  for (const row of chocolates)
    for (const word of row.words)
      yield [word, { id: row.id, chocolate: row.id, ingredient: `${row.id} chocolate` }, false];
  for (const row of uses) for (const word of row.words) yield [word, { id: row.id, use: row.id }, false];
  for (const row of counts) for (const word of row.words) yield [word, { id: row.id, count: row.id }, false];
  for (const row of steps) for (const word of row.words) yield [word, { id: row.id, step: row.id }, false];
  for (const row of symptoms)
    for (const word of row.words) yield [word, { id: row.id, symptom: row.id }, false];
  for (const row of manners)
    for (const word of row.words) yield [word, { id: row.id, manner: row.id }, false];
  for (const word of colors) yield [word, { id: word, color: word }, false];
  for (const row of tastes)
    for (const word of [row.taste, ...(row.words ?? [])])
      yield [word, { id: row.taste, taste: row.taste }, true];
  for (const row of forms) for (const word of row.words) yield [word, { id: row.form, form: row.form }, true];
  for (const row of readyFlavors)
    for (const word of row.words)
      yield [word, { id: row.id, taste: row.taste, dose: row.dose, ...(ingredientNames.has(row.id) ? { ingredient: row.id } : {}) }, true];
  for (const word of [
    "of the rest",
    "rest is",
    "rest stays",
    "rest goes",
    "rest plain",
    "rest left",
    "rest as",
    "rest stay",
    "the rest stays",
    "the rest goes",
    "the rest left",
    "the rest in",
    "the rest for",
    "the rest as",
    "the rest stay",
    "the rest gets",
    "the rest can",
    "the rest should",
    "rest should",
    "rest gets",
    "the rest be",
    "rest white",
    "the rest of the",
    "and the rest",
    "the rest is",
    "the rest plain",
    "everything else",
    "the others",
    "all the rest",
    "rest of the recipe",
    "rest of it",
    "the rest to",
  ])
    yield [word, { id: "remainder" }, false];
}

/** The index over all tables. One phrase in two tables keeps both meanings: "salt" is an ingredient and a dose. */
export function compile(): Lexicon {
  const byKey = new Map<string, Phrase>();
  for (const [phrase, facets, inflect] of rows()) {
    const spelt = wordsOf(phrase);
    for (const words of inflect ? numbers(spelt) : [spelt]) {
      const key = words.join(" ");
      const known = byKey.get(key);
      if (!known) byKey.set(key, { words, facets: { ...facets } });
      else for (const [name, value] of Object.entries(facets)) merge(known.facets, name, value);
    }
  }
  const lexicon = new Map<string, Phrase[]>();
  for (const phrase of byKey.values()) {
    const first = phrase.words[0] ?? "";
    const list = lexicon.get(first);
    if (list) list.push(phrase);
    else lexicon.set(first, [phrase]);
  }
  for (const list of lexicon.values()) list.sort((a, b) => b.words.length - a.words.length);
  return lexicon;
}

/** The first table wins a facet; symptoms gather, since "split" is a ganache's, a buttercream's or a shell's. */
function merge(facets: Facets, name: string, value: string): void {
  const all = facets as unknown as Record<string, string | undefined>;
  if (name === "symptom" && all[name] && !all[name].split("|").includes(value)) all[name] += `|${value}`;
  else all[name] ??= value;
}

/** Every unit word as its tokens, longest first by first token: "fl oz" before "fl". */
export function unitIndex(): Map<string, { words: string[]; unit: string; risky: boolean }[]> {
  const index = new Map<string, { words: string[]; unit: string; risky: boolean }[]>();
  for (const row of units)
    for (const [word, risky] of [
      ...row.words.map((w) => [w, false] as const),
      ...(row.risky ?? []).map((w) => [w, true] as const),
    ]) {
      const words = /^[a-z]+$/.test(word) ? [word] : tokenise(normalise(word)).map((token) => token.text);
      const first = words[0] ?? "";
      const list = index.get(first);
      if (list) list.push({ words, unit: row.unit, risky });
      else index.set(first, [{ words, unit: row.unit, risky }]);
    }
  for (const list of index.values())
    list.sort((a, b) => b.words.length - a.words.length || Number(a.risky) - Number(b.risky));
  return index;
}
