/** Questions put within an order: "tell me what 15 percent of 640 is". */
import type { Phrase } from "./phrase.ts";

const count =
  "(?:\\d|an? (?:third|quarter|half|fifth|sixth|eighth|tenth|cup|stick|pound|ounce|kilo|tablespoon|teaspoon|spoonful|dozen)\\b|half\\b|one\\b|two\\b|three\\b|four\\b|five\\b|six\\b|seven\\b|eight\\b|nine\\b|ten\\b|twelve\\b|fifteen\\b|twenty\\b|thirty\\b|forty\\b|fifty\\b|sixty\\b|seventy\\b|eighty\\b|ninety\\b)";

/** What makes it a question within another one; a turn may begin with it. */
const asking =
  "(?:^|[.?!:;,] |\\b(?:tell(?:ing)? (?:me|us)|know|work(?:ing)? out|calculat(?:e|ing)|ask|say(?:ing)?|see|figur(?:e|ing) out|find(?:ing)? out|check(?:ing)?|show(?:ing)? (?:me|us)|remind(?:ing)? me|remember|wonder|wondering) )";

const comesTo =
  "(?:is|are|was|would be|will be|might be|should be|could be|ought to be|(?:(?:would|will|might|should|could) )?(?:comes?|works?|comes? out|works? out|amounts?) (?:to|at|as)|(?:would )?equals?)";

export const askedWithin: readonly Phrase[] = [
  // "what 15 percent of 640 is", "what 350 f comes to in celsius": turned into the plain question
  {
    marks: ["what "],
    from: new RegExp(
      `(?<=${asking})what (${count}(?:(?!\\b(?:macarons?|shells|boxes|trays|is|are|would|will|do|does|should|can|could|went|goes|go|i|we|it|for)\\b)[^?.!,;])*?) ${comesTo}((?: (?:in|as|to) (?:[a-z°]+(?: [a-z]+)?))?)(?= ?(?:[?.!,;]|please\\b|pls\\b|then\\b|$))`,
      "g",
    ),
    to: "what is $1$2",
  },
  // "might we call tray a lilac shells instead?": an order; "may i call you when" and "call me" are none
  {
    marks: [" call ", " rename "],
    from: /^((?:(?:and|so|but|oh|now|then|also|actually|sorry|no|please),? )*)(?:(?:might|may|could|can|shall|should) (?:we|i|you)|would you(?: mind)?|i wonder (?:if|whether) (?:we|i|you) (?:might|may|could|can)|(?:i(?:'d| would| should)|we(?:'d| would)) (?:like|prefer|rather)(?: to)?|let's|let us|perhaps we (?:might|could|should)|i think (?:i'll|we'll|i will|we should|i should|we might|i might)) (?:(?:please|just|now|perhaps|also|rather) )*(call|rename|name)(?:ing)? (?!(?:me|us|you|him|her|them|the police|when|once|if|at|back)\b)(?=(?:it|that|this|the|my|tray|timer|oven|bake|rest|cool)\b)/g,
    to: "$1$2 ",
  },
];
