/** "an" where "and" is meant, as it is said and typed: "two hundred an eighty", "rum for it an set nine min". */
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

/** Behind these an article may stand, though the wrong one: "set an timer", "for an batch". */
const beforeArticle =
  "(?:set|start|put|make|making|made|need|needs|want|wants|have|has|had|got|get|give|gave|add|use|using|used|buy|take|takes|took|is|was|be|its|it's|that's|thats|for|of|in|into|with|without|at|to|from|as|on|by|per|than|like|or|not|me|what's|whats|just|such|half|quarter|third|call|name|send|then|does|do|did|will|would|should|can|could|if|when|how|what|many|this|that's|only|another|one)";

/** Words with a vowel in front that begin something of their own, and that no article stands before. */
const ownBeginning =
  "(?:also|and|if|is|are|it|its|it's|i|im|i'm|ive|i've|ill|i'll|id|i'd|a|all|another|at|after|add|each|in|on|out|once|until|any|u)";

const ofTrade =
  "(?:(?:egg|macaron|mac|swiss|dark|white|milk|french|italian|chocolate) )?(?:meringue|batter|shells?|macarons?|macs|tops?|bottoms?|feet|ganache|buttercream|smbc|filling|whites|mixture|mix|cookies)";

export const anForAnd = (): readonly Phrase[] => [
  // "why are the bottoms stickin", "the tops keep crackin'"
  {
    marks: ["in ", "in'", "in,", "in?"],
    from: /\b(stick|crack|brown|spread|burn|peak|melt|leak|bleed|sink|collaps|whipp|runn|splitt|curdl|wrinkl|fad|tilt|rattl|grind|thicken|stiffen|weep|seep|ooz)in(?:'|\b)(?!g)/g,
    to: "$1ing",
  },
  // "call me at eleven and in fifty minutes": a timer's ring, and no name
  {
    marks: ["call me "],
    from: new RegExp(
      `\\bcall me (?=(?:back )?(?:at|in|after) (?:about |another )?(?:\\d+|an?|half|quarter|noon|midday|${spelt})\\b)`,
      "g",
    ),
    to: "ring me ",
  },
  // "how long do they keep, and in the freezer": asked of both places
  {
    marks: ["how long"],
    from: /\b(how long (?:do|does|can|will|would|should) (?:[a-z]+ ){1,4}?(?:keep|last|stay (?:good|fresh)|hold)(?: good| fresh)?(?: in the fridge)?),? (?:and|or) (?=in the freezer\b|frozen\b)/g,
    to: "$1 and how long ",
  },
  // "why does my meringue not peak", "why wont the shells come off": told the other way round
  {
    marks: ["why "],
    from: new RegExp(
      `\\bwhy (do|does|did|will|would|can) ((?:my|the|our|these|this) ${ofTrade}) (?:not|never) (?=[a-z])`,
      "g",
    ),
    to: (_whole, verb = "", what = "") =>
      `why ${what} ${verb === "will" ? "wont" : verb === "can" ? "cant" : `${verb}nt`} `,
  },
  {
    marks: ["why "],
    from: new RegExp(
      `\\bwhy (don'?t|doesn'?t|didn'?t|won'?t|can'?t) ((?:my|the|our|these|this) ${ofTrade}) (?=[a-z])`,
      "g",
    ),
    to: (_whole, verb = "", what = "") => `why ${what} ${verb.replace("'", "")} `,
  },
  // within a number the sound is never an article: "a hundred an twelve", "two hundred n eighty"
  {
    marks: ["hundred an ", "thousand an ", "hundred n ", "thousand n ", "hundred an' ", "hundred 'n "],
    from: new RegExp(`(?<=\\b(?:hundred|thousand)) (?:an'?|'?n) (?=(?:${spelt})\\b|\\d)`, "g"),
    to: " and ",
  },
  // no "an" stands before a consonant, but for a silent one ("an hour") and what is spelt out ("an smbc")
  {
    marks: [" an "],
    from: new RegExp(
      `(?<=^|[ ,.;?!])(?<!\\b${beforeArticle} )an (?=(?:(?!ho(?:u?rs?|nest)|hr|heir|herb|h[a-z]?\\b|hundred|half|hal?f)[bcdfghjklmnpqrstvwxyz][a-z]*[aeiouy][a-z]*|${ownBeginning}|(?!8|11\\b|18\\b)\\d+)(?:[ ,.?!']|$|\\d))`,
      "g",
    ),
    to: "and ",
  },
];
