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
