/** "and", "then", a comma: where two questions may meet. */

import type { Item } from "../found/scan.ts";
import type { Part } from "./part.ts";

const isJoint = (item: Item | undefined) =>
  (item?.is === "word" && ["and", "then", "also", "plus", "n"].includes(item.text)) ||
  (item?.is === "sign" && [",", "&", "-"].includes(item.text));

/** "100 plus 45", "30 - 45": a sign of a sum, no joint. */
const isSum = (items: Part, i: number) =>
  ["plus", "-"].includes((items[i] as { text?: string } | undefined)?.text ?? "") &&
  [items[i - 1], items[i + 1]].every((item) => item?.is === "amount" && item.amount.dim === "number");

/** How many items the joint at `i` takes; none where there is none. */
export function jointAt(items: Part, i: number): number {
  if (isSum(items, i)) return 0;
  let length = 0;
  while (isJoint(items[i + length])) length += 1;
  return length;
}

/** Where the next joint stands from `i` on, or the end. */
export function nextJoint(items: Part, i: number): number {
  const at = items.findIndex((item, index) => index >= i && isJoint(item));
  return at < 0 ? items.length : at;
}
