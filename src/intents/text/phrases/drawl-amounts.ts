/** Amounts in everyday American talk: "an hour an ten", "inch and a half ones", "the buttercream, which is 300 g". */
import { partWords, smallNumbers, tens } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count, spelt } from "./spelt.ts";

const units =
  "hours?|hrs?|minutes?|mins?|pounds?|lbs?|ounces?|inch|inches|cups?|sticks?|dozen|kilos?|(?:table|tea)spoons?|tbsp|tsp";
const part =
  "(?:(?:an? |one )?(?:half|quarter|third|eighth)|(?:three|two|five|seven) (?:quarters?|thirds|eighths))";

/** "a half", "three quarters" on top of one: in digits, since "at 1 and a half" would begin with an hour. */
const oneAnd = (said: string): string => {
  const [, top, bottom = ""] =
    /^(?:(?:an? |one )|(two|three|five|seven) )?(half|quarter|third|eighth)/.exec(said) ?? [];
  const over = partWords[bottom] ?? 1;
  const share = (top === undefined ? 1 : (smallNumbers[top] ?? 1)) / over;
  return over === 3 ? `1 ${share * 3 > 1.5 ? 2 : 1}/3` : `${1 + share}`;
};

export const drawlAmounts = (): readonly Phrase[] => [
  // "an hour an a half", "two pounds an three quarters"
  {
    marks: [" an a ", " an half", " an ", " n a "],
    from: new RegExp(
      `(?<=\\b(?:${units}|h|${spelt})|\\d) (?:an|n) (?=(?:${part}|${count})\\b(?! (?:an )?hour))`,
      "g",
    ),
    to: " and ",
  },
  // "60 inch and a half macs": sixty of that size
  {
    marks: ["inch and"],
    from: new RegExp(
      `\\b(\\d{2,}|(?:${Object.keys(tens).join("|")})) inch and (${part}) (?=(?:macs|macarons|shells|ones)\\b)`,
      "g",
    ),
    to: (_whole, number = "", more = "") => `${number} ${oneAnd(more)} inch `,
  },
  // "inch and a half ones", "pound and a quarter of butter": one of them, and the unit behind the number
  {
    marks: ["inch and", "pound and", "hour and", "cup and", "ounce and", "stick and", "kilo and"],
    from: new RegExp(
      `(?<!\\b(?:an?|one|half|quarter|third|per|each|every|another|more|${spelt})[ ])(?<!\\d ?)\\b(pound|hour|cup|ounce|stick|kilo) and (${part})\\b(?! (?:of )?(?:an? )?(?:${units}|teaspoons?|tablespoons?|tsp|tbsp)\\b)`,
      "g",
    ),
    to: (_whole, unit = "", more = "") => `${oneAnd(more)} ${unit}`,
  },
  {
    marks: ["inch and"],
    from: new RegExp(
      `(?<!\\b(?:half|quarter|per|${spelt})[ ])(?<!\\d ?)\\b(?:(?:an|a|one) )?inch and (${part})\\b`,
      "g",
    ),
    to: (_whole, more = "") => `${oneAnd(more)} inch`,
  },
  // "the pound of buttercream i just made"
  {
    marks: ["pound of", "kilo of", "ounce of", "stick of", "cup of", "pound and"],
    from: /\b(?:the|this|that) (pound|kilo|ounce|stick|cup)(?= (?:of|and a) )/g,
    to: "a $1",
  },
  // "the buttercream thats in the mixer, which is 300 g"
  {
    marks: [", which is", ", which weighs", ", which comes", ", that weighs"],
    from: new RegExp(
      `\\b(?:the|my) (buttercream|ganache|batter|filling|frosting|smbc)((?: (?:that'?s|that is|that i(?:'ve)?(?: got| have)?|i(?:'ve)? got|i have)(?: [a-z]+){0,5}?)?), (?:which|that) (?:is|weighs|comes to|comes in at) (?:about |only |just |around |exactly )*((?:${count}|half a|an?) ?(?:g|grams?|kg|oz|ounces?|lbs?|pounds?))\\b`,
      "g",
    ),
    to: "$3 of $1",
  },
  // "make it metric, a pound and a quarter of butter"
  {
    marks: ["metric"],
    from: /^(?:(?:ok|and|now|please|so),? )*(?:make (?:it|that|this) metric|(?:in )?metric(?: please)?|go metric(?: on)?)[,:]? (?=[^?]*\b(?:pounds?|lbs?|ounces?|oz|cups?|sticks?)\b)(.+)$/g,
    to: "$1 in grams",
  },
  {
    marks: ["metric"],
    from: /^(.*\b(?:pounds?|lbs?|ounces?|oz|cups?|sticks?)\b.*?),? (?:make|turn|put) (?:it|that|them) (?:in |into |to )?metric(?= |$|[.?!])/g,
    to: "$1 in grams",
  },
];
