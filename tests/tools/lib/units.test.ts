/** The unit table: what each unit comes to, and that every word for it is read as that unit. */
import fc from "fast-check";
import { all, create } from "mathjs";
import { describe, expect, test } from "vitest";
import { units } from "../../../data/words/units.ts";
import { celsius, fahrenheit, fromBase, inBase, unitRow } from "../../../src/tools/lib/units.ts";
import { readings } from "../../support/ask.ts";

/** The amounts of a sentence, in all its questions. */
const amounts = (sentence: string) => readings(sentence).flatMap((each) => each.amounts);

describe("what a unit comes to", () => {
  test.each([
    // SI
    ["g", 1],
    ["mg", 0.001],
    ["kg", 1000],
    ["ml", 1],
    ["cl", 10],
    ["dl", 100],
    ["l", 1000],
    ["mm", 1],
    ["cm", 10],
    // NIST SP 811, B.8, exact
    ["oz", 28.349523125],
    ["lb", 453.59237],
    ["in", 25.4],
    // NIST Handbook 44, appendix C, exact
    ["gallon", 3785.411784],
    ["fl oz", 29.5735295625],
    ["cup", 236.5882365],
    ["tbsp", 14.78676478125],
    ["tsp", 4.92892159375],
    // the same: a gallon is 4 quarts or 8 pints
    ["quart", 946.352946],
    ["pint", 473.176473],
    // common practice: a stick of butter is half a cup
    ["stick", 118.29411825],
    // time in minutes
    ["min", 1],
    ["h", 60],
    ["d", 1440],
    ["week", 10_080],
  ])("one %s is %d of its base unit", (unit, per) => {
    expect(inBase(1, unit)).toBe(per);
    expect(fromBase(per, unit)).toBe(1);
  });

  test("sixty seconds are a minute", () => {
    expect(inBase(60, "s")).toBeCloseTo(1, 12);
  });

  // a mean Gregorian year is 365.2425 days: / 12 x 1440 = 43829.1 min
  test("a month is the mean Gregorian one", () => {
    expect(inBase(1, "month")).toBeCloseTo((365.2425 / 12) * 1440, 6);
  });

  test("a unit that the table lacks is an error, never times one", () => {
    expect(() => unitRow("furlong")).toThrow();
  });

  // NIST SP 811, B.8: °C = (°F - 32) / 1.8
  test.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [300, 148.88888888888889],
    [160, 71.11111111111111],
  ])("%d °F is %d °C", (f, c) => {
    expect(celsius(f, "°F")).toBeCloseTo(c, 12);
    expect(fahrenheit(c)).toBeCloseTo(f, 12);
  });
});

describe("the second opinion of mathjs, all of it switched on", () => {
  const whole = create(all as NonNullable<typeof all>);
  const theirs = {
    g: "g",
    kg: "kg",
    mg: "mg",
    oz: "ounce",
    lb: "poundmass",
    ml: "ml",
    l: "l",
    "fl oz": "fluidounce",
    cup: "cup",
    pint: "pint",
    quart: "quart",
    gallon: "gallon",
    mm: "mm",
    cm: "cm",
    in: "inch",
    h: "hour",
    min: "minute",
    s: "s",
    d: "day",
    week: "week",
  };
  const base = { weight: "g", volume: "ml", length: "mm", time: "minute" } as Record<string, string>;

  // mathjs rounds its US volumes to six digits or so
  test.each(Object.entries(theirs))("%s", (unit, name) => {
    const want = whole.unit(1, name).toNumber(base[unitRow(unit).dim] ?? "");
    expect(Math.abs(inBase(1, unit) / want - 1)).toBeLessThan(2e-5);
  });

  test("its teaspoon and tablespoon are 5 and 15 ml, not NIST's, so there it is no witness", () => {
    expect(whole.unit(1, "teaspoon").toNumber("ml")).toBeCloseTo(5, 9);
    expect(whole.unit(1, "tablespoon").toNumber("ml")).toBeCloseTo(15, 9);
  });
});

const cases = [
  (word: string) => word,
  (word: string) => word.toUpperCase(),
  (word: string) => word.charAt(0).toUpperCase() + word.slice(1),
];
const gaps = ["", " ", "  "];
const dots = ["", "."];
const words = units.flatMap((row) => row.words.map((word) => ({ unit: row.unit, dim: row.dim, word })));

describe("every word for a unit is that unit, however it is spaced, in any case, with a dot or without", () => {
  test.each(units.map((row) => row.unit))("%s", (unit) => {
    const misread: string[] = [];
    for (const { word } of words.filter((each) => each.unit === unit))
      for (const written of cases.map((change) => change(word)))
        for (const gap of gaps)
          for (const dot of dots) {
            const sentence = `7${gap}${written}${dot} butter`;
            const found = amounts(sentence);
            const [only] = found;
            if (
              found.length !== 1 ||
              only?.unit !== unit ||
              only.value !== 7 ||
              only.dim !== unitRow(unit).dim
            )
              misread.push(
                `${sentence} -> ${found.map((each) => `${each.value} ${each.unit} ${each.dim}`).join("; ")}`,
              );
          }
    expect(misread).toEqual([]);
  });

  const known = words.filter((each) => ["weight", "volume", "length", "time"].includes(each.dim));
  test("and so for any number: the same grams, ml, mm or min as by its row", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...known),
        fc.integer({ min: 1, max: 999_999 }),
        fc.constantFrom(...gaps),
        ({ unit, word }, thousandths, gap) => {
          const number = thousandths / 1000;
          const [only, ...more] = amounts(`${number}${gap}${word} butter`);
          expect(more).toEqual([]);
          expect(inBase(only?.value ?? Number.NaN, only?.unit ?? "")).toBe(number * inBase(1, unit));
        },
      ),
      { numRuns: 500 },
    );
  });

  test("no word stands for two units", () => {
    const seen = words.map((each) => each.word);
    expect(seen.filter((word, at) => seen.indexOf(word) !== at)).toEqual([]);
  });
});

describe("single letters go by what stands around them", () => {
  test.each([
    ["2 c flour", 2, "cup"],
    ["bake at 150 c", 150, "°C"],
    ["bake at 300f", 300, "°F"],
    ["20m timer", 20, "min"],
    ["30 s timer", 30, "s"],
    ['2" shells', 2, "in"],
    ["2 in wide shells", 2, "in"],
  ])("%s", (sentence, value, unit) => {
    expect(amounts(sentence)[0]).toMatchObject({ value, unit });
  });

  test("a sign of money stands before or behind its number", () => {
    for (const [sign, unit] of [
      ["$", "USD"],
      ["€", "EUR"],
      ["£", "GBP"],
    ] as const) {
      expect(amounts(`${sign}7 butter`)).toMatchObject([{ value: 7, unit }]);
      expect(amounts(`7 ${sign} butter`)).toMatchObject([{ value: 7, unit }]);
    }
  });
});
