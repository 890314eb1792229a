/** A question that goes on from one before, with a timer or a conversion in between; and the one that is named of two. */
import { describe, expect, it } from "vitest";
import { onlyOf, withFigures } from "../support/ask.ts";

const between = ["timer 5 min", "9 oz in g", "note: lemon, good feet"];

// $9.00 / (1 - 0.7)
it.each(["and the price at 70 %?", "what's the price at 70 percent", "the charge at 70 %"])(
  "%s, whatever was asked in between",
  async (said) => {
    for (const other of between) {
      const { tool, value } = await withFigures(
        "$9 a box all in, what do i charge at 55% margin",
        other,
        said,
      );
      expect([tool, value("price")]).toEqual(["cost", expect.closeTo(30, 6)]);
    }
  },
);

// 3 to 4 % of the same 230 g, where buttercream takes 3 to 5 %
it.each(["and if the buttercream was ganache?", "what if it were ganache", "so if that was ganache instead"])(
  "%s",
  async (said) => {
    for (const other of [undefined, ...between]) {
      const turns = ["230 g buttercream, orange flavor?", ...(other ? [other] : []), said];
      const { tool, range } = await withFigures(...turns);
      expect([tool, range("flavor")?.low, range("flavor")?.high]).toEqual([
        "dose",
        expect.closeTo(6.9, 6),
        expect.closeTo(9.2, 6),
      ]);
    }
  },
);

describe("of two that were sized together, the one that is named", () => {
  it("filling for 45 of those", async () => {
    const { tool, value } = await withFigures(
      "batter and filling for 30 macarons, piped 4 cm",
      "filling for 45 of those",
    );
    // 45 × 0.42 × 4² / 0.92
    expect([tool, value("filling")]).toEqual(["fill", expect.closeTo(328.6957, 3)]);
  });

  it("both, where neither is named", async () => {
    const turns = ["batter and filling for 30 macarons, piped 4 cm", "for 45 now"];
    await expect(onlyOf(...turns)).rejects.toThrow("2 answers");
  });
});

// minutes, whatever was sized before the timer
it.each([
  ["ganache 210 g dark and cream to pipe", "and 14 for tray one"],
  ["how many macs does 378 g filling fill", "14 for the second tray too"],
])("%s, a timer, %s", async (sized, said) => {
  const { tool, value } = await withFigures(sized, "timer 30 min for it", said);
  expect([tool, value("left")]).toEqual(["timer", 14]);
});

describe("of the ganache that was worked out", () => {
  const built = "ganache with 210 g dark and cream to pipe";
  it.each(["it looks greasy now", "now its all oily", "looks greasy"])("%s: it has split", async (said) => {
    const { tool, headline } = await onlyOf(built, said);
    expect([tool, headline]).toEqual(["trouble", expect.stringMatching(/^Split ganache/)]);
  });

  it("oily tops are the shells'", async () =>
    expect((await onlyOf(built, "the tops are oily")).headline).toMatch(/oily tops/));

  // 3 to 4 % of 210 + 168 g
  it.each(["swirl some raspberry in, grams?", "stir some raspberry in, how much", "and raspberry"])(
    "%s",
    async (said) => {
      const { range } = await withFigures(built, said);
      expect([range("flavor")?.low, range("flavor")?.high]).toEqual([
        expect.closeTo(11.34, 6),
        expect.closeTo(15.12, 6),
      ]);
    },
  );
});

// a large egg counts as 50 g (USDA SR, NDB 01123)
it("eggs on the shelf are told by their number too", async () => {
  const { headline, value } = await withFigures("bought 12 eggs", "used 4 eggs", "no i used 5");
  expect([headline, value("egg left")]).toEqual([expect.stringContaining("7 eggs"), 350]);
});
