/** A difference said instead of a sum: "10 less", "one more bowl". By hand: 3-5 % flavor, dark 1.5 : 1 at most. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

/** What the second turn is answered with, as a figure's low end or value. */
const second = async (name: string, ...turns: string[]) => {
  const found = (await talk(...turns)).of(name);
  return found?.low ?? found?.value;
};

describe("a difference to what was worked out", () => {
  it.each([
    ["how much flavor for 230 g buttercream", "20 g less", "flavor", 6.3],
    ["how much flavor for 230 g buttercream", "and with 30 g more buttercream", "flavor", 7.8],
    ["batter for 40 macarons", "10 fewer", "shells", 66],
    ["cream for 200 g dark chocolate", "20 g less chocolate", "cream", 120],
    ["split 480 g batter in 3 bowls", "one more bowl", "each", 120],
    ["split 480 g batter in 3 bowls", "one less bowl", "each", 240],
  ])("%s / %s", async (first, then, figure, value) =>
    expect(await second(figure, first, then)).toBeCloseTo(value, 9),
  );

  it("is said to have been taken so", async () =>
    expect((await talk("batter for 40 macarons", "10 fewer")).assumed?.[0]).toContain("10 fewer than 40"));

  it("undoes itself", async () =>
    fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 20, max: 200 }),
        fc.integer({ min: 1, max: 19 }),
        async (count, step) => {
          const turns = [`batter for ${count} macarons`, `${step} more`, `${step} fewer`];
          expect(await second("macarons", ...turns)).toBe(count);
        },
      ),
      { numRuns: 20 },
    ));

  it("in ounces: 200 g less 28.35 g, at 1.5 : 1", async () =>
    expect(await second("cream", "cream for 200 g dark chocolate", "1 oz less chocolate")).toBeCloseTo(
      (200 - 28.349523125) / 1.5,
      9,
    ));

  it.each([
    ["batter for 24 macarons", "30 fewer"],
    ["how much flavor for 230 g buttercream", "300 g less"],
  ])("below nothing can't be: %s / %s", async (first, then) =>
    expect((await talk(first, then)).status).toBe("impossible"),
  );

  it("of what nobody weighed is no weight by itself", async () =>
    expect((await talk("cream for 200 g milk chocolate", "30 g less cream")).figures ?? []).toEqual([]));
});

describe("a bowl of a bare number", () => {
  it.each(["split 480 in 3", "split 480 three ways", "480 in 3 bowls", "splitting 480 between 3"])(
    "%s",
    async (say) => {
      expect(await second("each", say)).toBeCloseTo(160, 9);
    },
  );
});
