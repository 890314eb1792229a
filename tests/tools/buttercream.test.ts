/** Meringue buttercream, whites 100 : sugar 150 : butter 250 (common practice), from any of its parts. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { buttercream } from "../../src/tools/buttercream/buttercream.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>) => answer(buttercream, inputs);
const all = (inputs: Record<string, unknown>) => {
  const said = say(inputs);
  return ["whites", "sugar", "butter", "total"].map((name) => value(said, name));
};
const near = (got: number[], want: number[]) =>
  got.forEach((each, at) => {
    expect(each).toBeCloseTo(want[at] ?? Number.NaN, 9);
  });

describe("by hand", () => {
  test.each([
    // 90 x 1.5, x 2.5, x 5
    [{ whites_g: 90 }, [90, 135, 225, 450]],
    // 180 / 1.5 = 120
    [{ sugar_g: 180 }, [120, 180, 300, 600]],
    // 400 / 2.5 = 160
    [{ butter_g: 400 }, [160, 240, 400, 800]],
    // 600 / 5 = 120
    [{ total_g: 600 }, [120, 180, 300, 600]],
    // USDA SR, NDB 01124: 4 x 33 = 132
    [{ whites_count: 4 }, [132, 198, 330, 660]],
    // 24 x 0.42 x 3.8^2 / 0.92 = 158.2121739 in all (from memory), / 5 = 31.6424348
    [{ macarons: 24 }, [31.6424347826, 47.4636521739, 79.1060869565, 158.212173913]],
  ])("%o", (inputs, want) => {
    near(all(inputs), want);
  });

  // whites 90 make 450, butter 200 makes 400: the butter runs out first
  test("of two parts the one that makes less sets the size, and is named", () => {
    near(all({ whites_g: 90, butter_g: 200 }), [80, 120, 200, 400]);
    expect(say({ whites_g: 90, butter_g: 200 }).assumed?.join()).toMatch(/butter run out first/);
  });

  // USDA FSIS egg safety: 160 °F (71 °C)
  test("the whites are heated to 71 °C (160 °F), in every answer, and asked for alone", () => {
    expect(say({ whites_g: 90 }).cautions?.join()).toMatch(/71 °C \(160 °F\).*authority/);
    const heat = say({ asks_heat: true });
    expect(heat.figures?.map((each) => [each.value, each.unit])).toEqual([
      [71, "°C"],
      [160, "°F"],
    ]);
    expect(heat.rule).toMatchObject({ basis: "published", source: expect.stringContaining("FSIS") });
  });

  test("the rule is common practice", () => {
    expect(say({ whites_g: 90 }).rule?.basis).toBe("common practice");
  });
});

test("from whichever part, it is the same buttercream", () => {
  fc.assert(
    fc.property(fc.double({ min: 1, max: 10_000, noNaN: true }), (whites_g) => {
      const first = all({ whites_g });
      const [, sugar_g, butter_g, total_g] = first;
      for (const known of [{ sugar_g }, { butter_g }, { total_g }])
        all(known).forEach((each, at) => {
          expect(Math.abs(each / (first[at] ?? 0) - 1)).toBeLessThan(1e-9);
        });
    }),
  );
});

describe("what is missing and what can't be", () => {
  test("nothing known: asks", () => {
    expect(say({})).toMatchObject({ status: "asking", slot: "total_g" });
  });

  test.each([
    { whites_g: 0 },
    { butter_g: -10 },
    { total_g: 0 },
    { whites_count: 0 },
    { whites_count: -2 },
    { macarons: 0 },
  ])("%o is impossible", (inputs) => {
    const said = say(inputs);
    expect(said.status).toBe("impossible");
    expect(said.figures ?? []).toEqual([]);
  });
});

describe("as it is asked", () => {
  test.each([
    ["smbc from 90 g whites", "butter", 225],
    ["400 g butter for swiss meringue buttercream, how much sugar and whites", "whites", 160],
    ["600 g swiss meringue buttercream, what goes in", "sugar", 180],
    ["buttercream with 4 egg whites", "butter", 330],
  ])("%s", async (line, name, grams) => {
    expect(value(await baker().one(line), name)).toBeCloseTo(grams, 9);
  });
});
