/** "smbc for 24", "dark ganache for 24": no bowl holds so few grams, they are macarons. */
import type { Reading } from "../contract/index.ts";

/** So many are baked at home at a time, and no such bowl is weighed. From memory. */
const [fewest, most] = [6, 60];
const behind =
  "(?: (?:,|[.])? ?\\S*<length>(?: \\S+)?)?(?: (?:please|pls|[?.!]))*(?: , (?!.*<(?:number|weight|volume)).*)?$";

/** @returns the number behind "for", straight behind the mix; undefined where a weight or a thing counted is meant */
export function fewFor({ mask, amounts }: Reading, base: "buttercream" | "ganache"): number | undefined {
  if (!new RegExp(`<(?:[^>]*,)?base=${base}[^>]*> for \\S*<number>${behind}`).test(mask)) return undefined;
  return amounts.find(({ dim, of, value }) => dim === "number" && !of && value >= fewest && value <= most)
    ?.value;
}
