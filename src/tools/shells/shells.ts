/** Batter, shells, macarons, trays and eggs, by diameter, in whichever direction it is asked. */

import * as z from "zod/mini";
import { later, tool } from "../contract/index.ts";
import { egg_size, eggs_g } from "../lib/eggs-told.ts";
import { count, diameter_mm, weight_g } from "../lib/inputs.ts";
import { namedSpares, spare_more, spare_percent } from "../lib/spares.ts";
import { answerShells } from "./answer.ts";
import { shellsAfter, shellsCues, shellsGoesOn } from "./cues.ts";
import { readShells } from "./read.ts";

export const inputs = later(() =>
  z.strictObject({
    macarons: z.optional(count("macarons")),
    /** A number of shells that was said takes no spares. */
    shells: z.optional(count("shells")),
    trays: z.optional(count("trays")),
    batter_g: z.optional(weight_g),
    /** That weight was named as batter's; with whites asked for, a bare weight is of those. */
    of_batter: z.optional(z.boolean()),
    /** Whites for the house formula, from which the batter follows. */
    whites_g: z.optional(weight_g),
    /** Shells that are gone of those that were piped; `shells` are what is left. */
    lost: z.optional(count("shells")),
    /** What an egg weighs in its shell: it says nothing of its white. */
    egg_g: z.optional(weight_g),
    whites_count: z.optional(count("whites")),
    /** What was told of the eggs that they come out of. */
    eggs_g: z.optional(eggs_g),
    egg_size: z.optional(egg_size),
    /** Lines of the house formula at hand, from the scarcest of which the batter follows. */
    have: z.optional(z.array(z.object({ name: z.string(), grams: weight_g }))),
    /** The size of the bench or the book again, after another was said. */
    usual_size: z.optional(z.boolean()),
    diameter_mm: z.optional(diameter_mm),
    /** Weight of what was baked, when the batter for it is asked. */
    baked_g: z.optional(weight_g),
    /** Weight of one shell as piped, when the baked weight of that is asked. */
    shell_g: z.optional(weight_g),
    /** So many on one tray, said with the question. */
    on_tray: z.optional(count("shells")),
    /** Spares said with the question, in the place of the bench's. */
    spare_percent: z.optional(spare_percent),
    /** More or fewer of them than there were. */
    spare_more: z.optional(spare_more),
    spare_less: z.optional(spare_more),
    /** The number of them, where that was said. */
    spares: z.optional(z.string()),
    /** How the order is shared out, for what is asked of a part of it next. */
    shares: z.optional(
      z.array(z.object({ name: z.string(), share: z.number(), base: z.optional(z.string()) })),
    ),
    /** So many go into one box. */
    in_box: z.optional(count("macarons")),
    /** Of those, so many go into no box. */
    broken: z.optional(count("macarons")),
    want: z.optional(
      z.enum([
        "batter",
        "shells",
        "macarons",
        "trays",
        "tray",
        "whites",
        "baked",
        "one",
        "one_baked",
        "boxes",
        "finished",
        "size",
      ]),
    ),
  }),
);

export type ShellsInputs = z.infer<ReturnType<typeof inputs>>;

export const shells = tool<ShellsInputs>({
  name: "shells",
  purpose: "Batter, shells, macarons, trays and eggs for a size, in any direction",
  inputs,
  unboxes: true,
  shifts: "added",
  cues: shellsCues,
  goesOn: shellsGoesOn,
  // "batter for it", of the day that was planned
  after: shellsAfter,
  examples: [
    { say: "batter for 24 macarons", inputs: { macarons: 24, want: "batter" } },
    { say: "how many macarons from 460 g of batter", inputs: { batter_g: 460, want: "macarons" } },
    { say: "how many eggs do I crack for 36 macarons", inputs: { macarons: 36, want: "whites" } },
    { say: "how many 5 cm shells fit one tray", inputs: { diameter_mm: 50, want: "tray" } },
    { say: "how many trays for 40 macarons", inputs: { macarons: 40, want: "trays" } },
    { say: "how many shells do I pipe for 50 macarons", inputs: { macarons: 50, want: "shells" } },
    { say: "how much batter goes in one shell", inputs: { want: "one" } },
  ],
  elsewhere: [
    { say: "my mat has 28 circles", tool: "bench" },
    { say: "how much filling for 24 macarons", tool: "fill" },
    { say: "shell recipe for 36 macarons", tool: "scale" },
    { say: "my shells cracked", tool: "trouble" },
  ],
  rivals: [
    ["diameter_mm", "usual_size"],
    ["macarons", "shells", "batter_g", "whites_g", "whites_count", "eggs_g", "egg_size", "have", "trays"],
    ["want"],
    ["in_box"],
    ["shares", "macarons"],
    ["spare_percent", "spares", "spare_more", "spare_less"],
  ],
  sum: [],
  read: readShells,
  compute: (inputs, world) => namedSpares(answerShells(inputs, world), inputs),
});
