/** Walking a cue gives what its regular expression gives, for every cue of every calculator and thousands of masks. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { questions } from "../../../src/intents/converse.ts";
import { understanding } from "../../../src/intents/understanding.ts";
import { sign } from "../../../src/tools/lib/cue.ts";
import { cueTable, hitsIn } from "../../../src/tools/lib/cue-table.ts";
import { tokensOf, walkOf, walks } from "../../../src/tools/lib/cue-walk.ts";
import { tools } from "../../../src/tools/registry.ts";

const all = understanding(tools);
const learned = join(import.meta.dirname, "../../questions/learned");
const sentences = [
  ...tools.flatMap((tool) => [...tool.examples, ...tool.elsewhere]).map(({ say }) => say),
  ...readdirSync(learned)
    .flatMap((name) => readFileSync(join(learned, name), "utf8").split("\n").filter(Boolean))
    .flatMap((line) => (JSON.parse(line) as { turns: { say: string }[] }).turns.map(({ say }) => say))
    .filter((_, at) => at % 6 === 0),
];
const masks = [...new Set(sentences.flatMap((say) => questions(say, all).map(({ mask }) => mask)))];
const patterns = [...new Set(tools.flatMap((tool) => tool.cues).map(({ pattern }) => pattern))];
const walked = patterns.flatMap((pattern) => {
  const walk = walkOf(pattern);
  return walk ? [{ pattern, walk, regex: sign(pattern) }] : [];
});

it("walks most cues", () => {
  expect(walked.length / patterns.length).toBeGreaterThan(0.7);
});

it("finds what the regular expression finds", () => {
  const differ: string[] = [];
  for (const mask of masks) {
    const tokens = tokensOf(mask);
    for (const { pattern, walk, regex } of walked)
      if (walks(walk, tokens) !== regex.test(mask)) differ.push(`${pattern} on: ${mask}`);
  }
  expect(differ.slice(0, 5)).toEqual([]);
});

it("finds the same in words put together at random", () => {
  const words = [
    "how",
    "much",
    "of",
    "the",
    "and",
    "ganache<base=ganache>",
    "230_g<weight>",
    "milk<ingredient=milk>",
  ];
  const samples = walked.filter(({ pattern }) => /much|{base|{weight/.test(pattern)).slice(0, 200);
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...words), { minLength: 1, maxLength: 16 }), (tokens) => {
      for (const { pattern, walk, regex } of samples)
        expect(walks(walk, tokensOf(tokens.join(" "))), pattern).toBe(regex.test(tokens.join(" ")));
    }),
    { numRuns: 200 },
  );
});

describe("patterns that are walked or not", () => {
  it.each([
    ["how much {dose}", true],
    ["(?:how|hw) (?:much|many) .. {base=(ganache|buttercream)}", true],
    ["{weight} (?:of )?(?:the |my )*{base} now(?: please)?$", true],
    ["flavou?r", true],
    ["flavou?r|taste", true],
    ["^a|b", false],
    ["\\S*<number,fraction> .. {color}", false],
    ["(?:a|b ) c", false],
    ["{unit=\\S+}", false],
  ])("%s", (pattern, can) => expect(walkOf(pattern) !== undefined).toBe(can));
});

it("the table passes over no cue that matches", () => {
  const hits = hitsIn(cueTable(tools));
  const whole = new Map(patterns.map((pattern) => [pattern, sign(pattern)]));
  const missed = masks.flatMap((mask) =>
    tools.flatMap(({ name, cues }, at) => {
      const found = new Set(hits(mask)[at]?.map((hit) => hit.at));
      const differ = cues.filter(({ pattern }, place) => found.has(place) !== whole.get(pattern)?.test(mask));
      return differ.map(({ pattern }) => `${name} ${pattern}: ${mask}`);
    }),
  );
  expect(missed).toEqual([]);
});
