/** Numbers that are money though no sign says so: "costs me 9", "ingredients 9 box 1.20". */
import type { Amount, Reading } from "../contract/index.ts";
import { type Piece, wordsBetween, wordsOf } from "../lib/pieces.ts";
import { unitRow } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { shareSaid } from "./said-share.ts";

const isBare = ({ dim, unit, fraction }: Amount): boolean => dim === "number" && unit === "" && !fraction;

/** "selling a dozen at $24": a dozen counts. */
const isDozen = ({ text }: Amount): boolean => /dozen|couple/.test(text);

/** As many pieces before a number as can say that it is a sum. */
const near = 4;

/** "costs me 9", "sells for 12" beside a sum with a sign. */
export function isSaidAsSum(number: Amount, list: readonly Piece[]): boolean {
  if (!isBare(number)) return false;
  const at = list.findIndex((each) => each.amount === number);
  const before = wordsBetween(list, Math.max(-1, at - near), at).trim();
  const behind = wordsBetween(list, at, list.length);
  // "10 dollars on ingredients and 2 on boxes"
  if (/^ ?on (?:the )?\w/.test(behind) && /(?:and|plus|,)$/.test(wordsBetween(list, -1, at).trim()))
    return true;
  if (isPriceAmongPrices(number, list, at)) return true;
  // "box 1.80": the box stands before its price
  const isFree = !number.of || number.of.at[0] < number.at[0];
  return isFree && !isDozen(number) && (ofThing.test(behind) || thingIs.test(before) || costs.test(before));
}

/** "almond flour 14.90 per kg, sugar 1.20": for as much as the price before it. */
function isPriceAmongPrices(number: Amount, list: readonly Piece[], at: number): boolean {
  const named = list[at - 1]?.thing;
  return (
    Boolean(named?.ingredient || named?.chocolate) &&
    /\d[.,]\d/.test(number.text) &&
    list
      .slice(0, at)
      .some(
        ({ amount }) => amount?.dim === "money" && amount.per && unitRow(amount.per.unit).dim === "weight",
      )
  );
}

/** "0.80 packaging", "30 labor". */
const ofThing = /^ ?(?:of |for )?(?:the )?(?:packaging|packing|labou?r|wages?)\b/;
/** "ingredients were $8.50 and packaging 1.50". */
const thingIs =
  /\b(?:ingredients?|packaging|packing|box|boxes|bags?|ribbons?|stickers?|labels?|wrapping|labou?r|work)(?: (?:is|are|was|were|costs?|another|about|at|for|:))?$/;
const costs =
  /\b(?:costs?|costs? me|cost (?:is|was)|(?:sells?|sold) (?:it |them )?(?:for|at)|selling(?: (?:it|them|each))?(?: (?:for|at))?|price is|charge)$/;

/** A sentence about money: a number in it may be a sum. */
const talksOfMoney = new RegExp(
  [
    /\b(?:costs?|charge|price|margin|markup|sell|sells|sold|selling|ingredients|packaging|labou?r|wages?|my time)\b/,
    /\b(?:plus|and|add) \d[\d.,]* for (?:the |a |each )?(?:box|bag|ribbon|sticker|label|wrap)/,
    /\bwants? (?:it|them|one|a box) for \d/,
    /\b(?:customers?|she|he|they) (?:pays?|paid|offers?|offered|gives?|gave) (?:me )?(?:only |just )?\d/,
    /\b(?:hours?|minutes|min) of (?:work|labou?r|my time) (?:at|for) \d/,
    /^(?:(?:and|plus|add|also|the|with) )*(?:box|bag|ribbon|sticker|label)(?: (?:itself|alone|only|is|was|costs?))* \d+[.,]\d+(?: each| a box| per box)?$/,
    /\bhours?(?: of (?:my time|work))? (?:is|costs|counts as|is worth) \d/,
    /\bbox(?:es)? of \d+ (?:at|for) \d/,
    /\b\d+[.,]\d+ (?:each|apiece|a piece|per piece|a macaron|per macaron)\b.*\bbox(?:es)? of /,
    /\b(?:each|every|one)(?: macaron| one)? (?:is|comes to) \d+[.,]\d+.*\bbox(?:es)? of /,
  ]
    .map(({ source }) => source)
    .join("|"),
);

/** A number in a sentence about money, with the text around it. */
interface Bare {
  number: Amount;
  before: string;
  behind: string;
  /** The word or find right before it. */
  last: string | undefined;
  reading: Reading;
}

/** Numbers that can only be money: in a sentence about cost, not a count, a size or a time. */
export function bareSums(reading: Reading, list: readonly Piece[]): Amount[] {
  if (!talksOfMoney.test(wordsOf(reading))) return [];
  return reading.amounts.filter(isBare).filter((number) => {
    const bare = {
      number,
      before: reading.text.slice(0, number.at[0]),
      behind: reading.text.slice(number.at[1]),
      last: list[list.findIndex((piece) => piece.amount === number) - 1]?.text,
      reading,
    };
    return firstOf(ways, bare) ?? isAlone(bare);
  });
}

const never =
  (knows: (bare: Bare) => boolean): Way<Bare, boolean> =>
  (bare) =>
    knows(bare) ? false : undefined;

/** What a number is beside money, in the order in which the words are believed. */
const ways: readonly Way<Bare, boolean>[] = [
  never(({ last }) => ["of", "per", "make", "makes", "made"].includes(last ?? "")),
  never(isCount),
  // "i want 40 margin", "with 60 markup instead"
  never(({ number, reading }) => number === shareSaid(reading)),
  // "customer wants 40"
  never(({ before }) =>
    /\b(?:customers?|clients?|friend|lady|she|he|they|someone|somebody|shop) (?:wants?|needs?|orders?|ordered) $/.test(
      before,
    ),
  ),
  // "ingredients 9 box 1.20": nine of them would be boxes
  ({ before, behind }) =>
    /\b(?:ingredients?|costs?(?: me)?) $/.test(before) && /^ box \d/.test(behind) ? true : undefined,
  never(({ number }) => isDozen(number)),
  // "what if margin is 30"
  never(({ before }) => /\b(?:margin|markup|mark up|food cost)(?: (?:is|of|at|was|to))? $/.test(before)),
  // "6 at 2.20 each": how many, not how much
  never(({ behind }) => /^ (?:at|for) \S*\d\S*(?: \S+)? (?:each|apiece|a piece)\b/.test(behind)),
  // "sell 6 for 15": six of them
  never(
    ({ before, behind }) =>
      /\b(?:sell|sells|selling|sold|charge|charging) (?:them |these |a box of )?$/.test(before) &&
      /^ (?:of (?:them|those) )?for \S*\d/.test(behind),
  ),
];

/**
 * "the boxes 1.50": the thing stands before its price, where a count would stand before the thing. "2.50 a macaron":
 * the thing behind is what the sum is for.
 */
function isAlone({ number: { at, of }, reading }: Bare): boolean {
  if (!of || of.at[0] < at[0]) return true;
  return /^(?:a|per|for (?:a|each|one|the))$/.test(reading.text.slice(at[1], of.at[0]).trim());
}

/** "24 cost 9", "12.60 for 24", "profit on 50": whole numbers of macarons beside what they cost or bring. */
function isCount({ number, before, behind, reading }: Bare): boolean {
  if (!Number.isInteger(number.value) || number.value < 2 || /[.,]/.test(number.text)) return false;
  // "sell 12 for 18"
  if (
    /\b(?:sell|sells|selling|sold|charge|charging) (?:them |these )?(?:\d+|two|three|four|five|six|seven|eight|nine|ten|twelve|a dozen) (?:of (?:them|these) )?for $/.test(
      before,
    )
  )
    return false;
  const isPrice = /\b(?:sells?|sold|selling|goes|go) (?:it |them )?(?:for|at) $/.test(before);
  const isSum = /\b(?:costs?|cost me|costs me|spent|it is|its) $/.test(before);
  if (
    !isPrice &&
    !isSum &&
    /^ (?:costs?|cost me|(?:sells?|sold|goe?s?|are|is) (?:for|at)) \S*\d/.test(behind)
  )
    return true;
  if (!isPrice && !isSum && /^ ?-?packs?\b/.test(behind)) return true;
  if (/\b(?:cost|price) (?:of|for) (?:(?:the|my|these|those|all|making) )*$/.test(before)) return true;
  const isBesideSum = reading.amounts.some(
    (each) => each !== number && ["number", "money"].includes(each.dim),
  );
  const forSo = /(\S+)? ?(?:for|on)(?: (?:all|the|these|those))* $/.exec(before);
  return (
    isBesideSum &&
    forSo !== null &&
    !/^(?:sells?|selling|sold|charge|charging|go|goes|going|asks?|asking|priced?|pays?|paid|it|them|spent|spend)$/.test(
      forSo[1] ?? "",
    ) &&
    /^(?: ?[-,;:.?!]| ?$| (?:of (?:them|those)|macarons?|macs|and|so|what|how|(?:packed )?(?:in|into) (?:a |each |one )?box(?:es)?)\b)/.test(
      behind,
    )
  );
}
