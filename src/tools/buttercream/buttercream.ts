/** Meringue buttercream from any one of its parts, or from the total. */

import * as z from "zod/mini";
import { opening } from "../../../data/words/openers.ts";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { leftPlain } from "../lib/left-plain.ts";
import { resizing } from "../lib/resizing.ts";
import { answerButtercream } from "./answer.ts";
import { readButtercream } from "./read.ts";

const inputs = later(() =>
  z.strictObject({
    whites_g: z.optional(weight_g),
    sugar_g: z.optional(weight_g),
    butter_g: z.optional(weight_g),
    total_g: z.optional(weight_g),
    /** Another buttercream than one of meringue. */
    other: z.optional(z.string()),
    macarons: z.optional(z.number().check(z.gte(1, { error: "At least one macaron, please." }))),
    /** The shells' diameter, where macarons were counted. */
    diameter_mm: z.optional(diameter_mm),
    whites_count: z.optional(count("whites")),
    /** More of one part than the recipe has: "add 50 g sugar". */
    added: z.optional(z.object({ name: z.string(), grams: weight_g })),
    asks_heat: z.optional(z.boolean()),
    /** "how many egg whites is that": eggs to crack. */
    asks_eggs: z.optional(z.boolean()),
  }),
);

/** Words around the amount of one of its parts that tell no more than that there is so much of it. */
const told =
  "(?:so|ok|well|oh|hm|no|but|and|actually|turns out|i|we|ive|weve|im|have|had|got|only|just|exactly|about|all|is|are|was|its|it|thats|theres|there|what|counted|found|left|to use|use|up|spare|here|in|the|my|a|of|at|house|fridge|jar|carton|now|then|instead|today|has|be|down|need|needs|using)";
const partNamed =
  "(?:(?:large|medium|small|fresh|soft|softened|of|the|my) )*{ingredient=(whites|egg|butter|sugar|granulated_sugar|pasteurised_whites|salted_butter)}";
const stockOfPart = [
  `^(?:${told} )*(?:{weight}|{number}) ${partNamed}(?: ${told})*(?: [.!])?$`,
  `^(?:${told} )*${partNamed} (?:${told} )+(?:{weight}|{number})(?: ${told})*(?: [.!])?$`,
];

export type ButtercreamInputs = z.infer<ReturnType<typeof inputs>>;

export type Part = "whites" | "sugar" | "butter";

export const buttercream = tool<ButtercreamInputs>({
  name: "buttercream",
  purpose: "Meringue buttercream from its whites, sugar, butter or total",
  inputs,
  unboxes: true,
  shifts: "told",
  cues: cues(
    [14, ...leftPlain("buttercream")],
    [
      15,
      "{weight} {ingredient=(sugar|granulated_sugar|butter|whites)} .. how much .. {ingredient=(butter|sugar|whites)} .. {base=buttercream}",
    ],
    [
      5,
      "^(?:(?:the|and|ok|give me|what|whats) )*(?:weights?|amounts?|recipe|quantities|ingredients) for {weight} (?:of )?{base=buttercream}(?: (?:please|pls))?(?: [?])?$",
    ],
    // "parts for 450 g smbc", "a breakdown of 600 g": what it is made of, with nothing behind it
    [
      9,
      "^(?:(?:the|a|my|and|ok|so|first|please|give me|gimme|tell me|i need|need|want|what|whats|what are|are) )*(?:parts<count=bowls>|parts|portions|proportions|ratios?|weights?|amounts?|quantities|ingredients|breakdown|break down|make ?up|grams of everything|whites<ingredient=whites> (?:, |and )?sugar<\\S+ (?:, |and )*butter<\\S+) (?:for|of|in) (?:a |the |my )?{weight} (?:of )?(?:the |my )?{base=buttercream}(?: (?:please|pls))?(?: [?])?$",
    ],
    [
      9,
      "(?:all|only|just|everything) (?:of (?:it|that|this) )?(?:as |in |with |be )?(?:{use} )?{base=buttercream} .. (?:weights?|recipe|amounts?|quantities|ingredients|what goes in|whats in it)",
    ],
    // "how much smbc stuff for 500 g of it", "how much of everything for 500 g buttercream": what goes into so much
    [
      12,
      `^(?!.*(?:{dose}|{taste}))${opening}how much (?:{manner} )?{base=buttercream} (?:(?:stuff|things?|bits|everything|of (?:everything|each|all)) )?(?:for|makes?|to make|gives?|in) (?=[1-9]\\d\\d){weight}(?: (?:of it|in all|total|altogether|please|pls|[?]))*$`,
      `^(?!.*(?:{dose}|{taste}))${opening}how much (?:of )?(?:everything|each|each thing|each part|all of it) (?:for|in|makes?|goes in(?:to)?|to make) {weight} (?:of )?(?:{manner} )?{base=buttercream}(?: (?:please|pls|[?]))*$`,
    ],
    // "that filling will be smbc, what goes into it": of a weight that was just worked out
    [
      10,
      `^(?!.*(?:{dose}|{taste}|{weight}|{money}|{time}|temp|hot|warm|keep|long|last|cost|wrong|else))${opening}(?:(?:the|that|this|my|all|it|its|thats|thatll|itll|id|ill|i|we) )*(?:{base=filling} )?(?:(?:will|would|is|was|be|going|gonna|to|should|being|made|make|want|like|have|do|as|of|from|with|out|a|for|it|that|this) )*{base=buttercream} (?:(?:,|and|so|then|now|please) )*(?:what|whats|which|how much|weights?|amounts?|quantities|ingredients|list)(?: (?:goes?|go|do|does|i|we|in|into|is|are|it|that|there|need|weigh|all|the|of|take|takes|put|each|to|use|ingredients|weights?|amounts?|quantities|parts|me|what|for|everything))*(?: [?])?$`,
    ],
    // "the split for 450 g smbc: whites, sugar, butter": what it is made of
    [
      14,
      "(?:the|a|my|gimme|give me) (?:\\S*split\\S*|breakdown|proportions|shares|division) (?:for|of) (?:a |the )?{weight} (?:of )?{base=buttercream} .*{ingredient=(whites|butter|sugar|granulated_sugar)}",
    ],
    [
      5,
      "^(?:and |so |ok )*(?:all of it|all of that|the lot|the whole lot|make it(?: all)?) .. {base=buttercream}",
    ],
    [
      4,
      "{base=buttercream} .. {weight} .. {ingredient=(whites|butter|sugar|granulated_sugar)}",
      "{weight} .. {ingredient=(whites|butter|sugar|granulated_sugar|egg|salted_butter)} .. {base=buttercream}",
      "{weight} .. {base=buttercream} .. (?:what|whats|wht) (?:goes|go|all goes|do i need|do i put|does it take|is in|are the)",
      "{base=buttercream} .. {number} .. {ingredient=(whites|egg|butter|sugar)}",
      "{number} .. {ingredient=(whites|egg)} .. {base=buttercream}",
      "(?:how|hw) (?:much|many) .. {ingredient=(whites|butter|sugar|granulated_sugar)} .. {base=buttercream}",
      "(?:make|making|need|want) .. {weight} .. {base=buttercream} .. {ingredient}",
    ],
    [
      4,
      "{weight} .. {base=buttercream} .. (?:masses|weights|amounts|amts|quantities|parts|ingredients)",
      "{base=buttercream} .. {count=macarons} (?:masses|weights|amounts|amts|quantities|parts|ingredients)",
      "{weight} .. {base=buttercream} .. (?:whats|what is|what goes|what do i put) in",
      "{remainder} .. {base=buttercream}",
      "{base=buttercream} .. {remainder}",
      "{weight} .. {ingredient=(whites|butter|sugar|granulated_sugar)} .. how much .. {base=buttercream}",
      "work .. {weight} .. {base=buttercream}",
      "{base=buttercream} .. (?:how|hw) much .. {ingredient=(whites|butter|sugar|granulated_sugar)}",
      "{ingredient=(whites|butter|sugar|granulated_sugar)} .. (?:how|hw) much .. {base=buttercream}",
    ],
    [
      3.5,
      "{base=buttercream} recipe",
      "recipe .. {base=buttercream}",
      "(?:make|making|mix|whip|build|weigh|scale) (?:up )?(?:me )?{weight} .. {base=buttercream}",
      "{base=buttercream} .. {weight} (?:in )?(?:total|altogether|all together|in all)",
      "(?:how (?:do|much) .. )?weigh .. {base=buttercream}",
      "{base=buttercream} .. weigh",
      "{base=buttercream} .. (?:total|altogether)",
      "what (?:goes|do i need|is|are) .. {base=buttercream}",
      "{base=buttercream} (?:from|with|using|out of) {weight}",
      "(?:end up with|must have|to have|want|wanting|need|needing|aim for|aiming for|i make|im making|making|batch of) {weight} .. {base=buttercream}$",
      "{ingredient=(whites|butter|sugar|granulated_sugar)} (?:weight|amount|quantity) .. {base=buttercream}",
      "{base=buttercream} .. (?:what|whats) (?:goes|go) in",
      "ingredients .. {base=buttercream}",
      "{base=buttercream} .. ingredients",
      "{weight} (?:of )?{base=buttercream} (?:please|pls)$",
    ],
    [
      3,
      "how (?:hot|warm) .. {ingredient=whites}",
      "(?:temp\\S*|how (?:hot|warm)) .. (?:bain marie|double boiler|water bath|bain-marie)",
      "{ingredient=whites} .. (?:how hot|what temp\\S*)",
      "(?:what|which) temp\\S* .. {ingredient=whites}",
      "^(?:(?:and|what|whats|what is|the|so|ok|right|heat|target) )*temp(?:erature)? (?:for|of|with|on) (?:(?:the|my|those|egg) )*{ingredient=whites}(?: [?])?$",
      "heat .. {ingredient=whites}",
    ],
    [
      7,
      "{base=buttercream} .. \\S*sticks?<volume> .. {ingredient=butter}",
      "\\S*sticks?<volume> .. {ingredient=butter} .. {base=buttercream}",
      "{base=buttercream} .. (?:have|got) \\S*sticks?<volume>",
      "\\S*sticks?<volume> .. {ingredient=butter} .. {ingredient=whites} .. {base=buttercream}",
      "{base=buttercream} (?:off|from|with|using|out of) {weight} (?:of )?{ingredient=whites}",
    ],
    [5, "^(?:and |now |make )*{base=buttercream} for {weight}(?: [?])?$"],
    [6, "{base=buttercream} (?:from|with|using|out of|off) {number} (?:egg )?{ingredient=(whites|egg)}"],
    // its kind is named only where it is to be made
    [
      4,
      "^(?:(?:please|ok|and|now) )*{weight} (?:of )?(?:swiss|italian|meringue)\\S*<base=buttercream>(?: please| pls)?$",
    ],
    [
      3.5,
      "{ingredient=whites} .. {ingredient=(sugar|granulated_sugar)} .. {ingredient=butter} .. (?:for|in) (?:all of )?(?:it|that|this)",
    ],
    [1, "{base=buttercream}", "{ingredient=butter}", "{ingredient=whites}"],
    [
      -4,
      "{dose}",
      "{taste} .. {base=buttercream} (?:how|hw)",
      "{symptom}",
      "(?:note|log) ",
      "{volume}",
      "split",
      "divide",
      "label",
      "(?:cost|price|margin)",
      "^(?!.*(?:^| )(?:what else|the rest|goes in|goes into)(?: |$)).*{money} .. {weight} .. {ingredient} .. {money}",
      "how long",
      "save recipe",
      "{base=(ganache|batter)}",
      "{base=buttercream} ring",
      "{count=macarons} .. {base=buttercream} ring",
    ],
    [
      -2,
      "{taste}",
      "almond",
      "{ingredient=almond_flour}",
      "{ingredient=powdered_sugar}",
      "{percent}",
      "what temp\\S* .. bake",
      "{when}",
      "(?:ready|due|by) {when}",
    ],
  ),
  // "and the other half swiss meringue buttercream", behind a ganache of the first
  after: {
    // "lemon buttercream for those", behind so many macarons
    shells: cues([
      14,
      "^(?:(?:and|so|ok|now) )*(?:{taste} )?{base=buttercream} for (?:all of )?(?:those|them|these|all of them)(?: ,? ?{taste})?(?: [?])?$",
    ]),
    fill: cues([
      14,
      "{base=buttercream} for (?:all of )?(?:it|that|those|them) .. (?:weights?|grams|whats in it|what goes in)",
      // "half of that filling as smbc, what goes in"
      "{fraction} (?:of )?(?:it|that|this|the|those)(?: {base=filling})? (?:(?:as|in|of|for|is|will|be|with|to|going) )*{base=buttercream} .. (?:weights?|grams|whats in it|what goes in|what do i (?:weigh|need)|ingredients|parts)",
      // "and the ring, what does that break down to if it's swiss meringue buttercream"
      "(?:ring|border|rim|dam|center|centre|middle|outside|inside) .. (?:break\\S*|split<\\S+|split|made (?:up )?(?:of|from)|consists?|work out|works out|come to|comes to|weigh\\S*|what goes in) .. {base=buttercream}",
      "{base=buttercream} (?:for (?:the )?)?(?:ring|border|rim|dam|center|centre|middle) .. (?:break\\S*|made (?:up )?(?:of|from)|consists?|work out|works out|come to|comes to)",
      "what (?:all )?(?:goes|is) in(?:to)? (?:the |that |my )?(?:ring|center|centre|{base=buttercream})",
    ]),
    ganache: cues([9, "(?:the other|the rest|remaining) .. {base=buttercream}(?: [?])?$"]),
  },
  // "found another, so three sticks": butter; "4 egg whites are what i have"
  goesOn: cues(
    resizing,
    [12, ...stockOfPart],
    [
      8,
      "\\S*sticks?<volume",
      "(?:a|the|another) \\S*second\\S* stick",
      "\\S*_(?:third|fourth|fifth|sixth)_stick<volume,fraction>",
      "^(?:(?:and|so|ok) )*how many {ingredient=(egg|whites)} (?:is|are|does|do|will|would) (?:that|it|this)",
      // "what temp do i heat them to": the whites
      "^(?:(?:and|what|whats|which|the|so|ok|to|right) )*(?:temp(?:erature)?|how (?:hot|warm)|heat)(?: (?:do|should|must|have|to|i|we|it|them|that|they|be|the|heat|warm|get|is|need|needs|up|for|of|{ingredient=(whites|sugar|granulated_sugar)}|and))*(?: [?])?$",
    ],
  ),
  examples: [
    { say: "smbc from 90 g whites", inputs: { whites_g: 90 } },
    {
      say: "400 g butter for swiss meringue buttercream, how much sugar and whites",
      inputs: { butter_g: 400 },
    },
    { say: "600 g swiss meringue buttercream, what goes in", inputs: { total_g: 600 } },
    { say: "buttercream with 4 egg whites", inputs: { whites_count: 4 } },
    { say: "how much butter do i need for buttercream with 150 g sugar", inputs: { sugar_g: 150 } },
  ],
  elsewhere: [
    { say: "I have 230 g buttercream, how much flavor?", tool: "dose" },
    { say: "my buttercream looks curdled", tool: "trouble" },
    { say: "120 g egg whites, what do i need of the rest", tool: "scale" },
  ],
  rivals: [
    ["whites_g", "sugar_g", "butter_g", "total_g", "whites_count", "macarons", "diameter_mm"],
    // a weight asked for ends the question of the heat
    ["asks_heat", "whites_g", "sugar_g", "butter_g", "total_g", "whites_count", "macarons"],
    ["added"],
  ],
  sum: [],
  read: readButtercream,
  compute: answerButtercream,
});
