/**
 * Courteous talk: the scene first, then what is asked, with modal verbs and what others say. Sums by hand: a concentrated
 * flavor 3 to 5 % of buttercream and 3 to 4 % of ganache, citric acid 0.1 to 0.3 % (the table, from memory); a stick of butter is 113 g
 * (USDA SR, NDB 01001); price = cost / (1 − margin).
 */
import { describe, expect, it } from "vitest";
import { plainly } from "../../src/intents/text/phrases.ts";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker } from "../support/ask.ts";
import { type Case, expectFigures } from "../support/figures.ts";

async function last(turns: string): Promise<Answer[]> {
  const { ask } = baker();
  let answers: Answer[] = [];
  for (const turn of turns.split("|")) answers = await ask(turn);
  return answers;
}

const rose = "260 g of buttercream, how much rose flavouring?|";

describe("another bowl of the same flavor: 340 g at 3 to 5 %", () => {
  const cases: string[] = [
    "my mum says i should always allow a bit extra, what would it be for 340g?",
    "What would that come to for 340 g?",
    "Perhaps I ought to do more. How much would it want for 340 g?",
    "my sister thinks that's stingy, so what would it be if I made 340 g?",
    "what should it be for nearer 340 g?",
    "is that enough for 340 g?",
    "I've since found there's 340 g. Would that change it?",
    "there's 340 g in the bowl, does that make a difference?",
  ];
  it.each(cases)("%s", async (said) => {
    const [answer] = await last(rose + said);
    const flavor = answer?.figures?.find(({ name }) => name === "flavor");
    expect([flavor?.low, flavor?.high]).toEqual([expect.closeTo(10.2, 6), expect.closeTo(17, 6)]);
    expect(answer?.figures?.some(({ name }) => name === "share")).toBe(false);
  });

  it("keeps the flavor and its share", async () => {
    const [answer] = await last(
      "at 4 percent how much lime flavouring in 310 g of buttercream|what would that come to for 340 g?",
    );
    // 340 x 4 %
    expect(answer?.figures?.[0]?.value).toBeCloseTo(13.6, 6);
    expect(answer?.headline).toMatch(/lime/);
  });

  // 20 / 260 and 120 / 260
  it.each([
    ["would it be ok with 20 g?", 20 / 2.6],
    ["i've put in 120 g. is that too much?", 120 / 2.6],
    ["is 120 g too much?", 120 / 2.6],
  ])("but it went in: %s", async (said, share) => {
    const [answer] = await last(rose + said);
    expect(answer?.figures?.find(({ name }) => name === "share")?.value).toBeCloseTo(share, 6);
  });
});

const doses: Case[] = [
  [
    "My raspberry buttercream tastes dreadfully sweet, and my mum says a touch of citric acid would fix it. There's 250 g of it, so how much might I add?",
    "dose",
    { "citric acid": [0.25, 0.75] },
  ],
  // 11 / 240
  [
    "I wasn't looking and tipped 11 g of hokey pokey flavouring into 240 g of ganache. Would you say that's too much?",
    "dose",
    { share: 11 / 2.4 },
  ],
  // the range itself, beside its grams
  [
    "what percentage of rose flavour goes in 200 g of buttercream?",
    "dose",
    { flavor: [6, 10], range: [3, 5] },
  ],
  [`${rose}what percentage is that?`, "dose", { flavor: [7.8, 13], range: [3, 5] }],
  // what went in is still mended: 14 / 5 % - 200 = 80, 14 / 4 % - 200 = 150
  [
    "14 g rose went into 200 g buttercream, how much buttercream would fix it?",
    "dose",
    { "add base": [80, 150] },
  ],
];
it.each(doses)("%s", async (...each) => expectFigures(...each));

describe("pieces that are folded in have no dose", () => {
  it.each([
    "A colleague says crushed biscuit crumbs are wonderful in it. What percentage of biscuit crumbs should I put in 200 g of buttercream?",
    "how many sprinkles in 200 g buttercream",
    "how much popping candy should go in 200 g ganache",
    "how much chopped hazelnuts in 200 g buttercream",
    "how much cookie crumbs for 300 g buttercream",
    "how much feuilletine in 200 g ganache",
  ])("%s", async (said) => {
    const [answer] = await last(said);
    expect([answer?.status, answer?.figures ?? []]).toEqual(["declined", []]);
  });

  it("but their taste has", () =>
    expectFigures("how much honeycomb flavour in 200 g ganache", "dose", { flavor: [6, 8] }));
});

// 600 g in 6 parts
describe("parts in the order of their names", () => {
  it.each([
    "I'm colouring for the anniversary do and have 600 g of batter. Could I get it divided 3 to 2 to 1 for pink, green and white?",
    "i have 600 g batter. Could I have it split 3:2:1 between pink, green and white?",
    "There's 600 g of batter here. Might it be shared out 3 to 2 to 1 between pink, green and white?",
    "We're doing school colours and I've 600 g of batter. I'd like it parted 3 to 2 to 1 for pink, green and white",
    "i've got 600 g of batter in front of me. I want it in pink, green and white, 3 to 2 to 1",
    "split 600 g of batter 3:2:1 pink/green/white",
    "split 600 g batter 3 pink to 2 green to 1 white",
    "I'm dyeing some batter, 600 g of it. Could it be divided in the ratio 3 to 2 to 1 for pink, green and white?",
  ])("%s", async (said) => expectFigures(said, "split", { pink: 300, green: 200, white: 100 }));

  it("two names for three parts: nobody said whose they are", () =>
    expectFigures("split 600 g batter 3 to 2 to 1 for pink and green", "split", { "part 1": 300 }));
});

const sums: Case[] = [
  [
    "I can't face mental arithmetic before coffee. Could you tell me what 15 percent of 640 is?",
    "convert",
    { result: 96 },
  ],
  [
    "I've forgotten how percentages go. Can you work out what 15 percent of 640 comes to?",
    "convert",
    { result: 96 },
  ],
  ["I never was good at sums. May I ask what 18 times 24 is?", "convert", { result: 432 }],
  [
    "Sorry to be a bother. Could you possibly tell me what a third of 750 would be?",
    "convert",
    { result: 250 },
  ],
  [
    "A cousin overseas measures butter in sticks, which we don't really do here. How many grams would one and a half sticks be?",
    "convert",
    { result: 169.5 },
  ],
  ["Butter comes in sticks over there. How much is half a stick in grams?", "convert", { result: 56.5 }],
];
it.each(sums)("%s", async (...each) => expectFigures(...each));

describe("money of a country that has dollars", () => {
  it.each([
    ["It's NZ$11 of ingredients and NZ$4 of packaging, what price for a 40 % margin?", "NZD"],
    ["It's NZ$11 of ingredients and $4 of packaging, what price for a 40 % margin?", "NZD"],
    ["A$11 of ingredients and A$4 of packaging, what price for a 40 % margin?", "AUD"],
    ["AU$ 11 of ingredients and AU$ 4 of packaging, what price for a 40 % margin?", "AUD"],
    ["C$11 of ingredients and C$4 of packaging, what price for a 40 % margin?", "CAD"],
    ["CA$11 of ingredients and CA$4 of packaging, what price for a 40 % margin?", "CAD"],
    ["HK$11 of ingredients and HK$4 of packaging, what price for a 40 % margin?", "HKD"],
    ["S$11 of ingredients and S$4 of packaging, what price for a 40 % margin?", "SGD"],
    ["US$11 of ingredients and US$4 of packaging, what price for a 40 % margin?", "USD"],
    ["11 new zealand dollars of ingredients and $4 of packaging, what price for a 40 % margin?", "NZD"],
    ["my currency is nzd|$11 of ingredients and $4 of packaging, what price for a 40 % margin?", "NZD"],
    ["my currency is nzd|US$11 of ingredients and US$4 of packaging, what price for a 40 % margin?", "USD"],
    [
      "Could you set my currency to New Zealand dollars, NZD?|$11 of ingredients, $4 of packaging, what price for a 40 % margin?",
      "NZD",
    ],
    ["11 dollars of ingredients, 4 dollars of packaging, what price for a 40 % margin?", "USD"],
  ])("%s", async (said, code) => {
    const [answer] = await last(said);
    const price = answer?.figures?.find(({ name }) => name === "price");
    expect([price?.value, price?.unit]).toEqual([expect.closeTo(25, 6), code]);
  });

  it("a bare $ behind it stays what was said", async () => {
    const [answer] = await last(
      "It's NZ$11 of ingredients and NZ$4 of packaging, what price for a 40 % margin?|and if the packaging were $7?",
    );
    expect(answer?.figures?.find(({ name }) => name === "price")).toMatchObject({ unit: "NZD" });
    const [other] = await last("almond flour costs NZ$30 a kilo|and butter is $12 a kilo");
    expect(other?.figures?.[0]).toMatchObject({ value: expect.closeTo(12, 6), unit: "NZD" });
  });
});

describe("talk that was taken for something", () => {
  it.each([
    "I'm thinking of biking in on Monday. Will it be windy in the morning?",
    "I'm thinking of driving over on Saturday. Will it be busy in the afternoon?",
    "could you call the doctor",
  ])("is declined: %s", async (said) => {
    const answers = await last(said);
    expect(answers.map(({ status }) => status)).toEqual(["declined"]);
  });

  it.each([
    "I'm thinking of selling them on Monday. Will they be fresh in the morning?",
    "I filled these on the 5th. Can I still give them to my guests today?",
  ])("is still of keeping: %s", async (said) => {
    const answers = await last(said);
    expect(answers.map(({ tool, status }) => [tool, status])).toEqual([["keep", "answered"]]);
  });

  it.each([
    ["I've a call coming up and will certainly forget the oven. Could you remind me at ten to eleven?", 80],
    ["I'll forget the oven if I'm not careful. Could you set 12 minutes?", 12],
  ])("sets nothing: %s", async (said, left) => {
    const answers = await last(said);
    expect(answers.map(({ tool, figures }) => [tool, figures?.[0]?.value])).toEqual([["timer", left]]);
  });

  it("and a setting is still forgotten when ordered", async () => {
    const [answer] = await last("my oven is a fan oven|please forget my oven");
    expect(answer?.tool).toBe("bench");
  });

  it("what should be done this time is no note", async () => {
    const [answer] = await last(
      "The last batch cracked terribly and I'm still cross about it. How long should I let them rest this time?",
    );
    expect(answer?.headline).toMatch(/30 min/);
  });

  // 30 macarons: 60 shells and a tenth spare
  it("why so many is no matter of keeping", () =>
    expectFigures("24 macarons how much batter|I might make 30 to be safe. What would that be?", "shells", {
      shells: 66,
    }));
});

describe("timers", () => {
  it.each([
    "Would you set 50 minutes for resting and another 8 minutes for the oven to warm up?",
    "could you start 50 minutes for the rest and another 8 minutes for preheating?",
    "rest timer 50 min|and another 8 minutes for the oven to warm up?",
  ])("two of them: %s", async (said) => {
    const answers = await last(`${said}|what's running?`);
    expect(answers[0]?.figures?.map(({ value }) => value).sort()).toEqual([50, 8]);
  });

  it("more for the one that runs", () =>
    expectFigures("rest timer 30 min|another 10 minutes for the rest", "timer", { left: 40 }));

  it.each([
    "Might we call tray A lilac shells instead?",
    "Could I rename it to lilac shells, please?",
    "I'd rather call that lilac shells",
    "I think we should rename tray A to lilac shells",
  ])("another name: %s", async (said) => {
    const [answer] = await last(`25 minutes for tray A|${said}`);
    expect(answer?.headline).toMatch(/now called lilac shells/);
  });
});

describe("the record", () => {
  it("a timer that is told of is noted", async () => {
    const answers = await last("note: plum batch today, 8 out of 10, set the timer earlier next time");
    expect(answers.map(({ tool }) => tool)).toEqual(["note"]);
  });

  it.each([
    "And what have you got down for the tamarillo?",
    "what did I put down about the tamarillo?",
    "what do you have written for the tamarillo batch?",
    "what's on record for tamarillo?",
    "anything down for the tamarillo?",
  ])("%s", async (said) => {
    const [answer] = await last(
      `log a tamarillo batch, full shells, 7 out of 10|log a custard batch that came out hollow|Which of my batches were hollow?|${said}`,
    );
    expect([answer?.tool, answer?.headline]).toEqual(["recall", expect.stringMatching(/tamarillo.*7/)]);
  });

  it.each([
    "They're just out of the oven and look splendid. Please note today's plum batch as very tidy, and start the cool timer.",
    "I've just finished. Would you log a plum batch, 7 out of 10, and start the cool timer?",
    "Please put today's plum batch down as really pretty, and start the cool timer",
    "note today's plum batch as tidy, start the cool timer",
    "note: plum batch today, 8 out of 10, set a timer for 30 minutes",
  ])("a note and a timer: %s", async (said) => {
    const { ask, record } = baker();
    const answers = await ask(said);
    expect(answers.map(({ tool, status }) => [tool, status])).toEqual([
      ["note", "answered"],
      ["timer", "answered"],
    ]);
    expect(record().notes[0]).toMatchObject({ flavors: ["plum"] });
  });

  it.each([
    [
      "I bought a new bag of almond flour this week, 1 kg. Could you put it in the pantry?",
      "almond flour",
      1000,
    ],
    ["I got some icing sugar today, 2 kg. Could you add that to the pantry?", "powdered sugar", 2000],
    ["Dad brought me butter on Sunday, 500 g. Please add it to the pantry", "butter", 500],
  ])("stock: %s", async (said, name, grams) => {
    const { ask, record } = baker();
    await ask(said);
    expect(record().stock).toMatchObject([{ name, grams }]);
  });
});

it.each([
  ["tell me what 350 f comes to in celsius", "tell me what is 350 f in celsius"],
  // orders and questions of other matters stay as they are
  ["what 24 macarons come to", "what 24 macarons come to"],
  ["could you call me when it is done", "could you call me when it is done"],
  ["what have you got down for the oven?", "what have you got down for the oven?"],
  ["is it safe to be on the counter", "is it safe to be on the counter"],
  ["two cups of it, which i don't have. how much is that", "two cups of it. how much is that"],
])("put plainly: %s", (said, plain) => expect(plainly(said)).toBe(plain));
