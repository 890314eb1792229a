import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { stepLines } from "../../src/cli/chat/steps.ts";
import { width } from "../../src/cli/chat/text.ts";
import type { DayStep } from "../../src/tools/contract/index.ts";

const step = (name: string, start: string, end: string, hands = false, from?: string): DayStep => ({
  name,
  start: `2026-03-${start}:00`,
  end: `2026-03-${end}:00`,
  hands,
  ...(from ? { from: `2026-03-${from}:00` } : {}),
});

/** One tray, by hand: from a Thursday evening to the Saturday. Every kind of step is in it. */
const steps = [
  step("Weigh and sift", "19T17:00", "19T17:30", true),
  step("Meringue and macaronage", "19T17:30", "19T18:00", true),
  step("Pipe tray 1", "19T18:00", "19T18:30", true),
  step("Bake tray 1", "19T19:00", "19T19:30"),
  step("Rest tray 1", "19T18:30", "19T19:00"),
  step("Cool tray 1", "19T20:00", "19T20:30", false, "19T19:30"),
  step("Fill", "19T20:30", "19T21:00", true),
  step("Mature", "20T21:00", "20T21:00", false, "19T21:00"),
  step("Box and label", "20T21:00", "20T21:30", true),
];
const shown = (columns: number, signs = drawn) => stepLines(steps, columns, signs).join("\n");

/** Looked at line by line: each bar stands where its time does. */
describe("a day as a chart", () => {
  // 17:00 to 21:00 are 18 cells: half an hour is 2 1/4
  it("at 60 columns, with ends", () => {
    expect(shown(60)).toBe(`  Thu 19 Mar   17   18  19   20
  17:00-17:30  ■■                  Weigh and sift
  17:30-18:00    ■■■               Meringue and macaronage
  18:00-18:30       ■■             Pipe tray 1
  18:30-19:00         ──           Rest tray 1
  19:00-19:30           ──         Bake tray 1
  19:30-20:30             ─────    Cool tray 1
  20:30-21:00                  ■■  Fill
  21:00-                        →  Mature, to Fri 20 Mar
                                   21:00
  Fri 20 Mar   21
  21:00-21:30  ■■                  Box and label
  ■ your hands  ─ goes by itself`);
  });

  it("at 40 columns, with starts alone", () => {
    expect(shown(40)).toBe(`  Thu 19 Mar
        17   19
  17:00 ■          Weigh and sift
  17:30  ■■        Meringue and
                   macaronage
  18:00    ■       Pipe tray 1
  18:30     ─      Rest tray 1
  19:00      ─     Bake tray 1
  19:30       ───  Cool tray 1
  20:30          ■ Fill
  21:00          → Mature, to Fri 20 Mar
                   21:00
  Fri 20 Mar
        21
  21:00 ■          Box and label
  ■ your hands  ─ goes by itself`);
  });

  it("at 120 columns", () => {
    expect(shown(120)).toBe(`  Thu 19 Mar   17             18             19             20
  17:00-17:30  ■■■■■■■■                                                      Weigh and sift
  17:30-18:00          ■■■■■■■                                               Meringue and macaronage
  18:00-18:30                 ■■■■■■■■                                       Pipe tray 1
  18:30-19:00                         ───────                                Rest tray 1
  19:00-19:30                                ────────                        Bake tray 1
  19:30-20:30                                        ───────────────         Cool tray 1
  20:30-21:00                                                       ■■■■■■■  Fill
  21:00-                                                                  →  Mature, to Fri 20 Mar 21:00
  Fri 20 Mar   21
  21:00-21:30  ■■■■■■■■                                                      Box and label
  ■ your hands  ─ goes by itself`);
  });

  it("in plain ASCII", () => {
    expect(shown(40, ascii)).toBe(`  Thu 19 Mar
        17   19
  17:00 #          Weigh and sift
  17:30  ##        Meringue and
                   macaronage
  18:00    #       Pipe tray 1
  18:30     -      Rest tray 1
  19:00      -     Bake tray 1
  19:30       ---  Cool tray 1
  20:30          # Fill
  21:00          > Mature, to Fri 20 Mar
                   21:00
  Fri 20 Mar
        21
  21:00 #          Box and label
  # your hands  - goes by itself`);
  });

  it("as a list where a bar has no room", () => {
    expect(shown(30)).toBe(`  Thu 19 Mar
  17:00 hands Weigh and sift
  17:30 hands Meringue and
              macaronage
  18:00 hands Pipe tray 1
  18:30 waits Rest tray 1
  19:00 waits Bake tray 1
  19:30 waits Cool tray 1
  20:30 hands Fill
  21:00 waits Mature, to Fri
              20 Mar 21:00
  Fri 20 Mar
  21:00 hands Box and label`);
  });

  it("has no lines for no steps", () => {
    expect(stepLines([], 60, drawn)).toEqual([]);
  });
});

describe("any day at any width", () => {
  const minute = (at: number) => new Date(Date.UTC(2026, 2, 19) + at * 60_000).toISOString().slice(0, 19);
  const some = fc.record({
    name: fc.constantFrom(
      "Fill",
      "Meringue and macaronage",
      "Crème pâtissière 抹茶 sets for a good long while",
    ),
    at: fc.nat(4000),
    long: fc.nat(2000),
    hands: fc.boolean(),
    waits: fc.nat(600),
  });
  const day = fc.array(some, { minLength: 1, maxLength: 12 }).map((all) =>
    all.map(
      ({ name, at, long, hands, waits }): DayStep => ({
        name,
        start: minute(at + waits),
        end: minute(at + waits + long),
        hands,
        ...(hands ? {} : { from: minute(at) }),
      }),
    ),
  );

  it("fits, and every step has its time and its sign", () => {
    fc.assert(
      fc.property(
        day,
        fc.integer({ min: 34, max: 160 }),
        fc.constantFrom(drawn, ascii),
        (all, columns, signs) => {
          const lines = stepLines(all, columns, signs);
          for (const line of lines) expect(width(line), line).toBeLessThanOrEqual(columns);
          const rows = lines.filter((line) => /^ {2}\d\d:\d\d/.test(line));
          expect(rows).toHaveLength(all.length);
          const bars = rows.map((row) => row.replace(/^ {2}[\d:-]+ +/, "").split(" ")[0] ?? "");
          const only = (bar: string, sign: string) =>
            [...bar].every((cell) => cell === sign || cell === signs.onward);
          const isHands = (bar: string) => only(bar, signs.hands);
          const isWaits = (bar: string) => only(bar, signs.waits);
          const onward = all.filter(
            ({ start, end, from }) => (from ?? start).slice(0, 10) !== end.slice(0, 10),
          );
          expect(bars.every((bar) => bar !== "" && (isHands(bar) || isWaits(bar)))).toBe(true);
          expect(bars.filter((bar) => bar.endsWith(signs.onward))).toHaveLength(onward.length);
        },
      ),
      { numRuns: 500 },
    );
  });
});
