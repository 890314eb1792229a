/**
 * What is added to a saved recipe is on its label, what is taken back in the same breath is not in the recipe, and a
 * cooked meringue has its own temperature. Allergens by data/words/ingredients.ts; 50 g an egg (USDA SR, NDB 01123,
 * large); 71 °C (160 °F) by USDA FSIS, egg safety; 118 °C of syrup: common practice.
 */
import { describe, expect, test } from "vitest";
import { lastOf, talk } from "../support/ask.ts";

const recipe = "save recipe lazy sunday: 200 g dark chocolate, 150 g cream, 20 g butter";
describe("a label of a saved recipe and something beside it", () => {
  test.each([
    "us label for lazy sunday with 40 g pistachio paste, net weight 150 g",
    "allergens in lazy sunday plus pistachio paste?",
    "what allergens has lazy sunday if i put pistachio paste in",
  ])("%s: both are declared", async (turn) => {
    const [answer] = await lastOf(recipe, turn);
    expect(answer?.headline).toMatch(/milk and pistachio/);
  });

  test("added later it is asked for, and declared", async () => {
    const turns = [recipe, "us label for lazy sunday, net weight 150 g", "add pistachio to it"];
    const [asked] = await lastOf(...turns);
    expect(asked).toMatchObject({ tool: "label", status: "asking" });
    const [answer] = await lastOf(...turns, "40 g");
    expect(answer?.headline).toMatch(/milk and pistachio/);
  });

  test("a food in the recipe's own name is no addition", async () => {
    const [answer] = await lastOf(
      "save recipe hazelnut dream: 200 g milk chocolate, 100 g cream",
      "allergens in hazelnut dream",
    );
    expect(answer?.headline).not.toMatch(/hazelnut/i);
  });
});

describe("a recipe's line that is taken back", () => {
  test.each([
    ["100 g lemon juice, 120 g sugar, 2 eggs, no wait 3 eggs, 80 g butter", "egg", 150],
    ["100 g lemon juice, 120 g sugar, sorry 140 g sugar, 80 g butter", "sugar", 140],
    ["100 g lemon juice, 80 g butter, hang on, 90 g butter, 120 g sugar", "butter", 90],
  ])("%s", async (lines, name, grams) => {
    const { of } = await talk(`save recipe curd: ${lines}`);
    expect(of(name)?.value).toBeCloseTo(grams, 9);
  });
  test("two lines of the same still add up", async () => {
    const { of } = await talk("save recipe shells: 100 g whites, 90 g sugar, 120 g almond flour, 10 g sugar");
    expect(of("sugar")?.value).toBeCloseTo(100, 9);
  });
});

describe("a time taken back", () => {
  test.each([
    ["set a timer for 15, no sorry, 12 minutes for the shells", 12],
    ["remind me in 12, no make that 15 minutes", 15],
  ])("%s: one timer", async (turn, left) => {
    const answers = await lastOf(turn);
    expect(answers.map(({ figures }) => figures?.[0]?.value)).toEqual([left]);
  });
});

describe("a cooked meringue", () => {
  test.each(["how hot do i take swiss meringue to?", "what temperature for swiss meringue"])(
    "%s",
    async (turn) => {
      const { figures } = await talk(turn);
      expect(figures).toContainEqual(expect.objectContaining({ value: 71, unit: "°C" }));
    },
  );
  test.each([
    "italian meringue, syrup to what temperature?",
    "my meringue is at 115, should I go to 118 or 121 for italian?",
  ])("%s", async (turn) => {
    const { figures, rule, cautions } = await talk(turn);
    expect(figures).toContainEqual(expect.objectContaining({ name: "syrup", value: 118, unit: "°C" }));
    expect(rule?.basis).toBe("common practice");
    expect(cautions?.join(" ")).toContain("pasteurised");
  });
});

test("a price a litre is no cost of the whole: what a kilo costs is asked", async () => {
  const [answer] = await lastOf(
    recipe,
    "scale lazy sunday to 500 g",
    "what would it cost if chocolate is 18 a kilo and cream is 6 a litre?",
  );
  expect(answer).toMatchObject({ tool: "cost", status: "asking" });
});

test.each([
  ["how long in the freezer", "5868123 months"],
  ["are frozen macarons still good", "they were in there 5868123 months"],
  ["how old may egg whites be", "they are 99999999999 days old"],
])("%s, then %s: no age of anything, and no crash", async (first, then) => {
  const answers = await lastOf(first, then);
  for (const answer of answers) expect(answer.status).not.toBe("answered");
});
