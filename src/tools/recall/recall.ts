/** What the notes say: batches by flavor, day, rating and fault; the last, the best, the usual. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { whichDay } from "../lib/asked-again.ts";
import { cues } from "../lib/cue.ts";
import { amongNoted } from "./among-noted.ts";
import { answerRecall } from "./answer.ts";
import { Period } from "./period.ts";
import { asksTrouble, readRecall } from "./read.ts";
import { onRecord } from "./said.ts";

/** What a batch is asked for its usual of, by the note's field. */
export const measures = [
  "bake",
  "rest",
  "mature",
  "oven",
  "macarons",
  "shells",
  "trays",
  "diameter",
  "dose",
  "batter",
  "filling",
  "rating",
] as const;

export const inputs = later(() =>
  z.strictObject({
    want: z.enum(["list", "last", "first", "best", "worst", "typical", "count", "total", "compare"]),
    measure: z.optional(z.enum(measures)),
    flavors: z.optional(z.array(z.string())),
    problems: z.optional(z.array(z.string())),
    praise: z.optional(z.array(z.string())),
    period: z.optional(Period),
    /** A rating out of 10, both ends included unless `above` or `below` say that they aren't. */
    rating_from: z.optional(z.number()),
    rating_to: z.optional(z.number()),
    strictly: z.optional(z.boolean()),
    /** Heat and times that a note has to have, in °C and min. */
    oven_c: z.optional(z.number()),
    bake_min: z.optional(z.number()),
    rest_min: z.optional(z.number()),
    /** How many batches before the last that fits: "and the one before". */
    back: z.optional(z.number()),
    /** Words that nothing else explains: the notes that have them are meant. */
    words: z.optional(z.array(z.string())),
    fahrenheit: z.optional(z.boolean()),
  }),
);

export type RecallInputs = z.infer<ReturnType<typeof inputs>>;

export const recall = tool<RecallInputs>({
  name: "recall",
  purpose: "Past batches by flavor, day, rating or fault; the last, the best, and what you usually do",
  inputs,
  cues: cues(
    // "my notes on coconut", "coconut, what did i write down": read out, and none added
    [
      24,
      "^(?:(?:please|pls|and|ok) )*recall (?:the |my )?{taste}(?: (?:ones?|notes?|please|pls|again|{count=(?:batches|macarons|shells)}))*(?: [?])?$",
      "^(?:(?:my|the|all|any|and|ok|so|please|pls|our) )*notes? (?:on|about|for|of|from|regarding) (?:the |my )?{taste}(?: (?:ones?|please|pls|again|{count=(?:batches|macarons|shells)}))*(?: [?])?$",
      "^(?:(?:and|ok|so|the|my) )*{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))? (?:, |: |- )?what (?:did|have|had) i (?:write|written|note|noted|put|log|logged|jot|jotted|say|record|recorded)(?: down)?(?: (?:about|on|of|for) (?:it|them|that|those))?(?: (?:last time|again|then))*(?: [?])?$",
    ],
    // "any with wrinkled tops in there", "anything browned in the log": of what was noted
    [9, ...amongNoted],
    // "were there any problems with them": what was noted
    [4, asksTrouble],
    [
      8,
      "(?:what|which) (?:score|rating|mark|marks)\\S* (?:did|have) i (?:give|given|gave)? ?(?:the |my )?(?:{taste}|them|it|that)",
    ],
    [
      7,
      "^(?:(?:and|so|ok) )*how(?:d|s| did| does| is| was| were)? (?:the |my )?{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))? (?:do|go|come out|turn out|fare|doing|rate|rated|score|scored)(?: out of (?:ten|{number}))?(?: [?])?$",
      // "what did raspberry score", "what did i score the raspberry", "raspberry score?"
      "^(?:(?:and|so|ok) )*what (?:did|does|have) (?:the |my )?{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))? (?:score|rate|get|scored)(?: out of (?:ten|{number}))?(?: [?])?$",
      "^(?:(?:and|so|ok) )*what (?:did|have) (?:i|we) (?:score|scored|rate|rated|mark|marked|give|given) (?:the |my )?{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))?(?: out of (?:ten|{number}))?(?: [?])?$",
      "^(?:(?:and|so|ok|whats|what|is|was|the|my) )*{taste}(?: (?:ones?|{count=(?:batches)}))? (?:score|rating|marks?)(?: [?])?$",
      "^(?:(?:and|so|ok) )*how many (?:out of (?:{number}|ten)|stars|points|marks) (?:for|to|on) (?:the |my )?{taste}(?: (?:ones?|{count=(?:batches)}))?(?: [?])?$",
    ],
    // "remind me how the peanut butter ones came out"
    [
      9,
      "(?:remind me|tell me|let me know|show me|i forget|i forgot|remember|recall|know|idea|cant remember|dont remember|not sure|see|look up|check) (?:again )?(?:how|what) (?:the |my |that |those |our )?(?:last )?(?:\\S+ )?{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))? (?:(?:came|turned|worked|ended) (?:out|up)|went|did|were|was|had been|tasted|looked|got)",
      "how (?:the |my |that |those |our )(?:last )?{taste}(?: (?:ones?|{count=(?:batches|macarons|shells)}))? (?:came|turned|worked|ended) (?:out|up)",
    ],
    [
      8,
      "what (?:have i|had i|do i have|have we|had we|did i|was it i|it was i)(?: got| ever)? (?:written|wrote|noted|logged|recorded|jotted|put)(?: down)? (?:on|about|for|of|with) (?:the |my )?{taste}",
    ],
    [
      9,
      "^(?:(?:so|and|ok|whats|what is|my|the|give me|show me) )*(?:average|mean|typical|usual) (?:score|rating|mark)s?(?: (?:so far|of all|in all|of mine|over all))*(?: [?])?$",
    ],
    // "how hot was the oven for the rose", "how many out of ten did pistachio get"
    [
      12,
      "how hot (?:was|did i (?:have|run|set)|were) (?:the |my )?oven (?:for|with|on|when) .. {taste}",
      "how many (?:out of (?:{number}|ten)|stars|points|marks) (?:did|has|have|was|were) (?:i |we |the |my )*(?:gave |give |given )?(?:the |my )?{taste}",
      "{taste} .. how many (?:out of (?:{number}|ten)|stars|points|marks) (?:did|was|were|has)",
    ],
    // "remind me which flavour i baked last tuesday": a day that has passed
    [
      12,
      "(?:remind me|tell me|let me know|show me|i forget|i forgot|look up) (?:again )?(?:what|which|whose) (?:\\S+ ){0,2}(?:i|we) (?:\\S+ )?(?:baked|made|did|piped|\\S*<step=bake>) .. {when}",
    ],
    // "what was i baking last saturday", "which macarons were we making on 7 march"
    [
      9,
      "(?:what|which) (?:i was|was i|we were|were we) up to .. {when}",
      "(?:what|which)(?: (?!{base}|{ingredient})\\S+){0,2} (?:was|were|had) (?:i|we) (?:baking|making|piping|baked|made|piped|\\S*<step=bake>) (?:on |back on |the )?{when}",
    ],
    // "have i got anything written down about gooseberry", "whats on file for cherry"
    [9, ...onRecord],
    // "what did i write down last", "which was better", "compare the two", "any tips from my notes"
    [
      18,
      "^(?:(?:and|so|ok) )*(?:what|which)(?: \\S+){0,2} (?:did|have|had) (?:i|we) (?:note|noted|write|wrote|written|log|logged|record|recorded|jot|put)(?: down)? (?:last|most recently|latest)(?: [?])?$",
      "^(?:(?:and|so|ok|please|can you|now) )*compare (?:(?:the|those|these|last) )*(?:{number}|both|both of them|them|those|these)(?: (?:notes|please|{count=batches}))*(?: [?])?$",
      "^(?:(?:and|so|ok) )*which (?:one |batch |of (?:them|the two|those|these|both) |\\S*<count=batches> )?(?:was|were|came out|turned out|tasted|went|did) (?:the )?(?:better|best|nicer|worse|worst)(?: one)?(?: [?])?$",
      "(?:any|what|some|got) (?:tips|lessons|advice|pointers|learnings?)\\S* .. notes?(?: [?])?$",
      "what (?:can|could|do|did|should) i learn(?:ed)? from (?:my|the) (?:notes?|{count=batches})(?: [?])?$",
    ],
    // "how long did they rest", "how hot was the oven for the party": of what was baked
    [
      8,
      "^(?:(?:and|so|ok) )*how long (?:did|have|had) (?:they|it|those|these|the last ones?) (?:\\S+ )?{step=(?:rest|bake|mature)}(?: (?:for|last time|then|in the end))*(?: [?])?$",
      "^(?:(?:and|so|ok) )*how hot (?:was|did i have|had i) (?:the |my )?oven(?: (?:for|on|at) .*)?(?: (?:then|last time))*(?: [?])?$",
    ],
    // of what was worked out just now, and no note
    [-9, "(?:thats|that is|its|it is) what i (?:made|did|have|had|got|used|put)"],
    [5.5, "how (?:often|many times) (?:do|did|have) i"],
    [8.5, "how (?:long|hot|much|many) (?:do|did) i .. as a rule", "^as a rule .. (?:do|did) i"],
    // "the last one cracked. how long should they rest this time": what is best, and no note
    [
      -9,
      "(?:how|what) (?:\\S+ )?(?:\\S+ )?(?:should|shall|ought|must|would|do) (?:i|we|they|you) .. (?:this|next) time(?: round| around)?(?: [?])?$",
    ],
    [-8, "last time .. (?:,|so) (?:go|make it|try|use|do) {number}"],
    [12, "^(?:show |list |read |see |all )*(?:me )?(?:my|the|all) notes?(?: please| pls)?(?: [?])?$"],
    [
      10,
      "what (?:went|was|happened) (?:wrong )?(?:with|to) (?:the |my |that )?{taste}(?: {count=batches}| ones?)?(?: last time| the last time)?(?: [?])?$",
    ],
    [8.5, "(?:how|what|which|whats) .. (?:do|did) i (?:usually|normally|normaly|typically|generally|tend)"],
    [
      6,
      "(?:compare|comparing) .. (?:{taste}|{count=batches}|last|notes?)",
      "{count=batches} .. (?:compared|against|versus|vs) .. (?:last|before|previous|earlier)",
      "^(?:show|me|my|the|all|list|please|pls| )*ratings? (?:of|for|over) .. (?:{taste}|{count=batches})",
      "^(?:show|me|my|the|all|list|please|pls| )*{taste} ratings?(?: over time)?(?: [?])?$",
    ],
    [
      5,
      "(?:pull|bring|call|look) up .. (?:{taste}|{count=batches}|notes?)",
      // "what did i say about banana"
      "what (?:did|have) i (?:say|said|put|think|thought|mention|mentioned) (?:down )?(?:about|on|of|for) (?:the |my |that )?{taste}",
      // "pull up the ones that stuck"
      "^(?:(?:please|pls|can you|ok|now|and|so) )*(?:(?:pull|bring|call|look|dig) (?:me )?(?:up|out)|show me|list|find(?: me)?|read me) (?:all )?(?:the |any |my )?(?:ones?|{count=batches}) (?:that|which|with|where|what) .. {symptom}(?: [?.])*$",
      "(?:pull|bring|dig|look|call) (?:the |my )?{taste}(?: ones?| notes?| {count=batches})? (?:up|out)",
      "^(?:(?:please|pls|can you|could you|ok|now) )*open (?:the |my )?{taste}(?: ones?| {count=batches})?(?: please| pls)?$",
      "what (?:went|was|happened) (?:wrong )?(?:with|to) (?:the |my |that )?{taste}",
      "{taste} notes?(?: now| then| again| please| pls)?$",
      "^(?:the |my |and )*last (?:{taste} )?{count=batches}(?: [?])?$",
      "(?:typical|usual|average|normal) .. for {taste}",
      "(?:typical|usual|average) {step}",

      "anything .. notes? .. (?:on|about|for)",
      "how (?:did|was|were) .. {taste} .. (?:go|come|turn|do|work|fare)",
      "what was it .. (?:bake|made|make|{step=bake})",
      "(?:which|what) {count=batches} .. (?:went|came|got|had|were|was|turned)",
    ],
    [
      6,
      "(?:which|what) (?:of my |of the )?{count=batches}",
      "what (?:did|have) i (?:bake|baked|make|made|pipe|piped|do|note|noted|write|written|{step=bake})",
      "typical .. (?:{step}|{time}|time|rest|temperature|oven)",
      "{taste} : (?:typical|usual|last|best|average)",
      "(?:last|best|first) {count=batches}(?: [?])?$",
      "^{taste} notes?(?: please| pls)?$",
      "(?:top|best|highest|worst|lowest).rated",
      "my (?:best|top|worst|highest|favourite|favorite) .. {count=batches}",
      "(?:any|which|what) .. (?:in|from) (?:my|the) notes?",
      "when (?:did|was it|have) i (?:last |first )?(?:bake|make|made|did|do|{step=bake})",
      "(?:when|whens) .. (?:last|first) time",
      "last time i",
      "(?:what|which) i (?:did|made|baked|make|bake|{step=bake})",
      "how i (?:did|made|baked) ",
      "(?:what|which|how much) .. did i use",
      "(?:show|find|see|read|list|get|pull up|bring up|look up|whats in|what do) .. (?:notes?|{count=batches})",
      "(?:did|have) i (?:ever |already )?(?:make|made|bake|baked|try|tried|do|done|{step=bake})",
      "how (?:did|were|was) .. (?:turn|come|came|turned) out",
      "how (?:long|hot|many|much|big|often) do i (?:usually|normally|normaly|typically|generally|always|mostly|tend)",
      "(?:what|which|whats) .. (?:usually|normally|normaly|typically|on average)",
      "(?:whats|what is|how much is|hows) my (?:usual|normal|average|typical)",
      "my (?:usual|normal|average|typical) .. (?:time|temperature|temp|dose|{step}|oven|batch|rating|score)",
      "(?:anything|everything|batches|ones|{count=batches}) .. (?:rated|scored|marked)",
      "(?:which|what|whats|who) .. (?:best|worst|favorite|favourite|highest|lowest) .. (?:batch|ones?|rated|so far|yet|i|marks?|rating|{count=batches})",
      "(?:best|worst) {count=batches}",
      "(?:which|what) .. (?:did|was|got|scored) .. (?:best|worst)",
      "{count=batches} .. (?:best|worst)",
      "how many {count=batches} (?:have|did|do)",
      "how many {count} (?:have|did) i (?:make|made|bake|baked|{step})",
      "(?:^(?:my )?notes) (?:on|about|from|for|since|with|of)",
    ],
    [
      5,
      "(?:which|any|what) (?:ones|of them|of mine|shells|{count}) .. {symptom}",
      "(?:show|find|see) (?:me )?(?:the |my )?(?:last|latest|previous|best|worst|first) ",
      "(?:the|my) (?:last|latest|best|worst) .. (?:{taste}|{count=batches})",
      "how (?:did|were|was) (?:the|my|that|those) .. (?:{taste}|ones|{count=batches}) .. (?:go|do|taste|turn|come|bake)",
      "(?:did|were|was) (?:the|my) .. (?:ones|{count=batches})",
      "have (?:my|i|the) .. {symptom} .. (?:before|ever)",
      "(?:ever|before(?! that)) .. {symptom}",
      "when did .. {symptom}",
      "(?:usually|normally|normaly) .. (?:{step}|oven|use|make|get)",
    ],
    [
      3,
      "(?:show|find) .. {taste}",
      "(?:which|what) .. {symptom}",
      "{count=batches} (?:were|was|with|that|had) .. {symptom}",
      "shwo",
      "(?:rated|rating) ",
      "last time",
      "best one",
    ],
    // "usually i rest them 40 min, batter for 24": told ahead of what is asked
    [
      -9,
      "^(?:(?:so|and|ok|well|but) )*(?:usually|normally|normaly|typically|generally|as a rule) (?:i|we) (?:\\S+ ){0,5}?(?:{time}|{temperature}|{number}|{length})(?: \\S+){0,6} (?:[,.;:-]) (?!(?:right|yes|no|correct|dont i|isnt it)(?: |$))\\S+",
    ],
    [1, "notes?", "{count=batches}", "last", "usually"],
    [
      -9,
      "(?:^(?:(?:please|pls|ok|okay|so|and|also|then|can you|could you|another) )*(?:note|log|record|jot|add to|correct|fix|amend))",
      // "what did i write down about ...": asked for, and nothing written
      "(?<!(?:what|much|anything|something|which|where|when|nothing) )(?<!(?:did|have|had|do) (?:i|we) (?:ever |just |even )?)write (?:this |that |it )?down",
    ],
    [-9, "best (?:by|before)"],
    [-6, "{symptom} .. what (?:did|have) i (?:do|done)(?: wrong)?"],
    [
      -4,
      "timers?",
      "(?:why|whats wrong|what went wrong|fix|do i change|should i change|what do i do|what to do|causes?|the cause)",
      "{weight}",
      "(?:cost|price|charge|margin)",
    ],
    [-3, "(?:start|ready|plan) ", "(?:keep|freeze|fridge|freezer|eat|safe)", "{count=macarons} .. {when}"],
  ),
  // "and what day was that"
  after: { note: cues([9, whichDay]) },
  examples: [
    {
      say: "what did i bake last sunday",
      inputs: { want: "list", period: { when: { weekday: 0, which: "last" } } },
    },
    { say: "when did i last make pistachio", inputs: { want: "last", flavors: ["pistachio"] } },
    { say: "show me the blueberry notes", inputs: { want: "list", flavors: ["blueberry"] } },
    { say: "which batches were hollow", inputs: { want: "list", problems: ["hollow"] } },
    { say: "which batch was my best", inputs: { want: "best" } },
    {
      say: "how long do i usually bake the vanilla ones",
      inputs: { want: "typical", measure: "bake", flavors: ["vanilla"] },
    },
    { say: "anything rated over 8", inputs: { want: "list", rating_from: 8, strictly: true } },
    { say: "how did the salted caramel turn out", inputs: { want: "list", flavors: ["salted caramel"] } },
    { say: "how many batches did i make in february", inputs: { want: "count", period: { month: 2 } } },
  ],
  elsewhere: [
    { say: "note vanilla batch, baked 16 min", tool: "note" },
    { say: "how long do i bake the shells", tool: "method" },
    { say: "my shells are hollow again, what went wrong", tool: "trouble" },
    { say: "how long left on the bake timer", tool: "timer" },
    { say: "what do i charge for a batch", tool: "cost" },
  ],
  // The reader goes on with an earlier question itself; nothing else of it stays in force.
  rivals: [
    [
      "want",
      "measure",
      "flavors",
      "problems",
      "praise",
      "period",
      "rating_from",
      "rating_to",
      "strictly",
      "oven_c",
      "bake_min",
      "rest_min",
      "words",
      "fahrenheit",
    ],
  ],
  read: readRecall,
  compute: answerRecall,
});
