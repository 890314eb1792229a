/**
 * "how much ganache will 9 g do at 2 percent and at 2.5 %, how much does 350 g of buttercream need": the second share
 * stands ahead of the question that it is of. And "4 in 100 for pear flavour", which is a share too.
 */
import type { Phrase } from "./phrase.ts";

const share = "\\d+(?:\\.\\d+)? ?(?:%|percent|per cent)";

const mixes = new Set(["filling", "buttercream", "ganache", "batter"]);

export const shareAhead = (): readonly Phrase[] => [
  // "if 12 g is 5 % what's the bowl", "12 g is 5 percent of what": the bowl is asked for
  {
    marks: [" is ", " are ", " makes "],
    from: new RegExp(
      `^((?:(?:if|so|and|ok|when|say|the),? )*)(\\d+(?:\\.\\d+)? ?(?:g|grams?)(?: (?:of )?(?:the )?[a-z]+(?: (?:flavou?r|extract|zest|paste|powder|salt))?)?) (?:is|are|makes?|equals?|was) (${share})(?:,? (?:then )?(?:what(?:'s|s| is)|how (?:big|heavy|much) is)(?: the| my)? (bowl|base|mix|filling|buttercream|ganache|batter|total|whole)| of (?:what|which|how much)(?: (bowl|base|mix|filling|buttercream|ganache|batter))?) ?[?.]*$`,
      "g",
    ),
    to: (_said, before = "", grams = "", part = "", of = "", what = "") =>
      `${before}${grams} is ${part}, how much ${mixes.has(of || what) ? of || what : "filling"}`,
  },
  {
    marks: ["what bowl ", "which bowl ", "how big a bowl ", "what base "],
    from: /^((?:(?:so|and|ok),? )*)(?:what|which|how big a) (?:bowl|base|mix) (?:is|are) (\d+(?:\.\d+)? ?(?:g|grams?)(?: (?:of )?[a-z]+)?) ((?:\d+(?:\.\d+)?|[a-z]+) ?(?:%|percent|per cent)) of ?[?.]*$/g,
    to: "$1$2 is $3, how much filling",
  },
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
