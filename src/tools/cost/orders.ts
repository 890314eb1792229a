/** "customer wants 40", behind what a dozen sells for: the same price for as many as were ordered. */
import type { Outcome, Reading } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { sellingCaution } from "../lib/care.ts";
import { moneyText } from "../lib/money.ts";
import { counted, plain } from "../lib/show.ts";
import type { CostInputs } from "./cost.ts";
import type { Draft } from "./draft.ts";
import { hasExtras } from "./extras.ts";
import { scaled, spentInAll } from "./scaled.ts";

const somebody =
  "(?:an?|the|my|one|and|but|so|ok|now|if|what if|another|new)? ?(?:customers?|clients?|friends?|neighbou?rs?|lady|ladies|guy|man|woman|bride|couple|shop|caf[eé]|office|school|boss|someone|somebody|she|he|they|order|people)";
const wants =
  "(?:wants?|wanted|needs?|needed|orders?|ordered|asks? for|asked for|is asking for|is after|would like|takes?|took|is|was|for|of)";
const ordered = new RegExp(
  `^(?:(?:and|but|so|ok|now|if|what|then|a|an|the|my|new|another|one) )*(?:${somebody} )(?:has |have |just |only |now )*${wants} (?:just |only |about )?\\d+(?: (?:of (?:them|those|these)|macarons?|macs?|pieces?|instead|now|then))*(?: ?[?.])?$`,
);

/** "and 24", behind an order: another number of them. */
const another =
  /^(?:(?:and|or|what about|how about|make it|no|if|say|then|now) )*(?:for )?\d+(?: (?:of (?:them|those|these)|macarons?|macs?|instead|then))*(?: ?[?.])?$/;

/**
 * The bill and the price of before for the number that was ordered; undefined where nothing was ordered.
 * @param goesOn nothing was asked: a number alone may be another order
 */
export function orderedOf({ amounts, text }: Reading, before: Draft, goesOn: boolean): Draft | undefined {
  const [only, ...others] = amounts;
  const { price, price_for, cost_for } = before;
  if (
    others.length > 0 ||
    !only ||
    only.dim !== "number" ||
    only.unit !== "" ||
    !Number.isInteger(only.value)
  )
    return undefined;
  if (price === undefined || only.value < 1) return undefined;
  if (!ordered.test(text) && !(goesOn && before.ordered && another.test(text))) return undefined;
  const macarons = only.value;
  const { want: _want, part_of: _all, ...kept } = before;
  const batch = price_for ?? before.macarons ?? cost_for;
  // of how many the price is, nobody said yet: it asks
  if (batch === undefined) return { ...kept, macarons, ordered: true };
  const of = cost_for ?? batch;
  const costs = scaled(before, spentInAll, macarons, of);
  return {
    ...kept,
    ...costs,
    ...(Object.keys(costs).length > 0 ? { cost_for: macarons } : {}),
    ...scaled(before, ["price"], macarons, batch),
    price_for: macarons,
    macarons,
    ordered: true,
  };
}

/** For how many the price was, where that was asked behind an order. */
export const pricedFor = (before: Draft, batch: number | undefined): Draft =>
  batch === undefined || before.price === undefined || before.macarons === undefined
    ? before
    : { ...before, ...scaled(before, ["price"], before.macarons, batch), price_for: before.macarons };

/** An order without a word of what it costs, or of the margin on it. */
export const isOrderAlone = (inputs: CostInputs): boolean =>
  inputs.ordered === true &&
  inputs.price !== undefined &&
  (["cost", "ingredients", "lines", "formula", "margin_percent", "markup_percent"] as const).every(
    (key) => inputs[key] === undefined,
  ) &&
  (inputs.want === undefined || inputs.want === "price" || hasExtras(inputs));

/** What so many come to at the price that was said; it asks for how many that was. */
export function orderPriced({ price = 0, price_for, macarons = 1 }: CostInputs, currency: string): Outcome {
  if (price_for === undefined)
    return asking(`For how many macarons is ${moneyText(price, currency)}?`, "price_for");
  const each = moneyText(price / macarons, currency);
  return {
    status: "answered",
    headline: `${moneyText(price, currency)} for ${counted(macarons, "macaron")}, ${each} a macaron`,
    figures: [
      { name: "price", value: price, unit: currency },
      { name: "price per macaron", value: price / macarons, unit: currency },
    ],
    rule: { text: "price of one × macarons", basis: "arithmetic" },
    cautions: [sellingCaution],
    working: [`${plain(macarons)} × ${each} = ${moneyText(price, currency)}`],
  };
}
