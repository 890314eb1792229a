/**
 * "ok the 140 g bowl first, how much lemon zest in that buttercream": a bowl is taken up by its weight, and what goes into
 * it is asked behind: one question, and no bowl of that weight to split.
 */
import type { Phrase } from "./phrase.ts";

const lead =
  "(?:(?:ok|okay|and|now|so|right|well|alright|then|first|firstly|next|please|lets|let me|i|we|ill|im|will|take|taking|do|doing|start|starting|begin|beginning|with|go|for|on|to|about|second|last),? )*";
const bowl =
  "(?:the|my|that|this) (?:(?:first|second|small|smaller|big|bigger|large|larger|other) )?(\\d+(?:\\.\\d+)?) ?(?:g|grams?|gr) (?:bowl|one|part|portion|share|half|lot|batch)";
const now = "(?: (?:first|now|then|next|please|to start with|to begin with))*";
/** What is asked for; how long, how many or what it costs is no dose. */
const asked =
  "(?:how (?:much|many (?:grams|g|drops) of)|what amount of) ((?!(?:does|do|is|of|buttercream|ganache|batter|filling|flavou?r)\\b)[a-z]+(?: (?!(?:in|into|for|to|goes?|do|does|should|is|will|can|per)\\b)[a-z]+){0,2})";
const goesIn =
  "(?: (?:(?:do|should|can|would|must|will) (?:i|we)|goes?|put|need|add|use|is|needed|needs to go|go))*";
const into =
  "(?: (?:in|into|for|to|with)(?: (?:it|that|this|there|that one|this one|(?:that|this|the|my) (buttercream|ganache|batter|filling|bowl|one|part)))?)?";

export const bowlFirst = (): readonly Phrase[] => [
  // "rum and also orange zest, both going in 220 g buttercream"
  {
    marks: [" and also "],
    from: /^((?:(?:ok|so|now|how much|what amount of),? )*[a-z]{3,}(?: [a-z]{3,}){0,2}) and also (?=[a-z]{3,}(?: [a-z]{3,}){0,2}(?:(?:,? and|,) (?:\d+(?:\.\d+)? ?(?:g|grams?) (?:of )?)?[a-z]{3,}(?: [a-z]{3,})?){0,3}(?:,? (?:both|all)(?: of them)?)? (?:going in(?:to)?|for|into|in) \d+(?:\.\d+)? ?(?:g|grams?)\b)/g,
    to: "$1 and ",
  },
  // "230 g buttercream, lemon, and also how much salt", "... lemon. how much salt too?": both are asked for
  {
    marks: [" also how much ", " too", " as well"],
    from: /^((?:(?:i have|ive got|i've got|got|with|ok|so),? )*\d+(?:\.\d+)? ?(?:g|grams?) (?:of )?(?:butter ?cream|smbc|ganache|filling)[,:]? (?!(?:how|what|is|are|for|in|with)\b)[a-z]{3,}(?: (?:flavou?r|extract|zest|paste|oil|powder))?)(?:, and|,|\.|;| and)(?: (?:and )?also how much ([a-z]+(?: [a-z]+)?)| (?:and )?how much ([a-z]+(?: (?!too|as)[a-z]+)?) (?:too|as well)) ?[?.!]*$/g,
    to: (said, before = "", also = "", too = "") => (also || too ? `${before} and ${also || too}?` : said),
  },
  // "230 g buttercream, rum and also lemon zest"
  {
    marks: [" and also "],
    from: /(?<=\d ?(?:g|grams?) [^?]*[,:.;] ?(?:with |for |i want )?(?!(?:how|what|when|set|note|time|start|can|does|split|scale|make)\b)[a-z]{3,}(?: [a-z]{3,}){0,2}) and also (?=(?!(?:how|what|when|set|note|time|start|can|does|split|scale|make)\b)[a-z]{3,}(?: [a-z]{3,}){0,2}(?:$|[,.?]| and (?:\d+(?:\.\d+)? ?(?:g|grams?) )?[a-z]))/g,
    to: " and ",
  },
  {
    marks: [
      " g bowl",
      " g one",
      " g part",
      " g portion",
      " g share",
      " g half",
      " g lot",
      " g batch",
      "g bowl",
      "g one",
    ],
    from: new RegExp(`^${lead}${bowl}${now} ?[,.;:-] (?:so |and )?${asked}${goesIn}${into} ?[?.!]*$`, "g"),
    to: (_said, grams = "", what = "", mix = "") =>
      `how much ${what} for the ${grams} g ${/^(?:buttercream|ganache|batter|filling)$/.test(mix) ? `of ${mix}` : "bowl"}`,
  },
  // "for the 140 g one, lemon zest?"
  {
    marks: ["zest", "extract", "paste", "powder", "flavor", "flavour", "gel", "oil", "salt"],
    from: new RegExp(
      `^${lead}${bowl}${now} ?[,.;:-] ((?:[a-z]+ ){0,2}(?:zest|extract|paste|powder|flavou?r|gel|oil|salt))(?: (?:please|then|now|how much))* ?[?.!]*$`,
      "g",
    ),
    to: "how much $2 for the $1 g bowl",
  },
];
