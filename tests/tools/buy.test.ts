/** What to buy: the book's sizing less the shelf, worked by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buy } from "../../src/tools/buy/buy.ts";
import type { Stock } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";
import { answer, figure, names, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more = {}) => answer(buy, inputs, more);
const stock = (name: string, grams: number, more: Partial<Stock> = {}): Stock => ({
  id: grams,
  name,
  grams,
  ...more,
});

// from memory and common practice: ceil(22 x 24 / 10) = 53 shells; 53 x 0.53 x 3.8^2 / 0.96 = 422.520416... g batter
const batter = (53 * 0.53 * 3.8 ** 2) / 0.96;
// 24 x 0.42 x 3.8^2 / 0.92 = 158.2121739 g filling
const filling = (24 * 0.42 * 3.8 ** 2) / 0.92;

describe("24 macarons", () => {
  test("the shells, by the house formula 100 : 130 : 130 : 100", () => {
    const said = say({ macarons: 24 });
    expect(value(said, "almond flour")).toBeCloseTo((batter * 130) / 460, 9);
    expect(value(said, "powdered sugar")).toBeCloseTo((batter * 130) / 460, 9);
    expect(value(said, "granulated sugar")).toBeCloseTo((batter * 100) / 460, 9);
    expect(value(said, "whites")).toBeCloseTo((batter * 100) / 460, 9);
  });

  test("with no filling named a ring of buttercream, 60 %, and a center of dark ganache, 40 %", () => {
    const said = say({ macarons: 24 });
    expect(value(said, "butter")).toBeCloseTo((filling * 0.6 * 250) / 500, 9);
    expect(value(said, "dark chocolate")).toBeCloseTo((filling * 0.4 * 1.25) / 2.25, 9);
    expect(value(said, "cream")).toBeCloseTo((filling * 0.4) / 2.25, 9);
    expect(said.assumed?.join(" ")).toContain("60 %");
  });

  // USDA SR, NDB 01124: 33 g a white. (91.852 + 18.985) / 33 = 3.36, so 4
  test("eggs for all the whites together", () => {
    expect(value(say({ macarons: 24 }), "eggs")).toBe(4);
    // 91.852 / 33 = 2.78
    expect(value(say({ macarons: 24, shells_only: true }), "eggs")).toBe(3);
  });

  test("a filling that is named is the only one", () => {
    const said = say({ macarons: 24, fillings: ["ganache"], chocolate: "milk" });
    expect(value(said, "milk chocolate")).toBeCloseTo((filling * 2) / 3, 9);
    expect(names(said)).not.toContain("butter");
  });

  test("shells alone", () => {
    expect(names(say({ macarons: 24, shells_only: true })).sort()).toEqual([
      "almond flour",
      "eggs",
      "granulated sugar",
      "powdered sugar",
      "whites",
    ]);
  });

  test("shells said by number take no spares: 48 x 0.53 x 3.8^2 / 0.96", () => {
    expect(value(say({ shells: 48, shells_only: true }), "almond flour")).toBeCloseTo(
      (((48 * 0.53 * 3.8 ** 2) / 0.96) * 130) / 460,
      9,
    );
  });
});

describe("less what is on the shelf", () => {
  // 119.4079 - 50 = 69.4079
  test("pantry: 50 g almond flour", async () => {
    const { one } = baker();
    await one("pantry: 50 g almond flour");
    const said = await one("what do i need to buy for 24 macarons");
    expect(value(said, "almond flour")).toBeCloseTo((batter * 130) / 460 - 50, 9);
    expect(said.rule?.basis).toBe("your bench");
  });

  test("what is there in full is not bought, and listed as there", () => {
    const said = say({ macarons: 24 }, { stock: [stock("almond flour", 1000)] });
    expect(names(said)).not.toContain("almond flour");
    expect(said.items?.find((each) => each.on_the_shelf)).toMatchObject({
      on_the_shelf: "almond flour",
      part: "shells",
    });
  });

  test("sugar serves the shells first, what is left of it the buttercream", () => {
    const shells = (batter * 100) / 460;
    const said = say({ macarons: 24, fillings: ["buttercream"] }, { stock: [stock("sugar", shells + 10)] });
    expect(names(said)).not.toContain("granulated sugar");
    expect(value(said, "sugar")).toBeCloseTo((filling * 150) / 500 - 10, 9);
  });

  test("in packs where it is known how it is sold", () => {
    const said = say(
      { macarons: 100, shells_only: true },
      { stock: [stock("almond flour", 0, { pack_g: 200, price_per_g: 0.02, currency: "EUR" })] },
    );
    // 220 shells: 220 x 7.6532 / 0.96 x 130 / 460 = 495.66 g, so 3 packs of 200 g at 0.02 a gram
    expect(said.items?.[1]).toMatchObject({ buy: "almond flour", packs: 3, pack_g: 200, price: "€12.00" });
  });

  test("nothing to buy is said", () => {
    const all = ["whites", "almond flour", "powdered sugar", "sugar"].map((name, at) =>
      stock(name, 5000 + at),
    );
    expect(say({ macarons: 24, shells_only: true }, { stock: all }).headline).toMatch(/^Nothing/);
  });

  test("law: the shelf and the shop together are what the bake takes", () => {
    const grams = fc.double({ min: 0, max: 400, noNaN: true });
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), grams, grams, (macarons, almond, butter) => {
        const need = say({ macarons });
        const left = say(
          { macarons },
          { stock: [stock("almond flour", almond), { id: 2, name: "butter", grams: butter }] },
        );
        for (const [name, there] of [
          ["almond flour", almond],
          ["butter", butter],
        ] as const) {
          const wanted = value(need, name);
          const bought = names(left).includes(name) ? value(left, name) : 0;
          expect(bought).toBeCloseTo(Math.max(0, wanted - there), 6);
        }
      }),
    );
  });
});

describe("in words", () => {
  test.each([
    ["what do i need to buy for 24 macarons", { macarons: 24 }],
    ["What have I got to buy for 84 macarons?", { macarons: 84 }],
    [
      "shopping list for 60 macarons with white chocolate ganache",
      { macarons: 60, fillings: ["ganache"], chocolate: "white" },
    ],
    ["what do i have to buy for 30 macarons of 4.5 cm", { macarons: 30, diameter_mm: 45 }],
    ["what am i short of for 40 macarons", { macarons: 40 }],
  ])("%s", async (line, inputs) => {
    const said = await baker().one(line);
    expect(said.tool).toBe("buy");
    expect(said.figures).toEqual(say(inputs).figures);
  });

  test("asked for, then changed", async () => {
    const { one } = baker();
    expect((await one("what do i have to buy")).status).toBe("asking");
    const first = value(await one("24 macarons"), "almond flour");
    expect(value(await one("and for 48?"), "almond flour")).toBeGreaterThan(1.9 * first);
  });

  test("a saved recipe instead of the house formula", () => {
    const lines = [
      { name: "whites", grams: 105 },
      { name: "almond flour", grams: 130 },
      { name: "powdered sugar", grams: 130 },
      { name: "granulated sugar", grams: 95 },
    ];
    const said = say(
      { macarons: 24, formula: "snowy shells", shells_only: true },
      { formulas: [{ id: 1, name: "snowy shells", lines }] },
    );
    expect(figure(said, "granulated sugar").value).toBeCloseTo((batter * 95) / 460, 9);
    expect(said.rule?.basis).toBe("your bench");
  });
});
