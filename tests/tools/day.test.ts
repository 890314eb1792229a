/** The day as it is asked for: worked back by hand from the book's lengths (from memory, all of them settings). */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { day } from "../../src/tools/day/day.ts";
import { baker } from "../support/ask.ts";
import { answer } from "../support/world.ts";

/** "11:37-11:57 Weigh and sift" */
const lines = ({ steps = [] }: Pick<Answer, "steps">) =>
  steps.map((each) => `${each.start.slice(11, 16)}-${each.end.slice(11, 16)} ${each.name}`);
const starts = ({ steps = [] }: Pick<Answer, "steps">) => steps[0]?.start;

describe("worked back", () => {
  // 22 x 24 / 10 = 52.8, 53 shells, 2 trays of 30. Back from 15:00: warm 30, box 20, mature 24 h: 14:10 the day before;
  // fill 24 x 20 s = 8 min; cool 30: 13:32; bake 2 x 15; rest 30; pipe 10; meringue 25; weigh 20: 11:37. The ganache
  // sets 45 by 14:02, so its 20 min end at 13:17; the buttercream's 30 end at 14:02; tray 2 is piped by 12:47.
  test("24 for tomorrow at three, every step", async () => {
    const said = await baker().one("24 macarons for tomorrow 3pm, when do I start");
    expect(said).toMatchObject({ tool: "day", status: "answered" });
    expect(lines(said)).toEqual([
      "11:37-11:57 Weigh and sift",
      "11:57-12:22 Meringue and macaronage",
      "12:22-12:32 Pipe tray 1",
      "12:32-13:02 Rest tray 1",
      "12:37-12:47 Pipe tray 2",
      "12:47-13:17 Rest tray 2",
      "12:57-13:17 Ganache",
      "13:02-13:17 Bake tray 1",
      "13:17-13:32 Bake tray 2",
      "13:17-14:02 Ganache sets",
      "13:32-14:02 Cool tray 1",
      "13:32-14:02 Cool tray 2",
      "13:32-14:02 Buttercream",
      "14:02-14:10 Fill",
      "14:10-14:10 Mature",
      "14:10-14:30 Box and label",
      "14:30-15:00 To room temperature",
    ]);
    expect(said.rule?.basis).toBe("from memory");
    expect(said.headline).toMatch(/Start 11:37 for 24 macarons, 2 trays/);
    expect(said.steps?.filter((each) => each.hands).map((each) => each.name)).toEqual([
      "Weigh and sift",
      "Meringue and macaronage",
      "Pipe tray 1",
      "Pipe tray 2",
      "Ganache",
      "Buttercream",
      "Fill",
      "Box and label",
    ]);
  });

  // 16:10 the day before; fill 16:02; cool 15:32; bakes from 15:02. The ganache has to be made by 15:17 to set, tray 2
  // piped by 15:17 and tray 1 by 15:02, by one pair of hands: 10 + 10 + 20 min before 15:17, so tray 1 from 14:37;
  // meringue 14:12, weigh 13:52
  test("24 for five without resting", async () => {
    const said = await baker().one("can I have 24 macarons ready tomorrow at 5 pm without resting");
    expect(starts(said)).toBe("2026-03-14T13:52:00");
    expect(lines(said).join()).not.toMatch(/Rest/);
  });

  // with a ganache alone the hands are free of the buttercream: nothing else of the first plan moves
  test("a filling that is named is the only one", async () => {
    const said = await baker().one("24 ganache macarons for tomorrow 3pm, when do I start");
    expect(starts(said)).toBe("2026-03-14T11:37:00");
    expect(lines(said).join()).not.toMatch(/Buttercream/);
    expect(said.assumed?.join()).not.toMatch(/buttercream/);
  });

  // 22 x 12 / 10 = 26.4, 27 shells, 1 tray; due Friday 20 March 18:00: mature from 17:10 on the 19th, fill 12 x 20 s =
  // 4 min 17:06, cool 16:36, bake 16:21, rest 15:51, pipe 15:41, meringue 15:16, weigh 14:56
  test("a weekday", async () => {
    expect(starts(await baker().one("12 macarons for friday 6 pm, when do I start"))).toBe(
      "2026-03-19T14:56:00",
    );
  });
});

describe("what the bench is set to", () => {
  // bake 12 and rest 20 instead of 15 and 30, one tray of 60, mature 48 h: due 17 March 15:00, filled by 14:10 on the 15th,
  // fill 14:02, cool 13:32, bake 13:20, rest 13:00. The ganache has to be made by 13:17 to set, and its 20 min of hands
  // come after the piping, so that ends at 12:57: pipe 12:47, meringue 12:22, weigh 12:02
  test("goes into the plan and is called the baker's own", () => {
    const bench = { bake_min: 12, rest_min: 20, mature_h: 48, shells_a_tray: 60 };
    const said = answer(day, { macarons: 24, due: { days: 3, minute: 900, half: "pm" } }, { bench });
    expect(starts(said)).toBe("2026-03-15T12:02:00");
    expect(said.rule?.basis).toBe("your bench");
  });

  // 15: 33 shells with a tenth to spare are 2 trays of 30, 30 shells without spares 1
  test("spares and trays are the bench's too", () => {
    const due = { days: 1, minute: 900, half: "pm" };
    expect(answer(day, { macarons: 15, due }).headline).toMatch(/2 trays/);
    const own = answer(day, { macarons: 15, due }, { bench: { spare_percent: 0 } });
    expect(own.headline).toMatch(/1 tray,/);
    expect(own.assumed?.join()).not.toMatch(/spare/);
    expect(own.rule?.basis).toBe("your bench");
  });

  test("the rule says the lengths it goes by, the baker's own among them", () => {
    const due = { days: 3, minute: 900, half: "pm" };
    expect(answer(day, { macarons: 24, due }).rule?.text).toMatch(
      /rest 30, bake 15 a tray one after another.*22:00 and 7:00/,
    );
    const own = answer(
      day,
      { macarons: 24, due },
      { bench: { rest_min: 45, bake_min: 12, trays_at_once: 2, wake_min: 360 } },
    );
    expect(own.rule?.text).toMatch(/rest 45, bake 12 a tray 2 at a time.*22:00 and 6:00/);
  });

  test("nobody works before she is awake", () => {
    const due = { days: 3, minute: 540, half: "am" };
    const early = answer(day, { macarons: 24, due });
    const late = answer(day, { macarons: 24, due }, { bench: { wake_min: 540 } });
    const boxed = (said: typeof early) =>
      said.steps?.find((each) => each.name === "Box and label")?.end.slice(5, 16);
    // the usual hours: boxed 8:10 to 8:30; awake from 9:00: the evening before, by 22:00
    expect(boxed(early)).toBe("03-17T08:30");
    expect(boxed(late)).toBe("03-16T22:00");
  });
});

describe("what can't be", () => {
  // From 9:30: weigh 9:50, meringue 10:15, tray 1 10:25, rest 10:55, baked 11:10; tray 2 baked 11:25, cool 11:55; ganache
  // by 10:55 set 11:40; fill 12:03; mature to 12:03 tomorrow; box 12:23; warm 12:53
  test("too soon: says when they would be ready", async () => {
    const said = await baker().one("24 macarons for today 5 pm, when do I start");
    expect(said.status).toBe("impossible");
    expect(said.headline).toMatch(/tomorrow 12:53/);
    expect(said.figures ?? []).toEqual([]);
    expect(said.steps ?? []).toEqual([]);
  });

  test.each([
    "24 macarons for today at 8 am",
    "24 macarons for this morning at 9",
    "24 macarons for march 10 at 3 pm",
  ])("%s has passed", async (line) => {
    expect((await baker().one(line)).status).toBe("impossible");
  });

  test.each(["0 macarons for tomorrow 3pm", "-5 macarons for tomorrow 3pm"])("%s", async (line) => {
    expect((await baker().one(line)).status).toBe("impossible");
  });

  test("more than a day can hold is said to be so, and is no error", async () => {
    expect(await baker().one("24000 macarons for friday 3pm")).toMatchObject({
      tool: "day",
      status: "impossible",
    });
    // at 15 cm a tray holds 2: 22 x 9000 / 10 = 19800 shells on 9900 trays
    const due = { days: 6, minute: 900, half: "pm" };
    expect(answer(day, { macarons: 9000, diameter_mm: 150, due }).headline).toMatch(/9900 trays/);
  });

  test("steps on timers without a plan", async () => {
    expect((await baker().one("put the steps on timers")).status).toBe("impossible");
  });
});

describe("what is asked back", () => {
  test("how many, and a bare number is enough", async () => {
    const chat = baker();
    expect(await chat.one("plan the bake for tomorrow 3pm")).toMatchObject({ tool: "day", status: "asking" });
    expect(starts(await chat.one("24"))).toBe("2026-03-14T11:37:00");
  });

  test("at what time, when only the day was said", async () => {
    const chat = baker();
    expect(await chat.one("24 macarons for tomorrow, when do I start")).toMatchObject({
      tool: "day",
      status: "asking",
    });
    expect(starts(await chat.one("3 pm"))).toBe("2026-03-14T11:37:00");
  });
});

describe("boxes", () => {
  test("6 boxes of 12 are 72 macarons", async () => {
    expect((await baker().one("6 boxes of 12 macarons for friday 5 pm")).headline).toMatch(/for 72 macarons/);
    expect((await baker().one("2 boxes of 6 for tomorrow at 5 pm")).headline).toMatch(/for 12 macarons/);
  });

  test("boxes with a number of macarons beside them: the macarons count", async () => {
    expect((await baker().one("6 boxes, 72 macarons in all, by friday 5 pm")).headline).toMatch(
      /for 72 macarons/,
    );
  });

  test("boxes of nobody knows how many: asked for, never taken for macarons", async () => {
    const said = await baker().one("24 boxes of macarons by friday 6 pm, when do i start");
    expect(said).toMatchObject({ status: "asking" });
    expect(said.question).toMatch(/how many macarons/i);
  });
});

describe("a clock time that has passed today means tomorrow", () => {
  // maturing 2 h on this bench: due 9:00 tomorrow; box 8:10, so filled by 22:00 tonight and left to mature; fill 21:52,
  // cool 21:22, bakes from 20:52, rest 20:22, pipe 20:12, meringue 19:47, weigh 19:27
  test("and the answer says so", () => {
    const said = answer(day, { macarons: 24, due: { minute: 540, half: "am" } }, { bench: { mature_h: 2 } });
    expect(starts(said)).toBe("2026-03-14T19:27:00");
    expect(said.assumed?.join()).toMatch(/tomorrow/);
  });
});

test("a share below nothing is no color of the batter", async () => {
  const said = await baker().one(
    "51 macarons for saturday 3pm, -171 percent pink shells, pistachio buttercream",
  );
  expect([said.tool, said.status, said.figures]).toEqual(["day", "impossible", undefined]);
});
