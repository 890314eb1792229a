/** Lists, bowls and boxes as they are said: whose recipe it is, which bowl, how many in a box; worked by hand. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, lastOf, readings } from "../support/ask.ts";

const figureOf = (answer: Answer | undefined, name: string) =>
  answer?.figures?.find((each) => each.name === name);

/** Low and high of the figure by that name, in g. */
const rangeOf = (answer: Answer | undefined, name: string) => {
  const { low, high } = figureOf(answer, name) ?? {};
  return [low, high].map((each) => (each === undefined ? undefined : Number(each.toFixed(3))));
};

describe("a digit before hundred and thousand", () => {
  it.each([
    ["4 hundred twenty g buttercream", 420],
    ["2 hundred thirty grams ganache", 230],
    ["1 hundred and five g of butter", 105],
    ["4 hundred 20 g chocolate", 420],
    ["2 hundred and 5 grams", 205],
    ["3 thousand grams batter", 3000],
    ["1 thousand two hundred g", 1200],
    ["1.5 thousand g", 1500],
  ])("%s", (said, grams) => {
    expect(readings(said)[0]?.amounts.map(({ dim, value }) => [dim, value])).toEqual([["weight", grams]]);
  });

  it("leaves a size behind a count alone", () => {
    expect(readings("2 hundred 38 mm macarons")[0]?.amounts.map(({ value }) => value)).toEqual([200, 38]);
  });
});

// whites 100 : sugar 150 : butter 250
describe("what only describes a thing stands between it and its weight", () => {
  it.each([
    "325g soft beurre, SMBC, amts of whites and sugar",
    "325 g cold butter, SMBC, how much whites and sugar",
    "325 g good burro, SMBC, amounts of whites and sugar",
    "325 g weiche butter, SMBC, amounts of whites and sugar",
    "325 g fresh organic butter, SMBC, amounts of whites and sugar",
    "325 g melted mantequilla, SMBC, amounts of whites and sugar",
  ])("%s", async (said) => {
    const [answer] = await lastOf(said);
    expect(figureOf(answer, "whites")?.value).toBeCloseTo(130, 6);
    expect(figureOf(answer, "sugar")?.value).toBeCloseTo(195, 6);
  });
});

// flavor 3-4 % in ganache, 3-5 % in buttercream
describe("another bowl, behind one with too much in it", () => {
  it.each([
    "a second bowl of plain buttercream, 300 g, how much for that one",
    "another pot of plain buttercream, 300 g, what does that one get",
    "theres a second batch of 300 g, what does it get",
    "i made a second lot, 300 g, nothing in it yet, how much",
  ])("%s", async (said) => {
    const answers = await lastOf("i put 14 g lemon flavor in 200 g buttercream", "how do i fix it", said);
    expect(rangeOf(answers.at(-1), "flavor")).toEqual([9, 15]);
  });
});

// zest 0.5-1.5 %, citric acid 0.1-0.3 %, salt 0.2-0.5 %, extract 1-2 %
describe("bare forms in a list are asked for each", () => {
  it.each([
    ["zest, citric acid and salt for 170 g buttercream", ["zest", "citric acid", "salt"]],
    ["citric acid, zest and salt for 170 g buttercream", ["citric acid", "zest", "salt"]],
    ["salt and zest, 170 g buttercream", ["salt", "zest"]],
  ] as const)("%s", async (said, names) => {
    const answers = await lastOf(said);
    expect(answers.flatMap(({ figures = [] }) => figures.map(({ name }) => name))).toEqual(names);
    expect(rangeOf(answers[names.indexOf("zest")], "zest")).toEqual([0.85, 2.55]);
  });
});

// 6 + 2 = 8 g in 230 g: 3.478 %
describe("more of what is in the bowl goes on top", () => {
  it.each([
    "2 g more",
    "2 g more lemon",
    "another 2 g lemon flavor went in",
    "2 more grams of lemon flavor",
    "plus 2 g lemon flavor",
    "and 2 g on top",
  ])("%s", async (said) => {
    const answers = await lastOf("lemon flavor for 230 g buttercream", "i put 6 g in", said);
    expect(figureOf(answers.at(-1), "share")?.value).toBeCloseTo((8 / 230) * 100, 6);
  });
});

// half of 400 g: 200 g, of that 3-5 %
describe("each of two flavors by its own share", () => {
  it.each([
    "half rose half lemon, 400 g buttercream, how much rose flavor and how much lemon",
    "half rose half lemon, 400 g buttercream, how much rose flavor and how much lemon flavor",
    "400 g buttercream, one half rose the other half lemon, how much rose, how much lemon",
    "400 g buttercream half rose half lemon, how much lemon flavor",
  ])("%s", async (said) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => rangeOf(each, "flavor"))).toEqual(answers.map(() => [6, 10]));
  });
});

// 77 / 110 = 0.7: 98, 91, 70
describe("the lines of somebody's recipe", () => {
  const lines = "110 g whites, 140 g almond flour, 130 g powdered sugar, 100 g sugar";
  it.each([
    "frm a german blog: 110g Eiweiß, 140g gemahlene Mandeln, 130g Puderzucker, 100g Zucker. i only have 77g eiweiß, what do the others become",
    `from a blog: ${lines}. i only have 77 g whites, what do the others become`,
    `grandmas recipe: ${lines}. i only have 77 g whites, whats the rest`,
    `the book has ${lines}. I only have 77 g whites`,
    `a magazine gives ${lines}. with my 77 g whites?`,
  ])("%s", async (said) => {
    const answer = (await lastOf(said)).at(-1);
    const grams = ["almond flour", "powdered sugar", "sugar"].map((name) => figureOf(answer, name)?.value);
    expect(grams.map((each) => Number(each?.toFixed(3)))).toEqual([98, 91, 70]);
  });
});

// 1000 - 350
describe("used, without its e", () => {
  it.each([
    "usd up 350g powdered sugar for shells",
    "i usd 350 g powdered sugar",
    "usd about 350 g powdered sugar",
  ])("%s", async (said) => {
    const answers = await lastOf("pantry: 1 kg powdered sugar", said, "how much powdered sugar is left");
    expect(figureOf(answers.at(-1), "powdered sugar")?.value).toBeCloseTo(650, 6);
  });
});

// 12 / 24 × 6
describe("a box of some of them", () => {
  it.each([
    "costs 12 for 24 in a box of 6",
    "24 macarons cost me 12 dollars, what does a box of 6 cost",
    "$12 for 24 macarons, per box of 6",
    "costs 12 for 24, what is that for a box of 6",
  ])("%s", async (said) => {
    expect(figureOf((await lastOf(said)).at(-1), "cost")?.value).toBeCloseTo(3, 6);
  });
});

// 0.2 kg × 12 + 0.16 kg × 5
describe("several prices in reply to one question", () => {
  it.each([
    "chocolate 12 a kilo, cream 5 a kilo",
    "cream 5 a kilo, chocolate 12 a kilo",
    "12 a kilo the chocolate and 5 a kilo the cream",
  ])("%s", async (said) => {
    const { ask } = baker();
    await ask("what do 200 g dark chocolate and 160 g cream cost");
    expect(figureOf((await ask(said)).at(-1), "cost")?.value).toBeCloseTo(3.2, 6);
  });
});

// vanilla bean paste 1-2 %, matcha 1.5-3 % of buttercream
describe("so much with one flavor, and so much with another", () => {
  it.each([
    "500 g buttercream, vanilla flavor|i do two halves, 250 g with vanilla bean paste and 250 g with matcha, how much of both?",
    "500 g buttercream, vanilla flavor|250 g gets vanilla bean paste and 250 g gets matcha, how much of each",
  ])("%s", async (turns) => {
    const answers = await lastOf(turns);
    expect(answers.map(({ figures: [figure] = [] }) => [figure?.low, figure?.high])).toEqual([
      [2.5, 5],
      [3.75, 7.5],
    ]);
  });
});
