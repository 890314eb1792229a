/** Ganache by weight: built from any of its parts, checked, mended when loose, stiff or split, and taken apart. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { count, inBowl_g, share_percent, weight_g } from "../lib/inputs.ts";
import { answerGanache } from "./answer.ts";
import { readGanache } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    chocolate: z.optional(z.enum(["dark", "milk", "white"])),
    use: z.optional(z.enum(["loose", "piping", "firm"])),
    chocolate_g: z.optional(weight_g),
    cream_g: z.optional(inBowl_g),
    total_g: z.optional(weight_g),
    /** The filling that the total is a part of. */
    of_g: z.optional(weight_g),
    /** Macarons to fill with it, when no weight was said. */
    macarons: z.optional(z.number().check(z.gte(1, { error: "At least one macaron, please." }))),
    /** The macarons of an order of which these are a share. */
    of_macarons: z.optional(count("macarons")),
    /** Another chocolate than dark, milk or white: no ratio is known for it. */
    other: z.optional(z.string()),
    /** Two kinds in one bowl. */
    mixed: z.optional(z.array(z.string())),
    want: z.optional(z.enum(["build", "check", "mend", "ratio", "split", "composition", "moves", "target"])),
    fault: z.optional(z.enum(["loose", "stiff"])),
    /** The part of a composition that is asked for. */
    part: z.optional(z.enum(["sugar", "fat", "water", "all"])),
    /** Ingredient lines for the composition, or of a ganache that split. */
    lines: z.optional(z.array(z.object({ name: z.string(), grams: weight_g, ndb: z.optional(z.string()) }))),
    /** What it is to be brought to: a water activity, or a share of `part` in %. */
    target_aw: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "Water activity lies between 0 and 1." }),
          z.lte(1, { error: "Water activity lies between 0 and 1." }),
        ),
    ),
    target_percent: z.optional(share_percent),
    /** Chocolate over cream, as she said it. */
    ratio: z.optional(z.number().check(z.gt(0, { error: "A ratio has to be above zero." }))),
    /** Grams more or less of one of its lines: "20 g less cream". */
    steps: z.optional(
      z.array(z.object({ name: z.string(), grams: weight_g, does: z.enum(["more", "less"]) })),
    ),
    /** What was added last, so that "no, 30" puts that right. */
    added: z.optional(z.object({ part: z.enum(["chocolate_g", "cream_g"]), grams: weight_g })),
    /** A weight put right of which nobody knows whether it is the chocolate or the cream. */
    unsure_g: z.optional(weight_g),
    /** Another mix than a ganache. */
    base: z.optional(z.enum(["buttercream"])),
    /** A saved recipe whose composition is asked. */
    formula: z.optional(z.string()),
    /** The grade of the chocolate or the cream, in %: "70 % dark", "35 % cream". It picks the chocolate's row. */
    grades: z.optional(z.array(share_percent)),
    /** Weighed by the portion table from cups or spoons. */
    by_volume: z.optional(z.boolean()),
  }),
);

/** "water activity", "a_w", "aw" as the mask has them. */
const activityWords = "(?:water\\S* activity|a _ w|a w|aw)";

export type GanacheInputs = z.infer<ReturnType<typeof inputs>>;

export const ganache = tool<GanacheInputs>({
  name: "ganache",
  purpose:
    "Ganache from chocolate, cream or total; what a ratio is good for; too loose, too stiff, split; what it is made of",
  inputs,
  unboxes: true,
  shifts: "told",
  cues: cues(
    [9, "what (?:is|are|was) {number} (?:and|to|:|with) {number} good for"],
    // what a mix is brought to, and what moves it
    [
      10,
      `(?:get|bring|take|lower|reduce|push|mend|adjust|move|raise|drop|cut|make|want|need) .. ${activityWords} .. {number}`,
      `(?:{chocolate} {base=ganache}|{base=ganache} .. {weight}|{weight} .. {base=ganache}|{weight} .. {chocolate}) .. ${activityWords} (?:of |at |to |is )*{number}`,
      `(?:what|how|anything|which|ways) .. (?:moves?|lowers?|raises?|changes?|affects?|reduces?|brings? down|drops?) .. ${activityWords}`,
      "{base=ganache} .. less perishable",
      "(?:lower|raise|bring|get|cut|reduce|take) (?:the |its |my )?(?:fat|(?:water|sugar)\\S*) .. {chocolate} .. (?:down |up )?to {percent}",
      `(?:happens to|effect on|do to|does to) .. ${activityWords}`,
      `^(?:(?:whats|what|is|the|estimate|estimated|and) )*${activityWords} (?:of|for) `,
      `^(?:(?:whats|what|is|the|its|estimate|estimated|and|so) )*${activityWords}(?: of (?:it|that|this|the {base=ganache}))?(?: [?])?$`,
    ],
    [-10, `${activityWords} (?:of|in|for) .. (?:is|was|came out at|reads?|measures?|measured) {number}`],
    [
      16,
      `(?:${activityWords}|composition|made of|how fatty|fat content) .. {base=buttercream}`,
      `{base=buttercream} .. (?:${activityWords}|composition|fat content)`,
      "(?:how much|percentage|percent|share) (?:of )?(?:the )?fat .. {base=buttercream}",
    ],
    [
      6,
      "{base=ganache} .. {percent} (?:of )?(?:fat|(?:water|sugar)\\S*)",
      "{percent} (?:of )?(?:fat|(?:water|sugar)\\S*) .. {base=ganache}",
      "(?:bring|get|take|push|lower|drop|reduce|move) (?:it|this|that|them|mine) .. 0[.][89]\\d*<number>",
      "(?:below|under) 0[.][89]\\d*<number>",
    ],
    [
      7,
      "(?:composition|water|ingredient=water>|fat|sugar|sugary?) .. (?:in|of|has|have) (?:my |the )?{formula}",
      "(?:water<\\S+|sugar<\\S+) .. (?:in|of) (?:my |the )?{formula}",
      "{formula} .. (?:composition|water activity|perishable)",
    ],
    [
      7,
      "(?:loosen|thicken|firm|soften|thin|stiffen) (?:it|this|that|them)",
      "(?:estimate|whats|what is) .. aw",
      "(?:^| )aw (?:of|for)",
    ],
    [
      7,
      "(?:percentage|percent|share|much|proportion) (?:of )?(?:the )?(?:fat|water\\S*|sugar\\S*) .. {base=ganache}",
      "{base=ganache} .. {symptom=(loose|stiff|split)_ganache} .. (?:{weight}|{number}) .. {ingredient}",
      "(?:{weight}|{number}) .. {ingredient=(cream|chocolate)} .. {symptom=(loose|stiff)_ganache}",
      "{base=ganache} .. (?:{weight}|{number}) .. {symptom=(loose|stiff|split)_ganache}",
      "{weight} .. {base=ganache} .. {symptom=(loose|stiff|split)_ganache}",
      "{base=ganache} .. {symptom=(loose|stiff|split)_ganache} .. {ingredient=(cream|chocolate)} .. (?:{weight}|{number})",
    ],
    [
      10,
      "{number} / {number} .. {base=ganache} .. {symptom=(loose|stiff|split)_ganache}",
      "{symptom=(loose|stiff|split)_ganache} .. {number} / {number}",
    ],
    [4, "{number} / {number} {chocolate}", "{number} / {number} .. {base=ganache}"],
    [
      4,
      "{base=ganache} .. {weight} .. {ingredient}",
      "{weight} .. {chocolate} .. {ingredient=cream}",
      "{weight} .. {ingredient=cream} .. {chocolate}",
      "{weight} .. {ingredient=(cream|chocolate)} .. {base=ganache}",
      "(?:how|hw) much (?:of )?(?:the )?{ingredient=(cream|chocolate)}",
      "(?:how|hw) much (?:of )?(?:the )?{chocolate} .. {ingredient=cream}",
      "{chocolate} .. (?:how|hw) much .. {ingredient=cream}",
      "{ingredient=cream} .. (?:how|hw) much .. {chocolate}",
      "{ingredient=cream} .. (?:how|hw) much .. {ingredient=chocolate}",
      "{base=ganache} .. {symptom=(loose|stiff)_ganache}",
      "{symptom=(loose|stiff)_ganache} .. {base=ganache}",
      "(?:water|ingredient=water>) activity",
      "water<\\S+ activity",
      "a w of",
      "(?:water|fat|sugar)\\S* .. (?:water|fat|sugar)\\S* .. {base=ganache}",
      "{base=ganache} .. (?:water|fat|sugar)\\S* .. (?:water|fat|sugar)\\S*",
      "{weight} .. {base=ganache} .. {symptom=split_ganache}",
      "{symptom=split_ganache} .. {weight} .. {base=ganache}",
      "{base=ganache} .. {symptom=split_ganache} .. {weight}",
    ],
    [
      10,
      "{base=ganache} .. {symptom=split_ganache} .. {weight}",
      "{base=ganache} .. {symptom=split_ganache} .. (?:\\S+ ){0,9}{weight}",
    ],
    [
      3.5,
      "{weight} .. {chocolate} {base=ganache}",
      "{chocolate} {base=ganache} .. {weight}",
      "{chocolate} {base=ganache}",
      "{base=ganache} .. {use}",
      "{use} {base=ganache}",
      "{chocolate} .. {use}",
      "{use} .. {chocolate}",
      "{weight} .. {base=ganache} .. (?:what|how) .. weigh",
      "{color=white} {base=ganache}",
      "{ingredient=milk} {base=ganache}",
      "{base=ganache} recipe",
      "{number} .. {ingredient=(cream|chocolate)} .. {number} .. {ingredient=(cream|chocolate)}",
      "{number} .. {chocolate} .. {number} .. {ingredient=cream}",
      "{weight} .. {chocolate} .. {number} .. {ingredient=cream}",
      "composition .. {base}",
      "{ingredient=cream} .. {base=ganache}",
      "{base=ganache} .. {ingredient=cream}",
      "{base=ganache} for {number} .. {count=macarons}",
      "ratio .. {base=ganache}",
      "{base=ganache} .. ratio",
      "how (?:much|wet|fatty|rich) .. (?:fat|sugar|water)\\S* .. {base=ganache}",
      "{volume} .. {ingredient=cream} .. {chocolate}",
    ],
    [
      2,
      "{weight} .. {chocolate}",
      "{weight} .. {ingredient=cream}",
      "{symptom=(loose|stiff)_ganache}",
      "{base=ganache}",
      "what is it made of",
      "composition",
      "{chocolate} .. {ingredient=cream}",
      "ratio",
    ],
    [1, "{chocolate}", "{ingredient=cream}", "{use}", "{ingredient=chocolate}"],
    [
      -6,
      "{dose}",
      "{weight} .. {chocolate} {base=ganache} .. {taste}",
      "{taste} .. {weight} .. {chocolate} {base=ganache}",
    ],
    [
      -4,
      "(?:note|log) ",
      "timer",
      "(?:label|allergens?|contains)",
      "split {weight}",
      "divide",
      "{symptom=(no_feet|cracked_tops|hollow)}",
      "how (?:long|hot) ",
      "(?:freeze|keep|counter|shelf life|expire)",
      "temper",
      "save recipe",
      "(?:cup|cups|tbsp|tsp|stick|sticks)<unit",
      "in (?:grams|g|oz)<unit",
    ],
    [
      -3,
      "{base=(buttercream|batter)}",
      "{taste} .. {base=ganache} .. (?:how|hw) much$",
      "{count=macarons} with",
      "{percent} (?:of )?{taste}",
      "(?:cost|costs|price|margin)",
      "{ingredient=(mascarpone|cream_cheese)}",
      "enough flavor",
      "(?:halve|scale|double|times)",
      "{factor}",
      "{base=buttercream} .. {weight} .. {ingredient=butter}",
      "calendar",
      "{money}",
      "pantry",
    ],
    [-2, "when (?:do|did|should)", "{count=macarons} .. (?:ready|due|by) ", "{when}", "center"],
  ),
  // "white chocolate for the ganache half", behind a filling that was shared out
  after: {
    fill: cues([
      12,
      "(?:make|do|have|in) (?:that|it|all of it|all that|them)?(?: in| as| a)? ?{chocolate} {base=ganache}",
    ]),
    split: cues([12, "{chocolate} .. {base=ganache} (?:half|part|one|bowl|bit|share|third|quarter)\\S*"]),
  },
  examples: [
    {
      say: "300 g dark chocolate how much cream for piping",
      inputs: { chocolate: "dark", chocolate_g: 300, use: "piping" },
    },
    { say: "I need 450 g milk ganache to fill", inputs: { chocolate: "milk", total_g: 450 } },
    {
      say: "white chocolate drip with 120 g cream, how much chocolate",
      inputs: { chocolate: "white", cream_g: 120, use: "loose" },
    },
    {
      say: "200 g dark and 160 g cream, what is that good for",
      inputs: { chocolate: "dark", chocolate_g: 200, cream_g: 160 },
    },
    {
      say: "milk ganache too runny, was 200 g chocolate and 150 g cream",
      inputs: { chocolate: "milk", chocolate_g: 200, cream_g: 150, fault: "loose" },
    },
    { say: "my 300 g ganache just split", inputs: { total_g: 300, want: "split" } },
    { say: "water activity of 110 g white chocolate and 70 g cream", inputs: { want: "composition" } },
  ],
  elsewhere: [
    { say: "how much flavor for 200 g ganache", tool: "dose" },
    { say: "ganache timer", tool: "timer" },
    { say: "how long does ganache keep in the fridge", tool: "keep" },
    { say: "why is my ganache grainy", tool: "trouble" },
  ],
  rivals: [
    ["use", "ratio"],
    [
      "chocolate_g",
      "cream_g",
      "total_g",
      "of_g",
      "macarons",
      "of_macarons",
      "lines",
      "by_volume",
      "added",
      "unsure_g",
    ],
    ["chocolate", "grades"],
    ["want", "fault", "part", "target_aw", "target_percent", "steps"],
  ],
  read: readGanache,
  compute: answerGanache,
});
