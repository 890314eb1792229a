/** "save this: all my shells get piped at 4.2 cm": her size from now on, with the order ahead of it. */
import { leadingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const length = "(\\d+(?:[.,]\\d+)? ?(?:mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|inch(?:es)?))";
const order =
  "(?:(?:ok|okay|and|so|please|pls|can you|could you|hey|just|now|also|oh),? )*(?:save|remember|store|keep|bear|know|set|(?:note|mark|write)(?=.*\\b(?:all|always|every|usually|good|from now on)\\b))(?: (?:this|that|it|down|me|in mind|for (?:me|good|later|next time|the future|ever|always)|somewhere|as (?:a|my) (?:setting|default|standard)|please|pls))*(?: that)?(?: ?[:,.;-])? ";
const shells = "(?:shells|macarons|macs|discs|rounds)";
const who = `(?:(?:all|every one|each|all of|every) )*(?:(?:of )?(?:my|our|the) (?:(?:macaron|own) )?(?:${shells}|shell|macaron)|(?:shell|macaron|one) of mine|${shells}|mine)(?: all)?`;
const are =
  "(?:is|are|get|gets|come out|comes out|come|always|all|usually|piped|made|measure|measures|be|being|will be|have|should be|go|to|at|of|a|diameter of|round|about|end up)";
const wide =
  "(?: (?:across|wide|in diameter|diameter|each|always|every time|from now on|round|as a rule|now))*";
const end = "(?:,? (?:please|pls|thanks|thank you|ok))*[ .!]*$";
const lead = `(${leadingText()})`;
const marks = ["save", "remember", "store", "keep", "note", "bear", "know", "mark", "set"];

export const sizeKept = (): readonly Phrase[] => [
  {
    marks,
    from: new RegExp(`^${order}${who}(?: ${are})+ ${length}${wide}${end}`, "g"),
    to: "from now on my shells are always $1",
  },
  // "save this: i pipe all my shells 4 cm wide"
  {
    marks,
    from: new RegExp(
      `^${order}(?:i|we) (?:(?:always|usually|now) )*(?:pipe|make|do|bake)(?: (?:always|usually))* (?:(?:all|every one|each|of|my|our|the|shells?|macarons?|macs|mine|them|ones) ?)+(?:(?:at|to|of|about|with a diameter of) )*${length}${wide}${end}`,
      "g",
    ),
    to: "from now on my shells are always $1",
  },
  // "save my size, i pipe 3.5 cm"
  {
    marks: ["my size", "my shell size", "my diameter"],
    from: new RegExp(
      `^${lead}(?:save|keep|remember|store|set|note) my (?:size|shell size|diameter)(?: (?:as|to|at|please))*[,:]? ?(?:(?:i pipe(?: them)?(?: at)?|i make them|they'?re|they are|its|it's|at|is) )?(?=\\d+(?:[.,]\\d+)? ?(?:mm|cm|millimet(?:er|re)s?|centimet(?:er|re)s?|inch(?:es)?)?${end})`,
      "g",
    ),
    to: "$1remember my shells are ",
  },
  // "save my size 3.5 cm, 24 today": an order behind it
  {
    marks: ["my size", "my shell size", "my diameter"],
    from: new RegExp(
      `^${lead}(?:save|keep|remember|store|set|note) my (?:size|shell size|diameter)(?: (?:as|to|at|is|of|please))*[,:]? ?(?:(?:i pipe(?: them)?(?: at)?|i make them|they'?re|they are|its|it's|at|is) )?${length}(?:,|;|\\.)?(?: and)? (?:(\\d+) (?=(?:today|tomorrow|tonight|on )\\b)|(?=(?:batter|filling|how|what|plan|for|make|need|\\d+|i |then|now)\\b))`,
      "g",
    ),
    // a number with its day is an order for macarons
    to: (_, lead = "", wide = "", many = "") =>
      `${lead}remember my shells are ${wide}. ${many === "" ? "" : `${many} macarons `}`,
  },
];
