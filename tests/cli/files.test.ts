/** Files that answers hand over: inside the folder, never over another one, readable by their owner alone. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { basename, dirname, join } from "node:path";
import fc from "fast-check";
import { expect, it, onTestFinished } from "vitest";
import { fileReader, fileWriter } from "../../src/cli/files.ts";

function folder(): string {
  const made = mkdtempSync(join(tmpdir(), "files-test-"));
  onTestFinished(() => rmSync(made, { recursive: true, force: true }));
  return made;
}

it("writes the text and gives the path", async () => {
  const home = folder();
  const path = await fileWriter(home)("bake-day.ics", "BEGIN\r\nEND\r\n");
  expect(path).toBe(join(home, "bake-day.ics"));
  expect(readFileSync(path, "utf8")).toBe("BEGIN\r\nEND\r\n");
});

it("puts a number behind a name that is taken and leaves the other file alone", async () => {
  const home = folder();
  const write = fileWriter(home);
  writeFileSync(join(home, "label.txt"), "hers");
  expect(basename(await write("label.txt", "one"))).toBe("label-2.txt");
  expect(basename(await write("label.txt", "two"))).toBe("label-3.txt");
  expect(readFileSync(join(home, "label.txt"), "utf8")).toBe("hers");
});

it("two at once get two names", async () => {
  const home = folder();
  const write = fileWriter(home);
  const paths = await Promise.all(Array.from({ length: 8 }, (_, n) => write("day.ics", `${n}`)));
  expect(new Set(paths).size).toBe(8);
  expect(readdirSync(home)).toHaveLength(8);
});

it.each([
  "../../evil.ics",
  "/etc/passwd",
  "..",
  ".",
  "",
  "a/b\\c.txt",
  ".hidden",
  "café crème.txt",
  "x\u0000y.ics",
  "con:aux|?.txt",
])("keeps %j in the folder", async (name) => {
  const home = folder();
  expect(dirname(await fileWriter(home)(name, "text"))).toBe(home);
});

it("keeps any name in the folder, under letters, digits, dashes and points", async () => {
  const home = folder();
  const write = fileWriter(home);
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: "binary", maxLength: 30 }), async (name) => {
      const path = await write(name, "text");
      expect(dirname(path)).toBe(home);
      expect(basename(path)).toMatch(/^[a-z0-9-][a-z0-9.-]*$/i);
      rmSync(path);
    }),
    { numRuns: 100 },
  );
});

it.skipIf(process.platform === "win32")("is readable by its owner alone", async () => {
  expect(statSync(await fileWriter(folder())("label.txt", "text")).mode & 0o777).toBe(0o600);
});

it("makes the folder when it isn't there", async () => {
  const home = join(folder(), "new", "er");
  expect(dirname(await fileWriter(home)("label.txt", "text"))).toBe(home);
});

it("reads plain text by a path in the folder, below home, or absolute", async () => {
  const home = folder();
  writeFileSync(join(home, "shells.txt"), "105 g whites\n");
  for (const path of ["shells.txt", "./shells.txt", "~/shells.txt", join(home, "shells.txt")])
    expect(await fileReader(home, home)(path), path).toEqual({ ok: true, text: "105 g whites\n" });
});

it("says why it doesn't read: not there, a folder, no text, more than 100 kB", async () => {
  const home = folder();
  writeFileSync(join(home, "zero.txt"), "a\u0000b");
  writeFileSync(join(home, "latin.txt"), Buffer.from([0x63, 0x72, 0xe8, 0x6d, 0x65]));
  writeFileSync(join(home, "full.txt"), "a".repeat(100_000));
  writeFileSync(join(home, "large.txt"), "a".repeat(100_001));
  const read = fileReader(home, home);
  expect((await read("full.txt")).ok).toBe(true);
  for (const [path, why] of [
    ["none.txt", "There is no none.txt"],
    [".", "not a file"],
    ["zero.txt", "not plain text"],
    ["latin.txt", "not plain text"],
    ["large.txt", "larger than 100 kB"],
  ] as const)
    expect(await read(path), path).toMatchObject({ ok: false, why: expect.stringContaining(why) });
});
