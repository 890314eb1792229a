/** Questions of earlier sessions on disk. */
import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, expect, it } from "vitest";
import { historyIn, keptLines } from "../../src/cli/history.ts";

let home: string;
const file = () => join(home, "record", "history.txt");
const history = () => historyIn(join(home, "record"));
beforeEach(() => {
  home = mkdtempSync(join(tmpdir(), "history-"));
});
afterEach(() => rmSync(home, { recursive: true, force: true }));

it("is empty at first, and nothing is made for it", async () => {
  expect(await history().load()).toEqual([]);
  expect(existsSync(join(home, "record"))).toBe(false);
});

it("keeps what two windows ask, in the order in which it was asked", async () => {
  const [one, two] = [history(), history()];
  await one.add(["a"]);
  await two.add(["b"]);
  await one.add(["c", "d"]);
  expect(await history().load()).toEqual(["a", "b", "c", "d"]);
});

it.runIf(process.platform !== "win32")("is the owner's alone, also where an older file was not", async () => {
  await history().add(["a"]);
  expect(statSync(file()).mode & 0o077).toBe(0);
  expect(statSync(join(home, "record")).mode & 0o077).toBe(0);
  chmodSync(file(), 0o644);
  await history().load();
  expect(statSync(file()).mode & 0o077).toBe(0);
});

it("is bounded: the latest are offered, and a file that has grown is cut back", async () => {
  const many = Array.from({ length: 6000 }, (_, at) => `question number ${at} about buttercream`);
  await history().add(many);
  const before = statSync(file()).size;
  expect(before).toBeGreaterThan(200_000);
  expect(await history().load()).toEqual(many.slice(-keptLines));
  expect(statSync(file()).size).toBeLessThan(before / 5);
  expect(await history().load()).toEqual(many.slice(-keptLines));
  expect(statSync(file()).mode & 0o077).toBe(0);
});

it("holds no control characters and no lines without end", async () => {
  await history().add(["a\u001b[2Jb\nc", "x".repeat(5000), "  "]);
  expect(readFileSync(file(), "utf8")).toBe("ab c\n");
  writeFileSync(file(), "old\u0007 line\n\n");
  expect(await history().load()).toEqual(["old line"]);
});
