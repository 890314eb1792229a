/** How many of a size fit on a tray ("ive one tray clean, what will it hold at 42 mm"), and what tray and oven take at most. */
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

const length = "(\\d+(?:[.,]\\d+)? ?(?:mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|inch(?:es)?))";
const tray = "(?:tray|baking tray|baking sheet|sheet|mat|silicone mat)";
const holds = "(?:hold|take|fit|carry|have room for|get on|be good for)";
const size = `(?:(?:if|when|at|with|of|for|in|that|are|theyre|they're|they are|i|pipe|piped|piping|them|make|making|my|the|its|shells?|ones|macarons?|of size|size|a|diameter|is|were|be) )*${length}(?: (?:across|wide|shells?|ones|macarons?|in diameter|diameter|each|big|please|pls))*`;

const number = `(?:\\d{1,3}|(?:${spelt}))`;
const never =
  "(?:wont|won't|cant|can't|doesnt|doesn't|dont|don't|(?:does|do|can|will) not|cannot) (?:take|fit|hold|do|bake|manage)(?: any)? more than";

export const trayHolds = (): readonly Phrase[] => [
  {
    marks: [" tray", " sheet", " mat"],
    from: new RegExp(
      `^(?:[a-z' ]{0,40}\\b(?:one|a|1|the|my|only|single)(?: (?:one|clean|free|empty|spare|single|last|big|small|only))* ${tray}(?: (?:is|that is|thats|left|that's))?(?: (?:clean|free|empty|left|spare|ready|here|to spare))*[,.;:]? (?:and |so )?)?(?:what|whats|how many|how much|how many shells|what number)(?: of them)? (?:will|does|can|would|could|might|do)(?: i)? (?:it|that|this|that one|(?:my|the|a|one|each|this) ${tray}) ${holds}(?: on it)? ${size}(?=[ ?.!]*$)(?<=\\b(?:${tray})\\b[^]*)`,
      "g",
    ),
    to: "how many $1 shells fit on one tray",
  },
  // "my oven wont take more than 2 trays", "my trays dont hold more than 24 shells"
  {
    marks: ["more than"],
    from: new RegExp(`\\b(my|our) oven ${never} (${number}) trays?\\b(?: at (?:once|a time))?`, "g"),
    to: "$1 oven takes $2 trays",
  },
  {
    marks: ["more than"],
    from: new RegExp(`\\b(my|our) trays? ${never} (${number})(?: shells)?\\b`, "g"),
    to: "$1 trays hold $2 shells",
  },
];
