/** The margin, markup or food cost of a price that was said. */
import type { Figure, Outcome } from "../contract/index.ts";
import { sellingCaution } from "../lib/care.ts";
import { moneyText } from "../lib/money.ts";
import type { Bill } from "./bill.ts";
import { basis, percent, working } from "./bill-shown.ts";

export function sharesOf(bill: Bill, price: number, want: "margin" | "markup" | "food cost"): Outcome {
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
