/**
 * A list told together with what sets its size, recipes kept and thrown away in other orders, a note that comes a turn
 * later, prices apart from what was used, and habits with the order behind them. Expected values are worked by hand.
 */
import { describe, expect, test } from "vitest";
import { baker, lastOf, withFigures } from "../support/ask.ts";

const once = "100 g whites, 125 g almond flour, 120 g powdered sugar and 90 g granulated sugar";
const there = "140 g whites, 150 g almond flour, 180 g powdered sugar and 200 g granulated sugar";

describe("a recipe beside what there is", () => {
  // the scarcest: 150 / 125 = 1.2, 140 / 100 = 1.4, 180 / 120 = 1.5, 200 / 90 = 2.2; so 1.2 × 100 = 120 g whites, 20 g left
  test.each([
    `One go takes ${once}. In the house I have ${there}. How far do I get?`,
    `I have ${there}. A batch needs ${once}. How far does it go?`,
    `Per go ${once}; what i've got is ${there}`,
    "whites 100, almond 125, icing 120, caster 90 is one lot; cupboard says whites 140, almond 150, icing 180, caster 200. how far do i get",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect(tool).toBe("scale");
    expect(value("whites")).toBeCloseTo(120, 6);
    expect(value("whites left")).toBeCloseTo(20, 6);
  });

  // 100 + 20 g of whites, 120 + 30 g of almond flour: 150 / 130 of the house formula, so 100 × 150 / 130 g whites
  test("what was found besides is no recipe", async () => {
    const { value } = await withFigures(
      "i have 100 g whites and 120 g almond flour, found another 20 g whites and 30 g almond flour. how much can i make",
    );
    expect(value("whites")).toBeCloseTo((100 * 150) / 130, 6);
  });
});

const mine = "95 g whites, 125 g almond flour, 125 g powdered sugar, 85 g granulated sugar";

describe("a list, and how much it is to make", () => {
  // 95 + 125 + 125 + 85 = 430 g, to 645 g: 1.5 times, so 142.5 g whites
  test.each([
    `645 g of batter is what I am after, and my own shells go ${mine}. What does each become?`,
    `i'm after 645 g of batter; my own goes ${mine}`,
    `my shells go ${mine} and i want 645 g of batter. what does each become`,
    `${mine} is what my shells take. 645 g batter please`,
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect(tool).toBe("scale");
    expect(value("whites")).toBeCloseTo(142.5, 6);
    expect(value("total")).toBeCloseTo(645, 6);
  });

  // as much batter as the house formula takes for so many, in the list's own shares: 95 / 430 of it
  test.each([
    `enough for 40 macarons please, out of this: ${mine}`,
    `what do i weigh for 40 macarons from this list: ${mine}`,
    `${mine}: bring it to 40 macarons`,
    `scale so it does 40 macarons: ${mine}`,
  ])("%s", async (said) => {
    const batter = (await withFigures("batter for 40 macarons")).value("batter") ?? 0;
    expect(batter).toBeGreaterThan(0);
    expect((await withFigures(said)).value("whites")).toBeCloseTo((batter * 95) / 430, 6);
    const half = (await withFigures("batter for 20 macarons")).value("batter") ?? 0;
    expect((await withFigures(said, "and enough for twenty")).value("whites")).toBeCloseTo(
      (half * 95) / 430,
      6,
    );
  });

  // 6 whites less 2 are 4, of 33 g each: 132 g
  test("what is gone and what is left make what there was", async () => {
    const { value } = await withFigures(
      "house shells with 6 egg whites",
      "oh dear, two went down the sink. four then",
    );
    expect(value("whites")).toBeCloseTo(132, 6);
  });
});

const shells = "98 g whites, 126 g almond flour, 119 g powdered sugar, 91 g granulated sugar";

describe("a saved recipe brought to a weight of all of it", () => {
  // 98 + 126 + 119 + 91 = 434 g, to 651 g: 1.5 times, so 147 g whites
  test.each([
    "now the garden shells so that they come to 651 g",
    "make garden shells up to 651 g",
    "garden shells weighing 651 g in the end",
    "the garden shells, but 651 g of them",
    "get garden shells to add up to 651 g",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(
      `save recipe garden shells: ${shells}`,
      "I have 70 g whites for the garden shells, and the rest is how much?",
      said,
    );
    expect(tool).toBe("scale");
    expect(value("whites")).toBeCloseTo(147, 6);
  });

  // 90 of 150 g cream is 0.6; 1000 of 400 g in all is 2.5, so 500 g of the 200 g sugar
  test("behind a size by one of its lines", async () => {
    const { value } = await withFigures(
      "My soft caramel is 200 g sugar, 150 g cream, 50 g butter. Save the recipe as soft caramel.",
      "All I have is 90 g of cream. What of the rest, for the soft caramel?",
      "and if I want 1 kg of soft caramel?",
    );
    expect(value("sugar")).toBeCloseTo(500, 6);
  });

  test("an answer without a line changes nothing of it", async () => {
    const { ask, record } = baker();
    await ask(`save recipe garden shells: ${shells}`);
    await ask("change garden shells please");
    await ask("651 g in the end");
    expect(record().formulas[0]?.lines.map(({ grams }) => grams)).toEqual([98, 126, 119, 91]);
  });
});

const pale = "132 g whites, 170 g almond flour, 165 g powdered sugar, 120 g granulated sugar";

describe("recipes kept in other orders", () => {
  test.each([
    "under the name pale shells i would like saved: 4 egg whites weighing 132 g, almond flour 170 g, powdered sugar 165 g, granulated sugar 120 g",
    "to be saved as pale shells: 4 egg whites, 132 g, almond flour 170 g, powdered sugar 165 g, granulated sugar 120 g",
    `i would like pale shells saved: ${pale}`,
    `pale shells should go into my recipes: ${pale}`,
    `as pale shells i want this kept: ${pale}`,
    `${pale}. keep that under the name pale shells`,
    `put this in the recipes under pale shells: ${pale}`,
    `pale shells: ${pale}. save it please`,
    `save the recipe pale shells, it has ${pale}`,
  ])("%s", async (said) => {
    const { ask, record } = baker();
    await ask(said);
    expect(record().formulas.map(({ name }) => name)).toEqual(["pale shells"]);
    expect(record().formulas[0]?.lines.map(({ grams }) => grams)).toEqual([132, 170, 165, 120]);
  });

  test.each([
    ["save recipe green ring again but with butter 230 g, icing sugar 80 g and pistachio paste 36 g", 230],
    [
      "save the recipe green ring once more, this time with butter 230 g, icing sugar 80 g and pistachio paste 36 g",
      230,
    ],
    ["green ring is now butter 230 g, icing sugar 80 g, pistachio paste 36 g, save it like that", 230],
    // the one line alone
    ["keep green ring with 36 g of pistachio paste from now on", 240],
  ])("%s", async (said, butter) => {
    const { ask, record } = baker();
    await ask("save recipe green ring: 240 g butter, 80 g icing sugar, 24 g pistachio paste");
    await ask(said);
    const lines = record().formulas[0]?.lines ?? [];
    expect(lines.map(({ grams }) => grams)).toEqual([butter, 80, 36]);
    expect(lines[0]?.name).toBe("butter");
  });

  test.each([
    "throw the recipe plum ring away",
    "chuck the plum ring recipe out",
    "plum ring can go",
    "take plum ring off my list of recipes",
    "clear out the recipe plum ring please",
  ])("%s", async (said) => {
    const { ask, record } = baker();
    await ask("save recipe toffee middle: 160 g sugar, 120 g cream");
    await ask("save the recipe plum ring, it has 200 g butter, 90 g sugar and 60 g whites");
    await ask(said);
    expect(record().formulas.map(({ name }) => name)).toEqual(["toffee middle"]);
  });
});

describe("a note that comes a turn later", () => {
  test.each([
    ["make a note for me", "mint batch, far too sweet, less sugar in the middle next time"],
    ["note please", "hazelnut, rested 40 minutes, full shells"],
    ["could you write something down for me", "blackcurrant, piped too wide"],
    ["can you take a note", "lemon shells were hollow, baked 14 minutes"],
  ])("%s", async (order, told) => {
    const { ask, record } = baker();
    expect((await ask(order))[0]?.status).toBe("asking");
    expect((await ask(told)).map(({ tool }) => tool)).toEqual(["note"]);
    expect(record().notes.map(({ text }) => text)).toEqual([told]);
  });

  test("another order is no note", async () => {
    expect((await withFigures("make a note", "set a timer for 15 min")).tool).toBe("timer");
    expect((await withFigures("make a note", "how much flavor for 230 g buttercream")).tool).toBe("dose");
  });
});

describe("prices apart from what was used", () => {
  // 150 × 0.95 / 100 + 250 × 1.60 / 100 = 1.425 + 4 = 5.425
  test.each([
    "butter is €0.95 per 100 g and white chocolate €1.60 per 100 g. I took 150 g of the butter and 250 g of the chocolate, what is that in money",
    "i used 150 g of butter and 250 g of white chocolate. butter is €0.95 per 100 g, white chocolate €1.60 per 100 g. what did that cost me",
    "butter €9.50 a kilo, white chocolate €16 a kilo. how much for 150 g of the butter and 250 g of the chocolate",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect(tool).toBe("cost");
    expect(value("cost")).toBeCloseTo(5.425, 6);
  });

  // 180 × 8 / 1000 + 120 × 1.40 / 1000 = 1.44 + 0.168 = 1.608
  test.each([
    "price of a batch that has 180 g butter at €8 a kilo and 120 g sugar at €1.40 a kilo, i mean what it costs me",
    "what's the price of the ingredients: 180 g butter at €8 a kilo and 120 g sugar at €1.40 a kilo",
  ])("%s", async (said) => {
    expect((await withFigures(said)).value("cost")).toBeCloseTo(1.608, 6);
  });

  // 250 × 8 / 1000 + 150 × 1.60 / 1000 = 2 + 0.24 = 2.24
  test.each([
    "prices to keep: butter $8 a kilo, sugar $1.60 a kilo",
    "keep these prices: butter $8 a kilo, sugar $1.60 a kilo",
    "put down the prices: $8 a kilo for butter, $1.60 a kilo for sugar",
    "these are the prices i want you to keep: butter $8/kg, sugar $1.60/kg",
    "for later, butter costs $8 a kilo and sugar $1.60 a kilo",
  ])("%s", async (said) => {
    const { value } = await withFigures(
      "save recipe plain ring: 250 g butter, 150 g sugar",
      said,
      "what does the plain ring cost to make?",
    );
    expect(value("cost")).toBeCloseTo(2.24, 6);
  });
});

describe("habits, and a plan that leans on them", () => {
  test.each([
    ["Mine always mature for 48 hours, remember it.", "mature_h", 48],
    ["i always let them mature for 48 hours, note that as my habit", "mature_h", 48],
    ["my shells always rest for 50 minutes, remember that", "rest_min", 50],
    ["mine always bake 14 minutes, remember it", "bake_min", 14],
  ] as const)("%s", async (said, setting, value) => {
    const { ask, record } = baker();
    await ask(said);
    expect(record().bench[setting]).toBe(value);
    expect(record().timers.length).toBe(0);
  });

  // a rest of 30 min runs beside the first tray's oven for half of its time: the start is 15 min sooner with it
  test.each([
    "and with the rest as usual",
    "now with resting",
    "same with the usual rest",
    "and with a rest of 30 min",
  ])("%s", async (said) => {
    const order = "24 macarons for tomorrow at 4 in the afternoon, what is the latest I can start";
    const rested = await withFigures(order);
    expect((await withFigures(`no-rest method, ${order}`, said)).headline).toBe(rested.headline);
  });
});

describe("of what was said before", () => {
  // 20 macarons take 131.84 g: 5 : 4 of dark ganache is 73.25 g chocolate and 58.6 g cream
  test("that filling as a ganache, where batter was worked out since", async () => {
    const { value } = await withFigures(
      "How much filling do I make for 20 macarons, and how much batter do they need?",
      "make that filling a dark ganache, chocolate and cream please",
    );
    expect(value("chocolate")).toBeCloseTo(73.246, 2);
  });

  // the butter is told twice and is in it once, as where the mix is told alone
  test("told again with one thing more", async () => {
    const mix = "240 g milk chocolate, 100 g heavy cream, 20 g unsalted butter";
    const alone = await withFigures(`water activity of ${mix}`);
    const again = await withFigures(
      "water activity of 240 g milk chocolate and 120 g heavy cream",
      `then with 20 g unsalted butter too, so ${mix}`,
    );
    expect(again.value("aw")).toBeCloseTo(alone.value("aw") ?? 0, 9);
  });

  // 130 g in each of four: 0.5 to 1.5 % gel is 0.65 to 1.95 g
  test.each([
    "how much gel color for one of the four if i split 520 g batter into four",
    "how much gel color for each if i split 520 g batter into four",
    "gel color for one bowl when 520 g batter is split into four",
  ])("%s", async (said) => {
    const gel = (await withFigures(said)).range("gel color") ?? (await lastOf(said))[0]?.figures?.[0];
    expect(gel?.low).toBeCloseTo(0.65, 6);
    expect(gel?.high).toBeCloseTo(1.95, 6);
  });

  // 7 / 200 = 3.5 %
  test("drops are weighed for the bowl that they were asked for", async () => {
    const { value } = await withFigures(
      "how much cocoa powder for 250 g ganache",
      "is 10 drops of lemon flavor ok in 200 g buttercream",
      "7 g",
    );
    expect(value("share")).toBeCloseTo(3.5, 6);
  });

  // 340 × 3 / 4 = 255; half a cup of heavy cream is 119 g
  test("a sum beside a conversion", async () => {
    const answers = await lastOf(
      "Three quarters of 340 is what, and how many grams is half a cup of heavy cream?",
    );
    expect(answers.map(({ figures }) => figures?.[0]?.value)).toEqual([255, 119]);
  });

  test("why a timer is cut short is no question", async () => {
    const { tool, value } = await withFigures("bake timer 16 min", "hmm they look brown already, take off 4");
    expect(tool).toBe("timer");
    expect(value("left")).toBeCloseTo(12, 1);
  });

  test("a label is ordered, and its list comes behind", async () => {
    const { status, headline } = await withFigures(
      "make me a us label. 120 g almond flour, 95 g egg whites, 60 g butter. net weight 150 g",
    );
    expect(status).toBe("answered");
    expect(headline).toContain("150 g");
  });
});
