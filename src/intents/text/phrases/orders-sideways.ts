/** Orders given from the side: never mind and another number, a list divided, parts of a mix, macarons told by their number. */
import type { Phrase } from "./phrase.ts";
import { spelt } from "./spelt.ts";

const lead = "((?:(?:oh|no|actually|hm|hmm|so|ok|okay|right|and|well|ugh|sorry|wait),? )*)";
const number = `(?:\\d{1,3}|(?:${spelt})(?:[ -](?:${spelt}))?|(?:a|one|two|three|four) dozen)`;
const shares: Readonly<Record<string, string>> = {
  "2": "half",
  two: "half",
  "3": "a third",
  three: "a third",
  "4": "a quarter",
  four: "a quarter",
};

const never =
  "(?:wont|won't|cant|can't|doesnt|doesn't|dont|don't|(?:does|do|can|will) not|cannot) (?:take|fit|hold|do|bake|manage)(?: any)? more than";

export const ordersSideways: readonly Phrase[] = [
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
  // "nvm 20"
  {
    marks: ["nvm", "nevermind"],
    from: /^(?:nvm|nevermind),? (?:(?:make it|go with|its|it's|do|say|just) )*(?=\d[^?]{0,12}$)/g,
    to: "make it ",
  },
  // "chickened out and used half a gram of that", of what was worked out
  {
    marks: ["used "],
    from: /(^|,? (?:and|so|but) |, )(?:i |we )?(?:only |just )?used (\d+(?:[.,]\d+)? ?(?:g|grams?)|half a gram|a gram) of (?:that|it)(?= ?[.!?]*$)/g,
    to: "$1i used $2",
  },
  // "how long do they have left to rest": of the timer
  {
    marks: ["left to rest", "left to bake", "left to cool", "left to set", "to go resting", "still to rest"],
    from: /^((?:(?:and|so|ok),? )*)how (?:long|much longer|many minutes|much time) (?:do|does|have|has|is|are) (?:they|it|the \w+|my \w+) (?:have |got )?(?:left|still)(?: got)? to (rest|bake|cool|set)(?=\W*$)/g,
    to: "$1how long left on the $2 timer",
  },
  // "140 g whites: rest of the shells, and yield at 4 cm"
  {
    marks: ["yield"],
    from: /\b(and|plus|also|&|,) (?:the |its |what )?yield(?: is that| would that be)? (?=(?:at|of|in|with) \d)/g,
    to: "$1 how many macarons ",
  },
  // "..., cream for piping. ganache timer."
  {
    marks: ["ganache timer", "buttercream timer"],
    from: /([.;!] ?)(ganache|buttercream) timer(?= ?[.!]*$)/g,
    to: "$1start the $2 timer",
  },
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
  // "$13 cost at 50% margin what price"
  {
    marks: ["cost at", "costs at"],
    from: /^((?:(?:ok|so|and),? )*)((?:[£$€] ?)\d+(?:[.,]\d+)?|\d+(?:[.,]\d+)? ?(?:dollars?|euros?|pounds?|quid|bucks)) costs? at (?:an? )?(\d+(?:[.,]\d+)? ?(?:%|percent)) margin,? (?=what|which|how much)/g,
    to: "$1it costs $2, at $3 margin ",
  },
  // "im doing thirty, ring of buttercream and ..."
  {
    marks: [
      "im doing ",
      "i'm doing ",
      "we're doing ",
      "im making ",
      "i'm making ",
      "im baking ",
      "i'm baking ",
    ],
    from: new RegExp(
      `^${lead}(?:i'?m|we'?re) (?:doing|making|baking) (${number})(?= ?,(?=.*\\b(?:ring|cent(?:er|re)|filling|butter ?cream|ganache|curd|batter|shells)\\b))`,
      "g",
    ),
    to: "$1$2 macarons",
  },
  // "270 g cream cheese 90 g butter 60 g icing sugar, divide by 3", "half not third"
  {
    marks: ["divide by", "divided by", "divide it by", "divide that by", "divide all by"],
    from: /^(?=.*\d ?g(?:rams?)?\b.*\d ?g(?:rams?)?\b)(.+?),? (?:all |and )?divided?(?: (?:it|that|all|everything|the lot))? by (2|3|4|two|three|four)(?= ?[?.!]*$)/g,
    to: (_said, list = "", by = "") => `${list}, ${shares[by]} of that`,
  },
  {
    marks: [" not "],
    from: /^(?:(?:no|sorry|oops|wait|actually),? )*(half|a third|a quarter|third|quarter|double|twice),? not (?:a |the )?(?:half|third|quarter|double|twice)(?= ?[?.!]*$)/g,
    to: "no, $1",
  },
  // "this butter's gone lovely and soft, 325 g, so for smbc ...": so much of it
  {
    marks: [" gone ", " is ", " are ", "'s ", " turned ", " got "],
    from: /^((?:(?:so|ok|right|well|and),? )*)(?:this|the|my|that) (butter|cream|sugar|chocolate|dark chocolate|milk chocolate|white chocolate|almond flour|whites)(?:'s| is| has| are| have)(?: (?:gone|got|turned|all|nice|nicely|lovely|really|so|quite|soft|melted|warm|ready|cold|sifted|and|now|out|at room temperature))+ ?, (\d+(?:[.,]\d+)? ?(?:g|grams?)) ?,/g,
    to: "$1$3 $2,",
  },
];
