/** Money for the eye. */

const signs: Readonly<Record<string, string>> = { USD: "$", EUR: "€", GBP: "£" };

/** "$12.00", "CHF 4.50"; below a tenth with three places, so that a gram's price shows something. */
export function moneyText(amount: number, currency: string): string {
  const places = amount !== 0 && Math.abs(amount) < 0.1 ? 3 : 2;
  return `${amount < 0 ? "−" : ""}${signs[currency] ?? `${currency} `}${Math.abs(amount).toFixed(places)}`;
}
