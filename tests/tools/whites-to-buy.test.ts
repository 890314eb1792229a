/** Whites to buy for so many are of their shells, and no shopping list; what a bowl fills, as the whole lot. */
import { expect, it } from "vitest";
import { lastOf, onlyOf, withFigures } from "../support/ask.ts";

// 132 shells of 0.53 × 3.8² g over 0.96, of which 100 in 460 are whites: 229 g, 33 g each
it.each([
  "sixty macarons for wedding favors, how many egg whites do i need to buy",
  "how many eggs do i need to buy for 60 macarons",
  "whites to buy for 60 macarons",
  "need to buy eggs for 60 macarons, how many whites is that",
])("%s", async (said) => {
  const { tool, value } = await withFigures(said);
  expect([tool, value("whites")]).toEqual(["shells", 7]);
});

it.each([
  "60 macarons, what do i need to buy, whites included",
  "60 macarons with buttercream, how many eggs do i need to buy",
  "shopping list for 60 macarons",
])("%s", async (said) => {
  expect((await onlyOf(said)).tool).toBe("buy");
});

// 232 g of cream for 290 g; 522 × 0.92 / (0.42 × 3.8²) = 79
it("how much cream and how many macarons will the whole lot fill", async () => {
  const answers = await lastOf(
    "i have 290 g dark chocolate and want to pipe it as ganache how much cream and how many macarons will the whole lot fill",
  );
  expect(answers.map(({ tool }) => tool)).toEqual(["ganache", "fill"]);
  expect(answers[1]?.figures?.find(({ name }) => name === "macarons")?.value).toBe(79);
});
