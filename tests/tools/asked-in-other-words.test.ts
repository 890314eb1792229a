/** Questions in words that once led elsewhere: each kind with several ways to say it, and their look-alikes. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

/** The answers to the last of some turns. */
async function last(turns: string): Promise<Answer[]> {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns.split(" | ")) answers = await ask(turn);
  return answers;
}

const figure = (answers: Answer[], name: string) =>
  answers.flatMap(({ figures = [] }) => figures).find((each) => each.name === name);

describe("what so much flavor is enough for: 8 g / 5 % = 160 g to 8 g / 3 % = 266.7 g of buttercream", () => {
  it.each([
    "I am nearly out of butterscotch flavouring, only 8 g. What weight of buttercream will that season?",
    "running low on banana flavour, 8 g. what weight of buttercream is that good for?",
    "I am almost out of almond flavouring: 8 g. How much buttercream can I season with it?",
    "We are low on hazelnut flavoring, only 8 g of it. What weight of buttercream can it season?",
    "The bottle of violet flavoring holds 8 g. Which weight of buttercream is that enough for?",
    "there's 8 g of melon flavour to use up, what weight of buttercream should i make for it",
    "running out of mint flavouring, 8 g to go. how much buttercream will it season",
  ])("%s", async (said) => {
    const base = figure(await last(said), "base");
    expect(base?.low).toBeCloseTo(160, 6);
    expect(base?.high).toBeCloseTo(800 / 3, 6);
  });
});

// the house formula, common practice: 100 of 460 parts are whites, 130 almond flour
describe("a weight of batter for an occasion, and what goes into it", () => {
  it.each([
    "I want 900 g of shell batter for the bake sale. What goes on the scale?",
    "900 g shell batter for bake day, list the weights",
    "Give me 900 g of macaron batter for a bake off. What are the amounts?",
    "we want 900 g of batter for sunday's bake. what are the ingredients",
    "I want 900 g of shell batter for the big bake. Break it down for me.",
  ])("%s", async (said) => {
    const answers = await last(said);
    expect(answers.map(({ tool }) => tool)).toEqual(["scale"]);
    expect(figure(answers, "whites")?.value).toBeCloseTo((900 * 100) / 460, 6);
    expect(figure(answers, "almond flour")?.value).toBeCloseTo((900 * 130) / 460, 6);
  });

  // 0.87 of the batter is left, from memory
  it.each(["how much do 900 g of batter weigh after the bake", "900 g batter weight when baked"])(
    "%s",
    async (said) => expect(figure(await last(said), "baked")?.value).toBeCloseTo(783, 6),
  );
  it("a bake is no weighing of what was baked", async () =>
    expect(figure(await last("I want 900 g of shell batter for the big bake"), "baked")).toBeUndefined());
});

describe("spoons that a weight of something fills: 5.4 g of cocoa a tablespoon (USDA SR28, NDB 19165)", () => {
  it.each([
    "How many tablespoons would 81 g of cocoa powder fill?",
    "how many tablespoons do i get from 81 g of cocoa powder",
    "how many level tablespoons would 81 g of cocoa powder fill",
    "81 g of cocoa powder fills how many tablespoons?",
    "how many tbsp would 81 g cocoa powder come to",
  ])("%s", async (said) => {
    const answers = await last(said);
    expect(answers.map(({ tool }) => tool)).toEqual(["convert"]);
    expect(figure(answers, "result")?.value).toBeCloseTo(81 / 5.4, 1);
  });
  it("a flavor's spoons for a bowl stay a dose", async () =>
    expect((await last("how many tablespoons of cocoa powder for 300 g buttercream"))[0]?.tool).toBe("dose"));
});

describe("a heat in the scale of what shows it: °C = (°F - 32) × 5 / 9", () => {
  it.each([
    ["ovens stuck in f it says 310 whats that in c", (310 - 32) / 1.8],
    ["oven reads in fahrenheit. it says 310. what is it in c", (310 - 32) / 1.8],
    ["the oven only shows fahrenheit and it says 310, what's that in celsius", (310 - 32) / 1.8],
    ["my oven is in f and says 310, whats that", (310 - 32) / 1.8],
    ["ovens stuck on celsius it says 155 whats that in f", 155 * 1.8 + 32],
    ["my oven is in f, recipe says 160, whats that in f", 160 * 1.8 + 32],
    ["my oven is in f, the recipe says 160, what do i set", 160 * 1.8 + 32],
    ["recipe is in f says 310 but my oven is c, what is that in c", (310 - 32) / 1.8],
  ])("%s", async (said, heat) => expect(figure(await last(said), "result")?.value).toBeCloseTo(heat, 6));
});

describe("measures that share a unit: 125 g a cup of flour (USDA SR28, NDB 20081)", () => {
  it.each([
    ["1 1/2 and 3/4 cups of flour in g", [187.5, 93.75]],
    ["1, 2 and 3 cups of flour in g", [125, 250, 375]],
    ["1 1/2 cups and 3/4 cup of flour in g", [187.5, 93.75]],
    ["1 and 3/4 cups of flour in g", [218.75]],
    ["2 and a half cups of flour in g", [312.5]],
  ])("%s", async (said, grams) =>
    expect((await last(said)).map(({ figures }) => figures?.[0]?.value)).toEqual(grams),
  );
});

describe("timers for every step of a plan", () => {
  it.each([
    "Now set timers for all of those steps",
    "Start a timer for each of those steps",
    "could you set alarms for all of these",
    "timers for the lot",
    "now set the timers",
  ])("%s", async (said) => {
    const { one, record } = baker();
    await one("plan 30 macarons for tomorrow 5 pm");
    expect((await one(said)).tool).toBe("day");
    expect(record().timers.length).toBeGreaterThan(5);
  });
  it("one timer by its name stays one", async () => {
    const { ask, record } = baker();
    await ask("plan 30 macarons for tomorrow 5 pm");
    await ask("timer for the ganache");
    expect(record().timers).toHaveLength(1);
  });
});

// 36 macarons take 36 × 0.42 × 3.8² / 0.92 = 237.3 g of filling (from memory); espresso powder is 1-2 % of it
describe("a flavor for the whole lot, batter lying beside the filling", () => {
  const filling_g = (36 * 0.42 * 3.8 ** 2) / 0.92;
  it.each([
    "I am filling 36 macarons. What weight of filling do I prepare? | Make all of it milk chocolate ganache. What do I weigh?",
    "filling for 36 macarons and batter for them",
    "how much ganache for 36 macarons, and how much batter",
  ])("%s", async (said) => {
    const answers = await last(`${said} | how much espresso powder for the whole lot`);
    const [dose] = answers.flatMap(({ figures = [] }) => figures);
    expect(dose?.low).toBeCloseTo(filling_g * 0.01, 6);
    expect(dose?.high).toBeCloseTo(filling_g * 0.02, 6);
  });
  it("behind batter alone no flavor is weighed", async () =>
    expect(
      (await last("batter for 36 macarons | how much mango flavor for the lot"))[0]?.figures ?? [],
    ).toEqual([]));
});

it.each([
  "700g smbc whats it made of + how much mango flavour for the lot",
  "what goes in 700g buttercream + how much mango flavour for the lot",
  "700g smbc recipe + mango flavour for it",
])("two questions with a plus between them: %s", async (said) => {
  const answers = await last(said);
  expect(answers.map(({ tool }) => tool)).toEqual(["buttercream", "dose"]);
  // whites 100 : sugar 150 : butter 250, common practice
  expect(figure(answers, "whites")?.value).toBeCloseTo(140, 6);
});

// 2 cups of granulated sugar at 200 g a cup (USDA SR28, NDB 19335); the house formula has as much of whites
it.each([
  "thats literally all the granulated in the flat, what else for shells to match",
  "only that much left, so what else for the batter",
  "what else for shells to match that",
])("shells from all that there is: %s", async (said) => {
  const answers = await last(`2 cups granulated sugar in g | ${said}`);
  expect(figure(answers, "whites")?.value).toBeCloseTo(400, 6);
  expect(figure(answers, "almond flour")?.value).toBeCloseTo(520, 6);
});

// 33 g a white: USDA SR, NDB 01124
it.each([
  ["add in two whites", 5],
  ["throw in another white", 4],
  ["add another egg white", 4],
  ["and two whites on top", 5],
  ["chuck in two more", 5],
  ["lose a white", 2],
  ["with 5 whites", 5],
])("of three whites, %s: %s", async (said, whites) =>
  expect(figure(await last(`scale to 3 whites | ${said}`), "whites")?.value).toBeCloseTo(33 * whites, 6),
);

// milk 2 : 1 and white 2.5 : 1, common practice
it.each([
  ["the dog got the dark, so milk", 200],
  ["the cat had the dark, white then", (300 * 2.5) / 3.5],
  ["my son ate the dark so its milk", 200],
])("a chocolate that is gone: %s", async (said, grams) =>
  expect(figure(await last(`300 g dark ganache what goes in | ${said}`), "chocolate")?.value).toBeCloseTo(
    grams,
    6,
  ),
);

it.each([
  "no oil, 450 g ganache",
  "450 g ganache, no oil",
  "450 g ganache, how much lemon oil? | no oil, 450 g ganache",
])("what is left out isn't dosed: %s", async (said) => {
  const answers = await last(said);
  expect(answers.map(({ tool, status }) => [tool, status])).toEqual([["ganache", "asking"]]);
});

// 84 shells × 0.53 × 3.8² / 0.96 = 669.7 g (from memory); an ounce is 28.349523125 g (NIST)
it.each(["84 shells batter in ounces", "batter for 84 shells in oz please", "84 shells, batter in oz?"])(
  "ounces asked for with the question: %s",
  async (said) =>
    expect(figure(await last(said), "batter")?.value).toBeCloseTo(
      (84 * 0.53 * 3.8 ** 2) / 0.96 / 28.349523125,
      6,
    ),
);

it.each(["what can u help w", "what u help w", "what can you help me out with", "wot can u help me w"])(
  "help: %s",
  async (said) =>
    expect((await last(said)).map(({ tool, status }) => [tool, status])).toEqual([["help", "answered"]]),
);
