import * as fs from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { beforeAll, describe, expect, test } from "vitest";
import { applyEffects } from "../../src/store/apply.ts";
import { checkRecord } from "../../src/store/check.ts";
import { openStore } from "../../src/store/open.ts";
import { emptyRecord, listNames, type RecordData } from "../../src/store/schema.ts";
import { textOf } from "../../src/store/text.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import {
  addNote,
  faultyFiles,
  fileOf,
  got,
  newHome,
  noting,
  onDisk,
  readTexts,
  texts,
  unflushed,
} from "./support.ts";

const effects: Effect[] = [
  { do: "set", setting: "oven_c", value: 150 },
  { do: "add", list: "timers", entry: { label: "rest", set_ms: 1, due_ms: 2, state: "running" } },
  addNote('she said "notes": [ and } too'),
  addNote("second"),
  { do: "add", list: "stock", entry: { name: "almond flour", grams: 500 } },
  { do: "add", list: "formulas", entry: { name: "house", lines: [{ name: "sugar", grams: 100 }] } },
];
const sample = applyEffects(emptyRecord(), effects, "the morning", 5);
const sampleText = textOf(sample);

/** Reads a damaged file through a store and tells what became of it. */
async function open(bytes: string | Uint8Array) {
  const home = newHome();
  fs.writeFileSync(fileOf(home), bytes);
  const store = openStore(home, { files: unflushed });
  const { record, notice } = got(await store.read());
  const names = fs.readdirSync(home).sort();
  return { home, store, record, notice, names };
}

/** Every entry of a record as text, to see whether one record's are all another's. */
const entriesOf = (record: RecordData): Set<string> =>
  new Set(listNames.flatMap((list) => record[list].map((entry) => `${list} ${JSON.stringify(entry)}`)));

const aside = "record.damaged-1.json";

describe("a damaged file is kept aside untouched, what can be read is read, and it is said", () => {
  test.each<[string, string]>([
    ["empty", ""],
    ["blank", " \n"],
    ["null", "null"],
    ["a list", "[1,2]"],
    ["a number", "17"],
    ["no JSON", "Dear diary, today I made macarons."],
    ["another program's", '{"posts":[{"id":1}]}'],
    ["binary", "\u0000\u0001\u0002"],
  ])("%s", async (_, text) => {
    const { home, store, record, notice, names } = await open(text);
    expect(record).toEqual(emptyRecord());
    expect(notice).toContain("nothing could be read");
    expect(notice).toContain(join(home, aside));
    expect(names).toEqual([aside, "record.json"]);
    expect(fs.readFileSync(join(home, aside), "utf8")).toBe(text);
    expect(got(await store.read()).notice).toBeUndefined();
    got(await store.change(noting("goes on")));
    expect(await readTexts(openStore(home))).toEqual(["goes on"]);
  });

  test("a file cut off at every length: each entry before the cut is read, none is made up", async () => {
    const whole = Buffer.from(sampleText);
    let most = 0;
    for (let length = 0; length < whole.length; length++) {
      const cut = whole.subarray(0, length);
      const { home, record, notice, names } = await open(cut);
      // Only the line end after the last brace can be missing without loss.
      if (length === whole.length - 1) {
        expect([record, notice, names]).toEqual([sample, undefined, ["record.json"]]);
        continue;
      }
      expect(names).toEqual([aside, "record.json"]);
      expect(notice).toContain(aside);
      expect(fs.readFileSync(join(home, aside)).equals(cut)).toBe(true);
      const read = entriesOf(record);
      for (const entry of read) expect(entriesOf(sample)).toContain(entry);
      const before = [...entriesOf(sample)].filter((entry) => {
        const text = entry.slice(entry.indexOf(" ") + 1);
        return cut.includes(text);
      });
      expect([...read].sort()).toEqual(before.sort());
      most = Math.max(most, read.size);
    }
    expect(most).toBe(entriesOf(sample).size);
  });

  test("a file reformatted by an editor and then cut off is read up to the cut as well", async () => {
    const pretty = JSON.stringify(sample, null, 4);
    const { record } = await open(pretty.slice(0, pretty.indexOf('"stock": [') + 40));
    expect([texts(record), record.timers, record.bench]).toEqual([
      texts(sample),
      sample.timers,
      sample.bench,
    ]);
  });

  test("a comma lost while editing costs nothing but the undo history", async () => {
    const { record, notice } = await open(sampleText.replace("},\n{", "}\n{"));
    expect(record).toEqual({ ...sample, changes: [] });
    expect(notice).toContain("2 notes");
  });

  test("bits flipped anywhere: no crash, the bytes kept, and never an entry of the wrong shape", () => {
    fc.assert(
      fc.property(fc.array(fc.nat(sampleText.length * 8 - 1), { minLength: 1, maxLength: 6 }), (flips) => {
        const bytes = Buffer.from(sampleText);
        for (const flip of flips) bytes[flip >> 3] = (bytes[flip >> 3] ?? 0) ^ (1 << (flip & 7));
        const { record, state } = checkRecord(bytes);
        if (state === "newer") return;
        const again = checkRecord(Buffer.from(textOf(record)));
        expect(again).toEqual({ record, state: "sound", version: 1 });
      }),
      { numRuns: 2000 },
    );
  });

  test("one broken line costs one entry", async () => {
    const lines = sampleText.split("\n");
    const at = lines.findIndex((line) => line.includes('"second"'));
    lines[at] = (lines[at] ?? "").replace('"second"', '"sec\u0000ond');
    const { record } = await open(lines.join("\n"));
    expect(entriesOf(record).size).toBe(entriesOf(sample).size - 1);
    expect(texts(record)).toEqual([texts(sample)[0]]);
  });
});

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

describe("huge and deep files end in time", () => {
  const deep = 200_000;
  test.each<[string, () => string]>([
    ["lists in lists", () => "[".repeat(deep)],
    ["objects in objects", () => '{"a":'.repeat(deep)],
    ["braces only", () => `"notes": [${"{".repeat(deep)}${"}".repeat(deep)}`],
    ["deep and closed", () => `{"version":1,"notes":[${'{"a":'.repeat(20_000)}1${"}".repeat(20_000)}]`],
    [
      "deep inside a change",
      () =>
        sampleText.replace(
          '"inverse":[',
          `"inverse":[{"do":"set","setting":"x","value":${"[".repeat(9000)}${"]".repeat(9000)}},`,
        ),
    ],
    ["a line without an end", () => `{"version":1,"notes":["${"x".repeat(5_000_000)}`],
  ])("%s", async (_, text) => {
    const { store, notice, names } = await open(text());
    expect(notice).toContain(aside);
    expect(names).toEqual([aside, "record.json"]);
    got(await store.change(noting("goes on")));
  });
});

describe("keeping aside", () => {
  test("never replaces an earlier kept file", async () => {
    const home = newHome();
    fs.writeFileSync(join(home, aside), "an earlier one");
    fs.writeFileSync(fileOf(home), "damaged");
    expect(got(await openStore(home).read()).notice).toContain("record.damaged-2.json");
    expect(fs.readFileSync(join(home, aside), "utf8")).toBe("an earlier one");
    expect(fs.readFileSync(join(home, "record.damaged-2.json"), "utf8")).toBe("damaged");
  });

  test("that was interrupted before the new record was written keeps no second copy", async () => {
    const home = newHome();
    fs.writeFileSync(fileOf(home), "damaged");
    fs.linkSync(fileOf(home), join(home, aside));
    got(await openStore(home).read());
    expect(fs.readdirSync(home).sort()).toEqual([aside, "record.json"]);
    expect(fs.readFileSync(join(home, aside), "utf8")).toBe("damaged");
  });

  test("comes before the first change too, and the next reading tells", async () => {
    const home = newHome();
    const store = openStore(home);
    fs.writeFileSync(fileOf(home), sampleText.slice(0, -30));
    got(await store.change(noting("third")));
    expect(fs.readFileSync(join(home, aside), "utf8")).toBe(sampleText.slice(0, -30));
    expect(got(await store.read()).notice).toContain(aside);
    expect(got(await store.read()).notice).toBeUndefined();
    expect(texts(onDisk(home))).toEqual([...texts(sample), "third"]);
  });

  test.each(["EROFS", "ENOSPC", "EIO"])(
    "that fails (%s) still lets what is readable be read, and no change through",
    async (code) => {
      const home = newHome();
      const text = sampleText.slice(0, -30);
      fs.writeFileSync(fileOf(home), text);
      const fault = faultyFiles();
      const store = openStore(home, { files: fault.files });
      // The first link is the lock's, the second keeps the file.
      fault.arm("linkSync", code, 1, 1);
      const { record, notice } = got(await store.read());
      expect(texts(record)).toEqual(texts(sample));
      expect(notice).toContain("will be kept aside");
      fault.arm("linkSync", code, 1, 1);
      expect(await store.change(noting("x"))).toMatchObject({
        ok: false,
        problem: { kind: "damaged", file: fileOf(home) },
      });
      expect([fs.readdirSync(home), fs.readFileSync(fileOf(home), "utf8")]).toEqual([["record.json"], text]);
      fault.disarm();
      got(await store.change(noting("x")));
      expect(fs.readFileSync(join(home, aside), "utf8")).toBe(text);
    },
  );
});

test("a kept file stays when the write after it fails halfway and can't be taken back", async () => {
  const home = newHome();
  fs.writeFileSync(fileOf(home), "damaged");
  const fault = faultyFiles();
  // Flushed are the kept name, the new record, then its folder: from there on all fails.
  fault.arm("fsyncSync", "EIO", 2, 1000);
  expect(await openStore(home, { files: fault.files }).change(noting("x"))).toMatchObject({ ok: false });
  expect(fs.readFileSync(join(home, aside), "utf8")).toBe("damaged");
});

describe("a record of a newer version", () => {
  let newer = "";
  beforeAll(() => {
    newer = sampleText
      .replace('"version": 1', '"version": 2')
      .replace('"bench"', '"oven_log": [1],\n"bench"');
  });

  test("is read as far as it can be, and said to be newer", async () => {
    const { record, notice, names } = await open(newer);
    expect(record).toEqual(sample);
    expect(notice).toContain("newer version");
    expect(names).toEqual(["record.json"]);
  });

  test("is never written: the change is refused, with what to try, and no byte moves", async () => {
    const { home, store } = await open(newer);
    const refused = await store.change(noting("x"));
    expect(refused).toMatchObject({ ok: false, problem: { kind: "newer", file: fileOf(home) } });
    expect(await store.change(() => ({ effects: [], value: 3 }))).toEqual({ ok: true, value: 3 });
    expect([fs.readdirSync(home), fs.readFileSync(fileOf(home), "utf8")]).toEqual([["record.json"], newer]);
  });

  test("is known as newer when it is cut short as well", async () => {
    const { home, store } = await open(newer.slice(0, -40));
    expect(await store.change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "newer" } });
    expect(fs.readFileSync(fileOf(home), "utf8")).toBe(newer.slice(0, -40));
  });
});
