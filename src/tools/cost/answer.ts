/** Adds the cost up and turns it into price, margin, markup or food cost. */
import type { Figure, Outcome, Rule, World } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { moneyText } from "../lib/money.ts";
import { counted, plain } from "../lib/show.ts";
import { type Bill, billOf, currencyOf } from "./bill.ts";
import { soldTogether } from "./boxes-sold.ts";
import { compared } from "./change.ts";
import type { CostInputs } from "./cost.ts";
import { hasExtras, keptShare, pricedAlone, withExtras } from "./extras.ts";
import { levelled } from "./level.ts";
import { isOrderAlone, orderPriced } from "./orders.ts";
import { answerList } from "./price-list.ts";

/** @throws never: what is missing comes back as `asking`, what can't be as `impossible`. */
export function answerCost(inputs: CostInputs, world: World): Outcome {
  const now = answerNow(inputs, world);
  const want = wantOf(inputs);
  return inputs.was && now.status === "answered" && want !== "break even"
    ? compared(now, answerNow(inputs.was as CostInputs, world), want)
    : now;
}

function answerNow(said: CostInputs, world: World): Outcome {
  if (said.mixed)
    return { status: "impossible", headline: `I can't add ${said.mixed}: say it all in one currency.` };
  if (said.sizes) return answerList(said, (one) => answerNow(one, world));
  const sold = soldTogether(said, world);
  if (sold && "status" in sold) return sold;
  if (sold) {
    const outcome = answerNow(sold.inputs, world);
    return outcome.working
      ? {
          ...outcome,
          assumed: [...(outcome.assumed ?? []), ...sold.assumed],
          working: [...sold.sums, ...outcome.working],
        }
      : outcome;
  }
  const level = levelled(said);
  if ("status" in level) return level;
  const { inputs, sums } = level;
  const bare = answerLevel(inputs, world);
  // without a cost the extras are in it already
  const outcome = bare.figures?.some((each) => each.name === "cost") ? withExtras(bare, inputs) : bare;
  return sums.length && outcome.working ? { ...outcome, working: [...sums, ...outcome.working] } : outcome;
}

/** What is asked: as said, or what follows from what there is. */
function wantOf(inputs: CostInputs): NonNullable<CostInputs["want"]> {
  const shared =
    inputs.margin_percent !== undefined ||
    inputs.markup_percent !== undefined ||
    inputs.food_cost_percent !== undefined;
  return inputs.want ?? (shared ? "price" : inputs.price !== undefined ? "margin" : "cost");
}

/** How many have to be sold until what they cost is back: the cost over the price of one, up to a whole one. */
function breakEven(inputs: CostInputs, bill: Bill): Outcome {
  const { price, macarons } = inputs;
  if (price === undefined) return asking("What do you sell it for?", "price");
  if (macarons === undefined || price <= 0) return asking("For how many macarons is that price?", "macarons");
  const kept = keptShare(inputs);
  const each = (price * kept) / macarons;
  const number = Math.ceil(bill.total / each - 1e-9);
  return {
    status: "answered",
    headline: `${counted(number, "macaron")} at ${moneyText(price / macarons, bill.currency)}${kept < 1 ? `, ${moneyText(each, bill.currency)} of it yours,` : ""} bring back the ${moneyText(bill.total, bill.currency)} that they cost`,
    figures: [{ name: "macarons", value: number, unit: "macarons" }],
    rule: {
      text: `cost / ${kept < 1 ? "what is left of the price of one" : "price of one"}, up to a whole one`,
      basis: basis(bill),
    },
    cautions: [sellingCaution],
    working: [
      ...working(bill),
      `${moneyText(bill.total, bill.currency)} / ${moneyText(each, bill.currency)} = ${plain(bill.total / each, 2)}`,
    ],
  };
}

function answerLevel(inputs: CostInputs, world: World): Outcome {
  // so many were ordered: what they come to, whatever they cost
  if (isOrderAlone(inputs))
    return hasExtras(inputs)
      ? pricedAlone(inputs, currencyOf(inputs, world))
      : orderPriced(inputs, currencyOf(inputs, world));
  const whole = billOf(inputs, world);
  const bill =
    whole && !("status" in whole) && inputs.per_box && inputs.boxes ? ofOneBox(whole, inputs.boxes) : whole;
  if (bill && "status" in bill) return bill;
  const want = wantOf(inputs);
  // "20 at €1.80 each less 10 %": what is charged, whatever it costs
  if (!bill && inputs.price !== undefined && hasExtras(inputs) && inputs.margin_percent === undefined)
    return pricedAlone(inputs, currencyOf(inputs, world));
  if (!bill)
    return inputs.price !== undefined && inputs.margin_percent !== undefined
      ? backward(inputs, world)
      : asking("What does it cost to make?", "cost");
  if (want === "break even") return breakEven(inputs, bill);
  if (want === "price") return priceOf(inputs, bill);
  if (want === "cost") return costAlone(inputs, bill);
  if (inputs.price === undefined) {
    if (inputs.margin_percent === undefined && inputs.markup_percent === undefined)
      return asking("What do you sell it for?", "price");
    return priceOf(inputs, bill);
  }
  const { price, price_for, macarons = 1, boxes } = inputs;
  // "cost 9 for 24, sell 6 a box": of a box of nobody knows how many
  const many = inputs.cost_for ?? inputs.macarons;
  if (
    inputs.boxed === "price" &&
    many !== undefined &&
    many > 1 &&
    inputs.box_of === undefined &&
    boxes === undefined
  )
    return asking("How many macarons go in a box?", "box_of");
  // "i sell them at 2.50", of 36 that cost 37: each of them, or all?
  const isEach = price_for === undefined && boxes === undefined && price * 4 < bill.total;
  if (isEach && macarons > 5 && price * macarons >= bill.total)
    return asking(
      `Is ${moneyText(price, bill.currency)} for one macaron, or for all ${macarons}?`,
      "price_for",
    );
  return sharesOf(bill, inputs.price, want);
}

/** The share of one box in what all of them cost. */
const ofOneBox = (bill: Bill, boxes: number): Bill => ({
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

const basis = (bill: Bill): Rule["basis"] => (bill.own ? "your bench" : "arithmetic");
const percent = (value: number) => `${plain(value, 1)} %`;

function working({ parts, total, currency }: Bill): string[] {
  const [only] = parts;
  if (parts.length === 1 && only && !/[×/]/.test(only.sum)) return [`cost ${moneyText(total, currency)}`];
  return [
    ...parts.map((each) => `${each.sum} = ${moneyText(each.amount, currency)}`),
    `cost = ${parts.map((each) => moneyText(each.amount, currency)).join(" + ")} = ${moneyText(total, currency)}`,
  ];
}

/** The same, a macaron, where their number was said. */
const each = (inputs: CostInputs, name: string, amount: number, currency: string): Figure[] =>
  inputs.macarons === undefined
    ? []
    : [{ name: `${name} per macaron`, value: amount / inputs.macarons, unit: currency }];

function costAlone(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  return {
    status: "answered",
    headline: `${moneyText(total, currency)}${inputs.macarons !== undefined ? `, ${moneyText(total / inputs.macarons, currency)} a macaron` : ""}`,
    figures: [{ name: "cost", value: total, unit: currency }, ...each(inputs, "cost", total, currency)],
    rule: { text: "cost = Σ grams × price per gram, plus packaging, plus labor", basis: basis(bill) },
    ...(bill.assumed.length ? { assumed: bill.assumed } : {}),
    working: working(bill),
    ...(bill.parts.length > 1
      ? { items: bill.parts.map(({ name, amount }) => ({ part: name, amount, currency })) }
      : {}),
  };
}

function priceOf(inputs: CostInputs, bill: Bill): Outcome {
  const { total, currency } = bill;
  const found = priceFrom(inputs, bill);
  // "price per macaron if 36 cost $27" asks what one of them comes to
  if (!found && inputs.macarons !== undefined) return costAlone(inputs, bill);
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

function priceFrom(
  inputs: CostInputs,
  { total, ingredients, currency }: Bill,
): { price: number; rule: string; sum: string } | Outcome | undefined {
  if (inputs.markup_percent !== undefined) {
    const price = total * (1 + inputs.markup_percent / 100);
    return {
      price,
      rule: `price = cost × (1 + markup), markup ${percent(inputs.markup_percent)}`,
      sum: `${moneyText(total, currency)} × ${plain(1 + inputs.markup_percent / 100, 4)} = ${moneyText(price, currency)}`,
    };
  }
  if (inputs.food_cost_percent !== undefined) {
    const food = ingredients ?? total;
    const price = food / (inputs.food_cost_percent / 100);
    return {
      price,
      rule: `price = ingredients / food cost, food cost ${percent(inputs.food_cost_percent)}`,
      sum: `${moneyText(food, currency)} / ${plain(inputs.food_cost_percent / 100, 4)} = ${moneyText(price, currency)}`,
    };
  }
  if (inputs.margin_percent === undefined) return undefined;
  const price = total / (1 - inputs.margin_percent / 100);
  return {
    price,
    rule: `price = cost / (1 − margin), margin ${percent(inputs.margin_percent)}`,
    sum: `${moneyText(total, currency)} / (1 − ${plain(inputs.margin_percent / 100, 4)}) = ${moneyText(price, currency)}`,
  };
}

function sharesOf(bill: Bill, price: number, want: "margin" | "markup" | "food cost"): Outcome {
  const { total, currency, ingredients } = bill;
  if (price <= 0) return { status: "impossible", headline: "A price has to be above zero for a margin." };
  if (want === "markup" && total <= 0)
    return { status: "impossible", headline: "A cost has to be above zero for a markup." };
  const margin = (1 - total / price) * 100;
  const markup = total > 0 ? (price / total - 1) * 100 : undefined;
  const food = ((ingredients ?? total) / price) * 100;
  const lead = {
    margin: `Margin ${percent(margin)}`,
    markup: `Markup ${percent(markup ?? 0)}`,
    "food cost": `Food cost ${percent(food)}`,
  }[want];
  const figures: Figure[] = [
    { name: "margin", value: margin, unit: "%" },
    ...(markup !== undefined ? [{ name: "markup", value: markup, unit: "%" }] : []),
    { name: "cost", value: total, unit: currency },
    { name: "price", value: price, unit: currency },
  ];
  const rules = {
    margin: "margin = 1 − cost / price",
    markup: "markup = price / cost − 1",
    "food cost": "food cost = ingredients / price",
  };
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
