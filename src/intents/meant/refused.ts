/** "6 ounces, not half a pound", "12 g instead of 9": the amount that isn't meant, where it stands alone behind its word. */
import type { Amount } from "../../tools/contract/index.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

/** The items without such an amount and the word before it; all of them where no other of its kind is said. Pure. */
export function withoutRefused(items: readonly Item[]): Item[] {
  const at = items.findIndex(
    (item, place) => item.is === "amount" && leadOf(items, place) > 0 && standsAlone(items, place),
  );
  const refused = items[at];
  if (refused?.is !== "amount") return [...items];
  const others = items.some(
    (item) => item.is === "amount" && item !== refused && isLike(item.amount, refused.amount),
  );
  // "4 % pistachio, not 4 g, 4 percent": the same number, and said twice of what
  const meant = items.find(
    (item, place) => item.is === "amount" && place < at && isOtherUnit(item.amount, refused.amount),
  );
  if (!others && !meant) return [...items];
  return items.filter(
    (item, place) =>
      (place > at || place < at - leadOf(items, at)) &&
      !(place > at && meant !== undefined && isSaidAgain(item, meant) && standsAlone(items, place)),
  );
}

const isOtherUnit = (one: Amount, refused: Amount): boolean =>
  one.value === refused.value && one.dim === "percent" && refused.dim === "weight";

const isSaidAgain = (item: Item, meant: Item): boolean =>
  item.is === "amount" &&
  meant.is === "amount" &&
  item.amount.dim === meant.amount.dim &&
  item.amount.value === meant.amount.value;

/** How many words before an amount refuse it. */
function leadOf(items: readonly Item[], at: number): number {
  const [two, one] = [wordOf(items[at - 2]), wordOf(items[at - 1])];
  if ((two === "instead" && one === "of") || (two === "rather" && one === "than")) return 2;
  if (one !== "not") return 0;
  // "not 3 %, 4 % flavor": at the beginning only where the right one stands behind a comma
  const next = items[at + 2];
  return at > 1 || (items[at + 1]?.is === "sign" && next?.is === "amount") ? 1 : 0;
}

/** Nothing behind it that it would be an amount of: "not 100 g cream" says which. */
function standsAlone(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  return (
    !next ||
    next.is === "sign" ||
    (next.is === "word" && /^(?:in|into|for|to|and|but|so|at)$/.test(next.text))
  );
}

const isLike = (one: Amount, refused: Amount): boolean =>
  one.dim === refused.dim || (refused.dim === "number" && ["weight", "percent", "time"].includes(one.dim));
