/** Timers: set, list, how long left, more or less time, rename, stop. Each is an end on the clock. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { time_min } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { answerTimer } from "./answer.ts";
import { readTimer } from "./read.ts";

const minutes = z.number();

export const inputs = later(() =>
  z.strictObject({
    do: z.enum(["set", "until", "list", "left", "add", "move", "rename", "stop", "pause", "restart"]),
    /** What the timer is to be called, or the words that point at one. */
    name: z.optional(z.string()),
    /** With `rename`: the old and the new name in one run of words; the running timers say where to cut. */
    words: z.optional(z.string()),
    /** The new name alone. */
    to: z.optional(z.string()),
    all: z.optional(z.boolean()),
    /** "it": the timer that was spoken of last. */
    recent: z.optional(z.string()),
    for_min: z.optional(time_min),
    /** It starts when the last of those that run has rung. */
    after: z.optional(z.boolean()),
    /** Said as a range: it rings at its low end. */
    high_min: z.optional(time_min),
    /** "1:30" alone: a length or a time of day. */
    unclear: z.optional(z.string()),
    /** A bare number was taken for minutes. */
    bare: z.optional(z.boolean()),
    /** Minutes to add, below zero to take off. */
    more_min: z.optional(minutes),
    /** A moment as said, with minutes before (below zero) or after it. */
    when: z.optional(whenSaid),
    shift_min: z.optional(minutes),
    /** The step whose own time it takes when none is said. */
    step: z.optional(z.string()),
  }),
);

export type TimerInputs = z.infer<ReturnType<typeof inputs>>;

export const timer = tool<TimerInputs>({
  name: "timer",
  purpose: "Timers by name, for a length of time or until a clock time; how long is left; more, less, stop",
  inputs,
  cues: cues(
    [4, "^(?:and |so |ok )*how (?:much|long) (?:time )?(?:is )?(?:still )?left(?: now)?(?: [?])?$"],
    [
      6,
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
      "^(?:(?:actually|no|oh|ok) )*make (?:that|the|this) .. timer {time}",
    ],
    [
      5,
      "how much (?:time )?(?:is )?(?:still )?left on",
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
      "another {time}",
      "(?:^(?:please |ok |and |now )?(?:stop|kill|silence|dismiss|snooze))",
      "(?:^(?:please |ok |and |now )?cancel) {count=trays}",
      "how long .. got",
      "how much time (?:do i have|have i got|is|left|on|till|until|does|has|have)",
      "(?:change|move|reset) .. to (?:{time}|{when})",
      "set {count=trays} .. to {time}",
      "in , {time}",
      "^(?:please |ok |and |now )*time (?:the |my )?{base=ganache}$",
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
      "(?:extend|shorten|lengthen) .. {time}",
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
    [-6, "(?:remind|tell) me (?:what|how|which|when|why|where|who)"],
    [-2, "{temperature}", "my .. (?:time|oven) (?:is|to)", "{percent}"],
  ),
  after: {
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
  },
  examples: [
    { say: "set a timer for 12 min", inputs: { do: "set", for_min: 12 } },
    { say: "start the rest timer", inputs: { do: "set", name: "rest", step: "rest" } },
    {
      say: "15 minutes for tray 1 and 18 minutes for tray 2",
      inputs: { do: "set", name: "tray 1", for_min: 15 },
    },
    {
      say: "ping me at quarter past ten",
      inputs: { do: "set", when: { minute: 615 } },
    },
    {
      say: "remind me to flip the tray in 7 minutes",
      inputs: { do: "set", name: "flip the tray", for_min: 7 },
    },
    { say: "how long left on the ganache", inputs: { do: "left", name: "ganache" } },
    { say: "what's running", inputs: { do: "list" } },
    { say: "give it 2 more minutes", inputs: { do: "add", more_min: 2 } },
    { say: "take 5 minutes off the bake timer", inputs: { do: "add", name: "bake", more_min: -5 } },
    { say: "call tray 1 blue shells", inputs: { do: "rename", words: "tray 1 blue shells" } },
    { say: "stop the oven timer", inputs: { do: "stop", name: "oven" } },
    { say: "stop all the timers", inputs: { do: "stop", all: true } },
  ],
  elsewhere: [
    { say: "how long do i rest the shells", tool: "method" },
    { say: "how long do i usually bake the vanilla ones", tool: "recall" },
    { say: "note lemon batch, baked 15 min at 150", tool: "note" },
    { say: "24 macarons for tomorrow 3pm, when do i start", tool: "day" },
    { say: "how long do filled macarons keep in the fridge", tool: "keep" },
    { say: "90 minutes in hours", tool: "convert" },
    { say: "my rest time is 40 minutes from now on", tool: "bench" },
    { say: "double the house recipe", tool: "scale" },
  ],
  // Nothing of the order before stays in force: "give it 2 more" is no longer "set".
  rivals: [
    [
      "do",
      "name",
      "words",
      "to",
      "all",
      "recent",
      "for_min",
      "high_min",
      "bare",
      "unclear",
      "more_min",
      "when",
      "shift_min",
      "step",
    ],
  ],
  alone: true,
  read: readTimer,
  compute: answerTimer,
});
