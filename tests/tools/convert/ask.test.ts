/** Conversions and sums asked in words, and what follows on them. Expected values worked out by hand. */
import { describe, expect, test } from "vitest";
import { convert } from "../../../src/tools/convert/convert.ts";
import { baker, steps } from "../../support/ask.ts";

const figures = async (...lines: string[]) => {
  const one = baker();
  let last: (number | undefined)[] = [];
  for (const line of lines)
    last = (await one.ask(line)).map((each) =>
      each.tool === "convert" ? (each.figures?.[0]?.value ?? each.figures?.[0]?.low) : undefined,
    );
  return last;
};
const close = (got: (number | undefined)[], want: number[]) => {
  expect(got).toHaveLength(want.length);
  for (const [at, each] of want.entries()) expect(got[at]).toBeCloseTo(each, 6);
};

describe("examples read to their inputs", () => {
  test.each(convert.examples.map((each) => [each.say, each.inputs] as const))("%s", (say, inputs) => {
    const [step] = steps(say)[0] as { tool: { name: string }; inputs: unknown }[];
    expect(step?.tool.name).toBe("convert");
    expect(step?.inputs).toMatchObject(inputs);
  });
});

describe("one sentence", () => {
  test.each([
    ["how heavy is a stick of butter", [113]],
    ["what does half a cup of honey weigh", [169.5]],
    ["a pound and a half of butter in grams", [680.388555]],
    ["stick and a half of butter in grams", [169.5]],
    ["a dozen egg whites in grams", [396]],
    ["1 cup slivered almonds in grams", [108]],
    ["how many tablespoons of butter is 71 g", [5]],
    ["1 cup flour and 1 cup honey, both in grams", [125, 339]],
    ["how many grams is 9 oz and how many oz is 1 lb", [255.145708125, 16]],
    ["1.5 kg in pounds and ounces", [1500 / 453.59237, 1500 / 28.349523125]],
    ["recipe is in celsius, 145 c, my dial is in fahrenheit", [293]],
    ["350 in celsius", [318 / 1.8]],
    ["150-160 c in f", [302]],
    ["my piping tip is 1/2 inch", [12.7]],
    ["what is 350 f in a fan oven", [325]],
    ["150 c fan to conventional", [170]],
    ["my oven is fan, the recipe says 160 c", [140]],
    ["75 min in hours", [1.25]],
    ["whats 100 plus 45 times 3", [235]],
    ["240 minus 85", [155]],
    ["divide 900 by 8", [112.5]],
    ["subtract 30 from 260", [230]],
    ["240 divided by 8", [30]],
    ["what is 230 / 4", [57.5]],
    ["20% of 850", [170]],
    ["two thirds of 270", [180]],
    ["half of 300 g", [150]],
    ["(3 + 4) x 5", [35]],
    ["12,5 x 4", [50]],
  ])("%s", async (say, want) => close(await figures(say), want));
});

describe("what follows", () => {
  test.each([
    [["2 cups powdered sugar in grams", "and sifted?"], [200]],
    [["2 cups powdered sugar in grams", "and in ounces"], [240 / 28.349523125]],
    [["2 cups powdered sugar in grams", "what about 3 cups"], [360]],
    [["2 cups powdered sugar in grams", "and almond flour?"], [190]],
    [["2 cups powdered sugar in grams", "and sifted?", "what about 3 cups"], [300]],
    [["9 oz in grams", "and 400?"], [11339.80925]],
    [["9 oz in grams", "and 340 g"], [340 / 28.349523125]],
    [["half a cup honey to grams", "3 tbsp of it"], [63]],
    [["3 cups to grams", "granulated sugar"], [600]],
    [["1 cup hazelnuts in grams", "ground"], [75]],
    [["a cup of chocolate chips in grams", "milk"], [168]],
    [["180 conventional to fan", "celsius"], [160]],
    [["15 % of 240", "and of 480?"], [72]],
    [["160 c conventional for a fan oven", "and 170?"], [150]],
  ])("%j", async (lines, want) => close(await figures(...lines), want));

  test("a timer behind a conversion is a timer", async () => {
    const answers = await baker().ask("325 f in c and 18 min on the clock please");
    expect(answers.map((each) => each.tool)).toEqual(["convert", "timer"]);
  });

  test("the weight that came out is what the next question means", async () => {
    const one = baker();
    await one.ask("8 oz in grams");
    const said = await one.one("thats my buttercream, how much maple flavor goes in it");
    expect(said.tool).toBe("dose");
    expect(said.figures?.[0]?.low).toBeCloseTo(226.796185 * 0.03, 9);
  });
});

describe("left to others, or to nobody", () => {
  test.each([
    ["how many teaspoons of flavor for 230 g buttercream", "dose"],
    ["cocoa powder in 300 g ganache, how many grams", "dose"],
    ["18 min on the clock please", "timer"],
    ["split 480 g batter two to one", "split"],
    ["what oven temperature for macaron shells", "method"],
    ["square root of 2", "help"],
  ])("%s", async (say, tool) => expect((await baker().one(say)).tool).toBe(tool));
});

test("spelling, case and spacing of a unit change nothing", async () => {
  for (const say of [
    "9 oz in grams",
    "9oz in grams",
    "9 OUNCES to g",
    "what's nine ounces in grams?",
    "how many grams is 9 ounces",
  ])
    close(await figures(say), [255.145708125]);
});

describe("gas marks, as British cookbooks print them (common practice)", () => {
  test.each([
    ["gas mark 4 in c", 180, "°C"],
    ["what is gas 2", 150, "°C"],
    ["gas mark 1 in fahrenheit", 284, "°F"],
    ["gas mark 1/2 in celsius", 120, "°C"],
  ])("%s", async (say, value, unit) =>
    expect((await baker().one(say)).figures).toEqual([{ name: "result", value, unit }]),
  );
  // and the other way: 350 °F is 176.7 °C, nearest to the 180 of mark 4
  test.each([
    ["160 c as a gas mark", 3],
    ["gas mark for 180 c", 4],
    ["whats gas mark for 325f", 3],
    ["350 f in gas", 4],
  ])("%s", async (say, value) =>
    expect((await baker().one(say)).figures).toEqual([{ name: "result", value, unit: "gas mark" }]),
  );
  test("says which scale it took for a number alone, and that 300 °C has no mark", async () => {
    expect((await baker().one("what gas mark is 350")).assumed).toContain("350 °F");
    expect((await baker().one("gas mark for 300 c")).status).toBe("impossible");
  });
  test("there is no mark 12", async () =>
    expect((await baker().one("gas mark 12 in c")).status).toBe("impossible"));
});
