/** Shares and ratios: two numbers with something between them that are no amount, no fraction and no range. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

/** The parts of the bowl, in grams, in order. */
const parts = async (said: string) =>
  (await baker().one(said)).figures?.map(({ value }) => Math.round(value ?? Number.NaN));

describe("a bowl in parts", () => {
  it.each([
    ["split 480 g batter two to one", [320, 160]],
    ["split 480 g batter 2 to 1", [320, 160]],
    ["split 480 g batter 2:1", [320, 160]],
    ["split 480 g batter one to two", [160, 320]],
    ["split 480 g batter one to two to one", [120, 240, 120]],
    ["split 400 g batter 2:1:1", [200, 100, 100]],
    ["divide 500 g batter 50/50", [250, 250]],
    ["divide 500 g batter 50-50", [250, 250]],
    ["divide 500 g batter fifty fifty", [250, 250]],
    ["split 400 g buttercream 60/40", [240, 160]],
    ["split 450 g batter 70/30 pink and plain", [315, 135]],
    ["split 450 g batter half pink half white", [225, 225]],
    ["split 450 g batter, a third pink, the rest white", [150, 300]],
    ["divide 350 g buttercream 40 % coffee 60 % caramel", [140, 210]],
  ])("%s", async (said, grams) => {
    expect(await parts(said)).toEqual(grams);
  });
});

it("equal parts are one figure, however their number is said", async () => {
  for (const said of [
    "split 360 g batter in three",
    "split 360 g batter into 3 bowls",
    "divide 360 g batter 3 ways",
    "share 360 g batter equally between three bowls",
  ])
    expect(await parts(said), said).toEqual([120]);
});
