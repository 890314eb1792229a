/** Compiles the word tables of data/words into one index of phrases. Nothing here knows a word of its own. */
import { forms, readyFlavors, tastes } from "../../../data/words/flavors.ts";
import { ingredients } from "../../../data/words/ingredients.ts";
import { symptoms } from "../../../data/words/symptoms.ts";
import {
  bases,
  chocolates,
  colors,
  counts,
  manners,
  remainders,
  steps,
  uses,
} from "../../../data/words/things.ts";
import { units } from "../../../data/words/units.ts";
import type { Thing } from "../../tools/contract/index.ts";
import { normalise } from "../text/normalise.ts";
import { tokenise } from "../text/tokens.ts";

/** What a phrase can mean: the facets of a thing, without its place in a sentence. `form` waits for its taste. */
export type Facets = Omit<Thing, "text" | "at"> & { form?: string };

export interface Phrase {
  words: string[];
  facets: Facets;
}

/** Phrases by their first word, made ready when that word first comes. */
export interface Lexicon {
  /** The phrases that begin with a word, the longest first. */
  get(first: string): readonly Phrase[] | undefined;
  /** Every word of every phrase. */
  words(): Set<string>;
}

const plain = /^[a-z]+(?: [a-z]+)*$/;

export const wordsOf = (phrase: string): string[] =>
  // nearly all phrases are plain already, and there are thousands
  plain.test(phrase)
    ? phrase.split(" ")
    : tokenise(normalise(phrase))
        .filter((token) => token.kind !== "sign" || token.text === "%" || token.text === "°")
        .map((token) => token.text);

const ingredientNames = new Set(ingredients.map((row) => row.name));

/** Trade words whose plural is plain English: "masses" are weights. */
const alone = new Set(["masse"]);

/** Singular and plural of a phrase's last word, so that a table row needs only one of them. */
function inflected(phrase: string): string | undefined {
  const start = phrase.lastIndexOf(" ") + 1;
  const last = phrase.slice(start);
  if (last.length < 3 || alone.has(last)) return undefined;
  const stem = phrase.slice(0, start);
  if (last.endsWith("ies")) return `${stem}${last.slice(0, -3)}y`;
  if (last.endsWith("s") && !last.endsWith("ss")) return `${stem}${last.slice(0, -1)}`;
  return /[^aeiou]y$/.test(last) ? `${stem}${last.slice(0, -1)}ies` : `${stem}${last}s`;
}

const readyFacets = ({ id, taste, dose }: (typeof readyFlavors)[number]): Facets => ({
  id,
  ...(taste ? { taste } : {}),
  dose,
  ...(ingredientNames.has(id) ? { ingredient: id } : {}),
});

/** What else an ingredient that is a flavor too is called: its words stand in one of the two tables only. */
const wordsOfIngredient = (id: string): readonly string[] => {
  const row = ingredients.find(({ name }) => name === id);
  return row ? [row.name, ...row.words] : [];
};

type Take = (phrase: string, facets: Facets, inflects: boolean) => void;

/** Every phrase of every table. The phrases of a row share its facets. */
function eachRow(take: Take): void {
  const give = (words: readonly string[], facets: Facets, inflects: boolean) => {
    for (const word of words) take(word, facets, inflects);
  };
  for (const row of ingredients) {
    const facets = { id: row.name, ingredient: row.name };
    take(row.name, facets, row.name !== "whites");
    give(row.words, facets, row.name !== "whites");
  }
  for (const row of bases) give(row.words, { id: row.id, base: row.id }, true);
  for (const row of chocolates)
    give(row.words, { id: row.id, chocolate: row.id, ingredient: `${row.id} chocolate` }, false);
  for (const row of uses) give(row.words, { id: row.id, use: row.id }, false);
  for (const row of counts) give(row.words, { id: row.id, count: row.id }, false);
  for (const row of steps) give(row.words, { id: row.id, step: row.id }, false);
  for (const row of symptoms) give(row.words, { id: row.id, symptom: row.id }, false);
  for (const row of manners) give(row.words, { id: row.id, manner: row.id }, false);
  for (const word of colors) take(word, { id: word, color: word }, false);
  for (const row of tastes) {
    const facets = { id: row.taste, taste: row.taste };
    take(row.taste, facets, true);
    give(row.words ?? [], facets, true);
  }
  for (const row of forms) give(row.words, { id: row.form, form: row.form }, true);
  for (const row of readyFlavors)
    give([...(row.words ?? []), ...wordsOfIngredient(row.id)], readyFacets(row), true);
  for (const word of remainders) take(word, { id: "remainder" }, false);
}

/** Every phrase with what it can mean, by its first word. Rows share their facets. */
function byFirst(): Map<string, [phrase: string, facets: Facets][]> {
  const all = new Map<string, [phrase: string, facets: Facets][]>();
  const add = (phrase: string, facets: Facets) => {
    const space = phrase.indexOf(" ");
    const first = space < 0 ? phrase : phrase.slice(0, space);
    const list = all.get(first);
    if (list) list.push([phrase, facets]);
    else all.set(first, [[phrase, facets]]);
  };
  eachRow((written, facets, inflects) => {
    const phrase = plain.test(written) ? written : wordsOf(written).join(" ");
    add(phrase, facets);
    const other = inflects ? inflected(phrase) : undefined;
    if (other) add(other, facets);
  });
  return all;
}

/**
 * The index over all tables. One phrase in two tables keeps both meanings: "salt" is an ingredient and a dose.
 * Thousands of phrases are only sorted by their first word here, or at build; a sentence needs few of them.
 */
export function compile(): Lexicon {
  const found = kept ? keptPhrases(kept) : phrasesOf(byFirst());
  const ready = new Map<string, readonly Phrase[]>();
  return {
    get(first) {
      const known = ready.get(first);
      if (known) return known;
      const list = found.get(first);
      if (!list) return undefined;
      const phrases = gather(list);
      ready.set(first, phrases);
      return phrases;
    },
    words: () => new Set(found.all().flatMap((phrase) => phrase.split(" "))),
  };
}

interface Found {
  get(first: string): [phrase: string, facets: Facets][] | undefined;
  all(): string[];
}

const phrasesOf = (map: ReturnType<typeof byFirst>): Found => ({
  get: (first) => map.get(first),
  all: () => [...map.values()].flatMap((list) => list.map(([phrase]) => phrase)),
});

let kept: string | undefined;

/** Hands over what `phraseTable` wrote: sorting the phrases takes longer than understanding a sentence. */
export function primePhrases(table: string): void {
  kept = table;
}

/**
 * The phrases written down: a line a first word, with its phrases and the places of their facets, tabs between; then,
 * behind an empty line, the facets.
 */
export function phraseTable(): string {
  const places = new Map<string, number>();
  const lines = [...byFirst()].map(([first, list]) =>
    [
      first,
      ...list.flatMap(([phrase, facets]) => {
        const text = JSON.stringify(facets);
        if (!places.has(text)) places.set(text, places.size);
        return [phrase, String(places.get(text))];
      }),
    ].join("\t"),
  );
  return `\n${lines.join("\n")}\n\n${[...places.keys()].join("\n")}`;
}

/** Phrases looked up in the written table, one first word at a time. */
function keptPhrases(table: string): Found {
  const end = table.indexOf("\n\n");
  let facets: string[] | undefined;
  return {
    get(first) {
      const start = table.indexOf(`\n${first}\t`);
      if (start < 0 || start >= end) return undefined;
      facets ??= table.slice(end + 2).split("\n");
      const cells = table.slice(start + 1, table.indexOf("\n", start + 1)).split("\t");
      const list: [string, Facets][] = [];
      for (let at = 1; at < cells.length; at += 2)
        list.push([cells[at] ?? "", JSON.parse(facets[Number(cells[at + 1])] ?? "{}") as Facets]);
      return list;
    },
    all: () =>
      table
        .slice(1, end)
        .split("\n")
        .flatMap((line) => line.split("\t").filter((_, at) => at % 2 === 1)),
  };
}

/** Phrases of one first word, those spelt alike made one. */
function gather(found: readonly [phrase: string, facets: Facets][]): Phrase[] {
  const byKey = new Map<string, Phrase>();
  for (const [phrase, facets] of found) {
    const known = byKey.get(phrase);
    if (!known) byKey.set(phrase, { words: phrase.split(" "), facets: { ...facets } });
    else for (const [name, value] of Object.entries(facets)) merge(known.facets, name, value);
  }
  return [...byKey.values()].sort((a, b) => b.words.length - a.words.length);
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
      const words = /^[a-z ]+$/.test(word) ? word.split(" ") : tokenise(word).map(({ text }) => text);
      const first = words[0] ?? "";
      const list = index.get(first);
      if (list) list.push({ words, unit: row.unit, risky });
      else index.set(first, [{ words, unit: row.unit, risky }]);
    }
  for (const list of index.values())
    list.sort((a, b) => b.words.length - a.words.length || Number(a.risky) - Number(b.risky));
  return index;
}
