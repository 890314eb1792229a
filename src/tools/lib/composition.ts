/** What a mix is made of, summed from the USDA table, and its water activity by Norrish's formula: an estimate. */
import table from "../../../data/tables/composition.json" with { type: "json" };
import { ingredients } from "../../../data/words/ingredients.ts";

export interface Line {
  name: string;
  grams: number;
  /** A USDA number that overrides the ingredient's usual one, for a chocolate of known cacao. */
  ndb?: string;
}

export interface Composition {
  grams: number;
  water_g: number;
  fat_g: number;
  sugar_g: number;
  /** Ingredients that the table can't speak for; then the sums aren't complete. */
  unknown: string[];
}

export const compositionSource = table.source;

/** Sucrose: g that dissolve in a gram of water at 25 °C. Source: Mohos, Confectionery and Chocolate Engineering, table A2.2. */
export const saturation = 2.114;
const sucroseMole = 342.3;
const waterMole = 18.015;
/** Norrish's constant for sucrose, natural logarithm. Source: Norrish 1966. */
const norrish = 6.47;
/** The estimate is given with this band. */
export const awBand = 0.02;

const rowOf = new Map(table.rows.map((row) => [row.ndb, row]));

/** Sums water, fat and sugar of weighed ingredients, in g. Order and grouping don't matter. */
export function compose(lines: readonly Line[]): Composition {
  const sum: Composition = { grams: 0, water_g: 0, fat_g: 0, sugar_g: 0, unknown: [] };
  for (const { name, grams, ndb } of lines) {
    const row = rowOf.get(ndb ?? ingredients.find((each) => each.name === name)?.ndb ?? "");
    sum.grams += grams;
    if (!row || row.sugars === null) {
      sum.unknown.push(name);
      if (!row) continue;
    }
    sum.water_g += (grams * row.water) / 100;
    sum.fat_g += (grams * row.fat) / 100;
    sum.sugar_g += (grams * (row.sugars ?? 0)) / 100;
  }
  return sum;
}

/**
 * Water activity with all sugar counted as sucrose, which errs toward perishable; sugar past saturation doesn't
 * count. a_w = (1 − X) × exp(−6.47 X²), X the mole share of dissolved sugar. Never below about 0.84.
 * @returns a_w between 0.84 and 1, or undefined where there is no water to speak of
 */
export function waterActivity({
  water_g,
  sugar_g,
}: Pick<Composition, "water_g" | "sugar_g">): number | undefined {
  if (water_g <= 0) return undefined;
  const dissolved = Math.min(sugar_g, saturation * water_g);
  const moles = dissolved / sucroseMole;
  const x = moles / (moles + water_g / waterMole);
  return (1 - x) * Math.exp(-norrish * x * x);
}

/**
 * The dissolved sugar, in g per g of water, at which a mix has this water activity: Norrish's formula turned round.
 * @returns undefined where no solution has it: above 1, or below that of saturation, about 0.84
 */
export function sugarPerWater(aw: number): number | undefined {
  const at = (ratio: number) => waterActivity({ water_g: 1, sugar_g: ratio }) ?? 1;
  if (!(aw <= 1 && aw >= at(saturation))) return undefined;
  let [low, high] = [0, saturation];
  // the formula only falls, so halving finds the one place; sixty steps are beyond the last bit
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (at(middle) > aw) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
