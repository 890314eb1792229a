/**
 * A day's plan moved behind its first answer, and prices of boxes with what they are packed in. Plans: 24 macarons are
 * ready 27 h 23 min and 36 are ready 27 h 42 min after their start (weigh 20, meringue 25, pipe 10 a tray, rest 30, bake
 * 15 a tray, cool 30, fill 20 s a macaron, mature 24 h, box 20, warm 30; lengths from memory). Sums: arithmetic, share
 * of a box = sum × macarons in it / macarons of the batch; a box is packed once, whatever it holds.
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

const plan36 = "36 macs for tomorrow 5pm when do i start";
const plan24 = "24 macs for tomorrow 3pm when do i start";
const saturday = "24 macs for saturday noon plan";

describe("a start that is moved", () => {
  it.each([
    // 13:18 + 42 min is 17:00 + 42 min
    [`${plan36}|start at 2 pm instead`, "Start 14:00 ", "tomorrow 17:42"],
    [`${plan36}|begin at 2 pm`, "Start 14:00 ", "tomorrow 17:42"],
    [`${plan36}|id rather start at 2`, "Start 14:00 ", "tomorrow 17:42"],
    [`${plan36}|change start to 2pm`, "Start 14:00 ", "42 min after tomorrow 17:00"],
    [`${plan36}|move the start to 1 pm`, "Start 13:00 ", "tomorrow 16:42"],
    [`${plan36}|start an hour later`, "Start 14:18 ", "tomorrow 18:00"],
    [`${plan36}|delay the start by half an hour`, "Start 13:48 ", "tomorrow 17:30"],
    [`${plan36}|i wont be home till 3 pm today`, "Start 15:00 ", "tomorrow 18:42"],
    [`${plan36}|i cant start before 3 pm today`, "Start 15:00 ", "tomorrow 18:42"],
    // 9:00 + 27 h 23 min, 37 min before one
    [`${saturday}|push it to 1 pm|start at 9 that day`, "Start Fri 20 Mar 9:00 ", "Sat 21 Mar 12:23"],
    [`${saturday}|what if i start at 9 on friday`, "Start Fri 20 Mar 9:00 ", "23 min after Sat 21 Mar 12:00"],
    // what comes behind goes on from where the move has brought it: 17:42 + 30 min
    [`${plan36}|start at 2 pm instead|half an hour later`, "Start 14:30 ", "tomorrow 18:12"],
    // asleep at 23:00, hands from 7:00 on
    [`${plan36}|start at 11 pm`, "Start tomorrow 7:00 ", "no hands"],
  ])("%s", async (turns, start, ready) => {
    const { one, record } = baker();
    let said = await one(turns.split("|")[0] ?? "");
    for (const turn of turns.split("|").slice(1)) said = await one(turn);
    expect(said.headline).toContain(start);
    expect(said.headline).toContain(ready);
    expect(record().timers).toEqual([]);
  });
  it("timers that were set for the steps go with it", async () => {
    const { ask, record } = baker();
    for (const turn of [plan36, "put it on timers", "start at 2 pm instead"]) await ask(turn);
    expect(new Date(Math.min(...record().timers.map((each) => each.due_ms))).toTimeString()).toMatch(
      /^14:00/,
    );
  });
  it("once it has begun only its end can move", async () => {
    const { ask, one, setClock } = baker();
    await ask(plan36);
    setClock("2026-03-14T14:00:00");
    expect((await one("move the start to 3 pm")).headline).toContain("has begun, at 13:18");
  });
});

describe("a start that is asked about", () => {
  it.each([
    // 15:00 + 27 h 23 min
    [`${saturday}|can i start at 3 pm today`, "Yes: started 15:00 they are ready tomorrow 18:23"],
    [`${plan36}|can i start at 2 pm`, "No: started 14:00 they are ready tomorrow 17:42, 42 min after"],
    [`${plan36}|is 1 pm too late to start`, "Not too late: started 13:00 they are ready tomorrow 16:42"],
    [`${plan36}|is it too late to start at 4 pm`, "Too late: started 16:00 they are ready tomorrow 19:42"],
    [`${plan36}|if i start at 3 pm when are they ready`, "they are ready tomorrow 18:42"],
  ])("%s", async (turns, text) => {
    const said = await talk(...turns.split("|"));
    expect(said.headline).toContain(text);
    expect(said.rule?.text).toContain("none between 22:00 and 7:00");
  });
  it("moves nothing", async () =>
    expect((await talk(saturday, "can i start at 3 pm today", "when do i start")).headline).toContain(
      "Start Fri 20 Mar 8:37",
    ));
});

describe("a plan moved as a whole", () => {
  it.each([
    [`${plan24}|an hour later|half an hour earlier`, "tomorrow 15:30"],
    [`${plan24}|push everything back 1 hour`, "tomorrow 16:00"],
    [`${plan24}|push it 30 min`, "tomorrow 15:30"],
    [`${plan24}|delay it by 20 min`, "tomorrow 15:20"],
    [`${plan24}|bring it forward an hour`, "tomorrow 14:00"],
    [`${plan24}|move it up 45 min`, "tomorrow 14:15"],
    [`${plan24}|the party is an hour later`, "tomorrow 16:00"],
    [`${plan24}|everything 20 min later`, "tomorrow 15:20"],
    // a bare hour is the one that the plan took it for
    ["24 macs for tomorrow at 3 when do i start|an hour later", "tomorrow 16:00"],
    // past midnight
    ["36 macs for tomorrow 10pm when do i start|push it back 3 hours", "Mon 16 Mar 1:00"],
  ])("%s", async (turns, ready) => {
    const said = await talk(...turns.split("|"));
    expect(said.status).toBe("answered");
    expect(said.headline).toContain(`ready ${ready}`);
  });
  it("forward can be either, and is asked", async () => {
    const { one } = baker();
    await one(plan24);
    expect((await one("move it forward 20 min")).status).toBe("asking");
    expect((await one("earlier")).headline).toContain("ready tomorrow 14:40");
  });
  it("a delay that there is room for is said to be one", async () => {
    expect((await talk(plan24, "im running 20 min late")).headline).toBe(
      "Still in time. Start 11:37 for 24 macarons, 2 trays, ready tomorrow 15:00",
    );
  });
  it("what says nothing of the plan is told", async () =>
    expect((await talk(plan24, "bake them in pairs")).headline).toMatch(/^Nothing in that changes the plan/));
  // both trays bake together: fill at 14:02 less cool 30, bake 15, rest 30, pipe 2 × 10, meringue 25, weigh 20
  it.each(["my oven takes 2 trays", "two trays fit in the oven"])("%s", async (said) =>
    expect((await talk(plan24, said)).headline).toContain("Start 11:42 "),
  );
});

describe("late behind what is done", () => {
  it("weighed ahead of the plan stays weighed", async () => {
    const said = await talk("plan 48 macs for tomorrow 4pm", "done with weighing", "im 30 min behind");
    // weighing was planned for 11:59 to 12:19
    expect(said.headline).toContain("Next at 12:19: Meringue and macaronage");
  });
  it("only what comes behind it is moved", async () => {
    const { ask, record, setClock } = baker();
    await ask(plan24);
    setClock("2026-03-14T11:57:00");
    await ask("done with weighing");
    const weighed = () => record().plans[0]?.steps.find((each) => each.id === "weigh");
    const before = weighed();
    setClock("2026-03-14T12:30:00");
    // meringue since 11:57, so 20 min late since 12:17
    const [late] = await ask("im 20 min behind");
    expect(late?.headline).toContain("tomorrow 15:20");
    expect(weighed()).toEqual(before);
  });
});

const prices: Case[] = [
  // 14 × 6 / 40 + 0.80; and 30 × 6 / 40 of work
  ["€14 ingredients for 40 macs price per box of 6|packaging 0.80 a box", "cost", { cost: 2.9 }],
  [
    "€14 ingredients for 40 macs price per box of 6|packaging 0.80 a box|labor 2 h at 15",
    "cost",
    { cost: 7.4 },
  ],
  // 14 × 12 / 40 + 0.80 + 30 × 12 / 40 = 4.20 + 0.80 + 9
  [
    "€14 ingredients for 40 macs price per box of 6|packaging 0.80 a box|labor 2 h at 15|and box of 12",
    "cost",
    { cost: 14 },
  ],
  [
    "€14 ingredients for 40 macs price per box of 6|packaging 0.80 a box|labor 2 h at 15|and box of 12|what if i sell at 2.50 each",
    "cost",
    { price: 30, cost: 14, margin: 53.333333 },
  ],
  // (4.20 + 0.80) / 0.5
  [
    "€14 ingredients for 40 macs, packaging €0.80 a box, price of a box of 6 with 50 % margin|and a box of 12",
    "cost",
    { cost: 5, price: 10 },
  ],
  // 2.10 + 0.80 against 12, whatever it is laid out for
  [
    "€14 ingredients for 40 macs, packaging €0.80 per box, sell a box of 6 at €12",
    "cost",
    { margin: 75.833333 },
  ],
  // 4.20 + 0.80 against 22
  [
    "€14 ingredients for 40 macs, packaging €0.80 a box, box of 6 sells for €12|what about a box of 12 at 22",
    "cost",
    { margin: 77.272727 },
  ],
  // 2.10 + 0.80 + 4.50
  [
    "€14 ingredients for 40 macs, 0.80 packaging per box of 6, labor 2 h at 15, price per box of 6",
    "cost",
    { cost: 7.4 },
  ],
  // 12 × 6 / 36 + 0.90 + 18 × 6 / 36 = 2 + 0.90 + 3, twice that
  [
    "price of a box of 6: ingredients €12 for 36 macs, box €0.90, labor 1 h at 18, margin 50 %",
    "cost",
    { cost: 5.9, price: 11.8 },
  ],
  // six boxes for the 36: (12 + 5.40) / 6 / 0.4
  [
    "€12 ingredients for 36 macs, 6 boxes at €0.90, price per box of 6 at 60 % margin",
    "cost",
    { cost: 2.9, price: 7.25 },
  ],
  // 9 × 6 / 24 + 0.80, then 9 × 12 / 24 + 0.80
  ["cost of 24 macs ingredients €9|box of 6|box 0.80", "cost", { cost: 3.05 }],
  ["cost of 24 macs ingredients €9|box of 6|packaging is 80 cents per box|box of 12", "cost", { cost: 5.3 }],
  // 14 × 12 / 48
  ["cost of 48 macs ingredients €14|box of 6|no 12", "cost", { cost: 3.5 }],
  ["cost of 48 macs ingredients €14|box of 6|make it 8", "cost", { cost: 2.333333 }],
  // 48 against 9 + 1.20
  [
    "price 24 macs ingredients €9 box €1.20 sell at €2 each",
    "cost",
    { price: 48, cost: 10.2, margin: 78.75 },
  ],
  [
    "cost of 24 macs ingredients €9|box 1.20|sell at 2 each",
    "cost",
    { price: 48, cost: 10.2, margin: 78.75 },
  ],
  ["cost of 24 macs ingredients €9|the box is 1.20", "cost", { cost: 10.2 }],
  ["cost of 24 macs ingredients €9|boxes cost 0.80 each, 4 boxes", "cost", { cost: 12.2 }],
  // more than what goes in is what it is sold at, and six of them cost 2.25
  ["cost of 24 macs ingredients €9|box €18|6", "cost", { margin: 87.5 }],
  // 9 + 2 × 15, 9 + 20, 9 + 2 × 20
  ["cost of 24 macs ingredients €9|labor 2 h at 15", "cost", { cost: 39 }],
  ["cost of 24 macs ingredients €9|2 hours at 15", "cost", { cost: 39 }],
  ["cost of 24 macs ingredients €9|my time 2 h x 15", "cost", { cost: 39 }],
  ["cost of 24 macs ingredients €9|an hour of my time is 20", "cost", { cost: 29 }],
  ["cost of 24 macs ingredients €9|labor 30", "cost", { cost: 39 }],
  // 20 × 1.80 × 0.9; 24 × 2 × 0.9; 10 × 0.9; 15 × 0.8
  ["20 macs at €1.80 each less 10 %", "cost", { price: 32.4 }],
  ["20 macs at €1.80 each with 10 % off", "cost", { price: 32.4 }],
  ["cost of 24 macs ingredients €9|sell at 2 each|less 10 %", "cost", { price: 43.2 }],
  ["6€ ingredients, 40 % margin, 36 macs|less 10 %", "cost", { price: 9 }],
  ["box of 6 for €15 less 20 %", "cost", { price: 12 }],
];

describe("boxes, hours and discounts", () => {
  it.each(prices)("%s", expectFigures);
  it("cents behind euros are hundredths of those", async () =>
    expect(
      (await talk("cost of 24 macs ingredients €9", "packaging is 80 cents per box")).of("cost")?.unit,
    ).toBe("EUR"));
});
