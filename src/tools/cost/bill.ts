/** Adds up everything that costs: lines by their prices, packaging, labor. */
import type { Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { white_g } from "../lib/find.ts";
import { each_g, sameIngredient } from "../lib/lines.ts";
import { dollars, moneyText } from "../lib/money.ts";
import { listed, plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";
import { isOf } from "./one-line.ts";
import { recipeOf } from "./recipe.ts";

interface Part {
  name: string;
  amount: number;
  /** "130 g × 16 USD a kg". */
  sum: string;
}

export interface Bill {
  parts: Part[];
  total: number;
  ingredients?: number;
  currency: string;
  own: boolean;
  assumed: string[];
}

/** A bare $ is the bench's own dollar where one is set; no sign at all is the bench's currency, or USD. */
export function currencyOf(inputs: CostInputs, world: World): string {
  const { currency, bare_sign } = inputs;
  const set = world.bench.currency;
  if (bare_sign === "$" && set && dollars.includes(set)) return set;
  return currency ?? set ?? "USD";
}

/** The boxes that go with what is asked about; a part of a box where a price is laid against a share of them. */
function boxesIn({ boxes, box_of, macarons, price, margin_percent, markup_percent }: CostInputs): number {
  if (boxes !== undefined) return boxes;
  if (box_of === undefined || macarons === undefined) return 1;
  const share = macarons / box_of;
  const isPriced = [price, margin_percent, markup_percent].some((each) => each !== undefined);
  return isPriced || share < 1 ? share : Math.ceil(share - 1e-9);
}

/** Everything that costs; undefined when nothing was said of it, an outcome when something is missing. */
export function billOf(inputs: CostInputs, world: World): Bill | Outcome | undefined {
  const { lines, assumed, taught } = recipeOf(inputs, world);
  const parts: Part[] = [];
  let currency = currencyOf(inputs, world);
  let own = taught.length > 0;
  const missing: string[] = [];
  const ofEggs: string[] = [];
  let asked = 0;
  let shelf = inputs.currency;
  for (const { name, grams, price_per_g } of lines ?? []) {
    const saidEgg = name === "whites" ? ofEgg(inputs.prices) : undefined;
    const said = price_per_g ?? inputs.prices?.find((each) => isOf(each.name, name))?.price_per_g ?? saidEgg;
    const priced = world.stock.filter((each) => each.price_per_g !== undefined);
    const egg = priced.findLast((each) => each.name === "egg");
    const stock =
      priced.findLast((each) => sameIngredient(each.name, name)) ??
      priced.findLast((each) => isOf(each.name, name)) ??
      (name === "whites" && egg ? { ...egg, price_per_g: ofEgg([egg]) } : undefined);
    if (name === "whites" && (said !== undefined ? said === saidEgg : stock?.name === "egg"))
      ofEggs.push(`${plain(white_g)} g of white from an egg, which is paid for whole`);
    // prices that were asked for come in the order of the lines that had none
    const price = said ?? stock?.price_per_g ?? inputs.more_prices?.[asked++];
    if (price === undefined) {
      missing.push(name);
      continue;
    }
    if (said === undefined && stock) {
      own = true;
      shelf ??= stock.currency;
      if (stock.currency && stock.currency !== shelf)
        return {
          status: "impossible",
          headline: `${name} is priced in ${stock.currency} on your shelf, the rest in ${shelf}: say it all in one currency.`,
        };
      currency = shelf ?? currency;
    }
    parts.push({
      name,
      amount: grams * price,
      sum: `${plain(grams)} g ${name} × ${moneyText(price * 1000, currency)} a kg`,
    });
  }
  if (missing[0] !== undefined)
    return asking(
      `What does a kilo of ${missing[0]} cost?${missing.length > 1 ? ` There is no price yet for ${listed(missing)}.` : ""}`,
      "more_prices",
    );
  if (inputs.of_which !== undefined)
    return asking(
      `Which of them is at that price: ${listed(
        (inputs.lines ?? []).map(({ name }) => name),
        "or",
      )}?`,
      "of_which",
    );
  if (inputs.lacks !== undefined)
    return asking(`There is no ${inputs.lacks} in what was priced: how many grams of it go in?`, "lacks");
  const fromLines = parts.reduce((sum, each) => sum + each.amount, 0);
  const add = (name: string, amount: number | undefined, sum = name) =>
    amount !== undefined && parts.push({ name, amount, sum });
  add("ingredients", inputs.ingredients);
  add("cost", inputs.cost);
  add("packaging", inputs.packaging);
  const boxes = boxesIn(inputs);
  if (inputs.box_packaging !== undefined)
    add(
      "packaging",
      inputs.box_packaging * boxes,
      boxes === 1 ? "packaging" : `${plain(boxes, 2)} boxes × ${moneyText(inputs.box_packaging, currency)}`,
    );
  add("labor", inputs.labor);
  const rate = inputs.labor_per_h ?? (inputs.labor_min !== undefined ? world.bench.labor_per_h : undefined);
  if (inputs.labor_min !== undefined && rate === undefined)
    return asking("What is an hour of work worth?", "labor_per_h");
  if (rate !== undefined && inputs.labor_min !== undefined) {
    if (inputs.labor_per_h === undefined) own = true;
    add(
      "labor",
      (inputs.labor_min / 60) * rate,
      `${plain(inputs.labor_min / 60)} h × ${moneyText(rate, currency)}`,
    );
  }
  if (parts.length === 0) return undefined;
  const total = parts.reduce((sum, each) => sum + each.amount, 0);
  const ingredients =
    lines?.length || inputs.ingredients !== undefined ? fromLines + (inputs.ingredients ?? 0) : undefined;
  const unused = (lines?.length ? (inputs.prices ?? []) : []).filter(
    ({ name }) => !lines?.some((line) => isOf(name, line.name) || (name === "egg" && line.name === "whites")),
  );
  return {
    parts,
    total,
    ...(ingredients !== undefined ? { ingredients } : {}),
    currency,
    own,
    assumed: [
      ...assumed,
      ...ofEggs,
      ...(unused.length > 0
        ? [
            `no ${listed(
              unused.map((each) => each.name),
              "or",
            )} in it, so its price isn't used`,
          ]
        : []),
    ],
  };
}

/** What a gram of white costs of eggs that are bought whole. */
function ofEgg(
  prices: readonly { name: string; price_per_g?: number | undefined }[] = [],
): number | undefined {
  const egg = prices.findLast((each) => each.name === "egg")?.price_per_g;
  return egg === undefined ? undefined : (egg * (each_g.egg ?? 0)) / white_g;
}

/** The share of one box in what all of them cost. */
export const ofOneBox = (bill: Bill, boxes: number): Bill => ({
  ...bill,
  total: bill.total / boxes,
  parts: [
    {
      name: "a box",
      amount: bill.total / boxes,
      sum: `${moneyText(bill.total, bill.currency)} / ${plain(boxes)} boxes`,
    },
  ],
});
