/** A flavor for one bowl of those that were split: 3-8 % fruit powder, 3-6 % cocoa, 0.5-1.5 % gel (from memory, as in data/rules). */
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
    const [share, dose] = await (await baker()).ask(say);
    expect([share?.tool, dose?.figures?.[0]?.low, dose?.figures?.[0]?.high]).toEqual(["split", low, high]);
  });
});
