/** What something costs and what it is sold for, as one says it: "a tin of 12 sets me back $9, i let it go for $24". */
import type { Phrase } from "./phrase.ts";

const it = "(?:it|them|these|those|that|each|one|the lot)";
const money =
  "(?=(?:about |around |just |only )?(?:[$£€]|\\d+(?:[.,]\\d+)?(?! ?(?:m|mins?|minutes?|h|hrs?|hours?|s|secs?|seconds?|days?|weeks?|g|grams?|%|[.,]?\\d)\\b)|[a-z]+ (?:dollars|pounds|euros|quid)))";
const holder =
  "(?:tin|tub|jar|carton|case|crate|hamper|bag|pouch|sleeve|basket|cone|packet|pack|tray|stack|drawer|gift tin|cake box|window box)";
const some = "(\\d+|six|eight|ten|twelve|twenty|two dozen|a dozen)";
/** Where a sum is asked for, and none of the holder itself is bought. */
const isSale = /\b(?:margin|mark ?-?up|profit|costs?|sell|sells|selling|sold|price|charge|earn|make on)\b/;

export const letGoFor = (): readonly Phrase[] => [
  {
    marks: ["let ", "flog", "shift", "part with", "hawk", "knock", "offload", "unload", "punt"],
    from: new RegExp(
      `\\b(?:lets? ${it} go|letting ${it} go|flogs?(?: ${it})?|flogging(?: ${it})?|shift(?:s|ing)? ${it}|parts? with ${it}|hawk ${it}|knock ${it} out|offload ${it}|unload ${it}|punt ${it}) (?:for|at) ${money}`,
      "g",
    ),
    to: "sell it for ",
  },
  {
    marks: ["set me back", "sets me back", "setting me back", "stands me", "stand me", "runs me", "run me "],
    from: new RegExp(
      `\\b(?:sets? me back|setting me back|stands? me (?:in|at)|stands? me|runs? me(?: to)?|comes? to me at) ${money}`,
      "g",
    ),
    to: "costs me ",
  },
  // "a tin of 12": so many macarons that are sold in one
  {
    marks: [
      " tin ",
      " tub ",
      " jar ",
      " carton ",
      " case ",
      " crate ",
      " hamper ",
      " bag ",
      " pouch ",
      " sleeve ",
      " basket ",
      " cone ",
      " packet ",
      " pack ",
      " tray ",
      " stack ",
      " drawer ",
    ],
    from: new RegExp(
      `\\b${holder} of ${some}(?= ?(?:$|[,.:;?!]|macarons?\\b|macs\\b|[$£€]|(?:costs?|costing|sets?|stands?|runs?|comes?|goes|go|sells?|sold|for|at|is|are|and|to|in|makes?|takes?|i|we|they|it)\\b))`,
      "g",
    ),
    to: (whole = "", count = "", ...found) => {
      const text = String(found.at(-1));
      return isSale.test(text) && /[$£€]|\b(?:dollars?|pounds?|euros?|quid|usd|eur|gbp)\b/.test(text)
        ? `box of ${count}`
        : whole;
    },
  },
  // "$13 cost at 50% margin what price"
  {
    marks: ["cost at", "costs at"],
    from: /^((?:(?:ok|so|and),? )*)((?:[£$€] ?)\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)? ?(?:dollars?|euros?|pounds?|quid|bucks)) costs? at (?:an? )?(\d+(?:[.,]\d+)? ?(?:%|percent)) margin,? (?=what|which|how much)/g,
    to: "$1it costs $2, at $3 margin ",
  },
];
