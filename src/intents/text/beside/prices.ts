/** Prices told in passing: "paid 14.50 for this", "tickets 12 a head", "eggs were 3.60 by the way". */
import { clauseEnd, clauseStart, money, number } from "./pieces.ts";
import type { ToldBeside } from "./told-beside.ts";

/** What is asked is no price. */
const more =
  /\b(?:how (?:much|many)|flavou?r)\b|\b(?:cream|whites|batter|filling|chocolate|choc|sugar|butter)\b[^.?!]{0,30}\?/;
const per =
  "(?: ?(?:a|per|each|the|for a) ?(?:dozen|half dozen|head|person|pop|kilo|kg|pack|packet|bottle|jar|box|block|tub|litre|six|piece)?)?";
const bought =
  "(?:(?:the|my|those|these|some|a|one|this) )?(?:[a-z-]+ )?(?:(?:six|dozen|10|12|6)[- ]?packs? of )?(?:butter|eggs?|flour|almonds?|almond flour|ground almonds|sugar|icing sugar|caster sugar|cream|chocolate|milk|tickets?|entry|entrance|admission|bag|delivery|postage|petrol|taxi|parking|coffee|ribbons?|vanilla pods?|food colou?r(?:ing)?|oven|mixer|scales?)(?: (?:alone|here|today|now|yesterday|this week|pack|block|box))?";
const comesTo =
  "(?:'?s|'?re| is| are| was| were| costs?| cost me| cost us| came to| comes to| set me back| went up to| went for| only| now| just| at| for| about| over)+";
const inPassing =
  "(?:,? (?:by the way|btw|fyi|daylight robbery|robbery|outrageous|can you believe it|mind you|ouch|imagine|crazy|mad|lol))";

export const prices: readonly ToldBeside[] = [
  // "paid 14.50 for this", "spent 20 quid on"
  {
    is: "a price",
    marks: ["paid", "spent", "forked", "shelled out", "splashed"],
    said: new RegExp(
      `${clauseStart}(?:(?:i|we|ive|i've|just|only|have) )*(?:paid|spent|forked out|shelled out|splashed out)(?: a whole| over| about| nearly| only)? (?:${money}|${number}(?= (?:for|on) (?!\\d|an? |one )))(?: (?:for|on)(?= ))?`,
      "g",
    ),
    unless: ["words", "money", "stock"],
    beside: more,
  },
  // "tickets 12 a head", "entry is 5 each"
  {
    is: "a price",
    marks: ["ticket", "entry", "entrance", "admission", "a head", "per head", "fee"],
    said: new RegExp(
      `${clauseStart}(?:(?:the|its|it's) )*(?:tickets?|entry|entrance|admission|the fee|fee|seats?|stalls?|parking)${comesTo}? ?(?:${money}|${number})(?: ?(?:a|per|each) ?(?:head|person|pop|go|ticket|seat)?)?${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money"],
  },
  // "butter was 4.20 by the way", "six-pack of eggs costs 2.99", "the flour cost me 11.40, daylight robbery"
  {
    is: "a price",
    marks: [".", "$", "£", "€", "quid", "dollar", "euro", "bucks", "pound"],
    said: new RegExp(
      `${clauseStart}${bought}${comesTo} ${money}${per}${inPassing}(?= ?(?:[,.;:!?)]|$))`,
      "g",
    ),
    leaves: "by the way",
    unless: ["words", "money"],
  },
  {
    is: "a price",
    marks: [".", "$", "£", "€", "quid", "dollar", "euro", "bucks", "pound"],
    said: new RegExp(
      `${clauseStart}${bought}${comesTo} ${money}${per}(?: (?:now|today|these days|already))*${inPassing}?${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money", "stock"],
    beside: more,
  },
  // "the bottle set me back 22.50", "hazelnut flavor was 8.90": what it is of stays
  {
    is: "a price",
    marks: [".", "$", "£", "€", "quid", "dollar", "euro", "bucks", "pound"],
    said: new RegExp(
      `(?<=[a-z]{3}) (?:set me back|cost me|cost us|costs?|was|were|went for|for) ${money}${per}(?: (?:now|today|these days|already|alone))*${inPassing}?(?= ?(?:[,.;:!?)]|$)| and )`,
      "g",
    ),
    unless: ["words", "money", "stock"],
    beside: more,
  },
  // "i bought rose flavor for 6.50, how much in 280 g ganache"
  {
    is: "a price",
    marks: ["bought", "picked up", "got "],
    said: new RegExp(
      `(?<=\\b(?:bought|got|picked up) (?:(?:a|an|the|this|some|my) )?(?:[a-z]+ ){0,2}[a-z]+) (?:for|at) ${money}(?=[,.;:!?]| and (?:how|want|need|now))`,
      "g",
    ),
    unless: ["words", "cost"],
    beside: /\bhow much\b[^.?!]*\d ?(?:g|gr|grams?|oz|kg)\b|\d ?(?:g|gr|grams?|oz|kg)\b[^.?!]*\bhow much\b/,
  },
  // "hers sells at $30, mine costs $14 and sells at $35, my margin?"
  {
    is: "a price",
    marks: ["hers ", "theirs ", "his "],
    said: new RegExp(
      `${clauseStart}(?:hers|theirs|his(?: one| box)?)(?:'?s| is| are| sells?| goes?| costs?| go| sell| at| for)+ ${money}${clauseEnd}`,
      "g",
    ),
    beside: /\b(?:mine|ours)\b/,
  },
  // "its 8 dollars entry"
  {
    is: "a price",
    marks: ["entry", "entrance", "admission", "a ticket", "a head", "per head", "a seat"],
    said: new RegExp(
      `${clauseStart}(?:(?:its|it's|we charge|they charge|at) )*${money} (?:for )?(?:entry|entrance|admission|a ticket|a head|per head|a seat)${clauseEnd}`,
      "g",
    ),
    unless: ["words"],
    beside: more,
  },
  // "..., i charge 2.50 each", "they sell at 3 euros"
  {
    is: "a price",
    marks: ["charge", "sell", "ask ", "take ", "go for", "go at"],
    said: new RegExp(
      `${clauseStart}(?:(?:i|we|they|people|customers) )(?:usually |always |only |will )?(?:charge|sell(?: them)?(?: for| at)?|ask|take|go for|pay)(?: them)? (?:${money})(?: ?(?:each|apiece|a piece|a box|per box|per piece|a pop|for them|per macaron|for one))*${clauseEnd}`,
      "g",
    ),
    unless: ["words", "money"],
    beside: more,
  },
];
