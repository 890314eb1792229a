/**
 * Shells and money said on, half a bake that is done, what was used as well, a day put right, a heat that mends nothing,
 * and whose label it is. Sizes: shells = ceil(22 N / 10), batter = shells × 0.53 d² / 0.96, trays of 400 × 300 mm.
 * Money: cost = Σ grams × price, margin = 1 − cost / price. Keeping: seven days, the day of making as day 1, 2 h out of
 * the fridge (FDA Food Code 3-501.17; USDA FSIS).
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const sizes: Case[] = [
  // 159 shells; at 30 mm (400 / 50) × (300 / 50) = 48 a tray, at 45 mm 24, at 38 mm 30
  ["batter for 72 macs|trays if they're 30mm?", "shells", { trays: 4, shells: 159 }],
  ["batter for 72 macs|trays?|and sheets at 45 mm?", "shells", { trays: 7 }],
  ["batter for 24 macarons|trays at 45", "shells", { trays: 3, shells: 53, macarons: 24 }],
  // without an order a size asks what one tray holds
  ["how many 30 mm shells on a tray|and trays at 40 mm?", "shells", { shells: 30 }],
  // 250 / 130 × 460 = 884.6 g; × 0.96 / 7.6532 = 110 shells
  [
    "250 g almond flour, rest of the shell mix?|what's that in macs?",
    "shells",
    { macarons: 55, shells: 110 },
  ],
  ["250 g almond flour, rest of the shell mix?|and in trays", "shells", { trays: 4 }],
  ["150 g whites, scale the rest|what do i get in shells out of that", "shells", { shells: 86 }],
  // 759 g: 95 shells
  ["ingredients for 5 egg whites|and trays with the five whites?", "shells", { trays: 4, shells: 95 }],
  // 66 shells × 0.53 × 3.8² / 0.96 = 526.2 g, of which 100 / 460 whites
  ["what i have to weigh for the shells of 30 macarones", "scale", { whites: 114.382065 }],
  // half of 575 g; at 35 mm 0.53 × 3.5² / 0.96 = 6.763 g of batter a shell
  ["exactly 575g mac batter, weights|half as much batter", "scale", { whites: 62.5, "almond flour": 81.25 }],
  ["exactly 575g mac batter, weights|half as much", "scale", { total: 287.5 }],
  [
    "exactly 575g mac batter, weights|half as much batter|35mm shells from the small one?",
    "shells",
    { shells: 42 },
  ],
  [
    "exactly 575g mac batter, weights|half as much batter|35 mm shells from the big one",
    "shells",
    { shells: 85 },
  ],
  // the mat's own circles
  ["theres 24 circles printed on my baking mat", "bench", { "shells a tray": 24 }],
  ["i count 28 rings on each of my mats", "bench", { "shells a tray": 28 }],
  ["my mat is printed with 6 rows of 5 circles", "bench", { "shells a tray": 30 }],
  ["100 macarons with 28 circles on the mat, trays?", "shells", { trays: 8 }],
  ["the silicone mat i pipe on is 24 circles, keep that in mind|trays for 45 macs?", "shells", { trays: 5 }],
  // 44 shells × 0.53 × 4.2² / 0.96
  [
    "i always pipe 42 mm, save that as my size|what batter do 20 macarons need",
    "shells",
    { batter: 428.505 },
  ],
  ["switching to 4.5 cm shells for good", "bench", { "shell diameter": 45 }],
  ["batter for 24 macarons at 40 mm|keep that as my size", "bench", { "shell diameter": 40 }],
  // the book's 38 mm again
  [
    "i pipe mine at 42 mm, set that as my size|how many shells go on a tray|undo the size|so how many shells on a tray now",
    "shells",
    { shells: 30 },
  ],
];

const money: Case[] = [
  // 150 × 0.014 + 150 × 0.0018 + 115 × 0.0012 + 115 × 0.005
  [
    "150 g almond flour for $14 a kilo, 150 g powdered sugar for $1.80 a kilo, 115 g sugar $1.20 a kilo and 115 g whites $5 a kilo. how expensive was this batch",
    "cost",
    { cost: 3.083 },
  ],
  // 2.25 + 0.50 + 0.24, / 0.3
  [
    "buttercream: 250 g butter at $9 a kilo, 100 g whites at $5 a kilo, 150 g sugar at $1.60 a kilo. cost?|price for a 70% margin on that",
    "cost",
    { cost: 2.99, price: 9.966667 },
  ],
  ["250 g butter $9/kg + 100 g whites $5/kg + 150 g sugar $1.60/kg = ?", "cost", { cost: 2.99 }],
  [
    "120 g egg whites at $5 a kilo and 180 g sugar at $2 a kilo, what else goes into the buttercream",
    "buttercream",
    { butter: 300 },
  ],
  // 330 × 1.25 / 2.25 = 183.3 g
  [
    "dark piping ganache, 330 g|that chocolate is $18 a kilo, so what does the chocolate in it cost",
    "cost",
    { cost: 3.3 },
  ],
  [
    "i have 140 g whites so tell me the rest of the shell mix|almond flour costs $15 a kilo, what do those almonds come to",
    "cost",
    { cost: 2.73 },
  ],
  [
    "500 g buttercream, whats in it|what would the butter cost at 9 a kilo|and the sugar at 2 a kilo",
    "cost",
    { cost: 0.3 },
  ],
  [
    "130 g almonds at $15/kg, 130 g icing sugar at $2/kg, total?|how much of that is the almonds",
    "cost",
    { cost: 1.95 },
  ],
  // both sugars of the house recipe: 195 + 150 g
  ["150 g whites, the rest of the recipe|what do the sugars cost at 2 a kilo", "cost", { cost: 0.69 }],
  // 250 × 0.012 + 150 × 0.002 + 100 × 0.005: the other prices hold on
  [
    "500 g buttercream, whats in it|butter at 9 a kilo, sugar at 2 a kilo, whites at 5 a kilo, cost of it?|and if butter is 12 a kilo",
    "cost",
    { cost: 3.8 },
  ],
  // 3.05 and 100 g of cream
  [
    "500 g buttercream, whats in it|butter at 9 a kilo, sugar at 2 a kilo, whites at 5 a kilo, cost of it?|and if cream is 5 a kilo|100 g",
    "cost",
    { cost: 3.55 },
  ],
  // a third of 26, of 60
  [
    "36 macarons cost 20 and packaging 6, sell at 60|customer wants 12",
    "cost",
    { cost: 8.666667, price: 20, margin: 56.666667 },
  ],
  ["60 cost 30 plus 6 packaging, sell at 90|customer wants 20 of them", "cost", { cost: 12, price: 30 }],
  ["60 cost 30 plus 6 packaging, sell at 90|customer wants 20|or 30", "cost", { cost: 18, price: 45 }],
  // 26 / 0.4, and a third of both
  ["ingredients 20, packaging 6, price at 60 margin for 36", "cost", { cost: 26, price: 65 }],
  [
    "ingredients 20, packaging 6, price at 60 margin for 36|and for 12",
    "cost",
    { cost: 8.666667, price: 21.666667 },
  ],
  ["36 macarons cost 20|price for 60 margin", "cost", { price: 50 }],
  // 9 × 40 / 24, 8 × 40 / 6; a number near the price is a price
  ["24 cost 9, a box of 6 sells at 8|and for 40", "cost", { cost: 15, price: 53.333333 }],
  ["24 cost 9, a box of 6 sells at 8|and for 9", "cost", { cost: 9, price: 36 }],
  // 36 × 2.50, 36 × 2
  ["36 macarons cost 20, sell at 60|2.50 apiece", "cost", { price: 90, cost: 20 }],
  ["36 macarons cost 20, sell at 60|$2.50 a piece", "cost", { price: 90, cost: 20 }],
  ["36 macarons cost 20|at $2 each", "cost", { price: 72, margin: 72.222222 }],
  // 9 × 30 / 6
  ["30 cost 12, six sell at 9", "cost", { price: 45, cost: 12 }],
  ["30 cost 12, sell six for 9", "cost", { price: 45, cost: 12 }],
];

const stock: Case[] = [
  [
    "pantry: 500 g powdered sugar, 800 g almond flour|used 260 g powdered sugar|and 260 g of the almond flour too",
    "shelf",
    { "almond flour left": 540 },
  ],
  [
    "pantry: 500 g powdered sugar, 800 g almond flour|used 260 g powdered sugar|also 200 g almond flour|almond flour?",
    "shelf",
    { "almond flour": 600 },
  ],
  [
    "pantry: 500 g powdered sugar, 800 g almond flour|bought 260 g powdered sugar|and 260 g of the almond flour too",
    "shelf",
    { "almond flour": 1060 },
  ],
  [
    "pantry: 1 kg almond flour, 1 kg powdered sugar|used half the almond flour|and half of the powdered sugar too",
    "shelf",
    { "powdered sugar left": 500 },
  ],
  // a name with a question mark takes nothing, whatever was done before
  [
    "pantry: 500 g powdered sugar, 800 g almond flour|used 260 g powdered sugar|almond flour?",
    "shelf",
    { "almond flour": 800 },
  ],
];

describe("shells, money and stock said on", () => {
  it.each([...sizes, ...money, ...stock])("%s", expectFigures);

  it.each([
    // how much of it isn't said
    [
      "pantry: 500 g powdered sugar, 800 g almond flour|used 260 g powdered sugar|and the almond flour",
      /how many grams of almond flour/i,
    ],
    [
      "500 g buttercream, whats in it|butter at 9 a kilo, sugar at 2 a kilo, whites at 5 a kilo, cost of it?|and if cream is 5 a kilo",
      /no cream in what was priced/i,
    ],
  ])("%s is asked back", async (turns, question) => {
    const { status, headline, figures } = await talk(...turns.split("|"));
    expect([status, figures]).toEqual(["asking", undefined]);
    expect(headline).toMatch(question);
  });

  it("has done with money where it is told so", async () => {
    const { ask } = baker();
    await ask("a box costs me £4.50, what price at 55 percent margin");
    const tools = (await ask("right, forget money. 2 oz in grams")).map(({ tool }) => tool);
    expect(tools).not.toContain("cost");
    expect(tools).toContain("convert");
  });
});

describe("days and heat of what is kept", () => {
  const keeps = "i filled these on the 11th, until when are they good";

  it.each([
    // day 7 of the 8th is the 14th, of the 9th the 15th
    ["suppose it was the 8th i filled them", "use by Sat 14 Mar"],
    ["it was actually the 10th that i filled them", "use by Mon 16 Mar"],
    ["no, the 12th is when i made them", "use by Wed 18 Mar"],
    ["let's say the 9th", "use by Sun 15 Mar"],
    ["say it had been the 9th", "use by Sun 15 Mar"],
    // a day to come is the one that is asked about
    ["and the 16th?", "Yes, on Mon 16 Mar"],
    ["on friday?", "No, not on Fri 20 Mar"],
    ["by tuesday?", "Yes, on Tue 17 Mar"],
  ])("%s", async (turn, says) => {
    expect((await talk(keeps, turn)).headline).toContain(says);
  });

  it.each([
    ["they sat out 3 hours|can i heat them to 71 c and eat them", 180],
    ["they sat out 3 hours|what if i reheat them", 180],
    ["left out 4 hours|would 10 minutes at 160 f fix them", 240],
    ["they sat out 90 min at 33 c|would warming them to 70 degrees make them safe", 90],
  ])("%s: no", async (turns, out) => {
    const { headline, cautions, of } = await talk(...turns.split("|"));
    expect(headline).toMatch(/^No: /);
    expect(headline).not.toMatch(/7[01] °|160 °/);
    expect(of("was out")?.value).toBe(out);
    expect(cautions?.join(" ")).toContain("Heating");
  });

  it("counts no heating as time out of the fridge, nor as warmth of the air", async () => {
    const { of, assumed } = await talk("they sat out 90 min", "can i heat them to 71 c and eat them");
    expect([of("was out")?.value, of("time left")?.value]).toEqual([90, 30]);
    expect(assumed?.join(" ")).toContain("32 °C");
  });

  it.each([
    ["i heated the whites to 60, ok?", /^No: 60 °C is under the 71 °C/],
    ["i heated the whites to 60, ok?|and 71?", /^Yes: 71 °C/],
    ["750 g smbc, what goes in?|temp for the whites?", /71 °C \(160 °F\)/],
    ["750 g smbc, what goes in?|what temp do i heat them to", /71 °C \(160 °F\)/],
  ])("%s", async (turns, says) => {
    expect((await talk(...turns.split("|"))).headline).toMatch(says);
  });
});

describe("whose label it is", () => {
  const list = "130 g almond flour, 100 g egg whites, 200 g butter";

  it.each([
    [`us label for macarons with french buttercream: ${list}`, "US label"],
    [`eu label for shells with american buttercream: ${list}`, "EU label"],
    // a land before a food is no market, and the usual one is the United States
    [`label for 130 g almond flour, 100 g egg whites, 200 g irish butter`, "US label"],
    [`label with european style butter: ${list}`, "US label"],
    [`french label for ${list}`, "EU label"],
    [`label for germany: ${list}`, "EU label"],
    [`us label for ${list}, with the allergy line`, "US label"],
    [`a label with the allergy warning for ${list}`, "US label"],
    [`label for ${list}|make it european`, "EU label"],
    [`label for ${list}|for the eu|no american`, "US label"],
  ])("%s", async (turns, form) => {
    expect((await talk(...turns.split("|"))).headline).toContain(form);
  });

  it("asks which form stands in for one that it doesn't know", async () => {
    expect((await talk(`label for ${list}`, "uk instead")).status).toBe("asking");
  });

  it.each(["is this ok for my friend with a nut allergy", "can a person with an egg allergy eat them"])(
    "%s: nobody can promise that",
    async (turn) => {
      expect((await talk(turn)).status).toBe("declined");
    },
  );
});

describe("half of a bake that is done", () => {
  /** 24 of 38 mm for 17:00 tomorrow: tray 1 piped 14:22 to 14:32 and baked 15:02 to 15:17, tray 2 baked until 15:32. */
  async function said(at: string, ...turns: string[]) {
    const { one, setClock } = baker();
    await one("24 macarons for tomorrow 5 pm");
    setClock(`2026-03-14T${at}:00`);
    let answer = await one(turns[0] as string);
    for (const turn of turns.slice(1)) answer = await one(turn);
    return answer;
  }

  it.each([
    ["15:17", "half of those are done baking", "Bake tray 2"],
    ["15:17", "ive baked half", "Bake tray 2"],
    ["15:17", "half the trays are out", "Bake tray 2"],
    ["15:17", "12 of them are baked", "Bake tray 2"],
    ["15:17", "one of the trays is baked", "Bake tray 2"],
    ["14:32", "half of them are piped", "Pipe tray 2"],
    ["14:35", "halfway through piping", "Pipe tray 2"],
  ])("%s %s: one tray of two", async (at, turn, next) => {
    const { headline } = await said(at, turn);
    expect(headline).toContain(next);
    expect(headline).toContain("24 macarons, 2 trays");
  });

  it.each(["the ganache is half done", "done with the first half of the ganache", "half of them are filled"])(
    "%s: no step of its own",
    async (turn) => {
      expect((await said("16:05", turn)).status).toBe("impossible");
    },
  );

  it("asks of which step, and goes on with the answer", async () => {
    expect((await said("15:17", "done with half of them")).status).toBe("asking");
    expect((await said("15:17", "done with half of them", "baking")).headline).toContain("Bake tray 2");
  });

  it("asks up to which tray where half of them is no whole number", async () => {
    expect((await said("15:17", "a third is baked")).status).toBe("asking");
    expect((await said("15:17", "a third is baked", "1")).headline).toContain("Bake tray 2");
  });

  it("still plans for half as many where that is what is wanted", async () => {
    expect((await said("09:30", "only half of them")).headline).toContain("12 macarons");
    expect((await said("09:30", "i want half of them done with lemon")).headline).toContain("24 macarons");
  });
});
