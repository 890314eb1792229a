/** What was done long since, told beside a timer: "filled 5 hours ago, timer for 20 min". It doesn't run from then. */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "(?:(?:ok|okay|and|so|oh|well|right|now),? )*";
/** None of these is what a timer of the kitchen runs for: they are over. */
const done =
  "(?:filled|boxed|packed|assembled|made|finished|iced|ate|eaten|came out|come out|sold|delivered|labell?ed|sandwiched|sifted|weighed)";
const what =
  "(?: (?:them|it|these|those|all|up|everything|dinner|lunch|breakfast|of the oven|the (?:shells|macarons|macs|batch|first batch|last batch|lot|ganache|buttercream|filling)))*";
const who =
  "(?:(?:i|we|they|these|those|it|he|she|ive|i've|had|have|was|were|just|all|only|got|the (?:shells|macarons|macs|batch|lot)) )*";
const ago = `(?:(?:about|around|some|like|over) )*(?:${count}|an?|half an|a couple of|a few) (?:hours?|hrs?|h|days?)(?: and a half)? ago`;
const told = `${who}${done}${what} (?:${ago}|yesterday|last night)`;
const timer =
  "(?:(?:can you |could you |please |pls |now |so |and |then |just )*(?:(?:set|start|put|run|give me|need|i need|i want|want) )*(?:me )?(?:(?:a|an|the|another) )?(?:new )?(?:timer|alarm)\\b[^?]*|\\d+ ?(?:min|mins|minutes?|h|hours?) timer\\b[^?]*)";
const other =
  "(?!.*\\b(?:how|what|when|still|ok to|safe|keep|good|note|log|since|from then|started|matur\\w*|fridge|freezer|counter|(?<!c[ao]me )out|chill\\w*)\\b)";

export const doneAgo = (): readonly Phrase[] => [
  {
    marks: [" ago", "yesterday", "last night"],
    from: new RegExp(`^${other}${lead}${told}(?:,|;|\\.| -|,? so|,? and|,? now) ?(?=${timer}$)`, "g"),
    to: "",
  },
  {
    marks: [" ago", "yesterday", "last night"],
    from: new RegExp(
      `^${other}((?=${timer}$)[^,;.]*?)(?:,|;|\\.| -) ?(?:because |as |since )?${told}(?= ?[.!]*$)`,
      "g",
    ),
    to: "$1",
  },
];
