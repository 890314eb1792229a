/**
 * Two things in one turn, often dictated, and then one of them changed by its name. Expected values are worked by hand,
 * the rule beside each.
 */
import { describe, expect, it } from "vitest";
import { figureOf, lastOf, onlyOf } from "../support/ask.ts";
import { near, range } from "../support/near.ts";

describe("'an' where 'and' is meant", () => {
  // concentrated flavor in buttercream 3-5 %: of 280 g
  it.each(["its two hundred an eighty grams", "um two hundred n eighty grams"])("%s", async (said) =>
    expect(await figureOf("flavor", "how much toffee flavour for my buttercream", said)).toMatchObject(
      range(8.4, 14),
    ),
  );

  it("in a heat", async () =>
    // a fan oven is 20 °C cooler (common practice)
    expect(
      await figureOf("result", "my book says a hundred an sixty celsius conventional, i use a fan oven"),
    ).toMatchObject(near(140)));

  // spirits 2-5 % of 300 g
  it.each(["rum for 300 g ganache an set nine min", "rum for 300 g ganache, an also nine min on the timer"])(
    "%s",
    async (said) => expect((await lastOf(said)).map(({ tool }) => tool)).toEqual(["dose", "timer"]),
  );

  it.each(["set an timer for 15 min", "timer an hour an ten"])("%s is one", async (said) =>
    expect((await onlyOf(said)).tool).toBe("timer"),
  );

  it("is an article before a vowel", async () =>
    expect(
      await figureOf("flavor", "an eighty gram bowl of buttercream, how much lemon flavor"),
    ).toMatchObject(range(2.4, 4)));
});

describe("the flavor in its form", () => {
  // nut paste 10-20 % of 200 g
  it.each([
    "and the hazelnut for 200 g",
    "the hazelnut for 200 g of ganache?",
    "and for 200 g of the ganache the hazelnut",
  ])("%s", async (said) => {
    for (const first of ["hazelnut paste for 140 g ganache", "hazelnut paste and salt for 140 g ganache"])
      expect(await figureOf("hazelnut paste", first, said)).toMatchObject(range(20, 40));
  });

  // without "the" a taste is a concentrated flavor: 3-4 % of 200 g in ganache
  it("named anew it is a flavor", async () =>
    expect(
      await figureOf("flavor", "hazelnut paste for 140 g ganache", "how much hazelnut for 200 g ganache"),
    ).toMatchObject(range(6, 8)));
});

describe("the one that is named, with something else between", () => {
  const lemon = "lemon flavor for 190 g buttercream and what is 275 F in C";
  // 3-5 % of 260 g
  it.each([
    "and if the bowl was two hundred and sixty instead, the lemon",
    "what about the lemon for 260",
    "the lemon if its 260 g",
    "oh the lemon bowl is 260 actually",
  ])("%s", async (said) => expect(await figureOf("flavor", lemon, said)).toMatchObject(range(7.8, 13)));

  // 3-4 % of 190 g
  it("in another mix, behind a timer", async () =>
    expect(
      await figureOf(
        "flavor",
        "lemon flavor for 190 g buttercream and set a timer for 10 min",
        "the lemon in ganache instead",
      ),
    ).toMatchObject(range(5.7, 7.6)));

  // powdered sugar, sifted: 100 g a cup (USDA SR28)
  it("of two that were converted", async () =>
    expect(
      await figureOf(
        "result",
        "1 3/4 cups powdered sugar to grams and 3 tbsp butter to grams",
        "and the powdered sugar if it's sifted?",
      ),
    ).toMatchObject(near(175)));

  it("a recipe by what is in it", async () =>
    expect(
      await figureOf(
        "honey",
        "double 65 g butter, 90 g honey, plus what is 11 oz in g",
        "no triple the butter one",
      ),
    ).toMatchObject(near(270)));

  // whites 100 : sugar 150 : butter 250
  it.each(["and with 400 g butter?", "what if its 400 g butter", "for 400 g butter what whites and sugar"])(
    "%s",
    async (said) =>
      expect(
        await figureOf("whites", "smbc with 320 g butter, rest? and salt for the lot", said),
      ).toMatchObject(near(160)),
  );

  it("a bowl of less than nothing", async () =>
    expect(
      await figureOf(
        "flavor",
        "-20 g of ganache whats the flavor, and what is 5 oz in g",
        "ok make it 120 g ganache",
      ),
    ).toMatchObject(range(3.6, 4.8)));

  // price = cost / (1 − margin): 9 / 0.4
  it("a margin that can't be", async () =>
    expect(
      await figureOf(
        "price",
        "a box costs 9 dollars, price for a hundred percent margin; also two cups cream in grams",
        "fine the price at sixty percent margin then",
      ),
    ).toMatchObject(near(22.5)));
});

describe("one flavor for another", () => {
  // spirits 2-5 % of 200 g
  it.each([
    "swap the rum for kirsch",
    "replace the rum with kirsch",
    "switch rum to kirsch",
    "substitute kirsch for the rum",
  ])("%s", async (said) => {
    const answers = await lastOf("rum for 200 g ganache", said);
    expect(answers.map(({ headline }) => headline)).toEqual(["4 to 10 g kirsch"]);
  });

  it.each([
    "dark ganache, 260 g. rum?",
    "dark ganache 260 g. want rum in it",
    "i have dark ganache, 260 g, rum please",
  ])("%s", async (said) => expect(await figureOf("rum", said)).toMatchObject(range(5.2, 13)));

  it("a dark ganache alone is weighed out", async () =>
    expect((await onlyOf("dark ganache, 260 g")).tool).toBe("ganache"));

  it("what sticks to the hands is no bowl", async () =>
    // jam 5-15 % of 300 g in buttercream
    expect(
      await figureOf(
        "apricot jam",
        "my hands r covered in batter how much apricot jam in 300 g of buttercream",
      ),
    ).toMatchObject(range(15, 45)));
});

describe("nothing of the turn is lost", () => {
  // in one macaron 0.42 × 3.8² g, 8 % left in the bowl: N × 6.0648 / 0.92
  it.each(["filling for 54 macarons and for 18", "filling for 54 and 18 macarons"])("%s", async (said) =>
    expect((await lastOf(said)).flatMap(({ figures = [] }) => figures[0])).toMatchObject([
      near((54 * 6.0648) / 0.92),
      near((18 * 6.0648) / 0.92),
    ]),
  );

  it.each([
    ["how many macarons from 420 g batter and batter for 36 macarons", ["shells", "shells"]],
    ["cream for 150 g dark and cream for 200 g dark", ["ganache", "ganache"]],
    ["batter for 40 macarons and the filling for the 40", ["shells", "fill"]],
    ["weights for 85 g whites. also bake timer 15 min", ["scale", "timer"]],
    ["dark ganache, 260 g, timer 5 min", ["ganache", "timer"]],
    ["why is my batter runny some days, and fan oven for 150 c", ["trouble", "convert"]],
    ["why are the bottoms stickin, and why does my meringue not peak", ["trouble", "trouble"]],
    ["how much buttercream will 9 g lemon flavor do and how many grams is 3 oz", ["dose", "convert"]],
    ["call me at eleven an also in fifty minutes", ["timer", "timer"]],
    ["note rhubarb batch, hollow ones. note quince batch, all full.", ["note", "note"]],
  ])("%s", async (said, tools) => expect((await lastOf(said)).map(({ tool }) => tool)).toEqual(tools));

  it("two notes are two in the record", async () =>
    expect(
      (
        await lastOf(
          "note rhubarb batch, hollow ones. note quince batch, all full.",
          "which batch was hollow",
        )
      )[0]?.headline,
    ).toMatch(/rhubarb(?!.*quince)/));

  it("the same for another number, and a question", async () =>
    expect(
      (
        await lastOf("weights for 50 macarons", "same for thirty, and how many whites to crack for thirty")
      ).map(({ tool }) => tool),
    ).toEqual(["scale", "shells"]));
});

describe("at the clock", () => {
  it.each([
    "tray two needs five more minutes",
    "tray two wants another five minutes",
    "tray two could do with 5 more min",
  ])("%s", async (said) =>
    expect(await figureOf("left", "18 min for tray one and 35 min for tray two", said)).toMatchObject(
      near(40),
    ),
  );

  // 9:30 to 11:00
  it("an hour behind a heat is none of its degrees", async () =>
    expect(await figureOf("left", "whats 150 F in C", "ring me at eleven")).toMatchObject(near(90)));

  it.each([
    "need thirty six tomorow at ten in the morning is that possible",
    "what about tomorrow at ten for the 36",
  ])("%s", async (said) => expect((await onlyOf(said)).status).toBe("impossible"));
});

it("filled ones keep, whatever became of those that were out", async () =>
  // 7 days (FDA Food Code 2022, 3-501.17)
  expect(
    (
      await lastOf("filled macarons were out 3 hours, ok?", "how long do filled ones last in the fridge then")
    )[0]?.headline,
  ).toMatch(/^7 days/));

// a piping ganache of dark 1.25 : 1: 350 / 1.25 − 200
it("'thik' is thick", async () =>
  expect(
    await figureOf(
      "add cream",
      "ganache too thik for piping, dark, three hundred fifty choc two hundred cream",
    ),
  ).toMatchObject(near(80)));

describe("so many of those", () => {
  // powder color 0.3-1 % of two parts of 200 g; rum 2-5 % of two bowls of 300 g
  it.each([
    ["powder color", 1.2, 4, ["split 600 g batter in three", "powder color for two of them"]],
    [
      "powder color",
      1.2,
      4,
      ["split 600 g batter in three, the powder color for one", "and for two of them"],
    ],
    ["powder color", 0.6, 2, ["split 600 g batter in three", "powder color for one of the three"]],
    ["rum", 12, 30, ["rum for 300 g ganache", "and for two of them"]],
  ] as const)("%s", async (name, low, high, turns) =>
    expect(await figureOf(name, ...turns)).toMatchObject(range(low, high)),
  );
});

it("fridge and freezer", async () =>
  expect((await lastOf("how long do filled macarons keep, and in the freezer")).length).toBe(2));
