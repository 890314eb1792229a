/** Questions and orders in their shortest form: "cups for 250 g sugar", "cocoa whatever remains", "and a timer, 20 min". */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:and|so|ok|okay|now|then|please),? )*)";
const weight = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|kg|oz|ml)";

export const toldBriefly: readonly Phrase[] = [
  // "cups for 250 g granulated sugar"
  {
    marks: ["cup", "tbsp", "tablespoon", "tsp", "teaspoon", "stick", "ounces for", "oz for"],
    from: new RegExp(
      `^${lead}(cups?|tbsps?|tablespoons?|tsps?|teaspoons?|sticks?|oz|ounces?) (?:for|is|in|from) (${weight} (?:of )?[a-z ]{3,30})(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1how many $2 is $3",
  },
  // "..., ganache timer on too"
  {
    marks: ["timer on", "timer going", "timer running"],
    from: /(?:,|\band|\bplus|\bwith|&) (?:the )?(ganache|rest|bake|cooling|buttercream) timer (?:on|going|running)(?: too| as well| also| please| pls)*(?= ?[.!]*$)/g,
    to: ", and start the $1 timer",
  },
  // "log peach batch, good feet. and a timer, 20 min"
  {
    marks: [" a timer,"],
    from: /\b(and|plus|also) (?:set )?a timer, (\d+(?:[.,]\d+)? ?(?:m|mins?|minutes?|h|hours?))\b/g,
    to: "$1 set a timer for $2",
  },
  // "exactly 75 shells, no spares, batter in g"
  {
    marks: ["no spare"],
    from: /^(?:(?:exactly|just|only) )?(\d+) shells,? (?:with |and )?no spares?(?: shells)?,? (?:how much )?batter(?: in g(?:rams)?)?(?= ?[?.!]*$)/g,
    to: "batter for $1 shells, no spares",
  },
  // "vanilla gets 150 and cocoa whatever remains"
  {
    marks: ["whatever", "what is left", "whats left", "what's left", "what remains"],
    from: /\b(?:the )?([a-z]+(?: [a-z]+)?) (?:gets|takes|has) (\d+(?:[.,]\d+)?) ?(?:g|grams?)?(?:,| and|, and| -) (?:the )?([a-z]+(?: [a-z]+)?) (?:gets |takes |is |has )?what(?:ever)?(?:'s| is| s|s)? (?:remains|remaining|left(?: over)?)\b/g,
    to: "$2 g $1 and the rest $3",
  },
  // "put this under wednesday: lavender, tops wrinkled"
  {
    marks: ["put this under", "file this under", "put it under", "put that under"],
    from: /^(?:please )?(?:put|file|log|write) (?:this|it|that) (?:down )?under (yesterday|today|(?:last )?(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?=:| -)/g,
    to: "note for $1",
  },
  // "save my size, i pipe 3.5 cm"
  {
    marks: ["my size", "my shell size", "my diameter"],
    from: new RegExp(
      `^${lead}(?:save|keep|remember|store|set|note) my (?:size|shell size|diameter)(?: (?:as|to|at|please))*[,:]? ?(?:(?:i pipe(?: them)?(?: at)?|i make them|they'?re|they are|its|it's|at|is) )?(?=\\d[^?]*$)`,
      "g",
    ),
    to: "$1remember my shells are ",
  },
  // "we will go with the dark, tell me the cream for 200 g"
  {
    marks: ["cream for "],
    from: new RegExp(
      `\\b(?:go|going|went) with (?:the )?(dark|milk|white),? (?:so |and |then )?(?:(?:tell me|give me|what's|whats|how much is|how much) )?(?:the )?cream for (${weight})(?= ?[?.!]*$)`,
      "g",
    ),
    to: "cream for $2 $1 chocolate",
  },
  // "take 200 g butter, 120 g sugar, 80 g whites up to 1 kg in total"
  {
    marks: [" up to ", " down to "],
    from: new RegExp(
      `^${lead}(?:take|bring|get) (?=\\d)(?=.*\\d ?g\\b.*\\d ?g\\b)(.+?),? (?:up|down) to (\\d+(?:[.,]\\d+)? ?(?:g|grams?|kg))(?: in total| in all| total| altogether)?(?= ?[?.!]*$)`,
      "g",
    ),
    to: "$1$2, scale to $3",
  },
  // "those filled on the 10th"
  {
    marks: ["those ", "these ", "them "],
    from: /\b(?:those|these) (filled|made|baked|boxed|frozen) (?=on|last|yesterday|this|two|three)/g,
    to: "the ones $1 ",
  },
  // "can they still go out today": to whoever ordered them
  {
    marks: ["still go out", "still be handed"],
    from: /\bcan (?:they|those|these|it) still (?:go out|be handed over|be given out)(?= (?:today|now|tomorrow)| ?[?.!]*$)/g,
    to: "are they still good",
  },
];
