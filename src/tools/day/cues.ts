import { opening } from "../../../data/words/openers.ts";
import { cues } from "../lib/cue.ts";
import { asksMoment, asksStep, mixAt, momentAgain, shellsAt } from "./asked-of-plan.ts";
import { restsAgain } from "./rest-again.ts";

/** "timers for each of those steps", "an alarm on every stage of it". */
const timersOf =
  "(?:timers?|alarms?|bells?) (?:for|on|against|to|at|behind|from|of|out of) (?:(?:all|each|every|one|of|the|those|these|them|my|whole|single|full|entire) )*";
const timersEnd =
  "(?: (?:of (?:it|the (?:plan|day|schedule))|in (?:it|the plan)|please|pls|then|now|too|for me|as well))*(?: [?])?$";

export const dayCues = cues(
  // "show me the plan", "what do i have planned"
  [
    9,
    `^${opening}(?:(?:please|can you|could you|let me) )*(?:show|see|read|list|give|tell|repeat|display|bring up|pull up) (?:me )?(?:back )?(?:the|my|that|our) (?:whole |full |bake |baking )?(?:plan|schedule|timetable|timeline|day plan)(?: (?:again|please|pls|now|once more|back))*(?: [?])?$`,
    "^(?:(?:so|and|ok|now|but) )*(?:what|whats|which|is there|do i have|have i got|anything|is anything)(?: (?:do|have|is|are|i|got|we|there|else|still|anything|bakes?|plans?|any|on|now|my|the))* (?:planned|scheduled|coming up|in the plan|on the plan|in the pipeline)(?: (?:now|still|then|at all|for now))*(?: [?])?$",
    "^(?:(?:so|and|ok) )*(?:anything|something|nothing) (?:planned|scheduled)(?: [?])?$",
  ],
  [9, `${timersOf}(?:steps?|stages?)${timersEnd}`],
  // "what am i doing at 2pm"
  [7, ...asksMoment],
  // "put it on timers", whatever was asked since the plan: of several there is only that
  [
    14,
    `^${opening}(?:(?:please|can you|could you|will you|would you|just) )*(?:put|set|stick\\S*|get|make|turn|pop) (?:me )?(?:(?:all|all of|it|that|this|them|those|these|everything|the plan|the steps|the day|the schedule|the lot|the whole (?:thing|day|plan)) ?)+ (?:on|onto|into|as|up as) (?:to )?(?:my |the )?(?:timers|alarms)(?: (?:please|pls|then|now|for me|too))*(?: [?])?$`,
  ],
  [-9, "{time} .. timer", "timer .. {time}"],
  // "save it as" is a recipe's otherwise
  [
    7,
    "^(?:(?:ok|okay|so|and|now|right|hi|hey|im|ive|i|am|have|we|were|weve|just|all|is|that|thats) )*(?:done|finished|through|completed) (?:with )?(?:the |my |all the )?(?:(?:{taste}|{chocolate}) )?(?:{use=piping}|weighing|sifting|whipping|boxing|labell?ing|macaronaging|{step=(bake|macaronage|cool)}|{base=(filling|ganache|buttercream|meringue|batter)}|{count=trays} {number})(?: (?:{count=trays}|{number}|all|now|already|them|it|up|and|please|pls|thanks|labell?ing))*(?: [.!])?$",
    "^(?:(?:ok|okay|so|and|now|the|my|all|that|thats) )*(?:(?:(?:{taste}|{chocolate}) )?{base=(ganache|buttercream|batter)}|{formula}) (?:(?:is|are|has|now|all|just|been) )*(?:done|ready|made|finished)(?: (?:now|already|too|please|thanks))*(?: [.!])?$",
    "^(?:(?:ok|okay|so|and|now|the) )*{count=trays} {number} (?:(?:is|are|has|now|all|just|been|come|came) )*(?:done|finished|out|piped|{use=piping}|{step=bake})(?: (?:of|the|oven|now|already|please|thanks|{step=bake}|{use=piping}))*(?: [.!])?$",
    "(?:drop|forget|cancel|delete|scrap|remove) (?:the|that|my|this) (?:plan|schedule|bake day)",
  ],
  [
    6,
    "^(?:(?:and|but|so|oh|ok|sorry) )*i (?:can |could |will )?(?:only )?(?:start|begin) (?:at|after|from) (?:{when}|{number})",
    "i (?:cant|can not|cannot|wont) (?:start|begin|get up|be up) (?:before|until|till) (?:{when}|{number})",
    "order (?:of|for) {number} .. {when}",
  ],
  [14, "{count=batches} (?:sheets?|cards?)\\S*"],
  [
    9,
    "(?:move|push|shift|put|bring|pull|delay|bump|change) (?:the |my |our )(?:start|starting|beginning)(?: time)? (?:(?:to|at|for|back|up|out|forward|until|by) )*(?:{when}|{time})",
  ],
  [7, "(?:save|put|give|make|write|send|export) .. calendar"],
  [8, "(?:whats|what is) (?:still )?left to do", "what do i still have to do"],
  [
    8,
    "(?:print|printed|printout|pdf) .. (?:plan|schedule|timetable|timeline|bake day|{step=bake} day|day|steps)",
    "(?:plan|schedule|timetable|timeline|bake day|{step=bake} day|day|steps) .. (?:pdf|print|printed|paper|for the wall)",
    "(?:work|prep|production|kitchen|wall|run) sheets?\\S*",
    "(?:print|printed|pdf) .. (?:{step=bake}|baking) sheets?\\S*",
  ],
  [
    2,
    "(?:as|to|in) (?:a |an )?pdfs?",
    "pdfs?",
    "^(?:(?:and|can|could|you|please|ok|now) )*print",
    "for the wall",
  ],
  [
    6,
    "(?:whats|what is) (?:the |my )?(?:first|next) (?:step|thing)(?: [?])?$",
    "^what (?:do i do|comes) first(?: [?])?$",
  ],
  [
    9,
    "{when} .. {number} {taste} .. {number} {taste}",
    "{number} {taste} .. {number} {taste} .. (?:for|by|on) {when}",
  ],
  [9, "timers for (?:it|them|that|this|everything|all (?:of )?(?:it|that|them))$", "calendar"],
  [
    5,
    "{number} .. {count=(macarons|boxes|shells)} .. {when}",
    "{when} .. {number} .. {count=macarons}",
    "{number} .. {count=macarons} .. (?:in|within) {time}",
    "^(?:(?:ok|and|so|now|need) )*{number} (?:for|by) {when} , .. {taste}",
    "when (?:do|should|must|would|can|shall) (?:i|we) (?:have to |need to )?(?:start|begin)",
    "(?:work|plan|count) (?:it|that|me|this|the day|everything)? ?(?:back|backwards?)",
    "what time (?:do|should|must) i (?:start|begin)",
    "latest (?:i can )?start",
    "(?:put|set|make|turn|start|give) .. steps .. timers?",
    "(?:put|set|make|turn) (?:all )?(?:of )?(?:that|this|it|them|everything|those) (?:all )?(?:on|onto|in|into|as) (?:my |the )?timers?",
    "timers? for (?:the |those |these |all )*steps?",
    "(?:turn|make|put|set|convert) (?:that |this |the |my )?(?:plan|schedule|day) (?:into|to|on|onto|as) (?:my |the )?timers?",
    "steps? (?:on|onto|as|into) timers?",
    "timers? (?:out of|from|of) (?:the |my |those |these |all )*steps?",
    "timers? for (?:the |all the |those |these |each |every )?(?:steps?|it all|plan|day|whole)",
    "calendar",
    "running .. {time} (?:late|behind)",
    "{time} (?:late|behind)",
    "skip (?:the )?(?:rest|rest<remainder>|\\S*<step=rest>|\\S*<step=mature>)",
    "no.rest",
  ],
  [
    4,
    "(?:ready|due|wanted|needed|done|finished|deliver|delivered|collect|collected|pick|picked) .. {when}",
    "plan .. {when}",
    "plan .. {number} .. {count=macarons}",
    "(?:whats|what is|what comes|what do i do) next",
    "(?:plan|schedule|timetable|timeline) (?:for|the|my|a|out)",
    "schedule .. (?:macs|macarons|bake|baking)",
    "{count=macarons} .. (?:for|by) {when}",
    "work back",
  ],
  [
    2,
    "{when} (?:now|instead)",
    "(?:start|starting) .. {when}",
    "schedule",
    "(?:bake|baking)\\S* (?:day|plan)",
  ],
  [1, "plan", "{when}", "(?:by|for|until) {when}", "(?:start|starting)"],
  [
    -5,
    "(?:note|log|record|jot) ",
    "(?:made|filled|baked|piped|frozen|froze) .. {when}",
    "(?:fridge|freezer|freeze|counter|good|safe|keep|keeps|expire)",
    "last_\\S+<when",
    "yesterday",
    "timer (?:for|at|till|until) {when}",
    "(?:ping|remind|wake|alarm|tell|alert) .. {when}",
    "(?:did|was|were) .. {when}",
    "recall",
    "(?:show|what did|which batch)",
    "cost",
    "label",
  ],
  [-4, "how (?:much|many) ", "{weight} .. {base}", "batter"],
  // "24 for saturday, what's the batter?": the day is told by the way
  [
    -6,
    "(?:what|whats|what is) (?:the |my )?(?:total |whole )?(?:{base}|{count=(shells|trays)}|{ingredient=whites})",
    "[,.:;] (?:and )?(?:the )?(?:total |whole )?(?:{base}|{count=(shells|trays)}) (?:(?:count|needed|total|in all|in total|altogether|please|pls|for (?:them|it|all|that|the lot|both|everything)|of them|together|(?:with|incl|including|plus) (?:\\S+ ){0,3}?spares?) ?)*(?:[?])?$",
    "(?:total |number of ){count=shells}",
    "every {when}",
  ],
);

export const dayGoesOn = cues(
  [
    14,
    "^(?:(?:and|so|ok|okay|but|oh|sorry|well|actually|no|oops|i|we|im|were|ive|weve|have|really|did) )*(?:only |just |finally |now )+(?:started|starting|begun|beginning|got going|got started|getting started|getting going)(?: (?:it|them|baking|now|late|work|weighing))*$",
  ],
  // "when do i bake", "can i do the shells tonight at 8", "i started late at 1pm"
  [16, ...asksMoment, ...asksStep, momentAgain, shellsAt, mixAt],
  [
    16,
    "^(?!.*(?:^| )(?:if|what|when|could|would|can|should)(?: |$)).*(?:i|we|ive|weve) (?:\\S+ ){0,2}(?:start|started|began|begun|begin|got going|got started)(?: (?:it|them|that|this|baking|late|later|early|earlier|than|planned|a bit|bit|a|weighing|work|the|bake|today|with|at|about|around|only|,))* {when}",
  ],
  [16, ...restsAgain],
  // "could you set alarms for all of these", "timers for the lot", "now set the timers"
  [
    14,
    `^(?!.*<(?:time|number)[,>]).*${timersOf}(?:steps?|stages?|plan|schedule|day|lot|it|that|this|these|those|them|everything|all|each|each one|every one|thing|{count=batches})${timersEnd}`,
    "^(?:(?:ok|okay|so|and|now|then|please|can you|could you|great|right|good|perfect|,) )*(?:set|start|make|give me|put on|i want|id like|do) (?:me )?(?:all )?(?:the |my )?(?:timers|alarms)(?: (?:please|pls|then|now|too|for me|up|on))*(?: [?])?$",
  ],
  // "ok tell her half past one then", "ill offer them noon": the hour that the customer is told
  [
    14,
    `^${opening}(?:(?:ill|i will|id|lets|we can|i can|can you|just|better) )*(?:tell|let|text|ring|phone|call|message|email|offer|promise|give|say to|ask|told|offered) (?:her|him|them|the (?:customer|client|lady|guy|bride|couple)|my (?:customer|client)) (?:(?:know|that|its|it is|theyre|to come|to collect|to pick (?:them|it) up|pickup is|for|at|by|about|around|come|have them|make it|and|say|says|tell|her|him|them|she|he|they|it|can|could|may|will be|ready|are|is) )*{when}(?: (?:then|instead|please|pls|now|thats fine|is fine|is ok|works|will do|sharp|after all))*(?: [?.!])?$`,
  ],
  // a start that is moved, or asked about, behind a plan
  [
    14,
    "(?:move|push|shift|put|bring|pull|delay|bump|set|change|make) (?:the |my |our )?(?:start|starting|beginning)(?: time)? .*(?:{when}|{time})",
    "(?:start|starting|begin|beginning|started) (?:(?:it|them|baking|work|at|from|by|on|around|about|to|after|before) )*{when}",
    "(?:start|starting|begin) (?:it |them |baking )?{time} (?:earlier|sooner|later)",
    "(?:push|move|shift|put|bring|pull|delay|postpone|bump|slide) (?:it|that|this|them|everything|all|it all|all of it|the (?:\\S+ ){0,2}?\\S+)(?: (?:back|forward|forwards|up|out|on|off|by|another|about))* {time}",
    "^(?:(?:and|so|no|ok|make it|make that|can we|could we|what if|its) )*{time} (?:earlier|sooner|later)",
    "^(?:(?:everything|party|pickup|pick|delivery|collection|customer|client|she|he|they|it|the|is|was|up|got|moved|pushed|wants?|now|all|event|wedding) )+{time} (?:earlier|sooner|later)",
    "^(?:(?:but|and|so|sorry) )*(?:i|im|ill|we|were) .*(?:home|back|free|busy|away|out|working|work|kitchen) .*(?:till|until|from|before|at) {when}",
  ],
  [
    10,
    "oven (?:takes|fits|holds|can take|can hold|has room for|bakes) .*{count=trays}",
    "{count=trays} (?:at once|at a time|together|fit)",
  ],
  [
    14,
    "^(?:(?:and|no|ok|can you|please) )*(?:move|push|shift|change|make) (?:it|that|them) (?:to|for) {when}(?: please)?(?: [?])?$",
  ],
  [
    12,
    "^(?:(?:and|but|so|ok|what|how|about|if|it|was|its|were|is|they|want|make|for|on|back to) )*{when}(?: ,)? (?:at )?(?:the )?same time",
    "^(?:and |but |so |what |how )*(?:about |if )(?:(?:it|they|its|was|is|were|want|for|on|by) )*{when}(?: ?,.*)?$",
  ],
  [
    12,
    "^(?:(?:ok|okay|right|so|now|and|im|lets) )*(?:start|starting|begin|go|get going)(?: now| then)?(?: [.!])?$",
  ],
  [9, "timer for (?:it|them|that|this|everything|all (?:of )?(?:it|that|them))$"],
  [
    12,
    "^(?:(?:and|but|so|what|ok) )*if (?:i|we) (?:do|did|let them) {step=rest}(?: (?:them|it|those))?(?: [?])?$",
  ],
  [12, "no.rest(?:<\\S+)?", "(?:skip|without|dont|not) (?:\\S+ )?{step=rest}"],
  [
    8,
    "^(?:(?:and|so|no|ok|actually|now|make it|make that) )*{time} (?:earlier|sooner|later)(?: (?:please|then|now|actually))?(?: [?])?$",
    "(?:pushed|moved|shifted|changed|bumped|put) (?:back |forward |up |off |on )?(?:to|till|until) (?:\\S+ )?(?:{number}|{when})",
  ],
);
