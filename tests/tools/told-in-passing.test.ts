/**
 * What is told or asked in passing, in few words: habits, timers in a row, prices, a recipe with eggs by number, one part
 * of a split, a sum moved by so much. Every expected value is worked by hand beside it.
 */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { lastOf } from "../support/ask.ts";

const values = (answer: Answer | undefined): Record<string, number | undefined> =>
  Object.fromEntries((answer?.figures ?? []).map(({ name, value }) => [name, value]));
const minutes = (answers: readonly Answer[]) =>
  answers.map((each) => {
    expect(each.tool).toBe("timer");
    return values(each).left;
  });

describe("timers in a row, each with its minutes", () => {
  test.each<[string, number[]]>([
    ["tray one twelve minutes tray two fourteen", [12, 14]],
    ["first tray 12 minutes second tray 14", [12, 14]],
    ["timer tray one ten, tray two eleven, tray three twelve", [10, 11, 12]],
    ["top tray 12 minutes bottom tray 14", [12, 14]],
    ["tray one 12 tray two 14", [12, 14]],
    ["trays in, 14 min each, two of them", [14, 14]],
    ["both trays in, 15 min each", [15, 15]],
    ["put two timers on, 14 min each", [14, 14]],
    ["bake one 14, cool one 30", [14, 30]],
    ["rest 30 and bake 15", [30, 15]],
    ["another timer of 40", [40]],
    ["new timer, 40", [40]],
    ["stick 15 on the clock", [15]],
  ])("%s", async (said, expected) => {
    expect(minutes(await lastOf(said))).toEqual(expected);
  });

  // the book's: bake 15, rest 30, cool 30 (rules of heat and time)
  test.each<[string, number]>([
    ["bake timer, the usual, thanks", 15],
    ["rest timer, the usual, ta", 30],
    ["cooling timer, as usual, thanks", 30],
    ["start my usual bake timer", 15],
  ])("%s: the step's own time", async (said, expected) => {
    expect(minutes(await lastOf(said))).toEqual([expected]);
  });

  test("her own time, once she has told it", async () => {
    expect(
      minutes(await lastOf("i rest mine 40 min, bake 15 min, always", "rest timer, the usual, ta")),
    ).toEqual([40]);
  });

  test("an hour of the clock stays one", async () => {
    // 9:30 to 19:00
    expect(minutes(await lastOf("timer at 7"))).toEqual([570]);
  });
});

describe("what she always does is set, and nothing rings", () => {
  test.each<[string, Record<string, number>]>([
    ["i rest mine 40 min, bake 15 min, always", { rest: 40, bake: 15 }],
    ["mine rest 40 min and bake 15, every time", { rest: 40, bake: 15 }],
    ["as a rule i rest 45 min and bake 16 min", { rest: 45, bake: 16 }],
    ["for me its always 40 min rest, 15 min bake", { rest: 40, bake: 15 }],
    ["my shells rest 40 min and bake 15 min as standard", { rest: 40, bake: 15 }],
    ["i bake mine 13 min, always have", { bake: 13 }],
    ["remember that i rest 40 min and bake 15", { rest: 40, bake: 15 }],
    ["always 40 min rest for me", { rest: 40 }],
  ])("%s", async (said, expected) => {
    const [only, ...others] = await lastOf(said);
    expect(others).toEqual([]);
    expect(only?.tool).toBe("bench");
    expect(values(only)).toEqual(expected);
  });
});

describe("a batch for the notes is no timer", () => {
  test.each<[string, Record<string, number>]>([
    ["third lime batch for the notes, this one rested 50 min", { rest: 50 }],
    ["fourth pistachio batch for the record, baked 16 min this time", { bake: 16 }],
    ["batch 5 of raspberry for the book, baked 14 min and rested an hour", { bake: 14, rest: 60 }],
    ["coffee batch two for the log, that one sat 40 min before the oven", { rest: 40 }],
    ["this goes in the notes: vanilla, dried 40 min", { rest: 40 }],
  ])("%s", async (said, expected) => {
    const [only, ...others] = await lastOf(said);
    expect(others).toEqual([]);
    expect(only?.tool).toBe("note");
    expect(values(only)).toMatchObject(expected);
  });
});

describe("what it cost her is kept as a price", () => {
  // 2.50 / 0.25 kg = 10; 9 / 0.5 kg = 18; 12 / 1 kg
  test.each<[string, string, number]>([
    ["butter cost me 2.50 for 250 g", "butter a kilo", 10],
    ["i paid 2.50 for 250 g butter", "butter a kilo", 10],
    ["250 g of butter cost me 2.50", "butter a kilo", 10],
    ["almond flour was 9 for 500 g", "almond flour a kilo", 18],
    ["almonds set me back 12 for a kilo", "almond flour a kilo", 12],
  ])("%s", async (said, name, expected) => {
    const [only] = await lastOf(said);
    expect(only?.tool).toBe("shelf");
    expect(values(only)[name]).toBeCloseTo(expected, 9);
  });

  // 2.50 / 250 g x 100 g
  test("also where it was bought", async () => {
    const [only] = await lastOf("bought 250 g butter for 2.50", "what does 100 g butter cost");
    expect(values(only).cost).toBeCloseTo(1, 9);
  });
});

describe("another price or weight of the thing that was priced", () => {
  const asked = "what does 230 g butter cost at $12 a kilo";
  test.each<[string, number]>([
    // 230 / 1000 x 11, x 9, x 10 (5 for 500 g)
    ["and at $11 a kilo", 2.53],
    ["what about at 9 a kilo", 2.07],
    ["and at 9", 2.07],
    ["at $5 for 500 g then", 2.3],
    // 400 / 1000 x 12
    ["and 400 g", 4.8],
  ])("%s", async (said, expected) => {
    const [only] = await lastOf(asked, said);
    expect(values(only).cost).toBeCloseTo(expected, 9);
  });

  test("the currency stays", async () => {
    const [only] = await lastOf("what does 230 g butter cost at €12 a kilo", "and at 9.50 a kilo");
    expect(only?.figures?.[0]).toMatchObject({ name: "cost", unit: "EUR" });
  });

  // 0.23 x 11 + 0.1 x 2
  test("of two things it is asked which", async () => {
    const two = "what does 230 g butter at $12 a kilo and 100 g sugar at $2 a kilo cost";
    expect((await lastOf(two, "and at $11 a kilo"))[0]?.status).toBe("asking");
    expect(values((await lastOf(two, "and at $11 a kilo", "the butter"))[0]).cost).toBeCloseTo(2.73, 9);
  });
});

describe("so much less or more of what was turned", () => {
  test.each<[string, string, number]>([
    // 140 x 9/5 + 32, 155 x 9/5 + 32
    ["150 c in f", "minus 10", 284],
    ["150 c in f", "10 lower", 284],
    ["150 c in f", "plus 5", 311],
    // (275 - 32) x 5/9
    ["300 f in c", "minus 25", 135],
    // a freezer's cold is a temperature of its own: -18 x 9/5 + 32
    ["4 c in f", "minus 18", -0.4],
    // 450 / 28.349523125
    ["500 g in oz", "minus 50", 15.873282],
  ])("%s, %s", async (first, then, expected) => {
    expect(values((await lastOf(first, then))[0]).result).toBeCloseTo(expected, 5);
  });
});

describe("a recipe told from memory, and what is there of one line", () => {
  test("the other lines go by it", async () => {
    // 110 / 150 of 300 and 30
    const [only] = await lastOf(
      "my nans filling is 150 g butter 300 g icing sugar 30 g milk, ive just 110 g butter",
    );
    expect(values(only)["powdered sugar"]).toBeCloseTo(220, 9);
    expect(values(only).milk).toBeCloseTo(22, 9);
  });

  // an egg is 50 g, a yolk 17 g: USDA SR28, file WEIGHT, "large", NDB 01123 and 01125
  test.each<[string[], Record<string, number>]>([
    [["my custard is 2 eggs 60 g sugar 250 g milk, double it"], { egg: 200, sugar: 120, milk: 500 }],
    [["custard is 2 eggs, 60 g sugar, 250 g milk", "double it"], { egg: 200, sugar: 120, milk: 500 }],
    [
      ["recipe custard: 2 eggs, 60 g sugar, 250 g milk", "custard for 4 eggs"],
      { egg: 200, sugar: 120, milk: 500 },
    ],
    [
      ["recipe custard is 4 egg yolks, 80 g sugar and 300 g milk", "scale it to 600 g milk"],
      { "egg yolk": 136, sugar: 160, milk: 600 },
    ],
    [
      ["my curd recipe is 3 whole eggs, 120 g sugar, 90 g butter", "half of it"],
      { egg: 75, sugar: 60, butter: 45 },
    ],
  ])("%j", async (turns, expected) => {
    const said = values((await lastOf(...turns))[0]);
    for (const [name, grams] of Object.entries(expected)) expect(said[name]).toBeCloseTo(grams, 9);
  });

  test("saved, and another order behind it", async () => {
    const recipe = "100 g whites, 130 g almond flour, 130 g powdered sugar, 90 g sugar";
    const [saved, list] = await lastOf(`save recipe X shells: ${recipe}. what recipes have i got`);
    expect(values(saved).total).toBe(450);
    expect(list?.headline).toContain("x shells");
    const [, doubled] = await lastOf(`save recipe rosa: ${recipe} and double it`);
    expect(values(doubled)).toMatchObject({ whites: 200, sugar: 180, total: 900 });
  });
});

describe("one part of what was split", () => {
  test.each<[string, string, Record<string, number>]>([
    // 300 - 40, 300 - 180
    ["split 300 g of batter into lemon and rose 2 to 1", "40 g in the lemon part", { lemon: 40, rose: 260 }],
    [
      "split 300 g of batter into lemon and rose 2 to 1",
      "make the lemon part 180 g",
      { lemon: 180, rose: 120 },
    ],
    // 100 + 20 from the other
    [
      "split 300 g of batter into lemon and rose 2 to 1",
      "the rose part got 20 g too much",
      { lemon: 180, rose: 120 },
    ],
    ["split 600 g in two", "first 350 g", { "part 1": 350, "part 2": 250 }],
    ["split 600 g in two", "one got 50 g too much", { "part 1": 350, "part 2": 250 }],
    // half of 600 + 50
    ["split 600 g in two", "one is 50 g heavier", { "part 1": 325, "part 2": 275 }],
    // (500 - 40) / 4
    ["split 500 g in five", "40 g in the first", { "part 1": 40, "part 2": 115, "part 5": 115 }],
    // the bowl is another weight: 550 / 2, 580 / 3
    ["split 600 g in two", "One got 50 g too much so make it 550 g", { each: 275 }],
    ["split 600 g in three", "20 g went on the floor, so call it 580 g", { each: 580 / 3 }],
  ])("%s: %s", async (first, then, expected) => {
    const said = values((await lastOf(first, then))[0]);
    for (const [name, grams] of Object.entries(expected)) expect(said[name]).toBeCloseTo(grams, 9);
  });

  test.each<[string, number]>([
    ["split 500 g in five, how much for one fifth", 100],
    ["divide 450 g by three, what does one third weigh", 150],
    ["cut 360 g in six, how much for a sixth", 60],
  ])("%s: one answer", async (said, each) => {
    const [only, ...others] = await lastOf(said);
    expect(others).toEqual([]);
    expect(values(only).each).toBeCloseTo(each, 9);
  });
});

describe("two mixes, two bowls", () => {
  test("both again, so many times", async () => {
    for (const [said, times] of [
      ["double both", 2],
      ["triple both of them", 3],
      ["both times two", 2],
      ["double it all", 2],
    ] as const) {
      const [shells, fill] = await lastOf("batter and filling for 30 macarons", said);
      // 30 macarons take 30 x 0.42 x 3.8^2 / 0.92 g
      expect(values(fill).filling).toBeCloseTo((times * 30 * 0.42 * 3.8 ** 2) / 0.92, 6);
      expect(values(shells).macarons).toBe(times * 30);
    }
  });

  test.each<[string, number]>([
    // floor(500 x 0.96 / (0.53 x 3.8^2)) = 62, of 420 g 52, of 350 g 43
    ["i have 250 g of batter and another 250 g of batter, how many shells", 62],
    ["got 300 g of batter plus 120 g more batter, how many shells", 52],
    ["ive 200 g of batter in one bowl and 150 g of batter in another, how many shells", 43],
    ["two bowls of batter, 250 g each, how many shells", 62],
  ])("%s", async (said, shells) => {
    const [only] = await lastOf(said);
    expect(values(only).shells).toBe(shells);
  });

  test("a bowl each for a flavor stays two", async () => {
    // 3 % of 300 and of 200
    const said = await lastOf(
      "i have 300 g of buttercream and another 200 g of buttercream, how much vanilla",
    );
    expect(said.map((each) => each.figures?.[0]?.low)).toEqual([9, 6]);
  });

  test("n=36 and a list of what is asked", async () => {
    for (const said of [
      "N=36, 4cm: batter, filling",
      "36 at 4 cm: batter, filling",
      "qty 36, size 4cm: batter, filling",
    ]) {
      const [shells, fill] = await lastOf(said);
      // ceil(22 x 36 / 10) = 80 shells; 36 x 0.42 x 16 / 0.92 g
      expect(values(shells).shells).toBe(80);
      expect(values(fill).filling).toBeCloseTo((36 * 0.42 * 16) / 0.92, 6);
    }
  });

  test("held against the mix that is named", async () => {
    // 88 shells x 0.53 x 3.8^2 / 0.96 = 702 g of batter for 40
    const [only] = await lastOf("how much filling for 40", "is that more than 200 g of batter");
    expect(only?.tool).toBe("shells");
    expect(only?.headline).toContain("702 g");
  });

  test("a filling made into a ganache", async () => {
    // 40 x 0.42 x 3.8^2 / 0.92 = 263.69 g; milk for piping 2 : 1
    const [only, ...others] = await lastOf(
      "fill for 40 macarons",
      "make it milk ganache, how much chocolate and cream then",
    );
    expect(others).toEqual([]);
    const total = (40 * 0.42 * 3.8 ** 2) / 0.92;
    expect(values(only).chocolate).toBeCloseTo((total * 2) / 3, 6);
    expect(values(only).cream).toBeCloseTo(total / 3, 6);
  });

  test("how many is asked for, where nobody knows it", async () => {
    for (const said of [
      "making macarons on Sunday and no clue how much buttercream to make",
      "macarons on Sunday. how much buttercream do i need",
    ]) {
      const [only] = await lastOf(said);
      expect(only).toMatchObject({ tool: "fill", status: "asking" });
    }
  });
});

describe("how far the whites are whipped", () => {
  test.each([
    "start meringue now, how stiff",
    "how stiff the meringue",
    "about to whip whites, how far do i take them",
  ])("%s", async (said) => {
    const [only] = await lastOf(said);
    expect(only?.tool).toBe("method");
    expect(only?.headline).toContain("stiff");
  });
});
