/** One bowl into several: equal, by parts, by percentages, by weights. What is split always adds up. */

import * as z from "zod/mini";
import type { Outcome, World } from "../contract/index.ts";
import { later, tool } from "../contract/index.ts";
import { asking } from "../lib/asking.ts";
import { weight_g } from "../lib/inputs.ts";
import { plain, weight } from "../lib/show.ts";
import { sumShown } from "./adds-up.ts";
import { splitCues } from "./cues.ts";
import { readShares } from "./read.ts";

const share = z.object({
  name: z.optional(z.string()),
  size: z.number().check(z.gt(0, { error: "Each part has to be above zero." })),
});

export const inputs = later(() =>
  z.strictObject({
    total_g: z.optional(weight_g),
    thing: z.optional(z.string()),
    /** Bowls that get the same. */
    equal: z.optional(
      z
        .number()
        .check(
          z.int({ error: "A number of bowls has to be whole." }),
          z.gte(1, { error: "There has to be at least one bowl." }),
          z.lte(100, { error: "That is more than a hundred bowls." }),
        ),
    ),
    /** "2 to 1": sizes relative to each other. */
    parts: z.optional(z.array(share)),
    /** Percentages; what is missing to 100 is the rest. */
    percents: z.optional(z.array(share)),
    /** Weights in g; what is missing to the total is the rest. */
    weights: z.optional(z.array(share)),
    rest: z.optional(z.string()),
    /** What one empty bowl weighs, where it is asked what the scale shows. */
    bowl_g: z.optional(weight_g),
    /** "i put 40 g in the lemon": of the bowl, or of what flavors it. */
    unclear: z.optional(z.object({ name: z.string(), grams: weight_g })),
    /** How the weights were said: "pink 100 g more than white". */
    by: z.optional(z.string()),
  }),
);

export type SplitInputs = z.infer<ReturnType<typeof inputs>>;

export const split = tool<SplitInputs>({
  name: "split",
  purpose: "One bowl of batter or filling into several, equal, by parts, percentages or weights",
  inputs,
  shifts: "added",
  cues: splitCues,
  examples: [
    { say: "480 g batter, two parts blue one part white", inputs: { total_g: 480, thing: "batter" } },
    { say: "split 450 g of batter a third pink the rest plain", inputs: { total_g: 450 } },
    {
      say: "divide 350 g buttercream 40 % coffee 60 % caramel",
      inputs: { total_g: 350, thing: "buttercream" },
    },
    { say: "split 360 g buttercream in three", inputs: { total_g: 360, equal: 3 } },
    { say: "share 500 g batter out, 150 g green and the rest yellow", inputs: { total_g: 500 } },
  ],
  elsewhere: [
    { say: "my 300 g ganache just split", tool: "ganache" },
    { say: "gel color for 460 g batter", tool: "dose" },
    { say: "house recipe for 500 g of batter", tool: "scale" },
  ],
  rivals: [["equal", "parts", "percents", "weights", "rest", "by", "unclear"]],
  sum: [],
  read: readShares,
  compute,
});

interface Part {
  name: string;
  grams: number;
}

function compute(said: SplitInputs, world: World): Outcome {
  if (said.total_g === undefined)
    return {
      status: "asking",
      headline: "How many grams are in the bowl?",
      question: "How many grams are in the bowl?",
      slot: "total_g",
    };
  if (said.unclear) return ofWhat(said.unclear, said.thing ?? "mix", world);
  const found = partsOf(said, said.total_g);
  if (!Array.isArray(found)) return found;
  const scale = world.bench.scale_g;
  const same =
    found.every((each) => Math.abs(each.grams - (found[0]?.grams ?? 0)) < 1e-9) && said.equal !== undefined;
  const thing = said.thing ?? "";
  if (said.bowl_g !== undefined) return onScale(found, said.bowl_g, scale);
  return {
    status: "answered",
    headline: same
      ? `${weight(found[0]?.grams ?? 0, scale)} g in each of ${found.length}`
      : found.map((each) => `${each.name} ${weight(each.grams, scale)} g`).join(", "),
    figures: same
      ? [{ name: "each", value: found[0]?.grams ?? 0, unit: "g" }]
      : found.map((each) => ({ name: each.name, value: each.grams, unit: "g" })),
    rule: {
      text: `${said.by ? `${said.by}; ` : ""}the parts add up to what is in the bowl${sumShown(
        found.map(({ grams }) => grams),
        scale,
      )}`,
      basis: "arithmetic",
    },
    working: [
      ...found.slice(0, 12).map((each) => `${each.name}: ${plain(each.grams)} g`),
      `together ${plain(found.reduce((sum, each) => sum + each.grams, 0))} g`,
    ],
    leaves: {
      ...(same || said.equal
        ? { part: { grams: found[0]?.grams ?? 0, thing } }
        : found[0]
          ? { part: { grams: found[0].grams, thing } }
          : {}),
      mass: { grams: said.total_g, thing },
      parts: found,
    },
  };
}

/** So much that was put somewhere, with no word of what it was. */
function ofWhat({ name, grams }: { name: string; grams: number }, thing: string, world: World): Outcome {
  const much = `${weight(grams, world.bench.scale_g)} g`;
  return asking(
    `Of what were the ${much} in the ${name}: of the ${thing} itself, or ${much} ${name} flavor?`,
    "unclear",
  );
}

/** What the scale shows with an empty bowl under each part. */
function onScale(parts: readonly Part[], bowl_g: number, scale: number | undefined): Outcome {
  const shows = parts.map(({ name, grams }) => ({ name, value: grams + bowl_g }));
  const [first] = shows;
  const same = shows.every((each) => Math.abs(each.value - (first?.value ?? 0)) < 1e-9);
  return {
    status: "answered",
    headline: same
      ? `${weight(first?.value ?? 0, scale)} g on the scale for each of ${parts.length}: ${weight(parts[0]?.grams ?? 0, scale)} g and the bowl's ${plain(bowl_g)} g`
      : `With its bowl of ${plain(bowl_g)} g: ${shows.map(({ name, value }) => `${name} ${weight(value, scale)} g`).join(", ")}`,
    figures: same
      ? [{ name: "on the scale", value: first?.value ?? 0, unit: "g" }]
      : shows.map(({ name, value }) => ({ name, value, unit: "g" })),
    rule: { text: "what is in it and the empty bowl", basis: "arithmetic" },
    working: parts.map(
      ({ name, grams }) => `${name}: ${plain(grams)} + ${plain(bowl_g)} = ${plain(grams + bowl_g)} g`,
    ),
  };
}

/** The parts by name, or the sentence that says why they can't be. */
function partsOf(said: SplitInputs, total_g: number): Part[] | Outcome {
  const named = (name: string | undefined, at: number) => name ?? `part ${at + 1}`;
  // one bowl is no split: a number was misread
  if (said.equal !== undefined && said.equal !== 1)
    return Array.from({ length: said.equal }, (_, at) => ({
      name: `part ${at + 1}`,
      grams: total_g / (said.equal ?? 1),
    }));
  if (said.parts?.length) {
    const all = said.parts.reduce((sum, each) => sum + each.size, 0);
    return said.parts.map((each, at) => ({ name: named(each.name, at), grams: (total_g * each.size) / all }));
  }
  const given = said.percents ?? said.weights;
  if (!given?.length || said.equal === 1)
    return {
      status: "asking",
      headline: "Into how many parts, or in what proportion?",
      question: "Into how many parts, or in what proportion?",
      slot: "equal",
    };
  const whole = said.percents ? 100 : total_g;
  const unit = said.percents ? "%" : "g";
  const sum = given.reduce((all, each) => all + each.size, 0);
  if (sum > whole * (1 + 1e-9))
    return {
      status: "impossible",
      headline: `Those parts come to ${plain(sum)} ${unit}, and the bowl holds ${plain(whole)} ${unit}.`,
    };
  const rest = whole - sum;
  const parts = given.map((each, at) => ({
    name: named(each.name, at),
    grams: (total_g * each.size) / whole,
  }));
  return rest > whole * 1e-9
    ? [...parts, { name: said.rest ?? "the rest", grams: (total_g * rest) / whole }]
    : parts;
}
