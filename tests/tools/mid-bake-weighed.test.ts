/** At the bench, with something else between: what was weighed is whites, and a line of the recipe is asked for again. */
import { expect, it } from "vitest";
import { figureOf, onlyOf } from "../support/ask.ts";
import { near } from "../support/near.ts";

// house formula, whites 100 : almond flour 130 (common practice): 168 × 1.3
it.each([
  "ok i got 5 eggs cracked, 168g white. what do i weigh",
  "168 g white, what do i weigh for shells",
  "cracked my eggs, 168 grams white, rest of the recipe",
])("%s", async (said) => expect(await figureOf("almond flour", said)).toMatchObject(near(218.4, 6)));

it("a color that is weighed stays one", async () =>
  expect((await onlyOf("split the batter: 168 g white, 84 g pink")).tool).toBe("split"));

const recipe = ["168 g whites, what do i weigh", "timer 25 min rest"];

it.each(["what was the almond again", "whats the almond flour again?", "how much was the almond again"])(
  "%s, with a timer between",
  async (said) => expect(await figureOf("almond flour", ...recipe, said)).toMatchObject(near(218.4, 6)),
);

// 190 g of almond flour are enough for 190 / 1.3 of whites
it.each(["hang on the almond bag only has 190", "the almond flour jar only holds 190 g"])(
  "%s, with a timer between",
  async (said) => expect(await figureOf("whites", ...recipe, said)).toMatchObject(near(190 / 1.3)),
);

it.each(["whites ganache, 120 g cream how much choc", "whites choc ganache, 120 g cream how much choc"])(
  "%s",
  // white for piping 2.5 : 1 (common practice)
  async (said) => expect(await figureOf("chocolate", said)).toMatchObject(near(300)),
);

it.each(["the batter is like lava, ready?", "meringue is up, how stiff"])("%s", async (said) =>
  expect((await onlyOf(said)).tool).toBe("method"),
);

// the house formula holds no butter, jam or chocolate; 90 g almond flour take 90 / 1.3 of whites (common practice)
it.each(["what if i only have milk chocolate, 180 g", "i only have raspberry jam, 90 g"])(
  "a weight behind what isn't in the recipe is no weight of whites: %s",
  async (said) => expect(await onlyOf("201 g whites, rest?", said)).toMatchObject({ status: "impossible" }),
);
it("and one behind a line of it is that line's", async () =>
  expect(await figureOf("whites", "201 g whites, rest?", "just almond flour, 90 g")).toMatchObject({
    value: expect.closeTo(90 / 1.3, 4),
  }));

// concentrated flavor in buttercream is 3-5 % (common practice): 6 / 0.05 and 6 / 0.03
it("what is left of a flavor behind batter is for a filling", async () =>
  expect(
    await figureOf("base", "batter for 30 macarons", "i have 6 g lemon flavor left, what does that do"),
  ).toMatchObject({ low: expect.closeTo(120, 4), high: expect.closeTo(200, 4) }));
