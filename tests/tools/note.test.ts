/** Notes: what is read from a batch in one breath, what is added, what is put right. Hand-read; the day is 14 March 2026. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Note } from "../../src/tools/contract/index.ts";
import { clauseText } from "../../src/tools/note/words.ts";
import { baker } from "../support/ask.ts";

/** The note that one sentence leaves in the record. */
async function noted(say: string): Promise<Note> {
  const her = baker();
  await her.ask(say);
  const [note] = her.record().notes;
  if (!note) throw new Error(`nothing noted from "${say}"`);
  return note;
}

/** The last note after several turns. */
async function lastAfter(...turns: string[]): Promise<Note | undefined> {
  const her = baker();
  for (const turn of turns) await her.ask(turn);
  return her.record().notes.at(-1);
}

describe("a batch in one breath", () => {
  test("flavor, count, fault, oven and time, beside the words", async () => {
    const say = "note: made pistachio today, 36 of them, two hollow, baked 148 c 16 min";
    expect(await noted(say)).toMatchObject({
      date: "2026-03-14",
      text: "made pistachio today, 36 of them, two hollow, baked 148 c 16 min",
      flavors: ["pistachio"],
      problems: ["hollow"],
      macarons: 36,
      oven_c: 148,
      bake_min: 16,
    });
  });

  test("doses, weights, size, trays, maturing", async () => {
    const note = await noted(
      "note lemon batch, 4 % lemon flavor in 200 g buttercream, piped 3.5 cm, 60 shells on 2 trays, matured 2 days in the fridge",
    );
    expect(note).toMatchObject({
      flavors: ["lemon"],
      doses: [{ flavor: "lemon", percent: 4 }],
      filling_g: 200,
      diameter_mm: 35,
      shells: 60,
      trays: 2,
      mature_h: 48,
    });
    expect(note.weights).toEqual([{ name: "buttercream", grams: 200 }]);
  });

  // 8 / 160 = 5 %, arithmetic
  test("a dose from two weights", async () => {
    const note = await noted("note pistachio batch, 8 g pistachio flavor in 160 g buttercream, lovely");
    expect(note.doses).toEqual([{ flavor: "pistachio", percent: 5 }]);
  });

  // (300 - 32) / 1.8 = 148.889 (NIST SP 811, B.8)
  test("an oven in °F", async () => {
    expect((await noted("note 36 pistachio macarons, oven 300 f, 15 min, rested 40")).oven_c).toBeCloseTo(
      148.889,
      3,
    );
  });

  test.each([
    ["note peach batch hollow, oven was at 165 way too hot", { oven_c: 165 }],
    ["record: raspberry, rest 30 min bake 14 min at 148", { rest_min: 30, bake_min: 14, oven_c: 148 }],
    ["could you jot down that I baked a honey batch today, 17 minutes in the oven", { bake_min: 17 }],
    ["note lime batch, rested 45 min, baked 16 min at 149 °C", { rest_min: 45, bake_min: 16, oven_c: 149 }],
    ["note: rested 30, baked 14 at 150", { rest_min: 30, bake_min: 14, oven_c: 150 }],
    ["log rose batch, syrup at 118 c, oven 152 c", { oven_c: 152 }],
    ["log fig batch, fan oven 140 c 16 min", { oven_c: 140, bake_min: 16 }],
  ])("heat and times: %s", async (say, want) => {
    expect(await noted(say)).toMatchObject(want);
  });

  test("what can't be told stays in the words", async () => {
    const note = await noted("note vanilla batch, 16 min, 1500 c");
    expect(note.text).toBe("vanilla batch, 16 min, 1500 c");
    expect(note.oven_c).toBeUndefined();
    const bare = await noted("note vanilla batch, 16 min");
    expect([bare.bake_min, bare.rest_min]).toEqual([undefined, undefined]);
  });

  test.each([
    ["note fig batch, made 28", 28],
    ["log batch of salted caramel, 24 macarons made, 3 cracked", 24],
    ["note 42 macs, lovely", 42],
    ["note mango, 5 cracked shells", undefined],
    ["note mango, lost 4 shells", undefined],
  ])("counts: %s", async (say, macarons) => {
    const note = await noted(say);
    expect(note.macarons).toBe(macarons);
    expect(note.shells).toBeUndefined();
  });

  test.each([
    ["note lemon batch 9 out of 10", 9, "9 out of 10"],
    ["note lemon batch 4/5", 8, "4/5"],
    ["note lemon batch, nine out of ten", 9, "nine out of ten"],
    ["note lemon batch, 4.5 stars", 9, "4.5 stars"],
    ["note lemon batch, rated 7", 7, "7"],
    ["note lemon batch, gave it an 8", 8, "8"],
    ["note lemon batch 11/10", 10, "11/10"],
    ["note lemon batch, two out of three trays were fine", undefined, undefined],
    ["note lemon batch, 2 of 36 cracked", undefined, undefined],
  ])("ratings: %s", async (say, rating, said) => {
    const note = await noted(say);
    expect([note.rating, note.rating_said]).toEqual([rating, said]);
  });

  test.each([
    ["log apricot batch, came out hollow", ["hollow"], []],
    ["log lemon batch, no hollows at all, lovely feet", [], ["full", "good feet"]],
    ["log mint batch, not lopsided, none of them were cracked", [], []],
    ["log mint batch, two hollow and sticky bottoms", ["hollow", "sticky bottoms"], []],
    ["log rose batch, no feet on one tray", ["no feet"], []],
    ["log plum batch, the ganache split", ["split ganache"], []],
    ["log plum batch, split the batter in two", [], []],
  ])("faults and praise: %s", async (say, problems, praise) => {
    const note = await noted(say);
    expect(note.problems).toEqual(problems);
    expect(note.praise ?? []).toEqual(praise);
  });

  test.each([
    ["log kumquat batch", ["kumquat"]],
    ["note lilac batch hollow", ["lilac"]],
    ["note lemon and raspberry macarons", ["lemon", "raspberry"]],
    ["note plum batch, better than the lemon one", ["plum"]],
    ["note: 100 g whites, 130 g almond flour, all smooth", []],
    ["note raspberry with dark chocolate ganache", ["raspberry"]],
    ["note dark chocolate batch", ["dark chocolate"]],
  ])("flavors: %s", async (say, flavors) => {
    expect((await noted(say)).flavors).toEqual(flavors);
  });
});

describe("the day", () => {
  test.each([
    ["note lemon batch", "2026-03-14"],
    ["log yestrdays batch, coffee caramel", "2026-03-13"],
    ["note for march 8: black sesame", "2026-03-08"],
    ["jot down on tuesday i made plum macarons", "2026-03-10"],
    ["log from last sunday, rose batch", "2026-03-08"],
    ["note two weeks ago, lime batch", "2026-02-28"],
    ["note for the 9th: quince", "2026-03-09"],
    ["note for dec 24: gingerbread", "2025-12-24"],
    ["note 40 macarons lemon for tomorrow's market", "2026-03-14"],
    ["note raspberry batch for the wedding on sunday", "2026-03-14"],
    ["note plum batch, sold out by eleven", "2026-03-14"],
  ])("%s", async (say, date) => {
    expect((await noted(say)).date).toBe(date);
  });

  test("a day to come can't be noted", async () => {
    expect(await baker().one("note for next sunday: rose batch")).toMatchObject({ tool: "note" });
    expect((await noted("note for next sunday: rose batch")).date).toBe("2026-03-14");
  });
});

describe("the words", () => {
  test.each([
    [
      "Please write down yesterday's batch: parma violet, oven door kept popping open",
      "yesterday's batch: parma violet, oven door kept popping open",
    ],
    ["another note. orange batch 6 out of 10 too sweet", "orange batch 6 out of 10 too sweet"],
    ["cherry batch 9/10 put that in the notes too", "cherry batch 9/10"],
    ["note to self: buy more almond flour", "buy more almond flour"],
    [
      "ok so today i made two trays of salted caramel and they were full please write that down",
      "ok so today i made two trays of salted caramel and they were full",
    ],
  ])("%s", async (say, text) => {
    expect((await noted(say)).text).toBe(text);
  });

  test("another order behind a note isn't in it", async () => {
    const her = baker();
    const answers = await her.ask(
      "Note: blackcurrant batch, 9 out of 10, feet were lovely. And start the rest timer for me",
    );
    expect(answers.map((each) => each.tool)).toEqual(["note", "timer"]);
    expect(her.record().notes[0]?.text).toBe("blackcurrant batch, 9 out of 10, feet were lovely");
  });

  test("the words of a clause are found by counting, typos or not", () => {
    expect(
      clauseText(
        "Note: lemmon batch, 9/10. And set a timer",
        "note : lemon<taste=lemon> batch<count=batches> , 9/10<number,fraction>",
      ),
    ).toBe("Note: lemmon batch, 9/10");
    expect(clauseText("only this", "only this")).toBe("only this");
  });

  test("nothing said is asked for", async () => {
    const her = baker();
    expect(await her.one("make a note")).toMatchObject({ status: "asking" });
    await her.one("cherry batch, tops smooth");
    expect(her.record().notes[0]).toMatchObject({ text: "cherry batch, tops smooth", flavors: ["cherry"] });
  });

  test("whatever is said is kept, and is never a broken number", async () => {
    const word = fc.constantFrom(
      "lemon",
      "batch",
      "36",
      "macs",
      "hollow",
      "148",
      "c",
      "16",
      "min",
      "rested",
      "9/10",
      "no",
      "two",
      "%",
      "4",
      "g",
      ",",
      "at",
      "oven",
      "not",
      "of",
      "them",
      "half",
      "-5",
      "1e9",
    );
    await fc.assert(
      fc.asyncProperty(fc.array(word, { minLength: 1, maxLength: 12 }), async (words) => {
        const her = baker();
        await her.ask(`note: ${words.join(" ")}`);
        const numbers = JSON.stringify(her.record().notes);
        expect(numbers).not.toMatch(/null|NaN/);
        for (const note of her.record().notes)
          for (const each of [note.oven_c, note.bake_min, note.rest_min, note.macarons, note.rating])
            expect(each ?? 1).toBeGreaterThanOrEqual(0);
      }),
      { numRuns: 60 },
    );
  });
});

describe("more, and put right", () => {
  test("add to that: the last note grows, words and structure", async () => {
    const note = await lastAfter(
      "note blueberry batch, rested 45 min",
      "add to that, tasted better on day 2, 9 out of 10",
    );
    expect(note).toMatchObject({
      text: "blueberry batch, rested 45 min; tasted better on day 2, 9 out of 10",
      rest_min: 45,
      rating: 9,
    });
  });

  test("add to a note by its flavor", async () => {
    const her = baker();
    for (const turn of [
      "note lemon batch",
      "note plum batch",
      "add to the lemon note: sharper after two days",
    ])
      await her.one(turn);
    expect(her.record().notes.map((each) => each.text)).toEqual([
      "lemon batch; sharper after two days",
      "plum batch",
    ]);
  });

  test.each([
    ["note fig batch baked 15 min at 149 c", "fix that, it was 17 min not 15", { bake_min: 17, oven_c: 149 }],
    [
      "note fig batch baked 15 min at 149 c",
      "correct the last note: it was 152 c",
      { bake_min: 15, oven_c: 152 },
    ],
    ["note fig batch baked 15 min", "Sorry, correct that, it was 16 minutes", { bake_min: 16 }],
    ["note fig batch rested 40 min baked 15 min", "no, it was 45 min", { rest_min: 45, bake_min: 15 }],
    ["note fig batch baked at 149", "no it was 152", { oven_c: 152 }],
    ["note fig batch", "correct that, 8 out of 10", { rating: 8 }],
    ["note lemon batch hollow", "no, they weren't hollow", { problems: [] }],
    ["note lemon batch", "no, lime not lemon", { flavors: ["lime"] }],
    ["note lemon batch", "correct that, it was yesterday", { date: "2026-03-13" }],
  ])("%s / %s", async (say, fix, want) => {
    expect(await lastAfter(say, fix)).toMatchObject(want);
  });

  test("what could be two things is asked about", async () => {
    const her = baker();
    await her.one("note peach batch baked 15 min and rested 15 min");
    expect(await her.one("no, it was 16 min")).toMatchObject({ status: "asking" });
    await her.one("the baking");
    expect(her.record().notes[0]).toMatchObject({ bake_min: 16, rest_min: 15 });
  });

  test("with no note there is nothing to add to", async () => {
    expect(await baker().one("add to that, humid day")).toMatchObject({ tool: "note", status: "impossible" });
  });

  test("deleted, and taken back", async () => {
    const her = baker();
    await her.one("note fig batch");
    await her.one("delete the last note");
    expect(her.record().notes).toEqual([]);
    await her.one("undo");
    expect(her.record().notes).toHaveLength(1);
  });

  test("a question behind a note is no part of it", async () => {
    const her = baker();
    await her.one("note fig batch");
    await her.ask("how much flavor for 200 g buttercream");
    expect(her.record().notes.map((each) => each.text)).toEqual(["fig batch"]);
  });
});
