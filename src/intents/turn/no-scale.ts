/**
 * "i am at work with one teaspoon and no scale. pear flavoring for 145 g of ganache, in teaspoons?": that there is no
 * scale is why spoons are asked for. The spoon that is told with it is no amount of anything.
 */
import type { Item } from "../found/scan.ts";
import type { Ear, Part } from "./part.ts";

const scaleless =
  /(?:^| )(?:no|without(?: an?| any| my)?|(?:havent|dont have|didnt bring|forgot|left)(?: got)?(?: an?| any| my| the)?) (?:kitchen |digital |working )?scales?(?: |$)|(?:^| )scales? (?:is|are|has|have|died|broke)(?: |$)/;
const spoons = /<unit=(?:tsp|tbsp)>/;
/** Who has no scale has a spoon, or a pair of them; more is an amount of something. From memory. */
const mostSpoons = 2;

const isStop = (item: Item): boolean => item.is === "sign" && /^[.!;,-]$/.test(item.text);
/** Nothing but talk and a spoon or two. */
const isTold = (part: Part): boolean =>
  part.every(
    (item) =>
      item.is === "word" ||
      item.is === "sign" ||
      (item.is === "amount" && item.amount.dim === "volume" && item.amount.value <= mostSpoons) ||
      (item.is === "amount" && item.amount.dim === "number" && item.amount.value <= mostSpoons) ||
      (item.is === "thing" &&
        !item.thing.base &&
        !item.thing.dose &&
        !item.thing.taste &&
        !item.thing.ingredient),
  );

/** The items without it; all of them where no spoons are asked for behind it. Pure. */
export function withoutNoScale(items: Part, ear: Ear): Part {
  if (!/(?:^| )scales?(?: |$)/.test(ear.mask(items))) return items;
  for (let at = items.length - 2; at > 1; at--) {
    const item = items[at];
    if (!item || !isStop(item)) continue;
    const [lead, rest] = [items.slice(0, at), items.slice(at + 1)];
    const mask = ear.mask(lead);
    if (!scaleless.test(mask) || !isTold(lead) || /(?:^| )(?:how|what|which|\?)(?: |$)/.test(mask)) continue;
    if (spoons.test(ear.mask(rest)) && rest.some((each) => each.is === "amount")) return rest;
  }
  return items;
}
