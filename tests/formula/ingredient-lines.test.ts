/** The corpus of ingredient lines, each against its reading worked by hand. */
import { describe, expect, test } from "vitest";
import { ingredientLine } from "../../src/intents/recipe/ingredient-line.ts";
import { understood } from "../intents/reading.ts";
import { lines } from "./ingredient-lines.ts";

describe("an ingredient line reads as worked by hand", () => {
  test.each(lines)("$say", ({ say, is, name, grams, low_g, high_g, doubt }) => {
    const read = ingredientLine(say, understood.reader);
    expect(read.is).toBe(is);
    expect(read.said).toBe(say.replaceAll("\t", " "));
    if (name !== undefined) expect(read.name).toBe(name);
    if (grams !== undefined) expect(read.grams).toBeCloseTo(grams, 9);
    else expect(read.grams).toBeUndefined();
    if (low_g !== undefined)
      expect([read.low_g, read.high_g]).toEqual([expect.closeTo(low_g, 9), expect.closeTo(high_g ?? 0, 9)]);
    else expect(read.low_g).toBeUndefined();
    expect(Boolean(read.doubts?.length)).toBe(Boolean(doubt));
    if (is === "unread") expect(read.why).toBeTruthy();
  });
});

test("the corpus holds at least a hundred lines, no two alike", () => {
  expect(new Set(lines.map((each) => each.say)).size).toBe(lines.length);
  expect(lines.length).toBeGreaterThanOrEqual(100);
});
