/** What is told in passing between two questions: no cake, no half, no timer; and what it leaves of the question is answered. */
import { describe, expect, it } from "vitest";
import { onlyOf, withFigures } from "../support/ask.ts";

// 3 to 5 % of 290 g
it("its only 290 now, took some out for a cake", async () => {
  const { tool, range } = await withFigures(
    "340g swiss buttercream, yuzu flavor how much",
    "sorry phone rang, its only 290 now, took some out for a cake",
  );
  expect([tool, range("flavor")]).toMatchObject(["dose", { low: expect.closeTo(8.7, 6) }]);
});

// 42 × 0.42 × 3.8² / 0.92 g, of which instant coffee is 1 to 2 %
it("no rum, half of them dont drink. instant coffee instead", async () => {
  const { range } = await withFigures(
    "filling for 42 macarons how much",
    "how much rum goes in all that",
    "no rum, half of them dont drink. instant coffee instead",
  );
  expect(range("instant coffee")?.low).toBeCloseTo(2.7687, 3);
});

// 28 for what costs 14; 14 for what costs 6.22
describe("what somebody pays", () => {
  it.each([
    [
      "ingredients $11.60 box $2.40, price at 65% margin?",
      "neighbor says shell pay $28 for it, whats the margin on that",
      50,
    ],
    ["ingredients $11.60 box $2.40, price at 65% margin?", "she'll pay 28, margin?", 50],
    [
      "$4.72 of ingredients and $1.50 for the box, price for 50 % margin",
      "sold at $14 what margin did i make on the 6.22",
      (100 * (14 - 6.22)) / 14,
    ],
  ])("%s %s", async (first, said, percent) => {
    const { tool, value } = await withFigures(first, said);
    expect([tool, value("margin")]).toEqual(["cost", expect.closeTo(percent, 6)]);
  });
});

// 8 at 3 for 8 at 0.90: one's margin is the box's
it("what sells at 3 each if they cost 90 cents, and a box of 8", async () => {
  const { value } = await withFigures("what sells at 3 each if they cost me 90 cents", "and a box of 8");
  expect([value("price"), value("cost"), value("margin")]).toEqual([24, 7.2, expect.closeTo(70, 6)]);
});

it("they want four colours so split it in 4", async () => {
  const { headline } = await onlyOf(
    "smbc. 140 g butter, what whites n sugar",
    "oh and they want four colours so split it in 4",
  );
  expect(headline).toMatch(/70 g in each of 4/);
});

it("no that last one was granulated. undo", async () => {
  const turns = ["pantry: 700 g powdered sugar", "used 260 g powdered sugar"];
  expect((await onlyOf(...turns, "no that last one was granulated. undo")).tool).toBe("undo");
});

// dark, for piping: 1.25 : 1
it("310 of the chocolate for that ganache not 260, with a timer in between", async () => {
  const { tool, value } = await withFigures(
    "dark choc 260 g, piping, how much cream",
    "bake timer 13 min",
    "310 of the chocolate for that ganache not 260",
  );
  expect([tool, value("cream")]).toEqual(["ganache", 248]);
});

it("ok forget that. batter for 26 macarons", async () =>
  expect(
    (
      await onlyOf(
        "one and a quarter times the house shell recipe",
        "ok forget that. batter for 26 macarons, normal 38 mm",
      )
    ).tool,
  ).toBe("shells"));

it.each(["they sat 3 hrs on the stall though", "3 hours in the car tho"])("%s: no timer", async (said) =>
  expect((await onlyOf(said)).headline).toMatch(/^No:/),
);
