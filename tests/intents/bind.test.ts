/** Which amount belongs to which thing: before it, behind it, past a word or two of description, down a list. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bound } from "./reading.ts";

describe("an amount before its thing", () => {
  it.each([
    ["230 g buttercream", "230 g of buttercream"],
    ["230 g of soft butter", "230 g of butter"],
    ["230 grams of the plain buttercream", "230 g of buttercream"],
    ["two thirty grams of my butter cream", "230 g of buttercream"],
    ["24 macarons", "24 of macarons"],
    ["5 whites smbc", "5 of whites"],
    ["90 g whites buttercream", "90 g of whites"],
    ["24 pistachio macarons", "24 of macarons"],
    ["24 little rose macarons", "24 of macarons"],
    ["84 dainty macarons", "84 of macarons"],
    ["36 heart shaped macarons", "36 of macarons"],
    ["60 milk chocolate macarons", "60 of macarons"],
    ["200 g milk choc ganache", "200 g of ganache"],
    ["200 g white chocolate ganache", "200 g of ganache"],
    ["300 g dark chocolate", "300 g of dark chocolate"],
    ["150 g lemon buttercream", "150 g of buttercream"],
    ["460 g macaron batter", "460 g of batter"],
    ["3 egg whites", "3 of whites"],
    ["three large egg whites", "3 of whites"],
    ["2 cups powdered sugar", "2 cup of powdered sugar"],
    ["2 cups of sifted icing sugar", "2 cup of powdered sugar"],
    ["6 g lemon concentrate", "6 g of flavor"],
    ["11 g of hazelnut flavoring", "11 g of flavor"],
    ["20 g pistachio paste", "20 g of nut paste"],
    ["half a teaspoon of salt", "0.5 tsp of salt"],
    ["120 ml double cream", "120 ml of cream"],
    ["110 shells", "110 of shells"],
    ["4 trays", "4 of trays"],
    ["3 batches", "3 of batches"],
    ["40 % coffee", "40 % of coffee"],
  ])("%s", (phrase, expected) => {
    expect(bound(phrase)).toEqual([expected]);
  });
});

describe("an amount behind its thing", () => {
  it.each([
    ["the buttercream weighs 230 g", "230 g of buttercream"],
    ["my buttercream is 320 g", "320 g of buttercream"],
    ["buttercream: 230 g", "230 g of buttercream"],
    ["butter 250 g", "250 g of butter"],
    ["batter (460 g)", "460 g of batter"],
    ["the ganache comes to about 300 g", "300 g of ganache"],
    ["cream = 120 g", "120 g of cream"],
    ["almond flour - 130 g", "130 g of almond flour"],
  ])("%s", (phrase, expected) => {
    expect(bound(phrase)).toEqual([expected]);
  });
});

describe("a list", () => {
  const shells = ["100 of whites", "130 of almond flour", "130 of powdered sugar", "100 of granulated sugar"];
  it.each([
    ["100 whites 130 almond 130 powdered 100 granulated", shells],
    ["whites 100 almond 130 powdered 130 granulated 100", shells],
    ["whites 100, almond 130, icing sugar 130, caster sugar 100", shells],
    ["whites: 100, almonds: 130, icing: 130, caster: 100", shells],
    ["100 egg whites, 130 ground almonds, 130 icing sugar and 100 caster sugar", shells],
    ["100 whites / 130 almond / 130 powdered / 100 granulated", shells],
    [
      "70 g cream + 110 g white chocolate + 25 g butter",
      ["70 g of cream", "110 g of white chocolate", "25 g of butter"],
    ],
    ["200 g dark and 160 g cream", ["200 g of dark chocolate", "160 g of cream"]],
    [
      "180g white choc, 108 g double cream and 45 g butter",
      ["180 g of white chocolate", "108 g of cream", "45 g of butter"],
    ],
    [
      "butter 120 g, sugar 150 g, lemon juice 90 g",
      ["120 g of butter", "150 g of sugar", "90 g of lemon juice"],
    ],
    ["whites 100 g almond flour 130 g", ["100 g of whites", "130 g of almond flour"]],
  ])("%s", (phrase, expected) => {
    expect(bound(phrase)).toEqual(expected);
  });

  it("binds back or forward throughout, in any order of ingredients and with any weights", () => {
    const names = [
      "whites",
      "almond flour",
      "powdered sugar",
      "granulated sugar",
      "butter",
      "honey",
    ] as const;
    const lines = fc
      .shuffledSubarray([...names], { minLength: 2, maxLength: 6 })
      .chain((order) =>
        fc.tuple(...order.map((name) => fc.tuple(fc.constant(name), fc.integer({ min: 25, max: 2000 })))),
      );
    fc.assert(
      fc.property(lines, (recipe) => {
        const expected = recipe.map(([name, grams]) => `${grams} g of ${name}`);
        expect(bound(recipe.map(([name, grams]) => `${grams} g ${name}`).join(", "))).toEqual(expected);
        expect(bound(recipe.map(([name, grams]) => `${name} ${grams} g`).join(", "))).toEqual(expected);
        expect(bound(recipe.map(([name, grams]) => `${grams} g of ${name}`).join(" and "))).toEqual(expected);
      }),
    );
  });
});

describe("an amount that belongs to nothing", () => {
  it.each([
    ["and for 300?", "300 of nothing"],
    ["no, 250 g", "250 g of nothing"],
    ["set a timer for 12 min", "12 min of nothing"],
    ["bake at 150 c", "150 °C of nothing"],
    ["make it 1.5 times", "1.5 times of nothing"],
  ])("%s", (phrase, expected) => {
    expect(bound(phrase)).toEqual([expected]);
  });

  it("binds no number of things to what follows past a joint", () => {
    expect(bound("24 for the wedding and macarons for us")[0]).toBe("24 of nothing");
    expect(bound("300 g, how much butter")).toEqual(["300 g of nothing"]);
  });
});

it("gives one thing to one amount when each has its own", () => {
  expect(bound("15 g of flavor in 230 g of buttercream")).toEqual(["15 g of flavor", "230 g of buttercream"]);
  expect(bound("put 9 g coconut flavor into 150 g smbc")).toEqual(["9 g of flavor", "150 g of buttercream"]);
  expect(bound("tipped 14 g mint flavor in 200 g ganache")).toEqual(["14 g of flavor", "200 g of ganache"]);
  expect(bound("48 macarons with 300 g ganache")).toEqual(["48 of macarons", "300 g of ganache"]);
  expect(bound("24 macarons of 4 cm")).toEqual(["24 of macarons", "4 cm of nothing"]);
});

it("gives a weight said for each to every one of them", () => {
  expect(bound("100 g each of dark chocolate and cream")).toEqual([
    "100 g of dark chocolate",
    "100 g of cream",
  ]);
  expect(bound("100 g each whites, almond flour and sugar")).toEqual([
    "100 g of whites",
    "100 g of almond flour",
    "100 g of sugar",
  ]);
  expect(bound("dark chocolate and cream, 200 g each")).toEqual([
    "200 g of dark chocolate",
    "200 g of cream",
  ]);
  expect(bound("2 cups each of sugar and almond flour")).toEqual(["2 cup of sugar", "2 cup of almond flour"]);
  expect(bound("split it in bowls of 200 g each")).toHaveLength(1);
  expect(bound("24 macarons, 12 min each")).toEqual(["24 of macarons", "12 min of nothing"]);
});

it("counts macarons past their size", () => {
  for (const said of [
    "24 38 mm macarons",
    "24 x 4 cm macarons",
    "24 macarons of 4 cm",
    "24 big 5 cm macarons",
  ])
    expect(bound(said)[0], said).toBe("24 of macarons");
});
