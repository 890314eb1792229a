/** Allergens: from the tables, never from how a word looks; what isn't known stops the list from being complete. */
import { describe, expect, test } from "vitest";
import {
  allergens,
  euClasses,
  euNuts,
  tasteAllergens,
  usClasses,
  usTreeNuts,
} from "../../data/rules/allergens.ts";
import { tastes } from "../../data/words/flavors.ts";
import { ingredients } from "../../data/words/ingredients.ts";
import { bringsOf, tasteBrings } from "../../src/tools/label/allergens.ts";
import { label } from "../../src/tools/label/label.ts";
import { declared } from "../../src/tools/label/lines.ts";
import { baker } from "../support/ask.ts";
import { answer } from "../support/world.ts";

const say = (inputs: Record<string, unknown>, more = {}) =>
  answer(label, { want: "allergens", market: "us", ...inputs }, more);
const found = (said: { items?: Record<string, unknown>[] }) =>
  [...new Set((said.items ?? []).flatMap((each) => (each.allergen ? [each.allergen] : [])))].sort();

describe("the law's lists", () => {
  // FALCPA 2004 and the FASTER Act 2021
  test("nine in the United States, sesame among them", () => {
    expect([...usClasses].sort()).toEqual([
      "crustacean shellfish",
      "eggs",
      "fish",
      "milk",
      "peanuts",
      "sesame",
      "soybeans",
      "tree nuts",
      "wheat",
    ]);
  });
  // FDA allergen guidance, edition 5, 2025
  test("twelve tree nuts, and coconut is none", () => {
    expect(usTreeNuts).toHaveLength(12);
    expect(usTreeNuts).not.toContain("coconut");
    expect(usTreeNuts).toContain("almond");
  });
  // Regulation 1169/2011, Annex II
  test("fourteen in the European Union, eight nuts", () => {
    expect(euClasses).toHaveLength(14);
    expect(euNuts).toHaveLength(8);
  });
  test("every row stands in a class of its law", () => {
    for (const row of allergens) {
      if (row.usClass) expect(usClasses).toContain(row.usClass);
      if (row.euClass) expect(euClasses).toContain(row.euClass);
      expect(row.us === undefined).toBe(row.usClass === undefined);
      expect(row.eu === undefined).toBe(row.euClass === undefined);
    }
  });
});

/** Looked at one by one: these bring none of the fourteen. Whoever adds a row says here that it doesn't either. */
const bringNone = [
  "powdered sugar",
  "granulated sugar",
  "sugar",
  "cocoa butter",
  "cocoa powder",
  "brown sugar",
  "turbinado sugar",
  "maple sugar",
  "honey",
  "dark corn syrup",
  "invert sugar",
  "golden syrup",
  "maple syrup",
  "agave syrup",
  "molasses",
  "fructose",
  "salt",
  "cream of tartar",
  "baking soda",
  "citric acid",
  "lemon juice",
  "lime juice",
  "orange juice",
  "passion fruit juice",
  "lemon zest",
  "orange zest",
  "vanilla extract",
  "vanilla bean paste",
  "water",
  "espresso",
  "instant coffee",
  "espresso powder",
  "matcha",
  "cinnamon",
  "cardamom",
  "ginger",
  "cornstarch",
  "rice flour",
  "pectin",
  "coconut",
  "coconut cream",
  "coconut milk",
  "coconut oil",
  "olive oil",
  "oil",
  "shortening",
  "jam",
  "marmalade",
  "strawberries",
  "raspberries",
  "blueberries",
  "rum",
];

describe("the ingredient table", () => {
  test("a row without allergens and without a doubt is one that was looked at", () => {
    const silent = ingredients
      .filter((row) => row.allergens.length === 0 && !row.unsure)
      .map((row) => row.name);
    expect([...silent].sort()).toEqual([...bringNone].sort());
  });
  test("every class of both laws has a name to declare it by", () => {
    expect(usClasses.filter((each) => !allergens.some((row) => row.usClass === each))).toEqual([]);
    expect(euClasses.filter((each) => !allergens.some((row) => row.euClass === each))).toEqual([]);
    expect(
      euNuts.filter((each) => !allergens.some((row) => row.id === each && row.euClass === "nuts")),
    ).toEqual([]);
  });
  test("every row declares its allergens or what isn't known, and only ones that the law table has", () => {
    for (const row of ingredients) {
      expect(Array.isArray(row.allergens), row.name).toBe(true);
      for (const id of row.allergens)
        expect(
          allergens.map((each) => each.id),
          row.name,
        ).toContain(id);
      if (row.unsure !== undefined) expect(row.unsure.length, row.name).toBeGreaterThan(2);
    }
  });
  test("so does every taste", () => {
    const known = allergens.map((each) => each.id);
    for (const row of tastes)
      if (row.nut && row.nut !== "unknown") expect(known, row.taste).toContain(row.nut);
    for (const row of tasteAllergens)
      for (const id of row.brings ?? []) expect(known, row.taste).toContain(id);
    for (const row of tasteAllergens) expect(tastes.map((each) => each.taste)).toContain(row.taste);
  });
  test("coconut brings none, whatever its name looks like", () => {
    expect(bringsOf("coconut", undefined, [])).toEqual({ sure: [], unsure: [] });
    expect(bringsOf("coconut cream", undefined, []).sure).toEqual([]);
  });
  test("what no table knows is named as not known", () => {
    expect(bringsOf("glimmer dust", undefined, [])).toEqual({
      sure: [],
      unsure: ["glimmer dust: not in the table, its allergens aren't known"],
    });
  });
  test("wheat counts in both laws, barley in the European one alone", () => {
    expect(declared(["wheat", "barley"], "us")).toEqual(["wheat"]);
    expect(declared(["wheat", "barley"], "eu")).toEqual(["barley", "wheat"]);
  });
});

describe("bottles", () => {
  // Annex II has sulphites, lupin and the rest, which the nine haven't
  test.each([
    [
      "my caramel bottle contains sulphites, save that",
      "eu label: 100 g whites, 100 g sugar, 20 g caramel flavor",
      "SULPHITES",
    ],
    [
      "my hazelnut bottle contains lupin and milk, save that",
      "eu label: 100 g whites, 100 g sugar, 20 g hazelnut flavor",
      "LUPIN",
    ],
  ])("%s", async (saying, line, allergen) => {
    const { one } = baker();
    await one(saying);
    expect(JSON.stringify(await one(line))).toContain(allergen);
  });
  test("a saved recipe's line of flavor asks its bottle too", () => {
    expect(bringsOf("mint flavor", undefined, []).unsure).toHaveLength(1);
    const mint = { id: 1, taste: "mint", allergens: ["soy"] };
    expect(bringsOf("mint flavor", undefined, [mint])).toEqual({ sure: ["soy"], unsure: [] });
  });

  const bottle = { id: 1, taste: "pistachio", allergens: [] as string[] };
  test("a flavor is to be checked until its bottle's own list is saved", () => {
    expect(tasteBrings("lemon").unsure).toHaveLength(1);
    expect(bringsOf("pistachio flavor", "pistachio", []).unsure).toHaveLength(1);
    expect(bringsOf("pistachio flavor", "pistachio", [bottle])).toEqual({ sure: [], unsure: [] });
  });
});

describe("from a description", () => {
  test.each([
    [
      "what allergens do i declare for pistachio macarons with white chocolate ganache",
      ["almond", "egg", "milk", "pistachio"],
    ],
    [
      "what alergens are in hazelnut macarons with a milk chocolate ganache",
      ["almond", "egg", "hazelnut", "milk"],
    ],
    [
      "A black sesame buttercream in almond shells, what allergens do I put on the label?",
      ["almond", "egg", "milk", "sesame"],
    ],
    ["allergens for coconut macarons with dark chocolate ganache", ["almond", "egg", "milk"]],
    ["allergens in peanut butter macarons with buttercream", ["almond", "egg", "milk", "peanut"]],
    ["what do i put on the label as allergens for hazelnut praline ones", ["almond", "egg", "hazelnut"]],
    ["which allergens are in walnut macarons with caramel ganache", ["almond", "egg", "milk", "walnut"]],
  ])("%s", async (line, list) => {
    const said = await baker().one(line);
    expect(said.tool).toBe("label");
    expect(found(said as never)).toEqual(list);
    expect(said.cautions?.join(" ")).toContain("food authority");
  });

  test("a follow-up describes another one", async () => {
    const { one } = baker();
    await one("which allergens must I declare for hazelnut macarons with a milk chocolate ganache?");
    expect(found((await one("and for peanut butter ones with buttercream?")) as never)).toEqual([
      "almond",
      "egg",
      "milk",
      "peanut",
    ]);
  });

  test("a filling that wasn't named keeps the list open", () => {
    expect(say({ mixes: ["shells"] }).headline).toContain("not complete until you have checked the filling");
  });

  test("what is asked about is no ingredient, and the answer is never a bare yes or no", async () => {
    const nuts = await baker().one("are my macarons nut-free");
    expect(nuts.headline).toMatch(/^They contain almond/);
    const milk = await baker().one("customer is allergic to milk, what's in lemon macarons with ganache");
    expect(milk.headline).toContain("milk, from the ganache (cream)");
    const gluten = await baker().one("are macarons gluten free");
    expect(gluten.headline).toMatch(/^The tables know of none of those/);
    expect(found(gluten as never)).toEqual(["almond", "egg"]);
  });

  test("a bottle's saved list replaces the guess", async () => {
    const { one } = baker();
    await one("my caramel flavor bottle contains milk, save that");
    const said = await one("what allergens are in caramel macarons with buttercream");
    expect(said.headline).not.toContain("caramel");
    expect(found(said as never)).toEqual(["almond", "egg", "milk"]);
  });
});
