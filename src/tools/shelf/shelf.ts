/** What is on the shelf: bottles with their own directions, ingredients in stock, what they cost. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { inBowl_g, money, share_percent, weight_g } from "../lib/inputs.ts";
import { answerShelf } from "./answer.ts";
import { shelfCues } from "./cues.ts";
import { shelfGoesOn } from "./goes-on.ts";
import { readShelf } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    /** "unsure" where no word says whether it was put there or taken; "none" where it was for a bowl. */
    does: z.optional(
      z.enum(["bottle", "add", "set", "use", "ask", "list", "price", "pack", "forget", "unsure", "none"]),
    ),
    /** Ingredients with what is put there, used, or what they cost. */
    entries: z.optional(
      z.array(
        z.object({
          name: z.string(),
          grams: z.optional(inBowl_g),
          /** "half of it": a share of what is there, 0 to 1. */
          part: z.optional(z.number()),
          /** "no, i used 150": so much of it was taken or put there just before, and doesn't count. */
          instead_g: z.optional(inBowl_g),
          price_per_g: z.optional(money),
          /** g that a price was said for, where it was a kilo or a pound: the next ones may be for as much. */
          per_g: z.optional(weight_g),
          /** For as much as the one before, which was not said. */
          as_before: z.optional(z.boolean()),
          /** What one of them weighs, where the price was by the piece. */
          each_g: z.optional(weight_g),
          pack_g: z.optional(weight_g),
          currency: z.optional(z.string()),
        }),
      ),
    ),
    /** "lost 20 g", behind several: of which of them isn't said. */
    loose_g: z.optional(inBowl_g),
    /** More is used than there is, and she said to go to nothing. */
    to_zero: z.optional(z.boolean()),
    /** Only the bottles are asked for. */
    bottles_only: z.optional(z.boolean()),
    taste: z.optional(z.string()),
    form: z.optional(z.string()),
    /** 0 where the bottle only says how much at most. */
    low_percent: z.optional(z.number().check(z.gte(0, { error: "A share can't be below 0 %." }), z.lte(100))),
    high_percent: z.optional(share_percent),
    /** How many times the usual strength, and what is left in it. */
    strength: z.optional(z.number().check(z.gt(0), z.lte(100))),
    left_g: z.optional(inBowl_g),
    /** The bowl that was dosed by the bottle just before. */
    bowl_g: z.optional(weight_g),
    /** How directions that aren't in percent were taken. */
    taken: z.optional(z.string()),
    /** A whole recipe is taken off: what the shelf lacks is named, the rest is taken. */
    whole: z.optional(z.boolean()),
    /** What the last note says was used. */
    from_note: z.optional(z.boolean()),
    /** What the bottle says is in it. */
    allergens: z.optional(z.array(z.string())),
    /** A bottle whose directions aren't a share of the weight: "5 drops". */
    unweighable: z.optional(z.string()),
  }),
);

export type ShelfInputs = z.infer<ReturnType<typeof inputs>>;

export const shelf = tool<ShelfInputs>({
  name: "shelf",
  purpose: "Your bottles with their directions, what is in stock, and what it cost",
  inputs,
  cues: shelfCues,
  goesOn: shelfGoesOn,
  examples: [
    {
      say: "my mint bottle says half to one percent, save that",
      inputs: { does: "bottle", taste: "mint", low_percent: 0.5, high_percent: 1 },
    },
    {
      say: "I've got 1 kg almond flour in the cupboard, put it in the pantry",
      inputs: { does: "add", entries: [{ name: "almond flour", grams: 1000 }] },
    },
    {
      say: "pantry: 50 g almond flour",
      inputs: { does: "set", entries: [{ name: "almond flour", grams: 50 }] },
    },
    {
      say: "used 250 g of the almond flour",
      inputs: { does: "use", entries: [{ name: "almond flour", grams: 250 }] },
    },
    {
      say: "my violet bottle prescribes 6 to 9 g per kilogram of filling, save this",
      inputs: { does: "bottle", taste: "violet", low_percent: 0.6, high_percent: 0.9 },
    },
    {
      say: "almond flour comes in 1 kg bags",
      inputs: { does: "pack", entries: [{ name: "almond flour", pack_g: 1000 }] },
    },
    { say: "how much almond flour have i got", inputs: { does: "ask", entries: [{ name: "almond flour" }] } },
    { say: "what's on my shelf", inputs: { does: "list" } },
    { say: "almond flour costs $16 a kilo, remember that", inputs: { does: "price" } },
    {
      say: "my lavender bottle says 1 to 2 percent, save it",
      inputs: { does: "bottle", taste: "lavender", low_percent: 1, high_percent: 2 },
    },
  ],
  elsewhere: [
    { say: "how much mint flavor for 400 g buttercream", tool: "dose" },
    { say: "what do i need to buy for 24 macarons", tool: "buy" },
    { say: "120 g egg whites, what do i need of the rest", tool: "scale" },
    { say: "130 g almond flour at $16 a kilo, what did that cost", tool: "cost" },
    { say: "save recipe snowy shells: 105 g whites, 130 g almond flour", tool: "formula" },
  ],
  // Every order stands for itself; what "it" is, read takes from the one before.
  rivals: [
    [
      "does",
      "entries",
      "loose_g",
      "to_zero",
      "bottles_only",
      "taste",
      "form",
      "low_percent",
      "high_percent",
      "strength",
      "left_g",
      "taken",
      "bowl_g",
      "whole",
      "from_note",
      "allergens",
      "unweighable",
    ],
  ],
  alone: true,
  read: readShelf,
  compute: answerShelf,
});
