/** What went wrong: every symptom is found from a baker's words and has causes in order. */
import { describe, expect, test } from "vitest";
import { troubles } from "../../data/rules/troubles.ts";
import { praise, symptoms } from "../../data/words/symptoms.ts";
import type { Note } from "../../src/tools/contract/index.ts";
import { alike, comparison, median } from "../../src/tools/trouble/compare.ts";
import { trouble } from "../../src/tools/trouble/trouble.ts";
import { baker } from "../support/ask.ts";
import { answer } from "../support/world.ts";

const note = (id: number, problems: string[], more: Partial<Note> = {}): Note => ({
  id,
  date: `2026-03-0${id}`,
  noted_ms: 0,
  text: `batch ${id}`,
  flavors: [],
  problems,
  ...more,
});

test("every symptom that a word can mean has its causes, and none is left over", () => {
  const known = symptoms.map((row) => row.id).filter((id) => !praise.includes(id));
  expect(troubles.map((row) => row.id).sort()).toEqual(known.sort());
  for (const row of troubles) {
    expect(row.causes.length).toBeGreaterThanOrEqual(2);
    for (const cause of row.causes)
      for (const text of [cause.cause, cause.check, cause.change]) expect(text.length).toBeGreaterThan(5);
    expect(row.causes.some((cause) => /\d/.test(cause.change))).toBe(true);
  }
});

// from memory, all of them
test.each([
  ["no feet at all whyyy", "No feet"],
  ["dough too runny", "Runny batter"],
  ["the dough is too thick", "Stiff batter"],
  ["why don't my macarons have feet", "No feet"],
  ["tops craked on the whole tray, what do i change", "Cracked tops"],
  ["what makes macarons crack", "Cracked tops"],
  ["shells are hollow again, what went wrong", "Hollow shells"],
  ["they're lopsided, feet all on one side", "Lopsided feet"],
  ["my batter spred out flat like pancakes in the oven", "Shells that spread flat"],
  ["the little peaks wont go down on top", "Peaks that stay"],
  ["tops are lumpy and rough", "Lumpy or grainy tops"],
  ["wrinkely oily looking tops", "Wrinkled or oily tops"],
  ["the tops have browned again", "Browned shells"],
  ["bottoms are stickng to the mat whats wrong", "Sticky bottoms"],
  ["macarons went soggy after two days in the fridge", "Too soft after maturing"],
  ["still crunchy after 24 hours in the fridge", "Dry or hard after maturing"],
  ["the ganache split", "Split ganache"],
  ["my ganache is too runny", "Loose ganache"],
  ["grainy ganache", "Grainy ganache"],
  ["my butercream looks curdled", "Curdled buttercream"],
  ["butercream went all soupyy on me help", "Soupy buttercream"],
  ["gritty buttercream", "Grainy buttercream"],
  ["and the color faded in the oven too", "Faded color"],
  ["the color is bleeding into the filling", "Bleeding color"],
  ["batter is too runny", "Runny batter"],
  ["my batter is too thick and won't flow", "Stiff batter"],
  ["my shells exploded in the oven", "Cracked tops"],
  ["macarons spread into each other on the tray", "Shells that spread flat"],
  ["tops look like orange peel", "Lumpy or grainy tops"],
  ["oil stains on top", "Wrinkled or oily tops"],
  ["the white ones turned beige in the oven", "Browned shells"],
  ["shells are too soft to lift", "Sticky bottoms"],
  ["macarons too chewy and wet after the fridge", "Too soft after maturing"],
  ["i can feel sugar in the buttercream", "Grainy buttercream"],
  ["the colour leaked into the filling", "Bleeding color"],
  ["meringe will not peak no matter how long i beat it", "Meringue that will not peak"],
])("%s", async (say, title) => {
  const said = await baker().one(say);
  expect(said.tool).toBe("trouble");
  expect(said.headline).toContain(title);
  expect(said.rule?.basis).toBe("from memory");
  expect(said.items?.[0]).toMatchObject({ order: 1 });
});

describe("whose sentence it is", () => {
  test.each([
    ["my 300g ganache just split its all oily help", "ganache"],
    ["note peach batch hollow, oven was at 165", "note"],
    ["which batches were hollow", "recall"],
    ["400 g buttercream split in half", "split"],
    ["i cracked 4 eggs, what do i need for the shells", "scale"],
  ])("%s", async (say, tool) => {
    expect((await baker().one(say)).tool).toBe(tool);
  });

  test("two faults in one sentence are two answers", async () => {
    const said = await baker().ask("no feet and the tops cracked, why");
    expect(said.map((each) => each.headline.split(":")[0])).toEqual(["No feet", "Cracked tops"]);
  });

  test("a grainy meringue is no fault of the table: it is declined, and no almond flour is blamed", async () => {
    expect(await baker().one("meringue went grainy")).toMatchObject({ tool: "trouble", status: "declined" });
  });

  test("something went wrong, but what: it asks", async () => {
    expect(await baker().one("something went wrong with my shells")).toMatchObject({
      tool: "trouble",
      status: "asking",
    });
  });
});

describe("the baker's own notes", () => {
  const notes = [
    note(1, ["hollow"], { oven_c: 165, bake_min: 14, text: "peach, oven at 165" }),
    note(2, [], { oven_c: 148, bake_min: 14 }),
    note(3, [], { oven_c: 150, bake_min: 14 }),
    note(4, ["hollow"], { oven_c: 300, ignored: true }),
  ];

  test("about the same fault come with the answer, the newest first", () => {
    const items = answer(trouble, { symptom: "hollow" }, { notes }).items ?? [];
    expect(items.filter((each) => each.date)).toEqual([
      { date: "2026-03-01", flavors: [], text: "peach, oven at 165", problems: ["hollow"] },
    ]);
  });

  // arithmetic: the middle of 148 and 150 is 149
  test("what differed in batches that went well is laid beside them", () => {
    expect(comparison("hollow", notes)).toEqual([
      {
        what: "oven",
        here: 165,
        well: 149,
        unit: "°C",
        text: "oven 165 °C when it happened, 149 °C when all was well",
      },
    ]);
    expect(answer(trouble, { symptom: "hollow" }, { notes }).headline).toContain("149 °C when all was well");
  });

  // arithmetic: medians of 6 and 4, and of 30 and 30
  test("doses are compared too, and what was the same is no cause", () => {
    const dosed = [
      note(1, ["soft after maturing"], { rest_min: 30, doses: [{ flavor: "mint", percent: 6 }] }),
      note(2, [], { rest_min: 30, doses: [{ flavor: "mint", percent: 4 }] }),
    ];
    expect(comparison("soft after maturing", dosed)).toMatchObject([
      { what: "mint", here: 6, well: 4, unit: "%" },
    ]);
    expect(alike("soft after maturing", dosed)).toEqual(["rest"]);
    const same = [note(1, ["hollow"], { oven_c: 150 }), note(2, [], { oven_c: 150 })];
    expect(answer(trouble, { symptom: "hollow" }, { notes: same }).headline).toContain(
      "In your notes oven was the same when all was well.",
    );
  });

  test("the rule doesn't say the causes a second time", () => {
    for (const { id, causes } of troubles) {
      const text = answer(trouble, { symptom: id }).rule?.text ?? "";
      for (const { change } of causes) expect(text).not.toContain(change);
    }
  });

  test("nothing is compared where one side says nothing", () => {
    expect(comparison("browned", notes)).toEqual([]);
  });

  test("median", () => {
    expect([median([3, 1, 2]), median([1, 2, 3, 4]), median([])]).toEqual([2, 2.5, undefined]);
  });
});
