/** Recipes of the baker's own. Readings of lines are worked by hand. */
import { describe, expect, test } from "vitest";
import type { Formula } from "../../src/tools/contract/index.ts";
import { formula } from "../../src/tools/formula/formula.ts";
import { kindOf } from "../../src/tools/formula/kind.ts";
import { baker } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

const snowy: Formula = {
  id: 1,
  name: "snowy shells",
  kind: "shells",
  lines: [
    { name: "whites", grams: 105 },
    { name: "almond flour", grams: 130 },
    { name: "powdered sugar", grams: 130 },
    { name: "granulated sugar", grams: 95 },
  ],
};
const mocha: Formula = {
  id: 2,
  name: "mocha smbc",
  kind: "buttercream",
  lines: [
    { name: "whites", grams: 100 },
    { name: "sugar", grams: 140 },
    { name: "butter", grams: 260 },
  ],
};
const withTwo = () => baker({ record: { formulas: [snowy, mocha] } });

describe("saved in her words", () => {
  test.each([
    [
      "save recipe snowy shells: 105 g whites, 130 g almond flour, 130 g powdered sugar, 95 g granulated sugar",
      "snowy shells",
      snowy.lines,
    ],
    [
      "save my recipe, call it porch shells: 110 g whites, 140 g almond flour",
      "porch shells",
      [
        { name: "whites", grams: 110 },
        { name: "almond flour", grams: 140 },
      ],
    ],
    [
      "remember my caramel recipe: 70 g butter, 50 g honey, 30 g cream",
      "caramel",
      [
        { name: "butter", grams: 70 },
        { name: "honey", grams: 50 },
        { name: "cream", grams: 30 },
      ],
    ],
    [
      "save this recipe as test: 100 g whites, 130 g almond flour",
      "test",
      [
        { name: "whites", grams: 100 },
        { name: "almond flour", grams: 130 },
      ],
    ],
    [
      "new recipe mocha ganache: 200 g dark chocolate, 160 g cream, 4 g instant coffee",
      "mocha ganache",
      [
        { name: "dark chocolate", grams: 200 },
        { name: "cream", grams: 160 },
        { name: "instant coffee", grams: 4 },
      ],
    ],
    [
      "my shells are 105 g whites, 130 almond, 125 powdered sugar, 95 sugar, save that",
      "shells",
      [
        { name: "whites", grams: 105 },
        { name: "almond flour", grams: 130 },
        { name: "powdered sugar", grams: 125 },
        { name: "sugar", grams: 95 },
      ],
    ],
    [
      "save recipe cloud 100 g whites 130 g almond flour",
      "cloud",
      [
        { name: "whites", grams: 100 },
        { name: "almond flour", grams: 130 },
      ],
    ],
    [
      "save recipe tail first: whites 100 g, almond flour 130 g",
      "tail first",
      [
        { name: "whites", grams: 100 },
        { name: "almond flour", grams: 130 },
      ],
    ],
  ])("%s", async (say, name, lines) => {
    const { one, record } = baker();
    const said = await one(say);
    expect(said.tool).toBe("formula");
    expect(record().formulas).toMatchObject([{ name, lines }]);
    expect(said.cautions).toBeUndefined();
  });

  test("a line without a weight, or that can't be read, is named, never dropped", async () => {
    const said = await baker().one(
      "save recipe winter shells: 100 g whites, 120 g almond flour, a pinch of salt, 90 g sugar, cornflour",
    );
    expect(said.headline).toContain('not weighed: "a pinch of salt"; not read: "cornflour"');
    expect(said.cautions?.join(" ")).toContain("a pinch of salt");
  });

  test("an ingredient that no table knows keeps its weight and its name", async () => {
    const { one, record } = baker();
    await one("save recipe glow: 100 g whites, 8 g glimmer dust");
    expect(record().formulas[0]?.lines[1]?.grams).toBe(8);
    expect(record().formulas[0]?.lines[1]?.name).toContain("glimmer");
  });

  test("without a name, or without lines, it asks", async () => {
    const first = baker();
    expect((await first.one("save recipe: 100 g whites, 130 g almond flour")).question).toContain("call it");
    expect((await first.one("cloud")).headline).toContain("Saved cloud");
    const second = baker();
    expect((await second.one("save recipe cloud")).question).toContain("What is in cloud");
    expect((await second.one("100 g whites, 130 g almond flour")).headline).toContain("Saved cloud");
  });

  test("the same name again replaces it and says so; undo brings it back", async () => {
    const { one, record } = withTwo();
    expect((await one("save recipe snowy shells: 100 g whites, 100 g almond flour")).headline).toContain(
      "replaces",
    );
    expect(record().formulas).toHaveLength(2);
    await one("undo");
    expect(record().formulas.find((each) => each.name === "snowy shells")?.lines).toEqual(snowy.lines);
  });
});

describe("shown, listed, forgotten", () => {
  test("by name, with its lines as figures", async () => {
    const said = await withTwo().one("show me snowy shells");
    expect(said.tool).toBe("formula");
    expect(value(said, "whites")).toBe(105);
    expect(value(said, "granulated sugar")).toBe(95);
    expect(said.rule?.basis).toBe("your bench");
  });
  test("all of them", async () => {
    expect((await withTwo().one("what recipes do i have")).headline).toBe(
      "2 recipes: snowy shells and mocha smbc",
    );
    expect(await baker().one("which recipes have I saved?")).toMatchObject({ status: "answered", items: [] });
  });
  test("forgotten, and a name that isn't there", async () => {
    const { one, record } = withTwo();
    await one("forget mocha smbc");
    expect(record().formulas.map((each) => each.name)).toEqual(["snowy shells"]);
    expect((await one("forget the recipe winter shells")).status).toBe("impossible");
  });
  test("used by the other calculators", async () => {
    // 95 x 84 / 105 = 76
    expect(value(await withTwo().one("scale snowy shells to 84 g whites"), "granulated sugar")).toBeCloseTo(
      76,
      9,
    );
    expect((await withTwo().one("what allergens are in mocha smbc")).headline).toContain("egg and milk");
  });
});

describe("corrected", () => {
  test.each([
    ["in snowy shells make the sugar 90 g", "granulated sugar", 90],
    ["change the almond flour in snowy shells to 128 g", "almond flour", 128],
    ["snowy shells should have 128 g almond flour", "almond flour", 128],
  ])("%s", async (say, name, grams) => {
    const { one, record } = withTwo();
    await one(say);
    const lines = record().formulas.find((each) => each.name === "snowy shells")?.lines;
    expect(lines).toEqual(snowy.lines.map((line) => (line.name === name ? { name, grams } : line)));
  });
  test("a line taken out, a name changed", async () => {
    const { one, record } = withTwo();
    await one("take the sugar out of mocha smbc");
    expect(
      record()
        .formulas.find((each) => each.name === "mocha smbc")
        ?.lines.map((line) => line.name),
    ).toEqual(["whites", "butter"]);
    await one("rename snowy shells to winter shells");
    expect(record().formulas.map((each) => each.name)).toContain("winter shells");
  });
  test("the last line can't be taken out", () => {
    const one: Formula = { id: 3, name: "salt", lines: [{ name: "salt", grams: 1 }] };
    expect(
      answer(formula, { does: "drop line", name: "salt", line: "salt" }, { formulas: [one] }).status,
    ).toBe("impossible");
  });
});

test("what a recipe makes is told by its lines", () => {
  const kind = (...names: string[]) => kindOf(names.map((name) => ({ name })));
  expect(kind("whites", "almond flour")).toBe("shells");
  expect(kind("white chocolate", "cream")).toBe("ganache");
  expect(kind("whites", "sugar", "butter")).toBe("buttercream");
  expect(kind("butter", "sugar", "lemon juice", "egg")).toBeUndefined();
});

test.each([
  ["recipe says 105 whites 135 almond 135 powdered 90 sugar but i only have 70 g whites", "scale"],
  ["shell recipe for 36 macarons please, weights", "scale"],
  ["300 g mocha smbc how much salt", "dose"],
])("%s is for %s", async (say, tool) => {
  expect((await withTwo().one(say)).tool).toBe(tool);
});
