/**
 * An invented baker's record for --demo, and for the screens and examples of the documentation. Nothing else reads it.
 * Days are counted back from today; the day in progress is placed around now (src/cli/demo).
 */
import type { Bench, Bottle, Formula, Note, Stock } from "../src/tools/contract/record.ts";

type Entry<T> = Omit<T, "id">;
type DemoNote = Omit<Note, "id" | "date" | "noted_ms"> & { days_ago: number };

const bench: Bench = {
  scale_g: 1,
  diameter_mm: 38,
  shells_a_tray: 28,
  currency: "EUR",
  labor_per_h: 14,
  market: "eu",
};

const notes: readonly DemoNote[] = [
  {
    days_ago: 86,
    text: "lavender buttercream, 30 of them, 150 c 15 min, rested 30 min, 3 cracked, 6 out of 10",
    flavors: ["lavender"],
    problems: ["cracked tops"],
    rating: 6,
    rating_said: "6 out of 10",
    macarons: 30,
    oven_c: 150,
    bake_min: 15,
    rest_min: 30,
  },
  {
    days_ago: 79,
    text: "raspberry jam center, 28 macarons, 150 c 15 min, soft after maturing, 6 out of 10",
    flavors: ["raspberry"],
    problems: ["soft after maturing"],
    rating: 6,
    rating_said: "6 out of 10",
    macarons: 28,
    oven_c: 150,
    bake_min: 15,
  },
  {
    days_ago: 72,
    text: "lemon ganache with white chocolate, 32 macarons, 148 c 15 min, good feet, 8 out of 10",
    flavors: ["lemon", "white chocolate"],
    problems: [],
    praise: ["good feet"],
    rating: 8,
    rating_said: "8 out of 10",
    macarons: 32,
    oven_c: 148,
    bake_min: 15,
  },
  {
    days_ago: 65,
    text: "coffee buttercream, 36 macarons, 148 c 16 min, rested 35 min, two hollow, 7 out of 10",
    flavors: ["coffee"],
    problems: ["hollow"],
    rating: 7,
    rating_said: "7 out of 10",
    macarons: 36,
    oven_c: 148,
    bake_min: 16,
    rest_min: 35,
  },
  {
    days_ago: 58,
    text: "pistachio ganache, 36 of them, 590 g batter, 76 shells, 148 c 16 min, two hollow, 9 out of 10",
    flavors: ["pistachio"],
    problems: ["hollow"],
    rating: 9,
    rating_said: "9 out of 10",
    macarons: 36,
    shells: 76,
    oven_c: 148,
    bake_min: 16,
    batter_g: 590,
    weights: [{ name: "batter", grams: 590 }],
  },
  {
    days_ago: 51,
    text: "rose buttercream, 24 macarons, 148 c 16 min, pale pink, good feet, 8 out of 10",
    flavors: ["rose"],
    problems: [],
    praise: ["good feet"],
    rating: 8,
    rating_said: "8 out of 10",
    macarons: 24,
    oven_c: 148,
    bake_min: 16,
  },
  {
    days_ago: 44,
    text: "matcha ganache, 30 macarons, 148 c 16 min, browned tops, 5 out of 10",
    flavors: ["matcha"],
    problems: ["browned"],
    rating: 5,
    rating_said: "5 out of 10",
    macarons: 30,
    oven_c: 148,
    bake_min: 16,
  },
  {
    days_ago: 37,
    text: "hazelnut ganache, 40 macarons, 655 g batter, 84 shells, 146 c 17 min, full, 9 out of 10",
    flavors: ["hazelnut"],
    problems: [],
    praise: ["full"],
    rating: 9,
    rating_said: "9 out of 10",
    macarons: 40,
    shells: 84,
    oven_c: 146,
    bake_min: 17,
    batter_g: 655,
    weights: [{ name: "batter", grams: 655 }],
  },
  {
    days_ago: 30,
    text: "salted caramel center with a vanilla ring, 36 macarons, 146 c 17 min, matured 36 h, 10 out of 10",
    flavors: ["salted caramel", "vanilla"],
    problems: [],
    rating: 10,
    rating_said: "10 out of 10",
    macarons: 36,
    oven_c: 146,
    bake_min: 17,
    mature_h: 36,
  },
  {
    days_ago: 22,
    text: "passion fruit ganache, 32 macarons, 146 c 17 min, lopsided feet on tray 2, 7 out of 10",
    flavors: ["passion fruit"],
    problems: ["lopsided feet"],
    rating: 7,
    rating_said: "7 out of 10",
    macarons: 32,
    oven_c: 146,
    bake_min: 17,
  },
  {
    days_ago: 15,
    text: "blackberry buttercream, 30 macarons, 470 g batter, 61 shells, 146 c 16 min, good feet, 8 out of 10",
    flavors: ["blackberry"],
    problems: [],
    praise: ["good feet"],
    rating: 8,
    rating_said: "8 out of 10",
    macarons: 30,
    shells: 61,
    oven_c: 146,
    bake_min: 16,
    batter_g: 470,
    weights: [{ name: "batter", grams: 470 }],
  },
  {
    days_ago: 6,
    text: "dark chocolate mint ganache, 36 macarons, 148 c 16 min, rested 40 min, good feet, 9 out of 10",
    flavors: ["dark chocolate", "mint"],
    problems: [],
    praise: ["good feet"],
    rating: 9,
    rating_said: "9 out of 10",
    macarons: 36,
    oven_c: 148,
    bake_min: 16,
    rest_min: 40,
  },
];

const bottles: readonly Entry<Bottle>[] = [
  { taste: "mint", form: "oil", low_percent: 0.2, high_percent: 0.4, left_g: 18 },
  { taste: "vanilla", form: "extract", low_percent: 1, high_percent: 1.5, left_g: 85 },
  { taste: "pistachio", low_percent: 3, high_percent: 4, left_g: 42, allergens: ["pistachio"] },
  { taste: "raspberry", low_percent: 2.5, high_percent: 4, left_g: 30 },
  { taste: "rose", low_percent: 0.5, high_percent: 1, left_g: 25 },
];

const stock: readonly Entry<Stock>[] = [
  { name: "almond flour", grams: 850, price_per_g: 0.0155, currency: "EUR", pack_g: 1000 },
  { name: "powdered sugar", grams: 1200, price_per_g: 0.0024, currency: "EUR", pack_g: 500 },
  { name: "granulated sugar", grams: 1600, price_per_g: 0.0014, currency: "EUR", pack_g: 1000 },
  { name: "whites", grams: 420, price_per_g: 0.0068, currency: "EUR", pack_g: 500 },
  { name: "butter", grams: 500, price_per_g: 0.0092, currency: "EUR", pack_g: 250 },
  { name: "dark chocolate", grams: 640, price_per_g: 0.0145, currency: "EUR", pack_g: 1000 },
  { name: "white chocolate", grams: 300, price_per_g: 0.0138, currency: "EUR", pack_g: 1000 },
  { name: "cream", grams: 400, price_per_g: 0.0056, currency: "EUR", pack_g: 200 },
];

const formulas: readonly Entry<Formula>[] = [
  {
    name: "snowy shells",
    kind: "shells",
    lines: [
      { name: "whites", grams: 105 },
      { name: "almond flour", grams: 130 },
      { name: "powdered sugar", grams: 125 },
      { name: "granulated sugar", grams: 95 },
    ],
    unweighed: ["a pinch of salt"],
  },
  {
    name: "evening ganache",
    kind: "ganache",
    lines: [
      { name: "dark chocolate", grams: 200 },
      { name: "cream", grams: 150 },
      { name: "butter", grams: 30 },
    ],
  },
  {
    name: "market buttercream",
    kind: "buttercream",
    lines: [
      { name: "whites", grams: 90 },
      { name: "granulated sugar", grams: 140 },
      { name: "butter", grams: 230 },
    ],
  },
];

/** The bake under way: this step of it began so many minutes ago, up to five more where its end is rounded. */
const day = {
  macarons: 24,
  fillings: [
    { base: "ganache", flavor: { dose: "flavor", taste: "pistachio", bare: true } },
    { base: "buttercream", flavor: { dose: "flavor", taste: "vanilla", bare: true } },
  ],
  flavors: ["pistachio", "vanilla"],
  at: { step: "bake-1", minutes: 11 },
} as const;

/** Timers that run: over a step of that bake, and one besides. The last one set can be taken back. */
const timers: readonly ({ label: string } & ({ step: string } | { ago_min: number; minutes: number }))[] = [
  { label: "tray 1", step: "bake-1" },
  { label: "butter", ago_min: 22, minutes: 50 },
];

export const demo = { bench, notes, bottles, stock, formulas, day, timers };
