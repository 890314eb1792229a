/** Volumes of named ingredients by the USDA portion table; what it doesn't know is not known. */

import table from "../../../data/tables/portions.json" with { type: "json" };
import { ingredients } from "../../../data/words/ingredients.ts";
import { unitRow } from "./units.ts";

export interface Portion {
  grams: number;
  /** How the row reads: "1 cup unsifted = 120 g". */
  row: string;
  /** It came from the cup's row by the NIST volumes, not from a row of its own. */
  scaled: boolean;
}

const sourceName = table.source;
export const portionSource = sourceName;

type Row = (typeof table.rows)[number];

/** How a row's measure begins when it is for this unit. "serving 8 fl oz" is a cup, "envelope (1 tbsp)" a tablespoon. */
const unitStart: Record<string, RegExp> = {
  cup: /^(?:cup\b|serving 8 fl oz$)/,
  tbsp: /^(?:serving 1 |envelope \(1 )?(?:tbsp|tablespoon)\b/,
  tsp: /^(?:serving 1 )?(?:tsp|teaspoon)\b/,
  "fl oz": /^fl oz\b/,
  stick: /^stick\b/,
  quart: /^quart\b/,
  l: /^liter\b/,
};

/**
 * Grams of a volume of an ingredient, or undefined where the table has no row to go by.
 * @param name an ingredient's name in the word table
 * @param value how many of `unit`
 * @param manner "sifted", "packed" and the like; without it the ingredient's usual one
 */
export function gramsOfVolume(
  name: string,
  value: number,
  unit: string,
  manner?: string,
): Portion | undefined {
  const ingredient = ingredients.find((row) => row.name === name);
  if (!ingredient?.ndb) return undefined;
  const rows = table.rows.filter((row) => row.ndb === ingredient.ndb);
  const wanted = manner ?? ingredient.manner;
  const own = pick(rows, unit, wanted, manner !== undefined);
  if (own) return { grams: (value * own.grams) / own.amount, row: describe(own), scaled: false };
  const cup = pick(rows, "cup", wanted, manner !== undefined);
  if (!cup || unitRow(unit).dim !== "volume") return undefined;
  const cups = (value * unitRow(unit).per) / unitRow("cup").per;
  return { grams: (cups * cup.grams) / cup.amount, row: describe(cup), scaled: true };
}

/** The measures of one ingredient that the table knows, as they are written there. */
export function measuresOf(name: string): string[] {
  const ndb = ingredients.find((row) => row.name === name)?.ndb;
  return table.rows.filter((row) => row.ndb === ndb).map(describe);
}

/**
 * The row for a unit: the manner asked for, else a row without one, else the first; of several such, the one for a
 * single measure ("1 cup" before "0.5 cup"). What stands in brackets is a remark. With `strict`, a manner that the
 * table doesn't have is not known, except that a row of no manner is as it comes, unsifted.
 */
function pick(
  rows: readonly Row[],
  unit: string,
  manner: string | undefined,
  strict: boolean,
): Row | undefined {
  const start = unitStart[unit];
  if (!start) return undefined;
  const fitting = rows
    .filter((row) => start.test(row.measure))
    .sort((a, b) => Number(b.amount === 1) - Number(a.amount === 1));
  const rest = (row: Row) =>
    row.measure
      .replace(start, "")
      .replace(/\(.*?\)|\)/g, "")
      .replace(/^[ ,]+|[ ,]+$/g, "");
  const plain = fitting.find((row) => rest(row) === "");
  const own = manner
    ? (fitting.find((row) => rest(row) === manner) ??
      fitting.find((row) => new RegExp(`\\b${manner}\\b`).test(rest(row))))
    : undefined;
  if (strict) return own ?? (manner === "unsifted" ? plain : undefined);
  return own ?? plain ?? (manner ? undefined : fitting[0]);
}

/** Grams of one by number, where the table has a row "large": a white, a yolk, an egg. */
export function gramsOfLarge(name: string): number | undefined {
  const ndb = ingredients.find((row) => row.name === name)?.ndb;
  return table.rows.find(
    (row) => row.ndb === ndb && row.measure === "large" && /^Egg, /.test(row.description),
  )?.grams;
}

const describe = (row: Row) =>
  `${row.amount} ${row.measure} of ${row.description.toLowerCase()} = ${row.grams} g`;
