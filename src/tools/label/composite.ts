/** Things of several parts that no table knows whole: "peanut buttercream" is peanut, and what a buttercream is made of. */
import { allergens, mixAllergens, preparedAllergens, tasteAllergens } from "../../../data/rules/allergens.ts";
import { tastes } from "../../../data/words/flavors.ts";
import { ingredients } from "../../../data/words/ingredients.ts";
import { bases } from "../../../data/words/things.ts";

interface Part {
  words: string;
  sure: readonly string[];
  unsure?: string | undefined;
  taste?: string | undefined;
  /** It is that and nothing else: "pine nuts". */
  isPlain?: true;
}

/** Shorter ones are abbreviations, which a name of several words doesn't hold: "ps", "ew". */
const leastWord = 3;
/** The most words that a row of the tables has: "caramelised white chocolate", "italian meringue buttercream". */
const mostWords = 4;

/** What is made of a plant in front of these is no dairy: "hazelnut butter", "oat milk". */
const likeDairy = ["butter", "milk"];
const plants = /^(?:almond|hazelnut|pistachio|walnut|pecan|macadamia|cashew|peanut|coconut|oat|soya?|rice)$/;

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
    for (const words of row.words) add({ words, sure: row.brings, unsure: row.unsure });
  for (const { base, brings } of mixAllergens) {
    const words = base === "shells" ? shellWords : (bases.find(({ id }) => id === base)?.words ?? []);
    for (const each of [base, ...words]) add({ words: each, sure: brings.map(({ allergen }) => allergen) });
  }
  for (const row of ingredients)
    for (const words of [row.name, ...row.words]) add({ words, sure: row.allergens, unsure: row.unsure });
  for (const { taste, words = [], nut } of tastes) {
    const own = tasteAllergens.find((row) => row.taste === taste);
    const sure = own?.brings ?? (nut && nut !== "unknown" ? [nut] : []);
    const unsure = own?.unsure ?? (nut === "unknown" ? "which nuts it is made of" : undefined);
    for (const each of [taste, ...words]) add({ words: each, sure, unsure, taste });
  }
  for (const { id, words = [] } of allergens)
    for (const each of [id, ...words]) add({ words: each, sure: [id], isPlain: true });
  table = map;
  return map;
}

const shellWords = ["shell", "macaron shells", "macaron", "macarons"];

/** "pistachios", "cherries": a word of the table with an ending. */
function partOf(words: string): Part | undefined {
  const map = partTable();
  return map.get(words) ?? map.get(words.replace(/e?s$/, "")) ?? map.get(words.replace(/s$/, ""));
}

/** A name that is one word of the tables from end to end. */
export const isPlainly = (name: string): boolean => partOf(name.toLowerCase())?.isPlain === true;

/** The parts of a name, the longest first where words belong to several: "cream cheese" is no cream. */
export function partsWithin(name: string): Part[] {
  const words = name.toLowerCase().match(/[\p{L}]+/gu) ?? [];
  const out: Part[] = [];
  let at = 0;
  while (at < words.length) {
    const long = [...Array(mostWords).keys()]
      .map((less) => mostWords - less)
      .find((many) => at + many <= words.length && partOf(words.slice(at, at + many).join(" ")));
    if (!long) {
      at += 1;
      continue;
    }
    const said = words.slice(at, at + long).join(" ");
    const part = partOf(said);
    const isPlant = long === 1 && likeDairy.includes(said) && plants.test(words[at - 1] ?? "");
    if (part && !isPlant) out.push(part);
    at += long;
  }
  return out;
}
