/** What is asked on from a recipe, a ganache, a bowl or a timer that was spoken of, and what only sounds like it. */
import { describe, expect, it } from "vitest";
import { figureOf, lastOf, onlyOf, withFigures } from "../support/ask.ts";

const near = (value: number) => expect.closeTo(value, 4);
const between = (low: number, high: number) => ({ low: near(low), high: near(high) });

// 160 g of almond flour are for 160 / 1.3 g of whites
describe("the recipe again, with the macarons of it counted since", () => {
  const turns = ["145 g whites what do i weigh for the shells", "only 160 g almond flour in the bag"];
  it.each([
    ["neighbour brought more, so double the recipe", 246.153846],
    ["my sister found more so double the recipe then", 246.153846],
    ["ok half the recipe", 61.538462],
    ["i bought some more, make it 1.5 times the recipe", 184.615385],
    ["twice the house recipe", 200],
  ])("%s", async (said, whites) => {
    const counted = "how many macarons will that make";
    expect(await figureOf("whites", ...turns, counted, said)).toMatchObject({ value: near(whites) });
  });

  // what was counted last is doubled
  it("double it", async () => {
    const { tool, value } = await withFigures(...turns, "how many macarons will that make", "double it");
    expect([tool, value("macarons")]).toEqual(["shells", 71]);
  });
});

describe("her own recipe", () => {
  const own =
    "my recipe: 100 g whites, 120 g almond flour, 120 g powdered sugar, 85 g granulated. i have only 85 g whites";

  // 85 + 102 + 102 + 72.25 g: 361.25 g, of which the house formula has 130 in 460 almond flour; 66 shells of 7.6532 / 0.96 g
  it.each([
    ["and the house formula for the same weight", 102.092391],
    ["the house recipe for that weight?", 102.092391],
    ["what would the house recipe be for as much batter", 102.092391],
    ["house recipe with the same whites", 110.5],
    ["house recipe for 30 macarons", 148.696685],
  ])("%s", async (said, almond) => {
    expect((await figureOf("almond flour", own, said))?.value).toBeCloseTo(almond, 4);
  });

  it.each([
    "ive bought more so double the recipe",
    "she brought more whites, so double the recipe",
    "double the recipe",
  ])("%s", async (said) => {
    expect(await figureOf("granulated sugar", own, said)).toMatchObject({ value: near(170) });
    const counted = "how many macarons is that";
    expect(await figureOf("granulated sugar", own, counted, said)).toMatchObject({ value: near(170) });
  });

  it("found 20 g more", async () => {
    expect(await figureOf("whites", own, "found 20 g more")).toMatchObject({ value: near(105) });
  });
});

// 360 g as it was told
describe("so much of a curd, behind what there was of its sugar", () => {
  const turns = [
    "curd for the middles: 120 g lemon juice, 150 g sugar, 90 g butter. times 1.5",
    "just found i only have 100 g sugar",
  ];
  it.each([
    "bought more. what would 540 g of it take",
    "so what goes into 540 g of it",
    "got more now, make 540 g of the curd",
  ])("%s", async (said) => {
    expect(await figureOf("lemon juice", ...turns, said)).toMatchObject({ value: near(180) });
  });

  it.each(["bought more, 200 g of it", "bought more, i have 200 g sugar now"])("%s", async (said) => {
    expect(await figureOf("lemon juice", ...turns, said)).toMatchObject({ value: near(160) });
  });
});

// 3 * 33 g of whites, 460 in 100
describe("what the batter comes to", () => {
  it.each([
    "what does the batter come to",
    "and what will all that batter come to in total",
    "so the batter comes to what",
    "what will the batter weigh",
  ])("%s", async (said) => {
    const { value } = await withFigures("three whites, how much almond flour", said);
    expect(value("total") ?? value("batter")).toEqual(near(455.4));
  });

  it.each([
    ["what does the batter cost", "cost"],
    ["what does the batter make", "shells"],
  ])("%s", async (said, tool) => {
    expect(await onlyOf("three whites, how much almond flour", said)).toMatchObject({ tool });
  });
});

describe("a ganache", () => {
  const runny = "milk choc ganache came out too runny to pipe, its 220 choc 140 cream";
  // 2 to 5 % of 420 g
  it.each([
    "no leave it at piping, the 60 are in so it's 420 g of ganache now. how much rum",
    "no keep it for piping, 60 g went in and its 420 g now. how much rum",
    "the 60 are in, so its 420 g now, how much rum",
  ])("%s", async (said) => {
    expect(await figureOf("rum", runny, "and if i want it firm enough to roll?", said)).toMatchObject(
      between(8.4, 21),
    );
  });

  // 3 to 4 %, as a ganache takes
  it("60 g is in", async () => {
    const said = "60 g is in and now i have 420 g, how much coffee flavor";
    expect((await onlyOf(runny, said)).figures).toEqual([expect.objectContaining(between(12.6, 16.8))]);
  });

  it.each([
    "ok came back together phew. how long does it set in the fridge now",
    "how long must it set now",
    "so how long in the fridge till its firm",
    "how long till it is firm enough",
  ])("%s", async (said) => {
    const { tool, headline } = await onlyOf("ganache split on me!! about 260g, oily puddles", said);
    expect([tool, headline]).toEqual(["method", expect.stringContaining("30-60 min")]);
  });

  it("how long is it good in the fridge now", async () => {
    const { tool } = await onlyOf("ganache split, 260 g", "how long is it good in the fridge now");
    expect(tool).toBe("keep");
  });

  const apart = "water activity of a ganache with 200 g dark chocolate and 100 g heavy cream?";
  it.each([
    "what's the ratio there and what is it good for",
    "and the ratio?",
    "what ratio is that",
    "what is it good for",
    "is it more for piping or rolling",
  ])("%s", async (said) => {
    const { value, headline } = await withFigures(apart, said);
    expect([value("ratio"), headline]).toEqual([near(2), expect.stringContaining("firm")]);
  });

  // the book's
  it.each([
    ["what ratio should it be for piping", 1.25],
    ["whats the ratio for white", 2.5],
  ])("%s", async (said, ratio) => {
    expect(await figureOf("ratio", apart, said)).toMatchObject({ value: near(ratio) });
  });
});

// 3 to 5 %
describe("a bowl that was weighed with what it is in", () => {
  it.each([
    "no wait thats with the bowl, 140 without",
    "oh that includes the bowl. 140 without it",
    "140 g without the bowl",
    "no its 140 without the bowl",
    "thats with the bowl, the bowl is 40",
  ])("%s", async (said) => {
    const { range } = await withFigures("how much peach flavor for 180 g mascarpone", said);
    expect(range("flavor")).toMatchObject(between(4.2, 7));
  });
});

describe("another timer, as long", () => {
  it.each([
    [["make that 12"], "and another one the same, for the syrup", 12, "syrup"],
    [[], "and one just like it for the syrup", 10, "syrup"],
    [[], "another one just as long for the glaze", 10, "glaze"],
    [["take 2 off that"], "a second one the same, call it glaze", 8, "glaze"],
    [["add 3 min"], "another one the same for tray 2", 13, "tray 2"],
    [["add 3 min"], "same again for the syrup", 13, "syrup"],
    [["add 3 min", "how long left"], "one more of those for the caramel please", 13, "caramel"],
  ])("%s %s", async (between, said, minutes, name) => {
    const { value, headline } = await withFigures("10 min timer for the buttercream", ...between, said);
    expect([value("left"), headline]).toEqual([minutes, expect.stringContaining(name)]);
  });

  it.each([
    [["stop it"], "another one the same"],
    [[], "another one for the syrup"],
  ])("%s %s", async (between, said) => {
    const { status } = await onlyOf("10 min timer for the buttercream", ...between, said);
    expect(status).toBe("asking");
  });
});

describe("a bowl shared out anew, behind the color for a part", () => {
  const turns = ["640 g batter, a quarter pink the rest white", "gel for the pink"];
  it.each(["actually four equal bowls", "make it four equal bowls after all", "no, into four bowls"])(
    "%s",
    async (said) => {
      const { tool, figures = [] } = await onlyOf(...turns, said);
      expect([tool, figures[0]?.value]).toEqual(["split", near(160)]);
    },
  );

  it.each(["and gel for four equal bowls", "no four equal bowls of 100 g"])("%s", async (said) => {
    expect((await onlyOf(...turns, said)).tool).toBe("dose");
  });
});

describe("the usual time of a step", () => {
  it.each([
    "is cooling usually 30 min",
    "is it usually 30 min for cooling",
    "is 30 min right for cooling",
    "do they normally rest 30 min",
    "does cooling take 30 min",
    "is resting supposed to be half an hour?",
  ])("%s", async (said) => {
    expect((await onlyOf("start the cooling timer", said)).tool).toBe("method");
    expect((await onlyOf("start the cooling timer", said, "list timers")).items).toHaveLength(1);
  });

  it.each([
    ["then rest for the normal time", 30, "rest"],
    ["ok let them rest the usual time", 30, "rest"],
    ["and then bake for the usual time", 15, "bake"],
    ["then cool for the standard time please", 30, "cool"],
    ["then rest for 40 min", 40, "rest"],
  ])("%s", async (said, minutes, name) => {
    for (const before of [
      "oven temp for shells?",
      "batter for 36 macarons",
      "set a timer of 12 min for the jam",
    ]) {
      const { tool, value, headline } = await withFigures(before, said);
      expect([tool, value("left"), headline]).toEqual(["timer", minutes, expect.stringContaining(name)]);
    }
  });

  it.each([
    ["how long is the normal rest time", "method"],
    ["do i usually bake 15 min", "recall"],
    ["note: rested the usual time, 30 min", "note"],
  ])("%s", async (said, tool) => {
    expect((await onlyOf(said)).tool).toBe(tool);
  });
});

// 0.53 * 3.8² g, baked 0.87 of it
describe("how heavy one is", () => {
  it.each([
    ["how heavy is one", 7.6532],
    ["how heavy are they each", 7.6532],
    ["how heavy would one of those be", 7.6532],
    ["how heavy is one once baked", 6.658284],
    ["how heavy is a shell", 7.6532],
    ["how heavy is one egg white", 33],
  ])("%s", async (said, grams) => {
    const { figures = [] } = await onlyOf("batter for 36 macarons", said);
    expect(figures.map(({ value }) => value)).toContainEqual(near(grams));
  });
});

describe("a plain oil", () => {
  it.each([
    "5 g olive oil for 200 g ganache",
    "how much olive oil for 200 g ganache",
    "how much coconut oil for 200 g ganache",
    "i added 5 g sunflower oil to 200 g buttercream, is that too much",
  ])("%s", async (said) => {
    const { status, figures = [] } = await onlyOf(said);
    expect([status, figures]).toEqual(["declined", []]);
  });

  // 0.2 to 0.5 %, and 3 to 4 % of 210 g
  it("has no part in the others", async () => {
    expect((await onlyOf("how much lemon oil for 200 g ganache")).figures).toEqual([
      expect.objectContaining(between(0.4, 1)),
    ]);
    const mixed = await lastOf("how much lemon flavor for 200 g ganache with 10 g olive oil in it");
    expect(mixed.map(({ figures = [] }) => figures)).toEqual([[expect.objectContaining(between(6.3, 8.4))]]);
    expect(await figureOf("flavor", "how much coconut flavor for 200 g ganache")).toMatchObject(
      between(6, 8),
    );
  });

  // USDA SR 04053
  it("1 tbsp olive oil in g", async () => {
    expect((await onlyOf("1 tbsp olive oil in g")).figures?.[0]?.value).toEqual(near(13.5));
  });
});
