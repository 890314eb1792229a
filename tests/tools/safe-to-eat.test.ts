/**
 * What must never get a figure, and what must never lose an allergen. Scents and craft colors are no food (common
 * practice); nut butters bring their nut (FALCPA 2004; EU 1169/2011 annex II); times out of the fridge add up and the cold
 * takes none back (USDA FSIS, 2 h, 1 h above 32 °C); raw yolks 2 to 4 days (FoodSafety.gov); 33 g a white (USDA SR, NDB
 * 01124); buttercream 100 : 150 : 250.
 */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

/** The allergens that the headline of the last answer declares. */
async function allergens(...turns: string[]): Promise<string[]> {
  const { headline } = await talk(...turns);
  const [, declared = ""] = /(?:contains|Declare) (?!no )([^;]*)/.exec(headline ?? "") ?? [];
  return declared.split(/,? and |, /).filter(Boolean);
}

describe("what is no food", () => {
  it.each([
    "i used peppermint candle fragrance oil, 150 g buttercream how much",
    "soap making fragrance strawberry 300g smbc how much",
    "wintergreen essential oil in 150 g ganache how much",
    "i have tea tree essential oil, 180 g ganache, how much",
    "eucalyptus oil 200 g buttercream",
    "is acrylic paint ok for coloring shells, 400 g batter",
  ])("%s: no figure", async (said) => {
    const { status, figures, headline } = await talk(said);
    expect([status, figures]).toEqual(["declined", undefined]);
    expect(headline).toContain("not for eating");
  });
  it("what tastes of soap is still food, and so is what comes in its place", async () => {
    const soapy = "tipped 22 g rose flavoring into 320 g buttercream, tastes like soap, is that too much";
    expect((await talk(soapy)).status).toBe("answered");
    const instead = await talk("candle scent oil, 150 g buttercream, how much", "vanilla extract then");
    expect([instead.of("vanilla extract")?.low, instead.of("vanilla extract")?.high]).toEqual([1.5, 3]);
  });
  it("an essential oil is told to be food grade", async () =>
    expect((await talk("lavender essential oil for 200 g buttercream")).cautions?.join()).toContain(
      "food grade",
    ));
});

describe("an allergen that wasn't named stays", () => {
  const mixed = "label: 100 g butter, 40 g peanut butter, 50 g powdered sugar";
  it.each([
    [mixed, "without the butter", ["peanut"]],
    [mixed, "without the peanut butter", ["milk"]],
    ["label: 100 g butter, 50 g powdered sugar", "add 20 g almond butter", ["almond", "milk"]],
    ["label: 100 g butter, 50 g powdered sugar", "its salted butter", ["milk"]],
    ["label: 30 g cocoa butter, 40 g peanut butter, 90 g butter", "leave out the butter", ["peanut"]],
  ])("%s / %s", async (first, then, wanted) => expect(await allergens(first, then)).toEqual(wanted));
  it.each([
    ["allergens of sunflower seed flour", []],
    ["allergens of chestnut flour and rice flour", []],
    ["allergens of oat flour, eu", ["oats"]],
    ["allergens of spelt flour", ["wheat"]],
    ["allergens of flour", ["wheat"]],
  ])("%s", async (said, wanted) => expect(await allergens(said)).toEqual(wanted));
});

describe("keeping", () => {
  it.each([
    ["1 hour out then 1 hour in the fridge then 30 min out again", "Yes, so far: 1.5 h"],
    ["2 hours out then 1 hour in fridge then 30 min out again", "No: 2.5 h"],
  ])("%s", async (said, verdict) => expect((await talk(said)).headline).toContain(verdict));
  it("another spell at the market is on top of the one before: 90 + 45 min", async () => {
    const { headline } = await talk(
      "cream cheese filling sitting out 90 min ok",
      "then another 45 min at the market, its 34 C",
    );
    expect(headline).toContain("No: 2.25 h is past the 1 h");
  });
  it("raw yolks go by their own row", async () => {
    const { of, rule } = await talk("how long do raw yolks keep in the fridge");
    expect([of("raw yolks")?.low, of("raw yolks")?.high, rule?.source]).toEqual([
      2,
      4,
      expect.stringContaining("yolks"),
    ]);
  });
});

describe("an egg is not its white", () => {
  it.each([
    ["3 eggs whites to g", 99],
    ["whites of 4 eggs in grams", 132],
    ["3 eggs to g", 150],
  ])("%s", async (said, grams) => expect((await talk(said)).of("result")?.value).toBe(grams));
  it.each(["thats too much i need 300", "only 300 g of it"])("%s, of the whole buttercream", async (then) => {
    const { of } = await talk("smbc from 110 g whites", then);
    expect([of("whites")?.value, of("butter")?.value, of("total")?.value]).toEqual([60, 150, 300]);
  });
});

describe("an oven that was told", () => {
  it("cooler than the step would leave it wasn't too hot", async () =>
    expect((await talk("browned, oven was at 120")).headline).not.toContain("110"));
  it("hotter is stepped down: 165 less 10", async () =>
    expect((await talk("browned, oven was at 165")).headline).toContain("155 °C"));
});

it("fees come off before it breaks even: 14 over 2.20 less a tenth is 7.07", async () =>
  expect(
    (await talk("$14 for 36 macarons, i sell them at $2.20 each, fees 10%, how many to break even")).of(
      "macarons",
    )?.value,
  ).toBe(8));
