/** What a batch costs and what to charge: cost, price, margin, markup and food cost, each from the others. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { count, diameter_mm, money, share_percent, time_min, weight_g } from "../lib/inputs.ts";
import { plain } from "../lib/show.ts";
import { answerCost } from "./answer.ts";
import { costCues, costGoesOn } from "./cues.ts";
import { readCost } from "./read.ts";

/** `pack_g` is the weight that the price was said for: "$9 for a 500 g bag". */
const line = z.object({
  name: z.string(),
  grams: weight_g,
  price_per_g: z.optional(money),
  pack_g: z.optional(weight_g),
});

const share = (what: string) =>
  z.number().check(
    z.gte(0, {
      error: (issue) =>
        `A ${what} of ${plain(Number(issue.input))} % would sell below cost; say a price instead.`,
    }),
    z.lt(100, {
      error: (issue) =>
        `A ${what} of ${plain(Number(issue.input))} % can't be: the price would have no end. Below 100 %, please.`,
    }),
  );

export const inputs = later(() =>
  z.strictObject({
    /** Weighed lines, with a price where one was said; the rest are priced from the shelf. */
    lines: z.optional(z.array(line)),
    /** Prices said without a weight, by ingredient. */
    prices: z.optional(
      z.array(z.object({ name: z.string(), price_per_g: money, pack_g: z.optional(weight_g) })),
    ),
    /** A price was said of what is in none of the lines: the same sum again would pass for an answer. */
    lacks: z.optional(z.string()),
    /** Lines that went out of the bill, the latest last: "with the sugar again". */
    dropped: z.optional(z.array(line)),
    /** A price that may be of any of several lines. */
    of_which: z.optional(z.object({ price_per_g: money, pack_g: z.optional(weight_g) })),
    /** Answers to "what does a kilo of it cost?", in the order of the lines that had no price. */
    more_prices: z.optional(z.array(money)),
    /** One part of a batch of which only the whole is known: "the pistachio filling". */
    part: z.optional(z.string()),
    formula: z.optional(z.string()),
    cost: z.optional(money),
    ingredients: z.optional(money),
    packaging: z.optional(money),
    /** What one box is packed in, whatever its size; `box_of` says how many it holds. */
    box_packaging: z.optional(money),
    box_of: z.optional(count("macarons")),
    labor: z.optional(money),
    labor_min: z.optional(time_min),
    labor_per_h: z.optional(money),
    price: z.optional(money),
    margin_percent: z.optional(share("margin")),
    markup_percent: z.optional(
      z
        .number()
        .check(z.gte(0, { error: "A markup below zero would sell below cost; say a price instead." })),
    ),
    food_cost_percent: z.optional(
      z
        .number()
        .check(
          z.gt(0, { error: "A food cost has to be above 0 %." }),
          z.lte(100, { error: "A food cost above 100 % would sell below the ingredients." }),
        ),
    ),
    /** Parts of the price that are no margin: what comes off, what comes on top, what somebody keeps. */
    discount_percent: z.optional(share_percent),
    tax_percent: z.optional(share_percent),
    fee_percent: z.optional(share_percent),
    macarons: z.optional(count("macarons")),
    /** What boxes of each size sell for, and the size that is asked about. */
    sizes: z.optional(z.array(z.object({ holds: count("macarons"), price: money }))),
    holds: z.optional(count("macarons")),
    /** So many were ordered at a price that was known: what they come to is asked, whatever they cost. */
    ordered: z.optional(z.boolean()),
    /** The boxes that are paid for, out of `boxes`; and whether the cost is settled as that of all of them. */
    sold_boxes: z.optional(count("boxes")),
    cost_of: z.optional(z.literal("all")),
    /** The boxes that all of it fills, and that one of them is asked about. */
    boxes: z.optional(count("boxes")),
    per_box: z.optional(z.boolean()),
    /** All the macarons that the cost is for, where some of them are asked about: a box of six out of 36. */
    part_of: z.optional(count("macarons")),
    /** For how many macarons the cost and the price were said: 1 for "each". */
    cost_for: z.optional(count("macarons")),
    price_for: z.optional(count("macarons")),
    /** The side that was said for a box of nobody knows how many. */
    boxed: z.optional(z.enum(["cost", "price"])),
    /** Shells of this size, filled with this, where the macarons' own cost is asked. */
    diameter_mm: z.optional(diameter_mm),
    filling: z.optional(z.string()),
    chocolate: z.optional(z.enum(["dark", "milk", "white"])),
    /** Weights are worked out for the macarons; without this a saved recipe is priced whole, as it is saved. */
    fitted: z.optional(z.boolean()),
    /** ISO 4217; bare is a $ or no sign at all, which the bench may settle. */
    currency: z.optional(z.string()),
    bare_sign: z.optional(z.enum(["$", ""])),
    mixed: z.optional(z.string()),
    want: z.optional(z.enum(["cost", "price", "margin", "markup", "food cost", "break even"])),
    /** The inputs of the answer before, where this one changes something in them. */
    was: z.optional(z.record(z.string(), z.unknown())),
  }),
);

export type CostInputs = z.infer<ReturnType<typeof inputs>>;

export const cost = tool<CostInputs>({
  name: "cost",
  purpose: "What a batch costs, what to charge, margin and markup",
  inputs,
  // A piece without a question ("$8.40 of ingredients") stays below what stands alone, so that the sum stays whole.
  cues: costCues,
  // "and at 18?"
  goesOn: costGoesOn,
  examples: [
    {
      say: "$8.40 of ingredients and $3.60 for boxes, what do I charge for a 60 % margin",
      inputs: { ingredients: 8.4, packaging: 3.6, margin_percent: 60, want: "price" },
    },
    {
      say: "a box costs me $18 and sells at $45, what's my margin",
      inputs: { cost: 18, price: 45, want: "margin" },
    },
    {
      say: "130 g almond flour at $16 a kilo and 100 g sugar at $1.50 a kilo, what did the batch cost",
      inputs: { want: "cost" },
    },
    {
      say: "€10 ingredients, €2.50 packaging, two hours work at €15 an hour, price with a 40 % margin",
      inputs: {
        ingredients: 10,
        packaging: 2.5,
        labor_min: 120,
        labor_per_h: 15,
        margin_percent: 40,
        currency: "EUR",
      },
    },
    {
      say: "costs me £3.50 and I sell it at £9.80, what's the markup",
      inputs: { cost: 3.5, price: 9.8, want: "markup", currency: "GBP" },
    },
    {
      say: "ingredients come to $6 and it sells for $24, what's my food cost percent",
      inputs: { ingredients: 6, price: 24, want: "food cost" },
    },
  ],
  elsewhere: [
    { say: "almond flour costs $16 a kilo, remember that", tool: "shelf" },
    { say: "set my currency to euros", tool: "bench" },
    { say: "flavor at 4 % for 275 g buttercream", tool: "dose" },
  ],
  // What is carried over from the turn before depends on what was said: read does it, not the merge.
  get rivals() {
    return [Object.keys(inputs().shape) as (keyof CostInputs & string)[]];
  },
  read: readCost,
  compute: answerCost,
});
