/**
 * An order or a question behind a note, a timer behind a question that holds no amount, several timers in one breath, a
 * timer that is put off in words, and sums of money in another order. Expected values are worked by hand.
 */
import { describe, expect, test } from "vitest";
import type { Answer } from "../../src/tools/contract/index.ts";
import { baker, lastOf } from "../support/ask.ts";

const toolsOf = (answers: readonly Answer[]) => answers.map(({ tool }) => tool);
const figure = (answer: Answer | undefined, name: string) =>
  answer?.figures?.find((each) => each.name === name)?.value;

/** Minutes left of each timer that is told of, by its name. */
const lefts = (answers: readonly Answer[]) =>
  answers.flatMap(({ items = [] }) => items).map(({ label, left }) => [label, left]);

describe("an order behind a note", () => {
  test.each([
    ["note plum batch spread flat, and give me a 20 min timer for the next tray", 20],
    ["note: lemon ones hollow, could i have a timer for 12 minutes", 12],
    ["write down that the fig ones came out lopsided, i need a 15 min timer too", 15],
    ["make a note, orange batch wrinkled, and let me have a quarter of an hour timer", 15],
    ["note matcha ones dull, ring me in 18 minutes", 18],
    ["note plum batch spread flat, let me know when 20 minutes are up", 20],
    ["note plum batch spread flat 20 min timer", 20],
    ["made plum today, spread flat, 6/10, save that. then 20 min timer", 20],
    // the bake timer's own time, 15 min, is common practice
    ["note plum ones flat, bake timer please", 15],
  ])("%s", async (said, minutes) => {
    const answers = await lastOf(said);
    expect(toolsOf(answers)).toEqual(["note", "timer"]);
    expect(figure(answers[1], "left")).toBe(minutes);
  });

  test.each([
    // 220 g × 3 % = 6.6 g at least
    ["note vanilla batch today full and smooth, how many grams of flavor for 220 g buttercream", "dose"],
    ["note strawberry ones cracked, how long do filled macarons keep in the fridge", "keep"],
    ["jot down that the pistachio tray browned, what's 300 f in c", "convert"],
    ["note coconut cracked, cost of a box is $4 what price at 60% margin", "cost"],
    ["note lavender batch 5 stars, scale the shells to 90 g whites", "scale"],
  ])("%s", async (said, tool) => {
    expect(toolsOf(await lastOf(said))).toEqual(["note", tool]);
  });

  test.each([
    "note fig batch and i set a timer of 20 min but they needed 25",
    "note fig batch: rested with a 30 min timer, feet fine",
    "note fig batch, use a 30 min timer for resting next time",
    "note plum flat, how long they rested was 40 min",
    "note plum flat, what i did was skip the rest",
    "note: set oven to 145, bake 14 min",
  ])("%s: all of it is the note", async (said) => {
    expect(toolsOf(await lastOf(said))).toEqual(["note"]);
  });
});

describe("a timer behind a question", () => {
  test.each([
    ["how long do the filled ones keep in the fridge, and half an hour timer so i remember", "keep", 30],
    ["can filled ones stay out overnight, and 20 min timer please", "keep", 20],
    ["do they freeze well, and an hour timer to take them out", "keep", 60],
    ["how long do i rest shells, and half an hour timer so i dont forget", "method", 30],
  ])("%s", async (said, tool, minutes) => {
    const answers = await lastOf(said);
    expect(toolsOf(answers)).toEqual([tool, "timer"]);
    expect(figure(answers[1], "left")).toBe(minutes);
  });

  test("a conversion behind how long they keep", async () => {
    // 3 × 28.349523125 g
    const answers = await lastOf("how long do filled ones keep in the freezer and 3 oz in g");
    expect(toolsOf(answers)).toEqual(["keep", "convert"]);
  });

  test("what each bowl gets is one question with the bowls", async () => {
    // 420 / 3 = 140 g; gel is 0.5 to 1.5 % of it
    const answers = await lastOf(
      "420 g batter into 3 bowls, how much each, and how much gel color for one of them",
    );
    expect(toolsOf(answers)).toEqual(["split", "dose"]);
    const gel = answers[1]?.figures?.[0];
    expect(gel?.low).toBeCloseTo(0.7, 6);
    expect(gel?.high).toBeCloseTo(2.1, 6);
  });
});

describe("several timers at once", () => {
  // cooling 30 min, a ganache's setting 45 min, a rest 30 min, a bake 15 min: common practice
  test.each([
    [
      "start one timer for cooling and one for the ganache, the usual times",
      [
        ["cool", 30],
        ["ganache", 45],
      ],
    ],
    [
      "put one on for cooling and one for the ganache",
      [
        ["cool", 30],
        ["ganache", 45],
      ],
    ],
    [
      "start one for resting, one for baking and one for cooling",
      [
        ["rest", 30],
        ["bake", 15],
        ["cool", 30],
      ],
    ],
    [
      "set timers for resting and baking, the standard times",
      [
        ["rest", 30],
        ["bake", 15],
      ],
    ],
    [
      "lemon ones 12 minutes, lime ones 12 minutes as well, start both timers",
      [
        ["lemon", 12],
        ["lime", 12],
      ],
    ],
    [
      "the lemon ones need 12 minutes, the lime ones too, start both timers",
      [
        ["lemon", 12],
        ["lime", 12],
      ],
    ],
    [
      "timers: rose 40 min, mint the same",
      [
        ["rose", 40],
        ["mint", 40],
      ],
    ],
  ])("%s", async (said, timers) => {
    expect(lefts(await lastOf(said))).toEqual(timers);
  });

  test("one without a time of its own is asked about", async () => {
    const answers = await lastOf("start a timer for resting and another for the oven, usual lengths");
    expect(answers.map(({ status }) => status)).toEqual(["answered", "asking"]);
  });

  const three = "timers: oven 15 min, meringue 6 min, syrup 4 min";
  test.each(["read me the timers", "read them out", "status of the timers", "run me through the timers"])(
    "%s",
    async (said) => {
      expect(lefts(await lastOf(three, said))).toEqual([
        ["syrup", 4],
        ["meringue", 6],
        ["oven", 15],
      ]);
    },
  );

  test.each([
    ["meringue gets 90 seconds more and the syrup one can stop", "meringue", 7.5],
    ["syrup may stop, oven gets 3 more", "oven", 18],
    ["syrup can go and give the oven 2 more", "oven", 17],
  ])("%s", async (said, name, minutes) => {
    const { ask, record } = baker();
    await ask(three);
    await ask(said);
    const timers = record().timers.map(({ label, state, due_ms, set_ms }) => ({
      label,
      state,
      min: (due_ms - set_ms) / 60_000,
    }));
    expect(timers.find(({ label }) => label === "syrup")?.state).toBe("stopped");
    expect(timers.find(({ label }) => label === name)?.min).toBe(minutes);
  });

  // 30 min of rest and so many more
  test.each([
    ["its damp in here, a quarter of an hour on top", 45],
    ["half an hour on top please", 60],
    ["on top of that 10 min", 40],
    ["they're sticky still, ten on top of that", 40],
  ])("%s", async (said, minutes) => {
    const [answer] = await lastOf("start the rest timer", said);
    expect(figure(answer, "left")).toBe(minutes);
  });
});

describe("sums of money", () => {
  // (9 + 3) / (1 − 0.6) = 30
  test.each([
    "price at 60 percent margin for $9 ingredients and $3 boxes",
    "price at 60 % margin: $9 ingredients, $3 boxes",
    "what price for $9 of ingredients and a $3 box at 60 percent margin",
  ])("%s", async (said) => {
    const [answer] = await lastOf(said);
    expect(figure(answer, "price")).toBeCloseTo(30, 6);
  });

  // 9 / 0.4
  test.each([
    "what price for $9 at 60 % margin",
    "price for $9 ingredients at 60 %",
    "what do i charge for a $9 box at 60 % margin",
    "what does a $9 box sell for at 60 % margin",
  ])("%s", async (said) => {
    const [answer] = await lastOf(said);
    expect(figure(answer, "price")).toBeCloseTo(22.5, 6);
  });

  test.each([
    "ingredients -$3, price at 50 % margin?",
    "cost is minus $3, price at 50%",
    "my box costs $-6, charge what at 70 %",
  ])("%s: no sum is below zero", async (said) => {
    const [answer] = await lastOf(said);
    expect(answer?.status).toBe("impossible");
    expect(answer?.figures ?? []).toEqual([]);
  });

  test("a dash sets apart", async () => {
    // (3 + 1) / 0.5
    const [answer] = await lastOf("ingredients: $3 - packaging: $1, price at 50 % margin");
    expect(figure(answer, "price")).toBeCloseTo(8, 6);
  });

  // 1 − 9.80 / 24
  test.each([
    "and if i go down to €24",
    "what if i drop to €24",
    "suppose i took it down to €24",
    "and if i only get €24",
    "what about lowering to 24",
    "i might go as low as €24",
  ])("%s: the price", async (said) => {
    const [answer] = await lastOf(
      "my dozen sells for €28 and making it costs me €9.80, what margin is that",
      said,
    );
    expect(figure(answer, "margin")).toBeCloseTo(59.166667, 5);
  });

  test("another margin, where it was asked what it may cost", async () => {
    const first = "people pay me €20 a box, for a 65 % margin what may it cost at most";
    // 20 × 0.3, and then 24 × 0.3
    expect(figure((await lastOf(first, "70 %?"))[0], "cost")).toBeCloseTo(6, 6);
    expect(figure((await lastOf(first, "70 %?", "and at €24"))[0], "cost")).toBeCloseTo(7.2, 6);
  });
});

describe("whites, behind a mix and its timer", () => {
  // sugar 1.5 and butter 2.5 times the whites
  test.each(["only 88 g whites came out", "my whites came to 88 g", "the eggs only gave 88 g of whites"])(
    "%s",
    async (said) => {
      const [answer] = await lastOf(
        "swiss meringue buttercream with 110 g whites, what else, and time 12 minutes for heating them",
        said,
      );
      expect(answer?.tool).toBe("buttercream");
      expect(figure(answer, "butter")).toBeCloseTo(220, 6);
    },
  );

  // 33 g a white
  test.each([
    ["one broke, 5 egg whites", 165],
    ["one cracked so 3 whites", 99],
  ])("%s", async (said, grams) => {
    const [answer] = await lastOf(
      "shells from 6 egg whites, what do i weigh? then 40 minutes on the rest timer",
      said,
    );
    expect(answer?.tool).toBe("scale");
    expect(figure(answer, "whites")).toBeCloseTo(grams, 6);
  });
});
