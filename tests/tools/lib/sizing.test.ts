/** Sizes worked by hand. The constants are from memory or common practice. */
import { describe, expect, test } from "vitest";
import * as book from "../../../data/rules/shells.ts";
import {
  batterFor,
  batterForShells,
  eggsFor,
  fillingFor,
  fillingWeight,
  houseLines,
  macaronsFrom,
  shellsFor,
  shellsFrom,
  shellsOnTray,
  shellWeight,
  sizing,
} from "../../../src/tools/lib/sizing.ts";

test("the constants have their values, each with its basis", () => {
  expect(book.houseFormula).toEqual([
    { name: "whites", parts: 100 },
    { name: "almond flour", parts: 130 },
    { name: "powdered sugar", parts: 130 },
    { name: "granulated sugar", parts: 100 },
  ]);
  expect(book.houseParts).toBe(100 + 130 + 130 + 100);
  const memory = { basis: "from memory" };
  expect(book.shellBatter).toMatchObject({ value: 0.53, ...memory });
  expect(book.usualDiameter).toMatchObject({ value: 38, ...memory });
  expect(book.batterLoss).toMatchObject({ value: 4, ...memory });
  expect(book.fillingLoss).toMatchObject({ value: 8, ...memory });
  expect(book.spareShells).toMatchObject({ value: 10, ...memory });
  expect(book.bakedShare).toMatchObject({ value: 87, ...memory });
  expect(book.macaronFilling).toMatchObject({ value: 0.42, ...memory });
  expect(book.ringShare).toMatchObject({ value: 60, ...memory });
  // USDA SR, NDB 01124, large egg
  expect(book.eggWhite).toMatchObject({
    value: 33,
    basis: "published",
    source: expect.stringContaining("01124"),
  });
});

describe("shells", () => {
  // 0.53 x 3.8^2 = 7.6532, 7.65 when shown; 0.53 x 5^2 = 13.25
  test("batter in one shell", () => {
    expect(shellWeight(38)).toBe(7.6532);
    expect(shellWeight(50)).toBe(13.25);
  });

  // ceil(22 N / 10): 50 -> 110, 24 -> 52.8 -> 53, 1 -> 2.2 -> 3, 36 -> 79.2 -> 80
  test("shells to pipe for an order, a tenth to spare", () => {
    expect([50, 24, 1, 36].map((n) => shellsFor(n))).toEqual([110, 53, 3, 80]);
  });

  // 2 N x 1.25 = 60 for 24; without spares 48
  test("the baker's own spares replace the tenth", () => {
    expect(shellsFor(24, { spare_percent: 25 })).toBe(60);
    expect(shellsFor(24, { spare_percent: 0 })).toBe(48);
  });

  // 110 x 7.6532 / 0.96 = 876.92917; 53 x 7.6532 / 0.96 = 422.52042
  test("batter with what stays in bowl and bag", () => {
    expect(batterForShells(110, 38)).toBeCloseTo(876.92917, 5);
    expect(batterFor(24, 38)).toBeCloseTo(422.52042, 5);
  });

  // 460 x 0.96 / 7.6532 = 57.70; 500 x 0.96 / 13.25 = 36.23; 7.97 x 0.96 / 7.6532 = 0.9997
  test("shells from a bowl, cut off", () => {
    expect(shellsFrom(460, 38)).toBe(57);
    expect(shellsFrom(500, 50)).toBe(36);
    expect(shellsFrom(7.97, 38)).toBe(0);
  });

  // ceil(g / 33)
  test("eggs to crack", () => {
    expect([1, 33, 33.01, 99, 100].map(eggsFor)).toEqual([1, 1, 2, 3, 4]);
  });

  test("the house formula for 460 g is its own parts, and any weight adds up", () => {
    expect(houseLines(460).map((each) => each.grams)).toEqual([100, 130, 130, 100]);
    expect(houseLines(777).reduce((sum, each) => sum + each.grams, 0)).toBeCloseTo(777, 9);
  });
});

describe("trays: 400 x 300 mm, 10 mm margin, 20 mm gaps", () => {
  test.each([
    // floor(400 / 58) x floor(300 / 58) = 6 x 5
    [38, 30],
    // 400 / 50 = 8 exactly, 300 / 50 = 6 exactly
    [30, 48],
    // floor(400 / 70) x floor(300 / 70) = 5 x 4
    [50, 20],
    // 400 / 80 = 5 exactly, floor(300 / 80) = 3
    [60, 15],
    // 1.5 inches by NIST SP 811: floor(400 / 58.1) x floor(300 / 58.1) = 6 x 5
    [38.1, 30],
    // floor(400 / 170) x floor(300 / 170) = 2 x 1
    [150, 2],
  ])("shells of %d mm: %d", (d, count) => {
    expect(shellsOnTray(d)).toBe(count);
  });

  test("the baker's own mat replaces it", () => {
    expect(shellsOnTray(38, { shells_a_tray: 28 })).toBe(28);
  });

  // 600 x 400: floor((580 + 20) / 58) x floor((380 + 20) / 58) = 10 x 6
  test("a tray of another size", () => {
    expect(shellsOnTray(38, { tray_width_mm: 600, tray_depth_mm: 400 })).toBe(60);
  });

  test("a tray too small for one shell holds none", () => {
    expect(shellsOnTray(150, { tray_width_mm: 100, tray_depth_mm: 100 })).toBe(0);
  });
});

describe("filling", () => {
  // 0.42 x 3.8^2 = 6.0648; 0.42 x 4.5^2 = 8.505
  test("in one macaron", () => {
    expect(fillingWeight(38)).toBe(6.0648);
    expect(fillingWeight(45)).toBe(8.505);
  });

  // 24 x 6.0648 / 0.92 = 158.21217; no spares
  test("to make for 24", () => {
    expect(fillingFor(24, 38)).toBeCloseTo(158.21217, 5);
  });

  // 300 x 0.92 / 6.0648 = 45.51
  test("macarons from a bowl, cut off", () => {
    expect(macaronsFrom(300, 38)).toBe(45);
  });
});

describe("which diameter is in force", () => {
  test("said goes before the bench, the bench before the book", () => {
    expect(sizing(45, { diameter_mm: 40 })).toEqual({ diameter_mm: 45, diameterFrom: "said" });
    expect(sizing(undefined, { diameter_mm: 40 })).toEqual({ diameter_mm: 40, diameterFrom: "bench" });
    expect(sizing(undefined, {})).toEqual({ diameter_mm: 38, diameterFrom: "book" });
  });
});
