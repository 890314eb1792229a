import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type FrameInput, layFrame } from "../../src/cli/chat/frame.ts";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { width } from "../../src/cli/chat/text.ts";
import type { Timer } from "../../src/tools/contract/record.ts";

const timers: Timer[] = Array.from({ length: 7 }, (_, at) => ({
  id: at,
  label: `tray ${at}`,
  set_ms: 0,
  due_ms: 60_000 * (at + 1),
  state: "running",
}));
const base: FrameInput = {
  columns: 40,
  rows: 24,
  editor: { text: "", cursor: 0 },
  timers: [],
  now_ms: 0,
  signs: drawn,
  still: false,
};
const frame = (change: Partial<FrameInput>) => layFrame({ ...base, ...change });
const text = (change: Partial<FrameInput>) => frame(change).lines.map((line) => line.text);
const writing = (line: string, cursor = line.length) => ({ editor: { text: line, cursor } });

describe("the live part", () => {
  it("is the question and a hint", () => {
    expect(text(writing("230 g"))).toEqual(["∪ 230 g", '"help" for examples, "bye" to leave']);
    expect(frame(writing("230 g")).cursor).toEqual({ x: 7, y: 0 });
  });

  it("says in the hint's place that an answer takes long", () => {
    expect(text({ ...writing("230 g"), waits: true })).toEqual(["∪ 230 g", "Still at it ..."]);
  });

  it("has the soonest timers above", () => {
    expect(text({ timers })).toEqual([
      "1:00  ··········  tray 0",
      "2:00  ··········  tray 1",
      "3:00  ··········  tray 2",
      "      and 4 more",
      "∪ ",
      '"help" for examples, "bye" to leave',
    ]);
    expect(frame({ timers }).cursor).toEqual({ x: 2, y: 4 });
  });

  it("breaks a long question, the cursor where the next character goes", () => {
    const long = "a".repeat(37);
    expect(frame(writing(long)).cursor).toEqual({ x: 39, y: 0 });
    expect(text(writing(`${long}b`)).slice(0, 2)).toEqual([`∪ ${long}`, "  b"]);
    expect(frame(writing(`${long}b`)).cursor).toEqual({ x: 3, y: 1 });
    expect(frame(writing(`${long}b`, 37)).cursor).toEqual({ x: 2, y: 1 });
  });

  it("breaks a question between its words, and the cursor keeps its place in them", () => {
    // 37 cells: "I have 230 g buttercream, how much" is 34, " flavor" would be 41
    const line = "I have 230 g buttercream, how much flavor?";
    expect(text(writing(line)).slice(0, 2)).toEqual(["∪ I have 230 g buttercream, how much ", "  flavor?"]);
    expect(frame(writing(line)).cursor).toEqual({ x: 9, y: 1 });
    expect(frame(writing(line, 35)).cursor).toEqual({ x: 2, y: 1 });
    expect(frame(writing(line, 34)).cursor).toEqual({ x: 36, y: 0 });
    // spaces at the end of a full row take none of the next
    expect(text(writing(`${"a".repeat(37)}  b`)).slice(0, 2)).toEqual([`∪ ${"a".repeat(37)}`, "  b"]);
    expect(frame(writing(`${"a".repeat(37)}  `)).cursor).toEqual({ x: 39, y: 0 });
  });

  it("shows the rows around the cursor when the question is very long", () => {
    const rows = "abcdefghij".split("").map((each) => each.repeat(37));
    const line = rows.join("");
    expect(text(writing(line)).slice(0, 6)).toEqual(rows.slice(4).map((row) => `  ${row}`));
    expect(text(writing(line, 0))[0]).toBe(`∪ ${rows[0]}`);
  });

  it("goes without its hint while the window is dragged", () => {
    expect(text({ settling: true })).toEqual(["∪ "]);
  });

  it("fits every window, with the cursor in it", () => {
    const written = fc
      .string({ unit: "grapheme", maxLength: 600 })
      .map((each) => each.replace(/\p{Control}/gu, ""));
    fc.assert(
      fc.property(
        written,
        fc.nat(),
        fc.integer({ min: 12, max: 130 }),
        fc.integer({ min: 3, max: 50 }),
        fc.nat({ max: 7 }),
        fc.constantFrom(drawn, ascii),
        (line, at, columns, rows, count, signs) => {
          const { lines, cursor } = frame({
            columns,
            rows,
            timers: timers.slice(0, count),
            signs,
            ...writing(line, at % (line.length + 1)),
          });
          expect(lines.length).toBeLessThanOrEqual(Math.max(1, rows - 2));
          for (const each of lines) expect(width(each.text), each.text).toBeLessThan(columns);
          expect(cursor.x).toBeLessThan(columns);
          expect(cursor.y).toBeLessThan(lines.length);
          expect(Math.min(cursor.x, cursor.y)).toBeGreaterThanOrEqual(0);
        },
      ),
    );
  });
});
