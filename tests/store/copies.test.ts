/** Daily copies: when one is made, how many are kept, and going back to one. */
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import { addNotes, addTimer, grown, later, noon, numbered } from "./growth.ts";
import { addNote, doing, faultyFiles, fileOf, got, newHome, onDisk, readTexts, texts } from "./support.ts";

const copiesIn = (home: string) => {
  const folder = join(home, "record.copies");
  return fs.existsSync(folder) ? fs.readdirSync(folder).sort() : [];
};
const note = (text: string) => doing([addNote(text)], text);
const undo = doing([{ do: "undo" }]);
const backTo = (day: string) => doing([{ do: "restore", day }], `going back to ${day}`);

describe("a copy", () => {
  test("is made before the first change of a day, of the record as the last day left it", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    got(await later(home, 0).change(note("b")));
    expect(copiesIn(home)).toEqual([]);
    const text = fs.readFileSync(fileOf(home), "utf8");
    got(await later(home, 3).change(note("c")));
    got(await later(home, 3).change(note("d")));
    expect(copiesIn(home)).toEqual(["2026-03-10.json"]);
    expect(fs.readFileSync(join(home, "record.copies", "2026-03-10.json"), "utf8")).toBe(text);
    expect(later(home, 3).copies()).toEqual(["2026-03-10"]);
  });

  test("is not made on days without a change, whatever is read or asked", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    for (let day = 1; day < 5; day++) {
      got(await later(home, day).read());
      got(await later(home, day).change(doing([])));
      got(await later(home, day).change(doing([{ do: "write file", name: "a.csv", text: "x" }])));
    }
    expect(copiesIn(home)).toEqual([]);
  });

  test("is kept for the last seven days that had a change", async () => {
    const home = newHome();
    for (let day = 0; day < 20; day += 2) got(await later(home, day).change(note(`day ${day}`)));
    expect(copiesIn(home)).toEqual([14, 16, 18, 20, 22, 24, 26].map((day) => `2026-03-${day}.json`));
  });

  test("and its folder are the owner's alone", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    got(await later(home, 1).change(note("b")));
    const mode = (path: string) => (fs.statSync(path).mode & 0o777).toString(8);
    expect([mode(join(home, "record.copies")), mode(join(home, "record.copies", "2026-03-10.json"))]).toEqual(
      ["700", "600"],
    );
  });

  test("that can't be made stops the write, and nothing was changed", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    const before = fs.readFileSync(fileOf(home), "utf8");
    fs.writeFileSync(join(home, "record.copies"), "in the way");
    expect(await later(home, 1).change(note("b"))).toMatchObject({ ok: false });
    expect(fs.readFileSync(fileOf(home), "utf8")).toBe(before);
    fs.rmSync(join(home, "record.copies"));
    got(await later(home, 1).change(note("b")));
    expect(await readTexts(openStore(home))).toEqual(["a", "b"]);
  });
});

describe("going back", () => {
  test("brings back what was there, changed and removed since, takes away what came, and can be undone", async () => {
    const home = newHome();
    got(
      await later(home, 0).change(
        doing(
          [
            addNote("a"),
            addNote("b"),
            { do: "set", setting: "oven_c", value: 150 },
            { do: "add", list: "stock", entry: { name: "almond flour", grams: 500 } },
            addTimer("old", noon + 60_000, "running"),
          ],
          "all",
        ),
      ),
    );
    const then = got(await later(home, 0).read()).record;
    const today = later(home, 1);
    got(await today.change(doing([{ do: "remove", list: "notes", id: 1 }], "1")));
    got(await today.change(doing([{ do: "change", list: "notes", id: 2, patch: { rating: 3 } }], "2")));
    got(await today.change(doing([{ do: "set", setting: "oven_c", value: undefined }], "3")));
    got(await today.change(doing([{ do: "set", setting: "fan_oven", value: true }], "4")));
    got(await today.change(doing([addNote("c"), { do: "remove", list: "stock", id: 1 }], "5")));
    got(await today.change(doing([addTimer("new", noon + 9e7, "running")], "6")));
    const now = got(await today.read()).record;

    got(await today.change(backTo("2026-03-10")));
    const back = got(await later(home, 1).read()).record;
    expect([back.notes, back.stock, back.bench]).toEqual([then.notes, then.stock, then.bench]);
    // a timer that runs is never taken from under her hands
    expect(back.timers).toEqual(now.timers);

    got(await today.change(undo));
    const undone = got(await later(home, 1).read()).record;
    expect({ ...undone, saved_ms: 0 }).toEqual({ ...now, saved_ms: 0 });
    // and the changes before it can be taken back as ever
    got(await today.change(undo));
    got(await today.change(undo));
    expect(await readTexts(later(home, 1))).toEqual(["b"]);
  });

  test("works across files of old notes, and only those that differ are written", async () => {
    const home = await grown(1000);
    const today = later(home, 1);
    got(await today.change(doing([{ do: "change", list: "notes", id: 5, patch: { text: "spoilt" } }], "1")));
    got(await today.change(doing([{ do: "remove", list: "notes", id: 300 }], "2")));
    got(await today.change(doing(addNotes(1001, 1300), "3")));
    const spoilt = await readTexts(later(home, 1));
    const before = fs.readdirSync(join(home, "record.parts"));
    got(await today.change(backTo("2026-03-10")));
    expect(await readTexts(later(home, 1))).toEqual(numbered(1, 1000));
    const fresh = fs.readdirSync(join(home, "record.parts")).filter((name) => !before.includes(name));
    expect(fresh.length).toBeLessThanOrEqual(4);
    got(await today.change(undo));
    expect(await readTexts(later(home, 1))).toEqual(spoilt);
  });

  test("gives no id a second time", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    got(await later(home, 1).change(note("b")));
    got(await later(home, 1).change(backTo("2026-03-10")));
    got(await later(home, 1).change(note("c")));
    expect(onDisk(home).notes.map(({ id, text }) => [id, text])).toEqual([
      [1, "a"],
      [3, "c"],
    ]);
  });

  test("to a copy that is damaged or gone is refused by name, and nothing is changed", async () => {
    const home = newHome();
    got(await later(home, 0).change(doing([addNote("a"), addNote("b")], "both")));
    got(await later(home, 1).change(note("c")));
    const copy = join(home, "record.copies", "2026-03-10.json");
    fs.writeFileSync(copy, fs.readFileSync(copy, "utf8").replace('"text":"b"', '"text":5'));
    const damaged = await later(home, 1).change(backTo("2026-03-10"));
    expect(damaged).toMatchObject({ ok: false, problem: { kind: "damaged", file: copy } });
    const gone = await later(home, 1).change(backTo("2026-03-09"));
    expect(gone).toMatchObject({
      ok: false,
      problem: { message: expect.stringContaining("2026-03-09.json is missing") },
    });
    expect(await readTexts(later(home, 1))).toEqual(["a", "b", "c"]);
  });

  test("to a copy of which a file of old notes is gone is refused as well", async () => {
    const home = await grown(600);
    got(
      await later(home, 1).change(doing([{ do: "change", list: "notes", id: 1, patch: { text: "x" } }], "1")),
    );
    const { sealed } = JSON.parse(fs.readFileSync(join(home, "record.copies", "2026-03-10.json"), "utf8"));
    fs.rmSync(join(home, "record.parts", sealed[0].file));
    expect(await later(home, 1).change(backTo("2026-03-10"))).toMatchObject({
      ok: false,
      problem: { kind: "damaged" },
    });
    expect(await readTexts(later(home, 1))).toEqual(["x", ...numbered(2, 600)]);
  });

  test("that fails while writing changes nothing", async () => {
    const home = newHome();
    got(await later(home, 0).change(note("a")));
    got(await later(home, 1).change(note("b")));
    const fault = faultyFiles();
    const store = later(home, 1, fault.files);
    fault.arm("renameSync", "EIO");
    expect(await store.change(backTo("2026-03-10"))).toMatchObject({ ok: false });
    fault.disarm();
    expect(texts(got(await store.read()).record)).toEqual(["a", "b"]);
  });
});
