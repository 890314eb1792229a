/** The dose in every direction, worked by hand. Percentages are the book's rows: see dose-table.test.ts. */
import { describe, expect, test } from "vitest";
import type { World } from "../../src/tools/contract/index.ts";
import { dose } from "../../src/tools/dose/dose.ts";
import { answer, figure, names, range, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more: Partial<World> = {}) => answer(dose, inputs, more);
const smbc = { dose: "flavor", base: "buttercream" };

describe("forward", () => {
  // common practice, 3-5 %: 230 x 3 / 100 = 6.9; 230 x 5 / 100 = 11.5
  test("230 g buttercream takes 6.9 to 11.5 g flavor", () => {
    const said = say({ ...smbc, base_g: 230 });
    expect(range(said, "flavor")[0]).toBeCloseTo(6.9, 12);
    expect(range(said, "flavor")[1]).toBeCloseTo(11.5, 12);
    expect(said.headline).toBe("6.9 to 11.5 g flavor");
    expect(said.leaves?.mass).toEqual({ grams: 230, thing: "buttercream" });
  });

  // arithmetic: 300 x 2 / 100 = 6
  test("a percentage that is said is taken as it is, and called arithmetic", () => {
    const said = say({ ...smbc, base_g: 300, percent: 2 });
    expect(figure(said, "flavor")).toEqual({ name: "flavor", value: 6, unit: "g" });
    expect(said.rule?.basis).toBe("arithmetic");
  });

  // 250 x 2 / 100 = 5; 250 x 6 / 100 = 15
  test("a range of percentages that is said gives a range", () => {
    expect(range(say({ ...smbc, base_g: 250, percent: 2, percent_high: 6 }), "flavor")).toEqual([5, 15]);
  });

  // of the finished weight: 240 x 4 / (100 - 4) = 10; and 10 / (240 + 10) is 4 %
  test("4 % of the finished filling on 240 g is 10 g", () => {
    expect(value(say({ ...smbc, base_g: 240, percent: 4, of_finished: true }), "flavor")).toBeCloseTo(10, 12);
  });

  test("a percentage that is said answers where the table has no number", () => {
    // 200 x 4 / 100 = 8
    const said = say({ dose: "cocoa powder", base: "ganache", base_g: 200, percent: 4 });
    expect(value(said, "cocoa powder")).toBeCloseTo(8, 12);
    expect(said.rule?.basis).toBe("arithmetic");
  });
});

describe("base from flavor", () => {
  // low = 6 / 5 % = 120; high = 6 / 3 % = 200
  test("6 g flavor serves 120 to 200 g buttercream", () => {
    expect(range(say({ ...smbc, flavor_g: 6 }), "base")).toEqual([120, 200]);
  });

  // 9 / 4 % = 225; 9 / 3 % = 300
  test("9 g flavor serves 225 to 300 g ganache", () => {
    expect(range(say({ dose: "flavor", base: "ganache", flavor_g: 9 }), "base")).toEqual([225, 300]);
  });

  // 10 x (100 - 4) / 4 = 240
  test("as a share of the finished weight it is the inverse of the forward way", () => {
    expect(value(say({ ...smbc, flavor_g: 10, percent: 4, of_finished: true }), "base")).toBeCloseTo(240, 12);
  });

  // 8 / 4 % = 200
  test("a percentage that is said answers where the table has no number", () => {
    const said = say({ dose: "cocoa powder", base: "ganache", flavor_g: 8, percent: 4 });
    expect(value(said, "base")).toBeCloseTo(200, 12);
  });
});

describe("check", () => {
  test.each([
    // 9 / 150 = 6 %, above 5
    [9, 150, 6, "over"],
    // 4 / 200 = 2 %, below 3
    [4, 200, 2, "under"],
    // 8 / 200 = 4 %
    [8, 200, 4, "within"],
    // the edges themselves are within: 6 / 200 = 3 %, 10 / 200 = 5 %
    [6, 200, 3, "within"],
    [10, 200, 5, "within"],
    // 6.9 / 230 and 11.5 / 230 are 3 and 5 %, though neither divides exactly in binary
    [6.9, 230, 3, "within"],
    [11.5, 230, 5, "within"],
    // already in the bowl is checked whatever it comes to: 300 / 100 = 300 %; 0 / 100 = 0 %
    [300, 100, 300, "over"],
    [0, 100, 0, "under"],
  ])("%d g in %d g is %d %, %s", (flavor_g, base_g, share, verdict) => {
    const said = say({ ...smbc, flavor_g, base_g });
    expect(value(said, "share", "%")).toBeCloseTo(share, 12);
    expect(said.headline).toContain(`: ${verdict} the 3-5 %`);
  });

  // what would bring it in: 200 x 3 % - 4 = 2; 200 x 5 % - 4 = 6
  test("under: says what more would bring it in", () => {
    expect(say({ ...smbc, flavor_g: 4, base_g: 200 }).headline).toContain("2 to 6 g more");
  });

  // 10 / (240 + 10) = 4 %
  test("of the finished weight when that is asked", () => {
    const said = say({ ...smbc, flavor_g: 10, base_g: 240, percent: 4, of_finished: true });
    expect(value(said, "share", "%")).toBeCloseTo(4, 12);
    expect(said.headline).toContain("within");
  });
});

describe("overdosed", () => {
  // to the top: 14 / 4 % - 200 = 150; to the middle, 3.5 %: 14 / 3.5 % - 200 = 200
  test("14 g in 200 g ganache: 150 to 200 g to add", () => {
    const said = say({ dose: "flavor", base: "ganache", flavor_g: 14, base_g: 200, want: "mend" });
    expect(range(said, "add base")[0]).toBeCloseTo(150, 9);
    expect(range(said, "add base")[1]).toBeCloseTo(200, 9);
    expect(value(said, "share")).toBeCloseTo(7, 12);
  });

  test("exactly at the top there is nothing to mend: it is checked instead", () => {
    const said = say({ ...smbc, flavor_g: 10, base_g: 200, want: "mend" });
    expect(names(said)).not.toContain("add base");
    expect(said.headline).toContain("within");
  });

  test("without the flavor's weight it asks for that", () => {
    const said = say({ ...smbc, base_g: 200, want: "mend" });
    expect(said.status).toBe("asking");
    expect(said.slot).toBe("flavor_g");
  });
});

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
    const said = say({ dose: "spirit", taste: "rum", base: "buttercream", base_g: 300, percent: 2, spoon: "tbsp" });
    expect(value(said, "rum", "tbsp")).toBeCloseTo(0.405768, 6);
  });

  // USDA SR28, WEIGHT, 02047: a teaspoon of table salt is 6 g. 300 x 0.2 % = 0.6 g, x 0.5 % = 1.5 g
  test("of salt, by its portion row: 0.1 to 0.25 tsp", () => {
    const tsp = figure(say({ dose: "salt", name: "salt", base: "buttercream", base_g: 300, spoon: "tsp" }), "salt", "tsp");
    expect(tsp.low).toBeCloseTo(0.1, 12);
    expect(tsp.high).toBeCloseTo(0.25, 12);
  });

  test("of a powder that the portion table doesn't know: grams only", () => {
    const said = say({ dose: "tea powder", taste: "matcha", name: "matcha", base: "buttercream", base_g: 200, spoon: "tsp" });
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
    expect(range(say({ dose: "flavor", taste: "mint", base: "ganache", base_g: 200 }, { bottles }), "flavor")).toEqual([2, 4]);
    const checked = say({ dose: "flavor", taste: "mint", base: "ganache", base_g: 200, flavor_g: 5 }, { bottles });
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
    const said = say({ dose: "flavor", taste: "mint", base: "ganache", base_g: 200, percent: 3 }, { bottles: [bottle] });
    expect(value(said, "flavor")).toBeCloseTo(6, 12);
    expect(said.rule?.basis).toBe("arithmetic");
  });

  test("a past note stands beside the dose, never instead of it", () => {
    const note = {
      id: 1, date: "2026-02-01", noted_ms: 0, text: "lemon, 9 % flavor, too much", flavors: ["lemon"], problems: [],
      doses: [{ flavor: "lemon", percent: 9 }],
    };
    const said = say({ dose: "flavor", taste: "lemon", base: "buttercream", base_g: 200 }, { notes: [note] });
    expect(range(said, "flavor")).toEqual([6, 10]);
    expect(said.items?.[0]).toMatchObject({ date: "2026-02-01", text: "lemon, 9 % flavor, too much" });
  });

  test("a dose below what the scale can tell is cautioned about", () => {
    // 40 x 3 % = 1.2 g on a scale of 1 g steps
    expect(say({ ...smbc, base_g: 40 }, { bench: { scale_g: 1 } }).cautions?.join()).toMatch(/scale reads 1 g steps/);
  });
});

describe("what is missing and what can't be", () => {
  test("nothing but a row: asks how much base", () => {
    expect(say({ dose: "flavor" })).toMatchObject({ status: "asking", slot: "base_g" });
  });

  test("a color of no kind: asks which", () => {
    expect(say({ dose: "color", base_g: 400 })).toMatchObject({ status: "asking", slot: "dose" });
  });

  test.each([
    ["a base of zero", { base_g: 0 }],
    ["a base below zero", { base_g: -20 }],
    ["flavor below zero", { base_g: 200, flavor_g: -1 }],
    ["400 % flavor", { base_g: 200, percent: 400 }],
    ["100 % of it", { base_g: 200, percent: 100 }],
    ["0 % of it", { base_g: 200, percent: 0 }],
    ["more than a tonne", { base_g: 1_000_001 }],
  ])("%s is impossible, in a sentence, without figures", (_, inputs) => {
    const said = say({ ...smbc, ...inputs });
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
    expect(said.headline).toMatch(/[a-z].*\.$/);
  });

  test("just below 100 % is still worked out", () => {
    expect(say({ ...smbc, base_g: 200, percent: 99.9 }).status).toBe("answered");
  });
});
