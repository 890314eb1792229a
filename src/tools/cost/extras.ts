/** Fees, tax and discount: percentages of a price that are no margin. */
import type { Amount, Figure, Outcome, Reading } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { moneyText } from "../lib/money.ts";
import { plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";
import type { Draft } from "./draft.ts";

const kinds = [
  ["discount_percent", "(?:discounts?|discounted|reductions?|rebate|off|cheaper)"],
  ["tax_percent", "(?:vat|gst|tax|taxes|mwst|iva|tva|moms)"],
  ["fee_percent", "(?:fees?|commission|platform(?: fee)?|card charge|cut)"],
] as const;

/** Which of them an amount is, by the word behind it or before it: "19% vat", "a discount of 10 %". */
function kindOf({ text }: Reading, { at, dim, unit }: Amount): (typeof kinds)[number][0] | undefined {
  const [before, behind] = [text.slice(0, at[0]), text.slice(at[1])];
  const near = (words: string) =>
    new RegExp(`^ ?(?:(?:of|in|as|for|platform|card|the) )?${words}\\b`).test(behind) ||
    new RegExp(`\\b${words} (?:(?:is|are|of|at|takes?|keeps?|charges?|a|:|=) )*$`).test(before);
  const named = kinds.find(([, words]) => near(words))?.[0];
  if (named) return named;
  // "20 at €1.80 each less 10 %"
  const isLess = dim === "percent" || unit === "times";
  return isLess &&
    /\b(?:less|minus|take off|knock off)(?: another)? $/.test(before) &&
    !/margin|mark ?-?up/.test(text)
    ? "discount_percent"
    : undefined;
}

/** "fees 8%", "add 19% vat", "10% discount": what each says, and the amounts that it was said by. */
export function readExtras(reading: Reading): { draft: Draft; taken: Amount[] } {
  const off = lessSaid(reading);
  if (off) return off;
  const said = reading.amounts.filter(
    (each) =>
      (each.dim === "percent" || (each.dim === "number" && each.unit === "" && !each.fraction)) &&
      each.value > 0 &&
      each.value < 100,
  );
  const taken = said.filter((each) => kindOf(reading, each) !== undefined);
  return {
    draft: Object.fromEntries(taken.map((each) => [kindOf(reading, each), each.value])),
    taken,
  };
}

/** "less 10 %" alone has become a factor of what was worked out. */
function lessSaid({ amounts, text }: Reading): { draft: Draft; taken: Amount[] } | undefined {
  const [times, ...others] = amounts;
  const isLess =
    times?.unit === "times" && others.length === 0 && times.value < 1 && /%|percent/.test(times.text);
  if (!isLess || !/\b(?:less|minus|off)\b/.test(text)) return undefined;
  return { draft: { discount_percent: Math.round((1 - times.value) * 1e8) / 1e6 }, taken: [times] };
}

/** A price with what comes off and on, where nothing was said of what it costs. */
export function pricedAlone(inputs: CostInputs, currency: string): Outcome {
  const {
    price = 0,
    discount_percent: off = 0,
    tax_percent: tax = 0,
    fee_percent: fee = 0,
    macarons = 1,
  } = inputs;
  const charged = price * (1 - off / 100);
  const money = (value: number) => moneyText(value, currency);
  const said = [
    ...(off ? [`${share(off)} off ${money(price)}`] : []),
    ...(fee ? [`${money(charged * (1 - fee / 100))} of it yours, ${share(fee)} goes on fees`] : []),
    ...(tax ? [`${money(charged * (1 + tax / 100))} with ${share(tax)} tax on top`] : []),
  ];
  return {
    status: "answered",
    headline: `${money(charged)}${macarons > 1 ? `, ${money(charged / macarons)} a macaron` : ""}: ${said.join("; ")}`,
    figures: [
      { name: "price", value: charged, unit: currency },
      ...(fee ? [{ name: "left", value: charged * (1 - fee / 100), unit: currency }] : []),
      ...(tax ? [{ name: "price with tax", value: charged * (1 + tax / 100), unit: currency }] : []),
      ...(macarons > 1 ? [{ name: "price per macaron", value: charged / macarons, unit: currency }] : []),
    ],
    rule: {
      text: `price${off ? " × (1 − discount)" : ""}${fee ? ", fees off it" : ""}${tax ? ", tax on top of it" : ""}`,
      basis: "arithmetic",
    },
    cautions: tax ? ["Whether you charge tax, and how much, is for your tax office to say."] : [],
    working: [
      ...(off ? [`${money(price)} × ${plain(1 - off / 100, 4)} = ${money(charged)}`] : []),
      ...(fee
        ? [`${money(charged)} × ${plain(1 - fee / 100, 4)} = ${money(charged * (1 - fee / 100))}`]
        : []),
      ...(tax
        ? [`${money(charged)} × ${plain(1 + tax / 100, 4)} = ${money(charged * (1 + tax / 100))}`]
        : []),
    ],
  };
}

export const hasExtras = ({ discount_percent, tax_percent, fee_percent }: Draft): boolean =>
  [discount_percent, tax_percent, fee_percent].some((each) => each !== undefined);

const share = (percent: number) => `${plain(percent, 2)} %`;

/** What is left of a price once a discount and fees are off it, as a share of it; tax was never hers. */
export const keptShare = ({ discount_percent = 0, fee_percent = 0 }: Draft): number =>
  (1 - discount_percent / 100) * (1 - fee_percent / 100);

/**
 * The answer without them turned into the one with them. A fee is a part of the price that somebody keeps: a margin that
 * was asked for is what stays after it. A discount comes off the price; tax comes on top of it. Arithmetic.
 */
export function withExtras(outcome: Outcome, inputs: CostInputs): Outcome {
  if (outcome.status !== "answered" || inputs.want === "break even" || !hasExtras(inputs)) return outcome;
  const of = (name: string) => outcome.figures?.find((each) => each.name === name);
  const [cost, priced] = [of("cost")?.value, of("price")?.value];
  const currency = of("cost")?.unit ?? of("price")?.unit ?? "";
  if (cost === undefined || priced === undefined) return asking("What do you sell it for?", "price");
  const { discount_percent: off = 0, tax_percent: tax = 0, fee_percent: fee = 0 } = inputs;
  const wanted = inputs.price === undefined && fee > 0 ? inputs.margin_percent : undefined;
  const left = 1 - (wanted ?? 0) / 100 - fee / 100;
  if (wanted !== undefined && left <= 0)
    return {
      status: "impossible",
      headline: `A margin of ${share(wanted)} and fees of ${share(fee)} leave nothing of the price for what it costs.`,
    };
  const full = wanted === undefined ? priced : cost / left;
  const price = full * (1 - off / 100);
  const margin = (1 - cost / price - fee / 100) * 100;
  const money = (value: number) => moneyText(value, currency);
  const said = [
    ...(off ? [`${share(off)} off ${money(full)}`] : []),
    ...(fee ? [`${money((price * fee) / 100)} of it, ${share(fee)}, goes on fees`] : []),
    ...(tax ? [`${money(price * (1 + tax / 100))} with ${share(tax)} tax on top`] : []),
  ];
  const figures: Figure[] = [
    { name: "price", value: price, unit: currency },
    ...(tax ? [{ name: "price with tax", value: price * (1 + tax / 100), unit: currency }] : []),
    { name: "margin", value: margin, unit: "%" },
    { name: "cost", value: cost, unit: currency },
  ];
  return {
    ...outcome,
    headline: `${money(price)}: ${said.join("; ")}; a margin of ${plain(margin, 1)} % on what costs ${money(cost)}${margin < 0 ? ", a loss" : ""}`,
    figures,
    rule: {
      text: `margin = 1 − cost / price${fee ? " − fees" : ""}${off ? "; price = full price × (1 − discount)" : ""}${tax ? "; tax on top of the price" : ""}`,
      basis: outcome.rule?.basis ?? "arithmetic",
    },
    cautions: [
      ...(outcome.cautions ?? []),
      ...(tax ? ["Whether you charge tax, and how much, is for your tax office to say."] : []),
    ],
    working: [
      ...(outcome.working ?? []),
      ...(wanted !== undefined
        ? [`${money(cost)} / (1 − ${plain(wanted / 100, 4)} − ${plain(fee / 100, 4)}) = ${money(full)}`]
        : []),
      ...(off ? [`${money(full)} × ${plain(1 - off / 100, 4)} = ${money(price)}`] : []),
      ...(tax ? [`${money(price)} × ${plain(1 + tax / 100, 4)} = ${money(price * (1 + tax / 100))}`] : []),
    ],
  };
}
