/**
 * "1 cup + 2 tbsp of cream" in grams: the table's row for that very measure comes first, so each part is weighed by its
 * own. Where the rows agree, or no weight is asked for, the parts are one volume as they stand.
 */

import { gramsOfVolume } from "../../tools/lib/portions.ts";
import { plain } from "../../tools/lib/show.ts";
import { inBase, unitRow } from "../../tools/lib/units.ts";
import { partsOf } from "../found/amounts/smaller.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

/** What it is turned into by volume is added by volume. */
const isVolumeWanted = (items: readonly Item[]): boolean =>
  items.some((item) => item.is === "thing" && item.thing.unit && unitRow(item.thing.unit).dim === "volume");
/** Told sifted, packed or the like: which row that is, the calculator knows. */
const isInManner = (items: readonly Item[]): boolean =>
  items.some((item) => item.is === "thing" && item.thing.manner !== undefined);

/** The items with a sum of measures as so much of its unit as weighs what its parts do together. Pure. */
export function withMeasuresAdded(items: readonly Item[]): Item[] {
  return items.map((item, at): Item => {
    const parts = item.is === "amount" ? partsOf(item.amount) : undefined;
    if (item.is !== "amount" || !parts || isVolumeWanted(items) || isInManner(items)) return item;
    const of = items[wordOf(items[at + 1]) === "of" ? at + 2 : at + 1];
    const name = of?.is === "thing" ? of.thing.ingredient : undefined;
    const single = name === undefined ? undefined : gramsOfVolume(name, 1, item.amount.unit)?.grams;
    if (name === undefined || single === undefined) return item;
    const weighed = parts.map(({ value, unit }) => gramsOfVolume(name, value, unit)?.grams ?? Number.NaN);
    const sum = weighed.reduce((all, each) => all + each, 0);
    const joined = parts.reduce((all, { value, unit }) => all + inBase(value, unit), 0);
    const asOne = (joined / inBase(1, item.amount.unit)) * single;
    if (Number.isNaN(sum) || Math.abs(sum - asOne) < 1e-6) return item;
    const shown = parts
      .map(({ value, unit }, i) => `${plain(value)} ${unit} ${plain(weighed[i] ?? 0)} g`)
      .join(" + ");
    return { is: "amount", amount: { ...item.amount, value: sum / single, taken: shown } };
  });
}
