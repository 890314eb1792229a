/** How the baker's bench is set: oven, tray, size, scale, hours, money. Said once, it counts in every answer. */
import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { learnedTopics } from "../contract/record.ts";
import { cues } from "../lib/cue.ts";
import { diameter_mm, money, time_min } from "../lib/inputs.ts";
import { answerBench } from "./answer.ts";
import { benchCues } from "./cues.ts";
import { readBench } from "./read.ts";

const within = (low: number, high: number, what: string) =>
  z.number().check(z.gte(low, { error: what }), z.lte(high, { error: what }));
const whole = (low: number, high: number, what: string) =>
  z
    .number()
    .check(z.gte(low, { error: what }), z.lte(high, { error: what }), z.multipleOf(1, { error: what }));
const minutes = within(0, 10_080, "A step takes between nothing and a week.");
const clock = within(0, 1440, "A day has 24 hours.");

export const inputs = later(() =>
  z.strictObject({
    /** "learned" lists what her batches teach, "forget" ends it, "own" goes back to it from the book; "told" is how a bake went, and no setting. */
    do: z.optional(z.enum(["set", "show", "reset", "learned", "forget", "own", "told"])),
    /** What of it: all where none is named. */
    topics: z.optional(z.array(z.enum(learnedTopics))),
    /** "use the book": not only a setting forgotten. */
    book: z.optional(z.boolean()),
    /** Settings asked for or reset; all of them when none is named. */
    keys: z.optional(z.array(z.string())),
    /** "metric cups" without a size. */
    metric_cup: z.optional(z.boolean()),
    /** The oven is off by this, hot or cold not said. In °C. */
    off_c: z.optional(z.number()),
    shells_a_tray: z.optional(whole(1, 500, "A tray holds whole shells, between 1 and 500.")),
    tray_width_mm: z.optional(within(60, 2000, "A tray is between 60 mm and 2 m wide.")),
    tray_depth_mm: z.optional(within(60, 2000, "A tray is between 60 mm and 2 m deep.")),
    trays_at_once: z.optional(whole(1, 20, "Between 1 and 20 whole trays bake at once.")),
    diameter_mm: z.optional(diameter_mm),
    spare_percent: z.optional(within(0, 99, "Spare shells are between 0 and 99 %.")),
    fan_oven: z.optional(z.boolean()),
    oven_c: z.optional(within(50, 350, "An oven for shells is between 50 and 350 °C.")),
    oven_offset_c: z.optional(
      within(-100, 100, "An oven that is more than 100 °C off needs mending, not a setting."),
    ),
    bake_min: z.optional(time_min),
    rest_min: z.optional(minutes),
    cool_min: z.optional(minutes),
    mature_h: z.optional(within(0, 168, "Maturing takes up to a week.")),
    weigh_min: z.optional(minutes),
    macaronage_min: z.optional(minutes),
    pipe_min: z.optional(minutes),
    fill_s: z.optional(within(0, 3600, "Filling a macaron takes up to an hour.")),
    box_min: z.optional(minutes),
    warm_min: z.optional(minutes),
    wake_min: z.optional(clock),
    sleep_min: z.optional(clock),
    weight_unit: z.optional(z.enum(["g", "oz"])),
    scale_g: z.optional(within(0.001, 1000, "A scale's steps are between 0.001 g and 1 kg.")),
    cup_ml: z.optional(within(50, 500, "A cup holds between 50 and 500 ml.")),
    currency: z.optional(z.string()),
    labor_per_h: z.optional(money),
    market: z.optional(z.enum(["us", "eu"])),
    paper: z.optional(z.enum(["a4", "letter"])),
    house_formula: z.optional(z.string()),
  }),
);

export type BenchInputs = z.infer<ReturnType<typeof inputs>>;

export const bench = tool<BenchInputs>({
  name: "bench",
  purpose: "How your bench is set: oven, tray, shell size, scale, hours, currency",
  inputs,
  cues: benchCues,
  // "mine runs hot by 10", behind how hot they bake
  after: {
    method: cues([
      9,
      "(?:mine|it|my one) (?:runs|bakes) (?:about )?(?:hot|cold|cool|hotter|colder) by (?:about )?(?:{number}|{temperature})",
      "(?:mine|it|my one) (?:runs|bakes) (?:about )?(?:{number}|{temperature}) (?:degrees )?(?:too )?(?:hot|cold|cool|hotter|colder)",
    ]),
  },
  examples: [
    { say: "my mat has 28 circles", inputs: { do: "set", shells_a_tray: 28 } },
    { say: "I always pipe mine 4 cm, remember that", inputs: { do: "set", diameter_mm: 40 } },
    { say: "my oven runs 10 hot", inputs: { do: "set", oven_offset_c: 10 } },
    { say: "my scale reads 1 g steps", inputs: { do: "set", scale_g: 1 } },
    { say: "my tray is 30 by 40 cm", inputs: { do: "set", tray_width_mm: 300, tray_depth_mm: 400 } },
    { say: "I get up at 6", inputs: { do: "set", wake_min: 360 } },
    { say: "set my currency to euros", inputs: { do: "set", currency: "EUR" } },
    { say: "my paper is us letter", inputs: { do: "set", paper: "letter" } },
    { say: "I always print on A4", inputs: { do: "set", paper: "a4" } },
    { say: "how is my bench set", inputs: { do: "show" } },
    { say: "use the book", inputs: { do: "reset" } },
    { say: "what have you learned", inputs: { do: "learned" } },
    { say: "forget what you learned about the filling", inputs: { do: "forget", topics: ["filling"] } },
    { say: "use my own figures again", inputs: { do: "own" } },
  ],
  elsewhere: [
    { say: "how many shells of 45 mm fit on one tray", tool: "shells" },
    { say: "recipe says 150 c conventional and mine is a fan oven, what do I set", tool: "convert" },
    { say: "what temperature do I usually bake the lemon ones at", tool: "recall" },
    { say: "my lavender bottle says 1 to 2 percent, save it", tool: "shelf" },
    { say: "wake me up at 8", tool: "timer" },
    { say: "forget my recipe for porch shells", tool: "formula" },
  ],
  rivals: [
    ["do", "keys", "topics", "book"],
    ["metric_cup", "cup_ml"],
    ["off_c", "oven_offset_c"],
  ],
  alone: true,
  read: readBench,
  compute: answerBench,
});
