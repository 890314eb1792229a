/** "the cream for 150 g milk, firm", "cream for 200 g white": beside cream, and behind a weight, a chocolate's kind. */
import { wordOf } from "./items.ts";
import type { Item } from "./scan.ts";

const leadsTo = new Set(["for", "with", "to", "into", "of", "another", "the"]);

const isCream = (item: Item): boolean => item.is === "thing" && item.thing.ingredient === "cream";

/** Behind it nothing that it would describe: "200 g white batter", "150 g milk powder", "white choc". */
const stands = (item: Item | undefined): boolean =>
  item === undefined ||
  item.is === "sign" ||
  (item.is === "word" && /^(?:and|or|then|plus|please|pls|to|for|too|but|is|if|what|how)$/.test(item.text)) ||
  (item.is === "thing" && Boolean(item.thing.use));

/** The items with such words as chocolates. Pure. */
export function withBareKinds(items: readonly Item[]): Item[] {
  // so much cream with so much milk is a list of what goes in
  const from = items.findIndex((item, at) => isCream(item) && items[at - 1]?.is !== "amount");
  if (from < 0) return [...items];
  return items.map((item, at) => {
    const before = items[at - 1];
    const kind = item.is === "thing" && at > from ? kindOf(item.thing) : undefined;
    if (item.is !== "thing" || !kind || before?.is !== "amount" || before.amount.dim !== "weight")
      return item;
    if (!leadsTo.has(wordOf(items[at - 2])) || !stands(items[at + 1])) return item;
    // "chocolate to cream is 350 g to 125 g white": a ratio, of which the second is the cream's
    if (wordOf(items[at - 2]) === "to" && items[at - 3]?.is === "amount") return item;
    return { ...item, thing: { ...item.thing, chocolate: kind, ingredient: `${kind} chocolate` } };
  });
}

const kindOf = ({ text, ingredient, color, base }: Extract<Item, { is: "thing" }>["thing"]) =>
  base !== undefined
    ? undefined
    : text === "milk" && ingredient === "milk"
      ? "milk"
      : text === "white" && color === "white"
        ? "white"
        : undefined;
