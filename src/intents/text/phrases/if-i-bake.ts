/** How many are made, or of what size, told as a condition: "weights for shells if i bake 30 macarons". */
import type { Phrase } from "./phrase.ts";

const number =
  "(?:\\d+|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|fifteen|sixteen|eighteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|dozen|half|couple)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine|dozen|hundred|and|a))*)";
const many = `(?:(?:only|just|about|around) )*${number}(?: [a-z]+)? (?:macarons?|macaroons?|macs|dozen)`;

export const ifIBake = (): readonly Phrase[] => [
  {
    marks: [" bak"],
    from: new RegExp(
      `\\b(?:if|when|in case|supposing|assuming|say) (?:(?:i|we|he|she|they) (?:(?:do|want to|wanna|have to|need to|am|are|were to|was to|get to) )?(?:bake|bakes|baking|baked)|(?:i'm|im|we're|were|i am|we are) (?:only |just |going to |gonna )?(?:bake|baking)) (?=${many}\\b)`,
      "g",
    ),
    to: "for ",
  },
  // "if 30 macarons get baked"
  {
    marks: [" baked"],
    from: new RegExp(
      `\\b(?:if|when|where) (${many}) (?:are|get|will be|are being|are to be|have to be) baked\\b(?! (?:and|then|do|does|weigh))`,
      "g",
    ),
    to: "for $1",
  },
  // "if they are 3.5 cm, how many out of the 540": one question, of that size
  {
    marks: ["cm, how many", "mm, how many", "cm how many", "mm how many"],
    from: /\b(?:what )?(?:if|when|supposing|say) (?:they are|they're|theyre|they were|i pipe them|i make them|i piped them|they come out|its|it's|at) (?:only )?(\d+(?:\.\d+)? ?(?:cm|mm)),? how many (?=(?:do i get |would i get |will i get |can i get |does it make |are there )?(?:out of|from|of|in) (?:all )?(?:the|that|those|my) \d)/g,
    to: "how many of $1 ",
  },
];
