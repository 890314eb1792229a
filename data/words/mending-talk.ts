/** How a bowl that came out too strong is spoken of, and what plain mix does to it. Words for patterns. */

const verbs =
  "fix(?:es)?|mends?|saves?|rescues?|dilutes?|corrects?|cures?|sorts?|tames?|calms?|quietens?|mellows?|softens?|mutes?|weakens?|lightens?|balances?|evens?|tones?|thins?|cuts?|stretch(?:es)?|settles?|undo(?:es)?|repairs?|brings?|gets?|takes?|pulls?|knocks?|drags?|lowers?|waters?";

const it = "(?:it|this|that|them|things|the (?:taste|flavou?r|strength|bowl|lot|mix|batch)(?:<\\S+)?)";
const down = "(?:back )?(?:down|under|in range|into (?:the )?range|in line|to normal|within|out|right)";

/** "to tame it", "gets it back down": nothing but a bowl that holds too much is spoken of so. */
export const bringsItDown = `(?:(?:tam|calm|quieten|mellow|soften|mut|weaken|dilut|ton|balanc)(?:e|es|s|ing)? ${it}|(?:bring|get|take|pull|knock|drag|put|cut|tone|water|even|calm|thin)s? ${it} ${down}|(?:take|knock)s? the edge off)`;

/** What stands behind the mix that it takes: "needed", "to even it out", "would calm that". */
export const neededFor = `(?:(?:is |are |would be |should be )?(?:needed|required|necessary)(?! (?:for|to make|to fill) \\S*<)|to (?:add|put in|stir in|mix in|go in|beat in|fold in|${verbs})|(?:that |which )?(?:would|will|could|does|it takes to|i need to|it needs to) (?:${verbs}))`;
