/**
 * Two questions or orders in one turn, and what the next turn says of them: both again, an answer to the first, a change
 * of one of them. Expected values are arithmetic; the rules themselves are tested elsewhere, here what
 * was asked at once has to come out as it does when it is asked alone. Worked by hand where a number stands.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { lastOf } from "../support/ask.ts";

const toolsOf = (answers: readonly Answer[]) => answers.map(({ tool }) => tool);
const figure = (answers: readonly Answer[], tool: string, name: string) =>
  answers
    .filter((each) => each.tool === tool)
    .flatMap(({ figures = [] }) => figures.filter((each) => each.name.includes(name)))[0];

describe("both again", () => {
  // 2/3 cup and 1/2 cup are doubled: 2 × 60 g (NDB 19336, 120 g a cup unsifted), 2 × 31.67 g (95 g a cup ground)
  test.each(["both again, doubled", "double both", "both of them, doubled please"])(
    "%s, of two weights",
    async (said) => {
      const answers = await lastOf(
        "half a cup of icing sugar in grams? third of a cup of almond meal in grams?",
        said,
      );
      expect(answers.map(({ figures }) => figures?.[0]?.value)).toEqual([
        expect.closeTo(120, 6),
        expect.closeTo(190 / 3, 6),
      ]);
    },
  );

  // what one took from the other's answer is taken from the new one: half of a milk ganache 2 : 1, salt 0.2-0.5 %
  test.each([
    "now both for 240 g chocolate",
    "both again with 240 g chocolate",
    "same two with 240 g of chocolate, both",
  ])("%s, of a ganache and the salt in it", async (said) => {
    const answers = await lastOf(
      "milk ganache for piping from 180 g chocolate, and salt for all of it",
      said,
    );
    expect(figure(answers, "ganache", "total")?.value).toBeCloseTo(360);
    expect(figure(answers, "dose", "salt")).toMatchObject({
      low: expect.closeTo(0.72),
      high: expect.closeTo(1.8),
    });
  });

  test("filling and the flavor in it come out as they do alone, for any number", async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.integer({ min: 12, max: 40 }),
        fc.integer({ min: 41, max: 90 }),
        fc.constantFrom("both for %", "now % macarons, both", "both again, % of them", "% instead, both"),
        async (first, then, way) => {
          const asked = (many: number) =>
            `how much filling for ${many} macarons and how much coffee flavor in that`;
          const again = await lastOf(asked(first), way.replace("%", String(then)));
          const alone = await lastOf(asked(then));
          expect(
            again.map(({ figures }) => figures),
            way,
          ).toEqual(alone.map(({ figures }) => figures));
        },
      ),
      { numRuns: 25 },
    );
  });
});

describe("an answer to what was asked first, behind another question of the turn", () => {
  test.each([
    ["flavor for my ganache? & 6 min timer", "320 g", "dose"],
    ["timer please, also what's 3 tbsp granulated sugar in g", "twelve minutes", "timer"],
    ["need them ready sunday 4 pm, when do i start, and start a 10 min timer", "24 of them", "day"],
    ["how much rum for the buttercream? and batter for 30 macarons", "it's 250 g", "dose"],
  ])("%s: %s", async (asked, said, tool) => {
    const answers = await lastOf(asked, said);
    expect(toolsOf(answers)).toEqual([tool]);
    expect(answers[0]?.status).toBe("answered");
  });

  test("what goes on from the answer is no answer to the question", async () => {
    expect(
      toolsOf(await lastOf("timer please, also what's 3 tbsp granulated sugar in g", "and 5 tbsp?")),
    ).toEqual(["convert"]);
  });

  // 3-4 % of 320 g, and 0.2-0.5 % salt
  test("the answer and a question behind it", async () => {
    const answers = await lastOf("flavor for my ganache?", "320 g, and salt for it?");
    expect(figure(answers, "dose", "flavor")).toMatchObject({
      low: expect.closeTo(9.6),
      high: expect.closeTo(12.8),
    });
    expect(figure(answers, "dose", "salt")).toMatchObject({
      low: expect.closeTo(0.64),
      high: expect.closeTo(1.6),
    });
  });
});

describe("both are answered where one alone would take all that is measured", () => {
  test.each([
    ["540 batter in four equal bowls, and gel colour for one", ["split", "dose"]],
    ["450 g of swiss buttercream, quantities, and freeze dried raspberry for it", ["buttercream", "dose"]],
    ["temp for baking shells please, then powder colour for 380 g batter", ["method", "dose"]],
    [
      "net weight 4.2 oz in grams? and allergens for hazelnut macs with milk chocolate ganache",
      ["convert", "label"],
    ],
    ["shells are 4.4 cm from now on, filling for 20?", ["bench", "fill"]],
    [
      "my bergamot bottle says 0.8 percent, keep that. how much of it for 300 g buttercream",
      ["shelf", "dose"],
    ],
    ["save a note banana batch was sticky underneath 6/10, also how many grams is 3 oz", ["note", "convert"]],
  ])("%s", async (said, tools) => {
    const answers = await lastOf(said);
    expect(toolsOf(answers)).toEqual(tools);
    expect(answers.every(({ status }) => status === "answered")).toBe(true);
  });

  // the butter is half of the house's Swiss buttercream: 400 g in all, salt 0.2-0.5 % of that and not of 200 g
  test("a part of the mix is no bowl", async () => {
    const answers = await lastOf("buttercream with 200 g butter, and salt for all of it");
    expect(figure(answers, "dose", "salt")).toMatchObject({
      low: expect.closeTo(0.8),
      high: expect.closeTo(2),
    });
  });

  test.each([
    "scale battery died, how many tsp of flavor for 300 g buttercream",
    "240 g of dark ganache in the bowl and i'd like it orange how much flavour please",
    "340 g buttercream left in the tub, how many macarons will that fill",
    "forty macs, filling?",
  ])("what is only told asks nothing: %s", async (said) => {
    expect(await lastOf(said)).toHaveLength(1);
  });
});

describe("each order changes what it names", () => {
  test.each([
    ["five more on the cake and stop the fudge", 35],
    ["stop fudge, five more on cake", 35],
  ])("%s", async (said, left) => {
    const answers = await lastOf("timer 20 min for the fudge, timer 30 min for the cake", said);
    expect(toolsOf(answers)).toEqual(["timer", "timer"]);
    expect(figure(answers, "timer", "left")?.value).toBe(left);
    expect(answers.some(({ headline }) => headline.startsWith("Stopped fudge"))).toBe(true);
  });

  test("a dose is changed, and the timer set beside it", async () => {
    const answers = await lastOf(
      "flavour amount for 205 g ganache & the rest timer",
      "make that 240 g, and add ten to the timer",
    );
    expect(figure(answers, "dose", "flavor")).toMatchObject({
      low: expect.closeTo(7.2),
      high: expect.closeTo(9.6),
    });
    expect(figure(answers, "timer", "left")?.value).toBe(40);
  });

  // 1.8 × 160 + 32 and 1.3 × 110
  test("each of two goes on from its own", async () => {
    const answers = await lastOf(
      "145C is what in F, and I've 88 g of whites what are the other three",
      "160 C as well, and the same recipe off 110 g whites",
    );
    expect(figure(answers, "convert", "result")?.value).toBeCloseTo(320);
    expect(figure(answers, "scale", "almond flour")?.value).toBeCloseTo(143);
  });

  // 2/3 of 420 g at 2.5 : 1
  test("a share of the mix that is named, with a timer between", async () => {
    const answers = await lastOf(
      "white ganache 420 g total for filling, no butter, and 25 minutes on a timer named fridge",
      "only two thirds of that ganache",
    );
    expect(figure(answers, "ganache", "chocolate")?.value).toBeCloseTo(200);
  });

  test("a share of a number is a sum, whatever was asked before", async () => {
    const answers = await lastOf("house shells with 100 g whites, also a quarter of 300");
    expect(figure(answers, "convert", "result")?.value).toBe(75);
  });

  test("a fault and a heat on the other scale", async () => {
    const answers = await lastOf("my shells have come out without any feet, why is that; and 155C what F");
    expect(toolsOf(answers)).toEqual(["trouble", "convert"]);
  });

  test("what is taken back, and what is asked without it", async () => {
    const answers = await lastOf("shells are 4.4 cm from now on", "undo that size, and filling for 20 again");
    expect(toolsOf(answers)).toEqual(["undo", "fill"]);
  });
});
