/** "less 10 percent", "10 % more": a factor, where nothing but that change is said of what came before. */

import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const down = new Set(["less", "minus", "fewer", "smaller"]);
const up = new Set(["plus", "more", "bigger", "larger"]);

/** The items with such a share as a factor: 0.9 for ten percent less. Pure. */
export function withChange(items: readonly Item[]): Item[] {
  const amounts = items.filter((item) => item.is === "amount");
  const only = amounts.length === 1 ? amounts[0] : amounts.find((each) => isChangeBy(items, each));
  if (only?.is !== "amount" || only.amount.dim !== "percent") return [...items];
  const { value: said, high } = only.amount;
  // "minus 20 percent" is read as a number below zero
  const value = Math.abs(said);
  const at = items.indexOf(only);
  // "10 % more spare": more of those, and the order stays
  if (items.slice(at + 1, at + 4).some((item) => /^(?:spares?|extras)$/.test(wordOf(item))))
    return [...items];
  const [before, behind] = [wordOf(items[at - 1]), wordOf(items[at + 1])];
  const by = isChangeBy(items, only) ? (lowers.test(wordOf(items[at - 2])) ? "less" : "more") : undefined;
  const beside = by ?? (said < 0 ? "minus" : [before, behind].find((each) => down.has(each) || up.has(each)));
  const isWhole = high === undefined && value >= least && value < 100;
  if (!beside || !isWhole) return [...items];
  const factor = down.has(beside) ? 1 - value / 100 : 1 + value / 100;
  const { text, at: place } = only.amount;
  const times: Item = {
    is: "amount",
    amount: { dim: "number", unit: "times", value: factor, text, at: place },
  };
  const gone = said < 0 || by ? -1 : beside === before ? at - 1 : at + 1;
  return items.flatMap((item, i) => (item === only ? [times] : i === gone ? [] : [item]));
}

const lowers = /^(?:reduc|cut|cutt|lower|drop|trim|shrink|shrunk)(?:e|ed|ing|s)?$/;
const raises = /^(?:increas|upp?|rais|boost)(?:e|ed|ing|s)?$/;

/** "200 g, vanilla, reduced by 10 percent": a change, beside whatever else was said. */
function isChangeBy(items: readonly Item[], item: Item | undefined): boolean {
  const at = item ? items.indexOf(item) : 0;
  const verb = wordOf(items[at - 2]);
  return (
    item?.is === "amount" &&
    item.amount.dim === "percent" &&
    wordOf(items[at - 1]) === "by" &&
    (lowers.test(verb) || raises.test(verb))
  );
}

/** Below this a share beside "less" or "more" may be a dose: "less, 3 percent". */
const least = 5;
