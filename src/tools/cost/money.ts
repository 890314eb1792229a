/** The sums of money in a sentence and what each is for, by the words around it. */
import type { Amount, Reading } from "../contract/index.ts";
import { inBase, unitRow } from "../lib/units.ts";

export type Use = "price" | "ingredients" | "packaging" | "labor" | "cost" | "rate";

export interface Sum {
  value: number;
  /** ISO 4217, or "" where no sign was said. */
  currency: string;
  /** Said with a $, or with no sign. */
  bare?: "$" | "";
  use?: Use;
  amount: Amount;
}

const specific: readonly (readonly [Use, RegExp])[] = [
  ["price", /\b(?:sell|sells|selling|sold|ask|asks|asking|charge|charges|charging|price|priced|retail|goes? for|take|get|customers? pay)\b/],
  ["labor", /\b(?:labou?r|work|working|wages?|my time|hours?|of time)\b/],
  ["ingredients", /\bing?redi?e?\w*|\b(?:food|stuff|groceries)\b/],
  ["packaging", /\b(?:packag\w*|packing|boxes|bags|ribbons?|stickers?|labels|wrap\w*|cartons)\b|\bfor (?:the|a) box\b/],
];
const general = /\b(?:costs?|spend|spent|make|makes|made|come to|came to|total|all in)\b/;

/** Money in order. Where no sign is said at all, bare numbers beside words of money count. */
export function sums(reading: Reading): Sum[] {
  const signed = reading.amounts.filter((each) => each.dim === "money");
  const moneys = signed.length > 0 ? signed : bareSums(reading);
  return moneys.map((amount, at) => {
    const from = moneys[at - 1]?.at[1] ?? 0;
    const to = moneys[at + 1]?.at[0] ?? reading.text.length;
    const known = amount.dim === "money";
    return {
      value: known ? inBase(amount.value, amount.unit) : amount.value,
      currency: known ? codeOf(amount.unit) : "",
      ...(known ? (amount.text.includes("$") ? { bare: "$" as const } : {}) : { bare: "" as const }),
      use: useOf(amount, tail(reading.text.slice(from, amount.at[0])), head(reading.text.slice(amount.at[1], to))),
      amount,
    };
  });
}

/** "USD cent" is a hundredth of a USD. */
const codeOf = (unit: string) => (unitRow(unit).dim === "money" ? unit.slice(0, 3) : unit);

const tail = (text: string) => text.split(/[,;:?!]|\.\s|\band\b|\bbut\b|\bplus\b/).at(-1) ?? "";
const head = (text: string) => text.split(/[,;:?!]|\.\s|\band\b|\bbut\b|\bplus\b/)[0] ?? "";

function useOf(amount: Amount, before: string, after: string): Use | undefined {
  if (amount.per && unitRow(amount.per.unit).dim === "time") return "rate";
  const of = (text: string) => specific.find(([, words]) => words.test(text))?.[0];
  // "a box costs me £3.50" is the box and what is in it; "the boxes cost £3.50" is packaging
  return of(before) ?? of(after) ?? (general.test(before) || general.test(after) ? "cost" : undefined);
}

/** Numbers that can only be money: in a sentence about cost, not a count, a size or a time. */
function bareSums(reading: Reading): Amount[] {
  if (!/\b(?:costs?|charge|price|margin|markup|sell|sells|ingredients|packaging)\b/.test(reading.text)) return [];
  return reading.amounts.filter((each) => {
    if (each.dim !== "number" || each.unit !== "" || each.fraction) return false;
    const before = reading.text.slice(Math.max(0, each.at[0] - 8), each.at[0]);
    if (!each.of) return !/\bof $/.test(before);
    // "the boxes 1.50": the thing stands before its price, where a count would stand before the thing
    return each.of.at[0] < each.at[0] && !/\bof $/.test(before);
  });
}
