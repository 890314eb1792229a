/**
 * Recipes from a card, by a name and by what lies on the scale; batches told for the notes; fillings, sticks, cups and
 * timers that are told of again. Worked by hand.
 * House formula by weight: whites 100, almond flour 130, powdered sugar 130, granulated sugar 100, 460 in all (common
 * practice). One large egg's white weighs 33 g (USDA SR, NDB 01124). Filling to make: 0.42 d² g a macaron, d in cm, 3.8
 * where none is said, over 0.92; ring 60 %, center 40 % (from memory). Meringue buttercream: whites 100, sugar 150,
 * butter 250 (common practice); a stick of butter weighs 113 g, a tablespoon of it 14.2 g, a cup of ground almonds 95 g,
 * a teaspoon of instant coffee 1 g (USDA SR28 portions).
 */
import { describe, expect, it } from "vitest";
import { baker, lastOf } from "../support/ask.ts";
import { expectIn, type Wanted } from "../support/figures.ts";

type Figures = Readonly<Record<string, Wanted>>;

/** The last turn's one answer, with the figures that are wanted of it. */
async function holds(turns: string, figures: Figures) {
  const [answer, ...others] = await lastOf(turns);
  expect(others, turns).toEqual([]);
  expectIn(answer, figures, 4, turns);
}

const each = (cases: readonly [string, Figures][]) => it.each(cases)("%s", holds);

describe("a weight is of the thing that was put on the scale", () => {
  // 88 × 1.3 = 114.4, 98 × 1.3 = 127.4, 105 × 1.3 = 136.5, 72 × 1.3 = 93.6, 140 × 1.3 = 182
  const whites88 =
    "just weighed my egg whites and theyre 88 g so whats the almond flour and the sugar and icing sugar";
  each([
    [whites88, { whites: 88, "almond flour": 114.4, "granulated sugar": 88 }],
    [`${whites88}|whoops tare was on. 98`, { whites: 98, "almond flour": 127.4 }],
    [
      "my egg whites came to 94 g, how much almond flour and both sugars",
      { whites: 94, "almond flour": 122.2 },
    ],
    [
      "cracked my whites into the bowl and they weigh 105 g, whats the almond flour and the sugar then",
      { whites: 105, "almond flour": 136.5 },
    ],
    [
      "the scale says 72 g for the whites, so what do i need of almond flour and icing sugar",
      { whites: 72, "almond flour": 93.6 },
    ],
    ["whites in the jug, the scale reads 140 g. what of the others for shells", { "almond flour": 182 }],
    // 132 / 1.3
    ["weighed the almonds, came out at 132 g. whites and both sugars?", { whites: 101.538462 }],
    // of nothing that was weighed: batter, 500 × 130 / 460
    ["how much almond flour and sugar for 500 g", { total: 500, "almond flour": 141.304348 }],
  ]);
});

describe("a card is a recipe", () => {
  const card =
    "my card: 110 g whites, 140 g almonds, 125 g icing sugar, 100 g caster sugar. today its 77 g whites, new amounts?";
  each([
    // 77 / 110 = 0.7
    [card, { whites: 77, "almond flour": 98, "powdered sugar": 87.5, "granulated sugar": 70 }],
    [`${card}|and twice the card`, { whites: 220, "almond flour": 280, "granulated sugar": 200 }],
    // 112 / 140 = 0.8
    [`${card}|same card, only 112 g almonds though`, { whites: 88, "powdered sugar": 100 }],
    [
      `${card}|and twice the card|same card, only 112 g almonds though`,
      { whites: 88, "powdered sugar": 100 },
    ],
    // 80 / 100
    [
      "our card: 100 g whites, 130 g almond flour, 120 g icing sugar, 90 g sugar. now theres only 80 g whites",
      { "almond flour": 104, "powdered sugar": 96, sugar: 72 },
    ],
  ]);
});

describe("whites by number, told again", () => {
  const two = "the rest of the shell mix if i crack two large whites";
  each([
    [two, { whites: 66, "almond flour": 85.8 }],
    [`${two}|four of them`, { whites: 132, "almond flour": 171.6 }],
    [`${two}|four of them|one more on top of the four, so 5`, { whites: 165, "almond flour": 214.5 }],
    ["rest of the batter mix if i use 3 egg whites|make it five of them", { whites: 165 }],
    [
      "6 whites, how much almond flour and sugars for shells|4 whites only, dropped two",
      { "almond flour": 171.6 },
    ],
    ["4 egg whites, how much of everything for shells|dropped one, only 3", { whites: 99 }],
    ["three quarters of the house shell recipe|sod it, double", { whites: 200, "almond flour": 260 }],
    ["half the house recipe|screw it, triple", { whites: 300 }],
  ]);
  const stock = "i have 95 g whites and 110 g almond flour, how big a batch can i do";
  each([
    // 95 × 1.3 = 123.5, 140 less that
    [
      `${stock}|i tell a lie, the almond flour is 140 g`,
      { "almond flour": 123.5, "almond flour left": 16.5 },
    ],
    [
      "my whites weigh 88 g, whats everything else for the shells|how much batter is that|and the weights if i only want 400 g batter",
      { whites: 86.956522, "almond flour": 113.043478 },
    ],
  ]);
});

describe("a name that nobody has saved is no house formula", () => {
  it.each([
    ["cloud mix scaled to 150 g almond flour", "cloud mix"],
    ["scale cloud mix to 75 g whites", "cloud mix"],
    ["double cloud mix", "cloud mix"],
    ["half of cloud mix please", "cloud mix"],
    ["cloud mix times two", "cloud mix"],
    ["cloud mix for 40 macarons", "cloud mix"],
    ["make my moonlight recipe for 40 macarons", "moonlight"],
    ["scale the pistachio recipe to 200 g almond flour", "pistachio"],
    ["one and a half times the blue moon recipe", "blue moon"],
    ["i want the sunday mix from 90 g whites", "sunday mix"],
    ["how much almond flour for the sunday mix with 90 g whites", "sunday mix"],
    ["cloud shells from 66 g whites", "cloud shells"],
    ["triple my grandmas recipe", "grandmas"],
  ])("%s", async (line, name) => {
    const answer = await baker().one(line);
    expect(answer.status).toBe("asking");
    expect(answer.headline).toContain(`no recipe called "${name}"`);
    expect(answer.figures ?? []).toEqual([]);
  });
  // the house formula, by its own words
  each([
    ["scale my shell recipe to 200 g almond flour", { whites: 153.846154 }],
    ["scale the house recipe to 75 g whites", { "almond flour": 97.5 }],
    ["double the macaron recipe", { whites: 200 }],
    ["double the pistachio shells", { whites: 200 }],
    ["scale everything to 90 g whites", { "almond flour": 117 }],
    ["shrink the recipe to 2 whites", { whites: 66 }],
    ["dbl house recipe pls", { whites: 200 }],
    ["make two batches of the house recipe", { whites: 200 }],
  ]);
  // its lines are told when they are asked for: 150 / 120 = 1.25
  const told =
    "cloud mix scaled to 150 g almond flour|100 g whites, 120 g almond flour, 120 g powdered sugar, 80 g granulated sugar";
  each([
    [told, { whites: 125, "granulated sugar": 100 }],
    [`${told}|and from 75 g whites`, { "almond flour": 90, "granulated sugar": 60 }],
  ]);
});

describe("a recipe saved under a name", () => {
  const lines = "120 g almond flour, 120 g powdered sugar, 100 g whites, 80 g granulated sugar";
  const saves = [
    `my own recipe, please save it under the name cloud mix. ${lines}`,
    `save this under cloud mix: ${lines}`,
    `${lines}, keep that under the name of cloud mix`,
    `i have a recipe called cloud mix, ${lines}, save it`,
    `please save under the name cloud mix my recipe: ${lines}`,
  ];
  it.each(saves)("%s", async (line) => {
    const { one } = baker();
    expect((await one(line)).headline).toContain("Saved cloud mix");
    const scaled = await one("cloud mix scaled to 150 g almond flour");
    expect(scaled.figures?.find((each) => each.name === "whites")?.value).toBeCloseTo(125, 6);
    expect(scaled.rule?.basis).toBe("your bench");
    const again = await one("and from 75 g whites");
    expect(again.figures?.find((each) => each.name === "almond flour")?.value).toBeCloseTo(90, 6);
  });
});

describe("batches told for the notes", () => {
  it.each([
    ["fig batch for the notes, 9/10", "fig"],
    ["one more for the log: coconut, baked 16 min", "coconut"],
    ["another one for the notebook, banana, 8/10", "banana"],
    ["pop this one in the notebook: fig, lovely feet", "fig"],
    ["could you get this in the log: mango, 7 out of 10, hollow", "mango"],
    ["yesterdays batch was cardamom, lopsided feet, get it in the notes", "cardamom"],
    ["jasmine was the flavour yesterday, lopsided, bung it in the log", "jasmine"],
    ["peach batch done today, sticky bottoms, file it under the notes please", "peach"],
    ["lime batch today, 8/10, a few hollow. can you pop that in the diary for me please", "lime"],
    ["we baked vanilla on sunday, oven 150, 15 min, stick it in my notes", "vanilla"],
    [
      "this morning i made earl grey macarons, about forty of them, they rose beautifully and id say eight out of ten, could you write it in the notebook for me",
      "earl grey",
    ],
  ])("%s", async (line, flavor) => {
    const { one, record } = baker();
    expect((await one(line)).headline).toContain("Noted");
    // "they rose" names no flavor
    expect(record().notes.map((each) => each.flavors)).toEqual([[flavor]]);
  });
  it.each([
    "also put in there that the shells were a bit dark underneath",
    "and mention in that one that the shells were dark",
    "also write in there the shells were dark",
    "put in there too that they were dark",
  ])("%s", async (line) => {
    const { one, record } = baker();
    await one("record a batch: orange blossom, rested 40 min");
    expect((await one(line)).headline).toContain("Added");
    expect(record().notes).toHaveLength(1);
    expect(record().notes[0]?.text).toMatch(/dark/);
  });
  it("asks nothing to be written where notes are only asked about", async () => {
    const { one, record } = baker();
    for (const line of ["any hollow ones in my notes?", "did i write it in the notes"]) await one(line);
    expect(record().notes).toEqual([]);
  });
});

describe("a filling told again", () => {
  // 0.42 × 3.8² = 6.0648; × 72 / 0.92 = 474.636522, × 45 / 0.92 = 296.647826; ring 60 %
  const two = "doing a jam centre inside a ring of buttercream, 30 macarons, how much do i need of each";
  each([
    [
      "filling to make for 72 macs|jam centers in those, buttercream ring round",
      { ring: 284.781913, center: 189.854609 },
    ],
    ["buttercream walls and lemon curd middles, 45 macarons, how much of each", { ring: 177.988696 }],
    [`${two}|bump that up to 45`, { ring: 177.988696, center: 118.65913 }],
    [
      `${two}|bump that up to 45|forget the jam, just buttercream in all 45, how much`,
      { filling: 296.647826 },
    ],
    ["ring of ganache and jam center for 45|scrap the jam, only ganache in them", { filling: 296.647826 }],
    // 0.42 × 4² = 6.72; × 40 / 0.92
    [
      "theres 250 g filling in the bag, how many macarons can i fill|hm mine are bigger, 4 cm|the other way: filling to make for 40 of that size",
      { filling: 292.173913 },
    ],
    // 0.42 × 3² = 3.78; × 32 and 50 / 0.92
    ["32 minis of 3 cm, how much filling", { filling: 131.478261 }],
    ["32 minis of 3 cm, how much filling|and for 50 of them", { filling: 205.434783 }],
  ]);
});

describe("sticks, cups and timers told again", () => {
  each([
    // 3 × 113 = 339: whites 339 / 2.5, sugar 339 × 0.6
    [
      "two sticks of butter for swiss meringue buttercream, whites and sugar?|found a third stick so 3",
      { whites: 135.6, sugar: 203.4 },
    ],
    ["3 sticks butter for smbc|theres a fourth stick", { butter: 452, whites: 180.8 }],
    ["one stick of butter, smbc, whites and sugar|found a second stick", { butter: 226, whites: 90.4 }],
    // 2.5 × 95, 1.5 × 14.2
    ["two and a half cups of icing sugar weigh what|almond flour, same number of cups", { result: 237.5 }],
    ["1.5 tbsp honey in g|and butter, as many tablespoons", { result: 21.3 }],
    ["3 tsp instant cofee in grams", { result: 3 }],
  ]);
  it.each(["what else is going", "anything else running", "whats left going"])("%s", async (line) => {
    const { ask } = baker();
    await ask("25 min for resting and 40 min for the ganache, go");
    await ask("kill the ganache one");
    const [answer] = await ask(line);
    expect(answer?.tool).toBe("timer");
    expect(answer?.figures).toEqual([{ name: "left", value: 25, unit: "min" }]);
  });
});
