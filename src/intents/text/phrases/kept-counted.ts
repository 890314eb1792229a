/** How many of them lie in the cold is nothing to how long they keep: "froze 20 filled ones, how long are they at their best". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const cold = "\\b(?:froze|frozen|freez(?:e|er|ing)|fridge|refrigerator|chilled)\\b";
const asks =
  "\\b(?:how long|how many (?:days|weeks|months)|when (?:are|do|will) they|at (?:their|its) best|past (?:their|its) best|still (?:good|fine|ok|okay|nice))\\b";
/** Then their number may be what is asked of. */
const other =
  "\\b(?:batter|how much|how many (?!days|weeks|months)|timers?|plan|bake|ready|notes?|log|label|recipe|boxes|left|trays?|set|remind)\\b";
/** Frozen on a day: that day tells how long, and the number may be a part of it. */
const day =
  "\\b(?:today|yesterday|tonight|ago|last|since|(?:mon|tues|wednes|thurs|fri|satur|sun)day|on (?:the )?\\d|on [a-z]+ \\d|\\d(?:st|nd|rd|th))\\b";
const some = `(?:(?:two |three |four )?(?:a )?dozen|${count}) (?:of (?:them|the|my|those|these) ?)?`;
const number = new RegExp(
  `(?<![\\d.,:/-])\\b${some}(?=(?:of )?(?:filled|finished|assembled|boxed)\\b|(?:macs|macarons?|macaroons?|ones)\\b)`,
);

/** How long they are nice: how long they are good. */
const spell =
  /\b(?:for )?how long (?:(?:are|do|will|would) (?:they|these|those)(?: (?:be|stay|taste|keep|remain))? (?:at (?:their|its) (?:very )?best|nice|lovely|tasty|in good shape|in top form)|(?:till|until|before) they go (?:downhill|off|bad|stale|dry)|at (?:their|its) best)(?= ?[?.!,]*(?:$| ))/;

export const keptCounted = (): readonly Phrase[] => [
  {
    marks: ["froze", "freez", "fridge", "refrig", "chilled"],
    from: new RegExp(`^(?=.*${cold})(?=.*${asks})(?!.*${other})(?!.*${day}).*$`, "g"),
    to: (whole = "") => whole.replace(number, "").replace(spell, "how long are they good"),
  },
  // "made and filled today, theyre in the fridge, how many days have i got"
  {
    marks: ["how many days", "how many more days"],
    from: new RegExp(
      `^(?!.*\\bfr(?:oze|ee?z))(?=.*${cold})(?=.*\\b(?:made|filled|baked|assembled|finished|sandwiched)\\b)(?!.*${other.replace("left|", "")})(.*)\\bhow many (?:more )?days (?:(?:have|do|will|can|would) (?:i|we|they) (?:still |then )*(?:got|have|get|left)?|are left|left|is that)(?: left| for them)?(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1how many days are they good",
  },
];
