/** Speech as a phone writes it down: "um", what is said while looking at the scale, words begun twice. */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";
import type { Phrase } from "./phrase.ts";
import { count } from "./spelt.ts";

const digit = `(?:\\d|an? hundred|hundred|(?:${[...Object.keys(smallNumbers), ...Object.keys(tens)].join("|")})\\b)`;
/** "two hundred and sixty", as words: what may be said twice. */
const number = `(?:an? hundred|${[...Object.keys(smallNumbers), ...Object.keys(tens)].join("|")})(?: (?:and|hundred|${[...Object.keys(smallNumbers), ...Object.keys(tens)].join("|")}))*`;
/** Behind a moment the same number twice is an hour and its minutes: "at ten ten". */
const noHour = "(?<!\\b(?:at|by|till|until|before|after|for) )";
const measures =
  "(?:g|grams?|kilos?|kg|ounces?|oz|pounds?|ml|mils?|percent|minutes?|mins?|hours?|degrees|macarons?|shells?|eggs?|whites?|drops?|teaspoons?|tablespoons?|cups?)";

export const spoken = (): readonly Phrase[] => [
  // "call it um top tray", "three hundred uh grams": sounds, and no words; "uh oh" and "um," alone stay
  {
    marks: [" um", " uh", " erm", " er ", " ehm", " umm", " uhm"],
    from: /(?<=^|[ ,])(?:(?:u+m+|u+h+m*|e+r+m*|ehm+)[,.]* )+(?=(?!oh\b|huh\b)\S)/g,
    to: "",
  },
  // "there's let me see three hundred grams", "it's what does it say two hundred and ten"
  {
    marks: ["let me ", "lets see", "let's see", "what does it say", "what is it", "hold on", "where is it"],
    from: new RegExp(
      `(?<=^|[ ,])(?:now |just )?(?:let me (?:just )?(?:see|look|check|think|have a look|read it|weigh it|count)|let'?s see|what does it say|what is it|where is it)(?: now| here| again)?,? (?=(?:about |exactly |just |it'?s |it is |there'?s )*${digit})(?<!(?:do|does|did|know|is|of|to|tell me) .{0,18})`,
      "g",
    ),
    to: "",
  },
  // "no sorry let me do it in grams three hundred and fifty grams"
  {
    marks: ["in grams", "in ounces", "in pounds", "in minutes", "in percent", "in kilos"],
    from: new RegExp(
      `\\b(no|sorry|wait|actually|rather)((?: (?:no|sorry|wait|actually))*),? (?:(?:let me|i'?ll|ill|let'?s|i should|i'?d better) (?:do|say|give|tell|put|use|weigh) (?:(?:you|it|that|this) )*)?in (?:grams|ounces|pounds|kilos|minutes|percent)(?: (?:that'?s|it'?s|that is|it is))?,? (?=${digit})`,
      "g",
    ),
    to: "$1$2 ",
  },
  // "it's like two hundred grams": about so much
  {
    marks: ["like "],
    from: new RegExp(
      `\\b(it'?s|there'?s|was|is|were|got|about|maybe|probably|weighs|i have|need|for|put in|of) like (?=${digit})`,
      "g",
    ),
    to: "$1 ",
  },
  // "eleven no twelve twelve grams": said again to be sure; "at ten ten" is an hour
  {
    marks: ["grams", " g", "percent", "minutes", "macarons", "shells", "whites", "ounces", "eggs", "degrees"],
    from: new RegExp(`${noHour}\\b(${number})(?:,? (?:yeah |yes |so )?\\1)+(?= ${measures}\\b)`, "g"),
    to: "$1",
  },
  // "i need i need forty", "how much how much cream": begun twice
  {
    marks: [" "],
    from: /\b((?:(?:i|we|it|its|it's|there's|so|how|what|what's|whats|is|the|can|could|do|does|i've|ive|and|that|my|if) )(?!(?:\w+ )?(?:no|wait|sorry)\b)(?:[a-z']+ ){0,2})\1(?=\S)/g,
    to: "$1",
  },
  // "180 g of buttercream and that wants matcha powder and the second one ...": what the bowl gets, told of it
  {
    marks: [" wants ", " needs ", " gets ", " takes ", " want ", " getting "],
    from: /\b(butter ?cream|ganache|filling|frosting|smbc|batter),? (?:and )?(?:that|it|this|which|that one|this one|and)(?: one|'s)? (wants|needs|gets|takes|getting)(?= (?!to\b|more\b|less\b|another\b|a (?:bit|little|few|lot)\b|about\b|how\b|\d|fixing|help|time|it\b|soft|firm|stiff|cold|warm|too\b|all\b)[a-z])/g,
    to: "$1 $2",
  },
  // "the kids all want their own color so there's three of them, equal": a bowl for each
  {
    marks: ["own colo", "own bowl", "different colo", "each want", "own share", "own shade"],
    from: new RegExp(
      `\\b(?:(?:so|and|but|because),? )?(?:the |my |our |all )*(?:kids|children|girls|boys|grandkids|grandchildren|twins|nieces|nephews|friends|them|they|everyone|everybody|each of them)(?: (?:all|each|both))? (?:wants?|gets?|needs?|would like) (?:their|his|her|its|an?|to have their) (?:own|different) (?:colou?r|shade|bowl|share)(?:s)?,? (?:and |so |but )*(?:(?:there'?s|there are|that'?s|that makes|it'?s|that is|they are|they'?re|makes) )(${count})(?: of (?:them|us))?(?:,? (?:so |all |in |and )*(?:equal(?:ly)?(?: parts)?|even(?:ly)?|the same))?`,
      "g",
    ),
    to: ", split it equally between $1",
  },
  {
    marks: ["each want", "each get", "each need", "all want"],
    from: new RegExp(
      `\\b(?:and |so |but )*(?:there'?s|there are|i have|i'?ve got|we have|it'?s) (${count}) (?:kids|children|girls|boys|people|grandkids|friends|nieces|nephews|of us|of them)(?: who| that)?(?: will)? (?:each|all) (?:wants?|gets?|needs?) (?:an?|their|a different|their own) (?:own )?(?:colou?r|shade|bowl)`,
      "g",
    ),
    to: ", split it equally between $1",
  },
  // "quick one what's five eighths of 440": said before the question, and no number
  {
    marks: ["quick one", "quick question", "real quick", "quickly", "quick q"],
    from: /^((?:(?:hey|hi|hiya|hello|ok|okay|so|right|now|oh|and|sorry),? )*)(?:(?:just|and|a|one|another|really|real|very|is|it's|this is) )*(?:quick (?:one|question|q)(?: for (?:you|ya))?|real quick|really quick|quickly),? (?=(?:what|how|which|when|can|could|is|are|do|does|where|why|an?\b|\d|half|two|three|four|five|six|seven|eight|nine|ten|convert)\S* ?)/g,
    to: "$1",
  },
  // "tipped it into a cup to see what's left and there's twelve grams": why it was weighed, and no question
  {
    marks: ["to see what", "to see how", "to check what", "to check how", "to find out"],
    from: /,? (?:just )?to (?:see|check|find out) (?:what|how much)(?:'?s| is| was| i(?:'?ve| have| had)(?: got)?| there(?:'?s| is| was))?(?: still| of it)?(?: left| there| here| in (?:it|there|here|the bottle))*(?=,? (?:and|so|but) (?:there|it|i|that|they)\b|, (?:there|it|that)\b)/g,
    to: "",
  },
  // "tipped the bottle into a cup": what it stands in, and no measure
  {
    marks: [" into a ", " in a "],
    from: /\b(tipped|tip|poured|pour|put|emptied|squeezed|scraped|dumped|drained|popped|weighed) ((?:[a-z']+ ){1,6})in(?:to)? an? (?:clean |little |small |measuring |paper |coffee |tea )?(?:cup|mug|glass|teacup|spoon|ramekin)\b(?! of\b| full)/g,
    to: "$1 $2into a bowl",
  },
  // "okay they're done stop green shells", "that's finished so cancel tray two": why, and then the order
  {
    marks: ["done", "finished", "ready", " out", "baked", "over", "cooled"],
    from: /^(?:(?:ok|okay|right|so|oh|and|well|yeah|yes|now|great|good|lovely),? )*(?:they'?re|they are|these are|those are|it'?s|it is|that'?s|that is|that one'?s|this one'?s|everything'?s|(?:the|my) (?:shells|macarons|tray|bake|rest) (?:are|is)) (?:all |now |just |already |well )*(?:done|finished|ready|out(?: of the oven)?|baked|over|cooled)(?: now| already)?,? (?:so |and |now |please |you can )*(?=(?:stop|cancel|end|kill|turn off|switch off|clear) )/g,
    to: "",
  },
  // "just back from the shops so put two kilos ...", "i went to the market and put ...": where it comes from
  {
    marks: ["back from", "been to", "shopping", "went to", "popped", "home from", "been out"],
    from: /^(?:(?:ok|okay|right|so|oh|and|well|hi|hey),? )*(?:(?:i'?m|i am|we'?re|we are|i'?ve|i have|we'?ve|i|we) )?(?:only |just |now )*(?:(?:got |come |came )?(?:back|home|in)(?: home)? from|been (?:to|out|shopping|round|down)|went (?:to|out|shopping|down|round)|popped (?:to|out|into|down|round))(?: [a-z']+){0,5}?,? (?:so|and|now),? (?=(?:please |can you |could you |just )*(?:put|add|stick|pop|write|enter)\b)/g,
    to: "",
  },
  // "how much cream do i need oh and how long does it take to set": the next question
  {
    marks: [" oh and ", " ooh and ", " ah and "],
    from: /(?<=[a-z\d]),? (?:oh|ooh|ah),? and (?=(?:how|what|whats|what's|when|which|can|could|set|start|note|is|are|do|does|will|give|put|remind) )/g,
    to: ", and ",
  },
  // "two trays in the oven so fifteen minutes for the first": where they are, and no number of shells
  {
    marks: ["trays in", "trays are in", "trays going in"],
    from: new RegExp(
      `^((?:(?:ok|okay|right|so|oh|and|well|now),? )*)(?:(?:i'?ve got|i have|there'?s|there are|i'?ve put|we have) )?(?:the |both |all )*(?:${count} )?trays (?:are |have gone |going |is )?in(?: the oven)?(?: now| already)?,? (?:so|and),? (?=(?:set |give me |make it |start |that'?s )?${count} ?(?:minutes|mins|min|hours?)\\b)`,
      "g",
    ),
    to: "$1",
  },
  // "my scale only goes up in fives"
  {
    marks: ["in ones", "in twos", "in fives", "in tens", "in halves"],
    from: /\b(scales? (?:only )?(?:goes|go|reads?|weighs?|measures?|counts?|steps?) (?:up )?)in (ones|twos|fives|tens|halves)\b/g,
    to: (_whole, lead = "", size = "") =>
      `${lead}in ${{ ones: 1, twos: 2, fives: 5, tens: 10, halves: 0.5 }[size]} g steps`,
  },
];
