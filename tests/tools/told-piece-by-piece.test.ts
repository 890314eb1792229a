/** Told in little sentences, in parts, or with where it stands: no weight and no kind that was said may be lost. */
import { describe, expect, it } from "vitest";
import { withFigures } from "../support/ask.ts";

describe("what it tastes of stands by itself", () => {
  // 17 / 340 = 5 %, over the 3 to 4 % of a ganache: 17 / 0.04 - 340 = 85
  it.each([
    "Guava. 17 g concentrate. 340 g ganache. Too much?",
    "guava, 17 g concentrate, 340 g ganache, too much?",
    "guava: 17 g flavoring in 340 g ganache. too much?",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("share")]).toEqual(["dose", expect.closeTo(5, 6)]);
  });
});

describe("orders in parts", () => {
  // 2 × 12 + 6, 12 + 24, 24 + 18, (8 - 2) × 4
  it.each([
    ["two boxes of 12 and one of 6, how much batter", 30],
    ["2 boxes of 12 + 1 box of 6, batter?", 30],
    ["1 dozen lemon, 2 dozen rose, how much batter", 36],
    ["24 for her and 18 for her sister, how much batter", 42],
    ["8 boxes of 4 minus 2 boxes, batter", 24],
  ])("%s", async (said, macarons) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("macarons")]).toEqual(["shells", macarons]);
  });

  // 30 of 48 and 18 of 48
  it("5 boxes of 6 pistachio and 3 boxes of 6 rose", async () => {
    const { value } = await withFigures(
      "5 boxes of 6 pistachio and 3 boxes of 6 rose, how much filling of each",
    );
    expect((value("pistachio") ?? 0) / (value("rose") ?? 1)).toBeCloseTo(30 / 18, 6);
  });

  it.each(["note: 2 boxes of 6 and 1 box of 12 sold", "timer 24 for tray 1"])(
    "%s is no order",
    async (said) => expect((await withFigures(said)).tool).not.toBe("shells"),
  );
});

describe("boxes that are sold", () => {
  // 6 × 12 = 72 for what cost 18: 75 %; 15 for what costs 4: 73.3 %
  it.each([
    ["i sell 6 boxes at 12 each and ingredients were 18 in total, margin?", 75],
    ["sell 6 boxes of 6 at 12 each, ingredients 18 in all, margin?", 75],
    ["6 boxes at $12 each, cost 18 in all. margin?", 75],
    ["ingredients cost me 18, i sold 6 boxes for 12 each, margin", 75],
    ["8 boxes of 6 at $15, each box costs 4, margin", 1100 / 15],
  ])("%s", async (said, percent) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("margin")]).toEqual(["cost", expect.closeTo(percent, 6)]);
  });
});

describe("a list and what there is of it", () => {
  // 91 / 140 of each; 340 / 400 of each
  it.each([
    [
      "My recipe: 112 g whites, 140 g almonds, 138 g icing sugar, 98 g caster. There's just 91 g of almonds left in the bag. New weights?",
      "whites",
      (112 * 91) / 140,
    ],
    ["caramel is 200 sugar 120 cream 80 butter, i need 340 altogether", "cream", 102],
    ["my caramel is 200 g sugar, 120 g cream, 80 g butter, i need 340 in all", "butter", 68],
  ])("%s", async (said, name, grams) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value(name)]).toEqual(["scale", expect.closeTo(grams, 6)]);
  });
});

// 18 × 14 and 500 / 8
it.each([
  ["What's 18 times 14?", 252],
  ["Now divide 500 by 8 for me.", 62.5],
])("%s", async (said, sum) => {
  const { tool, value } = await withFigures(said);
  expect([tool, value("result")]).toEqual(["convert", sum]);
});
