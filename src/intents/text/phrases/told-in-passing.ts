/** What is told in passing between two questions, and why something is so: nothing of it is an order, a cake or a half. */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|no|nah|right|oh|well|hm|and|so),? )*)";

export const toldInPassing = (): readonly Phrase[] => [
  // "its only 290 now, took some out for a cake"
  {
    marks: [" took ", " used ", " kept ", " needed "],
    from: /(?<=\d.*),? (?:i |we |and |i've |ive )*(?:took|used|kept|needed) (?:some|a bit|a little|the rest|a spoonful)(?: of (?:it|that))?(?: out| off| back)? for (?:an?|the|my|another|some) [a-z]+(?: [a-z]+)?(?= ?[.!]*$)/g,
    to: "",
  },
  // "no rum, half of them dont drink. instant coffee instead"
  {
    marks: ["half of "],
    from: /(?:,|;| -|\.)? (?:because |since |cos |as )?half of (?:them|us|the guests|the kids|my guests) (?:don'?t|do not|won'?t|can'?t|hate|dislike)(?: (?:drink|like|eat|want|have|touch|do))?(?: (?:it|that|alcohol|rum|coffee|nuts|dairy))?(?=[.,;!]|$)/g,
    to: "",
  },
  // "neighbor says she'll pay $28 for it, whats the margin on that": typed without its sign it is no shell
  {
    marks: [" pay ", " pays ", " paid "],
    from: /^(?:(?:ok|so|and|the|my|a|one) )*(?:[a-z]+ (?:says?|said|reckons?) )?(?:she|he|they|she'?ll|he'?ll|they'?ll|shell|hell)(?: would| will|'d)? (?:pay|pays|paid) ([$£€]? ?\d+(?:[.,]\d\d)?)(?: for (?:it|that|them|a box|the box|one))?,? (?:so |and )?(?:what(?:'s|s| is)? ?(?:the |my )?)?(margin|markup)(?: (?:on|for|at|with) (?:that|it))?(?= ?[?.!]*$)/g,
    to: "sell at $1, what $2",
  },
  // "sold at $14 what margin did i make on the 6.22"
  {
    marks: [" on the "],
    from: /\b(sold|sell|selling) (?:it |them )?(?:at|for) ([$£€]? ?\d+(?:\.\d\d)?),? what (margin|markup)(?: (?:did|do|does|would|will|is|was|i|we|that|make|made|get|got|have))* on the ([$£€]? ?\d+\.\d\d)(?= ?[?.!]*$)/g,
    to: "it costs $4, $1 at $2, what $3",
  },
  // "310 of the chocolate for that ganache not 260", with a timer in between
  {
    marks: [" of the "],
    from: /\b(\d{2,4}) ?(?:g|grams?)? of the (chocolate|cream|butter|whites|sugar) (?:for|in) (?:that|the) (ganache|buttercream|batter)(?: (?:it was|it is|is|was))?,? (?:and )?not \d{2,4}(?: ?g)?(?= ?[.!]*$)/g,
    to: "back to the $3, $1 g $2",
  },
  // "they want four colours so split it in 4": told twice
  {
    marks: [" so split it "],
    from: /^(?:(?:oh|ok|and|so|but|well) )*(?:they|she|he|we|i) wants? (?:\d|two|three|four|five|six) colou?rs,? so (?=split it (?:in|into) (?:\d|two|three|four|five|six)\b)/g,
    to: "",
  },
  // "no that last one was granulated. undo"
  {
    marks: ["undo"],
    from: /^(?:no|oops|oh|sorry|wait)?,? ?(?:that|the)(?: last)?(?: one| bit| entry)? (?:was|is) (?:the )?[a-z]+(?: [a-z]+)?(?:[.,;!]| so) undo(?: (?:that|it))?(?= ?[.!]*$)/g,
    to: "undo",
  },
  // "ok forget that. batter for 26 macarons": another question, and nothing to forget
  {
    marks: ["forget ", "scrap ", "never mind", "nevermind", "leave "],
    from: new RegExp(
      `^${lead}(?:forget|scrap|never ?mind|leave) (?:about )?(?:that|it|all that)[.;!] (?=\\S+ \\S+ \\S)`,
      "g",
    ),
    to: "",
  },
];
