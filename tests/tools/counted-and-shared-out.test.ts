/**
 * Orders told by how many there are of each, and counts and weights that stand beside one another: none of them is
 * dropped, none taken for another. Worked by hand: a macaron takes 0.42 × d² g of filling, of which 8 % stay in bowl and
 * bag; a shell 0.53 × d² g of batter, of which 4 % stay (from memory), d in cm and 3.8 where none is said; spares 10 %
 * (from memory); a white 33 g (USDA SR, NDB 01124); the house formula 100 : 130 : 130 : 100 (common practice).
 */
import { describe, expect, test } from "vitest";
import { stepped } from "../../src/tools/split/adds-up.ts";
import { baker, figureOf, lastOf, onlyOf } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const fillingFor = (macarons: number) => (macarons * 0.42 * 3.8 ** 2) / 0.92;
const batterFor = (shells: number) => (shells * 0.53 * 3.8 ** 2) / 0.96;

/** The grams of an answer's figures by their names. */
const gramsIn = (figures: readonly { name: string; value?: number; unit: string }[] = []) =>
  Object.fromEntries(
    figures.flatMap(({ name, value, unit }) => (unit === "g" && value ? [[name, value]] : [])),
  );

describe("so many with one filling and so many with another", () => {
  test.each<[string, Record<string, number>]>([
    [
      "15 macarons raspberry buttercream and 15 pistachio ganache, how much filling",
      { "raspberry buttercream": 15, "pistachio ganache": 15 },
    ],
    [
      "fill 15 w raspberry buttercream 15 w pistachio ganache how much each",
      { "raspberry buttercream": 15, "pistachio ganache": 15 },
    ],
    ["how much buttercream for 15 and ganache for 15", { buttercream: 15, ganache: 15 }],
    ["how much buttercream for 20 and how much ganache for 10", { buttercream: 20, ganache: 10 }],
    [
      "20 with lemon buttercream, 10 with dark ganache. how much of each",
      { "lemon buttercream": 20, "dark ganache": 10 },
    ],
    [
      "filling for 12 raspberry buttercream, 18 pistachio ganache",
      { "raspberry buttercream": 12, "pistachio ganache": 18 },
    ],
    [
      "20 lemon buttercream macarons and 10 dark ganache macarons, how much filling do i need",
      { "lemon buttercream": 20, "dark ganache": 10 },
    ],
    [
      "30 macarons, 15 raspberry buttercream 15 pistachio ganache, how much filling each",
      { "raspberry buttercream": 15, "pistachio ganache": 15 },
    ],
    [
      "12 each of lemon buttercream and dark ganache how much do i make",
      { "lemon buttercream": 12, "dark ganache": 12 },
    ],
    ["15 macarons of each flavor, lemon and rose, how much filling", { lemon: 15, rose: 15 }],
    [
      "40 macarons, 25 of them caramel and the rest coffee, how much filling each",
      { caramel: 25, coffee: 15 },
    ],
    [
      "half of 40 macarons with buttercream, half with ganache, how much each",
      { buttercream: 20, ganache: 20 },
    ],
    ["3 flavors 30 macarons 12 9 9 how much filling each", { "for 12": 12, "for 9": 9 }],
    ["30 macarons, 2 flavors raspberry pistachio", { raspberry: 15, pistachio: 15 }],
    ["40 macarons, 4 flavors: lemon, rose, mint and coffee, filling for each?", { lemon: 10, coffee: 10 }],
    [
      "how many macarons from 15 g buttercream|fill 15 w rose buttercream 15 w mint ganache how much each",
      {
        "rose buttercream": 15,
        "mint ganache": 15,
      },
    ],
    [
      "set a 30 min timer for tray 1|how long left|how much buttercream for 15 and ganache for 15",
      {
        buttercream: 15,
        ganache: 15,
      },
    ],
  ])("%s", async (said, counts) => {
    const grams = gramsIn((await onlyOf(...said.split("|"))).figures);
    for (const [name, count] of Object.entries(counts)) expect(grams[name]).toBeCloseTo(fillingFor(count), 6);
  });

  // 3 to 5 % of 98.88 g and 3 to 4 % of it (common practice)
  test.each([
    "15 macarons with raspberry buttercream and 15 with pistachio ganache, how much filling each. how much flavor in each",
    "so i have like 30 macarons to make for a friend on saturday and she wants half of them raspberry and the other half pistachio, the raspberry with buttercream and the pistachio with white chocolate ganache, how much buttercream and how much ganache do i need and flavor in each",
  ])("and the flavor of each: %s", async (said) => {
    const [filling, ...doses] = await baker().ask(said);
    expect(gramsIn(filling?.figures)["pistachio ganache"]).toBeCloseTo(fillingFor(15), 6);
    expect(doses.map(({ figures }) => figures?.[0]?.high)).toEqual([
      expect.closeTo(fillingFor(15) * 0.05, 6),
      expect.closeTo(fillingFor(15) * 0.04, 6),
    ]);
  });
});

describe("flavors that are counted are no grams of one", () => {
  test.each<[string, number]>([
    ["2 flavors 30 macarons", 15],
    ["30 macarons in three flavours", 10],
    ["24 macarons, 3 flavors, how much filling each", 8],
    ["how much filling for 48 macarons|3 flavors", 16],
    ["shell recipe for 30 macarons|in 3 flavors", 10],
  ])("%s", async (said, each) =>
    expect((await figureOf("filling", ...said.split("|")))?.value).toBeCloseTo(fillingFor(each), 6),
  );

  test.each([
    "shell recipe for 30 macarons|two flavours: raspberry n pistachio",
    "batter for 30|two flavors raspberry and pistachio",
    "filling for 30|two flavours: raspberry n pistachio",
    "shell recipe for 30 macarons|half of them raspberry, other half pistachio",
  ])("the order stays: %s", async (said) => {
    const grams = gramsIn((await onlyOf(...said.split("|"))).figures);
    expect([grams.raspberry, grams.pistachio]).toEqual([
      expect.closeTo(fillingFor(15), 6),
      expect.closeTo(fillingFor(15), 6),
    ]);
  });

  // ceil(2.2 × 30) = 66 shells, of their batter 130 / 460 almond flour; 450 / 2
  test.each<Case>([
    ["what do i buy for 30 macarons in 2 flavors", "buy", { "almond flour": (batterFor(66) * 130) / 460 }],
    ["batter for 30 macarons in 2 flavors", "shells", { batter: batterFor(66), shells: 66, macarons: 30 }],
    ["split 450 g buttercream in 2 flavors lemon and rose", "split", { lemon: 225, rose: 225 }],
  ])("but %s is %s's", (...one) => expectFigures(...one));

  // spirits 2-5 % of either (from memory)
  test("two bowls are no flavors: a dose for each", async () => {
    const doses = await lastOf("how much rum for 150 g buttercream and 90 g ganache");
    expect(doses.map(({ tool, figures }) => [tool, figures?.[0]?.low, figures?.[0]?.high])).toEqual([
      ["dose", expect.closeTo(3, 6), expect.closeTo(7.5, 6)],
      ["dose", expect.closeTo(1.8, 6), expect.closeTo(4.5, 6)],
    ]);
  });
});

test.each([
  ["rest 30 tray 1 and 2", 30],
  ["rest 35 trays 2", 35],
])("%s: no batter, and no figure but those minutes", async (said, minutes) => {
  const answers = await lastOf(said);
  expect(answers.length).toBeGreaterThan(0);
  for (const { tool, figures = [] } of answers) {
    expect(tool).not.toBe("shells");
    expect(figures.filter(({ value, unit }) => value !== minutes || unit !== "min")).toEqual([]);
  }
});

describe("two bowls, enough for so many: what they weigh together", () => {
  test.each<[string, number, number]>([
    ["have 140 g buttercream n 90 ganache enough for 30?", 30, 230],
    ["is 140 g buttercream and 90 g ganache enough for 40 macarons", 40, 230],
    ["got 100 g buttercream, 60 g ganache, will that do 30", 30, 160],
    ["will 200 g buttercream and 90 g ganache do 30", 30, 290],
  ])("%s", async (said, macarons, grams) => {
    const { headline, figures } = await onlyOf(said);
    expect(headline).toMatch(grams >= fillingFor(macarons) ? /^Enough/ : /^Not enough/);
    // floor(G × 0.92 / 6.0648)
    expect(figures?.find(({ name }) => name === "macarons")?.value).toBe(
      Math.floor((grams * 0.92) / (0.42 * 3.8 ** 2)),
    );
  });
});

describe("so much in each, of so many to fill: n × g / 0.92", () => {
  test.each<[string, number]>([
    ["fill 30, 5 g each, how much do i need", (30 * 5) / 0.92],
    ["5 g each to fill 30", (30 * 5) / 0.92],
    ["fill 24 with 6 g each", (24 * 6) / 0.92],
    ["150 g batter pink 300 green, gel in each|fill 30, 5 g each, how much do i need", (30 * 5) / 0.92],
  ])("%s", async (said, grams) =>
    expect((await figureOf("filling", ...said.split("|")))?.value).toBeCloseTo(grams, 6),
  );

  // 0.42 × 3.8² = 6.0648
  test.each([
    "how much is in one macaron",
    "buttercream from 110 g whites|how much is in one macaron",
    "buttercream from 110 g whites|how much goes in each macaron",
  ])("in one: %s", async (said) =>
    expect((await figureOf("filling", ...said.split("|")))?.value).toBeCloseTo(6.0648, 6),
  );
});

// gel 0.5 to 1.5 % of the batter (from memory)
test.each<[string, number[]]>([
  ["150 g batter pink 300 green, gel in each", [2.25, 4.5]],
  ["150 g pink batter and 300 g green batter, gel in each", [2.25, 4.5]],
  ["i have 200 g batter blue, 100 g yellow and 100 g red. how much gel for each", [3, 1.5, 1.5]],
])("each bowl its color: %s", async (said, most) =>
  expect((await baker().ask(said)).map(({ figures }) => figures?.[0]?.high)).toEqual(
    most.map((grams) => expect.closeTo(grams, 6)),
  ),
);

describe("whites that were weighed one by one", () => {
  test.each<[string, number]>([
    ["4 whites 30g each", 120],
    ["5 whites of 28 g each", 140],
    ["4 egg whites at 31 g each, how much almond flour", 124],
    ["i have 3 whites, 30 31 and 33 g. recipe?", 94],
    ["buttercream from 4 whites 30 g each", 120],
    ["4 eggs, whites weigh 30 g each", 120],
    ["2 whites 70 g", 70],
    ["4 whites", 132],
  ])("%s: %d g", async (said, grams) =>
    expect((await figureOf("whites", said))?.value).toBeCloseTo(grams, 6),
  );

  // 120 × 4.6 = 552 g; floor(552 × 0.96 / 7.6532) = 69 shells
  test("behind what a bowl gives", async () =>
    expect(
      (await figureOf("shells", "how many macarons from 400 g batter", "4 whites 30g each"))?.value,
    ).toBe(69));

  test.each([
    ["i only have 3 eggs, 58 61 and 64 g, how much whites is that", /58, 61 and 64 g/],
    ["i have 4 eggs of 60 g each, how much recipe", /60 g/],
    ["5 L eggs how much whites", /large egg/],
    ["3 small eggs how many macarons", /small/],
  ])("eggs count 33 g each, and what was told of them is named: %s", async (said, named) =>
    expect((await onlyOf(said)).assumed?.join("; ")).toMatch(named),
  );
});

describe("the recipe of what was said last", () => {
  test.each<[string, number]>([
    ["shell recipe for 30 macarons|i have 3 eggs|ok and the recipe from that", 99],
    ["shell recipe for 30 macarons|i have 3 eggs|so whats the recipe then", 99],
    ["shell recipe for 30 macarons|i only have 90 g whites|give me the recipe for that", 90],
  ])("%s", async (said, grams) =>
    expect((await figureOf("whites", ...said.split("|")))?.value).toBeCloseTo(grams, 6),
  );

  // 99 × 4.6 = 455.4 g: floor(455.4 × 0.96 / 7.6532) = 57 shells, 28 macarons
  test("and its filling", async () =>
    expect(
      (
        await figureOf(
          "filling",
          "shell recipe for 30 macarons",
          "i have 3 eggs",
          "how much filling do i need",
        )
      )?.value,
    ).toBeCloseTo(fillingFor(28), 6));

  // 298 / 2.6
  test.each([
    "sieved dry mix 298 how much whites",
    "how much whites for 298 g dry mix",
    "my dry mix weighs 298 g, how much egg whites do i need",
  ])("almond flour and powdered sugar together: %s", async (said) =>
    expect((await figureOf("whites", said))?.value).toBeCloseTo(298 / 2.6, 6),
  );

  // in two, 5 s of the mixer after the first and 7-10 s after the second (common practice)
  test("how it is folded in stays a question of the step", () =>
    expectFigures("do I add the dry mix to the meringue all at once", "method", {
      additions: 2,
      "after the first": 5,
      "after the second": [7, 10],
    }));
});

describe("spares move and the order stays", () => {
  // ceil(60 × 1.2), 60, ceil(60 × 1.05), ceil(60 × 1.25)
  test.each<[string, number]>([
    ["batter for 30|n what if 10% more spare", 72],
    ["batter for 30|n what if 10% more spare|without spare", 60],
    ["batter for 30|5 % fewer spares", 63],
    ["batter for 30|and with 20% spare|5% more spare", 75],
    ["batter for 30 with 10% more spare", 72],
  ])("%s: %d shells", async (said, shells) => {
    const { figures } = await onlyOf(...said.split("|"));
    expect(figures?.find(({ name }) => name === "shells")?.value).toBe(shells);
    expect(figures?.find(({ name }) => name === "batter")?.value).toBeCloseTo(batterFor(shells), 6);
    expect(figures?.find(({ name }) => name === "macarons")?.value).toBe(30);
  });

  test("of a recipe too", async () =>
    expect(
      (await figureOf("total", "shell recipe for 30 macarons", "what if i want 10 % more spare"))?.value,
    ).toBeCloseTo(batterFor(72), 6));
});

describe("how wide they came out: √(B × 0.96 / n / 0.53) cm", () => {
  test.each<[string, number, number]>([
    ["i got 71 shells out of 520 g, what size are they", 520, 71],
    ["how many do i get from 400 g|at 38|i got 71 shells out of 520 g, what size are they", 520, 71],
    ["what size are my shells if 71 came out of 520 g", 520, 71],
    ["520 g batter made 71 shells, how big is one", 520, 71],
    ["how wide are they if i got 40 shells from 300 g", 300, 40],
    ["got 35 macarons out of 520 g batter what size is that", 520, 70],
  ])("%s", async (said, grams, shells) =>
    expect((await figureOf("diameter", ...said.split("|")))?.value).toBeCloseTo(
      10 * Math.sqrt((grams * 0.96) / shells / 0.53),
      6,
    ),
  );

  // 400 g at 38 mm: floor(384 / 7.6532) = 50 shells; at 45 mm: floor(384 / 10.7325) = 35
  test.each<[string, number]>([
    ["at 38", 50],
    ["at 45", 35],
  ])("a size behind a bowl: %s", async (said, shells) =>
    expect((await figureOf("shells", "how many do i get from 400 g", said))?.value).toBe(shells),
  );

  test("shells that were counted pair up", async () =>
    expect(
      (await figureOf("macarons", "i got 71 shells from 520 g batter, how many macarons is that"))?.value,
    ).toBe(35));

  test.each<[string, number]>([
    ["one shell is broken so 29", 14],
    ["one shell is broken so 29|and half that", 7],
    ["one shell is broken so 29|and half that|double", 14],
    ["three shells smashed leaves 57", 28],
    ["2 shells cracked, so i have 40. how many macarons", 20],
  ])("what is left of them: %s", async (said, macarons) =>
    expect((await figureOf("macarons", ...said.split("|")))?.value).toBe(macarons),
  );
});

// a cup of granulated sugar 200 g (NDB 19335), of ground almonds 95 g (NDB 12061), 16 tablespoons to a cup (NIST Handbook
// 44); a cup of cream 238 g, and a tablespoon has a row of its own: 15.0 g (NDB 01053; all USDA SR28, file WEIGHT)
test.each<[string, number]>([
  ["half a cup sugar + 2 tbsp", 125],
  ["1 cup of cream plus 2 tbsp in grams", 238 + 2 * 15],
  ["1 cup almond flour plus 2 tbsp in grams", (95 * 18) / 16],
  ["1/2 cup sugar plus 2 tbsp sugar in grams", 125],
])("one thing in two measures: %s", async (said, grams) =>
  expect((await figureOf("result", said))?.value).toBeCloseTo(grams, 6),
);

test.each(["how many drops in 1.5 g", "how many drops is 1 g", "how many drops is 2 g flavor"])(
  "%s has no rule",
  async (said) => {
    const { tool, status, figures } = await onlyOf(said);
    expect([tool, status, figures]).toEqual(["dose", "declined", undefined]);
  },
);

describe("parts that are shown add up", () => {
  test("by tenths, where whole grams don't", async () => {
    const { rule, headline } = await onlyOf("split 515 g batter pink and green");
    expect(headline).toBe("pink 258 g, green 258 g");
    expect(rule?.text).toMatch(/: 257\.5 \+ 257\.5 = 515 g$/);
    expect((await onlyOf("split 516 g batter pink and green")).rule?.text).toMatch(/in the bowl$/);
  });

  test.each<[number[], number, number, number[]]>([
    [[500 / 3, 500 / 3, 500 / 3], 500, 0.1, [166.7, 166.7, 166.6]],
    [[257.5, 257.5], 515, 1, [258, 257]],
    [[10, 20], 30, 1, [10, 20]],
  ])("%j of %d", (parts, total, step, shown) =>
    expect(stepped(parts, total, step)).toEqual(shown.map((each) => expect.closeTo(each, 9))),
  );

  test("no such step, no sum", () => expect(stepped([0.05, 0.1], 0.15, 0.1)).toBeUndefined());
});
