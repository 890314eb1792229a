/** The sums of money in a sentence and what each is for, by the words around it. */
import type { Amount, Reading } from "../contract/index.ts";
import { type Piece, pieces, wordsBetween, wordsOf } from "../lib/pieces.ts";
import { inBase, unitRow } from "../lib/units.ts";
import { shareSaid } from "./said-share.ts";

export type Use = "price" | "ingredients" | "packaging" | "labor" | "cost" | "rate";

export interface Sum {
  value: number;
  /** ISO 4217, or "" where no sign was said. */
  currency: string;
  /** Said with a $, or with no sign. */
  bare?: "$" | "";
  use?: Use;
  /** "almond flour is $16 a kilo, powdered sugar $2": the weight that an earlier price was for goes on. */
  per?: Amount["per"];
  amount: Amount;
}

const specific: readonly (readonly [Use, RegExp])[] = [
  [
    "price",
    /\b(?:sell|sells|selling|sold|ask|asks|asked|asking|charge|charges|charged|charging|price|priced|retail|goes? for|went for|(?:neighbou?r|friend|client|lady|shop|caf[eé]|boss|someone|somebody|she|he|they) wants? (?:it|them|one|a box) for|customers? (?:pays?|paid|offers?|offered|gives?|gave)|(?:she|he|they|someone|somebody)(?: has| have)? (?:offered|offers|offer|pays?|paid|bid)|offered me|(?:profit|margin) at)\b/,
  ],
  ["labor", /\b(?:labou?r|work|working|wages?|my time|hours?|of time)\b/],
  ["ingredients", /\bing?redi?e?\w*|\b(?:food|stuff|groceries)\b/],
  [
    "packaging",
    /\b(?:packag\w*|packing|boxes|bags|ribbons?|stickers?|labels|wrap\w*|cartons|shipping|postage|delivery|electricity)\b/,
  ],
];
const general =
  /\b(?:(?:mark ?up|margin|profit) on|costs?|spend|spent|make|makes|made|come to|came to|total|all in)\b/;

/** Money in order. Where no sign is said at all, bare numbers beside words of money count. */
export function sums(reading: Reading): Sum[] {
  const list = pieces(reading);
  const signed = reading.amounts.filter((each) => each.dim === "money");
  // what was found to be money without a sign has more of its kind beside it
  const isSigned = signed.some((each) => each.unit !== "unsigned");
  const also = isSigned ? reading.amounts.filter((each) => isSaidAsSum(each, list)) : bareSums(reading, list);
  const moneys = reading.amounts.filter((each) => signed.includes(each) || also.includes(each));
  const places = moneys.map((amount) => list.findIndex((each) => each.amount === amount));
  const goesOn = (amount: Amount, at: number): Amount["per"] => {
    const place = places[at] ?? 0;
    const named = list[place - 1]?.thing?.ingredient && list[place - 2]?.amount?.dim !== "weight";
    return named && !amount.per
      ? moneys.slice(0, at).findLast((each) => each.per && unitRow(each.per.unit).dim === "weight")?.per
      : undefined;
  };
  // a margin is aimed at and no price said: a box's sum is no price
  const aimed =
    !/\b(?:sell|sells|selling|sold|charge|charging) (?!for)/.test(reading.text) &&
    (shareSaid(reading) !== undefined ||
      (reading.amounts.some((each) => each.dim === "percent") &&
        /\b(?:margin|mark ?-?up)\b/.test(reading.text)));
  return moneys.map((amount, at) => {
    const place = places[at] ?? 0;
    const known = amount.dim === "money";
    const per = goesOn(amount, at);
    return {
      ...(per ? { per } : {}),
      value:
        (known ? inBase(amount.value, amount.unit) : amount.value) + (known ? centsBehind(list, place) : 0),
      currency: known && amount.unit !== "unsigned" ? codeOf(amount.unit) : "",
      ...(amount.unit === "unsigned"
        ? { bare: "" as const }
        : known
          ? amount.text.includes("$")
            ? { bare: "$" as const }
            : {}
          : signed.length > 0
            ? {}
            : { bare: "" as const }),
      use: useOf(
        amount,
        tail(wordsBetween(list, places[at - 1] ?? -1, place), at === 0),
        head(wordsBetween(list, place, places[at + 1] ?? list.length)),
        isBoxBeside(
          amount.value,
          moneys.slice(0, at).map((each) => each.value),
          wordsBetween(list, places[at - 1] ?? -1, place),
          list.length,
          aimed,
        ),
      ),
      amount,
    };
  });
}

/** "costs me 9", "sells for 12" beside a sum with a sign. */
function isSaidAsSum(amount: Amount, list: readonly Piece[]): boolean {
  if (amount.dim !== "number" || amount.unit !== "" || amount.fraction) return false;
  const at = list.findIndex((each) => each.amount === amount);
  // "10 dollars on ingredients and 2 on boxes"
  if (
    /^ ?on (?:the )?\w/.test(wordsBetween(list, at, list.length)) &&
    /(?:and|plus|,)$/.test(wordsBetween(list, -1, at).trim())
  )
    return true;
  // "selling a dozen at $24"
  if (amount.of || /dozen|couple/.test(amount.text)) return false;
  // "0.80 packaging", "30 labor"
  if (
    /^ ?(?:of |for )?(?:the )?(?:packaging|packing|labou?r|wages?)\b/.test(
      wordsBetween(list, at, list.length),
    )
  )
    return true;
  // "ingredients were $8.50 and packaging 1.50"
  if (
    /\b(?:ingredients?|packaging|boxes|ribbons?|stickers?|labels)(?: (?:is|are|was|were|costs?|another|about))?$/.test(
      wordsBetween(list, Math.max(-1, at - 4), at).trim(),
    )
  )
    return true;
  return /\b(?:costs?|costs? me|cost (?:is|was)|(?:sells?|sold) (?:it |them )?(?:for|at)|selling(?: (?:it|them|each))?(?: (?:for|at))?|price is|charge)$/.test(
    wordsBetween(list, Math.max(-1, at - 4), at),
  );
}

/** "six dollars fifty": the number straight behind the sum is its hundredths. */
function centsBehind(list: readonly Piece[], place: number): number {
  const [money, cents] = [list[place]?.amount, list[place + 1]?.amount];
  const isCents =
    cents?.dim === "number" &&
    cents.unit === "" &&
    !cents.of &&
    !cents.fraction &&
    // "$21 a dozen"
    !/dozen|couple/.test(cents.text) &&
    Number.isInteger(cents.value);
  return isCents &&
    money &&
    Number.isInteger(money.value) &&
    cents.value >= 1 &&
    cents.value < 100 &&
    !list[place + 2]?.thing
    ? cents.value / 100
    : 0;
}

/**
 * "ingredients €9 box €1.20": what it is packed in, where it costs less than what came before it. Alone, "box 1.20" is
 * that too: what a box is sold at is said to be so.
 */
function isBoxBeside(
  value: number,
  earlier: readonly number[],
  before: string,
  words: number,
  aimed: boolean,
): boolean {
  const own = before.split(joint).at(-1)?.trim() ?? "";
  if (!/^(?:(?:add|also|with) )*(?:the |a |per )?(?:box|bag|ribbon|sticker|label)$/.test(own)) return false;
  if (aimed && earlier.length > 0) return true;
  return earlier.length === 0 ? words <= 4 : value < Math.max(...earlier);
}

/** "USD cent" is a hundredth of a USD. */
const codeOf = (unit: string) => (unitRow(unit).dim === "money" ? unit.slice(0, 3) : unit);

const joint = /[,;:?!.]|\band\b|\bbut\b|\bplus\b/;
/** What leads up to a sum: its own clause, or with "they were" the one before that too. */
const tail = (text: string, isFirst: boolean) => {
  const parts = text.split(joint);
  const own = parts.at(-1) ?? "";
  // "i forgot the boxes, 2,40 $"
  if (own.trim() === "" && isFirst) return parts.at(-2) ?? "";
  return /^ ?(?:theyre|its|thats|(?:they|it|that|those|these|which)) ?(?:now )?(?:were|was|are|is|cost|costs|came to)? ?$/.test(
    own,
  )
    ? `${parts.at(-2) ?? ""} ${own}`
    : own;
};
const head = (text: string) => text.split(joint)[0] ?? "";

/** The use whose word comes first: "$4 boxes what do i charge" is for the boxes. */
function earliest(text: string): Use | undefined {
  const found = specific.flatMap(([use, words]) => {
    const at = text.search(words);
    return at < 0 ? [] : [{ use, at }];
  });
  return found.sort((a, b) => a.at - b.at)[0]?.use;
}

function useOf(amount: Amount, before: string, after: string, isBox: boolean): Use | undefined {
  if (isBox) return "packaging";
  if (amount.per && unitRow(amount.per.unit).dim === "time") return "rate";
  // "an hour of my time is 20"
  if (
    /\bhours?(?: of (?:my time|work|labou?r))? (?:is|costs|counts as|is worth|worth|goes for)(?: worth)?(?: about)?$/.test(
      before.trim(),
    )
  )
    return "rate";
  // "took $30 for a box": what it brought in, and not what the box cost
  if (
    /\b(?:took|take|got|get|earned|earn|made|fetched)(?: in)?$/.test(before.trim()) &&
    /^ ?(?:for (?:a|an|the|each|every|one|it|them)|(?:a|per) (?:box|dozen))\b/.test(after)
  )
    return "price";
  // "if i drop it to $16"
  if (
    /\b(?:drop|lower|raise|put|bump|cut|bring|change|take|move) (?:it|that|them|the price|my price)(?: (?:up|down))? (?:to|at)$/.test(
      before.trim(),
    )
  )
    return "price";
  // "is 12 dollars too low"
  if (
    /(?:^| )(?:is|would|was|are)$/.test(before.trim()) &&
    /^ ?(?:be )?(?:too (?:low|little|much|high|cheap|expensive)|enough|fair|ok|okay|reasonable)\b/.test(after)
  )
    return "price";
  if (/\b(?:sell|sells|selling|sold)\b.*\b(?:box|boxes|bags?|packs?) of\b/.test(before)) return "price";
  // "selling boxes for £10"
  if (/\b(?:sell|sells|selling|sold) (?:\S+ ){0,2}(?:box|boxes|bags?|packs?) (?:for|at)$/.test(before.trim()))
    return "price";
  // "box costs 0.60 extra"
  if (
    /\b(?:box|boxes|bag|bags) costs? (?:me )?$/.test(`${before.trim()} `) &&
    /^ ?(?:extra|more|on top)\b/.test(after)
  )
    return "packaging";
  // "if boxes cost me £8": what is sold, not what it is packed in
  if (/\b(?:box|boxes|a box|each box) costs? (?:me )?$/.test(`${before.trim()} `)) return "cost";
  // "the box itself costs 80 cents"
  if (
    /\b(?:box|boxes|bag|bags) (?:itself|alone|themselves|only)(?: alone)?(?: (?:costs?|is|are|comes? to|another|at|:))*$/.test(
      before.trim(),
    )
  )
    return "packaging";
  // "plus a box for $1.50"
  if (/^(?:an?|the|some) (?:box|boxes|bags?|ribbons?|stickers?|labels?) for$/.test(before.trim()))
    return "packaging";
  // "a box of 12 at $30"
  if (
    /\b(?:box|boxes|bag|bags|pack|packs|tower|towers|dozen|dozens)(?:(?: of \S+)?(?: \S+)? at| of \S+(?: \S+)? for)$/.test(
      before.trim(),
    ) &&
    !/\b(?:buy|bought|cost|costs|spent|paid|make|makes|made|baked)\b|\b(?:plus|add|and) (?:a|an|the) (?:box|bag)/.test(
      before,
    )
  )
    return "price";
  // "1.5 hours at 20 dollars"
  if (/\b(?:hours?|hrs?|h)(?: of \w+| work\w*| labou?r)? (?:at|for|x|times)$/.test(before.trim()))
    return "rate";
  if (
    /^(?:box|tower|order|gift|treat)\b/.test(after.trim()) &&
    /\b(?:a|the|my|each|every|per)$/.test(before.trim())
  )
    return "price";
  const behind = /^ ?for (?:the|a) box\b/.test(after) ? "packaging" : earliest(after);
  if (behind === "price" && general.test(before) && lastUse(before) === undefined) return "cost";
  // "€14 ingredients €3 of boxes": the word between belongs to the sum before it
  const ofBehind = /^ ?of (?:the |my )?\w/.test(after) ? behind : undefined;
  return (
    ofBehind ??
    lastUse(before) ??
    behind ??
    (general.test(after) || general.test(before) ? "cost" : undefined)
  );
}

/**
 * What the words before a sum say it is: the last of them. "the boxes cost £3.50" is packaging all the same, while
 * "charge for a box that costs £3.50" is its cost.
 */
function lastUse(before: string): Use | undefined {
  const places = specific.flatMap(([use, words]) =>
    [...before.matchAll(new RegExp(words.source, "g"))].map((hit) => ({ use, at: hit.index })),
  );
  const last = places.sort((a, b) => b.at - a.at)[0];
  const cost = [...before.matchAll(new RegExp(general.source, "g"))].at(-1);
  if (!last) return undefined;
  return last.use === "price" && cost && cost.index > last.at ? "cost" : last.use;
}

/** "24 cost 9", "12.60 for 24", "profit on 50": whole numbers of macarons beside what they cost or bring. */
function isCount(number: Amount, { amounts, text }: Reading): boolean {
  if (!Number.isInteger(number.value) || number.value < 2 || /[.,]/.test(number.text)) return false;
  const [before, behind] = [text.slice(0, number.at[0]), text.slice(number.at[1])];
  const isPrice = /\b(?:sells?|sold|selling|goes|go) (?:it |them )?(?:for|at) $/.test(before);
  const isSum = /\b(?:costs?|cost me|costs me|spent|it is|its) $/.test(before);
  // "sell 12 for 18"
  if (
    /\b(?:sell|sells|selling|sold|charge|charging) (?:them |these )?\d+ (?:of (?:them|these) )?for $/.test(
      before,
    )
  )
    return false;
  if (!isPrice && !isSum && /^ (?:costs?|cost me|sells? for|sold for) \S*\d/.test(behind)) return true;
  if (/\b(?:cost|price) (?:of|for) (?:(?:the|my|these|those|all|making) )*$/.test(before)) return true;
  const other = amounts.some((each) => each !== number && ["number", "money"].includes(each.dim));
  const forSo = /(\S+)? ?(?:for|on)(?: (?:all|the|these|those))* $/.exec(before);
  return (
    other &&
    forSo !== null &&
    !/^(?:sells?|selling|sold|charge|charging|go|goes|going|asks?|asking|priced?|pays?|paid|it|them|spent|spend)$/.test(
      forSo[1] ?? "",
    ) &&
    /^(?: ?[-,;:.?!]| ?$| (?:of (?:them|those)|macarons?|macs|and|so|what|how)\b)/.test(behind)
  );
}

/** Numbers that can only be money: in a sentence about cost, not a count, a size or a time. */
function bareSums(reading: Reading, list: readonly Piece[]): Amount[] {
  if (
    !/\b(?:costs?|charge|price|margin|markup|sell|sells|sold|selling|ingredients|packaging)\b|\b(?:plus|and|add) \d[\d.,]* for (?:the |a |each )?(?:box|bag|ribbon|sticker|label|wrap)|\bwants? (?:it|them|one|a box) for \d|\b(?:customers?|she|he|they) (?:pays?|paid|offers?|offered|gives?|gave) (?:me )?(?:only |just )?\d|\b(?:hours?|minutes|min) of (?:work|labou?r|my time) (?:at|for) \d|^(?:(?:and|plus|add|also|the|with) )*(?:box|bag|ribbon|sticker|label)(?: (?:itself|alone|only|is|was|costs?))* \d+[.,]\d+(?: each| a box| per box)?$|\b(?:labou?r|wages?|my time)\b|\bhours?(?: of (?:my time|work))? (?:is|costs|counts as|is worth) \d|\bbox(?:es)? of \d+ (?:at|for) \d/.test(
      wordsOf(reading),
    )
  )
    return [];
  const share = shareSaid(reading);
  return reading.amounts.filter((each) => {
    if (each.dim !== "number" || each.unit !== "" || each.fraction) return false;
    const before = list[list.findIndex((piece) => piece.amount === each) - 1]?.text;
    if (["of", "per", "make", "makes", "made"].includes(before ?? "")) return false;
    if (isCount(each, reading)) return false;
    // "i want 40 margin", "with 60 markup instead"
    if (each === share) return false;
    // "customer wants 40"
    if (
      /\b(?:customers?|clients?|friend|lady|she|he|they|someone|somebody|shop) (?:wants?|needs?|orders?|ordered) $/.test(
        reading.text.slice(0, each.at[0]),
      )
    )
      return false;
    // "ingredients 9 box 1.20": nine of them would be boxes
    if (
      /\b(?:ingredients?|costs?(?: me)?) $/.test(reading.text.slice(0, each.at[0])) &&
      /^ box \d/.test(reading.text.slice(each.at[1]))
    )
      return true;
    // "5 a dozen"
    if (/dozen|couple/.test(each.text)) return false;
    // "what if margin is 30"
    if (
      /\b(?:margin|markup|mark up|food cost)(?: (?:is|of|at|was|to))? $/.test(
        reading.text.slice(0, each.at[0]),
      )
    )
      return false;
    // "6 at 2.20 each": how many, not how much
    if (/^ (?:at|for) \S*\d\S*(?: \S+)? (?:each|apiece|a piece)\b/.test(reading.text.slice(each.at[1])))
      return false;
    // "sell 6 for 15": six of them
    if (
      /\b(?:sell|sells|selling|sold|charge|charging) (?:them |these |a box of )?$/.test(
        reading.text.slice(0, each.at[0]),
      ) &&
      /^ (?:of (?:them|those) )?for \S*\d/.test(reading.text.slice(each.at[1]))
    )
      return false;
    // "the boxes 1.50": the thing stands before its price, where a count would stand before the thing
    // "2.50 a macaron": the thing behind is what the sum is for
    const between = each.of ? reading.text.slice(each.at[1], each.of.at[0]).trim() : "";
    return !each.of || each.of.at[0] < each.at[0] || /^(?:a|per|for (?:a|each|one|the))$/.test(between);
  });
}
