/** Ten thousand turns that nobody would type: none ends the program, none gets a number that is none. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { chance } from "../support/chance.ts";
import { fuzz, lines, unsound } from "../support/fuzz.ts";

describe("ten thousand turns", () => {
  it.each(Array.from({ length: 10 }, (_, seed) => [1001 + seed]))(
    "a thousand from seed %i",
    async (seed) => {
      expect(await fuzz(1000, seed)).toEqual([]);
    },
    120_000,
  );
});

it("the same seed makes the same lines, another makes others", () => {
  const from = (seed: number) => Array.from({ length: 50 }, lines(chance(seed)));
  expect(from(1)).toEqual(from(1));
  expect(from(1)).not.toEqual(from(2));
  expect(new Set(from(1)).size).toBeGreaterThan(45);
});

describe("what is no number is seen", () => {
  const with_ = (more: Partial<Answer>): Answer => ({
    tool: "dose",
    status: "answered",
    headline: "x",
    ...more,
  });
  it.each([
    with_({ figures: [{ name: "flavor", value: Number.NaN, unit: "g" }] }),
    with_({ figures: [{ name: "flavor", low: 1, high: Number.POSITIVE_INFINITY, unit: "g" }] }),
    with_({ figures: [{ name: "flavor", value: -1, unit: "g" }] }),
    with_({ headline: "NaN g flavor" }),
    with_({ working: ["230 × undefined"] }),
  ])("$headline $figures $working", (answer) => {
    expect(unsound(answer, "how much flavor")).toBeDefined();
  });
  it("and what is one isn't taken for it", () => {
    expect(unsound(with_({ figures: [{ name: "result", value: -18, unit: "°C" }] }), "")).toBeUndefined();
    expect(unsound(with_({ headline: "NaN kept" }), "note: NaN")).toBeUndefined();
  });
});
