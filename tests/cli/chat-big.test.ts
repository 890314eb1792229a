/** Digits that are read from across the kitchen. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bigLines, largeTime } from "../../src/cli/chat/big.ts";
import { digitLines, largest } from "../../src/cli/chat/digits.ts";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { width } from "../../src/cli/chat/text.ts";
import type { Timer } from "../../src/tools/contract/record.ts";

const min = 60_000;
const timer = (id: number, label: string, due_min: number): Timer => ({
  id,
  label,
  set_ms: 0,
  due_ms: due_min * min,
  state: "running",
});
const three = [timer(1, "ganache", 78), timer(2, "shells", 12.5), timer(3, "rest", 30)];

describe("block digits", () => {
  it("are drawn as they are written", () => {
    expect(digitLines("12:34", { across: 1, down: 1 }, "#")).toEqual([
      " #  ###   ### # #",
      "##    # #   # # #",
      " #  ###    ## ###",
      " #  #   #   #   #",
      "### ###   ###   #",
    ]);
    expect(digitLines("5h0", { across: 1, down: 1 }, "#")).toEqual([
      "### #   ###",
      "#   #   # #",
      "### ### # #",
      "  # # # # #",
      "### # # ###",
    ]);
  });

  it("are ten different shapes", () => {
    const all = [..."0123456789:h"].map((each) => digitLines(each, { across: 1, down: 1 }, "#").join("\n"));
    expect(new Set(all).size).toBe(12);
  });

  it("grow in both directions alike", () => {
    const small = digitLines("8", { across: 1, down: 1 }, "#");
    const large = digitLines("8", { across: 4, down: 2 }, "#");
    expect(large).toHaveLength(10);
    expect(large[2]).toBe("####    ####");
    expect(large.filter((_, at) => at % 2 === 0).map((line) => line.replace(/(.)\1\1\1/g, "$1"))).toEqual(
      small,
    );
  });

  it("are as large as the window allows, and twice as wide as high", () => {
    // "12:34" is 17 cells of shape: 39 columns hold two of the terminal's for each, 79 hold four
    expect(largest(["12:34"], 39, 30)).toEqual({ across: 2, down: 1 });
    expect(largest(["12:34"], 79, 30)).toEqual({ across: 4, down: 2 });
    expect(largest(["12:34"], 79, 5)).toEqual({ across: 3, down: 1 });
  });
});

describe("a time from afar", () => {
  it.each([
    [0, "0:00"],
    [-5000, "0:00"],
    [1, "0:01"],
    [12.5 * min, "12:30"],
    [60 * min, "60:00"],
    [60 * min + 1, "1h01"],
    [78 * min, "1h18"],
    [26 * 60 * min, "26h00"],
  ])("%d ms left", (ms, text) => expect(largeTime(ms)).toBe(text));
});

describe("the screen", () => {
  const at = (columns: number, rows: number, timers = three, now_ms = 0, signs = drawn) =>
    bigLines({ timers, now_ms, columns, rows, signs });

  it("has the soonest timer first, the others below it where they have room", () => {
    const names = (lines: string[]) => lines.filter((line) => /^[a-z]/.test(line));
    expect(names(at(60, 40))).toEqual(["shells", "rest", "ganache", "any key goes back"]);
    expect(names(at(80, 24))).toEqual(["shells", "rest", "and 1 more; any key goes back"]);
    expect(names(at(40, 8))).toEqual(["shells", "and 2 more; any key goes back"]);
  });

  it("at 40 columns", () => {
    expect(at(40, 9, [timer(1, "shells", 12.5)], 5 * min, ascii).join("\n")).toBe(
      [
        "shells",
        // one row of shapes for each line, three cells across
        ...digitLines("7:30", { across: 3, down: 1 }, "#"),
        // 5 of 12.5 minutes are 40 % of 39 cells, 15 of them full
        `${"#".repeat(15)}${".".repeat(24)}`,
        "any key goes back",
      ].join("\n"),
    );
  });

  it("says in words that a timer is done, and stays within its time", () => {
    const lines = at(60, 24, [timer(1, "shells", 12.5)], 13 * min);
    expect(lines[0]).toBe("shells is done");
    expect(lines).toContain("■".repeat(59));
  });

  it("fits any window, and is never smaller than what reads from three metres, where five lines fit", () => {
    const some = fc.array(
      fc.record({
        label: fc.string({ unit: "grapheme", maxLength: 60 }),
        due: fc.integer({ min: 0, max: 3000 }),
      }),
      { minLength: 1, maxLength: 6 },
    );
    fc.assert(
      fc.property(
        some,
        fc.integer({ min: 40, max: 220 }),
        fc.integer({ min: 8, max: 70 }),
        fc.constantFrom(drawn, ascii),
        (timers, columns, rows, signs) => {
          const lines = at(
            columns,
            rows,
            timers.map(({ label, due }, id) => timer(id, label, due)),
            0,
            signs,
          );
          expect(lines.length).toBeLessThanOrEqual(rows);
          for (const line of lines) expect(width(line), line).toBeLessThan(columns);
          expect(lines.at(-1)).toContain("any key goes back");
          const blocks = lines.filter((line) => line.includes(signs.block) && /^[ #█]+$/.test(line));
          expect(blocks.length).toBeGreaterThanOrEqual(5);
        },
      ),
    );
  });
});
