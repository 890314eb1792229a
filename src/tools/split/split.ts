/** One bowl into several: equal, by parts, by percentages, by weights. What is split always adds up. */
import * as z from "zod/mini";
import type { Outcome, World } from "../contract/index.ts";
import { later, tool } from "../contract/index.ts";
import { cues } from "../lib/cue.ts";
import { weight_g } from "../lib/inputs.ts";
import { plain, weight } from "../lib/show.ts";
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
  cues: cues(
    [9, "(?:make it|do) {number} {number} .. split", "how do i split"],
    [4, "^(?:(?:and|in|into|ok|so|now) )*{number} {count=bowls}(?: (?:please|pls|then))?(?: [?])?$"],
    [6, "{weight} .. {base} .. {number} {dose=flavor} .. split\\S* (?:even|equal|evenly|equally)"],
    [-6, "{number} : {number} .. {ingredient} (?:to|and) {ingredient}"],
    [-3, "{base} .. {dose}"],
    [-6, "(?:in|into) \\S*one\\S* {count=bowls}"],
    [5, "(?:one|another) more {dose=color}"],
    [8, "back to {number} (?:equal )?{count=bowls}"],
    [
      8,
      "\\S*<factor> (?:as )?(?:much|many) (?:{taste}|{color}) as (?:{taste}|{color})",
      "^(?:(?:and|ok|so|but|make|the) )*(?:{color}|{taste}) (?:(?:is|gets|as|should|be|to) )*\\S*<factor>(?: (?:as )?much)?(?: as (?:the )?(?:{color}|{taste}|others?|rest))?(?: [?])?$",
    ],
    // "half of it coffee, other half orange"
    [
      9,
      "\\S*<number,fraction> (?:of (?:it|that|this) )?{taste} .. other \\S*<number,fraction> {taste}(?!.* (?:how much|hw much) (?:{dose}|{taste}))",
    ],
    [
      10,
      "\\S*<number,fraction> (?:(?:for|is|as|of|it|goes|to|the|\\S*taste=\\S*) )*{base} .. \\S*<number,fraction> (?:(?:for|is|as|of|it|goes|to|the|\\S*taste=\\S*) )*{base}",
      "(?:color|colour|{dose=color}) (?:the |my |this |that )?{base=batter} (?:into|in) {number} {count=bowls} .. each",
    ],
    [8, "{weight} .. {base} .. {percent} (?:of (?:it|that|this) )?(?:{taste}|{color}) .. \\S*rest\\S*"],
    [8, "{weight} .. {base} between {number} {taste} .. {number} {taste}"],
    [-6, "(?:split|broken|divided) .. (?:into|by) (?:its |the |each |every )*ingredients?"],
    [
      10,
      "(?:color|colour|{dose}) {weight} .. {base=batter} .. (?:into|in) {number} (?:{count=bowls}|colou?rs|shades)",
      "{weight} .. {percent} (?:of )?(?:{taste}|{color}) .. {percent} (?:of )?(?:{taste}|{color})",
    ],
    [
      5,
      "{weight} .. {base} .. (?:into|in) {number} .. (?:same|equal|each)",
      "{weight} .. {base} .. (?:into|in) {number} {count=bowls}",
      "{number} (?:equal )?{count=bowls} (?:out of|from) (?:the |my )?{weight}",
    ],
    [
      4,
      "^(?:halve|half)\\S* {weight} .. {base}",
      "(?:split|divide|divid|share|portion|separate)(?:<\\S+)? .. {weight}",
      "split<\\S+ .. {weight}",
      "{weight} .. (?:split|divide|divided|share)(?:<\\S+)?$",
      "{number} {count=bowls} .. {color} .. {number} {count=bowls}",
      "(?:split|splitting|divide|dividing|share) {number} (?:in |into |between |among )?{number}",
      "\\S*<number,fraction> .. {color}",
      "\\S*<number,fraction> (?:of it |of that |of them )?(?:{taste}|{color}|{dose})",
      "{percent} .. {weight} .. {base} .. {remainder}",
      "{percent} .. {taste} .. {remainder}",
      "half_and_half\\S*",
      "(?:share|shared|sharing|dealt|parted|distribute|distributed|spread) .. (?:over|among|between|across|into) {number}",
      "(?:share|distribute|divide|split) (?:my |the |this |that )?{base} .. (?:over|among|between|across|into|in) {number}",
      "{weight} .. {base} .. {percent} .. {color}",
      "{weight} .. {base} .. {percent} .. {percent}",
      "{number} {count=bowls} .. {number} {count=bowls}",
      "(?:into|in|between|among) {number} (?:equal )?{count=bowls}",
    ],
    [
      3,
      "(?:split|divide|share out|portion)(?:<\\S+)?",
      "{number} equal",
      "equal {count=bowls}",
      "(?:in|into) (?:two|three|four|five|six|2|3|4|5|6|half|halves|thirds|quarters)(?:<\\S+)?$",
      "{percent} .. {color} .. {percent}",
      "{color} .. {percent} .. {color}",
      "{weight} .. {base} .. {number} (?:to|:) {number}",
      "\\S*<number,fraction> .. {taste} .. {remainder}",
      "half and half",
      "(?:how|hw) much (?:in|for|goes in|per) (?:each|every) {count=bowls}",
    ],
    [2, "{count=bowls}", "{color} .. {color}", "{remainder}", "evenly", "{number} (?:to|:) {number}"],
    [1, "{color}", "{weight} .. {base}"],
    [
      -4,
      "(?:just|has|my|is|looks|its|it|ganache|buttercream|all|keeps|kept|have|had) split(?:<\\S+)?",
      "{base} .. {symptom=(split_ganache|curdled_buttercream)}",
      "{dose} .. {base}",
      "(?:note|log) ",
      "timer",
      "{ingredient=almond_flour}",
      "label",
      "{dose} .. (?:for|in|into) (?:the |one |each |that )?(?:\\S+ )?\\S*<number,fraction>",
    ],
    [
      -3,
      "{count=macarons}",
      "{chocolate} .. {ingredient=cream}",
      "{percent} (?:of )?{dose}",
      "{money}",
      "{ingredient=(whites|cream)}",
      "oily",
    ],
  ),
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
  rivals: [["equal", "parts", "percents", "weights", "rest", "by"]],
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
  const found = partsOf(said, said.total_g);
  if (!Array.isArray(found)) return found;
  const scale = world.bench.scale_g;
  const same =
    found.every((each) => Math.abs(each.grams - (found[0]?.grams ?? 0)) < 1e-9) && said.equal !== undefined;
  const thing = said.thing ?? "";
  return {
    status: "answered",
    headline: same
      ? `${weight(found[0]?.grams ?? 0, scale)} g in each of ${found.length}`
      : found.map((each) => `${each.name} ${weight(each.grams, scale)} g`).join(", "),
    figures: same
      ? [{ name: "each", value: found[0]?.grams ?? 0, unit: "g" }]
      : found.map((each) => ({ name: each.name, value: each.grams, unit: "g" })),
    rule: {
      text: `${said.by ? `${said.by}; ` : ""}the parts add up to what is in the bowl`,
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
