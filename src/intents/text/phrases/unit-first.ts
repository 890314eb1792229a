/** The measure that is wanted, named first: "tsp of flavor for 315 g buttercream", "cups for 250 g sugar". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${openingText()})`;
const weight = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|kg|oz|ml)";
/** A spoonful that went in, or is asked about, is one of them. */
const isOne =
  "(?!.*\\b(?:per|each|ok|okay|alright|fine|enough|too|much|many|right|went|fell|added|add|put|used|left|is|was|grams?|g\\?)\\b)";

export const unitFirst = (): readonly Phrase[] => [
  // "tsp of salt in g and tsp of baking soda in g": one of each
  {
    marks: [
      "and tsp",
      "and teaspoon",
      "and tbsp",
      "and tablespoon",
      "and cup",
      ", tsp",
      ", tbsp",
      ", cup",
      ", teaspoon",
      ", tablespoon",
    ],
    from: /(?<=\b(?:in|to|into) (?:g|gr|grams?|ml|oz|ounces)),? (and |plus |, )?(?=(?:tsp|teaspoon|tbsp|tablespoon|cup) (?:of )?[a-z ]{2,24} (?:in|to|into) (?:g|gr|grams?|ml|oz|ounces)\b)/g,
    to: " and a ",
  },
  {
    marks: ["tsp", "teaspoon", "tbsp", "tablespoon"],
    from: new RegExp(
      `^${lead}(tsps?|teaspoons?|tbsps?|tablespoons?) (?:of )?(?=[a-z][^\\d?]* \\d)${isOne}`,
      "g",
    ),
    to: "$1how many $2 ",
  },
  // "cups for 250 g granulated sugar"
  {
    marks: ["cup", "tbsp", "tablespoon", "tsp", "teaspoon", "stick", "ounces for", "oz for"],
    from: new RegExp(
      `^${lead}(cups?|tbsps?|tablespoons?|tsps?|teaspoons?|sticks?|oz|ounces?) (?:for|is|in|from) (${weight} (?:of )?[a-z ]{3,30})(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1how many $2 is $3",
  },
];
