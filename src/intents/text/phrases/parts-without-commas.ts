/** "split 400 g batter pink 120 lilac 90": each number is of the word before it. */
import type { Phrase } from "./phrase.ts";

const name =
  "(?!(?:in|into|to|for|and|of|at|by|with|from|about|or|is|the|parts?|ways|bowls|batter|filling|buttercream|ganache|mix|g|grams?|oz|kg)\\b)[a-z]{3,}";
const part = `${name} \\d{2,3}(?: ?g)?(?! ?(?:[%/:]|(?:percent|mins?|mm|cm|to|macarons|shells|parts)\\b))`;

export const partsWithoutCommas = (): readonly Phrase[] => [
  {
    marks: ["split ", "divide "],
    from: new RegExp(
      `^((?:(?:ok|so|and|now|please),? )*(?:split|divide) (?:the |my )?\\d+(?:\\.\\d+)?(?: ?(?:g|grams?))?(?: of)?(?: (?!into |in )[a-z]+){0,2}?(?:,|:| into| in)?) (${part}(?:,? (?:and )?${part})+)(?= ?[?.!]*$|,? (?:and |the )*rest\\b)`,
      "g",
    ),
    to: (_said, lead, list = "") =>
      `${lead} ${[...list.matchAll(/([a-z]{3,}) (\d+)/g)].map(([, of, size]) => `${of} ${size} g`).join(", ")}`,
  },
];
