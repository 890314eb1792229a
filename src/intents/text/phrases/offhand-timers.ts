/** Timers ordered offhand: "kick off cooling", "get the cooling going", "stick 22 min on the clock", "shave 4 off". */
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const lead = "((?:(?:ok|okay|and|now|so|right|then|also|plus|please|can you|could you|go on),? )*)";
const tail = "((?: (?:as well|too|now|also))?)(?: (?:please|pls|for me|then|love))*(?= ?[.!]?$)";
/** The steps that have a time of their own; what bakers call them on the run. */
const step = "(cooling|maturing|resting|baking|drying|setting|cool|mature|rest|bake)";
const minutes = "(?: ?(?:minutes?|mins?|min|m))";
const verbs = "(?:stick|pop|bung|whack|put|chuck|slap|lob|throw|get|set|run)";

const stem = (said: string): string =>
  ({ cooling: "cool", maturing: "mature", resting: "rest", drying: "rest", baking: "bake" })[said] ?? said;
const started = (_said: string, before = "", name = "", behind = ""): string =>
  `${before}start a ${stem(name)} timer${behind}`;

export const offhandTimers = (): readonly Phrase[] => [
  // "set 25 for the rest": minutes, of the step
  {
    marks: ["set ", "put ", "start "],
    from: /^((?:(?:ok|and|now|so|right),? )*)(?:set|put|start) (\d{1,3}) (?:on )?for the (rest|bake|oven|cooling)(?= ?[?.!]?$)/g,
    to: "$1set $2 min for the $3",
  },
  // "and one for the oven, 49 min": the minutes behind it are its own
  {
    marks: ["one for ", "another for ", "timer for "],
    from: /\b(?:one|another|another one|a timer) for (the |my )?((?!about|around|a |an )[a-z]+(?: [a-z]+)??)(?:,| of| at|:) (?:for |of )?(\d+(?:\.\d+)? ?(?:min|mins|minutes?|h|hours?|s|sec|seconds)\b)(?! for)/g,
    to: "$3 for $1$2",
  },
  // "kick off cooling", "start off the maturing as well", "set cooling off", "put cooling on"
  {
    marks: ["kick off", "start off", "set off", "begin the", "kick the", "time the"],
    from: new RegExp(
      `^${lead}(?:kick off|start off|set off|begin|time) (?:the |a |with the )?${step}${tail}`,
      "g",
    ),
    to: started,
  },
  {
    marks: [" going", " off", " on", " running", " timed"],
    from: new RegExp(
      `^${lead}(?:get|set|kick|start|put|have) (?:one (?:going |off |on )?for )?(?:the |a )?${step} (?:going|off|on|running|timed)${tail}`,
      "g",
    ),
    to: started,
  },
  {
    marks: ["one going for", "one on for", "one off for"],
    from: new RegExp(
      `^${lead}(?:get|set|kick|start|put|have) one (?:going|off|on) for (?:the )?${step}${tail}`,
      "g",
    ),
    to: started,
  },
  // "get 22 minutes going", "22 minutes on the clock", "run 22 minutes", "chuck 22 mins on the timer"
  {
    marks: ["the clock", "the timer", " going", "run "],
    from: new RegExp(
      `^${lead}(?:${verbs} )?(${count}${minutes}) (?:on the (?:clock|timer)|going)(?= for |,|(?: (?:please|pls|for me))* ?[.!]?$)`,
      "g",
    ),
    to: (_said, before = "", long = "") => `${before}set a timer for ${long}`,
  },
  {
    marks: ["run "],
    from: new RegExp(`^${lead}run (${count}${minutes})(?=(?: (?:please|pls|for me))* ?[.!]?$)`, "g"),
    to: (_said, before = "", long = "") => `${before}set a timer for ${long}`,
  },
  // "whack 22 min on please": the courtesy says nothing
  {
    marks: [" on for me", " on please", " on pls"],
    from: new RegExp(`^${lead}(${verbs} ${count}${minutes} on)(?: (?:please|pls|for me))+(?= ?[.!]?$)`, "g"),
    to: "$1$2",
  },
  // "shave 4 off", "drop it by 4", "cut it by 4 min": less of the one that runs
  {
    marks: ["shave ", "knock ", "take ", "cut ", "lop ", "chop ", "trim "],
    from: new RegExp(
      `^${lead}(?:shave|knock|lop|chop|trim|cut) (?:me )?(${count}${minutes}?) off(?: (?:it|that|this))?(?= ?[.!]?$)`,
      "g",
    ),
    to: (_said, before = "", long = "") => `${before}take ${long} off`,
  },
  {
    marks: ["it by", "that by", "this by"],
    from: new RegExp(
      `^${lead}(?:drop|cut|shorten|reduce|bring|trim) (?:it|that|this)(?: down| back)? by (${count}${minutes}?)(?= ?[.!]?$)`,
      "g",
    ),
    to: (_said, before = "", long = "") => `${before}take ${long} off it`,
  },
];
