import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { type Files, nodeFiles } from "../../src/store/files.ts";
import { underLock } from "../../src/store/lock.ts";
import { openStore } from "../../src/store/open.ts";
import { emptyRecord } from "../../src/store/schema.ts";
import { addNote, doing, fileOf, got, newHome, noteNamed, noting, onDisk, readTexts } from "./support.ts";

describe("what was acknowledged is in the file", () => {
  test("a change is read back by other means, whole", async () => {
    const home = newHome();
    const store = openStore(home, { now_ms: () => 42 });
    expect(got(await store.change(noting("crème brûlée \u2028 🥜 \u001b[31m")))).toBe(
      "crème brûlée \u2028 🥜 \u001b[31m",
    );
    expect(onDisk(home)).toEqual({
      ...emptyRecord(),
      saved_ms: 42,
      last_ids: { ...emptyRecord().last_ids, notes: 1 },
      notes: [{ ...noteNamed("crème brûlée \u2028 🥜 \u001b[31m"), id: 1 }],
      changes: [
        {
          name: 'the note "crème brûlée \u2028 🥜 \u001b[31m"',
          at_ms: 42,
          inverse: [{ do: "remove", list: "notes", id: 1 }],
        },
      ],
    });
  });

  test("a store that wrote and a store opened afterwards read the same", async () => {
    const home = newHome();
    const store = openStore(home);
    got(await store.change(noting("one")));
    got(
      await store.change(
        doing([{ do: "change", list: "notes", id: 1, patch: { rating: 4, oven_c: undefined } }], "a"),
      ),
    );
    got(await store.change(doing([{ do: "set", setting: "oven_c", value: 148.5 }], "b")));
    got(await store.change(doing([{ do: "set", setting: "oven_c", value: undefined }], "c")));
    expect(got(await store.read())).toStrictEqual(got(await openStore(home).read()));
  });

  test("a store sees at once what another store wrote", async () => {
    const home = newHome();
    const [one, other] = [openStore(home), openStore(home)];
    got(await one.change(noting("a")));
    expect(await readTexts(other)).toEqual(["a"]);
    got(await other.change(noting("b")));
    expect(await readTexts(one)).toEqual(["a", "b"]);
  });

  test("changes asked for at once in one process keep their order, also when they had to wait", async () => {
    const home = newHome();
    const store = openStore(home);
    const other = underLock(
      nodeFiles,
      `${fileOf(home)}.lock`,
      0,
      () => new Promise((done) => setTimeout(done, 80)),
    );
    await Promise.all(Array.from({ length: 20 }, (_, n) => store.change(noting(`${n}`))));
    await other;
    expect(await readTexts(store)).toEqual(Array.from({ length: 20 }, (_, n) => `${n}`));
  });

  test("a record handed out can't be altered behind the store's back", async () => {
    const store = openStore(newHome());
    got(await store.change(noting("kept")));
    const { record } = got(await store.read());
    expect(() => record.notes.pop()).toThrow(TypeError);
    expect(() => Object.assign(record, { notes: [] })).toThrow(TypeError);
    expect(() => Object.assign(record.notes[0] ?? {}, { text: "other" })).toThrow(TypeError);
    expect(await readTexts(store)).toEqual(["kept"]);
  });
});

test("a change is flushed, file before its name and name before the acknowledgement", async () => {
  const home = newHome();
  got(await openStore(home).change(noting("a")));
  const opened = new Map<unknown, string>();
  const seen: string[] = [];
  const files: Files = {
    ...nodeFiles,
    openSync: (path, ...rest) => {
      const fd = nodeFiles.openSync(path, ...rest);
      opened.set(fd, String(path) === home ? "folder" : String(path).endsWith(".tmp") ? "draft" : "lock");
      return fd;
    },
    fsyncSync: (fd) => seen.push(`flush ${opened.get(fd)}`),
    renameSync: () => seen.push("rename"),
  };
  got(await openStore(home, { files }).change(noting("b")));
  seen.push("acknowledged");
  expect(seen).toEqual(["flush draft", "rename", "flush folder", "acknowledged"]);
});

describe("what doesn't change the record writes nothing", () => {
  test("reading makes neither folder nor file", async () => {
    const home = join(newHome(), "not", "yet");
    expect(got(await openStore(home).read())).toEqual({ record: emptyRecord() });
    expect(fs.existsSync(join(home, ".."))).toBe(false);
  });

  test("work without effects, and a file to write, leave the record's file alone", async () => {
    const home = newHome();
    const store = openStore(home);
    got(await store.change(doing([])));
    got(await store.change(doing([{ do: "write file", name: "a.csv", text: "x" }], "the list")));
    expect(fs.readdirSync(home)).toEqual([]);
  });

  test("an effect that can't be carried out is a bug: thrown, nothing written, the lock given back", async () => {
    const home = newHome();
    const store = openStore(home);
    got(await store.change(noting("before")));
    const before = fs.readFileSync(fileOf(home));
    const bad = doing([addNote("x"), { do: "change", list: "notes", id: 99, patch: { text: "y" } }], "both");
    await expect(store.change(bad)).rejects.toThrow("there is no 99");
    expect(fs.readFileSync(fileOf(home))).toEqual(before);
    got(await store.change(noting("after")));
    expect(await readTexts(store)).toEqual(["before", "after"]);
  });
});

describe("the file and its folder", () => {
  const mode = (path: string) => (fs.statSync(path).mode & 0o777).toString(8);

  test.skipIf(process.platform === "win32")(
    "are their owner's alone, also where the file was not",
    async () => {
      const home = join(newHome(), "share", "of", "ours");
      const store = openStore(home);
      got(await store.change(noting("private")));
      expect([mode(home), mode(fileOf(home))]).toEqual(["700", "600"]);
      fs.chmodSync(fileOf(home), 0o644);
      got(await store.change(noting("again")));
      expect(mode(fileOf(home))).toBe("600");
    },
  );

  test("hold nothing but the record when all is done", async () => {
    const home = newHome();
    const store = openStore(home);
    for (const text of ["a", "b", "c"]) got(await store.change(noting(text)));
    expect(fs.readdirSync(home)).toEqual(["record.json"]);
  });

  test("strays of ended processes go with the first change, those of running ones stay", async () => {
    const home = newHome();
    const dead = 4_194_304 + 7;
    const strays = [`record.json.${dead}-0123abcd.tmp`, `record.json.lock.${dead}-0123abcd.new`];
    const running = `record.json.lock.${process.pid}-0123abcd.new`;
    for (const name of [...strays, running, "mine.tmp", "record.json.bak"])
      fs.writeFileSync(join(home, name), "x");
    got(await openStore(home).change(noting("a")));
    expect(fs.readdirSync(home).sort()).toEqual(
      ["mine.tmp", "record.json", "record.json.bak", running].sort(),
    );
  });
});

describe("a record that is a link", () => {
  test("stays a link; what it points to is written, and kept in its own folder", async () => {
    const [home, other] = [newHome(), newHome()];
    const real = join(other, "macarons.json");
    got(await openStore(other).change(noting("old")));
    fs.renameSync(fileOf(other), real);
    fs.symlinkSync(real, fileOf(home));
    got(await openStore(home).change(noting("new")));
    expect(fs.lstatSync(fileOf(home)).isSymbolicLink()).toBe(true);
    expect(
      JSON.parse(fs.readFileSync(real, "utf8")).notes.map((note: { text: string }) => note.text),
    ).toEqual(["old", "new"]);
    expect([fs.readdirSync(home), fs.readdirSync(other)]).toEqual([["record.json"], ["macarons.json"]]);
  });

  test("may point to a file that is yet to be written", async () => {
    const [home, other] = [newHome(), newHome()];
    fs.symlinkSync(join(other, "later.json"), fileOf(home));
    const store = openStore(home);
    expect(await readTexts(store)).toEqual([]);
    got(await store.change(noting("first")));
    expect(fs.existsSync(join(other, "later.json"))).toBe(true);
    expect(await readTexts(store)).toEqual(["first"]);
  });

  test("in a circle, and a folder in its place, are problems and no crash", async () => {
    const home = newHome();
    fs.symlinkSync("record.json", fileOf(home));
    const circle = await openStore(home).read();
    expect(circle).toMatchObject({ ok: false, problem: { kind: "io" } });
    fs.unlinkSync(fileOf(home));
    fs.mkdirSync(fileOf(home));
    expect(await openStore(home).change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "io" } });
  });
});
