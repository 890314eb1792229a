/**
 * "3 hours on the table, still ok?", "they sat 3 hours on the buffet", "3 h out the fridge": a length of time somewhere
 * warm is over, and no timer to be set. A kitchen's own waiting (resting, cooling, soft butter) is left to others.
 */

/** What asks for a timer, or is of something else than finished macarons. */
const notSo =
  "(?!.*(?:(?:^| )(?:timers?|alarms?|remind|ring|rings|set|start|ping|buzz|wake|note|log|wrote|let|bake|baking|dry|drying|dries|skin|cool|(?<!no |without )cooling|cooled|chill|soften|softening|thaw|thawing|oven|curd|syrup|tray|trays|next|usually|always|how|what|before|until|till|wait|another|more|longer|preheat\\S*)(?:<| |$)|<(?:[^>]*,)?(?:step|ingredient|base|dose|chocolate|count=(?:shells|trays))=?|<weight|<percent))";

const place =
  "(?:table\\S*|counter\\S*|worktop|buffet|sideboard|side|desk|bench|stall|porch|patio|terrace|balcony|garden|lawn|sun|sunshine|heat|car|van|boot|trunk|bag|handbag|rucksack|backpack|office|kitchen|tent|marquee|market|picnic|party|wedding|church|hall|window ?sill|trolley|display|no cooling|room temp\\S*|room temperature|warm\\S*)";
const where = `(?:out(?:side)?(?: of)?(?: the)?(?: (?:fridge|refrigerator|cold|cool box|cooler))?|unrefrigerated|unchilled|(?:out )?(?:on|in|at|by|under) (?:the |a |my |our |her |his |that |this )?(?:\\S+ )?${place}|at room temp\\S*|room temp\\S*)`;
const judged =
  "(?:ok|okay|safe|fine|alright|all right|good|bad|still|too long|edible|eat|sell|serve|bin|toss|throw|risky|worry|worried)";
const lay =
  "(?:sat|stood|been|left|were|was|lay|laid|stayed|forgot|forgotten|standing|sitting|lying|spent|had)";
const filled = "(?:(?:the|my|those|these|all|some|\\S*<number>|filled|they|it|macarons) )*";

export const spellCues: readonly string[] = [
  // judged
  `^${notSo}.*{time} (?:\\S+ )*?${where} .. ${judged}`,
  `^${notSo}.*${where} (?:for )?(?:about |around )?{time} .. ${judged}`,
  `^${notSo}(?:(?:and|so|ok|but) )*(?:is|are|was|were) (?:\\S+ ){0,2}?{time} .. ${judged} .. ${where}`,
  // told
  `^${notSo}.*${lay} (?:\\S+ ){0,3}?{time} (?:\\S+ )*?${where}`,
  `^${notSo}.*${lay} (?:\\S+ ){0,2}?${where} (?:\\S+ ){0,3}?{time}`,
  // "out since 7, now 9:15"
  `^${notSo}(?:(?:and|they|these|were|have|been|so|ok|the|boxes|macarons) )*${where} since (?:about |around )?(?:{when}|{number})`,
  // "4 hours on the counter", "macarons on the table 3h w ice pack"
  `^${notSo}(?:(?:and|so|ok|but|its|now|about|around|like|for|hm|oops) )*{time} (?:long )?${where}(?: (?:now|already|so far|today|with|w|no|without|and|ice|pack|packs|cool|cooling|[?.,]))*$`,
  `^${notSo}${filled}(?:\\S*<[^>]*count=(?:macarons|boxes)\\S* )?${where} (?:for )?(?:about |around )?{time}(?: (?:now|already|so far|today|with|w|no|without|and|an|ice|pack|packs|cool|cooling|[?.,]))*$`,
];
