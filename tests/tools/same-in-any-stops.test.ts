/**
 * The same question told with commas, full stops, semicolons or dashes between its parts gets the same answer. Figures
 * are worked by hand from the numbers beside them, as data/rules has them. From memory: doses in percent of the bowl, but a
 * flavor without a row of its own, which is 3-5 % of a buttercream and 3-4 % of a ganache by common practice; of a shell
 * 0.53 × d² g of batter, of a macaron 0.42 × d² g of filling, d in cm and 3.8 where none is said, 10 % spare shells, 4 %
 * of batter and 8 % of filling left behind. Common practice: ganache by chocolate and use, buttercream 100 : 150 : 250,
 * the house formula 100 : 130 : 130 : 100. A teaspoon is 4.928922 ml (NIST Handbook 44, Appendix C), its ml counted as g.
 */
import { expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";
import { near, range } from "../support/near.ts";

/** A dose is named by the baker's own word for what goes in. */
type Figure = [name: string | RegExp, low: number, high?: number];
interface Told {
  parts: string[];
  tool: string;
  figures: Figure[];
}

const stops = [", ", ". ", "; ", " - "];

const told = (tool: string, parts: string, ...figures: Figure[]): Told => ({
  tool,
  parts: parts.split(" / "),
  figures,
});

const all: Told[] = [
  // matcha in ganache 1.5-3 %: 130 × 0.015, 130 × 0.03
  told("dose", "white chocolate ganache weighing 130 g / matcha, how many grams?", [/^matcha\b/, 1.95, 3.9]),
  // fruit powder in buttercream 3-8 % of 500
  told("dose", "buttercream, 500 g in all / raspberry powder, grams?", [/^raspberry .*powder$/, 15, 40]),
  // spirits 2-5 % of 260 and of 300
  told("dose", "cream cheese filling / 260 g / limoncello?", ["limoncello", 5.2, 13]),
  told("dose", "mascarpone filling / 300 g / limoncello?", ["limoncello", 6, 15]),
  // 9 g in 150 g; ganache takes 3-4 %: 9 / 0.04 - 150 = 75, 9 / 0.035 - 150 = 107.142857
  told("dose", "the ganache weighs 150 g / i put in 9 g of flavor / how much more ganache?", [
    "add base",
    75,
    107.142857,
  ]),
  // vanilla extract 1-2 %: 6 / 0.02, 6 / 0.01
  told("dose", "6 g vanilla extract / how much buttercream will that do?", ["base", 300, 600]),
  // powder color 0.3-1 % of 380 g batter
  told("dose", "batter: 380 g / powder color for it?", ["powder color", 1.14, 3.8]),
  // flavor in ganache 3-4 %, a teaspoon 4.928922 g: 145 × 0.03 / 4.928922, 145 × 0.04 / 4.928922
  told(
    "dose",
    "i am at work with one teaspoon and no scale / pear flavouring for 145 g of ganache, in teaspoons?",
    ["flavor", (145 * 0.03) / 4.928922, (145 * 0.04) / 4.928922],
  ),
  // white to fill 2.5 : 1, of the chocolate: 300 / 2.5
  told("ganache", "white chocolate in hand: 300 g / i want a filling ganache", ["cream", 120]),
  // milk to roll 2.5 : 1, of the chocolate: 150 / 2.5
  told("ganache", "milk chocolate: 150 g / ganache to roll / cream?", ["cream", 60]),
  // dark to fill 1.25 : 1, of the cream: 140 × 1.25
  told("ganache", "cream in the fridge: 140 g / dark ganache to fill", ["chocolate", 175]),
  // white to fill 2.5 : 1, of the whole: 420 × 2.5 / 3.5
  told("ganache", "ganache / white / 420 g", ["chocolate", 300], ["cream", 120]),
  // dark to roll 2 : 1: 500 × 2 / 3, 500 / 3
  told("ganache", "500 g of ganache wanted / dark / firm", ["chocolate", 333.333333], ["cream", 166.666667]),
  // whites 100 : sugar 150 : butter 250: fifths of 800, as 1 : 1.5 : 2.5; 500 × 150 / 250
  told("buttercream", "smbc / 800 g in all / weights?", ["whites", 160], ["sugar", 240], ["butter", 400]),
  told("buttercream", "butter: 500 g / i want a meringue buttercream from it / what else?", ["sugar", 300]),
  // 66 shells of 0.53 × 3.8² g with a tenth to spare, 4 % left in the bowl: 526.1575 g; almond flour 130 of 460
  told("scale", "shells for 30 macarons / list the ingredients in grams", ["almond flour", 148.696685]),
  // 60 shells told take no spares: 60 × 7.6532 / 0.96 = 478.325
  told("scale", "i need 60 shells / ingredients in grams", ["total", 478.325]),
  // 62 shells: 62 × 7.6532 / 0.96 = 494.269167; whites 100 of 460
  told("scale", "batter for 28 macarons / list everything in grams", ["whites", 107.449819]),
  // × 75 / 100
  told(
    "scale",
    "recipe: 100 g whites, 130 g almond flour, 130 g powdered sugar, 90 g sugar / i have 75 g whites / new weights?",
    ["almond flour", 97.5],
    ["sugar", 67.5],
  ),
  // 4 × 30 shells: 120 × 7.6532 / 0.96
  told("shells", "4 trays / 30 shells on each / how much batter?", ["batter", 956.65], ["shells", 120]),
  // floor(420 × 0.96 / 7.6532) = 52 shells, two to a macaron
  told("shells", "420 g of batter / how many macarons is that?", ["macarons", 26]),
  // 400 / 4, and 400 - 100 - 50 is left
  told(
    "split",
    "400 g batter / a quarter green, 50 g brown, rest plain / weights?",
    ["green", 100],
    ["brown", 50],
    ["plain", 250],
  ),
  // (600 - 150) / 2
  told(
    "split",
    "600 g batter / 150 g black / half of the rest red / the other half white",
    ["red", 225],
    ["white", 225],
  ),
  // (520 - 120) / 2
  told(
    "split",
    "520 g batter / 120 g pink / the rest in two equal bowls",
    ["pink", 120],
    ["part 2", 200],
    ["part 3", 200],
  ),
  // 480 × 0.3, and 480 - 80 - 144 is left
  told("split", "480 g batter / 80 g grey / 30 percent pink / rest white", ["pink", 144], ["white", 256]),
  // (480 - 80) / 2
  told("split", "480 g batter / pink 80 g / rest blue and white, equal", ["blue", 200], ["white", 200]),
  // 450 × 2 / 3, 450 / 3
  told("split", "450 g batter / pink and white / 2 to 1", ["pink", 300], ["white", 150]),
  // 0.42 × 3.8² g a macaron, 8 % left in bowl and bag: 36 × 6.0648 / 0.92
  told("fill", "filling for 36 macarons / how much?", ["filling", 237.318261]),
  // 0.42 × 5² = 10.5 g: 30 × 10.5 / 0.92
  told("fill", "30 macarons of 50 mm / how much filling do they take?", ["filling", 342.391304]),
  // a fan takes 20 °C off (common practice)
  told("convert", "180 c conventional / fan oven temperature?", ["result", 160]),
  // a cup of ground almonds 95 g (USDA SR28, NDB 12061)
  told("convert", "2 cups almond flour / grams?", ["result", 190]),
  told("timer", "rest timer / 40 minutes", ["left", 40]),
  // cost / (1 - margin): 14 / (1 - 0.6)
  told("cost", "ingredients $14 / 40 macarons / price at 60 % margin?", ["price", 35]),
  // 12 / 30
  told("cost", "batch costs 12 euros / it makes 30 / what does one cost?", ["cost per macaron", 0.4]),
  // 18 / (1 - 0.55)
  told("cost", "cost $18 / margin 55 percent / price?", ["price", 40]),
];

function expectAll(answer: Answer | undefined, figures: readonly Figure[], about: string) {
  for (const [name, low, high] of figures)
    expect(answer?.figures, about).toContainEqual(
      expect.objectContaining({
        name: typeof name === "string" ? name : expect.stringMatching(name),
        ...(high === undefined ? near(low) : range(low, high)),
      }),
    );
}

for (const { tool, parts, figures } of all)
  test(parts.join(" / "), async () => {
    for (const stop of stops) {
      const line = parts.join(stop);
      const answers = await baker().ask(line);
      const [first] = answers;
      expect([answers.length, first?.tool, first?.status], line).toEqual([1, tool, "answered"]);
      expectAll(first, figures, line);
    }
  });

/** What is told without a sum: the words of the answer, in every way to stop. */
const said: [parts: string, tool: string, words: RegExp, ...Figure[]][] = [
  ["20 minutes on a timer / call it proofing", "timer", /on proofing/, ["left", 20]],
  ["set a timer / 25 minutes / call it whites", "timer", /on whites/, ["left", 25]],
  // FDA Food Code 2022, 3-501.17: seven days counting the day of making as the first
  ["filled macarons / in the fridge / how long?", "keep", /^7 days in the fridge/],
  // two hours in all out of the fridge (USDA FSIS)
  [
    "filled with buttercream / at room temperature / how long are they safe?",
    "keep",
    /^2 h out of the fridge/,
    ["out of the fridge", 2],
  ],
  // almonds and egg are among the nine (21 U.S.C. 321(qq))
  [
    "us label / almond flour 120 g, egg whites 100 g, powdered sugar 120 g",
    "label",
    /contains almond and egg/,
  ],
];

for (const [parts, tool, words, ...figures] of said)
  test(`${parts}: ${tool}`, async () => {
    for (const stop of stops) {
      const line = parts.split(" / ").join(stop);
      const answers = await baker().ask(line);
      expect(answers.map((each) => [each.tool, each.status])).toEqual([[tool, "answered"]]);
      expect(answers[0]?.headline).toMatch(words);
      expectAll(answers[0], figures, line);
    }
  });

/** A flavor asked for behind a mix that was worked out is for that mix. */
test("a flavor behind the parts of a mix is for all of it", async () => {
  for (const stop of [". ", "; ", "|"]) {
    const asked = ["weights for 500 g smbc", "raspberry powder, how many grams?"];
    const talk = baker();
    const answers =
      stop === "|"
        ? [...(await talk.ask(asked[0] ?? "")), ...(await talk.ask(asked[1] ?? ""))]
        : await talk.ask(asked.join(stop));
    expect(answers.map((each) => each.tool)).toEqual(["buttercream", "dose"]);
    // fruit powder 3-8 % of 500 g
    expect(answers[1]?.figures?.[0]).toMatchObject({ low: 15, high: 40 });
  }
});

/** What is written out where others talk, turn by turn. */
const talks: [turns: string[], tool: string, figures: Figure[]][] = [
  // 108 × 130 / 100, by the house formula
  [["whites weighed: 115 g. the other three?", "correction. 108."], "scale", [["almond flour", 140.4]]],
  // 0.42 × 4.5² = 8.505 g a macaron, of 92 %: floor(250 × 0.92 / 8.505)
  [
    ["250 g of filling is ready. it will do how many macarons?", "45 mm macarons, i should have said."],
    "fill",
    [["macarons", 27]],
  ],
  // 5 / 310
  [
    [
      "elderflower flavouring into 310 g of buttercream. what does the dose come to?",
      "so far i have put in 5 g. sufficient?",
    ],
    "dose",
    [["share", 1.612903]],
  ],
  // down to 5 %, and to the middle of 3 and 5 %: 13 / 0.05 - 180, 13 / 0.04 - 180
  [
    [
      "is 13 g of fig flavour in 180 g of buttercream above the range?",
      "work out the extra plain buttercream that puts it right.",
    ],
    "dose",
    [["add base", 80, 145]],
  ],
  // of 120 parts almond flour there are 100 in the end: 96 × 100 / 120
  [
    [
      "96 g whites, 120 g ground almonds, 115 g icing sugar, 80 g sugar. my packet of ground almonds holds 150 g. new weights?",
      "and were the packet 100 g?",
    ],
    "scale",
    [["whites", 80]],
  ],
  // 25 + 5
  [
    ["time the rest at twenty five minutes", "five minutes longer it is damp in here"],
    "timer",
    [["left", 30]],
  ],
];

for (const [turns, tool, figures] of talks)
  test(turns.join(" | "), async () => {
    const { ask } = baker();
    for (const turn of turns.slice(0, -1)) expect(await ask(turn)).toHaveLength(1);
    const [answer, ...more] = await ask(turns.at(-1) ?? "");
    expect([more.length, answer?.tool, answer?.status]).toEqual([0, tool, "answered"]);
    expectAll(answer, figures, turns.join(" | "));
  });
