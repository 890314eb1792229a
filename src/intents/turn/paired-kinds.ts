/** "cream for 150 g dark, firm, and for 150 g milk, loose": the same is asked of each weight of chocolate. */
import type { Item } from "../found/scan.ts";
import { jointAt } from "./joints.ts";
import type { Ear, Part } from "./part.ts";

const kind = "\\S*<weight> (?:of )?(?:the |my )?\\S*<[^>]*chocolate=[^>]*>";
const use = "(?: (?:, )?(?:for )?(?:(?:a|to) )?(?:\\S*<use=[^>]*>|firm|loose))?";
const ends = new RegExp(` (?:for|with|to) (?:the )?${kind}${use}$`);
/** A second weight with its chocolate, and nothing else. */
const another = new RegExp(
  `^(?:for|with) (?:the |another )?${kind}${use}(?: (?:too|as well|please|pls))*(?: \\?)?$`,
);

const isCream = (item: Item): boolean => item.is === "thing" && item.thing.ingredient === "cream";
const isFor = (item: Item): boolean => item.is === "word" && /^(?:for|with|to)$/.test(item.text);
const isWeight = (item: Item): boolean => item.is === "amount" && item.amount.dim === "weight";

/** The sentence once for each of its two chocolates; itself alone where it isn't of that kind. */
export function pairedKinds(sentence: Part, ear: Ear): Part[] {
  if (sentence.filter(isWeight).length !== 2 || !sentence.some(isCream)) return [sentence];
  const second = sentence.findLastIndex(isWeight);
  const at = sentence.findLastIndex((_item, i) => i < second && jointAt(sentence, i) > 0);
  if (at < 0) return [sentence];
  const [left, right] = [sentence.slice(0, at), sentence.slice(at + jointAt(sentence, at))];
  if (!another.test(ear.mask(right)) || !ends.test(ear.mask(left)) || !left.some(isCream)) return [sentence];
  const first = left.findIndex(isWeight);
  const head = left.slice(
    0,
    left.findLastIndex((item, i) => i < first && isFor(item)),
  );
  return head.some(isCream) ? [left, [...head, ...right]] : [sentence];
}
