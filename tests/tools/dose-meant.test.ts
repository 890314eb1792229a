/**
 * Doses said in passing: what the bowl holds, what a strength belongs to, which taste comes next. By hand from
 * 3-5 % flavor in buttercream and 3-4 % in ganache (common practice), 1-2 % extract (from memory).
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

async function last(...turns: string[]) {
  const { one } = baker();
  let answer = await one(turns[0] as string);
  for (const turn of turns.slice(1)) answer = await one(turn);
  return answer;
}
const range = (figures: { low?: number; high?: number }[] = []) => [figures[0]?.low, figures[0]?.high];

describe("strength said with a dose", () => {
  it("a double one takes half: 1-2 % of 300 g is 3 to 6 g", async () =>
    expect(range((await last("double strength lemon extract for 300 g buttercream")).figures)).toEqual([
      1.5, 3,
    ]));
  it("twice as thick is no factor: 9 to 12 g in 300 g ganache stays", async () =>
    expect(
      range((await last("how much flavor for 300 g ganache", "its twice as thick as usual")).figures),
    ).not.toEqual([18, 24]));
});

describe("what is in the bowl", () => {
  const start = "how much raspberry flavor for 230 g buttercream";
  it("for 150 of it", async () =>
    expect(range((await last(start, "for 150 of it")).figures)).toEqual([4.5, 7.5]));
  it("put 14 in, what now: 14 g are 5 % of 280 g and 4 %, the middle, of 350 g", async () => {
    const checked = await last(start, "i put 14 in");
    expect(checked.figures?.[0]?.value).toBeCloseTo(1400 / 230, 6);
    const mended = await last(start, "i put 14 in", "what now");
    expect(mended.figures?.[0]?.low).toBeCloseTo(14 / 0.05 - 230, 6);
    expect(mended.figures?.[0]?.high).toBeCloseTo(14 / 0.04 - 230, 6);
  });
  it("another taste with its own weight is a dose of its own", async () => {
    const check = "put 9 g raspberry flavor into 230 g buttercream, too much?";
    expect(range((await last(check, "ok and vanilla extract for 160 g")).figures)).toEqual([1.6, 3.2]);
  });
});

describe("kinds of buttercream", () => {
  it("says so where the book has no ratio", async () => {
    const { figures = [], status } = await last("french buttercream from 100 g yolks");
    expect(status).not.toBe("answered");
    expect(figures).toEqual([]);
  });
});
