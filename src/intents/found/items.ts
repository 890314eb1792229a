/** What is asked of any item of a scan, whatever it is. */
import type { Span } from "../../tools/contract/index.ts";
import type { Item } from "./scan.ts";

/** A plain word's text; "" for anything else. */
export const wordOf = (item: Item | undefined): string => (item?.is === "word" ? item.text : "");

export const isWord = (item: Item | undefined, text: string): boolean => wordOf(item) === text;

/** What was found of an item: a word or a sign itself, else the amount, the thing or the moment. */
const foundOf = (item: Item): { text: string; at: Span } => {
  if (item.is === "thing") return item.thing;
  if (item.is === "amount") return item.amount;
  return item.is === "when" ? item.when : item;
};

/** As it was said, typos mended. */
export const textOf = (item: Item): string => foundOf(item).text;

/** From where to where it stands in the text. */
export const spanOf = (item: Item): Span => foundOf(item).at;

export type AmountItem = Item & { is: "amount" };

/** A plain number, and no share or measure; "2-3" is one too. */
export const isNumber = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.dim === "number" && item.amount.unit === "" && !item.amount.fraction;

/** So many of something. */
export const isCount = (item: Item | undefined): item is AmountItem =>
  isNumber(item) && item.amount.high === undefined && Number.isInteger(item.amount.value);

export const isWeight = (item: Item | undefined): item is AmountItem =>
  item?.is === "amount" && item.amount.dim === "weight";

/** "30 g each", "2 ml apiece". */
export const eachOne: ReadonlySet<string> = new Set(["each", "apiece"]);
