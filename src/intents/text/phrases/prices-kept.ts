/** Prices to keep, told under a heading: "prices to keep: butter $8 a kilo, sugar $1.60 a kilo". */
import type { Phrase } from "./phrase.ts";

const polite = "(?:(?:please|pls|ok|okay|and|so|now|also|can you|could you|would you|for me),? )*";
const keep =
  "(?:keep|save|remember|store|note(?: down)?|put (?:down|by|away)|write down|jot down|hold on to|file)";
const which =
  "(?:(?:these|the|my|those|this|our|some|following|new|latest|todays|today's|current|shop|ingredient) )*";
const list = "(?:prices?(?: ?list)?|costs)";
const heads = [
  `${list} (?:to|for) (?:me |us |you )?(?:to )?${keep}`,
  `${keep} ${which}${list}(?: (?:for (?:me|us|later)|please|pls|down|in mind))*`,
  `${keep} what (?:things|it all|stuff|everything|(?:the |my )?ingredients|they) (?:all )?costs?(?: me)?`,
  `(?:these|here|those|this) (?:are|is|come) ${which}${list}(?: (?:(?:that |which )?i(?:'d)? (?:want|need|like)(?: you)? )?to ${keep})?`,
  `${which}price ?list`,
  "(?:for (?:later|the record|the shelf|next time)|so you know)",
];
/** Money for a weight: "$8 a kilo", "1.60/kg". Prices of boxes are another matter. */
const forWeight =
  /\d ?(?:dollars|euros?|pounds)? ?(?:a|an|per|\/|the) ?(?:kilo|kg|lb|pound|oz|ounce|100 ?g|g)\b/;
const asks =
  /\?|\b(?:how|what|whats|which)\b(?! (?:things|it all|stuff|everything|the ingredients|my ingredients|they) )/;

const behindPrice =
  /([$£€]? ?\d+(?:[.,]\d{1,2})? ?(?:dollars|euros?|pounds)? ?(?:a|per|\/) ?(?:kilo|kg|lb|pound|100 ?g)) for (?:the |my )?([a-z]+(?: (?!and\b)[a-z]+)?)(?= ?[,.;]| and |$)/g;

export const pricesKept = (): readonly Phrase[] => [
  {
    marks: ["price", "cost", "for later", "for the record", "for the shelf"],
    from: new RegExp(`^${polite}(?:${heads.join("|")})(?: ?[:,-] ?| (?=[$£€]))(?=.*\\d)`, "g"),
    to: (whole, ...found) => {
      const [at, text] = [Number(found.at(-2)), String(found.at(-1))];
      const rest = text.slice(at + whole.length);
      return forWeight.test(rest) && !asks.test(rest) ? "prices: " : whole;
    },
  },
  // "prices: $8 a kilo for butter, $1.60 a kilo for sugar": each behind its name, as the others are
  {
    marks: ["prices: "],
    from: /^prices: ([$£€]?\d.*)$/g,
    to: (_whole, list = "") => `prices: ${list.replace(behindPrice, "$2 $1")}`,
  },
];
