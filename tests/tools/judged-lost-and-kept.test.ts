/**
 * Times that are judged, what is lost of a bowl, what a pack holds, and numbers that stand by another word. Values by hand:
 * shells rest 30-60 min and bake 12-18 min at 150 °C, of 38 mm (common practice); filled macarons may be out of the fridge
 * for 2 h (USDA FSIS) and are best within 2 months of freezing (from memory); flavor 3-5 % of the buttercream (common
 * practice); the house formula is 1.3 g almond flour to 1 g whites (common practice); a shell takes 0.53 × d² g of batter, d
 * in cm and 3.8 where none is said, of 96 % of it, two to a macaron, 10 % spare; a macaron takes 0.42 × d² g of filling, of
 * 92 % of it (from memory); white ganache for piping is 2.5 : 1, set with butter 100 : 60 : 25 (common practice); a teaspoon
 * of salt is 6 g (NDB 02047), one of baking soda 4.6 g (NDB 18372), a cup of ground almonds 95 g (NDB 12061; all USDA SR28,
 * file WEIGHT). The clock stands on Saturday 14 March 2026.
 */
import { describe, expect, it } from "vitest";
import { figureOf, lastOf, onlyOf } from "../support/ask.ts";
import { expectFigures, expectIn, type Wanted } from "../support/figures.ts";

describe("a time that is told is judged, and no timer set", () => {
  it.each([
    ["i let them bake for 14 min, too long?", /14 min is within the 12-18 min/],
    ["is 14 min too long to bake", /14 min is within the 12-18 min/],
    // 20 − 18
    ["they baked for 20 min, too long?", /20 min is 2 min past the 12-18 min/],
    // 12 − 10
    ["i baked at 150 for 10 min, long enough?", /10 min is 2 min short of the 12-18 min/],
    // 90 − 60
    ["i let them rest for 90 min, is that too long", /1 h 30 min is 30 min past the 30-60 min/],
    ["rested the shells 90 min, is that ok", /1 h 30 min is 30 min past the 30-60 min/],
    // 30 − 20
    ["shells rested 20 min, is that enough", /20 min is 10 min short of the 30-60 min/],
    ["i let them go for 20 min, too long?|bake", /20 min is 2 min past the 12-18 min/],
  ])("%s", async (said, headline) => {
    const answer = await onlyOf(said);
    expect([answer.tool, answer.status]).toEqual(["method", "answered"]);
    expect(answer.headline).toMatch(headline);
  });
  it("asks which step, where none is said", async () => {
    const { tool, status } = await onlyOf("i let them go for 14 min, is that too long");
    expect([tool, status]).toEqual(["method", "asking"]);
  });
  it("has no rule for another size", async () => {
    for (const said of [
      "usually i bake at 150 for 14 min, how long for 45 mm shells",
      "bake time for 45 mm",
      "how long do i bake 4.5 cm macarons",
    ]) {
      const { tool, headline } = await onlyOf(said);
      expect(tool, said).toBe("method");
      expect(headline, said).toMatch(/no rule here for shells of 45 mm/);
    }
  });
  it.each([
    ["set a rest timer for 90 min", 90],
    ["let them rest for 30 min", 30],
  ])("still a timer: %s", (said, left) => expectFigures(said, "timer", { left }));
});

describe("out of the fridge and in the freezer", () => {
  it.each([
    "is it allowed to sell to children after 3 hours on the counter",
    "is it ok to give to children after 3 hours on the counter",
    "are macarons still safe to eat after 3 hours on the buffet table",
    "can these be given to my gran after 2.5 hours in the car",
  ])("past the 2 h: %s", async (said) => {
    const { tool, headline } = await onlyOf(said);
    expect(tool).toBe("keep");
    expect(headline).toMatch(/^No: .*past the 2 h/);
  });
  it.each([
    "froze filled macarons on 1 january, how long do they keep",
    "froze 36 filled macarons on 1 january, how long are they good for",
    "filled macarons frozen on 1 january, how long do they keep",
    "froze 36 macarons on 1 january, how long do they keep",
  ])("two months from 1 January: %s", async (said) => {
    const { headline, figures = [] } = await onlyOf(said);
    expect(headline).toMatch(/2 months ended on Sun 1 Mar/);
    expect(figures.map(({ name }) => name)).not.toContain("in the fridge");
  });
  it("filled on a day is no freezing", async () => {
    const { headline } = await onlyOf("filled macarons on monday, how long do they keep");
    // Monday 9 March is day 1, day 7 the 15th (FDA Food Code 2022, 3-501.17)
    expect(headline).toMatch(/use by Sun 15 Mar/);
  });
  it("not the empty shells", async () => {
    const { headline } = await onlyOf(
      "going to freeze some filled macarons, not the empty shells, for how long is that good",
    );
    expect(headline).toMatch(/2 months/);
  });
});

describe("what is lost of a bowl", () => {
  it.each([
    // (300 − 20) × 3 and 5 %
    ["300 g buttercream, how much vanilla|20 g fell on the floor", 8.4, 14],
    ["300 g buttercream, how much vanilla|i lost 20 g", 8.4, 14],
    ["300 g buttercream, how much vanilla|i dropped 20 g of the buttercream on the floor", 8.4, 14],
    // (300 − 30) × 3 and 5 %
    ["300 g buttercream, how much vanilla|30 g stuck to the bowl", 8.1, 13.5],
  ])("%s", async (said, low, high) => {
    const flavor = await figureOf("flavor", said);
    expect(flavor?.low).toBeCloseTo(low, 6);
    expect(flavor?.high).toBeCloseTo(high, 6);
  });
  it("a flavor that was stirred in is lost with it", async () => {
    // 10 / 300
    const turns = "10 g vanilla in 300 g buttercream, too much|20 g fell on the floor";
    expect((await figureOf("share", turns))?.value).toBeCloseTo(3.3333, 3);
  });
  it("what fell in went in", async () => {
    // 20 / 300
    const turns = "300 g buttercream, how much vanilla|20 g fell into the bowl";
    expect((await figureOf("share", turns))?.value).toBeCloseTo(6.6667, 4);
  });
  it.each([
    ["i dropped one, still want 24", 24],
    // 24 − 1 − 2
    ["the dog ate one and i dropped 2", 21],
    // 24 − 3 − 2
    ["dog ate 3 of them and the cat 2", 19],
    ["i broke two. still need all 24", 24],
    ["i dropped one", 23],
  ])("of 24 filled macarons: %s", (said, macarons) =>
    expectFigures(`24 macarons, how much filling|${said}`, "fill", {
      filling: (macarons * 0.42 * 3.8 ** 2) / 0.92,
    }),
  );
});

describe("what is meant by a number", () => {
  it.each([
    // 2 × 2 / 300
    ["2 vials of mint oil 2 ml each in 300 g buttercream, too much", "share", 1.33333],
    // 3 × 2 / 300
    ["300 g buttercream with 3 vials of 2 ml each of orange oil, too strong?", "share", 2],
    // 2 × 5 / 300
    ["two 5 ml bottles of mint oil in 300 g buttercream, too much?", "share", 3.33333],
    // 155 × 4 %
    [
      "i like 4 in 100 for pear flavour and the bowl of buttercream is 155 g, so how many grams",
      "flavor",
      6.2,
    ],
    // 4.5 / 160
    [
      "4.5 g violet flavor, how much buttercream can i do with it|would it stretch to 160 g?",
      "share",
      2.8125,
    ],
    // 15 / 200
    ["i meant to add 5 g of rum to the 200 g ganache but 15 g went in, too strong?", "share", 7.5],
    // 70 × 1.3
    ["cracked 2 whites, they weigh 70 g, what do the other shell things weigh", "almond flour", 91],
    // 104 × 1.3
    ["70 g whites, what do the others weigh|added another, 104 g now", "almond flour", 135.2],
    // 100 × 45 / 30
    ["this makes 30 and i need 45: 100 g whites 125 g almond 125 g powdered 90 g sugar", "whites", 150],
    // a shell of 38 mm takes 0.53 × 3.8² = 7.6532 g: floor(400 × 0.96 / 7.6532) = 50 shells
    ["400 g of batter, can i get 25 macarons out of it or not", "shells", 50],
    // floor(300 × 0.96 / 7.6532) = 37 shells, two to a macaron
    ["will 300 g batter give me 20 macarons", "macarons", 18],
    // ceil(2.2 × 24) = 53 shells: 53 × 0.53 × 3.5² / 0.96
    ["for this batch of 24 i pipe 3.5 cm, batter", "batter", 358.44],
    ["345 halved", "result", 172.5],
    ["345 halved|minus 40", "result", 132.5],
    // 100 / 60
    ["how many hours is 100 min, no timer, just the number", "result", 1.66667],
    // 2 × 95
    ["dont start a timer yet, first 2 cups almond flour in g", "result", 190],
    ["no rest today so only start the bake timer", "left", 15],
    ["timer 17 min|too much, take one off", "left", 16],
  ])("%s", async (said, name, value) => {
    expect((await figureOf(name, said))?.value).toBeCloseTo(value, 2);
  });
  // 200 / 2.5; then 200 × 60 / 100 and 200 × 25 / 100
  it("no butter, and then with it", async () => {
    const asked = "200 g white chocolate for piping, how much cream, i want no butter in";
    await expectFigures(asked, "ganache", { cream: 80 });
    await expectFigures(`${asked}|changed my mind, the one with butter`, "ganache", {
      cream: 120,
      butter: 50,
    });
  });
  it("more base for what fell in, and not for what was meant", async () => {
    const answer = await onlyOf(
      "wanted 8 g banana flavor in my 250 g buttercream and 18 g fell in. how much plain buttercream saves it",
    );
    // 18 / 5 % − 250, 18 / 4 % − 250
    expectIn(answer, { "add base": [110, 200] });
  });
});

describe("two in a breath", () => {
  // ceil(2.2 × 24) = 53 shells: 53 × 0.53 × 3.8² / 0.96
  const batter = (53 * 0.53 * 3.8 ** 2) / 0.96;
  type Told = [tool: string, headline: RegExp, figures: Record<string, Wanted>];
  const shells: Told = ["shells", /^423 g batter for 53 shells/, { batter, shells: 53, macarons: 24 }];
  // what is wrong with shells, 10 °C less than 150 for one, is from memory
  it.each<[string, Told[]]>([
    ["usually i rest them 40 min, batter for 24 macarons", [["bench", /^Rest 40 min/, { rest: 40 }], shells]],
    [
      "whisked the whites 10 min, no peaks. batter for 24 macarons",
      [["trouble", /^Meringue that will not peak/, {}], shells],
    ],
    ["my shells are hollow. batter for 24 macarons", [["trouble", /^Hollow shells/, { oven: 140 }], shells]],
    [
      "tsp of salt in g and tsp of baking soda in g",
      [
        ["convert", /salt/, { result: 6 }],
        ["convert", /baking soda/, { result: 4.6 }],
      ],
    ],
    [
      "note: rhubarb, split one tray by mistake. seven out of ten",
      [["note", /rhubarb.*seven out of ten/, { rating: 7 }]],
    ],
  ])("%s", async (said, told) => {
    const answers = await lastOf(said);
    expect(answers.map(({ tool, headline }) => [tool, headline])).toEqual(
      told.map(([tool, headline]) => [tool, expect.stringMatching(headline)]),
    );
    for (const [at, [, , figures]] of told.entries()) expectIn(answers[at], figures);
  });
  it("asks for the hour of a day's order, not for how many", async () => {
    const asked = await onlyOf("24 today");
    expect([asked.tool, asked.status, asked.question]).toEqual([
      "day",
      "asking",
      expect.stringMatching(/what time/),
    ]);
    const kept = await lastOf("save my size 3.5 cm, 24 today");
    expect(kept.map(({ tool, status }) => [tool, status])).toEqual([
      ["bench", "answered"],
      ["day", "asking"],
    ]);
    expect(kept[0]?.figures).toMatchObject([{ name: "shell diameter", value: 35, unit: "mm" }]);
    expect(kept[1]?.question).toMatch(/what time/);
  });
});
