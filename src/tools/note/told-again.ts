/** What is told once more right behind a note: "and it was 16 min", "oven was 150 not 148", "8/10 really". */
import { leadingIn, takesBack, takingBack } from "../../../data/words/openers.ts";
import { sign } from "../lib/cue.ts";

const leads = `(?:(?:${leadingIn}|${takingBack}|also|plus|forgot|,|:) )*`;
const figure = "(?:{time}|{temperature}|{number})";
const hedges =
  "(?:(?:in|at|for|about|around|only|just|really|actually|more like|nearly|exactly|set to|in there for|set at|to) )*";
const tails =
  "(?: (?:of (?:them|those|these)|in (?:total|all)|in the oven|long|really|actually|though|too|i think|sorry|instead|then|hot|made|{step}|,|[.!]))*$";
const was =
  "(?:was|were|had|came to|came out at|is really|was really|really was|actually was|should be|should say|should have been|shouldve been|should read|ought to be)";

/** Signs that count only behind a note. */
export const toldAgain: readonly string[] = [
  // "and 16 min"; "16 min" alone may be a timer
  // "wait 5 min" tells of no bake
  `^(?!(?:wait|hang on|hold on) {time})(?:(?:and|oh|also|plus|${takingBack}|,|:) )+(?:{time}|{temperature})${tails}`,
  // "my mistake, 17": where a number isn't clear it is asked about
  `^${takesBack}{number}${tails}`,
  `^${leads}(?:it|that|they|this|there|those|(?:the |my )?(?:oven|time|heat|temp|temperature|bake|baking|rest|resting|count|{step=bake}|{step=rest})) ${was} ${hedges}${figure}${tails}`,
  `^${leads}(?:(?:i|we|they|it|them) )*(?:baked|rested|matured|made|cooled|chilled|dried|stood|aged)(?:<\\S*>)? (?:(?:them|it|mine|those|the shells|the lot) )?${hedges}${figure}${tails}`,
  // "i baked them at 155 for 15 min"
  `^${leads}(?:(?:i|we) )*baked(?:<\\S*>)? (?:(?:them|it|mine|those|the shells|the lot) )?${hedges}${figure} (?:(?:and|,) )?(?:for|at) ${hedges}${figure}${tails}`,
  // "oven 160" alone may be set now
  `^(?:(?:oh|no|sorry|actually|oops|correction|,|:) )+(?:the |my )?oven ${hedges}${figure}${tails}`,
  `^${leads}(?:should be|should say|should have been|ought to be) ${hedges}${figure}${tails}`,
  `^${leads}(?:make|change) (?:that|it|this) (?:to )?${figure}${tails}`,
  `^${leads}(?:(?:id|i would|i) (?:say|give it|call it)|more like|make (?:it|that)|its|it was|that was|say)? ?(?:an? |more like )?(?:\\S*/(?:5|10)<number,fraction>|{number} out of {number})(?: (?:really|actually|instead|then|i think|sorry))*$`,
  // "38 not 40": the second is left out before it comes here
  `^${leads}${figure}(?: (?:really|actually|sorry|i mean|i meant|instead))+$`,
];

const signs = toldAgain.map(sign);

export const isToldAgain = (mask: string): boolean => signs.some((each) => each.test(mask));

/** The numbers behind "not", which the sentence may have lost: "16 not 15". */
export const wrongNumbers = (said: string): number[] =>
  [...said.matchAll(/\bnot (?:an? )?(\d+(?:[.,]\d+)?)/gi)].map((each) => Number(each[1]?.replace(",", ".")));
