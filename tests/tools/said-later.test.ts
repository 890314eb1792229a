/**
 * Leftovers, slips and second thoughts, as they come up in a fortnight of orders. Sums by hand: filling 0.42 d² g at d in
 * cm over 0.92 (6.5922 g at 38 mm), batter 0.53 d² over 0.96, white ganache 2.5 to pipe, dark 1.25; almond flour 95 g a cup
 * (data/tables); keeping by USDA FSIS (2 h out of the fridge in all, whites heated to 71 °C) and FoodSafety.gov (raw whites
 * and yolks 2 to 4 days).
 */
import { describe, expect, it, test } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const cases: Case[] = [
  // what a bowl weighs empty: 812 - 345, a third of it, and 120 under it
  ["bowl with batter 812 g, the bowl is 345, split it three ways", "split", { each: 155.666667 }],
  [
    "bowl with batter weighs 812 g, empty bowl 345, how much batter|split it three ways|what does each bowl read if the bowls weigh 120 g",
    "split",
    { "on the scale": 275.666667 },
  ],
  ["batter in bowl reads 940, bowl is 320, how many macs", "shells", { macarons: 38 }],
  // too much cream: 1.25 x 300 - 300; 2.5 x 100 - 200
  [
    "300 g dark chocolate how much cream|i put 300 cream in by mistake|how much more chocolate",
    "ganache",
    { "add chocolate": 75 },
  ],
  ["was 200 white 100 cream|still too thin", "ganache", { "add chocolate": 50 }],
  // flavors of an order, and what becomes of them
  [
    "48 macs: 24 vanilla, 12 coffee, 12 lemon, how much filling of each",
    "fill",
    { vanilla: 158.212174, coffee: 79.106087, total: 316.424348 },
  ],
  [
    "48 macs: 24 vanilla, 12 coffee, 12 lemon, how much filling of each|make coffee 24",
    "fill",
    { coffee: 158.212174, total: 395.530435 },
  ],
  [
    "48 macs: 24 vanilla, 12 coffee, 12 lemon, how much filling of each|make coffee 24|lemon cancelled",
    "fill",
    { total: 316.424348 },
  ],
  [
    "60 macs: 20 raspberry, 20 pistachio, 20 lemon, how much filling of each|how much batter for all|how much buttercream for that",
    "buttercream",
    { total: 395.530435 },
  ],
  [
    "need 1 batch in 3 colors, 480 g batter, 24 pink 12 green 12 white",
    "split",
    { pink: 240, green: 120, white: 120 },
  ],
  ["480 g batter, two parts blue one part white|what if i want 3 colors equal", "split", { each: 160 }],
  [
    "i have 180 g leftover ganache, how many macs does that fill|and 60 g buttercream with it",
    "fill",
    { macarons: 36 },
  ],
  [
    "smbc from 90 g whites|i dont have that much butter only 150|enough for 40 macs?",
    "fill",
    { "filling left": 36.313043 },
  ],
  // money: half a box; 17.50 / 0.4; 17.50 / 1.50; (2.175 + 0.45 + 0.60) x 2; (12 + 30 + 1.50) / 0.6
  [
    "price a box of 12 with 40 % margin, ingredients 6.20, box 0.80|and 6 of them",
    "cost",
    { price: 5.833333 },
  ],
  ["17.50 for 40 macs, markup 60 percent|margin instead", "cost", { price: 43.75 }],
  [
    "17.50 for 40 macs, markup 60 percent|if i sell them at 1.20 each whats my margin|and 1.50",
    "cost",
    { margin: 70.833333 },
  ],
  [
    "17.50 for 40 macs, markup 60 percent|if i sell them at 1.50 each whats my margin|how many do i need to sell to break even",
    "cost",
    { macarons: 12 },
  ],
  [
    "ingredients 14.50 packaging 3 made 40, what do i charge for each with 50% margin|and a box of 6|box costs 0.60 extra",
    "cost",
    { price: 6.45 },
  ],
  [
    "ingredients 12 and 2 hours at 15 and box 1.50, 24 macs, price per mac at 40% margin",
    "cost",
    { price: 72.5 },
  ],
  // cups of what was spoken of
  ["cups of almond flour for 130 g", "convert", { result: 1.368421 }],
  ["cup of almond flour how many g|how many cups is 130 g", "convert", { result: 1.368421 }],
  ["874,5 + 327,9|house recipe for that many grams", "scale", { whites: 261.391304 }],
  ["3 x 15|timer for that many min", "timer", { left: 45 }],
];

describe("second thoughts", () => {
  it.each(cases)("%s", expectFigures);

  test.each([
    "honey instead of sugar?",
    "can i use hazelnut flour instead of almond",
    "i forgot to add the sugar to the meringue",
  ])("%s: no rule, so no number", async (said) => {
    const { status, figures } = await talk(said);
    expect([status, figures]).toEqual(["declined", undefined]);
  });
});

describe("what could hurt, again", () => {
  test("filled macarons come out of the fridge half an hour before, however early they were boxed", async () => {
    const plan = await talk("40 macarons for tuesday 6am when do i start");
    const warm = plan.steps?.find((each) => each.name === "To room temperature");
    expect(warm).toEqual({
      name: "To room temperature",
      start: "2026-03-17T05:30:00",
      end: "2026-03-17T06:00:00",
      hands: false,
    });
    expect(plan.cautions?.some((each) => each.includes("back into the fridge"))).toBe(true);
  });

  test.each([
    "egg whites on the counter overnight to age, ok",
    "my whites sat out overnight, ok to use?",
    "whites left at room temp 3 hours",
  ])("%s: no", async (said) => expect((await talk(said)).headline).toMatch(/^No: .*raw whites/));

  test("yolks have their own days, and whites their own heat", async () => {
    expect((await talk("4 yolks how long do they keep")).of("raw yolks")).toMatchObject({ low: 2, high: 4 });
    expect((await talk("i heated the whites only to 60 is it ok", "to 55 c")).headline).toMatch(
      /^No: 55 °C is under the 71 °C/,
    );
  });

  test("a label keeps its list through every change", async () => {
    const her = baker();
    await her.ask(
      "us label: 130 g almond flour, 130 g powdered sugar, 100 g whites, 100 g sugar, 80 g butter, net weight 120 g",
    );
    for (const next of [
      "its salted butter",
      "add 20 g hazelnut paste",
      "net weight 140",
      "call it Raspberry Cloud",
    ])
      expect((await her.one(next)).headline, next).toContain("almond, egg");
    const label = await her.one("eu label instead");
    expect(label.headline).toContain("almond, egg, hazelnut and milk");
    expect(label.items).toContainEqual({ line: "name of the food", text: "Raspberry Cloud" });
  });

  test("allergens follow what is added and left out", async () => {
    const her = baker();
    await her.ask(
      "130 g almond flour, 130 g powdered sugar, 100 g whites, 100 g sugar, 80 g butter what allergens",
    );
    expect((await her.one("and if i add 20 g hazelnut")).headline).toContain(
      "almond, egg, hazelnut and milk",
    );
    expect((await her.one("without the butter")).headline).toBe("Declare almond, egg and hazelnut");
    expect((await her.one("nut free version?")).headline).toMatch(/^They contain almond/);
  });

  test("what the shells' recipe leaves out still counts for allergens", async () =>
    expect(
      (
        await talk(
          "130 g almond flour, 130 g powdered sugar, 100 g whites, 100 g sugar, 80 g butter",
          "what allergens",
        )
      ).headline,
    ).toContain("milk"));
});

describe("the record, later", () => {
  test("a timer by its name, and all but one", async () => {
    const her = baker();
    await her.ask("rest 40 min for the lemon ones");
    await her.ask("and the same for raspberry");
    expect((await her.one("lemon 5 min less")).headline).toContain("35 min left on lemon");
    expect((await her.one("clear everything except lemon")).headline).toMatch(
      /^Stopped raspberry\. Still running: .*lemon/,
    );
  });

  test("another length for a timer that runs is no second one", async () => {
    const her = baker();
    await her.ask("tray 1 timer 15");
    await her.ask("tray 1 timer 12 instead");
    const running = her.record().timers.filter(({ state }) => state === "running");
    expect(running.map(({ set_ms, due_ms }) => (due_ms - set_ms) / 60_000)).toEqual([12]);
  });

  test("telling what happened sets no timer", async () => {
    for (const said of [
      "they have been in about 20 min",
      "they have been resting 2 hours, too long?",
      "baked 5 min so far, top wobbles",
    ]) {
      const her = baker();
      await her.ask(said);
      expect(her.record().timers, said).toEqual([]);
    }
  });

  test("a bottle's flavor is asked and taken; its percentage is put right", async () => {
    const her = baker();
    await her.ask("bottle says 1%");
    await her.ask("raspberry");
    await her.ask("no 2 %");
    expect(her.record().bottles).toMatchObject([{ taste: "raspberry", low_percent: 2 }]);
  });

  test("too long by a minute is no minute of baking", async () => {
    const her = baker();
    await her.ask("note: lemon, 1 min too long in the oven, 8/10");
    const [note] = her.record().notes;
    expect(note).toMatchObject({ rating: 8 });
    expect(note?.bake_min).toBeUndefined();
  });

  test("a recipe for shells is bought for once, and made for so many", async () => {
    const her = baker();
    await her.ask("save recipe rosy: 110 g whites, 140 g almond flour, 130 g powdered sugar, 100 g sugar");
    // 53 shells of 7.972083 g, 110 of 480 of it whites
    const made = await her.one("rosy for 24");
    expect(made.figures?.find((each) => each.name === "total")?.value).toBeCloseTo(422.520417, 6);
    // 12 macarons: 27 shells
    const half = await her.one("half rosy");
    expect(half.figures?.find((each) => each.name === "total")?.value).toBeCloseTo(215.24625, 6);
  });
});
