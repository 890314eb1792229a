/** How long, how cold, is it still good: the published limits, worked out on the day that was said. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { temperature_c, time_min, weight_g } from "../lib/inputs.ts";
import { whenSaid as when } from "../lib/when-said.ts";
import { answerKeep } from "./answer.ts";
import { readKeep } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    about: z.optional(
      z.enum([
        "fridge",
        "outside",
        "freezer",
        "thaw",
        "cold",
        "eggs",
        "whites",
        "shelf stable",
        "activity",
        "shells",
        "again",
        "spoiled",
        "serve",
        "post",
      ]),
    ),
    /** What is kept, in her word: "ganache", "buttercream"; filled macarons when nothing is said. */
    what: z.optional(z.string()),
    made: z.optional(when),
    /** "the monday before": a week earlier than the day that was taken. */
    weeks_before: z.optional(z.number()),
    frozen: z.optional(when),
    thawed: z.optional(when),
    /** The day she asks about, when it isn't today. */
    on: z.optional(when),
    /** She means to make them on that day: look ahead, not back. */
    coming: z.optional(z.boolean()),
    /** Freezing and thawing are still to come: their days lie ahead. */
    planned: z.optional(z.boolean()),
    /** "frozen on day 2": the day of the seven on which they went into the freezer. */
    frozen_on_day: z.optional(z.number().check(z.gte(1, { error: "The day of making is day 1." }))),
    /** They have been out of the fridge since they were made. */
    out_since_made: z.optional(z.boolean()),
    /** Time out of the fridge, all spells together. */
    out_min: z.optional(time_min),
    /** Out of the fridge from then to now. */
    out_since: z.optional(when),
    overnight: z.optional(z.boolean()),
    /** Days since the whites were separated. */
    old_days: z.optional(z.number().check(z.gte(0, { error: "An age can't be below zero." }))),
    /** Days it has been in the freezer. */
    frozen_days: z.optional(
      z.number().check(z.gte(0, { error: "Days in the freezer can't be below zero." })),
    ),
    /** She asks whether it is still good, not how long it keeps: without a day that is asked back. */
    still: z.optional(z.boolean()),
    /** How warm it is outside the fridge, or how cold inside. */
    air_c: z.optional(temperature_c),
    /** The warmth was said in °F: then the line is 90 °F, else 32 °C. */
    fahrenheit: z.optional(z.boolean()),
    hot: z.optional(z.boolean()),
    /** What the filling is made of, where she says it: its water activity is estimated from it. */
    lines: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** A measured water activity. */
    aw: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "Water activity lies between 0 and 1." }),
          z.lte(1, { error: "Water activity lies between 0 and 1." }),
        ),
    ),
  }),
);

export type KeepInputs = z.infer<ReturnType<typeof inputs>>;

const stored =
  "(?:fridge|refrigerator|refrigerated|freezer|counter|countertop|worktop|table|outside|pantry|room temp\\S*|room temperature)";

export const keep = tool<KeepInputs>({
  name: "keep",
  purpose: "How long filled macarons keep, how cold, and whether they are still good",
  inputs,
  cues: cues(
    [-17, "(?:work|working|worked|figure) out .. water activity"],
    [
      7,
      "{ingredient=(whites|egg)} .. (?:never|not|arent|dont|doesnt|isnt|without) (?:get |got |been |being |be )?(?:heated|cooked|heating|cooking)",
    ],
    [
      8,
      "(?:temp\\S*|how cold|cold enough) .. (?:cool\\S* (?:box\\S*|bags?)|coolbox|coolbag|cooler|ice box\\S*|chiller|esky)",
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
      "(?:stayed|stood|sat|lay|were left|was left|been) {time} (?:out )?(?:on|out|at|in) (?:the |my )?(?:table|counter|side|worktop|room temp\\S*|kitchen|car|sun|outside|fridge)",
      "(?:stayed|stood|sat|lay|were left|was left|been) (?:out )?(?:on|at|in) (?:the |my )?(?:table|counter|side|worktop|room temp\\S*|kitchen|car|sun) (?:for )?{time}",
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
      "(?:fridge|room temp\\S*|sit|keep|last|stand|overnight|counter|refrigerat\\S*|cold|leave|(?<!work )(?<!worked )out) .. {weight} .. {chocolate} .. {weight} .. {ingredient=cream}",
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
      "\\S*shelf_stable\\S*",
      "(?:no|without|skip|dont need|need no|needs no) (?:the |a )?(?:fridge|chilling|refrigerat\\S*) (?:needed|required|right|then|so)?",
      "(?:until|till) (?:what|which|when)(?! temp\\S*)",
      "(?:are|is) .. {count=macarons} .. (?:ok|okay|good|safe|fine)",
      "(?:use|good|eat|keep|sell) (?:until|till|by)",
      "freeze .. (?:how long|filled|macarons|them|it)",
      "how .. thaw",
      "shelf stable",
      "(?:left|sat|sitting|been|stood|forgot|standing|out|counter|porch|overnight) .. (?:ok|okay|safe|good|toss|bin|chuck|throw|eat|sell|serve|still|fine|ruined|worry)",
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
  ),
  examples: [
    { say: "I filled them this morning, how long in the fridge", inputs: { about: "fridge" } },
    {
      say: "the filled ones were left on the counter 3 hours, still ok?",
      inputs: { about: "outside", out_min: 180 },
    },
    { say: "can i freeze filled macarons and for how long", inputs: { about: "freezer" } },
    { say: "thaw the frozen macarons in the fridge or on the counter", inputs: { about: "thaw" } },
    { say: "how cold does the fridge have to be for filled macarons", inputs: { about: "cold" } },
    { say: "it was 95 F on the stall, how long can they stay out", inputs: { about: "outside", air_c: 35 } },
    { say: "i'm not heating the whites for my buttercream, is that safe", inputs: { about: "eggs" } },
    {
      say: "the flavor bottle says shelf stable so the filled macarons can sit out right",
      inputs: { about: "shelf stable" },
    },
    { say: "should I toss them, they sat on the porch overnight", inputs: { about: "outside" } },
  ],
  elsewhere: [
    { say: "how long do the shells rest", tool: "method" },
    { say: "how long left on the bake timer", tool: "timer" },
    { say: "which batches did i make last week", tool: "recall" },
    { say: "water activity of 110 g white chocolate and 70 g cream", tool: "ganache" },
  ],
  // "can they stand out at the party?" "4 hours"
  goesOn: cues(
    [
      14,
      "^(?:(?:and|so|ok|whats|what is|when is|which is) )*(?:the |their )?last day(?: (?:would be|is|then|the|be|for them|to eat them))*(?: [?])?$",
    ],
    [
      12,
      "(?:ok|okay|safe|good|fine|eat|sell|serve) .. another {time}",
      "^(?:(?:and|then|plus|oh|also|so) )*(?:another|plus|then) {time}(?: (?:more|out|again|later|today|yesterday|on top|this morning|in the car))*(?: [?])?$",
    ],
    [
      9,
      "^(?:(?:its|about|for|like|around|maybe|up to|so|and|say|only|roughly) )*{time}(?: (?:out|in all|total|then|max|or so))*(?: [?])?$",
      // "it is 34 degrees in my flat"
      "^(?:(?:and|but|so|if) )*(?:its|it is|it will be|itll be|it gets|it can be|the room is|weve got) (?:about |around |over |up to )?{temperature}(?! (?:in|to) {unit})",
    ],
  ),
  rivals: [
    ["about", "still", "old_days"],
    ["out_min", "out_since", "overnight", "out_since_made"],
    ["air_c", "fahrenheit", "hot"],
    ["made", "coming", "weeks_before"],
    ["frozen", "frozen_days", "frozen_on_day", "planned"],
    ["thawed"],
    ["on"],
    ["aw", "lines"],
  ],
  read: readKeep,
  compute: answerKeep,
});
