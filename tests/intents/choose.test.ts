/** The points that cues add up to: the strongest counts whole, the rest little, what speaks against in full. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { score } from "../../src/intents/chosen/choose.ts";
import type { Tool } from "../../src/tools/contract/index.ts";
import { cues } from "../../src/tools/lib/cue.ts";

type Cues = readonly (readonly [weight: number, ...patterns: string[]])[];

const fake = (name: string, ...list: Cues): Tool => ({ name, cues: cues(...list) }) as unknown as Tool;
const points = (mask: string, ...list: Cues) => score({ mask }, [fake("x", ...list)])[0]?.points;

const sums: readonly (readonly [string, Cues, number])[] = [
  ["nothing that fits is nothing", [[3, "zzz"]], 0],
  ["one cue counts whole", [[3, "flavor"]], 3],
  [
    "a second counts a quarter",
    [
      [4, "flavor"],
      [2, "how much"],
    ],
    4.5,
  ],
  [
    "many hints stay below two more",
    [
      [3, "flavor"],
      [3, "how", "much", "for", "of", "the", "cream"],
    ],
    5,
  ],
  [
    "what speaks against counts in full",
    [
      [4, "flavor"],
      [-3, "how much"],
      [-2, "cream"],
    ],
    -1,
  ],
  ["two patterns of one cue are two cues", [[2, "flavor", "cream"]], 2.5],
];

describe("points", () => {
  it.each(sums)("%s", (_, list, expected) => {
    expect(points("how much flavor for of the cream", ...list)).toBe(expected);
  });
});

describe("the little language of cues", () => {
  it.each([
    ["{weight}", "i have 230_g<weight>", true],
    ["{weight}", "i have 230<number>", false],
    ["{base}", "buttercream<base=buttercream>", true],
    ["{base=ganache}", "buttercream<base=buttercream>", false],
    ["{base=ganache}", "milk_choc_ganache<base=ganache,chocolate=milk>", true],
    ["{chocolate=milk}", "milk_choc_ganache<base=ganache,chocolate=milk>", true],
    ["{chocolate}", "ganache<base=ganache>", false],
    ["how much .. {dose}", "how much flavor<dose=flavor>", true],
    ["how much .. {dose}", "how much of that lovely flavor<dose=flavor>", true],
    ["how much .. {dose}", "how much a b c d e f g h i j k l m n o flavor<dose=flavor>", false],
    ["how much .. {dose}", "flavor<dose=flavor> how much", false],
    ["rest", "the rest<step=rest>", false],
    ["rest", "the restless", false],
    ["rest", "the rest is", true],
    ["{fraction}", "half<number,fraction>", true],
    ["{factor}", "double<factor>", true],
    ["{ingredient=almond flour}", "almond_flour<ingredient=almond_flour>", true],
  ])("%s in %s: %s", (pattern, mask, fits) => {
    expect(points(mask, [1, pattern])).toBe(fits ? 1 : 0);
  });
});

it("puts the best first and keeps the registry's order on a tie", () => {
  const tools = [fake("a", [2, "one"]), fake("b", [3, "one"]), fake("c", [2, "one"]), fake("d", [3, "one"])];
  expect(score({ mask: "one" }, tools).map(({ tool }) => tool.name)).toEqual(["b", "d", "a", "c"]);
});

it("shows every cue that fitted, with its weight", () => {
  expect(
    score({ mask: "one two" }, [fake("a", [2, "one"], [-1, "two"], [4, "three"])])[0]?.because(),
  ).toEqual(["+2 one", "-1 two"]);
});

it("gives each calculator the same points whoever stands beside it, in whatever order", () => {
  const weights = fc.array(
    fc.tuple(fc.integer({ min: -4, max: 4 }), fc.constantFrom("one", "two", "three")),
    { maxLength: 6 },
  );
  fc.assert(
    fc.property(fc.array(weights, { minLength: 1, maxLength: 5 }), (lists) => {
      const tools = lists.map((list, at) =>
        fake(`t${at}`, ...list.map(([weight, word]) => [weight, word] as const)),
      );
      const alone = new Map(
        tools.map((tool) => [tool.name, score({ mask: "one three" }, [tool])[0]?.points]),
      );
      for (const each of score({ mask: "one three" }, [...tools].reverse()))
        expect(each.points).toBe(alone.get(each.tool.name));
    }),
  );
});
