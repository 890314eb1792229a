/** Notes, timers, settings, stock and plans ordered in other words than "note", "rename", "set" and "plan". */
import { describe, expect, it } from "vitest";
import { lastOf } from "../support/ask.ts";

const figureOf = (
  answer: { figures?: readonly { name: string; value?: number }[] } | undefined,
  name: string,
) => answer?.figures?.find((each) => each.name === name)?.value;

/** The last turn's first answer. */
const answerTo = async (...turns: string[]) => (await lastOf(...turns))[0];

describe("a timer gets another name", () => {
  it.each([
    "the syrup one should be named caramel",
    "the syrup timer ought to be called caramel",
    "i want the syrup one called caramel",
    "can the syrup one be called caramel instead",
    "give it the name caramel",
    "its name is caramel",
    "label that one caramel",
    "that's actually the caramel, rename it",
  ])("%s", async (turn) => {
    const answer = await answerTo("timer 20 minutes for syrup", turn);
    expect(answer?.headline).toBe("syrup is now called caramel. 20 min left on caramel, rings 9:50");
  });

  it("takes no new timer and no question for a name", async () => {
    expect((await answerTo("timer 20 min for syrup", "i want a timer called caramel"))?.status).toBe(
      "asking",
    );
    expect((await answerTo("timer 20 min for syrup", "what is it called"))?.headline).toContain("syrup");
  });
});

describe("one more timer, and another length", () => {
  it.each(["set one up for the cream", "start one for the cream", "get one going for the cream"])(
    "%s: asks how long",
    async (turn) => {
      expect((await answerTo(turn))?.question).toBe("How long shall the cream timer run?");
      expect(figureOf(await answerTo(turn, "6 minutes"), "left")).toBe(6);
    },
  );

  // an hour and a quarter is 75 min; a quarter of an hour less is 60, ten more 70
  it("times a ganache that firms up, and finds no fault in it", async () => {
    const first = "1h15 for the choc ganache to firm up, time it";
    expect(figureOf(await answerTo(first), "left")).toBe(75);
    expect(figureOf(await answerTo(first, "take a quarter of an hour off"), "left")).toBe(60);
    const both = [first, "take a quarter of an hour off", "put ten minutes back on"] as const;
    expect(figureOf(await answerTo(...both), "left")).toBe(70);
    expect((await answerTo("ganache to firm"))?.tool).toBe("trouble");
    expect((await answerTo("ganache not firming up after 2 hours"))?.tool).toBe("trouble");
  });

  it.each([
    ["stretch that by ten", 32],
    ["shorten by 4", 18],
    ["cut it by 5 please", 17],
    ["syrup wants another 3", 25],
    ["extend it to 30", 30],
    ["extend the syrup one to 30", 30],
    ["shorten the syrup one to 10 min", 10],
    ["22 is too short, set 25", 25],
  ])("22 min, then %s", async (turn, left) => {
    expect(figureOf(await answerTo("timer 22 min for syrup", turn), "left")).toBe(left);
  });

  it("takes a tray's number for no length", async () => {
    expect(figureOf(await answerTo("timer 22 min for tray 2", "shorten tray 2 to 18 min"), "left")).toBe(18);
    expect(figureOf(await answerTo("timer 22 min for blue", "blue needs 2 more"), "left")).toBe(24);
  });
});

describe("notes", () => {
  // the suite's clock stands on Saturday, 14 March 2026
  it.each([
    ["and from thursday: fig batch, shiny, 9/10", "Noted for Thu 12 Mar: fig, 9/10"],
    ["also wednesday's: fig, shiny, 9/10", "Noted for Wed 11 Mar: fig, 9/10"],
    ["thursdays one: fig, cracked, 4/10", "Noted for Thu 12 Mar: fig, cracked tops, 4/10"],
    ["and friday was fig, no feet at all", "Noted for yesterday: fig, no feet"],
    ["next one: fig batch, cracked, 4/10", "Noted for today: fig, cracked tops, 4/10"],
    ["and the rose batch rested 40 min", "Added: rose, rested 40 min, 7/10"],
  ])("behind a note: %s", async (turn, headline) => {
    expect((await answerTo("note: rose batch 7/10", turn))?.headline).toBe(headline);
  });

  it("takes an order for a day to come for no batch", async () => {
    const answer = await answerTo("note: rose batch 7/10", "and for tuesday 24 vanilla macarons");
    expect(answer?.tool).toBe("day");
  });

  it.each([
    ["remember for next time: rose batch, 4 % flavor tasted soapy", "rose"],
    ["remember the rose batch tasted soapy at 4 %", "rose"],
    ["remember that the lemon batch was too wet", "lemon"],
    ["for next time: lemon batch, 5 % was too sour", "lemon"],
    ["add to my baking log, 5 march, speculoos batch, great", "speculoos"],
    ["put into my baking diary, lemon batch, cracked tops", "lemon"],
  ])("%s", async (turn, word) => {
    const answer = await answerTo(turn);
    expect(answer?.tool).toBe("note");
    expect(answer?.headline).toMatch(/^Noted for/);
    expect(answer?.headline).toContain(word);
  });

  it("keeps advice out of what a batch had", async () => {
    expect(figureOf(await answerTo("for the future: coffee batch, bake 2 min less"), "bake")).toBeUndefined();
    expect(figureOf(await answerTo("remember: lemon batch baked 14 min at 150"), "bake")).toBe(14);
  });

  it("leaves settings and questions alone", async () => {
    expect((await answerTo("remember my tray has 24 circles"))?.tool).toBe("bench");
    expect((await answerTo("remember how much lemon flavor in 200 g buttercream"))?.tool).toBe("dose");
  });
});

describe("the bench", () => {
  it.each([
    ["new silicone mat: twenty circles on it, use that", { "shells a tray": 20 }],
    ["bought a silicone mat with 24 outlines on it", { "shells a tray": 24 }],
    ["my sheet pan measures 450 x 350 mm", { "tray width": 450, "tray depth": 350 }],
    ["our tray's size is 45 x 35 cm", { "tray width": 450, "tray depth": 350 }],
    // 18 in = 457.2 mm, 13 in = 330.2 mm
    ["my cookie sheet is 18 x 13 in", { "tray width": 457.2, "tray depth": 330.2 }],
    // several in one breath: none is lost
    ["my usual diameter is 45 mm and my mat holds 24", { "shells a tray": 24, "shell diameter": 45 }],
    ["my rest time is 40 minutes and my bake time is 15 minutes from now on", { rest: 40, bake: 15 }],
    ["my tray takes 20 and two trays fit in the oven at once", { "shells a tray": 20, "trays at once": 2 }],
    ["set my shell size to 45 mm, my tray to 24", { "shells a tray": 24, "shell diameter": 45 }],
    ["remember: 45 mm shells, 24 to a tray, fan oven", { "shells a tray": 24, "shell diameter": 45 }],
  ])("%s", async (turn, figures) => {
    const answer = await answerTo(turn);
    expect(answer?.tool).toBe("bench");
    for (const [name, value] of Object.entries(figures)) expect(figureOf(answer, name)).toBeCloseTo(value, 6);
  });

  it.each([
    "what do you know about my kitchen",
    "what have you got saved about me",
    "hows my kitchen set up",
    "tell me what you know of my kitchen",
    "list my kitchen details",
  ])("%s", async (turn) => {
    expect(figureOf(await answerTo("my tray holds 24", turn), "shells a tray")).toBe(24);
  });

  it("makes batter of circles that are asked about", async () => {
    expect((await answerTo("a mat of 30 circles, how much batter"))?.tool).toBe("shells");
  });
});

describe("stock that came in", () => {
  it("is put there, or asked about, and never scaled to", async () => {
    expect(figureOf(await answerTo("butter arrived, 500 g"), "butter")).toBe(500);
    expect(figureOf(await answerTo("just got 750 g almond flour delivered"), "almond flour")).toBe(750);
    const opened = await answerTo("i opened a new bag of powdered sugar, 1 kg");
    expect([opened?.tool, opened?.status]).toEqual(["shelf", "asking"]);
  });
});

describe("plans", () => {
  it.each([
    ["wedding favours, forty eight of them, on the 20th at 16:00. timetable pls", 48],
    ["60 party favors for saturday 3pm, plan please", 60],
    ["baby shower treats: 40, thursday 5 pm, schedule", 40],
    ["plan 36 for tuesday noon", 36],
  ])("%s", async (turn, macarons) => {
    expect((await answerTo(turn))?.headline).toContain(`for ${macarons} macarons`);
  });

  it.each([
    "wedding for 60 guests on the 20th at 16:00, timetable pls",
    "treats, 40 guests, saturday 3 pm, plan it",
  ])("%s: people are no macarons", async (turn) => {
    expect((await answerTo(turn))?.question).toBe("How many macarons?");
  });

  it("a plan that was dropped isn't made again by a question", async () => {
    const order = "24 macarons for monday 3 pm, plan it";
    expect((await answerTo(order, "drop it"))?.headline).toMatch(/^Dropped/);
    expect((await answerTo(order, "cancel the plan", "what do i have planned"))?.status).toBe("impossible");
    expect((await answerTo(order, "what do i have planned"))?.headline).toContain("24 macarons");
  });
});

describe("an amount that is found wrong", () => {
  // $10 at a margin of 50 %: 10 / 0.5 = 20; at 40 %: 10 / 0.6 = 16.67
  it.each([
    ["60 is too greedy, use 50", 20],
    ["60 seems high, go with 40", 10 / 0.6],
    ["no, 60 is way too steep, make it 50", 20],
  ])("%s", async (turn, price) => {
    expect(figureOf(await answerTo("ingredients $10, margin 60 %", turn), "price")).toBeCloseTo(price, 6);
  });

  it("shares cocoa out as any other name", async () => {
    // 290 x 0.7 = 203, 290 x 0.3 = 87
    const answer = await answerTo("share 290 g buttercream out 70 % cocoa 30 % mint");
    expect(answer?.figures?.map((each) => each.value)).toEqual([203, 87]);
  });

  it("batter before its weight: weights", async () => {
    // the house formula, 100 : 130 : 130 : 100 of 460 g, times 1.25
    const answer = await answerTo("batter needed 575g, weights please");
    expect(figureOf(answer, "almond flour")).toBeCloseTo(162.5, 6);
  });
});
