/**
 * What lies, stands or waits in a kitchen and is no filled macaron: nobody is told to throw it out. The limits are those of
 * USDA FSIS, Danger Zone 40 °F - 140 °F: two hours, one above 32 °C, and none at 5 °C or below.
 */
import { describe, expect, it } from "vitest";
import { talk } from "../support/ask.ts";

it.each([
  "i spent 4 hours in the kitchen",
  "i was 3 hours at the market, good day",
  "i spent 3 hours at the market and sold 40",
  "i stood in the kitchen for 5 hours, still tired",
  "ive been in the kitchen 4 hours, still 20 to pipe",
  "we were 3 hours at the party, good macarons",
  "we waited 2 hours in the car, still worried",
  "the market was 6 hours outside, sold 30 boxes",
  "the bowl sat 4 hours on the side, ok?",
])("the baker herself, or a bowl: %s", async (say) => {
  const { headline } = await talk(say);
  expect(headline).not.toMatch(/throw|out of the fridge/i);
});

describe("shells that rest, or are to be filled yet", () => {
  it.each([
    "shells have been out for 3 hours on the counter, still ok to fill?",
    "macs sat out 2 hours before baking, ok?",
    "i let them sit 2 hours at room temp to dry, ok?",
    "piped and sat out 3 hours on the counter, still ok?",
    "they sat 45 min on the counter and still stick to my finger",
    "sat 1 hour on the counter, still tacky",
  ])("%s: no number of days and no verdict", async (say) => {
    const { tool, status } = await talk(say);
    expect([tool, status]).toEqual(["keep", "declined"]);
  });
  // 90 - 60, of the 30-60 min that shells rest (common practice)
  it("rested 90 min on the counter is judged as a rest", async () => {
    const { tool, headline } = await talk("rested 90 min on the counter, too long?");
    expect([tool, headline]).toEqual(["method", expect.stringMatching(/30 min past the 30-60 min/)]);
  });
});

it.each(["butter", "almond flour", "sugar"])("%s by itself has no rule here", async (what) => {
  const { status, headline } = await talk(`${what} sat on the counter for 3 hours, is it ok?`);
  expect([status, headline]).toEqual(["declined", expect.stringContaining(`no rule for ${what}`)]);
});

it("as cold as a fridge is no time out of it", async () => {
  const { tool, headline, of } = await talk(
    "a box sat 3 hours in the car with an ice pack at 4 °C, still ok?",
  );
  expect([tool, of("was out"), headline.slice(0, 4)]).toEqual(["keep", undefined, "Yes:"]);
});

it.each(["are macarons ok for a baby shower?", "are baby macarons ok to sell"])(
  "no baby is to eat them: %s",
  async (say) => {
    expect((await talk(say)).headline).not.toMatch(/raw/);
  },
);

describe("no question of tastes", () => {
  it.each(["what works best with a fan oven?", "what goes together first, sugar or whites"])(
    "%s",
    async (say) => {
      expect((await talk(say)).headline).not.toMatch(/tastes well together/);
    },
  );
});

it("work that was begun is no plan that was", async () => {
  const { headline } = await talk("36 macarons saturday 3pm", "i started work at 9 today");
  expect(headline).toMatch(/^Start /);
});

describe("a note, an order and a bowl said on the way", () => {
  it("the rest of a note is its minutes, and the macarons stay", async () => {
    const { of, headline } = await talk("note rose, 24 macarons, 8/10", "and rest was 40");
    expect(headline).toMatch(/24 macarons, rested 40 min/);
    expect(of("macarons")?.value ?? 24).toBe(24);
  });
  // 24 × 0.42 × 3.8² / 0.92 = 158.21 g (from memory); piping dark 1.25 : 1 (common practice)
  it("ganache for so many", async () => {
    const { of } = await talk("ganache for 24, dark, pipe it");
    expect([of("chocolate")?.value, of("cream")?.value]).toEqual([
      expect.closeTo((158.212174 * 1.25) / 2.25, 4),
      expect.closeTo(158.212174 / 2.25, 4),
    ]);
  });
  // 53 shells × 0.53 × 3.8² / 0.96 = 422.52 g, of it a half
  it("the batter of a plan is split", async () => {
    const { of } = await talk(
      "plan 24 for tomorrow 5pm lemon ganache",
      "what am i doing at 3",
      "split the batter half yellow half plain",
    );
    expect(of("yellow")?.value).toBeCloseTo((53 * 0.53 * 3.8 ** 2) / 0.96 / 2, 6);
  });
  // a flavor is 3 to 5 % (common practice): 9 / 5 % and 9 / 3 %
  it("what was put in is no bowl, where the bowl was asked for", async () => {
    const { of } = await talk("flavor it w coffee", "oops put 9 g in");
    expect([of("base")?.low, of("base")?.high]).toEqual([expect.closeTo(180, 6), expect.closeTo(300, 6)]);
  });
  it.each(["tray 1 went in 14 min", "tray 1 just went in, 14 min"])("%s: named by the tray", async (say) => {
    expect((await talk(say)).headline).toMatch(/^14 min on tray 1, /);
  });
  // 9 / 24 × 6
  it("what all of them cost, and a box of some", async () => {
    expect((await talk("price a box of 6 if ingredients cost 9 for all 24")).of("cost")?.value).toBeCloseTo(
      2.25,
      9,
    );
  });
});
