/**
 * A number put right behind an answer: "not 34, 44", "it's not 230 but 320 g", "i said 98 but it's 102". The second is
 * meant, whatever it is of.
 */

import { smallNumbers } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count as digits } from "./spelt.ts";

/** "two hundred fifty" too. */
const count = `(?:(?:an? |(?:${Object.keys(smallNumbers).join("|")}) )?hundred(?:(?: and)? ${digits})?|${digits})`;
const lead =
  "(?:(?:oh|ah|um|er|hm|ok|okay|so|well|no|nope|wait|sorry|oops|whoops|actually|hang on|hold on|my mistake|my bad|correction|typo|argh|ugh|damn|and|but|right|please),? )*";
const unit =
  "(?: ?(?:g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?|ml|cups?|min|mins|minutes?|hours?|c|f|degrees|%|percent|cm|mm|macarons?|macs|shells|whites|eggs|trays?|guests|people|ways|parts|bowls|boxes))?";
const its =
  "(?:it'?s|it is|it was|that'?s|that is|that was|they'?re|there'?s|there are|there were|i'?ve|i have|i'?m making)";
const meant = `(?:(?:but|rather|make it|i meant?|meant|say|should be|should have been|should say|it should be|really|actually|instead|,|its?|${its}) )*`;
const talk = "(?: (?:please|pls|sorry|then|i meant?|of course|instead|actually|rather|now|thanks))*";
const stop = "(?:,|;|:|\\.| -|,? but| and|,? rather| though)+ ";
const number = `(${count}${unit})`;
const end = "(?= ?[.!?]*$)";

export const putRight = (): readonly Phrase[] => [
  // "she said 40, not 28, how much filling": one of two, and no two parts of the sentence
  { marks: [", not "], from: /(?<=\d), (?=not \d+(?: ?[,.;?!]|$))/g, to: " " },
  // "correction. 108.": a number alone would be of a note that is put right
  {
    marks: ["correction"],
    from: /^(?:(?:sorry|oh|oops|a|small|one|my),? )*correction ?[,.:;-]? (?=(?:it is |its |it's |make it )?\d[\d.,]*(?: ?(?:g|grams?|mm|%|percent))? ?[.!]*$)/g,
    to: "no, ",
  },
  // "oops misread, 173", "read it wrong: its 173", "wrong way round. 173": a number alone, of what was said last
  {
    marks: [
      "misread",
      "misweigh",
      "miscount",
      "mismeasure",
      "misjudged",
      "mistyped",
      "wrong",
      "digits",
      "backwards",
    ],
    from: new RegExp(
      `^${lead}(?:i (?:must have )?)?(?:mis(?:read|weighed|counted|measured|judged|typed)(?: (?:it|that|the scales?|the display))?|(?:read|typed|put|got|had) (?:it|that) (?:wrong|backwards)|wrong (?:number|way (?:round|around))|(?:swapped|mixed up|switched|flipped) (?:the|my|two) (?:digits|numbers))(?:,|;|:|\\.| -)* (?:(?:sorry|and|but|should (?:be|have been)|really|actually|${its}|it says),? )*(?=\\d[\\d.,]*${unit}(?: (?:sorry|actually|really|it is))? ?[.!]*$)`,
      "g",
    ),
    to: "sorry, ",
  },
  // "not 34, 44", "it isn't 230 but 320", "not 230 g but 320 g"
  {
    marks: ["not ", "isn't ", "isnt ", "wasn't ", "wasnt ", "aren't ", "arent "],
    from: new RegExp(
      `^${lead}(?:${its} |i said |i did |that |it |i )?(?:not|isn'?t|wasn'?t|aren'?t) (?:the )?${count}${unit}${stop}${meant}${number}${talk}${end}`,
      "g",
    ),
    to: "i meant $1",
  },
  // "i said 230 but it's 320", "i wrote 34, should be 44", "i read 98 where it's 102"
  {
    marks: ["said ", "wrote ", "typed ", "told you ", "read ", "put ", "entered ", "misread "],
    from: new RegExp(
      `^${lead}(?:i |i'?ve |i'?d |did i )?(?:just |first )?(?:said|say|wrote|written|typed|told you|read|put|entered|misread|gave you) ${count}${unit}(?:${stop}|, | when | where | instead of | and )${meant}${number}${talk}${end}`,
      "g",
    ),
    to: "i meant $1",
  },
  // "sorry, 34 is wrong, its 44"
  {
    marks: ["wrong", "not right", "typo", "mistake"],
    from: new RegExp(
      `^${lead}(?:the |that |my )?${count}${unit} (?:is|was|were) (?:all |just |plain )?(?:wrong|not right|a typo|a mistake|my mistake)${stop}${meant}${number}${talk}${end}`,
      "g",
    ),
    to: "i meant $1",
  },
];
