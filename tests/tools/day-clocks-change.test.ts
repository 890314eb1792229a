/** A plan across a change of the clocks keeps the times on the kitchen's wall. */
import ICAL from "ical.js";
import { afterAll, describe, expect, test } from "vitest";
import { baker } from "../support/ask.ts";

const before = process.env.TZ;
afterAll(() => {
  if (before === undefined) delete process.env.TZ;
  else process.env.TZ = before;
});

/** The steps of 24 for 15:00 the next day, worked by hand in day.test.ts. */
const wall = [
  "11:37",
  "11:57",
  "12:22",
  "12:32",
  "12:37",
  "12:47",
  "12:57",
  "13:02",
  "13:17",
  "13:17",
  "13:32",
  "13:32",
  "13:32",
  "14:02",
  "14:10",
  "14:10",
  "14:30",
];

describe.each([
  // the clocks go forward on Sunday 8 March 2026 in New York, on 29 March in Paris; back on 1 November and 25 October
  ["America/New_York", "2026-03-07", "2026-03-08", 23],
  ["Europe/Paris", "2026-03-28", "2026-03-29", 23],
  ["America/New_York", "2026-10-31", "2026-11-01", 25],
  ["Europe/Paris", "2026-10-24", "2026-10-25", 25],
  ["Asia/Kolkata", "2026-03-07", "2026-03-08", 24],
  ["UTC", "2026-03-07", "2026-03-08", 24],
])("in %s from %s to %s", (zone, first, second, hours) => {
  const start = async () => {
    process.env.TZ = zone;
    const chat = baker({ now: `${first}T09:30:00` });
    return { chat, plan: await chat.one("24 macarons for tomorrow 3pm, when do I start") };
  };

  test("the night is as long as it is said to be here", async () => {
    await start();
    const noon = (date: string) => new Date(`${date}T12:00:00`).getTime();
    expect((noon(second) - noon(first)) / 3_600_000).toBe(hours);
  });

  test("the steps stand at the same clock times as ever", async () => {
    const { plan } = await start();
    expect(plan.steps?.map((each) => each.start.slice(11, 16))).toEqual(wall);
    expect(plan.steps?.at(-1)?.end).toBe(`${second}T15:00:00`);
  });

  test("timers ring at those clock times", async () => {
    const { chat } = await start();
    await chat.one("put the steps on timers");
    const rings = chat.record().timers.map((each) => new Date(each.due_ms));
    expect(rings.map((each) => each.toTimeString().slice(0, 5))).toEqual([
      "11:37",
      "11:57",
      "12:22",
      "12:37",
      "12:57",
      "13:02",
      "13:17",
      "13:32",
      "14:02",
      "14:10",
    ]);
    expect(rings.at(-1)?.getDate()).toBe(Number(second.slice(8)));
  });

  test("and so does the calendar", async () => {
    const { chat } = await start();
    await chat.one("save it as a calendar file");
    const events = new ICAL.Component(ICAL.parse(chat.files[0]?.text ?? "")).getAllSubcomponents("vevent");
    expect(events.map((each) => new ICAL.Event(each).startDate.toString().slice(11, 16))).toEqual(wall);
  });
});
