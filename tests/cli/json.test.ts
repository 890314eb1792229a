/** A turn as JSON: one object on one line, its numbers free of the dust of binary arithmetic, and all of it there. */
import fc from "fast-check";
import { expect, it } from "vitest";
import { turnJson } from "../../src/cli/json.ts";
import type { Answer } from "../../src/tools/contract/index.ts";

const answer: Answer = { tool: "dose", status: "answered", headline: "6.9 to 11.5 g flavor" };
const turn = (more: Partial<Answer> = {}, asked = "how much") => ({
  asked,
  answers: [{ ...answer, ...more }],
});

it("is one line, whatever the texts in it", () => {
  fc.assert(
    fc.property(fc.string({ unit: "binary" }), (text) => {
      const line = turnJson(turn({ headline: text, cautions: [text] }, text));
      expect(line).not.toMatch(/[\n\r]/);
      expect(JSON.parse(line)).toEqual(turn({ headline: text, cautions: [text] }, text));
    }),
  );
});

it("keeps twelve digits and drops the dust", () => {
  const figures = [{ name: "flavor", low: 230 * 0.03, high: 230 * 0.05, unit: "g" }];
  expect(JSON.parse(turnJson(turn({ figures }))).answers[0].figures).toEqual([
    { name: "flavor", low: 6.9, high: 11.5, unit: "g" },
  ]);
  const third = [{ name: "result", value: 1 / 3, unit: "" }];
  expect(JSON.parse(turnJson(turn({ figures: third }))).answers[0].figures[0].value).toBe(0.333333333333);
});

it("leaves out what an answer hasn't got", () => {
  expect(Object.keys(JSON.parse(turnJson(turn())).answers[0])).toEqual(["tool", "status", "headline"]);
});

it("changes no number by more than the twelfth digit", () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, noDefaultInfinity: true }), (value) => {
      const read = JSON.parse(turnJson(turn({ figures: [{ name: "x", value, unit: "g" }] }))).answers[0]
        .figures[0].value;
      expect(Math.abs(read - value)).toBeLessThanOrEqual(Math.abs(value) * 1e-11);
    }),
  );
});
