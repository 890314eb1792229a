/** A timer that is to run longer, with the reason ahead; an hour with "too" behind it; a step "for the usual time". */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const now = "2026-05-21T18:05:00";

async function talked(...turns: string[]) {
  const { ask, record } = baker({ now });
  let said = await ask("");
  for (const turn of turns) said = await ask(turn);
  return { said, timers: record().timers };
}

// 50 min from 18:05, on the timer that runs, and no second one
describe("muggy in here, make it 50", () => {
  it.each([
    "muggy in here, make it 50",
    "its raining so make that 50",
    "still tacky, make it 50",
    "shells are thick, better make it 50",
    "its humid today, make it 50 minutes",
    "its raining, set it to 50",
    "damp day, call it 50",
    "the kitchen is steamy so lets make it 50 please",
  ])("%s", async (turn) => {
    const { said, timers } = await talked("start the rest timer", turn);
    expect(said[0]?.figures).toMatchObject([{ name: "left", value: expect.closeTo(50, 4) }]);
    expect(timers.map(({ label }) => label)).toEqual(["rest"]);
  });

  // something else was put somewhere: a timer of its own
  it.each(["ganache is in the fridge, make it 45", "oven is on, set one for 20", "trays are in, 15 min"])(
    "%s",
    async (turn) => {
      const { timers } = await talked("start the rest timer", turn);
      expect(timers).toHaveLength(2);
    },
  );
});

// from 18:05 to 19:00; "in 7" are minutes
describe("ring me at 7 too", () => {
  it.each([
    ["ring me at 7 too", 55],
    ["wake me at 7 too please", 55],
    ["ring me at 7 also", 55],
    ["and ring me at 7", 55],
    ["ring me in 7 too", 7],
  ])("%s", async (turn, min) => {
    const { said } = await talked("start the rest timer", turn);
    expect(said[0]?.figures).toMatchObject([{ name: "left", value: expect.closeTo(min, 4) }]);
  });
});

// cooling takes 30 min, rest 30, bake 15
describe("then cooling, usual time", () => {
  it.each([
    ["no? then cooling, usual time", "cool", 30],
    ["ok cooling then, the usual", "cool", 30],
    ["rest, the usual time", "rest", 30],
    ["and cooling for the usual time", "cool", 30],
    ["then baking at the normal time", "bake", 15],
  ])("%s", async (turn, label, min) => {
    const { said, timers } = await talked("any timers on?", turn);
    expect(timers.map((each) => each.label)).toEqual([label]);
    expect(said[0]?.figures).toMatchObject([{ name: "left", value: expect.closeTo(min, 4) }]);
  });

  it("asked, and nothing set", async () => {
    const { timers } = await talked("start the rest timer", "whats the usual cooling time");
    expect(timers).toHaveLength(1);
  });
});
