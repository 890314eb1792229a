/**
 * Dates and lengths of time as chrono-node reads them, beside ours. Where the two are meant to differ, that is listed:
 * it takes a bare hour as the morning's, "last sunday" and a passed weekday by rules of its own, and reads no vague
 * spellings; those follow the program's own rules here.
 */
import * as chrono from "chrono-node";
import { describe, expect, test } from "vitest";
import { localIso } from "../../../src/tools/lib/days.ts";
import { inBase } from "../../../src/tools/lib/units.ts";
import { ahead, behind } from "../../../src/tools/lib/when.ts";
import { readings } from "../../support/ask.ts";

const now = new Date("2026-03-14T09:30:00");

const whenIn = (sentence: string) => {
  const when = readings(sentence).flatMap((each) => each.whens)[0];
  if (!when) throw new Error(`no moment in "${sentence}"`);
  return when;
};
const ours = (sentence: string) => {
  const found = ahead(whenIn(sentence), now.getTime());
  return found.ok ? localIso(found.at_ms) : found.why;
};
const theirs = (sentence: string, forwardDate = true) => {
  const date = chrono.en.parseDate(sentence, now, { forwardDate });
  return date ? localIso(date.getTime()) : "nothing";
};

describe("moments to come, both ways", () => {
  test.each([
    "ping me at 3pm",
    "ping me at 15:00",
    "ping me at 10:15 am",
    "ping me tomorrow at 9 am",
    "ping me tomorrow at 18:30",
    "ping me on monday at 6 am",
    "ping me on friday at 6 pm",
    "ping me at noon",
    "ping me on march 21 at 2 pm",
    "ping me on 21 march at 14:00",
    "ping me next friday at 8 am",
    "ping me at 11 pm tonight",
  ])("%s", (sentence) => {
    expect(ours(sentence)).toBe(theirs(sentence));
  });
});

describe("days gone by, both ways", () => {
  test.each([
    "note for yesterday, lemon",
    "note for march 8: lemon",
    "note for 7 march, lemon",
    "note lemon, 3 days ago",
    "note lemon, two weeks ago",
    "note for feb 21, lemon",
    "note for today, lemon",
  ])("%s", (sentence) => {
    const found = behind(whenIn(sentence), now.getTime());
    const date = chrono.en.parseDate(sentence, now, { forwardDate: false });
    expect(found.ok && found.day).toBe(date && localIso(date.getTime()).slice(0, 10));
  });
});

describe("lengths of time, both ways", () => {
  test.each([
    "12 min",
    "20 minutes",
    "half an hour",
    "1 hour and 20 minutes",
    "90 seconds",
    "3 hours",
    "2 days",
    "an hour",
    "1.5 hours",
  ])("in %s", (length) => {
    const amount = readings(`set a timer for ${length}`)[0]?.amounts.find((each) => each.dim === "time");
    const minutes = inBase(amount?.value ?? Number.NaN, amount?.unit ?? "min");
    const then = chrono.en.parseDate(`in ${length}`, now);
    expect(minutes).toBeCloseTo(((then?.getTime() ?? 0) - now.getTime()) / 60_000, 6);
  });
});

describe("where they part on purpose", () => {
  // "A bare hour is the next time that the clock shows it": at 9:30 "at 7" is tonight.
  test("a bare hour", () => {
    expect(ours("ping me at 7")).toBe("2026-03-14T19:00:00");
    expect(theirs("ping me at 7")).not.toBe("2026-03-14T19:00:00");
  });

  // "This morning" makes a time that has passed impossible; it is not moved on.
  test("this morning", () => {
    expect(ours("ping me at 8 this morning")).toBe("8:00 this morning has passed; it is 9:30.");
  });

  // "for 3 days ago" is read there as three days to come
  test("for so many days ago", () => {
    const found = behind(whenIn("note for 3 days ago, lemon"), now.getTime());
    expect(found.ok && found.day).toBe("2026-03-11");
    expect(theirs("for 3 days ago", false)).toMatch(/^2026-03-17/);
  });

  // spellings that bakers' thumbs make
  test("misspelt days and words", () => {
    expect(ours("ping me tommorow at 9 am")).toBe("2026-03-15T09:00:00");
    expect(ours("ping me at quarter past ten")).toBe("2026-03-14T10:15:00");
  });
});
