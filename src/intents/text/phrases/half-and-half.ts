/** A filling of two mixes by their shares: "split 300 g filling half curd half buttercream". Nothing is dosed into anything. */
import type { Phrase } from "./phrase.ts";

const lead = "((?:(?:ok|okay|and|so|now|please|pls|can you|could you|i|we|want to|need to|i'll|then),? )*)";
const weight = "(\\d+(?:[.,]\\d+)? ?(?:g|gr|grams?|kg|oz))";
const share =
  "(?:(?:a |one )?(?:half|third|quarter|fifth)|two thirds|three quarters|(?:two|three|four) fifths|\\d+(?:\\.\\d+)? ?(?:%|percent|per cent))";
const mixes =
  "(?:curd|jam|butter ?cream|smbc|ganache|caramel|pur[eé]e|compote|praline|marmalade|mascarpone|cream cheese)";
const mix = `((?:(?!(?:and|half|of|in|to|into|between|evenly|equally|how|with)\\b)[a-z]+ ){0,2}?${mixes})`;
const part = `(${share})(?: of (?:it|that|the filling))?(?: (?:is|as|in|with|of|to be|being))? ${mix}`;
const two = `${part}(?:,? and |, | \\+ | & | )(?:the other |the rest )?${part}`;
const split = "(?:split|divide|share|part|halve|portion)";
const filling = "(?: (?:of )?(?:the |my )?filling)?";
const tail =
  "((?: (?:please|pls|then))*(?:,? how much (?:of each|each|is that|do i need of each|is each))?[ ?.!]*)$";
const even =
  "(?:50 ?[/:] ?50|fifty fifty|half and half|half half|evenly|equally|in half|in two|into two|equal parts)(?: between| into| for| of|,|:| -)?";

/** A flavor in its own words: no color, no amount. */
const taste =
  "((?!(?:pink|green|red|blue|yellow|white|plain|how|the|it|of)\\b)[a-z]{3,}(?: (?:flavou?r|extract|zest|paste|powder|oil|liqueur|bean paste))?)";

const put = (before = "", grams = "", ...rest: string[]): string => {
  const [one, first, other, second] = rest;
  return `${before}split ${grams} into ${one} ${first} and ${other} ${second}`;
};

export const halfAndHalf = (): readonly Phrase[] => [
  // "lemon for half of it and vanilla extract for the other half", "flavor half of it lemon and half vanilla extract"
  {
    marks: ["half"],
    from: new RegExp(
      `^${lead}(?:how much )?${taste} (?:for|in|into) (?:one )?half(?: (?:of (?:it|that)|the bowl))?(?:,? and |, )${taste} (?:for|in|into) (?:the )?other half(?: of (?:it|that))?(?:,? how much(?: of)?(?: each)?)? ?[?.!]*$`,
      "g",
    ),
    to: "$1how much $2 for half of it and how much $3 for the other half",
  },
  {
    marks: ["half"],
    from: new RegExp(
      `^${lead}(?:flavou?r|flavou?ring) (?:one )?half(?: of (?:it|that))?(?: with| in)? ${taste}(?:,? and |, )(?:the )?(?:other half|half|rest)(?: of (?:it|that))?(?: with| in)? ${taste}(?:,? how much(?: of)?(?: each)?)? ?[?.!]*$`,
      "g",
    ),
    to: "$1how much $2 for half of it and how much $3 for the other half",
  },
  // "390 g of buttercream, 3 flavours, equal bowls please"
  {
    marks: ["flavo", "colo", "kinds"],
    from: /(?<=\d ?(?:g|grams?)\b.*)(?:,|;|\.) (?:and |in |for )*(\d|two|three|four|five|six) (?:flavou?rs|colou?rs|kinds),? (?:and |in |all )*(?:equal|even|same) (?:bowls|parts|portions|shares|amounts)\b/g,
    to: ", split in $1 equal bowls",
  },
  {
    marks: ["split ", "divide ", "share ", "part ", "halve ", "portion "],
    from: new RegExp(
      `^${lead}${split} (?:up )?(?:the |my )?${weight}${filling}(?: up)?(?:,|:| -|,? (?:into|in|as|so it is|so its))? ${two}${tail}`,
      "g",
    ),
    to: (_said, ...found) => put(...found.slice(0, 6)),
  },
  {
    marks: [" is ", " be ", " are ", "shall", "should"],
    from: new RegExp(
      `^${lead}(?:the |my )?${weight} (?:of )?(?:the |my )?filling (?:is|shall be|should be|will be|is to be|has to be|must be|is going to be) ${two}${tail}`,
      "g",
    ),
    to: (_said, ...found) => put(...found.slice(0, 6)),
  },
  {
    marks: [" in all", " in total", "altogether", " of filling", " filling"],
    from: new RegExp(
      `^${lead}${two}(?:,|:| -| from| out of| for)? ${weight}(?: (?:in all|in total|altogether|of filling|filling|all together))+${tail}`,
      "g",
    ),
    to: (_said, before, one, first, other, second, grams) => put(before, grams, one, first, other, second),
  },
  {
    marks: ["50", "fifty", "half", "evenly", "equally", " in two", "into two", "equal parts"],
    from: new RegExp(
      `^${lead}${split} (?:up )?(?:the |my )?${weight} ?(?:(?:of )?(?:the |my )?filling)?,? ${even} ${mix}(?:,? and |, | \\+ | & )${mix}${tail}`,
      "g",
    ),
    to: (_said, before, grams, first, second) => put(before, grams, "half", first, "half", second),
  },
];
