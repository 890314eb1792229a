/**
 * What a turn reaches back to. By hand: 3-5 % flavor in buttercream, 3-4 % in ganache; one ounce is 28.349523125 g
 * (NIST SP 811); batter for N is ceil(2.2 N) shells of 0.53 × 3.8² g, of which 4 % stay behind.
 */
import { expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const batter_g = (macarons: number) => (Math.ceil((22 * macarons) / 10) * 0.53 * 3.8 * 3.8) / 0.96;

async function last(...turns: string[]) {
  const { ask } = baker();
  let answers: Awaited<ReturnType<typeof ask>> = [];
  for (const turn of turns) answers = await ask(turn);
  return answers;
}
const ends = (answers: Awaited<ReturnType<typeof last>>) =>
  answers.map(({ figures = [] }) => [figures[0]?.low ?? figures[0]?.value, figures[0]?.high]);

it("in ounces: the same dose", async () => {
  const [answer] = await last("how much flavor for 230 g buttercream", "and in oz?");
  // 6.9 / 28.349523125 and 11.5 / 28.349523125, in thousandths
  expect(answer?.headline).toContain("0.243 to 0.406 oz");
});

it("once more: the same answer; a note is not kept twice", async () => {
  const { ask, record } = baker();
  const [first] = await ask("how much flavor for 230 g buttercream");
  const [again] = await ask("same again");
  expect(again?.figures).toEqual(first?.figures);
  await ask("note: good feet, rated 8");
  await ask("same again");
  expect(record().notes).toHaveLength(1);
});

it("for both: the last two bowls", async () => {
  const answers = await last(
    "how much flavor for 200 g buttercream",
    "and for 300 g",
    "and at 4 percent for both",
  );
  expect(answers.map(({ figures = [] }) => figures[0]?.value)).toEqual([8, 12]);
});

it("all of the last turn: batter and filling for another number", async () => {
  const [batter, filling] = await last("batter for 32 macarons and the filling for them", "for 40 now");
  expect(batter?.figures?.some(({ value }) => value && Math.abs(value - batter_g(40)) < 0.5)).toBe(true);
  // 0.42 × 3.8² g a macaron, 8 % stays behind
  const filled = (40 * 0.42 * 3.8 * 3.8) / 0.92;
  expect(filling?.figures?.some(({ value }) => value && Math.abs(value - filled) < 0.5)).toBe(true);
});

it("back to an earlier one", async () => {
  const answers = await last(
    "how much flavor for 200 g buttercream",
    "350 f in c",
    "and the same percent in 300 g",
  );
  expect(ends(answers)).toEqual([[9, 15]]);
});

it("corrects the earlier topic that was given just that", async () => {
  const [answer] = await last(
    "ganache from 200 g dark chocolate",
    "12 min timer",
    "no wait, i've 250 g dark chocolate",
  );
  // 1.25 parts of dark chocolate to one of cream
  expect(answer?.figures?.some(({ value }) => value !== undefined && Math.abs(value - 200) < 0.01)).toBe(
    true,
  );
});
