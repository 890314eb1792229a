/** What is in the cupboard, told as one tells a note: "pantry has 100 g almond flour in it, note that down as stock". */
import type { Phrase } from "./phrase.ts";

const lead = "(?:(?:ok|okay|and|so|oh|well|right|now|also|please|can you|could you),? )*";
const place = "(?:pantry|larder|cupboard|shelf|stock|store cupboard)";
const write = "(?:note|write|log|put|jot|record|keep|save|enter|get|have)";
const ask = "(?:(?:and|so|please|then|can you|could you|would you|will you) )*";
const end = "(?: (?:please|pls|for me|thanks|too|as well))*[.!?]*$";
const places = ["stock", "pantry", "larder", "cupboard", "shelf"];

/** "250 g butter, 300 g cream and 6 eggs": amounts of what is kept, none of it mixed. */
const kept =
  "(?:\\d+(?:\\.\\d+)? ?(?:g|grams|kg|kilos?|oz|ounces|lbs?|pounds?|ml|l)|\\d+)(?: of)?(?: [a-z%]+){1,4}?";
const listKept = `${kept}(?:(?:, and |, | and | plus | & )${kept}){0,8}`;
const cold =
  "(?:fridge|refrigerator|freezer|kitchen|cellar|cupboard|larder|pantry|shelf|stock|store cupboard|house)";
const mixed =
  /\b(?:buttercream|butter cream|smbc|ganache|filling|fillings|batter|dough|curd|macarons?|macs|shells|leftover|left over|flavou?r|batch|how|what|which|when|why|is|are|was|if|need|use|make|off|good|ok|still|since|days?|hours?|box|boxes)\b/;
/** The list where all of it is stock, else the sentence as it was. */
const stocked = (whole: string, list = ""): string => (mixed.test(list) ? whole : `pantry: ${list}`);

export const toStock = (): readonly Phrase[] => [
  // "the fridge has 250 g butter", "in the freezer: 200 g whites"
  {
    marks: ["fridge", "refrigerator", "freezer", "kitchen", "cellar", "house"],
    from: new RegExp(
      `^${lead}(?:(?:in|on) )?(?:(?:the|my|our) )?${cold}(?: now| still| also)*(?:,? (?:has|have|holds|had|contains|is|are|there are|there is|theres|there's|i have|i've|i've got|ive got|we have)(?: got| about| still| now)*|:) (${listKept})(?: in it| in there| left| too| as well| now)*[ .!]*$`,
      "g",
    ),
    to: stocked,
  },
  // "got 250 g butter in the fridge"
  {
    marks: [
      "in the fridge",
      "in the freezer",
      "in the kitchen",
      "in my fridge",
      "in my freezer",
      "in our fridge",
      "in the house",
    ],
    from: new RegExp(
      `^${lead}(?:i |we )?(?:'ve |ve |have |has )?(?:got|have|keep) (?:about )?(${listKept}) in (?:the|my|our) ${cold}(?: too| as well| now)*[ .!]*$`,
      "g",
    ),
    to: stocked,
  },
  // "2 kg icing sugar in the drawer", "there's 500 g cream in the fridge": told with its place, and nothing asked
  {
    marks: ["in the ", "in my ", "in our ", "at home"],
    from: new RegExp(
      `^${lead}(?!.*\\b(?:went|goes|gone|fell|used|spilt|spilled|lost)\\b)(?:(?:there is|there are|theres|there's|i have|i've|ive|we have|we've|weve|i|we)(?: got)? )?(?:about |another )?(${listKept}) (?:sitting |left |stored |kept |stashed )?(?:in (?:the|my|our) (?:back of the |bottom of the )?(?:${cold}|drawer|(?:kitchen |baking )?(?:cabinet|drawer|cupboard)|baking (?:box|shelf)|store ?room|utility room|basement|garage|tin|jar|bin|crate|tub)|at home|in at home)(?: too| as well| now| at the moment| right now)*[ .!]*$`,
      "g",
    ),
    to: stocked,
  },
  // "..., note that down as stock", "note it for the pantry"
  {
    marks: places.flatMap((each) => [
      `as ${each}`,
      `as in ${each}`,
      `in ${each}`,
      `for the ${each}`,
      `as my ${each}`,
      `under ${each}`,
    ]),
    from: new RegExp(
      `[,.;:]? ${ask}${write} (?:it|that|this|them|all that)(?: all)?(?: down)? (?:as|for|under|in) (?:(?:my|the|our|being|in) )*${place}${end}`,
      "g",
    ),
    // only where there is so much of something before it
    to: (whole, ...found) => {
      const [at, text] = [Number(found.at(-2)), String(found.at(-1))];
      return /\d/.test(text.slice(0, at)) ? ", put it in the pantry" : whole;
    },
  },
  // "note as stock: 500 g caster sugar"
  {
    marks: places,
    from: new RegExp(
      `^${lead}${write}(?: (?:it|this))?(?: down)? (?:as|for|under|in) (?:(?:my|the|our) )?${place} ?[:,-]? (?=\\d)`,
      "g",
    ),
    to: "pantry: ",
  },
  // "stock: 120 g whites, jot that down", "the cupboard has 90 g almond flour, note that down"
  {
    marks: places,
    from: new RegExp(
      `^(${lead}(?:(?:my|the|our|in) )*${place}(?: ?:| (?:has|have|holds|had|contains|is|are|there are|there is|theres|there's|i have|i've))[^?]{0,200}?\\d[^?]{0,200}?)[,.;:]? ${ask}(?:(?:note|write|jot|log|record|put) (?:it|that|this|them)(?: all)?(?: down)?|make a note(?: of (?:it|that|this|them))?)${end}`,
      "g",
    ),
    to: "$1",
  },
  // "note down that the pantry has 100 g almond flour"
  {
    marks: places,
    from: new RegExp(
      `^${lead}(?:note|write|jot|log|record|put)(?: down)?,? that (?=(?:(?:my|the|our) )?${place} (?:has|have|holds|contains) .*\\d)`,
      "g",
    ),
    to: "",
  },
];
