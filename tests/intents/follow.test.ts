/**
 * Turns that lean on the one before: bare answers, corrections, "and for 300?". Figures are worked by hand from
 * data/rules: 3-5 % flavor in buttercream and 3-4 % in ganache; dark 1.25, milk 2 to pipe, milk 1.5 to pour; a shell of
 * 3.8 cm takes 0.53 × 3.8² g of batter, 4 % stays behind, 10 % spare.
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const short = (value: number | undefined) => (value === undefined ? "" : `${Number(value.toPrecision(6))}`);
const batter = (macarons: number, cm = 3.8) =>
  `${Number(((Math.ceil((22 * macarons) / 10) * 0.53 * cm * cm) / 0.96).toPrecision(6))} g`;

/** What one turn is answered with: "asking", "declined", or all figures as "6.9-11.5 g". */
async function turn(ask: ReturnType<typeof baker>["ask"], said: string): Promise<string[]> {
  const answers = await ask(said);
  return answers.flatMap(({ status, figures = [] }) =>
    status === "answered"
      ? figures.map(
          ({ value, low, high, unit }) =>
            `${value === undefined ? `${short(low)}-${short(high)}` : short(value)} ${unit}`,
        )
      : [status],
  );
}

/** Conversations: what is said, and a figure or state that has to be in the answer. */
const conversations: readonly (readonly (readonly [string, string])[])[] = [
  // both: the last two that were asked about
  [
    ["flavor for 150 g buttercream", "4.5-7.5 g"],
    ["and for 210", "6.3-10.5 g"],
    ["and at 4 percent for both", "6 g"],
  ],
  [
    ["flavor for 150 g buttercream", "4.5-7.5 g"],
    ["and for 210", "6.3-10.5 g"],
    ["now both at 4 %", "8.4 g"],
  ],
  // a correction reaches the topic that was given such a weight
  [
    ["200 g dark chocolate for a piping ganache, how much cream", "160 g"],
    ["how much salt for 300 g buttercream", "0.6-1.5 g"],
    ["no wait, i've 250 g choc", "200 g"],
  ],
  // another base, the same weight
  [
    ["how much flavor for 200 g buttercream", "6-10 g"],
    ["and if it's a white chocolate ganache instead, same weight", "6-8 g"],
  ],
  // a weight alone is of the part that was given before, or of the whole where it is nearer to that
  [
    ["400 g butter for swiss meringue buttercream, how much sugar and whites", "160 g"],
    ["and if i soften only 250 g", "100 g"],
  ],
  [
    ["smbc from 90 g whites", "450 g"],
    ["and for 600 g?", "120 g"],
  ],
  // the same once more
  [
    ["I have 230 g buttercream, how much flavor?", "6.9-11.5 g"],
    ["and now?", "6.9-11.5 g"],
  ],
  [
    ["I have 230 g buttercream, how much flavor?", "6.9-11.5 g"],
    ["and for 300?", "9-15 g"],
    ["and ganache?", "9-12 g"],
    ["no, 250 g", "7.5-10 g"],
    ["make it half a kilo", "15-20 g"],
  ],
  [
    ["how much flavor for my buttercream", "asking"],
    ["230", "6.9-11.5 g"],
  ],
  [
    ["how much flavor for my buttercream", "asking"],
    ["about 230 grams", "6.9-11.5 g"],
    ["sorry i meant 280", "8.4-14 g"],
  ],
  [
    ["how much flavor for my buttercream", "asking"],
    ["two thirty", "6.9-11.5 g"],
  ],
  [
    ["300 g chocolate, how much cream", "asking"],
    ["dark", "240 g"],
    ["and milk?", "150 g"],
    ["for a drip", "200 g"],
  ],
  [
    ["batter for 24 macarons", batter(24)],
    ["and for 36?", batter(36)],
    ["at 4.5 cm", batter(36, 4.5)],
  ],
  [
    ["smbc from 90 g whites", "225 g"],
    ["and 120?", "300 g"],
  ],
  [
    ["9 oz in grams", "255.146 g"],
    ["and 12?", "340.194 g"],
  ],
  [
    ["set a timer", "asking"],
    ["12 min", "12 min"],
    ["another one for 8 min", "8 min"],
  ],
  [
    ["how much salt in 300 g buttercream", "0.6-1.5 g"],
    ["and in 200 g?", "0.4-1 g"],
    ["what about lemon zest", "1-3 g"],
  ],
  [
    ["I have 230 g buttercream, how much flavor?", "6.9-11.5 g"],
    ["thanks!", ""],
    ["and for 300?", "9-15 g"],
  ],
  [
    ["split 450 g batter in three", "150 g"],
    ["how much gel color for one of them", "0.75-2.25 g"],
  ],
  [
    ["I have 230 g buttercream, how much flavor?", "6.9-11.5 g"],
    ["350 f in c", "176.667 °C"],
    ["how much flavor for 300 g buttercream", "9-15 g"],
  ],
  [
    ["how much flavor for 230 g buttercream", "6.9-11.5 g"],
    ["double it", "13.8-23 g"],
  ],
  [
    ["how much flavor for 230 g buttercream", "6.9-11.5 g"],
    ["half of that", "3.45-5.75 g"],
  ],
  [
    ["how much flavor for my buttercream", "asking"],
    ["set a timer for 12 min", "12 min"],
  ],
];

describe.each(conversations.map((turns) => ({ name: turns.map(([said]) => said).join(" / "), turns })))(
  "$name",
  ({ turns }) => {
    it("is followed", async () => {
      const { ask } = baker();
      for (const [said, told] of turns) {
        const answered = await turn(ask, said);
        if (told !== "") expect(answered, said).toContain(told);
      }
    });
  },
);

describe("what must not be followed", () => {
  it("nothing goes on past a blank line", async () => {
    const { ask } = baker();
    await ask("I have 230 g buttercream, how much flavor?");
    expect(await ask("")).toEqual([]);
    expect((await turn(ask, "and for 300?")).join()).toMatch(/^(?:asking|declined)$/);
  });

  it("a number alone says nothing at the start", async () => {
    for (const said of ["300", "and for 300?", "no, 250 g", "half of that"])
      expect(
        (await baker().ask(said)).map(({ status }) => status),
        said,
      ).not.toContain("answered");
  });

  it("a question about something else is no answer to what was asked", async () => {
    const { ask } = baker();
    await ask("how much flavor for my buttercream");
    expect((await turn(ask, "whats the weather tomorrow")).join()).toBe("declined");
    await ask("how much flavor for my buttercream");
    const [answer] = await ask("my shells cracked, why");
    expect(answer?.tool).toBe("trouble");
  });

  it("an answer of another kind is not taken for the one that was asked for", async () => {
    const { ask } = baker();
    await ask("how much flavor for my buttercream");
    const told = await turn(ask, "12 min");
    expect(told.join()).not.toMatch(/0\.36|0\.6 g/);
  });
});
