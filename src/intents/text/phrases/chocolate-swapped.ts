/** Which chocolate it is after all, and how much cream: "swap the dark for white", "same 140 g cream but milk". */
import type { Phrase } from "./phrase.ts";

const kind = "(dark|milk|white)(?: choc(?:olate)?)?";
const weight = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|kg|oz|ml)";

export const chocolateSwapped = (): readonly Phrase[] => [
  // "swap the dark for white"
  {
    marks: ["swap", "swop", "change", "replace", "exchange", "switch", "trade"],
    from: new RegExp(
      `\\b(?:swap|swop|change|replace|exchange|switch|trade)(?:ing)?(?: out)? (?:the |my |that )?${kind} (?:for|to|with|by|into) (?:the |some )?${kind}\\b`,
      "g",
    ),
    to: "use $2 chocolate instead",
  },
  // "same 140 g cream but milk this time"
  {
    marks: ["same "],
    from: /\b(?:the )?same (\d+(?:[.,]\d+)? ?(?:g|grams?) (?:of )?(?:cream|butter)),? but (?:with |in |for )?(dark|milk|white)\b(?! choc)/g,
    to: "$2 chocolate, $1",
  },
  // "id like milk ganache": wished for, and not thin as milk
  {
    marks: ["like milk"],
    from: /\b(?:i'?d|we'?d|i would|we would|would) like (?=milk\b)/g,
    to: "i want ",
  },
  // "cream and total?": the total is told with it
  {
    marks: [" and total", " and the total", " & total", " plus total"],
    from: /\b(cream|chocolate),? (?:and|&|plus) (?:the )?total(?: weight)?(?= ?[?.!]*$)/g,
    to: "$1",
  },
  // "we will go with the dark, tell me the cream for 200 g"
  {
    marks: ["cream for "],
    from: new RegExp(
      `\\b(?:go(?:ing)?(?: with)?|went with|take|taking|have|having|use|using) (?:the )?(dark|milk|white),? (?:so |and |then )?(?:(?:tell me|give me|what's|whats|how much is|how much) )?(?:the )?cream for (${weight})(?= ?[?.!]*$| (?:for|to) [a-z]+ ?[?.!]*$)`,
      "g",
    ),
    to: "cream for $2 $1 chocolate",
  },
];
