/** A ratio of her own takes the place of the book's; worked by hand: chocolate = ratio × cream, both add up. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const figuresOf = async (said: string) =>
  Object.fromEntries(
    ((await baker().one(said)).figures ?? []).map(({ name, value: own = Number.NaN }) => [name, own]),
  );

describe("said in words", () => {
  it.each([
    ["300 g of 2:1 dark ganache", { chocolate: 200, cream: 100 }],
    ["200 g dark chocolate, ganache 2 to 1, how much cream", { cream: 100 }],
    ["2 parts white chocolate to 1 part cream, 450 g in all", { chocolate: 300, cream: 150 }],
    ["1:2 cream to milk chocolate, 90 g cream", { chocolate: 180 }],
    ["three to two milk ganache from 100 g cream", { chocolate: 150 }],
  ])("%s", async (said, expected) => {
    const found = await figuresOf(said);
    for (const [name, grams] of Object.entries(expected)) expect(found[name]).toBeCloseTo(grams, 9);
  });

  it("two weights are no ratio to build by, but one to judge", async () => {
    const found = await figuresOf("220 g dark to 200 g cream, what's that good for");
    expect(found.ratio).toBeCloseTo(1.1, 9);
  });

  it("is what a composition goes by", async () => {
    // water of USDA SR 19903 (dark chocolate, 60-69 %) and 01053 (heavy cream)
    const found = await figuresOf("water activity of 2:1 dark ganache");
    expect(found.water).toBeCloseTo((2 * 1.25 + 57.71) / 3, 9);
  });
});

it("adds up, whatever is given", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.2, max: 10, noNaN: true }),
      fc.double({ min: 1, max: 5000, noNaN: true }),
      fc.constantFrom("chocolate_g", "cream_g", "total_g"),
      (ratio, grams, given) => {
        const outcome = answer(ganache, { chocolate: "milk", ratio, [given]: grams });
        const [chocolate, cream, total] = ["chocolate", "cream", "total"].map((name) =>
          value(outcome, name),
        ) as [number, number, number];
        expect(chocolate / cream).toBeCloseTo(ratio, 6);
        expect(chocolate + cream).toBeCloseTo(total, 6);
        expect(outcome.rule?.text).toContain("as you said");
      },
    ),
  );
});
