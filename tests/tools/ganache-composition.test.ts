/** What a ganache is made of, summed by hand from the USDA rows, and the estimate of its water activity. */
import { describe, expect, test } from "vitest";
import { ganache } from "../../src/tools/ganache/ganache.ts";
import { answer, figure, value } from "../support/world.ts";

const made = (lines: { name: string; grams: number; ndb?: string }[]) =>
  answer(ganache, { want: "composition", lines });
const plain = (chocolate: string, ratio: number) =>
  made([
    { name: `${chocolate} chocolate`, grams: 100 * ratio },
    { name: "cream", grams: 100 },
  ]);

describe("sums from USDA SR26, file ABBREV, g in 100 g", () => {
  // white 19087: water 1.30, fat 32.09, sugars 59.00; cream 01053: 57.71, 37.00, 2.79; butter 01145: 17.94, 81.11, 0.06
  // water 110 x 0.0130 + 70 x 0.5771 + 25 x 0.1794 = 1.43 + 40.397 + 4.485 = 46.312 of 205 g = 22.59122 %
  // fat 35.299 + 25.9 + 20.2775 = 81.4765 = 39.74463 %; sugar 64.9 + 1.953 + 0.015 = 66.868 = 32.61854 %
  test("110 g white chocolate, 70 g cream, 25 g butter", () => {
    const said = made([
      { name: "white chocolate", grams: 110 },
      { name: "cream", grams: 70 },
      { name: "butter", grams: 25 },
    ]);
    expect(value(said, "water", "%")).toBeCloseTo(22.59122, 5);
    expect(value(said, "fat", "%")).toBeCloseTo(39.74463, 5);
    expect(value(said, "sugar", "%")).toBeCloseTo(32.61854, 5);
    expect(said.rule).toMatchObject({ basis: "published" });
    expect(said.rule?.source).toMatch(/USDA/);
  });

  // dark is 19903, 60-69 %: water 1.25, fat 38.31, sugars 36.71. 1:1 with cream: (1.25 + 57.71) / 2 = 29.48,
  // (38.31 + 37.00) / 2 = 37.655, (36.71 + 2.79) / 2 = 19.75
  test("dark is the 60-69 % row unless more is said", () => {
    const said = plain("dark", 1);
    expect(value(said, "water")).toBeCloseTo(29.48, 9);
    expect(value(said, "fat")).toBeCloseTo(37.655, 9);
    expect(value(said, "sugar")).toBeCloseTo(19.75, 9);
  });

  // milk 19120: water 1.50, fat 29.66, sugars 51.50; 2:1 with cream, of 300 g:
  // (3.00 + 57.71) / 3 = 20.23667; (59.32 + 37.00) / 3 = 32.10667; (103.00 + 2.79) / 3 = 35.26333
  test("milk chocolate 2:1", () => {
    const said = plain("milk", 2);
    expect(value(said, "water")).toBeCloseTo(20.23667, 5);
    expect(value(said, "fat")).toBeCloseTo(32.10667, 5);
    expect(value(said, "sugar")).toBeCloseTo(35.26333, 5);
  });

  // 19904, 70-85 %: sugars 23.99; (23.99 + 2.79) / 2 = 13.39
  test("a cacao of 70 % or more takes its own row", () => {
    const said = made([
      { name: "dark chocolate", grams: 100, ndb: "19904" },
      { name: "cream", grams: 100 },
    ]);
    expect(value(said, "sugar")).toBeCloseTo(13.39, 9);
  });

  test("an ingredient without a row: declined, with no figure at all", () => {
    const said = made([
      { name: "dark chocolate", grams: 100 },
      { name: "matcha", grams: 5 },
    ]);
    expect(said.status).toBe("declined");
    expect(said.figures ?? []).toEqual([]);
    expect(said.headline).toMatch(/matcha/);
  });
});

describe("water activity of plain ganache", () => {
  // Check values, computed by Norrish on USDA composition with all sugar as sucrose: 0.96, 0.92, 0.85. By hand:
  // dark 1:1, water 58.96, sugar 39.50: n_s 0.115396, n_w 3.272828, X 0.034058, a_w 0.965942 x 0.992523 = 0.95872
  // dark 2:1, water 60.21, sugar 76.21: n_s 0.222641, n_w 3.342215, X 0.062454, a_w 0.937546 x 0.975080 = 0.91418,
  // which the check value gives as 0.92
  // white 2:1, water 60.31, sugar 120.79: n_s 0.352878, n_w 3.347766, X 0.095356, a_w 0.904644 x 0.942867 = 0.85296
  test.each([
    ["dark", 1, 0.96, 0.95872],
    ["dark", 2, 0.92, 0.91418],
    ["white", 2, 0.85, 0.85296],
  ])("%s %d : 1 is about %d", (chocolate, ratio, published, byHand) => {
    const said = plain(chocolate, ratio);
    expect(value(said, "aw", "aw")).toBeCloseTo(byHand, 5);
    expect(Math.abs(value(said, "aw") - published)).toBeLessThan(0.01);
    expect(said.headline).toContain(`${byHand.toFixed(2)} ± 0.02`);
  });

  test("it carries its band, is marked an estimate, and names both lines", () => {
    const said = plain("dark", 1);
    const { value: aw = 0, low, high } = figure(said, "aw");
    expect(low).toBeCloseTo(aw - 0.02, 12);
    expect(high).toBeCloseTo(aw + 0.02, 12);
    expect(said.headline).toMatch(/estimate/);
    expect(said.rule?.text).toMatch(/0\.85 \(21 CFR 114\.3\).*0\.88 \(Food Code 1-201\.10\)/);
    expect(said.cautions?.join(" ")).toMatch(/authority/);
  });

  test("above a line it is called perishable", () => {
    expect(plain("dark", 1).headline).toMatch(/perishable/);
    expect(plain("white", 2).headline).toMatch(/perishable/);
  });

  // 9:1 white: water 11.7 + 57.71 = 69.41, sugar 531 + 2.79 = 533.79, over 2.114 x 69.41: saturated, 0.8434
  test("below the lines the estimate alone is no licence", () => {
    const said = plain("white", 9);
    expect(value(said, "aw")).toBeCloseTo(0.8434, 4);
    expect(said.headline).not.toMatch(/perishable/);
    expect(said.headline).toMatch(/estimate alone/);
    expect(said.cautions?.join(" ")).toMatch(/measured.*authority/);
  });
});
