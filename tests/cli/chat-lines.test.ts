import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { answerLines } from "../../src/cli/chat/lines.ts";
import { shortened, width } from "../../src/cli/chat/text.ts";
import { styleOf, type Tone } from "../../src/cli/chat/tones.ts";
import { wrapped } from "../../src/cli/chat/wrap.ts";
import type { Answer, Figure } from "../../src/tools/contract/index.ts";
import { asking, day, dose, list, notes, recipe, why } from "./chat-answers.ts";

const text = (answer: Answer, columns: number) =>
  answerLines(answer, columns)
    .map((line) => line.text)
    .join("\n");

describe("an answer", () => {
  it("says the number first, then rule, assumption and caution, each with its word", () => {
    expect(answerLines(dose, 80)).toEqual([
      { text: "6.9 to 11.5 g flavor", tone: "headline" },
      { text: "  Rule: 3-5 % of the buttercream's weight (common practice)", tone: "rule" },
      { text: "  Assumed: a concentrated flavor", tone: "assumed" },
      { text: "! Caution: The directions on your bottle are the limit.", tone: "caution" },
    ]);
  });

  it("lines up the figures that the headline doesn't say, and names a source", () => {
    expect(text(recipe, 80)).toBe(`Times 1.5, for 72 shells
  almond flour    188 g
  powdered sugar  188 g
  whites          150 g (143 to 158)
  Rule: every line times the same factor; whites within 5 % (published: a
    textbook on scaling)`);
  });

  it("lines a list up where it fits", () => {
    expect(text(list, 80)).toBe(`2 timers
  shells                 Sat 14 Mar 09:50  12 min left      running
  ganache in the fridge  Sat 14 Mar 11:08  1 h 30 min left  running`);
  });

  it("wraps a list where it doesn't", () => {
    expect(text(list, 40)).toBe(`2 timers
  shells, Sat 14 Mar 09:50, 12 min left,
    running
  ganache in the fridge, Sat 14 Mar
    11:08, 1 h 30 min left, running`);
  });

  it("puts the baker's own words under the facts", () => {
    expect(text(notes, 60)).toBe(`2 batches with raspberry
          8 Mar  1 Mar
  rating  9      8      +1
  2026-03-01  raspberry        rating 8
    raspberry, a bit hollow on the second tray, oven ran hot
    I think
  2026-03-08  raspberry, rose  rating 9
    good feet`);
  });

  it("names the day of a step where it changes", () => {
    expect(text(day, 60)).toBe(`Start on Friday at 18:00
  Fri 13 Mar   18
  18:00-       ─────────────────→  Age the whites, to Sat 14
                                   Mar 06:00
  Sat 14 Mar   06             07
  06:00-07:10  ■■■■■■■■■■■■■■■■■■  Meringue and macaronage,
                                   then pipe four trays
  ■ your hands  ─ goes by itself
! Caution: Two trays fit at once: the last tray rests 20 min
    longer than the first, and that is within the rule.`);
  });

  it("asks once, not twice", () => {
    expect(text(asking, 80)).toBe(asking.headline);
    expect(text({ ...asking, headline: "One thing is missing." }, 80)).toContain(`  ${asking.question}`);
  });

  it("shows the sum when she asks why, and only then", () => {
    expect(text(why, 80)).toContain("    230 × 3 / 100 = 6.9 g");
    expect(text({ ...dose, working: why.working ?? [] }, 80)).not.toContain("×");
  });

  it("lets nothing through that would move the cursor", () => {
    expect(
      text(
        { tool: "note", status: "answered", headline: "a\u001b[2Jb\nc", items: [{ text: "\u0007x\u009b" }] },
        80,
      ),
    ).toBe("a[2Jb c\n  x");
  });
});

describe("figures", () => {
  const shown = (headline: string, figures: Figure[]) =>
    text({ tool: "dose", status: "answered", headline, figures }, 80).split("\n").slice(1);

  it.each<[string, string, Figure[], string[]]>([
    ["said as it is", "200 g cream", [{ name: "cream", value: 200, unit: "g" }], []],
    ["said rounded", "188 g almond flour", [{ name: "almond flour", value: 187.5, unit: "g" }], []],
    [
      "a range beside a default",
      "200 g cream",
      [{ name: "cream", value: 200, low: 180, high: 220, unit: "g" }],
      ["  cream  200 g (180 to 220)"],
    ],
    [
      "the same number for another thing",
      "12 macarons",
      [
        { name: "macarons", value: 12, unit: "macarons" },
        { name: "trays", value: 12, unit: "trays" },
      ],
      ["  trays  12 trays"],
    ],
    [
      "the same weight of another thing",
      "12 g sugar",
      [
        { name: "sugar", value: 12, unit: "g" },
        { name: "salt", value: 12, unit: "g" },
      ],
      ["  salt  12 g"],
    ],
    ["a ratio", "Firm", [{ name: "ratio", value: 2, unit: ":1" }], ["  ratio  2:1"]],
    ["money", "Made", [{ name: "cost", value: 12.5, unit: "USD" }], ["  cost  12.50 USD"]],
    ["no unit", "Done", [{ name: "result", value: 0.3333333, unit: "" }], ["  result  0.33"]],
    ["one end of a range", "Done", [{ name: "rest", low: 30, unit: "min" }], ["  rest  from 30 min"]],
    [
      "a part of a longer number",
      "1200 g in all",
      [{ name: "cream", value: 200, unit: "g" }],
      ["  cream  200 g"],
    ],
    [
      "one of what is counted",
      "17 g batter",
      [
        { name: "macarons", value: 1, unit: "macarons" },
        { name: "boxes", value: 1, unit: "boxes" },
        { name: "whites", value: 11, unit: "whites" },
      ],
      ["  macarons   1 macaron", "  boxes      1 box", "  whites    11 whites"],
    ],
    ["seconds keep their s", "Done", [{ name: "pour", value: 1, unit: "s" }], ["  pour  1 s"]],
    [
      "a unit that is the name",
      "perishable",
      [{ name: "aw", value: 0.887, low: 0.867, high: 0.907, unit: "aw" }],
      ["  aw  0.89 (0.87 to 0.91)"],
    ],
    ["singular and plural", "1 tray", [{ name: "trays", value: 1, unit: "trays" }], []],
  ])("%s", (_name, headline, figures, lines) => {
    expect(shown(headline, figures)).toEqual(lines);
  });
});

describe("at any width", () => {
  const all = [dose, recipe, list, notes, day, asking, why];

  it.each([40, 60, 120])("fits %i columns and drops no word", async (columns) => {
    for (const answer of all) {
      const lines = answerLines(answer, columns);
      for (const line of lines) expect(width(line.text), line.text).toBeLessThanOrEqual(columns);
      const words = (wide: number) =>
        answerLines(answer, wide)
          .flatMap((line) => line.text.split(/[\s,]+/))
          // a chart is another at another width; its names and days stay
          .filter((word) => (answer.steps ? /\p{L}/u.test(word) : word !== ""));
      expect(words(columns)).toEqual(words(1000));
    }
    const screen = all.map((answer) => text(answer, columns)).join("\n\n");
    await expect(`${screen}\n`).toMatchFileSnapshot(`chat-lines-${columns}.txt`);
  });

  it("wraps any text without losing a character or passing the edge", () => {
    const word = fc
      .string({ unit: "grapheme", minLength: 1, maxLength: 30 })
      .filter((each) => !/\s/.test(each));
    fc.assert(
      fc.property(fc.array(word), fc.integer({ min: 10, max: 60 }), (words, columns) => {
        const lines = wrapped(words.join(" "), columns, { first: "- ", rest: "  " });
        for (const line of lines) expect(width(line)).toBeLessThanOrEqual(columns);
        expect(lines.join("").replace(/\s/g, "").slice(1)).toBe(words.join(""));
      }),
    );
  });
});

describe("looks", () => {
  it("counts cells as a terminal does", () => {
    expect(["a", "é", "e\u0301", "½", "°", "漢", "👩‍🍳", "🇫🇷", "\u200d", "♥"].map(width)).toEqual([
      1, 1, 1, 1, 1, 2, 2, 2, 0, 1,
    ]);
  });

  it("shortens in the middle, so that what differs at the end stays", () => {
    expect(shortened("shells resting tray 1", 16, "…")).toBe("shells re…tray 1");
    expect(width(shortened("shells resting tray 1", 16, ".."))).toBeLessThanOrEqual(16);
    expect(shortened("short", 16, "…")).toBe("short");
  });

  it("uses only weight without color", () => {
    const tones: Tone[] = ["asked", "headline", "rule", "caution", "ring", "trouble", "quiet"];
    for (const tone of tones)
      expect(Object.keys(styleOf(tone, false)).filter((key) => key !== "bold")).toEqual([]);
    expect(styleOf("headline", false)).toEqual({ bold: true });
  });
});
