/** The signs of a timer question, of one that goes on from it, and of one behind another answer. */
import { opening } from "../../../data/words/openers.ts";
import { untilDone } from "../lib/asked-again.ts";
import { cues } from "../lib/cue.ts";
import { namesIt, namesTimer } from "./named-said.ts";
import { isOver, stopsDone, stopsIt } from "./stop-said.ts";

/** "tell me", "give me a shout": who is to be told at a moment. */
const telling =
  "(?:(?:tell|shout|warn|ring|ping|buzz|beep|call|wake|poke|nudge|alert|remind|let|lemme|say|holler|yell)(?: (?:me|us|know|at me|to me|out))*|give (?:me|us) an? (?:shout|nudge|ping|ring|call|beep|buzz|yell|holler|bell))";
/** What keeps for a while: asked how long, and no timer. */
const food = "(?:macaron|\\bmacs\\b|filled|fridge|freezer|counter|leftover)";
const howLong = "how (?:long|much time|much longer|many min\\S*|many minutes)";

const asked = "(?:(?:(?:can|could|would|will) you|i need you to|also|just|lets|go ahead and) )*";
const one = "(?:one|another(?: one)?|a new one)";
/** What a timer is for, to the end: no count, weight or moment of an order for macarons. */
const uncounted =
  "(?!.*(?:{weight}|{macarons}|{count=(?:macarons|shells|batches)}|{when}))(?:the |my |this |that |those |these )?(?:{count=trays} (?:{number}|[a-z])|(?!.*{number})\\S+(?: \\S+){0,3})(?: (?:please|pls|too|as well|also|now|[.!?]))*$";

export const timerCues = cues(
  // "3 hrs ok?", "is 14 min too long": of what nobody said, and no order
  [
    -9,
    // "sat 1 hour on the counter, still tacky", "macs sat out 2 hours before baking"
    "{time} (?:\\S+ )*?(?:still|yet) (?:a bit |bit |quite |so )?(?:tacky|sticky|wet|stick\\S*)(?: |$)",
    "(?:sat|stood|were|been) (?:out |there )?(?:for )?{time} (?:\\S+ ){0,3}?before (?:\\S+ ){0,2}?(?:bak\\S*|going|they|it|i)",
    "^(?:(?:and|so|is|are|would|be|its|but) )*{time} (?:(?:is|be|still|that) )*(?:ok|okay|safe|fine|alright|enough|too long|too short|too much)(?: (?:for (?:them|it|that|those)|then|or not))*(?: [?])?$",
  ],
  // "whisked 10 min, is that too long": judged, and nothing to wait for
  [
    -9,
    "^(?!.*(?:timer|alarm|countdown)).*{time} .*(?:is|was) (?:that|it|this) (?:too (?:long|short|much)|long enough)",
  ],
  // "i worked two hours": told of what has passed
  [
    -9,
    "(?:i|we|ive|weve|have|has) (?:worked|laboured|labored|spent) (?:for |about |around |like |another )*{time}",
    // "filled them 3 hours ago, how long in the fridge"
    "(?:filled|assembled|boxed|froze|frozen|thawed)\\S* (?:(?:them|it|these|all|about|only|just|around) )*{time} ago",
  ],
  // "set one up for the cream": what is set or started with no count is a timer
  [
    7,
    `^${opening}${asked}(?:(?:set|start|put|get|pop|stick\\S*) (?:me )?${one}(?: (?:up|off|on|going|running|ticking|too|also|more))*|(?:set|start) (?:up )?(?:one|another)) (?:for|on|at) (?!(?:the |this |my )?(?:side|table|tray|rack|shelf|fridge|freezer|bench|counter|list|top)$)${uncounted}`,
  ],
  // "put one on for cooling and one for the ganache"
  [
    9,
    `^${opening}${asked}(?:(?:i|we) )?(?:set|start|put|get|run|begin|pop|stick\\S*|need|want|make|give|do) (?:me )?(?:a timer|one|another)(?: (?:timer|up|off|on|going|running))* for (?:the |my )?\\S+(?: \\S+)? (?:and|,|plus|, and) (?:one|another|a second)(?: (?:timer|one|on|up|going))* for `,
    `^${opening}(?:a timer|one) for (?:the |my )?{step}(?: (?:please|pls))? (?:and|,|plus|, and) (?:one|another|a second) for `,
  ],
  // a length, and the order to time it behind all that was told: "ganache is runny, 30 min in the fridge, time it"
  [
    8,
    "{time} .* , (?:(?:and|so|please|can you|could you|will you|would you) )*(?:time (?:it|that|them|this)|clock (?:it|that)|(?:set|start|run|put on) (?:a |the |me a )?(?:timer|countdown|alarm)|count it down)(?: (?:for me|for it|for that|please|pls|will you|would you|now|then))*$",
  ],
  // "how much longer til saturday 4pm": told, and nothing set
  [
    14,
    `^${opening}(?:how (?:long|far|much (?:time|longer)|many (?:hours|days|minutes|hrs|mins)\\S*)|(?:time|hours|days|minutes)(?:<\\S*>)?)(?: (?:is|it|there|do|we|i|have|got|left|still|off|away|are|more|longer|time|now|the))* (?:till|until|til|to|before) (?:the )?{when}(?: [?])?$`,
  ],
  // "pasta is done stop it", "cancel the bread"
  [9, ...stopsDone],
  // "the syrup timer ought to be named caramel"
  [9, ...namesTimer],
  // "16 mins please, hands full of batter"
  [8, "^{time} (?:please|pls)(?: ,| [.!]|$)"],
  // "minutes left now?"
  [
    9,
    "^(?:(?:how many|any|and) )*(?:minutes|mins|min|time|seconds) left(?: (?:now|then|please|pls|on it))*(?: [?])?$",
  ],
  // "skin's not forming, it's raining": no shell is told to ring
  [-9, "^(?!.*<time)(?!.*timer)(?:.* )?{symptom=no skin}"],
  [
    9,
    // "tell me when it is ten to eleven", "shout when 20 minutes are up"
    `${telling} (?:when|once|as soon as|after) (?:(?:it|its|the|clock|time|is|gets?|hits?|reaches|says|reads|shows|strikes|turns|comes|to|has|been|at|about|around|nearly|only|just|gone) )*{when}`,
    `${telling} (?:when|once|as soon as|after) (?:(?:it|its|the|has|have|been|another) )*{time} (?:is|are|has|have|up|over|passed|gone|done|by|elapsed)`,
    `${telling} (?:when|once|as soon as|after) (?:its|it has|it is|theres|there have) (?:been |gone )?{time}(?: [?])?$`,
  ],
  // "how long do i have on the syrup", and not out of the fridge
  [
    9,
    `^${opening}${howLong} (?:do|did|have|will) (?:i|we) (?:(?:still|got|have|left) )*on (?!.*${food}|(?:the |a )?(?:side|table|bench|worktop|stand|stall|market|shelf|road|way|bus|train|display|diet))(?:the |my |that )?\\S+(?: \\S+)?(?: (?:still|left|now|then|timer|one))*(?: [?])?$`,
    `^(?!.*${food}).*(?:needs?|has|have|got|takes?|wants?|is|gets?) (?:still )?${howLong} (?:still|left|more|yet|longer|to go)(?: (?:now|then))*(?: [?])?$`,
    `^(?!.*${food}).*still (?:needs?|has|have|got|takes?|wants?) ${howLong}(?: [?])?$`,
    `^${opening}(?!.*${food})${howLong} (?:does|do|has|have|will|is) (?:the |my )?\\S+(?: \\S+)? (?:still (?:need|have|got|take|got left)|(?:need|have|got|take) (?:still|yet))(?: [?])?$`,
    `^${opening}${howLong} still (?:on|for|with) (?!.*${food})(?:the |my )?\\S+(?: \\S+)?(?: [?])?$`,
  ],
  // "one more of 50 min for the ganache"
  [
    7,
    "(?:^|and |then |also )(?:one|another|a second|a third)(?: more| other| extra| new)?(?: timer| one| alarm)? (?:of|at) {time}",
    `^${opening}(?:put|stick\\S*|pop|add|slap|whack|bung|chuck|tack|throw) (?:the |those |these |another )?(?:{number}|{time}) (?:(?:more|extra|minutes|min|mins) )*(?:on )?(?:again$|back)(?: again| please| (?:on|to|onto)(?! (?:the |a |my )?(?:shelf|rack|tray|mat|table|list|scales?))|$)`,
  ],
  // "call it 160": a number is no name
  [
    -9,
    `^${opening}(?:(?:lets|just|we can|you can|better) )*(?:call|name) (?:it|that|this) (?:(?:an?|about|around|even|roughly|just|round) )*(?:{number}|{weight}|{percent}|{temperature}|{length}|{volume}|{money})(?: (?:then|please|pls|flat|instead|grams|g|and be done))*$`,
  ],
  // told of what stood out of the fridge
  [
    -12,
    "(?:left|had|forgot|kept) (?:(?:them|it|these|those|the \\S+|\\S*<\\S+>) )?out (?:for |about |around |like )*{time}",
  ],
  [
    9,
    "^(?:(?:and|so|ok) )*(?:what time|whats the time|what is the time|when|what hour) (?:will (?:it|that) be|is it|is|would (?:it|that) be)(?: (?:in|after) {time}| {time}| now)?(?: [?])?$",
    "^(?:all )?timers? off$",
  ],
  [
    -9,
    "(?:been|were|was) (?:in|in there|in the oven|out|resting|baking|drying|{step=rest}|{step=bake}|there|sitting|standing) (?:for |about |around |like |nearly )*{time}",
    "(?:took|pulled|got) (?:them|it|the \\S+) out after {time}",
    "{time} so far",
    "^(?:(?:they|and|all) )*out (?:for )?{time} (?:at|in|on) (?:the |a )?(?:market|fair|stall|fete|party|picnic|sun|car|show)",
    "^{number} of (?:them|those)(?: [?])?$",
  ],
  [-9, "(?:find|book|call|order|get) me (?:a |an )(?!timer|alarm|reminder|new|{time})"],
  [-9, "^(?:(?:and|but|so|well|oh|no|yes|ok) )*(?:i|we) (?:just |only |had )?baked<\\S* .. {time}$"],
  [-9, "(?:snow|rain|weather|sunny|storm)"],
  [-9, "^(?:and |but )*it takes (?:me |about |around )*{time} (?:to|in|for|until)"],
  [4, "^(?:and |so |ok )*how (?:much|long) (?:time )?(?:is )?(?:still )?left(?: now)?(?: [?])?$"],
  [
    6,
    "(?:should|ought to|supposed to|meant to) (?:only )?(?:be|have been|run|last) .. {time} .. timer",
    "timer (?:should|ought to|was supposed to|was meant to|is supposed to) (?:only )?(?:be|have been|run|last) (?:{time}|{number})",
    "{time} on the (?:clock|timer)",
    "^{count=trays} {number} (?:is |are |all )?(?:piped|{use=piping}|in|done|out|baked|{step=bake}) , (?:{step} )?(?:{number}|{time})(?: (?:{unit=min}|min|minutes))?$",
    "^(?:(?:ok|okay|now|so|and|please|right) )*(?:start|begin|time) (?:the |a )?{step}(?: (?:now|please|then))*$",
  ],
  [
    -9,
    "book (?:me|us|a) ",
    "(?:^|, |it |they |that |all )took {time}",
    "(?:came|turned|come) out .. (?:changed?|wrong|why|what|fix)",
    "(?:why|what) .. (?:came|turned|come) out ",
  ],
  [
    -6,
    "what (?:do|should|shall|must) i set(?: it| the oven| mine)?(?: (?:to|at))?(?: [?])?$",
    "oven (?:runs|reads|is) .. (?:hot|cold|high|low)",
  ],
  [4, "(?:could|can|will|would) you (?:ring|buzz|beep) (?:me )?(?:at|in) (?:{number}|{when}|{time})"],
  [3, "^(?:please |ok |and )*(?:list|show) (?:me )?(?:them|those|em)(?: all)?(?: please| pls)?$"],
  [
    6,
    "time (?:remaining|left|to go)(?: [?])?$",
    "(?:make|set|start|do|give me) (?:another|a second|one more) .. {time}",
    "{time} .. set (?:both|all|them|these|those)",
    "(?:push|move|put) (?:it|that|this) (?:back|on|out|forward) by {time}",
    "{time} on top",
    "^{time} (?:less|more|longer|extra)$",
    "{time} .. (?:beep|buzz|ring|shout|ding|ping|call) (?:me )?(?:when|once|at)",
    "(?:alarm|beep|buzz|ring|shout) (?:me )?(?:for|at) .. {when}",
    "how much longer$",
    "{time} for (?:the )?(?:fridge|oven|freezer|counter)",
  ],
  [
    8,
    "how (?:many|much) \\S+ (?:still|left|more) (?:for|on)",
    "\\S*<step\\S* [+-] {time}",
    "(?:take|knock|cut) {time} (?:off|away)",
    `^${opening}make (?:that|the|this) .. timer {time}`,
  ],
  [
    5,
    "how much (?:time )?(?:is )?(?:still )?left on",
    // "and what's left on the bake", behind something else
    "^(?:(?:and|so|ok|now|then|oh) )*(?:whats|what|how much|how long|anything|any|is|have|do) (?:(?:is|have|has|i|ive|got|there|time|still|much|any|anything|do|we|it|long) )*(?:left|remaining|remains|to go) (?:on|for) (?:the |my )?(?:{step=(bake|rest|cool|mature|ganache)}|{remainder}|{base=ganache})(?: (?:timer|now|then|please|pls))*(?: [?])?$",
    "(?:time|minutes|how long) left \\?$",
    "let me know (?:when|at) .. {when}",
  ],
  [
    6,
    "(?:^(?:please |ok |and |now |lets )?(?:call|rename|name)) (?:it|that|this|the|my|{count=trays}|{color}|{taste}|{base}|{step})",
    "rename",
    "(?:remind|ping|nudge|buzz|wake|alert) (?:me|us) .. (?:{when}|{time})",
    "(?:need|want) reminding .. (?:{when}|{time})",
    "(?:dont|do not) let me forget .. (?:{when}|{time})",
    "(?:^(?:please |ok |and |now )?time) {time}",
    "\\S*(?:_more_|another_|_extra_)\\S*<time>",
    "(?:how )?much longer",
    "how (?:long|much time) (?:does|has|do) (?:the |my |it|that)(?: ?\\S+ )?(?:have|got|still have)(?: left| to go| still)?(?: [?])?$",
    "another {time}",
    "(?:^(?:please |ok |and |now )?(?:stop|kill|silence|dismiss|snooze))",
    "(?:^(?:please |ok |and |now )?cancel) {count=trays}",
    "^(?:please |ok |and |now |right )*(?:cancel|stop|clear) (?:all (?:of )?(?:them|those|it)|them all|the lot|every one|everything|all)(?: please)?(?: ,|$)",
    "how long .. got",
    "how much time (?:do i have|have i got|is|left|on|till|until|does|has|have)",
    "(?:change|move|reset) .. to (?:{time}|{when})",
    "set {count=trays} .. to {time}",
    "in , {time}",
    "^(?:(?:please|pls|ok|and|now|oh|also|then|so|can you|could you|,) )*time (?:the |my |this )?{base=ganache}(?: (?:please|pls|too|now|as well|for me|then|also|[.!]))*$",
    "how many \\S*min\\S* (?:remain|remaining|are left|left|to go) (?:for|on)",
    "(?:^|, )stop (?:it|that|them)$",
    "^[+] {number}$",
    "^{count=trays} {number} (?:is |are )?(?:now )?{step}(?: now)?$",
    "{count=trays} {number} (?:is |are |, )?{step}(?: for| ,)? {number}",
    "{count=trays} (?:is |are )?(?:in|out) , (?:\\S+ )?timer",
  ],
  [
    5,
    "(?:set|start|begin|run) .. timers?",
    "timers? .. {time}",
    "{time} .. timers?",
    "(?:stop|cancel|kill|end|pause|restart|rename|delete|clear|silence) .. (?:timers?|alarms?)",
    "(?:alarms?|timers?|countdown|count down) .. (?:{when}|{time})",
    "any(?:thing)? .. timers?",
    "(?:is |are |have i got )?(?:anything|something|any) (?:timing|timed)",
  ],
  [
    4,
    "(?:ping|nudge|buzz|ring|wake|alert|remind|shout|tell) (?:me|us) .. (?:{when}|{time})",
    "(?:remind|nudge) (?:me|us) to",
    "(?:let|lemme) (?:me )?\\S+ (?:at|in|when) (?:{when}|{time})",
    "(?:ring|reminder|nudge) .. (?:{when}|{time})",
    "{time} (?:on the clock|time it|please start)",
    "(?:set|put|start) (?:me )?(?:a |an |another )?{time}",
    "(?:put|add) {time} (?:on|to)",
    "{time} on (?:for|the)",
    "(?:set|start) (?:something|somthing|it) .. (?:{when}|{time})",
    "give (?:it|that|them|this|the .. one|{count=trays}|the {thing}) .. {time}",
    "add {time}",
    "(?:take|knock|shave|cut) (?:{time}|{number}) .. (?:off|from)",
    "make (?:it|that) {time} (?:less|more|longer|shorter)",
    "how (?:long|much time|much longer|many minutes|many min) .. (?:left|remaining|to go)",
    "how (?:long|much longer) (?:is there |have i got |has it got |left )?(?:on|till|until) ",
    "(?:how )?much longer",
    "time left",
    "{when} (?:shout|yell|holler|beep|ping|buzz|nudge|poke|warn)",
    "whats (?:still |now |everything )?(?:running|going|ticking)",
    "what (?:have|do) i (?:got|have) (?:going|running|on|ticking)(?: (?:now|still|at the moment))?(?: [?])?$",
    "whats on the timers?",
    "(?:start|set|begin|run) (?:me )?(?:a |the )?(?:countdown|count down)",
    "{time} (?:for|on) {count=trays} {number}",
    "^(?:(?:and|so|ok) )*whats (?:still )?on(?: (?:now|right now|at the moment|the clock))?(?: [?])?$",

    "(?:shout|yell|holler|beep|poke|warn)(?: (?:at )?me)? .. (?:{when}|{time})",
    "what .. (?:running|ticking)",
    "(?:anything|any) .. (?:running|going|ticking)",
    "timers?",
    "time (?:the|my|this|that|it|them) .. (?:{time}|for me)",
    "(?:would|could|can) you time ",
    "time (?:it|them|that)",
    "stop (?:all|both|everything|it all|them)",
  ],
  [
    8,
    "{count=trays} (?:one|two|three|four|{number}) (?:needs?|wants?|gets?) (?:another )?(?:{number}|{time}) (?:more|longer|extra)",
    "what (?:was|is) {count=trays} (?:one|two|three|four|{number}) (?:timer )?(?:set|on) (?:to|for|at)",
  ],
  [
    3,
    "(?:^{time}) (?:for|,|\\S+ for|one|and)",
    "{count=trays} (?:one|{number}) .. {time}",
    "{step} (?:for )?{time}",
    "{time} .. {step}",
    "how (?:long|much longer) (?:for|on|till|until) (?:the|my|it)",
    "hows (?:the|my) .. (?:one|timer|doing|going|coming)",
    "{time} (?:more|extra|longer|less)",
    "snooze",
    "(?:start|begin) .. {time}",
    "(?:^(?:please |ok |and |now )?(?:stop|cancel|kill|silence|dismiss|restart|pause|resume|snooze))",
    "(?:take|knock|shave|cut) .. off",
    "(?:is|are) .. (?:timers?|one) .. (?:done|up|finished|over|still)",
    "when (?:does|will|is) .. (?:ring|go off|up|finish|over|done)",
    "wake me|ping me|remind me",
    "(?:extend|stretch|shorten|lengthen) .. {time}",
    "alarms?",
  ],
  [
    2,
    "(?:^(?:no|nope|oops|sorry|actually|wait|i meant|i mean|make (?:it|that))) .. {time}",
    "(?:the|and) .. {step} (?:one|too)",
    "add {number}",
    "(?:set|start|begin) .. {step}",
  ],
  [1, "{time}", "{when}", "how long"],
  [
    -3,
    "(?:usually|normally|normaly|typically|usual|average|on average)",
    "(?:when|how early) (?:do|should|must) i (?:start|begin|have)",
    "(?:work|plan) .. back",
    "calendar",
    "from now on",
    "(?:note|log|record|jot) ",
    "{weight}",
    "how long (?:do|does|should|can|will|to|must|did) ",
    "how long .. (?:fridge|counter|filled|shelf)",
    "(?:keep|last|freeze|freezer|good|safe|eat)",
    "ready (?:by|for|at|on)",
    "{macarons} .. {when}",
    "{count=macarons} .. {when}",
    "{unit} (?:in|to) {unit}",
    "{time} in {unit}",
    "how many {unit}",
  ],
  [
    -6,
    "(?:remind|tell) me (?:what|how|which|when(?! (?:(?:it|its|the|clock|time|is|has|been|hits|gets|to|says) )*\\S*<(?:when|time))|why|where|who)",
  ],
  [-2, "{temperature}", "my .. (?:time|oven) (?:is|to)", "{percent}"],
);

/** "tray 2 as well now", "correction 20 min", behind a timer that was set. */
export const timerGoesOn = cues(
  // "extend the syrup one to 30": no range
  [
    14,
    `^${opening}(?:shorten|extend|stretch|lengthen|move|change|set|make|reset|push|turn|cut\\S*|bring|reduce) (?:the|my|that) \\S+ one(?:<number>)?[_ ]to[_ ]\\S*<(?:number|time)\\S*`,
  ],
  // "how long till theyre done maturing": of the timer that runs, and no rule of how long it takes
  [24, ...untilDone],
  // "ditch it", "dont need that one anymore", "the syrup one can stop"
  [9, stopsIt, isOver],
  // "ten on top of that", "on top of that 10", "give lime 4 longer"
  [
    9,
    `^${opening}(?:.* , )?(?:and |so |please )*{number} (?:min |minutes )?on top(?: of (?:it|that|this))?(?: (?:please|then|now))*$`,
    `^${opening}(?:.* , )?on top (?:of (?:it|that|this) )?(?:{number}|{time})(?: (?:min|minutes|please|then))*$`,
    `^${opening}(?:give|let) (?:the |my )?\\S+(?: one| timer)?(?: have| run| go)? (?:another )?{number} (?:minutes |min )?(?:more|longer|extra)(?: (?:please|then|now))*$`,
    "^(?:(?:please|pls|ok|and|now|so) )*read (?:them|those|em|all of them)(?: all)?(?: (?:out|back|off|to me|again|please))+(?: [?])?$",
  ],
  // "then cooling, usual time": a step behind a timer, for as long as it takes by itself
  [
    14,
    `^${opening}(?:(?:the|for|start|next) )*{step=(rest|bake|cool|mature)}(?: (?:timer|next|then|now|one))*(?: ,| for| at| with)? (?:(?:the|its|my|for|at|with) )*(?:usual|normal|standard|default|regular|ordinary)(?: (?:time|length|minutes|amount|one|please|pls|then|now))*$`,
  ],
  // "i need one for the shells resting"
  [
    12,
    `^${opening}${asked}(?:(?:i|we) )?(?:(?:also|still|now) )*(?:(?:need|want|could do with|could use|can i (?:have|get)|may i have|give me|gimme|lets have|make|do|add|with) )?${one}(?: (?:more|too|also|up|on|going|running))* for ${uncounted}`,
  ],
  // "the boil one should be named raspberry"
  [14, ...namesIt],
  // "what else is going", "anything still on", "whats left then"
  [
    12,
    `^${opening}(?:(?:what|whats)(?: else)?|(?:anything|any) (?:else|others?)|anything|which (?:ones?|others?)) (?:(?:is|are|s|do i have|have i got|i have|ive got|have we got|there|still|left|else|now) )*(?:going|running|on|ticking|counting|left|set|there|active|to ring)(?: (?:still|now|then|at the moment|right now))*(?: [?])?$`,
    `^${opening}(?:the|any) (?:others?|rest|other (?:ones?|timers?))(?: [?])?$`,
    // "timers on which": one-handed
    `^${opening}timers?(?: (?:on|running|going|up|set|there|now))* (?:which|what|whats)(?: (?:on|up|set|there|are|is|now))*(?: [?])?$`,
  ],
  // "call it 20", "how long do i have for the syrup", "syrup, how much longer", "time on the oven"
  [
    14,
    `^${opening}(?:(?:lets|just|we can|you can|better) )*(?:call|name) (?:it|that|this) (?:(?:an?|about|around|even|roughly|just) )*(?:{number}|{time})(?: (?:min|mins|minutes|then|instead|please|pls))*$`,
  ],
  [
    9,
    `^${opening}${howLong} (?:do|have|did|will) (?:i|we) (?:(?:still|got|have|left) )*(?:for|with|on) (?!.*${food})(?:the |my |that )?\\S+(?: \\S+)?(?: (?:still|left|now|then|timer|one))*(?: [?])?$`,
    `^${opening}how (?:much|long) (?:has|have|does|do) (?:the |my )?(?!.*${food})\\S+(?: \\S+)? (?:got|have)(?: (?:left|still|now))*(?: [?])?$`,
    `^${opening}(?:the )?(?:time|minutes)(?: left)? (?:on|for) (?:the |my )?\\S+(?: \\S+)?(?: [?])?$`,
    `^${opening}(?!.*${food})(?:the |my )?(?:\\S+ ){1,3}(?:(?:needs?|has|have|got|takes?|wants?|still) )*${howLong} (?:still|left|more|yet|longer|to go)(?: (?:now|then))*(?: [?])?$`,
  ],
  [12, "^(?:(?:and|now|ok) )*{count=trays} {number} (?:as well|too|also)(?: now)?$"],
  [
    14,
    // "tray 1 is out": its timer is over
    "^(?:(?:and|now|ok|the) )*{count=trays} (?:{number}|one) (?:(?:is|are|just|came|now|all) )*(?:out|done|finished|ready)(?: (?:now|already|of the oven))*$",
  ],
  [
    6,
    "(?:add|give|put|take|knock) .. (?:first|second|third|last)(?: one| timer)?(?: (?:another )?(?:{number}|{time})(?: more| extra)?)?$",
    "^(?:correction|wrong|my mistake|my bad)(?: ,| :)? .. (?:{time}|{number})$",
    "(?:should|ought to|supposed to|meant to) (?:only )?(?:be|have been|say|read|run|last) .. (?:{time}|{number})(?: not .*)?$",
    "(?:{time}|{number}) (?:, )?not (?:{time}|{number})$",
    "^not (?:{time}|{number}) (?:, )?(?:but )?(?:{time}|{number})$",
  ],
);

export const timerAfter = {
  // "put the rest on timers", behind a plan: the steps that are left, and no resting
  day: cues([
    -12,
    "^(?:(?:ok|okay|so|and|now|then|please|can you|great|right|good|,) )*(?:put|set|turn|make|get|start|stick|run) (?:me )?(?:all )?(?:of )?(?:the |\\S*_)?(?:rest|remaining|others?|whats left|what is left)\\S* .. timers",
    "timers? (?:for|on) (?:all )?(?:of )?(?:the |\\S*_)?(?:rest|remaining|others?|whats left|what is left)\\S*(?: of (?:it|the (?:plan|day|steps))| steps| please| pls)*$",
  ]),
  method: cues([
    12,
    "^(?:(?:ok|okay|so|and|right|great|thanks|please|cool|good|then|now|,) )*(?:set|start|begin|time|run|put) (?:it|that|this|one|(?:a|the|that) timer)(?: (?:going|off|on|now|up|please|pls|then|for (?:me|it|that|this)))*$",
    "^(?:(?:ok|okay|so|and|right|great|thanks|please|cool|good|then|now|,|a|the) )*timer(?: (?:please|pls|then|now|for (?:it|that|this|them)))*$",
  ]),
  // "start the timer for it", behind a ganache
  ganache: cues([
    20,
    "^(?:(?:ok|okay|so|and|right|great|please|good|then|now|,) )*(?:set|start|begin|run|put) (?:a|the|that) timer(?: (?:on|now|please|pls|then|for (?:it|that|this)))+$",
  ]),
};
