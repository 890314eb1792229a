/** The lines of a label as they are printed: ingredients in order, Contains, net weight. */
import { labelNames, type Market, ounce_g } from "../../../data/rules/labels.ts";
import { plain, tidy } from "../lib/show.ts";
import { allergenNamed } from "./allergens.ts";

export interface Ingredient {
  name: string;
  grams: number;
  allergens: readonly string[];
}

const rowOf = (name: string) => labelNames.find((row) => row.name === name);

/** Its common name in that market. */
const common = (name: string, market: Market) => rowOf(name)?.[market] ?? name;

/** Ingredients whose own list only the wrapper has. */
export const compounds = (ingredients: readonly Ingredient[]): string[] =>
  ingredients.filter(({ name }) => rowOf(name)?.compound).map(({ name }) => name);

/** By weight, the heaviest first; equal weights keep the order in which they were said. 21 CFR 101.4(a); 1169/2011, Article 18. */
export function inOrder(ingredients: readonly Ingredient[], market: Market): Ingredient[] {
  const byName = new Map<string, Ingredient>();
  for (const each of ingredients) {
    const name = common(each.name, market);
    const known = byName.get(name);
    byName.set(name, known ? { ...known, grams: known.grams + each.grams } : each);
  }
  return [...byName.values()].sort((a, b) => b.grams - a.grams);
}

/**
 * "Ingredients: almond flour (almonds), ..." in the US; in the EU with the allergens in capitals inside the list.
 * @param own what stands in the brackets for the list that only a wrapper has
 */
export function ingredientLine(
  ingredients: readonly Ingredient[],
  market: Market,
  own = "its own list, from the wrapper",
): string {
  const shown = (each: Ingredient) => {
    const name = common(each.name, market);
    const text = market === "eu" ? emphasised(name, each.allergens) : name;
    return rowOf(each.name)?.compound ? `${text} [${own}]` : text;
  };
  const [main, small] =
    market === "us" ? twoPercent(inOrder(ingredients, market)) : [inOrder(ingredients, market), []];
  const least = small.length > 0 ? `, 2% or less of: ${small.map(shown).join(", ")}` : "";
  return `Ingredients: ${main.map(shown).join(", ")}${least}`;
}

/** What is at most so much of the whole may stand last under one heading. 21 CFR 101.4(a)(2). */
const smallShare = 0.02;

/** The list and its group of 2 % or less; a group of one gains nothing and stays in the list. */
export function twoPercent(ordered: readonly Ingredient[]): [Ingredient[], Ingredient[]] {
  const whole = ordered.reduce((sum, each) => sum + each.grams, 0);
  const small = ordered.filter((each) => each.grams <= smallShare * whole * (1 + 1e-12));
  return small.length < 2 || small.length === ordered.length
    ? [[...ordered], []]
    : [ordered.slice(0, ordered.length - small.length), small];
}

/** Each allergen in capitals, behind the name in brackets where the name doesn't hold it. */
function emphasised(name: string, ids: readonly string[]): string {
  return ids.reduce((text, id) => {
    const word = allergenNamed(id)?.eu;
    if (!word) return text;
    const found = new RegExp(`\\b${word}s?\\b`, "i");
    return found.test(text)
      ? text.replace(found, (hit) => hit.toUpperCase())
      : `${text} (${word.toUpperCase()})`;
  }, name);
}

/** The names that a market's law has for allergens; those it doesn't know are left out. */
export const declared = (ids: readonly string[], market: Market): string[] =>
  [...new Set(ids.flatMap((id) => allergenNamed(id)?.[market] ?? []))].sort();

export interface Net {
  grams: number;
  ounces: number;
  text: string;
}

/**
 * Net weight, rounded down so that it never overstates: whole grams, tenths of an ounce. 5 oz is 141 g, 3 oz 85 g.
 * From a pound on the ounces are given in pounds too. 21 CFR 101.7; 16 CFR 500.19.
 * @param oz said in ounces; else `grams`
 */
export function netWeight(grams: number | undefined, oz: number | undefined, market: Market): Net {
  const exact_g = oz !== undefined ? oz * ounce_g : (grams ?? 0);
  const g = Math.floor(tidy(exact_g));
  const ounces = oz ?? Math.floor(tidy((exact_g / ounce_g) * 10)) / 10;
  if (market === "eu") return { grams: g, ounces, text: `${g} g` };
  const pounds = ounces >= 16 ? ` (${Math.floor(ounces / 16)} lb ${plain(ounces % 16, 1)} oz)` : "";
  return { grams: g, ounces, text: `Net Wt ${plain(ounces, 2)} oz${pounds} (${g} g)` };
}
