/** What a label has to say: ingredients in order, allergens, net weight, dates; what isn't known is left blank and named. */
import * as z from "zod/mini";
import { tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { weight_g } from "../lib/inputs.ts";
import { whenSaid } from "../lib/when-said.ts";
import { answerLabel } from "./answer.ts";
import { readLabel } from "./read.ts";

export const inputs = z.strictObject({
  want: z.optional(z.enum(["label", "allergens", "dates"])),
  market: z.optional(z.enum(["us", "eu"])),
  /** `taste` is set on a line of flavor, so that its bottle can be asked. */
  lines: z.optional(z.array(z.object({ name: z.string(), grams: weight_g, taste: z.optional(z.string()) }))),
  /** Pieces of the sentence that couldn't be read as a line. */
  unread: z.optional(z.array(z.string())),
  /** The lines came from the answer before. */
  from_table: z.optional(z.boolean()),
  formulas: z.optional(z.array(z.string())),
  net_g: z.optional(weight_g),
  net_oz: z.optional(weight_g),
  made: z.optional(whenSaid),
  /** A description instead of weights: what it is made of, by name. */
  mixes: z.optional(z.array(z.string())),
  named: z.optional(z.array(z.object({ name: z.string(), taste: z.optional(z.string()) }))),
  /** "do they contain nuts": the allergens that are asked about, by their ids. */
  asked: z.optional(z.array(z.string())),
});

export type LabelInputs = z.infer<typeof inputs>;

export const label = tool<LabelInputs>({
  name: "label",
  purpose: "The label: ingredients in order, allergens, net weight, dates, for the US or the EU",
  inputs,
  cues: cues(
    [
      5,
      "(?:allergens?|allergen|allergies)",
      "(?:us|usa|u s|american|eu|e u|european|uk) labels?",
      "labels? .. {ingredient} .. {weight}",
      "labels? .. {weight} .. {ingredient}",
    ],
    [
      4,
      "labels?",
      "(?:contains|contain) (?:line|statement)",
      "(?:declare|declaration)",
      "ingredients? (?:list|line|statement)",
      "best (?:by|before) date",
      "(?:nuts?|gluten|dairy|eggs?|milk|soy|soya|lactose|wheat|peanuts?) ?free",
      "{ingredient=(egg|milk)} free",
      "{count=(macarons|shells)} .. (?:contain|contains)",
      "{base} .. (?:contain|contains)",
      "{chocolate} .. (?:contain|contains)",
      "(?:contain|contains) (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient})",
      "(?:is|are) there (?:any )?(?:nuts?|gluten|soy|soya|dairy|lactose|wheat|{ingredient}) in .. (?:{base}|{count=(macarons|shells)})",
      "allergic",
      "allergy",
    ],
    [1, "net (?:weight|wt)", "{weight} .. {ingredient}", "(?:contains|contain)"],
    [
      -6,
      "bottle .. contains?",
      "(?:bottle|flavor|flavour|oil|extract) label",
      "label (?:says|said|reads|on (?:my|the) bottle)",
      "(?:timer|alarm)",
      "^(?:(?:please|pls|ok|so|and|can|could|you) )*(?:note|log|record|jot)",
      "label it",
      "label (?:the|that|this) timer",
    ],
    [-4, "(?:cost|costs|price|charge|margin|markup)", "box and label", "time to label"],
  ),
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
  ],
  elsewhere: [
    { say: "my mint bottle's label says half a percent, save that", tool: "shelf" },
    { say: "what do I charge for a box at a 60 % margin", tool: "cost" },
    { say: "made them on the 9th, still good today", tool: "keep" },
  ],
  rivals: [
    ["lines", "unread", "from_table", "formulas", "mixes", "named", "asked"],
    ["net_g", "net_oz"],
    ["made"],
    ["want"],
    ["market"],
  ],
  read: readLabel,
  compute: answerLabel,
});
