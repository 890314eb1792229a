/**
 * The terminal as ink is given it. ink goes up as many lines as it wrote to wipe its last frame; in a window that was made
 * narrower a terminal has broken those lines into more, and their first rows would stay behind. So when the size changes,
 * the frame is wiped here first, and ink hears of the new size afterwards. Where the cursor's own line is too long now,
 * terminals differ, and only then it is asked where the cursor is: every question is an answer among the keys.
 */
import { EventEmitter } from "node:events";
import { type Drawn, wiped } from "./reflow.ts";

const whereIsIt = "\u001b[6n";
// biome-ignore lint/suspicious/noControlCharactersInRegex: escape sequences start with one
const position = /\u001b\[\d+;(\d+)R/g;
// biome-ignore lint/suspicious/noControlCharactersInRegex: the same
const begunPosition = /\u001b(?:\[[\d;]*)?$/;
/**
 * How long the screen stands still for an answer. From memory: a terminal of this machine answers within 10 ms, one on the
 * other side of a continent within 100, and from about 100 on a hand that drags the window sees it stop.
 */
const patience_ms = 120;
/** How long an answer may still come. From memory: by way of a satellite it takes 700 ms. */
const longest_ms = 1000;

export interface SteadyOutput {
  stream: NodeJS.WriteStream;
  /** Writes what is held back, at once; holds nothing and asks nothing any more. */
  release(): void;
  /** When no answer can come any more that the shell would take for typed. */
  heardOut(): Promise<void>;
}

/** @param drawn what ink drew last; undefined while there is nothing of its own to be wiped */
export function steadyOutput(
  stdout: NodeJS.WriteStream,
  stdin: NodeJS.ReadStream,
  drawn: () => Drawn | undefined,
): SteadyOutput {
  const own = new EventEmitter();
  let size = { columns: stdout.columns, rows: stdout.rows };
  let held: { before: Drawn; writes: (() => void)[] } | undefined;
  let waiting: NodeJS.Timeout | undefined;
  /** So many answers are still to come, also when nothing waits for them any more. */
  let owed = 0;
  let asked_ms = 0;
  let begun = "";
  let isHeardOut = () => {};

  /** Wipes the frame that was there, and writes what came meanwhile. */
  function letGo(column?: number): void {
    clearTimeout(waiting);
    const now = held;
    held = undefined;
    if (now) stdout.write(wiped(now.before, stdout.columns || 80, column));
    for (const write of now?.writes ?? []) write();
  }
  function settle(column?: number): void {
    letGo(column);
    size = { columns: stdout.columns, rows: stdout.rows };
    own.emit("resize");
  }
  const heard = (chunk: string | Buffer) => {
    const text = begun + String(chunk);
    begun = begunPosition.exec(text)?.[0] ?? "";
    for (const [, column] of text.matchAll(position)) {
      owed -= 1;
      // an answer from before the window changed once more says nothing of now
      if (owed > 0) continue;
      stdin.off("data", heard);
      isHeardOut();
      if (held) settle(Number(column) - 1);
      return;
    }
  };
  function ask(): void {
    if (owed === 0) {
      begun = "";
      stdin.on("data", heard);
    }
    owed += 1;
    asked_ms = performance.now();
    waiting = setTimeout(settle, patience_ms);
    stdout.write(whereIsIt);
  }
  function resized(): void {
    const columns = stdout.columns || 80;
    const before = held?.before ?? drawn();
    // made wider, or lower, nothing is broken
    if (!before || columns >= (size.columns || 80)) {
      settle();
      return;
    }
    // a terminal that was too slow with its last answer isn't waited for again before that has come
    const isSlow = !held && owed > 0;
    held ??= { before, writes: [] };
    clearTimeout(waiting);
    if (before.cursor.x < columns || isSlow) settle();
    else ask();
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
      letGo();
    },
    async heardOut() {
      const left_ms = asked_ms + longest_ms - performance.now();
      if (owed > 0 && left_ms > 0 && stdin.readable) {
        // not shown by the terminal, and read off
        stdin.setRawMode?.(true);
        stdin.resume();
        let last: NodeJS.Timeout | undefined;
        await new Promise<void>((resolve) => {
          isHeardOut = resolve;
          last = setTimeout(resolve, left_ms);
        });
        // else the process stays for it
        clearTimeout(last);
        stdin.pause();
      }
      stdin.off("data", heard);
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
