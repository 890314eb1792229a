/** Recipes that come line by line, in several rows at once, and from a text file. Weights worked by hand. */
import { describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

const rows = [
  "For the shells:",
  "- 105 g egg whites (room temperature)",
  "- 130 g almond flour, sifted",
  "130 g powdered sugar",
  "90-100 g granulated sugar",
  "a pinch of salt",
  "Bake at 150 °C for 15 min",
];
const shells = [
  { name: "whites", grams: 105 },
  { name: "almond flour", grams: 130 },
  { name: "powdered sugar", grams: 130 },
  { name: "granulated sugar", grams: 95, low_g: 90, high_g: 100 },
];

describe("pasted lines", () => {
  test.each(["done", "", "that's it"])("a line a turn until %j", async (end) => {
    const { one, record } = baker();
    expect((await one("recipe snowy shells:")).question).toBeTruthy();
    for (const row of rows) expect((await one(row)).tool, row).toBe("formula");
    const said = await one(end);
    expect(said.headline).toContain("Saved snowy shells");
    expect(said.headline).toContain('not weighed: "a pinch of salt"');
    expect(said.headline).toContain('not read: "Bake at 150 °C for 15 min"');
    expect(record().formulas).toMatchObject([
      { name: "snowy shells", kind: "shells", lines: shells, unweighed: ["a pinch of salt"] },
    ]);
  });

  test("each turn says what it was taken for", async () => {
    const { one } = baker();
    await one("recipe snowy shells:");
    expect((await one("For the shells:")).headline).toContain("a heading");
    expect((await one("almond flour")).headline).toContain("no amount");
    expect((await one("a pinch of salt")).headline).toContain("not weighed");
    expect((await one("4 oz / 113 g cream")).headline).toContain("cream 113 g");
  });

  test("a question ends the list, and what was said is kept", async () => {
    const { one, record } = baker();
    await one("recipe snowy shells:");
    await one("105 g whites");
    await one("130 g almond flour");
    expect((await one("how much flavor for 230 g buttercream?")).tool).toBe("dose");
    expect(record().formulas[0]?.lines).toHaveLength(2);
    expect((await one("show me snowy shells")).headline).toContain("almond flour 130 g");
  });

  test("cancel drops it, undo takes the last line back, a list without lines saves nothing", async () => {
    const { one, ask, record } = baker();
    await one("recipe snowy shells:");
    await one("105 g whites");
    await one("130 g almond flour");
    await one("undo");
    expect(record().formulas[0]?.lines).toHaveLength(1);
    await one("recipe plain:");
    await one("100 g whites");
    await one("cancel");
    expect(record().formulas.map((each) => each.name)).toEqual(["snowy shells"]);
    await one("recipe empty:");
    expect((await one("done")).headline).toContain("Nothing was saved");
    expect(await ask("")).toEqual([]);
  });

  test("the name of a saved recipe: the new lines replace the old, undo brings them back", async () => {
    const { one, record } = baker();
    await one("recipe cloud: 100 g whites, 130 g almond flour");
    await one("recipe cloud:");
    await one("90 g whites");
    await one("done");
    expect(record().formulas).toMatchObject([{ name: "cloud", lines: [{ name: "whites", grams: 90 }] }]);
    await one("undo");
    expect(record().formulas[0]?.lines).toHaveLength(2);
  });
});

test("several rows in one turn", async () => {
  const { one, record } = baker();
  const said = await one(`recipe snowy shells:\n${rows.join("\n")}\n`);
  expect(said.headline).toContain("Saved snowy shells");
  expect(record().formulas[0]?.lines).toEqual(shells);
});

describe("from a text file", () => {
  const texts = {
    "shells.txt": `Snowy Shells\n\n${rows.join("\r\n")}\n`,
    "my-porch.txt": "100 g whites\n130 g almond flour",
    "letter.txt": "Dear all,\nsee you soon",
  };
  test("named by its title, read line by line", async () => {
    const { one, record } = baker({ texts });
    const said = await one("read recipe from shells.txt");
    expect(said.headline).toContain("Saved snowy shells");
    expect(said.headline).toContain("not read");
    expect(record().formulas[0]?.lines).toEqual(shells);
  });
  test.each([
    ["read my recipe from my-porch.txt", "my porch"],
    ["load the recipe from my-porch.txt as cloud", "cloud"],
    ['import recipe from "my-porch.txt"', "my porch"],
  ])("%s", async (say, name) => {
    const { one, record } = baker({ texts });
    await one(say);
    expect(record().formulas.map((each) => each.name)).toEqual([name]);
  });
  test("a file that isn't there, or holds no recipe, saves nothing and says so", async () => {
    const { one, record } = baker({ texts });
    expect(await one("read recipe from nowhere.txt")).toMatchObject({
      status: "impossible",
      headline: "There is no nowhere.txt.",
    });
    expect((await one("read recipe from letter.txt")).headline).toContain("no ingredient");
    expect(record().formulas).toEqual([]);
  });
  test("escapes of a terminal are taken out", async () => {
    const { one, record } = baker({
      texts: { "x.txt": "\u001b]0;title\u0007105 g \u001b[31mwhites\u001b[0m\n130 g almond flour" },
    });
    const said = await one("read recipe from x.txt as cloud");
    expect(record().formulas[0]?.lines.map((each) => each.name)).toEqual(["whites", "almond flour"]);
    expect(JSON.stringify(said)).not.toContain("\\u001b");
  });
});

describe("said in plain words and used by its name", () => {
  test("my shells are ..., and the other calculators", async () => {
    const { one, record } = baker();
    await one(
      "my shells are 105 g whites, 130 almond, 125 powdered sugar, 95 sugar, remember that as snowy shells",
    );
    expect(record().formulas[0]?.lines.map((each) => each.grams)).toEqual([105, 130, 125, 95]);
  });
});
