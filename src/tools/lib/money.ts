/** Money for the eye, and the currency that it was said in. */
import type { Amount } from "../contract/index.ts";

const signs: Readonly<Record<string, string>> = { USD: "$", EUR: "€", GBP: "£" };

/** "$12.00", "CHF 4.50"; below a tenth with three places, so that a gram's price shows something. */
export function moneyText(amount: number, currency: string): string {
  const places = amount !== 0 && Math.abs(amount) < 0.1 ? 3 : 2;
  return `${amount < 0 ? "−" : ""}${signs[currency] ?? `${currency} `}${Math.abs(amount).toFixed(places)}`;
}

/** The currency that was said, ISO 4217; none for a bare $ or no sign at all, which the bench may settle. */
export const currencySaid = ({ dim, unit, text }: Amount): string | undefined =>
  dim !== "money" || unit === "unsigned" || isBareDollar(unit, text) ? undefined : unit.slice(0, 3);

/** Whose dollars share their sign. */
export const dollars: readonly string[] = ["USD", "CAD", "AUD", "NZD", "SGD", "HKD"];

/** "$20" and "20 dollars" may be of several countries; "20 nz dollars" and "us$20" aren't. */
export const isBareDollar = (unit: string, text: string): boolean =>
  unit === "USD" && /\$|dollar|bucks/.test(text) && !/\b(?:us|american) /.test(text);
