/**
 * Numbers that are called off, belong to something else or are told in passing. What is left to work with is the number
 * in the second column; its answer is worked by hand: flavor in buttercream 3 to 5 % of it (common practice), in ganache
 * 3 to 4 %; fruit powder in ganache 2 to 5 % (from memory); the house formula 100 : 130 : 130 : 100 in 460 g; 33 g a
 * white (USDA SR, NDB 01124).
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

type Value = number | readonly [low: number, high: number];

/** Every value that is meant stands in the answers of the last turn, and nothing is asked. */
async function holds(say: string, values: readonly Value[], tool?: string) {
  const { ask } = baker();
  let answers: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of say.split(" | ")) answers = await ask(turn);
  const figures = answers.flatMap((answer) => answer.figures ?? []);
  for (const value of values) {
    const found = figures.some(({ value: one, low, high }) =>
      typeof value === "number"
        ? one !== undefined && Math.abs(one - value) < 0.006 * value
        : low !== undefined &&
          high !== undefined &&
          Math.abs(low - value[0]) < 0.006 * value[0] &&
          Math.abs(high - value[1]) < 0.006 * value[1],
    );
    expect(found, `${say}: ${value} in ${JSON.stringify(figures)}`).toBe(true);
  }
  expect(
    answers.every(({ status }) => status === "answered"),
    say,
  ).toBe(true);
  if (tool) expect(answers.map((each) => each.tool)).toContain(tool);
}

const rows: Record<string, readonly (readonly [say: string, ...values: Value[]])[]> = {
  "a number called off, and what it was": [
    [
      "flavoring for 250 g buttercream, no hang on the whole buttercream is 270, 250 was just the butter",
      [8.1, 13.5],
    ],
    // 690 / 460 = 1.5
    ["what do i weigh for 720 g batter - no, 690, 720 was last week", 150, 195],
    ["weights for 600 g batter, no sorry 460, 600 was last time", 100, 130],
    ["flavor for 200 g buttercream, sorry, 230, the 200 was without the sugar", [6.9, 11.5]],
    // dark to pipe 1.25 : 1
    ["how much cream for 200 g dark chocolate to pipe, no 250, 200 was the old bar", 200],
    ["split 620 g batter into 4, no 600, 620 was with the spatula", 150],
    ["how much sugar and butter for 80 g whites smbc, no 75, 80 was with yolk in", 112.5, 187.5],
  ],
  "said, and not to be counted": [
    // 4 × 33 = 132 g of whites; × 1.3
    [
      "4 egg whites, 5 if you count the one on the floor, dont count it. almond flour and the sugars?",
      171.6,
      132,
    ],
    ["i have 4 whites (5 with the cracked one, not counting that). how much almond flour", 171.6],
    ["200 g buttercream, 240 with the bowl scrapings but not those. flavor?", [6, 10]],
    ["packet says 10 g, ignore it. flavor for 230 g buttercream", [6.9, 11.5]],
    ["instructions say 15 drops, disregard. flavor for 250 g buttercream", [7.5, 12.5]],
    // vanilla extract 1 to 2 %
    [
      "back of the packet says 2 tsp for a 9 inch cake but forget that, i've got 240g buttercream and proper vanilla extract, how many grams",
      [2.4, 4.8],
    ],
  ],
  "of something else": [
    // 244 g of ganache
    [
      "160 g white chocolate, 64 g cream, 20 g butter, how much freeze dried raspberry powder. (45 g went in the pavlova already, not that)",
      [4.88, 12.2],
    ],
    ["how much flavor for 260 g buttercream, another 90 g is in the freezer, not that", [7.8, 13]],
    // 120 / 150 = 0.8
    [
      "library book: 150 whites, 200 almond flour, 200 powdered sugar, 130 granulated sugar, page 61, makes 40. my whites come to 120 g only",
      160,
      104,
    ],
    ["620 g batter into 4 equal bowls, empty bowls are 310 g each and thats taken off", 155],
    ["split 600 g batter into 3 bowls, bowls weigh 280 g each, already taken off", 200],
    ["900 g batter in 3 bowls, the bowls are 250 g each but i tared them", 300],
    ["whats half of 375, other half is for monday", 187.5],
    ["two thirds of 450, last third is for tomorrow", 300],
    ["aunt's card says 320 F for 18 min or 145 C fan. i only need 320 F in C", 160],
    // 2 / 420
    [
      "2 g super strength orange oil in 420 g ganache, the rest of the bottle 28 g, is that ok or too much",
      0.47619,
    ],
  ],
  "which of the two it is of": [
    // milk to pipe 2 : 1, white 2.5 : 1
    ["180 g milk chocolate ganache, 180 g being the chocolate only. cream to pipe it?", 90],
    ["300g white chocolate ganache to pipe, 300 is the chocolate alone, cream?", 120],
    ["240 g dark chocolate ganache for piping but 240 is only the chocolate, how much cream", 192],
  ],
  "one part of several changes": [
    // 160 + 80 + 20 = 260
    [
      "160 g white chocolate, 64 g cream, 20 g butter, how much freeze dried raspberry powder | only the cream changes: 80 g. powder now?",
      [5.2, 13],
    ],
    // 175 + 75 = 250
    ["150 g milk chocolate, 75 g cream, how much flavor | only the chocolate is different: 175 g", [7.5, 10]],
    ["flavor for 400 g buttercream | the real bowl today is 265", [7.95, 13.25]],
    [
      "75g whites for smbc, how much sugar and butter | 4 % pistachio flavor in all of it, not 4 g, 4 percent",
      15,
    ],
    ["split 400 g buttercream into 150 g, 150 g and 150 g | 150 g, 150 g and 100 g, out of 400 g", 150, 100],
    ["3 tbsp butter in grams? 20 g is melted already but thats separate | and a whole stick", 113.4],
  ],
};

describe("what is told of something else", () => {
  for (const [kind, all] of Object.entries(rows))
    it(kind, async () => {
      for (const [say, ...values] of all) await holds(say, values);
    });

  it("counts where it is what is asked of", async () => {
    await holds("batter for 40 macarons | my sister says 50 is plenty", [50]);
    await holds("split 600 g batter into 4 bowls | one of the bowls broke, make it 3", [200]);
    await holds("split 500 g batter, 200 g pink, the other 300 g blue", [200, 300]);
    await holds("flavor for 240 g buttercream | my mum says 4 %", [9.6]);
  });

  it("runs nothing again where a turn only tells", async () => {
    for (const say of [
      "620 g batter into 4 equal bowls | one of the bowls is chipped on the rim",
      "620 g batter into 4 equal bowls | two of my bowls are plastic",
      "300 g dark chocolate, how much cream for piping | he says his grandma did it with 2 litres of milk",
      "how many egg whites for 26 macarons | 11 eggs is 8 from us and 3 from next door btw",
      "filling for 40 macarons | 3 of my friends are coming to help",
      "filling for 40 macarons | i used to make 100 of them in one go",
      "100 g how many oz | and how many kilometres is it to the shop",
      "batter for 50 shells 4 cm wide | how long does my piping bag last before it tears",
      "flavor for 270 g buttercream | 38.5 what should i do for him",
    ]) {
      const { ask } = baker();
      const [first = "", then = ""] = say.split(" | ");
      await ask(first);
      expect(
        (await ask(then)).flatMap(({ figures = [] }) => figures),
        say,
      ).toEqual([]);
    }
  });

  it("says what a rule rests on", async () => {
    for (const say of [
      "is there any study behind those percents or is it only what people do",
      "is that backed by anything scientific",
      "who came up with those percents",
      "did somebody test those percentages or is it tradition",
    ]) {
      const { ask, one } = baker();
      await ask("flavor for 300 g buttercream");
      const answer = await one(say);
      expect(answer.tool, say).toBe("explain");
      expect(answer.headline).toContain("common practice");
    }
    const { ask, one } = baker();
    await ask("120 g whites and 180 g almond flour in the house, heaps of both sugars, how far does that go");
    expect((await one("how do you know its the whites that run out")).tool).toBe("explain");
  });
});
