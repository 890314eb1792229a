/** Old entries in files of their own: where they lie, that none is lost, and what a change to one of them does. */
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { nodeFiles } from "../../src/store/files.ts";
import { openStore } from "../../src/store/open.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addNotes, addTimer, day_ms, grown, later, noon, numbered, textsOf } from "./growth.ts";
import {
  addNote,
  doing,
  fileOf,
  got,
  newHome,
  notesOnDisk,
  onDisk,
  readTexts,
  unflushed,
} from "./support.ts";

const partsIn = (home: string) => fs.readdirSync(join(home, "record.parts")).sort();
const undo = doing([{ do: "undo" }]);

describe("what is old lies in files of its own", () => {
  test("of a thousand notes the record's file keeps the last 128 to 256, and all are read in order", async () => {
    const home = await grown(1000);
    const { notes, sealed } = onDisk(home);
    // 1000 lies in the eighth file of 128; the last two stay, 769 to 1000
    expect(notes.map(({ id }) => id)).toEqual(Array.from({ length: 232 }, (_, n) => 769 + n));
    expect(sealed.map(({ from, to, count }) => [from, to, count])).toEqual(
      Array.from({ length: 6 }, (_, n) => [n * 128 + 1, n * 128 + 128, 128]),
    );
    expect(textsOf({ notes: notesOnDisk(home) })).toEqual(numbered(1, 1000));
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 1000));
  });

  test("a question that looks at no notes opens none of them", async () => {
    const home = await grown(1000);
    const opened: string[] = [];
    const files = {
      ...nodeFiles,
      readFileSync: (...args: Parameters<typeof nodeFiles.readFileSync>) => {
        opened.push(String(args[0]));
        return nodeFiles.readFileSync(...args);
      },
    } as typeof nodeFiles;
    const { record } = got(await openStore(home, { files }).read());
    expect([record.bench, record.timers]).toEqual([{}, []]);
    expect(opened).toEqual([fileOf(home)]);
    expect(record.notes).toHaveLength(1000);
    expect(opened).toHaveLength(7);
    void record.notes;
    expect(opened).toHaveLength(7);
  });

  test("a new note and its undo write the record's file alone", async () => {
    const home = await grown(1000);
    const before = partsIn(home);
    got(await later(home, 0).change(doing([addNote("more")], "it")));
    got(await later(home, 0).change(undo));
    expect(partsIn(home)).toEqual(before);
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 1000));
  });

  test("an import of a thousand notes is one short step back", async () => {
    const home = await grown(1000);
    expect(onDisk(home).changes.map(({ inverse }) => inverse)).toEqual([
      [{ do: "remove", list: "notes", id: 1, to: 1000 }],
    ]);
    got(await later(home, 0).change(undo));
    expect(await readTexts(openStore(home))).toEqual([]);
    expect(onDisk(home).sealed).toEqual([]);
  });

  test("timers: those that run or ended lately stay, however many came after", async () => {
    const home = newHome();
    const store = openStore(home, { files: unflushed, now_ms: () => noon });
    const old = noon - 400 * day_ms;
    const effects: Effect[] = [
      addTimer("mature", noon + day_ms, "running"),
      addTimer("forgotten", noon - 40 * day_ms, "running"),
      addTimer("unheard", noon - 20 * day_ms, "running"),
      addTimer("just rang", noon - 3_600_000),
      ...Array.from({ length: 500 }, (_, n) => addTimer(`bake ${n}`, old + n)),
    ];
    got(await store.change(doing(effects)));
    const labels = onDisk(home).timers.map(({ label }) => label);
    expect(labels.slice(0, 3)).toEqual(["mature", "unheard", "just rang"]);
    expect(labels).not.toContain("forgotten");
    // the fourth file of 128 holds 385 to 504; with the third, 257 to 504 stay
    expect(labels).toHaveLength(3 + 248);
    expect(onDisk(home).sealed.map(({ from, count }) => [from, count])).toEqual([
      [1, 125],
      [129, 128],
    ]);
    // a month on they have all ended, and go to the others of their time
    const month = openStore(home, { files: unflushed, now_ms: () => noon + 32 * day_ms });
    got(await month.change(doing([{ do: "set", setting: "oven_c", value: 150 }], "oven")));
    expect(onDisk(home).sealed.map(({ count }) => count)).toEqual([128, 128]);
  });
});

describe("a change to an old note", () => {
  const patch = (id: number, text: string): Effect => ({ do: "change", list: "notes", id, patch: { text } });

  test("makes a new file for its part and leaves the old one and all others as they are", async () => {
    const home = await grown(1000);
    const before = Object.fromEntries(
      partsIn(home).map((name) => [name, fs.readFileSync(join(home, "record.parts", name), "utf8")]),
    );
    got(await later(home, 0).change(doing([patch(200, "mended")], "the old note")));
    const wanted = numbered(1, 1000);
    wanted[199] = "mended";
    expect(await readTexts(openStore(home))).toEqual(wanted);
    expect(partsIn(home)).toHaveLength(7);
    for (const [name, text] of Object.entries(before))
      expect(fs.readFileSync(join(home, "record.parts", name), "utf8")).toBe(text);
    got(await later(home, 0).change(undo));
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 1000));
  });

  test("removal and its undo bring it back into its place", async () => {
    const home = await grown(600);
    got(await later(home, 0).change(doing([{ do: "remove", list: "notes", id: 7 }], "it")));
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 600).filter((each) => each !== "note 7"));
    got(await later(home, 0).change(undo));
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 600));
  });

  test("files that nothing names any more go with the next day's copy, those of copies stay", async () => {
    const home = await grown(600);
    for (let day = 1; day <= 12; day++) {
      got(await later(home, day).change(doing([patch(1, `day ${day}`)], "it")));
      const named = new Set(
        [
          fileOf(home),
          ...fs.readdirSync(join(home, "record.copies")).map((name) => join(home, "record.copies", name)),
        ]
          .flatMap((path) => JSON.parse(fs.readFileSync(path, "utf8")).sealed)
          .map(({ file }: { file: string }) => file),
      );
      for (const file of named) expect(partsIn(home)).toContain(file);
    }
    // 3 parts: of the first a state for each of seven copies and the present one, and the other two
    expect(fs.readdirSync(join(home, "record.copies"))).toHaveLength(7);
    expect(partsIn(home)).toHaveLength(8 + 2);
  });
});

describe("a record of version 2, all in one file", () => {
  async function single(notes: number): Promise<{ home: string; text: string }> {
    const home = newHome();
    const { sealed: _sealed, saved_ms: _saved, ...record } = onDisk(await grown(128));
    const all = Array.from({ length: notes }, (_, n) => ({
      ...record.notes[0],
      id: n + 1,
      text: `note ${n + 1}`,
    }));
    const text = JSON.stringify({
      ...record,
      version: 2,
      notes: all,
      last_ids: { ...record.last_ids, notes },
      changes: [{ name: "the last", at_ms: noon, inverse: [{ do: "remove", list: "notes", id: notes }] }],
    });
    fs.writeFileSync(fileOf(home), text);
    return { home, text };
  }

  test("is read as it is, and nothing is written by reading", async () => {
    const { home, text } = await single(1000);
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 1000));
    expect(got(await openStore(home).read()).notice).toBeUndefined();
    expect([fs.readdirSync(home), fs.readFileSync(fileOf(home), "utf8")]).toEqual([["record.json"], text]);
  });

  test("is laid out anew by the first change, which keeps the old file; undo reaches back beyond it", async () => {
    const { home, text } = await single(1000);
    got(await later(home, 1).change(doing([addNote("first of the new")], "it")));
    expect(fs.readFileSync(join(home, "record.version-2-1.json"), "utf8")).toBe(text);
    expect(onDisk(home)).toMatchObject({ version: 3 });
    expect(partsIn(home)).toHaveLength(6);
    expect(await readTexts(openStore(home))).toEqual([...numbered(1, 1000), "first of the new"]);
    got(await later(home, 1).change(undo));
    got(await later(home, 1).change(undo));
    expect(await readTexts(openStore(home))).toEqual(numbered(1, 999));
    expect(fs.readdirSync(home).sort()).toEqual(["record.json", "record.parts", "record.version-2-1.json"]);
  });
});

test("notes added past a full file don't disturb each other's ids", async () => {
  const home = newHome();
  for (let n = 0; n < 5; n++)
    got(await later(home, 0).change(doing(addNotes(n * 100 + 1, n * 100 + 100), `import ${n}`)));
  const { record } = got(await openStore(home).read());
  expect(record.notes.map(({ id }) => id)).toEqual(Array.from({ length: 500 }, (_, n) => n + 1));
});
