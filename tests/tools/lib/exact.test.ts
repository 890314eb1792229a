/** Exact fractions behind counts that are cut off, held against whole-number arithmetic. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { ceil, exact, floor } from "../../../src/tools/lib/exact.ts";
import {
  batterForShells,
  fillingFor,
  macaronsFrom,
  shellsFor,
  shellsFrom,
} from "../../../src/tools/lib/sizing.ts";

/** Shells from `centigrams` of batter, in whole numbers only: (b / 100) x 0.96 / (0.53 (d / 10)^2) = 96 b / (53 d^2). */
const shellsByHand = (centigrams: number, d: number) =>
  Number((BigInt(centigrams) * 96n) / (53n * BigInt(d) ** 2n));
/** (b / 100) x 0.92 / (0.42 (d / 10)^2) = 92 b / (42 d^2). */
const macaronsByHand = (centigrams: number, d: number) =>
  Number((BigInt(centigrams) * 92n) / (42n * BigInt(d) ** 2n));

const d_mm = fc.integer({ min: 10, max: 150 });
const centigrams = fc.integer({ min: 1, max: 5_000_000 });

describe("a decimal is taken as it was written", () => {
  test("0.1 + 0.2 is 0.3 and 0.53 is 53/100", () => {
    expect(exact(0.1).add(exact(0.2)).equals(exact(0.3))).toBe(true);
    expect(exact(0.53).toFraction()).toBe("53/100");
  });

  test("a number so small that it is written with an exponent is no error", () => {
    expect(exact(5e-7).toFraction()).toBe("1/2000000");
    expect(shellsFrom(5e-7, 38)).toBe(0);
  });

  test("floor and ceil of halves and whole numbers", () => {
    expect([floor(exact(2.5)), ceil(exact(2.5)), floor(exact(3)), ceil(exact(3))]).toEqual([2, 3, 3, 3]);
  });
});

describe("counts are cut off exactly", () => {
  test("shells from any weight of batter, as whole numbers have it", () => {
    fc.assert(
      fc.property(centigrams, d_mm, (b, d) => shellsFrom(b / 100, d) === shellsByHand(b, d)),
      { numRuns: 2000 },
    );
  });

  test("macarons from any weight of filling, as whole numbers have it", () => {
    fc.assert(
      fc.property(centigrams, d_mm, (b, d) => macaronsFrom(b / 100, d) === macaronsByHand(b, d)),
      { numRuns: 2000 },
    );
  });

  test("right at the edges too, where a centigram less is a shell less", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 3000 }), d_mm, (shells, d) => {
        // the least whole number of centigrams that holds them: ceil(53 d^2 n / 96)
        const least = Number((53n * BigInt(d) ** 2n * BigInt(shells) + 95n) / 96n);
        expect(shellsFrom(least / 100, d)).toBe(shellsByHand(least, d));
        expect(shellsFrom((least - 1) / 100, d)).toBe(shells - 1);
      }),
      { numRuns: 1000 },
    );
  });

  test("there are weights at which plain arithmetic would be a shell off, and these are right", () => {
    const off: number[] = [];
    // a weight that holds exactly n shells: 96 b = 53 d^2 n, so n in steps of 96 at any d
    for (let d = 10; d <= 60; d++)
      for (let n = 96; n <= 960; n += 96) {
        const b = (53 * d * d * n) / 96;
        if (Math.floor(((b / 100) * 0.96) / (0.53 * (d / 10) ** 2)) === n) continue;
        off.push(b);
        expect(shellsByHand(b, d)).toBe(n);
        expect(shellsFrom(b / 100, d)).toBe(n);
      }
    expect(off.length).toBeGreaterThan(0);
  });

  // 22 N / 10 rounded up, in whole numbers: (22 N + 9) / 10 cut off. Plain arithmetic gives 111 shells for 50 macarons.
  test("shells with the spares, for every order up to 3000", () => {
    expect(Math.ceil(2 * 50 * 1.1)).toBe(111);
    for (let n = 1; n <= 3000; n++) expect(shellsFor(n)).toBe(Number((22n * BigInt(n) + 9n) / 10n));
  });
});

describe("what was weighed out for a number holds that number", () => {
  const many = fc.integer({ min: 1, max: 5000 });

  test("batter for n shells gives n shells", () => {
    fc.assert(
      fc.property(many, d_mm, (n, d) => shellsFrom(batterForShells(n, d), d) === n),
      { numRuns: 1000 },
    );
  });

  test("filling for n macarons fills n macarons", () => {
    fc.assert(
      fc.property(many, d_mm, (n, d) => macaronsFrom(fillingFor(n, d), d) === n),
      { numRuns: 1000 },
    );
  });
});
