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

export const bowlFirst: readonly Phrase[] = [
  // "rum and also orange zest, both going in 220 g buttercream"
  {
    marks: [" and also "],
    from: /^((?:(?:ok|so|now|how much|what amount of),? )*[a-z]{3,}(?: [a-z]{3,}){0,2}) and also (?=[a-z]{3,}(?: [a-z]{3,}){0,2}(?:, both(?: of them)?)? (?:going in(?:to)?|for|into|in) \d+(?:\.\d+)? ?(?:g|grams?)\b)/g,
    to: "$1 and ",
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
