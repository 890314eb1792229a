/** Keeping: the published limits on the days and hours that are said. Saturday 14 March 2026, 9:30. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { clockOf, plusMonths } from "../../src/tools/keep/days.ts";
import { keep } from "../../src/tools/keep/keep.ts";
import { daysBetween, plusDays } from "../../src/tools/lib/days.ts";
import { baker } from "../support/ask.ts";
import { answer, names, value } from "../support/world.ts";

describe("the count of days", () => {
  // FDA Food Code 2022, 3-501.17: 7 days, the day of preparation is day 1; its example 1 July → 7 July
  test("made on 1 July, used by 7 July", () => {
    expect(clockOf("2026-07-01").useBy).toBe("2026-07-07");
  });

  // FDA Food Code, 3-501.17 and its Annex: made 1 October, frozen 3 October, thawed 10 October → 14 October
  test("freezing stops the clock", () => {
    expect(clockOf("2026-10-01", "2026-10-03", "2026-10-10").useBy).toBe("2026-10-14");
  });

  // from memory: best within 5, so on day 5
  test("best by is day 5", () => {
    expect(clockOf("2026-03-09").bestBy).toBe("2026-03-13");
  });

  test("frozen on the day of making, nothing is used: 7 days from thawing on", () => {
    expect(clockOf("2026-10-01", "2026-10-01", "2026-10-20").useBy).toBe("2026-10-26");
  });

  test("law: the days before freezing and after thawing are seven, whatever lies between", () => {
    const days = fc.integer({ min: 0, max: 6 });
    const gap = fc.integer({ min: 0, max: 400 });
    fc.assert(
      fc.property(days, gap, (before, between) => {
        const frozen = plusDays("2026-02-20", before);
        const thawed = plusDays(frozen, between);
        const { useBy } = clockOf("2026-02-20", frozen, thawed);
        return before + daysBetween(thawed, useBy) + 1 === 7;
      }),
    );
  });

  test("months end where the month does", () => {
    expect(plusMonths("2025-12-31", 2)).toBe("2026-02-28");
    expect(plusMonths("2026-01-14", 2)).toBe("2026-03-14");
  });
});

describe("still good", () => {
  test("made on the 9th: the 15th is the last day", async () => {
    const said = await baker().one("made and filled them on the 9th, still good today?");
    expect(said.tool).toBe("keep");
    expect(said.headline).toContain("2026-03-15");
    expect(said.headline).toMatch(/^Yes/);
    expect(value(said, "day")).toBe(6);
    expect(value(said, "days left")).toBe(1);
  });

  test("the last day itself is still one of the seven", async () => {
    expect(
      (await baker({ now: "2026-03-15T20:00:00" }).one("made them on the 9th, still good?")).headline,
    ).toMatch(/^Yes/);
    expect(
      (await baker({ now: "2026-03-16T06:00:00" }).one("made them on the 9th, still good?")).headline,
    ).toMatch(/^No/);
  });

  test("a day to come is held against the last day", async () => {
    const said = await baker().one("are they still ok to eat on friday, made them tuesday");
    expect(said.headline).toMatch(/^No/);
    expect(said.headline).toContain("2026-03-16");
  });

  test("frozen in between, as in the Food Code's example", async () => {
    const said = await baker({ now: "2026-10-12T09:00:00" }).one(
      "made them on october 1, froze them october 3, thawed them october 10, until when are they good",
    );
    expect(said.headline).toContain("2026-10-14");
  });

  test("without a day it asks for it, and takes it", async () => {
    const { ask } = baker();
    expect((await ask("are these still good?"))[0]).toMatchObject({ tool: "keep", status: "asking" });
    expect((await ask("made on the 9th"))[0]?.headline).toContain("2026-03-15");
  });

  test("thawed without a day of freezing asks for that", () => {
    expect(answer(keep, { made: { day: 1 }, thawed: { days: 0 } })).toMatchObject({
      status: "asking",
      slot: "frozen",
    });
  });

  test("an order that can't be is impossible", () => {
    expect(answer(keep, { made: { day: 9 }, frozen: { day: 3 }, thawed: { day: 10 } }).status).toBe(
      "impossible",
    );
    expect(answer(keep, { made: { day: 1 }, frozen: { day: 10 }, thawed: { day: 5 } }).status).toBe(
      "impossible",
    );
  });

  test("frozen after the seventh day it was too late already", () => {
    expect(answer(keep, { made: { day: 1 }, frozen: { day: 10 }, about: "freezer" }).headline).toMatch(/^No/);
  });
});

describe("out of the fridge", () => {
  // USDA FSIS: 2 h, 1 h above 90 °F (32 °C)
  test.each([
    ["left the filled ones on the counter 3 hours is it still ok", 2, /^No/],
    ["forgot a box on the table for 90 minutes, still fine?", 2, /^Yes/],
    ["the filled ones sat on the porch an hour and a half and it was 95 f out, toss em?", 1, /^No/],
    ["it's 34 °C on the stall today, how long can the filled ones stay out?", 1, /^1 h/],
    ["market stall, 25 C, how long can they be out", 2, /^2 h/],
    ["how long can filled macarons stay out of the fridge", 2, /^2 h/],
    ["they sat out 1 hour this morning and 1.5 hours this afternoon", 2, /^No/],
    ["i left them on the counter overnight", 2, /^No/],
  ])("%s", async (say, limit, verdict) => {
    const said = await baker().one(say);
    expect(said.tool).toBe("keep");
    expect(value(said, "out of the fridge", "h")).toBe(limit);
    expect(said.headline).toMatch(verdict);
  });

  test("90 °F is on the line and 91 above it; 32 °C is and 33 isn't", () => {
    const limit = (air_c: number, fahrenheit = false) =>
      value(answer(keep, { about: "outside", air_c, fahrenheit }), "out of the fridge");
    expect(limit((90 - 32) / 1.8, true)).toBe(2);
    expect(limit((91 - 32) / 1.8, true)).toBe(1);
    expect(limit(32)).toBe(2);
    expect(limit(33)).toBe(1);
  });

  test("law: never good past the limit, never thrown out before it", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 600, noNaN: true }), fc.boolean(), (out_min, hot) => {
        const { headline } = answer(keep, { about: "outside", out_min, hot });
        const limit_min = hot ? 60 : 120;
        return out_min > limit_min + 1e-6 ? headline.startsWith("No") : !headline.startsWith("No");
      }),
    );
  });
});

describe("cold, frozen, raw", () => {
  // FDA Food Code 2022, 3-501.16: 5 °C (41 °F) or below
  test("how cold the fridge has to be", async () => {
    const said = await baker().one("how cold does my fridge have to be for filled macarons");
    expect(value(said, "fridge", "°C")).toBe(5);
    expect(value(said, "fridge", "°F")).toBe(41);
    expect((await baker().one("my fridge is at 8 C is that cold enough")).headline).toMatch(
      /^Not cold enough/,
    );
    expect((await baker().one("my fridge is at 4 °C, cold enough?")).headline).toMatch(/^Cold enough/);
  });

  // from memory: -18 °C, 2 months
  test("freezing", async () => {
    const [said, ...more] = await baker().ask("can i freeze filled macarons and how long");
    expect(more).toEqual([]);
    expect(value(said as never, "freezer", "°C")).toBe(-18);
    expect(value(said as never, "frozen")).toBe(2);
    expect(said?.headline).toContain("closed box");
  });

  // FDA Food Code 3-302.13; USDA FSIS: 71 °C (160 °F)
  test("raw whites", async () => {
    const said = await baker().one("I'm not heating the whites for my buttercream, is that safe");
    expect(said.headline).toContain("pasteurised");
    expect(value(said, "whites", "°C")).toBe(71);
  });

  test("a shelf-stable flavor doesn't clear the filling", async () => {
    const said = await baker().one(
      "the flavor bottle says shelf stable so the filled macs can sit out right??",
    );
    expect(said.headline).toMatch(/^No/);
  });

  // 21 CFR 114.3: 0.85; FDA Food Code 1-201.10 table B: 0.88 at a pH above 5
  test.each([
    [0.9, /^Perishable.*both/],
    [0.86, /^Perishable/],
    [0.84, /doesn't clear it/],
  ])("a water activity of %s", (aw, verdict) => {
    const said = answer(keep, { about: "activity", aw });
    expect(said.headline).toMatch(verdict);
    expect(said.rule?.source).toContain("114.3");
    expect(said.rule?.source).toContain("1-201.10");
  });

  // Norrish on USDA composition: 2:1 white about 0.85, on the line; 1:1 dark about 0.96
  test("what it is made of comes with an estimate, and is kept cold either way", async () => {
    const white = await baker().one(
      "can a ganache of 200 g white chocolate and 100 g cream stay at room temperature",
    );
    expect(white.tool).toBe("keep");
    expect(value(white, "out of the fridge")).toBe(2);
    expect(value(white, "aw")).toBeCloseTo(0.85, 2);
    expect(white.headline).toContain("on the published line");
    const dark = answer(keep, {
      about: "outside",
      lines: [
        { name: "dark chocolate", grams: 100 },
        { name: "cream", grams: 100 },
      ],
    });
    expect(value(dark, "aw")).toBeCloseTo(0.96, 2);
    expect(dark.headline).toContain("above both published lines");
  });

  test("took them out of the freezer: it asks when they were made before it counts", async () => {
    expect(await baker().one("took them out of the freezer this morning how long do i have")).toMatchObject({
      tool: "keep",
      status: "asking",
    });
  });

  test("no rule, no figure: shells without filling, freezing twice", () => {
    for (const about of ["shells", "again"]) {
      const said = answer(keep, { about });
      expect(said.status).toBe("declined");
      expect(names(said)).toEqual([]);
    }
  });
});

test("every answer ends by deferring to the local food authority", async () => {
  const abouts = ["fridge", "outside", "freezer", "thaw", "cold", "eggs", "shelf stable", "shells", "again"];
  for (const about of abouts) expect(answer(keep, { about }).cautions?.at(-1)).toContain("food authority");
  for (const inputs of [
    { made: { day: 9 } },
    { about: "activity", aw: 0.84 },
    { frozen_days: 90, about: "freezer" },
  ])
    expect(answer(keep, inputs).cautions?.at(-1)).toContain("food authority");
});

describe("where it is and since when", () => {
  test.each([
    // USDA FSIS: 2 h in all
    ["buttercream macarons made on monday, kept on the counter, still good?", /^No: out since Mon 9 Mar/],
    ["power cut for 3 hours, fridge warm, macarons inside", /^No: 3 h/],
    ["filled them at 8 this morning and they've been on the table since, still ok", /^Yes.*by 10:00/],
    ["white chocolate ganache filled, at the market stall since 9, when must they go back", /by 11:00/],
    // 1 h above 32 °C (90 °F)
    ["it's 33 C at the market and they've been out since 9, until when can I sell them", /by 10:00/],
    // FDA Food Code 2022, 3-501.16: 5 °C
    ["my fridge was at 10 C overnight, are they ok", /^Not cold enough.*too long/],
    ["my macarons smell sour, eat them?", /^No: throw them out, whatever the date says/],
    ["there is mould on my macarons, still ok?", /^No: throw them out/],
  ])("%s", async (line, headline) => {
    const said = await baker().one(line);
    expect(said.tool).toBe("keep");
    expect(said.headline).toMatch(headline);
  });

  // FDA Food Code, 3-501.17 and its Annex: 1 day used before freezing, 6 left from thawing on the 20th: 25 March
  test("a day of making, freezing and thawing that lie ahead", async () => {
    const said = await baker().one("made today, freeze tomorrow, thaw on the 20th, good until when");
    expect(said.headline).toContain("2026-03-25");
  });

  // the Annex's example told by days: frozen on day 3, two used, five left
  test("frozen on a day of the seven", async () => {
    const said = await baker().one("they were frozen on day 3 and thawed today, how many days left");
    expect(value(said, "days left")).toBe(5);
    expect(said.headline).toContain("2026-03-18");
  });

  test("still good from the freezer: it asks when they went in", async () => {
    expect(await baker().one("frozen macarons from the back of the freezer, still good?")).toMatchObject({
      tool: "keep",
      status: "asking",
    });
  });
});
