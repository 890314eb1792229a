/** One flavor into two fillings: "peppermint oil, once into 140 g buttercream and once into 95 g of dark ganache". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|hi|hey|also|please),? )*)";
/** The flavor, in its own words: no order and no amount. */
const flavor =
  "((?!(?:split|divide|share|note|log|set|timer|i|ive|we|how|what|which|label|price|save|is|are|scale|pantry)\\b)[a-z][a-z'-]*(?: [a-z][a-z'-]*){0,3}?)";
const once =
  "(?:(?:once|one time|one lot|one part|one|some|some of it|first|partly|also|both|twice|goes|going|is going|to go|needed|wanted|half of it) )*";
const into =
  "(?:(?:in|into|for|to|in to|goes in|both|both of them|two fillings|two bowls|these|these two|the two):? )*";
const grams = "(\\d+(?:\\.\\d+)?) ?(?:grams?|gr|g) (?:of )?(?:the |my )?";
const mix =
  "((?:(?:dark|milk|white|plain|vanilla|swiss|italian|french|chocolate|choc|meringue) ){0,3}(?:butter ?cream|smbc|bc|ganache|filling|batter))";
const asks =
  "(?:how much(?: (?:of it|of that|do i|does|would|should|is|in|for|to|per|goes|go|into|with))*|amounts?(?: for)?|what(?:'?s)?(?: (?:do|does|would|is|are|amounts?|doses?|in|for|goes))*|doses? for|grams? for)";
const each =
  "(?: ?(?:each|both|either|every|bowl|one|of them|of the two|filling|need|needs|take|takes|get|gets|want|wants|go|goes|in|into|please|pls|then|thanks))+";

export const twoFillings = (): readonly Phrase[] => [
  {
    marks: [" each", " both", " per ", " every"],
    from: new RegExp(
      `^${lead}${flavor}(?:,|:|\\.)? ${once}${into}${grams}${mix}(?: first)?(?:,| and|, and|, then| then| plus| as well as) ${once}${into}${grams}${mix}(?: (?:too|as well|also|after))?(?:,|\\.|;|:| -) (?:so |and |then )*(?:${asks}${each}|(?:for )?each how much) ?[?.!]*$`,
      "g",
    ),
    to: "$1$2 for $3 g $4 and for $5 g $6, how much each",
  },
  // "240 g buttercream and 120 g dark ganache, both to get rum. how much each"
  {
    marks: [" both"],
    from: new RegExp(
      `^${lead}(?:(?:i have|ive got|i've got|ive|i've|got|there is|theres) )?${grams}${mix}(?:,| and| plus)+ ${grams}${mix}(?:,|\\.|;| -| and)+ (?:i )?(?:(?:want|both|are|to|should|shall|will|need|needs?|get|take|have|with|for|going|be|flavou?red) )+${flavor}(?: (?:in|into|for) both)?(?:,|\\.|;|:| -) (?:so |and |then )*(?:${asks}${each}|(?:for )?each how much|amounts?) ?[?.!]*$`,
      "g",
    ),
    to: "$1$6 for $2 g $3 and for $4 g $5, how much each",
  },
  // "one flavor two bowls: ...": how many flavors there are, and none by that name
  {
    marks: ["one flavo", "same flavo"],
    from: /^(?:one|same|the same) flavou?r,? (?:for |in |into |and )?(?:two|both|2) (?:bowls|fillings|mixes|batches)(?:,|:|;|\.| -) (?=[a-z])/g,
    to: "",
  },
];
