/** Plain arithmetic: right where it is arithmetic, and nothing at all where it isn't. */
import fc from "fast-check";
import { all, create } from "mathjs";
import { describe, expect, test } from "vitest";
import { workOut } from "../../../src/tools/convert/arithmetic.ts";

const value = (sum: string) => {
  const worked = workOut(sum);
  return worked.ok ? worked.value : worked.why;
};

describe("sums by hand", () => {
  test.each([
    ["3 / 4 * 260", 195],
    ["12 * 45", 540],
    ["230 / 8", 28.75],
    ["260 + 45 - 30", 275],
    ["(15 / 100) * 240", 36],
    ["(1 / 2) * 300", 150],
    ["100 + 45 * 3", 235],
    ["(100 + 45) * 3", 435],
    ["2 ^ 3 ^ 2", 512],
    ["-2 ^ 2", -4],
    ["- 30 + 260", 230],
    ["2 - -3", 5],
    ["100 - 20 - 30", 50],
    ["600 / 3 / 4", 50],
  ])("%s = %d", (sum, want) => expect(value(sum)).toBe(want));
});

describe("nothing but arithmetic", () => {
  test.each([
    "sqrt(2)",
    "2 + a",
    "f(x) = x",
    "a = 3",
    "[1, 2]",
    "1:3",
    "1 ? 2 : 3",
    "5!",
    "2 inch",
    "5 % 3",
    "1 < 2",
    "true",
    '"a"',
    "{a: 1}",
    "import('fs')",
    "1; 2",
    "2(3)",
    "0x1F",
    "1e3",
    "",
    "()",
    "3 +",
    "cos.constructor",
    "Infinity",
    "i",
  ])("%s", (sum) => expect(value(sum)).toBe("not arithmetic"));

  test("division by zero is named, also by a sum that comes to zero", () => {
    expect(value("10 / 0")).toBe("division by zero");
    expect(value("10 / (3 - 3)")).toBe("division by zero");
    expect(value("0 ^ -1")).toBe("division by zero");
  });

  test("length, depth and size have an end", () => {
    expect(value(`1${" + 1".repeat(60)}`)).toBe("too long");
    expect(value(`${"(".repeat(50)}1${")".repeat(50)}`)).toBe("too long");
    expect(value("9 ^ 101")).toBe("too long");
    expect(value("999999 ^ 99")).toBe("too long");
  });
});

/** A random sum, fully bracketed, and its value worked out beside it. */
const leaf = fc.integer({ min: 1, max: 999 }).map((n) => ({ text: String(n), value: n }));
const sum = fc.letrec<{ sum: { text: string; value: number } }>((tie) => ({
  sum: fc.oneof(
    { depthSize: "small", maxDepth: 4 },
    leaf,
    fc.tuple(tie("sum"), fc.constantFrom("+", "-", "*"), tie("sum")).map(([a, op, b]) => ({
      text: `(${a.text} ${op} ${b.text})`,
      value: op === "+" ? a.value + b.value : op === "-" ? a.value - b.value : a.value * b.value,
    })),
  ),
})).sum;

test("random sums come out as they do by hand", () => {
  fc.assert(
    fc.property(
      sum.filter(({ text }) => text.length <= 200),
      ({ text, value: want }) => {
        expect(value(text)).toBe(want);
      },
    ),
  );
});

test("the whole library, all of it switched on, agrees: the second opinion", () => {
  const whole = create(all ?? {});
  const flat = fc
    .tuple(
      fc.array(fc.tuple(fc.integer({ min: 1, max: 500 }), fc.constantFrom("+", "-", "*", "/")), {
        minLength: 1,
        maxLength: 8,
      }),
      fc.integer({ min: 1, max: 500 }),
    )
    .map(([parts, last]) => `${parts.map(([n, op]) => `${n} ${op}`).join(" ")} ${last}`);
  fc.assert(
    fc.property(flat, (text) => {
      expect(value(text)).toBeCloseTo(whole.evaluate(text) as number, 9);
    }),
  );
});

test("no text whatever makes it throw", () => {
  fc.assert(
    fc.property(fc.string({ maxLength: 60 }), (text) => {
      expect(typeof workOut(text).ok).toBe("boolean");
    }),
  );
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."0123456789+-*/^(). "), maxLength: 40 }), (text) => {
      const worked = workOut(text);
      expect(!worked.ok || Number.isFinite(worked.value)).toBe(true);
    }),
  );
});
