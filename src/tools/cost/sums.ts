/** The sums of a question of money, each to its input: added up, or in the place of the one before. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says } from "../lib/find.ts";
import { dollars } from "../lib/money.ts";
import { forEachBox } from "./box-sum.ts";
import type { Draft } from "./draft.ts";
import type { Sum } from "./money.ts";
import { isWeightPrice, paidFor } from "./prices.ts";

export function readSums(reading: Reading, money: readonly Sum[], memory: Memory): Draft {
  const out: Draft = {};
  const codes = currenciesOf(money);
  const asked = memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : undefined;
  const earlier = asked?.currency;
  // "80 cents", behind euros: hundredths of those
  const isCents = money.length > 0 && money.every(({ amount }) => amount.unit === "USD cent");
  if (codes[0] && !(isCents && earlier)) out.currency = codes[0];
  if (codes.length > 1) out.mixed = codes.join(" and ");
  const signs = [...new Set(money.map((each) => each.bare).filter((each) => each !== undefined))];
  if (signs[0] !== undefined && codes.length < 2) out.bare_sign = signs[0];
  // "$6", behind "NZ$11": of the country that was named
  if (out.bare_sign === "$" && earlier && asked?.bare_sign === undefined && dollars.includes(earlier)) {
    out.currency = earlier;
    delete out.bare_sign;
  }
  if (memory.slot === "more_prices")
    return out.bare_sign === undefined && out.currency ? { currency: out.currency } : {};
  const pack = paidFor(reading, money) !== undefined;
  const plainSums = pack ? [] : money.filter((each) => !isWeightPrice(each, reading));
  for (const { use, value, amount } of plainSums) {
    if (use === "rate" || use === undefined) continue;
    const ofBox =
      use === "packaging" && isEach(reading.text.slice(0, amount.at[0]), reading.text.slice(amount.at[1]));
    const known = ofBox ? boxesOf(reading) : 1;
    // "packaging 0.80 a box", of nobody knows how many: it goes with each box, whatever is asked
    if (ofBox && known === undefined) {
      out.box_packaging = (out.box_packaging ?? 0) + value;
      continue;
    }
    const boxes = known ?? 1;
    // "thats another $3.50 in packaging": on top of what was said before
    const more =
      memory.follows && memory.last?.tool === "cost" && anotherSum.test(reading.text.slice(0, amount.at[0]))
        ? ((memory.last.inputs as Draft)[use] ?? 0)
        : // "box costs 0.60 extra"
          memory.follows &&
            memory.last?.tool === "cost" &&
            /^ ?(?:extra|more|on top)\b/.test(reading.text.slice(amount.at[1]))
          ? ((memory.last.inputs as Draft)[use] ?? 0)
          : 0;
    out[use] = (out[use] ?? 0) + more + value * boxes;
  }
  const loose = plainSums.filter((each) => each.use === undefined);
  if (loose.length > 0) {
    // "30 €", after a price: what was said last is said anew
    const before = memory.follows && memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
    const alone =
      loose.length === 1 &&
      ((before.price !== undefined && sumAlone.test(reading.mask)) || isSoldEach(reading, before));
    // "it costs me $22 and she gave $40, what margin": one sum beside the cost that was named
    const beside =
      loose.length === 1 &&
      out.cost !== undefined &&
      out.price === undefined &&
      says(reading, /margin|mark ?-?up|profit/);
    if (alone && each.test(reading.text)) out.price_for = 1;
    const slot = memory.slot === "price" || alone || beside ? "price" : "cost";
    for (const each of loose) out[slot] = (out[slot] ?? 0) + each.value;
  }
  const bare =
    money.length === 0 && (memory.slot === "cost" || memory.slot === "price")
      ? bareNumbers(reading)[0]
      : undefined;
  if (bare && memory.slot) out[memory.slot as "cost"] = bare.value;
  // "and at 18?", behind a price
  const before = memory.follows && memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  const again =
    (before.price !== undefined && money.length === 0 && numberAlone.test(reading.mask)) ||
    (before.price !== undefined &&
      before.margin_percent === undefined &&
      money.length === 0 &&
      priceAlone.test(reading.mask)) ||
    ((before.want === "price" || before.price !== undefined) &&
      rounded.test(reading.mask) &&
      /round|call/.test(reading.text)) ||
    (money.length === 0 && isSoldEach(reading, before));
  if (again) {
    out.price = reading.amounts[0]?.value;
    // "and at 2 each": of one macaron, whatever the price before was for
    if (each.test(reading.text)) out.price_for = 1;
  }
  return out;
}

const each = /\b(?:each|apiece|a piece)\b/;
const eachAlone =
  /^(?:(?:and|or|at|for|say|its|now|then) )*\S*<(?:number|money)> (?:each|apiece|a piece)(?: \?)?$/;

/** "2.50 each", behind what 36 of them cost: what one is sold for. */
const isSoldEach = (reading: Reading, { cost, ingredients, cost_for, macarons }: Draft): boolean =>
  (cost ?? ingredients) !== undefined && (cost_for ?? macarons ?? 1) > 1 && eachAlone.test(reading.mask);

/** "round it to 12", behind a price: that is charged. */
const rounded =
  /^(?:(?:ok|and|so|lets|ill|i) )*(?:round|call|make) (?:it|that|this)?(?: up| down)?(?: ?to)? ?\S*<(?:number|money)>(?: (?:then|each|a box|please))?(?: [?])?$/;

const anotherSum = /\b(?:another|an? extra|extra|an? additional|additional|plus|a further) $/;

/** "and 1.50": another price, where a price was said and no margin is aimed at. */
const priceAlone =
  /^(?:(?:and|or|what about|how about|no|ok|then|if) )*\S*<(?:number|money)>(?: (?:each|apiece|a piece|instead|then))?(?: [?])?$/;

/** "and at 18?": no share of anything, and no count. */
const numberAlone =
  /^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|its|say|only|just|hmm?|i charge|i (?:sell|sold) (?:it|them)|lowering|dropping|raising|going|(?:i|we)(?: (?:only|just|might|may|could|can|should|would|have to|had to|must))* (?:go|drop|went|dropped|come|came)|as low as|as high as|down|up|it|the price|back) )*(?:(?:at|for|to)|(?:i|we) (?:only|just) (?:get|got|take|took|ask|asked)|as (?:low|high) as) \S*<number>(?: (?:instead|then|each|apiece|a piece|(?:a|per) box(?:<count=boxes>)?))?(?: [?])?$/;

/** "30 €", "and at £8.50?". */
const sumAlone =
  /^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|its|say|only|just|hmm?|i charge|i (?:sell|sold) (?:it|them)) )*(?:(?:at|for) )?\S*<money>(?: (?:each|apiece|a piece))?(?: (?:instead|then))?(?: [?])?$/;

/** "packaging $1.20 a box, 6 boxes". */
const eachBox = (behind: string) => forEachBox.test(behind.replace(/^ ?(?:(?:of|for) )?packag\w*/, ""));
/** "packaging per box 0.80", "each box needs 0.80 of packaging". */
const eachBoxBefore =
  /\b(?:packag\w*|packing|ribbons?|stickers?|labels?|wrap\w*|bags?) (?:per|a|for (?:a|each|every|one)|each|every) box (?:is |costs? |at |comes to |: )?$|\b(?:each|every) box (?:costs?|needs|takes|gets) (?:me )?(?:about )?$/;
/** "two boxes 1.20 each" as well. */
const isEach = (before: string, behind: string): boolean =>
  eachBox(behind) ||
  eachBoxBefore.test(before) ||
  /\b\d+ boxes (?:at|@) $/.test(before) ||
  (/\bboxes (?:at |for |@ |are |were |is |cost (?:me )?)?$/.test(before) &&
    /^ ?(?:each|apiece|a piece)\b/.test(behind));
const boxesOf = (reading: Reading): number | undefined =>
  reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      Number.isInteger(each.value) &&
      !isSumOf(each, reading) &&
      !/box(?:es)? of $/.test(reading.text.slice(0, each.at[0])),
  )?.value;

/** "packaging 1 a box": a sum, and no count of boxes. */
const isSumOf = ({ at }: Reading["amounts"][number], { text }: Reading): boolean =>
  eachBox(text.slice(at[1]));

/** The currencies said; bare "cents" are those of the one that was named. */
function currenciesOf(money: readonly Sum[]): string[] {
  const named = money.filter((each) => each.amount.unit !== "USD cent");
  return [...new Set((named.length > 0 ? named : money).map((each) => each.currency).filter(Boolean))];
}
