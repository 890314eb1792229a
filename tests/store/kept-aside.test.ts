import * as fs from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import { aside, sample, sampleText } from "./sample.ts";
import { faultyFiles, fileOf, got, newHome, noting, onDisk, texts } from "./support.ts";

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

test("nothing is kept aside by a write that fails: the file is in its own place still", async () => {
  const home = newHome();
  fs.writeFileSync(fileOf(home), "damaged");
  const fault = faultyFiles();
  fault.arm("renameSync", "EIO");
  expect(await openStore(home, { files: fault.files }).change(noting("x"))).toMatchObject({ ok: false });
  expect([fs.readdirSync(home), fs.readFileSync(fileOf(home), "utf8")]).toEqual([["record.json"], "damaged"]);
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
