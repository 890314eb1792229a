/** "100 g each of dark chocolate and cream", "whites and sugar, 100 g each": the weight belongs to every one of them. */

import { isWord } from "./items.ts";
import type { Item } from "./scan.ts";

/** The items with the weight said again before each thing that it is meant for. */
export function spreadEach(items: readonly Item[]): Item[] {
  const out: Item[] = [];
  for (let i = 0; i < items.length; ) {
    const item = items[i] as Item;
    const weighed =
      item.is === "amount" && ["weight", "volume"].includes(item.amount.dim) && isWord(items[i + 1], "each");
    const behind = weighed ? listFrom(items, isWord(items[i + 2], "of") ? i + 3 : i + 2) : undefined;
    const before = weighed ? listBefore(out, out.length) : undefined;
    if (weighed && behind && behind.things.length > 1) {
      out.push(...repeated(item, behind.things));
      i = behind.next;
    } else if (weighed && before && before.things.length > 1) {
      out.splice(before.from, out.length, ...repeated(item, before.things));
      i += 2;
    } else {
      out.push(item);
      i += 1;
    }
  }
  return out;
}

type Amounts = Item & { is: "amount" };

const repeated = (amount: Amounts, things: readonly Item[]): Item[] =>
  things.flatMap((thing, at): Item[] => {
    const again: Item = { is: "amount", amount: { ...amount.amount } };
    return at === 0 ? [again, thing] : [{ is: "word", text: "and", at: placeOf(thing) }, again, thing];
  });

/** Things with "and" or a comma between them, from `at` on. */
function listFrom(items: readonly Item[], at: number): { things: Item[]; next: number } {
  const things: Item[] = [];
  let next = at;
  while (isStuff(items[next])) {
    things.push(items[next] as Item);
    next += 1;
    const joint = isJoint(items[next]) ? (isJoint(items[next + 1]) ? 2 : 1) : 0;
    if (joint === 0 || !isStuff(items[next + joint])) break;
    next += joint;
  }
  return { things, next };
}

/** The same list ending before `end`, a comma or "at" between them allowed. */
function listBefore(items: readonly Item[], end: number): { things: Item[]; from: number } {
  let last = end - 1;
  if (isJoint(items[last]) || isWord(items[last], "at")) last -= 1;
  const things: Item[] = [];
  let from = end;
  while (isStuff(items[last])) {
    things.unshift(items[last] as Item);
    from = last;
    if (!isJoint(items[last - 1])) break;
    last -= isJoint(items[last - 2]) ? 3 : 2;
  }
  return { things, from };
}

const isJoint = (item: Item | undefined) =>
  isWord(item, "and") || (item?.is === "sign" && [",", "&"].includes(item.text));
/** What is weighed into a bowl; tastes and counts aren't meant. */
const isStuff = (item: Item | undefined) =>
  item?.is === "thing" && Boolean(item.thing.ingredient || item.thing.chocolate || item.thing.base);
const placeOf = (item: Item) => (item.is === "thing" ? item.thing.at : ([0, 0] as const));
