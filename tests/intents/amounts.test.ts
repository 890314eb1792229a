/** Numbers with their units: one amount, all the ways to say it, and what has to stay two things or none. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { amounts, wholeAmount } from "./reading.ts";

const said: Readonly<Record<string, readonly string[]>> = {
  "230 g": [
    "230 g",
    "230g",
    "230 grams",
    "230 gram",
    "230 gr",
    "230gms",
    "two thirty grams",
    "two hundred and thirty grams",
    "two hundred thirty g",
    "230,0 g",
    "230 grammes",
  ],
  "-50 g": ["-50 g", "minus 50 g", "-50g", "−50 grams", "minus fifty grams"],
  "0.5 g": ["half a gram", "0.5 g", "½ g", ".5 g", "0,5g", "half gram"],
  "1200 g": ["1 kg 200 g", "1kg 200g", "1200 g", "1,200 g", "one kilo 200 grams", "1 kg and 200 g"],
  "1 kg": ["1 kg", "a kilo", "one kilo", "1kilo", "1 kilogram", "a kg"],
  "1.5 kg": ["a kilo and a half", "one and a half kilos", "1.5 kg", "1,5 kg", "1½ kg", "1 1/2 kilos"],
  "0.25 kg": [
    "a quarter kilo",
    "quarter of a kilo",
    "a quarter of a kilo",
    "0.25 kg",
    "1/4 kg",
    "quarter kilo",
  ],
  "250 mg": ["250 mg", "250mg", "250 milligrams"],
  "20 oz": ["1 lb 4 oz", "1lb 4oz", "one pound four ounces", "1 pound and 4 ounces", "20 oz"],
  "1.25 lb": ["a pound and a quarter", "one and a quarter pounds", "1.25 lb", "1¼ lb", "1 1/4 lbs"],
  "9 oz": ["9 oz", "9oz", "nine ounces", "9 ounce"],
  "2 cup": ["2 cups", "two cups", "2 cup", "2c", "2 c"],
  "1.5 cup": ["1½ cups", "1 1/2 cups", "one and a half cups", "a cup and a half", "1.5 cups"],
  "0.75 cup": ["3/4 cup", "¾ cup", "three quarters of a cup", "three quarter cup"],
  "0.5 tsp": ["1/2 tsp", "half a teaspoon", "half tsp", "½ teaspoon", "0.5 tsp", "half teaspoon"],
  "2 tbsp": ["2 tbsp", "2 tablespoons", "two tbs", "2tbsp", "2 tbl"],
  "15 ml": ["15 ml", "15ml", "fifteen millilitres", "15 milliliters", "15 mls", "15 mil"],
  "4 fl oz": ["4 fl oz", "4 fl. oz", "4 floz", "four fluid ounces"],
  "3.8 cm": ["3.8 cm", "3.8cm", "3,8 cm", "3.8 centimeters", "3.8 centimetres"],
  "38 mm": ["38 mm", "38mm", "38 millimetres", "38 millimeters"],
  "0.375 in": ["3/8 inch", "3/8 in", '3/8"', "3/8 inches", "⅜ inch", "three eighths of an inch"],
  "1.5 in": [
    "1½ inch",
    "1 1/2 inch",
    "an inch and a half",
    '1.5"',
    "one and a half inches",
    "1.5 in",
    '1 1/2"',
  ],
  "150 °C": [
    "150 c",
    "150 °C",
    "150°C",
    "150 degrees celsius",
    "150 deg c",
    "150 ºC",
    "150C",
    "150 celsius",
    "150 centigrade",
    "150 degrees C",
  ],
  "-18 °C": ["-18 c", "minus 18 c", "-18°C", "−18 °C", "minus eighteen degrees celsius"],
  "300 °F": [
    "300 F",
    "300°F",
    "300 f",
    "300 degrees fahrenheit",
    "300 deg F",
    "three hundred fahrenheit",
    "300 farenheit",
  ],
  "160 °": ["160 degrees", "160°", "160 deg", "one sixty degrees", "a hundred and sixty degrees"],
  "4 %": ["4 %", "4%", "4 percent", "four percent", "4 per cent", "4 pct", "four per cent"],
  "0.5 %": ["half a percent", "0.5 %", "½ %", "half percent", "0,5%", ".5 %", "half of a percent"],
  "3-5 %": [
    "3-5 %",
    "3 - 5 %",
    "3–5 %",
    "3 to 5 %",
    "3 to 5 percent",
    "3% to 5%",
    "3 % - 5 %",
    "three to five percent",
    "3-5%",
    "3 or 5 %",
    "3 percent to 5 percent",
  ],
  "0.5-1 %": [
    "half to one percent",
    "0.5-1 %",
    "half a percent to one percent",
    "½ to 1 %",
    "0.5 to 1 percent",
    "0,5-1%",
  ],
  "10 tbsp": ["10 tbsp", "10 tablespoons", "ten tablespoons"],
  "0.625 cup": ["1/2 cup and 2 tbsp", "1/2 cup + 2 tbsp", "½ cup plus 2 tbsp", "0.625 cups"],
  "150 g": ["3 x 50 g", "3x50g", "150 g"],
  "100-150 g": [
    "100-150 g",
    "100 to 150 g",
    "100 g to 150 g",
    "100g - 150g",
    "a hundred to a hundred and fifty grams",
  ],
  "16 USD": ["$16", "$ 16", "16 dollars", "16 bucks", "16 USD"],
  "1.5 USD": ["$1.50", "$1.5", "1.50 dollars"],
  "15 EUR": ["€15", "15 euros", "15 euro", "€ 15", "15 EUR"],
  "3.5 GBP": ["£3.50", "3.50 quid"],
  "1200 USD": ["$1,200", "$1200"],
  "16 USD per 1 kg": [
    "$16 a kilo",
    "$16 per kg",
    "$16/kg",
    "16 dollars a kilo",
    "$16 / kg",
    "16 bucks a kilo",
    "$16 per kilo",
  ],
  "15 EUR per 1 h": ["€15 an hour", "15 euros an hour", "€15/h", "15 euro per hour"],
  "4 USD per 500 g": ["$4 per 500 g", "$4/500g"],
  "1.5 times": ["1.5 times", "1.5x", "1,5 times", "one and a half times", "1½ times", "1.5 x"],
  "2 times": ["double", "twice", "2x", "two times", "2 times"],
  "0.5 times": ["halve", "half times", "0.5x"],
  "3 times": ["triple", "3x", "three times", "3 times"],
  "24": ["24", "twenty four", "two dozen"],
};

describe.each(Object.entries(said))("%s", (amount, ways) => {
  it.each(ways)('is said as "%s"', (way) => {
    expect(wholeAmount(way)).toBe(amount);
  });
});

describe("two things that stay two", () => {
  it.each([
    ["130 g almond flour and 100 g sugar", ["130 g", "100 g"]],
    ["2 to 1", ["2", "1"]],
    ["5-3", ["5", "3"]],
    ["12 x 45", ["12", "45"]],
    ["1 200 g", ["1", "200 g"]],
    ["24 x 4 cm", ["24", "4 cm"]],
    ["105 whites 135 almond", ["105", "135"]],
    ["30 min rest, 15 min bake", ["30 min", "15 min"]],
    ["1 lb butter 4 oz sugar", ["1 lb", "4 oz"]],
    ["200 g and 3 eggs", ["200 g", "3"]],
    ["24 macarons of 4 cm", ["24", "4 cm"]],
    ["3 trays of 28", ["3", "28"]],
    ["350 f to c", ["350 °F"]],
    ["a cup and half a stick of butter", ["1 cup", "0.5 stick"]],
    ["50 g of butter, 4 %", ["50 g", "4 %"]],
    ["oven 150, 15 min", ["150", "15 min"]],
    ["120 g butter - 150 g sugar", ["120 g", "150 g"]],
  ])("%s", (sentence, found) => {
    expect(amounts(sentence)).toEqual(found);
  });
});

describe("letters that are units only where they can be", () => {
  it.each([
    ["is it good", []],
    ["put it in 3 bowls", ["3"]],
    ["how much c do i need", []],
    ["mint and mints for 200 g", ["200 g"]],
    ["a second batch", []],
    ["plan b for 24", ["24"]],
    ["3 in the oven", ["3"]],
    ["grams per cup", []],
    ["2 mint macarons", ["2"]],
    ["4 lemon ones", ["4"]],
    ["7 milk chocolate macarons", ["7"]],
    ["12 filled, 12 left", ["12", "12"]],
    ["10 hollow shells", ["10"]],
    ["6 dark ones", ["6"]],
    ["20 gold macarons", ["20"]],
  ])("%s", (sentence, found) => {
    expect(amounts(sentence)).toEqual(found);
  });

  it("tells cups from degrees by what a cup can be", () => {
    expect(amounts("2 c powdered sugar")).toEqual(["2 cup"]);
    expect(amounts("1c. sugar")).toEqual(["1 cup"]);
    expect(amounts("bake at 150 c")).toEqual(["150 °C"]);
    expect(amounts("165 c oven")).toEqual(["165 °C"]);
    expect(amounts("5 c fridge")).toEqual(["5 °C"]);
    expect(amounts("10 c to f")).toEqual(["10 °C"]);
  });
});

it("reads any plain weight back, in figures, with or without the space", () => {
  const unit = fc.constantFrom("g", "kg", "oz", "lb", "ml", "tsp", "tbsp", "mm", "cm", "%", "min");
  fc.assert(
    fc.property(
      fc.integer({ min: 0, max: 99_999 }),
      fc.integer({ min: 0, max: 9 }),
      unit,
      (whole, tenth, name) => {
        const value = tenth === 0 ? `${whole}` : `${whole}.${tenth}`;
        expect(amounts(`${value} ${name}`)).toEqual([`${Number(value)} ${name}`]);
        expect(amounts(`${value}${name}`)).toEqual([`${Number(value)} ${name}`]);
        expect(amounts(`${value.replace(".", ",")} ${name}`)).toEqual([`${Number(value)} ${name}`]);
      },
    ),
  );
});

it("reads any range back whole, low before high, and keeps a falling pair apart", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 500 }), fc.integer({ min: 1, max: 500 }), (a, b) => {
      fc.pre(a !== b);
      const [low, high] = a < b ? [a, b] : [b, a];
      expect(amounts(`${low}-${high} g`)).toEqual([`${low}-${high} g`]);
      expect(amounts(`${low} to ${high} g`)).toEqual([`${low}-${high} g`]);
      expect(amounts(`between ${low} and ${high} g`)).toEqual([`${low}-${high} g`]);
      expect(amounts(`${high} to ${low} g`)).toEqual([`${high}`, `${low} g`]);
    }),
  );
});
