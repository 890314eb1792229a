/** What bakers were heard to say: counted by hand on a few sentences, and the kept counts are those of the conversations. */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import kept from "../../data/heard.json" with { type: "json" };
import { heardPair, heardWords, likely } from "../../src/intents/text/heard.ts";
import { hear } from "../../src/intents/text/hearing.ts";
import { root } from "../support/built.ts";

describe("counting", () => {
  const few = hear(["how much flavor", "How much cream?", "and how much for 230 g", "much too much, 3 g"]);
  it("keeps words and neighbours that were heard three times, any number as one", () => {
    // "much" five times, "how" three; how-much three times
    expect(few.words.split(" ").filter((_, at) => at % 2 === 0)).toEqual(
      expect.arrayContaining(["much", "how", "^", "$"]),
    );
    expect(few.words).not.toMatch(/cream|flavor/);
    expect(few.pairs).toContain("\nhow\tmuch ");
    expect(few.pairs).not.toContain("cream");
    // 3 + 4 + 6 + 6 words, numbers and signs, and a begin and an end to each
    expect(few.total).toBe(19 + 8);
  });
});

it("the kept counts are those of the learned conversations: npm run hear makes them anew", () => {
  const folder = join(root, "tests/questions/learned");
  const said = readdirSync(folder)
    .sort()
    .flatMap((name) => readFileSync(join(folder, name), "utf8").split("\n").filter(Boolean))
    .flatMap((line) => (JSON.parse(line) as { turns: { say: string }[] }).turns.map(({ say }) => say));
  expect(kept).toEqual(hear(said));
});

describe("how likely", () => {
  it("a word is where it is often heard more than elsewhere", () => {
    expect(heardPair("how", "much")).toBeGreaterThan(heardPair("how", "cream"));
    expect(likely("how", "much", "flavor")).toBeGreaterThan(likely("how", "mulch", "flavor"));
    expect(likely("egg", "whites", "$")).toBeGreaterThan(likely("egg", "white", "$"));
    expect(likely(undefined, "the", undefined)).toBeGreaterThan(likely(undefined, "thy", undefined));
  });
  it("all words behind one together are at most certain", () => {
    let sum = 0;
    for (const word of heardWords()) sum += Math.exp(likely("how", word, undefined));
    expect(sum).toBeLessThanOrEqual(1.05);
  });
});
