/** The sums behind a composition and Norrish's water activity, against what is published. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { compose, saturation, waterActivity } from "../../../src/tools/lib/composition.ts";

const aw = (water_g: number, sugar_g: number) => waterActivity({ water_g, sugar_g }) ?? Number.NaN;
const grams = fc.double({ min: 0.01, max: 10_000, noNaN: true });

describe("sucrose in water", () => {
  // by weight: New York State Agriculture and Markets; Beuchat 1981; Sloan and Labuza 1975
  test.each([
    [26, 0.98],
    [50, 0.93],
    [55, 0.91],
    [60.6, 0.9],
    [65, 0.87],
  ])("sugar at %d percent: printed %d, met within 0.01", (percent, printed) => {
    expect(Math.abs(aw(100 - percent, percent) - printed)).toBeLessThanOrEqual(0.01);
  });

  // Robinson and Stokes 1961: 1 molal, 342.3 g in 1 kg of water, 0.9806
  test("1 molal: 0.9806, met within 0.001", () => {
    expect(Math.abs(aw(1000, 342.3) - 0.9806)).toBeLessThan(0.001);
  });

  // Mohos, Confectionery and Chocolate Engineering, table A2.2: 211.4 g in 100 g of water at 25 °C; a_w 0.843, computed
  test("saturated at 25 °C: 0.843", () => {
    expect(saturation).toBe(2.114);
    expect(aw(100, 211.4)).toBeCloseTo(0.843, 3);
    expect(aw(100, 500)).toBe(aw(100, 211.4));
  });

  // by hand: n_s = 100 / 342.30 = 0.2921414, n_w = 100 / 18.015 = 5.5509298, X = 0.0499980,
  // (1 - X) exp(-6.47 X^2) = 0.9500020 x exp(-0.0161737) = 0.9347607
  test("half and half: Norrish 1966 with K 6.47, by hand", () => {
    expect(aw(100, 100)).toBeCloseTo(0.9347607, 6);
  });

  test("pure water is 1, and no water is not known", () => {
    expect(aw(100, 0)).toBe(1);
    expect(waterActivity({ water_g: 0, sugar_g: 10 })).toBeUndefined();
  });
});

describe("laws", () => {
  test("more water never lowers it", () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        grams,
        (water, sugar, more) => aw(water + more, sugar) >= aw(water, sugar) - 1e-12,
      ),
    );
  });

  test("more sugar never raises it", () => {
    fc.assert(
      fc.property(
        grams,
        grams,
        grams,
        (water, sugar, more) => aw(water, sugar + more) <= aw(water, sugar) + 1e-12,
      ),
    );
  });

  test("it never falls below 0.84 and never exceeds 1", () => {
    fc.assert(
      fc.property(
        grams,
        fc.double({ min: 0, max: 1e6, noNaN: true }),
        (water, sugar) => aw(water, sugar) > 0.84 && aw(water, sugar) <= 1,
      ),
    );
  });

  const line = fc.record({
    name: fc.constantFrom("dark chocolate", "white chocolate", "cream", "butter", "sugar", "whites"),
    grams,
  });
  const lines = fc.array(line, { minLength: 1, maxLength: 6 });
  const of = (some: { name: string; grams: number }[]) => {
    const { water_g, fat_g, sugar_g, grams: all, unknown } = compose(some);
    expect(unknown).toEqual([]);
    return { water: water_g / all, fat: fat_g / all, sugar: sugar_g / all, aw: aw(water_g, sugar_g) };
  };
  const same = (a: ReturnType<typeof of>, b: ReturnType<typeof of>) => {
    for (const key of ["water", "fat", "sugar", "aw"] as const) {
      if (Number.isNaN(a[key])) expect(b[key]).toBeNaN();
      else expect(b[key]).toBeCloseTo(a[key], 10);
    }
  };

  test("the order of the ingredients doesn't matter", () => {
    fc.assert(fc.property(lines, (some) => same(of(some), of([...some].reverse()))));
  });

  test("the size of the batch doesn't matter", () => {
    fc.assert(
      fc.property(lines, fc.double({ min: 0.1, max: 50, noNaN: true }), (some, times) =>
        same(of(some), of(some.map((each) => ({ ...each, grams: each.grams * times })))),
      ),
    );
  });

  test("water, fat and sugar never come to more than the whole", () => {
    fc.assert(
      fc.property(lines, (some) => {
        const { water_g, fat_g, sugar_g, grams: all } = compose(some);
        expect(water_g + fat_g + sugar_g).toBeLessThanOrEqual(all * (1 + 1e-9));
      }),
    );
  });
});
