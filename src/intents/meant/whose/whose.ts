/**
 * Whose an amount is, and whether it is meant: what others have, what lies in the cupboard, what there is in truth beside
 * what is supposed. Such a turn is put plainly, without it.
 */
import type { Item } from "../../found/scan.ts";
import { withoutOthers } from "./of-others.ts";
import { asSupposed } from "./supposed.ts";
import { ofStock } from "./used-of.ts";

/** What is written down is kept as it was told, and a timer is nobody else's. */
const keeps =
  /\b(?:notes?|log|write|written|jot|save|remember|remind|record|labels?|stock|timers?|alarm|out of (?:ten|10|five|5)|sell|cost|price)\b|\/ ?10\b/;

/** No such scene is told in a longer turn. */
const longest = 70;

/** The text of the turn put so; undefined where it says nothing of the kind. */
export function ownAmounts(text: string, items: readonly Item[]): string | undefined {
  const amounts = items.filter((item) => item.is === "amount").length;
  if (amounts === 0 || items.length > longest || keeps.test(text)) return undefined;
  const alone = withoutOthers(text, items);
  if (alone !== undefined) return alone;
  return amounts < 2 ? undefined : (asSupposed(text, items) ?? ofStock(text, items));
}
