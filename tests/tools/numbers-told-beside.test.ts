/**
 * Numbers that belong to something else in the sentence are no part of the sum: ages, numbers that name something, years
 * and dates on the pack, what a bottle holds and how strong it is, prices, hours, heats and finished jobs. Sums by hand:
 * flavor 3-5 % of buttercream and 3-4 % of ganache, spirits 2-5 %, nut paste 10-20 %, tea powder 1.5-3 %, coffee powder
 * 1-2 %, extract 1-2 % (from memory); 8 g batter a shell of 38 mm; dark ganache 5 : 4 for piping (common practice).
 */
import { describe, expect, it, test } from "vitest";
import { withoutBeside } from "../../src/intents/text/beside/beside.ts";
import { baker } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const card = "60 g whites, 75 g almond flour, 75 g powdered sugar, 55 g granulated sugar";

const said: Case[] = [
  // ages, heights
  ["my son is 6 and wants to help. 300 g buttercream, how much flavor?", "dose", { flavor: [9, 15] }],
  [
    "with my 9yr old next to me: how much vanilla extract for 180 g buttercream",
    "dose",
    { "vanilla extract": [1.8, 3.6] },
  ],
  ["grandad hits 80 on sunday: 240 g ganache, how much rum", "dose", { rum: [4.8, 12] }],
  ["my niece (12) is here. 200 g dark chocolate, cream for piping?", "ganache", { cream: 160 }],
  ["hes 6 ft 2 and eats like a horse: how many macarons from 480 g batter", "shells", { macarons: 30 }],
  // what it is called by
  ["order #88: 480 g batter, how many macarons?", "shells", { macarons: 30 }],
  ["the lady at number 9 wants flavor in 300 g buttercream, how much", "dose", { flavor: [9, 15] }],
  ["batch 22 in my notebook, 200 g dark chocolate, cream for piping?", "ganache", { cream: 160 }],
  ["300 g buttercream, flavor? (box 3 of 5)", "dose", { flavor: [9, 15] }],
  ["450 g batter into 3 colours, bowl no 2 is the blue one", "split", { each: 150 }],
  // years, dates
  [`card from 1974 makes 20 macarons: ${card}. i want 40`, "scale", { whites: 120, "almond flour": 150 }],
  ["with my 2015 oven, how many macarons from 480 g batter?", "shells", { macarons: 30 }],
  ["matcha (expiry 2027-01) for 300 g buttercream, how much?", "dose", { "matcha powder": [4.5, 9] }],
  ["coffee extract (bb 12.2026) for 300 g ganache", "dose", { "coffee extract": [3, 6] }],
  // what it comes in, how strong it is
  ["hazelnut flavour, 30 ml bottle, how many grams for 220 g smbc", "dose", { flavor: [6.6, 11] }],
  ["pistachio paste for 280 g ganache, the jar holds 200 g", "dose", { "pistachio paste": [28, 56] }],
  ["instant coffee for 400 g buttercream? tub is 100 g", "dose", { "instant coffee": [4, 8] }],
  ["rum, the 54 percent stuff, for 200 g dark ganache", "dose", { rum: [4, 10] }],
  ["kirsch for 240 g ganache, its 40 percent", "dose", { kirsch: [4.8, 12] }],
  ["limoncello 30% for 220 g buttercream", "dose", { limoncello: [4.4, 11] }],
  [
    "pistachio paste for 300 g of ganache, its made with 70% chocolate",
    "dose",
    { "pistachio paste": [30, 60] },
  ],
  // prices
  ["paid 8.90 for the vanilla, how much for 230 g buttercream?", "dose", { flavor: [6.9, 11.5] }],
  ["butter was 4.20 by the way. how much flavor for 300 g buttercream", "dose", { flavor: [9, 15] }],
  // hours, heats, jobs
  ["kitchen is at 24 c. how much flavor for 280 g buttercream", "dose", { flavor: [8.4, 14] }],
  ["12 trays done, last job: dark ganache to pipe, 350 g of chocolate. cream?", "ganache", { cream: 280 }],
  ["480 g batter, i bake at 150 for 14 min. how many macarons?", "shells", { macarons: 30 }],
  // a recipe's name
  [
    "save recipe winter 7: 110 g whites, 140 g almond flour, 130 g powdered sugar, 100 g granulated sugar|scale winter 7 to 55 g whites",
    "scale",
    { "almond flour": 70, "powdered sugar": 65 },
  ],
  // 12 times 28.349523125 g (NIST SP 811)
  ["order #311 says 12 oz macarons, grams please", "convert", { result: 340.1942775 }],
  // a fan oven is 20 °C hotter
  ["recipe is 140 on fan. mine: conventional, 2011 model. set to?", "convert", { result: 160 }],
];

test.each(said)("%s", expectFigures);

describe("what may belong to the question stays", () => {
  it.each([
    ["the guests are 30, how much batter"],
    ["order 50 for saturday 3pm"],
    ["tub is 300 g. flavor for the buttercream?"],
    ["my bottle is 30 ml, how much does that weigh"],
    ["rum at 4 % for 240 g ganache"],
    ["20 % cream and 80 % chocolate, 300 g ganache"],
    ["butter was 4.20, what do 30 macarons cost"],
    ["party at 5, when do i start"],
    ["kitchen is 30 c, how long can filled macarons stay out"],
    ["12 trays done, how many macarons is that"],
    ["note: batch 14, my 7 year old piped them"],
    ["from 2000 g batter how many macarons"],
  ])("%s", (text) => expect(withoutBeside(text)).toEqual({ text, beside: [] }));

  it("asks what a number is for", async () => {
    const [answer] = await baker().ask("how much flavor for 260 g buttercream 40");
    expect(answer).toMatchObject({ status: "asking" });
  });
});

describe("behind an answer", () => {
  it.each([["he turns 8 on tuesday btw"], ["ta, youre a 10"], ["im 1.65 m tall"], ["butter was 2.99 btw"]])(
    "%s",
    async (told) => {
      const { ask } = baker();
      await ask("how much flavor for 230 g buttercream");
      const [answer] = await ask(told);
      expect(answer?.figures ?? []).toEqual([]);
    },
  );
});

it("says what it was taken for", async () => {
  const { ask } = baker();
  await ask("230 g buttercream, how much flavor, my son is 7");
  const [answer] = await ask("how did you read that?");
  expect(JSON.stringify(answer)).toContain("an age, told beside the question");
});
