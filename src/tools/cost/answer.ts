/** Adds the cost up and turns it into price, margin, markup or food cost. */
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { sellingCaution } from "../lib/care.ts";
import { sameIngredient } from "../lib/lines.ts";
import { moneyText } from "../lib/money.ts";
import { listed, plain } from "../lib/show.ts";
import { batterFor, houseLines, sizing } from "../lib/sizing.ts";
import type { CostInputs } from "./cost.ts";

/** The slot of a price that is asked for holds whose it is. */
export const priceSlot = "price of ";

interface Part {
  name: string;
  amount: number;
  /** "130 g × 16 USD a kg". */
  sum: string;
}

interface Bill {
  parts: Part[];
  total: number;
  ingredients?: number;
  currency: string;
  own: boolean;
  assumed: string[];
}

const asking = (question: string, slot: string): Outcome => ({ status: "asking", headline: question, question, slot });
const dollars = ["USD", "CAD", "AUD", "NZD", "SGD", "HKD"];
/** @throws never: what is missing comes back as `asking`, what can't be as `impossible`. */
export function answerCost(inputs: CostInputs, world: World): Outcome {
  if (inputs.mixed) return { status: "impossible", headline: `I can't add ${inputs.mixed}: say it all in one currency.` };
  const bill = billOf(inputs, world);
  if (bill && "status" in bill) return bill;
  const shared = inputs.margin_percent !== undefined || inputs.markup_percent !== undefined || inputs.food_cost_percent !== undefined;
  const want = inputs.want ?? (shared ? "price" : inputs.price !== undefined ? "margin" : "cost");
  if (!bill) return inputs.price !== undefined && inputs.margin_percent !== undefined ? backward(inputs, world) : asking("What does it cost to make?", "cost");
  if (want === "price") return priceOf(inputs, bill);
  if (want === "cost") return costAlone(inputs, bill);
  if (inputs.price === undefined) {
    if (inputs.margin_percent === undefined && inputs.markup_percent === undefined) return asking("What do you sell it for?", "price");
    return priceOf(inputs, bill);
  }
  return sharesOf(bill, inputs.price, want);
}

function currencyOf(inputs: CostInputs, world: World): string {
  const { currency, bare_sign } = inputs;
  const set = world.bench.currency;
  if (bare_sign === "$" && set && dollars.includes(set)) return set;
  return currency ?? set ?? "USD";
}

/** Everything that costs; undefined when nothing was said of it, an outcome when something is missing. */
function billOf(inputs: CostInputs, world: World): Bill | Outcome | undefined {
  const assumed: string[] = [];
  const lines = recipeOf(inputs, world, assumed);
  const parts: Part[] = [];
  let currency = currencyOf(inputs, world);
  let own = false;
  const missing: string[] = [];
  for (const { name, grams, price_per_g } of lines ?? []) {
    const said = price_per_g ?? inputs.prices?.find((each) => sameIngredient(each.name, name))?.price_per_g;
    const stock = world.stock.findLast((each) => sameIngredient(each.name, name) && each.price_per_g !== undefined);
    const price = said ?? stock?.price_per_g;
    if (price === undefined) {
      missing.push(name);
      continue;
    }
    if (said === undefined && stock) {
      own = true;
      if (stock.currency && inputs.currency === undefined) currency = stock.currency;
      else if (stock.currency && stock.currency !== currency) return { status: "impossible", headline: `${name} is priced in ${stock.currency} on your shelf, the rest in ${currency}: say it all in one currency.` };
    }
    parts.push({ name, amount: grams * price, sum: `${plain(grams)} g ${name} × ${moneyText(price * 1000, currency)} a kg` });
  }
  if (missing[0] !== undefined) return asking(`What does a kilo of ${missing[0]} cost?${missing.length > 1 ? ` There is no price yet for ${listed(missing)}.` : ""}`, `${priceSlot}${missing[0]}`);
  const fromLines = parts.reduce((sum, each) => sum + each.amount, 0);
  const add = (name: string, amount: number | undefined, sum = name) => amount !== undefined && parts.push({ name, amount, sum });
  add("ingredients", inputs.ingredients);
  add("cost", inputs.cost);
  add("packaging", inputs.packaging);
  add("labor", inputs.labor);
  const rate = inputs.labor_per_h ?? (inputs.labor_min !== undefined ? world.bench.labor_per_h : undefined);
  if (inputs.labor_min !== undefined && rate === undefined) return asking("What is an hour of work worth?", "labor_per_h");
  if (rate !== undefined && inputs.labor_min !== undefined) {
    if (inputs.labor_per_h === undefined) own = true;
    add("labor", (inputs.labor_min / 60) * rate, `${plain(inputs.labor_min / 60)} h × ${moneyText(rate, currency)}`);
  }
  if (parts.length === 0) return undefined;
  const total = parts.reduce((sum, each) => sum + each.amount, 0);
  const ingredients = lines?.length || inputs.ingredients !== undefined ? fromLines + (inputs.ingredients ?? 0) : undefined;
  return { parts, total, ...(ingredients !== undefined ? { ingredients } : {}), currency, own, assumed };
}

/** The lines said, a saved formula's, or the house shells for a number of macarons. */
function recipeOf(inputs: CostInputs, world: World, assumed: string[]): CostInputs["lines"] {
  if (inputs.lines) return inputs.lines;
  const saved = inputs.formula && world.formulas.find((each) => each.name.toLowerCase() === inputs.formula?.toLowerCase());
  if (saved) return saved.lines;
  if (inputs.want !== "cost" || inputs.macarons === undefined || inputs.cost !== undefined || inputs.ingredients !== undefined) return undefined;
  const size = sizing(undefined, world.bench);
  assumed.push(`house shells for ${plain(inputs.macarons)} macarons of ${plain(size.diameter_mm)} mm, without filling`);
  return houseLines(batterFor(inputs.macarons, size.diameter_mm, world.bench));
}

const basis = (bill: Bill): Rule["basis"] => (bill.own ? "your bench" : "arithmetic");
const percent = (value: number) => `${plain(value, 1)} %`;

function working({ parts, total, currency }: Bill): string[] {
  const [only] = parts;
  if (parts.length === 1 && only && !only.sum.includes("×")) return [`cost ${moneyText(total, currency)}`];
  return [...parts.map((each) => `${each.sum} = ${moneyText(each.amount, currency)}`), `cost = ${parts.map((each) => moneyText(each.amount, currency)).join(" + ")} = ${moneyText(total, currency)}`];
}

/** The same, a macaron, where their number was said. */
const each = (inputs: CostInputs, name: string, amount: number, currency: string): Figure[] =>
  inputs.macarons === undefined ? [] : [{ name: `${name} per macaron`, value: amount / inputs.macarons, unit: currency }];

function costAlone(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  return {
    status: "answered",
    headline: `${moneyText(total, currency)}${inputs.macarons !== undefined ? `, ${moneyText(total / inputs.macarons, currency)} a macaron` : ""}`,
    figures: [{ name: "cost", value: total, unit: currency }, ...each(inputs, "cost", total, currency)],
    rule: { text: "cost = Σ grams × price per gram, plus packaging, plus labor", basis: basis(bill) },
    ...(bill.assumed.length ? { assumed: bill.assumed } : {}),
    working: working(bill),
    ...(bill.parts.length > 1 ? { items: bill.parts.map(({ name, amount }) => ({ part: name, amount, currency })) } : {}),
  };
}

function priceOf(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  const found = priceFrom(inputs, bill);
  if (!found) return asking("With what margin, in %?", "margin_percent");
  if ("status" in found) return found;
  const { price, rule, sum } = found;
  const figures: Figure[] = [
    { name: "cost", value: total, unit: currency },
    { name: "price", value: price, unit: currency },
    ...(price > 0 ? [{ name: "margin", value: (1 - total / price) * 100, unit: "%" }] : []),
    ...(total > 0 ? [{ name: "markup", value: (price / total - 1) * 100, unit: "%" }] : []),
    ...each(inputs, "cost", total, currency),
    ...each(inputs, "price", price, currency),
  ];
  return {
    status: "answered",
    headline: `Charge ${moneyText(price, currency)}: it costs ${moneyText(total, currency)}${price > 0 ? `, a margin of ${percent((1 - total / price) * 100)}` : ""}`,
    figures,
    rule: { text: rule, basis: basis(bill) },
    ...(bill.assumed.length ? { assumed: bill.assumed } : {}),
    cautions: [sellingCaution],
    working: [...working(bill), sum],
  };
}

function priceFrom(inputs: CostInputs, { total, ingredients, currency }: Bill): { price: number; rule: string; sum: string } | Outcome | undefined {
  if (inputs.markup_percent !== undefined) {
    const price = total * (1 + inputs.markup_percent / 100);
    return { price, rule: `price = cost × (1 + markup), markup ${percent(inputs.markup_percent)}`, sum: `${moneyText(total, currency)} × ${plain(1 + inputs.markup_percent / 100, 4)} = ${moneyText(price, currency)}` };
  }
  if (inputs.food_cost_percent !== undefined) {
    const food = ingredients ?? total;
    const price = food / (inputs.food_cost_percent / 100);
    return { price, rule: `price = ingredients / food cost, food cost ${percent(inputs.food_cost_percent)}`, sum: `${moneyText(food, currency)} / ${plain(inputs.food_cost_percent / 100, 4)} = ${moneyText(price, currency)}` };
  }
  if (inputs.margin_percent === undefined) return undefined;
  const price = total / (1 - inputs.margin_percent / 100);
  return { price, rule: `price = cost / (1 − margin), margin ${percent(inputs.margin_percent)}`, sum: `${moneyText(total, currency)} / (1 − ${plain(inputs.margin_percent / 100, 4)}) = ${moneyText(price, currency)}` };
}

function sharesOf(bill: Bill, price: number, want: "margin" | "markup" | "food cost"): Outcome {
  const { total, currency, ingredients } = bill;
  if (price <= 0) return { status: "impossible", headline: "A price has to be above zero for a margin." };
  if (want === "markup" && total <= 0) return { status: "impossible", headline: "A cost has to be above zero for a markup." };
  const margin = (1 - total / price) * 100;
  const markup = total > 0 ? (price / total - 1) * 100 : undefined;
  const food = ((ingredients ?? total) / price) * 100;
  const lead = { margin: `Margin ${percent(margin)}`, markup: `Markup ${percent(markup ?? 0)}`, "food cost": `Food cost ${percent(food)}` }[want];
  const figures: Figure[] = [
    { name: "margin", value: margin, unit: "%" },
    ...(markup !== undefined ? [{ name: "markup", value: markup, unit: "%" }] : []),
    { name: "cost", value: total, unit: currency },
    { name: "price", value: price, unit: currency },
  ];
  const rules = { margin: "margin = 1 − cost / price", markup: "markup = price / cost − 1", "food cost": "food cost = ingredients / price" };
  const sum = {
    margin: `1 − ${moneyText(total, currency)} / ${moneyText(price, currency)} = ${percent(margin)}`,
    markup: `${moneyText(price, currency)} / ${moneyText(total, currency)} − 1 = ${percent(markup ?? 0)}`,
    "food cost": `${moneyText(ingredients ?? total, currency)} / ${moneyText(price, currency)} = ${percent(food)}`,
  };
  return {
    status: "answered",
    headline: `${lead}: ${moneyText(price, currency)} for what costs ${moneyText(total, currency)}${margin < 0 ? ", a loss" : ""}`,
    figures: want === "food cost" ? [{ name: "food cost", value: food, unit: "%" }, ...figures] : figures,
    rule: { text: rules[want], basis: basis(bill) },
    cautions: [sellingCaution],
    working: [...working(bill), sum[want]],
  };
}

/** What it may cost, from a price and a margin: cost = price × (1 − margin). */
function backward(inputs: CostInputs, world: World): Outcome {
  const currency = currencyOf(inputs, world);
  const [price, margin] = [inputs.price ?? 0, inputs.margin_percent ?? 0];
  const cost = price * (1 - margin / 100);
  return {
    status: "answered",
    headline: `It may cost ${moneyText(cost, currency)} at most`,
    figures: [{ name: "cost", value: cost, unit: currency }, { name: "price", value: price, unit: currency }],
    rule: { text: `cost = price × (1 − margin), margin ${percent(margin)}`, basis: "arithmetic" },
    cautions: [sellingCaution],
    working: [`${moneyText(price, currency)} × (1 − ${plain(margin / 100, 4)}) = ${moneyText(cost, currency)}`],
  };
}
