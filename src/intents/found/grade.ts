/** "200 g of 70 % cocoa dark chocolate", "70 g 35 % cream": a share that only says which chocolate or cream it is. */
import type { Item } from "./scan.ts";

const gradeWords = new Set(["cocoa", "cacao", "fat", "solids", "coco"]);
const creams = new Set(["cream", "light cream", "light whipping cream", "sour cream", "milk"]);

/** What such a share can describe: a chocolate or a cream, never a flavor. */
const isGraded = (item: Item | undefined): boolean =>
  item?.is === "thing" &&
  !item.thing.dose &&
  Boolean(
    item.thing.chocolate ||
      /chocolate/.test(item.thing.ingredient ?? "") ||
      creams.has(item.thing.ingredient ?? ""),
  );

const textOf = (item: Item | undefined): string | undefined =>
  item?.is === "thing" ? item.thing.text : item?.is === "word" ? item.text : undefined;

/** Where the share at `at` ends, "cocoa" included, when what follows is what it describes; else undefined. */
export function gradeEnd(items: readonly Item[], at: number): number | undefined {
  const share = items[at];
  if (share?.is !== "amount" || share.amount.dim !== "percent") return undefined;
  let next = at + 1;
  while (gradeWords.has(textOf(items[next]) ?? "")) next += 1;
  return isGraded(items[next]) ? next : undefined;
}

/** The items with the "cocoa" of a grade as a plain word, so that nobody takes it for the powder. */
export function plainGrades(items: readonly Item[]): Item[] {
  const out = [...items];
  items.forEach((_, at) => {
    const end = gradeEnd(items, at) ?? at;
    for (let i = at + 1; i < end; i++) {
      const item = items[i];
      if (item?.is === "thing") out[i] = { is: "word", text: item.thing.text, at: item.thing.at };
    }
  });
  return out;
}
