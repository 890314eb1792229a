/** What is wanted: the whole label, its allergens, its dates, or a promise that nobody can give. */
import type { Reading } from "../contract/index.ts";
import { wordsOf } from "../lib/pieces.ts";
import { asksAbout } from "./asked-said.ts";
import type { LabelInputs } from "./label.ts";

/** The line of a label that names the allergens: a part of it, and nobody's allergy. */
const line =
  "(?:lines?|statements?|info\\w*|notes?|box|boxes|warnings?|sections?|declarations?|lists?|parts?|bits?|texts?|notices?|labels?|advice)";
const somebodys = `(?:allergy(?! ${line}\\b)|allergic|intoleran\\w*|coeliac|celiac)`;

/** "is it safe for a nut allergy", "can a coeliac friend eat these". */
export const asksSafety = new RegExp(
  `(?:safe|ok|okay|suitable|fine|can|for|someone|somebody|anyone|people|guests?) .*${somebodys}|${somebodys}\\b.*(?:kid|child|guest|friend|customer|person|eat|instead|safe|suitable|can (?:i|we|she|he|they)|(?:is|are|would) (?:it|this|these|they|that) (?:ok|okay|fine|alright))`,
);

/** "nut allergy at the party", "one of them is coeliac". */
export const tellsOfSomebody = (text: string): boolean =>
  new RegExp(`\\b${somebodys}`).test(text) && !/\b(?:labels?|declare|contains?|list|which|what)\b/.test(text);

/** Signs of a question about what is in it; they count where an allergen is named: "any nuts", "egg free". */
const asksContents =
  /free\b|^(?:and |so |but )*(?:(?:does|do|has|have) (?:it|they|that|these|those|this)|any) |^(?:and |so |but )*(?:does|do) .+ (?:have|include) |(?:is|are) there .*\bin\b/;

const speaksOfAllergens =
  /\ball?erg\w+|\b(?:nut|gluten|dairy|egg|milk|soy|lactose)[ -]free\b|\bdeclare\b|\bcontains?\b(?! [\d])/;
/** "a label for ..., with the allergy line": one of its lines, and so the whole of it. */
const withLine = new RegExp(
  `\\ball?erg\\w+ ${line}\\b|\\b(?:with|and|plus|including|incl) (?:the |all |any )?all?ergens\\b`,
);
const speaksOfDates = /(?:best|use)[ -](?:by|before)|expir\w+|what dates?\b/;
const speaksOfLabel = /\blabels?\b|ingredients? (?:list|line|statement)/;

export function wantSaid(reading: Reading): LabelInputs["want"] {
  if (asksContents.test(wordsOf(reading)) && asksAbout(reading).length > 0) return "allergens";
  const weighs = reading.amounts.some((each) => each.dim === "weight");
  if (weighs && speaksOfLabel.test(reading.mask) && withLine.test(wordsOf(reading))) return "label";
  if (speaksOfAllergens.test(reading.mask)) return "allergens";
  // beside weights the date is a line of the label
  if (speaksOfDates.test(reading.text) && reading.amounts.every((each) => each.dim !== "weight"))
    return "dates";
  return speaksOfLabel.test(reading.mask) ? "label" : undefined;
}
