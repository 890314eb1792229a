/** Moments against the clock: days and times counted by hand on the calendar of March 2026 (the 14th is a Saturday). */
import fc from "fast-check";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import {
  clock,
  daysBetween,
  friendly,
  lengthText,
  localDay,
  localIso,
  plusDays,
  startOf,
} from "../../../src/tools/lib/days.ts";
import { ahead, behind, minutesMeant, type Said } from "../../../src/tools/lib/when.ts";

const at = (text: string) => new Date(text).getTime();
const saturday = at("2026-03-14T09:30:00");

const due = (said: Said, now_ms = saturday) => {
  const found = ahead(said, now_ms);
  return found.ok ? localIso(found.at_ms) : found.why;
};
const gone = (said: Said, now_ms = saturday) => {
  const found = behind(said, now_ms);
  return found.ok ? found.day : found.why;
};
const assumed = (said: Said, now_ms = saturday) => {
  const found = ahead(said, now_ms);
  return found.ok ? found.assumed.join("; ") : found.why;
};

describe("what is to come", () => {
  test("a time later today is today's", () => {
    expect(due({ minute: 615 })).toBe("2026-03-14T10:15:00");
    expect(due({ minute: 900, half: "24" })).toBe("2026-03-14T15:00:00");
    expect(assumed({ minute: 615 })).toBe("");
  });

  test("a time that has passed today is tomorrow's, and says so", () => {
    expect(due({ minute: 540, half: "am" })).toBe("2026-03-15T09:00:00");
    expect(assumed({ minute: 540, half: "am" })).toBe("tomorrow, 9:00 has passed today");
  });

  test("a bare hour is the next time that the clock shows it", () => {
    expect(due({ minute: 420 })).toBe("2026-03-14T19:00:00");
    expect(due({ minute: 420 }, at("2026-07-05T20:10:00"))).toBe("2026-07-06T07:00:00");
    expect(due({ minute: 720 })).toBe("2026-03-14T12:00:00");
    expect(due({ minute: 720 }, at("2026-03-14T13:00:00"))).toBe("2026-03-15T00:00:00");
    expect(due({ minute: 585 }, at("2026-03-14T09:45:00"))).toBe("2026-03-14T21:45:00");
  });

  test("today and this morning are taken at their word", () => {
    expect(ahead({ days: 0, minute: 480, part: "morning" }, saturday)).toEqual({
      ok: false,
      why: "8:00 this morning has passed; it is 9:30.",
    });
    expect(ahead({ days: 0, minute: 540, half: "am" }, saturday).ok).toBe(false);
    expect(due({ days: 0, minute: 420 })).toBe("2026-03-14T19:00:00");
    expect(due({ days: 0, minute: 135, part: "afternoon" })).toBe("2026-03-14T14:15:00");
  });

  test("a day gone by can't come", () => {
    expect(due({ days: -1 })).toBe("Yesterday has passed.");
    expect(due({ days: -1, minute: 720, half: "24" })).toBe("Yesterday has passed.");
    expect(due({ month: 3, day: 8 })).toMatch(/Sun 8 Mar has passed; today is Sat 14 Mar/);
    expect(due({ year: 2025, month: 3, day: 20 })).toMatch(/has passed/);
    expect(due({ weekday: 0, which: "last" })).toBe("Last Sunday has passed.");
    expect(due({ month: 2, day: 30 })).toBe("There is no day 30 in February.");
  });

  test("weekdays: today while its time is to come, else the next; next is never today", () => {
    expect(due({ weekday: 5, minute: 1080, half: "pm" })).toBe("2026-03-20T18:00:00");
    expect(due({ weekday: 6, minute: 900, half: "pm" })).toBe("2026-03-14T15:00:00");
    expect(due({ weekday: 6, minute: 480, half: "am" })).toBe("2026-03-21T08:00:00");
    expect(due({ weekday: 6, which: "next", minute: 900, half: "pm" })).toBe("2026-03-21T15:00:00");
    expect(due({ weekday: 6, day: 21, minute: 720, half: "24" })).toBe("2026-03-21T12:00:00");
  });

  test("dates: the next day of that number, over the end of a month and of a year", () => {
    expect(due({ day: 21 })).toBe("2026-03-21T00:00:00");
    expect(due({ day: 9 })).toBe("2026-04-09T00:00:00");
    expect(due({ day: 31 }, at("2026-04-02T09:00:00"))).toBe("2026-05-31T00:00:00");
    expect(due({ month: 1, day: 5 }, at("2026-12-20T09:00:00"))).toBe("2027-01-05T00:00:00");
  });

  test("an hour of a day to come is the first that a baker is awake for, and says so", () => {
    expect(due({ days: 1, minute: 180 })).toBe("2026-03-15T15:00:00");
    expect(assumed({ days: 1, minute: 180 })).toBe("15:00, not 3:00");
    expect(due({ days: 1, minute: 420 })).toBe("2026-03-15T07:00:00");
    const early = ahead({ days: 1, minute: 300 }, saturday, { wake_min: 240 });
    expect(early.ok && localIso(early.at_ms)).toBe("2026-03-15T05:00:00");
    const moved = ahead({ minute: 240 }, saturday, { day: "2026-03-15" });
    expect(moved.ok && localIso(moved.at_ms)).toBe("2026-03-15T16:00:00");
  });

  test("parts of the day settle the half of it", () => {
    expect(minutesMeant({ minute: 480, part: "evening" })).toEqual([1200]);
    expect(minutesMeant({ minute: 480, part: "morning" })).toEqual([480]);
    expect(minutesMeant({ minute: 735, part: "afternoon" })).toEqual([735]);
    expect(due({ days: 0, minute: 120, part: "night" })).toBe("2026-03-15T02:00:00");
    expect(due({ days: 0, minute: 480, part: "night" })).toBe("2026-03-14T20:00:00");
    expect(due({ minute: 1440, half: "24" })).toBe("2026-03-15T00:00:00");
  });

  test("a day without a time says so", () => {
    expect(ahead({ days: 1 }, saturday)).toMatchObject({ ok: true, timed: false, day: "2026-03-15" });
    expect(ahead({ part: "morning" }, saturday)).toMatchObject({
      timed: false,
      day: "2026-03-15",
      part: "morning",
    });
  });
});

describe("what has been", () => {
  test("days, weekdays and dates gone by", () => {
    expect(gone({ days: -1 })).toBe("2026-03-13");
    expect(gone({ days: -14 })).toBe("2026-02-28");
    expect(gone({ weekday: 0, which: "last" })).toBe("2026-03-08");
    expect(gone({ weekday: 6, which: "last" })).toBe("2026-03-07");
    expect(gone({ weekday: 6 })).toBe("2026-03-14");
    expect(gone({ weekday: 2 })).toBe("2026-03-10");
    expect(gone({ month: 3, day: 8 })).toBe("2026-03-08");
    expect(gone({ day: 9 })).toBe("2026-03-09");
    expect(gone({ day: 20 })).toBe("2026-02-20");
    expect(gone({ day: 31 })).toBe("2026-01-31");
    expect(gone({ month: 12, day: 24 })).toBe("2025-12-24");
    expect(gone({ month: 2, day: 29 })).toBe("2024-02-29");
  });

  test("what is still to come is refused", () => {
    expect(gone({ days: 1 })).toMatch(/still to come/);
    expect(gone({ weekday: 0, which: "next" })).toMatch(/still to come/);
    expect(gone({ year: 2026, month: 3, day: 20 })).toMatch(/still to come/);
    expect(gone({ month: 4, day: 31 })).toMatch(/no day 31 in April/);
  });

  test("times: the last time that the clock showed it", () => {
    const last = (said: Said) => {
      const found = behind(said, saturday);
      return found.ok ? localIso(found.at_ms) : found.why;
    };
    expect(last({ minute: 480 })).toBe("2026-03-14T08:00:00");
    expect(last({ minute: 600 })).toBe("2026-03-13T22:00:00");
    expect(last({ days: -1, minute: 540, part: "night" })).toBe("2026-03-13T21:00:00");
    expect(last({ days: 0, minute: 600, half: "am" })).toMatch(/still to come/);
  });
});

describe("clocks put forward and back", () => {
  const before = process.env.TZ;
  afterAll(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });

  describe("Europe/Berlin, 29 March 2026 at 2:00 and 25 October 2026 at 3:00", () => {
    beforeAll(() => {
      process.env.TZ = "Europe/Berlin";
    });

    test("the zone is in force", () =>
      expect(at("2026-03-29T03:00:00") - at("2026-03-29T01:00:00")).toBe(3_600_000));

    test("7:00 tomorrow is 7:00, nine and a half hours off", () => {
      const now = at("2026-03-28T20:30:00");
      const found = ahead({ days: 1, minute: 420, half: "am" }, now);
      expect(found.ok && localIso(found.at_ms)).toBe("2026-03-29T07:00:00");
      expect(found.ok && (found.at_ms - now) / 3_600_000).toBe(9.5);
    });

    test("a time that the clock skips is an hour later, and says so", () => {
      const found = ahead({ minute: 150, half: "am" }, at("2026-03-28T23:00:00"));
      expect(found.ok && localIso(found.at_ms)).toBe("2026-03-29T03:30:00");
      expect(found.ok && found.assumed.at(-1)).toBe("3:30, the clock skips 2:30 that day");
    });

    test("a time that the clock shows twice comes again", () => {
      const first = at("2026-10-25T02:30:00");
      const found = ahead({ minute: 150, half: "am" }, first + 60_000);
      expect(found.ok && found.at_ms - first).toBe(3_600_000);
      expect(found.ok && localIso(found.at_ms)).toBe("2026-10-25T02:30:00");
    });

    test("days are counted on the calendar", () => {
      expect(plusDays("2026-03-28", 1)).toBe("2026-03-29");
      expect(plusDays("2026-10-26", -1)).toBe("2026-10-25");
      expect(daysBetween("2026-03-28", "2026-03-30")).toBe(2);
      expect(gone({ days: -1 }, at("2026-03-30T00:30:00"))).toBe("2026-03-29");
      expect(gone({ weekday: 0, which: "last" }, at("2026-10-26T00:10:00"))).toBe("2026-10-25");
      expect(friendly(at("2026-03-30T09:00:00"), at("2026-03-29T22:00:00"))).toBe("tomorrow 9:00");
    });
  });

  describe("America/New_York, 8 March 2026 at 2:00", () => {
    beforeAll(() => {
      process.env.TZ = "America/New_York";
    });

    test("midnight, and the hours after it", () => {
      const now = at("2026-03-07T22:00:00");
      expect(due({ minute: 1440, half: "24" }, now)).toBe("2026-03-08T00:00:00");
      expect(due({ minute: 180, half: "am" }, now)).toBe("2026-03-08T03:00:00");
      const found = ahead({ minute: 180, half: "am" }, now);
      expect(found.ok && (found.at_ms - now) / 3_600_000).toBe(4);
    });
  });

  test("laws, wherever the clock stands: what is to come comes within its day, and what has been has been", () => {
    const zones = fc.constantFrom(
      "Europe/Berlin",
      "America/New_York",
      "Australia/Lord_Howe",
      "Asia/Kathmandu",
      "UTC",
    );
    const moment = fc.integer({ min: Date.UTC(2026, 0, 1), max: Date.UTC(2027, 11, 31) });
    const minute = fc.integer({ min: 0, max: 1439 });
    const half = fc.constantFrom("24" as const, undefined);
    fc.assert(
      fc.property(zones, moment, minute, half, (zone, now_ms, minute, half) => {
        process.env.TZ = zone;
        const said = { minute, ...(half ? { half } : {}) };
        const next = ahead(said, now_ms);
        const last = behind(said, now_ms);
        if (!next.ok || !last.ok) throw new Error("a bare time always comes, and always came");
        expect(next.at_ms).toBeGreaterThan(now_ms);
        expect(next.at_ms - now_ms).toBeLessThanOrEqual(25 * 3_600_000);
        expect(last.at_ms).toBeLessThanOrEqual(now_ms);
        expect(now_ms - last.at_ms).toBeLessThanOrEqual(26 * 3_600_000);
        expect(localDay(startOf(next.day))).toBe(next.day);
      }),
      { numRuns: 400 },
    );
  });
});

describe("written out", () => {
  test("local ISO without an offset, and the short forms", () => {
    expect(localIso(at("2026-03-14T09:42:00"))).toBe("2026-03-14T09:42:00");
    expect(clock(at("2026-03-14T09:05:00"))).toBe("9:05");
    expect(friendly(at("2026-03-14T09:42:00"), saturday)).toBe("9:42");
    expect(friendly(at("2026-03-15T15:00:00"), saturday)).toBe("tomorrow 15:00");
    expect(friendly(at("2026-03-20T18:00:00"), saturday)).toBe("Fri 20 Mar 18:00");
    expect(friendly(at("2027-01-05T18:00:00"), saturday)).toBe("Tue 5 Jan 2027 18:00");
  });

  test("lengths, to the second only where seconds matter", () => {
    expect([0.5, 1.5, 12, 80, 1440, 1500.4, 0].map(lengthText)).toEqual([
      "30 s",
      "1 min 30 s",
      "12 min",
      "1 h 20 min",
      "1 d",
      "1 d 1 h",
      "0 s",
    ]);
  });
});
