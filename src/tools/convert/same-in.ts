/** "same but in oz", "how many ounces is that", "both in oz": the weights of the answer before, all of them. */
import { opening } from "../../../data/words/openers.ts";

const those =
  "(?:(?:the |all |do |show |give me |can i have |could i have |tell me |whats |what is |what are |how much is |convert |put |turn )*(?:same|again|both|each|all|everything|it all|all of it|all of them|it|that|this|those|these|them)(?: (?:again|thing|but|only|figures|weights|amounts))*(?: ,)?)";
const end = "(?: (?:please|pls|then|instead|now|too))*(?: [?])?$";

/** @param unit the units that are meant, as the mask has them */
export const sameIn = (unit: string): string[] => [
  `^${opening}${those} (?:in|into|to|as) ${unit}${end}`,
  `^${opening}how (?:many|much) ${unit} (?:is|are|would|does) (?:that|it|this|those|they|these)(?: (?:be|all|make|come to|then|each))*(?: [?])?$`,
  `^${opening}${unit} (?:please|pls|instead)(?: [?])?$`,
];
