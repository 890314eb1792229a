/** The live part in a window that is made narrower: what the terminal made of it is wiped, and nothing above it. */
import { EventEmitter, once } from "node:events";
import { PassThrough } from "node:stream";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { type Drawn, rowsAbove, wiped } from "../../src/cli/chat/reflow.ts";
import { steadyOutput } from "../../src/cli/chat/steady-output.ts";

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

  it("hears of a wider one, and of any with nothing drawn, at once", () => {
    const wide = terminal(drawn([59, 36], 59, 0));
    wide.resize(80);
    expect(wide.heard).toEqual([80]);
    const none = terminal(undefined);
    none.resize(40);
    expect([none.heard, none.written]).toEqual([[40], []]);
  });

  it("writes what it held back when the chat is left", () => {
    const { written, steady, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    steady.stream.write("good night");
    steady.release();
    expect(written.at(-1)).toBe("good night");
  });
});
