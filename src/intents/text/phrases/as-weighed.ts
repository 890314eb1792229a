/**
 * What stands between an amount and its thing, or behind a thing, and says nothing of its own: "a 20 g knob of butter",
 * "four whites left over from lemon curd", "white ganache set with butter"; and a ganache that runs out of the bag.
 */
import type { Phrase } from "./phrase.ts";

const grams = "\\d+(?:\\.\\d+)? ?(?:g|grams?|gr|oz|ounces?|ml)";
const piece =
  "(?:knobs?|lumps?|pats?|slices?|chunks?|pieces?|blocks?|dollops?|cubes?|wedges?|slabs?|nuggets?|curls?|splash|slug|glug|bit)";
/** What is made with yolks, and leaves whites over. */
const yolky =
  "(?:curd|custard|mayo|mayonnaise|ice cream|pastry cream|creme brulee|crème brûlée|hollandaise|carbonara|tiramisu|zabaglione|aioli)";

export const asWeighed = (): readonly Phrase[] => [
  // "a 20 g knob of butter": 20 g of it
  {
    marks: [" of "],
    from: new RegExp(
      `(?<!\\b(?:two|three|four|five|six|\\d+) )(?:\\b(?:a|an|one|my|the) )?\\b(${grams}) (?:(?:nice|big|little|small|good|cold|soft|wee) )?${piece} of (?=[a-z]{3})`,
      "g",
    ),
    to: "$1 of ",
  },
  // "four egg whites left over from lemon curd": where they come from is no filling of today's
  {
    marks: ["white"],
    from: new RegExp(
      `^(?!(?:note|log|jot|write|record)\\b)(.{0,60}?\\bwhites?(?: (?:left|over|leftover|spare|going|to|remaining))*) (?:from|after|out of) (?:(?:making|doing|a|an|the|some|my|that|this|batch of|last night's) )*(?:[a-z]+ ){0,2}?${yolky}\\b`,
      "g",
    ),
    to: "$1",
  },
  // "whites left, 120 g, how many macarons": of the whites, and no batter
  {
    marks: ["white"],
    from: new RegExp(
      `\\b((?:egg )?whites) (left(?: over)?|leftover|remaining|spare|to spare),? (${grams})(?=[,.?:;]|$)`,
      "g",
    ),
    to: "$3 $1 $2",
  },
  // "white ganache set with butter": with butter in it, and not how long it sets
  {
    marks: ["with butter", "buttered ganache"],
    from: /\bganache,? (?:set|firmed(?: up)?|stiffened|bound|held|thickened) with butter\b/g,
    to: "ganache with butter",
  },
  // "... 370 g in all. the three weights?", "..., weights of all three": no ganache of 3 g
  {
    marks: ["weights"],
    from: /[,.;:] ?(?:(?:and|so|just|give me|tell me|i want|i need|whats|what's|what are) )*(?:(?:the|all|its) )*(?:(?:three|four|3|4) weights|weights (?:of|for) (?:all|the) (?:three|four|3|4))(?:,? please)?(?= ?[?.!]?$)/g,
    to: ", what are the weights",
  },
  // "575 g batter broken down please"
  {
    marks: ["broken down", "itemised", "itemized", "parts"],
    from: /\b(batter)[,.]? (?:(?:all|fully) )?(?:broken down|itemi[sz]ed|all (?:the|its) parts)(?: by ingredient)?(?=(?:,? please)?[ .?!]*$)/g,
    to: "$1, break it down by ingredient",
  },
  // "bloody thing runs straight out the nozzle. dark ganache, ...": too loose to pipe
  {
    marks: ["nozzle", " tip", " bag", "spout"],
    from: /^(?=.*\bganache\b)(.{0,60}?)(?:(?:just|only) )?\b(?:(?:is|it's|its) )?(?:runs?|running|pours?|pouring|drips?|dripping|dribbl(?:es?|ing)|leak(?:s|ing)|flow(?:s|ing)|ooz(?:es?|ing)|spill(?:s|ing)|gush(?:es|ing)|slid(?:es?|ing)) (?:(?:straight|right|clean|just|all) )?(?:out|through|from|down)(?: of| from)? (?:the |my |a )?(?:piping )?(?:nozzle|tip|bag|spout)\b/g,
    to: "$1is too runny",
  },
  // "575 g macaron batter. break it down by ingredient": asked of it, and no sentence of its own
  {
    marks: [". "],
    from: /\b(batter)[.;] (?=(?:(?:please|and|can you|could you|now) )*(?:break|split|itemi[sz]e|list|spell|set|write|give me|show me|tell me)\b[^?.;\d]{0,30}\b(?:ingredients?|line by line|itemi[sz]ed?|component)\b[^?.;\d]{0,20}[?.!]?$)/g,
    to: "$1, ",
  },
  // "white ganache with butter, 370 g": of the ganache, and not of the butter
  {
    marks: ["butter"],
    from: new RegExp(
      `\\b(white(?: choc(?:olate)?)?) (?:buttered ganache|ganache with butter)((?: for (?:filling|piping))?),? (${grams})(?: (?:in all|in total|total|altogether|all in))?(?=[,.?:;]|$)`,
      "g",
    ),
    to: "$3 $1 ganache with butter$2",
  },
  // "whats raspberry's score"
  {
    marks: ["'s score", "'s rating", "'s mark"],
    from: /\b([a-z]{4,})'s (?=(?:score|rating|marks?)\b)/g,
    to: "$1 ",
  },
];
