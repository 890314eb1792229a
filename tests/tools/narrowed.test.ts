/**
 * What narrows a number, or holds more of them than one matter takes: a plan moved and counted in one breath, one fewer,
 * what stands beside a count. None is dropped without a word. Worked by hand: of N macarons ceil(2.2 N) shells are made
 * (10 % spares, from memory), 30 on a tray; a shell takes 0.53 × d² g of batter and a filling 0.42 × d² g, d in cm and
 * 3.8 where none is said; 4 % of the batter and 8 % of the filling stay in bowl and bag (from memory). The clock stands
 * on Saturday 14 March 2026, 9:30.
 */
import { describe, expect, test } from "vitest";
import { baker, figureOf, lastOf, onlyOf } from "../support/ask.ts";

describe("a plan moved and counted in one breath", () => {
  const plan = "plan 30 macarons for tomorrow 4 pm";
  // The steps' lengths are those of a day (from memory). Counted back from 17:00: room 30 min, box 20, mature 24 h: filled
  // by 16:10 today. 24 are 53 shells on two trays, 20 s each to fill: 16:02; cool 30: 15:32; bake 15: 15:17, and the first
  // tray 15:02; its rest 30: 14:32; pipe 10: 14:22; meringue 25: 13:57; weigh 20: 13:37.
  test.each([
    ["make it 24, an hour later", "Start 13:37 for 24 macarons, 2 trays, ready tomorrow 17:00"],
    ["make it 24 and an hour later", "Start 13:37 for 24 macarons, 2 trays, ready tomorrow 17:00"],
    ["an hour later and 24 of them", "Start 13:37 for 24 macarons, 2 trays, ready tomorrow 17:00"],
    ["an hour later please, still 24", "Start 13:37 for 24 macarons, 2 trays, ready tomorrow 17:00"],
    ["make it 24, at 5 pm", "Start 13:37 for 24 macarons, 2 trays, ready tomorrow 17:00"],
    ["an hour earlier, for 24", "Start 11:37 for 24 macarons, 2 trays, ready tomorrow 15:00"],
    ["24 instead, half an hour earlier", "Start 12:07 for 24 macarons, 2 trays, ready tomorrow 15:30"],
    ["still 24, two hours later", "Start 14:37 for 24 macarons, 2 trays, ready tomorrow 18:00"],
    // 66 shells on three trays, 10 min to fill: 16:00, cooled from 15:30, the first of three baked from 14:45
    [
      "8 of them cant come but i still need the 30, an hour later",
      "Start 13:20 for 30 macarons, 3 trays, ready tomorrow 17:00",
    ],
    // 62 shells, and 9 min 20 s to fill: 40 s later
    [
      "2 kids cancelled, still make 28, an hour later",
      "Start 13:20 for 28 macarons, 3 trays, ready tomorrow 17:00",
    ],
    // 88 shells, 13 min 20 s to fill, by 15:40: 15:26:40, 14:56:40, 14:11:40, 13:41:40, 13:31:40, 13:06:40, 12:46:40
    ["make it 40 macarons, half an hour later", "Start 12:46 for 40 macarons, 3 trays, ready tomorrow 16:30"],
  ])("%s", async (said, headline) => expect((await onlyOf(plan, said)).headline).toBe(headline));
});

describe("one fewer is filled: n × 0.42 × d² / 0.92", () => {
  const filling = (macarons: number, cm = 3.8) => (macarons * 0.42 * cm ** 2) / 0.92;
  const asked = "24 macarons, how much filling";
  test.each([
    ["the dog ate one", 23],
    ["one fell on the floor", 23],
    ["one broke", 23],
    ["sorry, my son ate one of them", 23],
    ["the dog ate one|my son ate one", 22],
    ["the dog ate two of them", 22],
    ["the dog ate one, 22 now", 22],
  ])("%s: %d", async (said, macarons) =>
    expect((await figureOf("filling", asked, said))?.value).toBeCloseTo(filling(macarons), 6),
  );

  test("of the size that was said", async () =>
    expect(
      (await figureOf("filling", "24 macarons at 45 mm, how much filling", "the dog ate one"))?.value,
    ).toBeCloseTo(filling(23, 4.5), 6));

  // 60 and 40 %
  test("of ring and center both", async () => {
    const turns = ["20 macarons at 5 cm, filling with ring and center", "one got eaten"];
    expect((await figureOf("ring", ...turns))?.value).toBeCloseTo(0.6 * filling(19, 5), 6);
    expect((await figureOf("center", ...turns))?.value).toBeCloseTo(0.4 * filling(19, 5), 6);
  });

  test.each([
    ["batter for 24 macarons", "the dog ate one"],
    ["300 g buttercream, vanilla", "i dropped one"],
  ])("%s: %s takes nothing off", async (...turns) => {
    const answer = await onlyOf(...turns);
    expect([answer.tool, answer.figures ?? []]).toEqual(["help", []]);
  });

  test.each(["one is gone", "two are gone", "another one broke"])("%s: a timer runs on", async (said) => {
    const { ask, record } = baker();
    await ask("timer 20 min");
    const before = record().timers;
    expect(before).toHaveLength(1);
    const answers = await ask(said);
    expect(answers.map(({ tool, figures }) => [tool, figures ?? []])).toEqual([["help", []]]);
    expect(record().timers).toEqual(before);
  });
});

describe("who stays away, and as many are made", () => {
  test("batter for 40: 88 × 0.53 × 3.8² / 0.96", async () =>
    expect(
      (await figureOf("batter", "6 people cancelled, we still need 40 macarons, how much batter"))?.value,
    ).toBeCloseTo(701.5433, 4));

  test.each<[string, string, number]>([
    ["4 people dropped out but i still want 28, how much filling", "filling", (28 * 0.42 * 3.8 ** 2) / 0.92],
    ["4 people dropped out but i still want 28", "batter", (62 * 0.53 * 3.8 ** 2) / 0.96],
  ])("%s", async (said, name, expected) =>
    expect((await figureOf(name, "batter for 30 macarons", said))?.value).toBeCloseTo(expected, 6),
  );
});

describe("an amount that has no place is asked about, and no figure is given", () => {
  test.each([
    ["i have 200 g dark and 50 g milk on top, how much cream for piping", "50 g"],
    ["i have 200 g dark and another 50 g dark on top, how much cream for piping", "50 g"],
    ["30 macarons and another 12 shells, how much batter", "12"],
    ["30 macarons and 12 more shells, how much batter", "12"],
    ["tsp of vanilla per 100 g, 315 g buttercream", "100 g"],
  ])("%s", async (said, amount) => {
    const { status, question, figures } = await onlyOf(said);
    expect([status, figures ?? []]).toEqual(["asking", []]);
    expect(question).toContain(`the ${amount} for`);
  });
});

describe("two numbers, and each in its place", () => {
  test.each<[string[], string, number]>([
    // 42 in all are 93 shells
    [["30 macarons and another 12 macarons, how much batter"], "batter", (93 * 0.53 * 3.8 ** 2) / 0.96],
    // 24 h - 20 h
    [["made them 20 hours ago, timer for 24 hours of maturing"], "left", 240],
    // 2 ml count as 2 g
    [["buttercream 300 g, 2 ml vial of mint oil is in it, how much more"], "share", 200 / 300],
    [["split 300 g batter pink and white 2 to 1", "no 3 to 1 please, soft colours"], "pink", 225],
    [["can you divide? 600 g batter in 3"], "each", 200],
    [["my bowl wont hold that, do 600 g batter in two goes"], "each", 300],
    // 600 × 100 / 460
    [
      ["whats the shell recipe for 900 g batter", "my bowl wont hold that will it, do 600"],
      "whites",
      60_000 / 460,
    ],
    // 200 / 1.25
    [["we'll take the dark, cream for 200 g?"], "cream", 160],
  ])("%j", async (turns, name, expected) =>
    expect((await figureOf(name, ...turns))?.value).toBeCloseTo(expected, 6),
  );

  // every spell out of the fridge, 2 h in all (USDA FSIS)
  test("3 h of 2 h are judged, and no price is made", async () => {
    const { tool, headline, figures } = await onlyOf("can i sell them after 3 hours on the counter");
    expect([tool, headline]).toEqual(["keep", expect.stringMatching(/^No: 3 h is past the 2 h/)]);
    expect(figures).toEqual([
      { name: "out of the fridge", value: 2, unit: "h" },
      { name: "was out", value: 180, unit: "min" },
    ]);
  });

  test("a size that is kept, and what is asked with it", async () => {
    const [kept, shells, ...more] = await lastOf("save my size as 3.5 cm and batter for 24");
    expect(more).toEqual([]);
    expect(kept?.figures).toMatchObject([{ value: 35, unit: "mm" }]);
    expect(shells?.figures?.find(({ name }) => name === "batter")?.value).toBeCloseTo(
      (53 * 0.53 * 3.5 ** 2) / 0.96,
      6,
    );
  });
});
