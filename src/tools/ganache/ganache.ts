/** Ganache by weight: built from any of its parts, checked, mended when loose, stiff or split, and taken apart. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { count, diameter_mm, inBowl_g, share_percent, weight_g } from "../lib/inputs.ts";
import { answerGanache } from "./answer.ts";
import { ganacheAfter, ganacheCues, ganacheGoesOn } from "./cues.ts";
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
    /** The shells' diameter, where macarons were counted. */
    diameter_mm: z.optional(diameter_mm),
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
    /** White, set with butter, or without any: "the one with butter". */
    with_butter: z.optional(z.boolean()),
    /** Grams more or less of one of its lines: "20 g less cream". */
    steps: z.optional(
      z.array(z.object({ name: z.string(), grams: weight_g, does: z.enum(["more", "less"]) })),
    ),
    /** What was added last, so that "no, 30" puts that right. */
    added: z.optional(z.object({ part: z.enum(["chocolate_g", "cream_g"]), grams: weight_g })),
    /** What there is of what has to be added: "only 20 g chocolate left". */
    have_g: z.optional(weight_g),
    /** Cream or milk that was stirred in already to bring a split one back. */
    stirred_g: z.optional(weight_g),
    /** It stays split, and how much was stirred in isn't said. */
    still: z.optional(z.boolean()),
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

export type GanacheInputs = z.infer<ReturnType<typeof inputs>>;

export const ganache = tool<GanacheInputs>({
  name: "ganache",
  purpose:
    "Ganache from chocolate, cream or total; what a ratio is good for; too loose, too stiff, split; what it is made of",
  inputs,
  unboxes: true,
  shifts: "told",
  cues: ganacheCues,
  // "white chocolate for the ganache half", behind a filling that was shared out
  goesOn: ganacheGoesOn,
  after: ganacheAfter,
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
      "diameter_mm",
      "of_macarons",
      "lines",
      "by_volume",
      "added",
      "unsure_g",
      "stirred_g",
      "have_g",
    ],
    ["chocolate", "grades"],
    ["want", "fault", "part", "target_aw", "target_percent", "steps"],
  ],
  sum: [],
  read: readGanache,
  compute: answerGanache,
});
