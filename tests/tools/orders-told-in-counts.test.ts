/**
 * How an order is counted in one sentence. Worked by hand: 38 mm, two shells and 10 % spare shells for each macaron, so 36
 * are 72 × 1.1 = 79.2, 80 shells; filling is 6.592174 g a macaron (15.1 g shells × 0.4366), read off 24 of them as
 * 158.212174 g.
 */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

const perMacaron_g = 158.212174 / 24;

/** The figure of that name in the first answer of the tool. */
async function figure(say: string, tool: string, name: string): Promise<number | undefined> {
  const { ask } = baker();
  const answer = (await ask(say)).find((each) => each.tool === tool);
  return answer?.figures?.find((each) => each.name === name)?.value;
}

describe("shells: so many macarons are ordered", () => {
  const rows: readonly (readonly [say: string, macarons: number])[] = [
    ["Three dozen pistachio and two dozen lemon for Saturday, what's the batter for the lot?", 60],
    [
      "the cafe takes half a dozen of each of five flavours every friday, total shells with the usual spares?",
      30,
    ],
    ["Wedding. A gross of macarons, that's 144. Batter please.", 144],
    ["two orders in today, one lady wants 18, the other one 30. batter for both together?", 48],
    ["a couple of dozen for the neighbour whos watching the dog, how much batter pls", 24],
    ["Twelve boxes of four. Shell count incl spares.", 48],
    ["twenty of the rose, and half as many lemon. batter for all of it", 30],
    ["24 orange, as many lemon, half as many coffee. batter for everything", 60],
    ["order for 15 pink, 15 green and 15 white, how many shells altogether with spares", 45],
    ["need 9 each of 4 flavours, how many shells do i pipe", 36],
    ["ten of each colour, pink, blue and white. how much batter in total", 30],
    ["three orders of a dozen, batter for all three", 36],
    ["2 batches of 24, batter each?", 24],
    ["one order of 20 and one of 28, how many shells all in", 48],
    ["she wants 2 boxes of 6 and he wants 12, how much batter", 24],
    ["quick one, 4 doz, batter", 48],
    ["10 boxes, 5 in each. batter?", 50],
    ["boxes of 4, a dozen of them, how many shells", 48],
    ["i've 3 orders: 12, 18 and 24. batter for the lot", 54],
    ["guests 45, three macarons each. batter?", 135],
    ["a dozen and a half for sunday, batter please", 18],
    ["40 (five boxes of 8), batter", 40],
    // not told: as before
    ["1 dozen macarons and 2 dozen cupcakes, how much batter for the macarons", 12],
  ];
  test.each(rows)("%s", async (say, macarons) => {
    expect(await figure(say, "shells", "shells")).toBe(Math.ceil(Math.round(macarons * 2.2 * 1000) / 1000));
  });
});

describe("fill: so many macarons are filled", () => {
  const rows: readonly (readonly [say: string, macarons: number])[] = [
    ["18 rose, 12 lemon, 10 coffee... they share one plain base so how much filling all together", 40],
    ["She wants 20 of each in three flavours. How much filling per flavour", 20],
    ["right the first lot is boxed and back in the fridge. how much filling for the next 3 dozen", 36],
    [
      "got 48 macarons paired up and waiting, 24 of them for the party and the rest spare. how much filling for all 48",
      48,
    ],
    ["my daughter ate four of the 40 so i need 4 more, how much filling is that for just the four", 4],
    ["buttercream for filling 60 (ten boxes of 6), how much to make", 60],
    ["My gran wants 15 and my aunt wants 20, filling for the two of them", 35],
    ["how much filling for half a gross", 72],
  ];
  test.each(rows)("%s", async (say, macarons) => {
    const { ask } = baker();
    const answers = (await ask(say)).filter((each) => each.tool === "fill");
    const figures = answers.flatMap((each) => (each.figures ?? []).map(({ value }) => value ?? 0));
    expect(answers).toHaveLength(1);
    expect(Math.max(...figures)).toBeCloseTo(macarons * perMacaron_g, 3);
  });
});

test("a sum that is told and asked with stands by itself", async () => {
  const say =
    "she'd like 5 boxes of a dozen and i always do ten spare shells, no more. that's 130 shells, batter for 130 shells?";
  expect(await figure(say, "shells", "batter")).toBeCloseTo(1036.370833, 3);
});

test("a question that is asked anew takes the place of the first", async () => {
  const say = "there's 820g of batter in the bowl, how many boxes worth... well how many macarons is it";
  expect(await figure(say, "shells", "macarons")).toBe(51);
});

describe("split: by counts, and the same each", () => {
  const rows: readonly (readonly [say: string, parts: readonly number[]])[] = [
    ["Bowl of 600 g batter for 2 dozen raspberry and 1 dozen lime, how do I part it", [400, 200]],
    ["660 g batter, 3 colours for the football club, same each", [220]],
    ["500 g batter, two colors, same amount each", [250]],
  ];
  test.each(rows)("%s", async (say, parts) => {
    const [answer] = await baker().ask(say);
    expect(answer?.tool).toBe("split");
    expect(answer?.figures?.map(({ value }) => value)).toEqual(expect.arrayContaining([...parts]));
  });
});

test("a recipe of her own goes by the macarons that it is for", async () => {
  const say =
    "my lemon curd does 24 macs: 80g lemon juice, 100 g sugar, 60 g butter, 90g egg. i need it for 36";
  const [answer] = await baker().ask(say);
  expect(answer?.figures?.map(({ name, value }) => [name, value])).toEqual(
    expect.arrayContaining([
      ["lemon juice", 120],
      ["sugar", 150],
      ["butter", 90],
      ["egg", 135],
    ]),
  );
});

test("flavors and orders beside a weighed mix count for nothing", async () => {
  expect(await figure("750 g SMBC, three flavors, whats in it", "buttercream", "butter")).toBe(375);
  const say = "white ganache with butter, 300g chocolate for two orders, what else";
  expect(await figure(say, "ganache", "cream, with butter")).toBe(180);
});

test("hours of my time at a rate", async () => {
  const say =
    "€24 ingredients, €6 boxes, 3 h of my time at €18, 4 dozen macarons. 50 % margin price for the lot?";
  expect(await figure(say, "cost", "price")).toBe(168);
});

describe("day: when to begin for them", () => {
  test.each([
    ["5 dozen for pickup on friday at 4 pm, half rose half plain, work back for me", "60 macarons"],
    [
      "two orders of 24, both getting picked up Thursday at 3 in the afternoon, same van. start when?",
      "48 macarons",
    ],
    // "what's the batter" plans nothing, an hour told for the order does
    ["60 macarons for saturday at 3 pm, when do i start", "60 macarons"],
  ])("%s", async (say, macarons) => {
    const answers = await baker().ask(say);
    expect(answers.find((each) => each.tool === "day")?.headline).toContain(macarons);
  });
});

test("not hot is no heat", async () => {
  const [answer] = await baker().ask(
    "the customer left the box on the back seat for an hour and 3/4, not hot out. fine?",
  );
  expect(answer?.headline).toContain("2 h");
  const [hot] = await baker().ask("the box stood in the hot car for an hour and 3/4, fine?");
  expect(hot?.headline).toContain("1 h");
});

describe("counts of something else stay what they are", () => {
  test.each([
    ["batter for 3 dozen shells", "shells", "287 g batter for 36 shells, 2 trays"],
    ["set a timer for a couple of dozen minutes", "timer", "24 min"],
    ["note: made 2 dozen rose and 1 dozen lemon, lovely feet", "note", "rose and lemon"],
    [
      "I filled two dozen this morning and boxed them up. how many days do they keep in the fridge",
      "keep",
      "",
    ],
    ["a dozen eggs, how many whites in grams", "convert", "12 eggs"],
    ["5 pink bowls and 4 green", "split", "How many grams"],
    ["a gross margin of 60 %, cost 12, price?", "cost", "30.00"],
    ["I have 3 dozen in the freezer and need 30 more, how much batter", "shells", "For how many macarons?"],
    ["one tray holds 30, the other 24. how many shells in all", "shells", "For how many macarons?"],
    ["20 g rose, 10 g lemon in 300 g buttercream ok?", "dose", "6.67 %"],
  ])("%s", async (say, tool, headline) => {
    const [answer] = await baker().ask(say);
    expect(answer?.tool).toBe(tool);
    expect(answer?.headline).toContain(headline);
  });
});
