/**
 * Questions and orders in their shortest form, and two in a breath. Values by hand: a cup of granulated sugar weighs 200 g
 * (USDA SR, portion weights); ganache to pipe is 1.25 : 1 of dark and 2 : 1 of milk, and sets in 45 min (common practice);
 * the house formula is 1.3 g almond flour to 1 g whites, 4.6 g batter in all (common practice); a shell takes 0.53 × d² g
 * of batter, d in cm and 3.8 where none is said, of 96 % of it (from memory); filled macarons keep 7 days, the day of
 * filling counted (FDA Food Code 2022, 3-501.17). The clock stands on Saturday 14 March 2026.
 */
import { describe, expect, it } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";

const last = async (...turns: readonly string[]): Promise<Answer[]> => {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns) answers = await ask(turn);
  return answers;
};
const figure = (answers: readonly Answer[], name: string) =>
  answers.flatMap(({ figures = [] }) => figures).find((each) => each.name === name)?.value;

describe("two in a breath, and none is lost", () => {
  it.each([
    // 220 × 1.25
    [
      "dark filling ganache out of 220 g cream, ganache timer on too",
      ["ganache", { chocolate: 275 }],
      ["timer", { left: 45 }],
    ],
    // 85 × 1.3; 85 × 4.6 × 0.96 / 7.6532 = 49.0 shells
    [
      "whites weigh 85 g. weights of everything else, and macarons it makes",
      ["scale", { "almond flour": 110.5 }],
      ["shells", { macarons: 24 }],
    ],
    // 125 × 1.3; 125 × 4.6 × 0.96 / 7.6532 = 72.1 shells
    [
      "125g whites in bowl. rest of the weights n macs it makes?",
      ["scale", { "almond flour": 162.5 }],
      ["shells", { macarons: 36 }],
    ],
    // 140 × 1.3; 140 × 4.6 × 0.96 / (0.53 × 4²) = 72.9 shells
    [
      "140 g whites: rest of the shells, and yield at 4 cm",
      ["scale", { "almond flour": 182 }],
      ["shells", { macarons: 36 }],
    ],
    ["log peach batch, good feet. and a timer, 20 min", ["note", {}], ["timer", { left: 20 }]],
    // 600 / 2
    [
      "600g milk choc, cream for piping. ganache timer.",
      ["ganache", { cream: 300 }],
      ["timer", { left: 45 }],
    ],
  ] as [string, ...[string, Record<string, number>][]][])("%s", async (said, ...wanted) => {
    const answers = await last(said);
    expect(answers.map(({ tool }) => tool)).toEqual(wanted.map(([tool]) => tool));
    for (const [at, [, figures]] of wanted.entries())
      for (const [name, value] of Object.entries(figures))
        expect(figure(answers.slice(at, at + 1), name), name).toBeCloseTo(value, 6);
  });

  it("sets no timer that is asked about", async () => {
    const { one, record } = baker();
    expect((await one("is the ganache timer on")).headline).toBe("No timers are running.");
    expect(record().timers).toEqual([]);
  });
});

it("cups of a weight are no recipe", async () => {
  expect(figure(await last("cups for 250 g granulated sugar"), "result")).toBe(1.25);
});

it("what remains of a bowl goes to the other", async () => {
  const [answer] = await last("split 400 g buttercream, vanilla gets 150 and cocoa whatever remains");
  expect(answer?.figures?.map(({ value }) => value)).toEqual(expect.arrayContaining([150, 250]));
});

it("a list is brought to a weight in all", async () => {
  const answers = await last("take 200 g butter, 120 g sugar, 80 g whites up to 1 kg in total");
  expect([figure(answers, "butter"), figure(answers, "whites")]).toEqual([500, 200]);
});

it("the chocolate that it is settled on", async () => {
  const second = await last("we will go with the dark, tell me the cream for 200 g");
  expect(figure(second, "cream")).toBe(160);
});

describe("which were filled when", () => {
  it("is of the past, behind others too", async () => {
    const [answer] = await last("filled on the 12th, still ok?", "And those filled on the 10th?");
    expect(answer?.headline).toContain("2026-03-16");
  });

  it("and whether they may still be handed out", async () => {
    const [answer] = await last("i filled them on the 6th, can they still go out today");
    expect(answer?.headline).toMatch(/^No\b.*2026-03-12/);
  });
});

it("her size is kept from an order", async () => {
  const { one, record } = baker();
  expect(await one("save my size, i pipe 3.5 cm")).toMatchObject({ tool: "bench", status: "answered" });
  expect(record().bench.diameter_mm).toBe(35);
});

it("a note under a day", async () => {
  expect((await last("put this under wednesday: lavender, tops wrinkled"))[0]?.headline).toContain(
    "Wed 11 Mar",
  );
});
