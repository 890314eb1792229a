/** Days: today and its neighbours, weekdays, calendar days, and the words that only look like one. */
import { describe, expect, it } from "vitest";
import type { When } from "../../src/tools/contract/index.ts";
import { whens } from "./reading.ts";

type Moment = Omit<When, "text" | "at">;
const at = (hour: number, minute = 0) => hour * 60 + minute;

const said: readonly (readonly [Moment, ...string[]])[] = [
  [{ days: 0 }, "today", "todays"],
  [{ days: 1 }, "tomorrow", "tomorow", "tmrw", "tommorow", "tommorrow"],
  [{ days: -1 }, "yesterday", "yesturday"],
  [{ days: 2 }, "the day after tomorrow", "day after tomorrow"],
  [{ days: -2 }, "the day before yesterday"],
  [{ days: -3 }, "3 days ago", "three days ago"],
  [{ days: -7 }, "a week ago", "1 week ago", "one week ago"],
  [{ days: -14 }, "two weeks ago", "2 weeks ago"],
  [{ days: -2 }, "a couple of days ago"],
  [{ days: 0, part: "morning" }, "this morning"],
  [{ days: 0, part: "afternoon" }, "this afternoon", "this arvo"],
  [{ days: 0, part: "night" }, "tonight"],
  [{ days: -1, part: "night" }, "last night"],
  [{ days: 1, part: "morning" }, "tomorrow morning"],
  [{ days: -1, part: "evening" }, "yesterday evening"],
  [{ weekday: 6 }, "saturday", "on saturday", "on sat", "Saturday", "saterday", "satuday"],
  [{ weekday: 3 }, "wednesday", "on wed", "wensday"],
  [{ weekday: 0, which: "last" }, "last sunday", "last sun"],
  [{ weekday: 5, which: "next" }, "next friday", "next fri"],
  [{ weekday: 4, which: "this" }, "this thursday"],
  [{ weekday: 6, part: "morning" }, "saturday morning"],
  [
    { month: 3, day: 8 },
    "march 8",
    "8 march",
    "8th of march",
    "march 8th",
    "the 8th of march",
    "mar 8",
    "on 8 mar",
    "march the 8th",
    "the eighth of march",
  ],
  [{ month: 12, day: 24 }, "december 24", "24 dec", "24th december", "the twenty fourth of december"],
  [{ day: 21 }, "the 21st", "on the 21st", "the twenty first"],
  [{ day: 9 }, "the 9th", "on the ninth"],
  [{ year: 2026, month: 3, day: 20 }, "2026-03-20", "20.3.2026", "20.03.2026", "on 20.3.26"],
  [{ year: 2026, month: 3, day: 20, minute: at(15), half: "24" }, "2026-03-20T15:00"],
  [
    { days: 1, minute: at(9), half: "am" },
    "tomorrow at 9 am",
    "tomorrow 9am",
    "9 am tomorrow",
    "9am tomorrow",
    "at 9 am tomorrow",
    "tomorrow by 9 am",
  ],
  [{ weekday: 6, minute: at(12), half: "24" }, "noon on saturday", "saturday at noon", "saturday noon"],
  [
    { weekday: 5, minute: at(18), half: "pm" },
    "friday 6 pm",
    "friday at 6pm",
    "6 pm on friday",
    "6pm friday",
    "on fri 6 pm",
  ],
  [{ weekday: 6, day: 21 }, "saturday the 21st"],
  [
    { weekday: 6, day: 21, minute: at(14), half: "pm" },
    "saturday the 21st at 2 pm",
    "saturday the 21st, 2pm",
  ],
  [{ days: 1, minute: at(7) }, "tomorrow at 7", "at 7 tomorrow"],
  [{ month: 3, day: 21, minute: at(15), half: "24" }, "march 21 at 15:00", "21 march 15:00"],
];

describe.each(said.map(([moment, ...ways]) => ({ moment, ways })))("$moment", ({ moment, ways }) => {
  it.each(ways)('is said as "%s"', (way) => {
    expect(whens(way)).toEqual([moment]);
  });
});

describe("no day", () => {
  it.each([
    "the first batch",
    "the second tray",
    "a third pink the rest plain",
    "the third one",
    "may i ask how much",
    "it may crack",
    "sat on the counter",
    "the sun melts them",
    "a fri or two",
    "the last batch",
    "the next step",
    "this one",
    "this batch",
    "a second batch",
    "3 rd trays",
    "march on the spot",
    "we wed macarons with tea",
    "a fourth of the batter",
    "mon cher",
    "dec the halls",
  ])('"%s"', (sentence) => {
    expect(whens(sentence)).toEqual([]);
  });

  it("leaves counts and weights beside a day as they are", () => {
    expect(whens("24 macarons on saturday")).toEqual([{ weekday: 6 }]);
    expect(whens("100 g sugar today")).toEqual([{ days: 0 }]);
  });
});
