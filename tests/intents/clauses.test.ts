/**
 * One turn, several questions: each is answered, in order, with the figures that data/rules gives. Sums are worked
 * out by hand from the rules: a shell of 3.8 cm takes 0.53 × 3.8² = 7.6532 g, its filling 0.42 × 3.8² = 6.0648 g.
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, readings } from "../support/ask.ts";

/** A tool and one figure that its answer has: name, value or "low-high", unit. */
type Told = readonly [tool: string, figure?: string, unit?: string];

const shell = 0.53 * 3.8 ** 2;
const filling = 0.42 * 3.8 ** 2;
const short = (value: number | undefined) => (value === undefined ? undefined : Number(value.toPrecision(6)));

function check(answer: Answer | undefined, [tool, figure, unit]: Told, said: string) {
  expect(answer?.tool, said).toBe(tool);
  if (figure === undefined) return;
  const figures = (answer?.figures ?? []).map(
    ({ value, low, high, unit: of }) => `${short(value) ?? `${short(low)}-${short(high)}`} ${of}`,
  );
  expect(figures, said).toContain(
    `${figure
      .split("-")
      .map((part) => short(Number(part)))
      .join("-")} ${unit}`,
  );
}

const two: readonly (readonly [string, Told, Told])[] = [
  [
    "350 f in c and 9 oz in grams",
    ["convert", `${(350 - 32) / 1.8}`, "°C"],
    ["convert", `${9 * 28.349523125}`, "g"],
  ],
  [
    "what's 350 f in c. what's 150 c in f",
    ["convert", `${(350 - 32) / 1.8}`, "°C"],
    ["convert", "302", "°F"],
  ],
  [
    "batter for 24 macarons and how much filling",
    ["shells", `${(53 * shell) / 0.96}`, "g"],
    ["fill", `${(24 * filling) / 0.92}`, "g"],
  ],
  [
    "48 macarons: how much batter and how much filling do I need?",
    ["shells", `${(106 * shell) / 0.96}`, "g"],
    ["fill", `${(48 * filling) / 0.92}`, "g"],
  ],
  [
    "batter for 24 macarons? how much flavor in 200 g ganache?",
    ["shells", `${(53 * shell) / 0.96}`, "g"],
    ["dose", "6-8", "g"],
  ],
  ["start the rest timer and set a timer for 15 min", ["timer", "30", "min"], ["timer", "15", "min"]],
  [
    "set a timer for 12 min, and how much salt in 300 g buttercream",
    ["timer", "12", "min"],
    ["dose", "0.6-1.5", "g"],
  ],
  [
    "how much salt in 300 g buttercream, and set a timer for 12 min",
    ["dose", "0.6-1.5", "g"],
    ["timer", "12", "min"],
  ],
  [
    "200 g dark chocolate to pipe, how much cream? and how much rum for 300 g buttercream?",
    ["ganache", "160", "g"],
    ["dose", "6-15", "g"],
  ],
  [
    "2 cups powdered sugar in grams and 1 cup almond flour in grams",
    ["convert", "240", "g"],
    ["convert", "95", "g"],
  ],
  ["12 min for tray 1 and 14 min for tray 2", ["timer", "12", "min"], ["timer", "14", "min"]],
  [
    "how much lemon zest for 250 g buttercream and how much salt?",
    ["dose", "1.25-3.75", "g"],
    ["dose", "0.5-1.25", "g"],
  ],
  [
    "600 g buttercream split in three, and how much vanilla extract goes in one of them",
    ["split", "200", "g"],
    ["dose", "2-4", "g"],
  ],
  ["note: lemon batch, 8 out of 10. and set a timer for 10 min", ["note"], ["timer", "10", "min"]],
  ["note pistachio batch, two hollow, and start the rest timer", ["note"], ["timer", "30", "min"]],
  [
    "how many trays for 40 macarons, and how many macarons from 460 g batter",
    ["shells", "3", "trays"],
    ["shells", "28", "macarons"],
  ],
  ["my shells cracked, why? and how much flavor for 100 g ganache", ["trouble"], ["dose", "3-4", "g"]],
];

describe("two questions in one turn", () => {
  it.each(two)("%s", async (said, ...told) => {
    const answers = await baker().ask(said);
    expect(answers.map(({ tool }) => tool)).toEqual(told.map(([tool]) => tool));
    told.forEach((each, at) => {
      check(answers[at], each, said);
    });
  });
});

const three: readonly (readonly [string, Told, Told, Told])[] = [
  [
    "200 g buttercream: how much vanilla extract, how much salt and how much rum",
    ["dose", "2-4", "g"],
    ["dose", "0.4-1", "g"],
    ["dose", "4-10", "g"],
  ],
  [
    "350 f in c, 9 oz in grams and start the rest timer",
    ["convert", `${(350 - 32) / 1.8}`, "°C"],
    ["convert", `${9 * 28.349523125}`, "g"],
    ["timer", "30", "min"],
  ],
  [
    "batter for 24 macarons and how much filling, and set a timer for 20 min",
    ["shells", `${(53 * shell) / 0.96}`, "g"],
    ["fill", `${(24 * filling) / 0.92}`, "g"],
    ["timer", "20", "min"],
  ],
  [
    "how much salt in 300 g buttercream? how much cream for 200 g dark chocolate to pipe? and what's 300 f in c?",
    ["dose", "0.6-1.5", "g"],
    ["ganache", "160", "g"],
    ["convert", `${268 / 1.8}`, "°C"],
  ],
  [
    "timers: 8 min for the syrup, 15 min for the bake and 30 min for the rest",
    ["timer", "8", "min"],
    ["timer", "15", "min"],
    ["timer", "30", "min"],
  ],
  [
    "2 oz in grams, 3 oz in grams and 4 oz in grams",
    ["convert", `${2 * 28.349523125}`, "g"],
    ["convert", `${3 * 28.349523125}`, "g"],
    ["convert", `${4 * 28.349523125}`, "g"],
  ],
];

describe("three questions in one turn", () => {
  it.each(three)("%s", async (said, ...told) => {
    const answers = await baker().ask(said);
    expect(answers.map(({ tool }) => tool)).toEqual(told.map(([tool]) => tool));
    told.forEach((each, at) => {
      check(answers[at], each, said);
    });
  });
});

describe("one question, whatever is listed in it", () => {
  it.each([
    "70 g cream + 110 g white chocolate + 25 g butter, how much peach flavor goes in",
    "180g white choc, 108 g double cream and 45 g butter all melted together - how much raspberry flavouring for the lot?",
    "recipe says 105 whites 135 almond 135 powdered 90 sugar but I only have 70 g whites",
    "recipe is 105 g whites, 135 g almond, 135 g powdered and 90 g sugar. I only have 70 g whites",
    "€10 ingredients, €2.50 packaging, two hours work at €15 an hour, price with a 40 % margin",
    "split 450 g of batter a third pink, a third blue and the rest plain",
    "480 g batter, two parts blue, one part white and one part green",
    "48 macarons with a caramel center and a buttercream ring, how much of each",
    "130 g almond flour at $16 a kilo and 100 g sugar at $1.50 a kilo, what did the batch cost",
    "us label: 130 g almond flour, 130 g powdered sugar, 100 g egg whites and 100 g sugar, net weight 120 g",
    "200 g dark and 160 g cream, what is that good for",
    "how much butter and sugar for buttercream with 90 g whites",
    "I have 300 g dark chocolate and 200 g cream, is that right for piping",
    "set a timer for 1 hour and 20 minutes",
    "set a timer for an hour and a half",
    "between 3 and 5 g of flavor in 150 g buttercream, is that right",
    "put 9 g coconut flavor into 150 g smbc and it's too strong",
    "remind me to flip the tray and check the oven in 7 minutes",
    "what's 3/4 of 260",
    "100 g half and half in cups",
    "I have 230 g of buttercream. How much flavor?",
    "hi! 230 g buttercream, how much flavor please?",
    "need 36 macarons ready friday 6 pm, so when do I start",
    "make this 1.5 times: 120 g butter, 150 g sugar, 90 g lemon juice",
    "put 2 kg sugar and 500 g butter in the pantry",
    "call tray 1 blue shells and whites",
  ])("%s", (said) => {
    expect(readings(said)).toHaveLength(1);
  });
});

describe("a note keeps all of its words", () => {
  it.each([
    "note: pistachio batch, 150 c for 15 min, two hollow, filled with ganache and buttercream, rested 40 min, 8 out of 10",
    "note: rose batch. 150 c. rest 40 min. next time 12 min.",
    "note pistachio, 24 macarons, 3 % flavor, timer went off late, good feet",
    "log lemon batch: 100 g whites, 130 g almond flour, baked 15 min at 150, and two cracked",
    "note: 24 lime ones, feet lovely and what a shine",
    "note: mint batch, cracked and how! oven too hot",
    "note vanilla batch; wet day; shells stuck and tore",
    "save recipe snowy shells: 105 g whites, 130 g almond flour, 130 g powdered sugar, 95 g granulated sugar",
  ])("%s", (said) => {
    expect(readings(said)).toHaveLength(1);
  });

  it("but for an order or a question that ends it", () => {
    expect(readings("note: rose batch, two hollow and set a timer for 10 min")).toHaveLength(2);
    expect(readings("note that my rose batch had no feet. what makes no feet?")).toHaveLength(2);
  });
});
