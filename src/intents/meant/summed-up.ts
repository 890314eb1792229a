/** "i found another 50 g of it, so 325": what was added and what that makes; only the sum is meant. */
import { inBase } from "../../tools/lib/units.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const adding = new Set("another extra more additional add added found plus together tipped".split(" "));
const between = new Set(
  "thats its that is now i have ive we weve were are at theres it makes making comes to a total of say call".split(
    " ",
  ),
);

type AmountItem = Item & { is: "amount" };

const isAmount = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.unit !== "times" && !item.amount.fraction;

/** The items with an added amount taken out where "so" and the sum of it follow; a bare sum gets its unit. */
export function withSums(all: readonly Item[]): Item[] {
  const items = withoutOld(all);
  const said = items.findLastIndex((item) => item.is === "word" && item.text === "so");
  const so = said < 2 ? closing(items) : said;
  if (so < 2) return [...items];
  let at = so + 1;
  while (between.has(wordOf(items[at]))) at += 1;
  const sum = items[at];
  const added = items.findLastIndex((item, place) => place < so && isAmount(item));
  const first = items[added];
  if (!isAmount(sum) || !isAmount(first) || !isSaidToBeAdded(items, added, so)) return [...items];
  const bare = sum.amount.dim === "number" && first.amount.dim !== "number";
  if (!bare && sum.amount.dim !== first.amount.dim) return [...items];
  const value = ({ amount: { value, unit } }: AmountItem) => {
    const known = unit || first.amount.unit;
    return known ? inBase(value, known) : value;
  };
  if (value(sum) <= value(first) * (isRounding(items, so, at) ? roundedBy : 1)) return [...items];
  const whole: Item = bare
    ? { ...sum, amount: { ...sum.amount, unit: first.amount.unit, dim: first.amount.dim } }
    : sum;
  return items.flatMap((item, place) => (place === added ? [] : place === at ? [whole] : [item]));
}

/**
 * "ten more whites than that, 100", "found one more. 121 now", "another two, that makes six": the stop before a sum that
 * ends the turn.
 */
const closing = (items: readonly Item[]): number =>
  items.findLastIndex((item, stop) => {
    if (item.is !== "sign" || !/^[,.]$/.test(item.text)) return false;
    let at = stop + 1;
    while (makes.has(wordOf(items[at]))) at += 1;
    return (
      isAmount(items[at]) &&
      items
        .slice(at + 1)
        .every((each) => ["now", "altogether", "total", "in", "all", "then"].includes(wordOf(each)))
    );
  });

const makes = new Set("that thats makes which making it call say".split(" "));

/** "another 48, call it 50": rounded, and no sum; from memory, nobody rounds by more than a quarter. */
const roundedBy = 1.25;
const isRounding = (items: readonly Item[], so: number, at: number): boolean =>
  wordOf(items[so]) !== "so" && items.slice(so, at).some((each) => ["call", "say"].includes(wordOf(each)));

/** "only 30 left so its 210 dark and 180 cream now": what there is after "so" stands alone. */
function withoutOld(items: readonly Item[]): Item[] {
  const so = items.findLastIndex((item) => item.is === "word" && item.text === "so");
  const joint = ["its", "thats", "now", "theres"].includes(wordOf(items[so + 1]));
  const [before, behind] = [items.slice(0, Math.max(so, 0)), items.slice(so + 1)];
  return so > 1 && joint && before.some(isAmount) && behind.filter(isAmount).length > 1 ? behind : [...items];
}

/** "another 50 g", "add a dozen", "50 g more". */
const isSaidToBeAdded = (items: readonly Item[], added: number, so: number): boolean =>
  items.slice(Math.max(0, added - 4), added).some((item) => adding.has(wordOf(item))) ||
  items.slice(added + 1, so).some((item) => ["more", "extra"].includes(wordOf(item)));
