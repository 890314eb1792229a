/**
 * What is told to be kept or to be worked from: a recipe in a list with its new size, a recipe with the order to keep it,
 * notes in other orders, stock, and what is asked of the answer before. Expected values are worked by hand beside them.
 */
import { describe, expect, test } from "vitest";
import { baker, withFigures } from "../support/ask.ts";

/** 110 whites, 140 almond flour, 125 icing sugar, 95 caster sugar: factor 154 / 110 = 1.4. */
const list = "110 g whites, 140 g almond flour, 125 g icing sugar, 95 g caster sugar";

describe("a recipe in a list, and what it is to be brought to", () => {
  test.each([
    `my own list is ${list}. i want it on 154 g whites`,
    `my mixture is ${list}. whites weigh 154 g this time`,
    `the list on the fridge: ${list}. could you bring that to 154 g whites? thanks`,
    `i want my list on 154 g whites, its ${list}`,
    `${list} -> 154 g whites`,
    "here's what i normally do: almond flour 140 g, icing sugar 125 g, caster sugar 95 g, whites 110 g. scale up to whites 154 g",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect(tool).toBe("scale");
    expect(value("almond flour")).toBeCloseTo(196, 6);
    expect(value("powdered sugar")).toBeCloseTo(175, 6);
    expect(value("granulated sugar")).toBeCloseTo(133, 6);
  });

  // 88 / 110 = 0.8: 140 g become 112 g
  test("the size is put right", async () => {
    const { value } = await withFigures(
      `my own list is ${list}. i want it on 154 g whites`,
      "wait i misread the scale, it's 88",
    );
    expect(value("almond flour")).toBeCloseTo(112, 6);
  });

  // what is there sets the size by the scarcest: 95 g of granulated sugar, so 95 g of whites of the house formula
  test("what stands in the cupboard is no recipe", async () => {
    const { value } = await withFigures(`i have ${list} and another 20 g whites`);
    expect(value("whites")).toBeCloseTo(95, 6);
  });
});

describe("a recipe that is told with the order to keep it", () => {
  const lines = "120 g almond flour, 115 g powdered sugar, 85 g granulated sugar, 95 g whites";
  test.each([
    `this is my recipe cloud shells, keep it: ${lines}`,
    `this is cloud shells, please save: ${lines}`,
    `save this one as cloud shells - ${lines}`,
    `keep this for later, cloud shells: ${lines}`,
    `cloud shells is ${lines}, keep it`,
    `write down my recipe cloud shells: ${lines}`,
  ])("%s", async (said) => {
    const { ask } = baker();
    const [saved] = await ask(said);
    expect(saved?.tool).toBe("formula");
    expect(saved?.headline).toContain("Saved cloud shells");
    // twice 95 g of whites
    const [scaled] = await ask("make it with 190 g whites");
    expect(scaled?.tool).toBe("scale");
    expect(scaled?.figures?.find(({ name }) => name === "almond flour")?.value).toBeCloseTo(240, 6);
    const [shown] = await ask("now show me cloud shells as i saved it");
    expect(shown?.tool).toBe("formula");
    expect(shown?.figures?.find(({ name }) => name === "whites")?.value).toBe(95);
  });

  test("an order is no name for what was told", async () => {
    const { tool, headline } = await withFigures(`save it: ${lines}`, "show my recipes");
    expect(tool).toBe("formula");
    expect(headline).not.toContain("Saved");
  });
});

describe("notes told in another order", () => {
  test.each([
    "put with it that it was a bit too sweet",
    "also write beside it that it was too sweet",
    "could you put there too that it was too sweet",
    "let it also say that it was too sweet",
    "with that goes: it was too sweet",
  ])("more of the note before: %s", async (more) => {
    const { ask } = baker();
    await ask("note, earl grey batch, whites were aged 2 days");
    expect((await ask(more))[0]?.tool).toBe("note");
    const [read] = await ask("what did i write about the earl grey");
    expect(read?.tool).toBe("recall");
    expect(JSON.stringify(read)).toContain("too sweet");
  });

  // the clock stands at Saturday, March 14: Wednesday was the 11th
  test.each([
    "i forgot to note wednesday: on march 11 i made blackcurrant, big feet",
    "should have noted this wednesday: blackcurrant, big feet",
    "wednesday's isnt in the notes yet: blackcurrant, big feet",
  ])("a day that was forgotten: %s", async (said) => {
    const { ask } = baker();
    expect((await ask(said))[0]?.headline).toContain("11 Mar");
    expect(JSON.stringify(await ask("what was it i baked on wednesday"))).toContain("blackcurrant");
  });

  test.each([
    "just boxed the passion fruit ones, feet even but the filling is a bit runny id say 8 out of ten can you keep that in the notes",
    "passion fruit ones today, filling runny, that goes in my notes",
    "passion fruit batch done, filling runny, can the notes have that please",
  ])("the order at its end: %s", async (said) => {
    const { ask, record } = baker();
    expect((await ask(said))[0]?.tool).toBe("note");
    const text = record().notes.at(-1)?.text ?? "";
    expect(text).toContain("runny");
    expect(text).not.toContain("notes");
  });

  test("what is asked is no note", async () => {
    expect((await withFigures("how was the lemon batch, is that in the notes")).tool).toBe("recall");
  });
});

// milk, piping 2 : 1: 2 × 120 − 180 = 60 g; dark, 1.25 × 110 − 100 = 37.5 g
test.each([
  ["milk chocolate ganache is a puddle, i want to pipe it, i used 180 g chocolate and 120 g cream", 60],
  ["dark one's a puddle. 100 g dark chocolate, 110 g cream. should be for piping", 37.5],
])("a ganache that flows: %s", async (said, grams) => {
  const { tool, value } = await withFigures(said);
  expect(tool).toBe("ganache");
  expect(value("add chocolate")).toBeCloseTo(grams, 6);
});

// milk, piping 2 : 1: 260 / 2; dark 1.25 : 1: 150 / 1.25
test.each([
  ["milk chocolate, i have 260 g of it, ganache to pipe, so cream is", 130],
  ["dark chocolate, ive got 150 g of that, piping ganache, how much cream", 120],
])("so much of what was named: %s", async (said, grams) => {
  expect((await withFigures(said)).value("cream")).toBeCloseTo(grams, 6);
});

// 30 macarons: 66 shells of 7.6532 g, / 0.96 = 526.16 g batter; whites 526.16 × 100 / 460 = 114.38 g
test.each([
  "whats the weights for shells if i bake 30 macarons",
  "what do the shells need by weight if 30 macarons get baked",
])("the weights of so many that are baked: %s", async (said) => {
  const { tool, value } = await withFigures(said);
  expect(tool).toBe("scale");
  expect(value("whites")).toBeCloseTo(114.38, 1);
});

test.each([
  "pantry has 100 g almond flour in it, note that down as stock",
  "note down that the pantry has 100 g almond flour",
  "stock: 100 g almond flour, jot that down",
])("stock and no note: %s", async (said) => {
  const { ask, record } = baker();
  expect((await ask(said))[0]?.tool).toBe("shelf");
  expect(record().notes.length).toBe(0);
});

describe("a step from what came out", () => {
  test.each<[string, string, number]>([
    // two sticks of 113 g
    ["2 sticks of butter in grams", "take 50 off that", 176],
    ["2 sticks of butter in grams", "and 50 less than that", 176],
    // 2 cups of 95 g
    ["2 cups almond flour in grams", "take off 40 g", 150],
    // a cup of 238 g
    ["a cup of cream in grams", "add 20 to it", 258],
    ["half a cup of sugar in grams", "plus 25", 125],
  ])("%s | %s", async (first, then, result) => {
    const { tool, value } = await withFigures(first, then);
    expect(tool).toBe("convert");
    expect(value("result")).toBeCloseTo(result, 6);
  });
});

describe("a bill without one of its lines", () => {
  const bill = "100 g almond flour at $12 a kg, 200 g butter at $8 a kg, 60 g sugar at $2 a kg, cost?";
  // 1.20 + 1.60 + 0.12
  test.each<[string, number]>([
    ["and without the butter", 1.32],
    ["minus the butter", 1.32],
    ["not counting the almond flour", 1.72],
    ["no sugar in it", 2.8],
  ])("%s", async (said, cost) => {
    const { tool, value } = await withFigures(bill, said);
    expect(tool).toBe("cost");
    expect(value("cost")).toBeCloseTo(cost, 6);
  });
});

// one and a half times 100 g of whites: in the place of twice, and not of what that made
test.each([
  "that's too much, one and a half times",
  "thats more than i need, 1.5 times is enough",
  "no that's a lot, once and a half",
])("another factor in the place of one: %s", async (said) => {
  expect((await withFigures("give me the house recipe twice over", said)).value("whites")).toBeCloseTo(
    150,
    6,
  );
});

// six whites of 33 g, two of them gone: 132 g
test.each(["four eggs, i dropped two", "two eggs fell on the floor, four"])("%s", async (said) => {
  expect((await withFigures("whites of 6 eggs, almond flour?", said)).value("whites")).toBeCloseTo(132, 6);
});

test("what is left on a timer, behind something else", async () => {
  const { tool, value } = await withFigures(
    "start the bake timer",
    "2/3 cup granulated sugar is how many grams",
    "and what's left on the bake",
  );
  expect(tool).toBe("timer");
  expect(value("left")).toBe(15);
});

// 30 macarons for 18:00, no rest: three trays piped by 14:40 + 75 min, baked 15 min each
test("the hour at which they are due is no number of macarons", async () => {
  const { headline } = await withFigures(
    "somebody wants 30 macarons tomorrow at 6pm, when must i get going",
    "and if i go with the no rest method, still for 6",
  );
  expect(headline).toContain("30 macarons");
});
