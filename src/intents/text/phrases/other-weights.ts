/**
 * What else is weighed out, asked beside how many come of it: "85 g whites, weights for the other stuff, and how many
 * macarons". Both are asked.
 */
import type { Phrase } from "./phrase.ts";

const amount =
  "(?:\\d+(?:\\.\\d+)? ?(?:g|gr|grams?|oz)|\\d+|two|three|four|five|six) (?:of )?(?:egg |almond |ground )?(?:whites|almond flour|almonds|flour|eggs)(?: in (?:the |my )?bowl)?|(?:the |my )?whites (?:weigh|are|come to) (?:about )?\\d+ ?(?:g|grams?)";
const has = "(?:(?:ok|so|and|i|i'?ve|ive|have|got|with|there'?s|there are|only|just|for|from|using),? )*";
const others =
  "(?:the )?(?:other (?:stuff|things|ingredients|bits|parts|ones|weights|lines)|others|rest(?: of (?:it|them|the (?:stuff|weights|ingredients|recipe)))?|remaining ingredients|everything else|all the (?:rest|others)|all else)";
const weights = `(?:(?:and|the|what are|give me|i need|tell me|please) )*(?:weights?|grams|amounts?|quantit(?:y|ies)) (?:for|of) ${others}(?: please| pls)?|(?:and )?(?:the )?other weights(?: please| pls)?|(?:and )?(?:the )?rest of (?:the |my )?(?:weights|shells|recipe|batter|shell recipe)(?: please| pls)?`;
const counts =
  "((?:and |then |also )*(?:(?:how many|number of) (?:macarons|macs|shells)|(?:the )?yield|(?:the )?(?:macarons|macs|shells) (?:it|that|they) (?:makes?|gives?|yields?))(?: [a-z' ]+(?:\\d+(?:\\.\\d+)? ?(?:cm|mm))?)?)";

const both = "what are the other weights";

export const otherWeights = (): readonly Phrase[] => [
  {
    marks: ["weight", "grams", "amount", "quantit", "rest of"],
    from: new RegExp(
      `^(${has}${amount})(?:,|:|;|\\.| -| so)? (?:${weights})(?:,|;|\\.|\\?)?(?: and)?,? ${counts}(?= ?[?.!]*$)`,
      "g",
    ),
    to: (_said, lead = "", many = "") =>
      `${lead}, ${both}, and ${many.replace(/^(?:(?:and|then|also) )*(?:(?:the )?yield\b|(?:the )?(?:macarons|macs|shells) (?:it|that|they) (?:makes?|gives?|yields?))?/, (opens) => (/yield|ma?cs?a?|shells/.test(opens) ? "how many macarons" : ""))}`,
  },
  {
    marks: ["weight", "grams", "amount", "quantit"],
    from: new RegExp(
      `^(?:${has})(how many (?:macarons|macs|shells))(?: (?:do|can|will|would|could) (?:i|it|that) (?:get|make))? (?:from|with|out of|of|for) (${amount})(?:,|;|\\.|\\?)?(?: and| plus)?,? (?:${weights})(?= ?[?.!]*$)`,
      "g",
    ),
    to: (_said, many = "", lead = "") => `${lead}, ${both}, and ${many}`,
  },
  // "ingredient weights for 600 g smbc"
  {
    marks: ["ingredient", "ingred", "ingr"],
    from: /\bingredient weights (?=(?:for|of) \d)/g,
    to: "ingredients ",
  },
  {
    marks: ["ingred", "ingrs", "ings "],
    from: /\b(?:ingreds?|ingrs|ingrds|ingrediants)\b/g,
    to: "ingredients",
  },
  { marks: [" ings "], from: /(?<=^| )ings (?=for |of )/g, to: "ingredients " },
];
