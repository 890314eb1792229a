/**
 * "three bars of dark, 300 grams together", "2 tubs of cream, 500 g in all": what the packs weigh, not how many they are.
 * "2 vials of mint oil 2 ml each in 300 g buttercream": that many times what one holds.
 */
import {
  type AmountItem,
  eachOne,
  isCount,
  isNumber,
  isWeight,
  isWord,
  spanOf,
  wordOf,
} from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const packs =
  /^(?:bars?|blocks?|slabs?|tablets?|bags?|packs?|packets?|pkts?|tubs?|cartons?|pots?|jars?|tins?|cans?|tubes?|sachets?|boxes|bottles?|bowls?|lumps?|bits?|pieces?|pats?|vials?|phials?|flasks?|ampoules?|pouches?|pipettes?)$/;
const leads = new Set(
  "so or at its thats which that weighing weigh weighs making makes is are about around roughly they theyre it for coming come comes to".split(
    " ",
  ),
);
const ends = [
  ["together"],
  ["altogether"],
  ["combined"],
  ["overall"],
  ["total"],
  ["in", "all"],
  ["in", "total"],
  ["all", "told"],
  ["all", "in", "all"],
  ["all", "together"],
  ["between", "them"],
  ["in", "the", "lot"],
  ["the", "lot"],
  ["as", "a", "whole"],
] as const;

const isPack = (item: Item | undefined): boolean =>
  item?.is === "thing" ? packs.test(item.thing.text) : packs.test(wordOf(item));
const isStuff = (item: Item | undefined): item is Item & { is: "thing" } =>
  item?.is === "thing" &&
  Boolean(item.thing.ingredient ?? item.thing.chocolate ?? item.thing.base ?? item.thing.color);

/** How many words behind a weight say that it is of all of them. */
const endAt = (items: readonly Item[], at: number): number =>
  ends.find((words) => words.every((word, i) => isWord(items[at + i], word)))?.length ?? 0;

const isMeasure = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && ["weight", "volume"].includes(item.amount.dim) && item.amount.high === undefined;
const isFlavor = (item: Item | undefined): item is Item & { is: "thing" } =>
  item?.is === "thing" && Boolean(item.thing.dose ?? item.thing.taste) && !item.thing.base;
const holding = new Set("of with at holding holds a is are being having".split(" "));

/** Where the words in between end. */
const past = (items: readonly Item[], at: number, words: ReadonlySet<string>, sign = false): number => {
  let to = at;
  while (words.has(wordOf(items[to])) || (sign && items[to]?.is === "sign" && to === at)) to += 1;
  return to;
};

interface Packed {
  measure: AmountItem;
  flavor: Item;
  next: number;
}

/** What one of the packs that begin at `at` holds, and of which flavor. */
function packedAt(items: readonly Item[], at: number): Packed | undefined {
  const ahead = items[at + 1];
  // "two 5 ml bottles of mint oil"
  if (isMeasure(ahead) && isPack(items[at + 2])) {
    const of = past(items, at + 3, holding);
    const flavor = items[of];
    return isFlavor(flavor) ? { measure: ahead, flavor, next: of + 1 } : undefined;
  }
  if (!isPack(ahead)) return undefined;
  const of = past(items, at + 2, holding);
  const first = items[of];
  // "2 vials of 2 ml mint oil", "2 vials of 2 ml each of mint oil"
  if (isMeasure(first)) {
    const then = past(items, past(items, of + 1, eachOne), holding);
    const flavor = items[then];
    return isFlavor(flavor) ? { measure: first, flavor, next: then + 1 } : undefined;
  }
  // "2 vials of mint oil, 2 ml each"
  if (!isFlavor(first)) return undefined;
  const place = past(items, past(items, of + 1, new Set(), true), holding);
  const measure = items[place];
  return isMeasure(measure) && eachOne.has(wordOf(items[place + 1]))
    ? { measure, flavor: first, next: place + 2 }
    : undefined;
}

/** Packs of a flavor that goes into a bowl: that many times what one holds. What is bought or priced stays as it is. */
function withPacked(items: readonly Item[]): Item[] {
  const inBowl = items.some((item) => item.is === "thing" && item.thing.base);
  if (!inBowl || items.some((item) => item.is === "amount" && item.amount.dim === "money")) return [...items];
  for (let at = 0; at < items.length; at++) {
    const count = items[at];
    const found = isCount(count) ? packedAt(items, at) : undefined;
    if (!found || !isCount(count)) continue;
    const value = found.measure.amount.value * count.amount.value;
    const [from] = count.amount.at;
    const [, to] = spanOf(items[at + 1] as Item);
    const all: Item = {
      is: "amount",
      amount: {
        ...found.measure.amount,
        value,
        text: `${value} ${found.measure.amount.unit}`,
        taken: `${value} ${found.measure.amount.unit} in all: ${count.amount.value} × ${found.measure.amount.text}`,
        at: [from, to],
      },
    };
    return [...items.slice(0, at), all, found.flavor, ...items.slice(found.next)];
  }
  return [...items];
}

/** The items with the weight before what is in the packs, and their number gone. Pure. */
export function withPacks(all: readonly Item[]): Item[] {
  const items = withPacked(all);
  for (let at = 0; at < items.length; at++) {
    const count = items[at];
    if (!isNumber(count) || !isPack(items[at + 1])) continue;
    const of = at + (isWord(items[at + 2], "of") ? 3 : 2);
    const stuff = items[of];
    if (!isStuff(stuff)) continue;
    let from = of + 1;
    while (items[from]?.is === "sign" || leads.has(wordOf(items[from]))) from += 1;
    const weight = items[from];
    const end = isWeight(weight) ? endAt(items, from + 1) : 0;
    if (!isWeight(weight) || end === 0 || from - of > 6) continue;
    const place: Item = {
      is: "amount",
      amount: { ...weight.amount, at: [count.amount.at[0], spanOf(items[at + 1] as Item)[1]] },
    };
    return withPacks([...items.slice(0, at), place, stuff, ...items.slice(from + 1 + end)]);
  }
  return [...items];
}
