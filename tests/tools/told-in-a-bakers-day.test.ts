/** What is told between one question and the next on a baker's day. Expected values are worked by hand. */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, lastOf } from "../support/ask.ts";

const value = (answer: Answer | undefined, name: string) =>
  answer?.figures?.find((each) => each.name === name)?.value;

describe("how a ganache comes off the spoon", () => {
  it.each([
    // 2 × 110 − 160, 1.25 × 180 − 200
    [
      "this milk ganache is pouring off the spoon!! 160 g choc 110 g cream. needs to be pipeable",
      "add chocolate",
      60,
    ],
    ["200 g dark and 180 g cream, its running off the spatula, i need to pipe it", "add chocolate", 25],
    // 200 / 1.25 − 90
    ["my dark ganache wont go through the piping tip, 200 g choc 90 g cream", "add cream", 70],
  ])("%s", async (said, name, grams) => {
    const [answer] = await lastOf(said);
    expect([answer?.tool, value(answer, name)]).toEqual(["ganache", expect.closeTo(grams, 6)]);
  });

  it("pours where it is meant to", async () => {
    const [answer] = await lastOf("is this ok to pour over a cake, 160 g dark choc 160 g cream");
    expect(value(answer, "ratio")).toBe(1);
  });

  it("is judged by two weights", async () => {
    const { one } = baker();
    await one("how much water fat and sugar in 200 g dark chocolate with 100 g cream");
    const answer = await one("so is 200 to 100 dark more for piping or rolling");
    expect([value(answer, "ratio"), answer.headline]).toEqual([2, expect.stringContaining("firm")]);
  });

  it("has split, whatever it looks like", async () => {
    const { one } = baker();
    await one("200 g dark chocolate with 100 g cream, good for piping?");
    // 2 % and 10 % of 300 g
    const answer = await one("300 g of it and its split now, all greasy");
    expect(answer.figures?.map((each) => each.value)).toEqual(expect.arrayContaining([6, 30]));
  });

  it("takes another ratio with its timer between", async () => {
    const { one } = baker();
    await one("white choc 250 g, cream for piping?");
    await one("timer 20 min for the ganache");
    // 250 / 3
    expect(value(await one("ganache at 3 to 1 instead"), "cream")).toBeCloseTo(250 / 3, 6);
  });

  it("has had what was to go in", async () => {
    const { ask, one } = baker();
    await one("milk ganache, 160 g choc 110 g cream, too runny to pipe");
    // 1-2 % of 330 g
    const answers = await ask("so i threw the 60 in. 330 g of ganache, how much espresso powder");
    expect(answers.map(({ tool }) => tool)).toEqual(["dose"]);
    expect(answers[0]?.figures?.[0]).toMatchObject({ low: 3.3, high: 6.6 });
  });
});

describe("timers, one beside another", () => {
  it("are set, put off and stopped by their names", async () => {
    const { one } = baker({ now: "2026-03-14T09:30:00" });
    expect(value(await one("remind me at eleven to take the butter out"), "left")).toBe(90);
    expect(value(await one("plus twenty min for the oven to heat up"), "left")).toBe(20);
    expect(value(await one("give the butter one 15 more"), "left")).toBe(105);
    expect((await one("oven's hot, cancel that one")).headline).toMatch(/^Stopped oven/);
    expect(value(await one("how long on the butter"), "left")).toBe(105);
  });

  it.each(["plus 5 min", "plus 5 min for that", "plus 5 min for the syrup"])(
    "%s is more of the one",
    async (said) => {
      const { one } = baker();
      await one("10 min for the syrup");
      expect(value(await one(said), "left")).toBe(15);
    },
  );
});

describe("an order that is moved", () => {
  it.each([
    "ok tell her half past one in the afternoon then",
    "ill offer her 1:30 pm",
    "ring her and say she can have them at half past one",
  ])("%s", async (said) => {
    const { one } = baker({ now: "2026-03-14T09:30:00" });
    await one("order for 36 macarons, pickup tomorrow 2 pm, when do i have to start");
    await one("could she have them at noon instead");
    expect(await one(said)).toMatchObject({
      tool: "day",
      status: "answered",
      headline: expect.stringContaining("13:30"),
    });
  });
});

describe("the notes and the shelf", () => {
  it.each([
    "what did i write down about the coconut ones",
    "what did i note on the coconut",
    "what have i written about the coconut ones",
  ])("%s", async (said) => {
    const { one } = baker();
    await one("note coconut batch, tops cracked, oven was at 170");
    expect(await one(said)).toMatchObject({ tool: "recall", headline: expect.stringContaining("170") });
  });

  it("still notes what is to be written down", async () => {
    expect((await lastOf("write down that the coconut ones cracked")).map(({ tool }) => tool)).toEqual([
      "note",
    ]);
  });

  it("shows what is left", async () => {
    const { one } = baker();
    await one("put 1 kg almond flour on the shelf");
    await one("used 180 g of the almond flour");
    for (const said of [
      "how much of it have i got left",
      "so almond flour in stock is?",
      "almond flour left is?",
    ])
      expect([said, (await one(said)).figures?.[0]?.value]).toEqual([said, 820]);
    await one("used another 20 g almond flour");
    expect((await one("no i didnt, undo that")).tool).toBe("undo");
    expect((await one("so almond flour in stock is?")).figures?.[0]?.value).toBe(820);
  });
});

describe("others than those that were out", () => {
  it.each([
    "so the ones i filled today, what date is the last day",
    "the batch i filled today, until when",
    "i filled some more today, how long are they good",
  ])("%s", async (said) => {
    const { one } = baker({ now: "2026-03-14T09:30:00" });
    await one("customer says she left hers on the table for 4 hours, are they ok to eat");
    // the 14th is day 1 of 7
    expect((await one(said)).headline).toContain("2026-03-20");
  });

  it("are the same where nothing says otherwise", async () => {
    const { one } = baker();
    await one("i left them on the table for 4 hours, are they ok to eat");
    for (const said of ["i filled them today, still ok?", "and if i put them in the fridge"])
      expect([said, (await one(said)).headline.slice(0, 3)]).toEqual([said, "No:"]);
  });
});

describe("parts in the plural", () => {
  it("are alike", async () => {
    const { one } = baker();
    expect((await one("split 480 g batter in thirds")).figures?.[0]?.value).toBe(160);
    await one("gel color for the first");
    const answer = await one("actually halves");
    expect([answer.tool, answer.figures?.[0]?.value]).toEqual(["split", 240]);
  });
});
