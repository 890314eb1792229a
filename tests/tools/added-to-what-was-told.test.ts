/** What is added, put right or taken up of what was told before: the number that stands at the end, the part that joins. */
import { describe, expect, it } from "vitest";
import { onlyOf, withFigures } from "../support/ask.ts";

const near = (value: number) => expect.closeTo(value, 4);

// 1 to 2 %: 5 g are enough for 250 to 500 g
describe("found another 2, so call it five", () => {
  it.each([
    "found another 2, so call it five",
    "found another 2 g, call it five",
    "theres another 2 in the cupboard, so 5",
    "found another 2 g, that makes 5",
    "plus 2 g more, so it comes to 5 g",
  ])("%s", async (said) => {
    const { range } = await withFigures(
      "Only three grams of lavender extract in the bottle. How much SMBC would that flavor?",
      said,
    );
    expect(range("base")).toMatchObject({ low: near(250), high: near(500) });
  });

  // 48 called 50 is rounded: no bowl of 50 g
  it("found another 48, call it 50", async () => {
    const { status } = await onlyOf("230 g buttercream, how much flavor", "found another 48, call it 50");
    expect(status).toBe("asking");
  });
});

// almond flour is 1.3 times the whites
describe("misread", () => {
  it.each([
    "oops misread, 173",
    "misread it: 173",
    "misweighed, 173",
    "i read it wrong, its 173",
    "wrong way round. 173 g",
    "swapped the digits, 173",
    "i mistyped, should be 173",
    "oops, 173",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures("137 g whites on the scale. rest of the shells?", said);
    expect([tool, value("almond flour")]).toEqual(["scale", near(224.9)]);
  });

  it("is of a bowl too", async () => {
    const { range } = await withFigures("230 g buttercream, how much flavor", "oops misread, 320");
    expect(range("flavor")).toMatchObject({ low: near(9.6), high: near(16) });
  });
});

// instant coffee is 1 to 2 % of chocolate, cream and butter
describe("one more part of a ganache", () => {
  const told = "Dark ganache, 150 chocolate, 120 cream. Instant coffee?";
  it.each([
    ["Plus 30 butter.", 3],
    ["and 30 g butter", 3],
    ["oh and butter, 30", 3],
    ["i forgot the butter, 30 g", 3],
    ["ill stir in 30 g butter as well", 3],
    ["add 30 g butter to it", 3],
    ["plus 30 cream", 3],
    ["and with 150 cream?", 3],
    // another bowl
    ["and 150 g buttercream", 1.5],
  ])("%s", async (said, low) => {
    expect((await withFigures(told, said)).range("instant coffee")?.low).toBeCloseTo(low, 6);
  });

  it("is taken out again, and salt goes into the same", async () => {
    const turns = [told, "Plus 30 butter.", "Without the butter after all."];
    expect((await withFigures(...turns)).range("instant coffee")?.low).toBeCloseTo(2.7, 6);
    expect((await withFigures(...turns, "Salt for the same.")).range("salt")?.low).toBeCloseTo(0.54, 6);
  });

  it("joins a bowl that was weighed whole", async () => {
    const bowl = "270 g buttercream, how much salt";
    expect((await withFigures(bowl, "plus 30 butter")).range("salt")?.low).toBeCloseTo(0.6, 6);
  });
});

// 92 of 115 is 0.8
describe("gran", () => {
  it.each([
    "AF 150, PS 150, EW 115, gran 100. redo it for 92 g EW",
    "gran 100, AF 150, PS 150, EW 115. redo it for 92 g EW",
    "150 AF, 150 PS, 115 EW and 100 gran, redo it for 92 g whites",
    "150g AF 150g PS 115g EW 100g gran for 92 g whites please",
  ])("%s", async (said) => {
    expect((await withFigures(said)).value("granulated sugar")).toBeCloseTo(80, 6);
  });

  it("is a grandmother elsewhere", async () => {
    const { figures } = await withFigures("my gran wants 60 almond macarons, how much batter");
    expect(figures?.map(({ name }) => name)).not.toContain("granulated sugar");
  });
});

// 340.194277 g of powdered sugar: whites are 100 of 130
describe("every bit that was turned into grams", () => {
  it.each([
    "thats every bit ive got. whats the rest of the shell recipe come to",
    "whats the rest of the shell recipe",
    "thats all ive got, rest of the shells?",
  ])("%s", async (said) => {
    const { tool, value } = await withFigures("12oz icing sugar is wat in grams", said);
    expect([tool, value("whites")]).toEqual(["scale", near(261.6879)]);
  });
});

// 10 to 20 % of 250 g ganache, 1.5 to 3 % of 200 g buttercream
describe("the other one", () => {
  const both = "Vanilla extract for 200g BC and for 250g dark ganache, how much each?";
  it.each([
    [["matcha in the first one", "pistachio paste in the other one"], "pistachio paste", 25],
    [["matcha in the first one", "pistachio paste in the second one"], "pistachio paste", 25],
    [["matcha in the buttercream", "pistachio paste in the other bowl"], "pistachio paste", 25],
    [["matcha in the second one", "pistachio paste in the other one"], "pistachio paste", 20],
    [["salt in the first one", "and the other?"], "salt", 0.5],
  ])("%s", async (turns, name, low) => {
    expect((await withFigures(both, ...turns)).range(name)?.low).toBeCloseTo(low, 6);
  });
});
