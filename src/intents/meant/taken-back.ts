/** "300, no hang on, 280 g", "ten minutes timer, no make it 13": the amount said last stands in the place of the one before. */
import { leadingWords, takingBack, takingBackPhrases } from "../../../data/words/openers.ts";
import type { Amount } from "../../tools/contract/index.ts";
import { wordOf } from "../found/items.ts";
import type { Item } from "../found/scan.ts";

/** One of the phrases at least stands between the two. */
const back = new RegExp(`(?:^| )(?:${takingBack})(?= |$)`);
const between = new Set([
  ...takingBackPhrases.flatMap((phrase) => phrase.split(" ")),
  ...leadingWords.filter((word) => !["and", "then", "please", "pls"].includes(word)),
  ..."make it that its thats is say i".split(" "),
]);
/** So many words may stand behind the first amount: "ten minutes timer", "240 g of the lemon buttercream". */
const mostBehind = 5;

/** The items with each amount that is taken back gone, what replaces it in its place. Pure. */
export function withoutTakenBack(items: readonly Item[]): Item[] {
  for (let at = 2; at < items.length; at++) {
    const meant = items[at];
    if (meant?.is !== "amount") continue;
    let from = at;
    while (isBetween(items[from - 1])) from -= 1;
    const said = items.slice(from, at);
    // "make that 71" takes back by itself; "make it 3 %" may be an order
    const makes = wordOf(said.at(-2)) === "make" && wordOf(said.at(-1)) === "that";
    const begun = !makes && isBegunAgain(items, from, at, meant.amount);
    if (!makes && !begun && !back.test(said.map(wordOf).filter(Boolean).join(" "))) continue;
    const old = lastAmount(items, from);
    const before = items[old];
    if (before?.is !== "amount") continue;
    // "four sticks, no sorry, 350 g of butter": broken off before it was said of what
    const isBrokenOff =
      begun ||
      (old === from - 1 &&
        (inOtherUnit(before.amount, meant.amount) ||
          (isLike(before.amount, meant.amount) &&
            (isSurelyBack(said, items, at) || isNear(before.amount, meant.amount)))));
    if (!isBrokenOff && !isLike(before.amount, meant.amount)) continue;
    if (!isBrokenOff && !standsAlone(items, at) && !isOfSame(items, old, at)) continue;
    // "8 min and another, no two": of what came in between
    if (items.slice(old + 1, from).some((item) => /^(?:and|another|or|plus|each)$/.test(wordOf(item))))
      continue;
    const put: Item = { is: "amount", amount: inPlaceOf(before.amount, meant.amount) };
    return withoutTakenBack([
      ...items.slice(0, old),
      put,
      ...items.slice(old + 1, from),
      // "2 eggs, no wait 3 eggs": said twice
      ...items.slice(isOfSame(items, old, at) ? thingBehind(items, at) + 1 : at + 1),
    ]);
  }
  return [...items];
}

const isBetween = (item: Item | undefined): boolean =>
  between.has(wordOf(item)) || (item?.is === "sign" && /^[,.-]$/.test(item.text));

function lastAmount(items: readonly Item[], end: number): number {
  for (let at = end - 1; at >= Math.max(0, end - 1 - mostBehind); at--)
    if (items[at]?.is === "amount") return at;
  return -1;
}

/** Nothing behind it that it would be an amount of: "no, 100 g cream" may be another thing. */
function standsAlone(items: readonly Item[], at: number): boolean {
  const next = items[at + 1];
  return (
    !next ||
    next.is === "sign" ||
    (next.is === "word" &&
      /^(?:in|into|for|to|how|what|whats|please|pls|sorry|flavou?r|so|and|then|now|thats|is|its|do|does|can|right|there|here|on|altogether|timer|alarm)$/.test(
        next.text,
      ))
  );
}

/** The same thing stands behind both: "2 eggs, no wait 3 eggs", "200 g of cream, no wait, 250 g of cream". */
function isOfSame(items: readonly Item[], old: number, at: number): boolean {
  const [one, other] = [items[thingBehind(items, old)], items[thingBehind(items, at)]];
  return one?.is === "thing" && other?.is === "thing" && one.thing.id === other.thing.id;
}

/** Where the thing right behind an amount stands. */
const thingBehind = (items: readonly Item[], at: number): number =>
  wordOf(items[at + 1]) === "of" ? at + 2 : at + 1;

const isLike = (old: Amount, meant: Amount): boolean =>
  meant.high === undefined &&
  old.unit !== "times" &&
  meant.unit !== "times" &&
  (old.dim === meant.dim ||
    isBare(meant) ||
    (isBare(old) && ["weight", "time", "percent", "temperature"].includes(meant.dim)));
/** "eight grams, no sorry, nine grams of orange": more than a "no", which may be of what follows, and one thing behind. */
function isSurelyBack(said: readonly Item[], items: readonly Item[], at: number): boolean {
  const words = said.map(wordOf).filter((word) => word !== "");
  const isOfOne = items[at + 1]?.is === "thing" || wordOf(items[at + 1]) === "of";
  return isOfOne && words.some((word) => /^(?:sorry|wait|mean|meant|actually|rather|hang|hold)$/.test(word));
}

/** "the batter is four hundred, it's four hundred and thirty grams": the number alone was broken off. */
function isBegunAgain(items: readonly Item[], from: number, at: number, meant: Amount): boolean {
  const before = items[from - 1];
  const said = items.slice(from, at).map(wordOf);
  if (before?.is !== "amount" || !isBare(before.amount) || before.amount.fraction) return false;
  return (
    meant.dim === "weight" &&
    isNear(before.amount, meant) &&
    said.some((word) => /^(?:its|is)$/.test(word)) &&
    said.every((word) => /^(?:|oh|no|its|it|is|that|thats)$/.test(word))
  );
}

/**
 * "flavor for 240, no 260 g buttercream": a slip is near what is meant, half as much again or two thirds of it at most. From
 * memory: what is misread off a scale is a figure in it, and no other bowl.
 */
const furthest = 3 / 2;
/** Less is a dose or a count, of which two stand beside each other in a question of two. From memory: no bowl is so small. */
const leastSlip = 20;

function isNear(old: Amount, meant: Amount): boolean {
  const times = meant.value / old.value;
  return old.value >= leastSlip && times > 1 / furthest && times < furthest;
}

/** A weight instead of a volume, or the other way round. */
const inOtherUnit = (old: Amount, meant: Amount): boolean =>
  meant.high === undefined &&
  [old, meant].some(({ dim }) => dim === "volume") &&
  [old, meant].every(({ dim }) => dim === "volume" || dim === "weight");
const isBare = ({ dim, unit }: Amount): boolean => dim === "number" && unit === "";

/** "13" behind "ten minutes" is of minutes. */
function inPlaceOf({ dim, unit, at }: Amount, meant: Amount): Amount {
  return isBare(meant) ? { ...meant, dim, unit, at } : { ...meant, at };
}
