/**
 * What must not get lost on the way: an allergen in the name of a filling, a sum beside other sums, a heat and a time
 * side by side in a note, and what is asked of the shelf. Allergens: 21 U.S.C. 321(qq), Regulation (EU) 1169/2011,
 * Annex II; a ganache is cream, a buttercream butter and whites (the book's recipes). Sums by arithmetic: price =
 * cost / (1 − margin). Weights by the house formula: 130 / 460 of the batter is almond flour, 100 / 460 whites.
 */
import { describe, expect, it } from "vitest";
import { lastOf, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

/** The lines of a label, by their names. */
async function labelOf(...turns: string[]) {
  const [answer] = await lastOf(...turns);
  const line = (name: string) => String(answer?.items?.find((each) => each.line === name)?.text ?? "");
  const checks = (answer?.items ?? []).flatMap((each) => (each.check ? [String(each.check)] : []));
  return { answer, ingredients: line("ingredients"), allergens: line("allergens"), line, checks };
}

const shells = "149 g almond flour, 114 g egg whites, 114 g sugar";

describe("every part of a filling's name is declared", () => {
  it.each([
    ["60 g peanut buttercream", ["peanut", "milk", "egg"]],
    ["60 g pistachio ganache", ["pistachio", "milk"]],
    ["pistachio ganache 60 g", ["pistachio", "milk"]],
    ["60 g walnut cream", ["walnut", "milk"]],
    ["60 g buttercream with peanut butter", ["peanut", "milk"]],
    ["60 g butter pecan buttercream", ["pecan", "milk"]],
    ["30 g ganache with hazelnuts", ["hazelnut", "milk"]],
    ["60 g macadamia white chocolate ganache", ["macadamia", "milk"]],
    ["20 g lemon curd", ["egg", "milk"]],
    ["20 g biscuit crumbs", ["wheat"]],
    ["20 g brazil nut crunch", ["Brazil nut"]],
    ["60 g hazelnut and caramel buttercream", ["hazelnut", "milk"]],
  ])("us label with %s", async (line, brings) => {
    const { allergens, ingredients } = await labelOf(`us label: ${shells}, ${line}`);
    for (const each of ["almond", "egg", ...brings]) expect(allergens).toContain(each);
    expect(ingredients).toContain("almond flour (almonds)");
  });

  it("the line is called by its whole name, and in the EU the allergens stand out in it", async () => {
    expect((await labelOf(`us label: ${shells}, 60 g peanut buttercream`)).ingredients).toContain(
      "peanut buttercream",
    );
    const { ingredients } = await labelOf(`eu label: ${shells}, 60 g pistachio ganache`);
    expect(ingredients).toContain("PISTACHIO ganache (MILK)");
  });

  it("a second word that is no thing by itself stays in the name", async () => {
    const { ingredients } = await labelOf(`us label: ${shells}, 20 g tahini caramel, 10 g sesame brittle`);
    expect(ingredients).toContain("tahini caramel, sesame brittle");
  });

  it("a saved recipe keeps it", async () => {
    const { allergens, ingredients } = await labelOf(
      `save recipe party mix: ${shells}, 60 g pistachio ganache, 30 g peanut buttercream`,
      "us label for party mix",
    );
    expect(ingredients).toContain("pistachio ganache, peanut buttercream");
    expect(allergens).toBe("Contains: almond, egg, milk, peanut, pistachio");
  });

  it("on paper too, turns later", async () => {
    const { ingredients, allergens } = await labelOf(
      `us label: ${shells}, 60 g pistachio ganache`,
      "net weight 90 g",
      "print label",
    );
    expect(ingredients).toContain("pistachio ganache");
    expect(allergens).toContain("pistachio");
  });

  it("a taste named ahead of the list is declared, and named as not weighed", async () => {
    const { allergens, checks } = await labelOf(
      "label for pistachio macarons: 149 g almond flour, 100 g egg whites, 60 g white chocolate ganache",
    );
    expect(allergens).toContain("pistachio");
    expect(checks.some((each) => each.startsWith("pistachio: named without a weight"))).toBe(true);
  });

  it("what goes into a mix is no mix, and what isn't in it isn't declared", async () => {
    const { ingredients, allergens } = await labelOf(
      "eu label, no hazelnut: almond flour 149, whites 114, 40 g butter for the buttercream",
    );
    expect(ingredients).toBe("Ingredients: ground ALMONDS, EGG whites, butter (MILK)");
    expect(allergens).not.toContain("HAZELNUT");
  });

  it("with nothing known for certain it never says none of the nine", async () => {
    const { answer, allergens, checks } = await labelOf("us label: 100 g mystery crunch");
    expect(allergens).toBe("Contains: ______");
    expect(checks).toEqual([expect.stringMatching(/^mystery crunch: /)]);
    expect(answer?.headline).toMatch(/not complete, check mystery crunch$/);
  });
});

describe("almond and egg are in every macaron, whatever was spoken of", () => {
  it.each([
    [["nut allergy at the party"]],
    [["egg free version?"]],
    [["200 g white chocolate ganache 3:1", "nut allergy at the party"]],
    [["200 g white chocolate ganache 3:1", "egg free version?"]],
    [["somebody coming is coeliac"]],
  ])("%j", async (turns) => {
    const [answer] = await lastOf(...turns);
    expect(answer?.tool).toBe("label");
    expect(answer?.headline).toMatch(/almond(?: and|,) egg/);
    expect(answer?.question).toBeUndefined();
  });

  it("but the ganache alone, where that is asked", async () => {
    const [answer] = await lastOf("200 g white chocolate ganache 3:1", "allergens in the ganache");
    expect(answer?.headline).toContain("Declare milk;");
  });
});

describe("a day and a name said for the label", () => {
  // 14 March is day 1: day 7 is the 20th
  it("use by in 5 days, and not past day 7", async () => {
    const of = await labelOf(`us label: ${shells}`, "label it as 90g box use by in 5 days");
    expect(of.line("use by")).toBe("2026-03-19");
    expect(of.line("net weight")).toContain("90 g");
    const [late] = await lastOf(`us label: ${shells}, made today`, "use by in 9 days");
    expect(late?.status).toBe("impossible");
  });

  it("a name and address without the order behind it", async () => {
    const { line } = await labelOf(`us label: ${shells}`, "my name is Ida Holm, 3 Mill Lane, put it on");
    expect(line("name and address")).toBe("Ida Holm, 3 Mill Lane");
  });
});

const sums: Case[] = [
  // (12 + 1.80) / 0.55
  ["12 eur ingredients, box 1.80, i want 45% margin, 30 pcs", "cost", { cost: 13.8, price: 25.090909 }],
  ["12 eur ingredients, 45% margin, box is 1.80", "cost", { cost: 13.8, price: 25.090909 }],
  // (12 + 1.80 + 30) / 0.6
  ["12 eur ingredients, box 1.80, 40% margin|plus labor 30", "cost", { cost: 43.8, price: 73 }],
  // (9 + 1.20) / 0.4
  ["$9 ingredients, box at 1.20, 60 % margin", "cost", { cost: 10.2, price: 25.5 }],
  // a box holds six: 6 × 0.45 + 0.60 = 3.30 of 15
  [
    "price 2.50 each, 6 in a box, box 0.60, ingredients 0.45 each. margin?",
    "cost",
    { cost: 3.3, price: 15, margin: 78 },
  ],
  // 12 × 0.40 + 1.10 = 5.90 of 12 × 2.20 = 26.40: 20.50 are left of it, 77.65 %
  [
    "sell at 2.20 each, ingredients 0.40 each, box of 12, box 1.10, margin?",
    "cost",
    { cost: 5.9, price: 26.4, margin: 2050 / 26.4 },
  ],
  // 30 take 526.1575 g batter: 148.6967 almond and powdered sugar, 114.3821 sugar and whites, an egg to 33 g of these
  // 148.6967 × 0.0149 + 148.6967 × 0.0021 + 114.3821 × 0.0012 + 114.3821 / 33 × 0.30
  [
    "12 eur ingredients, 45% margin|almond flour 14.90 per kg, sugar 1.20, powdered sugar 2.10, eggs 30 ct each, butter 9.50 per kg, what do 30 macarons cost",
    "cost",
    { cost: 3.704939 },
  ],
  // 114.3821 / 33 × 0.32 + 148.6967 × 0.017 + 114.3821 × 0.0012
  [
    "eggs 3.20 for 10|almond flour 15 a kilo|powdered sugar 2 a kilo|sugar 1.20 a kilo|what do 30 macarons cost",
    "cost",
    { cost: 3.774262 },
  ],
];

describe("every sum counts", () => {
  it.each(sums)("%s", async (said, tool, figures) => {
    await expectFigures(said, tool, figures);
  });

  it("a sum of which nothing says what it is for is asked about", async () => {
    for (const [said, sum] of [
      ["12 eur ingredients, cookies 1.80, 45% margin", "1.80"],
      ["$9 ingredients, 1.20 for the postman, 60 % margin", "1.20"],
    ] as const) {
      const { tool, status, question, figures } = await talk(said);
      expect([tool, status, figures]).toEqual(["cost", "asking", undefined]);
      expect(question).toContain(`What is the ${sum} for?`);
    }
  });

  it("the filling alone of a batch isn't what the batch costs", async () => {
    const { status, headline, figures } = await talk(
      "12 eur ingredients, 45% margin, 30 pcs",
      "what does the pistachio filling cost",
    );
    expect([status, figures]).toEqual(["asking", undefined]);
    expect(headline).toContain("pistachio filling alone");
  });

  it("stock and its price in one breath: 9.80 / 200 g is 49 a kilo", async () => {
    const { tool, headline, of } = await talk("pistachio paste: 60 g left, cost 9.80 for 200 g");
    expect(tool).toBe("shelf");
    expect(of("pistachio paste")?.value).toBe(60);
    expect(headline).toContain("49.00 a kilo");
  });

  it("prices without a sign are in what was spoken of: 2.79 / 0.25", async () => {
    const { of } = await talk("12 eur ingredients, 45% margin", "butter 2.79 per 250 g");
    expect(of("butter a kilo")).toMatchObject({ unit: "EUR" });
    expect(of("butter a kilo")?.value).toBeCloseTo(11.16, 9);
  });
});

describe("notes written in a hurry", () => {
  it.each([
    [
      "note raspberry pistachio 30 pcs 4 cracked, 150 14 min rest 35, 8/10",
      { macarons: 30, oven: 150, bake: 14, rest: 35, rating: 8 },
    ],
    [
      "note 30 pcs rasp n pist, 4 cracked, 14 min at 150, rested 35, 8/10",
      { macarons: 30, oven: 150, bake: 14, rest: 35, rating: 8 },
    ],
    ["note: vanilla choc 24, chewy, 145C 15 min", { macarons: 24, oven: 145, bake: 15 }],
    ["note: sat party 30 raspberry/pistachio 150C 14 min", { macarons: 30, oven: 150, bake: 14 }],
    ["n yesterday i made lemon 20, 145 13min, flat", { macarons: 20, oven: 145, bake: 13 }],
    ["note lemon 36, 15 min at 148, rest 40 min", { macarons: 36, oven: 148, bake: 15, rest: 40 }],
    ["note 40 rose, 12 min 155, 9/10", { macarons: 40, oven: 155, bake: 12, rating: 9 }],
    ["note coffee 24, 150 C 30 min rest", { macarons: 24, oven: 150, rest: 30 }],
  ])("%s", async (said, wanted) => {
    const { tool, figures = [] } = await talk(said);
    expect(tool).toBe("note");
    expect(Object.fromEntries(figures.map(({ name, value }) => [name, value]))).toEqual(wanted);
  });

  it("a number that finds no place is told", async () => {
    const { assumed = [] } = await talk("note: lemon 20, seven of nine 33");
    expect(assumed.join()).toContain("33 in its words only");
  });

  it("put right by the number that was wrong, and never another time", async () => {
    const { of } = await talk("note 30 rose, 14 min at 150, rested 35", "it was 15 min not 14");
    expect([of("bake")?.value, of("rest")?.value]).toEqual([15, 35]);
  });

  it("more is told of that batch, and its time put right", async () => {
    const { tool, of, headline } = await talk(
      "note raspberry 30, 150 C 14 min",
      "also left tray was too brown",
      "actually 15 min",
    );
    expect(tool).toBe("note");
    expect(of("bake")?.value).toBe(15);
    expect(headline).toContain("browned");
  });

  it("how many they were in the end", async () => {
    expect(
      (await talk("note raspberry 30, 150 C 14 min", "they were 28 in the end")).of("macarons")?.value,
    ).toBe(28);
  });
});

describe("asked of the notes", () => {
  const two = ["note raspberry 30, 150 C 14 min, 7/10", "note lemon 24, 145 C 13 min, party, 8/10"];
  it.each([
    ["what did i note last", /^Today: lemon/],
    ["what did i write down last", /^Today: lemon/],
    ["how long did i bake them", /^13 min/],
    ["what was the bake time", /^13 min/],
    ["what temp did i use for the raspberry", /^150 °C/],
    ["how hot was the oven for the party", /^145 °C/],
    ["compare the two", /lemon, 145 °C, 13 min, 8 out of 10; before that .* raspberry, 150 °C, 14 min/],
    ["any tips from my notes", /median of 2 notes/],
  ])("%s", async (said, answer) => {
    const { tool, headline } = await talk(...two, said);
    expect(tool).toBe("recall");
    expect(headline).toMatch(answer);
  });
});

describe("asked of the shelf", () => {
  const pantry = "bought 1 kg almond flour, 1 kg icing sugar, 500 g sugar, 12 eggs";
  // nothing was bought, and of 60 g nothing was taken
  it("what is left, whatever was dosed before", async () => {
    const turns = ["how much pistachio for 150 g ganache", "how much is left of the pistachio"] as const;
    const none = await talk(...turns);
    expect([none.tool, none.status, none.figures]).toEqual(["shelf", "answered", undefined]);
    expect(none.headline).toMatch(/^No pistachio/);
    const { tool, of } = await talk("bought 60 g pistachio paste", turns[0], `${turns[1]} paste`);
    expect([tool, of("pistachio paste")?.value]).toEqual(["shelf", 60]);
  });

  // 5 to 8 % of 150 g
  it("a label's own directions are kept, whosever bottle", async () => {
    const { of } = await talk("pistachio paste says 5 to 8 percent", "how much pistachio for 150 g ganache");
    expect(of("pistachio paste")).toMatchObject({ low: 7.5, high: 12 });
  });

  // a large egg without its shell is 50 g (USDA SR, NDB 01123)
  it.each(["shelf", "cupboard", "my pantry?"])("%s shows it", async (said) => {
    expect(await talk(said)).toMatchObject({
      tool: "shelf",
      status: "answered",
      headline: expect.stringMatching(/^The shelf is empty/),
    });
    const { tool, figures } = await talk(pantry, said);
    expect([tool, figures?.map(({ name, value, unit }) => [name, value, unit])]).toEqual([
      "shelf",
      [
        ["almond flour", 1000, "g"],
        ["powdered sugar", 1000, "g"],
        ["sugar", 500, "g"],
        ["egg", 600, "g"],
      ],
    ]);
  });

  // drops are no percentage, so nothing is kept of them
  it.each([
    ["raspberry bottle says 2 drops per 100 g", /^No bottles/],
    ["raspberry bottle says 2 %", /raspberry 2 %/],
  ])("bottles too, whatever was asked just before: %s", async (said, shown) => {
    expect(await talk(said, "bottles?")).toMatchObject({
      tool: "shelf",
      status: "answered",
      headline: expect.stringMatching(shown),
    });
  });

  it.each([
    ["enough for 30 macarons?", /^Not enough for 30 macarons, but enough .*almond flour/],
    ["can i make 60", /^Not enough for 60 macarons/],
    // 130 / 460 × 88 × 0.53 × 3.8² / 0.96
    ["enough almond flour for 40?", /^Yes: 198 g almond flour/],
  ])("%s", async (said, answer) => {
    const { tool, headline } = await talk(pantry, said);
    expect(tool).toBe("buy");
    expect(headline).toMatch(answer);
  });

  it("of one thing asked for nothing else is listed", async () => {
    const { items } = await talk(pantry, "enough almond flour for 200?");
    expect(new Set(items?.map((each) => each.buy ?? each.on_the_shelf))).toEqual(new Set(["almond flour"]));
  });
});

describe("a recipe for good", () => {
  const saved = "save recipe grandmas: 140 g almond flour, 130 g powdered sugar, 100 g whites, 90 g sugar";
  it.each([
    [["use grandmas from now on"]],
    [["show grandmas", "use that one from now on"]],
    [["make grandmas my default"]],
    [["scale grandmas to 40 macarons", "from now on use that recipe"]],
  ])("%j", async (turns) => {
    expect((await talk(saved, ...turns)).headline).toContain("grandmas is your house recipe");
  });

  it("the shells' size goes back without a unit", async () => {
    expect(
      (await talk("my shells are 42 mm from now on", "set shells back to 38")).of("shell diameter")?.value,
    ).toBe(38);
  });
});
