/** A mix by what goes into it: "350 g smbc, parts pls", "if the butter block is 325 g", "what temp over the waterbath". */
import { openingText } from "../../../../data/words/openers.ts";
import type { Phrase } from "./phrase.ts";

const lead = `(${openingText()})`;

export const mixAndItsParts = (): readonly Phrase[] => [
  // "350 g smbc as the end result, parts pls": what it is made of
  {
    marks: ["parts", "components"],
    from: new RegExp(
      `^${lead}(\\d+(?:[.,]\\d+)? ?(?:g|grams?|kg) (?:of )?(?:smbc|butter ?cream|swiss meringue butter ?cream|shell batter)(?: as the end result| in (?:all|the end)| all told| altogether)?),? (?:the )?(?:parts|components)(?: (?:pls|please|of it|for it))*(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1$2, ingredients",
  },
  {
    marks: ["the end result"],
    from: /\b(\d+(?:[.,]\d+)? ?(?:g|grams?) (?:of )?[a-z ]{3,30}?) as the end result\b/g,
    to: "$1 in all",
  },
  // "if the butter block is 325 g"
  {
    marks: ["butter block", "block of butter", "butter pack", "pack of butter"],
    from: /\b(?:the |my |this |a )?(?:butter (?:block|pack|slab)|(?:block|pack|slab) of butter) (is|has|weighs|was)(?= (?:only |about |just )?\d)/g,
    to: "the butter $1",
  },
  // "what temp over the waterbath"
  {
    marks: ["waterbath", "water bath", "double boiler", "bain marie", "bain-marie"],
    from: /^((?:(?:and|so|ok|also|then|now),? )*)(?:what|which|whats|what's|how hot)(?: the)? ?(?:temp(?:erature)?|heat)?(?: (?:is it|do i need|do they need|should it be|do i heat them to|for it))? (?:over|on|in) (?:the |a |my )?(?:water ?bath|double boiler|bain[ -]marie)(?= ?[?.!]*$)/g,
    to: "$1how hot must the whites and sugar get",
  },
  // "this butter's gone lovely and soft, 325 g, so for smbc ...": so much of it
  {
    marks: [" gone ", " is ", " are ", "'s ", " turned ", " got "],
    from: /^((?:(?:so|ok|right|well|and),? )*)(?:this|the|my|that) (butter|cream|sugar|chocolate|dark chocolate|milk chocolate|white chocolate|almond flour|whites)(?:'s| is| has| are| have)(?: (?:gone|got|turned|all|nice|nicely|lovely|really|so|quite|soft|melted|warm|ready|cold|sifted|and|now|out|at room temperature))+ ?, (\d+(?:[.,]\d+)? ?(?:g|grams?)) ?,/g,
    to: "$1$3 $2,",
  },
];
