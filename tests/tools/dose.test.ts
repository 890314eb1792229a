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
    const said = say({ ...smbc, flavor_g, base_g, want: "check" });
    expect(value(said, "share", "%")).toBeCloseTo(share, 12);
    expect(said.headline).toContain(`: ${verdict} the 3-5 %`);
  });
  test("more flavor than mix, and not asked as a check, is asked about", () =>
    expect(say({ ...smbc, flavor_g: 300, base_g: 100 })).toMatchObject({
      status: "asking",
      slot: "flavor_g",
    }));

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
