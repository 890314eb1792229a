/** "whats the total": the sum of an answer that has one, and nothing made up where there is none. */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const sayings = ["whats the total", "whats the total weight of that", "total?", "and the total of that?"];

describe("the total", () => {
  // each worked by the rule: 200 said; 4.6 * 120; 66 shells of 7.6532 g / 0.96; 100 + 40 + 60; 140 + 9; 250 + 4 % of it
  it.each([
    ["200 g dark ganache to pipe, how much chocolate and cream", "ganache", 200],
    ["120 g whites, what else", "scale", 552],
    ["batter for 30 macarons", "shells", (66 * 0.53 * 3.8 ** 2) / 0.96],
    ["100 g butter for smbc", "buttercream", 200],
    ["is 9 g raspberry flavor in 140 g buttercream too much", "convert", 149],
    ["4 % lemon flavor for 250 g buttercream", "convert", 260],
  ] as const)("behind %s", async (question, tool, grams) => {
    for (const saying of sayings) {
      const { one } = baker();
      await one(question);
      const answer = await one(saying);
      expect([saying, answer.tool]).toEqual([saying, tool]);
      expect(answer.figures?.some(({ value = 0 }) => Math.abs(value - grams) < 1e-6)).toBe(true);
    }
  });

  it("of two that were turned into grams is what both weigh", async () => {
    const { one } = baker();
    await one("1 cup almond flour in grams");
    await one("and 2 cups powdered sugar");
    // 95 + 2 * 120
    expect((await one("whats the total")).figures?.[0]?.value).toBe(335);
  });

  it.each([
    "my mat has 28 circles",
    "10 min for the syrup",
    "24 macarons for tomorrow 3pm, when do i start",
    "how did the rose batch go",
    "put 1 kg almond flour on the shelf",
    "flavor for 250 g buttercream",
    "what temp do shells bake at",
  ])("behind %s there is none", async (question) => {
    const { one } = baker();
    await one(question);
    expect((await one("whats the total weight of that")).status).not.toBe("answered");
  });
});
