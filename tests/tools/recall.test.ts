/** Looking notes up: by flavor, day, rating, fault; the last, the best, the usual. All expected by hand. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Note } from "../../src/tools/contract/index.ts";
import { spanOf } from "../../src/tools/recall/period.ts";
import { recall } from "../../src/tools/recall/recall.ts";
import { median } from "../../src/tools/recall/typical.ts";
import { baker } from "../support/ask.ts";
import { answer, standing } from "../support/world.ts";

const now_ms = new Date(standing).getTime();
let id = 0;
const note = (date: string, flavors: string[], text: string, more: Partial<Note> = {}): Note => ({
  id: ++id,
  date,
  noted_ms: now_ms,
  text,
  flavors,
  problems: [],
  ...more,
});

const notes = [
  note("2025-12-24", ["gingerbread"], "for the christmas stall", {
    rating: 7,
    rating_said: "7 out of 10",
    macarons: 80,
  }),
  note("2026-02-21", ["rose"], "rose for the shower, sticky bottoms", {
    problems: ["sticky bottoms"],
    macarons: 36,
  }),
  note("2026-03-06", ["vanilla"], "baked 16 min", {
    bake_min: 16,
    oven_c: 148,
    rating: 8,
    rating_said: "8 out of 10",
  }),
  note("2026-03-07", ["earl grey"], "a bit pale", { bake_min: 15, rating: 6, rating_said: "3 out of 5" }),
  note("2026-03-08", ["black sesame"], "lovely feet", {
    praise: ["good feet"],
    rating: 9,
    rating_said: "9/10",
  }),
  note("2026-03-10", ["vanilla"], "baked 18 min", { bake_min: 18, oven_c: 152, macarons: 40 }),
  note("2026-03-12", ["salted caramel"], "hollow and cracked", {
    problems: ["hollow", "cracked tops"],
    rating: 4,
    rating_said: "2/5",
  }),
  note("2026-03-13", ["vanilla"], "baked 17 min", {
    bake_min: 17,
    oven_c: 150,
    doses: [{ flavor: "vanilla", percent: 3 }],
  }),
];

const her = () => baker({ record: { notes } });
const texts = async (say: string) => ((await her().one(say)).items ?? []).map((each) => each.text);

describe("which batches", () => {
  test.each([
    ["what did i bake last sunday", ["lovely feet"]],
    ["What did I make last Saturday?", ["a bit pale"]],
    ["what did i bake on the 10th", ["baked 18 min"]],
    ["what did I bake yesterday?", ["baked 17 min"]],
    ["what did i make in february", ["rose for the shower, sticky bottoms"]],
    ["what did i bake last month", ["rose for the shower, sticky bottoms"]],
    ["what did i bake last week", ["lovely feet", "a bit pale", "baked 16 min"]],
    ["what did i bake this week", ["baked 17 min", "hollow and cracked", "baked 18 min"]],
    ["show me the notes since march 10", ["baked 17 min", "hollow and cracked", "baked 18 min"]],
    ["what did i bake last year", ["for the christmas stall"]],
    ["what did i bake in the last 3 days", ["baked 17 min", "hollow and cracked"]],
    ["show me the vanilla notes", ["baked 17 min", "baked 18 min", "baked 16 min"]],
    ["how did the salted caramel turn out", ["hollow and cracked"]],
    ["show me my caramel batches", ["hollow and cracked"]],
    ["which batches were hollow", ["hollow and cracked"]],
    ["which of my batches cracked?", ["hollow and cracked"]],
    ["which batches had sticky bottoms", ["rose for the shower, sticky bottoms"]],
    ["which batches had lovely feet", ["lovely feet"]],
    ["anything rated over 8", ["lovely feet"]],
    ["anything rated 8 or more", ["lovely feet", "baked 16 min"]],
    ["which batches did i rate under 5", ["hollow and cracked"]],
    ["when did i last make vanilla", ["baked 17 min"]],
    ["show me the last earl grey", ["a bit pale"]],
    ["which batch was my best", ["lovely feet"]],
    ["what was my worst batch", ["hollow and cracked"]],
    ["which batches were for the christmas stall", ["for the christmas stall"]],
  ])("%s", async (say, want) => {
    expect(await texts(say)).toEqual(want);
  });

  test.each([
    "have I ever made passion fruit macarons?",
    "did i ever make quince",
    "which batches had no feet",
    "anything rated over 9",
    "what did i bake in january",
    "what did i bake on monday",
  ])("nothing found: %s", async (say) => {
    const found = await her().one(say);
    expect(found).toMatchObject({ tool: "recall", status: "answered", items: [] });
    expect(found.headline).toMatch(/^No/);
    expect(found.figures).toBeUndefined();
  });

  test("items have the day, the words and the rating with its own words", async () => {
    const [first] = (await her().one("show me the earl grey notes")).items ?? [];
    expect(first).toMatchObject({
      date: "2026-03-07",
      flavors: ["earl grey"],
      text: "a bit pale",
      rating: 6,
      rating_said: "3 out of 5",
    });
  });

  test("a day to come is impossible", async () => {
    expect(answer(recall, { want: "list", period: { when: { days: 1 } } }, { notes })).toMatchObject({
      status: "impossible",
    });
  });

  test("a follow-up goes on with what was asked", async () => {
    const baker = her();
    await baker.one("how long do i usually bake the vanilla ones");
    expect(await baker.one("and the earl grey?")).toMatchObject({
      figures: [{ name: "bake", value: 15, unit: "min" }],
    });
  });

  test("a note that was looked up is the one that is added to", async () => {
    const baker = her();
    await baker.one("show me the earl grey notes");
    await baker.one("add to that: better with lemon");
    expect(baker.record().notes.find((each) => each.flavors[0] === "earl grey")?.text).toBe(
      "a bit pale; better with lemon",
    );
  });
});

describe("the usual, from the baker's own notes", () => {
  test.each([
    ["how long do i usually bake the vanilla ones", "bake", 17, "min"],
    ["what temperature do i usually bake the vanilla ones at", "oven", 150, "°C"],
    ["what temperature do i usually bake vanilla at in fahrenheit", "oven", 302, "°F"],
    ["how much vanilla flavor do i usually use", "share", 3, "%"],
    ["how long do i normally bake", "bake", 16.5, "min"],
  ])("%s", async (say, name, value, unit) => {
    const found = await her().one(say);
    expect(found.figures?.[0]).toMatchObject({ name, value, unit });
    expect(found.rule).toMatchObject({ basis: "your bench", text: expect.stringContaining("median") });
  });

  test("no note that says it gives no number", async () => {
    const found = await her().one("how long do i usually rest the vanilla ones");
    expect(found).toMatchObject({ status: "answered", items: [] });
    expect(found.figures).toBeUndefined();
  });

  test("notes set aside don't count", () => {
    const aside = notes.map((each) => (each.text === "baked 18 min" ? { ...each, ignored: true } : each));
    const found = answer(
      recall,
      { want: "typical", measure: "bake", flavors: ["vanilla"] },
      { notes: aside },
    );
    expect(found.figures?.[0]?.value).toBe(16.5);
  });

  test("counts and totals", async () => {
    expect((await her().one("how many batches did i make in march")).figures).toEqual([
      { name: "batches", value: 6, unit: "batches" },
    ]);
    expect((await her().one("how many macarons did i make in february")).figures?.[0]).toMatchObject({
      name: "macarons",
      value: 36,
    });
    expect((await her().one("how many macarons have i made")).figures?.[0]).toMatchObject({ value: 156 });
  });

  test("the median: in the middle, whatever the order, and moved as its values are", () => {
    expect(median([3, 1, 2])).toBe(2);
    expect(median([4, 1, 3, 2])).toBe(2.5);
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 30 }),
        fc.integer({ min: 0, max: 100 }),
        (values, shift) => {
          const middle = median(values);
          expect(values.filter((each) => each < middle).length).toBeLessThanOrEqual(values.length / 2);
          expect(values.filter((each) => each > middle).length).toBeLessThanOrEqual(values.length / 2);
          expect(median([...values].reverse())).toBe(middle);
          expect(median(values.map((each) => each + shift))).toBe(middle + shift);
        },
      ),
    );
  });
});

describe("stretches of the calendar", () => {
  // March 2026: the 14th is a Saturday, weeks from Monday
  test.each([
    [{ back: 0, unit: "week" as const }, "2026-03-09", "2026-03-15"],
    [{ back: 1, unit: "week" as const }, "2026-03-02", "2026-03-08"],
    [{ back: 1, unit: "weekend" as const }, "2026-03-07", "2026-03-08"],
    [{ back: 1, unit: "month" as const }, "2026-02-01", "2026-02-28"],
    [{ month: 2 }, "2026-02-01", "2026-02-28"],
    [{ month: 11 }, "2025-11-01", "2025-11-30"],
    [{ month: 2, year: 2024 }, "2024-02-01", "2024-02-29"],
    [{ year: 2025 }, "2025-01-01", "2025-12-31"],
    [{ days: 14 }, "2026-02-28", "2026-03-14"],
    [{ month: 2, since: true }, "2026-02-01", "2026-03-14"],
  ])("%o", (period, from, to) => {
    expect(spanOf(period, now_ms)).toMatchObject({ from, to });
  });
});
