/** The bench: set in words, asked, reset, taken back, and counted in answers. Its values are the baker's own. */
import { describe, expect, test } from "vitest";
import { bench } from "../../src/tools/bench/bench.ts";
import { settings } from "../../src/tools/bench/settings.ts";
import { Bench } from "../../src/tools/contract/record.ts";
import { baker, steps } from "../support/ask.ts";
import { answer, value } from "../support/world.ts";

describe("examples read to their inputs", () => {
  test.each(bench.examples.map((each) => [each.say, each.inputs] as const))("%s", (say, inputs) => {
    const [step] = steps(say)[0] as { tool: { name: string }; inputs: unknown }[];
    expect([step?.tool.name, step?.inputs]).toEqual(["bench", expect.objectContaining(inputs)]);
  });
});

describe("said in words, stored", () => {
  test.each([
    ["my mat has 28 circles", { shells_a_tray: 28 }],
    ["Remember that my tray holds 20 shells", { shells_a_tray: 20 }],
    ["28 fit on my tray", { shells_a_tray: 28 }],
    ["my tray is 40 x 30 cm", { tray_width_mm: 400, tray_depth_mm: 300 }],
    ["my tray is 16 by 12 inches", { tray_width_mm: 406.4, tray_depth_mm: 12 * 25.4 }],
    ["my oven takes two trays at once", { trays_at_once: 2 }],
    ["from now on my shells are 42 mm", { diameter_mm: 42 }],
    ["I always pipe them at 4.5 cm, keep that in mind", { diameter_mm: 45 }],
    ["my mat has 28 circles and i pipe 4 cm", { shells_a_tray: 28, diameter_mm: 40 }],
    ["plan 15 % spare shells", { spare_percent: 15 }],
    ["no spares please", { spare_percent: 0 }],
    ["i have a fan oven", { fan_oven: true }],
    ["my oven is conventional", { fan_oven: false }],
    ["my oven runs 15 degrees cold", { oven_offset_c: -15 }],
    ["my oven is 18 f hot", { oven_offset_c: 10 }],
    ["i always bake mine at 145 c", { oven_c: 145 }],
    ["i always bake mine 16 min", { bake_min: 16 }],
    ["i always rest mine for 45 min", { rest_min: 45 }],
    ["i use the no rest method", { rest_min: 0 }],
    ["i always mature mine 2 days", { mature_h: 48 }],
    ["piping takes me 15 min a tray", { pipe_min: 15 }],
    ["i get up at 6 and go to bed at 10", { wake_min: 360, sleep_min: 1320 }],
    ["i go to bed at 23:00", { sleep_min: 1380 }],
    ["my scale reads 0.1 g", { scale_g: 0.1 }],
    ["my scale only shows whole grams", { scale_g: 1 }],
    ["my cup is 250 ml", { cup_ml: 250 }],
    ["Set my currency to pounds please", { currency: "GBP" }],
    ["i sell in euros", { currency: "EUR" }],
    ["my labor is $18 an hour", { labor_per_h: 18 }],
    ["my market is the eu", { market: "eu" }],
    ["i work in ounces", { weight_unit: "oz" }],
  ])("%s", async (say, want) => {
    const one = baker();
    const said = await one.one(say);
    expect([said.tool, said.status, said.rule?.basis]).toEqual(["bench", "answered", "your bench"]);
    const kept = one.record().bench as Record<string, unknown>;
    expect(Object.keys(kept).sort()).toEqual(Object.keys(want).sort());
    for (const [key, wanted] of Object.entries(want))
      typeof wanted === "number" ? expect(kept[key]).toBeCloseTo(wanted, 9) : expect(kept[key]).toBe(wanted);
    expect(Bench().safeParse(kept).success).toBe(true);
  });
});

test("asked, shown, forgotten, and taken back", async () => {
  const one = baker();
  await one.ask("my mat has 28 circles");
  expect((await one.one("what's my mat?")).headline).toMatch(/28/);
  expect((await one.one("how is my bench set")).figures).toContainEqual({
    name: "shells a tray",
    value: 28,
    unit: "shells",
  });
  expect((await one.one("forget my mat")).status).toBe("answered");
  expect(one.record().bench).toEqual({});
  await one.ask("undo");
  expect(one.record().bench).toEqual({ shells_a_tray: 28 });
  await one.ask("use the book");
  expect(one.record().bench).toEqual({});
  expect((await one.one("show me my settings")).items).toEqual([]);
});

test("what isn't said whole is asked for", async () => {
  const one = baker();
  expect((await one.one("my oven is 10 degrees off")).question).toMatch(/hot or cold/);
  await one.ask("cold");
  expect(one.record().bench).toEqual({ oven_offset_c: -10 });
  expect((await one.one("use metric cups")).question).toMatch(/240 or 250/);
  await one.ask("250");
  expect(one.record().bench.cup_ml).toBe(250);
});

test("a tray's size ends an older count of its circles", async () => {
  const one = baker();
  await one.ask("my mat has 28 circles");
  await one.ask("my tray is 60 x 40 cm");
  expect(one.record().bench).toEqual({ tray_width_mm: 600, tray_depth_mm: 400 });
});

test.each([
  [{ shells_a_tray: 0 }, /between 1 and 500/],
  [{ diameter_mm: 400 }, /too wide/],
  [{ oven_c: 900 }, /between 50 and 350/],
  [{ oven_offset_c: 150 }, /mending/],
  [{ spare_percent: 120 }, /between 0 and 99/],
])("%o can't be set", (inputs, why) => {
  const said = answer(bench, { do: "set", ...inputs });
  expect([said.status, said.effects]).toEqual(["impossible", undefined]);
  expect(said.headline).toMatch(why);
});

test("every setting of the record has its row, and what the book has instead", () => {
  const keys = Object.keys(Bench().shape).filter((key) => !["use_book", "forgotten"].includes(key));
  expect(settings.map((row) => row.key).sort()).toEqual(keys.sort());
});

test.each([
  ["how many shells of 45 mm fit on one tray", "shells"],
  ["recipe says 150 c conventional and mine is a fan oven, what do i set", "convert"],
  ["wake me up at 8 tomorrow", "timer"],
  [
    "an hour and a half of my time at $18 an hour and $11 ingredients, what price for 40 percent margin",
    "cost",
  ],
])("not the bench's: %s", async (say, tool) => expect((await baker().ask(say))[0]?.tool).toBe(tool));

test("a set diameter counts in the next answer, as her bench", async () => {
  const one = baker();
  await one.ask("my shells are 5 cm from now on");
  const said = await one.one("batter for 24 macarons");
  // ceil(52.8) = 53 shells × 0.53 × 5² / 0.96
  expect(value(said, "batter")).toBeCloseTo((53 * 0.53 * 25) / 0.96, 9);
  expect(said.rule?.basis).toBe("your bench");
});
