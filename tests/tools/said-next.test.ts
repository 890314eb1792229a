/**
 * What is said next in a bake, and what it is of. Sums by hand: the house formula 100 : 130 : 130 : 100 and 33 g a white
 * (USDA SR, NDB 01124); ganache 1.25 dark, 2 milk for piping, 2 dark to roll; doses as in data/rules/doses.ts; filling
 * 6.0648 g at 38 mm over 0.92; ounces 28.349523125 g (NIST SP 811).
 */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // bowls that were weighed together
  ["two bowls buttercream, 150 g and 210 g, lemon flavor for the first", "dose", { flavor: [4.5, 7.5] }],
  [
    "two bowls buttercream, 150 g and 210 g, lemon flavor for the first|for the second",
    "dose",
    { flavor: [6.3, 10.5] },
  ],
  [
    "two bowls buttercream, 150 g and 210 g, lemon flavor for the first|for both together",
    "dose",
    { flavor: [10.8, 18] },
  ],
  [
    "two bowls buttercream, 150 g and 210 g, lemon flavor for the first|and the other one",
    "dose",
    { flavor: [6.3, 10.5] },
  ],
  // a part that goes out, and back in
  [
    "80 g cream and 200 g white chocolate, how much rose flavor|with 40 g butter too",
    "dose",
    { flavor: [9.6, 12.8] },
  ],
  [
    "80 g cream and 200 g white chocolate, how much rose flavor|with 40 g butter too|without the butter",
    "dose",
    { flavor: [8.4, 11.2] },
  ],
  // plain mix added to bring it down: 12 of 260
  [
    "i put 12 g rose flavor in 200 g buttercream|how much more buttercream do i add|i add 60 g, good now?",
    "dose",
    { share: 4.615385 },
  ],
  // put into the bowl of before: 8 of 430
  ["gel color for 430 g batter|i put 8 g gel, is it too much", "dose", { share: 1.860465 }],
  [
    "gel color for 430 g batter|i put 8 g gel|and for half of the batter how much gel",
    "dose",
    { "gel color": [1.075, 3.225] },
  ],
  [
    "pistachio paste for 380 g buttercream|i have just 30 g of it|for how much buttercream is the 30 g good",
    "dose",
    { base: [150, 300] },
  ],
  // the size of before
  [
    "batter for 45 macarons|smaller, 3 cm|how much filling then|batter for 50 of them",
    "shells",
    { batter: 546.5625 },
  ],
  // a mix judged, for another use
  [
    "200 g dark chocolate with 100 g cream, what is it good for|i want it for piping, how much cream then",
    "ganache",
    { cream: 160 },
  ],
  [
    "dark ganache too runny to pipe, 150 g chocolate 150 g cream|and how much chocolate so it is firm to roll",
    "ganache",
    { "add chocolate": 150 },
  ],
  // half of a filling, and the other half: 48 × 6.0648 / 0.92 / 2
  [
    "filling for 48 macarons|make half of that dark ganache|and the other half swiss meringue buttercream",
    "buttercream",
    { whites: 31.642435 },
  ],
  [
    "filling for 40 macarons|make half of that dark ganache|other half is buttercream, how much rose flavor in it",
    "dose",
    { flavor: [3.955304, 6.592174] },
  ],
  [
    "filling for 30 macarons|half for ganache, half for buttercream|the ganache half is dark, how much chocolate and cream",
    "ganache",
    { chocolate: 54.934783 },
  ],
  // one line of what is at hand
  [
    "i have 90 g whites, 110 g almond flour, 150 g powdered sugar, how big a batch|found more almond flour, it is 140 now",
    "scale",
    { "almond flour": 117 },
  ],
  [
    "i have 150 g almond flour and 110 g whites, what can i make|what if i get more whites so ive 143 g",
    "scale",
    { whites: 115.384615 },
  ],
  [
    "120 g butter, 200 g cream cheese, 80 g icing sugar, double it|make it come to 300 g altogether",
    "scale",
    { butter: 90 },
  ],
  [
    "my shells are 110g whites 140g ground almonds 125g icing sugar 105g caster. only got 88 g whites|found another egg. 132 g whites",
    "scale",
    { "almond flour": 168 },
  ],
  ["house recipe times 1.75|no, double it", "scale", { whites: 200 }],
  // sums of what came out
  ["6 oz in g|and 8 oz|both together", "convert", { result: 396.893324 }],
  [
    "half a cup of cream in grams|and 2 tbsp of it|whats 119 plus 30|how much dark chocolate for that much cream, piping",
    "ganache",
    { chocolate: 186.25 },
  ],
  [
    "swiss buttercream from 3 whites|how warm must the whites be|how much is it together",
    "buttercream",
    { total: 495 },
  ],
  // money
  [
    "200 g almond flour at €14 a kilo and 200 g icing sugar at €2.50 a kilo, what did that cost|plus 150 g whites at €5 a kilo",
    "cost",
    { cost: 4.05 },
  ],
  [
    "it cost me 14.40 euro, price with 40 % margin?|customer pays only 20, what is my margin",
    "cost",
    { margin: 28 },
  ],
  // names for the parts
  [
    "split 520 g batter half pink half green|no, 3 to 1, three parts pink|powder color for the green",
    "dose",
    { "powder color": [0.39, 1.3] },
  ],
  [
    "split 526 g batter in two, one yellow one pink|gel for the pink",
    "dose",
    { "gel color": [1.315, 3.945] },
  ],
];

describe("what is said next", () => {
  it.each(cases)("%s", expectFigures);
  it("a fault of the mix that was spoken of", async () =>
    expect((await talk("my buttercream looks curdled", "now its gone soupy instead")).headline).toContain(
      "Soupy",
    ));
  it("the same length for the next tray", async () => {
    const { headline, of } = await talk("timer 15 min tray 1", "same for tray 2");
    expect([of("left")?.value, headline]).toEqual([15, expect.stringContaining("tray 2")]);
  });
  it("nobody's sister is a ring", async () =>
    expect((await talk("filling for 40 macarons", "can you ring my sister")).status).toBe("declined"));
});
