/** The signs of a scale question, of one that goes on from it, and of one behind another answer. */
import { settingAside, settling, short } from "../../../data/words/amount-talk.ts";
import { opening, takesBack } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";
import { spares } from "../lib/spares.ts";

const shellIngredient = "{ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar|sugar|egg)}";

/** "what goes on the scale", "break it down for me", "list the weights". */
const asksParts =
  "(?:(?:what|whats|which) (?:all )?(?:goes|go|do i put|should i put|shall i put|to put) (?:on|in|into) (?:the |my )?(?:scales?|{count=bowls}|bowl|it|there|that)|(?:what|how much) (?:do|should|must|shall|would|can|to) (?:i |we )?(?:weigh|measure|scale)(?: (?:out|up))?|(?:what|whats|list|give me|tell me|show me) (?:(?:are|is|me|all|the|out) )*(?:amounts?|weights?|ingredients|quantities|breakdown|recipe)|break (?:it|that|this) down)";

/** "list everything in grams", "each ingredient by weight, please": nothing else behind the size. */
const eachListed =
  "(?:(?:and|so|then|please|now|can you|could you|just) )*(?:(?:list|give|show|tell|write|break|spell|i need|i want|what are|whats|what is) (?:(?:me|us|it|them|out|down) )*)?(?:(?:the|all|of|every|each|their|its|full|whole|single) )*(?:ingredients?|weights|quantities|everything|breakdown|recipe|ingredient list)(?: (?:and|with|in|by|as|the|their|its|of|for|each|every|all|it|them|one|weights?|amounts?|{unit=(?:g|oz)}))*(?: (?:,|please|pls))*(?: [?.!])?";

export const scaleCues = cues(
  // "mine is 110 g whites, 140 g almond flour, ... today theres just 88 g whites"
  [
    9,
    "^(?:(?:so|ok|and) )*(?:mine|ours|my own|(?:my|our|the) (?:\\S+ ){1,3}?)(?: ?)(?:is|has|goes|takes|are|uses|says) {weight} {ingredient} .. {weight} {ingredient} .. {weight} {ingredient} .. (?:today|only|just|left|have|got|theres|there is|ive) .. {weight} {ingredient}",
  ],
  // "shells for 42 macarons, what goes on the scale"
  [
    9,
    `^(?!.*(?:{dose}|{taste}|{symptom}|split|divide|save|note|log|costs?|trays?|{base=(?:buttercream|ganache|filling)}) )(?:.* )?{count=shells} .. {number} {count=macarons} .. ${asksParts}`,
  ],
  // "ingredient list for fifty macarons, the shells only": to be weighed, and no label
  [
    14,
    "^(?!.*(?:label|allergen|allergy|contains?|declare|sell|pack) ).*(?:(?:ingredients? list|list of (?:the )?ingredients) (?:for|of|to make)|what goes (?:in|into)) (?=.*{number} {count=macarons}).*(?:{count=shells} (?:only|alone)|(?:only|just) (?:the )?{count=shells}|{count=shells} (?:of|for) {number} {count=macarons})",
  ],
  // "i need 60 shells, ingredients in grams", "batter for 28 macarons, list everything": part by part
  [
    16,
    `^(?!.*(?:{dose}|{taste}|{symptom}|{weight}|{money}|split|divide|save|note|log|costs?|buy|label|pantry|shelf|{base=(?:buttercream|ganache|filling)}) )(?=.*(?:{count=shells}|{base=batter}))(?:\\S+ ){0,4}?{number} (?:\\S+ ){0,5}?[,.;:-] ${eachListed}$`,
  ],
  // "300 g white chocolate, 100 g cream, scale it to 600 g in all": a list of her own, whatever it makes
  [
    9,
    "^(?!.*(?:{dose}|{taste}|save|note|log|costs?) )(?:(?:my|the|ok|so|and|i|have|ive|ganache|is) )*{weight} (?:of )?{ingredient} .*{weight} (?:of )?{ingredient}(?: [,.;])?(?: (?:and|then|now|please|can you|could you))* (?:re)?scale (?:it|that|this|them|everything|the lot)(?: (?:up|down|out))? to {weight}(?: (?:in all|in total|altogether|total|all told|please|pls|of it))*(?: [?.!])*$",
  ],
  // "batter needed 575 g, weights please": the base before its weight
  [
    9,
    "^(?!.*(?:how many|{dose}|{taste}|{symptom}|{count=(?:macarons|shells|bowls)}|split|divide|save|note|log|costs?|baked|left|piped) ).*{base=batter} (?:\\S+ ){0,6}?{weight} (?:(?:of it|in all|in total|total|altogether|,|:|-|and|so) )*(?:(?:the|all|its|give me|show me|tell me|list|please|in|my|are|which|what|with|need|want) )*(?:weights|quantities|amounts|ingredients|proportions|grams of each|how much of each|what goes in|breakdown|weigh ?out|what do i weigh)(?: .*)?$",
  ],
  // "batter for shells, 550 g of it, what do i put in"
  [
    11,
    "^(?!.*(?:{dose}|{taste}|{symptom}|split|divide|{count=macarons}) )(?:\\S+ ){0,3}?{base=batter}(?: for (?:the |my |some )?{count=shells})?(?: (?:,|:|-|of|about|at|needed|is))* {weight} (?:(?:of it|in all|in total|total|altogether|,|:|-|and|so) )*what (?:do|should|must|shall|would|have) i (?:have to )?(?:put|weigh|measure|mix|throw|tip|use)(?: (?:in|out|up|into it|together|for it|in it|in the bowl))*(?: [?])?$",
  ],
  // "i need 600 g shell batter", and no more: what to weigh out for it
  [
    6,
    `^${opening}(?:(?:i|we|id|ill|well) )?(?:(?:just|only|also|still|will|would|like|have|got|want|need|going) )*(?:need|want|make|like|mix)(?: (?:to|make|mix|do|up|about|around|me|exactly))* {weight} (?:of )?(?:the |my )?{base=batter}(?: for (?:the |my )?{count=shells})?(?: (?:please|pls|now|then|{when}|made|made up|this time))*$`,
  ],
  // "900 g of shell batter for the bake sale, what goes on the scale"
  [
    14,
    `^(?!.*(?:how many|{dose}|{taste}|{symptom}|{count=macarons}|split|divide|save|note|log|costs?|baked) ).*{weight} (?:of )?(?:the |my )?{base=batter} .. ${asksParts}(?: (?:for me|please|pls|then|now|of it|exactly))*(?: [?])?$`,
  ],
  [
    7,
    "how much of (?:everything|each thing|each ingredient|all of it|all the ingredients) .. {count=shells}",
  ],
  [
    6,
    "{weight} (?:of )?{base=batter} .. (?:breakdown|break (?:it|that) down|each ingredient|how much of each|what goes in(?:to)? it)",
  ],
  [9, "{number} {count=(shells|macarons)} .. what (?:do|should|must) i weigh"],
  [
    -12,
    "{ingredient} instead of {ingredient}",
    "instead of (?:the |my )?{ingredient}",
    "(?:overwhipped|overbeat|overmixed|underwhipped|dropped|forgot|forgotten|can i blend)",
  ],
  [
    -12,
    "(?:swap|swapped|swapping|replace|replaced|substitute|exchange) .. {ingredient}",
    "by mistake",
    "(?:accidentally|mistakenly)",
  ],
  [
    12,
    "^(?:(?:please|ok|so|and|now|can you) )*make (?:the |my )?{formula} (?:with|from|out of|on|off|using|for) (?:{weight}|{number}) (?:of (?:the )?)?{ingredient}",
  ],
  [
    10,
    "(?:redo|recalculate|work out) (?:the |my |all )*(?:weights?|grams|recipe|amounts?) (?:for|to) {number} {count=macarons}",
  ],
  [
    14,
    "^(?:(?:and|now|ok|so|do|weights for|whats|the) )*{formula} (?:but |only )?(?:with|for|from|using|at|on|out of) (?:only |just )?(?:{weight}|{number}) (?:of )?{ingredient}(?: (?:please|pls|instead|today|now))*(?: [?])?$",
  ],
  [
    5,
    "{base=batter} .. {weight} .. (?:the |all )?(?:four|4)\\S* weights?",
    "{weight} .. {base=batter} .. (?:the |all )?(?:four|4)\\S* weights?",
  ],
  [
    10,
    "(?:half|third|quarter|\\S*<number,fraction>|\\S*<factor>) (?:of )?(?:it|this|that|these|the recipe) : {weight} .. {weight} .. {weight}",
  ],
  [
    8,
    "{weight} {ingredient} .. {weight} {ingredient} .. {weight} {ingredient} .. (?:bring|scale|take|cut|get|make) .. (?:down |up )?to {weight}",
  ],
  [
    8,
    "(?:my|our|the|her|his) (?:\\S+ )?(?:card|recipe|formula|sheet) ?(?::|is|goes|says|reads|,) {weight} {ingredient} .. {weight} {ingredient} .. (?:{when}|now|today|only|just|got|have|its|theres|left) {weight} {ingredient}",
    "{weight} {ingredient} .. {weight} {ingredient} .. (?:i|ive) (?:only |just )?(?:have|got) (?:only |just |about )?{weight} {ingredient}",
  ],
  [
    7,
    "{number} {ingredient=(whites|egg)} (?:of|for|in) (?:the |my )?house .. (?:{base=batter}|recipe|formula|mix|{count=shells})",
  ],
  [
    7,
    "(?:the )?{remainder} .. {base=batter} .. (?:if|with|when|for|from|after) (?:i |we |ive )?(?:\\S+ )?{number} (?:\\S+ )?{ingredient=(whites|egg)}",
    "{remainder} {base=batter} .. {number} (?:\\S+ )?{ingredient=(whites|egg)}",
    "(?:short|low) (?:on|of) {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} .. (?:only|just|got|have) (?:{number}|{weight})",
  ],
  // what stands in for an ingredient is no scaling
  [
    -12,
    "(?:replace|swap|substitute|sub|exchange) (?:\\S+ )?{ingredient} (?:with|for|by)",
    "(?:^|, )(?:and |so |but |then )?(?:can|could|should|may) (?:i|we|you) (?:use|swap|replace|substitute|leave out|skip)",
  ],
  [
    5,
    "weigh\\S* out .. {number} .. {count=macarons}",
    "{number} .. {count=macarons} .. (?:every|all the|each) ingredient",
    "what .. weigh\\S* .. (?:for )?{number} (?:{count=macarons}|dozen)",
    "{number} .. {count=macarons} .. (?:weights?|grams)\\S* (?:of|for) (?:each|everything|all)",
    "{count=shells} in (?:weights?|grams)",
    "{ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} i (?:have|got) .. (?:other|rest|others)\\S* .. {count=shells}",
    "{weight} (?:of )?{ingredient=whites} .. rest\\S* of the (?:{count=shells}|recipe|batter)",
  ],
  [
    4,
    "^(?:ok |okay |then |so |and |the |all )*weights?(?: please| pls| then)?(?: [?])?$",
    "only (?:have|got) {number} {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)}(?: left)?$",
  ],
  [
    6,
    "(?:recipe|formula|card|book) (?:says|asks for|calls for|wants|has) {weight} {ingredient} .. {weight} {ingredient} .. {weight}",
  ],
  [9, "^(?:please |pls |can you |could you )*(?:scale|rescale) {weight} (?:of )?{ingredient}"],
  [
    6,
    "recipe : (?:\\S+ )*(?:ive got|i have|i only have|only have|only got|there are|there is|ive only) (?:\\S+ ){0,2}{weight} .. {ingredient}",
  ],
  [9, "^(?:please |ok )*(?:make|do|bake) (?:a |one )?{fraction} of (?:it|this|that|these) :?"],
  // "weights for 85 g whites", "quantities with 3 egg whites"
  [
    7,
    "(?:weights?|amounts?|quantities|ingredients|measures|breakdown) (?:for|with|from|off|on|using|to go with) (?:just |only |about )?(?:{weight}|{number}) (?:of )?(?:the |my )?{ingredient=whites}(?: (?:please|pls|then))*(?: [?])?$",
  ],
  [7, "weights? of everything", "{number} of the (?:house )?(?:recipe|formula)"],
  // "weigh it all out again but for 126 g whites", behind how many macarons
  [
    9,
    "(?:weigh|weights?|work|give|list|set) .*(?:all|everything|lot|out|amounts?|weights?) .*again .*{weight} (?:of )?{ingredient=whites}",
    "(?:weigh|work|list|set) (?:it|that|everything|them) (?:all )?out .*{weight} (?:of )?{ingredient=whites}",
  ],
  // "the fastest way to separate 6 eggs": how it is done, and no size
  [
    -16,
    "(?:ways? to|trick to|how (?:to|do|should|can|would) ?(?:i|you|we)?) (?:separate|separating|crack|peel)",
  ],
  // "make garden shells up to 651 g", "garden shells weighing 651 g in the end": all of a saved recipe, and no line of it
  [
    16,
    "^(?!.*(?:change|correct|fix|set|save|note|costs?|label) ).*{formula}(?: (?:up|down|weighing|weighs?|coming|comes?|adding|so|that|they|it|to|in|at|of|with|a|total|all|be|but|just|only|about|exactly|,))* {weight}(?: (?:of (?:it|them|batter)|in (?:all|the end|total)|altogether|all told|total|please|pls|now|then|instead|worth|today))*(?: [?.!])*$",
  ],
  // "540 g of garden shells", "i need 540 g of batter from garden shells", "garden shells, doubled"
  [
    16,
    "^(?!.*(?:change|correct|fix|set|save|note|costs?|label|flavou?r) )(?:(?:and|now|ok|so|please|i|need|want|make|scale|me|give|do|weights|amounts|for|whats|what is|about|to) )*{weight} (?:of )?(?:batter )?(?:of|from|with|out of|by)? ?(?:the |my )?{formula}(?: (?:please|pls|then|now|today|in all|altogether|total))*(?: [?.!])*$",
    "^(?:(?:and|now|ok|so|please|the|my) )*{formula}(?: ,)? (?:{factor}|{fraction}|halved|quartered)(?: (?:please|pls|then|now|today))*(?: [?.!])*$",
  ],
  // "recipe: 95 g whites, ...; cupboard: 150 g whites, ...; biggest batch?"
  [
    30,
    "^(?!.*(?:save|keep|store|remember) )(?:(?:so|ok|the|my|our|own) )*(?:recipe|formula|card|list|(?:one|a|each) (?:go|batch|lot) \\S+) .*(?:{weight}|{number}) .. (?:cupboard|pantry|larder|fridge|shelf|stock|house|counter) .* (?:biggest|largest|most|how far|how much|how big|how many)",
  ],
  // "in the cupboard theres 100 g whites, 112 g almond flour. how far does that go for blue plate shells": no new lines of it
  [
    24,
    "^(?!.*(?:save|keep|store|remember|change|correct|costs?|label) )(?=.*{formula})(?=.*(?:how far|how much|how many (?:times|batches|rounds)|how big|biggest|largest|what can|what do i get|how often|the most) )(?=.*(?:(?:i|we) (?:have|got)|ive|weve|theres|there is|there are|cupboard|pantry|larder|fridge|shelf|at home|in the house|left|in stock) ).*{weight} (?:of )?{ingredient} .. {weight} (?:of )?{ingredient}",
  ],
  // "how do i weigh plain jane shells out for 40 macarons"
  [
    12,
    "^(?!.*(?:save|keep|costs?|label|flavou?r|plan|when) ).*(?:weigh|weights?|measure|scale|make|amounts?|quantities|need|want) .. {formula}(?: \\S+){0,2} (?:for|to make|to get) {number} (?:\\S+ )?{count=macarons}",
  ],
  // "mint smbc but only 200 g butter, amounts"
  [
    16,
    "^(?!.*(?:change|correct|should|takes?|uses?|needs?|has|save|from now on) ).*{formula} .. (?:but |with |if |theres |have |got |just |only )+(?:\\S+ ){0,3}{weight} (?:of )?{ingredient}",
    "^(?:(?:but|with|only|just|and) )*{weight} (?:of )?{ingredient}(?: left)? , (?:amounts?|weights|amts?|quantities) for (?:the |my )?{formula}",
  ],
  [7, "(?:component|ingredient|individual|single|separate) (?:weights?|amounts?)"],
  // "shell batter, total should be 550 g, list the amounts"
  [
    9,
    "^(?!.*how (?:much|many)).*{base=batter} .*(?:total|all|altogether) .*{weight} .*(?:weights|amounts|amts|quantities|ingredients|list|breakdown)",
    "^(?!.*how (?:much|many)).*{base=batter} (?:of )?{weight} .*(?:total|in all|altogether) .*(?:weights|amounts|amts|quantities|ingredients|list|breakdown)",
    "^(?!.*how (?:much|many)).*{weight} (?:of )?(?:the |my )?{base=batter} , (?:list |give me |whats |what are )?(?:the |all )*(?:weights|amounts|amts|quantities|ingredients|breakdown)",
  ],
  [
    13,
    "^(?:(?:please|ok|make|i want|can i have) )*{fraction} of (?:this|it|that|the lot|these)(?: please)? [,:] {weight} .. {weight}",
    "^(?:(?:please|ok|can you) )*(?:make|bring|get) (?:this|it|that|these) (?:come (?:out )?)?(?:to|at|up to) {weight}(?: in all| in total)? [,:] {weight}",
  ],
  [
    9,
    "(?:use|using|put|take) (?:the lot|it all|all of it|all of that|it|that) (?:for|in|into) (?:my |the )?{count=shells} .. (?:what else|the rest|others)",
  ],
  // judged, not scaled
  [
    -30,
    "^(?:is|are|does) (?:my|this|the|our) (?:\\S+ )?(?:recipe|formula|ratio|numbers)\\S* (?:ok|okay|right|good|fine|look|alright|balanced)",
  ],
  [9, "^(?:(?:and|now|ok|so|the|weights for|make|do) )*{formula} for {number} (?:\\S+ )?{count=macarons}"],
  [7, "(?:have|got) {weight} .. {ingredient} .. {formula} with (?:it|that|them)"],
  [9, "^(?:(?:and|now|ok|so|the|my|do|make) )*{formula} (?:times|x) {number}(?: (?:please|pls|then|now))*$"],
  [6, "{factor} (?:of )?(?:the |my )?{formula}", "{fraction} (?:of )?(?:the |my )?{formula}"],
  [-5, "^is {weight} .. (?:eggs?|{ingredient=(whites|egg)}) .. (?:{number}|eggs?|{ingredient=egg})"],
  [
    6,
    "(?:everything|every ingredient|all ingredients|each ingredient) (?:for|in|of) .. {weight} .. {base=batter}",
    "{weight} .. {base=batter} .. (?:split|broken|divided) .. (?:into|by) (?:its |the |each |every )*ingredients?",
    "{base=batter} .. {weight} .. (?:every|each|all) (?:the |of the )?weights?",
    "{weight} .. {base=batter} .. (?:every|each|all) (?:the |of the )?weights?",
    "recipe (?:: |goes |is |says |takes |reads |has ){weight} {ingredient} .. {weight} .. {weight} .. {weight} .. there (?:are|is) {weight} {ingredient}",
    "recipe (?:goes|is|says|takes|reads|has) {weight} {ingredient} .. {weight} .. {weight} .. {weight} .. (?:i (?:only )?(?:have|got)|ive got|theres) .. {weight} .. {ingredient}",
  ],
  [
    12,
    "^(?:(?:my|the|in) )*(?:pantry|larder|cupboard|stock|shelf) (?:\\S+ )*(?:biggest|largest|how big|what size|most) (?:\\S+ )*{count=(batches|shells|macarons)}",
  ],
  [
    8,
    "(?:other|rest of the|remaining) {count=shells} (?:things|ingredients|stuff|amounts|parts|bits)",
    "{weight} .. (?:biggest|largest|most|how big|how large) .. (?:{count=batches}|{count=shells})",
    "(?:makes|gives|yields|comes to) {weight} .. (?:want|need|make|only|down) .. {weight} .. {ingredient}",
  ],
  [
    6,
    "(?:make|do|bake) (?:the |my |that )*{formula} .. {factor}",
    "{count=shells} (?:from|with|for|out of|using|off|on|at) {number} .. {ingredient=(whites|egg)}",
  ],
  [
    8,
    "(?:weights?|amounts?|quantities|ingredients|breakdown) (?:if|when|for) (?:i |we )?(?:only |just |really )*(?:want|need|make|do|mix) (?:only |just |about )*{weight} (?:of )?{base=batter}",
  ],
  [
    7,
    "(?:weights?|amounts|quantities) (?:for|of) (?:the |my |all )*{count=shells}",
    "{count=shells} weights? (?:for|of|to) ",
  ],
  [
    8,
    "{weight} .. {weight} .. (?:but|and) (?:i |ive |we |weve )?(?:only |just )?(?:have |got |have got )?(?:only |just ){weight} .. {ingredient}",
    "(?:make|want|need|get) {weight} (?:out of|from|of) (?:this|these|that) .. {weight} .. {ingredient}",
  ],
  [
    4,
    "{count=shells} weights?",
    "weights? of (?:every|all|each|the) .. {base=batter}",
    "{weight} .. {base=batter} .. weights?",
    "(?:recipe|formula|card|book) .. {number} .. {ingredient} .. {number} .. {ingredient}",
    "^(?:(?:ok|please|now|and) )*\\S*(?:scale|cut|bring|take|reduce|shrink)\\S* (?:this|it|that|these)?(?: recipe| filling)? ?(?:down )?(?:to|by) {fraction} .. {weight} .. {weight}",
    "{weight} .. {ingredient} .. {weight} .. {ingredient} .. (?:down|cut|reduce|scale|bring|up) (?:it |them |that )?(?:down )?(?:to|by) (?:{fraction}|{number}|{percent})",
    "multipl\\S* by {number}",
    "{fraction} (?:of )?(?:a|the|my|one) .. (?:house|recipe|formula|batch)",
    "(?:recipe|formula) for {number} .. {weight} .. {ingredient}",
    "(?:house|shell|shells) (?:recipe|formula|batch)",
    "my {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar|sugar)} for (?:the )?{count=shells}",
  ],
  // "cloud mix for 40 macarons", "half of cloud mix": a name, known or not
  [
    9,
    "^(?:(?:and|so|now|ok|please|make|do|i want|i need|use|weights for|the|my|our) )*(?:[a-z]+|{when}) (?:[a-z]+ )?(?:mix|recipe|formula) (?:for|from|with|to) (?:(?:only|just) )?(?:{number}|{weight}) (?:\\S+ )?(?:{count=macarons}|{ingredient=(whites|egg|almond_flour|powdered_sugar|granulated_sugar)})",
    "^(?:(?:and|so|now|ok|please|make|do|a|one) )*(?:{fraction}|{factor}) (?:of )?(?:the |my |our )?(?:[a-z]+ ){1,2}(?:mix|recipe|formula)(?: (?:please|pls|then|now))*(?: [?])?$",
    "^(?:(?:and|so|now|ok|please|the|my|our) )*(?:[a-z]+ ){1,2}(?:mix|recipe|formula) (?:times|x|by) {number}(?: (?:please|pls))?$",
  ],
  [
    4,
    "{formula} (?:for|to|from|with) (?:{number}|{weight})",
    `{weight} .. {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} .. {remainder}`,
    `{number} .. {ingredient=(whites|egg)} .. (?:how|hw) much .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar|sugar)}`,
    "recipe .. {number} .. {ingredient}",
    "{factor} .. {ingredient} .. {ingredient}",
    "{ingredient} .. {ingredient} .. {factor}",
    "{factor} .. (?:recipe|formula|batch|{count=batches})",
    "house (?:shells?|recipe|formula|batter|mix)",
    "house {count=shells}",
    "house {count=shells} (?:formula|times)",
    "{count=shells} recipe",
    "{base=batter} recipe",
    "recipe .. {number} .. {count=(macarons|shells)}",
    "recipe for {weight}",
    "{weight} .. {base=batter} .. (?:what|how) .. weigh",
    "{weight} .. {base=batter} .. (?:ingredients|recipe|what goes|broken down|made up)",
    "{weight} .. {base=batter} .. (?:whats|what is|what goes|what all goes) in(?: it| there)?(?: [?])?$",
    "{base=batter} .. {weight} .. (?:\\S+ ){0,6}(?:ingredients|recipe|what goes|broken down|made up)",
    `(?:how|hw) much .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)} .. {weight} .. ${shellIngredient}`,
    `{weight} .. ${shellIngredient} .. (?:how|hw) much .. ${shellIngredient}`,
    "{number} .. {count=macarons} .. (?:what|how) .. (?:weigh|ingredients)",
    `{weight} .. {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} .. {weight} .. {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} .. (?:how much can|how many|what can|limit|run out)`,
    `(?:how|hw) much .. {ingredient=(almond_flour|powdered_sugar)} .. {number} .. {ingredient=(whites|egg)}`,
    `{ingredient=(almond_flour|powdered_sugar|granulated_sugar|whites)} .. {base=batter} .. {weight}`,
    "(?<!(?:on|onto) (?:the|my|a) )(?:scale|rescale|upscale|resize) .. (?:to|by|up|down|for)",
    "{fraction} of (?:this|that|it|the|my) .. {ingredient}",
    "{ingredient} .. {weight} .. (?:altogether|in total|in all|all together)",
    "{count=shells} ingredients",
    "ingredients .. {number} .. {count=macarons}",
    "{weight} .. {base=batter} .. broken",
    "{weight} .. {ingredient} .. {weight} .. {ingredient} .. {factor}",
  ],
  [
    4,
    "{weight} .. {ingredient=(whites|almond_flour|powdered_sugar)} .. (?:how big|what size|how much) .. {count=(batches|shells|macarons)}",
    `{number} .. {ingredient=(whites|egg)} .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)}`,
    `{count=shells} from {weight} .. {ingredient=whites}`,
    `{ingredient=(almond_flour|powdered_sugar|granulated_sugar|whites)} .. {remainder} .. {count=shells}`,
    `{remainder} .. {count=shells}`,
    "{weight} .. {ingredient} .. {weight} .. {ingredient} .. (?:want|need|make|total) .. {weight}",
    "{count=shells} (?:take|takes|are|use|uses) {weight} .. {ingredient}",
  ],
  [
    3.5,
    `{weight} .. {ingredient=(whites|almond_flour|powdered_sugar)} .. (?:what|how much|how|whats|rest|{count=shells})`,
    "{number} .. {ingredient=(whites|egg)} .. (?:what|how|rest|{count=shells}|{remainder}|house (?:recipe|formula|shells|mix))",
    "{remainder} .. {weight} .. {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)}",
    "(?:ingredients|amounts|quantities|weights) (?:(?:i |that i )?(?:to|need to|have to|should|must) (?:weigh|measure)(?: (?:out|up))? )?for {number} .. {count=(macarons|shells)}",
    "(?:halve|half|double|triple|quarter) (?:it|the|this|that|my)",
    "^{factor}",
    "{factor} (?:of )?(?:the |my |this |that )",
    `only .. {weight} .. ${shellIngredient}`,
    `${shellIngredient} .. {weight} .. left`,
    "{ingredient} (?:do i|will i|should i) .. {number} .. {count=macarons}",
    "(?:how|hw) much {ingredient=(almond_flour|powdered_sugar|granulated_sugar|whites)}",
    "(?:what|how much) (?:do|should|must|shall|would|to) (?:i )?weigh",
    "factor of {number}",
    "multipl\\S* .. (?:formula|recipe|house)",
    "weigh outs?",
    "other {count=shells} ingredients",
    "(?:got|have|ive) .. {number} .. {ingredient=(whites|egg)}",
  ],
  [
    2,
    "{factor}",
    "recipe",
    "scale",
    "{ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)} .. {weight}",
    "{weight} .. {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)}",
    "{number} .. {ingredient=(whites|egg)}",
    "{remainder}",
    "{ingredient} .. {ingredient}",
    "{weight} .. {base=batter}",
  ],
  [1, "{ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar)}", "ingredients", "weigh"],
  [
    -4,
    "{dose} .. {base}",
    "{base=(buttercream|ganache)}",
    "(?:note|log) ",
    "timer",
    "{chocolate}",
    "save (?:recipe|formula|as|it|this)",
    "label",
    "allergens?",
    "{money}",
    "pantry",
    "cupboard",
    "shelf",
    "(?:used|bought) ",
    "(?:split|divide)",
    "how (?:hot|long)",
    "{volume} .. {unit}",
    "{unit}$",
    "{symptom}",
    "buy",
    "how much {ingredient=\\S+} (?:have|do) i (?:got|have)",
    "{when}",
    "(?:how|hw) many {count=(macarons|shells|trays)}",
    "to crack",
  ],
  // "for the big bake" is what it is made for
  [-4, "(?<! for (?:the |a |my |our |this |next |another )?(?:[a-z]+ )?){step=bake}"],
  // a factor of how something is, not of how much there is
  [-9, "(?:sift|sieve|whisk|whip|fold|tap|bang|rap|turn|wash|check|stir|rotate)\\S* .. {factor}"],
  [-8, "(?:{factor}|{fraction}) (?:strength|as (?!much|many|big|large|what)\\S+)"],
  [
    -3,
    "{fraction} of (?:it|that|them) .. {taste}",
    "{temperature}",
    "{percent}",
    "{base=batter} (?:for|in) {number} .. {count=macarons}",
    "how much {base=batter}",
    "{color} .. {color}",
    "recipes",
    "forget",
    "show me",
    "{ingredient=butter} .. {ingredient=whites}",
    "how many {ingredient=egg}",
    "(?:how|hw) many \\S+ is",
  ],
);

/** "add in two whites", "throw in another white", "and two whites on top". */
const moreWhites = [
  `^${opening}(?:(?:ill|i|we|lets|can i|could i|can you|what if i|if i|going to|gonna) )*(?:add|adding|added|throw|threw|chuck|toss|crack|sneak|bung|pop|stick|slip|put|tip)(?: in| on)? (?:{number}|another|one more|an extra|a further|a couple|a) (?:(?:more|extra|other|large|of|egg|white|fresh) )*(?:{ingredient=(whites|egg)}|{color=white})(?: (?:in|more|too|as well|on top|extra|to (?:it|that|the (?:recipe|mix|batch|lot))|then|please|pls|now))*(?: [?])?$`,
  `^${opening}(?:{number}|another|one more|an extra|a further) (?:(?:more|extra|other|large) )*(?:{ingredient=(whites|egg)}|{color=white})(?: (?:more|too|as well|on top|extra|besides|in|then|please|pls|now))*(?: [?])?$`,
  `^${opening}(?:take|leave|drop|lose|lost|minus|without|skip)(?: out)? (?:{number}|one|another|a) (?:{ingredient=(whites|egg)}|{color=white})(?: (?:out|off|away|then|please|pls|now))*(?: [?])?$`,
];

export const scaleGoesOn = cues(
  [16, ...moreWhites],
  [
    16,
    "(?:whats|what is|what does|how much is|what do) (?:that|it|this|they)(?: all)? (?:come|comes|add up|make) (?:to|up to)?(?: in)? ?{base=batter}",
  ],
  [
    14,
    "(?:so|now|only|just|down to) (?:it is |its |im |theres |i have |we have )*(?:now |only |just |down to )*{number} (?:\\S+ )?{ingredient=(whites|egg)}(?: left| now)?$",
    "^(?:(?:and|so|now|ok|make it|only|just|actually|,|all) )*{number} of (?:them|those|these|the whites|the eggs)(?: (?:now|then|instead|only|please))*(?: [?])?$",
    "(?:another|one|two|{number}) more (?:\\S+ ){0,6}, (?:so|that makes|makes|makes it|which makes|thats) {number}$",
    "(?:weights?|amounts?|recipe|ingredients|breakdown|each) .. (?:if|when|for) (?:i |we )?(?:only |just |really )*(?:want|need|make|do|have|mix)? ?(?:only |just )*{weight} (?:of )?{base=batter}",
    "(?:so|now) (?:now )?(?:it is|its|i have|theres|there is) (?:now |only )?{weight} (?:of (?:the )?)?{ingredient}",
  ],
  // "found another 35 g of almond flour at the back of the cupboard, now how far"
  [
    16,
    "found (?:another |an extra |some more |a further )?{weight} (?:more )?(?:of )?(?:the )?{ingredient}",
    "{weight} (?:more|extra) (?:of )?(?:the )?{ingredient} (?:was |were |has |have )?(?:hiding|turned up|showed up|left|behind|at the back)",
  ],
  [12, spares],
  [
    10,
    "(?:redo|again|recalculate|work out|give me) .. (?:weights?|grams|recipe|amounts?|it|them) (?:for|to) {number} {count=macarons}",
  ],
  [10, "(?:go by|by) (?:that|it|this)(?: [?])?$"],
  // "4 whites only, dropped two": what happened to the others is told beside it
  [
    30,
    `^${opening}(?:(?:its|theres|there are|i have|ive|got|down to|left with|only|just) )*{number} (?:\\S+ )?{ingredient=(whites|egg)}(?: (?:only|left|now|after all|then))* , .. (?:dropped|broke|lost|{symptom=cracked_\\w+}|cracked|smashed|spoilt|spoiled|wasted|ruined|yolk|burst|fell|slipped|rolled)`,
    // "two eggs fell on the floor, four"
    `^${opening}(?:{number}|one|a couple|some)(?: of (?:them|the))? ?(?:{ingredient=(whites|egg)} )?(?:just |have |has |got |went |were )*(?:dropped|broke|broken|lost|cracked|smashed|spoilt|spoiled|wasted|ruined|fell|slipped|rolled)(?: (?:on|onto|off|to|the|floor|counter|table|down|over)){0,5} , (?:(?:so|now|its|theres|only|just|down to|i have|ive|got|left with|that leaves|leaves) )*{number}(?: {ingredient=(whites|egg)})?(?: (?:left|only|now))*$`,
    `^${opening}(?:i |ive |we )?(?:dropped|broke|lost|smashed|spoilt|spoiled|wasted|ruined) (?:{number}|one|a couple|some)(?: (?:of them|egg|eggs|{ingredient=(whites|egg)}))? , (?:(?:so|now|its|theres|only|just|down to|i have|ive|got|left with|that leaves) )*{number}(?: {ingredient=(whites|egg)})?(?: (?:left|only|now))*$`,
  ],
  [8, `^${takesBack}(?:the |my |its |that |there |(?:is|are|was) )*{ingredient} .. (?:{weight}|{number})$`],
  // "call it 160"
  [
    12,
    `^${opening}${settling} (?:about |around |just |only |even )?(?:{weight}|{number})(?: (?:then|instead|even|please|rather|though))*(?: [?])?$`,
  ],
  // "scale the lot to 465 g", of the recipe that was scaled
  [
    9,
    "(?:scale|bring|take|make|get|cut) (?:everything|it all|all of (?:it|that)|the (?:whole )?(?:lot|thing|recipe|mix|batch)) (?:come )?(?:up |down |out )?(?:to|at|by) (?:{weight}|{number})",
  ],
  // "forget the whites, almond flour is whats short, theres 180"
  [
    14,
    `^${opening}${settingAside} (?:the |my )?(?:{ingredient}|that|it) (?:, )?.. {ingredient} .. (?:{number}|{weight})(?: left| here)?$`,
    `{ingredient} (?:(?:is|are|was) )?(?:(?:whats|what is|what|the one|the thing|the one thing|thats|that is|im|i am) )*${short} .. (?:{number}|{weight})(?: left| here)?$`,
  ],
  // "and the original times one and a half"
  [
    12,
    "(?:the|my|our) original(?: (?:recipe|formula|amounts?|one))?(?: ,)? (?:times|by|x|{factor}|doubled|halved|tripled)",
  ],
);

const so =
  "(?:(?:and|now|ok|so|then|please|can|could|would|you|i|id|we|lets|want|need|like|wish|to|have|whats|what is|how about|what about) )*";
const ofIt =
  "(?:(?:it|that|this|them|the recipe|the (?:whole )?lot|everything|the weights|the amounts|out|up|down|come|over|all) )*";
/** What it is brought to: a weight or a number of one of its lines. */
const ofItsLine = `^${so}(?:(?:make|do|bring|take|scale|get|work|give me|show me|run|redo|bake|resize|put|see|cut|be|use) )?${ofIt}(?:with|on|for|to|from|at|using|by|if i (?:have|use|take)|when i (?:have|use|take)) (?:(?:only|just|about|all|the|my) )*(?:{weight}|{number}) (?:of )?(?:the |my )?(?:large |big |egg )*{ingredient}(?: (?:please|pls|now|then|today|instead|this time|in it))*(?: [?])?$`;

export const scaleAfter = {
  // "how much of the other things", behind a cup of sugar in grams
  convert: cues(
    // "that's all the granulated in the flat, what else for shells to match"
    [
      18,
      "^(?!.*<(?:weight|number|volume)[,>]).*(?:what|whats|how much|anything) else (?:goes |go |do i (?:need|weigh|want|use) |should i (?:weigh|use|add) |must i weigh |is needed |i need |it needs )?(?:(?:for|to|in|into|with|make|the|a|my|that|it|them|goes|some|match) )*(?:{count=shells}|{base=batter}|match)(?: (?:to|match|it|that|them|then|please|pls|now|with|go|goes))*(?: [?])?$",
    ],
    [
      14,
      "^(?:(?:and|or|ok|now|what about|so) )*with {number} (?:egg )?{ingredient=(whites|egg)}(?: [?])?$",
      "(?:how much|how many|what|weights?) (?:\\S+ )?of the (?:others?|rest|other (?:things|stuff|ingredients))(?: [?])?$",
    ],
  ),
  // "and the almond flour in it", behind the batter for so many
  shells: cues([
    14,
    "(?:come|comes|came) to in ingredients",
    "^(?:(?:and|so|ok|what about|how about) )*(?:the |my )?{ingredient=(almond_flour|powdered_sugar|granulated_sugar)}(?: then| too)?(?: [?])?$",
    "(?:in|as) ingredients(?: [?])?$",
    // "how much almond flour for 40 macarons"
    "^(?:(?:and|so|ok|then|also) )*how much (?:of the |the )?{ingredient=(almond_flour|powdered_sugar|granulated_sugar|sugar)}(?: (?:do i need|will i need|is needed|goes in|go in))? for {number} {count=(?:macarons|shells)}(?: (?:then|too|please))*(?: [?])?$",
    "^(?:(?:and|so|ok|what about|how much is|how much) )*(?:the )?{ingredient=(almond_flour|powdered_sugar|granulated_sugar|sugar|whites)} in (?:it|that|there)(?: (?:then|please))?(?: [?])?$",
  ]),
  formula: cues(
    // "make it with 190 g whites", "now on 5 whites", "bring that up to 130 g almond flour": of the recipe just saved or shown
    [16, ofItsLine],
    [
      9,
      "^(?:(?:and|now|ok|so|then|please|can you|could you) )*(?:make|do|give me|scale|take) (?:it|that|this)?(?: up| down)?(?: by| to)? ?(?:{factor}|\\S*<number,fraction>)(?: (?:as much|the size|of it|please|then|it))*(?: [?])?$",
      "^(?:(?:and|now|ok|so|then|please) )*(?:{factor}|double|triple|halve|half) (?:it|that|this)(?: (?:please|then))?(?: [?])?$",
    ],
  ),
};
