/** One factor over all lines, worked by hand; the house formula is common practice, 33 g a white published. */
import { describe, expect, test } from "vitest";
import type { Outcome, World } from "../../src/tools/contract/index.ts";
import { scale } from "../../src/tools/scale/scale.ts";
import { baker } from "../support/ask.ts";
import { answer, names, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(scale, inputs, more);
const weights = (said: Outcome, ...of: string[]) => of.map((name) => value(said, name));
const house = ["whites", "almond flour", "powdered sugar", "granulated sugar"];
const near = (got: number[], want: number[]) =>
  got.forEach((each, at) => {
    expect(each).toBeCloseTo(want[at] ?? Number.NaN, 9);
  });

describe("published worked examples", () => {
  // Gisslen, Professional Baking: from a yield of 8 to one of 18, 18 / 8 = 2.25
  test("factor 18 / 8 = 2.25", () => {
    const lines = [
      { name: "flour", grams: 5 },
      { name: "butter", grams: 3 },
    ];
    const said = say({ lines, total_g: 18 });
    expect(value(said, "factor")).toBe(2.25);
    // 5 x 2.25, 3 x 2.25
    near(weights(said, "flour", "butter", "total"), [11.25, 6.75, 18]);
    expect(said.rule?.basis).toBe("arithmetic");
  });

  // Gisslen, Professional Cooking, by total percentage: 3000 g / 3.775 = 794.7 g of what counts 100 %
  test("3000 g at 377.5 % in all is 794.7 g to the 100", () => {
    const lines = [
      { name: "flour", grams: 100 },
      { name: "sugar", grams: 277.5 },
    ];
    expect(value(say({ lines, total_g: 3000 }), "flour")).toBeCloseTo(794.7, 1);
  });

  // USDA SR, NDB 01124: 3 x 33 = 99 g; house formula 130 : 130 : 100, so 128.7, 128.7, 99; in all 455.4
  test("three whites are 99 g", () => {
    const said = say({ whites_count: 3 });
    near(weights(said, ...house, "total"), [99, 128.7, 128.7, 99, 455.4]);
    expect(said.assumed?.join()).toMatch(/33 g a white.*01124/);
  });
});

describe("by what is at hand", () => {
  // 120 x 1.3 = 156; in all 120 x 4.6 = 552
  test("120 g whites by the house formula", () => {
    const said = say({ have: [{ name: "whites", grams: 120 }] });
    near(weights(said, ...house, "total", "factor"), [120, 156, 156, 120, 552, 1.2]);
    expect(said.rule?.basis).toBe("common practice");
    expect(said.leaves?.mass?.thing).toBe("batter");
  });

  // 70 / 105 = 2/3: 90, 90, 60
  test("a recipe that was said, with less of one line", () => {
    const lines = [
      { name: "whites", grams: 105 },
      { name: "almond flour", grams: 135 },
      { name: "powdered sugar", grams: 135 },
      { name: "granulated sugar", grams: 90 },
    ];
    near(weights(say({ lines, have: [{ name: "whites", grams: 70 }] }), ...house), [70, 90, 90, 60]);
  });

  // factors 100 / 100 = 1, 100 / 130 = 0.76923, 200 / 130 = 1.53846: the almonds win; left whites 100 - 76.92308,
  // powdered sugar 200 - 100
  test("the scarcest wins, is named, and what is left of the others is given", () => {
    const have = [
      { name: "whites", grams: 100 },
      { name: "almond flour", grams: 100 },
      { name: "powdered sugar", grams: 200 },
    ];
    const said = say({ have });
    expect(said.headline).toContain("almond flour runs out first");
    expect(value(said, "almond flour")).toBeCloseTo(100, 9);
    expect(value(said, "whites left")).toBeCloseTo(23.07692, 5);
    expect(value(said, "powdered sugar left")).toBeCloseTo(100, 9);
    expect(names(said)).not.toContain("almond flour left");
  });

  test('"sugar" is the recipe\'s granulated one', () => {
    expect(value(say({ have: [{ name: "sugar", grams: 50 }] }), "whites")).toBeCloseTo(50, 9);
  });

  test("what is no part of the recipe is left out and said to be; alone it is impossible", () => {
    const have = [
      { name: "whites", grams: 100 },
      { name: "butter", grams: 30 },
    ];
    expect(say({ have }).assumed?.join()).toMatch(/butter is no part/);
    expect(say({ have: [{ name: "butter", grams: 30 }] })).toMatchObject({ status: "impossible" });
  });
});

describe("by factor, weight and count", () => {
  // without a size of its own the house formula means 100 g of whites: 150, 195, 195, 150
  test("one and a half times the house recipe is 150 g whites", () => {
    const said = say({ factor: 1.5 });
    near(weights(said, ...house), [150, 195, 195, 150]);
    expect(said.assumed?.join()).toMatch(/100 g whites/);
  });

  // 700 / 460: whites 152.17391
  test("700 g of batter", () => {
    const said = say({ total_g: 700 });
    expect(value(said, "whites")).toBeCloseTo(152.17391, 5);
    expect(value(said, "total")).toBeCloseTo(700, 9);
  });

  // 36 macarons: 80 shells x 7.6532 / 0.96 = 637.76667; whites / 4.6 = 138.64493
  test("36 macarons, spares and all; 80 shells the same without more spares", () => {
    for (const inputs of [{ macarons: 36 }, { shells: 80 }]) {
      const said = say(inputs);
      expect(value(said, "total")).toBeCloseTo(637.76667, 5);
      expect(value(said, "whites")).toBeCloseTo(138.64493, 5);
    }
  });

  test("the line that was asked for comes first", () => {
    expect(names(say({ whites_count: 3, asked: "powdered sugar" }))[0]).toBe("powdered sugar");
  });
});

describe("the baker's own recipe", () => {
  const formulas = [
    {
      id: 1,
      name: "Sunday",
      lines: [
        { name: "whites", grams: 80 },
        { name: "almond flour", grams: 100 },
      ],
    },
  ];

  test("goes before the house formula, by its name in any case", () => {
    // 120 / 80 = 1.5
    const said = say({ formula: "sunday", have: [{ name: "whites", grams: 120 }] }, { formulas });
    expect(value(said, "almond flour")).toBeCloseTo(150, 9);
    expect(said.rule?.basis).toBe("your bench");
  });

  test("one that was never saved is asked for, line by line", () => {
    expect(say({ formula: "Monday", factor: 2 }, { formulas })).toMatchObject({
      status: "asking",
      slot: "lines",
    });
  });
});

describe("what is missing and what can't be", () => {
  test("a recipe without a size: asks", () => {
    expect(say({ lines: [{ name: "butter", grams: 100 }] })).toMatchObject({
      status: "asking",
      slot: "factor",
    });
  });

  test.each([
    { factor: 0 },
    { factor: -2 },
    { total_g: 0 },
    { whites_count: 0 },
    { macarons: 0 },
    { have: [{ name: "whites", grams: -1 }] },
  ])("%o is impossible", (inputs) => {
    const said = say(inputs);
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});

describe("as it is asked", () => {
  // 2 x 33 = 66 g; 66 x 1.3 = 85.8
  test("two egg whites, how much almond flour", async () => {
    expect(value(await baker().one("two egg whites, how much almond flour"), "almond flour")).toBeCloseTo(
      85.8,
      9,
    );
  });

  // 1.5 times
  test("a recipe that is no macaron's is scaled all the same", async () => {
    const said = await baker().one("make this 1.5 times: 120 g butter, 150 g sugar, 90 g lemon juice");
    expect(said.figures?.slice(0, 3).map((each) => each.value)).toEqual([180, 225, 135]);
  });

  // 105/135/135/90 by 70 / 105
  test("a recipe and what there is of one line", async () => {
    const said = await baker().one(
      "recipe says 105 whites 135 almond 135 powdered 90 sugar but I only have 70 g whites",
    );
    expect(value(said, "almond flour")).toBeCloseTo(90, 9);
  });
});
