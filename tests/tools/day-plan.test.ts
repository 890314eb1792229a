import { describe, expect, test } from "vitest";
import {
  type DayImpossible,
  type DayOrder,
  type DayPlan,
  planDay,
  traysFor,
  usualFillings,
  usualSettings,
  wallSeconds,
  wallText,
} from "../../src/tools/day-plan/index.ts";

const asked = "2026-03-14T09:30";

function order(macarons: number, due: string, more: Partial<DayOrder> = {}): DayOrder {
  return {
    macarons,
    due: wallSeconds(due),
    now: wallSeconds(asked),
    settings: usualSettings,
    fillings: usualFillings,
    ...more,
  };
}

function plan(given: DayOrder): DayPlan {
  const answer = planDay(given);
  if (!answer.fits) throw new Error(`no plan, ready at ${wallText(answer.readyAt ?? 0)}`);
  return answer;
}

function impossible(given: DayOrder): DayImpossible {
  const answer = planDay(given);
  if (answer.fits) throw new Error(`a plan from ${wallText(answer.start)}`);
  return answer;
}

/** "11:37-11:57 Weigh and sift", the clock times of each step. */
const lines = ({ steps }: DayPlan): string[] =>
  steps.map(
    ({ start, end, name }) => `${wallText(start).slice(11, 16)}-${wallText(end).slice(11, 16)} ${name}`,
  );

describe("worked back by hand from the table of lengths", () => {
  // Trays: 22 x 24 / 10 = 52.8, so 53 shells, 2 trays of 30. Back from 15:00 on the 15th: warm 30 -> 14:30,
  // box 20 -> 14:10, mature 24 h -> 14:10 on the 14th, fill 24 x 20 s = 8 -> 14:02, cool 30 -> 13:32, bake 2
  // x 15 -> 13:02, rest 30 -> 12:32, pipe the first 10 -> 12:22, meringue 25 -> 11:57, weigh 20 -> 11:37. In
  // the meantime the hands are free from 12:47: ganache 20 by 13:17 (it sets 45), buttercream 30 by 14:02.
  test("24 for 15:00, every step", () => {
    const made = plan(order(24, "2026-03-15T15:00"));
    expect(wallText(made.start)).toBe("2026-03-14T11:37:00");
    expect(lines(made)).toEqual([
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
    const cooling = made.steps.find(({ id }) => id === "cool-1");
    expect(wallText(cooling?.from ?? 0)).toBe("2026-03-14T13:17:00");
  });

  test.each([
    // An hour, and two hours, later: all of it moves along.
    [24, "2026-03-15T16:00", "2026-03-14T12:37:00"],
    [24, "2026-03-15T17:00", "2026-03-14T13:37:00"],
    // 79.2 -> 80 shells, 3 trays. 18:00 - 30 - 20 = 17:10; fill 12 -> 16:58; cool -> 16:28; bake 45 -> 15:43;
    // rest -> 15:13; pipe -> 15:03; meringue -> 14:38; weigh -> 14:18.
    [36, "2026-03-20T18:00", "2026-03-19T14:18:00"],
    // 105.6 -> 106 shells, 4 trays. 12:00 - 30 - 20 = 11:10; fill 16 -> 10:54; cool -> 10:24; bake 60 ->
    // 9:24; rest -> 8:54; pipe -> 8:44; meringue -> 8:19; weigh -> 7:59.
    [48, "2026-03-21T12:00", "2026-03-20T07:59:00"],
    // 3 -> 7 shells, 1 tray, and seconds: 15:00 - 50 = 14:10; fill 60 s -> 14:09; cool -> 13:39; bake ->
    // 13:24; rest -> 12:54; pipe -> 12:44; meringue -> 12:19; weigh -> 11:59.
    [3, "2026-03-15T15:00", "2026-03-14T11:59:00"],
    [4, "2026-03-15T15:00", "2026-03-14T11:58:40"],
  ])("%i for %s starts at %s", (macarons, due, start) => {
    expect(wallText(plan(order(macarons, due)).start)).toBe(start);
  });

  test("a night between filling and boxing makes the maturing longer, not the bake later", () => {
    // Boxed by 06:30 is asleep, so by 22:00 the evening before, 21:40 - 24 h = 21:40, fill 8 -> 21:32.
    const { steps } = plan(order(24, "2026-03-17T07:00"));
    const fill = steps.find(({ id }) => id === "fill");
    expect(wallText(fill?.start ?? 0)).toBe("2026-03-15T21:32:00");
    // Filled by 07:10 leaves 2 minutes of that morning, so the evening before; it matures all night as well.
    const longer = plan(order(24, "2026-03-17T07:55")).steps.find(({ id }) => id === "mature");
    expect(wallText(longer?.start ?? 0)).toBe("2026-03-15T22:00:00");
    expect(wallText(longer?.end ?? 0)).toBe("2026-03-17T07:05:00");
  });
});

describe("when it can't be", () => {
  test("24 by 09:00 tomorrow: started now, the last step ends at 12:53", () => {
    // Filled by 08:10 today has passed at 09:30. Forward: weigh -> 09:50, meringue -> 10:15, pipe -> 10:25,
    // rest -> 10:55, bake two -> 11:25, cool -> 11:55, fill -> 12:03, mature -> 12:03 tomorrow, box -> 12:23,
    // warm -> 12:53.
    const answer = impossible(order(24, "2026-03-15T09:00"));
    expect(wallText(answer.readyAt ?? 0)).toBe("2026-03-15T12:53:00");
    expect(answer).toMatchObject({ most: 0, noRestFits: false });
    expect(plan(order(24, "2026-03-15T12:53")).start).toBe(wallSeconds(asked));
  });

  test("due in the past", () => {
    const answer = impossible(order(24, "2026-03-14T08:00"));
    expect(wallText(answer.readyAt ?? 0)).toBe("2026-03-15T12:53:00");
  });

  test("fewer, or no rest, would fit", () => {
    // 13 make 29 shells, one tray: 15 min of oven and 11 x 20 s of filling less than 24, ready from 12:34:20.
    // 14 need a second tray: ready from 12:49:40, 15 from 12:50, 21 from 12:52. Without the rest the hands
    // hold 24 up (weigh, meringue, two trays, ganache: 85 min -> 10:55, sets -> 11:40, fill, ...): ready from
    // 12:38.
    expect(impossible(order(24, "2026-03-15T12:40"))).toMatchObject({ most: 13, noRestFits: true });
    expect(impossible(order(24, "2026-03-15T12:50"))).toMatchObject({ most: 15, noRestFits: true });
    expect(impossible(order(24, "2026-03-15T12:37"))).toMatchObject({ most: 13, noRestFits: false });
    expect(impossible(order(24, "2026-03-15T12:52"))).toMatchObject({ most: 21 });
  });

  test("never, when a step is longer than a waking day", () => {
    const settings = { ...usualSettings, awake: { from: 600, to: 620 } };
    const answer = impossible(order(24, "2026-03-30T12:00", { settings }));
    expect(answer).toEqual({ fits: false, most: 0, noRestFits: false });
  });
});

describe("as the bench is set", () => {
  const start = (settings: object, more: Partial<DayOrder> = {}): string =>
    wallText(
      plan(order(24, "2026-03-15T15:00", { settings: { ...usualSettings, ...settings }, ...more })).start,
    );

  test("without the rest it is the hands that lead", () => {
    // The ganache has to be made by 13:17, and so has the second tray: with what comes before, 85 min of
    // hands.
    expect(start({ noRest: true })).toBe("2026-03-14T11:52:00");
  });

  test("two ovens bake both trays at once, the piping of the second then leads", () => {
    // Both in at 13:17, rested from 12:47, piped from 12:27: meringue from 12:02, weigh from 11:42.
    expect(start({ ovens: 2 })).toBe("2026-03-14T11:42:00");
  });

  test("waking hours past midnight", () => {
    // From 14:00 to 02:00: boxed by 14:30 and filled by 14:10, as before, but between 14:00 and 14:02 nothing
    // else fits. So the baking is over by 02:00, both trays are piped by 01:00 and 01:15, and the hands are
    // busy to the end: 20 + 25 + 2 x 10 + 20 + 30 = 115 min before 02:00.
    const now = wallSeconds("2026-03-13T09:30");
    expect(start({ awake: { from: 14 * 60, to: 2 * 60 } }, { now })).toBe("2026-03-14T00:05:00");
  });

  test("always awake", () => expect(start({ awake: { from: 0, to: 0 } })).toBe("2026-03-14T11:37:00"));

  test("steps of no length are no steps", () => {
    const settings = { ...usualSettings, weigh: 0, pipe: 0, rest: 0, cool: 0, mature: 0, box: 0, warm: 0 };
    const made = plan(order(24, "2026-03-15T15:00", { settings, fillings: [] }));
    // 15:00 - 8 - 2 x 15 - 25.
    expect(lines(made)).toEqual([
      "13:57-14:22 Meringue and macaronage",
      "14:22-14:37 Bake tray 1",
      "14:37-14:52 Bake tray 2",
      "14:52-15:00 Fill",
    ]);
  });

  test("trays as said, or from a mat of another size", () => {
    // One tray for all: 15 fewer in the oven.
    expect(start({}, { trays: 1 })).toBe("2026-03-14T11:52:00");
    // 53 shells on mats of 14 are 4 trays: 30 more.
    expect(start({}, { shellsOnTray: 14 })).toBe("2026-03-14T11:07:00");
    expect([traysFor(24), traysFor(36), traysFor(48), traysFor(120)]).toEqual([2, 3, 4, 9]);
    // 22 x 150 / 10 is 330 exactly: 11 trays, not 12.
    expect(traysFor(150)).toBe(11);
  });
});

describe("orders that make no sense are refused", () => {
  const bad: Partial<DayOrder>[] = [
    { macarons: 0 },
    { macarons: 2.5 },
    { trays: 0 },
    { shellsOnTray: 0 },
    { now: 0.5 },
    { due: Number.NaN },
    { settings: { ...usualSettings, rest: -1 } },
    { settings: { ...usualSettings, bake: 0 } },
    { settings: { ...usualSettings, ovens: 0 } },
    { settings: { ...usualSettings, awake: { from: 0, to: 2000 } } },
    { fillings: [{ name: "Curd", handsMin: Number.NaN, setMin: 0 }] },
    { done: [{ id: "pipe-1", start: 0, end: 600 }] },
    { done: [{ id: "weigh", start: 600, end: 0 }] },
  ];
  test.each(bad)("%o", (more) => {
    expect(() => planDay(order(24, "2026-03-15T15:00", more))).toThrow(RangeError);
  });

  test("a time that is not one", () => {
    for (const text of ["2026-03-15", "2026-13-15T10:00", "15:00", ""]) {
      expect(() => wallSeconds(text)).toThrow(RangeError);
    }
  });
});

test("120 macarons on 9 trays take well under 50 ms, possible or not", () => {
  const took = ["2026-03-21T18:00", "2026-03-15T09:00"].map((due) => {
    // The best of five, since other work may have the machine in between.
    const runs = Array.from({ length: 5 }, () => {
      const before = performance.now();
      planDay(order(120, due));
      return performance.now() - before;
    });
    return Math.min(...runs);
  });
  expect(Math.max(...took)).toBeLessThan(50);
});
