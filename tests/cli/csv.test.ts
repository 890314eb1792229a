/** CSV as RFC 4180 has it, read back by a parser that has nothing to do with the one that wrote it. */
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvRows, csvText, defuse, fuse } from "../../src/cli/csv/csv.ts";

const other = (text: string): string[][] => parse(text, { bom: true, relax_column_count: false });
const columns = ["date", "text"];

describe("written", () => {
  it("ends lines in CRLF, the last one too, and begins with a byte order mark", () => {
    // RFC 4180, 2.1; UTF-8 with a mark, since spreadsheets take it for another encoding otherwise
    expect(csvText({ columns, rows: [["2026-03-14", "lemon"]] })).toBe(
      "\ufeffdate,text\r\n2026-03-14,lemon\r\n",
    );
  });

  it.each([
    // RFC 4180, 2.5 to 2.7
    ["a,b", '"a,b"'],
    ['she said "wow"', '"she said ""wow"""'],
    ["two\r\nlines", '"two\r\nlines"'],
    ["two\nlines", '"two\nlines"'],
    ["crème brûlée 抹茶 🍋", "crème brûlée 抹茶 🍋"],
    ["", ""],
  ])("quotes %j where it has to", (cell, written) => {
    const text = csvText({ columns, rows: [["x", cell]] });
    expect(text).toBe(`\ufeffdate,text\r\nx,${written}\r\n`);
    expect(other(text)).toEqual([columns, ["x", cell]]);
  });

  // what spreadsheets begin a formula with; a tab and a carriage return are taken off by some before they look
  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", '=HYPERLINK("x")', "＝1+1"])(
    "%j is no formula for a spreadsheet",
    (cell) => {
      const [, row] = other(csvText({ columns, rows: [["x", cell]] }));
      expect(row?.[1]).toBe(`'${cell}`);
    },
  );

  it("any table: the other parser finds the same cells, and none that a spreadsheet would run", () => {
    const cell = fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.string({ unit: fc.constantFrom('"', ",", "\r", "\n", "=", "'", "-", " ", ";", "a", "é") }),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { maxLength: 8 }), (rows) => {
        const found = other(csvText({ columns, rows: rows.map(([a, b]) => [`.${a}`, b]) }));
        expect(found.slice(1)).toEqual(rows.map(([a, b]) => [`.${a}`, defuse(b)]));
        for (const [, b] of found) expect(b).not.toMatch(/^[=+\-@\t\r]/);
      }),
    );
  });
});

describe("read", () => {
  it("gives back what was written, apostrophes and all", () => {
    const cell = fc.string({
      unit: fc.constantFrom('"', ",", "\r\n", "=", "'", "-", " ", ";", "a", "é", "抹"),
    });
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { maxLength: 8 }), (rows) => {
        const read = csvRows(csvText({ columns, rows: rows.map(([a, b]) => [`.${a}`, b]) }));
        expect(read.problems).toEqual([]);
        expect(read.columns).toEqual(columns);
        expect(read.rows.map(({ cells }) => cells)).toEqual(rows.map(([a, b]) => [`.${a}`, b]));
      }),
    );
  });

  it("takes off no more than was put on", () => {
    fc.assert(
      fc.property(fc.string(), (cell) => {
        expect(fuse(defuse(cell))).toBe(cell);
      }),
    );
    expect(fuse("'twas good")).toBe("'twas good");
  });

  it.each([
    ["commas", "date,text\n2026-03-14,lemon\n"],
    ["semicolons", "date;text\r\n2026-03-14;lemon\r\n"],
    ["tabs", "date\ttext\r2026-03-14\tlemon\r"],
    ["a mark before it", "\ufeffdate,text\r\n2026-03-14,lemon"],
    ["empty lines", "date,text\r\n\r\n2026-03-14,lemon\r\n,\r\n"],
    ["a semicolon in quotes in the first line", '"date",text\n2026-03-14,lemon\n'],
  ])("a table with %s", (_, text) => {
    const { columns: names, rows } = csvRows(text);
    expect(names).toEqual(["date", "text"]);
    expect(rows.map(({ cells }) => cells)).toEqual([["2026-03-14", "lemon"]]);
  });

  it("knows on which line of the file a row begins", () => {
    const { rows } = csvRows('date,text\n\n1,"a\nb\nc"\n2,d\r\n3,e');
    expect(rows.map(({ line, cells }) => [line, cells[0]])).toEqual([
      [3, "1"],
      [6, "2"],
      [7, "3"],
    ]);
  });

  it("names what is no CSV, and takes nothing of it", () => {
    const { rows, problems } = csvRows('date,text\n1,a\n2,"never closed\n3,b');
    expect(rows.map(({ cells }) => cells[0])).toEqual(["1"]);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toContain("line 3");
  });
});
