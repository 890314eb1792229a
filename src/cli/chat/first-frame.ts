/**
 * The first frame, drawn before the library behind the rest is loaded: what it shows needs none of it. The chat then
 * takes the place of its live part. Not for screen readers, which would read it twice.
 */
import type { World } from "../../tools/contract/index.ts";
import { wantsColor } from "../color.ts";
import { freshEditor } from "./editor.ts";
import { type Frame, layFrame } from "./frame.ts";
import type { ChatOptions } from "./options.ts";
import { signsFor } from "./signs.ts";
import { type Line, painted } from "./tones.ts";
import { introLines } from "./words.ts";

/** What is read before anything can be shown. */
export interface Opened {
  history: readonly string[];
  world: World | undefined;
  /** How far below the first line of the live part the cursor was left; undefined where nothing was drawn. */
  cursorRow?: number;
}

/** Reads history and record. What can't be read is missing here; the chat says so itself when it looks again. */
export async function readFirst(options: ChatOptions): Promise<Opened> {
  const [history, world] = await Promise.all([
    options.loadHistory().catch(() => []),
    options.session.world().catch(() => undefined),
  ]);
  return { history, world };
}

/** Draws the first frame and says where it was left. From here on nothing that is typed is echoed. */
export async function drawFirst(options: ChatOptions): Promise<Opened> {
  const { stdin = process.stdin, stdout = process.stdout, env = process.env } = options;
  stdin.setRawMode?.(true);
  const opened = await readFirst(options);
  if (env.INK_SCREEN_READER === "true") return opened;
  const columns = stdout.columns || 80;
  const color = wantsColor(env, true);
  const frame = liveFirst(options, opened, columns, stdout.rows || 24);
  const { x, y } = frame.cursor;
  const up = frame.lines.length - 1 - y;
  const lines = [
    ...introLines(options.intro(opened.world), options.home, columns, options.isDemo),
    blank,
    ...frame.lines,
  ];
  stdout.write(
    `${lines.map((line) => painted(line, color)).join("\r\n")}${up > 0 ? `\u001b[${up}A` : ""}\r${x > 0 ? `\u001b[${x}C` : ""}`,
  );
  return { ...opened, cursorRow: y };
}

const blank: Line = { text: "", tone: "plain" };

function liveFirst(options: ChatOptions, { history, world }: Opened, columns: number, rows: number): Frame {
  const now_ms = options.now_ms();
  return layFrame({
    columns,
    rows,
    editor: freshEditor(history),
    timers: (world?.timers ?? []).filter((timer) => timer.state === "running" && timer.due_ms > now_ms),
    now_ms,
    signs: signsFor(options.env ?? process.env),
    still: false,
  });
}

/** Takes the live part away again, the cursor at its first cell, for the chat to draw its own there. */
export const undoFirst = (cursorRow: number): string =>
  `${cursorRow > 0 ? `\u001b[${cursorRow}A` : ""}\r\u001b[J`;
