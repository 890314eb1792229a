/** What a question asks the amount of, and answers that have no figure of it: then it asks, or declines. */
import { describe, expect, it } from "vitest";
import { against, askedFor, holds } from "../../src/intents/chosen/asked-for.ts";
import { baker, readings } from "../support/ask.ts";

const asked = (sentence: string) => askedFor(readings(sentence)[0] ?? expect.fail("no question"));
const figure = (name: string, unit = "g") => [{ name, value: 1, unit }];

describe("what is asked for", () => {
  it.each([
    ["how much cream for 200 g dark chocolate", ["cream"]],
    ["how many eggs do i crack for 36 macarons", ["egg", "whites"]],
    ["how much white choc ganache can it flavour", ["ganache"]],
  ])("%s", (sentence, names) => expect(asked(sentence)?.names).toEqual(expect.arrayContaining(names)));

  it.each([
    ["how long do they keep", "d"],
    ["what temperature for shells", "°C"],
    ["how many grams is 2 oz", "g"],
  ])("%s", (sentence, unit) => expect(asked(sentence)?.units).toContain(unit));

  it.each(["how much", "230 g buttercream", "note: mint, far too strong"])("nothing sure: %s", (sentence) =>
    expect(asked(sentence)?.names).toBeUndefined(),
  );
});

describe("a figure of it", () => {
  it("is needed of those that weigh, and only of them", () => {
    const cream = asked("how much cream for 200 g buttercream");
    expect(holds("ganache", cream, figure("cream"))).toBe(true);
    expect(holds("dose", cream, figure("flavor"))).toBe(false);
    expect(holds("note", cream, figure("rating", ""))).toBe(true);
    expect(holds("dose", cream, [])).toBe(true);
  });
  it("a time is needed of a length", () => {
    const long = asked("how long do shells rest");
    expect(holds("shells", long, figure("batter"))).toBe(false);
    expect(holds("method", long, figure("rest", "min"))).toBe(true);
  });
  it("speaks against those that can't have it", () => {
    const rum = asked("how much rum for 200 g ganache");
    expect(against("ganache", rum)).toBeLessThan(0);
    expect(against("dose", rum)).toBe(0);
    expect(against("timer", rum)).toBe(0);
  });
});

describe("said to the program", () => {
  it.each([
    ["how much cream for 200 g buttercream", "declined"],
    ["how much glucose for 300 g ganache", "declined"],
    ["xanthan gum for 300 g buttercream?", "declined"],
    ["how much zorb for 220 g dark ganache", "asking"],
    ["what temperature for 24 macarons", "asking"],
  ])("no number for: %s", async (sentence, status) => {
    const answer = await baker().one(sentence);
    expect(answer.figures ?? []).toEqual([]);
    expect(["asking", "declined"]).toContain(answer.status);
    expect(answer.status).toBe(status);
  });
  it("the parts of a mix before the question are its bowl: 3-4 % of 160 + 128 + 24 g", async () => {
    const { figures = [], tool } = await baker().one(
      "base: 160 g dark chocolate, 128 g cream, 24 g butter. how much hazelnut flavor should go in?",
    );
    expect(tool).toBe("dose");
    expect([figures[0]?.low, figures[0]?.high]).toEqual([9.36, 12.48]);
  });
});
