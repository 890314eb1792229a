/** A sum beside a box: what it sells for, what it cost with all in it, or what it is packed in. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import type { Draft } from "./draft.ts";
import type { Sum } from "./money.ts";
import type { Beside, Phrase } from "./sum-use.ts";

/** A sentence of so few words and finds says no more than "and the box 1.20". */
const few = 4;

/**
 * "ingredients €9 box €1.20": what it is packed in, where it costs less than what came before it. Alone, "box 1.20" is
 * that too: what a box is sold at is said to be so.
 */
export function boxBeside({ amount, own, earlier, words, aimed }: Beside): "packaging" | undefined {
  // "box at 1.20", behind what went into it
  const isBehind = earlier.length > 0 && aimed;
  const box = isBehind ? own.replace(/ (?:at|for|is|costs?|:)$/, "") : own;
  if (!/^(?:(?:add|also|with) )*(?:the |a |per )?(?:box|bag|ribbon|sticker|label)$/.test(box))
    return undefined;
  const isPacking = earlier.length === 0 ? words <= few : aimed || amount.value < Math.max(...earlier);
  return isPacking ? "packaging" : undefined;
}

/** What the words right beside a sum say of its box, in their order. */
export const boxTurns: readonly Phrase[] = [
  // "took $30 for a box": what it brought in, and not what the box cost
  {
    use: "price",
    before: /\b(?:took|take|got|get|earned|earn|made|fetched)(?: in)?$/,
    behind: /^ ?(?:for (?:a|an|the|each|every|one|it|them)|(?:a|per) (?:box|dozen))\b/,
  },
  { use: "price", before: /\b(?:sell|sells|selling|sold)\b.*\b(?:box|boxes|bags?|packs?) of\b/ },
  // "selling boxes for £10"
  {
    use: "price",
    before: /\b(?:sell|sells|selling|sold) (?:\S+ ){0,2}(?:box|boxes|bags?|packs?) (?:for|at)$/,
  },
  // "box costs 0.60 extra"
  {
    use: "packaging",
    before: /\b(?:box|boxes|bag|bags) costs?(?: me)?$/,
    behind: /^ ?(?:extra|more|on top)\b/,
  },
  // "if boxes cost me £8": what is sold, not what it is packed in
  { use: "cost", before: /\b(?:box|boxes) costs?(?: me)?$/ },
  // "the box itself costs 80 cents"
  {
    use: "packaging",
    before:
      /\b(?:box|boxes|bag|bags) (?:itself|alone|themselves|only)(?: alone)?(?: (?:costs?|is|are|comes? to|another|at|:))*$/,
  },
  // "plus a box for $1.50"
  { use: "packaging", before: /^(?:an?|the|some) (?:box|boxes|bags?|ribbons?|stickers?|labels?) for$/ },
  // "a box of 12 at $30"
  {
    use: "price",
    before:
      /\b(?:box|boxes|bag|bags|pack|packs|tower|towers|dozen|dozens)(?:(?: of \S+)?(?: \S+)? at| of \S+(?: \S+)? for)$/,
    unless:
      /\b(?:buy|bought|cost|costs|spent|paid|make|makes|made|baked)\b|\b(?:plus|add|and) (?:a|an|the) (?:box|bag)/,
  },
  // "what do i charge for a $7 box at 65 %", "what does a $9 box sell for": what it costs, since the price is asked
  {
    use: "cost",
    before:
      /\b(?:what|how much) (?:(?:do|should|shall|would|can|could|must|will|to|i|we|have to|need to) )*(?:charge|ask|sell|price) (?:for )?(?:an?|the|my|one|each)$/,
    behind: /^ *(?:box|tower|order|gift|treat)\b(?!.* costs?\b)/,
  },
  {
    use: "cost",
    before: /\b(?:what|how much) (?:do|does|should|would|can|could|must|will) (?:an?|the|my|one)$/,
    behind: /^ *(?:box|tower|order|gift|treat) (?:(?:have|need|has) to )?(?:sell|go|retail|fetch)\b/,
  },
  // "my $24 box"
  { use: "price", before: /\b(?:a|the|my|each|every|per)$/, behind: /^ *(?:box|tower|order|gift|treat)\b/ },
];

/** "1.20 a box", "for each bag", "/box": what stands behind a sum that goes with every box. */
export const forEachBox = /^ ?(?:(?:for|per|a|an|each|every|one|\/|the) ?)+(?:box|bag|pack)\b/;

const boxIs =
  /^(?:(?:and|plus|but|also|oh|ok|so|my|the|each|a|empty|gift) )*(?:box|boxes|bags?) (?:(?:is|are|was|were|costs?|me|about|at|another|come to|comes to) )+$/;
const aBox = /^(?:(?:and|the) )*box $/;
const boxBehind = /^ (?:box|bag|tin|ribbon|sticker|label)\b/;
/** "..., box is 1.80", beside what all of it cost. */
const boxComesTo =
  /(?:[,;.:] ?|\b(?:and|plus) )(?:(?:the|a|each|one|my) )?(?:box|bag) (?:(?:is|was|costs?|comes to|itself|alone) )+$/;
const boxesAt = /\bboxes (?:at|for|@) $/;

/**
 * "the box is 1.20", behind what macarons cost; "6 boxes at €0.90", where a price is asked for by a margin. A box that
 * is sold costs more than what goes into it, so that a smaller sum is no price of one.
 */
export function packed(money: readonly Sum[], reading: Reading, before: Draft, memory: Memory): Sum[] {
  const spent = before.ingredients ?? before.cost ?? Number.POSITIVE_INFINITY;
  const isAlone =
    money.length === 1 &&
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
    const ofBill = isAlone && boxIs.test(left) && sum.value < spent;
    // "$7 of ingredients and a $2 box": what they go into
    const isABox = boxBehind.test(reading.text.slice(sum.amount.at[1]));
    const ofBoxes =
      asksPrice &&
      base !== undefined &&
      sum.value < base &&
      ((sum.use === "price" && (boxesAt.test(left) || isABox)) ||
        (sum.use === "cost" && boxComesTo.test(left)));
    if (ofBill || ofBoxes) return { ...sum, use: "packaging" };
    // "box €18", behind €9 of ingredients: what it is sold at
    return isAlone && aBox.test(left) && sum.value >= spent ? { ...sum, use: "price" } : sum;
  });
}

const oneBox =
  /\b(?:(?:the|one|a|each|per) )?(?:box|bag|ribbon|sticker|label)(?: (?:itself|alone|only|is|was|costs?|for|at|:|=))* $/;

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
