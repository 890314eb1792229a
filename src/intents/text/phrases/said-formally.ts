/** What is written out where others talk: "correction. 108", "sufficient?", "work out the extra plain buttercream". */
import type { Phrase } from "./phrase.ts";

const pack = "(?:packet|pack|bag|jar|tin|box|carton|tub|sack)";

export const saidFormally: readonly Phrase[] = [
  // "correction. 108.": a number alone would be of a note that is put right
  {
    marks: ["correction"],
    from: /^(?:(?:sorry|oh|oops|a|small|one|my),? )*correction ?[,.:;-]? (?=(?:it is |its |it's |make it )?\d[\d.,]*(?: ?(?:g|grams?|mm|%|percent))? ?[.!]*$)/g,
    to: "no, ",
  },
  { marks: ["sufficient"], from: /\bsufficient(?:ly)?\b/g, to: "enough" },
  // "45 mm macarons, i should have said": why it comes late, and nothing else
  {
    marks: ["should have said", "should've said", "forgot to", "should have mentioned", "ought to have said"],
    from: /(?<=\S),? (?:as )?i (?:should(?: have|'ve)|ought to have|forgot to) (?:said|say|mentioned?|added|told you|tell you)(?: (?:so|that|it|this|before|earlier|first|at first))*(?= ?[.!]*$)/g,
    to: "",
  },
  {
    marks: ["extra", "additional"],
    from: /^(?:(?:please|then|so|and|now),? )*(?:work out|calculate|compute|figure out|find|determine) (?:for me )?the (?=(?:extra|additional) (?:plain )?(?:buttercream|ganache|filling|batter|cream|chocolate)\b)/g,
    to: "how much ",
  },
  // "..., 80 g sugar. my packet of ground almonds holds 150 g. new weights?": so much there is, behind a list
  {
    marks: ["packet", "pack ", "bag ", "jar ", "tin ", "box ", "carton", "tub ", "sack"],
    from: new RegExp(
      `(?<=\\d ?g\\b.*\\d ?g\\b.*\\d ?g\\b.*)\\b(?:my|the|our|this) ${pack} of ([a-z]+(?: [a-z]+)?) (?:only |just )?(?:holds|has|contains|weighs|is) (?:only |just |about )?(\\d+(?:\\.\\d+)?) ?(?:g|grams?)\\b`,
      "g",
    ),
    to: (_, thing = "", grams = "") => `i have ${grams} g ${thing}`,
  },
  {
    marks: ["packet", "pack ", "bag ", "jar ", "tin ", "box ", "carton", "tub ", "sack"],
    from: new RegExp(
      `^(?:(?:and|so|but|or),? )*(?:(?:were|was) (?:the|my|that) ${pack}|(?:what )?if (?:the|my|that) ${pack} (?:were|was|is|had|held|holds|has)) (?:only |just )?(?=\\d+(?:\\.\\d+)? ?(?:g|grams?)\\b ?[?.!]*$)`,
      "g",
    ),
    to: "and if i have ",
  },
  // "five minutes longer it is damp in here": why, and no timer's name
  {
    marks: ["longer", "more", "less", "shorter", "extra"],
    from: /(?<=^(?:(?:and|ok|so|no|oh|give it|make it|another|please),? )*(?:\d+|five|ten|fifteen|twenty|two|three|four|six|eight) ?(?:minutes?|mins?) (?:longer|more|less|shorter|extra)),? (?:because |as |since |cos )?(?:it is|it's|its|they are|they're|theyre|(?:the|my) [a-z]+ (?:is|are)) (?!for |to )[a-z ]+(?= ?[.!]*$)/g,
    to: "",
  },
  // "zest and acid again": the one acid that goes into a filling
  { marks: ["acid"], from: /\b(zest|salt|juice)(,| and|,? &|,? plus) acid\b/g, to: "$1$2 citric acid" },
];
