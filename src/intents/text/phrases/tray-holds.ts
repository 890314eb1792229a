/** "ive one tray clean, what will it hold if my shells are 42 mm across": how many of a size fit on a tray. */
import type { Phrase } from "./phrase.ts";

const length = "(\\d+(?:[.,]\\d+)? ?(?:mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|inch(?:es)?))";
const tray = "(?:tray|baking tray|baking sheet|sheet|mat|silicone mat)";
const holds = "(?:hold|take|fit|carry|have room for|get on|be good for)";
const size = `(?:(?:if|when|at|with|of|for|in|that|are|theyre|they're|they are|i|pipe|piped|piping|them|make|making|my|the|its|shells?|ones|macarons?|of size|size|a|diameter|is|were|be) )*${length}(?: (?:across|wide|shells?|ones|macarons?|in diameter|diameter|each|big|please|pls))*`;

export const trayHolds: readonly Phrase[] = [
  {
    marks: [" tray", " sheet", " mat"],
    from: new RegExp(
      `^(?:[a-z' ]{0,40}\\b(?:one|a|1|the|my|only|single)(?: (?:one|clean|free|empty|spare|single|last|big|small|only))* ${tray}(?: (?:is|that is|thats|left|that's))?(?: (?:clean|free|empty|left|spare|ready|here|to spare))*[,.;:]? (?:and |so )?)?(?:what|whats|how many|how much|how many shells|what number)(?: of them)? (?:will|does|can|would|could|might|do)(?: i)? (?:it|that|this|that one|(?:my|the|a|one|each|this) ${tray}) ${holds}(?: on it)? ${size}(?=[ ?.!]*$)(?<=\\b(?:${tray})\\b[^]*)`,
      "g",
    ),
    to: "how many $1 shells fit on one tray",
  },
];
