/**
 * The terminal as ink is given it. ink goes up as many lines as it wrote to wipe its last frame; in a window that was made
 * narrower a terminal has broken those lines into more, and their first rows would stay behind. So when the size changes,
 * the frame is wiped here first, by where the terminal says that the cursor is, and ink hears of the new size afterwards.
 */
import { EventEmitter } from "node:events";
import { type Drawn, wiped } from "./reflow.ts";

const whereIsIt = "\u001b[6n";
// biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
const position = /\u001b\[\d+;(\d+)R/g;
/** A terminal that says where its cursor is does so at once. */
const patience_ms = 120;

export interface SteadyOutput {
  stream: NodeJS.WriteStream;
  /** Writes what is held back, and holds nothing any more. */
  release(): void;
}

/** @param drawn what ink drew last; undefined while there is nothing of its own to be wiped */
export function steadyOutput(
  stdout: NodeJS.WriteStream,
  stdin: NodeJS.ReadStream,
  drawn: () => Drawn | undefined,
): SteadyOutput {
  const own = new EventEmitter();
  let size = { columns: stdout.columns, rows: stdout.rows };
  let held: { before: Drawn; writes: (() => void)[]; asked: number } | undefined;
  let waiting: NodeJS.Timeout | undefined;

  function settle(column?: number): void {
    clearTimeout(waiting);
    stdin.off("data", heard);
    const now = held;
    held = undefined;
    if (now) stdout.write(wiped(now.before, stdout.columns || 80, column));
    for (const write of now?.writes ?? []) write();
    size = { columns: stdout.columns, rows: stdout.rows };
    own.emit("resize");
  }
  const heard = (chunk: string | Buffer) => {
    for (const [, column] of String(chunk).matchAll(position)) {
      // an answer from before the window changed once more says nothing of now
      if (held) held.asked -= 1;
      if (held?.asked === 0) settle(Number(column) - 1);
    }
  };
  function resized(): void {
    const before = held?.before ?? drawn();
    // made wider, or lower, nothing is broken
    if (!before || (stdout.columns || 80) >= (size.columns || 80)) {
      settle();
      return;
    }
    clearTimeout(waiting);
    if (!held) stdin.on("data", heard);
    held ??= { before, writes: [], asked: 0 };
    held.asked += 1;
    waiting = setTimeout(() => settle(), patience_ms);
    stdout.write(whereIsIt);
  }
  stdout.on("resize", resized);

  const write = (...args: Parameters<NodeJS.WriteStream["write"]>): boolean => {
    if (!held) return stdout.write(...args);
    held.writes.push(() => stdout.write(...args));
    return true;
  };
  const stream = new Proxy(stdout, {
    get(target, key) {
      if (key === "columns" || key === "rows") return size[key];
      if (key === "write") return write;
      const value: unknown = Reflect.get(target, key, target);
      if (typeof value !== "function") return value;
      if (!listening.has(key)) return value.bind(target);
      return (name: string, ...rest: unknown[]) => {
        const of = name === "resize" ? own : target;
        const given = Reflect.apply(Reflect.get(of, key) as typeof value, of, [name, ...rest]);
        return given === of ? stream : given;
      };
    },
  });
  return {
    stream,
    release() {
      stdout.off("resize", resized);
      if (held) settle();
    },
  };
}

/** What is asked of an emitter by the name of an event. */
const listening: ReadonlySet<string | symbol> = new Set([
  "on",
  "off",
  "once",
  "emit",
  "addListener",
  "removeListener",
  "prependListener",
  "removeAllListeners",
  "listeners",
  "rawListeners",
  "listenerCount",
]);
