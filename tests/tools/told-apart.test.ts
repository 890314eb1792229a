/**
 * What is told apart from what it is of: a weight before its thing, so much of a flavor before what it is enough for,
 * what is in already, parts of a bowl, a list and what it comes to. Every expected value is worked by hand beside it.
 */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { lastOf } from "../support/ask.ts";

const figure = (answer: Answer | undefined, name: string) =>
  answer?.figures?.find((each) => each.name === name || each.name.includes(name));

describe("a weight told apart from its thing", () => {
  // concentrated flavor in buttercream 3 to 5 %: 185 g take 5.55 to 9.25, 330 g 9.9 to 16.5, 245 g 7.35 to 12.25
  test.each<[string, number, number]>([
    [
      "scale says 185, thats buttercream with the bowl tared off. lychee flavoring next, what do i aim for",
      5.55,
      9.25,
    ],
    [
      "i read 330 off the scale, thats smbc without the bowl. lemon flavor comes next, whats the aim",
      9.9,
      16.5,
    ],
    ["on the scale its 245, and thats buttercream only. how much maple flavor", 7.35, 12.25],
  ])("%s", async (said, low, high) => {
    const [answer, ...others] = await lastOf(said);
    expect(others).toEqual([]);
    expect(answer?.tool).toBe("dose");
    expect(figure(answer, "flavor")?.low).toBeCloseTo(low, 6);
    expect(figure(answer, "flavor")?.high).toBeCloseTo(high, 6);
  });

  // ratio of the book for piping: white 2.5 : 1, milk 2 : 1, dark 1.25 : 1 of cream
  test.each<[string, number]>([
    ["cream is whats limiting me, 85 g of it. white chocolate ganache to fill with. how much choc", 85 * 2.5],
    ["cream is all i am short of, 120 g left. milk chocolate ganache to pipe, how much chocolate", 120 * 2],
    ["the cream decides it, 96 g there is. dark ganache to fill, how much chocolate", 96 * 1.25],
  ])("%s", async (said, chocolate) => {
    const [answer] = await lastOf(said);
    expect(answer?.tool).toBe("ganache");
    expect(figure(answer, "chocolate")?.value).toBeCloseTo(chocolate, 6);
  });
});

describe("so much of a flavor, and what it is enough for", () => {
  // concentrated flavor 3 to 4 % of ganache, 3 to 5 % of buttercream; fruit powder 3 to 8 % of buttercream; extract 1 to 2 %
  test.each<[string, number, number]>([
    [
      "squeezed the rose bottle till it gave up and got 4.5 g of flavor, whats that enough for in ganache",
      112.5,
      150,
    ],
    ["wrung 3 g of flavor out of the lychee bottle, whats that enough for in buttercream", 60, 100],
    [
      "ground up a bag of freeze dried mango, that came to 12 g of powder. what weight of buttercream will it flavour",
      150,
      400,
    ],
    ["the vanilla bottle had 6 g of extract left, how much buttercream will that flavour", 300, 600],
  ])("%s", async (said, low, high) => {
    const [answer] = await lastOf(said);
    expect(answer?.tool).toBe("dose");
    expect(figure(answer, "base")?.low).toBeCloseTo(low, 6);
    expect(figure(answer, "base")?.high).toBeCloseTo(high, 6);
  });

  // super-strength oil 0.2 to 0.5 %: 140 g take 0.28 to 0.7, 95 g 0.19 to 0.475
  test.each([
    "super strength peppermint oil, once into 140 g buttercream and once into 95 g of dark ganache. how much for each please",
    "peppermint oil into both: 140 g buttercream, 95 g dark ganache. what does each need",
    "140 g buttercream and 95 g dark ganache, both to get peppermint oil. how much each",
  ])("into two fillings: %s", async (said) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => each.tool)).toEqual(["dose", "dose"]);
    expect(answers.map((each) => figure(each, "oil")?.high)).toEqual([0.7, 0.475]);
  });
});

describe("what is in already", () => {
  // 40 of 310 is 12.9 %, nut paste takes 10 to 20; 5 of 380 is 1.32 %, powder color 0.3 to 1
  test.each<[string, string, number, string]>([
    [
      "310 g white ganache, hazelnut paste?",
      "40 g is all the jar had and its in, does that do",
      12.903226,
      "within",
    ],
    ["powder color for 380 g batter", "shook 5 g in before i asked, is that over the top", 1.315789, "over"],
    ["vanilla extract for 220 g buttercream", "14 g landed in it, is that over the top", 6.363636, "over"],
  ])("%s, then %s", async (first, second, share, word) => {
    const [answer] = await lastOf(first, second);
    expect(figure(answer, "share")?.value).toBeCloseTo(share, 5);
    expect(answer?.headline).toContain(word);
  });
});

describe("parts of a bowl, and a list brought to a total", () => {
  test.each<[string, Record<string, number>]>([
    [
      "a quarter of my 540 g buttercream goes salted caramel, whats left stays vanilla, weigh it up for me",
      { "salted caramel": 135, vanilla: 405 },
    ],
    [
      "half of 600 g buttercream goes lemon, a quarter goes mint and the rest stays plain, how much is each",
      { lemon: 300, mint: 150, plain: 150 },
    ],
    // 40 % of 540 is 216, a third 180, and 144 are left
    [
      "split 540 g buttercream: 40 percent lemon, a third mint, the rest plain",
      { lemon: 216, mint: 180, plain: 144 },
    ],
    // one third beside a quarter is not all the rest: 400 less 100 less 133.33
    [
      "a quarter of the 400 g buttercream goes pink, one third stays white, whats the weights",
      { pink: 100, white: 400 / 3, rest: 500 / 3 },
    ],
  ])("%s", async (said, parts) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => each.tool)).toEqual(["split"]);
    for (const [name, grams] of Object.entries(parts))
      expect(figure(answers[0], name)?.value).toBeCloseTo(grams, 6);
  });

  // 550 g to 900: times 18/11; 400 g to 600: times 1.5
  test.each<[string, Record<string, number>]>([
    [
      "200 g cream 300 g milk chocolate 50 g butter, can you blow that up so it all comes to 900 g",
      { cream: 3600 / 11, "milk chocolate": 5400 / 11, butter: 900 / 11 },
    ],
    [
      "300 g white chocolate 100 g cream, size that so it makes 600 g",
      { "white chocolate": 450, cream: 150 },
    ],
    [
      "my filling is 200 g cream cheese 80 g butter 40 g honey. i need 480 g of it in all",
      { "cream cheese": 300, honey: 60 },
    ],
  ])("%s", async (said, lines) => {
    const answers = await lastOf(said);
    expect(answers.map((each) => each.tool)).toEqual(["scale"]);
    for (const [name, grams] of Object.entries(lines))
      expect(figure(answers[0], name)?.value).toBeCloseTo(grams, 6);
  });
});

describe("orders in other words", () => {
  test("a day in passing, and only weights asked: no plan", async () => {
    const said = "christening on sunday, im down for 60 macarons, list the weights for the shells";
    expect((await lastOf(said)).map((each) => each.tool)).toEqual(["scale"]);
    const plan = "christening on sunday, im down for 60 macarons, when do i start";
    expect((await lastOf(plan)).map((each) => each.tool)).toEqual(["day"]);
  });

  test.each<[string, number]>([
    // the book's times: mature 24 h, rest 30 min, bake 15
    ["macarons are boxed and in the fridge, start the maturing clock", 1440],
    ["shells are piped, get the resting clock going", 30],
    ["one more timer 40 min rest", 40],
  ])("%s", async (said, left) => {
    const [answer] = await lastOf(said);
    expect(answer?.tool).toBe("timer");
    expect(figure(answer, "left")?.value).toBe(left);
  });

  test.each(["actually scrap that timer", "trash the timer", "lose that timer, dont need it"])(
    "%s",
    async (said) => {
      const [answer] = await lastOf("timer 30 min", said);
      expect(answer?.headline).toMatch(/^Stopped/);
    },
  );

  test("one more to log", async () => {
    const [answer] = await lastOf("one more to log, speculoos batch, 40 min rest");
    expect(answer?.tool).toBe("note");
    expect(figure(answer, "rest")?.value).toBe(40);
    // stock is no note
    expect((await lastOf("one more to add, 200 g butter"))[0]?.tool).toBe("shelf");
  });

  test("what was bought and went on the shelf comes, and more that was used goes", async () => {
    const bought = "stocked up, 1.5 kg icing sugar went on the shelf";
    expect(figure((await lastOf(bought))[0], "sugar")?.value).toBe(1500);
    // 1500 less 390 less 100
    const [left] = await lastOf(bought, "used 390 g just now", "and 100 g more");
    expect(figure(left, "left")?.value).toBe(1010);
  });

  test("what a ganache takes is a flavor, whatever timer runs", async () => {
    // 220 g dark at 1.25 : 1 make 396 g; rum 2 to 5 %
    const [answer] = await lastOf(
      "dark ganache to pipe with 220 g chocolate and then a 40 min timer for it to set",
      "how much rum can that ganache take",
    );
    expect(answer?.tool).toBe("dose");
    expect(figure(answer, "rum")?.low).toBeCloseTo(7.92, 6);
    expect(figure(answer, "rum")?.high).toBeCloseTo(19.8, 6);
  });

  test("a flavor for a mix starts no timer", async () => {
    // 300 g at 3 to 5 %
    const [answer] = await lastOf(
      "300 g buttercream",
      "timer 30 min for the shells",
      "lemon flavor for the buttercream",
    );
    expect(answer?.tool).toBe("dose");
    expect(figure(answer, "flavor")?.low).toBeCloseTo(9, 6);
    const [none] = await lastOf("timer 30 min", "rum for the ganache");
    expect(none?.status).toBe("asking");
    expect(none?.tool).toBe("dose");
  });

  test("a batter and what goes with it", async () => {
    const answers = await lastOf("batter for 20 macarons and the filling to go with it");
    expect(answers.map((each) => each.tool)).toEqual(["shells", "fill"]);
    const both = await lastOf("batter for 48 macarons and ganache to fill them, dark");
    expect(both.map((each) => each.tool)).toEqual(["shells", "ganache"]);
  });

  test("a measuring cup is a cup", async () => {
    // USDA: 238 g a cup of heavy cream
    expect(figure((await lastOf("one measuring cup of heavy cream, grams"))[0], "result")?.value).toBe(238);
  });
});
