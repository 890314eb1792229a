/** "100 g whites, 130 g almond flour, ... makes 24, i want 48": a list told with how many it makes, and how many are wanted. */
import type { Phrase } from "./phrase.ts";

const line = "\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|oz) (?:of )?(?:the )?[a-z]+(?: [a-z]+){0,2}";
const list = `(${line}(?:(?:,|;| and|, and| \\+|,? plus)? ${line}){2,7})`;
const many = "(\\d+)(?: (?:macarons?|macs|of them|filled ones|pieces))?";
const makes =
  "(?:(?:(?:it|this|that|which|all that|the recipe|that recipe|they) )?(?:makes?|gives?(?: me)?|yields?|does|is (?:for|enough for)|are for|is good for|gets me|do))";
const want =
  "(?:(?:and |but |so |now |today |please )*(?:(?:(?:i|we)(?:'?d)? (?:want|need|like|would like|like to make|want to make|need to make|am making|have to make|only want|only need)(?: (?:it|this|that|enough|one) for)?|(?:id|i'?ll|lets|let me|can you|could you) (?:like|make|want|need|do|scale (?:it|this|that) to)|(?:please )?(?:scale|rescale|resize|stretch|adjust|bring|take|make|shrink)(?: (?:it|this|that|them|the recipe))?(?: (?:up|down))? (?:to|for|so it makes|so that it makes|into)|make (?:it|that|this)(?: into)?|(?:what|how much|whats)(?: (?:is|are|do i need|would it be|about))?(?: it)? for|for|scaled to)) (?:only |just |about )?)";
const end = "(?: (?:please|pls|instead|today|then|though|now))*(?=[ ?.!]*$)";
const joint = "(?:,| ?[.;:]|,? and|,? but|-)? ";
const lead = "^((?:(?:ok|okay|so|hi|hey|well|and|right|please),? )*)";

export const ownCount = (): readonly Phrase[] => [
  {
    marks: [" make", " give", " yield", " does ", " for ", " do ", " good for", " gets me"],
    from: new RegExp(
      `${lead}(?:(?:my |the |our )?recipe(?: ?:| is| goes| says)? |its |i use )?${list}${joint}${makes} ${many}${joint}${want}${many}${end}`,
      "g",
    ),
    to: "$1recipe for $3 macarons is $2, i want $4",
  },
  // "this makes 30 and i need 45: 100 g whites, ...": the list behind
  {
    marks: [" make", " give", " yield", " does ", " is for", " for "],
    from: new RegExp(
      `${lead}(?:(?:my |the |our |this )?(?:recipe|formula|list|card) )?${makes} ${many}${joint}(?:and |but |so )?${want}${many}(?: ?[:;,.-]| -)+ ${list}(?=[ ?.!]*$)`,
      "g",
    ),
    to: "$1recipe for $2 macarons is $4, i want $3",
  },
  // "recipe for 24 macarons: 100 g whites, .... scale to 36"
  {
    marks: [
      "recipe",
      "formula",
      "card ",
      "curd",
      "ganache",
      "cream",
      "smbc",
      "caramel",
      "filling",
      "jam",
      "praline",
      "custard",
    ],
    from: new RegExp(
      `${lead}(?:(?:a|the|my|this|our) )?(?:[a-z]+ ){0,2}?(?:recipe|formula|card|curd|ganache|butter ?cream|smbc|caramel|filling|jam|praline|custard|cheesecake filling) (?:(?:is )?(?:enough )?for|makes|that makes|which makes|does|gives|yields|fills|is for|will do|will fill) ${many}(?: ?[:,-]| is| has| says| takes| uses| goes) ${list}${joint}${want}${many}${end}`,
      "g",
    ),
    to: "$1recipe for $2 macarons is $3, i want $4",
  },
];
