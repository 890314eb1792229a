/** What is to be weighed, asked by where it goes, and whites told by the eggs that they came out of. */
import type { Phrase } from "./phrase.ts";

const scale =
  "(?:on|onto|in|into) (?:the|my|our|a) (?:(?:kitchen|digital|little|mixing|big) )?(?:scales?|bowl)";
const asks =
  "(?:tell me |so |ok |and |now |can you tell me |show me )*(?:what|whats|which things|how much of what)(?: all| exactly)?";
const goes =
  "(?: (?:has|have|needs|need|ought|do|does|should|must|will|would|i|we|to|be))*?(?: (?:go|goes|put|is|be|lands?|land|comes?|ends? up|weigh))";
const forWhat =
  "(?:to (?:get|make|have|end up with|bake|give me)|for|if i (?:want|need|make|bake|am making)|when i (?:want|make))";
/** Shells alone: a filling is asked for by its own name. */
const shells =
  "((?=[^?]*\\d|[^?]*\\b(?:dozen|twenty|thirty|forty|fifty|sixty)\\b)(?=[^?]*\\b(?:shells?|batter|macarons?|macs)\\b)(?![^?]*\\b(?:buttercream|ganache|filling|smbc|frosting|timer|min|minutes|shelf|cost)\\b)[^?]{5,60})";

const weight = "(\\d+(?:[.,]\\d+)?) ?(?:g|gr|grams?)";
const white = "(?:of )?(?:the |egg )?whites?(?! choc)";
const eggs = "(?:(?:these|those|the|my|our|them|all|\\d+|two|three|four|five|six|seven|eight) )*eggs";
const opener = "((?:(?:well|so|ok|okay|right|oh|hm|hmm|now|and|hi|hey|alright),? )*)";

export const weighedOut = (): readonly Phrase[] => [
  // "what goes on the scale to get shells for 30 macarons"
  {
    marks: ["scale", "bowl"],
    from: new RegExp(`^${asks}${goes} ${scale},? ${forWhat} ${shells}(?=[ ?.!]*$)`, "g"),
    to: (_said, what = "") => `what do i weigh for ${plain(what)}`,
  },
  // "shells for 30 macarons, what goes on the scale"
  {
    marks: ["scale", "bowl"],
    from: new RegExp(
      `^(?:${forWhat} )?${shells},? ${asks}${goes} ${scale}(?: then| for (?:that|this|it|them|those))?(?=[ ?.!]*$)`,
      "g",
    ),
    to: (_said, what = "") => `what do i weigh for ${plain(what)}`,
  },
  // "136 g of white came out of these eggs", "these eggs gave me 120 g of whites"
  {
    marks: ["egg"],
    from: new RegExp(
      `^${opener}(?:i (?:got|get|have|had) )?${weight} ${white}(?: (?:came|comes|came out|is what|was what|i got|got|out|came up|all told))* (?:out of|from|off) ${eggs}\\b(?=[,.;:]? ?[a-z])`,
      "g",
    ),
    to: "$1i have $2 g of whites",
  },
  {
    marks: ["egg"],
    from: new RegExp(
      `^${opener}(?:(?:out of|from) ${eggs},? (?:i|we)(?: have|'ve|ve)? (?:got|get|have|had|end up with)|${eggs} (?:gave|give|yielded|made|came to|come to|weighed out at|got)(?: me| us)?) ${weight} ${white}\\b(?=[,.;:]? ?[a-z])`,
      "g",
    ),
    to: "$1i have $2 g of whites",
  },
  // "one white went down the sink so its just 85 g of them": the whites
  {
    marks: [" of them", " of it"],
    from: /^((?:(?:so|well|oh|oops),? )*)(?:one|an?|another|the last|half an?) (?:egg )?(?:white|egg) (?:went|fell|dropped|got lost|ended up|is gone|spilt|spilled|splashed|broke)[a-z ]*?,? (?:so|and|which leaves|leaving|leaves me)(?: (?:its|it's|i have|ive|there is|theres|now|just|only|me|with|got))* (\d+(?:[.,]\d+)? ?(?:g|grams?)) (?:of them|of it|of whites?)\b/g,
    to: "$1$2 whites",
  },
];

/** "30 macarons, shells only": what else they are made of isn't asked. */
const plain = (what: string): string =>
  what
    .replace(/,? ?(?:only |just )?(?:the )?shells(?: only| alone)?$/, (said) =>
      /only|just|alone/.test(said) ? "" : said,
    )
    .replace(/^(\S+ (?:macarons?|macs))(?: worth)? of shells$/, "shells for $1")
    .replace(/^(\S+ (?:macarons?|macs))$/, "shells for $1");
