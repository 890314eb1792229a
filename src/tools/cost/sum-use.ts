/** What a sum of money is for, by the words around it: each turn of phrase in its order, the narrower before the wider. */
import type { Amount } from "../contract/index.ts";
import { unitRow } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { boxBeside, boxTurns } from "./box-sum.ts";

export type Use = "price" | "ingredients" | "packaging" | "labor" | "cost" | "rate";

/** A sum and the words beside it. */
export interface Beside {
  amount: Amount;
  /** What leads up to it in its own clause. */
  own: string;
  /** The same, with the clause before where "they were" points back to that. */
  before: string;
  /** The clause behind it. */
  behind: string;
  /** The sums that were said before it. */
  earlier: readonly number[];
  /** How many words and finds the whole sentence has. */
  words: number;
  /** A margin is aimed at, so that a price is asked for. */
  aimed: boolean;
}

/** A turn of phrase: what stands before the sum, behind it, and what must not stand before it. */
export interface Phrase {
  use: Use;
  before?: RegExp;
  behind?: RegExp;
  unless?: RegExp;
}

export const asWay =
  ({ use, before, behind, unless }: Phrase): Way<Beside, Use> =>
  (beside) =>
    (before?.test(beside.before.trim()) ?? true) &&
    (behind?.test(beside.behind) ?? true) &&
    !unless?.test(beside.before)
      ? use
      : undefined;

const workTurns: readonly Phrase[] = [
  // "an hour of my time is 20"
  {
    use: "rate",
    before:
      /\bhours?(?: of (?:my time|work|labou?r))? (?:is|costs|counts as|is worth|worth|goes for)(?: worth)?(?: about)?$/,
  },
  // "1.5 hours at 20 dollars"
  {
    use: "rate",
    before:
      /\b(?:hours?|hrs?|h)(?: of (?:my |our |the )?\w+| work\w*| labou?r)?(?: in the kitchen)? (?:at|for|x|times|@)$/,
  },
];

const priceTurns: readonly Phrase[] = [
  // "if i drop it to $16"
  {
    use: "price",
    before:
      /\b(?:(?:drop|lower|rais|put|bump|cut|br(?:ing|ought)|chang|t(?:ak|ook)|mov|knock|push|set|reduc|increas|mark|shav)(?:e|ed|d|s|ped|en)? (?:it|that|them|these|(?:the|my) (?:selling )?price) (?:(?:back )?(?:up|down) )?|(?:dropping|lowering|raising|cutting|putting|moving|reducing|knocking|going) (?:(?:it|that|them|(?:the|my) (?:selling )?price) )?(?:(?:back )?(?:up|down) )?)(?:to|at)$/,
    unless: /\b(?:costs?|ingredients?|packaging|butter|almonds?|labou?r|materials?)\b/,
  },
  // "and if i go down to €24", "suppose we only get $17": what the baker asks, whatever it costs to make
  {
    use: "price",
    before:
      /\b(?:i|we|id|wed|ill|well) (?:(?:only|just|had to|have to|must|might|may|could|can|should|would|will|were to|was to|am|are) )*(?:(?:go|went|going|drop|dropped|come|came|climb|climbed|sink|slip|settle) (?:(?:back|all the way|right|as) )*(?:(?:up|down) )?(?:to|as (?:low|high) as|for|at)|(?:only|just) (?:get|got|took|take|ask|asked))$/,
  },
  // "what price for $9 at 60 % margin": what it costs
  { use: "cost", before: /\bwhat(?:s| is| would be)?(?: the| my| a)?(?: selling| right)? price (?:for|on)$/ },
  // "is 12 dollars too low"
  {
    use: "price",
    before: /(?:^| )(?:is|would|was|are)$/,
    behind: /^ ?(?:be )?(?:too (?:low|little|much|high|cheap|expensive)|enough|fair|ok|okay|reasonable)\b/,
  },
];

/** "$9 ingredients and $3 boxes": the word right behind a sum, where none of its kind leads up to it. */
const boughtRightBehind =
  /^ ?(?:of )?(?:the |my |some )?(?:packag\w*|packing|box(?:es)?|bags?|ribbons?|stickers?|labels?|wrap\w*|cartons?|ingredients|materials|food|groceries|stuff|labou?r|work)\b/;
/** "sell for", "price": the sum behind it is that, whatever comes next. */
const endsInPrice =
  /\b(?:(?:sell\w*|sold|goes?|charg\w*|ask\w*|pays?|paid|retail\w*)(?: (?:it|them|these|this|that|me|is|of))?(?: (?:for|at|is))?|(?:prices?|priced)(?: (?:is|at))?)$/;

const specific: readonly (readonly [Use, RegExp])[] = [
  [
    "price",
    /\b(?:sell|sells|selling|sold|ask|asks|asked|asking|charge|charges|charged|charging|price|priced|retail|goes? for|went for|(?:mates?|friends?|people|folks|colleagues|neighbou?rs|clients) pays?|(?:neighbou?r|friend|client|lady|shop|caf[eé]|boss|someone|somebody|she|he|they) wants? (?:it|them|one|a box) for|customers? (?:pays?|paid|offers?|offered|gives?|gave)|(?:she|he|they|someone|somebody)(?: has| have)? (?:offered|offers|offer|pays?|paid|bid)|offered me|(?:profit|margin) at)\b/,
  ],
  ["labor", /\b(?:labou?r|work|working|wages?|my time|hours?|of time)\b/],
  ["ingredients", /\bing?redi?e?\w*|\b(?:food|stuff|groceries|materials)\b/],
  [
    "packaging",
    /\b(?:packag\w*|packing|boxes|bags|ribbons?|stickers?|labels|wrap\w*|cartons|shipping|postage|delivery|electricity)\b/,
  ],
];
const general =
  /\b(?:(?:mark ?up|margin|profit) on|costs?|spend|spent|make|makes|made|come to|came to|total|all in)\b/;

const ways: readonly Way<Beside, Use>[] = [
  boxBeside,
  ({ amount: { per } }) => (per && unitRow(per.unit).dim === "time" ? "rate" : undefined),
  ...[...workTurns, ...priceTurns, ...boxTurns].map(asWay),
  namedUse,
  ({ before, behind }) => (general.test(behind) || general.test(before) ? "cost" : undefined),
];

export const useOf = (beside: Beside): Use | undefined => firstOf(ways, beside);

/** A word of its own for it: the last before the sum, or the first behind. */
function namedUse({ before, behind: after, earlier, aimed }: Beside): Use | undefined {
  const last = lastUse(before);
  const behind = /^ ?for (?:the|a) box\b/.test(after) ? "packaging" : earliest(after);
  // "$5 cost $20 price": the word between belongs to the sum before it
  const isOfEarlier = earlier.length > 0 && /^ ?costs? ?$/.test(before) && /^ ?price\b/.test(after);
  if (behind === "price" && general.test(before) && last === undefined) return isOfEarlier ? "price" : "cost";
  // "€14 ingredients €3 of boxes": the word between belongs to the sum before it; "charge if €9 for packaging"
  const isBought = behind === "packaging" || behind === "ingredients" || behind === "labor";
  const isNext =
    isBought &&
    last === "price" &&
    before.trim().includes(" ") &&
    !endsInPrice.test(before.trim()) &&
    boughtRightBehind.test(after);
  const ofBehind =
    /^ ?of (?:the |my )?\w/.test(after) || (isBought && boughtBehind.test(after)) || isNext
      ? behind
      : undefined;
  // "charge for a 70 % margin: $5 of nuts": what was bought, and no price
  if (aimed && last === "price" && behind === undefined && ofFood.test(after)) return "ingredients";
  return ofBehind ?? last ?? behind;
}

const ofFood =
  /^ ?(?:worth )?of (?:the |my |some )?(?!(?:it|that|them|those|these|this|which|each|an?|every|one|margin|profit|cost)\b)[a-z]/;
const boughtBehind =
  /^ ?(?:for|on) (?:the |my |some )?(?:packag\w*|packing|boxes|bags|ribbons?|stickers?|labels|wrap\w*|cartons|ingredients|food|groceries|labou?r|work)\b/;

/** The use whose word comes first: "$4 boxes what do i charge" is for the boxes. */
function earliest(text: string): Use | undefined {
  const found = specific.flatMap(([use, words]) => {
    const at = text.search(words);
    return at < 0 ? [] : [{ use, at }];
  });
  return found.sort((a, b) => a.at - b.at)[0]?.use;
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
  if (!last) return undefined;
  const cost = [...before.matchAll(new RegExp(general.source, "g"))].at(-1);
  return last.use === "price" && cost && cost.index > last.at ? "cost" : last.use;
}

const joint = /[,;:?!.]|\band\b|\bbut\b|\bplus\b/;
const pointsBack =
  /^ ?(?:theyre|its|thats|(?:they|it|that|those|these|which)) ?(?:now )?(?:were|was|are|is|cost|costs|came to)? ?$/;

/**
 * The clauses that a sum stands between.
 * @param before all words since the sum before it
 * @param behind all words up to the next
 */
export function besideSum(amount: Amount, before: string, behind: string, isFirst: boolean) {
  const parts = before.split(joint);
  const [earlier = "", own = ""] = [parts.at(-2), parts.at(-1)];
  // "i forgot the boxes, 2,40 $"; "boxes, they were 2.40"
  const lead = own.trim() === "" && isFirst ? earlier : pointsBack.test(own) ? `${earlier} ${own}` : own;
  return { amount, own: own.trim(), before: lead, behind: behind.split(joint)[0] ?? "" };
}
