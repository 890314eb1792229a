/** What goes on about the shelf, right behind an answer of its own. */
import { takesBack } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";
import { takingWord } from "./moves.ts";
import { leftNow } from "./still-have.ts";

const lead =
  "^(?:(?:and|then|so|ok|oh|but|no|well|now|also|just|i|ive|we|weve|have|had to|my \\S+|please|pls|can you) )*";
const asksNothing = "(?! .*(?:(?:^| )(?:how|what|whats|enough|too|which|if)(?: |$)|[?]))";
const of = "(?:of )?(?:(?:the|my|that) )?";

export const shelfGoesOn = cues(
  [14, `^${takesBack}(?:its |it is )?{percent}(?: [.])?$`],
  [
    14,
    `^(?:${takesBack}|(?:it says|i misread) )(?:(?:its|it is|it was|it says|i misread|make it|make that|that is) )*(?:{percent}|{number}|{number} to {number})(?: [.])?$`,
    // "and half of the sugar too", behind half of the flour
    `^(?:(?:and|also|plus|then|oh) )*{fraction} (?:of )?${of}{ingredient}(?: (?:too|as well|also))*(?: [.!])?$`,
    // "take it off", "put it there", where it was asked which way it went
    "^(?:(?:i|it|was|is|no|yes|its|thats|that is) )*(?:put|take|took|taken|used|add|added)(?: (?:it|that|them))?(?: (?:off|out|away|there|on|to|from))*(?: (?:the|my) (?:shelf|pantry|stock))?$",
    "^(?:(?:yes|no|its|thats|that is|it is) )*all (?:there is|i have|thats left|of it)$",
  ],
  [
    8,
    leftNow,
    "^(?:so |and |ok )*(?:whats|what is|how much is|what have i got) (?:still )?left(?: (?:now|then|of it))?(?: [?])?$",
    // "take 50 off the butter", "gave 20 g butter to my sister"
    `${lead}${takingWord}${asksNothing} (?:(?:out|away|off|up|in|another|about|only|just|of|the|my|some) )*(?:{weight}|{number})(?: (?:off|from|out of|of))? ${of}{ingredient}`,
    `${lead}${takingWord} (?:(?:off|out|away|another|about|only|by) )*(?:{weight}|{number})(?: (?:out|off|away|of it|from it|of that))*$`,
    `^(?:and )?${of}{ingredient} (?:minus|less|went down by|is down by|down by)${asksNothing} (?:{weight}|{number})`,
    `^(?:and |the |another )*(?:{weight}|{number}) ${of}{ingredient} (?:(?:is|are|was|were|has|have|just|all) )*(?:went|gone|got|fell|lost|spilled|spilt|used)${asksNothing}`,
    // "i have 4 eggs left", "down to 200 g butter", "the butter is down to 100 g"
    `${lead}(?:(?:theres|there|is|are|got|only|just|still|about|down|to|im|were|at) )*(?:{weight}|{number}) ${of}{ingredient} (?:left|remaining)(?: now| in all)?$`,
    `${lead}(?:(?:im|were|am|are) )?down to (?:(?:about|only|just|my last) )*(?:{weight}|{number}) ${of}{ingredient}(?: now| left)?$`,
    `^(?:and )?${of}{ingredient} is (?:now )?(?:down to|at) (?:{weight}|{number})(?: now)?$`,
    `${lead}(?:counted|weighed) (?:{weight}|{number}) ${of}{ingredient}(?: now| left)?$`,
  ],
);
