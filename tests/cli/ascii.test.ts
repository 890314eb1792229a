/** Answers where only ASCII can be shown: other letters, the same numbers. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inAscii } from "../../src/cli/ascii.ts";
import { answerLines } from "../../src/cli/chat/lines.ts";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { turnText } from "../../src/cli/plain.ts";
import type { Answer } from "../../src/tools/contract/index.ts";

const isAscii = /^[\n -~]*$/;

describe("a text", () => {
  it.each([
    ["176.7 °C = 350 °F", "176.7 C = 350 F"],
    ["°F = °C × 9/5 + 32", "F = C x 9/5 + 32"],
    ["−18 °C", "-18 C"],
    ["purée, crème brûlée", "puree, creme brulee"],
    ["€12.50", "EUR 12.50"],
    ["0.53 × d² g", "0.53 x d^2 g"],
    ["1½ cups, ¾ cup, ⅓ cup", "1 1/2 cups, 3/4 cup, 1/3 cup"],
    ["“pistachio” – my best…", '"pistachio" - my best...'],
    ["plain already", "plain already"],
    ["🍪", "?"],
  ])("%s", (text, expected) => {
    expect(inAscii(text)).toBe(expected);
  });

  it("of any kind comes out in ASCII, and one in ASCII as it is", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (text) => {
        expect(inAscii(text)).toMatch(/^\p{ASCII}*$/u);
      }),
    );
    fc.assert(fc.property(fc.string({ unit: "binary-ascii" }), (text) => inAscii(text) === text));
  });
});

describe("an answer", () => {
  const answer: Answer = {
    tool: "recall",
    status: "answered",
    headline: "148 °C, the median of 3 notes – crème brûlée",
    figures: [{ name: "oven", low: 146, high: 150, unit: "°C" }],
    items: [{ flavors: ["crème brûlée"], oven_c: 148, price: "€3.20" }],
    steps: [{ name: "Purée", start: "2026-03-14T09:00:00", end: "2026-03-14T10:00:00", hands: true }],
    rule: { text: "°F = °C × 9/5 + 32", basis: "published", source: "NIST SP 811 § B.8" },
    cautions: ["5 °C (41 °F) or below"],
  };

  it.each([20, 40, 80, 100])("is all ASCII and keeps to %d columns", (columns) => {
    for (const { text } of answerLines(answer, columns, ascii)) {
      expect(text).toMatch(isAscii);
      expect(text.length).toBeLessThanOrEqual(columns);
    }
  });

  it("stays as it is where more can be shown", () => {
    const text = turnText({ asked: "", answers: [answer] }, 80, false, drawn);
    for (const part of ["°C", "×", "crème brûlée", "€3.20"]) expect(text).toContain(part);
  });
});
