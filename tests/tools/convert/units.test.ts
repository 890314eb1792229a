/** Units against published exact values, and against mathjs's own unit system where that is right. */
import fc from "fast-check";
import { all, create } from "mathjs";
import { describe, expect, test } from "vitest";
import { units } from "../../../data/words/units.ts";
import { convert } from "../../../src/tools/convert/convert.ts";
import { answer, value } from "../../support/world.ts";

const turn = (amount: number, unit: string, to: string, more: Record<string, unknown> = {}) =>
  answer(convert, { value: amount, unit, to, ...more });
const near = (got: number, want: number) =>
  expect(Math.abs(got - want)).toBeLessThanOrEqual(1e-12 * Math.abs(want));

describe("exact values", () => {
  test.each([
    // NIST Handbook 44, appendix C; NIST SP 811, B.8: exact
    [1, "gallon", "ml", 3785.411784],
    [1, "fl oz", "ml", 29.5735295625],
    [1, "cup", "ml", 236.5882365],
    [1, "tbsp", "ml", 14.78676478125],
    [1, "tsp", "ml", 4.92892159375],
    [1, "pint", "ml", 473.176473],
    [1, "quart", "ml", 946.352946],
    // NIST SP 811, B.8: exact
    [1, "lb", "g", 453.59237],
    [1, "oz", "g", 28.349523125],
    [1, "in", "mm", 25.4],
    // arithmetic on the above
    [1, "lb", "oz", 16],
    [20, "oz", "g", 566.9904625],
    [3, "tsp", "tbsp", 1],
    [16, "tbsp", "cup", 1],
    [12, "fl oz", "cup", 1.5],
    [0.375, "in", "mm", 9.525],
    [90, "min", "h", 1.5],
    [2.25, "h", "min", 135],
    [48, "h", "d", 2],
    [1200, "g", "lb", 1200 / 453.59237],
  ])("%d %s = %s", (amount, unit, to, want) => near(value(turn(amount, unit, to), "result"), want));

  test.each([
    // NIST SP 811, B.8: °C = (°F − 32) / 1.8
    [32, "°F", "°C", 0],
    [212, "°F", "°C", 100],
    [350, "°F", "°C", 318 / 1.8],
    [150, "°C", "°F", 302],
    [-40, "°C", "°F", -40],
    // FDA Food Code 3-501.16 and USDA FSIS print these pairs, rounded to whole degrees
    [41, "°F", "°C", 5],
    [160, "°F", "°C", 128 / 1.8],
  ])("%d %s = %s", (amount, unit, to, want) =>
    expect(value(turn(amount, unit, to), "result")).toBeCloseTo(want, 12),
  );
});

/** mathjs's own names; its teaspoon is 5 ml and its tablespoon 15 ml, the nutrition label's spoons, so they stay out. */
const theirs: Record<string, string> = {
  g: "g",
  mg: "mg",
  kg: "kg",
  oz: "ounce",
  lb: "poundmass",
  ml: "ml",
  cl: "cl",
  dl: "dl",
  l: "l",
  cup: "cup",
  "fl oz": "fluidounce",
  pint: "pint",
  quart: "quart",
  gallon: "gallon",
  mm: "mm",
  cm: "cm",
  in: "inch",
  s: "s",
  min: "minute",
  h: "hour",
  d: "day",
  week: "week",
};

test("mathjs, all of it switched on, agrees on every pair of a kind: the second opinion", () => {
  const whole = create(all ?? {});
  const known = units.filter((row) => theirs[row.unit]);
  const pairs = known.flatMap((from) =>
    known.filter((to) => to.dim === from.dim).map((to) => [from.unit, to.unit] as const),
  );
  expect(pairs.length).toBeGreaterThan(100);
  for (const [from, to] of pairs) {
    const got = value(turn(3.5, from, to), "result");
    const want = whole.unit(3.5, theirs[from] as string).toNumber(theirs[to] as string);
    // mathjs rounds a pint, a quart and the like to six digits: its cup is 236.588 ml
    expect(Math.abs(got / want - 1), `${from} to ${to}`).toBeLessThan(2e-5);
  }
});

test("there and back again is where it was", () => {
  const kinds = ["weight", "volume", "length", "time"].map((dim) =>
    units.filter((row) => row.dim === dim).map((row) => row.unit),
  );
  const pair = fc
    .constantFrom(...kinds)
    .chain((names) => fc.tuple(fc.constantFrom(...names), fc.constantFrom(...names)));
  fc.assert(
    fc.property(pair, fc.double({ min: 1e-3, max: 1e5, noNaN: true }), ([from, to], amount) => {
      const there = value(turn(amount, from, to), "result");
      expect((there * unitPer(to)) / unitPer(from) / amount).toBeCloseTo(1, 9);
      if (there <= 1e9) expect(value(turn(there, to, from), "result") / amount).toBeCloseTo(1, 9);
    }),
  );
  fc.assert(
    fc.property(fc.double({ min: -200, max: 500, noNaN: true }), (heat) => {
      expect(value(turn(value(turn(heat, "°C", "°F"), "result"), "°F", "°C"), "result")).toBeCloseTo(heat, 9);
    }),
  );
});

const unitPer = (name: string) => units.find((row) => row.unit === name)?.per ?? Number.NaN;

describe("ovens, common practice: a fan oven 20 °C (25 °F) lower", () => {
  test.each([
    [150, "°C", "fan", undefined, 130],
    [130, "°C", "conventional", undefined, 150],
    [325, "°F", "fan", undefined, 300],
    [275, "°F", "conventional", undefined, 300],
    // asked in the other scale: 150 °C = 302 °F, less 25
    [150, "°C", "fan", "°F", 277],
    // 320 °F = 160 °C, less 20
    [320, "°F", "fan", "°C", 140],
  ])("%d %s for a %s oven", (heat, unit, oven, to, want) => {
    const said = answer(convert, { value: heat, unit, oven, ...(to ? { to } : {}) });
    expect(value(said, "result")).toBeCloseTo(want, 12);
    expect(said.rule?.basis).toBe("common practice");
  });
});

describe("what can't be", () => {
  test.each([
    [{ value: -3, unit: "cup", to: "g", ingredient: "sugar" }, /above zero/],
    [{ value: 0, unit: "oz", to: "g" }, /above zero/],
    [{ value: 20, unit: "min", to: "g" }, /time can't be turned into a weight/],
    [{ value: 4, unit: "cm", to: "cup" }, /length can't be turned into a volume/],
    [{ value: 350, unit: "°F", to: "g" }, /temperature can't be turned into a weight/],
    [{ value: -300, unit: "°C", to: "°F" }, /colder/],
    [{ value: 2e9, unit: "g", to: "oz" }, /beyond a kitchen/],
    [{ sum: "10 / 0" }, /divided by zero/],
  ])("%o", (inputs, why) => {
    const said = answer(convert, inputs);
    expect(said.status).toBe("impossible");
    expect(said.headline).toMatch(why);
    expect(said.figures).toBeUndefined();
  });

  test("money isn't converted, and no rate is made up", () => {
    const said = answer(convert, { exchange: true });
    expect([said.status, said.figures]).toEqual(["declined", undefined]);
  });
});

test("degrees of no scale are asked about, unless the target or their size tells", () => {
  expect(answer(convert, { value: 180, unit: "°" }).slot).toBe("unit");
  expect(value(answer(convert, { value: 350, unit: "°", to: "°C" }), "result")).toBeCloseTo(318 / 1.8, 12);
  expect(answer(convert, { value: 350, unit: "°" }).assumed).toContain("350 °F");
});

test("a target that wasn't said is chosen and said to be assumed", () => {
  for (const [unit, to] of [
    ["oz", "g"],
    ["lb", "g"],
    ["g", "oz"],
    ["°F", "°C"],
    ["°C", "°F"],
    ["in", "mm"],
  ] as const) {
    const said = answer(convert, { value: 200, unit });
    expect([said.figures?.[0]?.unit, said.assumed]).toEqual([to, [`into ${to}`]]);
  }
});

test("a weight stays on the table for the next question", () => {
  expect(turn(12, "oz", "g").leaves?.mass).toEqual({ grams: 12 * 28.349523125, thing: "" });
});
