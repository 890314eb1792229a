/** The live part in a window that is made narrower: what the terminal made of it is wiped, and nothing above it. */
import { EventEmitter, once } from "node:events";
import { PassThrough } from "node:stream";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it, vi } from "vitest";
import { type Drawn, rowsAbove, wiped } from "../../src/cli/chat/reflow.ts";
import { steadyOutput } from "../../src/cli/chat/steady-output.ts";
import { bundleChat, openScreen, type Screen } from "./chat-pty.ts";

const drawn = (widths: readonly number[], x: number, y: number): Drawn => ({
  lines: widths.map((cells) => ({ text: "a".repeat(cells) })),
  cursor: { x, y },
});

describe("rows above the cursor", () => {
  it.each([
    // 59 cells at 40 are two rows; the cursor behind them, at 59, has got to column 19 of the second
    ["the cursor's line is broken too", drawn([20, 59, 36], 59, 1), 40, 19, 2],
    [
      "the terminal leaves the cursor's line alone, and the cursor at its edge",
      drawn([20, 59, 36], 59, 1),
      40,
      39,
      1,
    ],
    // the row above is broken into two, the cursor's own is short
    ["a row above it is broken", drawn([59, 25, 36], 25, 1), 40, 25, 2],
    ["nothing is broken", drawn([20, 39, 36], 39, 1), 40, 39, 1],
    // 119 cells at 40 are three rows: the cursor is on the third
    ["into three", drawn([119, 36], 118, 0), 40, 38, 2],
    ["it says nothing: a row too few rather than one too many", drawn([59, 36], 59, 0), 40, undefined, 0],
  ] as const)("%s", (_name, before, columns, column, rows) => {
    expect(rowsAbove(before, columns, column)).toBe(rows);
  });
});

it("the place is left empty, with the cursor where it was among its rows", () => {
  // up two rows, all below gone, room for three rows, back up to the second, to the right as far as there is room
  expect(wiped(drawn([20, 59, 36], 59, 1), 40, 19)).toBe("\u001b[2A\r\u001b[J\n\n\u001b[1A\u001b[39C");
});

describe("the terminal that ink is given", () => {
  // the stream's own turns run on
  beforeEach(() => {
    vi.useFakeTimers({ toFake: ["setTimeout", "clearTimeout"] });
  });
  afterEach(() => {
    vi.useRealTimers();
  });

  function terminal(before: Drawn | undefined) {
    const written: string[] = [];
    const stdout = Object.assign(new EventEmitter(), {
      columns: 60,
      rows: 24,
      write: (text: string) => written.push(text) > 0,
    });
    const stdin = new PassThrough();
    const steady = steadyOutput(
      stdout as unknown as NodeJS.WriteStream,
      stdin as unknown as NodeJS.ReadStream,
      () => before,
    );
    const heard: number[] = [];
    steady.stream.on("resize", () => heard.push(steady.stream.columns));
    const resize = (columns: number) => {
      stdout.columns = columns;
      stdout.emit("resize");
    };
    return { written, stdin, steady, heard, resize };
  }
  /** What the terminal answers, until all that listen have heard it. */
  async function answers(stdin: PassThrough, text: string) {
    const heard = once(stdin, "data");
    stdin.write(text);
    await heard;
  }

  it("hears of a narrower window when its frame is wiped, and what it wrote meanwhile comes behind that", async () => {
    const { written, stdin, steady, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    steady.stream.write("tick");
    expect([written, heard, steady.stream.columns]).toEqual([["\u001b[6n"], [], 60]);
    await answers(stdin, "\u001b[12;20R");
    expect(written).toEqual(["\u001b[6n", "\u001b[1A\r\u001b[J\n\u001b[1A\u001b[39C", "tick"]);
    expect(heard).toEqual([40]);
  });

  it("goes on without an answer, after a wait that is short and some there is", () => {
    const { written, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    vi.advanceTimersByTime(50);
    expect([written, heard]).toEqual([["\u001b[6n"], []]);
    vi.advanceTimersByTime(150);
    // no row up, all below gone, room for two rows, back up to the first, to the right as far as there is room
    expect(written).toEqual(["\u001b[6n", "\r\u001b[J\n\u001b[1A\u001b[39C"]);
    expect(heard).toEqual([40]);
  });

  it("asks once more where it is made narrower again before the answer", async () => {
    const { written, stdin, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(50);
    resize(30);
    await answers(stdin, "\u001b[12;10R");
    expect(heard).toEqual([]);
    await answers(stdin, "\u001b[12;30R");
    // 59 cells at 30 are two rows, the cursor at column 29 of the second
    expect(written.slice(2)).toEqual(["\u001b[1A\r\u001b[J\n\u001b[1A\u001b[29C"]);
    expect(heard).toEqual([30]);
  });

  it("asks only where the cursor's own line is too long", () => {
    const { written, heard, resize } = terminal(drawn([59, 36], 39, 0));
    resize(40);
    expect([written, heard]).toEqual([["\r\u001b[J\n\u001b[1A\u001b[39C"], [40]]);
  });

  it("takes an answer that comes too late for nothing else's, and asks no more until then", async () => {
    const { written, stdin, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(50);
    vi.advanceTimersByTime(200);
    resize(40);
    // no row up
    const alone = "\r\u001b[J\n\u001b[1A\u001b[39C";
    expect([written.slice(2), heard]).toEqual([[alone], [50, 40]]);
    // 59 cells at 50: at column 9 of the second
    await answers(stdin, "\u001b[12;10R");
    expect([written.length, heard]).toEqual([3, [50, 40]]);
    resize(30);
    expect(written.at(-1)).toBe("\u001b[6n");
    await answers(stdin, "\u001b[12;30R");
    expect(written.at(-1)?.startsWith("\u001b[1A\r")).toBe(true);
  });

  it("hears an answer in pieces", async () => {
    const { written, stdin, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    for (const piece of ["so\u001b", "[12;", "2"]) await answers(stdin, piece);
    expect(heard).toEqual([]);
    await answers(stdin, "0R");
    expect([written[1], heard]).toEqual(["\u001b[1A\r\u001b[J\n\u001b[1A\u001b[39C", [40]]);
  });

  it("hears of a wider one, and of any with nothing drawn, at once", () => {
    const wide = terminal(drawn([59, 36], 59, 0));
    wide.resize(80);
    expect(wide.heard).toEqual([80]);
    const none = terminal(undefined);
    none.resize(40);
    expect([none.heard, none.written]).toEqual([[40], []]);
  });

  it("writes what it held back when the chat is left, and the rest at once", () => {
    const { written, steady, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    steady.stream.write("good night");
    steady.release();
    steady.stream.write("cursor on");
    resize(30);
    expect([written.slice(2), heard]).toEqual([["good night", "cursor on"], []]);
  });

  it("is left when the answer is in, so that the shell doesn't get it; at once where none is owed", async () => {
    const { stdin, steady, resize } = terminal(drawn([59, 36], 59, 0));
    await steady.heardOut();
    resize(40);
    steady.release();
    let isOver = false;
    const over = steady.heardOut().then(() => {
      isOver = true;
    });
    vi.advanceTimersByTime(500);
    await Promise.resolve();
    expect(isOver).toBe(false);
    await answers(stdin, "\u001b[12;20R");
    await over;
    expect([stdin.isPaused(), stdin.listenerCount("data")]).toEqual([true, 0]);
    // nothing is left that the process would stay for
    expect(vi.getTimerCount()).toBe(0);
  });

  it("is left a second later by a terminal that says nothing", async () => {
    const { steady, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    steady.release();
    const over = steady.heardOut();
    vi.advanceTimersByTime(1000);
    await over;
  });
});

describe("leaving while the terminal is asked", () => {
  let bundle: Awaited<ReturnType<typeof bundleChat>>;
  const open: Screen[] = [];
  beforeAll(async () => {
    bundle = await bundleChat();
  });
  afterAll(async () => {
    for (const screen of open) screen.pty.kill("SIGKILL");
    await bundle.remove();
  });

  const draft = "a draft that is quite a bit longer than forty cells";
  /** The chat in a window that was just made narrower than its line; this terminal doesn't answer by itself. */
  async function asked(): Promise<Screen> {
    const screen = openScreen(bundle.file, 80, 24);
    open.push(screen);
    await screen.sees("to leave");
    screen.type("one\r");
    await screen.sees("heard: one");
    screen.type(draft);
    await screen.sees("forty cells");
    const isAsked = new Promise<void>((resolve) => {
      screen.pty.onData((data) => data.includes("\u001b[6n") && resolve());
    });
    screen.resize(40, 24);
    await isAsked;
    return screen;
  }
  const isGivenBack = (screen: Screen) => {
    expect(screen.cursor().hidden).toBe(false);
    expect(screen.raw().lastIndexOf("[?2004l")).toBeGreaterThan(screen.raw().lastIndexOf("[?2004h"));
  };

  it.each(["SIGTERM", "SIGHUP", "SIGINT"])("by %s: the terminal is given back", async (signal) => {
    const screen = await asked();
    screen.pty.kill(signal);
    expect(await screen.ended()).toBeLessThan(0);
    isGivenBack(screen);
  });

  it("by Ctrl-C: the answer is waited for, and shown nowhere", async () => {
    const screen = await asked();
    const isOff = new Promise<void>((resolve) => {
      screen.pty.onData((data) => data.includes("\u001b[?2004l") && resolve());
    });
    screen.type("\u0003\u0003");
    await isOff;
    // not in the moment between the two modes
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(await screen.log()).toEqual(["ask one"]);
    screen.type("\u001b[3;12R");
    expect(await screen.ended()).toBe(0);
    expect(await screen.log()).toEqual(["ask one", "closed"]);
    isGivenBack(screen);
    expect(screen.raw()).not.toContain("[3;12R");
  });

  it("an answer in two pieces is no part of the line", async () => {
    const screen = await asked();
    screen.type("\u001b[3;");
    await screen.sees(/than forty\s+cells\n"help"/);
    screen.type("12R!\r");
    await screen.sees(/heard: a draft[^!]*cells!/);
    expect(screen.lines().join("\n")).not.toContain("12R");
    screen.type("\u0003");
    expect(await screen.ended()).toBe(0);
  });
});
