/**
 * Bowls that are told in one turn and put right in the next: shares, parts, weights, and what goes into each of them.
 * Worked by hand. Doses as in data/rules/doses.ts, in percent of the mix: flavor 3 to 5 (common practice); gel color
 * 0.5 to 1.5, powder color 0.3 to 1, extract and vanilla paste 1 to 2, freeze-dried fruit 3 to 8, salt 0.2 to 0.5 (from
 * memory). An ounce is 28.349523125 g; shares, parts and ounces are arithmetic.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

type Wanted = Record<string, number | [low: number, high: number]>;

const cases: [turns: string, wanted: Wanted][] = [
  // a percentage that nobody stirs in, beside a color: 60 % of 460 is 276, 0.5 to 1.5 % of that
  ["460 batter|gel for it|60% pink", { "gel color": [1.38, 4.14] }],
  ["460 batter|gel for it|60% pink|no 40%", { "gel color": [0.92, 2.76] }],
  ["500 g batter|powder color for it|20 % of it is blue", { "powder color": [0.3, 1] }],
  // "buttercream split" is told of a bowl, where two flavors stand behind it
  ["400 g buttercream split lemon and raspberry 60 40", { lemon: 240, raspberry: 160 }],
  [
    "400 g buttercream split lemon and raspberry 60 40|lemon extract for the first",
    { "lemon extract": [2.4, 4.8] },
  ],
  [
    "400 g buttercream split lemon and raspberry 60 40|lemon extract for the first|raspberry powder for the other",
    { "raspberry freeze-dried powder": [4.8, 12.8] },
  ],
  [
    "400 g buttercream split lemon and raspberry 60 40|raspberry powder for the other|no 50 50",
    { lemon: 200, raspberry: 200 },
  ],
  // one of the parts, the whole staying: 2 : 1 : 1 of 460
  ["460 batter split 3 bowls|one pink one blue one white|2 parts pink", { pink: 230, blue: 115, white: 115 }],
  ["split 520 batter pink and blue|60% pink", { pink: 312, blue: 208 }],
  ["split 520 batter pink and blue|60% pink|no 40", { pink: 208, blue: 312 }],
  ["split 520 batter pink and blue|60% pink|no 45", { pink: 234, blue: 286 }],
  // which of several bowls: 1 to 2 % of 180, 3 to 5 % of 120, then of 130
  [
    "3 bowls buttercream 120 150 180 how much vanilla each|and paste for the last",
    { "vanilla bean paste": [1.8, 3.6] },
  ],
  ["3 bowls buttercream 120 150 180 how much vanilla each|first one mint instead", { flavor: [3.6, 6] }],
  [
    "3 bowls buttercream 120 150 180 how much vanilla each|first one mint instead|no 130 in the first",
    { flavor: [3.9, 6.5] },
  ],
  // a part changed behind its color; what is left takes the difference
  [
    "600 batter. 200 pink 250 blue rest white|gel for blue|pink is powder|blue to 300",
    { pink: 200, blue: 300, white: 100 },
  ],
  ["600 batter. 200 pink 250 blue rest white|blue to 300|then rest", { white: 100 }],
  // 200 × 0.96 / 7.6532 = 25.09
  ["600 batter. 200 pink 250 blue rest white|trays for pink", { shells: 25, trays: 1 }],
  // a third of 500: 1 to 2 %, 3 to 8 %
  [
    "split 500 g buttercream in 3, lemon rasp and vanilla|how much lemon extract",
    { "lemon extract": [1.666667, 3.333333] },
  ],
  [
    "split 500 g buttercream in 3, lemon rasp and vanilla|how much lemon extract|raspberry is freeze dried powder",
    { "raspberry freeze-dried powder": [5, 13.333333] },
  ],
  [
    "split 500 g buttercream in 3, lemon rasp and vanilla|how much lemon extract|vanilla is paste",
    { "vanilla bean paste": [1.666667, 3.333333] },
  ],
  // 4 g at 0.5 % is in 800 g, at 0.35 % in 1142.86: less the 200 that are there
  [
    "add salt to caramel filling 200 g|too salty, i put 4 g|so how much more",
    { "add base": [600, 942.857143] },
  ],
  // 12 oz are 340.194 g, 6 oz 170.097 g
  ["lemon flavoring for 8 oz buttercream|and 12", { flavor: [10.205828, 17.009714] }],
  ["lemon flavoring for 8 oz buttercream|and 12|half of that", { flavor: [5.102914, 8.504857] }],
  // 8 / 208
  [
    "4 g violet flavor in 208 g smbc, ok?|how much plain do i add|and if it had been 8 g i put in",
    { share: 3.846154 },
  ],
];

describe("what is told of bowls later", () => {
  it.each(cases)("%s", async (turns, wanted) => {
    const { ask } = baker();
    let answers: Awaited<ReturnType<typeof ask>> = [];
    for (const turn of turns.split("|")) answers = await ask(turn);
    // the last turn is of one thing, whatever came before
    expect(answers).toHaveLength(1);
    const figures = answers[0]?.figures ?? [];
    for (const [name, value] of Object.entries(wanted)) {
      const figure = figures.find((each) => each.name === name);
      if (Array.isArray(value)) {
        expect(figure?.low, name).toBeCloseTo(value[0], 4);
        expect(figure?.high, name).toBeCloseTo(value[1], 4);
      } else expect(figure?.value, name).toBeCloseTo(value, 4);
    }
  });

  it("each of several bowls gets its own dose, and the next flavor too", async () => {
    const { ask } = baker();
    const ranges = async (said: string) =>
      (await ask(said)).map(({ figures }) => [figures?.[0]?.low, figures?.[0]?.high]);
    expect(await ranges("3 bowls buttercream 120 150 180 how much vanilla each")).toEqual([
      [3.6, 6],
      [4.5, 7.5],
      [5.4, 9],
    ]);
    expect(await ranges("extract")).toEqual([
      [1.2, 2.4],
      [1.5, 3],
      [1.8, 3.6],
    ]);
  });

  it.each([
    ["460 batter|gel for it|60%", "share of the batter"],
    [
      "900 batter 3 parts green 2 parts yellow 1 part white|green powder color|now yellow|double the green",
      "or twice",
    ],
    [
      "split 500 g buttercream in 3, lemon rasp and vanilla|how much lemon extract|twice the lemon one",
      "or twice",
    ],
    ["split 520 batter 60% pink 40% blue|no 45", "in what proportion"],
  ])("%s: asked", async (turns, question) => {
    const said = await talk(...turns.split("|"));
    expect(said.status).toBe("asking");
    expect(said.headline).toContain(question);
  });
});
