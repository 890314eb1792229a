/** "36 now. batter again": how many there are now, and what of an earlier answer is asked for so many. */
import type { Ear, Part } from "./part.ts";

/** One number of macarons, or one weight, and that it is so now. */
const tells =
  /^(?:(?:and|so|ok|oh|ugh|sorry|no|wait|well|right|now|they|theyve|theyre|they_want|she|shes|he|hes|we|weve|were|i|ive|its|it|is|are|has|have|just|rang|called|back|phone|phoned|wants?|needs?|got|gone|went|up|down|to|at|make|make it|made|be|will|going|only|actually|said|says|changed|that|of|for|order|the|customer|bride|client|,) )*\S*<(?:number|weight)>(?: \S*<[^>]*count=(?:macarons|shells)[^>]*>)?(?: (?:now|instead|of them|then|in all|please|after all|macs|in the end|only|altogether|in total|for her|for him))*$/;
const again =
  /^(?:(?:and|so|ok|then|now|can|could|you|i|give|tell|show|me|have|what|whats|was|is|the|that|my) )*(?:\S+ ){1,5}(?:again|once more|one more time)(?: (?:please|pls|then|now|for me))*(?: \?)?$/;

/** Whether the second is asked for what the first says. */
export const asksAnew = (before: Part, part: Part, ear: Ear): boolean =>
  again.test(ear.mask(part)) &&
  !/<(?:number|weight|time|percent)/.test(ear.mask(part)) &&
  tells.test(ear.mask(before));
