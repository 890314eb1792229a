/** So much of a flavor told before it is named, and what it is enough for: "squeezed the rose bottle and got 4.5 g of flavor". */
import type { Phrase } from "./phrase.ts";

const grams = "(\\d+(?:\\.\\d+)?) ?(?:grams?|gr|g)";
const bottle = "(?:bottle|jar|tub|tube|pot|vial|flask|tin|bag|sachet|packet|phial|pouch|carton)";
const form = "(flavou?r|flavou?ring|extract|paste|powder|oil|essence|aroma|drops)";
/** What a bottle is like, and no taste. */
const like =
  "(?:little|small|big|large|tiny|old|new|whole|last|empty|first|second|other|full|half|half empty|nearly empty|flavou?r|flavou?ring|same|open|opened|glass|plastic|piping|spare)";
const taste = `(?!${like} )([a-z]+(?: (?!${bottle})[a-z]+)?)`;
/** A turn that orders or asks something first is none of these, nor what went in or what a label says. */
const told =
  "^(?!(?:how|what|which|does|do|is|are|can|could|should|will|would|if|note|log|save|set|pantry|stock|remember)\\b)(?!.{0,160}\\b(?:put|added|add|stirred|poured|tipped|mixed|went|says?|recommends?|per|label|directions?|instructions?|costs?|bought)\\b)";
const the = "(?:the|my|that|this|our)";

export const flavorLeft = (): readonly Phrase[] => [
  // "squeezed the rose bottle till it gave up and got 4.5 g of flavor"
  {
    marks: ["bottle", "jar", "tub", "pot ", "vial", "flask", "tin ", "bag ", "sachet", "packet", "phial"],
    from: new RegExp(
      `${told}(?:[a-z']+ ){0,4}?${the} ${taste} ${bottle}(?=[ ,])[^\\d?!;]{1,60}?(?<=[ ,])${grams} (?:worth )?(?:of )?${form}\\b(?: (?:came out|out|left|in it|out of it))*`,
      "g",
    ),
    to: "i have $2 g of $1 $3",
  },
  // "wrung 3.5 g of flavor out of the lychee bottle"
  {
    marks: ["bottle", "jar", "tub", "pot", "vial", "flask", "tin", "bag", "sachet", "packet", "phial"],
    from: new RegExp(
      `${told}(?:[a-z']+ ){0,4}?${grams} (?:worth )?(?:of )?${form} (?:(?:came|left|got|was|is|still|all) )*(?:out of|from|off|in|at the bottom of) ${the} ${taste} ${bottle}\\b`,
      "g",
    ),
    to: "i have $1 g of $3 $2",
  },
  // "ground up a bag of freeze dried mango, that came to 11 g of powder"
  {
    marks: ["dried "],
    from: new RegExp(
      `${told}(?:[a-z']+ ){0,6}?(?:freeze[- ]?)?dried (?!powder)([a-z]+(?: (?:fruits?|currants?|berries|berry))?)(?= |,)[^\\d?!;]{1,50}? ${grams} (?:of )?(?:fine |fruit )?(?:powder|dust)\\b`,
      "g",
    ),
    to: "i have $2 g of $1 powder",
  },
  // "how much ganache would that flavor": what it does, and no flavor by the name of what stands before
  {
    marks: ["flavor", "flavour"],
    from: /\b(will|would|can|could|does|do|did|might) (it|that|this|they|those|these) (?:all )?flavou?r(?= ?[?.!]*$)/g,
    to: "$1 $2 do",
  },
];
