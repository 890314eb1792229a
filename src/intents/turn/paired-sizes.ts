/** "filling for 54 macarons and for 18", "batter for 24 and 48 macarons": the same is asked of each number. */
import type { Item } from "../found/scan.ts";
import { jointAt } from "./joints.ts";
import type { Ear, Part } from "./part.ts";

/** Calculators that go by how many there are to be. */
const counting: ReadonlySet<string> = new Set(["shells", "fill"]);

const counted = "(?:(?:[a-z]+ )?\\S*<count=(?:macarons|shells)[^>]*>)";
const politely = "(?: (?:too|as well|please|pls|then|also))*(?: \\?)?";
/** A second number, and nothing else. */
const another = new RegExp(`^(?:for )?(?:the |another )?\\S*<number>(?: ${counted})?${politely}$`);
/** What ends with the first one. */
const endsCounted = new RegExp(` for (?:the )?\\S*<number>(?: ${counted})?$`);

const isFor = (item: Item | undefined): boolean => item?.is === "word" && item.text === "for";
const isCount = (item: Item): boolean =>
  item.is === "thing" && (item.thing.count === "macarons" || item.thing.count === "shells");

/** The sentence once for each of its two numbers; itself alone where it isn't of that kind. */
export function pairedSizes(sentence: Part, ear: Ear): Part[] {
  const isAmount = (item: Item) => item.is === "amount";
  if (sentence.filter(isAmount).length !== 2 || !sentence.some(isCount)) return [sentence];
  const number = sentence.findIndex(isAmount);
  const at = sentence.findIndex((_item, i) => i > number && jointAt(sentence, i) > 0);
  const joint = at < 0 ? 0 : jointAt(sentence, at);
  const [left, right] = [sentence.slice(0, at), sentence.slice(at + joint)];
  if (joint === 0 || !another.test(ear.mask(right)) || !endsCounted.test(ear.mask(left))) return [sentence];
  if (!counting.has(ear.claimed(left)?.name ?? "")) return [sentence];
  const from = left.findLastIndex(isFor);
  const count = right.find(isCount);
  const first = left.slice(from).some(isCount) || !count ? left : [...left, count];
  // "for" is said once or twice
  const head = left.slice(0, isFor(right[0]) ? from : from + 1);
  const owner = left.slice(from).find(isCount);
  const second = right.some(isCount) || !owner ? right : [...right.slice(0, 2), owner, ...right.slice(2)];
  return [first, [...head, ...second]];
}
