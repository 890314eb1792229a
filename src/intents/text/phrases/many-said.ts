/** How many somebody wants, in all the ways that a count of macarons is told: "24", "twenty four", "3 dozen", "half a dozen". */
import { smallNumbers, tens } from "../../../../data/words/numbers.ts";
import { countSaid } from "./spelt.ts";

const small = Object.keys(smallNumbers).join("|");
const ten = Object.keys(tens).join("|");
const number = `(?:\\d{1,3}|(?:${ten})(?:[ -](?:${small}))?|${small})`;

/** "3 dozen", "a couple of dozen", "two and a half dozen", "a dozen and a half". */
export const dozens = `(?:(?:half an?|an?|an? couple(?: of)?|${number}(?: and a half| 1/2)?) dozens?(?: and a half)?)`;
/** The longest first: "3 dozen" is no 3. */
export const many = `(?:${dozens}|${number})`;

/** What is said so counts; 0 for what is no number. */
export function manySaid(said: string): number {
  const [ahead = "", behind = ""] = said.split(/ dozens?/);
  if (ahead !== said) return 12 * (counted(ahead) + (behind === "" ? 0 : 0.5));
  return counted(said);
}

function counted(said: string): number {
  const half = /^(.*?)(?: and a half| 1\/2)$/.exec(said)?.[1];
  if (half !== undefined) return counted(half) + 0.5;
  const [first = "", second = ""] = said.split(/[ -]/);
  const whole = tens[first];
  return whole === undefined ? countSaid(said) : whole + (second === "" ? 0 : countSaid(second));
}

/** What such an order is told for: how much is to be made, or when to begin. */
export const isSized =
  /\b(?:batter|filling|fillings|shells?|whites|trays|butter ?cream|ganache|smbc|how many|total|altogether|in all|work (?:it |that )?back|when (?:do|should|must) i (?:start|begin)|start when|ready|picked up|picking up|pick up|pickup|plan)\b/;
/** Sold, bought or written down: no order to be made. */
export const isToldOf =
  /\b(?:price|prices|cost|costs|charge|sell|sells|sold|selling|margin|markup|paid|pay|earn|notes?|log|label|bought|buy|timers?|made|baked|filled|froze|frozen|eggs?|cracked|how long|how many (?:days|weeks|hours))\b|[€£$]|\bboxes (?:does|do|of \d+ (?:for|from|can)\b)/;
/** Weighed, or counted as what they are. */
export const isWeighed = /\d ?(?:g|gr|grams?|kg|kilos?|oz|ounces?|lbs?|pounds?|ml|%|percent)\b/;
export const isNamed = /\b(?:macarons?|macaroons?|macs)\b/;
