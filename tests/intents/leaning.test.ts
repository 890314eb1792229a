/**
 * What follows the last answer and what stands alone. By hand: dark ganache for piping is 1.25 : 1 (common practice).
 */
import { expect, it } from "vitest";
import { baker } from "../support/ask.ts";

async function last(...turns: string[]) {
  const { one } = baker();
  let answer = await one(turns[0] as string);
  for (const turn of turns.slice(1)) answer = await one(turn);
  return answer;
}

it("twice as much: 300 g dark take 240 g cream, 600 g take 480", async () => {
  const { figures = [] } = await last("300 g dark chocolate how much cream for piping", "twice as much");
  expect(figures.find(({ name }) => name === "cream")?.value).toBeCloseTo(480, 9);
});

it("nothing of a question is left where none of its words was: it isn't said again", async () => {
  const { status, tool } = await last("how much flavor for 230 g buttercream", "whats first");
  expect(status === "answered" && tool === "dose").toBe(false);
});

it("a cost is asked of cost", async () => {
  const { tool } = await last("batter for 24 macarons", "what's the cost of those");
  expect(tool).toBe("cost");
});

it("a number before a day, and a taste", async () => {
  const { tool, headline } = await last("20 for saturday 3pm, mango ganache");
  expect(tool).toBe("day");
  expect(headline).toContain("20");
});

it("grainy with a weight is a trouble, split with one is mended: 2 to 10 % of 450 g", async () => {
  expect((await last("my ganache is grainy, 300 g of it")).tool).toBe("trouble");
  const { tool, figures = [] } = await last("450 g ganache just broke, greasy and grainy, how much cream");
  expect(tool).toBe("ganache");
  expect(figures.map(({ value }) => value)).toEqual(expect.arrayContaining([9, 45]));
});

it("a y that opens the line asks why", async () => {
  expect((await last("how much flavor for 230 g buttercream", "y so little")).tool).toBe("explain");
});
