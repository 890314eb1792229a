/** One bowl into several. All arithmetic: what is split adds up to what was in the bowl. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { split } from "../../src/tools/split/split.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>) => answer(split, inputs);
const sizes = (...all: number[]) => all.map((size) => ({ size }));

describe("by hand", () => {
  // 360 / 3
  test("equal bowls", () => {
    const said = say({ total_g: 360, equal: 3 });
    expect(said.figures).toEqual([{ name: "each", value: 120, unit: "g" }]);
    expect(said.leaves).toMatchObject({ part: { grams: 120 }, mass: { grams: 360 } });
  });

  // 480 x 2 / 3, 480 x 1 / 3
  test("two parts to one", () => {
    const said = say({
      total_g: 480,
      parts: [
        { name: "blue", size: 2 },
        { name: "white", size: 1 },
      ],
    });
    expect(value(said, "blue")).toBeCloseTo(320, 9);
    expect(value(said, "white")).toBeCloseTo(160, 9);
  });

  // 350 x 40 % = 140, x 60 % = 210: no rest
  test("percentages that make a hundred leave no rest", () => {
    const said = say({
      total_g: 350,
      percents: [
        { name: "coffee", size: 40 },
        { name: "caramel", size: 60 },
      ],
    });
    expect(said.figures?.map((each) => [each.name, each.value])).toEqual([
      ["coffee", 140],
      ["caramel", 210],
    ]);
  });

  // 450 x 1/3 = 150; the rest 300
  test("a third pink, the rest plain", () => {
    const said = say({ total_g: 450, percents: [{ name: "pink", size: 100 / 3 }], rest: "plain" });
    expect(value(said, "pink")).toBeCloseTo(150, 9);
    expect(value(said, "plain")).toBeCloseTo(300, 9);
  });

  // 500 - 150
  test("a weight and the rest", () => {
    expect(value(say({ total_g: 500, weights: [{ name: "green", size: 150 }] }), "the rest")).toBeCloseTo(
      350,
      9,
    );
  });

  test("the rule is arithmetic", () => {
    expect(say({ total_g: 360, equal: 3 }).rule?.basis).toBe("arithmetic");
  });
});

describe("the parts always add up to the bowl", () => {
  const total = fc.double({ min: 1, max: 20_000, noNaN: true });
  const shares = fc.array(fc.double({ min: 0.01, max: 100, noNaN: true }), { minLength: 1, maxLength: 8 });
  const adds = (inputs: Record<string, unknown>, total_g: number, bowls?: number) => {
    const said = say({ ...inputs, total_g });
    expect(said.status).toBe("answered");
    const sum =
      (said.figures ?? []).reduce((all, each) => all + (each.value ?? Number.NaN), 0) * (bowls ?? 1);
    expect(Math.abs(sum / total_g - 1)).toBeLessThan(1e-9);
    for (const each of said.figures ?? []) expect(each.value).toBeGreaterThan(0);
  };

  test("equal", () => {
    fc.assert(
      fc.property(total, fc.integer({ min: 2, max: 100 }), (total_g, equal) =>
        adds({ equal }, total_g, equal),
      ),
    );
  });

  test("by parts", () => {
    fc.assert(fc.property(total, shares, (total_g, all) => adds({ parts: sizes(...all) }, total_g)));
  });

  test("by percentages up to a hundred, with the rest", () => {
    fc.assert(
      fc.property(total, shares, fc.double({ min: 0.01, max: 1, noNaN: true }), (total_g, all, part) => {
        const sum = all.reduce((a, b) => a + b, 0);
        adds({ percents: sizes(...all.map((each) => (each / sum) * 100 * part)) }, total_g);
      }),
    );
  });

  test("by weights up to the bowl, with the rest", () => {
    fc.assert(
      fc.property(total, shares, fc.double({ min: 0.01, max: 1, noNaN: true }), (total_g, all, part) => {
        const sum = all.reduce((a, b) => a + b, 0);
        adds({ weights: sizes(...all.map((each) => (each / sum) * total_g * part)) }, total_g);
      }),
    );
  });
});

describe("what is missing and what can't be", () => {
  test("asks for the bowl, and for the proportion", () => {
    expect(say({ equal: 3 })).toMatchObject({ status: "asking", slot: "total_g" });
    expect(say({ total_g: 300 })).toMatchObject({ status: "asking", slot: "equal" });
  });

  test.each([
    // 60 + 50 = 110 %
    { total_g: 300, percents: sizes(60, 50) },
    // 200 + 150 of 300 g
    { total_g: 300, weights: sizes(200, 150) },
    { total_g: 300, equal: 0 },
    { total_g: 300, equal: 2.5 },
    { total_g: 300, equal: 101 },
    { total_g: 300, parts: sizes(2, 0) },
    { total_g: 300, parts: sizes(2, -1) },
    { total_g: 0, equal: 2 },
  ])("%o is impossible", (inputs) => {
    const said = say(inputs);
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});

describe("as it is asked", () => {
  test.each([
    // 480 x 2 / 3
    ["480 g batter, two parts blue one part white", "blue", 320],
    // 450 / 3
    ["split 450 g of batter a third pink the rest plain", "pink", 150],
    // 350 x 40 %
    ["divide 350 g buttercream 40 % coffee 60 % caramel", "coffee", 140],
    // 500 - 150
    ["share 500 g batter out, 150 g green and the rest yellow", "yellow", 350],
    // 600 x 3 / 6
    ["split 600 g batter 3 : 2 : 1 red, yellow and green", undefined, 300],
    // 360 / 3
    ["split 360 g buttercream in three", "each", 120],
  ])("%s", async (line, name, grams) => {
    const said = await baker().one(line);
    expect(said).toMatchObject({ tool: "split", status: "answered" });
    const found = name === undefined ? said.figures?.[0]?.value : value(said, name);
    expect(found).toBeCloseTo(grams, 9);
  });

  // 480 / 3 = 160; powder color from memory, 0.3-1 % of batter: 0.48 to 1.6
  test("one of them is what the next question is about", async () => {
    const chat = baker();
    await chat.one("split 480 g batter in three");
    const said = await chat.one("how much powder color for one of them");
    expect(said.figures?.[0]?.low).toBeCloseTo(0.48, 9);
    expect(said.figures?.[0]?.high).toBeCloseTo(1.6, 9);
  });
});
