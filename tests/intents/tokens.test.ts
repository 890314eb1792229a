/** Words, numbers and signs: what digits mean with points and commas in them, and where each piece stood. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalise } from "../../src/intents/text/normalise.ts";
import { decimal, tokenise } from "../../src/intents/text/tokens.ts";

describe("digits", () => {
  it.each([
    ["230", 230],
    ["1.5", 1.5],
    ["1,5", 1.5],
    ["12,5", 12.5],
    ["0,125", 0.125],
    ["0.125", 0.125],
    [".5", 0.5],
    [",5", 0.5],
    ["1,000", 1000],
    ["12,500", 12500],
    ["1,250,000", 1250000],
    ["1,250.5", 1250.5],
    ["1.250,5", 1250.5],
    ["1.250", 1.25],
    ["1000", 1000],
    ["007", 7],
    ["1,50", 1.5],
    ["1234,5", 1234.5],
  ])("%s is %d", (digits, value) => {
    expect(decimal(digits)).toBe(value);
  });

  it("reads back every number that is written out, with a point or with a comma", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999 }),
        fc.integer({ min: 1, max: 99 }),
        (whole, hundredths) => {
          const part = String(hundredths).padStart(2, "0");
          expect(decimal(`${whole}.${part}`)).toBeCloseTo(whole + hundredths / 100, 9);
          expect(decimal(`${whole},${part}`)).toBeCloseTo(whole + hundredths / 100, 9);
        },
      ),
    );
  });

  it("takes commas between groups of three for thousands", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 999_999_999 }), (value) => {
        expect(decimal(value.toLocaleString("en-US"))).toBe(value);
      }),
    );
  });
});

describe("pieces", () => {
  const texts = (typed: string) => tokenise(normalise(typed)).map((token) => token.text);

  it.each([
    ["230g", ["230", "g"]],
    ["2tbsp", ["2", "tbsp"]],
    ["1.5x", ["1.5", "x"]],
    ["what's it", ["whats", "it"]],
    ["3-5%", ["3", "-", "5", "%"]],
    ["$16/kg", ["$", "16", "/", "kg"]],
    ["3:30pm", ["3", ":", "30", "pm"]],
    ["230 g, please.", ["230", "g", ",", "please", "."]],
    ["100g.", ["100", "g", "."]],
  ])("%s falls into %j", (typed, pieces) => {
    expect(texts(typed)).toEqual(pieces);
  });

  it("knows which pieces stood apart", () => {
    expect(tokenise("230 g + 45g").map((token) => token.gap)).toEqual([true, true, true, true, false]);
  });

  it("keeps every character that isn't a space, each once and in its place", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (typed) => {
        const text = normalise(typed);
        const rest = [...text];
        let end = 0;
        for (const { at } of tokenise(text)) {
          expect(at[0]).toBeGreaterThanOrEqual(end);
          expect(at[1]).toBeGreaterThan(at[0]);
          expect(text.slice(end, at[0]).trim()).toBe("");
          end = at[1];
        }
        expect(text.slice(end).trim()).toBe("");
        expect(rest.join("")).toBe(text);
      }),
      { numRuns: 1000 },
    );
  });
});
