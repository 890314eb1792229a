/**
 * Prices talked over: a margin named without its sign, a box's price beside what all boxes cost, a list of prices, an order at
 * a known price, a discount taken back. Sums by arithmetic: price = cost / (1 − margin), margin = 1 − cost / price.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // a bare number beside "margin" is the margin, the one behind "for" how many it cost that much for: 24 / 0.6
  ["cost 24 for 30, i want 40 margin", "cost", { cost: 24, price: 40, margin: 40 }],
  ["costs me 18 for 20, want 50 margin", "cost", { cost: 18, price: 36, margin: 50 }],
  ["costs 18 for 40, want 40 margin", "cost", { price: 30, margin: 40 }],
  ["costs 9, price for a markup 60", "cost", { price: 14.4 }],
  // 24 × 6 / 30 = 4.80, / 0.6; with the box 5.60 / 0.6
  ["cost 24 for 30, i want 40 margin|per box of 6", "cost", { cost: 4.8, price: 8 }],
  ["cost 24 for 30, i want 40 margin|per box of 6|box itself 0.8", "cost", { cost: 5.6, price: 9.333333 }],
  // 9.3333 × 0.85, and back
  [
    "cost 24 for 30, i want 40 margin|per box of 6|box itself 0.8|15% off",
    "cost",
    { price: 7.933333, cost: 5.6 },
  ],
  [
    "cost 24 for 30, i want 40 margin|per box of 6|box itself 0.8|15% off|back to full price",
    "cost",
    { price: 9.333333 },
  ],
  // 5.60 / 0.5
  [
    "cost 24 for 30, i want 40 margin|per box of 6|box itself 0.8|15% off|back to full price|no 50 margin",
    "cost",
    { cost: 5.6, price: 11.2 },
  ],
  ["sell at 2.5 each cost 0.9|what must i charge for 70 margin", "cost", { cost: 0.9, price: 3 }],
  // the discount was off the price that gave way: 9 / 0.4
  [
    "box of 12 costs me 9, sell for 20|20 percent off|what do i charge for 60 margin",
    "cost",
    { cost: 9, price: 22.5 },
  ],
  ["cost 4.20|what price for 60 margin", "cost", { cost: 4.2, price: 10.5 }],
  ["cost 4.20|what price for 60 margin|margin 60", "cost", { cost: 4.2, price: 10.5 }],
  // a price with the question for its margin, and a cost before "sell": 11 / 20, 15 / 25
  ["cost 9 sell at 20 margin?", "cost", { margin: 55, price: 20 }],
  ["cost 10 sell for 25", "cost", { margin: 60, cost: 10, price: 25 }],
  // 12 × 11 = 132 for what costs 38; ten of them paid for; 12 × 9
  ["12 boxes of 6, cost 38, sell 11 a box", "cost", { margin: 71.212121, price: 132, cost: 38 }],
  ["12 boxes of 6, cost 38, sell 11 a box|margin?", "cost", { margin: 71.212121 }],
  [
    "12 boxes of 6, cost 38, sell 11 a box|margin?|what if i give 2 boxes free",
    "cost",
    { margin: 65.454545, price: 110 },
  ],
  [
    "12 boxes of 6, cost 38, sell 11 a box|margin?|what if i give 2 boxes free|and at 9 a box",
    "cost",
    { margin: 64.814815, price: 108 },
  ],
  ["12 boxes of 6 at 11, cost 38", "cost", { margin: 71.212121, price: 132 }],
  ["sold 10 boxes at 12, cost 45", "cost", { margin: 62.5, price: 120 }],
  // 180 for what costs 60
  ["20 boxes of 4 at 9 each cost 60", "cost", { margin: 66.666667, price: 180 }],
  // 10.20 / 0.4
  ["ingredients 9 box 1.20 margin 60", "cost", { cost: 10.2, price: 25.5 }],
  // a box's share of it, nine paid for: 38 / 9 / 0.4
  [
    "12 boxes of 6 at 11, cost 38|give away 3|what should i charge for 60 margin",
    "cost",
    { price: 10.555556 },
  ],
  ["12 boxes of 6, cost 8, sell 11 a box|all of them", "cost", { margin: 93.939394, price: 132 }],
  ["12 boxes of 6, cost 8, sell 11 a box|one box", "cost", { margin: 27.272727, price: 11 }],
  // 12 × 0.65 = 7.80 of 30, 6 × 0.65 = 3.90 of 16
  [
    "price list: 12 pack 30, 6 pack 16|cost 0.65 each",
    "cost",
    { "margin of 12": 74, "cost of 12": 7.8, "margin of 6": 75.625, "cost of 6": 3.9 },
  ],
  ["price list: 12 pack 30, 6 pack 16|cost 0.65 each|margin on the 12", "cost", { margin: 74, price: 30 }],
  [
    "price list: 12 pack 30, 6 pack 16|cost 0.65 each|margin on the 12|on the 6",
    "cost",
    { margin: 75.625, price: 16 },
  ],
  ["price list: 6 for 14, 12 for 26|cost 0.7 each|margin on the 6", "cost", { margin: 70, price: 14 }],
  // 9 for 12 is 4.50 for 6
  ["prices: box of 6 15, box of 12 28|cost 9|12|margin on the 6", "cost", { margin: 70, cost: 4.5 }],
  // 1.50 × 40, less a tenth
  ["price 18 for 12|customer wants 40", "cost", { price: 60, "price per macaron": 1.5 }],
  ["price 18 for 12|customer wants 40|10% off", "cost", { price: 54 }],
  ["price 18|customer wants 40|12", "cost", { price: 60 }],
  // 18 × 30 / 12 = 45 for what costs 6 × 30 / 12 = 15
  ["sell 12 for 18, cost 6 for 12|she orders 30", "cost", { price: 45, cost: 15, margin: 66.666667 }],
  // 6 × 0.70 + 1.20, 12 × 0.70 + 1.20, each / 0.5, and a tenth off
  ["cost 0.70 a mac, box 1.20, 6 in a box, margin 50", "cost", { cost: 5.4, price: 10.8 }],
  ["cost 0.70 a mac, box 1.20, 6 in a box, margin 50|no 12 in a box", "cost", { cost: 9.6, price: 19.2 }],
  ["cost 0.70 a mac, box 1.20, 6 in a box, margin 50|no 12 in a box|minus 10%", "cost", { price: 17.28 }],
  // (5 + 0.90) / 0.55
  ["cost 5 a dozen, 45 margin, box 0.9|10% off", "cost", { price: 9.654545, cost: 5.9 }],
  // 56 / 8; 46 / 8, 60 / 12 and 45 / 6, up to a whole box
  ["how many boxes of 8 from 60|and if 4 break", "shells", { boxes: 7 }],
  ["how many boxes of 8 from 60|and if 4 break|what if 6 break|and if 14 break", "shells", { boxes: 6 }],
  ["how many boxes of 12 for 63|i lost 1|and 2 for us", "shells", { boxes: 5 }],
  ["how many boxes of 6 from 50 if 5 crack", "shells", { boxes: 8 }],
];

describe("prices said later", () => {
  it.each(cases)("%s", expectFigures);

  it("asks whose cost it is where one box or all of them may be meant", async () => {
    const answer = await baker().one("12 boxes of 6, cost 8, sell 11 a box");
    expect(answer.status).toBe("asking");
    expect(answer.headline).toContain("one box");
  });

  it("says that all boxes are in the cost, and how many of them are paid for", async () => {
    const one = baker();
    await one.ask("12 boxes of 6, cost 38, sell 11 a box");
    const answer = await one.one("what if i give 2 boxes free");
    expect(answer.assumed).toEqual(["$38.00 is what all 12 boxes cost, 10 of them paid for"]);
  });

  it("takes no size of a pack for a price", async () => {
    const answer = await baker().one("price list: 12 pack 30, 6 pack 16");
    expect(answer.status).toBe("asking");
  });
});
