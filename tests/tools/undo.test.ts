/** Taking the last change back. */
import { describe, expect, test } from "vitest";
import { undo } from "../../src/tools/undo.ts";
import { baker, steps } from "../support/ask.ts";
import { answer } from "../support/world.ts";

describe("every way of saying it", () => {
  test.each([
    ...undo.examples.map((each) => each.say),
    "oh, undo that",
    "no, take that back, undo it please",
    "can you undo the last change",
    "Undo it please",
  ])("%s", (say) => {
    const read = steps(say);
    expect(read).toHaveLength(1);
    expect((read[0] as { tool: { name: string } }[])[0]?.tool.name).toBe("undo");
  });
});

test("it names what it takes back, and asks the store for it once", () => {
  const said = answer(undo, {}, { undoable: "the 20 min timer" });
  expect(said).toMatchObject({ status: "answered", effects: [{ do: "undo" }] });
  expect(said.headline).toContain("the 20 min timer");
});

test("nothing to undo is impossible, with no effect", () => {
  const said = answer(undo, {});
  expect([said.status, said.effects, said.figures]).toEqual(["impossible", undefined, undefined]);
});

test("one after another, the newest first", async () => {
  const one = baker();
  await one.ask("my mat has 28 circles");
  await one.ask("my oven runs 10 hot");
  await one.ask("undo");
  expect(one.record().bench).toEqual({ shells_a_tray: 28 });
  await one.ask("undo that");
  expect(one.record().bench).toEqual({});
  expect((await one.one("undo")).status).toBe("impossible");
});

test.each([
  ["take 5 min off the oven timer", "timer"],
  ["forget my mat", "bench"],
])("not undo's: %s", async (say, tool) => expect((await baker().one(say)).tool).toBe(tool));
