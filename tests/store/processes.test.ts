import { type ChildProcessWithoutNullStreams, spawn } from "node:child_process";
import { once } from "node:events";
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { rolldown } from "rolldown";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openStore } from "../../src/store/open.ts";
import { kills, minutes, writers, writes } from "./length.ts";
import { newHome, notesOnDisk, readTexts } from "./support.ts";

let folder = "";
let program = "";

beforeAll(async () => {
  folder = fs.mkdtempSync(join(tmpdir(), "record-writer-"));
  program = join(folder, "writer.mjs");
  const bundle = await rolldown({
    input: fileURLToPath(new URL("writer.ts", import.meta.url)),
    platform: "node",
    logLevel: "silent",
  });
  await bundle.write({ file: program, format: "esm" });
  await bundle.close();
});

afterAll(() => fs.rmSync(folder, { recursive: true, force: true }));

interface Writer {
  child: ChildProcessWithoutNullStreams;
  /** The notes that it said were saved. */
  saved(): string[];
  errors(): string;
  /** Ends when all of its output has come, also that of a killed one. */
  ended: Promise<unknown>;
}

function startWriter(home: string, name: string, count: number): Writer {
  const child = spawn(process.execPath, [program, home, name, String(count)]);
  let out = "";
  let err = "";
  child.stdout.setEncoding("utf8").on("data", (text: string) => {
    out += text;
  });
  child.stderr.setEncoding("utf8").on("data", (text: string) => {
    err += text;
  });
  // A line without its end was cut off by the kill, and with it perhaps the number.
  const saved = () => out.split("\n").slice(0, -1);
  return { child, saved, errors: () => err, ended: once(child, "close") };
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

describe("real processes on one record", () => {
  test(`${writers} writing at once lose nothing and keep each one's order`, {
    timeout: minutes,
  }, async () => {
    const home = newHome();
    const all = Array.from({ length: writers }, (_, n) => startWriter(home, `w${n}`, writes));
    await Promise.all(all.map(({ ended }) => ended));
    expect(all.map(({ errors }) => errors()).join("")).toBe("");
    const notes = notesOnDisk(home);
    expect(notes.length).toBe(writers * writes);
    expect(notes.map(({ id }) => id)).toEqual(Array.from({ length: writers * writes }, (_, n) => n + 1));
    for (let n = 0; n < writers; n++) {
      const own = notes.map(({ text }) => text).filter((text) => text.startsWith(`w${n} `));
      expect(own).toEqual(Array.from({ length: writes }, (_, i) => `w${n} ${i}`));
    }
    expect(fs.readdirSync(home).filter((name) => name !== "record.parts")).toEqual(["record.json"]);
  });

  const rounds = Math.ceil(kills / 30);
  test.each(Array.from({ length: rounds }, (_, n) => Math.min(30, kills - n * 30)))(
    "%d kills at random instants: what was acknowledged is there, once, and the file is never broken",
    { timeout: minutes },
    async (round) => {
      const home = newHome();
      const acknowledged: string[] = [];
      const steady = Array.from({ length: 2 }, (_, n) => startWriter(home, `steady${n}`, 1_000_000));
      try {
        for (let done = 0; done < round; ) {
          // Several at a time, so that one often dies with others at its heels.
          const count = Math.min(3, round - done);
          const victims = Array.from({ length: count }, (_, n) =>
            startWriter(home, `v${done + n}`, 1_000_000),
          );
          await Promise.all(victims.map(({ child }) => once(child.stdout, "data")));
          for (const { child } of victims) {
            await pause(Math.random() * 40);
            child.kill("SIGKILL");
          }
          await Promise.all(victims.map(({ ended }) => ended));
          done += count;
          acknowledged.push(...victims.flatMap(({ saved }) => saved()));
          // By other means: JSON.parse throws on anything but a whole file.
          const there = new Set(notesOnDisk(home).map(({ text }) => text));
          expect(acknowledged.filter((text) => !there.has(text))).toEqual([]);
        }
      } finally {
        for (const { child } of steady) child.kill("SIGKILL");
        await Promise.all(steady.map(({ ended }) => ended));
      }
      acknowledged.push(...steady.flatMap(({ saved }) => saved()));
      expect(steady.map(({ errors }) => errors()).join("")).toBe("");

      const store = openStore(home);
      const found = await readTexts(store);
      const there = new Set(found);
      expect(acknowledged.filter((text) => !there.has(text))).toEqual([]);
      expect(found.length).toBe(there.size);
      // Beyond what was acknowledged a killed one may have saved just the one it was about to tell of.
      expect(found.length - acknowledged.length).toBeLessThanOrEqual(round + 2);
      for (const { saved } of steady) expect(saved().length).toBeGreaterThan(0);

      expect((await store.change(() => ({ effects: [{ do: "undo" }], value: 0 }))).ok).toBe(true);
      expect(fs.readdirSync(home).filter((name) => name !== "record.parts")).toEqual(["record.json"]);
      if (rounds > 1)
        console.log(`${round} kills: ${acknowledged.length} acknowledged, ${found.length} found`);
    },
  );
});
