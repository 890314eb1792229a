/** Files of old notes that are damaged, missing, edited by hand, or not named any more. */
import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import { grown, later, numbered, textsOf } from "./growth.ts";
import { addNote, doing, fileOf, got, onDisk, readTexts } from "./support.ts";

const folderOf = (home: string) => join(home, "record.parts");
/** The file of the first 128 notes. */
const firstOf = (home: string) => join(folderOf(home), onDisk(home).sealed[0]?.file ?? "");

/** All notes that can be read, and what is said about it. */
async function look(home: string) {
  const store = openStore(home);
  const { record, notice } = got(await store.read());
  const notes = textsOf(record);
  return { notes, notice, late: store.late() };
}

describe("a file of old notes", () => {
  test("edited by hand into something sound is simply read", async () => {
    const home = await grown(600);
    const text = fs.readFileSync(firstOf(home), "utf8");
    fs.writeFileSync(
      firstOf(home),
      JSON.stringify(JSON.parse(text.replace('"note 5"', '"by hand"')), null, 2),
    );
    const { notes, late } = await look(home);
    const wanted = numbered(1, 600);
    wanted[4] = "by hand";
    expect([notes, late]).toEqual([wanted, undefined]);
  });

  test("cut short is read as far as it goes, named, and left as it is", async () => {
    const home = await grown(600);
    const path = firstOf(home);
    const text = fs.readFileSync(path, "utf8");
    const cut = text.slice(0, text.indexOf('"note 100"'));
    fs.writeFileSync(path, cut);
    const { notes, late } = await look(home);
    expect(notes).toEqual([...numbered(1, 99), ...numbered(129, 600)]);
    expect(late).toContain(path);
    expect(late).toContain("99 of 128 notes could be read");
    expect(fs.readFileSync(path, "utf8")).toBe(cut);
  });

  test("that is damaged is kept when what could be read of it is written anew", async () => {
    const home = await grown(600);
    const path = firstOf(home);
    const cut = fs.readFileSync(path, "utf8").slice(0, -200);
    fs.writeFileSync(path, cut);
    const store = later(home, 0);
    const before = textsOf(got(await store.read()).record);
    got(await store.change(doing([addNote("more")], "it")));
    expect(fs.readFileSync(path.replace(".json", ".damaged.json"), "utf8")).toBe(cut);
    const { notes, late } = await look(home);
    expect([notes, late]).toEqual([[...before, "more"], undefined]);
    // days later everything is tidied but the kept file
    for (let day = 1; day < 10; day++) got(await later(home, day).change(doing([addNote(`${day}`)], "it")));
    expect(fs.readdirSync(folderOf(home)).filter((name) => name.includes("damaged"))).toHaveLength(1);
    expect(fs.readFileSync(path.replace(".json", ".damaged.json"), "utf8")).toBe(cut);
  });

  test("that is missing is named with what it held; put back, it is read again", async () => {
    const home = await grown(600);
    const path = firstOf(home);
    fs.renameSync(path, `${path}.away`);
    const { notes, late } = await look(home);
    expect(notes).toEqual(numbered(129, 600));
    expect(late).toContain(`${path} is missing, and with it 128 notes`);
    got(await later(home, 0).change(doing([addNote("more")], "it")));
    fs.renameSync(`${path}.away`, path);
    expect((await look(home)).notes).toEqual([...numbered(1, 600), "more"]);
  });

  test("with ids of another file, or of another kind, is no way in", async () => {
    const home = await grown(600);
    const path = firstOf(home);
    const parsed = JSON.parse(fs.readFileSync(path, "utf8"));
    parsed.notes[0].id = 599;
    parsed.notes[1] = { id: 2, label: "a timer" };
    fs.writeFileSync(path, JSON.stringify(parsed));
    const { notes, late } = await look(home);
    expect(notes).toEqual(numbered(3, 600));
    expect(late).toContain("126 of 128");
  });

  test("can't be named so that it leads out of its folder", async () => {
    const home = await grown(600);
    const outside = join(home, "outside.json");
    fs.writeFileSync(outside, '{"version":3,"notes":[]}');
    const text = fs.readFileSync(fileOf(home), "utf8");
    fs.writeFileSync(fileOf(home), text.replace(onDisk(home).sealed[0]?.file ?? "", "../outside.json"));
    const { notice } = await look(home);
    expect(notice).toContain("record.damaged-1.json");
    expect(fs.readFileSync(outside, "utf8")).toBe('{"version":3,"notes":[]}');
  });
});

describe("files of old notes are found again", () => {
  test("when the record's own file is cut off before it names them", async () => {
    const home = await grown(600);
    fs.writeFileSync(fileOf(home), fs.readFileSync(fileOf(home), "utf8").slice(0, 40));
    const { notes, notice } = await look(home);
    expect(notes).toEqual(numbered(1, 384));
    expect(notice).toContain("384 notes could be read");
    got(await later(home, 0).change(doing([addNote("goes on")], "it")));
    expect(onDisk(home).notes.at(-1)?.id).toBeGreaterThan(384);
    expect((await look(home)).notes).toEqual([...numbered(1, 384), "goes on"]);
  });

  test("when it is gone: it is said, and no id is given twice", async () => {
    const home = await grown(600);
    fs.rmSync(fileOf(home));
    const { notes, notice } = await look(home);
    expect(notes).toEqual(numbered(1, 384));
    expect(notice).toContain(`${fileOf(home)} is missing; 384 notes could be read from ${folderOf(home)}`);
    expect((await look(home)).notice).toBeUndefined();
    got(await later(home, 0).change(doing([addNote("goes on")], "it")));
    expect((await look(home)).notes).toEqual([...numbered(1, 384), "goes on"]);
  });

  test("the newest of several of the same ids", async () => {
    const home = await grown(600);
    got(
      await later(home, 0).change(
        doing([{ do: "change", list: "notes", id: 1, patch: { text: "new" } }], "it"),
      ),
    );
    const old = fs.readdirSync(folderOf(home)).filter((name) => name !== onDisk(home).sealed[0]?.file);
    for (const name of old) fs.utimesSync(join(folderOf(home), name), 1, 1);
    fs.writeFileSync(fileOf(home), "");
    expect((await look(home)).notes).toEqual(["new", ...numbered(2, 384)]);
  });

  test("and where there is a copy of the whole record, that is said too", async () => {
    const home = await grown(600);
    got(await later(home, 1).change(doing([addNote("more")], "it")));
    fs.writeFileSync(fileOf(home), "");
    expect((await look(home)).notice).toContain(
      "There is a copy of the record as it was at the end of 2026-03-10",
    );
    got(await later(home, 1).change(doing([{ do: "restore", day: "2026-03-10" }], "back")));
    expect(await readTexts(later(home, 1))).toEqual(numbered(1, 600));
  });
});
