/** Which sums are what a box is packed in, by what was asked before and what is asked now. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { CostInputs } from "./cost.ts";
import type { Sum } from "./money.ts";

type Draft = Partial<CostInputs>;

const boxIs =
  /^(?:(?:and|plus|but|also|oh|ok|so|my|the|each|a|empty|gift) )*(?:box|boxes|bags?) (?:(?:is|are|was|were|costs?|me|about|at|another|come to|comes to) )+$/;
const aBox = /^(?:(?:and|the) )*box $/;
const boxesAt = /\bboxes (?:at|for|@) $/;
const oneBox =
  /\b(?:(?:the|one|a|each|per) )?(?:box|bag|ribbon|sticker|label)(?: (?:itself|alone|only|is|was|costs?|for|at|:|=))* $/;

/**
 * "the box is 1.20", behind what macarons cost; "6 boxes at €0.90", where a price is asked for by a margin. A box that
 * is sold costs more than what goes into it, so that a smaller sum is no price of one.
 */
export function packed(money: readonly Sum[], reading: Reading, before: Draft, memory: Memory): Sum[] {
  const spent = before.ingredients ?? before.cost ?? Number.POSITIVE_INFINITY;
  const isBill =
    memory.follows &&
    memory.slot === undefined &&
    before.price === undefined &&
    (before.ingredients !== undefined || before.cost !== undefined || before.lines !== undefined);
  const asksPrice =
    reading.amounts.some((each) => each.dim === "percent") &&
    says(reading, /margin|mark ?-?up/) &&
    !says(reading, /(?:sell|sells|selling|sold|charge) /);
  const base = money.find((each) => each.use === "ingredients" || each.use === "cost")?.value;
  return money.map((sum) => {
    const left = reading.text.slice(0, sum.amount.at[0]);
    const ofBill = isBill && money.length === 1 && boxIs.test(left) && sum.value < spent;
    const ofBoxes =
      asksPrice && base !== undefined && sum.value < base && sum.use === "price" && boxesAt.test(left);
    if (ofBill || ofBoxes) return { ...sum, use: "packaging" as const };
    // "box €18", behind €9 of ingredients: what it is sold at
    const isMore = isBill && money.length === 1 && aBox.test(left) && sum.value >= spent;
    return isMore ? { ...sum, use: "price" as const } : sum;
  });
}

/** "price of a box of 6: ..., box €0.90": packaging that was said for the one box that is asked about. */
export function ofOneBox(
  draft: Draft,
  money: readonly Sum[],
  reading: Reading,
  box_of: number | undefined,
): Draft {
  const { packaging, ...others } = draft;
  const sums = money.filter((each) => each.use === "packaging");
  const isOne = sums.every(({ amount }) => oneBox.test(reading.text.slice(0, amount.at[0])));
  if (packaging === undefined || box_of === undefined || sums.length === 0 || !isOne) return draft;
  return { ...others, box_packaging: (draft.box_packaging ?? 0) + packaging };
}

const numeric = /^\d+(?:[.,]\d+)?(?=<when>$)/;

/** "a box of 12 at 22", "2 h at 15": in a question of money no hour of the day. */
export function withoutHours(reading: Reading): Reading {
  const tokens = reading.mask.split(" ");
  let [amounts, whens] = [[...reading.amounts], [...reading.whens]];
  let [amountsBefore, whensBefore] = [0, 0];
  const mask = tokens.map((token, at) => {
    if (!token.endsWith("<when>")) {
      if (isAmount.test(token)) amountsBefore++;
      return token;
    }
    const when = whens[whensBefore];
    const number = numeric.exec(token)?.[0];
    const left = tokens.slice(0, at).join(" ");
    if (!number || !when || !beforeSum.test(left)) {
      whensBefore++;
      return token;
    }
    const amount = {
      dim: "number" as const,
      unit: "",
      value: Number(number.replace(",", ".")),
      text: number,
      at: when.at,
    };
    amounts = [...amounts.slice(0, amountsBefore), amount, ...amounts.slice(amountsBefore)];
    whens = whens.filter((each) => each !== when);
    amountsBefore++;
    return `${number}<number>`;
  });
  return whens.length === reading.whens.length
    ? reading
    : { ...reading, mask: mask.join(" "), amounts, whens };
}

const isAmount = /<(?:weight|volume|length|time|temperature|percent|money|number|factor)(?:,fraction)?>$/;
const beforeSum =
  /<count=boxes> of \S*<number>(?: \S*<count=macarons>)? (?:at|for)$|<time[^>]*>(?: (?:of|my|time|work|labou?r))* (?:at|@|for)$/;
