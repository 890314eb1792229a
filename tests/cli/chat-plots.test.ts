/** Plots of answers: worked out by hand, cell by cell, at 60 columns and in ASCII. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { cut } from "../../src/cli/chat/plots/bars.ts";
import { plotLines } from "../../src/cli/chat/plots/plots.ts";
import { ascii, drawn } from "../../src/cli/chat/signs.ts";
import { width } from "../../src/cli/chat/text.ts";
import type { Answer, Item } from "../../src/tools/contract/index.ts";

/** A flavor in a base, checked against 3-5 %. */
const checked = (share: number, rule = "3-5 % of the buttercream's weight"): Answer => ({
  tool: "dose",
  status: "answered",
  headline: `${share} %`,
  figures: [
    { name: "share", value: share, unit: "%" },
    { name: "flavor", low: 4.5, high: 7.5, unit: "g" },
  ],
  rule: { text: rule, basis: "common practice" },
});

const made = (water: number, fat: number, sugar: number): Answer => ({
  tool: "ganache",
  status: "answered",
  headline: "about 0.89",
  figures: [
    { name: "aw", value: 0.89, unit: "aw" },
    { name: "water", value: water, unit: "%" },
    { name: "fat", value: fat, unit: "%" },
    { name: "sugar", value: sugar, unit: "%" },
  ],
});

const note = (date: string, rating: number | undefined, more: Item = {}): Item => ({
  date,
  flavors: ["pistachio"],
  text: "pistachio",
  problems: [],
  ...(rating === undefined ? {} : { rating }),
  ...more,
});
const recalled = (...items: Item[]): Answer => ({
  tool: "recall",
  status: "answered",
  headline: "notes",
  items,
});

const shown = (answer: Answer, columns = 60, signs = drawn) => plotLines(answer, columns, signs).join("\n");

describe("a dose in its range", () => {
  // 0 to 8 % (1.6 times 5) over 48 cells, 47 steps: 3 % at cell 17.6, 5 % at 29.4, 6 % at 35.3
  it("has its mark over the scale, and the verdict in words", () => {
    expect(shown(checked(6))).toBe(
      [
        `    ${" ".repeat(35)}▼ 6 %, over`,
        `  0 ${"·".repeat(18)}${"■".repeat(12)}${"·".repeat(18)} 8 %`,
        `    ${" ".repeat(18)}3${" ".repeat(10)}5`,
      ].join("\n"),
    );
  });

  it("says it before the mark where there is no room behind it", () => {
    // 0 to 22 % over 29 cells, 28 steps: 20 % at cell 25.5, down to 25; 3 % at 3.8, 5 % at 6.4
    expect(shown(checked(20), 39, ascii)).toBe(
      [`${" ".repeat(4 + 25 - 1 - 10)}20 %, over v`, `  0 ....###${".".repeat(22)} 22 %`, "        3 5"].join(
        "\n",
      ),
    );
  });

  it("is within at both ends", () => {
    for (const share of [3, 4, 5]) expect(shown(checked(share))).toContain(`${share} %, within`);
    expect(shown(checked(2.99))).toContain("2.99 %, under");
    expect(shown(checked(5.01))).toContain("5.01 %, over");
  });

  it("isn't drawn where rule and weights tell different ranges, or there is no range, or nothing was checked", () => {
    expect(shown(checked(4, "2-5 % of the buttercream's weight"))).toBe("");
    expect(shown(checked(4, "no figure for liquid flavor in shell batter"))).toBe("");
    expect(shown({ ...checked(4), figures: [{ name: "flavor", low: 4.5, high: 7.5, unit: "g" }] })).toBe("");
  });
});

describe("what a filling is made of", () => {
  // 48 cells: water 12, fat 12, sugar 18, the rest 6
  it("is one bar with a sign for each part", () => {
    expect(shown(made(25, 25, 37.5))).toBe(
      [
        `  ${"█".repeat(12)}${"▒".repeat(12)}${"░".repeat(18)}${"·".repeat(6)}`,
        "  █ water 25 %  ▒ fat 25 %  ░ sugar 38 %  · the rest 13 %",
      ].join("\n"),
    );
  });

  it("is told apart in ASCII too, its names kept together at 40 columns", () => {
    // 37 cells: 9.25, 9.25, 13.875, 4.625: the rests go to sugar, then the rest
    expect(shown(made(25, 25, 37.5), 40, ascii)).toBe(
      [
        `  ${"#".repeat(9)}${"=".repeat(9)}${"-".repeat(14)}${".".repeat(5)}`,
        "  # water 25 %  = fat 25 %  - sugar 38 %",
        "  . the rest 13 %",
      ].join("\n"),
    );
  });

  it("isn't drawn of parts that make more than a whole, or of some of them", () => {
    expect(shown(made(60, 60, 60))).toBe("");
    expect(shown({ ...made(25, 25, 30), figures: made(25, 25, 30).figures?.slice(0, 3) ?? [] })).toBe("");
  });

  it("cuts a whole into cells without losing one", () => {
    const shares = fc.array(fc.float({ min: 0, max: 100, noNaN: true }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(shares, fc.integer({ min: 8, max: 60 }), (parts, cells) => {
        const sizes = cut(parts, cells);
        const sum = sizes.reduce((a, b) => a + b, 0);
        const whole = parts.reduce((a, b) => a + b, 0);
        expect(sum).toBe(whole > 0 ? cells : 0);
        parts.forEach((part, at) => {
          expect(sizes[at]).toBeGreaterThanOrEqual(part > 0 ? 1 : 0);
          if (whole > 0) expect(Math.abs((sizes[at] ?? 0) - (part / whole) * cells)).toBeLessThan(4);
        });
      }),
    );
  });
});

describe("ratings of a flavor over its batches", () => {
  it("stand one below the other, the oldest first", () => {
    const answer = recalled(
      note("2026-03-14", 9),
      note("2026-03-02", undefined),
      note("2026-02-28", 6.5),
      note("2026-02-01", 7),
    );
    expect(shown(answer)).toBe(
      ["  1 Feb   ■■■■■■■···  7", "  28 Feb  ■■■■■■■···  6.5", "  14 Mar  ■■■■■■■■■·  9"].join("\n"),
    );
  });

  it("aren't drawn for batches of different flavors, for fewer than three, or all alike", () => {
    const [a, b, c] = [note("2026-03-14", 9), note("2026-03-02", 8), note("2026-02-28", 6)];
    expect(shown(recalled(a, b, { ...c, flavors: ["lemon"] }))).toBe("");
    expect(shown(recalled(note("2026-03-14", 9), note("2026-03-02", 9), note("2026-02-28", 9)))).toBe("");
  });
});

describe("a batch compared with the last", () => {
  const late = note("2026-03-14", 9, { macarons: 38, oven_c: 148, bake_min: 16, problems: ["hollow"] });
  const early = note("2026-03-01", 6, { macarons: 38, oven_c: 150, rest_min: 40 });

  it("has what was done side by side, and by how much it changed", () => {
    expect(shown(recalled(late, early))).toBe(
      [
        "            14 Mar  1 Mar",
        "  rating    9       6       +3",
        "  macarons  38      38      same",
        "  oven      148 °C  150 °C  -2 °C",
        "  bake      16 min  -",
        "  rest      -       40 min",
        "  faults    hollow  none",
      ].join("\n"),
    );
  });

  it("puts the later one first, however they come", () => {
    expect(shown(recalled(early, late))).toBe(shown(recalled(late, early)));
  });

  it("keeps its columns in ASCII", () => {
    expect(shown(recalled(late, early), 60, ascii)).toContain("  oven      148 C   150 C   -2 C");
  });
});

it("nothing is drawn beyond the window, or where there is no room for it", () => {
  const answers = [
    checked(6),
    checked(80),
    made(23.2, 34, 37.1),
    recalled(note("2026-03-14", 9), note("2026-03-02", 8), note("2026-02-28", 6)),
    recalled(
      note("2026-03-14", 9, { problems: ["hollow", "cracked tops", "no feet"] }),
      note("2026-03-02", 8),
    ),
  ];
  for (const answer of answers)
    for (const signs of [drawn, ascii])
      for (let columns = 20; columns <= 130; columns++)
        for (const line of plotLines(answer, columns, signs)) {
          expect(width(line), `${columns}: ${line}`).toBeLessThanOrEqual(columns);
          // biome-ignore lint/suspicious/noControlCharactersInRegex: all of ASCII
          if (signs === ascii) expect(line).toMatch(/^[\u0000-\u007f]*$/);
        }
});
