/** A dose in spoons, and by what is the baker's own: bottles, notes, the scale. */
import { describe, expect, test } from "vitest";
import type { World } from "../../src/tools/contract/index.ts";
import { dose } from "../../src/tools/dose/dose.ts";
import { answer, figure, range, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(dose, inputs, more);
const smbc = { dose: "flavor", base: "buttercream" };

describe("spoons", () => {
  // NIST Handbook 44: a teaspoon is 4.92892159375 ml, counted as grams by estimate.
  // 6.9 / 4.92892159375 = 1.39990; 11.5 / 4.92892159375 = 2.33317
  test("of a liquid, by estimate and marked as one", () => {
    const said = say({ ...smbc, base_g: 230, spoon: "tsp" });
    const tsp = figure(said, "flavor", "tsp");
    expect(tsp.low).toBeCloseTo(1.3999, 4);
    expect(tsp.high).toBeCloseTo(2.33317, 4);
    expect(`${said.headline} ${said.cautions?.join(" ")}`).toMatch(/about .*estimate/i);
    expect(figure(said, "flavor", "g").low).toBeCloseTo(6.9, 12);
  });

  // NIST: a tablespoon is 14.78676478125 ml; 300 x 2 % = 6 g spirit, 6 / 14.78676478125 = 0.405768
  test("a tablespoon of a spirit", () => {
    const said = say({
      dose: "spirit",
      taste: "rum",
      base: "buttercream",
      base_g: 300,
      percent: 2,
      spoon: "tbsp",
    });
    expect(value(said, "rum", "tbsp")).toBeCloseTo(0.405768, 6);
  });

  // USDA SR28, WEIGHT, 02047: a teaspoon of table salt is 6 g. 300 x 0.2 % = 0.6 g, x 0.5 % = 1.5 g
  test("of salt, by its portion row: 0.1 to 0.25 tsp", () => {
    const tsp = figure(
      say({ dose: "salt", name: "salt", base: "buttercream", base_g: 300, spoon: "tsp" }),
      "salt",
      "tsp",
    );
    expect(tsp.low).toBeCloseTo(0.1, 12);
    expect(tsp.high).toBeCloseTo(0.25, 12);
  });

  test("of a powder that the portion table doesn't know: grams only", () => {
    const said = say({
      dose: "tea powder",
      taste: "matcha",
      name: "matcha",
      base: "buttercream",
      base_g: 200,
      spoon: "tsp",
    });
    expect(said.figures?.map((each) => each.unit)).toEqual(["g"]);
    expect(said.headline).toMatch(/no known weight/);
  });

  test("ml counted as grams are marked as an estimate", () => {
    const said = say({ ...smbc, flavor_g: 10, base_g: 250, by_volume: true });
    expect(said.assumed?.join()).toMatch(/ml counted as grams: an estimate/);
  });
});

describe("the baker's own", () => {
  const bottle = { id: 1, taste: "mint", low_percent: 0.5 };

  // 200 x 0.5 / 100 = 1
  test("one number on a bottle gives one value, in place of the row", () => {
    const said = say({ dose: "flavor", taste: "mint", base: "ganache", base_g: 200 }, { bottles: [bottle] });
    expect(figure(said, "flavor")).toEqual({ name: "flavor", value: 1, unit: "g" });
    expect(said.rule?.basis).toBe("your bench");
  });

  // 1 to 2 % of 200: 2 to 4; check 5 / 200 = 2.5 %, over
  test("two numbers give a range, and it is what a check goes by", () => {
    const bottles = [{ ...bottle, low_percent: 1, high_percent: 2 }];
    expect(
      range(say({ dose: "flavor", taste: "mint", base: "ganache", base_g: 200 }, { bottles }), "flavor"),
    ).toEqual([2, 4]);
    const checked = say(
      { dose: "flavor", taste: "mint", base: "ganache", base_g: 200, flavor_g: 5 },
      { bottles },
    );
    expect(checked.headline).toContain("over the 1-2 %");
    expect(checked.rule?.basis).toBe("your bench");
  });

  test("another taste's or another form's bottle changes nothing", () => {
    const want = [6, 8];
    const mint = { dose: "flavor", taste: "mint", base: "ganache", base_g: 200 };
    expect(range(say(mint, { bottles: [{ ...bottle, taste: "lemon" }] }), "flavor")).toEqual(want);
    expect(range(say(mint, { bottles: [{ ...bottle, form: "oil" }] }), "flavor")).toEqual(want);
    expect(range(say(mint, { bottles: [{ id: 1, taste: "mint", left_g: 40 }] }), "flavor")).toEqual(want);
  });

  test("a percentage said now goes before the bottle", () => {
    const said = say(
      { dose: "flavor", taste: "mint", base: "ganache", base_g: 200, percent: 3 },
      { bottles: [bottle] },
    );
    expect(value(said, "flavor")).toBeCloseTo(6, 12);
    expect(said.rule?.basis).toBe("arithmetic");
  });

  test("a past note stands beside the dose, never instead of it", () => {
    const note = {
      id: 1,
      date: "2026-02-01",
      noted_ms: 0,
      text: "lemon, 9 % flavor, too much",
      flavors: ["lemon"],
      problems: [],
      doses: [{ flavor: "lemon", percent: 9 }],
    };
    const said = say({ dose: "flavor", taste: "lemon", base: "buttercream", base_g: 200 }, { notes: [note] });
    expect(range(said, "flavor")).toEqual([6, 10]);
    expect(said.items?.[0]).toMatchObject({ date: "2026-02-01", text: "lemon, 9 % flavor, too much" });
  });

  test("a dose below what the scale can tell is cautioned about", () => {
    // 40 x 3 % = 1.2 g on a scale of 1 g steps
    expect(say({ ...smbc, base_g: 40 }, { bench: { scale_g: 1 } }).cautions?.join()).toMatch(
      /scale reads 1 g steps/,
    );
  });
});
