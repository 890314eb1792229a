/** The folder that the record lies in is made, or it is said that it can't be; never waited for without end. */
import * as fs from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import { faultyFiles, got, newHome, noting, readTexts } from "./support.ts";

test("every folder above that is missing is made, for the owner alone", async () => {
  const home = join(newHome(), "a", "b");
  got(await openStore(home).change(noting("x")));
  for (const folder of [home, join(home, "..")])
    if (process.platform !== "win32") expect(fs.statSync(folder).mode & 0o777).toBe(0o700);
  expect(await readTexts(openStore(home))).toEqual(["x"]);
});

test("a link to a folder is as good as one", async () => {
  const home = newHome();
  const link = join(newHome(), "link");
  fs.symlinkSync(home, link, "dir");
  got(await openStore(link).change(noting("x")));
  expect(await readTexts(openStore(home))).toEqual(["x"]);
});

test("a file in its place is a problem", async () => {
  const file = join(newHome(), "taken");
  fs.writeFileSync(file, "");
  expect(await openStore(file).change(noting("x"))).toMatchObject({ ok: false });
});

test("a place that never comes to be there ends in a problem", async () => {
  const fault = faultyFiles();
  const store = openStore(join(newHome(), "a", "b"), { files: fault.files });
  fault.arm("mkdirSync", "ENOENT", 0, 1000);
  expect(await store.change(noting("x"))).toMatchObject({ ok: false, problem: { kind: "io" } });
});

test.skipIf(!fs.existsSync("/proc/self"))("the system's own files are no place for it", async () => {
  expect(await openStore("/proc/nowhere").change(noting("x"))).toMatchObject({ ok: false });
});
