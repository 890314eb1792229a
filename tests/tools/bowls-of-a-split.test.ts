/**
 * A flavor for one bowl of those that were split: 3-8 % fruit powder, 3-6 % cocoa, 1-2 % extract, 0.2-0.5 % oil, 0.5-1.5 %
 * gel (from memory, as in data/rules).
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

describe("one bowl of a split", () => {
  it("what is in the raspberry half is judged against that half: 6 / 240", async () => {
    const { status, of } = await talk(
      "split 480 g buttercream half raspberry half vanilla",
      "6 g raspberry powder in the raspberry half ok?",
    );
    expect([status, of("share")?.value]).toEqual(["answered", 2.5]);
  });
  it("the half is no factor: 3-8 % of 240", async () => {
    const { figures } = await talk(
      "split 480 g buttercream half raspberry half vanilla",
      "and raspberry powder for the raspberry half",
    );
    expect([figures?.[0]?.low, figures?.[0]?.high].map((each) => Number(each?.toFixed(6)))).toEqual([
      7.2, 19.2,
    ]);
  });
  it("the larger and the smaller are named by which they are: 450 × 2/3 and 1/3", async () => {
    const { of } = await talk("split 450 g buttercream 2:1, the big part raspberry, the small one vanilla");
    expect([of("raspberry")?.value, of("vanilla")?.value]).toEqual([300, 150]);
  });
  it.each([
    ["600 g batter in 3 equal bowls, one is pink, how much gel for that one", 1, 3],
    [
      "500 g buttercream into 4 equal bowls. one will be chocolate, how much cocoa powder in that bowl",
      3.75,
      7.5,
    ],
    ["1 kg buttercream in 5 tubs, 2 of them lemon. how much lemon extract per tub", 2, 4],
  ])("%s", async (say, low, high) => {
    const [share, dose] = await baker().ask(say);
    expect([share?.tool, dose?.figures?.[0]?.low, dose?.figures?.[0]?.high]).toEqual(["split", low, high]);
  });
  it("each of unequal parts has its own dose, by its color: 3, 2 and 1 sixths of 517; all of them the whole", async () => {
    const her = baker();
    await her.ask("got 517 g batter, want 3 parts pink 2 parts lilac 1 part white");
    const each = await her.ask("how much gel for each");
    expect(each.map(({ figures }) => [figures?.[0]?.name, figures?.[0]?.low, figures?.[0]?.high])).toEqual(
      (["pink", "lilac", "white"] as const).map((color, at) => [
        `${color} gel color`,
        expect.closeTo(((3 - at) * 517 * 0.005) / 6, 6),
        expect.closeTo(((3 - at) * 517 * 0.015) / 6, 6),
      ]),
    );
    await her.ask("how much gel for the lilac");
    expect((await her.one("and gel for all of them")).figures?.[0]?.low).toBeCloseTo(2.585, 6);
  });
});

it("behind a fault, too much is still of the oil that was spoken of: 0.2-0.5 % of 250", async () => {
  const { figures } = await talk(
    "250 g buttercream and orange oil how much",
    "chocolate seized!!",
    "wait is that too much",
  );
  expect(figures?.[0]).toMatchObject({ name: "orange oil", low: 0.5, high: 1.25 });
});

describe("every part that is named keeps its weight", () => {
  const four = { pink: 120, lilac: 90, mint: 100, yellow: 90 };
  it.each([
    ["split 400 g batter pink 120 lilac 90 mint 100 yellow 90", four],
    ["split 400 g batter into pink 120, lilac 90, mint 100 and yellow 90", four],
    // 600 - 120 - 90 - 100 - 90
    [
      "split 600 g batter pink 120 g, lilac 90 g, mint 100 g and yellow 90 g, rest plain",
      { ...four, plain: 200 },
    ],
    // mint is a taste and a color, which is no reason to call it by its neighbor
    [
      "split 600 g batter, mint 100 g, pink 120 g, yellow 90 g, rest plain",
      { mint: 100, pink: 120, yellow: 90, plain: 290 },
    ],
  ])("%s", async (say, parts) => {
    const { figures } = await talk(say);
    expect(Object.fromEntries((figures ?? []).map(({ name, value }) => [name, value]))).toEqual(parts);
  });
  it.each([
    // 600 × 2/3 and the rest of it; the same, where two are made of three; 600 × 3/4 and the rest of it
    [["split 600 g batter in two, first twice the second"], 400, 200],
    [["split 600 g batter in 3 bowls", "just two bowls, the first twice the second"], 400, 200],
    [
      [
        "split 600 g batter in 3 bowls, the first double the others",
        "make it two bowls, one three times the other",
      ],
      450,
      150,
    ],
  ])("%s: one bowl is told by the other", async (turns, first, second) => {
    const { figures } = await talk(...turns);
    expect(figures?.map(({ value }) => value)).toEqual([first, second]);
  });
});
