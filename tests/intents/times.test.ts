/** Lengths of time: a baker's hour and a half has many names, and a moment is not a length. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { inBase } from "../../src/tools/lib/units.ts";
import { read, rounded } from "./reading.ts";

/** The lengths of time in a sentence, in minutes. */
const minutes = (said: string) =>
  read(said).amounts.flatMap(({ dim, value, unit }) =>
    dim === "time" ? [rounded(inBase(value, unit))] : [],
  );

const said: readonly (readonly [min: number, ...ways: string[]])[] = [
  [0.5, "30 sec", "30 seconds", "30s", "half a minute", "thirty seconds"],
  [1, "a minute", "1 min", "one minute", "60 sec"],
  [
    1.5,
    "a minute and a half",
    "90 seconds",
    "1.5 min",
    "1 min 30 sec",
    "one and a half minutes",
    "1½ minutes",
  ],
  [2.5, "2.5 minutes", "two and a half minutes", "2 min 30 s", "2 min and 30 seconds", "2½ min"],
  [12, "12 min", "12 minutes", "12min", "twelve minutes", "12 mins", "12m", "12 minuets", "12 minuts"],
  [
    15,
    "a quarter of an hour",
    "quarter of an hour",
    "a quarter hour",
    "15 min",
    "fifteen minutes",
    "quarter hour",
  ],
  [20, "20 min", "twenty minutes", "20 more minutes", "20 mins", "a third of an hour"],
  [
    30,
    "half an hour",
    "half hour",
    "a half hour",
    "30 min",
    "0.5 h",
    "1/2 hour",
    "half of an hour",
    "thirty mins",
  ],
  [
    45,
    "three quarters of an hour",
    "45 min",
    "three quarter hour",
    "forty five minutes",
    "forty-five mins",
    "0.75 h",
    "3/4 of an hour",
  ],
  [60, "an hour", "1 h", "one hour", "1 hr", "60 minutes", "1h"],
  [
    75,
    "an hour and a quarter",
    "1 hour 15",
    "1 h 15 min",
    "an hour and 15 minutes",
    "1.25 hours",
    "one and a quarter hours",
    "1h15",
  ],
  [80, "1 hour and 20 minutes", "an hour and twenty minutes", "1h20", "1 hr 20 min", "hour and 20 minutes"],
  [
    90,
    "an hour and a half",
    "hour and a half",
    "1h30",
    "1 h 30 min",
    "1 hr 30 mins",
    "one and a half hours",
    "1.5 hours",
    "1½ hours",
    "ninety minutes",
    "1h 30m",
    "1 hour and a half",
    "1,5 h",
  ],
  [
    105,
    "an hour and three quarters",
    "1 h 45",
    "1 hour 45 minutes",
    "1.75 hours",
    "one and three quarter hours",
  ],
  [120, "2 h", "two hours", "2hrs", "120 min"],
  [150, "two and a half hours", "2.5 h", "2h30", "2 hours and a half", "two hours and a half", "2 1/2 hours"],
  [1440, "24 h", "24 hours", "twenty four hours", "1 day", "one day"],
  [2880, "48 h", "2 days", "two days", "48 hours", "forty eight hours"],
  [10080, "1 week", "a week", "7 days", "one week"],
];

describe.each(said.map(([min, ...ways]) => ({ min, ways })))("$min min", ({ min, ways }) => {
  it.each(ways)('is said as "%s"', (way) => {
    expect(minutes(way)).toEqual([min]);
  });
  it.each(ways)('is said as "timer for %s please"', (way) => {
    expect(minutes(`timer for ${way} please`)).toEqual([min]);
  });
});

describe("no length of time", () => {
  it.each([
    "at quarter past ten",
    "half past three",
    "3 mint macarons",
    "a second tray",
    "15 macarons",
    "the hour",
    "in a moment",
    "24 hollow shells",
    "2 more macarons",
    "three quarters of a cup",
    "minute amounts of salt",
    "half of it",
    "ping me at 10:15",
    "the third day",
    "5 hazelnut ones",
    "the last minute",
    "day after tomorrow",
    "mon 7 am",
  ])('"%s"', (way) => {
    expect(minutes(way)).toEqual([]);
  });
});

it("keeps two lengths apart that belong to two things", () => {
  expect(minutes("30 min rest and 15 min bake")).toEqual([30, 15]);
  expect(minutes("12 min for tray 1, 14 min for tray 2")).toEqual([12, 14]);
  expect(minutes("an hour in the fridge and 30 minutes on the counter")).toEqual([60, 30]);
});

it("adds hours and minutes up, however they are written", () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 23 }), fc.integer({ min: 1, max: 59 }), (h, min) => {
      const all = [h * 60 + min];
      expect(minutes(`${h} h ${min} min`)).toEqual(all);
      expect(minutes(`${h} hours and ${min} minutes`)).toEqual(all);
      // "14h30" is the clock as it is written in French
      if (h < 13) expect(minutes(`${h}h${min}`)).toEqual(all);
      expect(minutes(`${h} hrs ${min}`)).toEqual(all);
    }),
  );
});
