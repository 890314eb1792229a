import { cues } from "../lib/cue.ts";
import { heatingWords } from "./heating-said.ts";
import { limitSourceCues } from "./limit-source.ts";
import { notHerself, spellCues } from "./spell-cues.ts";

const stored =
  "(?:fridge|refrigerator|refrigerated|freezer|counter|countertop|worktop|table|outside|pantry|room temp\\S*|room temperature)";

const filledOnes =
  "(?:{count=(?:macarons|shells|boxes)}|{base=(?:filling|buttercream|ganache)}|them|these|those|ones|filled)";
/** Where macarons are set out to be eaten or sold. */
const setOut =
  "(?:buffet|display|show|stall|spread|table|platter|counter|sideboard|dessert|reception|wedding|party|tower|stand|trestle|bar|desk|office|picnic|out)";

export const keepCues = cues(
  // "freezer life of filled macarons", "keeping time for buttercream ones", "time limit on a buffet"
  [
    9,
    `(?:shelf|fridge|freezer|counter|storage|keeping|cupboard|buffet|display|table|stall|refrigerator|chilled|frozen) (?:life|lives|lifespan|life span) .. ${filledOnes}`,
    `(?:keeping|storage|storing|holding|standing|serving) (?:time|times|limit|period|span) (?:of|for|on|with) (?:\\S+ ){0,4}?${filledOnes}`,
    `time limit (?:of|for|on|with) (?:\\S+ ){0,4}?${filledOnes} (?:\\S+ ){0,2}?(?:on|at|in|out)`,
    `(?:lifespan|life span|life expectancy) (?:of|for) (?:\\S+ ){0,4}?${filledOnes}`,
    `${filledOnes} (?:and their |, their |, |s )?(?:shelf|fridge|freezer|counter|storage) life`,
    "^(?:(?:and|so|ok|whats|what is|the|their|its|my) )*(?:shelf|fridge|freezer|counter) life(?: (?:then|please|pls|of (?:them|these|those|it)|in the (?:fridge|freezer)|[?]))*$",
  ],
  // "is 3 hours on a buffet ok for filled ones", "can filled ones sit 3 h on the display": no timer
  [
    12,
    `^(?:(?:and|so|ok|but|would|will) )*(?:is|are|was|be) {time} (?:out )?(?:on|at|in) (?:the |a |my |our )?(?:\\S+ )?${setOut} (?:\\S+ )*(?:ok|okay|safe|fine|too long|alright|allowed|good|bad)`,
    `^(?:(?:and|so|ok|but) )*{time} (?:out )?(?:on|at) (?:the |a |my |our )?(?:\\S+ )?${setOut} (?:(?:is|that|thats|be|a bit|much|way|still|would|for|filled|ones|{count=macarons}) )*(?:ok|okay|safe|fine|too long|alright|allowed)`,
    `^(?:(?:and|so|ok|but) )*(?:can|could|may|should|will) (?:the |my |a |\\S+ of )*${filledOnes} (?:still )?(?:sit|stand|stay|be|lie|last|survive|wait|be left) (?:out )?(?:for )?{time} (?:out )?(?:on|at|in) (?:the |a |my |our )?(?:\\S+ )?${setOut}`,
    `${filledOnes} (?:out )?(?:on|at) (?:the |a |my |our )?(?:\\S+ )?${setOut} (?:for )?{time}(?: ,)? (?:is it |is that |are they |still |all )*(?:ok|okay|safe|fine|too long|alright)`,
    `how (?:long|many \\S+) (?:(?:out|max|at most) )?(?:on|at) (?:the |a |my |our )?(?:\\S+ )?${setOut} (?:for|with|do|can|are) (?:\\S+ ){0,3}?${filledOnes}`,
  ],
  // "how long can a tray of filled ones stand on the buffet": out of the fridge, wherever that is
  [
    6,
    `how (?:long|many \\S+) (?:can|could|may|should|do|will|would|are|is) .. ${filledOnes} .. (?:stand|sit|stay|be|lie|last|left|set|survive|wait|ok|okay|safe|fine|good|out|hold|remain|keep) .. ${setOut}`,
    `how (?:long|many \\S+) (?:can|could|may|should|do) i (?:leave|keep|have|put|stand|set|display) .. ${filledOnes} .. ${setOut}`,
    `how (?:long|many \\S+) (?:can|could|may|should|do|will|are) (?:they|these|those|it) (?:stand|sit|stay|be|lie|last|survive|wait|hold|remain|keep|ok|safe) .. ${setOut}`,
  ],
  // "is the 7 day limit your own invention or published"
  [16, ...limitSourceCues],
  [13, ...spellCues],
  // told of what happened, and no timer
  [
    12,
    "^(?:(?:oh|no|so|and|ok|i|we|ive|oops|accidentally) )*(?:left|had|forgot|kept) (?:(?:them|it|these|those|the \\S+|\\S*<\\S+>) )?out (?:for |about |around |like )*{time}",
  ],
  [
    14,
    "(?:which|what) (?:\\S+ )?dates?\\S* .. labels?",
    "labels? .. (?:which|what) (?:\\S+ )?dates?(?!\\S* {ingredient})",
  ],
  // "no butter, only margarine in the fridge": what there is, and no keeping
  [
    -9,
    "^(?:(?:and|so|but|oh|theres|there is|ive got|i have|got|we have) )*no {ingredient} , (?:just|only|but) \\S+",
  ],
  // "dark ganache filling 1:1, leave them out overnight ok?": whatever it is made of
  [
    5,
    "(?:leave|leaving|left|sit|sits|stay|stays|stand|keep) (?:(?:it|them|these|those|that|mine) )?out (?:overnight|all night|over night|all day)",
  ],
  [-12, "(?:leave|leaving|left|leave) out (?:the |any |all )?(?:{ingredient}|{dose})"],
  [
    7,
    "{ingredient=(egg_yolk)} .. (?:keep|last|good|store|fridge|days|long)",
    "(?:keep|last|store|how long) .. {ingredient=(egg_yolk)}",
  ],
  // "how many days do unfrozen macarons keep"
  [
    9,
    "(?:how (?:long|many days)|keep|last|good|ok|okay|safe) .. unfrozen",
    "unfrozen .. (?:how (?:long|many days)|keep|last|good|ok|okay|safe)",
  ],
  // "is it ok to give to children after 3 hours on the counter": no timer
  [
    12,
    `(?:is|are|would|will|am|was) (?:(?:it|they|these|those|that|this|i|we|them|still|be|really|macarons|{count=macarons}) )+(?:ok|okay|fine|safe|alright|right|allowed|legal|permitted|good|wise|bad|wrong|edible|risky) (?:to|for) (?:\\S+ ){0,8}?{time} (?:\\S+ ){0,2}?(?:${setOut}|side|worktop|room|warm|heat|sun|car|kitchen)`,
    `(?:can|could|may|should|shall|might) (?:(?:i|we|they|you|these|those|one|macarons|{count=macarons}|still|be) )+(?:sell|sold|eat|eaten|serve|served|give|given|offer|offered|hand|handed|feed|fed) (?:\\S+ ){0,8}?{time} (?:\\S+ ){0,2}?(?:${setOut}|side|worktop|room|warm|heat|sun|car|kitchen)`,
  ],
  // "froze 36 filled macarons on 1 january, how long are they good": no order for that day
  [
    24,
    "(?:froze|frozen) (?:\\S+ )*?{count=macarons} (?:\\S+ )*?{when} (?:\\S+ )*?(?:how long|until when|till when|good|ok|okay|keep|last|safe|eat|sell)",
    "{count=macarons} (?:\\S+ )*?(?:froze|frozen|freezer) (?:\\S+ )*?{when} (?:\\S+ )*?(?:how long|until when|till when|good|ok|okay|keep|last|safe|eat|sell)",
  ],
  // a day's plan, and no question of its own
  [-20, "when (?:do|should|can|must) i (?:start|begin)", "{number} (?:\\S+ )?{count=macarons} .. {when}"],
  [
    16,
    "(?:enough|long enough|done|over|ready|finished) .. (?:matur\\S*|\\S*<step=mature>)",
    "(?:matur\\S*|\\S*<step=mature>) .. (?:enough|done|over|ready|finished)",
    "filled .. {when} .. when (?:can|could|may|should) (?:i|we|they) (?:eat|serve|try|have|sell)",
    "(?:fill|filled|filling)(?:<\\S*>)? (?:(?:them|these|those|it|all|macarons|{count=macarons}|was|were) )*(?:(?:at|on|by|around) )*{when} .. (?:when|what time) (?:are|will|would|do|is) (?:they|these|those|it|macarons|{count=macarons})(?: all| be| get| become)* (?:ready|done|best|edible|mature\\S*|\\S*<step=mature>)",
    "when (?:are|will|would|do) (?:they|these|those|it)(?: all| be| get| become)* (?:ready|done|best|mature\\S*|\\S*<step=mature>) (?:(?:if|when|,|i|we|ill|im|they|are|were|them|was) )*(?:fill|filled|filling)(?:<\\S*>)? .. {when}",
  ],
  [
    9,
    "(?:unchilled|uncooled)",
    "(?:was|were|been|sat) .. (?:bus|train|car|tube|tram|taxi|van|truck|boot|trunk|back seat) .. {time}",
    "(?:fridge|refrigerator) (?:sits|is|runs|reads|stands|shows|hovers) (?:at|about|around) .. (?:cold enough|ok|okay|safe|fine)",
  ],
  [-17, "(?:work|working|worked|figure) out .. water activity"],
  [
    6,
    "freezer (?:(?:is|at|on|runs|reads|shows|says|its|only|about|around) )*(?:{number}|{temperature})(?: (?:ok|okay|fine|cold|enough|good|safe))*(?: [?])?$",
    "(?:{number}|{temperature}) (?:is )?cold enough",
    "^(?:(?:they|they were|were|was|been|left|sat|stood|i had them|had them|we were|all|the boxes|boxes|and) )*out(?:side)? (?:for )?{time} (?:at|in|on) (?:the |a )?(?:market|fair|stall|fete|party|picnic|table|counter|sun|car|garden|show|wedding)",
    "^(?:(?:they|they were|were|was|been|left|sat|stood|i had them|had them|the boxes|boxes|and) )*out(?:side)? (?:at|in|on) (?:the |a |my )?(?:market|fair|stall|party|picnic|table|counter|worktop|side|sun|car|garden|porch|show|wedding) (?:for )?(?:about )?{time}(?: [?])?$",
    "^(?:(?:its|it is|it was|and) )*(?:outside|outdoors) (?:(?:its|it is|it was|is|about|around) )*{temperature}(?: today)?(?: [?])?$",
  ],
  [
    9,
    "(?:heat|heated|heating|warm|warmed|cook|cooked) (?:up )?(?:(?:the|my|those|these) )*{ingredient=(whites|pasteurised_whites)} (?:(?:only|just|up|and|sugar|syrup|as far as) )*(?:to|at) (?:about |around )?{number}",
  ],
  [
    7,
    "{ingredient=(whites|egg)} .. (?:never|not|arent|dont|doesnt|isnt|without) (?:get |got |been |being |be )?(?:heated|cooked|heating|cooking)",
  ],
  [
    8,
    "(?:temp\\S*|how cold|cold enough) .. (?:cool\\S* (?:box\\S*|bags?)|coolbox|coolbag|cooler|ice box\\S*|chiller)",
  ],
  [
    5,
    "(?:shelf|fridge|freezer|counter|storage) life",
    "how (?:far|long|many days) (?:ahead|in advance|before) .. (?:make|bake|fill|prepare)",
    "(?:can|could|should|may) (?:i|we|you) (?:make|bake|fill|prepare) .. (?:ahead|in advance|the day before|days? before)",
    "(?:max|maximum|longest)(?: time)? (?:out|on the counter|at room temp\\S*|outside)",
    "time (?:out of the fridge|on the counter|out on the counter|at room temp\\S*)",
    "(?:made|filled|baked) .. {when} .. (?:selling|sell|sold|serving|serve|eating|eat|giving|party|wedding) .. {when}",
  ],
  [-6, "another {weight}", "{weight} (?:more )?in"],
  [-8, "(?:only|just) (?:{number}|{weight}) .. (?:in|left in) the (?:fridge|freezer)"],
  [
    7,
    "{ingredient=whites} (?:\\S+ ){0,3}(?:keep|last|good for|stay good|stay fresh|go off)",
    "how long .. (?:keep|last|leave|store|age|good) .. {ingredient=whites}",
    "(?:keep|store|leave|age|freeze) (?:\\S+ ){0,3}{ingredient=whites} (?:\\S+ ){0,3}(?:fridge|how long|days?|overnight|freezer)",
    "{ingredient=whites} .. {time} (?:old )?(?:\\S+ ){0,2}(?:ok|okay|good|safe|fine|usable)",
    "{time} old {ingredient=whites}",
    "freeze (?:\\S+ ){0,2}{ingredient=whites}",
  ],
  [
    9,
    `^${notHerself}.*(?:stayed|stood|sat|lay|were left|was left|been) {time} (?:out )?(?:on|out|at|in) (?:the |my )?(?:table|counter|side|worktop|room temp\\S*|kitchen|car|sun|outside|fridge)`,
    `^${notHerself}.*(?:stayed|stood|sat|lay|were left|was left|been) (?:out )?(?:on|at|in) (?:the |my )?(?:table|counter|side|worktop|room temp\\S*|kitchen|car|sun) (?:for )?{time}`,
  ],
  // "customer left a box on the windowsill for 3 hours"
  [
    9,
    `^${notHerself}.*(?:left|forgot|put|kept|had) (?:a |the |my |her |his |their |some |one )?(?:box\\S*|{count=(?:macarons|boxes)}|hers|his|theirs|them|those|filled ones|ones) (?:out )?(?:on|at|in) (?:the |my |her |his |a )?(?:\\S+ )?(?:table|counter|side|worktop|windowsill|window sill|sill|bench|desk|room temp\\S*|car|boot|sun|porch|doorstep|balcony) (?:for )?(?:about |over |nearly )?{time}`,
  ],
  [5, "when (?:do|does|will|would) (?:they|it|these|those|this|that) (?:expire|go off|go bad|spoil)"],
  [
    12,
    "(?:when|how long before|how soon|how far ahead) .. (?:take|get|bring|come|should be taken) .. out(?: of the (?:fridge|refrigerator|box))?(?: .. (?:eat|eating|serve|serving|party|hand\\S*|guests?))?(?: [?])?$",
    "(?:how long|how many (?:minutes|hours)|how soon) before (?:eating|serving|the party|they are eaten|we eat|i serve|i serve them|they eat)",
    "(?:what|which) temp\\S* .. (?:serve|eat|eaten|served)",
  ],
  [
    11,
    "(?:ship|shipping|shipped|post|posting|posted|mail|mailing|courier|parcel) .. (?:{count=macarons}|them|these|those|it|some|a box|{time})",
    "(?:can|could|may|should|is it ok to|how do) (?:i |we )?(?:ship|post|mail|courier)",
    "{count=macarons} (?:\\S+ ){0,3}(?:by (?:post|mail|courier)|in the (?:post|mail))",
    "(?:send|sending|sent) (?:them|it|these|some|a box|{count=macarons}) (?:\\S+ ){0,3}(?:by|in the|through the) (?:post|mail|courier|parcel)",
    "^ship(?:ping)? (?:with|in|for) .. {time}",
  ],
  [5, "temp\\S* .. (?:fridge|freezer)", "(?:fridge|freezer) .. temp\\S*", "how cold"],
  [
    17,
    "{weight} .. {chocolate} .. {weight} .. {ingredient=(cream|butter)} .. (?:fridge|room temp\\S*|sit|keep|keeps|last|stand|overnight|counter|refrigerat\\S*|cold|out)",
    "(?:fridge|room temp\\S*|sit|keep|last|stand|overnight|counter|refrigerat\\S*|cold|leave|(?<!work )(?<!worked )out(?! of {weight})) .. {weight} .. {chocolate} .. {weight} .. {ingredient=cream}",
  ],
  [
    5,
    "(?:smell|smells|smelling|taste|tastes|gone|look|looks) (?:\\S+ ){0,2}(?:sour|off|funny|bad|rancid|slimy)",
    "(?:mould|mold|mouldy|moldy|slimy|fuzzy|rancid)",
    "(?:power|electricity|fridge) (?:\\S+ ){0,2}(?:cut|outage|off|out|broke|broken|warm|failed|died)",
  ],
  [
    7,
    "(?:can|could|may|should) (?:i|we|you) (?:post|mail|ship|courier|send) (?:\\S+ )*(?:{count=macarons}|them|these)",
    "(?:posting|mailing|shipping) (?:\\S+ )*{count=macarons}",
  ],
  [6, "water\\S* activity (?:of |is |was |at |my |the |this |this is |{base} )*{number}"],
  [
    6,
    "(?:sit|stand|stay|keep|live|left) .. (?:shelf|counter|room temp\\S*)",
    "water\\S* activity .. (?:under|below|limit|line|safe|needed|has to be|have to be|should)",
    "(?:how|can|should|do|must) .. {step=thaw}",
  ],
  [
    4,
    `how (?:long|many days) .. (?:in|at|on) (?:the |a |my )?${stored}`,
    "(?:still|are they|is it|they) (?:good|ok|okay|fine|safe|edible|alright)",
    "how long .. (?:keep|last|good for|stay (?:good|fresh|out)|sit out|be out)",
    "(?:keep|last|lasts|keeps) .. (?:fridge|freezer)",
    "(?:can|could|may|should|shall|do) (?:i|you|we|one|they|it|macarons|{count=macarons}) (?:be )?(?:freeze|refreeze|frozen)",
    "(?:can|could|may|should) (?:i|we|people|you) (?:still )?(?:eat|sell|serve)",
    "(?:outside|out|counter|sun|car) .. {time} .. (?:ok|okay|safe|good|eat|fine)",
    "{time} .. (?:outside|out|counter|table|porch|sun|car|stall) .. (?:ok|okay|safe|throw|toss|bin|eat|fine)",
    "(?:must|do|should|have to|need to) .. heat .. {ingredient=whites}",
    "^(?:(?:so|and|ok|but) )*(?:do|does|must|should) .. {ingredient=whites} .. (?:need|needs|have|has|want) (?:to be |any |a )?(?:cooking|cooked|heating|heated|pasteuri[sz]\\S*)",
    "\\S*shelf_stable\\S*",
    "(?:no|without|skip|dont need|need no|needs no) (?:the |a )?(?:fridge|chilling|refrigerat\\S*) (?:needed|required|right|then|so)?",
    "(?:until|till) (?:what|which|when)(?! temp\\S*)",
    "(?:are|is) .. {count=macarons} .. (?:ok|okay|good|safe|fine)",
    "(?:use|good|eat|keep|sell) (?:until|till|by)",
    "freeze .. (?:how long|filled|macarons|them|it)",
    "how .. thaw",
    "shelf stable",
    `^${notHerself}.*(?:left|sat|sitting|been|stood|forgot|standing|out|counter|porch|overnight) .. (?:ok|okay|safe|good|toss|bin|chuck|throw|eat|sell|serve|still|fine|ruined|worry)`,
    "use by",
    "(?:go|gone|going) (?:off|bad)",
    "how (?:cold|warm) .. (?:fridge|freezer|refrigerator|stored|kept)",
    "what temp\\S* .. (?:fridge|freezer|refrigerator|store|stored)",
    "(?:ok|okay|safe|good|fine|alright|right) to (?:eat|sell|serve)",
    "last day",
    "(?:can|could|may|should|ought|still|to) .. (?:eat|serve|sell) (?:them|these|those|it)(?: still| now| today)?",
    "(?:bin|toss|chuck|throw) (?:them|it|em|those|these)",
    "(?:raw|unheated|uncooked|unpasteuri[sz]ed) .. {ingredient=(whites|egg|pasteurised_whites)}",
    "(?:need|use|have to|must|should) .. {ingredient=pasteurised_whites}",
    "(?:dangerous|risky|risk|unsafe|harmful) .. {ingredient=(whites|egg)}",
    "(?:will|would|do|does|can|could|should) .. (?:keep|last|hold) .. {when}",
    "how long .. kept",
    "(?:hot|warm) (?:car|van|day|kitchen)",
    "(?:not|without|never|dont|didnt) (?:heating|heat|heated|cook|cooking|cooked) .. {ingredient=(whites|egg)}",
  ],
  [
    3,
    "unfilled",
    "(?:made|filled|filed|baked|boxed|froze|frozen|fridged) .. {when} .. (?:how long|good|ok|okay|eat|safe|until|till|sell|when)",
    "(?:can|could|may|should|must|do|does|need|needs|how) .. (?:fridge|freezer|refrigerator|refrigerate|refrigerated|freezing|freeze|frozen)",
    "(?:can|could|may|should|must|how) .. (?:sit|stay|be|leave|stand|keep|left) .. (?:out|unrefrigerated)",
    "how long .. (?:outside|unrefrigerated|stall|market)",
    "go in the fridge",
    "(?:store|storing|storage)",
    "(?:best|good|eaten) (?:by|before|until)",
    "{step=thaw}",
    "is (?:that|it|this) safe",
    "pasteuri[sz]ed",
    "(?:safe|spoil|spoiled|spoils|poison\\S*)",
    "food safety",
    "perishable",
    "water activity .. {number}",
    "aw (?:of |is |was )?{number}",
  ],
  [
    2,
    "{temperature} .. (?:stall|market|outside|out)",
    "(?:fridge|freezer|refrigerator|refrigerate|refrigerated|freezing|freeze|frozen)",
    "(?:sit|sits|stay|stays|be|leave|left|stand|keep|kept) .. (?:out|unrefrigerated)",
    "(?:left|sat|sitting|been|were|was|stood|forgot|standing) .. (?:out|counter|countertop|worktop|table|porch|car|stall|sun|overnight|room)",
  ],
  [
    1,
    "how long",
    "(?:filled|fridge|freezer|airtight|box)",
    "{step=thaw}",
    "(?:eat|sell|serve|keep|keeps)",
    "{when}",
  ],
  [
    -6,
    "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|notes|log|record|jot|write|add)",
    "(?:timer|alarm|ping|remind|countdown|buzz|ring me)",
  ],
  [
    -5,
    "(?:when|which|what) .. (?:did i|last) (?:make|bake|made)",
    "out of (?:five|ten|5|10)",
    "allerg\\S*",
    "(?:ready|due|wanted|needed) .. {when}",
    "when (?:do|should|must) i (?:start|begin)",
  ],
  [
    -4,
    "out of (?:the |my )?{ingredient}",
    "(?:how|hw) (?:much|many) (?!days).. {dose}",
    "{weight} .. {chocolate}",
    "{weight} .. {ingredient=cream}",
    "save (?:the |my |this )?recipe",
    "(?:put|add|pantry|stock) .. {weight} .. {ingredient}",
    "{weight} .. {ingredient} .. (?:pantry|larder|cupboard|stock)",
    "(?:cost|margin|markup|price|charge)",
    "label",
  ],
  [
    -3,
    "mature|maturing|matured",
    "{symptom}",
    "{money}",
    "how hot",
    "(?:ganache|chocolate) .. set",
    "oven",
    "how long (?:left|have i|do i|should i) .. {step=(rest|bake|cool)}",
    "{step=(rest|bake|cool)} .. how long",
    "how long .. {step=(rest|bake|cool|macaronage)}",
  ],
);

export const keepGoesOn = cues(
  // "and unfrozen?", "rather not freeze them, how long then"
  [
    12,
    "^(?:(?:and|so|or|but|what about|how about|if|ok|what if|for|the|those|ones) )*unfrozen(?: (?:ones?|then|how long|how many days|instead))*(?: [?])?$",
    "(?:not|dont|without|never|wont) (?:\\S+ )?(?:freeze|freezing|frozen) .. (?:how (?:long|many days)|fridge)",
  ],
  [
    12,
    heatingWords,
    "{time} (?:at|in|of) (?:{temperature}|{number}) .. (?:fix|save|safe|help|ok|okay|good|make|do)",
    "^(?:(?:or|and|no|so|suppose|say|lets say|pretend|what if|if|it was|it were|it had been|they were|i|we|made|filled|the|on|by|for|until|till|them) )+{when}(?: (?:is when|when|that|i|we|filled|made|baked|them|these|it|on))*(?: [?])?$",
    "^(?:(?:and|so|ok|is|the|my|with|but|what if) )*(?:fridge|refrigerator|freezer)(?: (?:is|at|on|runs|reads|shows|says))* (?:{when}|{number}|{temperature})(?: (?:ok|okay|fine|then))*(?: [?])?$",
    "^(?:(?:they were|out|no|sorry|actually|and|so|it was) )*(?:since|from) (?:about |around )?{when}(?: (?:actually|not|sorry|then))*(?: [?])?$",
    "^(?:(?:so|and|ok|whats|what is|how much is|how long is|the|that|thats|in) )*(?:total|altogether|all together|in all|sum)(?: (?:time|out|then|now|is that|is it|how long|how much|that is))*(?: [?])?$",
    "^(?:(?:so|and|still|are they|is it|is that|they|its) )*(?:ok|okay|safe|fine)(?: (?:now|then|still))* [?]$",
    "^(?:(?:only|just|and|also|no|sorry|actually|it was) )*(?:{when} )?(?:only |just |another )*{time} (?:today|yesterday)\\S*(?: [?])?$",
  ],
  [
    14,
    "^(?:(?:and|so|ok|whats|what is|when is|which is) )*(?:the |their )?last day(?: (?:would be|is|then|the|be|for them|to eat them))*(?: [?])?$",
  ],
  [
    16,
    "^(?:(?:and|then|plus|oh|also|so) )*{time} (?:on|in|at) (?:the |a |my )?(?!(?:fridge|freezer|oven|mixer))\\S+ (?:as well|too|again|also)(?: [?])?$",
  ],
  [
    12,
    "(?:ok|okay|safe|good|fine|eat|sell|serve) .. another {time}",
    "^(?:(?:and|then|plus|oh|also|so) )*(?:another|plus|then) {time}(?: (?:more|out|again|later|today|yesterday|on top|this morning|(?:at|on|in|by|outside) (?!(?:the |my )?(?:fridge|freezer|oven|mixer))(?:the |my |a )?\\S+))*(?: ,.*)?(?: [?])?$",
  ],
  [
    9,
    "^(?:(?:its|about|for|like|around|maybe|up to|so|and|say|only|roughly) )*{time}(?: (?:out|in all|total|then|max|or so))*(?: [?])?$",
    // "it is 34 degrees in my flat"
    "^(?:(?:and|but|so|if) )*(?:its|it is|it will be|itll be|it gets|it can be|the room is|weve got) (?:about |around |over |up to )?{temperature}(?! (?:in|to) {unit})",
  ],
);
