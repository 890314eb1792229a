/** The live part in a window that is made narrower: what the terminal made of it is wiped, and nothing above it. */
import { EventEmitter } from "node:events";
import { PassThrough } from "node:stream";
import { describe, expect, it } from "vitest";
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
  const later = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

  it("hears of a narrower window when its frame is wiped, and what it wrote meanwhile comes behind that", async () => {
    const { written, stdin, steady, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    steady.stream.write("tick");
    expect([written, heard, steady.stream.columns]).toEqual([["\u001b[6n"], [], 60]);
    stdin.write("\u001b[12;20R");
    await later(5);
    expect(written).toEqual(["\u001b[6n", "\u001b[1A\r\u001b[J\n\u001b[1A\u001b[39C", "tick"]);
    expect(heard).toEqual([40]);
  });

  it("goes on without an answer", async () => {
    const { written, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(40);
    await later(200);
    expect(written[1]).toMatch(/^\r/);
    expect(heard).toEqual([40]);
  });

  it("asks once more where it is made narrower again before the answer", async () => {
    const { written, stdin, heard, resize } = terminal(drawn([59, 36], 59, 0));
    resize(50);
    resize(30);
    stdin.write("\u001b[12;10R");
    await later(5);
    expect(heard).toEqual([]);
    stdin.write("\u001b[12;30R");
    await later(5);
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
