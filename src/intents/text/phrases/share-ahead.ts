/**
 * "how much ganache will 9 g do at 2 percent and at 2.5 %, how much does 350 g of buttercream need": the second share
 * stands ahead of the question that it is of.
 */
import type { Phrase } from "./phrase.ts";

const share = "\\d+(?:\\.\\d+)? ?(?:%|percent|per cent)";

export const shareAhead: readonly Phrase[] = [
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
