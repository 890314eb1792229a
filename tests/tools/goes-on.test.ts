/**
 * Bowls that change while they are spoken of. By hand: 3-5 % flavor in buttercream, 3-4 % in ganache, 10-20 % nut paste,
 * dark ganache 1.25 : 1 for piping (common practice); 33 g a white (USDA SR, NDB 01124); shells of 0.53 × 3.8² g, of
 * which 4 % stay behind; filling of 0.42 × 3.8² g, of which 8 % do (from memory).
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

describe("a flavored bowl", () => {
  it("25 g in 330, then 15 more: 40 / 330", async () => {
    const { of, headline } = await talk(
      "pistachio paste for 330 g bc",
      "right i put 25 in",
      "hm. 15 more then?",
    );
    expect(of("share")?.value).toBeCloseTo(4000 / 330, 9);
    expect(headline).toContain("within");
  });
  it("19 g in 310, then 100 g plain: 19 / 410", async () => {
    const { of } = await talk(
      "19 g of orange concentrate went into 310 g bc. what do i add to get it back",
      "only 100 g plain bc left so all of thats gone in, what percent is it now",
    );
    expect(of("share")?.value).toBeCloseTo(1900 / 410, 9);
  });
  it("50 g butter more in 250 g: 3 to 5 % of 300", async () => {
    const { of } = await talk("raspberry flavor for 250 g buttercream", "oh and another 50 g butter went in");
    expect([of("flavor")?.low, of("flavor")?.high]).toEqual([9, 15]);
  });
  it("350 of 1200 g stay plain: 3 to 5 % of 850", async () => {
    const { of } = await talk("strawberry flavor for 1,2 kg of buttercream", "350 of that stays plain");
    expect([of("flavor")?.low, of("flavor")?.high]).toEqual([25.5, 42.5]);
  });
  it("the top of the range: 4 % of 287", async () =>
    expect(
      (await talk("287 g of milk ganache, hazelnut flavour", "i like it right at the top of that")).of(
        "flavor",
      )?.value,
    ).toBeCloseTo(11.48, 9));
  it("is 5 % ok? judged by the table, not by itself", async () => {
    const { headline } = await talk("flavor for 250 g ganache", "is 5 % ok");
    expect(headline).toMatch(/5 %: over/);
  });
  it("another flavor has nothing in the bowl yet", async () => {
    const { of } = await talk(
      "put 12 g mango flavour in 200 g buttercream, is it too much",
      "and vanilla extract for the same bowl",
    );
    expect([of("vanilla extract")?.low, of("vanilla extract")?.high]).toEqual([2, 4]);
  });
  it("spoons stay spoons: 3 tsp of 4.92892159375 ml in 198 g", async () => {
    const { of } = await talk("rose extract for 198 g buttercream", "2 tsp ok?", "oops i put 3");
    expect(of("share")?.value).toBeCloseTo((3 * 4.92892159375 * 100) / 198, 6);
  });
});

describe("a ganache", () => {
  it("30 g chocolate more, and the ratio: 230 / 200", async () => {
    const { of } = await talk(
      "dark ganache way too loose to pipe, 200 g choc 200 g cream",
      "melted in 30 g more dark choc, whats the ratio now",
    );
    expect(of("ratio")?.value).toBeCloseTo(1.15, 9);
  });
  it("20 g cream too much in what was worked out: 1.25 × 260 − 300", async () => {
    const { of } = await talk(
      "300 g dark chocolate how much cream for piping",
      "too thin now, added 20 more cream",
    );
    expect(of("add chocolate")?.value).toBeCloseTo(1.25 * 260 - 300, 9);
  });
  it("no ratio for other chocolates", async () =>
    expect((await talk("200 g milk choc ganache to pipe, cream?", "and ruby chocolate?")).status).toBe(
      "declined",
    ));
});

describe("eggs, shells and parts", () => {
  it("30 g more on top of two whites: 96 g", async () =>
    expect(
      (
        await talk(
          "two egg whites, what else do i need",
          "got 30 g more whites from the carton on top of those two",
        )
      ).of("whites")?.value,
    ).toBeCloseTo(96, 9));
  it("three whites that weigh 96 g are 96 g", async () =>
    expect((await talk("3 egg whites weigh 96g, almond flour?")).of("whites")?.value).toBe(96));
  it("each of two bowls of 815 g: floor(407.5 × 0.96 / 7.6532)", async () =>
    expect(
      (await talk("split 815 g batter in two", "how many shells will i get from each bowl")).of("shells")
        ?.value,
    ).toBe(Math.floor((407.5 * 0.96) / (0.53 * 3.8 * 3.8))));
  it("a tray's number is none of its size", async () => {
    const { tool } = await talk("815 g batter how many shells", "tray 1 resting");
    expect(tool).toBe("timer");
  });
  it("33 pairs are 33 macarons", async () =>
    expect(
      (await talk("shells are sorted, 33 good pairs. filling to make?")).of("filling")?.value,
    ).toBeCloseTo((33 * 0.42 * 3.8 * 3.8) / 0.92, 9));
  it("three to one, plain to gold: named in that order", async () => {
    const { figures } = await talk("split 480 g batter three to one, plain to gold");
    expect(figures).toEqual([
      { name: "plain", value: 360, unit: "g" },
      { name: "gold", value: 120, unit: "g" },
    ]);
  });
});

describe("money and the shelf", () => {
  it("$21 a dozen, sold at $35: 40 %", async () =>
    expect(
      (await talk("costs me $21 a dozen i sell at $35 whats the margin")).of("margin")?.value,
    ).toBeCloseTo(40, 9));
  it("18 per 24 with 55 %: 18 / 0.45", async () =>
    expect(
      (await talk("whats the price if cost is 18 per 24 and i want 55% margin")).of("price")?.value,
    ).toBeCloseTo(40, 9));
  it("without the boxes: (14 + 36) / 0.7", async () => {
    const said = "€14 ingredients €3 of boxes and 3 hours at €12 an hour, i want 30 % of margin";
    expect((await talk(said)).of("price")?.value).toBeCloseTo(53 / 0.7, 9);
    expect((await talk(said, "without the boxes?")).of("price")?.value).toBeCloseTo(50 / 0.7, 9);
  });
  it("several things bought at once", async () => {
    const { ask, record } = baker();
    await ask("bought 2 kg almond flour for 28 dollars, a kilo icing sugar 3.20, butter 500g at 5.40");
    expect(record().stock.map(({ name, grams, price_per_g }) => [name, grams, price_per_g])).toEqual([
      ["almond flour", 2000, 0.014],
      ["powdered sugar", 1000, 0.0032],
      ["butter", 500, 0.0108],
    ]);
  });
});
