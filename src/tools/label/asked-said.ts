/** Which allergens a question is about: "do they contain nuts", "is it gluten free", "any soy in them". */
import type { Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";

/** What a baker calls them, and the ids of the tables that she means by it. */
const askedWords: readonly (readonly [RegExp, readonly string[]])[] = [
  [
    /\bnuts?(?:free)?\b/,
    ["almond", "hazelnut", "pistachio", "walnut", "pecan", "macadamia", "cashew", "Brazil nut", "pine nut"],
  ],
  [/\b(?:gluten|wheat)(?:free)?\b/, ["wheat", "barley", "rye", "oats"]],
  [/\b(?:soya?|soy)(?:free)?\b/, ["soy"]],
  [/\b(?:dairy|milk|lactose)(?:free)?\b/, ["milk"]],
  [/\beggs?(?:free)?\b/, ["egg"]],
  [/\bpeanuts?(?:free)?\b/, ["peanut"]],
  [/\bsesame(?:free)?\b/, ["sesame"]],
  [/\balmonds?\b/, ["almond"]],
];

const asksBehind =
  /\b(?:contains?|allergic to|allergy to|free (?:of|from)|(?:is|are) there|any|(?:does|do|has|have|got) (?:it|they|that|these|those|this)(?: have| got)?)\b(.*?)(?:\bin\b|,|\?|$)/;

/** The allergens behind "contain", "allergic to", "any", or before "free": what is asked about, not what is in it. */
export function asksAbout(reading: Reading): string[] {
  const words = wordsOf(reading);
  const said = `${asksBehind.exec(words)?.[1] ?? ""} ${/(\S+) ?free\b/.exec(words)?.[0] ?? ""}`;
  return [...new Set(askedWords.flatMap(([pattern, ids]) => (pattern.test(said) ? ids : [])))];
}
