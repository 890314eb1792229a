/** "4 whites 30g each", "3 whites, 30 31 and 33 g": whites that were counted and weighed one by one are what they weigh together. */
import { type AmountItem, eachOne, isCount, isWeight, isWord, spanOf, wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const isSingle = (item: Item | undefined): item is AmountItem =>
  isWeight(item) && item.amount.high === undefined;
const isWhites = (item: Item | undefined): item is Item & { is: "thing" } =>
  item?.is === "thing" && item.thing.ingredient === "whites";

const links = new Set(
  "of at weighing weigh weighs that which they theyre are is each about roughly and".split(" "),
);

/** A white of less or more than this is none: from memory, a small egg's has 25 g and a goose's 60. */
const [least_g, most_g] = [15, 70];
/** Nobody counts and weighs more by hand. */
const most = 24;

const past = (items: readonly Item[], from: number): number => {
  let at = from;
  while (
    links.has(wordOf(items[at])) ||
    (items[at]?.is === "sign" && /^[,:x×-]$/.test(wordOrSign(items[at])))
  )
    at += 1;
  return at;
};
const wordOrSign = (item: Item | undefined): string => (item?.is === "sign" ? item.text : "");

/** Where "each" stands behind a weight, so many items are taken by it; 0 where it doesn't. */
const eachAt = (items: readonly Item[], at: number): number => {
  if (eachOne.has(wordOf(items[at]))) return 1;
  if (isWord(items[at], "a") && /^(?:piece|white)$/.test(wordOf(items[at + 1]))) return 2;
  if (isWord(items[at], "per") && (isWhites(items[at + 1]) || isWord(items[at + 1], "white"))) return 2;
  return 0;
};

/** Where the whites stand that are counted at `at`: "4 whites", "4 eggs, the whites are 30 g each"; 0 where none do. */
function whitesAt(items: readonly Item[], at: number): number {
  const counted = items[at];
  const of = counted?.is === "thing" ? counted.thing.ingredient : undefined;
  if (of === "whites") return at;
  if (of !== "egg") return 0;
  let next = at + 1;
  while (
    ["the", "their", "and", "with", "whose"].includes(wordOf(items[next])) ||
    wordOrSign(items[next]) === ","
  )
    next += 1;
  return next > at + 1 && isWhites(items[next]) ? next : 0;
}

interface Found {
  value: number;
  unit: AmountItem;
  taken: string;
  next: number;
}

/** "30 g each", from `at` on, of so many. */
function byEach(items: readonly Item[], from: number, count: number): Found | undefined {
  const at = past(items, from);
  const said = items.slice(from, at).some((item) => eachOne.has(wordOf(item)));
  const weight = items[at];
  if (!isSingle(weight)) return undefined;
  const behind = eachAt(items, at + 1);
  const { value, unit, text } = weight.amount;
  const isWhite = unit !== "g" || (value >= least_g && value <= most_g);
  return (said || behind > 0) && isWhite
    ? { value: value * count, unit: weight, taken: `${count} × ${text}`, next: at + 1 + behind }
    : undefined;
}

/** "30 31 and 33 g", as many as there are whites; the unit may stand behind the last alone. */
function oneByOne(items: readonly Item[], from: number, count: number): Found | undefined {
  const all: AmountItem[] = [];
  let next = from;
  for (let at = past(items, from); all.length < count; at = past(items, at + 1)) {
    const item = items[at];
    if (!isCount(item) && !isSingle(item)) return undefined;
    all.push(item);
    next = at + 1;
  }
  const last = all.at(-1);
  if (count < 2 || !last || !isSingle(last) || last.amount.unit !== "g") return undefined;
  if (
    all.some(({ amount: { value, unit } }) => value < least_g || value > most_g || !["", "g"].includes(unit))
  )
    return undefined;
  const values = all.map(({ amount }) => amount.value);
  return { value: values.reduce((sum, each) => sum + each, 0), unit: last, taken: values.join(" + "), next };
}

/** The items with the weight of all of them before the whites, and their number gone. Pure. */
export function withCountedEach(items: readonly Item[]): Item[] {
  for (let at = 0; at < items.length; at++) {
    const count = items[at];
    if (!isCount(count) || count.amount.value > most) continue;
    const whites = whitesAt(items, at + 1);
    const { value: so } = count.amount;
    const found = whites > 0 ? (byEach(items, whites + 1, so) ?? oneByOne(items, whites + 1, so)) : undefined;
    if (!found) continue;
    const { unit } = found.unit.amount;
    const value = Math.round(found.value * 1e6) / 1e6;
    const place: Item = {
      is: "amount",
      amount: {
        ...found.unit.amount,
        value,
        text: `${value} ${unit}`,
        taken: `${value} ${unit} of whites in all: ${found.taken}`,
        at: [count.amount.at[0], spanOf(count)[1]],
      },
    };
    return [...items.slice(0, at), place, items[whites] as Item, ...items.slice(found.next)];
  }
  return [...items];
}
