/** Numbers as they are shown: below 20 g to 0.1 g, from 20 g to 1 g, or to the step of the baker's scale. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  capital,
  counted,
  listed,
  percent,
  plain,
  tidy,
  weight,
  weightRange,
} from "../../../src/tools/lib/show.ts";

describe("a weight", () => {
  test.each([
    [6.9, "6.9"],
    [11.54, "11.5"],
    [11.55, "11.6"],
    [5, "5"],
    [0.04, "0"],
    [0.06, "0.1"],
    // from 20 g up to the gram, and just below it the tenth that rounds up to 20
    [19.94, "19.9"],
    [19.96, "20"],
    [20, "20"],
    [20.4, "20"],
    [20.5, "21"],
    [876.929, "877"],
    [1234.5, "1235"],
  ])("%d g is shown as %s", (grams, shown) => {
    expect(weight(grams)).toBe(shown);
  });

  test.each([
    [230.44, 0.1, "230.4"],
    [1.234, 0.01, "1.23"],
    [6.9, 1, "7"],
    [6.7, 0.5, "6.5"],
    [6.2, 0.25, "6.25"],
    [23, 5, "25"],
    [0.4, 1, "0"],
    // a scale that reads tenths of an ounce, 2.8349523125 g (NIST SP 811): 10 is 4 steps, 11.34
    [10, 2.8349523125, "11"],
  ])("%d g on a scale of %d g steps is %s", (grams, scale, shown) => {
    expect(weight(grams, scale)).toBe(shown);
  });

  test("is never further off than half of what is shown", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100_000, noNaN: true }),
        fc.option(fc.constantFrom(0.01, 0.1, 0.5, 1, 2, 5), { nil: undefined }),
        (grams, scale) => {
          const step = scale ?? (grams < 20 ? 0.1 : 1);
          expect(Math.abs(Number(weight(grams, scale)) - grams)).toBeLessThanOrEqual(step / 2 + 1e-6);
        },
      ),
    );
  });
});

describe("ranges and shares", () => {
  test("low to high, or one number where both are shown alike", () => {
    expect(weightRange(6.9, 11.5)).toBe("6.9 to 11.5 g");
    expect(weightRange(20.1, 20.3)).toBe("20 g");
    expect(weightRange(6.9, 11.5, 1)).toBe("7 to 12 g");
  });

  test("percentages with a plain hyphen", () => {
    expect(percent(3, 5)).toBe("3-5 %");
    expect(percent(0.5)).toBe("0.5 %");
    expect(percent(4, 4)).toBe("4 %");
  });
});

describe("plain numbers", () => {
  test("the last bits of binary arithmetic are dropped", () => {
    expect(tidy(0.1 + 0.2)).toBe(0.3);
    expect(tidy((230 * 3) / 100)).toBe(6.9);
    expect(plain(0.1 + 0.2, 5)).toBe("0.3");
  });

  test("no trailing zeros, no minus before nothing", () => {
    expect([plain(2.5), plain(2), plain(1.005), plain(-0.001), plain(1 / 3, 4)]).toEqual([
      "2.5",
      "2",
      "1",
      "0",
      "0.3333",
    ]);
    expect([plain(100), plain(1200), plain(-4)]).toEqual(["100", "1200", "-4"]);
  });
});

test("lists, counts and capitals", () => {
  expect([listed([]), listed(["a"]), listed(["a", "b"]), listed(["a", "b", "c"], "or")]).toEqual([
    "",
    "a",
    "a and b",
    "a, b or c",
  ]);
  expect([counted(1, "tray"), counted(3, "tray"), counted(0, "egg white")]).toEqual([
    "1 tray",
    "3 trays",
    "0 egg whites",
  ]);
  expect(capital("buttercream")).toBe("Buttercream");
});
