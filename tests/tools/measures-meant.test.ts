/**
 * What is meant where little is said: spoons without a size, a number taken back by a bare "no", the other measure of the
 * last conversion, a clock time without "at", a recipe that is listed and no more. Doses are those of data/rules/doses
 * (from memory; the 3-5 % of a flavor that isn't named are common practice), a teaspoon of water is 4.92892 g (NIST Handbook 44, Appendix C: 1 tsp = 4.928922 ml); the rest is arithmetic.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

const teaspoon = 4.928922;

describe("spoons, whatever their size", () => {
  it.each([
    // vanilla extract 1 to 2 %
    ["how many spoons of vanilla extract for 300 g buttercream", 3 / teaspoon, 6 / teaspoon],
    ["vanilla extract for 300 g buttercream. ive no scale, just spoons", 3 / teaspoon, 6 / teaspoon],
    ["my scale died. vanilla extract for 300 g buttercream", 3 / teaspoon, 6 / teaspoon],
    ["scale broke so spoons it is, vanilla extract into 250 g ganache", 2.5 / teaspoon, 5 / teaspoon],
    // a flavor that isn't named: 3 to 5 %
    [
      "batteries in the scale are dead so tell me tsp, flavour into 340 g butercream",
      10.2 / teaspoon,
      17 / teaspoon,
    ],
  ])("%s", async (say, low, high) => {
    const { figures } = await talk(say);
    const inSpoons = figures?.find(({ unit }) => unit === "tsp");
    expect([inSpoons?.low, inSpoons?.high]).toEqual([expect.closeTo(low, 2), expect.closeTo(high, 2)]);
  });
  it("a powder has no spoon in the table: its grams, 3 to 8 %, and a word of caution", async () => {
    const { figures, cautions } = await talk("scale is dead. raspberry powder for 300 g buttercream");
    expect([figures?.length, figures?.[0]?.low, figures?.[0]?.high]).toEqual([1, 9, 24]);
    expect(cautions?.join(" ")).toMatch(/weigh it/);
  });
});

describe("taken back by a bare no", () => {
  it.each([
    // 3 to 5 % of 260
    ["flavor for 240, no 260 g buttercream", "flavor", 7.8, 13],
    ["flavor for 240 g, no 260 g buttercream", "flavor", 7.8, 13],
    // gel color 0.5 to 1.5 %
    ["gel for 240, no 260 g batter", "gel color", 1.3, 3.9],
  ])("%s", async (say, name, low, high) => {
    const answers = await baker().ask(say);
    expect(answers.length).toBe(1);
    expect(answers[0]?.figures?.[0]).toMatchObject({
      name,
      low: expect.closeTo(low, 6),
      high: expect.closeTo(high, 6),
    });
  });
});

describe("another measure, and nothing else", () => {
  // table salt: 6 g a teaspoon, three of them a tablespoon, 16 tablespoons a cup of 292 g (USDA SR, NDB 02047)
  it.each([
    [["tsp of table salt in grams", "tbsp?"], 18],
    [["tsp salt in g", "and a cup?"], 292],
    // sugar 200 g a cup (USDA SR, NDB 19335), of it a sixteenth
    [["1 cup sugar in grams", "tablespoon?"], 12.5],
    // 3 lb = 3 × 453.59237 g (NIST Handbook 44)
    [["grams in 3 lb?"], 1360.77711],
    [["minutes in 2.5 hours"], 150],
  ])("%s", async (turns, value) => {
    const { tool, of } = await talk(...turns);
    expect([tool, of("result")?.value]).toEqual(["convert", expect.closeTo(value, 4)]);
  });
  it("in tablespoons is what was asked before in grams: 16 of them a cup", async () => {
    const { of } = await talk("cup of almond flour in g", "in tbsp?");
    expect(of("result")).toMatchObject({ value: 16, unit: "tbsp" });
  });
});

describe("the clock without at, at 9:30", () => {
  it.each([
    ["alarm ten to eleven", 80],
    ["ten to ten, ring me", 20],
    ["remind me ten to eleven to take them out", 80],
    ["ring quarter past ten", 45],
  ])("%s", async (say, minutes) => {
    const { tool, of } = await talk(say);
    expect([tool, of("left")?.value]).toEqual(["timer", minutes]);
  });
  // the low end: who looks too early can wait on, who looks too late can't take back
  it("a range of minutes stays one, and rings at its low end", async () => {
    const { tool, headline, of, assumed } = await talk("alarm in 10 to 12 minutes");
    expect([tool, of("left")?.value, headline]).toEqual(["timer", 10, expect.stringContaining("rings 9:40")]);
    expect(assumed?.join()).toMatch(/10 min to 12 min/);
  });
  it.each([
    ["let them rest 20 min, time it", "rest"],
    ["time the rest for 30 min", "rest"],
    ["chill the ganache 30 min, time that", "ganache"],
  ])("%s: named by what they do", async (say, label) => {
    const her = baker();
    await her.ask(say);
    expect(her.record().timers.map((each) => each.label)).toEqual([label]);
  });
});

describe("a recipe that is listed, and no more, is kept whole", () => {
  const list = "110 g whites, 140 g almond flour, 135 g powdered sugar";
  it.each([
    [`my garden shells are ${list} and 100 g sugar`, "garden shells"],
    [`the garden shells take ${list}, 100 g sugar`, "garden shells"],
    [`my garden shells: ${list}, 100 g sugar`, "garden shells"],
    [`my shells are ${list}, 100 g sugar`, "shells"],
  ])("%s", async (say, name) => {
    const her = baker();
    expect(await her.ask(say)).toHaveLength(1);
    const [kept] = her.record().formulas;
    expect([kept?.name, kept?.lines.map(({ grams }) => grams)]).toEqual([name, [110, 140, 135, 100]]);
  });
  it("and is brought to what there is of one line, which changes nothing in it: 165 / 110", async () => {
    const her = baker();
    await her.ask(`my garden shells: ${list}, 100 g sugar`);
    const [scaled] = await her.ask("now garden shells on 165 g whites");
    expect(scaled?.figures?.find(({ name }) => name === "factor")?.value).toBeCloseTo(1.5, 9);
    expect(her.record().formulas[0]?.lines[0]?.grams).toBe(110);
  });
});

describe("two things in a breath", () => {
  it.each([
    // whites 2 : sugar 3 : butter 5 (common practice): 750 × 2/10 whites; extract 1 to 2 %, 1 % of 750
    [
      "750 g smbc, what goes in. vanilla extract for the whole batch too",
      ["buttercream", "dose"],
      [150, 7.5],
    ],
    [
      "smbc, 750 g of it, list me the three. vanilla extract for the whole batch too",
      ["buttercream", "dose"],
      [150, 7.5],
    ],
    // piping dark 1.25 : 1 (common practice): 300 × 1.25 / 2.25 chocolate; extract 1 % of 300
    [
      "300 g dark ganache for piping, chocolate and cream. vanilla extract for it",
      ["ganache", "dose"],
      [(300 * 1.25) / 2.25, 3],
    ],
  ])("%s", async (say, tools, firsts) => {
    const answers = await baker().ask(say);
    expect(answers.map(({ tool }) => tool)).toEqual(tools);
    expect(answers.map(({ figures }) => figures?.[0]?.value ?? figures?.[0]?.low)).toEqual(
      firsts.map((each) => expect.closeTo(each, 6)),
    );
  });
  // ceil(2.2 × 44) = 97 shells of 0.53 × 3.8² g, 4 % stay in the bowl; 44 fillings of 0.42 × 3.8² g, 8 % stay (from memory)
  it("batter and filling, each needed", async () => {
    const answers = await baker().ask("44 macarons: the batter i need, and the filling i need");
    expect(answers.map(({ tool, figures }) => [tool, figures?.[0]?.name, figures?.[0]?.value])).toEqual([
      ["shells", "batter", expect.closeTo((97 * 0.53 * 3.8 ** 2) / 0.96, 6)],
      ["fill", "filling", expect.closeTo((44 * 0.42 * 3.8 ** 2) / 0.92, 6)],
    ]);
  });
  it("a batch of last night is noted for yesterday", async () => {
    const her = baker();
    await her.ask("log last nights batch, tiramisu, all had nice feet");
    expect(her.record().notes[0]?.date).toBe("2026-03-13");
  });
});

describe("said in one breath, and all of it answered", () => {
  it("rum 2-5 % and zest 0.5-1.5 % (from memory) of 220 g", async () => {
    const answers = await baker().ask(
      "rum and also orange zest, both going in 220 g buttercream, how much of each",
    );
    expect(answers.map(({ figures }) => [figures?.[0]?.low, figures?.[0]?.high])).toEqual([
      [expect.closeTo(4.4, 6), expect.closeTo(11, 6)],
      [expect.closeTo(1.1, 6), expect.closeTo(3.3, 6)],
    ]);
  });
  it("so much white, behind a recipe with whites: 70 / 98", async () => {
    const { of } = await talk(
      "my card goes 98 whites 126 almond 126 powdered 84 sugar, today theres just 70 of white",
    );
    expect(of("factor")?.value).toBeCloseTo(70 / 98, 9);
  });
  it("what a list comes to, where no margin is wished: 0.25 × 14 + 0.2 × 7", async () => {
    const { of } = await talk(
      "price out this ganache: 250 g dark chocolate at $14 a kilo and 200 g cream at $7 a kilo",
    );
    expect(of("cost")?.value).toBeCloseTo(4.9, 9);
  });
  it("a timer that is needed isn't one that runs", async () => {
    const her = baker();
    const { tool, status, question, figures } = await her.one("need a timer going");
    expect([tool, status, question, figures, her.record().timers]).toEqual([
      "timer",
      "asking",
      expect.stringMatching(/^How long /),
      undefined,
      [],
    ]);
  });
});
