import * as fs from "node:fs";
import { describe, expect, test } from "vitest";
import type { Files } from "../../src/store/files.ts";
import { openStore } from "../../src/store/open.ts";
import { faultyFiles, fileOf, got, newHome, noting, operations, readTexts } from "./support.ts";

/** Everything in the home by name and content: what "as it was" means on disk. */
const snapshot = (home: string) =>
  Object.fromEntries(fs.readdirSync(home).map((name) => [name, fs.readFileSync(`${home}/${name}`, "utf8")]));

describe("each file operation made to fail, at each of its calls in turn", () => {
  test.each(operations)(
    "%s: what failed changed nothing, what was acknowledged is there, the next works",
    async (operation) => {
      let reached = 0;
      for (const existing of [true, false]) {
        for (let call = 0; ; call++) {
          const home = newHome();
          if (existing) got(await openStore(home).change(noting("before")));
          const fault = faultyFiles();
          const store = openStore(home, { files: fault.files });
          const before = snapshot(home);
          const kept = existing ? ["before"] : [];

          fault.arm(operation, "EIO", call);
          const result = await store.change(noting("tried"));
          fault.disarm();
          if (fault.fired() === 0) break;
          reached++;

          if (result.ok) kept.push("tried");
          else {
            expect(result.problem.message).not.toBe("");
            expect(result.problem.try).not.toBe("");
            // Tidying may have failed as well; the record itself never differs.
            expect(snapshot(home)["record.json"]).toBe(before["record.json"]);
          }
          expect(await readTexts(store)).toEqual(kept);
          expect(await readTexts(openStore(home))).toEqual(kept);
          got(await store.change(noting("next")));
          expect(await readTexts(openStore(home))).toEqual([...kept, "next"]);
          got(await openStore(home).change(noting("tidy")));
          const left = fs
            .readdirSync(home)
            .filter((name) => name !== "record.json" && !name.includes(`.${process.pid}-`));
          expect(left).toEqual([]);
        }
      }
      expect(reached).toBeGreaterThan(0);
    },
  );

  test.each<keyof Files>(["writeFileSync", "fsyncSync", "renameSync"])(
    "%s: no half-written file is left lying",
    async (operation) => {
      const home = newHome();
      got(await openStore(home).change(noting("before")));
      const fault = faultyFiles();
      // The first write is the lock's.
      fault.arm(operation, "EIO", operation === "writeFileSync" ? 1 : 0);
      expect((await openStore(home, { files: fault.files }).change(noting("x"))).ok).toBe(false);
      expect(fs.readdirSync(home)).toEqual(["record.json"]);
    },
  );

  test("a folder that can't be flushed after the rename: the new record is taken back out", async () => {
    const home = newHome();
    got(await openStore(home).change(noting("before")));
    const before = snapshot(home);
    const fault = faultyFiles();
    const store = openStore(home, { files: fault.files });
    // The first flush is the file's, the second the folder's, and all after it fail too.
    fault.arm("fsyncSync", "EIO", 1, 1);
    expect(await store.change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "io" } });
    expect(snapshot(home)).toEqual(before);
  });

  test("and where not even that works, the baker is told that it may be either", async () => {
    const home = newHome();
    got(await openStore(home).change(noting("before")));
    const fault = faultyFiles();
    const store = openStore(home, { files: fault.files });
    fault.arm("fsyncSync", "EIO", 1, 1000);
    const result = await store.change(noting("x"));
    expect(result).toMatchObject({ ok: false, problem: { message: expect.stringContaining("kept or not") } });
  });
});

describe("what the system refuses is told in words that help", () => {
  test.each<[keyof Files, string, string, RegExp]>([
    ["writeFileSync", "ENOSPC", "full", /no space left/],
    ["writeFileSync", "EDQUOT", "full", /no space left/],
    ["fsyncSync", "ENOSPC", "full", /no space left/],
    ["openSync", "EROFS", "read-only", /may not be written/],
    ["openSync", "EACCES", "read-only", /may not be written/],
    ["mkdirSync", "EACCES", "read-only", /may not be written/],
    ["renameSync", "EPERM", "read-only", /may not be written/],
    ["linkSync", "EPERM", "io", /can't be locked/],
    ["linkSync", "ENOTSUP", "io", /can't be locked/],
    ["fsyncSync", "EIO", "io", /failed \(EIO\)/],
  ])("%s fails with %s: %s", async (operation, code, kind, message) => {
    const home = newHome();
    const fault = faultyFiles();
    const store = openStore(home, { files: fault.files });
    fault.arm(operation, code, 0, 1000);
    const result = await store.change(noting("x"));
    expect(result).toMatchObject({ ok: false, problem: { kind, message: expect.stringMatching(message) } });
    fault.disarm();
    got(await store.change(noting("x")));
    expect(await readTexts(store)).toEqual(["x"]);
  });

  test("a folder that is read only can still be read", async () => {
    const home = newHome();
    got(await openStore(home).change(noting("a")));
    const fault = faultyFiles();
    fault.arm("linkSync", "EROFS", 0, 1000);
    const store = openStore(home, { files: fault.files });
    expect(await readTexts(store)).toEqual(["a"]);
    expect(await store.change(noting("b"))).toMatchObject({ ok: false, problem: { kind: "read-only" } });
  });

  test.each(["EACCES", "EIO"])(
    "a record that can't be read (%s) is a problem, not an empty record",
    async (code) => {
      const home = newHome();
      got(await openStore(home).change(noting("a")));
      const before = fs.readFileSync(fileOf(home), "utf8");
      const fault = faultyFiles();
      const store = openStore(home, { files: fault.files });
      fault.arm("readFileSync", code, 0, 1000);
      expect(await store.read()).toMatchObject({ ok: false, problem: { kind: "io" } });
      expect(await store.change(noting("b"))).toMatchObject({ ok: false });
      fault.disarm();
      expect(fs.readFileSync(fileOf(home), "utf8")).toBe(before);
    },
  );

  test("a home that is a file is a problem", async () => {
    const home = `${newHome()}/file`;
    fs.writeFileSync(home, "");
    expect(await openStore(home).read()).toMatchObject({ ok: false, problem: { kind: "io" } });
    expect(await openStore(home).change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "io" } });
  });

  test("escapes in a folder's name don't reach the sentence", async () => {
    const home = `${newHome()}/\u001b[31mred`;
    fs.mkdirSync(home);
    fs.writeFileSync(fileOf(home), "damaged");
    expect(got(await openStore(home).read()).notice).not.toMatch(/\p{Cc}/u);
  });
});
