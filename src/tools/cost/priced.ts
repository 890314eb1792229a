/** What to charge for what a bill comes to: by a markup, a food cost or a margin; and what it may cost at a price. */
import type { Figure, Outcome, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { moneyText } from "../lib/money.ts";
import { plain, weight } from "../lib/show.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { type Bill, currencyOf } from "./bill.ts";
import { basis, each, percent, working } from "./bill-shown.ts";
import type { CostInputs } from "./cost.ts";

interface Priced {
  price: number;
  rule: string;
  sum: string;
}

interface Asked {
  inputs: CostInputs;
  bill: Bill;
}

const priceWays: readonly Way<Asked, Priced>[] = [byMarkup, byFoodCost, byMargin];

export function costAlone(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  // one thing of a recipe: which, and how much of it
  const [line, ...others] = inputs.lines ?? [];
  const one =
    line && others.length === 0 && bill.parts.length === 1 ? ` for ${weight(line.grams)} g ${line.name}` : "";
  return {
    status: "answered",
    headline: `${moneyText(total, currency)}${one}${inputs.macarons !== undefined ? `, ${moneyText(total / inputs.macarons, currency)} a macaron` : ""}`,
    figures: [{ name: "cost", value: total, unit: currency }, ...each(inputs, "cost", total, currency)],
    rule: { text: "cost = Σ grams × price per gram, plus packaging, plus labor", basis: basis(bill) },
    ...(bill.assumed.length ? { assumed: bill.assumed } : {}),
    working: working(bill),
    ...(bill.parts.length > 1
      ? { items: bill.parts.map(({ name, amount }) => ({ part: name, amount, currency })) }
      : {}),
  };
}

export function priceOf(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  const found = firstOf(priceWays, { inputs, bill });
  // "price per macaron if 36 cost $27" asks what one of them comes to
  if (!found && inputs.macarons !== undefined) return costAlone(inputs, bill);
  if (!found) return asking("With what margin, in %?", "margin_percent");
  const { price, rule, sum } = found;
  const figures: Figure[] = [
    { name: "cost", value: total, unit: currency },
    { name: "price", value: price, unit: currency },
    ...(price > 0 ? [{ name: "margin", value: (1 - total / price) * 100, unit: "%" }] : []),
    ...(total > 0 ? [{ name: "markup", value: (price / total - 1) * 100, unit: "%" }] : []),
    ...each(inputs, "cost", total, currency),
    ...each(inputs, "price", price, currency),
  ];
  const asksMarkup = inputs.want === "markup" && inputs.markup_percent === undefined && total > 0;
  const lead = asksMarkup ? `Markup ${percent((price / total - 1) * 100)}: charge` : "Charge";
  return {
    status: "answered",
    headline: `${lead} ${moneyText(price, currency)}${inputs.macarons !== undefined && inputs.macarons > 1 ? `, ${moneyText(price / inputs.macarons, currency)} a macaron` : ""}: it costs ${moneyText(total, currency)}${price > 0 ? `, a margin of ${percent((1 - total / price) * 100)}` : ""}`,
    figures,
    rule: { text: rule, basis: basis(bill) },
    ...(bill.assumed.length ? { assumed: bill.assumed } : {}),
    cautions: [sellingCaution],
    working: [...working(bill), sum],
  };
}

function byMarkup({
  inputs: { markup_percent: markup },
  bill: { total, currency },
}: Asked): Priced | undefined {
  if (markup === undefined) return undefined;
  const price = total * (1 + markup / 100);
  return {
    price,
    rule: `price = cost × (1 + markup), markup ${percent(markup)}`,
    sum: `${moneyText(total, currency)} × ${plain(1 + markup / 100, 4)} = ${moneyText(price, currency)}`,
  };
}

function byFoodCost({ inputs: { food_cost_percent: share }, bill }: Asked): Priced | undefined {
  if (share === undefined) return undefined;
  const food = bill.ingredients ?? bill.total;
  const price = food / (share / 100);
  return {
    price,
    rule: `price = ingredients / food cost, food cost ${percent(share)}`,
    sum: `${moneyText(food, bill.currency)} / ${plain(share / 100, 4)} = ${moneyText(price, bill.currency)}`,
  };
}

function byMargin({
  inputs: { margin_percent: margin },
  bill: { total, currency },
}: Asked): Priced | undefined {
  if (margin === undefined) return undefined;
  const price = total / (1 - margin / 100);
  return {
    price,
    rule: `price = cost / (1 − margin), margin ${percent(margin)}`,
    sum: `${moneyText(total, currency)} / (1 − ${plain(margin / 100, 4)}) = ${moneyText(price, currency)}`,
  };
}

/** What it may cost, from a price and a margin: cost = price × (1 − margin). */
export function affordable(inputs: CostInputs, world: World): Outcome {
  const currency = currencyOf(inputs, world);
  const [price, margin] = [inputs.price ?? 0, inputs.margin_percent ?? 0];
  const cost = price * (1 - margin / 100);
  return {
    status: "answered",
    headline: `It may cost ${moneyText(cost, currency)} at most`,
    figures: [
      { name: "cost", value: cost, unit: currency },
      { name: "price", value: price, unit: currency },
    ],
    rule: { text: `cost = price × (1 − margin), margin ${percent(margin)}`, basis: "arithmetic" },
    cautions: [sellingCaution],
    working: [
      `${moneyText(price, currency)} × (1 − ${plain(margin / 100, 4)}) = ${moneyText(cost, currency)}`,
    ],
  };
}
