/** A turn as plain text: the number first, the rest below it, color only where it is wanted. */
import { expect, it } from "vitest";
import { turnText } from "../../src/cli/plain.ts";
import type { Answer } from "../../src/tools/contract/index.ts";

const answer: Answer = {
  tool: "dose",
  status: "answered",
  headline: "6.9 to 11.5 g flavor",
  figures: [{ name: "flavor", low: 6.9, high: 11.5, unit: "g" }],
  rule: { text: "3-5 % of the buttercream's weight", basis: "common practice" },
  assumed: ["a concentrated flavor"],
  cautions: ["The directions on your bottle are the limit."],
};
const turn = { asked: "how much", answers: [answer] };

it("starts with the headline and says rule, assumption and caution below it", () => {
  const lines = turnText(turn, 100, false).split("\n");
  expect(lines[0]).toBe("6.9 to 11.5 g flavor");
  for (const part of [
    "3-5 % of the buttercream's weight",
    "common practice",
    "a concentrated flavor",
    "The directions on your bottle are the limit.",
  ])
    expect(lines.slice(1).join("\n")).toContain(part);
});

it("has no escape in it without color, and with color only some that are closed again", () => {
  expect(turnText(turn, 100, false)).not.toContain("\u001b");
  const colored = turnText(turn, 100, true);
  expect(colored).toContain("\u001b[1m6.9 to 11.5 g flavor\u001b[22m");
  // biome-ignore lint/suspicious/noControlCharactersInRegex: escapes are what is looked at
  expect(colored.replace(/\u001b\[(?:1|2|22)m/g, "")).toBe(turnText(turn, 100, false));
});

it("keeps to the width", () => {
  for (const columns of [40, 60, 100])
    for (const line of turnText(turn, columns, false).split("\n"))
      expect(line.length).toBeLessThanOrEqual(columns);
});

it("parts two answers by a blank line and gives nothing for none", () => {
  expect(turnText({ asked: "both", answers: [answer, answer] }, 100, false).split("\n\n")).toHaveLength(2);
  expect(turnText({ asked: "", answers: [] }, 100, false)).toBe("");
});

it("lets no control character of a text through to the terminal", () => {
  const said = turnText(
    { asked: "x", answers: [{ ...answer, headline: "a\u001b[31mb\u0007c" }] },
    100,
    false,
  );
  expect(said).not.toContain("\u001b");
  expect(said).not.toContain("\u0007");
});
