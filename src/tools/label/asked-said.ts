/** Which allergens a question is about: "do they contain nuts", "is it gluten free", "any soy in them", "walnut allergy". */
import { type AllergenRow, allergens } from "../../../data/rules/allergens.ts";
import type { Reading, Span } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { freeBehind } from "./refused-said.ts";

const idsOf = (isOne: (row: AllergenRow) => boolean): string[] => allergens.filter(isOne).map(({ id }) => id);

/** What a baker calls them, and the ids of the tables that she means by it; then each by its own names. */
const askedWords: readonly (readonly [RegExp, readonly string[]])[] = [
  // "pine nut" is one of them, "any nuts" all
  [
    /\b(?<!(?:pine|brazil|macadamia|queensland) )(?:tree ?)?nuts?(?:free)?\b/,
    idsOf((row) => row.usClass === "tree nuts"),
  ],
  [/\b(?:gluten|wheat)(?:free)?\b/, idsOf((row) => row.euClass === "cereals containing gluten")],
  [/\b(?:dairy|lactose)(?:free)?\b/, ["milk"]],
  [/\bshellfish(?:free)?\b/, ["crustaceans", "molluscs"]],
  ...allergens.map(({ id, eu = id, words = [] }): [RegExp, string[]] => [
    new RegExp(`\\b(?:${[id, eu, ...words].join("|")})s?(?:free)?\\b`, "i"),
    [id],
  ]),
];

/** Each of them, the longest name first: "pine nut" is no nut alone. */
const allergenWord = [
  ...allergens.flatMap(({ id, eu = id, words = [] }) => [id, eu, ...words]),
  ...["tree ?nut", "nut", "gluten", "dairy", "lactose"],
]
  .sort((a, b) => b.length - a.length)
  .map((each) => `${each.toLowerCase()}s?`)
  .join("|");

/**
 * "do they contain nuts", "is there egg in it". What they are said to hold is in them and not asked about: "they contain
 * walnut", "with any nut that is there", "what do they have: cashew".
 */
const asksBehind =
  /(?:\b(?:do|does|can|could|may|might|will|would|should)\b[^,.;:?]*(?<!\b(?:that|which|who) )\bcontain|\ballergic to|\ballergy to|\bfree (?:of|from)|\b(?:is|are) there|(?<!\b(?:with|use|put|add|of|like) )\bany|(?<=^(?:and |so |but |ok )*(?:do|does) .+ )\b(?:have|include)|\b(?:does|do) (?:it|they|that|these|those|this)(?: have| got| include)?|\b(?:has|have) (?:it|they|these|those)(?: got)?)\b(?!(?: have| got| contain)? ?:)(.*?)(?:\bin\b|,|\?|$)/d;
/** "sesame and peanut free", "walnut allergy", "a pine nut allergic guest". */
const asksBefore = new RegExp(
  `\\b((?:(?:${allergenWord})(?:,|,? and|,? or) )*(?:${allergenWord}))[ -]?(?:${freeBehind}|allerg(?:y|ies|ic)\\b|intoleran)`,
  "dg",
);

/** Where the words stand by which allergens are asked about. */
function stretches(text: string): Span[] {
  const behind = asksBehind.exec(text)?.indices?.[1];
  const before = [...text.matchAll(asksBefore)].flatMap((hit) => (hit.indices?.[1] ? [hit.indices[1]] : []));
  return [...(behind ? [behind] : []), ...before];
}

/** The allergens behind "contain", "allergic to", "any", or before "free", "allergy": what is asked about, not what is in it. */
export function asksAbout(reading: Reading): string[] {
  const words = wordsOf(reading);
  const said = [
    asksBehind.exec(words)?.[1] ?? "",
    /(\S+) ?free\b/.exec(words)?.[0] ?? "",
    ...stretches(reading.text).map((span) => reading.text.slice(...span)),
  ];
  return [
    ...new Set(askedWords.flatMap(([pattern, ids]) => (said.some((each) => pattern.test(each)) ? ids : []))),
  ];
}

/** Where the allergens themselves stand that are asked about. */
export function askedSpans(text: string): Span[] {
  return stretches(text).flatMap(([start, end]) =>
    askedWords.flatMap(([pattern]) =>
      [...text.slice(start, end).matchAll(new RegExp(pattern, "gi"))].map(
        (hit): Span => [start + hit.index, start + hit.index + hit[0].length],
      ),
    ),
  );
}
