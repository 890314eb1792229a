/**
 * "I finished the bag of dark chocolate so it's 225 g", "the sugar for the buttercream, 180 g": told without a comma or
 * an "of", the weight is of the ingredient that the sentence is about, and not of the mix it goes into.
 */
import type { Thing } from "../../tools/contract/index.ts";
import { isWord, wordOf } from "./items.ts";
import type { Item } from "./scan.ts";

/** Between the ingredient that was spoken of and its weight: "... so it's", "... and that comes to about". */
const leads = new Set(
  "its it is that thats was were theyre they there theres here comes came come to weighs weighed weighing out at in so and now only just about around roughly exactly right well all altogether of".split(
    " ",
  ),
);
const saysWhat = new Set(
  "its it thats that is was comes came weighs weighed theyre weighing here out".split(" "),
);
/** What is done to it makes a mix of it: "I stirred the butter in and it's 300 g". */
const mixes = new Set(
  "add added adding poured pour folded fold mixed mix mixing stirred stir put melted tipped whipped beat beaten whisked made make making with in into".split(
    " ",
  ),
);
const asking = new Set("how what whats which why if need needs want wants without no not".split(" "));

const isPart = (item: Item | undefined): boolean =>
  item?.is === "thing" &&
  !item.thing.base &&
  !item.thing.count &&
  Boolean(item.thing.chocolate ?? item.thing.ingredient) &&
  /^(?:whites|egg|almond flour|powdered sugar|granulated sugar|sugar|butter|cream|(?:dark |milk |white )?chocolate)$/.test(
    item.thing.ingredient ?? "chocolate",
  );

/** "for the dark ganache": the mix stands there as what it is for. */
function isPurpose(items: readonly Item[], at: number): boolean {
  let from = at - 1;
  while (
    from >= 0 &&
    (["a", "an", "the", "my", "our", "this", "that", "some", "meringue", "piping"].includes(
      wordOf(items[from]),
    ) ||
      isKind(items[from]))
  )
    from -= 1;
  return isWord(items[from], "for");
}

const isKind = (item: Item | undefined): boolean =>
  item?.is === "thing" &&
  !item.thing.base &&
  Boolean(
    item.thing.use ??
      item.thing.chocolate ??
      item.thing.taste ??
      (item.thing.ingredient === "milk" || undefined),
  );

/** The ingredient that the weight at `i` is told of; none where a mix or something else is spoken of. */
export function topicOf(items: readonly Item[], i: number): Thing | undefined {
  const item = items[i];
  if (item?.is !== "amount" || item.amount.dim !== "weight") return undefined;
  const before = items.slice(0, i);
  if (before.some((each) => each.is === "amount" || (each.is === "sign" && each.text !== ",")))
    return undefined;
  const words = before.map(wordOf);
  if (words.some((each) => asking.has(each) || mixes.has(each))) return undefined;
  const mixAt = before.findIndex((each) => each.is === "thing" && each.thing.base !== undefined);
  if (mixAt >= 0 && !isPurpose(items, mixAt)) return undefined;
  const end = mixAt < 0 ? before.findLastIndex(isPart) : mixAt;
  const parts = before.filter((each, at) => isPart(each) && !isOfMix(items, at, mixAt));
  const [only, ...others] = parts;
  if (only?.is !== "thing" || others.length > 0 || end < 0) return undefined;
  const between = words.slice(end + 1);
  const said = mixAt >= 0 ? between : [...between.slice(between.findLastIndex((each) => saysWhat.has(each)))];
  // "the sugar for the buttercream 180 g" needs no word; "dark chocolate so it's 225 g" does
  if (mixAt < 0 && !between.some((each) => saysWhat.has(each))) return undefined;
  return said.every((each) => each === "" || leads.has(each)) ? only.thing : undefined;
}

/** "the milk ganache": the chocolate right before it says which it is. */
const isOfMix = (items: readonly Item[], at: number, mixAt: number): boolean =>
  mixAt > at && items.slice(at + 1, mixAt).every(isKind);
