/**
 * Timers said in a row, begun a while ago, over, or beside a heat; bottles put right behind a dose; prices one behind the
 * other; what is told of a bake that is over; whose batch it was. The clock stands at 2026-03-14 09:30. Sums by
 * arithmetic: a dose is the bowl × the bottle's percent, a kilo is 1000 g; a step's own time as in
 * data/rules/step-times.ts (common practice). That sugar boils at about 118 °C for buttercream is common practice too.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const start_ms = new Date("2026-03-14T09:30:00").getTime();

/** Says the turns; every answer in their order. */
async function said(turns: string, home = baker({ now: "2026-03-14T09:30:00" })) {
  const answers = [];
  for (const turn of turns.split("|")) answers.push(...(await home.ask(turn)));
  const running = home
    .record()
    .timers.filter((each) => each.state !== "stopped")
    .map((each) => `${each.label} ${(each.due_ms - start_ms) / 60_000}`)
    .sort();
  return { answers, last: answers.at(-1), running, record: home.record() };
}

describe("timers: what runs in the end, with its minutes from half past nine", () => {
  it.each([
    // each of a row with its own minutes
    ["timers: rest 30, ganache 45 and bake 15", "bake 15, ganache 45, rest 30"],
    ["set timers ganache 45 and bake 15 and rest 30", "bake 15, ganache 45, rest 30"],
    ["timers rest 30 ganache 45 bake 15", "bake 15, ganache 45, rest 30"],
    // eleven is 90 min from half past nine
    [
      "15 min bake timer, 40 min ganache, remind me at 11 to take butter out",
      "bake 15, ganache 40, take butter out 90",
    ],
    ["timer 12 for tray one and 15 for tray two", "tray 1 12, tray 2 15"],
    ["timer 15 tray 1, 18 tray 2", "tray 1 15, tray 2 18"],
    ["timer 5 butter, 8 syrup", "butter 5, syrup 8"],
    // 8 - 2, with a question left open in between
    ["timer 5 butter, 8 syrup|syrup 118|syrup 2 less", "butter 5, syrup 6"],
    ["timer 5 butter, 8 syrup|syrup 118", "butter 5, syrup 8"],
    ["timer 5 butter, 8 syrup|syrup 118|a heat", "butter 5, syrup 8"],
    ["timer 5 butter, 8 syrup|syrup 118|118 min", "butter 5, syrup 118"],
    // none is called so: no other is shortened
    ["timer 5 butter, 8 syrup|caramel 2 less", "butter 5, syrup 8"],
    // what is out of the oven is over
    ["15 min bake and 40 min ganache|both plus 5|bake out", "ganache 45"],
    ["15 min bake and 40 min ganache|bake is out", "ganache 40"],
    ["15 min bake and 40 min ganache|bake done", "ganache 40"],
    ["timer tray 1 12 min, tray 2 14 min|tray 1 is out of the oven", "tray 2 14"],
    // 30 - 10, 15 - 5
    ["rest 30 started 10 min ago", "rest 20"],
    ["30 min rest timer, started 10 min ago", "rest 20"],
    ["bake 15 went in 5 min ago", "bake 10"],
    // 30 min of rest were over ten minutes ago
    ["rest started 40 min ago", ""],
    // tomorrow noon is 26.5 h away
    ["bake at 10:15 for 14|mature till tomorrow noon|move bake to 10:20", "bake 50, mature 1590"],
    ["bake at 10:15 for 14|mature till tomorrow noon|move bake to 10:20|no 10:10", "bake 40, mature 1590"],
    ["timer 15|another 20|first plus 5", "timer 20, timer 2 20"],
    ["timer 15|another 20|second minus 5", "timer 15, timer 2 15"],
  ])("%s", async (turns, wanted) => {
    const { running } = await said(turns);
    expect(running.join(", ")).toBe(wanted.split(", ").filter(Boolean).sort().join(", "));
  });

  it.each(["syrup 118", "oven 160"])("asks what %s is", async (turn) => {
    const { last } = await said(`timer 5 butter, 8 syrup|${turn}`);
    expect([last?.tool, last?.status]).toEqual(["timer", "asking"]);
  });

  it("says how long the other one has, and does with it what was done with the first", async () => {
    const { last } = await said("timer 15|timer 20 ganache|how long|and the other one");
    expect(last?.status).toBe("answered");
    expect(last?.headline).toContain("15 min left on timer");
    expect((await said("timer 15 bake|timer 20 ganache|stop bake|and the other one")).running).toEqual([]);
  });
});

describe("bottles and prices on the shelf", () => {
  const cases: Case[] = [
    // 300 × 2 %, then × 1 %
    ["my bottle says 2 percent raspberry|save|300 g buttercream raspberry", "dose", { flavor: 6 }],
    [
      "my bottle says 2 percent raspberry|save|300 g buttercream raspberry|no bottle says 1",
      "shelf",
      { raspberry: 1, flavor: 3 },
    ],
    [
      "my bottle says 2 percent raspberry|300 g buttercream raspberry|no bottle says 1|300 g buttercream raspberry",
      "dose",
      { flavor: 3 },
    ],
    // 200 × 1 to 2 %
    [
      "my mint bottle says 0.5 to 1 percent|200 g ganache mint|the bottle says 1 to 2",
      "shelf",
      { mint: [1, 2], flavor: [2, 4] },
    ],
    ["my mint bottle says 0.5 to 1 percent|save that|no the bottle says 2", "shelf", { mint: 2 }],
    ["almond flour 14 per kilo|icing sugar 2.20", "shelf", { "powdered sugar a kilo": 2.2 }],
    ["almond flour 14 per kilo|icing sugar 2.20|whites 6|sugar 1.40", "shelf", { "sugar a kilo": 1.4 }],
  ];
  it.each(cases)("%s", expectFigures);

  it("forgets the bottle where none of it is in stock", async () => {
    const turns = "my mint bottle says 0.5 to 1 percent|save that|no the bottle says 2|forget mint";
    const { last, record } = await said(turns);
    expect(last?.status).toBe("answered");
    expect(record.bottles).toEqual([]);
  });

  it("takes prices for no stock", async () => {
    const { record } = await said("almond flour 14 per kilo|icing sugar 2.20|whites 6|sugar 1.40");
    expect(record.stock.map((each) => [each.grams, (each.price_per_g ?? 0) * 1000])).toEqual([
      [0, 14],
      [0, 2.2],
      [0, 6],
      [0, 1.4],
    ]);
  });
});

describe("told of a bake that is over", () => {
  it.each([
    "macs are hollow|what temp should i use|i baked at 160|fan|16 min",
    "macs are hollow|i baked at 160|16 min",
    "i baked them at 155 for 15 min",
    "i rested mine 45 min",
  ])("%s: no setting and no timer", async (turns) => {
    const { record } = await said(turns);
    expect(record.bench).toEqual({});
    expect(record.timers).toEqual([]);
  });

  it("starts one where it was meant", async () => {
    expect((await said("i baked at 160|16 min")).last?.status).toBe("asking");
    expect((await said("i baked at 160|16 min|yes")).running).toEqual(["timer 16"]);
  });

  it("goes with the note before it", async () => {
    const { record } = await said("note lemon 20 pcs|i baked them at 155 for 15 min");
    expect(record.notes[0]).toMatchObject({ oven_c: 155, bake_min: 15 });
  });
});

describe("notes", () => {
  it.each([
    "note: annas batch pink raspberry 7/10",
    "note: annas pink raspberry batch 7/10",
    "note: bens batch raspberry 7/10",
  ])("%s: a name is no flavor", async (turn) =>
    expect((await said(turn)).record.notes[0]?.flavors).toEqual(["raspberry"]),
  );

  it("finds no pineapple in it", async () => {
    const { last } = await said("note: annas batch pink raspberry 7/10|which batch had pineapple");
    expect(last?.headline).toBe("No note of pineapple.");
  });

  it("says the mark that it keeps", async () => {
    const { last, record } = await said("note lemon 30 pcs 148c 15 min|8/10|no 7");
    expect(record.notes[0]).toMatchObject({ rating: 7, rating_said: "7/10" });
    expect(last?.headline).toContain("7/10");
    expect(last?.headline).not.toContain("8/10");
  });
});
