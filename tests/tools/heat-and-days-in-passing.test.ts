/**
 * What is said in few words: a day's short name with noon behind it, a heat on the other scale after something else was
 * answered, a spoon named first, a timer's usual length, what slid in by itself. Values by hand: 150 °C is 302 °F (NIST
 * SP 811, B.8); 3 to 5 % of 315 g are 9.45 to 15.75 g, at 4.928922 g a teaspoon 1.917 to 3.195 of them (NIST Handbook
 * 44, Appendix C for the spoon, its ml counted as grams); a concentrated flavor is 3 to 5 % of a buttercream and 3 to 4 % of a ganache (common practice). How long a
 * step takes by itself is from data/rules/step-times.ts: shells rest 30 min, bake 15, a ganache sets 45 (common practice).
 * The clock stands on Saturday 14 March 2026.
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
const figures = (answers: readonly Answer[]) => answers.flatMap((each) => each.figures ?? []);

describe("a day by its short name", () => {
  it.each([
    ["24 macarons wed noon", "Wed 18 Mar 12:00"],
    ["20 macs tue noon no rest, buttercream only", "Tue 17 Mar 12:00"],
    ["24 macarons sat at 4 pm", "Sat 21 Mar 16:00"],
    ["48 macs thu by noon please", "Thu 19 Mar 12:00"],
    ["30 macs fri 17:30", "Fri 20 Mar 17:30"],
  ])("%s", async (said, ready) => expect((await last(said))[0]?.headline).toContain(`ready ${ready}`));

  it.each([
    "i sat at 200 g of buttercream all day, how much flavor",
    "200 g buttercream in the sun, how much flavor",
  ])("is none in %s: 3 to 5 % of 200 g", async (said) => {
    const answers = await last(said);
    expect(answers.map(({ tool }) => tool)).toEqual(["dose"]);
    expect(figures(answers)).toMatchObject([{ name: "flavor", low: 6, high: 10 }]);
  });
});

describe("the heat that was told, on the other scale", () => {
  const heat = "what oven temperature for the shells";
  it.each([
    [[`${heat}, and start the bake timer`, "whats that in fahrenheit"]],
    [[heat, "timer 12 min", "whats the oven in f"]],
    [[heat, "and in f"]],
    [[heat, "batter for 24", "in f please"]],
  ])("%j", async (turns) =>
    expect(figures(await last(...turns))[0]).toMatchObject({ value: 302, unit: "°F" }),
  );

  it("is none where none was told", async () => {
    expect(figures(await last("timer 12 min", "and in f")).some(({ unit }) => unit === "°F")).toBe(false);
  });
});

describe("a spoon named first", () => {
  it.each(["tsp of flavor 315g buttercream no scale", "teaspoons of rose for 315 g buttercream"])(
    "%s",
    async (said) => {
      const [spoons] = figures(await last(said));
      expect(spoons).toMatchObject({ unit: "tsp" });
      expect(spoons?.low).toBeCloseTo(9.45 / 4.928922, 4);
      expect(spoons?.high).toBeCloseTo(15.75 / 4.928922, 4);
    },
  );

  it("is one where it went in", async () => {
    const [answer] = await last("tsp vanilla in 200 g buttercream is that too much");
    // 4.928922 / 200 = 2.4645 %
    expect(answer?.figures?.[0]).toMatchObject({
      name: "share",
      unit: "%",
      value: expect.closeTo(2.4645, 4),
    });
    expect(answer?.headline).toMatch(/^2\.46 %: under the 3-5 %/);
  });
});

describe("a timer's usual length", () => {
  it.each([
    ["melted in, looks lovely, now put the ganache on its usual timer", 45],
    ["put the rest on its usual timer", 30],
    ["set the bake with its normal timer", 15],
  ])("%s", async (said, minutes) =>
    expect(figures(await last(said))).toContainEqual(
      expect.objectContaining({ value: minutes, unit: "min" }),
    ),
  );
});

describe("what went in by itself", () => {
  it.each([
    "i think about 9 g slid in while i was talking, did i get away with it",
    "about 9 g plopped in, is that alright",
    "9 g of it slopped in, too much?",
  ])("%s", async (said) => {
    const [answer] = await last("how much flavor for 300 g buttercream", said);
    expect(answer?.figures?.[0]).toMatchObject({ name: "share", value: 3 });
  });

  it("is helped with by one answer", async () => {
    const answers = await last(
      "help 11 g of toffee flavouring slipped into 220g milk ganache, how much more ganache",
    );
    expect(answers.map(({ tool }) => tool)).toEqual(["dose"]);
    // down to 4 %: 11 / 0.04 - 220 = 55 g; to the middle of 3 and 4 %: 11 / 0.035 - 220 = 94.29 g
    expect(answers[0]?.figures?.[0]).toMatchObject({
      name: "add base",
      low: expect.closeTo(55, 6),
      high: expect.closeTo(94.29, 2),
    });
  });
});

describe("every last one", () => {
  it.each([
    "every last one has a peak standing up on it, what did i do",
    "theres a little hat on all of them",
  ])("%s", async (said) =>
    expect((await last(said))[0]).toMatchObject({
      tool: "trouble",
      status: "answered",
      headline: expect.stringMatching(/^Peaks that stay on top/),
    }),
  );
});
