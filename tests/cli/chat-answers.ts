/** Answers of every shape, for the tests of the chat. Invented numbers where no rule is tested. */
import type { Answer } from "../../src/tools/contract/index.ts";

export const dose: Answer = {
  tool: "dose",
  status: "answered",
  headline: "6.9 to 11.5 g flavor",
  figures: [{ name: "flavor", low: 6.9, high: 11.5, unit: "g" }],
  rule: { text: "3-5 % of the buttercream's weight", basis: "common practice" },
  assumed: ["a concentrated flavor"],
  cautions: ["The directions on your bottle are the limit."],
};

export const recipe: Answer = {
  tool: "scale",
  status: "answered",
  headline: "Times 1.5, for 72 shells",
  figures: [
    { name: "factor", value: 1.5, unit: "" },
    { name: "almond flour", value: 187.5, unit: "g" },
    { name: "powdered sugar", value: 187.5, unit: "g" },
    { name: "whites", value: 150, low: 142.5, high: 157.5, unit: "g" },
    { name: "shells", value: 72, unit: "shells" },
  ],
  rule: {
    text: "every line times the same factor; whites within 5 %",
    basis: "published",
    source: "a textbook on scaling",
  },
};

export const list: Answer = {
  tool: "timer",
  status: "answered",
  headline: "2 timers",
  items: [
    { label: "shells", due: "2026-03-14T09:50:00", left: 12, state: "running" },
    { label: "ganache in the fridge", due: "2026-03-14T11:08:00", left: 90, state: "running" },
  ],
};

export const notes: Answer = {
  tool: "recall",
  status: "answered",
  headline: "2 batches with raspberry",
  items: [
    {
      date: "2026-03-01",
      flavors: ["raspberry"],
      rating: 8,
      text: "raspberry, a bit hollow on the second tray, oven ran hot I think",
    },
    { date: "2026-03-08", flavors: ["raspberry", "rose"], rating: 9, text: "good feet" },
  ],
};

export const day: Answer = {
  tool: "day",
  status: "answered",
  headline: "Start on Friday at 18:00",
  steps: [
    { name: "Age the whites", start: "2026-03-13T18:00:00", end: "2026-03-14T06:00:00", hands: false },
    {
      name: "Meringue and macaronage, then pipe four trays",
      start: "2026-03-14T06:00:00",
      end: "2026-03-14T07:10:00",
      hands: true,
    },
  ],
  cautions: [
    "Two trays fit at once: the last tray rests 20 min longer than the first, and that is within the rule.",
  ],
};

export const asking: Answer = {
  tool: "dose",
  status: "asking",
  headline: "How much buttercream is it for, in grams?",
  question: "How much buttercream is it for, in grams?",
};

export const why: Answer = {
  tool: "explain",
  status: "answered",
  headline: "3-5 % of the buttercream's weight",
  working: ["flavor = base × p / 100", "230 × 3 / 100 = 6.9 g", "230 × 5 / 100 = 11.5 g"],
};

/** What the fixture's session answers to which line. */
export const fixedAnswers: Readonly<Record<string, Answer[]>> = {
  "I have 230 g buttercream, how much flavor?": [dose],
  recipe: [recipe],
  timers: [list],
  notes: [notes],
  day: [day],
  flavor: [asking],
  "why?": [why],
  both: [dose, list],
};
