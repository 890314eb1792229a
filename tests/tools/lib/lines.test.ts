/**
 * Ingredient lines in many hands: amount first or last, ranges, fractions, two units, notes, brackets. Each reading is
 * worked by hand. Weights: NIST SP 811, B.8 (28.349523125 g an ounce, 453.59237 g a pound). Volumes: USDA SR28, file
 * WEIGHT (a cup of ground almonds 95 g, powdered sugar unsifted 120 g, granulated sugar 200 g, heavy cream 238 g, ...).
 * Eggs by number: the same file, large: white 33 g, whole 50 g, yolk 17 g.
 */
import { describe, expect, test } from "vitest";
import { readLines } from "../../../src/tools/lib/lines.ts";
import { readings } from "../../support/ask.ts";

/** One line of a recipe as a baker writes it. */
function read(line: string) {
  const [reading] = readings(`save recipe x: ${line}`);
  if (!reading) throw new Error(`nothing read in "${line}"`);
  return readLines(reading, reading.text.indexOf(":") + 1);
}

const oz = 28.349523125;
const lb = 453.59237;

const corpus: readonly (readonly [line: string, name: string, grams: number])[] = [
  // amount first
  ["100 g egg whites", "whites", 100],
  ["100g egg whites", "whites", 100],
  ["100 grams of egg whites", "whites", 100],
  ["130 g almond flour", "almond flour", 130],
  ["130g ground almonds", "almond flour", 130],
  ["130 gr almond meal", "almond flour", 130],
  ["130 gms almond powder", "almond flour", 130],
  ["130 g of icing sugar", "powdered sugar", 130],
  ["130 g confectioners sugar", "powdered sugar", 130],
  ["130 g confectioners' sugar", "powdered sugar", 130],
  ["100 g caster sugar", "granulated sugar", 100],
  ["100 g superfine sugar", "granulated sugar", 100],
  ["100 g sugar", "sugar", 100],
  ["0.2 kg butter", "butter", 200],
  ["0,2 kg butter", "butter", 200],
  ["1.5 kg almond flour", "almond flour", 1500],
  ["a kilo of powdered sugar", "powdered sugar", 1000],
  ["half a kilo of sugar", "sugar", 500],
  ["1,000 g sugar", "sugar", 1000],
  ["62,5 g butter", "butter", 62.5],
  ["500 mg salt", "salt", 0.5],
  [".5 g citric acid", "citric acid", 0.5],
  ["two hundred grams of dark chocolate", "dark chocolate", 200],
  ["a hundred and sixty grams cream", "cream", 160],
  ["twenty five g butter", "butter", 25],
  // amount last
  ["egg whites 100 g", "whites", 100],
  ["almond flour: 130 g", "almond flour", 130],
  ["almond flour - 130 g", "almond flour", 130],
  ["powdered sugar = 130 g", "powdered sugar", 130],
  ["butter, 250 g", "butter", 250],
  ["cream (heavy), 160 g", "cream", 160],
  ["white chocolate ... 250 g", "white chocolate", 250],
  ["whites 100", "whites", 100],
  ["almond 135", "almond flour", 135],
  // imperial and two units
  ["4 oz almond flour", "almond flour", 4 * oz],
  ["4.5 oz powdered sugar", "powdered sugar", 4.5 * oz],
  ["4 1/2 oz powdered sugar", "powdered sugar", 4.5 * oz],
  ["4½ oz powdered sugar", "powdered sugar", 4.5 * oz],
  ["½ lb butter", "butter", lb / 2],
  ["half a pound of butter", "butter", lb / 2],
  ["1 lb butter", "butter", lb],
  ["1 lb 4 oz sugar", "sugar", lb + 4 * oz],
  ["2 pounds of almond flour", "almond flour", 2 * lb],
  ["¾ lb white chocolate", "white chocolate", 0.75 * lb],
  // ranges count as their middle
  ["100-110 g egg whites", "whites", 105],
  ["100 - 110 g egg whites", "whites", 105],
  ["100 to 110 g egg whites", "whites", 105],
  ["100–110 g egg whites", "whites", 105],
  ["between 100 and 110 g egg whites", "whites", 105],
  ["1-2 g salt", "salt", 1.5],
  ["2 or 3 g salt", "salt", 2.5],
  // volumes by the portion table
  ["1 cup almond flour", "almond flour", 95],
  ["2 cups almond flour", "almond flour", 190],
  ["1 cup powdered sugar", "powdered sugar", 120],
  ["1/2 cup granulated sugar", "granulated sugar", 100],
  ["½ cup granulated sugar", "granulated sugar", 100],
  ["¾ cup granulated sugar", "granulated sugar", 150],
  ["1 1/2 cups granulated sugar", "granulated sugar", 300],
  ["1½ cups granulated sugar", "granulated sugar", 300],
  ["one and a half cups granulated sugar", "granulated sugar", 300],
  ["1 cup heavy cream", "cream", 238],
  ["half a cup of heavy cream", "cream", 119],
  ["a cup of sugar", "sugar", 200],
  ["1 tbsp butter", "butter", 14.2],
  ["2 tablespoons butter", "butter", 28.4],
  ["a stick of butter", "butter", 113],
  ["half a stick of butter", "butter", 56.5],
  ["1 tbsp honey", "honey", 21],
  ["1 tsp salt", "salt", 6],
  ["1/4 tsp salt", "salt", 1.5],
  ["¼ tsp cream of tartar", "cream of tartar", 0.75],
  ["1 tbsp cocoa powder", "cocoa powder", 5.4],
  ["1 tsp vanilla extract", "vanilla extract", 4.2],
  ["1 tbsp corn syrup", "glucose syrup", 22],
  // eggs by number
  ["3 egg whites", "whites", 99],
  ["three egg whites", "whites", 99],
  ["4 whites", "whites", 132],
  ["2 eggs", "egg", 100],
  ["1 egg", "egg", 50],
  ["2 egg yolks", "egg yolk", 34],
  // notes, brackets, adjectives
  ["100 g egg whites (aged)", "whites", 100],
  ["100 g egg whites, at room temperature", "whites", 100],
  ["250 g soft butter", "butter", 250],
  ["250 g butter, softened", "butter", 250],
  ["250 g unsalted butter", "butter", 250],
  ["250 g salted butter", "salted butter", 250],
  ["130 g almond flour (sifted)", "almond flour", 130],
  ["130 g sifted powdered sugar", "powdered sugar", 130],
  ["130 g finely ground almonds", "almond flour", 130],
  ["about 130 g almond flour", "almond flour", 130],
  ["ca. 130 g almond flour", "almond flour", 130],
  ["exactly 130 g almond flour", "almond flour", 130],
  ["200 g dark chocolate, chopped", "dark chocolate", 200],
  ["200 g melted white chocolate", "white chocolate", 200],
  ["160 g hot cream", "cream", 160],
  ["90 g fresh lemon juice", "lemon juice", 90],
  ["6 g lemon zest", "lemon zest", 6],
  ["5 g espresso powder", "espresso powder", 5],
  ["30 g pistachio paste", "pistachio paste", 30],
  ["20 g hazelnut paste", "hazelnut paste", 20],
  ["40 g cream cheese", "cream cheese", 40],
  ["60 g mascarpone", "mascarpone", 60],
  ["50 g condensed milk", "condensed milk", 50],
  ["15 g egg white powder", "egg white powder", 15],
  ["3 g gel colour", "gel colour", 3],
  ["8 g pistachio flavor", "pistachio flavor", 8],
  ["2 g peppermint oil", "peppermint oil", 2],
  // misspelt
  ["130 g almnd flour", "almond flour", 130],
  ["130 g powderd sugar", "powdered sugar", 130],
  ["100 g eg whites", "whites", 100],
  ["200 g white choclate", "white chocolate", 200],
];

test("the corpus is what it promises to be", () => {
  expect(corpus.length).toBeGreaterThanOrEqual(100);
});

test.each(corpus)("%s", (line, name, grams) => {
  const { lines } = read(line);
  expect(lines.map((each) => each.name)).toEqual([name]);
  expect(lines[0]?.grams).toBeCloseTo(grams, 6);
});

describe("never dropped", () => {
  test.each([
    ["a pinch of salt", "a pinch of salt"],
    ["salt", "salt"],
    ["some vanilla", "some vanilla"],
    ["a cup of glitter", "a cup of glitter"],
    ["food coloring as needed", "food coloring as needed"],
  ])("%s is named as not read", (line, unread) => {
    const { lines, unread: named } = read(`100 g egg whites, ${line}`);
    expect(lines.map((each) => each.name)).toEqual(["whites"]);
    expect(named).toEqual([unread]);
  });

  test("an ingredient that no table knows keeps its name and weight", () => {
    expect(read("12 g xylitol").lines).toMatchObject([{ name: "xylitol", grams: 12 }]);
  });
});

test("how something was taken is said", () => {
  expect(read("100-110 g egg whites").taken).toEqual(["100-110 g whites: the middle, 105 g"]);
  expect(read("1 cup almond flour").taken).toEqual(["1 cup almond flour: 95 g by the portion table"]);
  expect(read("3 egg whites").taken).toEqual(["3 whites: 33 g each"]);
  expect(read("130 g almond flour").taken).toEqual([]);
});

describe("whole recipes", () => {
  const whole = (text: string) => read(text).lines.map(({ name, grams }) => [name, grams]);
  const shells = [
    ["whites", 105],
    ["almond flour", 135],
    ["powdered sugar", 135],
    ["sugar", 90],
  ];
  test.each([
    "105 g whites, 135 g almond flour, 135 g powdered sugar, 90 g sugar",
    "105 g whites; 135 g almond flour; 135 g powdered sugar; 90 g sugar",
    "105 g whites + 135 g almond flour + 135 g powdered sugar + 90 g sugar",
    "105 g whites and 135 g almond flour and 135 g powdered sugar and 90 g sugar",
    "105 g whites 135 g almond flour 135 g powdered sugar 90 g sugar",
    "whites 105 g, almond flour 135 g, powdered sugar 135 g, sugar 90 g",
    "whites 105 almond flour 135 powdered sugar 135 sugar 90",
    "105 whites, 135 almond, 135 powdered, 90 sugar",
    "Whites: 105 g, Almond flour: 135 g, Powdered sugar: 135 g, Sugar: 90 g",
    "105g whites,135g almond flour,135g powdered sugar,90g sugar",
  ])("%s", (text) => {
    expect(whole(text)).toEqual(shells);
  });
});
