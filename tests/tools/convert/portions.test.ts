/** Cups, spoons and sticks of ingredients, against USDA SR28, file WEIGHT. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ingredients } from "../../../data/words/ingredients.ts";
import { convert } from "../../../src/tools/convert/convert.ts";
import { gramsOfVolume } from "../../../src/tools/lib/portions.ts";
import { answer, value } from "../../support/world.ts";

const grams = (amount: number, unit: string, ingredient: string, manner?: string) =>
  value(
    answer(convert, { value: amount, unit, to: "g", ingredient, ...(manner ? { manner } : {}) }),
    "result",
  );

describe("rows of USDA SR28, file WEIGHT, as printed", () => {
  test.each([
    [1, "cup", "powdered sugar", undefined, 120], // 19336, unsifted unless said
    [1, "cup", "powdered sugar", "unsifted", 120],
    [1, "cup", "powdered sugar", "sifted", 100],
    [1, "tbsp", "powdered sugar", undefined, 8],
    [1, "tsp", "powdered sugar", undefined, 2.5],
    [1, "cup", "granulated sugar", undefined, 200], // 19335
    [1, "tsp", "granulated sugar", undefined, 4.2],
    [1, "cup", "almond flour", undefined, 95], // 12061, ground
    [1, "cup", "almonds", "sliced", 92],
    [1, "cup", "almonds", "slivered", 108],
    [1, "cup", "almonds", "whole", 143],
    [1, "cup", "hazelnuts", "ground", 75], // 12120
    [1, "cup", "hazelnuts", "chopped", 115],
    [1, "cup", "cream", undefined, 238], // 01053, fluid
    [1, "cup", "cream", "whipped", 120],
    [1, "tbsp", "cream", undefined, 15],
    [1, "fl oz", "cream", undefined, 29.8],
    [1, "stick", "butter", undefined, 113], // 01145
    [1, "tbsp", "butter", undefined, 14.2],
    [1, "cup", "butter", undefined, 227],
    [1, "tbsp", "cream cheese", undefined, 14.5], // 01017, not the whipped 10
    [1, "cup", "ricotta", undefined, 246], // 01036, the row of one cup
    [1, "cup", "cocoa powder", undefined, 86], // 19165
    [1, "tbsp", "cocoa powder", undefined, 5.4],
    [1, "cup", "honey", undefined, 339], // 19296
    [1, "tbsp", "honey", undefined, 21],
    [1, "cup", "brown sugar", undefined, 220], // 19334, packed
    [1, "cup", "brown sugar", "unpacked", 145],
    [1, "tsp", "brown sugar", undefined, 4.6],
    [1, "tsp", "salt", undefined, 6], // 02047
    [1, "tbsp", "salt", undefined, 18],
    [1, "tsp", "vanilla extract", undefined, 4.2], // 02050
    [1, "tsp", "cream of tartar", undefined, 3], // 18373
    [1, "tbsp", "glucose syrup", undefined, 22], // 19350
    [1, "tbsp", "molasses", undefined, 20], // 19304, "serving 1 tbsp"
    [1, "cup", "whites", undefined, 243], // 01124
    [1, "cup", "white chocolate", undefined, 170], // 19087, chips
    [1, "tbsp", "white chocolate", undefined, 14],
    [1, "cup", "semisweet chocolate", undefined, 168], // 19080, "chips"
    [1, "cup", "semisweet chocolate", "mini chips", 173],
    [1, "cup", "water", undefined, 237], // 14411, "serving 8 fl oz"
    [1, "l", "water", undefined, 1000],
    [1, "tbsp", "peanut butter", undefined, 16], // 16098, "2 tbsp" = 32
    [1, "tbsp", "egg white powder", undefined, 7], // 01136
  ])("%d %s %s %s = %d g", (amount, unit, name, manner, want) =>
    expect(grams(amount, unit, name, manner)).toBeCloseTo(want, 10),
  );
});

describe("without a row of its own, the cup's by NIST Handbook 44: a tablespoon 1/16, a teaspoon 1/48", () => {
  test.each([
    [3, "tbsp", "granulated sugar", (3 * 200) / 16],
    [1, "tbsp", "almond flour", 95 / 16],
    [1, "tsp", "almond flour", 95 / 48],
    [1, "tsp", "honey", 339 / 48],
    [2, "tbsp", "cornstarch", 128 / 8],
    [1, "tsp", "butter", 227 / 48],
    [100, "ml", "cream", (100 / 236.5882365) * 238],
  ])("%d %s %s", (amount, unit, name, want) => expect(grams(amount, unit, name)).toBeCloseTo(want, 10));
});

describe("not known is said, with no figure", () => {
  test.each([
    ["tbsp", "matcha", undefined],
    ["cup", "golden syrup", undefined],
    ["tbsp", "rum", undefined],
    ["cup", "pistachios", "ground"],
    ["cup", "cocoa powder", "sifted"],
    ["stick", "flour", undefined],
    ["cup", "dark chocolate", undefined],
  ])("a %s of %s, %s", (unit, ingredient, manner) => {
    const said = answer(convert, { value: 1, unit, to: "g", ingredient, ...(manner ? { manner } : {}) });
    expect([said.status, said.figures]).toEqual(["declined", undefined]);
    expect(said.headline).toMatch(/don't know/);
  });

  test("nor what no table has heard of", () => {
    const said = answer(convert, { value: 1, unit: "cup", to: "g", unknown: "edible glitter" });
    expect([said.status, said.figures]).toEqual(["declined", undefined]);
    expect(said.headline).toContain("edible glitter");
  });
});

test("a cup of nothing in particular, and nuts of no particular cut, are asked about", () => {
  expect(answer(convert, { value: 1, unit: "cup", to: "g" }).slot).toBe("ingredient");
  expect(answer(convert, { value: 100, unit: "g", to: "cup" }).slot).toBe("ingredient");
  expect(
    answer(convert, { value: 1, unit: "cup", to: "g", ingredient: "hazelnuts", several: true }).slot,
  ).toBe("manner");
  expect(answer(convert, { value: 1, unit: "cup", to: "g", ingredient: "chocolate" }).slot).toBe(
    "ingredient",
  );
});

test("eggs by number: a large egg's white 33 g, yolk 17 g, egg 50 g (USDA SR 01124, 01125, 01123)", () => {
  expect(grams(3, "large", "whites")).toBe(99);
  expect(grams(2, "large", "egg yolk")).toBe(34);
  expect(grams(2, "large", "egg")).toBe(100);
});

/** Every measure that the table can give, in both directions. */
const known = ingredients.flatMap((row) =>
  ["cup", "tbsp", "tsp", "fl oz", "ml"]
    .filter((unit) => gramsOfVolume(row.name, 1, unit))
    .map((unit) => ({ ingredient: row.name, unit })),
);

test("grams to cups undoes cups to grams, for every ingredient", () => {
  expect(known.length).toBeGreaterThan(150);
  fc.assert(
    fc.property(
      fc.constantFrom(...known),
      fc.double({ min: 0.01, max: 500, noNaN: true }),
      ({ ingredient, unit }, amount) => {
        const there = grams(amount, unit, ingredient);
        const back = value(answer(convert, { value: there, unit: "g", to: unit, ingredient }), "result");
        expect(back / amount).toBeCloseTo(1, 9);
      },
    ),
  );
});

test("twice the cups weigh twice as much, in any unit of weight", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...known),
      fc.constantFrom("g", "oz", "lb", "kg"),
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      ({ ingredient, unit }, to, amount) => {
        const weigh = (n: number) => value(answer(convert, { value: n, unit, to, ingredient }), "result");
        expect(weigh(2 * amount) / weigh(amount)).toBeCloseTo(2, 9);
      },
    ),
  );
});

test("the baker's own cup counts, as her bench", () => {
  const said = answer(
    convert,
    { value: 1, unit: "cup", to: "g", ingredient: "granulated sugar" },
    { bench: { cup_ml: 250 } },
  );
  expect(value(said, "result")).toBeCloseTo((200 * 250) / 236.5882365, 10);
  expect(said.rule?.basis).toBe("your bench");
  expect(
    value(answer(convert, { value: 2, unit: "cup", to: "ml" }, { bench: { cup_ml: 250 } }), "result"),
  ).toBe(500);
  // a spoon isn't a cup: it stays as it is
  expect(
    answer(convert, { value: 1, unit: "tbsp", to: "g", ingredient: "butter" }, { bench: { cup_ml: 250 } })
      .rule?.basis,
  ).toBe("published");
});

test("the rule names the row, and the ingredient stays on the table", () => {
  const said = answer(convert, { value: 2, unit: "cup", to: "g", ingredient: "powdered sugar" });
  expect(said.rule?.text).toContain("1 cup unsifted of sugars, powdered = 120 g");
  expect(said.rule?.source).toContain("USDA");
  expect(said.assumed).toContain("powdered sugar measured unsifted");
  expect(said.leaves?.mass).toEqual({ grams: 240, thing: "powdered sugar" });
});
