/**
 * "3 hours on the table, still ok?", "they sat 3 hours on the buffet", "3 h out the fridge": macarons were somewhere warm
 * so long, and no timer is to be set. Nothing else may be spoken of: a baker in her kitchen, butter that softens and
 * shells that rest are no macarons out of the fridge, so every word around the time and the place is one of these.
 */
import { warmPlaces } from "../../../data/words/warm-places.ts";

/** Who was there is said of them, and never "i was 3 hours at the market". */
export const notHerself =
  "(?!(?:.* )?(?:i|we|ive|weve|im|she|he) (?:(?:have|had|just|only|already) )*(?:was|were|been|spent|stood|sat|stayed|waited|worked)(?: |$))(?!(?:.* )?(?:i|we) had (?!them |these |those |it |\\S*<[^>]*count=))";

const where = `(?:out(?:side)?(?: of)?(?: the)?(?: (?:fridge|refrigerator|cold|cool box|cooler))?|unrefrigerated|unchilled|(?:out )?(?:on|in|at|by|under) (?:the |a |my |our |her |his |that |this )?(?:\\S+ )?(?:${warmPlaces})|(?:at )?room temp\\S*)`;

const talk =
  "and|so|oh|no|hm|oops|but|ok|sorry|well|though|tho|however|anyway|help|damn|hi|all|today|yesterday|this|morning|last|night|just|think|,|[.?!]|{when}|{number}";
const things =
  "they|them|it|these|those|ones|mine|my|the|our|some|a|an|of|filled|finished|boxed|leftover|batch\\S*|box|boxes|macarons|macs|\\S*<[^>]*count=(?:macarons|boxes|batches)\\S*|{taste}|{color}|left_over\\S*";
const lay =
  "i|we|ive|weve|is|are|was|were|be|been|being|have|has|had|would|left|forgot|forgotten|kept|sat|stood|stayed|lay|lying|sitting|standing|out|only|about|around|nearly|like|for|since|after|over|already|now|up|if|can|could|may|might";
const asked =
  "to|eat|sell|serve|give|ok|okay|safe|fine|alright|right|good|bad|still|too|long|edible|risky|worry|worried|bin|toss|throw|away|that|you|do|does|or|not|should|will|then|with|w|without|no|an|ice|pack|packs|cool|box|cooling|in|at|on|sun|heat|warm|hot|room|day|weather|so far|far|there|people|guests|kids|{temperature}|{time}";

/** Where they went afterwards, which undoes nothing. */
const afterwards =
  "back|into|put|went|go|goes|going|pop|popped|return|returned|fridge|refrigerator|freezer|freeze|frozen|cold|again|overnight|later|before|tomorrow|keep|how|many|days|week";

const ahead = `(?:(?:${talk}|${things}|${lay}|is that|are they|is it) )*`;
const behind = `(?: (?:${talk}|${things}|${lay}|${asked}|${afterwards}))*$`;

export const spellCues: readonly string[] = [
  `^${notHerself}${ahead}{time} (?:(?:long|now|${lay}|ok|okay|safe|fine|alright) ){0,3}${where}${behind}`,
  `^${notHerself}${ahead}${where} (?:(?:${lay}|,) ){0,3}{time}${behind}`,
  // "out since 7, now 9:15"
  `^${notHerself}${ahead}${where} since (?:(?:about|around) )?(?:{when}|{number})${behind}`,
];
