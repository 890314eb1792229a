/**
 * The same cups of another thing, plain sums in any wording, a share of the last answer in another unit, and what takes
 * the place of what is gone. Worked by hand: a cup of almond flour 95 g, powdered sugar 120 g, granulated 200 g, a
 * tablespoon of cream 15 g (USDA SR28), an ounce 28.349523125 g; shells 0.53 d² g of batter over 0.96, filling 0.42 d² over 0.92 in 60 and
 * 40 % (from memory); milk ganache 2 : 1, dark 1.25 : 1 (common practice); a white 33 g (USDA SR, NDB 01124); buttercream
 * 100 : 150 : 250; of the finished weight base × p / (100 − p).
 */
import { describe, expect, it, test } from "vitest";
import { baker } from "../support/ask.ts";
import { type Case, expectFigures, expectIn } from "../support/figures.ts";

const ring = "ring of buttercream and jam center for 40 macarons, how much of each";

const cases: Case[] = [
  // the measure of before, and another thing in it
  ["2 1/4 cups of almond flour in grams|and powdered sugar, same cups", "convert", { result: 270 }],
  ["2 cups of almond flour in grams|same cups but sugar", "convert", { result: 400 }],
  ["2 cups of almond flour in grams|powdered sugar, also that many cups", "convert", { result: 240 }],
  ["3 tbsp butter in grams|cream, same spoons", "convert", { result: 45 }],
  ["how many cups is 500 g granulated sugar|same grams of almond flour", "convert", { result: 5.263158 }],
  // a share of it, in another unit: 95, 380 and 142.5 g
  ["2 cups of almond flour in grams|half of that, in ounces", "convert", { result: 3.351026 }],
  ["2 cups of almond flour in grams|double that, in ounces", "convert", { result: 13.404106 }],
  ["2 cups of almond flour in grams|and three quarters of that, ounces", "convert", { result: 5.02654 }],
  ["2 cups almond flour in grams|double that|no, triple that", "convert", { result: 570 }],
  // arithmetic
  ["17 times 24 is what", "convert", { result: 408 }],
  ["what does 17 times 24 come to", "convert", { result: 408 }],
  ["how much does 12 plus 19 make", "convert", { result: 31 }],
  ["what would 144 divided by 6 be", "convert", { result: 24 }],
  ["45 off 300 is what", "convert", { result: 255 }],
  ["take 45 off 300", "convert", { result: 255 }],
  ["what do you get when you multiply 17 by 24", "convert", { result: 408 }],
  ["my arithmetic isn't what it was. what is two thirds of 285?", "convert", { result: 190 }],
  ["i never learned how to do fractions. what's 3/8 of 400?", "convert", { result: 150 }],
  ["my head is mush, what's 17 times 24", "convert", { result: 408 }],
  ["numbers aren't my strong suit. whats 3 times 130", "convert", { result: 390 }],
  ["5% of 640? and 640 / 16", "convert", { result: 40 }],
  ["a third of 435 and half of 120", "convert", { result: 60 }],
  ["2 and 3/4 cups of sugar in grams", "convert", { result: 550 }],
  ["how many grams is 1 cup of honey, and half a cup?", "convert", { result: 169.5 }],
  // so many shells, and what is asked behind them
  ["i need exactly 84 shells, batter in grams?", "shells", { batter: 669.655 }],
  ["gotta have 60 shells, batter in g", "shells", { batter: 478.325 }],
  ["i need exactly 84 shells, batter in grams?|trays for that", "shells", { trays: 3 }],
  ["i need 50 macarons, batter in grams?", "shells", { batter: 876.929167 }],
  ["20 ppl r coming n they get 3 macs each so 60 macs how much batter", "shells", { batter: 1052.315 }],
  // of the same order: the two fillings stay two
  [`${ring}|they'll be bigger than usual, 4.5 cm.`, "fill", { ring: 221.869565, center: 147.913043 }],
  [`${ring}|they'll be smaller than normal, 3 cm`, "fill", { ring: 98.608696, center: 65.73913 }],
  ["batter for 40 macarons|ok now just the filling, for 20 of those", "fill", { filling: 131.843478 }],
  [
    "dark ganache for 40 macarons|what if i only do 30 macarons, how much filling is that",
    "fill",
    { filling: 197.765217 },
  ],
  // more of it, and why
  ["480 g milk ganache|let's say 600, to be on the safe side.", "ganache", { chocolate: 400, cream: 200 }],
  ["480 g milk ganache|call it 540 just in case", "ganache", { chocolate: 360, cream: 180 }],
  ["filling for 40 macarons|let's say 20, to be safe", "fill", { filling: 131.843478 }],
  ["480 g milk ganache|and half of that?|same again, but dark.", "ganache", { chocolate: 133.333333 }],
  // the one that is gone is not the one that is used
  ["480 g dark ganache|kids ate the dark one, milk then", "ganache", { chocolate: 320, cream: 160 }],
  ["480 g dark ganache|my husband finished the dark so its milk now", "ganache", { chocolate: 320 }],
  ["480 g dark ganache|used the dark up yesterday, milk instead", "ganache", { chocolate: 320 }],
  ["480 g dark ganache|the dark has bloomed, ill go with milk", "ganache", { chocolate: 320 }],
  // 380 × 5 / 95, 288 × 4 / 96, 300 × 2 / 98
  [
    "The pear flavouring should make up 5 per cent of the finished filling. I've 380 g of plain buttercream to start from, so what do I weigh?",
    "dose",
    { flavor: 20 },
  ],
  [
    "5 per cent of the finished filling should be pear flavouring. I have 380 g buttercream, what do I weigh?",
    "dose",
    { flavor: 20 },
  ],
  ["flavor is to be 5 percent of the end weight, starting from 380 g buttercream", "dose", { flavor: 20 }],
  // three times the first bowl, whatever was doubled since: 840 g at 0.2 to 0.5 %
  [
    "280 g ganache, how much salt|double the bowl|no three times the first bowl",
    "dose",
    { salt: [1.68, 4.2] },
  ],
  ["480 g buttercream into four equal bowls|lemon zest for 1 bowl?", "dose", { "lemon zest": [0.6, 1.8] }],
  // equal parts of which one has its color
  ["split 400 g batter in 2, one purple", "split", { purple: 200, "part 2": 200 }],
  ["split 460 g of batter in three, one pink", "split", { pink: 153.333333, "part 3": 153.333333 }],
  ["divide 600 g batter in 2, just one coloured blue", "split", { blue: 300 }],
  ["split the batter in 2, one purple. its 480 g", "split", { purple: 240 }],
  // six of them by then: 6 × 33
  [
    "house shells for 4 whites|throw in two more so six whites",
    "scale",
    { whites: 198, "almond flour": 257.4 },
  ],
  ["house shells for 4 whites|chuck in another two, that makes six", "scale", { whites: 198 }],
  ["house shells for 4 whites|i cracked one more, so 5 whites", "scale", { whites: 165 }],
  ["house shells for 6 whites|take two out, so four whites", "scale", { whites: 132 }],
  ["house shells for 4 whites|add two more whites", "scale", { whites: 198 }],
  // what one costs, and a box of them
  ["24 cost 0.50 each, a box of 6?", "cost", { cost: 3 }],
  ["24 macarons cost 0.50 each, a box of 6?", "cost", { cost: 3 }],
  ["24 at 0.50 each, a box of six is?", "cost", { cost: 3 }],
  ["one costs 50p, how about a box of 6", "cost", { cost: 3 }],
  ["48 macarons cost $24, box of 6?", "cost", { cost: 3 }],
  ["each macaron is 0.55, so a box of 10 is what", "cost", { cost: 5.5 }],
  // 12 / 24 against 5 / 6 each: 1 - 0.5 / 0.833333
  ["24 macarons, cost 12, box of 6 at 5, margin", "cost", { margin: 40 }],
  ["we have dark and milk, 300 g milk ganache", "ganache", { chocolate: 200, cream: 100 }],
  // 2 % of 450 at a time, 10 % at most
  ["its splitting. 450 g ganache, oil all over", "ganache", { "at a time": 9, "at most": 45 }],
  ["oil all over my 450 g ganache", "ganache", { "at a time": 9 }],
];

describe("sums, the same again, and what takes its place", () => {
  it.each(cases)("%s", expectFigures);

  const whites = { whites: 99, "almond flour": 128.7, "powdered sugar": 128.7, "granulated sugar": 99 };
  test.each([
    ["house shells off three whites, and 300 f in celsius while youre at it", ["scale", "convert"], whites],
    ["house recipe at 3 whites and 6 oz in grams while youre there", ["scale", "convert"], whites],
    [
      "parts for 450 g of swiss meringue buttercream, then vanilla bean paste for all of it",
      ["buttercream", "dose"],
      { whites: 90, sugar: 135, butter: 225 },
    ],
    [
      "break down for 450 g of smbc then raspberry flavor for the lot",
      ["buttercream", "dose"],
      { whites: 90 },
    ],
    [
      "whites sugar butter for 450 g buttercream, then vanilla extract for all of it",
      ["buttercream", "dose"],
      {},
    ],
    [
      "parts for 300 g dark ganache, then orange flavoring for all of it",
      ["ganache", "dose"],
      { cream: 133.333333 },
    ],
    ["what's 5% of 640 and 640 / 16", ["convert", "convert"], { result: 32 }],
    ["15% of 230 and 3/4 of 260", ["convert", "convert"], { result: 34.5 }],
  ])("%s: both are answered", async (turn, tools, first) => {
    const answers = await baker().ask(turn);
    expect(answers.map(({ tool }) => tool)).toEqual(tools);
    expectIn(answers[0], first);
  });

  it("plans once, and hands that plan over", async () => {
    const { ask, one, files } = baker();
    const plan = await ask("pln 60 macarons for saturday the 21st, 3pm, whn do i start");
    expect(plan.map(({ tool }) => tool)).toEqual(["day"]);
    expect(JSON.stringify(plan)).toContain("2026-03-20T10:40");
    expect((await one("calender file of that pls")).tool).toBe("day");
    expect(files).toHaveLength(1);
  });

  it("tells oil on shells from oil on a ganache", async () => {
    const { one } = baker();
    expect((await one("oil everywhere on my shells")).headline).toContain("oily tops");
  });

  it("takes a safe number for no question of safety", async () => {
    const { one } = baker();
    await one("480 g dark ganache");
    expect((await one("is that safe to keep out")).tool).toBe("keep");
  });
});
