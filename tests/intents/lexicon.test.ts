/** The index over the word tables: every phrase is found again, singular or plural, with all its meanings. */
import { describe, expect, it } from "vitest";
import { units } from "../../data/words/units.ts";
import { compile, unitIndex, wordsOf } from "../../src/intents/found/lexicon.ts";

const lexicon = compile();
const facets = (phrase: string) => {
  const words = wordsOf(phrase);
  return lexicon.get(words[0] ?? "")?.find((each) => each.words.join(" ") === words.join(" "))?.facets;
};

describe("one phrase, all its meanings", () => {
  it.each([
    ["salt", { ingredient: "salt", dose: "salt" }],
    ["dark chocolate", { chocolate: "dark", ingredient: "dark chocolate" }],
    ["cocoa powder", { ingredient: "cocoa powder", dose: "cocoa powder" }],
    ["buttercream", { base: "buttercream" }],
    ["macarons", { count: "macarons" }],
    ["pistachio", { taste: "pistachio" }],
    ["hollow", { symptom: "hollow" }],
    ["sifted", { manner: "sifted" }],
    ["resting", { step: "rest" }],
    ["almond", { ingredient: "almond flour", taste: "almond" }],
  ])("%s", (phrase, expected) => {
    expect(facets(phrase)).toMatchObject(expected);
  });

  it("gathers the faults that share a word", () => {
    expect(facets("split")?.symptom?.split("|").sort()).toEqual(["curdled buttercream", "split ganache"]);
  });
});

it("finds singular and plural where a table has one of them", () => {
  for (const [one, many] of [
    ["macaron", "macarons"],
    ["strawberry", "strawberries"],
    ["hazelnut", "hazelnuts"],
    ["egg yolk", "egg yolks"],
    ["ganache", "ganaches"],
  ])
    expect(facets(one ?? "") && facets(many ?? ""), one).toBeTruthy();
});

it("makes no plural of a word too short or in double s", () => {
  expect(facets("bcs")?.base).toBeUndefined();
  expect(facets("gins")?.taste).toBe("gin");
  expect(facets("molas")).toBeUndefined();
});

it("files every phrase under its first word, none empty, the longest first", () => {
  let phrases = 0;
  for (const first of lexicon.words())
    (lexicon.get(first) ?? []).forEach(({ words }, at, all) => {
      phrases += 1;
      expect(words[0]).toBe(first);
      expect(words.every((word) => word.length > 0)).toBe(true);
      expect(words.length).toBeLessThanOrEqual(all[at - 1]?.words.length ?? Number.POSITIVE_INFINITY);
    });
  expect(phrases).toBeGreaterThan(1000);
});

it("spells phrases as sentences are spelt: accents, apostrophes and hyphens make no difference", () => {
  expect(wordsOf("Crème fraîche")).toEqual(["creme", "fraiche"]);
  expect(wordsOf("confectioner's sugar")).toEqual(["confectioners", "sugar"]);
  expect(wordsOf("freeze-dried")).toEqual(["freeze", "dried"]);
});

describe("units", () => {
  const index = unitIndex();

  it("holds every spelling of every unit", () => {
    for (const row of units)
      for (const word of [...row.words, ...(row.risky ?? [])]) {
        const found = [...index.values()].flat().some(
          (each) =>
            each.unit === row.unit &&
            wordsOf(word)
              .join("")
              .startsWith(each.words.filter((part) => /[a-z%°]/.test(part)).join("")),
        );
        expect(found, `${row.unit}: ${word}`).toBe(true);
      }
  });

  it("tries fluid ounces before anything that starts alike, and sure meanings before risky ones", () => {
    expect(index.get("fl")?.[0]?.words.length).toBeGreaterThanOrEqual(
      index.get("fl")?.at(-1)?.words.length ?? 0,
    );
    for (const list of index.values())
      list.forEach((each, at) => {
        const before = list[at - 1];
        if (before && before.words.length === each.words.length)
          expect(Number(before.risky)).toBeLessThanOrEqual(Number(each.risky));
      });
  });
});
