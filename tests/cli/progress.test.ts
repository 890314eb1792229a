/** What takes longer than half a second is told of on a terminal, and the word goes away again. */
import { afterEach, beforeEach, expect, it, vi } from "vitest";
import { startProgress } from "../../src/cli/progress.ts";

let now_ms = 0;
let written = "";
const started = (shows: boolean) =>
  startProgress({
    shows,
    write(text) {
      written += text;
    },
    real_ms: () => now_ms,
  });

beforeEach(() => {
  [now_ms, written] = [0, ""];
  vi.useFakeTimers();
});
afterEach(() => vi.useRealTimers());

const lasting = (ms: number) => () => new Promise<string>((resolve) => setTimeout(() => resolve("done"), ms));

it("says nothing about what is quick", async () => {
  const work = started(true).during("Still at it ...", lasting(490));
  await vi.advanceTimersByTimeAsync(2000);
  expect([await work, written]).toEqual(["done", ""]);
});

it("says it after half a second, and wipes it with spaces when the work is done", async () => {
  const work = started(true).during("Still at it ...", lasting(700));
  await vi.advanceTimersByTimeAsync(499);
  expect(written).toBe("");
  await vi.advanceTimersByTimeAsync(1);
  expect(written).toBe("Still at it ...");
  await vi.advanceTimersByTimeAsync(300);
  expect(await work).toBe("done");
  expect(written).toBe(`Still at it ...\r${" ".repeat(15)}\r`);
});

it("wipes it when the work fails too", async () => {
  const work = started(true).during("Still at it ...", async () => {
    await lasting(600)();
    throw new Error("broke");
  });
  const failed = expect(work).rejects.toThrow("broke");
  await vi.advanceTimersByTimeAsync(700);
  await failed;
  expect(written.endsWith(" \r")).toBe(true);
});

it("counts what keeps the process busy, four times a second at most", () => {
  const progress = started(true);
  for (now_ms = 0; now_ms < 1500; now_ms += 10) progress.so(() => `${now_ms};`);
  // at 500, 750, 1000 and 1250 ms
  expect(written.match(/\d+;/g)).toEqual(["500;", "750;", "1000;", "1250;"]);
});

it("is silent where standard error is no terminal", async () => {
  const progress = started(false);
  const work = progress.during("Still at it ...", lasting(5000));
  await vi.advanceTimersByTimeAsync(6000);
  now_ms = 10_000;
  progress.so(() => "late");
  progress.clear();
  expect([await work, written]).toEqual(["done", ""]);
});
