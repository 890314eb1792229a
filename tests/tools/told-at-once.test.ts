/**
 * What the baker would have to ask on for is said with the answer, and in one sentence: the way down from too much, what
 * a number without a place needs, what a question was read as, what a list without a name gives. A flavor is 3-5 % of a
 * buttercream and 3-4 % of a ganache (common practice), vanilla extract 1-2 %, gel color 0.5-1.5 % of the batter (from
 * memory); a shell takes 0.53 × d² g of batter, d in cm and 3.8 where none is said, of 96 % of it (from memory).
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

describe("over the range, the plain mix that brings it down", () => {
  // added base, low = flavor / top % - base, high = flavor / middle % - base: flavor = p × base, solved for what is added
  it.each([
    // 9 / 5 % - 150 = 30, 9 / 4 % - 150 = 75
    [
      "put 9 g of coconut flavour into 150 g smbc, too strong?",
      "add 30 to 75 g plain buttercream to bring it down",
    ],
    // 20 / 4 % - 350 = 150, 20 / 3.5 % - 350 = 221.4
    ["is 20 g pistachio in 350 g ganache too much", "add 150 to 221 g plain ganache to bring it down"],
    // 6 / 2 % - 200 = 100, 6 / 1.5 % - 200 = 200
    [
      "6 g vanilla extract in 200 g buttercream, too much?",
      "add 100 to 200 g plain buttercream to bring it down",
    ],
    // gel color up to 1.5 %, middle 1 %: 9 / 1.5 % - 460 = 140, 9 / 1 % - 460 = 440
    ["9 g gel color in 460 g batter, too much?", "add 140 to 440 g plain batter to bring it down"],
  ])("%s", async (say, advice) => {
    const answer = await baker().one(say);
    expect([answer.status, answer.headline]).toEqual(["answered", expect.stringContaining(advice)]);
    // a check's figures stay as they are: the share, and what it should be
    expect(answer.figures?.map(({ name, unit }) => [name, unit])).toEqual([
      ["share", "%"],
      [expect.any(String), "g"],
    ]);
  });

  it("says nothing of that within the range", async () => {
    // 9 / 230 = 3.913 %
    const { headline, figures } = await baker().one("is 9 g mint in 230 g buttercream ok");
    expect(headline).toMatch(/^3\.91? %: within the 3-5 %/);
    expect(figures?.[0]).toEqual({ name: "share", value: expect.closeTo(900 / 230, 9), unit: "%" });
    expect(headline).not.toMatch(/bring|add/);
  });
});

it("a number without a place is named, with what to do about it", async () => {
  const { status, question } = await baker().one("230 g buttercream 9 g flavor 30 g sugar how much vanilla");
  expect([status, question]).toEqual([
    "asking",
    "What is the 9 g for? I haven't found its place yet: ask once more with what it is of, or without it.",
  ]);
});

describe("not understood", () => {
  it("is one sentence, with a guess behind it where there is one", async () => {
    for (const say of ["make snowy shells my default", "florble the wix"]) {
      const { status, headline } = await baker().one(say);
      expect([say, status]).toEqual([say, "declined"]);
      expect(headline).toMatch(
        /^I didn't understand that(?:: did you mean something about [^?]+\?|\.) I weigh/,
      );
    }
  });

  it("what is no baker's matter is left to others, and kindly", async () => {
    expect((await baker().one("tell me a joke")).headline).toMatch(
      /^I keep to filled macarons; music, film and games I leave to others\. Try "/,
    );
  });
});

describe("how a question was read", () => {
  const read = async (...says: string[]) => {
    const talk = baker();
    for (const say of says) await talk.ask(say);
    return (await talk.one("how did you read that?")).items?.map(({ text }) => String(text)) ?? [];
  };

  it("names a moment and a plan by words, and says what was in the record and not in the sentence", async () => {
    const lines = await read("24 macarons for tomorrow 3pm when do i start", "whats next");
    expect(lines).toContain("for day, due: 1 d ahead 15:00 (from your record)");
    expect(lines).toContain("for day, macarons: 24 (from your record)");
    expect(lines).toContain("for day, the plan that you have (from your record)");
    expect(lines.join("\n")).not.toMatch(/\d{6}|several/);
  });

  it("what was said stays said", async () => {
    const lines = await read("24 macarons for tomorrow 3pm when do i start");
    expect(lines).toContain("for day, macarons: 24 (said)");
    expect(lines).toContain("for day, due: 1 d ahead 15:00 (said)");
  });
});

describe("a list that has no name yet", () => {
  const list = "save recipe: 130 g almond flour; 130 g powdered sugar; 100 g egg whites; 90 g sugar";

  it.each(["how many macarons is that", "how many macarons from this", "and how many macs does that make?"])(
    "gives its macarons all the same: %s",
    async (say) => {
      const talk = baker();
      expect((await talk.one(list)).status).toBe("asking");
      // 130 + 130 + 100 + 90 = 450 g; floor(450 × 0.96 / (0.53 × 3.8²)) = floor(56.4) = 56 shells
      expect((await talk.one(say)).figures).toContainEqual({ name: "macarons", value: 28, unit: "macarons" });
    },
  );

  it("takes its name in the next turn as before", async () => {
    const talk = baker();
    await talk.one(list);
    await talk.one("snowy");
    expect(talk.record().formulas.map(({ name, lines }) => [name, lines.length])).toEqual([["snowy", 4]]);
  });
});

describe("a sum that never ends", () => {
  it.each([
    // 526 / 3 = 175.333..., 45 / 7 = 6.428571...
    ["1/3 of 526", "175.33 = 1 / 3 × 526, rounded"],
    ["45/7", "6.4286 = 45 / 7, rounded"],
    ["3/4 of 260", "195 = 3 / 4 × 260"],
    ["12.5 x 0.25", "3.125 = 12.5 × 0.25"],
  ])("%s", async (say, headline) => {
    expect((await baker().one(say)).headline).toBe(headline);
  });
});

it.each([
  ["my mat has 1 circle", /^1 shell a tray/],
  ["note: pistachio, 1 of them, 9 out of 10", /pistachio, 1 macaron, /],
])("one is one: %s", async (say, headline) => {
  expect((await baker().one(say)).headline).toMatch(headline);
});
