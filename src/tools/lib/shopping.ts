/** What of a bake's ingredients is on the shelf and what is to be bought, in packs where it is known how a thing is sold. */
import type { Figure, Item, Stock } from "../contract/index.ts";
import { white_g } from "./find.ts";
import { each_g, type Line, sameIngredient } from "./lines.ts";
import { moneyText } from "./money.ts";
import { eggsFor } from "./sizing.ts";

export interface Need extends Line {
  /** "shells", "buttercream" or "ganache". */
  part: string;
  /** What is on the shelf of it, at most what is needed. */
  have: number;
}

/** A large egg, of which `white_g` are white. */
const egg_g = each_g.egg ?? 50;

export const toBuy = (need: Need) => need.grams - need.have;

/** The shelf goes to the shells first, what is left of it to the fillings. Eggs are whites, 33 g each. */
export function lessStock(lines: readonly (Line & { part: string })[], stock: readonly Stock[]): Need[] {
  const left = stock.map((each) => each.grams);
  return lines.map((line) => {
    let have = 0;
    stock.forEach((each, at) => {
      if (each.name === "egg" && line.name === "whites") {
        const eggs = Math.min(Math.floor((left[at] ?? 0) / egg_g), eggsFor(Math.max(0, line.grams - have)));
        have += Math.min(line.grams - have, eggs * white_g);
        left[at] = (left[at] ?? 0) - eggs * egg_g;
        return;
      }
      if (!sameIngredient(each.name, line.name)) return;
      const taken = Math.min(left[at] ?? 0, line.grams - have);
      have += taken;
      left[at] = (left[at] ?? 0) - taken;
    });
    return { ...line, have };
  });
}

/** Shells by ingredient name; a filling's whites with its name behind, and both together where both want some. */
export function figuresOf(buys: readonly Need[]): Figure[] {
  const out = buys.map(
    (need): Figure => ({
      name:
        need.part !== "shells" && buys.some((other) => other !== need && other.name === need.name)
          ? `${need.name}, ${need.part}`
          : need.name,
      value: toBuy(need),
      unit: "g",
    }),
  );
  const twice = buys.filter(
    (need) =>
      need.part !== "shells" &&
      buys.some((other) => other.part === "shells" && sameIngredient(other.name, need.name)),
  );
  const totals = twice.map(
    (need): Figure => ({
      name: `${need.name} in all`,
      value: buys
        .filter((each) => sameIngredient(each.name, need.name))
        .reduce((sum, each) => sum + toBuy(each), 0),
      unit: "g",
    }),
  );
  return [...out, ...totals];
}

/** What is to be bought of these lines, less what is on the shelf, a line a thing in the shop. */
export function shoppingFor(
  lines: readonly (Line & { part: string })[],
  stock: readonly Stock[],
): Shopping[] {
  return shoppingList(
    lessStock(lines, stock).filter((need) => toBuy(need) > 1e-9),
    stock,
  );
}

export interface Shopping extends Line {
  packs?: number;
  pack_g?: number;
  price?: string;
}

/** One line a thing in the shop, in packs where the shelf knows how it is sold. */
export function shoppingList(buys: readonly Need[], stock: readonly Stock[]): Shopping[] {
  const lines: Line[] = [];
  for (const need of buys) {
    const known = lines.find((each) => sameIngredient(each.name, need.name));
    if (known) known.grams += toBuy(need);
    else lines.push({ name: need.name, grams: toBuy(need) });
  }
  return lines.map((line) => {
    const shelf = stock.findLast((each) => sameIngredient(each.name, line.name));
    const pack = shelf?.pack_g
      ? { packs: Math.ceil(line.grams / shelf.pack_g - 1e-9), pack_g: shelf.pack_g }
      : undefined;
    const grams = pack ? pack.packs * pack.pack_g : line.grams;
    return {
      ...line,
      ...pack,
      ...(shelf?.price_per_g !== undefined
        ? { price: moneyText(grams * shelf.price_per_g, shelf.currency ?? "USD") }
        : {}),
    };
  });
}

export function itemsOf(needs: readonly Need[], list: readonly Shopping[]): Item[] {
  const covered = needs.filter((need) => toBuy(need) <= 1e-9);
  return [
    ...list.map(
      (each): Item => ({
        buy: each.name,
        grams: each.grams,
        ...(each.packs ? { packs: each.packs, pack_g: each.pack_g } : {}),
        ...(each.price ? { price: each.price } : {}),
        ...(each.name === "whites" ? { eggs: eggsFor(each.grams) } : {}),
      }),
    ),
    ...covered.map((need): Item => ({ on_the_shelf: need.name, part: need.part, grams: need.grams })),
  ];
}
