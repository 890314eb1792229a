/**
 * The built program, for tests that run it as it is shipped. It is built once for all test files: whoever comes first
 * builds under a lock, and only when the sources are newer. Each test file then runs a copy of its own, in a folder
 * without any packages beside it, so that a later build doesn't pull it away.
 */
import { spawn, spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("../..", import.meta.url));
const lock = join(root, "node_modules", ".bowlside-build");
const patience_ms = 120_000;

/** When the newest of the sources was written, in ms. */
function newest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

const dist = join(root, "dist");
const last = join(dist, "bowlside.cjs");
const first = join(dist, "program.model");

const isFresh = () =>
  existsSync(last) &&
  existsSync(first) &&
  ["src", "data", "build.mjs", "package.json"].every(
    (name) => newest(join(root, name)) < statSync(first).mtimeMs,
  );

async function locked<T>(work: () => T): Promise<T> {
  const until = Date.now() + patience_ms;
  for (;;) {
    try {
      mkdirSync(lock);
      break;
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code !== "EEXIST" || Date.now() > until) throw error;
      if (Date.now() - (statSync(lock, { throwIfNoEntry: false })?.mtimeMs ?? Date.now()) > patience_ms)
        rmSync(lock, { recursive: true, force: true });
      await pause(100);
    }
  }
  try {
    return work();
  } finally {
    rmSync(lock, { recursive: true, force: true });
  }
}

/** A copy of dist/, built when it had to be. */
export async function builtDist(): Promise<{ folder: string; remove(): void }> {
  const folder = mkdtempSync(join(tmpdir(), "built-"));
  await locked(() => {
    if (!isFresh()) {
      const built = spawnSync(process.execPath, ["build.mjs"], { cwd: root, encoding: "utf8" });
      if (built.status !== 0) throw new Error(`build.mjs: ${built.stderr}${built.stdout}`);
    }
    cpSync(dist, folder, { recursive: true });
  });
  return { folder, remove: () => rmSync(folder, { recursive: true, force: true }) };
}

export interface Ran {
  status: number | null;
  stdout: string;
  stderr: string;
}

export interface Program {
  file: string;
  /** A home that is empty at first, and goes away with the program. */
  home: string;
  run(
    args: readonly string[],
    more?: { input?: string | Buffer; env?: Record<string, string>; cwd?: string },
  ): Promise<Ran>;
  remove(): void;
}

/** The program in a bare environment: no settings of whoever runs the tests leak in. The clock stands. */
export async function builtProgram(): Promise<Program> {
  const { folder, remove } = await builtDist();
  const file = join(folder, "bowlside.cjs");
  const home = join(folder, "home");
  const bare = {
    PATH: process.env.PATH ?? "",
    HOME: folder,
    TZ: "UTC",
    BOWLSIDE_HOME: home,
    BOWLSIDE_NOW: "2026-03-14T09:30:00",
  };
  return {
    file,
    home,
    remove,
    run: (args, { input = "", env = {}, cwd = folder } = {}) =>
      new Promise((resolve, reject) => {
        const child = spawn(process.execPath, [file, ...args], { cwd, env: { ...bare, ...env } });
        let [stdout, stderr] = ["", ""];
        child.stdout.setEncoding("utf8").on("data", (text: string) => {
          stdout += text;
        });
        child.stderr.setEncoding("utf8").on("data", (text: string) => {
          stderr += text;
        });
        child.stdin.on("error", () => {});
        child.stdin.end(input);
        child.on("error", reject);
        child.on("close", (status) => resolve({ status, stdout, stderr }));
      }),
  };
}
