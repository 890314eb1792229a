/**
 * What a turn wants besides its first matter is answered too, and what is told of another thing takes nothing of it. By
 * hand: ganache to pipe is 1.25 : 1 of dark and 2.5 : 1 of white, buttercream 2 : 3 : 5 of whites, sugar and butter, the
 * house formula 1.3 g almond flour to 1 g whites (common practice).
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { near } from "../support/near.ts";

const tools = async (say: string) => (await baker().ask(say)).map(({ tool }) => tool);

/** One figure of each answer. */
type Wanted = [tool: string, name: string, value: number];

describe("a mix that is wished for behind another question is an order of its own", () => {
  it.each<[string, Wanted, Wanted]>([
    // 14.2 g a tablespoon of butter (USDA SR, NDB 01001); 300 × 1.25 / 2.25
    [
      "3 tbsp butter in g, and i want 300 g dark ganache for filling",
      ["convert", "result", 42.6],
      ["ganache", "chocolate", 166.6667],
    ],
    // 200 g a cup of sugar (USDA SR, NDB 19335); 200 × 2.5 / 3.5
    [
      "1 cup sugar in g, also i need 200 g white ganache for piping",
      ["convert", "result", 200],
      ["ganache", "chocolate", 142.8571],
    ],
    ["timer 12 min. i need 450 g buttercream", ["timer", "left", 12], ["buttercream", "butter", 225]],
    [
      "dark ganache for piping with 140 g cream, and set 5 min for the cream to heat",
      ["ganache", "chocolate", 175],
      ["timer", "left", 5],
    ],
    // 65 × 1.3; 130 g over 65 g are 2, and no 2 %, which of 130 g are 2.6 g
    [
      "shells are resting so scale the recipe to 65 g whites; how much lemon flavor for 130 g buttercream at 2 %",
      ["scale", "almond flour", 84.5],
      ["dose", "flavor", 2.6],
    ],
  ])("%s", async (say, ...expected) => {
    const answers = await baker().ask(say);
    expect(answers.map(({ tool }) => tool)).toEqual(expected.map(([tool]) => tool));
    for (const [at, [, name, value]] of expected.entries())
      expect(answers[at]?.figures).toContainEqual(expect.objectContaining({ name, ...near(value) }));
  });

  it("but what it is of belongs to it", async () =>
    expect(await tools("i want 300 g dark ganache, how much cream")).toEqual(["ganache"]));
});

describe("numbers as they are typed and dictated", () => {
  // "one oh five" is 105; house formula: almond flour 1.3 times the whites
  it("no, one oh five", async () => {
    const { one } = baker();
    await one("scale the shells to 165 g whites");
    expect((await one("grr no, one oh five")).figures).toContainEqual(
      expect.objectContaining({ name: "almond flour", ...near(136.5) }),
    );
  });

  // 5.4 g a tablespoon of cocoa (USDA SR, NDB 19165)
  it("threetbsp cocoa in g", async () =>
    expect((await baker().one("threetbsp cocoa in g")).figures).toContainEqual(
      expect.objectContaining({ name: "result", ...near(16.2) }),
    ));

  // half a jar is no half of the batch: 150 g almond flour allow 150/130 of the house formula
  it("half a jar of something else", async () =>
    expect(
      (
        await baker().one(
          "in the cupboard: 140 g whites, 150 g almond flour, 200 g icing sugar, 130 g granulated, half a jar of nut spread. biggest batch of shells?",
        )
      ).figures,
    ).toContainEqual(expect.objectContaining({ name: "almond flour", ...near(150) })));
});

describe("names that hold words of talk", () => {
  it("save recipe rainy day", async () => {
    const { one } = baker();
    await one("save recipe rainy day: 120 g whites, 150 g almond flour, 140 g powdered sugar");
    expect((await one("scale rainy day to 60 g whites")).figures).toContainEqual(
      expect.objectContaining({ name: "almond flour", ...near(75) }),
    );
  });
});
