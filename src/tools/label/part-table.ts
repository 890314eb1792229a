/** Every word that says what is in a thing, of the tables of allergens, ingredients, mixes and tastes. */
import { allergens, mixAllergens, tasteAllergens } from "../../../data/rules/allergens.ts";
import { preparedAllergens } from "../../../data/rules/prepared-allergens.ts";
import { tastes } from "../../../data/words/flavors.ts";
import { ingredients } from "../../../data/words/ingredients.ts";
import { bases } from "../../../data/words/things.ts";

export interface Part {
  words: string;
  /** The row of its table, whatever word of it was said: "egg whites" are whites. */
  row: string;
  sure: readonly string[];
  unsure?: string | undefined;
  taste?: string | undefined;
  /** It is that and nothing else: "pine nuts". */
  isPlain?: true;
}

/** Shorter ones are abbreviations, which a name of several words doesn't hold: "ps", "ew". */
const leastWord = 3;
let table: Map<string, Part> | undefined;

/** Every word of the tables and what it brings; the first that claims a word keeps it, the surest tables first. */
function partTable(): Map<string, Part> {
  if (table) return table;
  const map = new Map<string, Part>();
  const add = (part: Part) => {
    const key = part.words.toLowerCase();
    if (key.length >= leastWord && !map.has(key)) map.set(key, part);
  };
  for (const row of preparedAllergens)
    for (const words of row.words)
      add({ words, row: row.words[0] ?? words, sure: row.brings, unsure: row.unsure });
  for (const { base, brings } of mixAllergens) {
    const words = base === "shells" ? shellWords : (bases.find(({ id }) => id === base)?.words ?? []);
    for (const each of [base, ...words])
      add({ words: each, row: base, sure: brings.map(({ allergen }) => allergen) });
  }
  for (const row of ingredients)
    for (const words of [row.name, ...row.words])
      add({ words, row: row.name, sure: row.allergens, unsure: row.unsure });
  for (const { taste, words = [], nut } of tastes) {
    const own = tasteAllergens.find((row) => row.taste === taste);
    const sure = own?.brings ?? (nut && nut !== "unknown" ? [nut] : []);
    const unsure = own?.unsure ?? (nut === "unknown" ? "which nuts it is made of" : undefined);
    for (const each of [taste, ...words]) add({ words: each, row: taste, sure, unsure, taste });
  }
  for (const { id, words = [] } of allergens)
    for (const each of [id, ...words]) add({ words: each, row: id, sure: [id], isPlain: true });
  table = map;
  return map;
}

const shellWords = ["shell", "macaron shells", "macaron", "macarons"];

/** A word of the table, with or without an ending: "pistachios", "peaches", "pastries". */
export function partOf(words: string): Part | undefined {
  const map = partTable();
  const forms = [words, words.replace(/s$/, ""), words.replace(/es$/, ""), words.replace(/ies$/, "y")];
  return forms.map((each) => map.get(each)).find(Boolean);
}

/** A word of the allergens' tables, or one within a name of them ("egg nog"): no typo, whatever stands near it. */
export const isTableWord = (word: string): boolean =>
  partOf(word) !== undefined || [...partTable().keys()].some((each) => ` ${each} `.includes(` ${word} `));
