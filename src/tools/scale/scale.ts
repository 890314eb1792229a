/** A recipe scaled by any of its lines, by stock at hand, by factor, by weight, by whites or by count. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { egg_size, eggs_g } from "../lib/eggs-told.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { namedSpares, spare_more, spare_percent } from "../lib/spares.ts";
import { answerScale } from "./answer.ts";
import { scaleAfter, scaleCues, scaleGoesOn } from "./cues.ts";
import { readScale } from "./read.ts";

const line = z.object({ name: z.string(), grams: weight_g });

export const inputs = later(() =>
  z.strictObject({
    /** A recipe said in the sentence. Without one it is the saved formula, or the house formula. */
    lines: z.optional(z.array(line)),
    /** How many macarons those lines make, where that was told with them. */
    makes: z.optional(count("macarons")),
    /** So many whites of those lines were counted, and not weighed. */
    counted_whites: z.optional(count("whites")),
    /** Eggs by number are lines of it. */
    counted_eggs: z.optional(z.boolean()),
    formula: z.optional(z.string()),
    /** "make it three times": a recipe was meant that nobody has named yet. */
    pointed: z.optional(z.boolean()),
    /** "my recipe", of which nothing was said: the house formula only where she has set that. */
    own: z.optional(z.boolean()),
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
    /** It was told as what there is: another thing that is there joins it. */
    at_hand: z.optional(z.boolean()),
    whites_count: z.optional(count("whites")),
    /** What was told of the eggs that they come out of. */
    eggs_g: z.optional(eggs_g),
    egg_size: z.optional(egg_size),
    total_g: z.optional(weight_g),
    macarons: z.optional(count("macarons")),
    /** One line is asked for, and nothing says for how much: "how much almond flour do i need". */
    unsized: z.optional(z.boolean()),
    shells: z.optional(count("shells")),
    diameter_mm: z.optional(diameter_mm),
    /** Spares said with the question, in the place of the bench's. */
    spare_percent: z.optional(spare_percent),
    /** More or fewer of them than there were. */
    spare_more: z.optional(spare_more),
    spare_less: z.optional(spare_more),
    /** The number of them, where that was said. */
    spares: z.optional(z.string()),
    /** The one line she asks about; the others are given all the same. */
    asked: z.optional(z.string()),
  }),
);

export type ScaleInputs = z.infer<ReturnType<typeof inputs>>;

export const scale = tool<ScaleInputs>({
  name: "scale",
  purpose: "A recipe scaled by what you have, by factor, by weight, by whites or by macarons",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: scaleCues,
  goesOn: scaleGoesOn,
  // "make it one and a half times", behind a recipe that was shown
  after: scaleAfter,
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
    ["factor", "have", "at_hand", "whites_count", "eggs_g", "egg_size", "total_g", "macarons", "shells"],
    ["lines", "formula", "pointed", "own", "counted_whites", "counted_eggs", "makes"],
    ["spare_percent", "spares", "spare_more", "spare_less"],
  ],
  sum: [],
  read: readScale,
  compute: (inputs, world) => namedSpares(answerScale(inputs, world), inputs),
});
