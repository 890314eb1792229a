/** "icing sugr still got?", "got any butter", "any butter still": asked one-handed how much there is of something. */
import { sign } from "../lib/cue.ts";

const lead = "^(?:(?:and|so|ok|hey|now|pls|please|hm|of|the|my|our) )*";
const person = "(?:(?:do|have) )?(?:i|we|ive|weve)";
const end = "(?: (?:left|still|there|in|at home|in stock|in the \\S+|now|then|pls|please))*(?: [?])?$";
const whole = `(?:${person} )?`;

export const stillHave: readonly string[] = [
  // the thing first; "still" alone may say anything, so it asks by its sign
  `${lead}{ingredient} ${whole}(?:still (?:got|have|there|in|in stock|any|around)|(?:got|have|there|in stock) still|got any|any (?:got|left|still|in)|(?:got|have) (?:i|we) (?:any|some|still))${end}`,
  `${lead}{ingredient} (?:still|any) [?]$`,
  `${lead}${whole}(?:still )?(?:got|have|has) (?:still )?any (?:more )?(?:of )?(?:(?:the|my|our) )?{ingredient}${end}`,
  `${lead}any (?:(?:more|of|the|my) )*{ingredient} (?:still|got|in|there|around|at home|in stock)${end}`,
  `${lead}${whole}still (?:got|have) (?:(?:some|the|my|enough) )*{ingredient} [?]$`,
];

/** "left now?", right behind what was used. */
export const leftNow = "^(?:(?:and|so|ok) )*(?:left|remaining)(?: (?:now|then|still|over|of it))*(?: [?])?$";

const signs = [...stillHave, leftNow].map(sign);

/** Whether a sentence asks so. */
export const asksStill = (mask: string): boolean => signs.some((each) => each.test(mask));
