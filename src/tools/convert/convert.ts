/** Weights, volumes, an ingredient's cups and grams, heat, lengths, times, and plain sums. */
import * as z from "zod/mini";
import { units } from "../../../data/words/units.ts";
import { later, tool } from "../contract/index.ts";
import { answerConvert } from "./answer.ts";
import { convertAfter, convertCues, convertGoesOn } from "./cues.ts";
import { readConvert } from "./read.ts";

const unitNames = new Set(units.map((row) => row.unit));
const unit = z.string().check(z.refine((name) => unitNames.has(name), { error: "That is no unit I know." }));
const number = z
  .number()
  .check(
    z.gte(-1e9, { error: "That number is beyond a kitchen; check it." }),
    z.lte(1e9, { error: "That number is beyond a kitchen; check it." }),
  );

export const inputs = later(() =>
  z.strictObject({
    /** By the spoon, and nobody says which. */
    spoon: z.optional(z.boolean()),
    /** In `unit`. */
    value: z.optional(number),
    /** The upper end of a range, in `unit`. */
    high: z.optional(number),
    /** A unit of the unit table, or "large" for whites, yolks and eggs by number. */
    unit: z.optional(z.union([unit, z.literal("large")])),
    /** The unit asked for. */
    to: z.optional(unit),
    ingredient: z.optional(z.string()),
    /** A mix that was weighed: what is asked of "it" next is asked of that. */
    mix: z.optional(z.string()),
    /** How it is measured: "sifted", "packed". */
    manner: z.optional(z.string()),
    /** A bare nut's name, of which the table has several measures. */
    several: z.optional(z.boolean()),
    /** What it is of, when no table knows it. */
    unknown: z.optional(z.string()),
    /** That is a liquid flavor, of which a dose counts ml as grams. */
    liquid: z.optional(z.boolean()),
    /** The oven that the heat is wanted for. */
    oven: z.optional(z.enum(["fan", "conventional"])),
    /** A gas oven's mark, into `to` or °C. */
    gas_mark: z.optional(number),
    /** The mark of a gas oven is what is asked for. */
    to_gas: z.optional(z.boolean()),
    /** Digits, operators and brackets. */
    sum: z.optional(z.string().check(z.maxLength(400))),
    sum_unit: z.optional(unit),
    /** Money into other money. */
    exchange: z.optional(z.boolean()),
    /** The figure of the answer before this one. */
    that: z.optional(z.boolean()),
    /** The unit that the answer before is said to be in. */
    from: z.optional(unit),
  }),
);

export type ConvertInputs = z.infer<ReturnType<typeof inputs>>;

export const convert = tool<ConvertInputs>({
  name: "convert",
  purpose: "Weights, cups and spoons of an ingredient, heat, fan ovens, lengths, times and plain sums",
  inputs,
  cues: convertCues,
  examples: [
    {
      say: "2 cups powdered sugar in grams",
      inputs: { value: 2, unit: "cup", to: "g", ingredient: "powdered sugar" },
    },
    {
      say: "how many cups is 230 g caster sugar",
      inputs: { value: 230, unit: "g", to: "cup", ingredient: "granulated sugar" },
    },
    { say: "9 oz in grams", inputs: { value: 9, unit: "oz", to: "g" } },
    { say: "what's 350 f in celsius", inputs: { value: 350, unit: "°F", to: "°C" } },
    {
      say: "recipe says 150 c conventional and mine is a fan oven, what do I set",
      inputs: { value: 150, unit: "°C", oven: "fan" },
    },
    { say: "my tip is 3/8 inch, what's that in mm", inputs: { value: 0.375, unit: "in", to: "mm" } },
    {
      say: "how many grams is 3 egg whites",
      inputs: { value: 3, unit: "large", ingredient: "whites", to: "g" },
    },
    { say: "what's 3/4 of 260", inputs: { sum: "3 / 4 * 260" } },
    { say: "gas mark 4 in celsius", inputs: { gas_mark: 4, to: "°C" } },
    { say: "12 x 45", inputs: { sum: "12 * 45" } },
  ],
  elsewhere: [
    { say: "how many teaspoons of flavor for 230 g buttercream", tool: "dose" },
    { say: "cocoa powder in 300 g ganache, how many grams", tool: "dose" },
    { say: "split 480 g batter two to one", tool: "split" },
    { say: "what oven temperature for macaron shells", tool: "method" },
    { say: "18 min on the clock please", tool: "timer" },
    { say: "my oven is a fan oven", tool: "bench" },
  ],
  goesOn: convertGoesOn,
  after: convertAfter,
  rivals: [
    [
      "value",
      "spoon",
      "high",
      "unit",
      "to",
      "ingredient",
      "manner",
      "several",
      "unknown",
      "liquid",
      "oven",
      "gas_mark",
      "to_gas",
      "sum",
      "sum_unit",
      "exchange",
      "that",
    ],
  ],
  sum: [],
  read: readConvert,
  compute: answerConvert,
});
