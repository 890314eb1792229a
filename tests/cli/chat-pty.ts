/** The chat in a real pseudo-terminal: bundled as it is shipped, its screen read back through a terminal emulator. */
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type IPty, spawn } from "@lydell/node-pty";
import xterm from "@xterm/headless";
import { build } from "rolldown";

/** Bundles the fixture into a folder of its own; `remove` takes the folder away. */
export async function bundleChat(
  fixture = "chat-fixture.ts",
): Promise<{ file: string; folder: string; remove(): Promise<void> }> {
  const folder = await mkdtemp(join(tmpdir(), "chat-"));
  const file = join(folder, "chat.mjs");
  await build({
    input: fileURLToPath(new URL(fixture, import.meta.url)),
    platform: "node",
    external: ["react-devtools-core"],
    transform: { define: { "process.env.NODE_ENV": '"production"' } },
    output: { dir: folder, entryFileNames: "chat.mjs", chunkFileNames: "[name].mjs", format: "esm" },
    logLevel: "silent",
  });
  return { file, folder, remove: () => rm(folder, { recursive: true, force: true }) };
}

export interface Screen {
  pty: IPty;
  /** Everything the program wrote, escapes included. */
  raw(): string;
  /** All lines, those that scrolled away first; blank ones at the end left out. */
  lines(): string[];
  /** The same lines, before each what its letters look like: "bold", "dim yellow". A line has one look. */
  marked(): string[];
  cursor(): { x: number; y: number; hidden: boolean };
  type(text: string): void;
  resize(columns: number, rows: number): void;
  /** Waits until the screen shows it; fails with the whole screen otherwise. */
  sees(what: string | RegExp): Promise<string>;
  /** Waits for the end and gives the exit code, or the signal's number as a negative one. */
  ended(): Promise<number>;
  log(): Promise<string[]>;
}

const palette: Readonly<Record<number, string>> = { 1: "red", 3: "yellow", 5: "magenta", 6: "cyan" };
const patience_ms = 15_000;

/** Starts a bundle in a terminal of a size. The environment is bare, so that no CI or NO_COLOR leaks in. */
export function openScreen(
  file: string,
  columns: number,
  rows: number,
  env: Record<string, string> = {},
  args: readonly string[] = [],
): Screen {
  const terminal = new xterm.Terminal({ cols: columns, rows, allowProposedApi: true, scrollback: 2000 });
  const logFile = `${file}.${Math.random().toString(36).slice(2)}.log`;
  const base = {
    PATH: process.env.PATH ?? "",
    HOME: tmpdir(),
    TERM: "xterm-256color",
    LANG: "C.UTF-8",
    FIXTURE_LOG: logFile,
  };
  const pty = spawn(process.execPath, [file, ...args], {
    cols: columns,
    rows,
    cwd: tmpdir(),
    env: { ...base, ...env },
  });
  let written = "";
  let exit: number | undefined;
  const wake = new Set<() => void>();
  const changed = () => {
    for (const each of wake) each();
  };
  pty.onData((data) => {
    written += data;
    terminal.write(data, changed);
  });
  pty.onExit(({ exitCode, signal }) => {
    // Not before everything written is on the screen.
    terminal.write("", () => {
      exit = signal ? -signal : exitCode;
      changed();
    });
  });

  const lines = () => {
    const buffer = terminal.buffer.active;
    const all = Array.from(
      { length: buffer.length },
      (_, at) => buffer.getLine(at)?.translateToString(true) ?? "",
    );
    while (all.at(-1) === "") all.pop();
    return all;
  };
  const looks = (at: number): string => {
    const line = terminal.buffer.active.getLine(at);
    const cells = Array.from({ length: columns }, (_, x) => line?.getCell(x)).filter(
      (cell) => cell && cell.getChars().trim() !== "",
    );
    const names = cells.map((cell) =>
      [cell?.isBold() ? "bold" : "", cell?.isDim() ? "dim" : "", palette[cell?.getFgColor() ?? -1] ?? ""]
        .filter(Boolean)
        .join(" "),
    );
    return [...new Set(names)].join(", ");
  };
  const until = <T>(found: () => T | undefined, what: string): Promise<T> =>
    new Promise((resolve, reject) => {
      const check = () => {
        const value = found();
        if (value === undefined) return;
        wake.delete(check);
        clearTimeout(limit);
        resolve(value);
      };
      const limit = setTimeout(() => {
        wake.delete(check);
        reject(new Error(`Not seen: ${what}\n${lines().join("\n")}`));
      }, patience_ms);
      wake.add(check);
      check();
    });

  return {
    pty,
    raw: () => written,
    lines,
    marked: () => lines().map((line, at) => `${looks(at).padEnd(12)}|${line}`),
    cursor: () => ({
      x: terminal.buffer.active.cursorX,
      y: terminal.buffer.active.cursorY + terminal.buffer.active.baseY,
      hidden: /\[\?25l(?!.*\[\?25h)/s.test(written),
    }),
    type: (text) => pty.write(text),
    resize(wide, high) {
      terminal.resize(wide, high);
      pty.resize(wide, high);
    },
    sees: (what) =>
      until(() => {
        const text = lines().join("\n");
        return (typeof what === "string" ? text.includes(what) : what.test(text)) ? text : undefined;
      }, String(what)),
    ended: () => until(() => exit, "the end"),
    log: async () => (await readFile(logFile, "utf8")).trimEnd().split("\n"),
  };
}
