/**
 * Whose an amount is, and whether it is meant: what others have, what lies in the cupboard, what there is in truth beside
 * what is supposed. Such a turn is put plainly, without it.
 */
import type { Item } from "../../found/scan.ts";
import { allOfOne } from "./all-of-one.ts";
import { withItsChocolate, withoutCalledOff } from "./called-off.ts";
import { withoutOthers } from "./of-others.ts";
import { brokenOne, onlyTheFault } from "./one-is-fine.ts";
import { onlyNews } from "./only-news.ts";
import { partAlone } from "./part-alone.ts";
import { isPassingNews } from "./passing-news.ts";
import { onlyNeeded, withoutSetApart } from "./set-apart.ts";
import { asSupposed } from "./supposed.ts";
import { withoutTheirGear, withoutTheirTimers } from "./timer-of-others.ts";
import { ofStock } from "./used-of.ts";

/** What is written down is kept as it was told, and a timer is nobody else's. */
const keeps =
  /\b(?:notes?|log|write|written|jot|save|remember|remind|record|labels?(?! (?:says|said|reads))|stock|timers?|alarm|out of (?:ten|10|five|5)|sell|cost|price)\b|\/ ?10\b/;

/** No such scene is told in a longer turn. */
const longest = 70;

/** A turn that is only heard is read as a nod. */
const heard = "ok";

/** How such a turn is put plainly, and how many amounts it holds at least. */
interface Way {
  least: number;
  put: (text: string, items: readonly Item[]) => string | undefined;
}
const way = (least: number, put: Way["put"]): Way => ({ least, put });

/** Asked in their order, whatever else the turn is. */
const always: readonly Way[] = [way(0, brokenOne), way(2, withoutTheirTimers), way(2, withoutTheirGear)];
/** Asked in their order where nothing is written down or set to ring. */
const unlessKept: readonly Way[] = [
  way(0, onlyNews),
  way(0, onlyTheFault),
  way(0, (text, items) => (isPassingNews(text, items) ? heard : undefined)),
  way(2, withoutCalledOff),
  way(2, withItsChocolate),
  way(2, (_, items) => onlyNeeded(items)),
  way(2, withoutSetApart),
  way(1, allOfOne),
  way(1, partAlone),
  way(1, withoutOthers),
  way(2, asSupposed),
  way(2, ofStock),
];

/** The text of the turn put so; undefined where it says nothing of the kind. */
export function ownAmounts(text: string, items: readonly Item[]): string | undefined {
  if (items.length === 0 || items.length > longest) return undefined;
  const amounts = items.filter((item) => item.is === "amount").length;
  for (const { least, put } of keeps.test(text) ? always : [...always, ...unlessKept]) {
    const plain = amounts < least ? undefined : put(text, items);
    if (plain !== undefined) return plain;
  }
  return undefined;
}
