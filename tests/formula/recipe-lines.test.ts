/** Recipes in one sentence, in pasted rows, in a text file: how they are cut into lines. Worked by hand. */
import { describe, expect, test } from "vitest";
import { recipeLines } from "../../src/intents/recipe/recipe-lines.ts";
import { understood } from "../intents/reading.ts";

const read = (text: string) => recipeLines(text, understood.reader);
const short = (text: string) =>
  read(text).lines.map(({ name, grams }) => `${name} ${Number(grams.toFixed(3))}`);
const house = ["whites 105", "almond flour 130", "powdered sugar 125", "sugar 95"];

describe("one recipe, cut in many ways", () => {
  test.each([
    ["105 g whites, 130 almond, 125 powdered sugar, 95 sugar", house],
    ["105 g whites; 130 g almond flour; 125 g powdered sugar; 95 g sugar", house],
    ["105 g whites, 130 g almond flour, 125 g powdered sugar and 95 g sugar", house],
    ["105 g whites and 130 g almond flour plus 125 g powdered sugar & 95 g sugar", house],
    ["105 g whites 130 g almond flour 125 g powdered sugar 95 g sugar", house],
    ["whites 105 almond 130 powdered sugar 125 sugar 95", house],
    ["whites 105 g, almond flour 130 g, powdered sugar 125 g, sugar 95 g", house],
    ["whites: 105 g, almond flour: 130 g, powdered sugar: 125 g, sugar: 95 g", house],
    ["whites, 105 g, almond flour, 130 g, powdered sugar, 125 g, sugar, 95 g", house],
    [
      "105 g whites (room temperature, aged), 130 g almond flour, sifted, 125 g powdered sugar, 95 g sugar",
      house,
    ],
    ["105 g whites\n130 g almond flour\n125 g powdered sugar\n95 g sugar\n", house],
    [
      "For the shells:\r\n- 105 g whites\r\n- 130 g almond flour, sifted\r\n- 125 g powdered sugar\r\n- 95 g sugar",
      house,
    ],
    ["105,0 g whites, 130,0 g almond flour, 125 g powdered sugar, 95 g sugar", house],
    ["whites and sugar, 100 g each", ["whites 100", "sugar 100"]],
    ["100 g each of whites and sugar", ["whites 100", "sugar 100"]],
    [
      "3 egg whites, 1 1/2 cups powdered sugar and 1 cup almond flour",
      ["whites 99", "powdered sugar 180", "almond flour 95"],
    ],
    ["1 lb and 2 oz butter", ["butter 510.291"]], // 18 oz
    ["90 g sugar\nFor the top:\n10 g sugar", ["sugar 100"]],
    [
      "200 g dark chocolate, 70% cocoa, 160 g cream, warm, 20 g butter",
      ["dark chocolate 200", "cream 160", "butter 20"],
    ],
  ])("%s", (text, lines) => {
    const found = read(text);
    expect(short(text)).toEqual(lines);
    expect(found.unread).toEqual([]);
  });
});

test("what isn't weighed and what isn't understood stay, by their own words", () => {
  const found = read(
    "100 g whites, 120 g almond flour, a pinch of salt, powdered sugar, 90 g sugar\nBake at 150 °C for 15 min",
  );
  expect(found.lines.map((each) => each.name)).toEqual(["whites", "almond flour", "sugar"]);
  expect(found.unweighed).toEqual(["a pinch of salt"]);
  expect(found.unread).toEqual(["powdered sugar", "Bake at 150 °C for 15 min"]);
});

test("nothing of a row is lost, whatever it holds", () => {
  for (const row of ["!!!", "130 g", "almond flour", "1 cup glimmer dust", "{}", "½", "for"])
    expect(JSON.stringify(read(row)), row).not.toBe(JSON.stringify(read("")));
});

test("a range keeps its ends and says that the middle counts; a pair that doesn't agree is said", () => {
  const found = read("90-100 g sugar, 4 oz / 150 g cream");
  expect(found.lines[0]).toEqual({ name: "sugar", grams: 95, low_g: 90, high_g: 100 });
  expect(found.taken.join()).toContain("the middle, 95 g");
  expect(found.doubts.join()).toContain("4 oz");
});
