/** Whether it can be asked, and then it is asked: "can you do sums? what is 85 times 3", "can you do me a us label? 140 g ...". */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:hi|hey|hello|ok|okay|so|and|oh|well|now),? )*";
const can =
  "(?:(?:can|could|will|would|do|are|can't|cant) (?:you|u|this|it)|(?:is|are) (?:it|this|you) able to|do you know how to)";
const sums =
  "(?:sums?|maths?|arithmetic|calculat(?:e|ions?)|percentages?|divisions?|multiplications?|subtract(?:ions?)?|add(?:ing)?(?: up)?|count(?:ing)?|numbers|fractions|convert(?: things| units)?|conversions?|times tables?)";
const label =
  "(?:(?:a|an|the|my|me|us a|some) )*(?:(?:us|usa|american|eu|european|uk|food|ingredients?|product) )?labels?";

export const canYou = (): readonly Phrase[] => [
  {
    marks: ["?"],
    from: new RegExp(
      `^${lead}${can} (?:(?:do|know|good|any good|at|a|an|some|quick|simple|handle|manage|help|with|me|us|my|your|also|even|the|able to|work out) )*${sums}(?: (?:for me|for us|too|as well|please|in here|here|things))* ?\\? ?(?=\\S)`,
      "g",
    ),
    to: "",
  },
  // the list behind it is what stands on the label
  {
    marks: ["label"],
    from: new RegExp(
      `^(${lead}(?:(?:${can}|could i|can i|may i|i|we|please) )?(?:(?:do|make|write|print|get|have|need|want|give|would like|like|create|draft) )*(?:me |us )?${label})(?: (?:for me|please|pls|for these|for this|for them|for the box))* ?[?.!] ?(?=(?:it'?s |they'?re |there'?s |i have |with |contains )?(?:\\d+(?:\\.\\d+)? ?(?:g|gr|grams?|oz)\\b|[a-z]+(?: [a-z]+)? \\d+(?:\\.\\d+)? ?(?:g|gr|grams?|oz)\\b))`,
      "g",
    ),
    to: "$1: ",
  },
];
