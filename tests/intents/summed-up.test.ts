/** "i found another 50 g, so 325": only the sum counts, whatever unit it is said in. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { readings } from "../support/ask.ts";

const amounts = (said: string) =>
  readings(said).flatMap((reading) => reading.amounts.map(({ value, unit }) => `${value} ${unit}`.trim()));

it.each([
  ["i found another 50 g of it, so 325", ["325 g"]],
  ["and if i find another 4 g, so 16 g of it", ["16 g"]],
  ["add a dozen, so 54", ["54"]],
  ["50 g more, so that's 275 g", ["275 g"]],
  // nothing was added, or what follows is no sum of it
  ["my oven runs 10 hot so 150 c", ["10", "150 °C"]],
  ["another 300 g, so 100 g too much", ["300 g", "100 g"]],
])("%s", (said, expected) => expect(amounts(said)).toEqual(expected));

it("reads the same as the sum said alone", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 201, max: 900 }), (added, sum) => {
      expect(amounts(`i found another ${added} g of it, so ${sum}`)).toEqual([`${sum} g`]);
      expect(amounts(`add ${added} g more so now ${sum} g`)).toEqual([`${sum} g`]);
    }),
    { numRuns: 50 },
  );
});
