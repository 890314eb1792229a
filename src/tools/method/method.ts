/** How a step is done: how hot, how long, in what order. */
import * as z from "zod/mini";
import { methodRows } from "../../../data/rules/methods.ts";
import { otherDishes } from "../../../data/words/other-dishes.ts";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { diameter_mm, temperature_c, time_min } from "../lib/inputs.ts";
import { answerMethod } from "./answer.ts";
import { judgesSome, judgesStep } from "./judged-time.ts";
import { readMethod } from "./read.ts";
import { softens, wobbles, wobblesAfter } from "./told-signs.ts";

export const inputs = later(() =>
  z.strictObject({
    /** The row of the method table. */
    step: z.optional(z.enum(methodRows.map((row) => row.id) as [string, ...string[]])),
    about: z.optional(z.enum(["heat", "time", "how"])),
    /** Asked for this kind of oven. */
    oven: z.optional(z.enum(["fan", "conventional"])),
    /** A heat the oven is to have, where the dial's is asked. */
    heat_c: z.optional(temperature_c),
    /** A heat that is to be judged: "is 350 too hot for shells". */
    judge_c: z.optional(temperature_c),
    /** A time that is to be judged: "they baked 20 min, too long?". */
    judge_min: z.optional(time_min),
    /** Told that the tops still wobble: they bake on. */
    wobbles: z.optional(z.boolean()),
    /** How long butter takes to soften is asked. */
    softens: z.optional(z.boolean()),
    /** Of shells of this size: the times here are for one. */
    diameter_mm: z.optional(diameter_mm),
    /** How much hotter than its dial the oven runs, as said in the same breath; else the bench's. */
    offset_c: z.optional(z.number()),
  }),
);

export type MethodInputs = z.infer<ReturnType<typeof inputs>>;

const heat =
  "(?:(?:what|which|wht) .. (?:temp|temps|temperature|temperatures|tempature|heat|degrees)|how (?:hot|warm|cold|cool|high)|(?:temp|temps|temperature) (?:for|of|to|do|should|when|is))";
const time =
  "(?:(?:how|hw) (?:long|many {unit=min|h|s|d}|many (?:minutes|hours|seconds|days))|how much time|what time do)";
const how =
  "(?:how (?:do|should|shall|can|would|must|does) (?:i|you|we|one|it)|how (?:i|you|we)(?= (?:make|do|bake|cook|prepare|should|must|can) )|how to|how (?:is|are)|(?:whats|what is) the (?:\\S+ )?(?:way|trick|method|technique|order|procedure)|(?:do|should|can|must|shall) (?:i|we|you)|when (?:do|does|should|can|shall|is|are) (?:i|we|you|the)|(?:in )?(?:what|which) order|(?:tell me|explain|show me) how|steps (?:for|to|of)|(?:walk|talk|run|take|lead) me through|do they need|do (?:shells|macarons) need)";
const words = (id: string) => `(?:${methodRows.find((row) => row.id === id)?.words.join("|")})`;
const named = methodRows
  .filter(
    (row) => !["bake", "buttercream", "ganache", "color", "whole bake", "whites heated"].includes(row.id),
  )
  .map((row) => words(row.id));

/** Of the ganache that was worked out. */
const untilSet = cues([
  14,
  "how long .. (?:to set|set|sets|set up|firm up|to firm|before i (?:can )?(?:pipe|use|fill)\\S*|(?:until|till) i can (?:pipe|use)\\S*|(?:until|till|before) (?:it is|its|it gets|it goes) firm\\S*)(?: (?:up|in the fridge|at room temp\\S*|there|then|now|next|again|for|it|so|please|before|i can pipe|to pipe|enough))*(?: [?])?$",
]);

export const method = tool<MethodInputs>({
  name: "method",
  purpose: "How a step is done: oven and times for shells, resting, folding, ganache, maturing, freezing",
  inputs,
  cues: cues(
    // "i let them rest 90 min, is that too long": no timer
    [14, ...judgesStep],
    [11, ...judgesSome],
    [14, ...wobbles.map((each) => each.replace("^", wobblesAfter))],
    [16, ...softens],
    [
      5,
      "(?:been|were) (?:in|in there|in the oven|baking|{step=bake}|resting|{step=rest}) (?:for |about |around |like |nearly )*{time}(?!.* (?:fridge|freezer|counter))",
    ],
    // another oven's heat, to be turned into hers
    [
      -6,
      "{temperature} .. (?:normal|regular|conventional|static|fan|convection) oven .. (?:fan|convection|conventional|normal|regular)",
    ],
    // "how long do i proof croissant dough": nothing that is made here, whatever else is spoken of
    [
      -14,
      `(?:bake|proof|prove|rise|raise|cook|cool|rest|boil|fry|steam|roast|make|knead|chill)\\S* (?:(?:an?|the|my|some|his|her|their) )?(?:[a-z]+ )?(?:${otherDishes})(?: dough| batter)?(?= |$)`,
    ],
    // "bake time for 38 mm", "oven for 4.5 cm shells": of shells of a size, and not how many
    [
      12,
      "^(?:(?:and|so|whats|what is|the|ok) )*(?:oven|baking|bake|{step=bake}) (?:(?:times?|temps?|temperature|heat|setting|and|for|of|,|the) )*{length}(?: {count=shells|macarons})?(?: [?])?$",
    ],
    // "how long for 45 mm shells"
    [
      14,
      "(?:^|, |[.;] )(?:(?:and|so|ok|but|then) )*(?:how long|how many (?:minutes|min)|what (?:time|heat|temp\\S*)) (?:(?:for|do|does|should|must|will|would|to|i|the|my|a|of) )*(?:bake<\\S+ |{step=bake} )?(?:(?:for|the|my|a|of) )*{length} (?:{count=shells|macarons}|ones)(?: (?:for|take|need|go|in|in the oven|in for|then|now|please|\\S*<step=bake>|to))*(?: [?])?$",
    ],
    // what is left, and no resting
    [-14, "(?:freeze|freez|keep|save|eat|give|sell|use|chill|store) the {step=rest}"],
    [
      9,
      "^(?!.*<temperature)(?:\\S+ )*(?:my|the) oven is (?:a |only |just )*(?:fan|convection)\\S* .*what .*set",
    ],
    [
      9,
      "(?:what|where) (?:do|should|must|shall|would) i set (?:(?:it|the|my|oven|mine|dial|to|at) )*for (?:{temperature}|{number})$",
    ],
    [
      9,
      "(?:{temperature}|{number}) .. too (?:hot|cold|cool|low|high|warm) (?:for|to) (?:\\S+ )*(?:{count=shells|macarons}|bake|{step=bake})",
      "(?:is|are|was|will) (?:{temperature}|{number}) (?:\\S+ ){0,2}(?:ok|okay|right|fine|alright|good|too hot|too low|too high|too cold) (?:for|to) (?:\\S+ )*(?:{count=shells|macarons}|bake|{step=bake})",
    ],
    // shells that stick after so long haven't been baked yet
    [
      12,
      "(?:sticky|tacky|wet)\\S* (?:\\S+ )?after (?:resting |drying |a |another )*(?:[2-9]\\d_min|an_hour|half_an_hour|\\d_h)\\S*<time>",
    ],
    [
      5,
      "^(?:(?:so|ok|and|then|now) )*what (?:do|should|must|shall) i set(?: it| the oven| the dial| mine)?(?: to| at)?(?: then| now)?(?: [?])?$",
    ],
    [8, "^(?:(?:so|and|ok|then|the|my) )*{count=shells|macarons} (?:at|in) (?:what|which) temp\\S*"],
    [
      9,
      "what (?:do|should|must|shall|would) i set (?:it|the oven|mine|my oven)(?: to| at)?(?: for)? {count=shells|macarons}",
    ],
    [5, "(?:what|which) temp\\S* .. heat .. {ingredient=(whites|sugar)}"],
    [9, "(?:what|which) temp\\S* (?:do|should|must|shall) i (?:set|bake|use|put)"],
    [
      5,
      "^(?:and |so |ok )*bake (?:at|temp\\S*)(?: what)?(?: [?])?$",
      "^(?:and |so |ok )*\\S*<step=bake> (?:at|temp\\S*)(?: what)?(?: [?])?$",
    ],
    [
      9,
      "^(?:(?:so|and|ok|right) )*(?:when|how soon|how long (?:before|until|till)) (?:can|could|may) (?:i|we|they|you) (?:eat|serve|try|taste) (?:them|these|one|it)(?: [?])?$",
    ],
    // "batter is done, 540 g of it": told, and no question
    [-6, "{base=batter} (?:is |looks )?(?:ready|done) .. {weight}"],
    [9, "how long .. (?:before|until|till) .. (?:nice|best|good|ready|perfect) (?:to eat|for eating)"],
    [
      8,
      "how long (?:til|till|until|before|for|does) .. {base=ganache} .. (?:ready|set|sets|firm|stiff)",
      "how long .. {base=ganache} .. (?:before|until|till|til) .. (?:{use=piping}|pipe|piped|pipeable)",
      "how long .. (?:before|until|till|til) .. (?:{use=piping}|pipe) .. {base=ganache}",
    ],
    [
      4,
      ...named.map((step) => `(?:${heat}|${time}) .. ${step}`),
      `(?:${heat}|${time}) .. (?:{step=bake}|bake|baking|oven)`,
      `${heat} .. {count=shells|macarons}`,
      "(?:temp|temperature) .. (?:oven|{step=bake}|baking)",
    ],
    [5, ...methodRows.flatMap((row) => row.asks ?? [])],
    // "tap the tray twice?", "how many times do i sift": how a step is done, and no size
    [
      7,
      "(?:sift|sieve|tap|bang|rap|whisk|whip)\\S* (?:(?:it|them|the|my|each|\\S+<(?:count=trays|ingredient)[^>]*>) )*(?:{factor}|how many times|how often)",
      "how (?:many times|often) (?:do|should|must|shall|to) (?:(?:i|we|you|it) )*(?:sift|sieve|tap|bang|rap)",
    ],
    [
      3.5,
      ...named.map((step) => `${how} .. ${step}`),
      `${how} .. (?:{step=bake}|bake) .. {count}`,
      `${how} .. (?:make|do|mix|stir|emulsify|prepare) .. (?:{base=ganache}|{base=buttercream})`,
      `(?:when|where|how) .. ${words("color")} .. (?:go|goes|in|added)`,
      `when .. add .. ${words("color")}`,
    ],
    [2, `(?:${heat}|${time}|${how}) .. ${words("whites heated")}`],
    [
      3,
      `${time} .. (?:{base=ganache}|wait before) .. (?:stir|wait)`,
      `${heat} .. (?:{base=ganache}|{ingredient=cream})`,
    ],
    [1, ...named, "{step}"],
    [
      -3,
      "{weight}",
      "{volume}",
      "{money}",
      "{percent}",
      "(?:timer|timers|alarm|remind|ping|countdown|left(?! (?:out|to))|start the|set an?)",
      "(?:note|log|record|jot)",
      "how cold .. (?:fridge|refrigerator)",
      "(?:last|keep|keeps|good for|shelf life|go off|still good|still ok|still safe|spoil)",
      "(?:why|wrong|wont|what happened|went|gone)",
      "how (?:much|many) \\S*<(?:base|dose|ingredient|count|chocolate|taste)",
      "how (?:much|many) .. {base=filling|ganache|buttercream|batter} .. (?:for|do|should)",
    ],
    [-5, "(?:did|usually|last|typical|typically|normally|normaly|my notes|best batch)"],
    [-2, "{number} {count}", "{when}", "{time}"],
  ),
  // "how long does it take to set", behind a ganache
  after: {
    ganache: untilSet,
    fill: untilSet,
    // "they still wobble", behind what is wrong with them
    trouble: cues([16, ...wobbles]),
  },
  examples: [
    { say: "what oven temperature for macaron shells", inputs: { step: "bake", about: "heat" } },
    { say: "how long should the shells rest", inputs: { step: "rest", about: "time" } },
    { say: "how long do macarons mature", inputs: { step: "mature", about: "time" } },
    { say: "how do I fold the batter", inputs: { step: "macaronage", about: "how" } },
    { say: "do I add the dry mix to the meringue all at once", inputs: { step: "dry mix" } },
    { say: "when does the butter go into the ganache", inputs: { step: "butter into ganache" } },
    { say: "how do I make ganache", inputs: { step: "ganache", about: "how" } },
  ],
  elsewhere: [
    { say: "how hot do the whites and sugar have to get", tool: "buttercream" },
    { say: "start the rest timer", tool: "timer" },
    { say: "how long do they keep in the fridge", tool: "keep" },
    { say: "150 c conventional to fan", tool: "convert" },
    { say: "why are my shells hollow", tool: "trouble" },
    { say: "what temperature do I usually bake the lemon ones at", tool: "recall" },
    { say: "how much cream for 300 g dark chocolate", tool: "ganache" },
  ],
  // "fan"
  goesOn: cues([
    8,
    "^(?:and |in |with |mine is |its |for )*(?:an? )?(?:fan|convection|conventional|static)(?: oven| one)?(?: [?])?$",
  ]),
  rivals: [
    ["step", "wobbles", "softens"],
    ["about", "judge_c", "judge_min", "heat_c"],
  ],
  read: readMethod,
  compute: answerMethod,
});
