/** Flavor and color by weight: forward, backward, checked, overdosed, as a share of the finished weight. */

import * as z from "zod/mini";
import { bases } from "../../../data/words/things.ts";
import { later, tool } from "../contract/index.ts";
import { inBowl_g, share_percent, weight_g } from "../lib/inputs.ts";
import { answerDose } from "./answer.ts";
import { doseAfter, doseCues, doseGoesOn } from "./cues.ts";
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
    /** It was asked for each of those bowls. */
    each_bowl: z.optional(z.boolean()),
    /** The bowl of which `base_g` is a share: "no, 40 %" is of it again. */
    whole_g: z.optional(weight_g),
    /** That share, in percent. */
    share: z.optional(share_percent),
    /** The bowl shared out between flavors: "half rose, half lemon". */
    shared: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** The unit in which the bowl was said, where that isn't grams: "and 12" counts in it. */
    base_unit: z.optional(z.enum(["oz", "lb"])),
    /** "double the green": the part that is named, where that may also be of its color. */
    twice: z.optional(z.string()),
    /** Plain mix that went in on top since: "and if i add 80 instead" takes its place. */
    added_g: z.optional(weight_g),
    /** Parts that were taken out of the sum again: "butter back in". */
    left_out: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** The row of the dose table. */
    dose: z.optional(z.string()),
    taste: z.optional(z.string()),
    /** The thing's own name where the row's wouldn't do: "salt", "espresso powder". */
    name: z.optional(z.string()),
    /** The flavor in whose place this one came: "no, powder after all" comes back to it. */
    was: z.optional(
      z.object({
        dose: z.optional(z.string()),
        taste: z.optional(z.string()),
        name: z.optional(z.string()),
        bare: z.optional(z.boolean()),
      }),
    ),
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
    /** A bare weight behind a range: of the flavor or of another bowl? */
    which_g: z.optional(weight_g),
    /** The spoon it was said in: "oops, i put 3" counts in those. */
    flavor_unit: z.optional(z.string()),
    percent: z.optional(share_percent),
    percent_high: z.optional(share_percent),
    /** Said so far over the table that it may be the share of a bowl. */
    far_over: z.optional(z.boolean()),
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
    spoon: z.optional(z.enum(["tsp", "tbsp", "ml", "g"])),
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
    /** She asks which flavors there are doses for, or what goes with what. */
    list: z.optional(z.enum(["known", "pairing"])),
    /** A color with much water in it, which no row is of. */
    liquid_color: z.optional(z.boolean()),
    /** What is sold to color food and is neither gel nor powder color: "titanium dioxide", "airbrush color". */
    colorant: z.optional(z.string()),
    /** What is folded in by the piece: "biscuit crumbs". */
    inclusion: z.optional(z.string()),
    /** A plain fat, which flavors nothing: "olive oil". */
    plain_oil: z.optional(z.string()),
    /** She asks for the percentage itself. */
    asks_percent: z.optional(z.boolean()),
    /** What it is sold as, where that is no food: "candle". */
    not_food: z.optional(z.string()),
    /** An essential oil, which may be sold for scent only. */
    essential: z.optional(z.boolean()),
  }),
);

export type DoseInputs = z.infer<ReturnType<typeof inputs>>;

export const dose = tool<DoseInputs>({
  name: "dose",
  purpose: "How much flavor or color goes into a weight of filling or batter, and the other way round",
  inputs,
  shifts: "told",
  cues: doseCues,
  // "and if it's a white chocolate ganache instead, same weight": the dose for it, not how it is made
  goesOn: doseGoesOn,
  after: doseAfter,
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
      say: "tipped 14 g pear flavor in 200 g ganache, how much plain ganache to rescue it",
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
    ["percent", "percent_high", "usual", "by_table", "far_over"],
    [
      "base_g",
      "parts",
      "left_out",
      "added_g",
      "which_g",
      "whole_g",
      "share",
      "shared",
      "base_unit",
      "each_bowl",
    ],
    ["unweighable", "flavor_g"],
    ["flavor_g", "by_volume", "flavor_unit", "fresh", "more_g", "which_g"],
    ["unweighable", "base_g"],
    [
      "dose",
      "taste",
      "name",
      "bare",
      "unknown",
      "hue",
      "not_food",
      "essential",
      "liquid_color",
      "colorant",
      "inclusion",
      "plain_oil",
    ],
    ["of_finished"],
  ],
  sum: ["hue"],
  read: readDose,
  compute: answerDose,
});
