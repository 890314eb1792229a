/** What something cost her, told as it comes: "butter cost me 2.50 for 250 g", "i paid 2.50 for 250 g butter". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|so|oh|well|btw|note|remember|fyi|the|my),? )*)";
const sum = "((?:[$£€] ?)?\\d+(?:[.,]\\d{1,2})?(?: ?(?:dollars?|eur(?:os?)?|pounds?|quid|bucks))?)";
const weight =
  "((?:\\d+(?:\\.\\d+)? ?(?:g|grams?|kg|kilos?|lbs?|oz|ounces)|(?:a|one) (?:kilo|kg|pound|lb))(?: (?:bag|pack|packet|block|tub))?)";
/** No batch and no box: what those cost is a bill. */
const thing =
  "((?!(?:it|that|this|they|each|one|all|box|boxes|batch|batches|macarons?|macs|shells|packaging|ingredients|everything|which|what|how|if)\\b)[a-z]+(?: (?!cost|was|set|is|are|were)[a-z]+){0,2})";
const end = "(?: (?:today|now|again|this time|last week|at the market))*[ .!]*$";

/** What is bought by the piece; a price for twelve of them is no weight's. */
const byPiece =
  "((?:(?:free range|organic|large|medium|whole|fresh|new|these|those) )*(?:eggs?(?: whites?| yolks?)?|whites|yolks|vanilla (?:pods?|beans?)|lemons?|limes?|oranges?))";
const number =
  "(\\d{1,3}|an? dozen|half a dozen|one|two|three|four|five|six|eight|ten|twelve|each|apiece|a piece)";
const counts: Readonly<Record<string, string>> = {
  "a dozen": "12",
  dozen: "12",
  "half a dozen": "6",
  one: "1",
  two: "2",
  three: "3",
  four: "4",
  five: "5",
  six: "6",
  eight: "8",
  ten: "10",
  twelve: "12",
};
/** "whites are 5 for 6" may be anything; behind a plain verb the sum has its cents or its sign. */
const asMoney =
  "(?=[$£€]|\\d+[.,]\\d\\d\\b|\\d+(?:[.,]\\d+)? ?(?:dollars?|eur(?:os?)?|quid|bucks|cents?|cts?)\\b)";
const paying = `(?:(?:now )?(?:costs?(?: me| us)?|sets? (?:me|us) back|came to|went for) |(?:(?:was|were|is|are|now|:) )*${asMoney})`;

/** The one way in which the shelf hears it: a sign on the sum, and how many it is for. */
function pricedByPiece(before: string, name: string, paid: string, many: string): string {
  const bare = paid.trim();
  const cents = /^(\d+) ?(?:c|cts?|cents?)$/.exec(bare)?.[1];
  const sum = cents ? `$${Number(cents) / 100}` : /^[\d.,]+$/.test(bare) ? `$${bare}` : bare;
  return `${before}${name} cost ${sum} for ${counts[many] ?? (/^\d/.test(many) ? many : "1")} of them`;
}
const paidByPiece =
  "((?:[$£€] ?)?\\d+(?:[.,]\\d{1,2})?(?: ?(?:dollars?|eur(?:os?)?|quid|bucks|cents?|cts?|c))?)";

/** So much of it for so much: "per" makes money of a sum without a sign. */
const priced = (before: string, name: string, paid: string, much: string): string =>
  `${before}${name} is ${paid} ${/^(?:a|one) /.test(much) ? much.replace(/^one /, "a ") : `per ${much}`}`;

export const pricesTold = (): readonly Phrase[] => [
  // "price out this ganache: 250 g dark chocolate at $14 a kilo ...": what it comes to, and no price asked for it
  {
    marks: ["price out ", "price up "],
    from: /^((?:(?:please|pls|ok|can you|could you|now|and),? )*)price (?:out|up) (?=(?:this|that|these|the|my)\b(?!.*\b(?:margin|mark ?up|profit)\b))/g,
    to: "$1work out the cost of ",
  },
  // "eggs cost me 3.60 for 12", "a dozen eggs is 3.60", "i pay 3.60 for 12 eggs"
  {
    marks: ["egg", "white", "yolk", "pod", "bean", "lemon", "lime", "orange"],
    from: new RegExp(
      `^${lead}${byPiece} ${paying}(?:about )?${paidByPiece},? (?:for |per )?(?:(?:a|one) (?:box|pack|carton|tray) of )?${number}${end}`,
      "g",
    ),
    to: (_said, before = "", name = "", paid = "", many = "") => pricedByPiece(before, name, paid, many),
  },
  {
    marks: ["egg", "white", "yolk", "pod", "bean", "lemon", "lime", "orange"],
    from: new RegExp(
      `^${lead}(?:(?:a|one) (?:box|pack|carton|tray) of )?${number} (?:of )?${byPiece} ${paying}(?:about )?${paidByPiece}${end}`,
      "g",
    ),
    to: (_said, before = "", many = "", name = "", paid = "") => pricedByPiece(before, name, paid, many),
  },
  {
    marks: ["paid ", "spent ", "pay "],
    from: new RegExp(
      `^${lead}(?:i |we |ive |had to )?(?:just )?(?:paid|spent|pay) ${paidByPiece} (?:for|on) (?:(?:a|one) (?:box|pack|carton|tray) of )?${number} (?:of )?${byPiece}${end}`,
      "g",
    ),
    to: (_said, before = "", paid = "", many = "", name = "") => pricedByPiece(before, name, paid, many),
  },
  // "got 250 g butter for 2.50": bought, where a sum of money is plain to see
  {
    marks: ["got ", "picked up "],
    from: new RegExp(
      `^${lead}(?:i |we |ive |i've |just )*(?:got|picked up) ${weight} (?:of )?${thing} for ((?:[$£€] ?)\\d+(?:[.,]\\d{1,2})?|\\d+[.,]\\d\\d)${end}`,
      "g",
    ),
    to: "$1bought $2 $3 for $4",
  },
  {
    marks: ["cost", "set me back", "set us back", " was ", " were ", "came to", "went for"],
    from: new RegExp(
      `^${lead}${thing} (?:costs? (?:me|us)|cost|sets? (?:me|us) back|set (?:me|us) back|was|were|came to|went for)(?: about)? ${sum} (?:for|per) ${weight}${end}`,
      "g",
    ),
    to: (_said, before = "", name = "", paid = "", much = "") => priced(before, name, paid, much),
  },
  {
    marks: ["paid ", "spent ", "pay "],
    from: new RegExp(
      `^${lead}(?:i |we |ive |had to )?(?:just )?(?:paid|spent|pay) ${sum} (?:for|on) ${weight} (?:of )?(?:the )?${thing}${end}`,
      "g",
    ),
    to: (_said, before = "", paid = "", much = "", name = "") => priced(before, name, paid, much),
  },
  {
    marks: ["cost", "set me back", "set us back", "came to"],
    from: new RegExp(
      `^${lead}${weight} (?:of )?(?:the )?${thing} (?:costs? (?:me|us)|cost|(?:sets?) (?:me|us) back|came to)(?: about)? ${sum}${end}`,
      "g",
    ),
    to: (_said, before = "", much = "", name = "", paid = "") => priced(before, name, paid, much),
  },
  {
    marks: ["cost"],
    from: new RegExp(`^${lead}${thing} ${weight} costs?(?: me| us)? ${sum}${end}`, "g"),
    to: (_said, before = "", name = "", much = "", paid = "") => priced(before, name, paid, much),
  },
];
