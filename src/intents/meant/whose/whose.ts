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

/** The text of the turn put so; undefined where it says nothing of the kind. */
export function ownAmounts(text: string, items: readonly Item[]): string | undefined {
  const amounts = items.filter((item) => item.is === "amount").length;
  if (items.length > longest) return undefined;
  const broken =
    brokenOne(text, items) ??
    (amounts < 2 ? undefined : (withoutTheirTimers(text, items) ?? withoutTheirGear(text, items)));
  if (broken !== undefined) return broken;
  if (keeps.test(text)) return undefined;
  const told = onlyNews(text, items) ?? onlyTheFault(text, items);
  if (told !== undefined) return told;
  if (isPassingNews(text, items)) return "ok";
  if (amounts === 0) return undefined;
  const apart =
    amounts < 2
      ? undefined
      : (withoutCalledOff(text, items) ??
        withItsChocolate(text, items) ??
        onlyNeeded(items) ??
        withoutSetApart(text, items));
  if (apart !== undefined) return apart;
  const alone = allOfOne(text, items) ?? partAlone(text, items) ?? withoutOthers(text, items);
  if (alone !== undefined) return alone;
  return amounts < 2 ? undefined : (asSupposed(text, items) ?? ofStock(text, items));
}
