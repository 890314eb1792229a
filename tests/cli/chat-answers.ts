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

export const check: Answer = {
  tool: "dose",
  status: "answered",
  headline: "6 %: over the 3-5 %; add 30 to 75 g plain buttercream to bring it down",
  figures: [
    { name: "share", value: 6, unit: "%" },
    { name: "flavor", low: 4.5, high: 7.5, unit: "g" },
  ],
  rule: { text: "3-5 % of the buttercream's weight", basis: "common practice" },
};

export const composition: Answer = {
  tool: "ganache",
  status: "answered",
  headline: "a_w about 0.89 ± 0.02, an estimate: perishable",
  figures: [
    { name: "water", value: 23.2, unit: "%" },
    { name: "fat", value: 34, unit: "%" },
    { name: "sugar", value: 37.1, unit: "%" },
  ],
  cautions: ["Keep it at 5 °C (41 °F) or below; your local food authority has the last word."],
};

export const trouble: Answer = {
  tool: "trouble",
  status: "answered",
  headline: "No feet: most often the shells went in without a skin.",
  figures: [{ name: "rest", low: 30, high: 60, unit: "min" }],
  items: [
    {
      order: 1,
      cause: "the shells went in without a skin",
      check: "a fingertip drags on the top before baking",
      change: "rest 30-60 min, until a finger comes away dry; longer on a damp day",
    },
    {
      order: 2,
      cause: "the oven was too cool",
      check: "a thermometer inside reads below 145 °C",
      change: "150 °C, and heat the oven 20 min before the first tray",
    },
  ],
  rule: { text: "no feet: 1. no skin: rest; 2. too cool: 150 °C", basis: "from memory" },
};

const batch = (date: string, rating: number, text: string, oven_c: number) => ({
  date,
  text,
  flavors: ["pistachio"],
  rating,
  rating_said: `${rating} out of 10`,
  macarons: 38,
  oven_c,
});
const batches = [
  batch("2026-03-14", 9, "pistachio, even feet", 148),
  batch("2026-03-01", 8, "pistachio, good", 148),
  batch("2026-02-14", 5, "pistachio, half of them cracked", 160),
];

export const ratings: Answer = {
  tool: "recall",
  status: "answered",
  headline: `3 notes of pistachio. ${batches.map(({ text }) => text).join("; ")}`,
  items: batches,
};

export const compared: Answer = {
  tool: "recall",
  status: "answered",
  headline: "Today, 9 out of 10; before that 14 February, 5 out of 10",
  items: batches.filter((_, at) => at !== 1),
  rule: { text: "two notes", basis: "your bench" },
};

export const help: Answer = {
  tool: "help",
  status: "answered",
  headline: "Ask in plain words, one or several things at once.",
  items: [
    {
      tool: "dose",
      text: "How much flavor goes into a weight of filling",
      say: "230 g buttercream, how much flavor?",
    },
    { tool: "undo", text: "Take the last change back", say: "undo" },
  ],
  cautions: ['"why?" shows the rule behind an answer.'],
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
  check: [check],
  composition: [composition],
  trouble: [trouble],
  ratings: [ratings],
  compare: [compared],
  help: [help],
};
