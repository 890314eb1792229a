/** The signs of a shells question, of one that goes on from it, and of one behind another answer. */
import { cues } from "../lib/cue.ts";
import { spares } from "../lib/spares.ts";
import { comesTo } from "./want-said.ts";

/** "trays if theyre 30 mm", "how many sheets at 45", of an order or a bowl that was spoken of. */
const traysAtSize =
  "^(?:(?:and|so|ok|then|now|how many|what about|how about) )*{count=trays} (?:(?:then|now) )?(?:if|at|with|of|in|when|for) (?:(?:\\S+ ){0,4}{length}|{number})(?: (?:then|now|instead|wide|ones|shells?<count=shells>))*(?: [?])?$";

/** "exactly 84 shells, batter in grams?", "60 shells. grams of batter?": the number, and what is asked for behind it. */
const batterBehind =
  "^(?!.*(?:^| )(?:note|log|ready|due|recipe|label|save)(?: |$)).*{number} (?:[a-z]+ )?{count=(shells|macarons)}(?: (?!how)[a-z]+){0,3} (?:[,.:;-] )(?:(?:and|so|then|whats|what|is|the|how much|how many|tell me|give me|need|i|grams|weight|amount|of) |\\S*<unit=g> )*{base=batter}(?: (?:(?:weight|amount|size|total|in|as|do i need|needed|is that|for that|for them|for those|please|pls|then)|{unit=(oz|kg|lb|g)}))*(?: [?])?$";

/** Out of the oven; "for the bake sale" and "sunday's bake" are occasions. */
const baked =
  "(?!\\S+ (?:sales?|off|offs|days?|class|classes|club|stall|fair|shop|swap|along|night|party|table|morning|evening|weekend|session|contest|competition)(?: |$))(?<!(?:next|big|our|another|todays|tomorrows|weekends|mondays|tuesdays|wednesdays|thursdays|fridays|saturdays|sundays|<when>) ){step=bake}";

const whatSize =
  "(?:(?:what|which|whats) (?:(?:is|was|the|their|my|shell|a) )*(?:size|diameter|width|{unit=(?:mm|cm)})|how (?:big|wide|large|small)|how many {unit=(?:mm|cm)})";

const onlyWhites =
  "^(?!.*(?:base=(?:buttercream|ganache|filling)|ingredient=(?!egg|whites)| list))(?=.*<number.*count=macarons)";

export const shellsCues = cues(
  // "two trays of 28, batter in grams"
  [
    8,
    "^(?!.*(?:timer|min|note|{time}|{taste})).*{number} (?:full |baking )*{count=trays} (?:of|with|at|holding) {number} .. (?:{base=batter}|{count=(?:macarons|shells)})",
  ],
  [9, batterBehind],
  // "rest 30 tray 1 and 2": which trays
  [-12, "{step=(?:rest|bake|cool)} (?:\\S+ ){0,2}?{number} trays?<count=trays> {number}"],
  // "i got 71 shells out of 520 g, what size are they"
  [
    12,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*{number} {count=(?:shells|macarons)} .*(?:from|out of|with) (?:\\S+ ){0,3}?{weight} .*${whatSize}`,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*${whatSize} .*{number} {count=(?:shells|macarons)} .*(?:from|out of|with) (?:\\S+ ){0,3}?{weight}`,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*{weight} (?:\\S+ ){0,5}?(?:made|gave|got me|yielded|came to) (?:\\S+ )?{number} {count=(?:shells|macarons)} .*${whatSize}`,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*${whatSize} .*{weight} (?:\\S+ ){0,5}?(?:made|gave|got me|yielded|came to) (?:\\S+ )?{number} {count=(?:shells|macarons)}`,
  ],
  [
    12,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*${whatSize} .*{count=shells} .*{number} (?:\\S+ ){0,3}?(?:from|out of) (?:\\S+ ){0,3}?{weight}`,
    `^(?!.*(?:<length|<money|{dose}|(?:^| )(?:note|log) )).*{number} {count=macarons} .*(?:from|out of) (?:\\S+ ){0,3}?{weight} .*${whatSize}`,
  ],
  // "one shell is broken so 29"
  [
    9,
    "{number} (?:of (?:the|my) )?{count=shells} (?:\\S+ ){0,3}?(?:broken?|cracked|crumbled|smashed|ruined|burnt|burned|gone|fell)\\S* (?:\\S+ ){0,4}?(?:so|leaves|leaving|thats|makes|left with|down to|only|now|have|got|,|=) (?:\\S+ ){0,3}?{number}(?: (?:{count=shells}|left|now|shells|then))*(?: [.,;])?(?: how many {count=macarons}.*)?(?: [?])?$",
  ],
  // "say i pipe them an inch and a half, whats a tray hold"
  [
    9,
    "{length} .. (?:what|whats|how much|how many) (?:does |will |can |would |do )?(?:an?|one|the|my|each) {count=trays} (?:hold|holds|take|takes|fit|fits)(?: [?])?$",
    "(?:what|whats|how much|how many) (?:does |will |can |would |do )?(?:an?|one|the|my|each) {count=trays} (?:hold|holds|take|takes|fit|fits) (?:at|of|in|if) .. {length}",
  ],
  // "i have 600 g shell batter", and no more: what it makes
  [
    3,
    "^(?:(?:so|ok|okay|hi|hey|well) )*(?:(?:i|we) (?:now )?(?:have|got|have got)|ive got|weve got) (?:about |around |only |just )*{weight} (?:of )?(?:the |my )?{base=batter}(?: (?:now|here|left|in the bowl|ready))*$",
  ],
  // told of trays that are on their way: what comes next is asked
  [
    -12,
    "{number} {count=trays} .. (?:are|is|now) (?:resting|drying|cooling|baking|baked|piped|out|in the oven|in the fridge|{step}) .. what (?:now|next|do i do now|comes next|happens now)",
  ],
  [-8, "(?:can|will|does|would|could|if) (?:my|the|our) (?:\\S+ )?oven .. {count=trays}"],
  // "60 macarons, how many egg whites do i need to buy": of the shells, and no shopping list
  [
    14,
    `${onlyWhites}.*(?:how|hw) many (?:\\S+ )?{ingredient=(egg|whites)} .. (?:buy|purchase|get|order|pick up)`,
    `${onlyWhites}(?:.* )?{ingredient=(egg|whites)} to (?:buy|purchase|order|get)`,
    `${onlyWhites}.*(?:buy|purchase|get|order) (?:\\S+ )?{ingredient=(egg|whites)} .. (?:how|hw) many`,
  ],
  [
    12,
    "{weight} (?:of )?(?:the |my )?{base=batter} .. what (?:do|will|would|can) (?:i|we) get (?:out of|from)",
    "(?:i have|ive got|got|with) {weight} (?:of )?(?:the |my )?{base=batter} (?:, )?(?:how many|what does (?:it|that) make)",
  ],
  [
    10,
    "(?:can|could|will|would) (?:i|we) (?:make|get|do|bake) {number} {count=macarons} (?:with|from|out of) (?:only |just |my )?{number} (?:[a-z]+ )?{ingredient=(egg|whites)}",
  ],
  [
    10,
    "(?:how (?:much|heavy)|what) (?:do|does|will|would) (?:\\S+ ){0,3}{count=(macarons|boxes)}(?: of)?(?: {number})? weigh",
    "net weight (?:of|for) (?:one|an?|each|{number}) (?:filled |finished )?{count=macarons}",
    "weight of (?:one|an?|each) (?:filled |finished )?{count=macarons}",
  ],
  // an egg's own weight, and how many of them for so much white
  [
    9,
    "{ingredient=egg} (?:are |of |at |weigh )?{weight}(?: each| apiece| a piece| whole)? .. how many .. {weight} (?:of )?{ingredient=whites}",
  ],
  [8, "^(?:(?:and|so|ok) )*(?:thats|that is|is that) how many {ingredient=(whites|egg)}(?: [?])?$"],
  [
    8,
    "^(?:(?:and|so|ok|then|now) )*{count=trays} (?:needed )?(?:for|with|from|out of) (?:(?:the|my|those|these|all|just|only) )*(?:{number}|{weight}) (?:of )?(?:the )?(?:{ingredient=(whites|egg)}|{base=batter})",
  ],
  [
    8,
    "^(?:(?:and|so|ok|how many|what about|how about) )*(?:{length} )?{count=(macarons|shells|trays)} (?:from|out of|with|for) the (?:small|smaller|little|big|bigger|large|larger)(?: (?:one|batch|lot|recipe)| {count=(bowls|batches)}| {base=batter})?(?: [?])?$",
  ],
  // half the bowl is another bowl, whose size is asked next
  [-3, "^(?:(?:and|so|ok|now|or|just|make) )*{fraction} as much {base=batter}(?: [?])?$"],
  [-9, "topping"],
  [
    9,
    "how many {ingredient=(egg|whites)} (?:am i|do i|will i|would i|should i) (?:have to |need to )?(?:crack|cracking|break|separate)\\S* .. (?:those|that|the|these|it)",
  ],
  [
    10,
    "how many {ingredient=(egg|whites)} (?:is|are|in|make|makes|gives?|do i need for) {weight}(?: of (?:them|it|whites))?(?: [?])?$",
  ],
  [-12, "how many {count=boxes} .. (?:profit|margin|earn|break even)", "{number} divided by {number}"],
  [
    9,
    "how many {count=boxes} .. {number}",
    "^{count=boxes} of {number} , (?:i |we )?(?:have |got |made )+{number} {count=macarons}",
    "{number} .. how many {count=boxes}",
    "how many {count=boxes} (?:is|are|do|does|will|would) (?:that|it|they|i|them|those)",
  ],
  [
    9,
    "(?:what|whats|what does|how many) (?:does )?(?:the |my |a |one )?{count=trays} (?:hold|take|fit|has|have)s? (?:if|of|with|at|when) .. {length}",
  ],
  [
    7,
    "(?:how|hw) many .. {count=(macarons|shells|trays)} .. {weight} .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)}",
    "{weight} .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)} .. (?:how|hw) many .. {count=(macarons|shells|trays)}",
  ],
  [
    5,
    "{count=(macarons|shells)} (?:from|out of|in|with) (?:a |my |the )?{weight} (?:of )?(?:the |my )?{base=batter}",
  ],
  [
    5,
    "^(?:(?:and|so|ok) )*how many {ingredient=(egg|whites)} (?:is|are|does|do|will|would) (?:that|it|this)",
  ],
  [5, "^(?:(?:and|n|so|ok) )*{count=macarons} (?:from|out of) (?:it|that|this)(?: [?])?$"],
  [4, "(?:how|hw) many {length} {count=(macarons|shells)} (?:is|are|s|does|will|would|do|from|out)"],
  [
    6,
    "{count=shells} .. {number} (?:\\S+ ){0,2}(?:{symptom}|broken?|ruined|bad|lost|burnt) .. (?:left|how many|{count=macarons})",
  ],
  [
    -6,
    "{base=batter} (?:for|in|into) {number} {count=bowls}",
    "why",
    "(?:not|no|none|zero) .. (?:feet|feets|frills?|skirts?)\\b",
    "(?:at once|at a time|at the same time|in one go)",
  ],
  [-4, "i (?:use|have|got|bake on) (?:an? )?{count=trays}"],
  // color that is in already is none that is asked for
  [
    9,
    "{count=bowls} .. {weight} .. {length} {count=shells} .. (?:how|hw) many",
    "{weight} .. {dose=color} (?:mixed |stirred |already )?in .. (?:how|hw) many",
  ],
  [
    8,
    "(?:one|a|per|each|single)\\S* {count=shells} .. (?:holds?|takes?|gets?|needs?|weighs?|uses?) (?:what|how) .. {base=batter}",
  ],
  [
    4,
    "{number} .. {count=(macarons|shells)} (?:out of|from) .. {weight} .. {base=batter}",
    "how (?:many|much) .. {ingredient=(whites|egg)} .. crack",
    "(?:whites|\\S*<ingredient=(?:whites|egg)\\S*) to crack",
    "{ingredient=egg} to crack",
  ],
  [
    4,
    "(?:how|hw) (?:many|much) .. {count=(macarons|shells)} .. {weight} .. {base=batter}",
    "{weight} .. {base=batter} .. (?:how|hw) many .. {count=(macarons|shells|trays)}",
    "{base=batter} (?:do i need |to make |needed )?(?:for|in|per) .. {number} .. {count=(macarons|shells|trays)}",
    "(?:how|hw) much (?:more )?{base=batter}",
    "(?:how|hw) many (?:more )?{ingredient=(egg|whites)} .. {number} .. {count=(macarons|shells)}",
    "(?:how|hw) many .. {count=trays}",
    // "60 for saturday, what's the batter for the lot?", "twelve boxes of four. shell count with spares"
    "{number} {count=macarons} .. (?:what|whats|what is) (?:the |my )?(?:total )?(?:{base=batter}|{count=(shells|trays)})",
    "{number} .. {count=(macarons|boxes)} .. (?:total |number of ){count=shells}",
    "{number} {count=macarons} .. [,.:;] (?:and )?(?:the |total )?(?:{base=batter}|{count=(shells|trays)})(?: (?:please|pls|needed|for (?:them|all|it|the lot|both)))*(?: [?])?$",
    "{number} .. {count=(macarons|boxes)} .. {count=shells} (?:count|total|number)",
    "(?:total |number of ){count=shells} .. {number} .. {count=(macarons|boxes)}",
    "{count=shells} .. (?:fit|fits|go|on|get|per) .. {count=trays}",
    "{length} .. {count=shells} .. {count=trays}",
    "{count=trays} .. {number} .. {count=(macarons|shells)}",
    "(?:how|hw) (?:many|much) .. {count=shells}",
    "{number} {count=macarons} .. (?:how|hw) many .. {count=shells}",
    "{count=shells} .. weigh .. {step=bake}",
    "{step=bake} .. weigh",
    "{number} .. {ingredient=(egg|whites)} .. (?:how|hw) many .. {count=(macarons|shells)}",
    "{weight} .. {ingredient=whites} .. (?:how|hw) many .. {count=(macarons|shells)}",
    "{weight} .. {ingredient=whites} .. (?:how|hw) many .. {ingredient=egg}",
    "(?:how|hw) many .. {ingredient=egg} .. {weight} .. {ingredient=whites}",
    "{ingredient=egg} to crack",
    "(?:how|hw) many {count=macarons} .. {number} .. {ingredient=(whites|egg)}",
    `{weight} .. {base=batter} .. ${baked}`,
    "{count=shells} .. {weight} .. {base=batter} .. weigh",
    "{base=batter} amounts? for {number}",
    "^(?:and )*{ingredient=(whites|egg)} for {number} .. {count=(macarons|shells)}",
    "crack .. {number} .. {count=macarons}",
    "{count=(macarons|shells)} .. {weight} .. {ingredient=whites}",
  ],
  [
    3.5,
    "{number} .. {count=(macarons|shells)} .. (?:how|hw) much .. {base=batter}",
    "{base=batter} .. {number} .. {count=(macarons|shells)}",
    "{weight} .. {base=batter} .. {count=(macarons|shells)}",
    "^(?:and |so |ok |then )*(?:how|hw) many {ingredient=(egg|whites)}(?: do i need| will i need| to crack| then)?(?: [?])?$",
    "^(?:and |so |ok )*(?:that|it|this) (?:gives|makes|yields) (?:me )?how many(?: [?])?$",
    "(?:how|hw) many {count=macarons} .. (?:get|make|give|yield|will|do|can|from|out)",
    "{length} .. {number} .. {count=macarons}",
    "crack .. {count=macarons}",
    "crack<\\S+ .. {count=macarons}",
    "{base=batter} .. (?:one|each|a|per|single) .. {count=shells}",
    "{ingredient=egg} .. {number} .. {count=macarons}",
    "{number} .. {count=macarons} .. {ingredient=egg}",
    "{weight} .. (?:yield|make|give) .. {count=(macarons|shells)}",
    "{number} .. {count=trays} .. {count=shells}",
    "what .. {count=macarons} .. {weight} .. {base=batter}",
  ],
  [
    3,
    "{count=trays} (?:for|do|does|will|would|needed|need|now|then|\\?|$)",
    "(?:what|which|about|many|and|so) (?:\\S+ )?{count=trays}",
    "{base=batter} for {number}",
    "{weight} {base=batter} .. (?:how|hw) many",
    "{weight} (?:of )?{base=batter} (?:comes?|works?|bakes?|boils?) (?:out |down )?(?:to|at) (?:how much|what)",
    "{count=shells} .. {number} .. {count=macarons}",
    "{count=macarons} .. {length}",
    "baked weight",
  ],
  [2, "{count=trays}", "{count=shells}", "{base=batter}", "{length}", "{number} .. {count=macarons}"],
  [1, "{count=macarons}"],
  [
    -4,
    "{dose}",
    "(?:note|log) ",
    "timer",
    "{base=(filling|buttercream|ganache)}",
    "split {weight}",
    "divide",
    "{symptom}",
    "how long",
    "label",
    "save",
    "remember",
    "(?:always|usually|from now on)",
    "my {count=(trays|shells)}",
    "my mat",
    "buy",
    "{money}",
    "(?:ready|due|by|want|wanted|needed|need) .. {when}",
    "{when} .. when",
    "{color} .. {color}",
    "holds?",
    "fits? \\S+$",
    "{fraction} .. {color}",
  ],
  [-2, "recipe"],
  [
    -3,
    "what (?:do|should) i (?:weigh|measure)",
    "weigh out",
    "{ingredient=(almond_flour|powdered_sugar|granulated_sugar)}",
    "{weight} .. {color}",
    "{unit}",
    "forget",
    "start",
    "{temperature}",
    "(?:today|yesterday|last)<when>",
    "when ",
  ],
);

export const shellsGoesOn = cues([
  12,
  // "i dropped some, 600 g left in the bowl"
  "{weight} (?:are |is )?left(?: in (?:the |my )?{count=bowls}| in it| over)?(?: now)?(?: [?])?$",
  spares,
  // "and 12s", of boxes
  "^(?:(?:and|or|what about|how about) )*(?:boxes of |in )?\\d+_?s<time>(?: [?])?$",
  "^(?:(?:and|or|what about|how about|in) )*{count=boxes} of {number}(?: [?])?$",
  comesTo,
  traysAtSize,
]);

export const shellsAfter = {
  // "whats that in macs", of the recipe that was scaled
  scale: cues([14, comesTo, traysAtSize]),
  day: cues([
    14,
    "^(?:(?:and|so|ok|how much|weight of|the) )*{base=batter} (?:for (?:it|that|them|those|this|(?:the|those|these|all) {number})|(?:do i need|is that|is it))(?: then)?(?: [?])?$",
    "how many {count=trays} (?:is|are|for|will) (?:that|it|the |those |all )*{number}?(?: [?])?$",
  ]),
};
