/**
 * "two bowls here, 140 g buttercream in each, one raspberry one lemon. how much flavor each": as many tastes as bowls, each
 * into a bowl of its own: no weight to be shared out between them.
 */
import { isWeight, spanOf, textOf, wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

type ThingItem = Item & { is: "thing" };

/** Words of telling it and of asking for it; with any other the sentence says more. */
const talk: ReadonlySet<string> = new Set(
  (
    "i i've ive we weve got have has here there theres there's are is on the my a an of in into for with each apiece every both and one " +
    "other another second third first last gets get getting wants want needs need goes go going to be will would should can could do does " +
    "how much many what whats so now ok okay then please pls it that them those these this i'm im making doing about just per at mix mixed " +
    "as well lot same weight weighing weigh weighs holding holds hold holding sitting standing ready bench counter side add put use flavored " +
    "flavoured bowlful apiece, hi hey morning right well um er"
  ).split(" "),
);

/** How many bowls there are; "both bowls" are two. */
const most = 6;

const isBowls = (item: Item | undefined): boolean => item?.is === "thing" && item.thing.count === "bowls";
const isTaste = (item: Item): item is ThingItem =>
  item.is === "thing" && !item.thing.base && !item.thing.color && item.thing.taste !== undefined;
const isBase = (item: Item): item is ThingItem =>
  item.is === "thing" &&
  (item.thing.base === "buttercream" || item.thing.base === "ganache" || item.thing.base === "filling");
const isFlavor = (item: Item): boolean =>
  item.is === "thing" && item.thing.taste === undefined && item.thing.dose === "flavor";
const isCount = (item: Item): boolean =>
  item.is === "amount" &&
  item.amount.dim === "number" &&
  item.amount.value <= most &&
  item.amount.high === undefined;

const eachSaid = /^(?:each|apiece|every|both)$/;

/** How many bowls are spoken of: the number before them. */
function bowlsIn(items: readonly Item[]): number | undefined {
  const at = items.findIndex(isBowls);
  const before = items[at - 1];
  if (at < 0) return undefined;
  if (before?.is === "amount" && isCount(before)) return before.amount.value;
  return wordOf(before) === "both" ? 2 : undefined;
}

/** The sentence as it is asked for bowls of so many grams; undefined where it isn't told so. Pure. */
export function bowlsEach(items: readonly Item[]): string | undefined {
  const bowls = bowlsIn(items);
  if (bowls === undefined || bowls < 2) return undefined;
  const weights = items.filter(isWeight);
  const percents = items.filter((item) => item.is === "amount" && item.amount.dim === "percent");
  const bases = items.filter(isBase);
  const tastes = items.filter(isTaste);
  const [weight, ...others] = weights;
  const [base] = bases;
  const isOneMix = new Set(bases.map(({ thing }) => thing.base)).size === 1;
  if (
    !weight ||
    !base ||
    others.length > 0 ||
    !isOneMix ||
    percents.length > 1 ||
    weight.amount.high !== undefined
  )
    return undefined;
  if (tastes.length !== bowls || new Set(tastes.map(({ thing }) => thing.taste)).size !== bowls)
    return undefined;
  const known = (item: Item): boolean =>
    item === weight ||
    percents.includes(item) ||
    bases.includes(item as ThingItem) ||
    tastes.includes(item as ThingItem) ||
    isBowls(item) ||
    isFlavor(item) ||
    isCount(item) ||
    (item.is === "sign" && /^[,.;:?!-]$/.test(item.text)) ||
    (item.is === "word" && talk.has(item.text));
  if (!items.every(known)) return undefined;
  // "bowls of 140 g" weigh that much each, without a word for it
  const isEach =
    items.some((item) => eachSaid.test(wordOf(item))) ||
    (isBowls(items[items.indexOf(weight) - 2]) && wordOf(items[items.indexOf(weight) - 1]) === "of");
  const asks =
    percents.length > 0 ||
    items.some(isFlavor) ||
    items.some((item) => /^(?:how|much|what)$/.test(wordOf(item)));
  if (!isEach || !asks) return undefined;
  const inOrder = tastes.toSorted((a, b) => spanOf(a)[0] - spanOf(b)[0]);
  const flavors = inOrder.map(({ thing }) => (thing.dose ? thing.text : `${thing.text} flavor`));
  const last = flavors.pop() ?? "";
  const share = percents[0] ? `${textOf(percents[0])} ` : "";
  const asked = `${flavors.join(", ")} and ${last}`;
  return share
    ? `${share}${asked} in ${weight.amount.text} ${base.thing.text} each`
    : `how much ${asked} for ${weight.amount.text} ${base.thing.text} each`;
}
