/**
 * A second opinion on moments: chrono-node reads the same phrase at the same reference time. Only phrases of its
 * English are compared, and only what the phrase itself says (hour, minute, weekday, day, month), never what is implied.
 */
import * as chrono from "chrono-node";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { whens } from "./reading.ts";

const reference = new Date(2026, 2, 14, 9, 30);
const hourNames = fc.integer({ min: 1, max: 12 });
const minuteNames = fc.integer({ min: 0, max: 59 });
const two = (value: number) => String(value).padStart(2, "0");
const weekdays = ["sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday"];
const months = [
  "january",
  "february",
  "march",
  "april",
  "june",
  "july",
  "august",
  "september",
  "october",
  "november",
  "december",
];

/** What chrono is certain of in a phrase that holds one moment. */
function second(phrase: string) {
  const found = chrono.en.casual.parse(phrase, reference);
  expect(found, phrase).toHaveLength(1);
  const start = found[0]?.start;
  const sure = (part: "hour" | "minute" | "weekday" | "day" | "month") =>
    start?.isCertain(part) ? start.get(part) : undefined;
  const [hour, minute] = [sure("hour"), sure("minute")];
  return {
    ...(hour !== undefined && hour !== null ? { minute: hour * 60 + (minute ?? 0) } : {}),
    ...(typeof sure("weekday") === "number" ? { weekday: sure("weekday") } : {}),
    ...(typeof sure("day") === "number" && !phrase.includes("tomorrow")
      ? { day: sure("day"), month: sure("month") }
      : {}),
  };
}

/** The same parts as the program reads them. */
function own(phrase: string) {
  const found = whens(phrase);
  expect(found, phrase).toHaveLength(1);
  const { minute, weekday, day, month } = found[0] ?? {};
  return {
    ...(minute !== undefined ? { minute } : {}),
    ...(weekday !== undefined ? { weekday } : {}),
    ...(day !== undefined ? { day, month } : {}),
  };
}

describe("agrees with the second opinion", () => {
  it.each([
    "3pm",
    "3 p.m.",
    "12 am",
    "12 pm",
    "12:30 am",
    "12:30 pm",
    "11:59 pm",
    "saturday at 4 pm",
    "8 march",
    "march 8",
    "8th of march",
    "tomorrow at 9 am",
    "march 21st at 3:15 pm",
    "on friday at 6:30pm",
    "dec 24",
    "24 dec at 10 am",
  ])("%s", (phrase) => {
    expect(own(phrase)).toEqual(second(phrase));
  });

  it("on every time of day with am or pm", () => {
    fc.assert(
      fc.property(
        hourNames,
        minuteNames,
        fc.constantFrom("am", "pm", " am", " pm", " a.m.", " p.m."),
        (hour, minute, half) => {
          const phrase = `at ${hour}:${two(minute)}${half}`;
          expect(own(phrase)).toEqual(second(phrase));
        },
      ),
    );
  });

  it("on every time of the 24 hour clock", () => {
    fc.assert(
      fc.property(fc.integer({ min: 13, max: 23 }), minuteNames, (hour, minute) => {
        const phrase = `at ${hour}:${two(minute)}`;
        expect(own(phrase)).toEqual(second(phrase));
      }),
    );
  });

  it("on days of the year, whichever stands first", () => {
    fc.assert(
      fc.property(fc.constantFrom(...months), fc.integer({ min: 1, max: 28 }), (month, day) => {
        for (const phrase of [
          `${month} ${day}`,
          `${day} ${month}`,
          `${day}. ${month}`.replace(". ", " "),
          `on ${month} ${day}`,
        ])
          expect(own(phrase)).toEqual(second(phrase));
      }),
    );
  });

  it("on weekdays with a time", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...weekdays),
        hourNames,
        fc.constantFrom("am", "pm"),
        (weekday, hour, half) => {
          const phrase = `${weekday} at ${hour} ${half}`;
          expect(own(phrase)).toEqual(second(phrase));
        },
      ),
    );
  });
});
