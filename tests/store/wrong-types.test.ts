import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import type { RecordData } from "../../src/store/schema.ts";
import { aside, open, sample, sampleText } from "./sample.ts";
import { got, noting, texts } from "./support.ts";

describe("wrong types: what fits is read, what doesn't stays in the kept file", () => {
  const edited = (edit: (record: Record<string, unknown> & RecordData) => void): string => {
    const copy = JSON.parse(sampleText);
    edit(copy);
    return JSON.stringify(copy);
  };
  const cases: [string, string, (record: RecordData) => void][] = [
    [
      "a list that is none",
      edited((each) => Object.assign(each, { notes: "none" })),
      (read) => expect(read.notes).toEqual([]),
    ],
    [
      "a list that is missing",
      edited((each) => Object.assign(each, { stock: undefined })),
      (read) => expect(read.notes).toHaveLength(2),
    ],
    [
      "an entry of another kind",
      edited((each) => Object.assign(each.notes, { 0: 5 })),
      (read) => expect(texts(read)).toEqual(["second"]),
    ],
    [
      "an entry with a wrong field",
      edited((each) => Object.assign(each.notes[0] ?? {}, { rating: "4" })),
      (read) => expect(texts(read)).toEqual(["second"]),
    ],
    [
      "an entry with a field too many",
      edited((each) => Object.assign(each.notes[1] ?? {}, { oven: 1 })),
      (read) => expect(read.notes).toEqual(sample.notes),
    ],
    [
      "a field too many deep inside",
      edited((each) => Object.assign(each.formulas[0]?.lines[0] ?? {}, { x: 1 })),
      (read) => expect(read.formulas).toEqual(sample.formulas),
    ],
    [
      "a setting of the wrong type",
      edited((each) => Object.assign(each.bench, { oven_c: "hot", fan_oven: true })),
      (read) => expect(read.bench).toEqual({ fan_oven: true }),
    ],
    [
      "a setting that isn't one",
      edited((each) => Object.assign(each.bench, { color: "red" })),
      (read) => expect(read.bench).toEqual(sample.bench),
    ],
    [
      "the settings missing",
      edited((each) => Object.assign(each, { bench: undefined })),
      (read) => expect(read.bench).toEqual({}),
    ],
    [
      "a part too many",
      edited((each) => Object.assign(each, { recipes: [1] })),
      (read) => expect(read).toEqual(sample),
    ],
    [
      "no version",
      edited((each) => Object.assign(each, { version: undefined })),
      (read) => expect(read).toEqual(sample),
    ],
    [
      "a version that is a word",
      edited((each) => Object.assign(each, { version: "1" })),
      (read) => expect(read).toEqual(sample),
    ],
    [
      "a version from before the first",
      edited((each) => Object.assign(each, { version: 0 })),
      (read) => expect(read).toEqual(sample),
    ],
    [
      "an id twice",
      edited((each) => each.notes.push(each.notes[0] as never)),
      (read) => expect(read.notes.map(({ id }) => id)).toEqual([1, 2, 3]),
    ],
    [
      "ids that are none",
      edited((each) =>
        each.notes.forEach((note, n) => {
          note.id = [-1, 1.5][n] ?? 0;
        }),
      ),
      (read) => expect(read.notes.map(({ id }) => id)).toEqual([3, 4]),
    ],
    [
      "an id beyond counting",
      edited((each) => Object.assign(each.notes[1] ?? {}, { id: 2 ** 53 })),
      (read) => expect(read.notes.map(({ id }) => id)).toEqual([1, 3]),
    ],
    [
      "no last ids",
      edited((each) => Object.assign(each, { last_ids: undefined })),
      (read) => expect(read).toEqual(sample),
    ],
    [
      "a change that can't be read",
      edited((each) => each.changes.push({ name: 5 } as never)),
      (read) => expect(read).toEqual({ ...sample, changes: [] }),
    ],
    [
      "a prototype for an entry",
      sampleText.replace('"text":"second"', '"text":"second","__proto__":{"rating":5}'),
      (read) => expect(read.notes).toStrictEqual(sample.notes),
    ],
    [
      "a prototype for a setting",
      sampleText.replace('"bench": {', '"bench": {"__proto__":{"fan_oven":true},'),
      (read) => expect(read.bench).toStrictEqual(sample.bench),
    ],
  ];
  test.each(cases)("%s", async (_, text, check) => {
    const { home, store, record, notice } = await open(text);
    check(record);
    expect(notice).toContain(aside);
    expect(fs.readFileSync(join(home, aside), "utf8")).toBe(text);
    got(await store.change(noting("goes on")));
    const again = got(await openStore(home).read());
    expect(texts(again.record)).toEqual([...texts(record), "goes on"]);
    expect(again.notice).toBeUndefined();
  });

  test("bytes that are no text", async () => {
    const bytes = Buffer.from(sampleText);
    bytes[bytes.indexOf("second")] = 0xff;
    const { home, record } = await open(bytes);
    expect(texts(record)[1]).toBe("\ufffdecond");
    expect(fs.readFileSync(join(home, aside)).equals(bytes)).toBe(true);
  });

  test.each([
    ["an editor's invisible mark at the start", `\ufeff${sampleText}`],
    ["another layout", JSON.stringify(sample, null, 2).replaceAll("\n", "\r\n")],
    ["a last id that lags behind a note added by hand", sampleText.replace('"notes":2', '"notes":1')],
  ])("%s is no damage", async (_, text) => {
    const { record, notice, names } = await open(text);
    expect([record, notice, names]).toEqual([sample, undefined, ["record.json"]]);
  });
});
