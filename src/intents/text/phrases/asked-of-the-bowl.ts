/** What a bowl holds, takes or is enough for: "how big a buttercream would 3 g suit", "how much water has it got". */
import { tastes } from "../../../../data/words/flavors.ts";
import type { Phrase } from "./phrase.ts";

const mix = "(butter ?cream|ganache|filling|batter|smbc)";
const grams = "((?:(?:the|those|that|my) )?\\d+(?:[.,]\\d+)? ?(?:g|grams?)(?: of (?:it|that))?)";

const known = new Set(tastes.map(({ taste }) => taste));

export const askedOfTheBowl = (): readonly Phrase[] => [
  // "what goes into 350 g buttercream, coconut": so much of that
  {
    marks: ["what goes in"],
    from: /\bwhat goes (in|into) (?:my |the |that )?(\d+(?:\.\d+)? ?(?:g|grams?) (?:of )?(?:plain |swiss )?(?:butter ?cream|ganache|filling|smbc)),? ([a-z]+(?: [a-z]+)?)(?= ?[.?!]*$)/g,
    to: (said, into = "", bowl = "", taste = "") =>
      known.has(taste.replace(/ flavou?r(?:ing)?$/, "")) ? `how much ${taste} goes ${into} ${bowl}` : said,
  },
  // "is that sufficient"
  { marks: ["sufficient"], from: /\bsufficient(?:ly)?\b/g, to: "enough" },
  // "coffee for the entire lot"
  {
    marks: ["entire "],
    from: /\b(the|an|my|this|that) entire (?=lot|batch|bowl|thing|amount|mix|filling|batter|buttercream|ganache)/g,
    to: "$1 whole ",
  },
  // "how big a buttercream would 3 g suit", "how much ganache is 3 g enough for"
  {
    marks: ["how big ", "how large ", " for", " suit"],
    from: new RegExp(
      `\\bhow (?:big|large|much) (?:(?:an?|of|the|my|bowl|batch) )*${mix} (?:(?:would|does|do|can|could|will) ${grams} (?:suit|fit|be (?:right|enough|good) for|need|serve|go with)|(?:is|are) ${grams} (?:right|enough|good|sufficient) for)\\b`,
      "g",
    ),
    to: (_said, what = "", one, other) => `how much ${what} does ${one ?? other} do`,
  },
  // "how much water and fat has it got"
  {
    marks: ["has it got", "has that got", "have they got", "has this got"],
    from: /\b(how (?:much|many)\b[^?]*?) (?:has|have) (it|that|this|they) got\b/g,
    to: "$1 does $2 have",
  },
  // "..., and then orange oil, how much in all of that"
  {
    marks: [", how much"],
    from: /,? ?\b(?:and then|and|then|plus|also) (?!(?:it|its|i|we|they|that|gets?|getting|takes?|wants?|needs?|has|have|is|are|will|should|goes|tastes) )((?:[a-z]+ ){0,3}(?:oil|extract|flavou?r(?:ing)?|essence|paste|powder|zest|salt|rum|vanilla|liqueur)), how much(?: of it)? (?=(?:in|for|into) (?:(?:all|half) of )?(?:that|it|this)\b)/g,
    to: ", and how much $1 ",
  },
  // "matcha powder for the whole amount"
  {
    marks: ["whole amount", "entire amount", "whole weight", "whole quantity"],
    from: /\bfor the (?:whole|entire) (?:amount|weight|quantity)\b(?! of)/g,
    to: "for all of it",
  },
];
