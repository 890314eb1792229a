/** A heat that was told beside a fault: the step down is taken from it, and not from the book's oven. */

import { fanLower } from "../../../data/rules/heat.ts";
import { bookOven_c, type Cause, coolerOven, type TroubleRow } from "../../../data/rules/troubles.ts";
import type { Reading } from "../contract/index.ts";
import { inCelsius } from "../lib/oven.ts";

/** What an oven is set to for shells, in °C: any other number told is none of its. */
const [coolest_c, hottest_c] = [100, 230];

const isFan = /\b(?<!no |without (?:the |a )?|not )(?:fan|convection)\b/;

/** The oven's heat in °C, where the sentence tells one; nothing where it doesn't. Pure. */
export function ovenSaid({ amounts, text }: Reading): { oven_c?: number; fan?: boolean } {
  const said = amounts.find(
    ({ dim, unit, fraction, of, at }) =>
      dim === "temperature" ||
      (dim === "number" &&
        unit === "" &&
        !fraction &&
        !of &&
        /\b(?:at|on|to|is|was|oven|temp\w*|temperature) $/.test(text.slice(0, at[0]))),
  );
  const oven_c = said && inCelsius(said);
  return oven_c !== undefined && oven_c >= coolest_c && oven_c <= hottest_c
    ? { oven_c, ...(isFan.test(text) ? { fan: true } : {}) }
    : {};
}

/**
 * The row with each cooler oven reckoned from the heat that was told; as the book has it where none was. An oven that is
 * set cooler than the step would leave it wasn't too hot: that cause goes last. Pure.
 */
export function fromHeat(row: TroubleRow, oven_c: number | undefined, fan = false): TroubleRow {
  // with its fan an oven bakes as one without that is set so much hotter
  const book_c = bookOven_c - (fan ? fanLower.celsius : 0);
  const isCool = (each: Cause) =>
    each.cooler !== undefined && oven_c !== undefined && oven_c < book_c - each.cooler.by_c;
  const stepped = row.causes.map((each) =>
    each.cooler && !isCool(each)
      ? { ...each, ...coolerOven(each.cooler.by_c, each.cooler.rest, oven_c) }
      : each,
  );
  return { ...row, causes: [...stepped.filter((each) => !isCool(each)), ...stepped.filter(isCool)] };
}
