/** Grams of a volume, by the rows of data/tables/portions.json (USDA SR28, file WEIGHT), for every ingredient. */
import { describe, expect, test } from "vitest";
import table from "../../../data/tables/portions.json" with { type: "json" };
import { ingredients } from "../../../data/words/ingredients.ts";
import { gramsOfLarge, gramsOfVolume, measuresOf } from "../../../src/tools/lib/portions.ts";

const grams = (name: string, value: number, unit: string, manner?: string) =>
  gramsOfVolume(name, value, unit, manner)?.grams;
const known = ingredients.filter((each) => each.ndb);
const rowsOf = (ndb: string | undefined) => table.rows.filter((row) => row.ndb === ndb);

test("every USDA number of an ingredient has rows in the table", () => {
  expect(known.length).toBeGreaterThan(50);
  expect(known.filter((each) => rowsOf(each.ndb).length === 0).map((each) => each.name)).toEqual([]);
});

describe("published rows, typed in", () => {
  test.each<[name: string, value: number, unit: string, manner: string | undefined, grams: number]>([
    // USDA SR28, common practice for which row: powdered sugar unsifted unless said, 120 g; almond flour "almonds, ground", 95 g; cream fluid, 238 g
    ["powdered sugar", 1, "cup", undefined, 120],
    ["powdered sugar", 1, "cup", "sifted", 100],
    ["powdered sugar", 1, "tbsp", undefined, 8],
    ["powdered sugar", 1, "tsp", undefined, 2.5],
    ["almond flour", 1, "cup", undefined, 95],
    ["cream", 1, "cup", undefined, 238],
    ["cream", 1, "tbsp", undefined, 15],
    ["cream", 1, "fl oz", undefined, 29.8],
    ["granulated sugar", 1, "cup", undefined, 200],
    ["granulated sugar", 2, "tsp", undefined, 8.4],
    ["brown sugar", 1, "cup", undefined, 220],
    ["brown sugar", 1, "cup", "unpacked", 145],
    ["butter", 1, "stick", undefined, 113],
    ["butter", 1, "tbsp", undefined, 14.2],
    ["butter", 0.5, "cup", undefined, 113.5],
    ["whites", 1, "cup", undefined, 243],
    ["cocoa powder", 1, "cup", undefined, 86],
    ["cocoa powder", 1, "tbsp", undefined, 5.4],
    ["salt", 1, "tsp", undefined, 6],
    ["honey", 1, "tbsp", undefined, 21],
    ["cornstarch", 1, "cup", undefined, 128],
    ["flour", 1, "cup", undefined, 125],
    ["cream of tartar", 1, "tsp", undefined, 3],
    ["vanilla extract", 1, "tsp", undefined, 4.2],
    // 0.25 cup is 55 g: a whole one by proportion
    ["agave syrup", 1, "cup", undefined, 220],
  ])("%s: %d %s %s", (name, value, unit, manner, want) => {
    expect(grams(name, value, unit, manner)).toBeCloseTo(want, 9);
    expect(gramsOfVolume(name, value, unit, manner)?.scaled).toBe(false);
  });
});

describe("where a measure has no row, the cup's row by the NIST volumes", () => {
  test.each<[name: string, value: number, unit: string, grams: number]>([
    // 1/16 of 200, 1/48 of 86
    ["granulated sugar", 1, "tbsp", 12.5],
    ["cocoa powder", 1, "tsp", 86 / 48],
    // 95 / 16
    ["almond flour", 1, "tbsp", 95 / 16],
    // 100 ml / 236.5882365 ml x 238 g = 100.596718 g
    ["cream", 100, "ml", 100.596718],
    // a pint is two cups: 2 x 238
    ["cream", 1, "pint", 476],
  ])("%s: %d %s", (name, value, unit, want) => {
    expect(grams(name, value, unit)).toBeCloseTo(want, 5);
    expect(gramsOfVolume(name, value, unit)?.scaled).toBe(true);
  });
});

describe("every ingredient", () => {
  test.each(known.map((each) => each.name))(
    "%s: a measure without a manner gives its own row, in proportion",
    (name) => {
      const { ndb, manner } = known.find((each) => each.name === name) ?? {};
      const own = rowsOf(ndb);
      for (const unit of ["cup", "tbsp", "tsp", "fl oz"]) {
        // rows of this very measure: bare, or in the ingredient's usual manner, as the words of the table have it
        const bare = own.filter((row) => row.measure === unit && row.amount === 1);
        const usual = manner
          ? own.filter(
              (row) =>
                row.measure.replace(/ \(.*\)/, "").replace(/^(\w+),? /, "$1 ") === `${unit} ${manner}` &&
                row.amount === 1,
            )
          : [];
        const row = usual[0] ?? bare[0];
        if (!row) continue;
        expect(grams(name, 1, unit)).toBeCloseTo(row.grams, 9);
        expect(grams(name, 2.5, unit)).toBeCloseTo(2.5 * row.grams, 9);
      }
    },
  );

  test("what is found is in the table or in proportion to it, never made up", () => {
    for (const { name, ndb } of known)
      for (const unit of ["cup", "tbsp", "tsp", "fl oz", "stick", "quart", "ml", "l"]) {
        const found = gramsOfVolume(name, 1, unit);
        if (!found) continue;
        const each = rowsOf(ndb).map((row) => row.grams / row.amount);
        const parts: Record<string, number> = {
          tbsp: 1 / 16,
          tsp: 1 / 48,
          "fl oz": 1 / 8,
          stick: 1 / 2,
          quart: 4,
          ml: 1 / 236.5882365,
          l: 1000 / 236.5882365,
        };
        const part = parts[unit] ?? 1;
        const fits = each.some(
          (whole) => Math.abs(found.grams - (found.scaled ? whole * part : whole)) < 1e-9,
        );
        expect(fits, `${name} ${unit}: ${found.grams} g from ${found.row}`).toBe(true);
      }
  });

  test("a cup of anything weighs between 30 and 400 g", () => {
    for (const { name } of known) {
      const cup = grams(name, 1, "cup");
      if (cup === undefined) continue;
      expect(cup, name).toBeGreaterThan(30);
      expect(cup, name).toBeLessThan(400);
    }
  });
});

describe("what isn't known stays so", () => {
  test("an ingredient without a USDA number, or a word that is none", () => {
    expect(grams("matcha", 1, "tsp")).toBeUndefined();
    expect(grams("moon dust", 1, "cup")).toBeUndefined();
    expect(measuresOf("moon dust")).toEqual([]);
  });

  test("a manner that the table lacks", () => {
    expect(grams("granulated sugar", 1, "cup", "packed")).toBeUndefined();
  });

  test("a spoon where there is neither a spoon's nor a cup's row", () => {
    // 01172 has an ounce only
    expect(grams("pasteurised whites", 1, "tbsp")).toBeUndefined();
  });
});

test("one by number: a large white 33 g, yolk 17 g, egg 50 g, and nothing that has no size", () => {
  expect(["whites", "egg yolk", "egg", "butter"].map(gramsOfLarge)).toEqual([33, 17, 50, undefined]);
});
