/** How many have to be sold until what they cost is back. */
import type { Outcome } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { moneyText } from "../lib/money.ts";
import { counted, plain } from "../lib/show.ts";
import type { Bill } from "./bill.ts";
import { basis, working } from "./bill-shown.ts";
import type { CostInputs } from "./cost.ts";
import { keptShare } from "./extras.ts";

/** The cost over the price of one, up to a whole one. */
export function breakEven(inputs: CostInputs, bill: Bill): Outcome {
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
