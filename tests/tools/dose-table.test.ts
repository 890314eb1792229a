/** Every row and column of the dose table, typed in here a second time by hand. */
import { describe, expect, test } from "vitest";
import { doseRows } from "../../data/rules/doses.ts";
import { dose } from "../../src/tools/dose/dose.ts";
import { answer, range } from "../support/world.ts";

type Pair = [low: number, high: number] | undefined;

/** Row, percent in butter fillings, in ganache, in shell batter, basis. A dash in the book is undefined here. */
const book: [row: string, buttercream: Pair, ganache: Pair, batter: Pair, basis: string][] = [
  ["flavor", [3, 5], [3, 4], undefined, "common practice"],
  ["extract", [1, 2], [1, 2], undefined, "from memory"],
  ["vanilla paste", [1, 2], [1, 2], undefined, "from memory"],
  ["oil", [0.2, 0.5], [0.2, 0.5], undefined, "from memory"],
  ["fruit powder", [3, 8], [2, 5], undefined, "from memory"],
  ["purée", [5, 15], [5, 10], undefined, "from memory"],
  ["nut paste", [10, 20], [10, 20], undefined, "from memory"],
  ["cocoa powder", [3, 6], undefined, undefined, "from memory"],
  ["coffee powder", [1, 2], [1, 2], undefined, "from memory"],
  ["tea powder", [1.5, 3], [1.5, 3], undefined, "from memory"],
  ["zest", [0.5, 1.5], [0.5, 1.5], undefined, "from memory"],
  ["citric acid", [0.1, 0.3], [0.1, 0.3], undefined, "from memory"],
  ["salt", [0.2, 0.5], [0.2, 0.5], undefined, "from memory"],
  ["spirit", [2, 5], [2, 5], undefined, "from memory"],
  ["powder color", undefined, undefined, [0.3, 1], "from memory"],
  ["gel color", undefined, undefined, [0.5, 1.5], "from memory"],
];

const columns = ["buttercream", "ganache", "batter"] as const;
const cells = book.flatMap(([row, buttercream, ganache, batter, basis]) =>
  columns.map((column) => ({ row, column, pair: { buttercream, ganache, batter }[column], basis })),
);
/** What upsets a batter: liquids, and bean paste with them. */
const wet = ["flavor", "extract", "vanilla paste", "oil", "spirit"];

test("the table has the book's rows and no others", () => {
  expect(doseRows.map((each) => each.id)).toEqual(book.map(([row]) => row));
});

describe("a cell with a range gives it, by weight", () => {
  const filled = cells.filter((each) => each.pair);
  // 250 g x p / 100 = 2.5 p
  test.each(filled)("$row in $column: $pair %", ({ row, column, pair, basis }) => {
    const said = answer(dose, { dose: row, base: column, base_g: 250 });
    const [low, high] = pair as [number, number];
    expect(said.status).toBe("answered");
    const [from, to] = range(said, said.figures?.[0]?.name ?? "");
    expect(from).toBeCloseTo(2.5 * low, 12);
    expect(to).toBeCloseTo(2.5 * high, 12);
    expect(said.figures).toHaveLength(1);
    expect(said.figures?.[0]?.unit).toBe("g");
    expect(said.rule?.basis).toBe(basis);
    expect(said.rule?.text).toContain(`${low}-${high} %`);
    expect(said.cautions?.join(" ")).toMatch(/bottle/);
  });
});

describe("an empty cell gives no figure, in any direction", () => {
  const empty = cells.filter((each) => !each.pair && !(each.column === "batter" && wet.includes(each.row)));
  const ways = [{ base_g: 250 }, { flavor_g: 5 }, { base_g: 250, flavor_g: 5 }];
  test.each(empty)("$row in $column is declined", ({ row, column }) => {
    for (const known of ways) {
      const said = answer(dose, { dose: row, base: column, ...known });
      expect(said.status).toBe("declined");
      expect(said.figures ?? []).toEqual([]);
      expect(said.headline).toMatch(/no rule/);
    }
  });
});

describe("liquid flavor stays out of the shell batter", () => {
  test.each(wet)("%s: answered without a figure, with a caution", (row) => {
    const said = answer(dose, { dose: row, base: "batter", base_g: 400 });
    expect(said.status).toBe("answered");
    expect(said.figures ?? []).toEqual([]);
    expect(said.cautions?.join(" ")).toMatch(/batter/);
    expect(said.headline).toMatch(/filling/);
  });
});

describe("which column a mix takes", () => {
  test.each(["buttercream", "cream cheese filling", "mascarpone filling", "butter filling", "filling"])(
    "%s takes the butter column: 200 g flavor 6 to 10 g",
    (base) => {
      expect(range(answer(dose, { dose: "flavor", base, base_g: 200 }), "flavor")).toEqual([6, 10]);
    },
  );

  test("a filling of no named kind says that it is taken for a buttercream", () => {
    expect(answer(dose, { dose: "flavor", base: "filling", base_g: 200 }).assumed?.join()).toMatch(
      /buttercream/,
    );
    expect(answer(dose, { dose: "flavor", base: "buttercream", base_g: 200 }).assumed ?? []).toEqual([]);
  });

  test("super strength oil and reduced purée are said to be assumed", () => {
    expect(answer(dose, { dose: "oil", base: "ganache", base_g: 200 }).assumed?.join()).toMatch(
      /super strength/,
    );
    expect(answer(dose, { dose: "purée", base: "ganache", base_g: 200 }).assumed?.join()).toMatch(/reduced/);
  });
});
