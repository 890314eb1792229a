/**
 * What a baker says at the tray: no skin forms, it has formed, the bowl was on the scale, so much in each bowl, twice
 * through the sieve. Rest 30-60 min, bake 15 min (common practice); house formula 100 : 130 : 130 : 100 (common practice).
 */
import { describe, expect, test } from "vitest";
import { lastOf } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

describe("no skin forms", () => {
  test.each([
    "skin's not forming, its raining",
    "timer 30 min rest|skin's not forming, its raining",
    "timer 30 min rest|its humid and no skin after an hour",
    "230 g buttercream, lemon flavor?|shells wont skin over, help",
    "they havent formed a skin",
  ])("%s: rest on, and no timer", async (turns) => {
    const answers = await lastOf(turns);
    expect(answers.map(({ tool }) => tool)).toEqual(["trouble"]);
    expect(answers[0]?.figures).toContainEqual({ name: "rest", low: 30, high: 60, unit: "min" });
  });
  test("a note keeps it", async () => {
    const [answer] = await lastOf("note: lemon, no skin after 40 min, cracked|which batches had no skin");
    expect(answer?.headline).toMatch(/lemon/);
  });
});

test.each(["skin formed, start bake timer", "theyve got a skin, bake timer"])(
  "%s: one timer, for the oven",
  async (turn) => {
    const answers = await lastOf(turn);
    expect(answers.map(({ figures }) => figures?.[0]?.value)).toEqual([15]);
  },
);

test("how eggs are separated is no size of a recipe", async () => {
  for (const turn of ["whats the fastest way to separate 6 eggs", "how do i separate 6 eggs"])
    expect((await lastOf(turn)).every(({ figures }) => !figures?.length)).toBe(true);
});

const said: Case[] = [
  // 160 × 1.3
  ["my egg whites came to 190 g, whats the rest|oops tare was on, 160", "scale", { "almond flour": 208 }],
  ["120 g whites, whats the rest|i forgot to tare, 95", "scale", { "almond flour": 123.5 }],
  ["half rose half plain, 200 g each", "split", { rose: 200, plain: 200 }],
  // without "each" it is the bowl
  ["half rose half plain, 200 g", "split", { rose: 100, plain: 100 }],
];
test.each(said)("%s", expectFigures);

test.each([
  "should i sift the almond flour twice",
  "do i sift twice",
  "tap the tray twice?",
  "how many times do i sift",
])("%s: no doubled recipe", async (turn) => {
  const answers = await lastOf(turn);
  expect(answers.map(({ tool }) => tool)).toEqual(["method"]);
});
