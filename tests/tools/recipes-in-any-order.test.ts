/**
 * A recipe told in a list is kept whole under its name, and scaled by what is said of it, in whatever order its lines
 * and words come. The numbers are drawn anew in every run; what is expected is worked from them (arithmetic).
 */
import fc from "fast-check";
import { expect, test } from "vitest";
import { baker, figureOf, onlyOf } from "../support/ask.ts";

const runs = { numRuns: 80 };
const names = {
  whites: ["whites", "egg whites"],
  "almond flour": ["almond flour", "ground almonds"],
  "powdered sugar": ["powdered sugar", "icing sugar"],
  "granulated sugar": ["granulated sugar", "caster sugar"],
} as const;
type Line = keyof typeof names;
type Recipe = Record<Line, number>;
const lines = Object.keys(names) as Line[];

const recipes: fc.Arbitrary<Recipe> = fc.record({
  whites: fc.integer({ min: 70, max: 140 }),
  "almond flour": fc.integer({ min: 100, max: 180 }),
  "powdered sugar": fc.integer({ min: 100, max: 180 }),
  "granulated sugar": fc.integer({ min: 60, max: 130 }),
});
const form = fc.constantFrom(
  (name: string, grams: number) => `${grams} g ${name}`,
  (name: string, grams: number) => `${name} ${grams} g`,
  (name: string, grams: number) => `${grams}g ${name}`,
);
/** The lines in some order, each by one of its names. */
const listed = (recipe: Recipe) =>
  fc
    .tuple(
      fc.shuffledSubarray(lines, { minLength: lines.length, maxLength: lines.length }),
      form,
      fc.constantFrom(0, 1),
    )
    .map(([order, say, at]) => order.map((line) => say(names[line][at] ?? line, recipe[line])).join(", "));

const kept = [
  (name: string, list: string) => `save recipe ${name}: ${list}`,
  (name: string, list: string) => `call this ${name}: ${list}`,
  (name: string, list: string) => `please remember this recipe, ${name}: ${list}`,
  (name: string, list: string) => `${list}, save that as ${name}`,
  (name: string, list: string) => `my ${name}: ${list}, save it`,
  (name: string, list: string) => `under the name ${name} i would like saved: ${list}`,
  (name: string, list: string) => `new recipe, ${name}: ${list}`,
  (name: string, list: string) => `save ${list} as ${name}`,
];

test("a recipe is kept whole, however it is told", async () => {
  const said = recipes.chain((recipe) =>
    fc
      .tuple(
        listed(recipe),
        fc.constantFrom(...kept),
        fc.constantFrom("cloud shells", "gran's shells", "rainy shells"),
      )
      .map(([list, keep, name]) => ({ recipe, name, text: keep(name, list) })),
  );
  await fc.assert(
    fc.asyncProperty(said, async ({ recipe, name, text }) => {
      const { ask, record } = baker();
      await ask(text);
      const [only, ...more] = record().formulas;
      expect([only?.name, more.length], text).toEqual([name, 0]);
      const saved = Object.fromEntries((only?.lines ?? []).map((line) => [line.name, line.grams]));
      expect(saved, text).toEqual(recipe);
    }),
    runs,
  );
});

const sized = [
  (whites: number) => `i have ${whites} g whites`,
  (whites: number) => `what would it be for ${whites} g of whites`,
  (whites: number) => `bring it to ${whites} g egg whites`,
];
const told = ["my recipe is", "one batch takes", "this is what i make:", "the card says", "my mix is"];

test("what is said behind a recipe sizes it", async () => {
  const said = recipes.chain((recipe) =>
    fc
      .tuple(
        listed(recipe),
        fc.constantFrom(...told),
        fc.constantFrom(...sized),
        fc.integer({ min: 40, max: 200 }),
      )
      .map(([list, lead, size, whites]) => ({ recipe, whites, text: `${lead} ${list}. ${size(whites)}` })),
  );
  await fc.assert(
    fc.asyncProperty(said, async ({ recipe, whites, text }) => {
      const { figures } = await onlyOf(text);
      const almonds = figures?.find((each) => each.name === "almond flour")?.value;
      expect(almonds, text).toBeCloseTo((recipe["almond flour"] * whites) / recipe.whites, 6);
    }),
    runs,
  );
});

test("a saved recipe to a weight of all of it, doubled, and by its whites: 100 : 130 : 130 : 90", async () => {
  const kept = "call this cloud shells: 100 g whites, 130 g almond flour, 130 g powdered sugar, 90 g sugar";
  const figure = (name: string, then: string) => figureOf(name, kept, then);
  expect(await figure("almond flour", "900 g of cloud shells")).toMatchObject({ value: 260 }); // 900 / 450
  expect(await figure("whites", "cloud shells, doubled")).toMatchObject({ value: 200 });
  expect(await figure("almond flour", "make cloud shells on 50 g of whites")).toMatchObject({ value: 65 });
});

test.each([
  // 480 - 200
  ["split 480 g batter into pink and green", "200 g pink and the rest green", "green", 280],
  [
    "split 480 g batter into lemon and raspberry",
    "make lemon 200 g and the rest raspberry",
    "raspberry",
    280,
  ],
  ["split 480 g batter into pink and green", "green 100 g, rest pink", "pink", 380],
  // 600 × 3/4, and not the book's ratio
  ["300 g white chocolate, 100 g cream", "scale it to 600 g in all", "chocolate", 450],
])("%s / %s", async (first, then, name, value) => {
  expect(await figureOf(name, first, then)).toMatchObject({ value });
});

test("a question about what there is puts nothing there", async () => {
  const { ask, record } = baker();
  await ask("does the fridge have 250 g butter");
  expect(record().stock).toEqual([]);
});
