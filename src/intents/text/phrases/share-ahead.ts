/**
 * "how much ganache will 9 g do at 2 percent and at 2.5 %, how much does 350 g of buttercream need": the second share
 * stands ahead of the question that it is of. And "4 in 100 for pear flavour", which is a share too.
 */
import type { Phrase } from "./phrase.ts";

const share = "\\d+(?:\\.\\d+)? ?(?:%|percent|per cent)";

export const shareAhead: readonly Phrase[] = [
  // "i like 4 in 100 for pear flavour", "4 per hundred of lemon": percent, where a flavor is weighed
  {
    marks: [
      " in 100",
      " per 100",
      " to 100",
      " in a hundred",
      " per hundred",
      " in every",
      " in each",
      " in hundred",
    ],
    from: /\b(\d+(?:\.\d+)?) (?:parts? )?(?:in|per|to) (?:every |each |a )?(?:100|hundred)(?=$|[,;.]| (?:for|of (?:the |my )?[a-z]|is|please|and|parts|flavou?r|strength))(?! of (?:the )?(?:shells|macarons|them))(?=.*\b(?:flavou?r\w*|extract|paste|essence|buttercream|ganache|filling|strength|zest|powder|gel)\b|(?<=\b(?:flavou?r\w*|extract|paste|essence|buttercream|ganache|filling|strength)\b.*))(?! parts of)/g,
    to: "$1 %",
  },
  // "240 g buttercream at 4 in 100 vanilla paste": the flavor stands right behind it
  {
    marks: [" in 100", " per 100", " in a hundred", " in hundred", " per hundred", " in every", " in each"],
    from: /(?<![€$£.,/\d] ?)\b(\d+(?:\.\d+)?) (?:parts? )?(?:in|per) (?:every |each |a )?(?:100|hundred) (?=(?!(?:shells|macarons|macs|g|grams?|ml|pieces|boxes|people)\b)(?:[a-z]+ ){0,2}?(?:flavou?r(?:ing)?|extract|paste|essence|concentrate|zest|powder|gel|oil|salt)\b)(?!.*[€$£]|.*\b(?:euros?|dollars|pounds|cents|price|costs?)\b)/g,
    to: "$1 % ",
  },
  {
    marks: [" and at "],
    from: new RegExp(
      `^([^?%]{8,120} at ${share}),? and (at ${share}),? ((?:and |so )?(?:how much|what|how many) (?=[^?%]*\\d ?(?:g|grams|kg|oz)\\b)(?:(?!percent|per cent)[^?%]){8,120})([ ?.]*)$`,
      "g",
    ),
    to: (_said, first = "", own = "", second = "", end = "") =>
      `${first}, and ${second.trim()} ${own}${end.trim()}`,
  },
];
