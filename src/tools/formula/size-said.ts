/** A weight beside a recipe: a line of it put right, or what there is of one ingredient. */
import { opening } from "../../../data/words/openers.ts";
import type { Reading } from "../contract/index.ts";

const amount = "(?:only |just )?(?:{weight}|{number})";

/** "change the butter to 200 g", "make the butter 200", "no, the butter is 200 g": of the recipe just spoken of. */
export const rightedLine = [
  `^${opening}(?:(?:please|can you|could you) )*(?:change|make|set|put|correct|fix|update|amend) (?:the |its |that )?{ingredient} (?:(?:up|down|to|at|be|from {weight} to) )*${amount}(?: (?:please|pls|instead|then|in it|in that|there))*(?: [.!])*$`,
  `^${opening}(?:the |its ){ingredient} (?:is|was|should be|should have been|has to be|must be|ought to be) ${amount}(?: (?:not {weight}|really|actually|please))*(?: [.!])*$`,
];

const rights =
  /(?:^| )(?:change|make|set|put|correct|fix|update|amend) (?:the |its |that )?\S*<[^>]*ingredient=|(?:^| )(?:the |its )\S*<[^>]*ingredient=\S* (?:is|was|should|has|must|ought) /;

export const putsLineRight = ({ mask }: Reading): boolean => rights.test(mask);

/** The weights are asked for, or so much is all there is. */
const asksSize =
  /(?:^| )(?:amts?|amounts?|quantit\S*|weights|grams of everything|how much|what|whats)(?: |$)|(?:^| )(?:but|with|only|just|have|ive|got|theres|there is) (?:(?:only|just|i|we|have|got|ive|theres|about) )*\S*<(?:weight|number)>.*(?:left|here|to hand|in the house|at home)(?: |$)|(?:^| )(?:i|we|ive|weve) (?:(?:only|just|have|got) )+\S*<(?:weight|number)>|(?:^| )(?:theres|there is|but) (?:only|just) \S*<(?:weight|number)>/;
const orders =
  /(?:^| )(?:change|correct|fix|set|put|update|amend|from now on|should|takes?|uses?|needs?|has|gets|save|remember|keep)(?: |$)|(?:^| )make (?:the|its|it) /;

/** "mint smbc but only 200 g butter, amounts": its weights for so much, and no other recipe. */
export const asksForSize = ({ mask }: Reading): boolean => asksSize.test(mask) && !orders.test(mask);
