/**
 * What was left out too long never becomes good by a later turn. Sums worked by hand at Saturday 2026-03-14, 9:30: 2 h
 * out of the fridge in all, 1 h above 32 °C (USDA FSIS); 7 days in the fridge, best within 5 (FDA Food Code 2022,
 * 3-501.17); fridge 5 °C or below (3-501.16); freezer −18 °C, 2 months (from memory); whites 71 °C, 160 °F (USDA FSIS).
 */
import { describe, expect, it } from "vitest";
import { baker } from "../support/ask.ts";

const at = "2026-03-14T09:30:00";

async function last(turns: string) {
  const { one } = baker({ now: at });
  let answer: Awaited<ReturnType<typeof one>> | undefined;
  for (const turn of turns.split("|")) answer = await one(turn);
  if (!answer) throw new Error("no turn");
  return answer;
}

/** Turns, and how the last headline begins and goes on. */
const headlines: [turns: string, headline: RegExp][] = [
  // by the clock: 7:00 to 9:30, 6:00 to 9:30
  ["they were out since 7am|its 9:30 now, ok?", /^No: 2\.5 h .*2 h/],
  ["they were out since 7am|its 9:30 now, ok?|since 6", /^No: 3\.5 h .*2 h/],
  ["they were out since 7am|its 9:30 now, ok?|use by?", /^No: 2\.5 h/],
  // her own clock says 10:30: 8:00 to 10:30, then 9:00 to 10:30 in the heat
  ["took the boxes out at 8, now 10.30 ok?", /^No: 2\.5 h .*2 h/],
  ["took the boxes out at 8, now 10.30 ok?|and if its 35 degrees outside", /^No: 2\.5 h .*1 h.*35 °C/],
  ["took the boxes out at 8, now 10.30 ok?|and if its 35 degrees outside|since 9", /^No: 1\.5 h .*1 h/],
  [
    "took the boxes out at 8, now 10.30 ok?|and if its 35 degrees outside|since 9|ok fridge again, use by?",
    /^No: 1\.5 h .*1 h/,
  ],
  // each told in a turn of its own: 120 min and part of it hot, 135, 150, 130 and 125 min; 8:00 to 11:00
  ["been out 90 min|then 30 min at 35 degrees", /^No: 2 h .*1 h.*35 °C/],
  ["been out 90 min|and 45 min this morning", /^No: 2\.25 h/],
  ["they were out 100 min|today 50 min, ok?", /^No: 2\.5 h/],
  ["they were out 100 min yesterday|30 min today", /^No: 2 h 10 min/],
  ["been out 90 min|35 min on the table as well", /^No: 2 h 5 min/],
  ["took the boxes out at 8, now 11 ok?", /^No: 3 h/],
  ["they were out 90 min|no 60 min", /^Yes, so far: 1 h of the 2 h/],
  // 90 + 60 = 150 min; + 30 = 180
  ["been out 90 min then another 60 later, ok?", /^No: 2\.5 h/],
  ["been out 90 min then another 60 later, ok?|just 30 more later", /^No: 3 h/],
  // 8:00 to 9:30 and 45 min: 135 min
  ["out since 8, ok?|another 45 min", /^No: 2\.25 h/],
  // 90 + 60 = 150; 90 + 20 = 110 of 120, 10 left
  ["they were out 1.5 h yesterday and 1 h today|ok?", /^No: 2\.5 h/],
  [
    "they were out 1.5 h yesterday and 1 h today|ok?|only 20 min today",
    /^Yes, so far: 1 h 50 min of the 2 h.*10 min left/,
  ],
  [
    "they were out 1.5 h yesterday and 1 h today|only 20 min yesterday",
    /^Yes, so far: 1 h 20 min of the 2 h.*40 min left/,
  ],
  // 20 + 90 = 110 min, part of it above 32 °C: 1 h
  [
    "filled macs in a hot car 20 min 38 degrees|and yesterday 90 min at the fair",
    /^No: 1 h 50 min .*1 h .*part of it at 38 °C/,
  ],
  [
    "filled macs in a hot car 20 min 38 degrees|and yesterday 90 min at the fair|so total?",
    /^No: 1 h 50 min/,
  ],
  [
    "filled macs in a hot car 20 min 38 degrees|and yesterday 90 min at the fair|still ok to sell",
    /^No: 1 h 50 min/,
  ],
  [
    "filled macs in a hot car 20 min 38 degrees|and yesterday 90 min at the fair|put in fridge for tomorrow then",
    /^No: 1 h 50 min/,
  ],
  [
    "filled macs in a hot car 20 min 38 degrees|and yesterday 90 min at the fair|put in fridge for tomorrow then|use by?",
    /^No: 1 h 50 min/,
  ],
  // neither the fridge nor a day makes them good
  ["out 3 hours at market today still ok|put em back in the fridge til when", /^No: 3 h .*Throw it out/],
  ["out 3 hours at market today", /^No: 3 h/],
  ["out 3 hours at market today|put em back in the fridge, till when|made them tuesday actually", /^No: 3 h/],
  ["they sat out overnight, ok?|made them thursday, use by?", /^No: a night out/],
  // how cold
  ["freezer -12 ok?", /^Not cold enough: −12 °C .*−18 °C/],
  ["freezer is at -20, ok?", /^Cold enough: −20 °C/],
  ["fridge at 8 degrees ok|power was out 3 hours|freezer -12", /^Not cold enough: −12 °C/],
  ["freezer -12 ok?|and fridge at 6", /^Not cold enough: 6 °C .*5 °C/],
  ["freezer -12 ok?|and fridge at 6?", /^Not cold enough: 6 °C .*5 °C/],
  ["freezer -12 ok?|and fridge at 6|is minus 15 cold enough", /^Not cold enough: −15 °C/],
  ["freezer -12 ok?|how long can i freeze in it", /^Not cold enough: −12 °C/],
  // whites: 65 °F is 18.3 °C; 165 °F is over 160
  ["do i need to heat the whites|is 65 degrees enough for the whites|celsius", /^No: 65 °C/],
  ["do i need to heat the whites|is 65 degrees enough for the whites|f", /^No: 65 °F \(18\.3 °C\)/],
  ["do i need to heat the whites|is 65 degrees enough for the whites|f|and 165", /^Yes: 165 °F \(73\.9 °C\)/],
  ["do i need to heat the whites|is 65 degrees enough for the whites|f|and 75", /^No: 75 °F \(23\.9 °C\)/],
];

describe("what was said of keeping holds in the turns behind it", () => {
  it.each(headlines)("%s", async (turns, headline) => {
    const answer = await last(turns);
    expect(answer.tool).toBe("keep");
    expect(answer.status).toBe("answered");
    expect(answer.headline).toMatch(headline);
  });
});

const questions: [turns: string, question: RegExp][] = [
  ["outside 33 degrees|can i put them back in fridge", /^How long were they out/],
  [
    "outside 33 degrees|can i put them back in fridge|made wednesday can i still eat them today",
    /^How long were they out/,
  ],
  ["do i need to heat the whites|is 65 degrees enough for the whites", /°C or °F/],
];

describe("what can't be told without it is asked", () => {
  it.each(questions)("%s", async (turns, question) => {
    const answer = await last(turns);
    expect(answer.status).toBe("asking");
    expect(answer.headline).toMatch(question);
  });
});

describe("what wasn't out too long keeps its days", () => {
  it.each([
    // 20 min of the 1 h; made on Wednesday the 11th, day 7 is the 17th
    [
      "outside 33 degrees|can i put them back in fridge|20 min|made wednesday can i still eat them today",
      /^Yes, today.*17 Mar/,
    ],
    ["out 45 min, ok?|made thursday, use by?", /use by Wed 18 Mar/],
    ["out 3 hours at market, ok?|the next batch, how long in the fridge", /^7 days/],
    ["can they be out 3 hours|how long in the fridge then", /^7 days/],
  ] as [string, RegExp][])("%s", async (turns, headline) => {
    expect((await last(turns)).headline).toMatch(headline);
  });

  it("starts no timer for what stood at a market", async () => {
    const { one, record } = baker({ now: at });
    await one("out 3 hours at market today");
    await one("put em back in the fridge, till when");
    expect(record().timers).toEqual([]);
  });

  it("starts no timer for how cold a fridge is", async () => {
    const { one, record } = baker({ now: at });
    await one("freezer -12 ok?");
    await one("and fridge at 6");
    expect(record().timers).toEqual([]);
  });
});
