/** Times of day: one moment, all the ways to say it, and numbers that are no hour. Minutes count from midnight. */
import { describe, expect, it } from "vitest";
import type { When } from "../../src/tools/contract/index.ts";
import { amounts, whens, wholeWhen } from "./reading.ts";

type Moment = Omit<When, "text" | "at">;
const at = (hour: number, minute = 0) => hour * 60 + minute;

/** With am or pm said, or on a clock of 24 hours: the half is settled. */
const settled: readonly (readonly [Moment, ...string[]])[] = [
  [
    { minute: at(15), half: "pm" },
    "3pm",
    "3 pm",
    "3 p.m.",
    "3:00 pm",
    "three pm",
    "3 PM",
    "3pm",
    "3.00 pm",
    "3 o'clock pm",
  ],
  [
    { minute: at(15, 30), half: "pm" },
    "3:30 pm",
    "3:30pm",
    "3.30 pm",
    "3.30pm",
    "three thirty pm",
    "330 pm",
    "half past 3 pm",
    "half past three pm",
  ],
  [{ minute: at(14, 30), half: "pm" }, "two thirty pm", "2:30 pm", "half past two pm", "230 pm"],
  [{ minute: at(9), half: "am" }, "9am", "9 a.m.", "9 am", "nine am", "9:00am"],
  [
    { minute: at(9, 15), half: "am" },
    "9:15 am",
    "quarter past nine am",
    "a quarter past 9 am",
    "nine fifteen am",
  ],
  [{ minute: at(0), half: "am" }, "12 am", "12:00 am"],
  [{ minute: at(12), half: "pm" }, "12 pm", "12:00 pm", "twelve pm"],
  [{ minute: at(0, 30), half: "am" }, "12:30 am"],
  [{ minute: at(12, 30), half: "pm" }, "12:30 pm", "half past twelve pm"],
  [{ minute: at(12), half: "24" }, "noon", "midday", "12 noon", "twelve noon"],
  [{ minute: at(15), half: "24" }, "15:00"],
  [{ minute: at(18, 45), half: "24" }, "18:45", "18:45:00"],
  [{ minute: at(7), half: "24" }, "07:00"],
  [{ minute: at(24), half: "24" }, "midnight", "12 midnight"],
];

describe.each(settled.map(([moment, ...ways]) => ({ moment, ways })))("$moment", ({ moment, ways }) => {
  it.each(ways)('is said as "%s"', (way) => {
    expect(wholeWhen(way)).toEqual(moment);
  });
});

/** Without am or pm: the half of the day is left open, for whoever knows what time it is now. */
const open: readonly (readonly [number, ...string[]])[] = [
  [at(10, 15), "at quarter past ten", "at 10:15", "at a quarter past 10", "at 10.15", "at ten fifteen"],
  [at(3, 30), "at half past three", "at 3:30", "at three thirty", "at 3.30"],
  [at(3, 20), "at twenty past three", "at 20 past 3", "at 3:20", "at twenty minutes past three"],
  [at(9, 45), "at quarter to ten", "at a quarter to 10", "at 9:45"],
  [at(3, 50), "at ten to four", "at 10 to 4", "by ten to four", "at 3:50"],
  [at(7), "at 7", "at seven", "by 7", "by seven o'clock", "at 7 o'clock", "at 7 o clock"],
  [at(12), "at 12", "at 12 o'clock"],
  [at(8, 30), "at half eight", "by half past eight", "at 8:30"],
  [at(9, 5), "at nine oh five", "at 9:05"],
  [at(12, 45), "at twelve forty five", "at 12:45"],
];

describe.each(open.map(([minute, ...ways]) => ({ minute, ways })))(
  "minute $minute, half of the day open",
  ({ minute, ways }) => {
    it.each(ways)('is said as "ping me %s"', (way) => {
      expect(whens(`ping me ${way}`)).toEqual([{ minute }]);
    });
  },
);

it("finds a moment in the middle of a sentence and leaves the rest alone", () => {
  expect(whens("need 24 macarons by 3pm please")).toEqual([{ minute: at(15), half: "pm" }]);
  expect(amounts("need 24 macarons by 3pm please")).toEqual(["24"]);
  expect(whens("ready at 7 for 36 macarons")).toEqual([{ minute: at(7) }]);
  expect(amounts("ready at 7 for 36 macarons")).toEqual(["36"]);
});

describe("no time of day", () => {
  it.each([
    "two thirty grams of buttercream",
    "230 g of buttercream",
    "bake at 150",
    "bake at 150 c",
    "at 4 %",
    "flavor at 4 percent for 275 g",
    "almond flour at $16 a kilo",
    "at 3 trays each",
    "about 24 macarons",
    "around 3 trays",
    "by 2.5 times",
    "from 24 to 36 macarons",
    "from 460 g of batter",
    "until 71 c",
    "2 to 1",
    "split two to one",
    "half of 300",
    "3/4 of 260",
    "12 x 45",
    "15 min",
    "about 12 shells hollow",
    "at 18 min",
    "from 3 egg whites",
    "ten to fifteen minutes",
    "10 to 15 min",
    "from 3 to 5 %",
    "rated 8 out of 10",
    "from 9 to 11 macarons",
    "by half 12 macarons",
    "45.13.2026",
  ])('"%s"', (sentence) => {
    expect(whens(sentence)).toEqual([]);
  });
});
