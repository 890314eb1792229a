/** Cost and price. The arithmetic is culinary practice; worked examples are named beside each check. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Formula, Stock } from "../../src/tools/contract/index.ts";
import { cost } from "../../src/tools/cost/cost.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more = {}) => answer(cost, inputs, more);
const stock = (name: string, price_per_g: number, more: Partial<Stock> = {}): Stock => ({
  id: 1,
  name,
  grams: 0,
  price_per_g,
  currency: "USD",
  ...more,
});

describe("published examples", () => {
  // culinary arithmetic: from 100 to 125 the markup is 25 % and the margin 20 %
  test("100 sold at 125", () => {
    const said = say({ cost: 100, price: 125 });
    expect(value(said, "markup")).toBeCloseTo(25, 12);
    expect(value(said, "margin")).toBeCloseTo(20, 12);
  });

  // Gisslen, Professional Cooking: a cost of 0.99 at a food cost of 36 % is 2.75
  test("0.99 at 36 %", () => {
    expect(value(say({ ingredients: 0.99, food_cost_percent: 36 }), "price")).toBeCloseTo(2.75, 10);
  });

  // price = cost / (1 - margin): 12 / 0.4 = 30
  test("12 at a margin of 60 %", () => {
    expect(value(say({ cost: 12, margin_percent: 60 }), "price")).toBeCloseTo(30, 12);
  });
});

describe("in words", () => {
  test.each([
    [
      "$8.40 of ingredients and $3.60 for boxes, what do i charge for a 60% margin",
      { cost: 12, price: 30 },
      "USD",
    ],
    [
      "ingrediants caem to $9.20 boxes were $2.80 and i want a 70 percent margin what do i charge",
      { cost: 12, price: 40 },
      "USD",
    ],
    [
      "€10 ingredients, €2.50 packaging, two hours work at €15 an hour, price with 40 % margin",
      { cost: 42.5, price: 42.5 / 0.6 },
      "EUR",
    ],
    [
      "€14 for ingredients, €3,20 packaging and an hour and a half of my time at €16 an hour. What price leaves me a 20 % margin?",
      { cost: 41.2, price: 51.5 },
      "EUR",
    ],
    [
      "how much should i charge for a box that costs me $6.40 if i want 20% margin",
      { cost: 6.4, price: 8 },
      "USD",
    ],
    ["price for a 200 % markup on $4", { cost: 4, price: 12 }, "USD"],
    ["what price gives me a 30 % food cost if ingredients are $4.50", { price: 15 }, "USD"],
    [
      "it costs me $16 to make 24, what do i charge each at 60% margin",
      { price: 40, "price per macaron": 40 / 24 },
      "USD",
    ],
  ])("%s", async (line, figures, unit) => {
    const said = await baker().one(line);
    expect(said.tool).toBe("cost");
    for (const [name, amount] of Object.entries(figures))
      expect(value(said, name, unit)).toBeCloseTo(amount, 9);
  });

  test.each([
    ["a box costs me $18 and sells at $45, whats my margin", "margin", 60],
    ["what's the markup if it costs 5 and sells for 12", "markup", 140],
    ["i spend $6 on ingredients and it sells for $24 whats my food cost percent", "food cost", 25],
    ["what's my profit on a $25 box that costs me $9", "margin", 64],
    [
      "A box of six costs me £3.50 and I ask £9.80 for it, what's my margin?",
      "margin",
      (1 - 3.5 / 9.8) * 100,
    ],
  ])("%s", async (line, name, share) => {
    expect(value(await baker().one(line), name)).toBeCloseTo(share, 9);
  });

  // 130 x 0.016 + 130 x 0.002 + 100 x 0.0015 + 100 x 0.006 = 2.08 + 0.26 + 0.15 + 0.6 = 3.09
  test("a batch line by line", async () => {
    const said = await baker().one(
      "130 g almond flour at $16 a kilo, 130 g powdered sugar at $2 a kilo, 100 g sugar at $1.50 a kilo, 100 g whites at $6 a kilo, what did that batch cost",
    );
    expect(value(said, "cost")).toBeCloseTo(3.09, 10);
  });

  // 453.59237 g a pound, NIST SP 811, B.8: 200 x 6 / 453.59237; 10 lb for 95: 130 x 95 / 4535.9237
  test.each([
    ["200 g almond flour at $6 a pound, whats it cost", (200 * 6) / 453.59237],
    ["if 10 lb of almond flour costs $95 what does 130 g cost me", (130 * 95) / 4535.9237],
    ["almond flour is $9 for a 500 g bag, what do 130 g cost", 2.34],
    ["i pay $14 per kilo for butter, what does 250 g come to", 3.5],
  ])("%s", async (line, amount) => {
    expect(value(await baker().one(line), "cost")).toBeCloseTo(amount, 9);
  });
});

describe("follow-ups", () => {
  test("another margin, then the price changed, then the markup", async () => {
    const { one } = baker();
    await one("costs me $18 and sells at $45, margin?");
    expect(value(await one("and the markup"), "markup")).toBeCloseTo(150, 9);
    expect(value(await one("what if i sell it at 40"), "margin")).toBeCloseTo(55, 9);
    expect(value(await one("65 percent margin then"), "price")).toBeCloseTo(18 / 0.35, 9);
    expect(value(await one("and 50"), "price")).toBeCloseTo(36, 9);
  });

  test("new lines start afresh", async () => {
    const { one } = baker();
    await one("$11 ingredients, $4 boxes, price for 40 percent margin");
    expect(value(await one("200 g butter at $10 a kilo, whats it cost"), "cost")).toBeCloseTo(2, 12);
  });

  test("what is missing is asked for, and the answer taken", async () => {
    const { one } = baker();
    expect(await one("I'd like a 65 % margin on my gift boxes, what do I charge?")).toMatchObject({
      status: "asking",
    });
    expect(value(await one("a box costs me £4.55"), "price", "GBP")).toBeCloseTo(13, 9);
  });
});

describe("from the shelf", () => {
  test("a price that is saved is used, and named as your bench", () => {
    const said = say(
      { lines: [{ name: "almond flour", grams: 260 }], want: "cost" },
      { stock: [stock("almond flour", 0.014, { currency: "GBP" })] },
    );
    expect(value(said, "cost", "GBP")).toBeCloseTo(3.64, 12);
    expect(said.rule?.basis).toBe("your bench");
  });

  test("a missing price is asked for by name until all are known", async () => {
    const saved: Formula = {
      id: 1,
      name: "cloud",
      lines: [
        { name: "whites", grams: 100 },
        { name: "butter", grams: 250 },
      ],
    };
    const { one } = baker({ record: { formulas: [saved] } });
    expect((await one("what does a batch of cloud cost me")).question).toContain("whites");
    expect((await one("$6 a kilo")).question).toContain("butter");
    // 100 x 0.006 + 250 x 0.01
    expect(value(await one("10"), "cost")).toBeCloseTo(3.1, 12);
  });

  test("two currencies don't add up", async () => {
    expect((await baker().one("$8 ingredients and €2 boxes, what's the total cost")).status).toBe(
      "impossible",
    );
    const mixed = say(
      { lines: [{ name: "butter", grams: 10 }], packaging: 1, currency: "EUR" },
      { stock: [stock("butter", 0.01)] },
    );
    expect(mixed.status).toBe("impossible");
  });
});

describe("currency", () => {
  test.each([
    [{ cost: 5, price: 10, bare_sign: "$", currency: "USD" }, "AUD", "AUD"],
    [{ cost: 5, price: 10, bare_sign: "$", currency: "USD" }, "GBP", "USD"],
    [{ cost: 5, price: 10, bare_sign: "" }, "GBP", "GBP"],
    [{ cost: 5, price: 10, currency: "EUR" }, "GBP", "EUR"],
    [{ cost: 5, price: 10 }, undefined, "USD"],
  ])("%j with the bench at %s is %s", (inputs, currency, unit) => {
    expect(value(say(inputs, { bench: { currency } }), "price", unit)).toBe(10);
  });

  test("the bench set in words counts for a number without a sign", async () => {
    const { one } = baker();
    await one("Set my currency to pounds please");
    const said = await one("Ingredients cost 6.50 and the boxes 1.50; what price gives a 50 % margin?");
    expect(value(said, "cost", "GBP")).toBe(8);
    expect(value(said, "price", "GBP")).toBe(16);
  });
});

describe("said loosely", () => {
  test.each([
    ["cost 7 sell 20 margin", "margin", 65],
    ["how much profit at 24 dollars if it costs me 9", "margin", 62.5],
    ["what to charge, cost $9, margin 55", "price", 20],
    [
      "ingredients are six dollars fifty and the box is one dollar fifty, whats the price for half margin",
      "price",
      16,
    ],
    ["labor 1.5 hours at 20 dollars and ingredients 13 dollars, total cost", "cost", 43],
    ["price per macaron if 36 cost me $27", "cost per macaron", 0.75],
    ["ingredients $15, packaging $4, labor $30, sell at 3 times cost", "price", 147],
  ])("%s", async (line, name, amount) => {
    expect(value(await baker().one(line), name)).toBeCloseTo(amount, 9);
  });
});

describe("what can't be", () => {
  test.each([100, 110, 400])("a margin of %s %%", (margin_percent) => {
    const said = say({ cost: 12, margin_percent });
    expect(said.status).toBe("impossible");
    expect(said.figures).toBeUndefined();
  });
  test("costs me $12, what price gives a 100 % margin", async () => {
    expect(await baker().one("costs me $12, what price gives a 100 % margin")).toMatchObject({
      tool: "cost",
      status: "impossible",
    });
  });
  test("a price of nothing", () => {
    expect(say({ cost: 5, price: 0 }).status).toBe("impossible");
  });
});

describe("laws", () => {
  const sum = fc.double({ min: 0.01, max: 1e6, noNaN: true });
  test("margin and price undo each other, and so do markup and price", () => {
    fc.assert(
      fc.property(sum, fc.double({ min: 0, max: 99, noNaN: true }), (amount, share) => {
        const price = value(say({ cost: amount, margin_percent: share }), "price");
        expect(value(say({ cost: amount, price, want: "margin" }), "margin")).toBeCloseTo(share, 6);
        const marked = value(say({ cost: amount, markup_percent: share }), "price");
        expect(value(say({ cost: amount, price: marked, want: "markup" }), "markup")).toBeCloseTo(share, 6);
      }),
    );
  });
  test("the order of lines doesn't change the cost", () => {
    const line = fc.record({
      name: fc.constantFrom("butter", "sugar", "whites"),
      grams: fc.double({ min: 1, max: 1e4, noNaN: true }),
      price_per_g: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(line, { minLength: 1, maxLength: 6 }), (lines) => {
        const [there, back] = [lines, [...lines].reverse()].map((each) =>
          value(say({ lines: each, want: "cost" }), "cost"),
        );
        expect(back).toBeCloseTo(there ?? 0, 6);
      }),
    );
  });
});

describe("for how many a sum is", () => {
  test.each([
    // 12 x 0.80 = 9.60; 1 - 9.60 / 30 = 68 %
    ["a dozen sells for $30, each costs 80 cents, margin?", "margin", 68],
    // 6 x 0.45 = 2.70; 1 - 2.70 / 12 = 77.5 %
    ["each macaron costs 45 cents, box of 6 sells for 12 dollars, margin", "margin", 77.5],
    // 24 x 2 = 48; 1 - 16 / 48 = 66.67 %
    ["24 macarons cost me $16 and I sell them at $2 each, margin?", "margin", 200 / 3],
    // 8 boxes, 120; 1 - 20 / 120 = 83.33 %
    ["48 macarons cost $20, sold in boxes of 6 for $15, what's my margin", "margin", 250 / 3],
    // 11 / 60 = 18.33 %
    ["my costs are 11 dollars for 24, i charge 2.50 apiece, food cost?", "food cost", 55 / 3],
    ["i sell boxes of 6 at $15 each and a box costs me $5, margin", "margin", 200 / 3],
    ["a macaron costs 70 cents and sells for 2.20, what's the markup", "markup", (2.2 / 0.7 - 1) * 100],
    ["took $30 for a box that cost me $10.50 what margin is that", "margin", 65],
  ])("%s", async (line, name, share) => {
    expect(value(await baker().one(line), name)).toBeCloseTo(share, 9);
  });

  test.each([
    // 12 x 0.60 / 0.3 = 24
    ["each macaron costs me 60p, I want a 70% margin, price for a box of 12", "price", 24, "GBP"],
    // 12 x 0.60 / 0.35
    ["costs 60 cents each, what should a dozen sell for at a 65 % margin", "price", 7.2 / 0.35, "USD"],
    // 2.70 + 0.45 + 2.20
    [
      "the batch took 150 g almond flour at €18 a kilo, 150 g powdered sugar at €3 a kilo and 200 g butter at €11 a kilo. total cost?",
      "cost",
      5.35,
      "EUR",
    ],
    // 9 + 6 x 1.20
    ["ingredients $9, packaging $1.20 a box, 6 boxes, total cost", "cost", 16.2, "USD"],
  ])("%s", async (line, name, amount, unit) => {
    expect(value(await baker().one(line), name, unit)).toBeCloseTo(amount, 9);
  });

  test("one against a box of nobody knows how many: it asks", async () => {
    const { one } = baker();
    expect(await one("each macaron costs 50 cents, a box sells for $12, margin")).toMatchObject({
      tool: "cost",
      status: "asking",
    });
    // 1 - 6 / 12
    expect(value(await one("12"), "margin")).toBeCloseTo(50, 9);
  });

  test("law: the margin of one is that of all of them", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 5, noNaN: true }),
        fc.double({ min: 0.5, max: 500, noNaN: true }),
        fc.integer({ min: 2, max: 96 }),
        (cost_each, price, many) => {
          const each = say({ cost: cost_each, cost_for: 1, price, price_for: many, want: "margin" });
          const all = say({ cost: cost_each * many, price, want: "margin" });
          expect(value(each, "margin")).toBeCloseTo(value(all, "margin"), 6);
        },
      ),
    );
  });
});

describe("what a change does", () => {
  test("another price, cost or ingredient price is held against the answer before", async () => {
    const { one } = baker();
    await one("a box costs me $9 and sells for $25, margin");
    // 70 - 64
    expect(value(await one("what if I sell it at 30"), "change", "%")).toBeCloseTo(6, 9);
    const bill = baker();
    await bill.one(
      "120 g almond flour at 15 euro a kilo and 200 g butter at 9 euro a kilo, what does the batch cost",
    );
    const said = await bill.one("and if butter is 12 euro per kilo");
    // 1.80 + 2.40, which is 0.60 more
    expect(value(said, "cost", "EUR")).toBeCloseTo(4.2, 9);
    expect(value(said, "change", "EUR")).toBeCloseTo(0.6, 9);
  });

  // size goes by d²: 45² / 38² = 1.402354..., from memory
  test("size and filling, from the shelf's prices", async () => {
    const { one } = baker({
      record: {
        stock: [
          "almond flour",
          "powdered sugar",
          "granulated sugar",
          "whites",
          "butter",
          "dark chocolate",
          "cream",
        ].map((name, at) => ({ ...stock(name, 0.01), id: at + 1 })),
      },
    });
    const small = value(await one("what do 36 macarons with dark ganache cost me"), "cost");
    const large = value(await one("and at 45 mm"), "cost");
    expect(large / small).toBeCloseTo(45 ** 2 / 38 ** 2, 9);
    // everything costs the same a gram, so another filling changes nothing
    expect(value(await one("and with buttercream"), "cost")).toBeCloseTo(large, 9);
    // 70 % margin
    expect(value(await one("what should I charge for those at a 70 % margin"), "price")).toBeCloseTo(
      large / 0.3,
      9,
    );
  });
});
