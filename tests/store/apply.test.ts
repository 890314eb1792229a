import { describe, expect, test } from "vitest";
import { applyEffects, undoDepth } from "../../src/store/apply.ts";
import { emptyRecord, type RecordData } from "../../src/store/schema.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addNote, noteNamed } from "./support.ts";

const apply = (record: RecordData, effects: Effect[], name: string | undefined = "it") =>
  applyEffects(record, effects, name, 7);
const undo: Effect = { do: "undo" };
const setTimer = (label: string): Effect => ({
  do: "add",
  list: "timers",
  entry: { label, set_ms: 0, due_ms: 60_000, state: "running" },
});

describe("single effects", () => {
  test("an addition gets the next id of its own list", () => {
    const record = apply(apply(emptyRecord(), [addNote("a"), setTimer("rest")]), [addNote("b")]);
    expect(record.notes.map(({ id, text }) => [id, text])).toEqual([
      [1, "a"],
      [2, "b"],
    ]);
    expect(record.timers[0]?.id).toBe(1);
  });

  test("a patch changes its fields and no others; undefined and null take a field out", () => {
    const record = apply(emptyRecord(), [
      { do: "add", list: "notes", entry: { ...noteNamed("a"), rating: 3, oven_c: 150 } },
    ]);
    const changed = apply(record, [
      { do: "change", list: "notes", id: 1, patch: { rating: 5, oven_c: undefined, trays: null } },
    ]);
    expect(changed.notes).toStrictEqual([{ id: 1, ...noteNamed("a"), rating: 5 }]);
  });

  test("a setting is put, replaced and taken out", () => {
    const set = (record: RecordData, value: unknown) =>
      apply(record, [{ do: "set", setting: "weight_unit", value }]);
    const on = set(emptyRecord(), "oz");
    expect([on.bench, set(on, "g").bench, set(on, undefined).bench, set(on, null).bench]).toStrictEqual([
      { weight_unit: "oz" },
      { weight_unit: "g" },
      {},
      {},
    ]);
  });

  test("nothing to do gives the very same record back", () => {
    const record = emptyRecord();
    expect(apply(record, [])).toBe(record);
    expect(apply(record, [undo])).toBe(record);
    expect(apply(record, [{ do: "write file", name: "x", text: "y" }])).toBe(record);
  });

  test.each<[string, Effect]>([
    ["an entry that lacks a field", { do: "add", list: "timers", entry: { label: "rest" } }],
    [
      "an entry with a field that nobody would read",
      { do: "add", list: "notes", entry: { ...noteNamed("a"), oven: 1 } },
    ],
    [
      "a number that JSON doesn't have",
      { do: "add", list: "stock", entry: { name: "flour", grams: Number.NaN } },
    ],
    ["a change to what isn't there", { do: "change", list: "notes", id: 9, patch: {} }],
    ["a removal of what isn't there", { do: "remove", list: "notes", id: 9 }],
    ["another id", { do: "change", list: "notes", id: 1, patch: { id: 2 } }],
    ["a patch of the wrong type", { do: "change", list: "notes", id: 1, patch: { rating: "good" } }],
    [
      "a patch that takes out what must be there",
      { do: "change", list: "notes", id: 1, patch: { text: null } },
    ],
    ["a setting that isn't one", { do: "set", setting: "__proto__", value: {} }],
    ["a setting of the wrong type", { do: "set", setting: "oven_c", value: "hot" }],
    [
      "a field that reaches for the prototype",
      { do: "change", list: "notes", id: 1, patch: JSON.parse('{"__proto__":1}') },
    ],
  ])("refuses %s", (_, effect) => {
    const record = apply(emptyRecord(), [addNote("a")]);
    expect(() => apply(record, [effect])).toThrow();
  });
});

describe("undo", () => {
  test("takes a change of several effects back at once, the latest change first", () => {
    const one = apply(emptyRecord(), [addNote("a"), setTimer("rest")]);
    const two = apply(one, [addNote("b")]);
    expect(apply(two, [undo], undefined)).toStrictEqual({ ...one, last_ids: two.last_ids });
    expect(apply(apply(two, [undo]), [undo])).toStrictEqual({ ...emptyRecord(), last_ids: two.last_ids });
  });

  test("never frees an id: what comes next is not taken for what was undone", () => {
    const undone = apply(apply(emptyRecord(), [addNote("a"), addNote("b")]), [undo]);
    expect(apply(undone, [addNote("c")]).notes.map(({ id }) => id)).toEqual([3]);
  });

  test("of a removal brings the entry back in its place, under its id", () => {
    const record = apply(emptyRecord(), [addNote("a"), addNote("b"), addNote("c")]);
    expect(apply(apply(record, [{ do: "remove", list: "notes", id: 2 }]), [undo])).toStrictEqual(record);
  });

  test("passes unnamed changes by and leaves them standing", () => {
    const ring: Effect = { do: "change", list: "timers", id: 1, patch: { state: "rung" } };
    const set = apply(emptyRecord(), [setTimer("rest")]);
    const renamed = apply(
      set,
      [{ do: "change", list: "timers", id: 1, patch: { label: "dry" } }],
      "the name",
    );
    const rung = applyEffects(renamed, [ring], undefined, 8);
    expect(rung.changes).toEqual(renamed.changes);
    expect(apply(rung, [undo]).timers).toMatchObject([{ label: "rest", state: "rung" }]);
  });

  test(`reaches ${undoDepth} changes back and no further`, () => {
    let record = emptyRecord();
    for (let n = 1; n <= undoDepth + 5; n++) record = apply(record, [addNote(`${n}`)], `${n}`);
    expect(record.changes.length).toBe(undoDepth);
    for (let n = 0; n < undoDepth + 5; n++) record = apply(record, [undo]);
    expect(record.notes.map(({ text }) => text)).toEqual(["1", "2", "3", "4", "5"]);
  });

  test("skips a step whose entry was deleted by hand, and takes the others", () => {
    const record = apply(emptyRecord(), [addNote("a"), addNote("b")]);
    expect(apply({ ...record, notes: record.notes.slice(1) }, [undo]).notes).toEqual([]);
  });
});
