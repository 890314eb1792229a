/**
 * Turns of phrase by which a question is of another matter, whatever numbers stand in it, and what it is called in the
 * answer. Words that may be told in passing stand in `strangers.ts`; these ask.
 */
export interface OtherMatter {
  name: string;
  /** Matched against plain text: no commas needed, typos mended. */
  says: RegExp;
  /** A length of time in it sets no timer. */
  hasHours?: true;
  /** It is ours where the mask of the question holds this. */
  unless?: RegExp;
}

const asked = "(?:how many|how much|hw many|hw much|what|whats|any|the|number of|amount of)";
const broken =
  "(?:bent|broken|warped|rusty|rusted|wonky|buckled|dented|burnt|dirty|dead|greasy|stuck|jammed|cracked|scratched)";
const gear =
  "(?:baking (?:sheets?|trays?)|trays?|sheet pans?|pans?|mats?|oven(?: door| light| bulb| seal)?|mixer|whisk|fridge|freezer|scales?|thermometer|bulb|nozzles?|tap|sink|dishwasher|blender|food processor|hob|stove)(?! of\\b)";

export const otherMatters: readonly OtherMatter[] = [
  {
    name: "nutrition",
    says: new RegExp(
      `\\b(?:calories?|kcals?|kilojoules?|carbs?|carbohydrates?|nutrition(?:al)?|nutrients?|macros|glyc(?:a)?emic|saturates|(?:weight )?watchers points)\\b|\\b${asked} (?:grams? of |g of )?(?:protein|fib(?:re|er)|cholesterol|sodium|vitamins?|energy)\\b|^(?:(?:and|so|ok) )*(?:protein|fib(?:re|er)|energy|sodium) (?:in|of|per|content)\\b|\\bhow much (?:sugar|fat|salt) (?:(?:is|are) (?:there )?in (?:one|an?|each|a single|every|per)\\b(?! (?:batch|recipe|bowl|buttercream|ganache|filling|kilo|kg|cup|litre))|(?:do|does) (?:one|an?|each|a single|every) (?:[a-z]+ )?(?:mac|macs|macarons?|shell|piece) (?:have|has|contain))`,
    ),
  },
  {
    name: "sport",
    says: /\bwho (?:won|wins|is winning|was winning|scored|lost|plays|played|beat|is playing|was playing)\b|\b(?:whats|what was|what is|final|half time) (?:the )?score\b|\b(?:did|have|has|are|is) (?:\w+ ){1,3}(?:win|won|winning|lose|losing|beaten) \S*\d|\b(?:match|game|derby|cup final|fixture|kick ?off) (?:start|kick ?off|tonight|on tv|result|score)\b|\bwhat (?:time|channel) (?:is|does) the (?:match|game|race|derby|final)\b/,
  },
  {
    name: "music, film and games",
    says: /\bplay ?lists?\b|\b(?:play|sing|hum) (?:me |us |some |the )*(?:\d+ |a |an )?(?:\w+ )?(?:songs?|music|tunes?|radio|album|tracks?)\b|\b(?:songs?|films?|movies?|books?|series|podcasts?|games?) (?:ideas?|to (?:watch|listen|read|play)|recommendations?|suggestions?)\b|\b(?:recommend|suggest|name|give me|tell me|make me) (?:me |a |an |some |the |\d+ )*(?:good )?(?:songs?|films?|movies?|books?|podcasts?|jokes?|riddles?|poems?|stor(?:y|ies))\b/,
  },
  {
    name: "who that is",
    says: /^(?:(?:and|so|but|ok|hey|btw|by the way) )*who (?:is|was|are|were|invented|discovered|wrote|painted|sang|sings|directed|founded|rules|built)\b(?! (?:you|this|it|that|coming|getting|eating)\b)/,
  },
  {
    name: "kitchen gear",
    says: new RegExp(
      `\\b(?:how (?:do|can|should|would) (?:i|you|we|one)|how to|can (?:i|you|we)|could you|whats the (?:best )?way to|help me) (?:\\w+ )?(?:fix|repair|mend|unbend|straighten|flatten|clean|scrub|descale|degrease|unblock|rewire|replace|change|sharpen|unjam) (?:\\w+ ){0,3}${gear}\\b|\\b(?:fix|repair|mend|straighten|flatten|unbend) (?:the|my|a|this|that|our) (?:${broken} )?${gear}\\b|\\b${gear} (?:\\w+ ){0,4}how (?:do|can|to)(?: i| we)? (?:fix|repair|mend|change|replace|clean)\\b`,
    ),
  },
  {
    // "how long does my piping bag last before it tears"
    name: "kitchen gear",
    says: new RegExp(
      `\\bhow long (?:does|do|will|would|should|can) (?:an?|the|my|one|this|these|those|your) (?:[a-z]+ ){0,2}?(?:piping bags?|silicone mats?|spatulas?|bags?|cutters?|aprons?|batter(?:y|ies)|${gear}) (?:last|live|survive|hold up|hold out)\\b`,
    ),
  },
  {
    name: "health",
    says: /\b(?:fever|feverish|paracetamol|ibuprofen|aspirin|running a temperature|has a temperature)\b|\b(?:he|she|son|daughter|baby|toddler|child|kid|boy|girl|husband|wife|mum|mom|dad|hes|shes)(?:'?s| is| has| got| at| is at| has got)* (?:3[5-9]|4[0-2])(?:[.,]\d)?(?: (?:degrees|c|celsius))?(?: (?:and|so|now|today))* (?:what|should|do|is that|shall|worry|call|how bad)\b|^(?:(?:and|so|ok|but) )*(?:3[5-9]|4[0-2])(?:[.,]\d)?(?: (?:degrees|c))? (?:what|should|shall|do) .*\b(?:for|give|to|with|about) (?:him|her|the baby|the kid)\b/,
  },
  {
    name: "the time elsewhere",
    says: /\bwhat time is it (?:now )?in (?!(?:here|the oven|total)\b)[a-z]{4,}/,
  },
  {
    // "how many kilometres is it to the shop"
    name: "distances",
    says: /\bhow many (?:kilomet(?:re|er)s?|kms?|miles?|met(?:re|er)s?|yards|blocks|stops|steps) (?:(?:is it|are there|is|are|away|further|more|from here|still)\b(?! (?:in )?\d| an? )|(?:to|from|till) [a-z])|\bhow far (?:is it|is|are we) (?:to|from) [a-z]/,
  },
  {
    name: "plants and pets",
    says: /\b(?:water|feed|repot|prune|fertili[sz]e|plant|sow|walk|bathe|worm) (?:my |the |our |some |his |her )?(?:\d+ )?(?:\w+ )?(?:orchids?|plants?|tomato(?:es)?|roses|garden|lawn|cactus|ferns?|seedlings?|hedge|dogs?|cats?|pupp(?:y|ies)|kittens?|hamsters?|rabbits?|chickens?|hens|goldfish|horse)\b|\b(?:feed|food|kibble|water|compost|fertili[sz]er) for (?:\w+ )?(?:\d+ )?(?:\w+ )?(?:orchids?|plants?|dogs?|cats?|pupp(?:y|ies)|kittens?|hamsters?|rabbits?|chickens?|hens|goldfish|horses?)\b/,
  },
  {
    // "roses in the garden, when do i prune them"
    name: "plants and pets",
    says: /\b(?:roses?|hedges?|lawn|shrubs?|plants?|trees?|bushes|garden)\b.*\b(?:prune|repot|deadhead|mow|plant|cut back|fertili[sz]e) (?:them|it|those)\b|\bwhen (?:do|should|can) (?:i|we|you) (?:prune|repot|deadhead|mow)\b/,
  },
  {
    // "whats butter going to cost next year"
    name: "prices to come",
    says: /\b(?:going to|gonna|will|would|might) .*\b(?:cost|be worth|go up|rise|get dearer|come down)\b.*\b(?:next (?:year|month|week|season|spring|summer|autumn|winter|christmas)|in the future|in (?:a|two|three|five|ten) years?)\b/,
  },
  {
    name: "messages",
    says: /^(?:(?:please|pls|can you|could you|and|ok|now|then|will you) )*(?:text|email|message|call|ring up|phone) (?:my|her|his|our|the) (?:\w+ )?(?:sister|brother|mum|mom|dad|nan|gran|friend|neighbou?r|husband|wife|boss|customer|aunt|uncle|son|daughter|cousin|partner|caterer|client)\b/,
  },
  {
    name: "pay, tax and the law, where your local authority has the last word",
    says: /\b(?:minimum wage|(?<!% |percent |with |plus |and |incl |including |inc )vat|sales tax|income tax|(?:owe|pay) (?:any |the |some |vat )*tax|how much tax|tax (?:do|must|should) i|need (?:an? |any )?insurance)\b/,
  },
  {
    // "can my 12 year old legally work 3 hours": the number is taken out as an age
    name: "pay, tax and the law, where your local authority has the last word",
    hasHours: true,
    says: /\b(?:child|son|daughter|kids?|teen(?:ager)?s?|children|boy|girl|minors?|nephew|niece|grandson|granddaughter|old)\b.*\b(?:legal|legally|illegal|illegally|lawful|lawfully|allowed|by law|too young|old enough|permitted)\b.*|\b(?:legal|legally|illegal|lawful|allowed|by law|permitted|(?:is|are) it ok by law)\b.*\b(?:child|son|daughter|kids?|teen(?:ager)?s?|children|boy|girl|minors?|nephew|niece|grandson|granddaughter)\b/,
    unless:
      /<(?:[^>]*,)?(?:base|count=(?:macarons|shells))|(?:^| )(?:eat|eats|rum|alcohol|timers?|alarm|counter|fridge|out|warm)(?:<| |$)/,
  },
  {
    name: "plans of another kind",
    says: /\bseating (?:plan|chart|arrangements?|order)\b|\b(?:plan|organi[sz]e|arrange)(?: out)?(?: (?:me|us|the|my|our|a|an|her|his|their|for))* (?:[a-z]+ )?(?:seating|table (?:layout|plan)|guest list|honeymoon|holidays?|vacation|trip|journey|itinerary|workouts?|training|wedding|party|funeral|christening|garden|house move|budget)\b(?! (?:macarons?|macs|bake|baking|order|batch|box|boxes|cake|favou?rs))/,
    unless: /<(?:[^>]*,)?count=(?:macarons|shells|trays|boxes|batches)|<when>|<(?:[^>]*,)?step=/,
  },
  {
    name: "pay, tax and the law, where your local authority has the last word",
    hasHours: true,
    says: /\b(?:legal|legally|illegal|illegally|lawful|allowed|fined|the law|by law)\b.*\b(?:pay|paying|paid|hire|employ|an hour|per hour|wages?|work|charge)\b|\b(?:pay|paying|paid|hire|employ|an hour|per hour|wages?)\b.*\b(?:legal|legally|illegal|lawful|allowed|the law|by law)\b/,
  },
  {
    name: "that",
    // a number of nobody knows what
    says: /^(?:(?:and|so|ok|but|hm|er) )*\d[\d.,]* (?:of )?(?:what|which)(?: (?:is|was|are|were|now|goes|do|does) .*)?$/,
  },
];
