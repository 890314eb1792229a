/**
 * Amounts that are worked out or left out before anything is asked of them: a bowl's own weight, the one that isn't
 * meant, sums of money without a sign, a share more or less. Differences and products by hand.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readings, talk } from "../support/ask.ts";

const amounts = (said: string) =>
  readings(said).flatMap((reading) =>
    reading.amounts.map(({ value, unit }) => `${Number(value.toFixed(3))} ${unit}`.trim()),
  );

describe("a bowl that is weighed full and empty", () => {
  it.each([
    ["bowl weighs 842 with buttercream in it, empty bowl is 540", ["302 g"]],
    ["my empty bowl is 350 g and with the ganache in it its 812 g", ["462 g"]],
    ["tare 312 g gross 642 g ganache", ["330 g"]],
    ["the jug weighs 412 empty, 655 with cream", ["243 g"]],
    // nothing is said of an empty one
    ["split 500 g batter, one bowl 200 the rest pink", ["500 g", "1", "200"]],
    ["the little bowl is 145 g and the big bowl 300 g", ["145 g", "300 g"]],
  ])("%s", (said, expected) => expect(amounts(said)).toEqual(expected));

  it("holds the difference, whatever the two weigh, in either order", () => {
    fc.assert(
      fc.property(fc.integer({ min: 100, max: 900 }), fc.integer({ min: 20, max: 900 }), (bowl, held) => {
        const full = bowl + held;
        expect(amounts(`the empty bowl is ${bowl} g and full it weighs ${full} g`)).toEqual([`${held} g`]);
        expect(amounts(`full it weighs ${full} g, the empty bowl is ${bowl} g`)).toEqual([`${held} g`]);
      }),
      { numRuns: 40 },
    );
  });

  it("says so with the answer: 3-5 % of 842 - 540", async () => {
    const { assumed, of } = await talk(
      "bowl weighs 842 g with buttercream in it, empty bowl is 540 g, flavor?",
    );
    expect([of("flavor")?.low, of("flavor")?.high]).toEqual([
      expect.closeTo(9.06, 9),
      expect.closeTo(15.1, 9),
    ]);
    expect(assumed?.[0]).toContain("302 g in the bowl: 842 g less the 540 g");
  });
});

describe("an amount that isn't meant", () => {
  it.each([
    ["that is 6 ounces, not half a pound", ["6 oz"]],
    ["i put 12 g instead of 9 in 250 g buttercream", ["12 g", "250 g"]],
    ["make it 3 % rather than 4 %", ["3 %"]],
    // it says what it is of, or nothing else is said
    ["200 g cream instead of 150 g milk", ["200 g", "150 g"]],
    ["not 100 g", ["100 g"]],
  ])("%s", (said, expected) => expect(amounts(said)).toEqual(expected));
});

describe("money without a sign", () => {
  it.each([
    ["almond flour 12.99 per kg, 130 g?", 12.99 * 0.13],
    ["butter is 3.49 for 250 g how much is 90 g worth", (3.49 * 90) / 250],
    ["flour costs 12 a kilo and sugar 1.5 a kilo, 130 g flour 100 g sugar how much", 1.56 + 0.15],
    ["hourly rate 15, took 3 h, ingredients 11, for 48 - cost each?", 45 + 11],
    ["cost for 36 with ingredients 12 and packaging 4", 16],
  ])("%s", async (said, cost) => expect((await talk(said)).of("cost")?.value).toBeCloseTo(cost, 9));

  it.each([
    // 24 sold at 1.80 for what costs 12.60: 1 - 12.6 / 43.2
    ["i want to sell at 1.80 each my cost is 12.60 for 24", (1 - 12.6 / 43.2) * 100],
    ["whats my profit at 2 euro each on 50, cost 38", 62],
  ])("%s", async (said, margin) => expect((await talk(said)).of("margin")?.value).toBeCloseTo(margin, 9));

  it("is no money where a bowl or a dose is weighed", () => {
    expect(amounts("how much flavoring for a 145 g bowl of buttercream")).toEqual(["145 g"]);
    expect(readings("6 for 200 g buttercream")[0]?.amounts.some((each) => each.dim === "money")).toBe(false);
  });

  it("14 dollars for 4 boxes are 3.50 a box, 7 at a margin of half", async () => {
    const cost = "the whole batch cost me $14 and fills 4 boxes, how much is that per box";
    expect((await talk(cost)).of("cost")?.value).toBe(3.5);
    expect((await talk(cost, "what do i sell one box for if i want 50 % margin")).of("price")?.value).toBe(7);
  });
});

describe("less 10 percent", () => {
  it.each([
    [["smbc from 90 g whites", "less 10 percent"], "butter", 225 * 0.9],
    [["300 g dark chocolate how much cream", "10 % more"], "cream", 240 * 1.1],
    [["whites 100 g, rest of the shell recipe", "minus 20 percent"], "almond flour", 130 * 0.8],
  ])("%s", async (turns, name, grams) =>
    expect((await talk(...turns)).of(name)?.value).toBeCloseTo(grams, 9),
  );
  it("a share that is asked for is none of it", async () =>
    expect((await talk("200 g buttercream mint flavor", "3 percent")).of("flavor")?.value).toBe(6));
});
