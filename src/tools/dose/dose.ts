/** Flavor and color by weight: forward, backward, checked, overdosed, as a share of the finished weight. */
import * as z from "zod/mini";
import { bases } from "../../../data/words/things.ts";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { inBowl_g, share_percent, weight_g } from "../lib/inputs.ts";
import { answerDose } from "./answer.ts";
import { readDose } from "./read.ts";

const base = z.enum([...new Set(bases.map((row) => row.id))] as [string, ...string[]]);

export const inputs = later(() =>
  z.strictObject({
    /** The weight of everything it goes into, added up, before the flavor. */
    base_g: z.optional(weight_g),
    base: z.optional(base),
    /** The parts that were added up. */
    parts: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** Bowls of the same mix, each weighed: "the second" is one of them. */
    bowls: z.optional(z.array(weight_g)),
    /** Parts that were taken out of the sum again: "butter back in". */
    left_out: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** The row of the dose table. */
    dose: z.optional(z.string()),
    taste: z.optional(z.string()),
    /** The thing's own name where the row's wouldn't do: "salt", "espresso powder". */
    name: z.optional(z.string()),
    /** Only a taste was said, or just "flavor": a concentrated flavor is assumed. */
    bare: z.optional(z.boolean()),
    /** The hue that was said with a color: its own bottle goes before another's. */
    hue: z.optional(z.string()),
    flavor_g: z.optional(inBowl_g),
    /** The flavor was said by volume and counted as water. */
    by_volume: z.optional(z.boolean()),
    /** Another flavor than before, of which nothing is in the bowl yet. */
    fresh: z.optional(z.boolean()),
    /** "added 5 more", where nobody said how much was in it. */
    more_g: z.optional(weight_g),
    /** The spoon it was said in: "oops, i put 3" counts in those. */
    flavor_unit: z.optional(z.string()),
    percent: z.optional(share_percent),
    percent_high: z.optional(share_percent),
    /** Another row than the one before: a percentage said of that isn't meant. */
    by_table: z.optional(z.boolean()),
    /** One end of the range, or its middle: "right at the top of that". */
    end: z.optional(z.enum(["low", "middle", "high"])),
    /** Another flavor: an end of the range that was asked for before isn't meant. */
    whole_range: z.optional(z.boolean()),
    of_finished: z.optional(z.boolean()),
    /** She asks for her own usual dose, not for the table's range. */
    usual: z.optional(z.boolean()),
    want: z.optional(z.enum(["flavor", "base", "check", "mend"])),
    /** She asks how much base the flavor is enough for: a base said before isn't meant. */
    asks_base: z.optional(z.boolean()),
    spoon: z.optional(z.enum(["tsp", "tbsp", "ml"])),
    /** Said in something that has no weight: cups of filling, drops. */
    unweighable: z.optional(z.string()),
    /** The flavor is so many times as strong as usual, said with the question. */
    strength: z.optional(z.number().check(z.gt(0), z.lte(20))),
    /** So many times as strong, but of the flavor or of the taste wished for? */
    strength_unclear: z.optional(z.number()),
    /** She asks for a number of drops, which no rule gives. */
    asks_drops: z.optional(z.boolean()),
    /** Asked for by a word that no table has: "how much pistazienmus". */
    unknown: z.optional(z.string()),
  }),
);

export type DoseInputs = z.infer<ReturnType<typeof inputs>>;

export const dose = tool<DoseInputs>({
  name: "dose",
  purpose: "How much flavor or color goes into a weight of filling or batter, and the other way round",
  inputs,
  shifts: "told",
  cues: cues(
    // "and for the 180 g bowl", past another topic too
    [9, "^(?:(?:ok|and|so|now|then) )*for the {weight} (?:one|bowl|batch|{count=bowls})(?: [?])?$"],
    [
      10,
      "{weight} .. {chocolate} .. {weight} .. {ingredient=cream} .. (?:like|want|add|put|adding|putting|with) .. {taste} (?:in|into) (?:it|that|this) .. how much",
    ],
    [-6, "{dose=color} (?:mixed |stirred |already )?in"],
    [4, "{unit=g} of {taste}(?: [?])?$"],
    // of a bowl that holds too much
    [
      4,
      "^(?:(?:and|ok|so|now) )*{color} (?:colou?r )?for (?:{weight} (?:of )?(?:the |my )?{base=batter}|that|it|this)(?: batter)?(?: [?])?$",
      "^(?:(?:so|and|ok|then|now) )*(?:how|hw) (?:much|many) (?:more |extra )?{color=plain} (?:do|should|must|to|shall|more|stuff) ",
    ],
    [-10, "{percent} (?:of (?:it|that|this) )?(?:{taste}|{color}) .. rest\\S*"],
    [-8, "{symptom=split_ganache}"],
    [
      3,
      "^(?:and |so |ok |then )*(?:whats |what is |give me )?(?:the |its )?(?:max|maximum|min|minimum)(?: dose| amount)?(?: [?])?$",
      "^(?:i |we |id |please |can you |ok |and )*(?:want|like|make|prefer) (?:it |them )?(?:a bit |much )?(?:stronger|weaker|milder)$",
      "^(?:a bit |much |ok |and )*(?:stronger|weaker|milder)(?: please| then)?$",
    ],
    [
      4,
      "{base} (?:\\S+ )?flavou?red (?:at|with|to) {percent}",
      "flavou?r (?:\\S+ )?{base} (?:at|with|to) {percent}",
    ],
    [
      10,
      "(?:for|in|into) (?:the )?other {fraction} (?:\\S+ ){0,3}(?:{dose}|{taste})",
      "(?:{dose}|{taste}) .. (?:for|in|into) the other {fraction}",
    ],
    [-8, "{weight} each for {number}"],
    [-6, "{dose=flavor} .. split\\S* (?:even|equal|evenly|equally)"],
    [4, "(?:full|whole|entire)\\S* range for"],
    [-8, "how many \\S*min(?:utes?|s)?(?:<\\S+)? "],
    [-9, "{when} .. {number} {taste} .. {number} {taste}", "{number} {taste} {number} {taste}"],
    [-6, "(?:ok|okay|fine|good|work) as (?:a |the )?(?:center|centre|filling)"],
    [-8, "{base} between {number} {taste} .. {number} {taste}"],
    [
      6,
      "{base=(buttercream|ganache)} .. {number} .. (?:what|how much) (?:does|do|would|will|should) .. {taste} (?:come to|need|be)",
    ],
    [
      4,
      "^(?:(?:so|and|is|are|would|will) )*{weight} (?:in|into) {number} .*(?:ok|okay|enough|fine|alright|right|too)\\b",
      "(?:whats|what is) the (?:most|max|maximum|least|minimum) (?:i|we|one|you) (?:can|could|should|may) (?:add|put|use|go)",
      "how many {count=drops}",
      "{number} {count=drops}",
    ],
    [12, "{fraction} .. {taste} .. {fraction} .. {taste} .. (?:{dose=flavor}|how much|each)"],
    [5, "{dose} (?:for|in|into) (?:just |only )?{number} {count=bowls}"],
    [
      4,
      "(?:how|hw) (?:much|many|mch) .. {dose}",
      "{dose} .. {weight} .. {base}",
      "{percent} .. {dose}",
      "{dose} .. {percent}",
      "{percent} (?:of )?flavou?r",
      "{weight} .. {base} .. {dose}",
      "{dose} .. (?:what|how) .. {weight} .. {base}",
      "(?:what|which) (?:amount|quantity|weight) of {dose}",
      "amount of {taste} .. {base}",
      "{dose} for {weight} .. {base}",
      "{base=batter} .. {dose}",
      "(?:put|added|stirred|tipped|poured|dropped) .. {weight} .. {taste} .. {weight}",
    ],
    [6, "{base} .. {taste} .. {weight} .. how much {taste}", "{weight} .. {base} .. how much {taste}"],
    [
      4,
      "^{base} {weight} (?:, )?(?:{dose}|{taste})",
      "^{number} {base} (?:, )?(?:{dose}|{taste})",
      "^(?:and |now )?(?:{dose}|{taste}) for {number}(?: [?])?$",
      "{base} {weight} .. {taste} .. (?:how strong|how much|flavou?red|flavou?r)",
      "how strong (?:do|should|can|shall) (?:i|we) (?:go|make)",
      "(?:same|that) (?:{unit=%}|percentage|share|strength|dose)",
      "(?:what|which) (?:{unit=%}|percentage|share) (?:is|was|are|were) (?:that|it|this|in there|there|in it)",
      "what (?:{unit=%}|percentage|share) (?:is|are|would) {weight} .. (?:in|of|to|into) .. (?:{weight}|{number})",
      "what (?:percentage|percent|share) (?:is|am|are) (?:it|that|i|we|they) (?:at|now|sitting)",
      "{taste} .. {base} (?:it|that|this|they) (?:can|could|will|would)",
      "what (?:percentage|percent|share) (?:is|am|are) (?:it|that|i|we|they) .. (?:at|now)",
    ],
    [2.5, "{dose} (?:for|in|into) (?:the |my |that )?{weight}"],
    [3, "^(?:and |now |then )*{taste} for (?:the |my |that |those )?{weight}"],
    [
      3,
      "{dose} .. how much",
      "{dose} (?:for|in) (?:just |only )?(?:one|each|half|every)",
      "(?:{dose}|{taste}) .. (?:for|in|into) (?:it|that|all|the lot|the whole|this|them|each|half)",
      "{fraction} of (?:it|that|them) .. {taste}",
      "{taste} .. {weight} .. {base}",
      "{weight} .. {base} .. {taste}",
      "(?:how|hw) much .. {taste} .. (?:in|into|for|to|does|do|goes|should|with|per)",
      "{weight} .. {dose} .. {base}",
      "{dose} .. {base}",
      "{base} .. {dose}",
      "(?:how|hw) much {base} .. (?:can|will|does|do|would) .. (?:with|from|that|it|do|cover)",
    ],
    [
      2,
      "(?:how|hw) much .. {taste}",
      "{weight} .. {dose}",
      "{dose}",
      "too (?:strong|weak|much)",
      "over ?dosed?",
      "(?:strong|weak) enough",
      "{taste} .. {base}",
      "(?:tipped|dumped|poured|dropped|put|added|stirred|fell|spilt|spilled) .. {weight} .. (?:{dose}|{taste})",
      "{percent} .. {base}",
      "{base} .. {taste} .. how much",
    ],
    [1, "flavou?r", "enough", "{weight} .. {base}", "goes in(?:to)?"],
    [
      3,
      "(?:how|hw) much (?:more )?(?:plain )?(?:extra )?{base} .. (?:fix|rescue|save|dilute|correct|mend|bring|tone|balance|weaken|stretch)",
      "(?:tone|water|bring) (?:it )?down",
    ],
    [
      -3,
      "(?:note|log|record|jot|write) ",
      "timer",
      "(?:cost|costs|price|margin|label|allergens?)",
      "{unit} (?:in|to) {unit}",
      "remember",
      "(?<!(?:can i|could i|how do i|how to|to) )save (?:it|that|this|the)",
      "save$",
      "recipe",
    ],
    [
      -4,
      "{fraction} (?:of it |of that )?(?:{taste}|{color})",
      "{remainder}",
      "(?:ring|center|centre|middle) .. (?:ring|center|centre|middle)",
      "{count=macarons} .. (?:ring|center|centre)",
    ],
    [-2, "split", "divide", "batch(?:es)?"],
    [-6, "how long"],
    [-1, "bottle"],
    [-3, "{count=macarons} (?:with|for)"],
  ),
  // "and if it's a white chocolate ganache instead, same weight": the dose for it, not how it is made
  goesOn: cues(
    [9, "^(?:(?:so|and|ok|then) )*{base} to (?:add|put in)(?: [?])?$"],
    [
      14,
      "weighed .. (?:bottle|drops|jar|tube|{count=drops}) .. {weight}",
      "(?:found|got|have) another (?:bottle|jar|tube|bag|pot) (?:, )?(?:so )?{weight} (?:in all|in total|altogether|all told)",
    ],
    [14, "(?:ran|run|runs) (?:out|dry|empty) (?:after|at|with) (?:{weight}|{number})"],

    [
      9,
      "^(?:(?:so|and|ok|hm|then) )*(?:what|how much) (?:should|ought) (?:it|that|there|i|to) (?:have (?:been|had|put|used|gone in)|be)",
    ],
    [14, "how (?:much|many) of (?:it|that|the same|this) (?:for|in|into) {weight}"],
    [12, "\\S*<number,fraction> .. (?:staying|stays|kept|left) \\S*plain\\S* .. (?:needs?|what|how much)"],
    [8, "^(?:(?:so|and|ok|oh) )*what (?:do|should|can|must) i (?:add|do)(?: so| then| now)*(?: [?])?$"],
    [
      3,
      "(?:full|whole|entire)\\S* range",
      "^(?:\\S+ ){0,3}(?:in )?{weight} (?:in )?(?:, )?(?:over|too much|enough|ok|okay|alright)(?: [?])?$",
      "other way a?round",
      "how (?:much|many) (?:more|extra|plain) (?:\\S+ )?{base}(?: [?])?$",
    ],
    [
      6,
      "{weight} (?:altogether|in total|in all) .. (?:still|again|all) (?:for|in|into) (?:the |my )?{base}",
      "^(?:\\S+ ){0,4}(?:its|thats|there is|theres|it is) {weight} (?:altogether|in total|in all|in it|in there|now)",
      "(?:the|my) (?:most|max|maximum|least|minimum) (?:i|we|one|you) (?:can|could|should|may) (?:add|put|use|go)",
      "(?=.*<[^>]*base=).*\\b(?:instead|same (?:weight|amount|quantity)|(?:that|as) much|(?:suppose|if|when|say) (?:i|we) (?:use|put|used) (?:it|that|this) (?:in|for))",
    ],
  ),
  after: {
    convert: cues([
      12,
      "(?:put|added|used|have|stirred) (?:those|the|that|these) {weight} (?:in|into) (?:my |the )?{weight} .. {base}",
      "^(?:(?:so|and|hm|ok|but) )*(?:is|would|will) (?:that|it|this) (?:be )?(?:too (?:much|little|strong|weak)|enough|ok|okay|fine|right|alright) .. {weight} .. {base}",
    ]),
  },
  examples: [
    {
      say: "I have 230 g buttercream, how much flavor?",
      inputs: { base_g: 230, base: "buttercream", dose: "flavor" },
    },
    {
      say: "how much pistachio paste for 200 g ganache",
      inputs: { base_g: 200, base: "ganache", dose: "nut paste", taste: "pistachio" },
    },
    {
      say: "6 g lemon concentrate, how much buttercream does that do",
      inputs: { flavor_g: 6, base: "buttercream", taste: "lemon" },
    },
    {
      say: "put 9 g coconut flavor into 150 g smbc, too strong?",
      inputs: { flavor_g: 9, base_g: 150, base: "buttercream" },
    },
    {
      say: "tipped 14 g mint flavor in 200 g ganache, how much plain ganache to rescue it",
      inputs: { flavor_g: 14, base_g: 200, want: "mend" },
    },
    { say: "gel color for 460 g macaron batter", inputs: { dose: "gel color", base: "batter", base_g: 460 } },
    {
      say: "4 % of the finished filling should be maple flavor, I have 240 g buttercream",
      inputs: { percent: 4, of_finished: true, base_g: 240 },
    },
    {
      say: "how much salt in 300 g caramel buttercream",
      inputs: { dose: "salt", base_g: 300, base: "buttercream" },
    },
  ],
  elsewhere: [
    { say: "how much cream for 300 g dark chocolate", tool: "ganache" },
    { say: "split 480 g batter two to one", tool: "split" },
    { say: "my mint bottle says half a percent, save that", tool: "shelf" },
    { say: "note lemon batch, 4 % flavor, lovely", tool: "note" },
  ],
  rivals: [
    ["strength", "strength_unclear"],
    ["percent", "strength_unclear"],
    ["percent", "end"],
    ["end", "whole_range"],
    ["asks_base", "base_g", "parts"],
    ["asks_base", "want"],
    ["percent", "percent_high", "usual", "by_table"],
    ["base_g", "parts", "left_out"],
    ["unweighable", "flavor_g"],
    ["flavor_g", "by_volume", "flavor_unit", "fresh", "more_g"],
    ["unweighable", "base_g"],
    ["dose", "taste", "name", "bare", "unknown", "hue"],
    ["of_finished"],
  ],
  read: readDose,
  compute: answerDose,
});
