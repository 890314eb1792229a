/** A bill for the eye: its sum written out, what it rests on, and what one macaron of it comes to. */
import type { Figure, Rule } from "../contract/index.ts";
import { moneyText } from "../lib/money.ts";
import { plain } from "../lib/show.ts";
import type { Bill } from "./bill.ts";
import type { CostInputs } from "./cost.ts";

export const basis = (bill: Bill): Rule["basis"] => (bill.own ? "your bench" : "arithmetic");

export const percent = (value: number) => `${plain(value, 1)} %`;

export function working({ parts, total, currency }: Bill): string[] {
  const [only] = parts;
  if (parts.length === 1 && only && !/[×/]/.test(only.sum)) return [`cost ${moneyText(total, currency)}`];
  return [
    ...parts.map((each) => `${each.sum} = ${moneyText(each.amount, currency)}`),
    `cost = ${parts.map((each) => moneyText(each.amount, currency)).join(" + ")} = ${moneyText(total, currency)}`,
  ];
}

/** The same, a macaron, where their number was said. */
export const each = (inputs: CostInputs, name: string, amount: number, currency: string): Figure[] =>
  inputs.macarons === undefined
    ? []
    : [{ name: `${name} per macaron`, value: amount / inputs.macarons, unit: currency }];
