/** Things of several parts that no table knows whole: "peanut buttercream" is peanut, and what a buttercream is made of. */
import { allergens } from "../../../data/rules/allergens.ts";
import type { Span } from "../contract/index.ts";
import { type Part, partOf } from "./part-table.ts";

/** The most words that a row of the tables has: "caramelised white chocolate", "italian meringue buttercream". */
const mostWords = 4;

/** A plant in front of these makes them of itself: "hazelnut butter" and "oat milk" are no dairy, "pecan flour" no wheat. */
const madeOfPlants = ["butter", "milk", "flour", "meal"];
/** Classes of either law that are plants; what stands beside them is none of their allergens and a plant all the same. */
const plantClasses = ["nuts", "tree nuts", "peanuts", "sesame", "soybeans", "oats", "lupin"];
const otherPlants = ["nut", "seed", "bean", "coconut", "rice", "hemp", "sunflower", "chestnut", "oat"];

let plantWords: Set<string> | undefined;

/** The last word of each plant's names: "brazil nut butter" is no butter. */
function isPlant(word: string): boolean {
  plantWords ??= new Set([
    ...otherPlants,
    ...allergens
      .filter(({ id, usClass = "", euClass = "" }) =>
        [id, usClass, euClass].some((each) => plantClasses.includes(each)),
      )
      .flatMap(({ id, words = [] }) => [id, ...words])
      .map((each) => each.toLowerCase().split(" ").at(-1) ?? each),
  ]);
  return plantWords.has(word) || plantWords.has(word.replace(/s$/, ""));
}

/** A name that is one word of the tables from end to end. */
export const isPlainly = (name: string): boolean => partOf(name.toLowerCase())?.isPlain === true;

/** A word or words of the tables as they stand in a text. */
export interface PartAt extends Part {
  at: Span;
}

/** "cashew butter" is cashew to its end; a plant that is no allergen leaves open what else is in it. */
function ofThePlant(before: PartAt[], plant: Span, end: Span): PartAt {
  const own = before.at(-1)?.at[1] === plant[1] ? before.pop() : undefined;
  const open = { words: "", row: "", sure: [], unsure: "what else it is made of" };
  return { ...(own ?? open), at: [own?.at[0] ?? plant[0], end[1]] };
}

/**
 * Every part in a text and where it stands, the longest first where words belong to several: "cream cheese" is no
 * cream. Words with a sign between them are no one name: "soy, milk".
 */
export function partsAt(text: string): PartAt[] {
  const words = [...text.toLowerCase().matchAll(/[\p{L}]+/gu)].map((hit) => ({
    word: hit[0],
    at: [hit.index, hit.index + hit[0].length] as Span,
  }));
  const joined = (first: number, many: number): string | undefined => {
    const [start, end] = [words[first], words[first + many - 1]];
    if (!start || !end) return undefined;
    const said = text.toLowerCase().slice(start.at[0], end.at[1]).replace(/[-'’]/g, " ").replace(/ +/g, " ");
    return /^[\p{L} ]+$/u.test(said) ? said : undefined;
  };
  const out: PartAt[] = [];
  let at = 0;
  while (at < words.length) {
    const part = [...Array(mostWords).keys()]
      .map((less) => mostWords - less)
      .map((many) => ({ many, part: partOf(joined(at, many) ?? "") }))
      .find((each) => each.part);
    const [start, end] = [words[at], words[at + (part?.many ?? 1) - 1]];
    const before = joined(at - 1, 2) === undefined ? "" : (words[at - 1]?.word ?? "");
    const ofPlant = part?.many === 1 && madeOfPlants.includes(start?.word ?? "") && isPlant(before);
    if (part?.part && start && end)
      out.push(
        ofPlant
          ? ofThePlant(out, words[at - 1]?.at ?? start.at, end.at)
          : { ...part.part, at: [start.at[0], end.at[1]] },
      );
    at += part?.many ?? 1;
  }
  return out;
}

/** Whether what was said brings an allergen, or may, that the name which it was taken for doesn't: "gianduja paste". */
export function saysMore(said: string, name: string): boolean {
  const own = partsAt(name);
  return partsAt(said).some(
    (part) =>
      part.sure.some((id) => !own.some((each) => each.sure.includes(id))) ||
      (part.unsure !== undefined && !own.some((each) => each.unsure !== undefined)),
  );
}

/** The row that a name belongs to as a whole. */
export const rowNamed = (name: string): string | undefined => partOf(name.toLowerCase())?.row;

/** A name that is one of the allergens and says nothing more: "almonds", "pine nut". */
export const isAllergen = (name: string): boolean =>
  allergens.some(({ id, words = [] }) =>
    [id, ...words].some((each) => new RegExp(`^${each}s?$`, "i").test(name)),
  );
