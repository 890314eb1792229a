/** Batter, shells, macarons, trays and eggs, by diameter, in whichever direction it is asked. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { namedSpares, spare_percent, spares } from "../lib/spares.ts";
import { answerShells } from "./answer.ts";
import { readShells } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** A number of shells that was said takes no spares. */
    shells: z.optional(count("shells")),
    trays: z.optional(count("trays")),
    batter_g: z.optional(weight_g),
    /** That weight was named as batter's; with whites asked for, a bare weight is of those. */
    of_batter: z.optional(z.boolean()),
    /** Whites for the house formula, from which the batter follows. */
    whites_g: z.optional(weight_g),
    whites_count: z.optional(count("whites")),
    /** Lines of the house formula at hand, from the scarcest of which the batter follows. */
    have: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** The size of the bench or the book again, after another was said. */
    usual_size: z.optional(z.boolean()),
    diameter_mm: z.optional(diameter_mm),
    /** Weight of what was baked, when the batter for it is asked. */
    baked_g: z.optional(weight_g),
    /** Weight of one shell as piped, when the baked weight of that is asked. */
    shell_g: z.optional(weight_g),
    /** So many on one tray, said with the question. */
    on_tray: z.optional(count("shells")),
    /** Spares said with the question, in the place of the bench's. */
    spare_percent: z.optional(spare_percent),
    /** The number of them, where that was said. */
    spares: z.optional(z.string()),
    /** How the order is shared out, for what is asked of a part of it next. */
    shares: z.optional(
      z.array(z.object({ name: z.string(), share: z.number(), base: z.optional(z.string()) })),
    ),
    /** So many go into one box. */
    in_box: z.optional(count("macarons")),
    want: z.optional(
      z.enum(["batter", "shells", "macarons", "trays", "tray", "whites", "baked", "one", "boxes"]),
    ),
  }),
);

export type ShellsInputs = z.infer<ReturnType<typeof inputs>>;

export const shells = tool<ShellsInputs>({
  name: "shells",
  purpose: "Batter, shells, macarons, trays and eggs for a size, in any direction",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: cues(
    [-9, "topping"],
    [
      9,
      "how many {ingredient=(egg|whites)} (?:am i|do i|will i|would i|should i) (?:have to |need to )?(?:crack|cracking|break|separate)\\S* .. (?:those|that|the|these|it)",
    ],
    [
      10,
      "how many {ingredient=(egg|whites)} (?:is|are|in|make|makes|gives?|do i need for) {weight}(?: of (?:them|it|whites))?(?: [?])?$",
    ],
    [-12, "how many {count=boxes} .. (?:profit|margin|earn|break even)", "{number} divided by {number}"],
    [
      9,
      "how many {count=boxes} .. {number}",
      "^{count=boxes} of {number} , (?:i |we )?(?:have |got |made )+{number} {count=macarons}",
      "{number} .. how many {count=boxes}",
      "how many {count=boxes} (?:is|are|do|does|will|would) (?:that|it|they|i|them|those)",
    ],
    [
      9,
      "(?:what|whats|what does|how many) (?:does )?(?:the |my |a |one )?{count=trays} (?:hold|take|fit|has|have)s? (?:if|of|with|at|when) .. {length}",
    ],
    [
      7,
      "(?:how|hw) many .. {count=(macarons|shells|trays)} .. {weight} .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)}",
      "{weight} .. {ingredient=(almond_flour|powdered_sugar|granulated_sugar)} .. (?:how|hw) many .. {count=(macarons|shells|trays)}",
    ],
    [
      5,
      "{count=(macarons|shells)} (?:from|out of|in|with) (?:a |my |the )?{weight} (?:of )?(?:the |my )?{base=batter}",
    ],
    [
      5,
      "^(?:(?:and|so|ok) )*how many {ingredient=(egg|whites)} (?:is|are|does|do|will|would) (?:that|it|this)",
    ],
    [5, "^(?:(?:and|n|so|ok) )*{count=macarons} (?:from|out of) (?:it|that|this)(?: [?])?$"],
    [4, "(?:how|hw) many {length} {count=(macarons|shells)} (?:is|are|s|does|will|would|do|from|out)"],
    [
      6,
      "{count=shells} .. {number} (?:\\S+ ){0,2}(?:{symptom}|broken?|ruined|bad|lost|burnt) .. (?:left|how many|{count=macarons})",
    ],
    [
      -6,
      "{base=batter} (?:for|in|into) {number} {count=bowls}",
      "why",
      "(?:not|no|none|zero) .. (?:feet|feets|frills?|skirts?)\\b",
      "(?:at once|at a time|at the same time|in one go)",
    ],
    [-4, "i (?:use|have|got|bake on) (?:an? )?{count=trays}"],
    // color that is in already is none that is asked for
    [
      9,
      "{count=bowls} .. {weight} .. {length} {count=shells} .. (?:how|hw) many",
      "{weight} .. {dose=color} (?:mixed |stirred |already )?in .. (?:how|hw) many",
    ],
    [
      8,
      "(?:one|a|per|each|single)\\S* {count=shells} .. (?:holds?|takes?|gets?|needs?|weighs?|uses?) (?:what|how) .. {base=batter}",
    ],
    [
      4,
      "{number} .. {count=(macarons|shells)} (?:out of|from) .. {weight} .. {base=batter}",
      "how (?:many|much) .. {ingredient=(whites|egg)} .. crack",
      "(?:whites|\\S*<ingredient=(?:whites|egg)\\S*) to crack",
      "{ingredient=egg} to crack",
    ],
    [
      4,
      "(?:how|hw) (?:many|much) .. {count=(macarons|shells)} .. {weight} .. {base=batter}",
      "{weight} .. {base=batter} .. (?:how|hw) many .. {count=(macarons|shells|trays)}",
      "{base=batter} (?:do i need |to make |needed )?(?:for|in|per) .. {number} .. {count=(macarons|shells|trays)}",
      "(?:how|hw) much (?:more )?{base=batter}",
      "(?:how|hw) many (?:more )?{ingredient=(egg|whites)} .. {number} .. {count=(macarons|shells)}",
      "(?:how|hw) many .. {count=trays}",
      "{count=shells} .. (?:fit|fits|go|on|get|per) .. {count=trays}",
      "{length} .. {count=shells} .. {count=trays}",
      "{count=trays} .. {number} .. {count=(macarons|shells)}",
      "(?:how|hw) (?:many|much) .. {count=shells}",
      "{number} {count=macarons} .. (?:how|hw) many .. {count=shells}",
      "{count=shells} .. weigh .. {step=bake}",
      "{step=bake} .. weigh",
      "{number} .. {ingredient=(egg|whites)} .. (?:how|hw) many .. {count=(macarons|shells)}",
      "{weight} .. {ingredient=whites} .. (?:how|hw) many .. {count=(macarons|shells)}",
      "{weight} .. {ingredient=whites} .. (?:how|hw) many .. {ingredient=egg}",
      "(?:how|hw) many .. {ingredient=egg} .. {weight} .. {ingredient=whites}",
      "{ingredient=egg} to crack",
      "(?:how|hw) many {count=macarons} .. {number} .. {ingredient=(whites|egg)}",
      "{weight} .. {base=batter} .. {step=bake}",
      "{count=shells} .. {weight} .. {base=batter} .. weigh",
      "{base=batter} amounts? for {number}",
      "^(?:and )*{ingredient=(whites|egg)} for {number} .. {count=(macarons|shells)}",
      "crack .. {number} .. {count=macarons}",
      "{count=(macarons|shells)} .. {weight} .. {ingredient=whites}",
    ],
    [
      3.5,
      "{number} .. {count=(macarons|shells)} .. (?:how|hw) much .. {base=batter}",
      "{base=batter} .. {number} .. {count=(macarons|shells)}",
      "{weight} .. {base=batter} .. {count=(macarons|shells)}",
      "^(?:and |so |ok |then )*(?:how|hw) many {ingredient=(egg|whites)}(?: do i need| will i need| to crack| then)?(?: [?])?$",
      "^(?:and |so |ok )*(?:that|it|this) (?:gives|makes|yields) (?:me )?how many(?: [?])?$",
      "(?:how|hw) many {count=macarons} .. (?:get|make|give|yield|will|do|can|from|out)",
      "{length} .. {number} .. {count=macarons}",
      "crack .. {count=macarons}",
      "crack<\\S+ .. {count=macarons}",
      "{base=batter} .. (?:one|each|a|per|single) .. {count=shells}",
      "{ingredient=egg} .. {number} .. {count=macarons}",
      "{number} .. {count=macarons} .. {ingredient=egg}",
      "{weight} .. (?:yield|make|give) .. {count=(macarons|shells)}",
      "{number} .. {count=trays} .. {count=shells}",
      "what .. {count=macarons} .. {weight} .. {base=batter}",
    ],
    [
      3,
      "{count=trays} (?:for|do|does|will|would|needed|need|now|then|\\?|$)",
      "(?:what|which|about|many|and|so) (?:\\S+ )?{count=trays}",
      "{base=batter} for {number}",
      "{weight} {base=batter} .. (?:how|hw) many",
      "{count=shells} .. {number} .. {count=macarons}",
      "{count=macarons} .. {length}",
      "baked weight",
    ],
    [2, "{count=trays}", "{count=shells}", "{base=batter}", "{length}", "{number} .. {count=macarons}"],
    [1, "{count=macarons}"],
    [
      -4,
      "{dose}",
      "(?:note|log) ",
      "timer",
      "{base=(filling|buttercream|ganache)}",
      "split {weight}",
      "divide",
      "{symptom}",
      "how long",
      "label",
      "save",
      "remember",
      "(?:always|usually|from now on)",
      "my {count=(trays|shells)}",
      "my mat",
      "buy",
      "{money}",
      "(?:ready|due|by|want|wanted|needed|need) .. {when}",
      "{when} .. when",
      "{color} .. {color}",
      "holds?",
      "fits? \\S+$",
      "{fraction} .. {color}",
    ],
    [-2, "recipe"],
    [
      -3,
      "what (?:do|should) i (?:weigh|measure)",
      "weigh out",
      "{ingredient=(almond_flour|powdered_sugar|granulated_sugar)}",
      "{weight} .. {color}",
      "{unit}",
      "forget",
      "start",
      "{temperature}",
      "(?:today|yesterday|last)<when>",
      "when ",
    ],
  ),
  goesOn: cues([
    12,
    spares,
    // "and 12s", of boxes
    "^(?:(?:and|or|what about|how about) )*(?:boxes of |in )?\\d+_?s<time>(?: [?])?$",
    "^(?:(?:and|or|what about|how about|in) )*{count=boxes} of {number}(?: [?])?$",
  ]),
  // "batter for it", of the day that was planned
  after: {
    day: cues([
      14,
      "^(?:(?:and|so|ok|how much|weight of|the) )*{base=batter} (?:for (?:it|that|them|those|this|(?:the|those|these|all) {number})|(?:do i need|is that|is it))(?: then)?(?: [?])?$",
      "how many {count=trays} (?:is|are|for|will) (?:that|it|the |those |all )*{number}?(?: [?])?$",
    ]),
  },
  examples: [
    { say: "batter for 24 macarons", inputs: { macarons: 24, want: "batter" } },
    { say: "how many macarons from 460 g of batter", inputs: { batter_g: 460, want: "macarons" } },
    { say: "how many eggs do I crack for 36 macarons", inputs: { macarons: 36, want: "whites" } },
    { say: "how many 5 cm shells fit one tray", inputs: { diameter_mm: 50, want: "tray" } },
    { say: "how many trays for 40 macarons", inputs: { macarons: 40, want: "trays" } },
    { say: "how many shells do I pipe for 50 macarons", inputs: { macarons: 50, want: "shells" } },
    { say: "how much batter goes in one shell", inputs: { want: "one" } },
  ],
  elsewhere: [
    { say: "my mat has 28 circles", tool: "bench" },
    { say: "how much filling for 24 macarons", tool: "fill" },
    { say: "shell recipe for 36 macarons", tool: "scale" },
    { say: "my shells cracked", tool: "trouble" },
  ],
  rivals: [
    ["diameter_mm", "usual_size"],
    ["macarons", "shells", "batter_g", "whites_g", "whites_count", "have", "trays"],
    ["want"],
    ["in_box"],
    ["shares", "macarons"],
    ["spare_percent", "spares"],
  ],
  read: readShells,
  compute: (inputs, world) => namedSpares(answerShells(inputs, world), inputs),
});
