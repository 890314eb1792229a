/** What a label has to say: ingredients in order, allergens, net weight, dates; what isn't known is left blank and named. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { count, weight_g } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { answerLabel } from "./answer.ts";
import { labelCues, labelGoesOn } from "./cues.ts";
import { readLabel } from "./read.ts";

const side_mm = z.optional(
  z
    .number()
    .check(
      z.gte(20, { error: "A label under 20 mm has no room for its text." }),
      z.lte(400, { error: "A label over 400 mm is larger than the paper." }),
    ),
);

export const inputs = later(() =>
  z.strictObject({
    want: z.optional(z.enum(["label", "allergens", "dates", "safe"])),
    market: z.optional(z.enum(["us", "eu"])),
    /** A country whose form isn't known here: it is asked which of the two shall stand in. */
    elsewhere: z.optional(z.string()),
    /** Who is responsible for it: name and address, as she wrote them. */
    by: z.optional(
      z.string().check(z.maxLength(200, { error: "A name and address of at most 200 letters." })),
    ),
    /** `taste` is set on a line of flavor, so that its bottle can be asked. */
    lines: z.optional(
      z.array(z.object({ name: z.string(), grams: weight_g, taste: z.optional(z.string()) })),
    ),
    /** Named afterwards without a weight: they count for the allergens, and their weight is asked for. */
    also: z.optional(z.array(z.string())),
    /** Pieces of the sentence that couldn't be read as a line. */
    unread: z.optional(z.array(z.string())),
    /** Foods named where no line weighs them: they count for the allergens. */
    beside: z.optional(z.array(z.string())),
    /** The lines came from the answer before. */
    from_table: z.optional(z.boolean()),
    formulas: z.optional(z.array(z.string())),
    /** The name of the food, where it has one of its own. */
    title: z.optional(z.string().check(z.maxLength(60, { error: "A name of at most 60 letters." }))),
    /** "no, 100 g", of nothing that is named: asked about. */
    bare_g: z.optional(weight_g),
    net_g: z.optional(weight_g),
    net_oz: z.optional(weight_g),
    made: z.optional(whenSaid),
    /** A day that she says herself, in the place of day 7. */
    use_by: z.optional(whenSaid),
    /** A description instead of weights: what it is made of, by name. */
    mixes: z.optional(z.array(z.string())),
    named: z.optional(z.array(z.object({ name: z.string(), taste: z.optional(z.string()) }))),
    /** "do they contain nuts": the allergens that are asked about, by their ids. */
    asked: z.optional(z.array(z.string())),
    /** To be printed: so many or a page full, of that size, on that paper. */
    as_pdf: z.optional(z.boolean()),
    full_page: z.optional(z.boolean()),
    copies: z.optional(
      count("labels").check(z.lte(1000, { error: "More than 1000 labels at once; print them in parts." })),
    ),
    label_width_mm: side_mm,
    label_height_mm: side_mm,
    paper: z.optional(z.enum(["a4", "letter"])),
  }),
);

export type LabelInputs = z.infer<ReturnType<typeof inputs>>;

export const label = tool<LabelInputs>({
  name: "label",
  purpose: "The label: ingredients in order, allergens, net weight, dates, for the US or the EU",
  inputs,
  cues: labelCues,
  // "and if i put peanut butter in them"
  goesOn: labelGoesOn,
  examples: [
    {
      say: "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar, 90 g butter, net weight 120 g",
      inputs: { market: "us", net_g: 120, want: "label" },
    },
    {
      say: "eu label for ground almonds 130 g, icing sugar 130 g, egg whites 100 g, sugar 100 g, cream 90 g",
      inputs: { market: "eu", want: "label" },
    },
    {
      say: "what allergens do i declare for pistachio macarons with white chocolate ganache",
      inputs: { want: "allergens", mixes: ["shells", "ganache"] },
    },
    { say: "what's the best by date on the label for a batch I filled today", inputs: { want: "dates" } },
    {
      say: "which allergens are in hazelnut macarons with buttercream",
      inputs: { want: "allergens", mixes: ["shells", "buttercream"] },
    },
    {
      say: "a sheet of 12 labels as a pdf: almond flour 130 g, powdered sugar 130 g, egg whites 100 g, sugar 100 g, butter 90 g",
      inputs: { as_pdf: true, copies: 12, want: "label" },
    },
    {
      say: "print a label 90 x 80 mm on a4 for 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar",
      inputs: { as_pdf: true, label_width_mm: 90, label_height_mm: 80, paper: "a4" },
    },
    { say: "print that label as a pdf", inputs: { as_pdf: true } },
  ],
  elsewhere: [
    { say: "my mint bottle's label says half a percent, save that", tool: "shelf" },
    { say: "what do I charge for a box at a 60 % margin", tool: "cost" },
    { say: "made them on the 9th, still good today", tool: "keep" },
  ],
  rivals: [
    ["lines", "also", "unread", "beside", "from_table", "formulas", "mixes", "named", "asked", "bare_g"],
    ["net_g", "net_oz", "bare_g"],
    ["made"],
    ["use_by"],
    ["want"],
    ["market", "elsewhere"],
    ["by"],
    ["title"],
    ["label_width_mm", "label_height_mm"],
    ["copies", "full_page"],
  ],
  read: readLabel,
  compute: answerLabel,
});
