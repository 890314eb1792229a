/** Filling for a number of macarons, ring and center, and macarons that a bowl of filling fills. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { inOunces } from "../lib/ounces.ts";
import { answerFill } from "./answer.ts";
import { fillAfter, fillCues, fillGoesOn } from "./cues.ts";
import { readFill } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** Shells that are there to be filled, two to a macaron. */
    shells: z.optional(count("shells")),
    /** Batter of which they are to be piped: as many as it gives. */
    batter_g: z.optional(weight_g),
    diameter_mm: z.optional(diameter_mm),
    /** Filling at hand: how many it fills, or, beside a number of macarons, whether it is enough. */
    filling_g: z.optional(weight_g),
    /** The bowls that the filling at hand is in, where there are several. */
    bowls: z.optional(z.array(z.object({ name: z.string(), grams: z.number() }))),
    /** So much goes into each, as she said: it goes before the rule for the size. */
    each_g: z.optional(weight_g),
    filling: z.optional(z.string()),
    /** So many flavors share them evenly. */
    flavors: z.optional(count("flavors")),
    /** They are a share of so many, of which more may be asked. */
    of_macarons: z.optional(count("macarons")),
    /** "half ganache, half buttercream": each by its name. */
    shares: z.optional(
      z.array(
        z.object({
          name: z.string(),
          share: z.number(),
          base: z.optional(z.string()),
          count: z.optional(z.number()),
        }),
      ),
    ),
    /** Two fillings: a ring and a center. */
    two: z.optional(z.boolean()),
    ring: z.optional(z.string()),
    center: z.optional(z.string()),
    /** Nobody said which of two is the ring. */
    placed: z.optional(z.boolean()),
    /** Asked for once more in ounces. */
    in_oz: z.optional(z.boolean()),
  }),
);

export type FillInputs = z.infer<ReturnType<typeof inputs>>;

export const fill = tool<FillInputs>({
  name: "fill",
  purpose: "Filling to make for a number of macarons, ring and center, or macarons from a bowl of filling",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: fillCues,
  // "filling for it", of the day that was planned
  // "shells came out 4,2 cm", of what is to be filled
  goesOn: fillGoesOn,
  after: fillAfter,
  examples: [
    { say: "how much filling do I make for 24 macarons", inputs: { macarons: 24 } },
    {
      say: "48 macarons with a caramel center and a buttercream ring, how much of each",
      inputs: { macarons: 48, two: true },
    },
    {
      say: "how many macarons can I fill with 300 g ganache",
      inputs: { filling_g: 300, filling: "ganache" },
    },
    { say: "how much filling goes in one 4.5 cm macaron", inputs: { macarons: 1, diameter_mm: 45 } },
    { say: "enough buttercream for 36 macarons", inputs: { macarons: 36, filling: "buttercream" } },
  ],
  elsewhere: [
    { say: "how much flavor for 300 g filling", tool: "dose" },
    { say: "batter for 24 macarons", tool: "shells" },
    { say: "filled them this morning, how long in the fridge", tool: "keep" },
  ],
  rivals: [
    ["macarons", "shells", "batter_g", "filling_g", "of_macarons"],
    ["filling_g", "bowls"],
    ["flavors", "shares", "two", "ring", "center", "placed"],
  ],
  sum: [],
  read: readFill,
  compute: (inputs, world) => {
    const outcome = answerFill(inputs, world);
    // a bench set to ounces has them in every answer
    return inputs.in_oz && world.bench.weight_unit !== "oz" ? inOunces(outcome) : outcome;
  },
});
