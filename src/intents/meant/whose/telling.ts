/** A turn as a line of words in which amounts and things are signs with their place: "ive got #2 of @4 , how much @7". */
import type { Amount, Thing } from "../../../tools/contract/index.ts";
import { inBase } from "../../../tools/lib/units.ts";
import { spanOf } from "../../found/items.ts";
import type { Item } from "../../found/scan.ts";

/** What one item is in the line; "@4f" is the plain word flavor, which may be a verb ("i flavor 200 g"). */
function wordAt(item: Item, at: number): string {
  if (item.is === "amount") return `#${at}`;
  if (item.is === "when") return "~";
  // "i'll thaw 150 g", "i'm cracking 5": what is done
  if (item.is === "thing" && /^(?:thaw|crack)(?:ed|ing|s)?$/.test(item.thing.text)) return item.thing.text;
  if (item.is === "thing") return /^flavou?r(?:s|ing)?$/.test(item.thing.text) ? `@${at}f` : `@${at}`;
  return item.text;
}

/** The line of the items from one place to another. */
export const lineOf = (items: readonly Item[], from = 0, to = items.length): string =>
  items
    .slice(from, to)
    .map((item, at) => wordAt(item, from + at))
    .join(" ");

/** The place that stands in "#12" or "@12f"; -1 without one. */
export const placeIn = (sign: string | undefined): number => Number(/\d+/.exec(sign ?? "")?.[0] ?? -1);

export const amountAt = (items: readonly Item[], at: number): Amount | undefined => {
  const item = items[at];
  return item?.is === "amount" ? item.amount : undefined;
};

export const thingAt = (items: readonly Item[], at: number): Thing | undefined => {
  const item = items[at];
  return item?.is === "thing" ? item.thing : undefined;
};

/** What an amount is of: the thing right behind it, with or without "of the". */
export function thingOf(items: readonly Item[], at: number): Thing | undefined {
  const behind = /^(?:(?:of|the|my|her|his|their|a|plain|large|big|fresh) )*@(\d+)/.exec(
    lineOf(items, at + 1, at + 6),
  );
  return behind ? thingAt(items, placeIn(behind[1])) : undefined;
}

/** In base units, so that two of a kind can be held against each other. */
export const sizeOf = ({ value, unit }: Amount): number =>
  unit === "" || unit === "times" ? value : inBase(value, unit);

/** Amounts of which one can stand in the other's place: both weights, both counts, both sizes, a bare number beside either. */
export const isAlike = (one: Amount, other: Amount): boolean =>
  [one, other].every(
    ({ dim, unit, fraction }) =>
      (dim === "weight" || dim === "length" || (dim === "number" && !fraction)) && unit !== "times",
  ) &&
  (one.dim === other.dim || one.unit === "" || other.unit === "");

/** What is worked from: a mix, an ingredient, what is counted; no flavor. */
export const isStuff = (thing: Thing | undefined): boolean =>
  Boolean(
    thing &&
      (thing.base || (thing.ingredient && !thing.dose && !thing.taste) || thing.chocolate || thing.count),
  );

/** "ganache" and "dark ganache", "eggs" and "the whites". */
export function isSameStuff(one: Thing, other: Thing): boolean {
  if (one.id === other.id) return true;
  if (one.base || other.base) return one.base === other.base;
  if (one.count && other.count) return one.count === other.count;
  const isEgg = ({ ingredient }: Thing) => /^(?:egg|.*whites)$/.test(ingredient ?? "");
  return (
    (isEgg(one) && isEgg(other)) || (one.ingredient !== undefined && one.ingredient === other.ingredient)
  );
}

/** The text from the first item to before the last. */
export const textFrom = (text: string, items: readonly Item[], from: number, to: number): string => {
  const [first, last] = [items[from], items[to - 1]];
  return first && last && to > from ? text.slice(spanOf(first)[0], spanOf(last)[1]) : "";
};

export type Part = "chocolate" | "cream";

/** Which part of a ganache a thing is. */
export const partOf = (thing: Thing | undefined): Part | undefined => {
  if (!thing || thing.base) return undefined;
  if (thing.ingredient === "cream" || thing.ingredient === "light whipping cream") return "cream";
  return thing.chocolate || /chocolate$/.test(thing.ingredient ?? "") ? "chocolate" : undefined;
};

const uses = /\b(?:pip(?:e|ing|eable)|fill(?:ing)?|glaz(?:e|ing)|drip|truffles?|roll)\b/;

/** " for piping", what the ganache is for; nothing where it isn't said. */
export function aimSaid(text: string): string {
  const [said] = uses.exec(text) ?? [];
  return said ? ` for ${said.startsWith("pip") ? "piping" : said}` : "";
}

/** Something of another kind is measured beside it: what is put anew would lose that. */
export const holdsOther = (items: readonly Item[]): boolean =>
  items.some((item) => item.is === "amount" && !["weight", "volume", "number"].includes(item.amount.dim));

/** Words that are looked for one by one. */
export const listed = (words: string): ReadonlySet<string> => new Set(words.split(" "));
