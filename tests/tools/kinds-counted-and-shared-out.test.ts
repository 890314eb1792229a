/** Orders counted by kind, batter for so many shared out at once, two days in one order: one number may never stand for all. */
import { describe, expect, it } from "vitest";
import { baker, lastOf, onlyOf, withFigures } from "../support/ask.ts";

// their number alone: what they weigh stands in the tests of shells and fillings
const sums = async (said: string) => (await withFigures(said)).value("macarons");

describe("so many of each kind are one order", () => {
  it.each([
    ["how much batter for 24 lemon and 12 rose macarons", 36],
    ["shells for 24 lemon macarons and 12 rose macarons", 36],
    ["24 lemon, 12 rose and 12 coffee macarons, how much batter", 48],
    ["how many whites for 24 pink and 12 white macarons", 36],
    ["batter for 24 macarons and 12 more", 36],
    ["batter for 18 macarons, 12 lemon and 6 rose", 18],
    ["three kinds, 12 each: lemon, rose, coffee. batter?", 36],
    ["3 flavors 12 of each, how much batter", 36],
  ])("%s", async (said, macarons) => expect(await sums(said)).toBe(macarons));

  // two thirds and one third of all
  it("shares the filling out by the counts", async () => {
    const { value } = await withFigures("filling for 24 lemon and 12 rose macarons");
    const [lemon = 0, rose = 0, total = 0] = ["lemon", "rose", "total"].map(value);
    expect(lemon).toBeCloseTo(2 * rose, 6);
    expect(lemon + rose).toBeCloseTo(total, 6);
    expect(total).toBeCloseTo((await withFigures("filling for 36 macarons")).value("filling") ?? 0, 6);
  });
});

// 2 × N shells and those that were said to be spare; a pair is two of them
describe("spares that are counted", () => {
  it.each([
    ["batter for 30 with 2 spare pairs", 64],
    ["batter for 30 and 4 spare shells", 64],
    ["batter for 30, 2 spare", 62],
    ["batter for 24 and a couple of spare pairs", 52],
    ["batter for 24, no spares", 48],
    ["batter for 24 with 10 % spare", 53],
  ])("%s", async (said, shells) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("shells")]).toEqual(["shells", shells]);
  });
});

describe("sizes asked in a list", () => {
  it.each([
    "45 macarons at 4.5 cm. batter, filling, and how many trays?",
    "40 macarons, batter, filling, trays",
    "batter, filling and number of trays for 40 macarons",
    "40 macarons: how much batter, how much filling, how many trays?",
  ])("%s", async (said) =>
    expect((await lastOf(said)).map(({ tool, status }) => [tool, status])).toEqual([
      ["shells", "answered"],
      ["fill", "answered"],
      ["shells", "answered"],
    ]),
  );
});

// 22 × 0.42 × 3.8² / 0.92
it.each([
  "batter for 22 macarons? filling for them too",
  "batter for 22 macarons, filling too",
  "filling for 22 macarons? batter for them too",
])("%s", async (said) => {
  const answers = await lastOf(said);
  expect(answers.map(({ tool }) => tool).sort()).toEqual(["fill", "shells"]);
  const filling = answers.flatMap(({ figures = [] }) => figures).find(({ name }) => name === "filling");
  expect(filling?.value).toBeCloseTo(145.0278, 3);
});

describe("batter for so many, and what goes into each bowl", () => {
  it.each([
    ["batter for 40 macarons, half pink half white", [1, 1]],
    ["batter for 40 macarons, 2:1 pink and white", [2, 1]],
    ["batter for 40 macarons, a third pink and the rest white", [1, 2]],
    ["shells for 40 macarons, 60 % pink 40 % plain", [3, 2]],
    ["batter for 40 macarons split three ways", [1]],
    ["40 macarons half pink half white, how much batter", [1, 1]],
    ["40 macarons, 2:1 pink and white, batter?", [2, 1]],
    ["batter for 24 pink and 16 white macarons", [3, 2]],
  ])("%s", async (said, parts) => {
    const [shells, split, ...more] = await lastOf(said);
    expect([shells?.tool, split?.tool, more.length]).toEqual(["shells", "split", 0]);
    const batter_g = shells?.figures?.find(({ name }) => name === "batter")?.value ?? 0;
    const weights = (split?.figures ?? []).map(({ value }) => value ?? 0);
    const all = parts.length === 1 ? 3 : parts.reduce((sum, each) => sum + each, 0);
    parts.forEach((part, at) => {
      expect(weights[at]).toBeCloseTo((batter_g * part) / all, 6);
    });
  });

  // behind a plan, kept or not: of as many
  it.each([
    "36 macarons for saturday noon, when do i start",
    "36 macarons for tomorrow noon, when do i start",
  ])("%s, and batter for that, half pink half white", async (order) => {
    const [shells, split] = await lastOf(order, "batter for that, half pink half white");
    expect([shells?.tool, split?.tool]).toEqual(["shells", "split"]);
    expect(shells?.figures?.find(({ name }) => name === "macarons")?.value).toBe(36);
  });

  it.each([
    "batter for 40 macarons 10 % extra",
    "batter for 40 macarons and 10 % spare",
    "batter for 30 macarons in pink",
    "batter for 40 macarons",
  ])("%s is one question", async (said) => expect((await onlyOf(said)).tool).toBe("shells"));
});

describe("two days are two orders", () => {
  it.each([
    "24 macarons for friday 3pm and 10 for saturday",
    "24 macarons for friday 3pm, and 10 more for saturday",
    "order: 24 for friday, 36 for sunday",
  ])("%s", async (said) => {
    const { tool, status, headline } = await onlyOf(said);
    expect([tool, status]).toEqual(["day", "asking"]);
    expect(headline).toMatch(/two orders/);
  });

  it("the hour of the other is asked for when its turn comes", async () => {
    const said = ["24 macarons for friday 3pm and 10 for saturday", "the first", "and the other one"];
    expect(await onlyOf(...said)).toMatchObject({ tool: "day", status: "asking" });
    expect(await onlyOf(...said, "noon")).toMatchObject({
      status: "answered",
      headline: expect.stringContaining("for 10 macarons"),
    });
  });

  // two parts of the batter and one
  it.each([
    "36 macarons for saturday 3pm, 24 pink and 12 white, when to start",
    "24 pink and 12 white macarons for saturday 3pm, when to start",
    "36 macarons for saturday 3pm, 2:1 pink and white, when to start",
  ])("%s", async (said) => {
    const { value } = await withFigures(said);
    const batter_g = value("batter") ?? 0;
    expect(value("pink")).toBeCloseTo((batter_g * 2) / 3, 6);
    expect(value("white")).toBeCloseTo(batter_g / 3, 6);
  });

  it("one day is one order", async () => {
    const { headline } = await onlyOf("24 macarons for friday 3 pm, please");
    expect(headline).toContain("for 24 macarons");
  });
});

describe("what was named is in an answer", () => {
  // 4 of whites by 33 g (USDA SR, NDB 01124)
  it.each([
    ["batter from 4 whites and how long do they rest", "shells"],
    ["shells form three whites, and 300 f in c please", "scale"],
  ])("%s", async (said, tool) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => each.status)).toEqual(["answered", "answered"]);
    expect(answers.some((each) => each.tool === tool)).toBe(true);
  });

  // 2 to 5 % of the 252 g that they make
  it.each([
    "Ganache: 140 dark, 112 crème. Adding orange liqueur. Grams?",
    "140 dark 112 cream, orange liqueur?",
    "140 g dark 112 g cream, adding orange liqueur, how much?",
  ])("%s", async (said) => {
    const { range } = await withFigures(said);
    expect(range("orange liqueur")).toMatchObject({
      low: expect.closeTo(5.04, 6),
      high: expect.closeTo(12.6, 6),
    });
  });

  it("a ganache that names no flavor is judged", async () =>
    expect((await onlyOf("140 dark 112 cream, what ratio?")).tool).toBe("ganache"));

  it.each(["230 g buttercream, rum and also lemon zest", "230 g buttercream: rum and also lemon zest"])(
    "%s",
    async (said) => {
      const answers = await lastOf(said);
      expect(answers.flatMap(({ figures = [] }) => figures.map(({ name }) => name))).toEqual([
        "rum",
        "lemon zest",
      ]);
    },
  );
});

describe("told in other words", () => {
  // one fifth of 500 g are whites, three tenths sugar, half of it butter
  it.each([
    "how much SMBC for 500 g",
    "how much smbc stuff for 500 g of it",
    "how much of everything for 500 g buttercream",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("whites"), value("sugar"), value("butter")]).toEqual(["buttercream", 100, 150, 250]);
  });

  // common practice: 20 °C or 25 °F less where a fan blows
  it.each([
    ["oven in the book reads 325 F regular, mine blows air. set to", 300],
    ["recipe says 160 C normal, mine is a blower", 140],
    ["my oven circulates hot air, recipe says 160 C", 140],
  ])("%s", async (said, heat) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("result")]).toEqual(["convert", heat]);
  });

  // saved under a person's name, it is nobody else's
  it("granny shells", async () => {
    const saved = "save recipe granny shells: whites 110 g, almond flour 125 g";
    const { tool, value } = await withFigures(saved, "granny shells from 55 g whites");
    expect([tool, value("whites"), value("almond flour")]).toEqual(["scale", 55, 62.5]);
    expect((await onlyOf("my mum has 900 g almond flour")).tool).toBe("help");
  });

  // made on the 6th, its seventh day is the 12th
  it("put together on a day", async () =>
    expect((await onlyOf("these went together on march 6, can i still sell em today?")).headline).toMatch(
      /2026-03-12/,
    ));

  // 12 g are 5 % of 240 g
  it.each([
    "if 12 g is 5 % what's the bowl",
    "12 g is 5 percent of what",
    "what bowl is 12 g five percent of",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("base")]).toEqual(["dose", 240]);
  });

  it.each([
    ["remind me in 45 to take the butter out", 45],
    ["in 20 remind me about the ganache", 20],
    ["ring in 10", 10],
    ["remind me in half an hour to flip the trays", 30],
  ])("%s", async (said, minutes) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("left")]).toEqual(["timer", minutes]);
  });

  // half of 4 × 33 g whites, sugar 1.5 and butter 2.5 times as much: 330 g; 3 to 5 % and 1 to 2 % of it
  it.each([
    "flavor half of it lemon and half vanilla extract",
    "lemon for half of it and vanilla extract for the other half",
  ])("%s", async (said) => {
    const { ask } = baker();
    await ask("smbc from 4 whites");
    const figures = (await ask(said)).flatMap((each) => each.figures ?? []);
    expect(figures.map(({ name, low, high }) => [name, low, high])).toEqual([
      ["flavor", expect.closeTo(9.9, 6), expect.closeTo(16.5, 6)],
      ["vanilla extract", expect.closeTo(3.3, 6), expect.closeTo(6.6, 6)],
    ]);
  });

  // 40 macarons of 38 mm take 40 × 0.42 × 3.8² / 0.92 = 263.7 g
  it.each([
    "i have 100 g raspberry jam for the centers and 200 g buttercream for the ring, enough for 40",
    "200 g buttercream ring and 100 g raspberry jam center, enough for 40?",
  ])("%s", async (said) => {
    const { tool, headline } = await onlyOf(said);
    expect([tool, headline]).toEqual(["fill", expect.stringMatching(/^Enough/)]);
  });

  it("jam in a ganache flavors it", async () =>
    expect((await onlyOf("20 g raspberry jam in 200 g buttercream, ok?")).tool).toBe("dose"));

  it.each([
    "so yesterday was forty eight hazelnut ones and i burnt the last tray at 165, eight out of ten please keep that",
    "yesterday 48 hazelnut ones, burnt the last tray, 8 out of 10, keep that",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures(said);
    expect([tool, value("macarons"), value("rating")]).toEqual(["note", 48, 8]);
  });

  it("a timer keeps the name it is given", async () => {
    const answer = await onlyOf("set 1h15 for the fridge", "call the fridge one chilled shells");
    expect(answer.headline).toContain("chilled shells");
  });

  it.each([
    ["are these free of egg and milk", /egg/],
    ["do my hazelnut macarons have gluten", /isn't sure/],
    ["does the buttercream have dairy", /contain milk/],
  ])("%s", async (said, words) => {
    const { tool, headline } = await onlyOf(said);
    expect([tool, headline]).toEqual(["label", expect.stringMatching(words)]);
  });

  // Saturday the 14th: made on Tuesday the 10th, their seventh day is the 16th; on Tuesday the 17th, the 23rd
  it.each([
    ["kept in fridge since tuesday filled, can i take them to the party saturday", /use by Mon 16 Mar/],
    ["will they keep from tuesday to sunday if i fill them tuesday", /Yes, on Sun 22 Mar.*use by Mon 23 Mar/],
    ["in the fridge since tuesday, can i sell them saturday", /Which day/],
  ])("%s", async (said, words) => expect((await onlyOf(said)).headline).toMatch(words));

  it.each(["plan: 24 for tuesday 11 am, lemon ganache", "order: 24 for tuesday 11 am, lemon ganache"])(
    "%s",
    async (said) => expect((await onlyOf(said)).headline).toMatch(/for 24 macarons/),
  );
});
