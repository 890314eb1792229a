/** The signs of a split question, of one that goes on from it, and of one behind another answer. */
import { opening } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";

/** A share that is no dose of anything: half or more. */
const most = "(?:[5-9]\\d(?:\\.\\d+)?|fifty|sixty|seventy|eighty|ninety)_?\\S*<percent>";
/** More than any flavor is dosed with. */
const large =
  "(?:[2-9]\\d(?:\\.\\d+)?|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:_[a-z%]+)*_?<percent>";
const goesTo = "(?:(?:of|it|that|this|to|for|as|is|with|will be|becomes|gets|should be) )*";
const other = "(?:{taste}|{color}|{chocolate}|plain)";
const separate = "(?:separate|part|split|divide|share)(?:<\\S+)?";

const flavored =
  "(?:half )?(?:{taste}|{color}|{chocolate}|{ingredient=(?:chocolate|dark chocolate|milk chocolate|white chocolate)}|plain)";

export const splitCues = cues(
  // "290 g buttercream, 70 % of it cocoa, 30 % mint": cocoa names a bowl, where a share is half or more
  [
    14,
    `{weight} .. ${most} ${goesTo}{dose=cocoa powder} (?:and |, )?{percent} ${goesTo}${other}`,
    `{weight} .. ${most} ${goesTo}${other} (?:and |, )?{percent} ${goesTo}{dose=cocoa powder}`,
    `{weight} .. {percent} ${goesTo}{dose=cocoa powder} (?:and |, )?${most} ${goesTo}${other}`,
    `{weight} .. {percent} ${goesTo}${other} (?:and |, )?${most} ${goesTo}{dose=cocoa powder}`,
    `${most} ${goesTo}{dose=cocoa powder} (?:and |, )?{percent} ${goesTo}${other} .. {weight}`,
    `{percent} ${goesTo}${other} (?:and |, )?${most} ${goesTo}{dose=cocoa powder} .. {weight}`,
  ],
  [16, "^{weight} of what in the "],
  [-9, "still split\\S*"],
  // "2 to 3 drops", "one to two pinches": how much of a thing, and no ratio
  [
    -9,
    "(?:{number}|one|two) (?:to|or) {number} (?:(?:drops?|pinch|pinches|dashes|splashes|squirts)(?:<\\S+)?|{unit})",
  ],
  // "dark ganache, two to one": its own ratio, and no bowl
  [-9, "^(?:(?:a|some|the) )?(?:{chocolate} )?{base=ganache} (?:, )?{number} (?:to|:) {number}(?: [?.])?$"],
  // "35 percent for strawberry and 65 percent for vanilla", of a bowl
  [
    11,
    `{weight} .. ${large} ${goesTo}${other} (?:and |, )*${large} ${goesTo}${other}`,
    `{weight} .. ${large} ${goesTo}${other} (?:and |, )*(?:the )?{remainder}`,
    `{base} .. {weight} .. ${separate} (?:it|this|that|them) .. {percent} .. (?:{percent}|{remainder})`,
  ],
  [
    4,
    "{weight} (?:of )?{base} (?:in|into|between|over) {number} (?:even |equal |same |identical )?{count=bowls}",
  ],
  [
    8,
    `^${opening}(?:(?:or|make it|in|into|what about) )*{number} ways\\S*(?: instead| then| please| now)?(?: [?])?$`,
  ],
  [
    -9,
    "{number} {count=macarons} .. {fraction} {base=(ganache|buttercream)} (?:and )?{fraction} {base=(ganache|buttercream)}",
  ],
  [
    9,
    "(?:what|how much) (?:does|do|will|should|would) .. (?:scale|bowls?|{count=bowls}) .. (?:read|say|show) .. (?:weigh|weighs|is|are)",
    "(?:if|when|as) (?:the |my |each )?{count=bowls} (?:weigh|weighs|are|is) {weight} .. (?:scale|read|say|show)",
  ],
  [5, "^(?:(?:and|so|ok|now|then) )*split (?:the|that|my) {number} "],
  // "100 g, 200 g and 300 g out of 600 g buttercream"
  [9, "{weight} (?:(?:,|and) )*{weight} (?:(?:,|and|{weight}) )*out of (?:(?:the|my|a|all) )?{weight}"],
  // "420 smbc, coffee n choc, two to one": two flavors and in what parts, whatever else is asked of them
  [
    14,
    `(?:{weight}|{number}) (?:of )?{base} (?:[,.:] )?${flavored} (?:(?:and|n|,|&) )${flavored} (?:[,.:] )?(?:(?:split|in|at|by|as|parts) )*{number} (?:to|:) {number}`,
  ],
  // "a third choc, rest plain, 540 bc": chocolate names a part
  [
    11,
    `\\S*<number,fraction> (?:(?:of|it|that|is|for|as) )*${flavored} (?:(?:and|,|the) )*(?:{remainder}|\\S*rest\\S*)(?! .*(?:how|hw) (?:much|mch))`,
  ],
  // "400 g buttercream split lemon and raspberry": the bowl, and no fault of it
  [
    11,
    "{weight} (?:of )?{base} split\\S* (?:(?:in|into|between|as) )?(?:{taste}|{color}) (?:and |, )?(?:{taste}|{color})",
  ],
  [
    9,
    "(?:make it|do) {number} {number} .. split",
    "how do i split",
    "{weight} (?:of )?{base=batter} .. how (?:do|should|would|shall|must|can) i (?:split|divide|part|share|portion)(?:<\\S+)?",
    // "660 g batter, 3 colours for the club, same each"
    "{weight} (?:of )?{base} .. {number} {count=bowls} .. (?:the )?(?:same|equal|equally|even|evenly) (?:(?:amount|weight|share|size|of|for|in) )*(?:each|all|both|every)",
  ],
  // "could i get it divided 3 to 2 to 1", whatever is told of colors before
  [
    7,
    "(?:split|splitting|divided?|dividing|shared?|sharing|parted|apportioned|portioned)(?:<\\S+)? (?:(?:it|that|this|them|all|up|out|between|into|in|as|by|the|batter|of|a|ratio) )*{number} (?:to|:) {number}",
  ],
  [4, "^(?:(?:and|in|into|ok|so|now) )*{number} {count=bowls}(?: (?:please|pls|then))?(?: [?])?$"],
  [6, "{weight} .. {base} .. {number} {dose=flavor} .. split\\S* (?:even|equal|evenly|equally)"],
  [-6, "{number} : {number} .. {ingredient} (?:to|and) {ingredient}"],
  [-3, "{base} .. {dose}"],
  [-6, "(?:in|into) \\S*one\\S* {count=bowls}"],
  // "420 g buttercream, 4 bowls. in one of them i want matcha": the bowl isn't flavored whole
  [
    9,
    "{weight} (?:of )?{base} (?:[,.:] )?{number} (?:even |equal |same )?{count=bowls} .. (?:in|into) (?:just |only )?one\\S* of (?:them|those|these)",
  ],
  [5, "(?:one|another) more {dose=color}"],
  [8, "back to {number} (?:equal )?{count=bowls}"],
  [
    8,
    "\\S*<factor> (?:as )?(?:much|many) (?:{taste}|{color}) as (?:{taste}|{color})",
    "^(?:(?:and|ok|so|but|make|the) )*(?:{color}|{taste}) (?:(?:is|gets|as|should|be|to) )*\\S*<factor>(?: (?:as )?much)?(?: as (?:the )?(?:{color}|{taste}|others?|rest))?(?: [?])?$",
  ],
  // "half of it coffee, other half orange"
  [
    9,
    "\\S*<number,fraction> (?:of (?:it|that|this) )?{taste} .. other \\S*<number,fraction> {taste}(?!.* (?:how much|hw much) (?:{dose}|{taste}))",
  ],
  [
    10,
    // "540 g batter, 2 parts lilac to 1 part cream"
    "{base} .. {number} {count=bowls} (?:\\S+ ){1,3}to {number} {count=bowls}",
    // "a quarter of my 440 g batter shall be orange"
    "\\S*<number,fraction> (?:of )?(?:(?:the|my|this|that|all) )*{weight} (?:of )?(?:(?:the|my|this|that|plain) )*{base=batter} .. (?:{color}|{taste})",
    "\\S*<number,fraction> (?:(?:for|is|as|of|it|goes|to|the|\\S*taste=\\S*) )*{base} .. \\S*<number,fraction> (?:(?:for|is|as|of|it|goes|to|the|\\S*taste=\\S*) )*{base}",
    "(?:color|colour|{dose=color}) (?:the |my |this |that )?{base=batter} (?:into|in) {number} {count=bowls} .. each",
  ],
  [8, "{weight} .. {base} .. {percent} (?:of (?:it|that|this) )?(?:{taste}|{color}) .. \\S*rest\\S*"],
  [8, "{weight} .. {base} between {number} {taste} .. {number} {taste}"],
  [-6, "(?:split|broken|divided) .. (?:into|by) (?:its |the |each |every )*ingredients?"],
  [
    10,
    "(?:color|colour|{dose}) {weight} .. {base=batter} .. (?:into|in) {number} (?:{count=bowls}|colou?rs|shades)",
    "{weight} .. {percent} (?:of )?(?:{taste}|{color}) .. {percent} (?:of )?(?:{taste}|{color})",
  ],
  [
    5,
    "{weight} .. {base} .. (?:into|in) {number} .. (?:same|equal|each)",
    "{weight} .. {base} .. (?:into|in) {number} {count=bowls}",
    "{number} (?:equal )?{count=bowls} (?:out of|from) (?:the |my )?{weight}",
  ],
  [
    4,
    "^(?:halve|half)\\S* {weight} .. {base}",
    "(?:split|divide|divid|share|portion|separate)(?:<\\S+)? .. {weight}",
    "split<\\S+ .. {weight}",
    "{weight} .. (?:split|divide|divided|share)(?:<\\S+)?$",
    "{number} {count=bowls} .. {color} .. {number} {count=bowls}",
    "(?:split|splitting|divide|dividing|share) {number} (?:in |into |between |among )?{number}",
    "\\S*<number,fraction> .. {color}",
    "\\S*<number,fraction> (?:of it |of that |of them )?(?:{taste}|{color}|{dose})",
    "{percent} .. {weight} .. {base} .. {remainder}",
    "{percent} .. {taste} .. {remainder}",
    "half_and_half\\S*",
    "(?:share|shared|sharing|dealt|parted|distribute|distributed|spread) .. (?:over|among|between|across|into) {number}",
    "(?:share|distribute|divide|split) (?:my |the |this |that )?{base} .. (?:over|among|between|across|into|in) {number}",
    "{weight} .. {base} .. {percent} .. {color}",
    "{weight} .. {base} .. {percent} .. {percent}",
    "{number} {count=bowls} .. {number} {count=bowls}",
    "(?:into|in|between|among) {number} (?:equal )?{count=bowls}",
  ],
  [
    3,
    "(?:split|divide|share out|portion)(?:<\\S+)?",
    "{number} equal",
    "equal {count=bowls}",
    "(?:in|into) (?:two|three|four|five|six|2|3|4|5|6|half|halves|thirds|quarters)(?:<\\S+)?$",
    "{percent} .. {color} .. {percent}",
    "{color} .. {percent} .. {color}",
    "{weight} .. {base} .. {number} (?:to|:) {number}",
    "\\S*<number,fraction> .. {taste} .. {remainder}",
    "half and half",
    "(?:how|hw) much (?:in|for|goes in|per) (?:each|every) {count=bowls}",
  ],
  [2, "{count=bowls}", "{color} .. {color}", "{remainder}", "evenly", "{number} (?:to|:) {number}"],
  [1, "{color}", "{weight} .. {base}"],
  [
    -4,
    "(?:just|has|my|is|looks|its|it|ganache|buttercream|all|keeps|kept|have|had) split(?:<\\S+)?",
    "{base} .. {symptom=(split_ganache|curdled_buttercream)}",
    "{dose} .. {base}",
    "(?:note|log) ",
    "timer",
    "{ingredient=almond_flour}",
    "label",
    "{dose} .. (?:for|in|into) (?:the |one |each |that )?(?:\\S+ )?\\S*<number,fraction>",
  ],
  [
    -3,
    "{count=macarons}",
    "{chocolate} .. {ingredient=cream}",
    "{percent} (?:of )?{dose}",
    "{money}",
    "{ingredient=(whites|cream)}",
    "oily",
  ],
);
