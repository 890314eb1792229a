/**
 * Time out of the fridge, in whatever words: never a timer. Two hours in all, one above 32 °C (USDA FSIS, Danger Zone
 * 40 °F - 140 °F); 71 °C (160 °F) for egg dishes (FoodSafety.gov, Safe Minimum Internal Temperatures).
 */
import { describe, expect, it } from "vitest";
import { baker, talk } from "../support/ask.ts";

const outAs = async (...turns: string[]) => {
  const { tool, headline, of } = await talk(...turns);
  return [tool, of("was out")?.value, headline.split(/[ :,]/)[0]];
};

describe("told without a word of keeping", () => {
  it.each([
    ["3 hours on the table, still ok?", 180, "No"],
    ["they sat 3 hours on the buffet", 180, "No"],
    ["3 h out the fridge", 180, "No"],
    ["macarons on the table 3h w ice pack", 180, "No"],
    ["is 2 hours 30 ok unrefrigerated", 150, "No"],
    ["left on the side 5 hours", 300, "No"],
    ["in my bag for 3 hours", 180, "No"],
    ["room temp 3 h ok?", 180, "No"],
    ["they were in the office 3 hours", 180, "No"],
    ["1 hour in the car ok", 60, "Yes"],
    ["is 90 minutes on a display safe", 90, "Yes"],
    ["4 hours on the counter", 240, "No"],
    // 4 - 1, by the clock on her wall, though ours stands at 9:30
    ["on the counter since 1pm, its 4 now, ok?", 180, "No"],
    ["they were out since 11, its 2 now", 180, "No"],
    // 9:15 - 7:00
    ["out since 7am, now 9:15", 135, "No"],
    // the clock of the tests stands at 9:30
    ["they sat on the terrace since 6:30, ok?", 180, "No"],
    ["in the car since 7am, still ok?", 150, "No"],
    ["they were on the buffet since half eight, ok?", 60, "Yes"],
    [
      "left a plate of filled macarons out for an hour and a half, can they go back in the fridge?",
      90,
      "Yes",
    ],
    ["if they were out 3 hours how many days in the fridge", 180, "No"],
    ["forgot the box in the car for 3 hours and its in the fridge since", 180, "No"],
    ["they sat out for 3 hours before i put them in the fridge, how long do they keep", 180, "No"],
  ])("%s", async (say, minutes, verdict) => {
    expect(await outAs(say)).toEqual(["keep", minutes, verdict]);
  });
  it("goes on behind the limit: 3 h of 2, 90 min of the one hour at 35 °C", async () => {
    expect(await outAs("left them out, how long is safe", "3 hrs ok?")).toEqual(["keep", 180, "No"]);
    expect(await outAs("its 35 c outside, how long can they stay out", "90 min ok?")).toEqual([
      "keep",
      90,
      "No",
    ]);
  });
  describe("a law: wherever it is and however it is asked, over 2 h is no and nothing is timed", () => {
    const places = [
      "on the table",
      "on the counter",
      "on the buffet",
      "in the car",
      "in the sun",
      "out of the fridge",
    ];
    const leads = ["", "they were ", "they sat ", "left them "];
    const asks = [
      "",
      ", ok?",
      ", still safe?",
      " is that fine",
      // where they went afterwards undoes nothing
      ", can they go back in the fridge?",
      ", now in the fridge, ok?",
      " then back in the fridge",
      ", can i freeze them",
    ];
    // all 3 × 6 × 4 × 8 of them
    it.each(places)("%s", async (place) => {
      for (const hours of [3, 5, 9])
        for (const lead of leads)
          for (const ask of asks) {
            const her = baker();
            const say = `${lead}${hours} hours ${place}${ask}`;
            const [answer] = await her.ask(say);
            expect([say, answer?.tool, answer?.headline.slice(0, 3), her.record().timers]).toEqual([
              say,
              "keep",
              "No:",
              [],
            ]);
          }
    });
  });
});

describe("and what is no time out of the fridge", () => {
  it.each([
    ["timer 3 hours on the table", 180],
    ["rest 30 min on the counter", 30],
    ["ganache 30 min on the counter", 30],
    ["shells 30 min on the counter", 30],
    ["40 min on the side to dry", 40],
  ])("%s", async (say, minutes) => {
    const { tool, of } = await talk(say);
    expect([tool, of("left")?.value]).toEqual(["timer", minutes]);
  });
  it.each(["3 hrs ok?", "is 14 min ok", "90 min fine?"])(
    "%s: of nobody knows what, and no timer",
    async (say) => {
      const her = baker();
      const [answer] = await her.ask(say);
      expect([answer?.status, her.record().timers]).toEqual(["declined", []]);
    },
  );
  it("sat behind they is no day, and beside an hour it is one", async () => {
    // on Saturday the 14th at 9:30 today's 16:00 can't be met, as they mature for 24 h: the next one
    expect((await talk("plan 24 macarons for sat 4 pm")).headline).toContain("ready Sat 21 Mar 16:00");
    expect((await talk("they sat 3 hours on the buffet")).tool).toBe("keep");
  });
});

it.each(["are they ok for a pregnant friend", "can my baby eat them", "safe for pregnant women?"])(
  "whom raw egg could harm: %s",
  async (say) => {
    const { tool, headline, of, cautions } = await talk(say);
    expect([tool, of("whites")?.value]).toEqual(["keep", 71]);
    expect(headline).toMatch(/^Only where no egg/);
    expect(cautions?.join(" ")).toMatch(/pregnant.*doctor/s);
  },
);
