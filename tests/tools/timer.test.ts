/** Timers: set, listed, moved, renamed, stopped. The clock stands at Saturday 14 March 2026, 9:30, unless moved. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Timer } from "../../src/tools/contract/index.ts";
import { cutRename, freeName, matching } from "../../src/tools/timer/find.ts";
import { timer } from "../../src/tools/timer/timer.ts";
import { baker } from "../support/ask.ts";
import { answer, standing, value, world } from "../support/world.ts";

const now_ms = new Date(standing).getTime();
const min = 60_000;

const running = (label: string, left_min: number, id = 1): Timer => ({
  id,
  label,
  set_ms: now_ms - 5 * min,
  due_ms: now_ms + left_min * min,
  state: "running",
});
const lefts = (outcome: { figures?: { name: string; value?: number }[] }) =>
  (outcome.figures ?? []).map((each) => each.value);
const labels = (outcome: { items?: Record<string, unknown>[] }) =>
  (outcome.items ?? []).map((each) => each.label);

describe("set", () => {
  test("for a length of time: left in min, and the clock time it rings", async () => {
    const set = await baker().one("timer 12 min");
    expect(value(set, "left", "min")).toBe(12);
    expect(set.headline).toContain("9:42");
    expect(set.items).toEqual([{ label: "timer", due: "2026-03-14T09:42:00", left: 12, state: "running" }]);
  });

  test("what she has at hand behind a timer is no length of time", async () => {
    const talk = baker();
    await talk.ask("set 18 min for tray one and 30 min rest");
    const follow = await talk.one("and if i only have 150");
    expect(follow.status).not.toBe("answered");
    expect(follow.figures ?? []).toEqual([]);
  });

  test.each([
    ["90 seconds on the clock", 1.5],
    ["set 1h20 for the lemon shells to rest", 80],
    ["ganache needs an hour and a haf to set, time it", 90],
    ["three quarters of an hour for the caramel", 45],
    ["count down 20 minutes", 20],
    ["hour and 20 minutes on the clock for the ganache", 80],
    ["set a timer for 1:30 minutes", 1.5],
    ["put the macarons in, 15 minutes", 15],
  ])("%s", async (say, left) => {
    expect(value(await baker().one(say), "left", "min")).toBeCloseTo(left, 9);
  });

  test.each([
    ["ping me at quarter past ten", "2026-03-14T10:15:00", "10:15"],
    ["Remind me at ten to ten to turn the tray round", "2026-03-14T09:50:00", "9:50"],
    ["I'd like a timer at 7", "2026-03-14T19:00:00", "19:00"],
    ["Ring at 9 am, would you", "2026-03-15T09:00:00", "tomorrow 9:00"],
    ["set an alarm for monday at 6 am", "2026-03-16T06:00:00", "Mon 16 Mar 6:00"],
    ["remind me 10 min before noon", "2026-03-14T11:50:00", "11:50"],
  ])("until a clock time: %s", async (say, due, shown) => {
    const set = await baker().one(say);
    expect(set.items?.[0]?.due).toBe(due);
    expect(set.headline).toContain(shown);
  });

  test("a clock time that has passed is tomorrow's, and says so", async () => {
    expect((await baker().one("alarm 9:15 am")).assumed).toEqual(["tomorrow, 9:15 has passed today"]);
  });

  test.each([
    "Alarm for 8 o'clock this morning please",
    "wake me up at 8 o clock this morning",
    "set a timer for yesterday",
    "set a timer for minus 10 minutes",
    "set a timer 0 min",
    "timer for 400 days",
  ])("impossible: %s", async (say) => {
    expect(await baker().one(say)).toMatchObject({ tool: "timer", status: "impossible" });
  });

  // common practice, the step times of the trade
  test.each([
    ["start the rest timer", "rest", 30],
    ["bake timer", "bake", 15],
    ["start the cooling timer", "cool", 30],
    ["start the ganache timer", "ganache", 45],
    ["mature timer too, they're in the fridge", "mature", 1440],
  ])("%s takes the step's own time and says so", async (say, label, left) => {
    const set = await baker().one(say);
    expect(set.items?.[0]).toMatchObject({ label, left });
    expect(set.assumed?.[0]).toContain("the usual time");
    expect(set.rule?.basis).toBe("common practice");
  });

  test("the baker's own step time replaces it", () => {
    const set = answer(timer, { do: "set", name: "rest", step: "rest" }, { bench: { rest_min: 50 } });
    expect(value(set, "left")).toBe(50);
    expect(set.rule?.basis).toBe("your bench");
  });

  test("without a time and without a step it asks, and a bare number answers", async () => {
    const her = baker();
    expect(await her.one("set a timer for the tea kettle")).toMatchObject({
      status: "asking",
      question: expect.stringContaining("tea kettle"),
    });
    const set = await her.one("4");
    expect(set.items?.[0]).toMatchObject({ label: "tea kettle", left: 4 });
  });

  test("an order of its own is no answer to what was asked", async () => {
    const her = baker();
    await her.one("set a timer");
    expect(labels(await her.one("set a timer for 10 min for the syrup"))).toEqual(["syrup"]);
  });

  test("a range rings at its low end, and says so", async () => {
    const set = await baker().one("start a timer for 12-15 min");
    expect(value(set, "left")).toBe(12);
    expect(set.assumed?.join()).toContain("low end");
  });
});

describe("several at once", () => {
  test.each([
    [
      "set a timer for tray 1 12 min, tray 2 14 min and tray 3 16 min",
      ["tray 1", "tray 2", "tray 3"],
      [12, 14, 16],
    ],
    ["tray one 15 minutes and tray two 18 minutes", ["tray 1", "tray 2"], [15, 18]],
    [
      "Three timers: 8 min for the syrup, 25 min for the buttercream to chill and an hour and a quarter for the caramel",
      ["syrup", "buttercream", "caramel"],
      [8, 25, 75],
    ],
    ["start the rest timer and the bake timer", ["rest", "bake"], [30, 15]],
    ["20 min timer for shells and 45 for the ganache", ["shells", "ganache"], [20, 45]],
    ["two 10 minute timers", ["timer", "timer 2"], [10, 10]],
  ])("%s", async (say, names, times) => {
    const answers = await baker().ask(say);
    expect(answers.flatMap(labels)).toEqual(names);
    expect(answers.flatMap(lefts)).toEqual(times);
  });

  test("one name twice: both run, the second has a number", async () => {
    const her = baker();
    await her.one("bake timer 14 min");
    const second = await her.one("bake timer 16 min");
    expect(labels(second)).toEqual(["bake 2"]);
    expect(second.assumed).toContain("bake still runs; this one is bake 2");
    expect(her.record().timers).toHaveLength(2);
  });

  test("names never collide", () => {
    expect(freeName("tray 1", [{ label: "tray 1" }])).toBe("tray 1 (2)");
    expect(freeName("bake", [{ label: "Bake" }, { label: "bake 2" }])).toBe("bake 3");
    fc.assert(
      fc.property(fc.array(fc.constantFrom("bake", "tray 1", "bake 2"), { maxLength: 12 }), (names) => {
        const taken: { label: string }[] = [];
        for (const name of names) taken.push({ label: freeName(name, taken) });
        expect(new Set(taken.map((each) => each.label)).size).toBe(names.length);
      }),
    );
  });
});

describe("list and left", () => {
  const two = { timers: [running("tray 1", 12, 1), running("ganache", 40, 2)] };

  test("no timers is an answer with nothing in it", async () => {
    expect(await baker().one("any timers going")).toMatchObject({ status: "answered", items: [] });
    expect((await baker().one("whats running")).figures).toBeUndefined();
  });

  test("all of them, the next to ring first", async () => {
    const her = baker({ record: two });
    expect(lefts(await her.one("whats running"))).toEqual([12, 40]);
    expect(lefts(await her.one("how long left"))).toEqual([12, 40]);
  });

  test.each([
    "how long on the ganache",
    "how much longer on ganache",
    "hows the ganache one doing",
    "when does the ganache timer go off",
    "is the ganache timer done yet",
  ])("%s", async (say) => {
    expect(lefts(await baker({ record: two }).one(say))).toEqual([40]);
  });

  test("a name that no timer has gives no number", async () => {
    const found = await baker({ record: two }).one("how long on the caramel timer");
    expect(found).toMatchObject({
      status: "answered",
      headline: expect.stringContaining("No timer is called caramel"),
    });
    expect(found.figures).toBeUndefined();
  });

  test("one that came due has rung, whatever the record says", () => {
    const rung = { timers: [running("tray 1", -3)] };
    expect(answer(timer, { do: "list" }, rung)).toMatchObject({
      figures: [],
      items: [{ label: "tray 1", state: "rung", left: 0 }],
    });
    expect(answer(timer, { do: "left", name: "tray 1" }, rung).headline).toContain("rang at 9:27");
    expect(answer(timer, { do: "list" }, { timers: [running("tray 1", -13 * 60)] }).items).toEqual([]);
  });
});

describe("more, less, put right", () => {
  test("give it, add, take", async () => {
    const her = baker();
    await her.one("bake timer 14 minuts");
    expect(lefts(await her.one("give it 2 more minutes"))).toEqual([16]);
    expect(lefts(await her.one("actually take 5 off"))).toEqual([11]);
    expect(lefts(await her.one("add a minute to the bake timer"))).toEqual([12]);
    expect(lefts(await her.one("make it 10 minutes less"))).toEqual([2]);
  });

  test("a correction counts from when it was set", async () => {
    const her = baker();
    await her.one("bake timer");
    expect(lefts(await her.one("oops no 17 minutes"))).toEqual([17]);
    const later = answer(timer, { do: "move", name: "bake", for_min: 17 }, { timers: [running("bake", 10)] });
    expect(value(later, "left")).toBe(12);
    expect(later.assumed).toEqual(["counted from 9:25, when it was set"]);
  });

  test("time can't be taken that isn't left", () => {
    const outcome = answer(
      timer,
      { do: "add", name: "bake", more_min: -12 },
      { timers: [running("bake", 10)] },
    );
    expect(outcome).toMatchObject({ status: "impossible" });
    expect(outcome.effects).toBeUndefined();
  });

  test("one that has rung gets more time from now on", () => {
    const outcome = answer(timer, { do: "add", more_min: 2 }, { timers: [running("bake", -4)] });
    expect(value(outcome, "left")).toBe(2);
    expect(outcome.effects).toEqual([
      { do: "change", list: "timers", id: 1, patch: { due_ms: now_ms + 2 * min, state: "running" } },
    ]);
  });

  test("adding and taking the same leaves it as it was", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 600 }), fc.integer({ min: 1, max: 600 }), (left, more) => {
        const longer = answer(timer, { do: "add", more_min: more }, { timers: [running("a", left)] });
        const due_ms = Number(
          longer.effects?.map((each) => (each.do === "change" ? each.patch.due_ms : 0))[0],
        );
        const back = answer(
          timer,
          { do: "add", more_min: -more },
          { timers: [{ ...running("a", left), due_ms }] },
        );
        expect(value(back, "left")).toBeCloseTo(left, 9);
      }),
    );
  });
});

describe("rename", () => {
  test.each([
    ["call tray 1 blue shells", "blue shells"],
    ["call it tray two instead", "tray 2"],
    ["rename tray 1 to the lemon ones", "lemon ones"],
    ["call the first tray lemons", "lemons"],
  ])("%s", async (say, label) => {
    const her = baker();
    await her.one("set half an hour for tray 1");
    expect(labels(await her.one(say))).toEqual([label]);
    expect(her.record().timers.map((each) => each.label)).toEqual([label]);
  });

  test("the longest name that fits is the old one", () => {
    const both = [{ label: "tray" }, { label: "tray 1" }];
    expect(cutRename("tray 1 blue shells", both)).toEqual({ timer: { label: "tray 1" }, to: "blue shells" });
    expect(cutRename("pot on the stove", both)).toBeUndefined();
  });
});

describe("stop", () => {
  const two = { timers: [running("tray 1", 12, 1), running("oven", 40, 2)] };

  test("by name, in other words, all", async () => {
    const her = baker({ record: two });
    expect(await her.one("kill the oven timer")).toMatchObject({
      headline: expect.stringContaining("Stopped oven"),
    });
    expect(lefts(await her.one("whats still going"))).toEqual([12]);
    await her.one("stop everything");
    expect(await her.one("anything still running?")).toMatchObject({ items: [] });
  });

  test("an unnamed one when one runs, and which one when several do", async () => {
    expect(await baker({ record: { timers: [running("tray 1", 12)] } }).one("stop the timer")).toMatchObject({
      status: "answered",
    });
    const her = baker({ record: two });
    expect(await her.one("stop the timer")).toMatchObject({ status: "asking" });
    expect(await her.one("the oven one")).toMatchObject({
      status: "answered",
      headline: expect.stringContaining("Stopped oven"),
    });
  });

  test("there is no pause, and it says so", async () => {
    expect(await baker({ record: two }).one("pause the oven timer")).toMatchObject({
      tool: "timer",
      status: "declined",
      headline: expect.stringMatching(/stop/i),
    });
  });

  test("undo brings it back", async () => {
    const her = baker({ record: two });
    await her.one("stop tray 1");
    await her.one("undo");
    expect(lefts(await her.one("whats running"))).toEqual([12, 40]);
  });
});

describe("which timer is meant", () => {
  const some = ["tray 1", "tray 2", "lemon shells", "ganache", "rest"].map((label) => ({ label }));
  const found = (words: string) => matching(words, some).map((each) => each.label);

  test("case, part of the name, small slips, forms of a word", () => {
    expect(found("TRAY 1")).toEqual(["tray 1"]);
    expect(found("lemon")).toEqual(["lemon shells"]);
    expect(found("ganach")).toEqual(["ganache"]);
    expect(found("resting")).toEqual(["rest"]);
    expect(found("shells")).toEqual(["lemon shells"]);
  });

  test("a number is never bent to another", () => {
    expect(found("tray 3")).toEqual([]);
    expect(found("tray")).toEqual(["tray 1", "tray 2"]);
  });

  test("nothing is found for nothing", () => {
    expect(found("caramel")).toEqual([]);
    expect(found("")).toEqual([]);
  });
});

test("an answer never has a number that isn't one", () => {
  fc.assert(
    fc.property(fc.double({ min: 0.001, max: 525_600, noNaN: true }), (for_min) => {
      const outcome = timer.compute({ do: "set", for_min }, world());
      expect(value(outcome, "left")).toBeGreaterThan(0);
      expect(Number.isFinite(value(outcome, "left"))).toBe(true);
    }),
  );
});
