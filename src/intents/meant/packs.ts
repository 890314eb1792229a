/** "three bars of dark, 300 grams together", "2 tubs of cream, 500 g in all": what the packs weigh, not how many they are. */
import { isWord, spanOf, wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

const packs =
  /^(?:bars?|blocks?|slabs?|tablets?|bags?|packs?|packets?|pkts?|tubs?|cartons?|pots?|jars?|tins?|cans?|tubes?|sachets?|boxes|bottles?|bowls?|lumps?|bits?|pieces?|pats?)$/;
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

type AmountItem = Item & { is: "amount" };

const isCount = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.dim === "number" && item.amount.unit === "" && !item.amount.fraction;
const isWeight = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.dim === "weight";
const isPack = (item: Item | undefined): boolean =>
  item?.is === "thing" ? packs.test(item.thing.text) : packs.test(wordOf(item));
const isStuff = (item: Item | undefined): item is Item & { is: "thing" } =>
  item?.is === "thing" &&
  Boolean(item.thing.ingredient ?? item.thing.chocolate ?? item.thing.base ?? item.thing.color);

/** How many words behind a weight say that it is of all of them. */
const endAt = (items: readonly Item[], at: number): number =>
  ends.find((words) => words.every((word, i) => isWord(items[at + i], word)))?.length ?? 0;

/** The items with the weight before what is in the packs, and their number gone. Pure. */
export function withPacks(items: readonly Item[]): Item[] {
  for (let at = 0; at < items.length; at++) {
    const count = items[at];
    if (!isCount(count) || !isPack(items[at + 1])) continue;
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
