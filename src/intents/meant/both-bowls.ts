/** "250 g of batter and another 250 g of batter": so much in all, where it is not asked of each bowl. */
import { inBase } from "../../tools/lib/units.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

type AmountItem = Item & { is: "amount" };

const isWeight = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.dim === "weight" && item.amount.high === undefined && !item.amount.per;
const baseOf = (item: Item | undefined) => (item?.is === "thing" ? item.thing.base : undefined);

/** Between the first bowl and the second, and behind the second: nothing of it asks anything. */
const joints = new Set(
  "and plus another a second more other the one in of bowl has have holds is there theres also i with ive got extra , &".split(
    " ",
  ),
);
/** It is asked of each of them, or they are to be made something else of. */
const isOther = (item: Item): boolean =>
  (item.is === "thing" &&
    Boolean(
      item.thing.dose ??
        item.thing.taste ??
        item.thing.color ??
        item.thing.ingredient ??
        item.thing.chocolate,
    )) ||
  /^(?:split|divide|share|each|flavou?r|flavou?ring|between|ring|center|centre|not|instead|or|so|from|less|minus|left|if|makes?|note|log)$/.test(
    wordOf(item),
  );
const isBowl = (item: Item | undefined) => item?.is === "thing" && item.thing.count === "bowls";

/** Where the words for a weight of a mix end, which begin at `at`: "250 g of more batter". */
function endOf(items: readonly Item[], at: number): number | undefined {
  let end = at + 1;
  while (/^(?:of|more|the|my|extra|fresh)$/.test(wordOf(items[end]))) end += 1;
  return baseOf(items[end]) ? end : undefined;
}

/** The items with one weight in the place of two of the same mix. Pure. */
export function withBothBowls(items: readonly Item[]): Item[] {
  const places = items.flatMap((item, at) => (isWeight(item) ? [at] : []));
  const [one, two, ...others] = places;
  if (one === undefined || two === undefined || others.length > 0 || items.some(isOther)) return [...items];
  const [first, second] = [items[one], items[two]];
  const [firstEnd, secondEnd] = [endOf(items, one), endOf(items, two)];
  if (!isWeight(first) || !isWeight(second) || firstEnd === undefined) return [...items];
  const isMore = wordOf(items[two + 1]) === "more" || wordOf(items[two - 1]) === "another";
  const end = secondEnd ?? (isMore ? two + (wordOf(items[two + 1]) === "more" ? 1 : 0) : undefined);
  if (end === undefined || (secondEnd !== undefined && baseOf(items[secondEnd]) !== baseOf(items[firstEnd])))
    return [...items];
  const between = items.slice(firstEnd + 1, two);
  const isJoined = between.every(
    (item) =>
      isBowl(item) ||
      joints.has(wordOf(item)) ||
      (item.is === "sign" && item.text === ",") ||
      (item.is === "amount" && item.amount.dim === "number" && item.amount.value <= 2),
  );
  if (!isJoined || between.length === 0) return [...items];
  const sum = inBase(first.amount.value, first.amount.unit) + inBase(second.amount.value, second.amount.unit);
  const taken = `${Math.round(sum * 100) / 100} g: ${first.amount.text} and ${second.amount.text}`;
  let behind = end + 1;
  while (
    behind < items.length &&
    (isBowl(items[behind]) ||
      /^(?:in|another|the|other|a|second|one|bowl|there|too|as|well)$/.test(wordOf(items[behind])))
  )
    behind += 1;
  // "one bowl has 260 g of batter"
  const lead = items.slice(0, one);
  const isOfOne = lead.some(isBowl);
  return [
    ...(isOfOne ? [] : lead),
    { ...first, amount: { ...first.amount, value: sum, unit: "g", taken } },
    ...items.slice(one + 1, firstEnd + 1),
    ...items.slice(behind),
  ];
}
