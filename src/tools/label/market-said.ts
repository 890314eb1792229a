/**
 * Whose form a label is to have: of the United States, of the European Union, or of a land that no table here knows.
 * A land before a food says where that comes from: "french buttercream", "american butter", "european style butter".
 */
import type { Reading } from "../contract/index.ts";
import type { LabelInputs } from "./label.ts";

/** What a label has or follows: a land before one of these is its market. */
const form =
  "(?:(?:food |style |allergen |ingredients? )?(?:labels?|labelling|labeling|form|format|version|rules?|laws?|regulations?|requirements|market|customers?|shops?|one|ones))";

const unionLands =
  "germany|france|ireland|austria|spain|italy|portugal|belgium|holland|the netherlands|luxembourg|poland|denmark|sweden|finland|greece|croatia|hungary|romania|bulgaria|estonia|latvia|lithuania|malta|cyprus|slovenia|slovakia";
const ofUnion =
  "german|french|irish|austrian|spanish|italian|portuguese|belgian|dutch|polish|danish|swedish|finnish|greek|european?";

const european = new RegExp(
  `\\b(?:eu|e\\.u\\.|europe|european union)\\b(?!-? ?style)|\\b(?:${ofUnion}) ${form}\\b|\\b(?:for|in|to) (?:${unionLands})\\b|\\b(?:in|for) (?:german|french)(?: please| pls)?[.?!]*$|^(?:(?:and|no|the|a|now|make it|or) )*(?:${ofUnion})(?: one| please| pls| then| instead| now)*[.?!]*$`,
);

/** "us" is a word of many sentences: it counts beside a form, behind "for the" or a comma, or alone. */
const american = new RegExp(
  `\\b(?:us|usa|u\\.s\\.|american?|fda|states) ${form}\\b|\\b(?:usa|fda|united states)\\b|\\b(?:for|in) (?:the (?:us|states)|america)\\b|, ?us(?: please| pls)?[.?!]*$|^(?:(?:and|no|the|a|now|make it|or) )*(?:us|american)(?: one| please| pls| then| instead| now)*[.?!]*$`,
);

const other =
  "uk|u\\.k\\.|british|english|scottish|welsh|canadian|australian|aussie|indian|japanese|swiss|norwegian|mexican|brazilian|south african|new zealand";
const otherLands = new RegExp(
  `\\b(?:(${other}) ${form}|(?:for|in) (?:the |a )?(uk|u\\.k\\.|united kingdom|britain|england|scotland|wales|canada|australia|india|japan|switzerland|norway|mexico|brazil(?! nuts?\\b)|south africa|new zealand))\\b|^(?:(?:and|no|or|the|a|now|make it) )*(${other})(?: one| please| pls| then| instead| now)*[.?!]*$`,
);

export function marketSaid({ text }: Reading): Partial<LabelInputs> {
  if (european.test(text)) return { market: "eu" };
  if (american.test(text)) return { market: "us" };
  const land = otherLands.exec(text);
  return land ? { elsewhere: land.slice(1).find(Boolean) } : {};
}
