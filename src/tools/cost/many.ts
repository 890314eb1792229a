/** How many macarons a question of money is about, and how many boxes. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, counted, says } from "../lib/find.ts";
import { forEachBox } from "./box-sum.ts";
import type { Draft } from "./draft.ts";
import type { Sum } from "./money.ts";
import { shareSaid } from "./said-share.ts";

/** The macarons: counted, in a box or a dozen, or behind "what does it cost to make". Sums of money are no counts. */
export function macaronsSaid(reading: Reading, money: readonly Sum[], memory: Memory): number | undefined {
  const said = countSaid(reading, money, memory);
  // "cookies 1.80": nobody makes a part of one
  return said === undefined || Number.isInteger(said) ? said : undefined;
}

const countSaid = (reading: Reading, money: readonly Sum[], memory: Memory): number | undefined =>
  (asksBoxOf.test(reading.text) ? perBox(reading) : undefined) ??
  counted(withoutSums(reading, money), "macarons") ??
  perBox(reading) ??
  dozens(reading) ??
  costOf(withoutSums(reading, money)) ??
  eachOf(reading, money) ??
  aimedFor(reading, money) ??
  answered(reading, memory);

/** "36 macs, price per box of 6", "and for a box of 6": all the macarons that were spoken of, of which these are some. */
export function wholeOf(
  reading: Reading,
  money: readonly Sum[],
  before: Draft,
  some: number | undefined,
): number | undefined {
  const boxed = perBox(reading);
  if (boxed === undefined || boxed !== some) return undefined;
  if (money.some(({ amount }) => forEachBox.test(reading.text.slice(amount.at[1])))) return undefined;
  const all =
    reading.amounts.find((each) => each.dim === "number" && each.of?.count === "macarons")?.value ??
    // "24 cost 0.50 each, a box of 6?"
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        each.unit === "" &&
        !each.of &&
        money.every((sum) => sum.amount !== each && sum.use !== "price") &&
        /^ (?:of (?:them|these) )?(?:costs?(?: me)?|are|at|come to) \S*\d/.test(
          reading.text.slice(each.at[1]),
        ),
    )?.value ??
    (money.length === 0 ? (before.part_of ?? before.macarons) : undefined);
  return all !== undefined && all > boxed ? all : undefined;
}

/** The boxes that all of it fills, and whether one of them is asked about. */
export function readBoxes(reading: Reading, draft: Draft, before: Draft): Draft {
  const sold = draft.price === undefined ? undefined : boxesSold(reading);
  const boxes = sold ?? boxesFilled(reading);
  // "cost was 3.50 per box" is one box's already
  const already =
    draft.cost !== undefined &&
    (says(reading, /<(?:money|number)> (?:per|a|for (?:a|each|one)|each) \S*<count=boxes/) ||
      // "each box costs 4"
      says(
        reading,
        /(?:a|each|every|one|per) \S*<count=boxes\S* (?:costs?|comes to|is)(?: me| us)? \S*<(?:money|number)>/,
      ));
  const ofOne = !already && says(reading, /(?:per|one(?:<number>)?|each|every|a single) \S*<count=boxes/);
  // "it cost me 40 in all", beside what a box is sold for: its share of that
  const whole =
    draft.cost !== undefined && /\b(?:in all|in total|altogether|all in|all told)\b/.test(reading.text);
  const ofSold = whole && (sold ?? (before.price === undefined ? undefined : before.boxes)) !== undefined;
  const known = boxes ?? before.boxes;
  return {
    ...(boxes === undefined ? {} : { boxes }),
    ...((ofOne || ofSold) && known !== undefined ? { boxes: known, per_box: true } : {}),
  };
}

/** What one box of them comes to. */
const asksBoxOf =
  /\b(?:price|charge|cost|costs|ask|sell)\b(?: \w+){0,3} (?:per|for (?:a|one|each)|a|one|each|of a) box of \d+|\b(?:what|whats|how much)(?: (?:is|are|does|do|would|will|for|it|that|in|of|the|price|cost|costs))* (?:a|one|each|per|the) box of \d+|(?:^|, |\band )(?:what |how much )?(?:per|for (?:each|one|every)) box of \d+|(?:[,.;?] ?|\band |\bso )(?:(?:how about|what about|then|so|and|in|for|make|thats) )*(?:a |one |the |each |every )?box of \d+(?: (?:is|then|comes to|would be|please|pls))? ?\??$/;

/** "2.50 a macaron" counts nothing. */
const withoutSums = (reading: Reading, money: readonly Sum[]): Reading => ({
  ...reading,
  amounts: reading.amounts.filter(
    (each) => !money.some((sum) => sum.amount === each) && each !== shareSaid(reading),
  ),
});

/** "8 boxes of 6 at $15": eight, each at that price. */
const boxesSold = ({ amounts, mask, text }: Reading): number | undefined =>
  /<count=boxes>(?: of \S*<number>(?: \S*<count=macarons>)?)? at \S*<(?:money|number)>/.test(mask)
    ? amounts.find(
        (each) =>
          each.dim === "number" &&
          each.of?.count === "boxes" &&
          each.value > 1 &&
          !/box(?:es)? of $/.test(text.slice(0, each.at[0])),
      )?.value
    : undefined;

/** "the batch cost me 14 and fills 4 boxes". */
const boxesFilled = ({ amounts, text }: Reading): number | undefined =>
  amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      each.value > 1 &&
      // "what if i give 2 boxes free"
      !/^ boxes (?:away|free|for (?:free|nothing))\b/.test(text.slice(each.at[1])) &&
      /\b(?:fills?|filled|makes?|made|gives?|gave|packed into|goes into|in all) (?:about |up )?$/.test(
        text.slice(0, each.at[0]),
      ),
  )?.value;

/** "a dozen", "two dozen". */
const dozens = (reading: Reading): number | undefined =>
  reading.amounts.find((each) => each.dim === "number" && !each.of && /dozen/.test(each.text))?.value;

/** "what do 36 cost", "cost of 24 if the ingredients are 8.40": macarons, since nothing else is sold. */
const costOf = ({ amounts, text }: Reading): number | undefined =>
  amounts.find((each) => {
    if (each.dim !== "number" || each.unit !== "" || each.of || each.fraction) return false;
    const [before, behind] = [text.slice(0, each.at[0]), text.slice(each.at[1])];
    const asked =
      /\b(?:do|does|would|will) (?:just |only )?$/.test(before) &&
      /^ (?:of (?:them|those|these) )?(?:cost|come to|run me)\b/.test(behind);
    const priced = /\b(?:cost|price) (?:of|for) (?:(?:the|my|these|those|all|making) )*$/.test(before);
    return asked || (priced && Number.isInteger(each.value) && each.value > 1);
  })?.value;

/** How many a box holds, where that was asked. */
const answered = (reading: Reading, memory: Memory): number | undefined =>
  memory.slot === "macarons" ? bareNumbers(reading)[0]?.value : undefined;

/** "costs $16 to make 24, what do I charge each". */
function eachOf(reading: Reading, money: readonly Sum[]): number | undefined {
  if (!says(reading, /(?:^| )(?:each|apiece|a piece|per \S*<count=macarons>)(?: |$)/)) return undefined;
  return bareNumbers(reading).find(
    (each) => Number.isInteger(each.value) && each.value >= 2 && !money.some((sum) => sum.amount === each),
  )?.value;
}

/** "price at 60 margin for 36": so many, where the share is another number. */
function aimedFor(reading: Reading, money: readonly Sum[]): number | undefined {
  const share = shareSaid(reading) ?? reading.amounts.find((each) => each.dim === "percent");
  if (!share || !says(reading, /(?:^| )(?:margin|markup|mark up|profit|food cost)(?: |$)/)) return undefined;
  return bareNumbers(reading).find(
    (each) =>
      each !== share &&
      Number.isInteger(each.value) &&
      each.value >= 2 &&
      !money.some((sum) => sum.amount === each) &&
      /\bfor (?:all |the |all the |these |those )?$/.test(reading.text.slice(0, each.at[0])) &&
      !/\b(?:sells?|sold|selling|go|goes|charge|ask|price) for $/.test(reading.text.slice(0, each.at[0])) &&
      /^(?: of (?:them|those))?(?: ?[,.?!]|$)/.test(reading.text.slice(each.at[1])),
  )?.value;
}

/** "a box of six". */
export function perBox(reading: Reading): number | undefined {
  return reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      Number.isInteger(each.value) &&
      (/box(?:es)? of $/.test(reading.text.slice(0, each.at[0])) ||
        // "6 in a box"
        /^ (?:macarons? |macs? |of them |go |fit )?(?:in|to|into) (?:a|each|the|one|every|my) box\b(?! of)/.test(
          reading.text.slice(each.at[1]),
        )),
  )?.value;
}
