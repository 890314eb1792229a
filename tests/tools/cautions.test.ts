/**
 * The cautions that each answer has to carry, whatever else is in it. A row is a conversation and what its last answer
 * must say; a caution that goes missing is found here, not by somebody who fell ill.
 */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

/** Each caution by the words that it can't do without. */
const cautions = {
  /** Keeping, selling, raw egg, allergens: who decides. */
  authority: /local food authority/,
  doubt: /[Ww]hen in doubt throw it out/,
  cold: /5 °C \(41 °F\) or below/,
  estimate: /estimate replaces no measurement/,
  "raw egg": /71 °C \(160 °F\)|pasteurised/,
  "who it hurts": /children, the old, the pregnant/,
  "all spells": /spells .*count together/,
  "thawing starts again": /[Tt]hawing starts (?:them|the 7 days) again/,
  bottle: /bottle are the limit/,
  traces: /Traces from your kitchen/,
  incomplete: /complete while something/,
  selling: /sell from home/,
  warm: /warm/,
} as const;
type Name = keyof typeof cautions;

const rows: readonly (readonly [turns: string | readonly string[], must: readonly Name[]])[] = [
  // ganache and buttercream
  ["300 g dark chocolate how much cream for piping", ["authority", "cold"]],
  ["200 g dark and 160 g cream, what is that good for", ["authority", "cold"]],
  ["milk ganache too runny, was 200 g chocolate and 150 g cream", ["authority", "cold", "warm"]],
  ["my 300 g ganache just split", ["authority", "cold"]],
  ["water activity of 110 g white chocolate and 70 g cream", ["authority", "cold", "estimate"]],
  ["composition of 300 g dark ganache", ["authority", "cold", "estimate"]],
  ["water activity of 230 g buttercream", ["authority", "cold", "estimate"]],
  ["what moves the water activity of 200 g dark chocolate 100 g cream", ["authority", "cold", "estimate"]],
  ["200 g dark chocolate and 100 g cream ganache, get it to a_w 0.85", ["authority", "cold", "estimate"]],
  ["300 g white ganache at 35 % fat", ["authority", "cold", "estimate"]],
  ["buttercream from 120 g egg whites", ["authority", "raw egg"]],
  ["230 g buttercream, how much flavor?", ["bottle"]],
  // keeping
  ["I filled them this morning, how long in the fridge", ["authority", "doubt"]],
  ["made them on the 9th, still good today", ["authority", "doubt"]],
  ["the filled ones were left on the counter 3 hours, still ok?", ["authority", "doubt", "all spells"]],
  ["how long can filled macarons stay out of the fridge", ["authority", "doubt", "cold"]],
  ["it was 95 F on the stall, how long can they stay out", ["authority", "doubt", "cold"]],
  ["i left them on the counter overnight", ["authority", "doubt"]],
  ["power cut for 3 hours, the fridge got warm, macarons inside, ok?", ["authority", "doubt"]],
  ["my macarons smell sour, can I eat them", ["authority", "doubt"]],
  ["can i freeze filled macarons and for how long", ["authority", "doubt", "thawing starts again"]],
  [
    "thaw the frozen macarons in the fridge or on the counter",
    ["authority", "doubt", "thawing starts again"],
  ],
  ["can I freeze thawed macarons again", ["authority", "doubt"]],
  ["do unfilled shells need the fridge", ["authority", "doubt"]],
  ["how cold does the fridge have to be for filled macarons", ["authority", "doubt"]],
  ["i'm not heating the whites for my buttercream, is that safe", ["authority", "doubt", "who it hurts"]],
  ["the flavor bottle says shelf stable so the filled macarons can sit out right", ["authority", "doubt"]],
  ["the water activity of my filling is 0.84, can it stay out", ["authority", "doubt"]],
  ["can a ganache of 200 g white chocolate and 100 g cream stay at room temperature", ["authority", "doubt"]],
  // faults that are a matter of raw egg
  ["gritty buttercream", ["raw egg"]],
  ["meringue will not peak", ["authority", "raw egg"]],
  // selling
  ["a box costs me $18 and sells at $45, what's my margin", ["authority", "selling"]],
  ["$12 costs, price for a 60 % margin", ["authority", "selling"]],
  ["costs me £3.50 and I sell it at £9.80, what's the markup", ["authority", "selling"]],
  ["ingredients come to $6 and it sells for $24, what's my food cost percent", ["authority", "selling"]],
  [
    ["a box costs me $9 and sells for $25, margin", "what if I sell it at 30"],
    ["authority", "selling"],
  ],
  // labels and allergens
  [
    "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites, 100 g sugar",
    ["authority", "traces", "selling"],
  ],
  [
    "eu label: 130 g almond flour, 100 g egg whites, 100 g sugar, 110 g white chocolate",
    ["authority", "traces", "incomplete", "selling"],
  ],
  ["which allergens are in hazelnut macarons with buttercream", ["authority", "traces", "incomplete"]],
  ["are my macarons nut-free", ["authority", "traces"]],
  ["what's the best by date on the label for a batch I filled today", ["authority", "cold", "selling"]],
];

describe("what an answer has to say", () => {
  test.each(rows)("%s: %j", async (turns, must) => {
    const { one } = baker();
    const lines = typeof turns === "string" ? [turns] : turns;
    for (const line of lines.slice(0, -1)) await one(line);
    const said = await one(lines.at(-1) ?? "");
    expect(said.status).toMatch(/answered|declined/);
    const text = (said.cautions ?? []).join("\n");
    for (const name of must) expect(text, name).toMatch(cautions[name]);
  });

  test("every caution of the list is asked for by some row", () => {
    const used = new Set(rows.flatMap(([, must]) => must));
    expect(Object.keys(cautions).filter((name) => !used.has(name as Name))).toEqual([]);
  });
});
