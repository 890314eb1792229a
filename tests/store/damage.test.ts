import * as fs from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkRecord } from "../../src/store/check.ts";
import { openStore } from "../../src/store/open.ts";
import { emptyRecord } from "../../src/store/schema.ts";
import { textOf } from "../../src/store/text.ts";
import { aside, entriesOf, open, sample, sampleText } from "./sample.ts";
import { got, noting, readTexts, texts } from "./support.ts";

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
        expect(again).toEqual({ record, state: "sound", version: record.version });
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
