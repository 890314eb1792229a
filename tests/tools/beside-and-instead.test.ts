/**
 * What stands beside a question and belongs to something else, what is refused and what is meant in its place, two orders
 * that are one, and what is none of ours. Every expected value is worked by hand from the rules beside it.
 */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, figureOf, lastOf, onlyOf } from "../support/ask.ts";

/** The figures of one answer, rounded to six places: exact sums leave binary rests. */
const figures = (answer: Answer | undefined): (number | undefined)[] =>
  (answer?.figures ?? []).map(({ value }) => (value === undefined ? value : Number(value.toFixed(6))));
const range = (answer: Answer | undefined) => {
  const [first] = answer?.figures ?? [];
  return [first?.low, first?.high].map((each) => Number(each?.toFixed(6)));
};

describe("a bottle's size and price flavor nothing: extracts 1-2 %, spirits 2-5 % of the bowl", () => {
  test.each<[string, number[]]>([
    [
      "got a 118 ml bottle of vanilla extract for 9 dollars, the filling is 275 g, how many grams of extract",
      [2.75, 5.5],
    ],
    [
      "bought a 250 ml bottle of vanilla extract, my buttercream is 275 g, how much extract goes in",
      [2.75, 5.5],
    ],
    ["ive a 30 ml bottle of almond extract, cost me 6 pounds, how many grams for 240 g ganache", [2.4, 4.8]],
    ["picked up 100 ml rum for 8 dollars, ganache is 300 g, how many grams of rum", [6, 15]],
    [
      "how many grams of vanilla extract for 275 g of filling, i have a 118 ml bottle that was 9 dollars",
      [2.75, 5.5],
    ],
  ])("%s", async (said, expected) => {
    const answer = await onlyOf(said);
    expect(answer.tool).toBe("dose");
    expect(range(answer)).toEqual(expected);
  });
});

describe("what is in the bowl already is checked: share = flavor / base", () => {
  // 15 / 500 = 3 %
  test.each<[string[], number]>([
    [
      ["want peppermint, 15 g of it is already in the 500 g buttercream and 8 candy canes on top, is it ok"],
      3,
    ],
    [["how much peppermint in 500 g buttercream", "theres 15 g of it in the 500 g already, is that fine"], 3],
    // 12 / 300
    [["300 g ganache, how much rum", "i put 12 g into the 300 g, too much?"], 4],
  ])("%s", async (turns, expected) => {
    expect((await figureOf("share", ...turns))?.value).toBeCloseTo(expected, 9);
  });
});

describe("a ratio that isn't wanted: firm dark is 2, firm milk 2.5, piping dark 1.25", () => {
  test.each<[string[], number]>([
    [["i want dark ganache 300 g", "not 1 to 1, firm please, dark, 450 g"], 300],
    [["not 1 to 1, firm please, dark, all together 450 g"], 300],
    [["no 1 to 1 this time, firm dark, 300 g in all"], 200],
    [["300 g dark ganache 1:1", "not 1 to 1, firm please"], 200],
    [["300 g dark ganache 1:1", "not 1:1, 2:1"], 200],
    [["dark ganache, anything but 1 to 1, for cutting, 600 g"], 400],
    [["450 g firm dark ganache, 1:1 is too soft"], 300],
  ])("%s", async (turns, expected) => {
    expect((await figureOf("chocolate", ...turns))?.value).toBeCloseTo(expected, 9);
  });
});

describe("ganache in shorthand", () => {
  // 100 g of cream for firm: 200 of chocolate
  test("an arrow says what it is for", async () => {
    const answers = await lastOf("100g cream -> firm dark ganache, choc? also ganache timer on");
    expect(answers.map(({ tool }) => tool)).toEqual(["ganache", "timer"]);
    expect(answers[0]?.figures?.find(({ name }) => name === "chocolate")?.value).toBeCloseTo(200, 9);
    expect(answers[1]?.figures?.[0]?.value).toBe(45);
  });
});

describe("how many lie in the freezer is nothing to how long: best within 2 months", () => {
  test.each([
    "froze 20 filled ones, for how long are they at their best",
    "ive frozen 20 filled ones, how long are they at their best",
    "froze 36 filled macarons, how long are they good for",
    "i put 24 filled macs in the freezer, how long till they go downhill",
  ])("%s", async (said) => expect((await figureOf("frozen", said))?.value).toBe(2));
  // made today, the 14th, as day 1: six days are left
  test.each([
    "made and filled today, theyre in the fridge, how many days have i got",
    "filled today and in the fridge, how many days do i have",
  ])("%s", async (said) => expect((await figureOf("days left", said))?.value).toBe(6));
});

describe("timers", () => {
  test.each<[string, number]>([
    ["my neighbour sets 20 min, mine bake 14, time mine", 14],
    ["mum bakes hers 18 min, mine need 13, set mine", 13],
    ["the book says 15 min, mine bake 12, time them", 12],
    ["he goes 20 minutes, i go 14, put a timer on mine", 14],
    ["filled 5 hours ago, timer for 20 min", 20],
    ["timer for 20 min, i filled them 5 hours ago", 20],
    ["they came out an hour ago, 20 min timer", 20],
    // what rests began then
    ["piped 10 min ago, timer 30 min", 20],
    ["right i never set it. 25 min, caramel", 25],
  ])("%s", async (said, expected) => expect((await figureOf("left", said))?.value).toBe(expected));
  test("and what is timed is its name", async () => {
    const { one, record } = baker();
    expect((await one("right i never set it. 25 min, caramel")).headline).toContain("caramel");
    expect(record().timers.map(({ label }) => label)).toEqual(["caramel"]);
  });
  test.each(["oh and time the ganache", "time the ganache please", "also time the ganache"])(
    "%s, behind a ganache: 45 min, as it sets",
    async (said) => expect((await figureOf("left", "300 g dark ganache for piping", said))?.value).toBe(45),
  );
});

describe("who can't come, and as many are made", () => {
  const plan = "plan 30 macarons for tomorrow 4 pm";
  test.each<[string, RegExp]>([
    ["6 people cancelled, still 30 though, and make it an hour later", /30 macarons.* 17:00/],
    ["one hour later please, still 30", /30 macarons.* 17:00/],
    ["5 of the guests cant come but the number stays, half an hour earlier", /30 macarons.* 15:30/],
    ["8 of them cant come but i still need the 30", /30 macarons.* 16:00/],
    ["8 of them cant come, so 22", /22 macarons.* 16:00/],
  ])("%s", async (said, expected) => expect((await onlyOf(plan, said)).headline).toMatch(expected));
});

describe("a filling of two mixes is split, and nothing is dosed", () => {
  test.each<[string, number[]]>([
    ["split 300 g filling half curd half buttercream", [150, 150]],
    ["half curd half buttercream, 300 g in all", [150, 150]],
    ["the 300 g filling is to be half jam, half buttercream", [150, 150]],
    ["split 300 g filling 50/50 curd and buttercream", [150, 150]],
    ["split the 360 g of filling evenly between curd and buttercream", [180, 180]],
    ["split 390 g filling a third curd, two thirds buttercream", [130, 260]],
    ["split 400 g batter pink 120 lilac 90", [120, 90, 190]],
    ["390 g of buttercream, 20 people coming, 3 flavours, equal bowls please", [130]],
  ])("%s", async (said, expected) => {
    const answer = await onlyOf(said);
    expect(answer.tool).toBe("split");
    expect(figures(answer)).toEqual(expected);
  });
});

describe("two orders that are one: filling is n × 0.42 × 3.8² / 0.92", () => {
  const filling = (macarons: number) => (macarons * 0.42 * 3.8 ** 2) / 0.92;
  test.each<[string, number]>([
    ["24 macarons and another 12 for tomorrow, how much filling in all", 36],
    ["24 macarons plus another 12, how much filling", 36],
    ["20 macarons and a dozen more for tomorrow, how much filling", 32],
    ["24 macarons today and 12 tomorrow, how much filling in total", 36],
    ["30 for saturday and another 20 for sunday, how much filling altogether", 50],
  ])("%s", async (said, macarons) =>
    expect((await figureOf("filling", said))?.value).toBeCloseTo(filling(macarons), 9),
  );
  test.each([
    "36 macarons and another 24 at 45 mm, how much filling",
    "24 macarons and another 12, how much filling for each",
  ])("%s: which they are is asked", async (said) => expect((await onlyOf(said)).status).toBe("asking"));
  test.each(["one got eaten", "i ate one"])("%s: one less", async (said) =>
    expect((await figureOf("filling", "24 macarons, how much filling", said))?.value).toBeCloseTo(
      filling(23),
      9,
    ),
  );
  test.each(["never mind that.", "2 of the eggs were cracked already from the shop"])(
    "%s: a nod",
    async (said) =>
      expect(await lastOf("batter for 24 macarons", said)).toMatchObject([
        { tool: "help", status: "answered" },
      ]),
  );
});

describe("both that is asked is answered", () => {
  // house formula 100 : 130 : 130 : 100, batter 4.6 × 85 = 391; 391 × 0.96 / (0.53 × 3.8²) = 49 shells, 24 macarons
  test.each([
    "85 g whites, weights for the other stuff, and how many macarons",
    "how many macarons from 85 g whites, and the other weights",
    "ive 85 g egg whites: weights for everything else and how many macarons",
  ])("%s", async (said) => {
    const [scale, shells, ...more] = await lastOf(said);
    expect(more).toEqual([]);
    expect(figures(scale).slice(0, 4)).toEqual([85, 110.5, 110.5, 85]);
    expect(shells?.figures?.find(({ name }) => name === "macarons")?.value).toBe(24);
  });
  // whites 100 : sugar 150 : butter 250; vanilla extract 1-2 %
  test("ingredients and a flavor", async () => {
    const [mix, dose] = await lastOf("500g smbc ingreds + how much vanilla extract in it");
    expect(figures(mix).slice(0, 3)).toEqual([100, 150, 250]);
    expect(range(dose)).toEqual([5, 10]);
  });
  test("ingredients put right", async () =>
    expect(figures(await onlyOf("ingreds for 750g smbc", "nah 900")).slice(0, 3)).toEqual([180, 270, 450]));
  // a quarter of 420 is 105; zest 0.5-1.5 % of it
  test.each([
    "I divide 420 g buttercream in four equal portions; in only one portion shall come lemon zest, how much of it?",
    "I divide 420 g buttercream in four equal portions, only one gets lemon zest, how much",
    "split 420 g buttercream in 4, lemon zest in just one of them, how much zest",
  ])("%s", async (said) => {
    const [split, dose] = await lastOf(said);
    expect(figures(split)).toEqual([105]);
    expect(range(dose)).toEqual([0.525, 1.575]);
  });
  test("whether it can, and then what", async () => {
    expect(figures(await onlyOf("can you do sums? what is 85 times 3"))).toEqual([255]);
    expect(figures(await onlyOf("can you do percentages? 15% of 640"))).toEqual([96]);
    const label = await onlyOf(
      "Can you do me a us label? 140 g almond flour, 140 g powdered sugar, 105 g egg whites, 95 g sugar, 80 g butter, net weight 150 g",
    );
    for (const each of ["almond", "egg", "milk", "150 g"]) expect(label.headline).toContain(each);
  });
});

describe("a price for what it costs: cost / (1 − margin)", () => {
  test.each<[string, number]>([
    ["charge $14 ingredients $3 of boxes at 60%", 17 / 0.4],
    ["what to charge: $14 ingredients, $3 boxes, 60% margin", 17 / 0.4],
    ["price $12 ingredients $2 of ribbon at 50%", 28],
    [
      "sold 14 boxes for 210 at last years fair, forget that. today ingredients $6.20, boxes $1.80, price at 60 % margin",
      20,
    ],
  ])("%s", async (said, price) => expect((await figureOf("price", said))?.value).toBeCloseTo(price, 9));
  // a price that is named stays one: (30 − 17) / 30
  test("what is charged", async () =>
    expect((await figureOf("margin", "charge $30 ingredients $14 boxes $3"))?.value).toBeCloseTo(
      1300 / 30,
      9,
    ));
});

describe("one batch again", () => {
  test.each(["single batch is fine", "single is fine", "just single then"])("%s", async (said) =>
    expect(figures(await onlyOf("double the house recipe", said)).slice(0, 4)).toEqual([100, 130, 130, 100]),
  );
});

describe("what there is, and not what there was", () => {
  test.each<[string, string, number]>([
    ["bar was 250 g, kids got at it, 210 g left. dark, for piping. cream?", "cream", 168],
    [
      "if i had half a litre of cream id make loads but theres just 180 g, milk choc, piping, how much chocolate",
      "chocolate",
      360,
    ],
    [
      "last month i made it with 100 g whites. today i have 85, need almond and both sugars",
      "almond flour",
      110.5,
    ],
    ["can you shrink it to a third, 180 g butter 90 g honey 45 g cream", "butter", 60],
    ["house shells two and a half times over, what's on the scale, oven already at 150", "whites", 250],
    ["750 g swiss meringue buttercream in all, mixer is 500 watts", "butter", 375],
  ])("%s", async (said, name, expected) =>
    expect((await figureOf(name, said))?.value).toBeCloseTo(expected, 9),
  );
  // rum 2-5 % of 350; fruit powder 2-5 % of 240 g of ganache
  test.each<[string, number[]]>([
    ["its my husbands 45th so the 350 g dark ganache gets rum, how much rum", [7, 17.5]],
    [
      "6 friends 2 trays 1 bowl: 240 g of white choc ganache, freeze dried raspberry powder, how many grams of the powder",
      [4.8, 12],
    ],
  ])("%s", async (said, expected) => expect(range(await onlyOf(said))).toEqual(expected));
});

describe("none of ours, by its name", () => {
  test.each<[string, RegExp]>([
    ["can my 12 year old legally work 3 hours", /the law/],
    ["is my 14 year old allowed to work 4 hours", /the law/],
    ["how long does frozen salmon keep", /salmon/],
    ["how long can i freeze salmon", /salmon/],
    ["plan my wedding seating", /plans of another kind/],
    ["hollandaise from the yolks, how much butter", /hollandaise/],
    ["whats butter going to cost next year", /prices to come/],
  ])("%s", async (said, named) => {
    const answer = await onlyOf("buttercream from 3 eggs", said);
    expect(answer).toMatchObject({ tool: "help", status: "declined" });
    expect(answer.headline).toMatch(named);
    expect(answer.figures ?? []).toEqual([]);
  });
  test.each(["how long do frozen macarons keep", "plan my wedding macarons, 100 for saturday 5 pm"])(
    "%s is",
    async (said) => expect((await onlyOf(said)).status).toBe("answered"),
  );
});

describe("how it was read", () => {
  test("of a weight what it is of, and what of it", async () => {
    const { ask } = baker();
    await ask("want peppermint, 15 g of it is already in the 500 g buttercream, is it ok");
    const lines = ((await ask("how did you read that"))[0]?.items ?? []).map(({ text }) => String(text));
    expect(lines.filter((line) => /\b(?:base|flavor): \d/.test(line))).toEqual([
      expect.stringContaining("base: 500 g"),
      expect.stringContaining("flavor: 15 g"),
    ]);
  });
  test.each([
    "want peppermint, 15 g of it is already in the 500 g buttercream, is it ok",
    "clear all timers",
  ])("%s: no mark of the program's own stands in it", async (said) => {
    const { ask } = baker();
    await ask(said);
    const [answer] = await ask("how did you read that");
    const lines = (answer?.items ?? []).map(({ text }) => String(text));
    expect(lines.length).toBeGreaterThan(1);
    for (const line of lines) expect(line).not.toMatch(/: (?:true|false)\b|_/);
  });
});
