/**
 * What is said behind a dose: twice the rum, a weight alone, a name that nobody knows, more of the plain mix, a part of an
 * order. Doses as in data/rules/doses.ts (buttercream 3-5 % concentrated flavor, 10-20 % nut paste; ganache 3-4 %;
 * spirit 2-5 %, extract 1-2 %, salt 0.2-0.5 %, gel 0.5-1.5 % of batter, vanilla paste 1-2 %); share = flavor / base;
 * to add = flavor / top or middle of the range − base (arithmetic). Batter 0.53 d² a shell over 0.96 (from memory);
 * buttercream 100 : 150 : 250, 5 times its whites (common practice); a tablespoon 14.78676478125 ml (NIST SP 811).
 * Titanium dioxide: Commission Regulation (EU) 2022/63.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // so many times what was put in, the bowl as it is: 10, 2.5 and 1.25 of 200
  ["i put 5 g rum in 200 g bc|double the rum", "dose", { share: 5 }],
  ["i put 5 g rum in 200 g bc|what if i double the rum", "dose", { share: 5 }],
  ["i put 5 g rum in 200 g bc|twice as much rum", "dose", { share: 5 }],
  ["i put 5 g rum extract in 200 g bc|double that", "dose", { share: 5 }],
  ["200 g bc 5 g rum|half that", "dose", { share: 1.25 }],
  ["200 g bc 5 g rum|half the amount", "dose", { share: 1.25 }],
  // a weight alone that is no bowl: 30 of 300, 45 of 300
  ["300 g ganache how much rum|30 g?", "dose", { share: 10 }],
  ["300 g ganache how much rum|with 30 g?", "dose", { share: 10 }],
  ["pistachio paste in 300 g bc|45 g", "dose", { share: 15 }],
  // where it was asked, 20 of 200
  ["200 g bc how much salt|20 g|salt", "dose", { share: 10 }],
  ["200 g bc how much salt|20 g|20 g of salt", "dose", { share: 10 }],
  // the kind told of a name that nobody knows: 2 tablespoons of 350, 20 of 200 + 150
  ["how much salt for 350 g ganache|2 tbsp zarbelino in it|spirit", "dose", { share: 8.44958 }],
  ["chocolate 200 g dark cream 150|and with 20 g zarbelino in it|spirit", "dose", { share: 5.714286 }],
  // more of the plain mix: 10 of 250, then 10 / 0.02 − 250 and 10 / 0.015 − 250
  ["i put 10 g peppermint extract in 150 smbc|i have only 100 g more smbc", "dose", { share: 4 }],
  ["i put 10 g peppermint extract in 150 smbc|i can spare 100 g more", "dose", { share: 4 }],
  ["i put 10 g peppermint extract in 150 g smbc|got another 100 g buttercream", "dose", { share: 4 }],
  ["i put 10 g peppermint extract in 150 smbc|how to fix|i only have 100 g smbc", "dose", { share: 4 }],
  [
    "i put 10 g peppermint extract in 150 smbc|i have only 100 g more smbc|how to fix",
    "dose",
    { "add base": [250, 416.666667] },
  ],
  // into a bowl, behind how much it is enough for: 6 of 200
  ["6 g pear concentrate how much ganache|in 200 g too much?", "dose", { share: 3 }],
  // half of 0.53 × 3.8² × 132 / 0.96 = 1052.315 g, at 0.5 and 1.5 %
  [
    "order 60 macs half pistachio half raspberry|how much gel for each",
    "dose",
    { "gel color": [2.630788, 7.892363] },
  ],
  // 10 / 0.015 − 240 and 10 / 0.01 − 240
  [
    "480 g batter half pink half blue|10 g pink gel in its half|how much batter fixes it",
    "dose",
    { "add base": [426.666667, 760] },
  ],
  // 12 of 5 × 165
  ["smbc from 165 g whites|add 50 g sugar|12 g vanilla paste in it", "dose", { share: 1.454545 }],
  ["smbc from 165 g whites|and 50 g more sugar|12 g vanilla paste in it", "dose", { share: 1.454545 }],
];

describe("behind a dose", () => {
  it.each(cases)("%s", async (...each) => {
    await expectFigures(...each);
  });

  // another thing beside what is in the bowl, none of it in yet: 3-5 % of 300, 0.2-0.5 % of 200
  it.each([
    ["bc 300 g|pistachio paste|45 g pistachio paste|and the flavor too", ["flavor", 9, 15]],
    ["5 g rum in 200 g bc|and salt?", ["salt", 0.4, 1]],
    ["put 10 ml rum in 200 g bc|how much salt for the same buttercream", ["salt", 0.4, 1]],
  ])("nothing in it yet: %s", async (turns, figure) => {
    const { figures } = await talk(...turns.split("|"));
    expect(figures?.map(({ name, low, high }) => [name, low, high])).toEqual([figure]);
  });

  it("judges a name that nobody knows by the kind that is told, and asks for that first", async () => {
    const { one } = baker();
    await one("how much salt for 350 g ganache");
    expect((await one("15 g zarbelino ok")).status).toBe("asking");
    expect((await one("liqueur")).figures?.[0]?.value).toBeCloseTo(4.285714, 6);
  });

  it("asks which of both a weight is, and takes it for the bowl where that is said", async () => {
    const { one } = baker();
    await one("200 g bc how much salt");
    expect((await one("20 g")).status).toBe("asking");
    const salt = (await one("buttercream")).figures?.[0];
    expect([salt?.low, salt?.high]).toEqual([0.04, 0.1]);
  });
});

describe("asks instead of guessing", () => {
  it.each([
    ["200 g bc how much salt|20 g", /20 g of salt, or 20 g of buttercream/],
    ["mint flavor in 250 g bc|40 g", /40 g of flavor, or 40 g of buttercream/],
    ["how much salt for 350 g ganache|2 tbsp zarbelino in it", /What kind is zarbelino/],
    ["how much salt for 350 g ganache|15 g zarbelino ok", /What kind is zarbelino/],
    ["how much salt for 350 g ganache|zarbelino 15 g", /What kind is zarbelino/],
    ["how much salt for 350 g ganache|15 g southern breeze in it", /What kind is southern breeze/],
    ["chocolate 200 g dark cream 150|and with 20 g zarbelino in it", /What kind is zarbelino/],
    ["chocolate 200 g dark cream 150|add 20 g zarbelino", /What kind is zarbelino/],
    ["3 shots zarbelino in 400 g smbc", /How much does it weigh in grams\? 3 shots of zarbelino/],
    ["a splash of zarbelino in 400 g smbc", /How much does it weigh in grams\? A splash of zarbelino/],
    ["3 shots zarbelino in 400 g smbc|90 g", /What kind is zarbelino/],
    ["order 60 macs, 2 colors|how much gel for each", /How much batter/],
    ["bc 300 g|45 g pistachio paste|how much salt", /How much buttercream/],
  ])("%s", async (turns, question) => {
    const { status, headline, figures } = await talk(...turns.split("|"));
    expect([status, figures]).toEqual(["asking", undefined]);
    expect(headline).toMatch(question);
  });

  it("takes whites for no bowl to be flavored", async () => {
    const { ask } = baker();
    await ask("40 macs, 2 flavors");
    const answers = await ask("i have only 150 g whites");
    expect(answers.filter(({ tool, status }) => tool === "dose" && status === "answered")).toEqual([]);
  });
});

describe("no rule, no figure", () => {
  it.each([
    "how much gel for 200 g batter|and liquid whitener",
    "how much gel for 200 g batter|titanium dioxide 2 g",
    "how much titanium dioxide for 300 g batter",
    "e171 in 200 g batter",
    "whitening powder for 250 g batter",
  ])("whitener: %s", async (turns) => {
    const { status, headline, figures } = await talk(...turns.split("|"));
    expect([status, figures]).toEqual(["declined", undefined]);
    expect(headline).toContain("(EU) 2022/63");
    expect(headline).toContain("local food authority");
  });

  it.each([
    "how much gel for 200 g batter|and airbrush color",
    "how much luster dust for 200 g batter",
    "edible glitter for 200 g batter how much",
  ])("another colorant: %s", async (turns) => {
    const { status, figures } = await talk(...turns.split("|"));
    expect([status, figures]).toEqual(["declined", undefined]);
  });

  it("makes no new buttercream of sugar that is added", async () => {
    const { tool, status, figures } = await talk("smbc from 165 g whites", "add 50 g sugar");
    expect([tool, status, figures]).toEqual(["buttercream", "declined", undefined]);
  });
});
