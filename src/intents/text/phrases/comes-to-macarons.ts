/** "and what would that make, in macarons i mean": what it comes to, with what is counted said as an afterthought. */
import type { Phrase } from "./phrase.ts";

const opener = "((?:(?:and|so|ok|okay|then|now|but|well|which|oh),? )*)";
const makes =
  "(?:make|makes|give|gives|gives me|give me|come to|comes to|yield|yields|be|is|get me|gets me|come out at|work out (?:at|to)|amount to|mean|means|add up to)";
const it = "(?:that|it|this|they|those|all that|all of that|the lot)";
const counted = "(macarons?|macs|shells|trays)";
const meant = "(?:,? (?:i mean|i meant|that is|please|pls|then|roughly|about|if i may))*";

export const comesToMacarons = (): readonly Phrase[] => [
  {
    marks: ["macaron", " macs", "shells", "trays"],
    from: new RegExp(
      `^${opener}(?:what|whats|what's|how|hows|how's|how much|how many) ?(?:(?:would|will|does|do|could|might|can|is) )*(?:${it}|the yield(?: of (?:that|it))?)(?: ${makes})?(?: out)?(?:,| -)? (?:in|as|counted in|i mean in|in terms of) (?:finished |whole |filled )?${counted}${meant}(?=[ ?.!]*$)`,
      "g",
    ),
    to: "$1how many $2 is that",
  },
  {
    marks: ["macaron", " macs", "shells", "trays"],
    from: new RegExp(
      `^${opener}(?:in|as|counted in|in terms of) (?:finished |whole |filled )?${counted},? (?:what|whats|what's|how much|how many) ?(?:(?:would|will|does|do|could|is) )*(?:${it})?(?: ${makes})?${meant}(?=[ ?.!]*$)`,
      "g",
    ),
    to: "$1how many $2 is that",
  },
  // "which makes what, in macarons"
  {
    marks: ["macaron", " macs", "shells", "trays"],
    from: new RegExp(
      `^${opener}(?:(?:${it}) )?${makes} (?:what|how many|how much)(?:,| -)? (?:in|as) (?:finished |whole |filled )?${counted}${meant}(?=[ ?.!]*$)`,
      "g",
    ),
    to: "$1how many $2 is that",
  },
];
