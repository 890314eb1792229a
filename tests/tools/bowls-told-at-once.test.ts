/** Several bowls told in one breath, each with its own taste; and one of them called by what it weighs. Worked by hand. */
import { describe, expect, it } from "vitest";
import { baker, lastOf } from "../support/ask.ts";

const ranges = (answers: readonly { figures?: readonly { name: string; low?: number; high?: number }[] }[]) =>
  answers.map(({ figures = [] }) =>
    [figures[0]?.low, figures[0]?.high].map((each) => Math.round((each ?? 0) * 100) / 100),
  );

describe("as many bowls as tastes", () => {
  // 3-5 % of 140 g
  it.each([
    "two bowls here, 140 g SMBC in each, one raspberry one lemon. how much flavor each",
    "two bowls, 140 g buttercream each, raspberry and lemon. how much flavor for each",
    "two bowls of 140 g buttercream, one gets raspberry, one lemon. flavor?",
    "140 g buttercream in each of two bowls, raspberry in one and lemon in the other, how much flavor",
    "both bowls hold 140 g buttercream, one gets raspberry and the other lemon, how much",
  ])("%s", async (said) => {
    const answers = await lastOf(said);
    expect(answers.map(({ tool }) => tool)).toEqual(["dose", "dose"]);
    expect(ranges(answers)).toEqual([
      [4.2, 7],
      [4.2, 7],
    ]);
  });

  it("is of three where there are three", async () => {
    // 3-4 % of 120 g ganache
    const answers = await lastOf(
      "i have three bowls, each 120 g ganache. rose, lime and mint flavor, how much each",
    );
    expect(answers.map(({ headline }) => headline)).toEqual([
      expect.stringContaining("rose"),
      expect.stringContaining("lime"),
      expect.stringContaining("mint"),
    ]);
    expect(ranges(answers)).toEqual([
      [3.6, 4.8],
      [3.6, 4.8],
      [3.6, 4.8],
    ]);
  });

  it("goes by each one's own row", async () => {
    // zest 0.5-1.5 %, jam 5-15 %
    const answers = await lastOf(
      "two bowls, 200 g buttercream in each, one lemon zest one raspberry jam, how much",
    );
    expect(ranges(answers)).toEqual([
      [1, 3],
      [10, 30],
    ]);
  });

  it.each([
    // one bowl that is shared out
    ["split 280 g buttercream into two bowls, one raspberry one lemon", "split"],
    ["280 g buttercream, split into raspberry and lemon", "split"],
  ])("%s stays what it was", async (said, tool) => {
    const [first] = await lastOf(said);
    expect(first?.tool).toBe(tool);
    expect(first?.figures?.map(({ value }) => value)).toContain(140);
  });
});

describe("a bowl called by its weight", () => {
  const split = "batter came to 520 g. three bowls, 2 to 1 to 1";
  it.each([
    // powder color 0.3-1 %, gel color 0.5-1.5 %
    ["and powder colour in one of the 130s?", 0.39, 1.3],
    ["powder color for one of the 130 g ones", 0.39, 1.3],
    ["pink gel for the other 130 g bowl", 0.65, 1.95],
    ["gel color for the 260 g one", 1.3, 3.9],
  ])("%s", async (said, low, high) => {
    const { one } = baker();
    await one(split);
    const answer = await one(said);
    expect(answer.tool).toBe("dose");
    expect(ranges([answer])).toEqual([[low, high]]);
  });

  it("holds nothing of what went into the other", async () => {
    const { ask, one } = baker();
    await ask("two bowls here, 140 g buttercream in each, one raspberry one lemon. how much flavor each");
    await one("put 9 g raspberry flavor in the 140 g bowl. too much?");
    await one("how much plain buttercream do i stir in");
    // 0.2-0.5 % of 140 g
    expect(ranges([await one("right. and salt in the other 140 g one")])).toEqual([[0.28, 0.7]]);
  });

  it("takes salt beside what is in it, however it is asked", async () => {
    for (const said of ["salt in that?", "and salt?", "salt for the 140 g one"]) {
      const { one } = baker();
      await one("is 9 g raspberry flavor in 140 g buttercream too much");
      expect([said, ranges([await one(said)])]).toEqual([said, [[0.28, 0.7]]]);
    }
  });

  it("judges what went in, where that is told", async () => {
    const { one } = baker();
    await one(split);
    // 1 / 130
    const answer = await one("1 g powder color in the other 130 g one, ok?");
    expect(answer.figures?.find(({ name }) => name === "share")?.value).toBeCloseTo(100 / 130, 6);
  });

  it("is a weight of its own where it stands alone", async () => {
    const { one } = baker();
    await one("flavor for 300 g buttercream");
    expect(ranges([await one("lemon for 200 g")])).toEqual([[6, 10]]);
  });

  it("was weighed with the bowl", async () => {
    for (const said of [
      "hang on, 310 was with the bowl. its 190",
      "forgot to tare the bowl, its 190",
      "oops thats with the bowl, only 190 really",
      "310 was with the bowl, the bowl is 120",
    ]) {
      const { one } = baker();
      await one("passionfruit flavour at 4.5% for 310 g buttercream");
      // 4.5 % of 190 g
      expect([said, (await one(said)).figures?.[0]?.value]).toEqual([said, expect.closeTo(8.55, 6)]);
    }
  });
});

describe("a share that is named by its flavor", () => {
  it.each(["lemon at 3.5 then", "lemon at 3.5", "make the lemon 3.5 percent", "the lemon at 3.5 % please"])(
    "%s",
    async (said) => {
      const { ask, one } = baker();
      await ask("4 % lemon flavor for 180 g buttercream and 14 min on the clock for tray 1");
      // 3.5 % of 180 g
      expect((await one(said)).figures?.[0]?.value).toBeCloseTo(6.3, 6);
    },
  );
});
