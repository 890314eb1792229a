/** A recipe scaled by any of its lines, by stock at hand, by factor, by weight, by whites or by count. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { namedSpares, spare_percent, spares } from "../lib/spares.ts";
import { answerScale } from "./answer.ts";
import { readScale } from "./read.ts";

const line = z.object({ name: z.string(), grams: weight_g });

export const inputs = later(() =>
  z.strictObject({
    /** A recipe said in the sentence. Without one it is the saved formula, or the house formula. */
    lines: z.optional(z.array(line)),
    formula: z.optional(z.string()),
    /** "make it three times": a recipe was meant that nobody has named yet. */
    pointed: z.optional(z.boolean()),
    factor: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "A factor has to be above zero." }),
          z.lte(1000, { error: "That factor is beyond a home kitchen." }),
        ),
    ),
    /** What is at hand of some lines; the scarcest sets the size. */
    have: z.optional(z.array(line)),
    whites_count: z.optional(count("whites")),
    total_g: z.optional(weight_g),
    macarons: z.optional(count("macarons")),
    /** One line is asked for, and nothing says for how much: "how much almond flour do i need". */
    unsized: z.optional(z.boolean()),
    shells: z.optional(count("shells")),
    diameter_mm: z.optional(diameter_mm),
    /** Spares said with the question, in the place of the bench's. */
    spare_percent: z.optional(spare_percent),
    /** The number of them, where that was said. */
    spares: z.optional(z.string()),
    /** The one line she asks about; the others are given all the same. */
    asked: z.optional(z.string()),
  }),
);

export type ScaleInputs = z.infer<ReturnType<typeof inputs>>;

const shellIngredient = "{ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar|sugar|egg)}";

export const scale = tool<ScaleInputs>({
  name: "scale",
  purpose: "A recipe scaled by what you have, by factor, by weight, by whites or by macarons",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: cues(
    [
      10,
      "(?:redo|recalculate|work out) (?:the |my |all )*(?:weights?|grams|recipe|amounts?) (?:for|to) {number} {count=macarons}",
    ],
    [
      14,
      "^(?:(?:and|now|ok|so|do|weights for|whats|the) )*{formula} (?:but |only )?(?:with|for|from|using|at) (?:only |just )?(?:{weight}|{number}) (?:of )?{ingredient}(?: (?:please|pls|instead|today|now))*(?: [?])?$",
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
      "{weight} {ingredient} .. {weight} {ingredient} .. (?:i|ive) (?:only |just )?(?:have|got) (?:only |just |about )?{weight} {ingredient}",
    ],
    [
      7,
      "{number} {ingredient=(whites|egg)} (?:of|for|in) (?:the |my )?house .. (?:{base=batter}|recipe|formula|mix|{count=shells})",
    ],
    [
      7,
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
    [7, "weights? of everything", "{number} of the (?:house )?(?:recipe|formula)"],
    [7, "(?:component|ingredient|individual|single|separate) (?:weights?|amounts?)"],
    [7, "(?:have|got) {weight} .. {ingredient} .. {formula} with (?:it|that|them)"],
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
      "{count=shells} (?:from|with|for|out of|using) {number} .. {ingredient=(whites|egg)}",
    ],
    [7, "weights? (?:for|of) (?:the |my |all )*{count=shells}", "{count=shells} weights? (?:for|of|to) "],
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
      "{weight} .. {ingredient} .. {weight} .. {ingredient} .. (?:down|cut|reduce|scale|bring|up) (?:it |them |that )?(?:down )?(?:to|by) (?:{fraction}|{number}|{percent})",
      "multipl\\S* by {number}",
      "{fraction} (?:of )?(?:a|the|my|one) .. (?:house|recipe|formula|batch)",
      "(?:recipe|formula) for {number} .. {weight} .. {ingredient}",
      "(?:house|shell|shells) (?:recipe|formula|batch)",
      "my {ingredient=(whites|almond_flour|powdered_sugar|granulated_sugar|sugar)} for (?:the )?{count=shells}",
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
      "(?:ingredients|amounts|quantities|weights) for {number} .. {count=(macarons|shells)}",
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
    [-4, "{step=bake}"],
    // a factor of how something is, not of how much there is
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
  ),
  goesOn: cues(
    [
      14,
      "(?:so|now|only|just|down to) (?:it is |its |im |theres |i have |we have )*(?:now |only |just |down to )*{number} (?:\\S+ )?{ingredient=(whites|egg)}(?: left| now)?$",
      "(?:so|now) (?:now )?(?:it is|its|i have|theres|there is) (?:now |only )?{weight} (?:of (?:the )?)?{ingredient}",
    ],
    [12, spares],
    [
      10,
      "(?:redo|again|recalculate|work out|give me) .. (?:weights?|grams|recipe|amounts?|it|them) (?:for|to) {number} {count=macarons}",
    ],
    [10, "(?:go by|by) (?:that|it|this)(?: [?])?$"],
  ),
  // "make it one and a half times", behind a recipe that was shown
  after: {
    // "how much of the other things", behind a cup of sugar in grams
    convert: cues([
      14,
      "(?:how much|how many|what|weights?) (?:\\S+ )?of the (?:others?|rest|other (?:things|stuff|ingredients))(?: [?])?$",
    ]),
    // "and the almond flour in it", behind the batter for so many
    shells: cues([
      14,
      "^(?:(?:and|so|ok|what about|how much is|how much) )*(?:the )?{ingredient=(almond_flour|powdered_sugar|granulated_sugar|sugar|whites)} in (?:it|that|there)(?: (?:then|please))?(?: [?])?$",
    ]),
    formula: cues([
      9,
      "^(?:(?:and|now|ok|so|then|please|can you|could you) )*(?:make|do|give me|scale|take) (?:it|that|this)?(?: up| down)?(?: by| to)? ?(?:{factor}|\\S*<number,fraction>)(?: (?:as much|the size|of it|please|then|it))*(?: [?])?$",
      "^(?:(?:and|now|ok|so|then|please) )*(?:{factor}|double|triple|halve|half) (?:it|that|this)(?: (?:please|then))?(?: [?])?$",
    ]),
  },
  examples: [
    {
      say: "120 g egg whites, what do I need of the rest",
      inputs: { have: [{ name: "whites", grams: 120 }] },
    },
    { say: "three egg whites how much almond flour", inputs: { whites_count: 3 } },
    {
      say: "recipe says 105 whites 135 almond 135 powdered 90 sugar but I only have 70 g whites",
      inputs: { have: [{ name: "whites", grams: 70 }] },
    },
    { say: "shell recipe for 36 macarons", inputs: { macarons: 36 } },
    { say: "need 700 g of shell batter, what do I weigh out", inputs: { total_g: 700 } },
    { say: "make this 1.5 times: 120 g butter, 150 g sugar, 90 g lemon juice", inputs: { factor: 1.5 } },
    { say: "one and a half times the house recipe", inputs: { factor: 1.5 } },
  ],
  elsewhere: [
    { say: "smbc from 90 g whites", tool: "buttercream" },
    { say: "batter for 24 macarons", tool: "shells" },
    { say: "pantry: 50 g almond flour", tool: "shelf" },
    { say: "1 cup almond flour in grams", tool: "convert" },
  ],
  rivals: [
    ["factor", "have", "whites_count", "total_g", "macarons", "shells"],
    ["lines", "formula", "pointed"],
    ["spare_percent", "spares"],
  ],
  read: readScale,
  compute: (inputs, world) => namedSpares(answerScale(inputs, world), inputs),
});
