/** The word tables: their shape, one meaning for a phrase within a table, and no phrase that can't be found. */
import { describe, expect, it } from "vitest";
import * as z from "zod";
import { allergens } from "../../data/rules/allergens.ts";
import { doseRows } from "../../data/rules/doses.ts";
import * as calendar from "../../data/words/calendar.ts";
import { everyday, functionWords, shortSlips } from "../../data/words/everyday.ts";
import { forms, readyFlavors, tastes } from "../../data/words/flavors.ts";
import { ingredients } from "../../data/words/ingredients.ts";
import { lookAlikes } from "../../data/words/look-alikes.ts";
import * as numbers from "../../data/words/numbers.ts";
import { plainEnglish } from "../../data/words/plain-english.ts";
import { strangers } from "../../data/words/strangers.ts";
import { praise, symptoms } from "../../data/words/symptoms.ts";
import { bases, chocolates, colors, counts, manners, steps, uses } from "../../data/words/things.ts";
import { topics } from "../../data/words/topics.ts";
import { units } from "../../data/words/units.ts";
import { wordsOf } from "../../src/intents/found/lexicon.ts";
import { normalise } from "../../src/intents/text/normalise.ts";
import { tokenise } from "../../src/intents/text/tokens.ts";
import { tools } from "../../src/tools/registry.ts";

/** Printable, no space at its ends or twice within. */
const word = z.string().regex(/^\S+(?: \S+)*$/);
const words = z.array(word).min(1);
const row = z.strictObject({ id: word, words });
const lawNames = z.enum(allergens.map(({ id }) => id) as [string, ...string[]]);
const doses = new Set([
  ...doseRows.map(({ id }) => id),
  "fruit paste",
  "other powder",
  "powder",
  "color",
  "jam",
]);

const schemas: readonly (readonly [string, z.ZodType, readonly unknown[]])[] = [
  [
    "ingredients",
    z.strictObject({
      name: word,
      words,
      ndb: z
        .string()
        .regex(/^\d{5}$/)
        .optional(),
      manner: word.optional(),
      allergens: z.array(lawNames),
      unsure: z.string().min(1).optional(),
      liquid: z.boolean().optional(),
    }),
    ingredients,
  ],
  ["bases", row.extend({ column: z.enum(["buttercream", "ganache", "batter", "any"]) }), bases],
  ["chocolates", row.extend({ id: z.enum(["dark", "milk", "white"]) }), chocolates],
  ["uses", row.extend({ id: z.enum(["loose", "piping", "firm"]) }), uses],
  ["counts", row, counts],
  ["steps", row, steps],
  ["manners", row, manners],
  [
    "symptoms",
    row.extend({ of: z.enum(["ganache", "buttercream", "batter", "meringue"]).optional() }),
    symptoms,
  ],
  [
    "tastes",
    z.strictObject({
      taste: word,
      words: z.array(word).optional(),
      usual: z.string().optional(),
      fruit: z.boolean().optional(),
      nut: z.union([lawNames, z.literal("unknown")]).optional(),
    }),
    tastes,
  ],
  [
    "forms",
    z.strictObject({
      form: word,
      dose: z.string(),
      words,
      after: z.enum(["fruit", "nut", "tea", "coffee", "vanilla", "citrus"]).optional(),
    }),
    forms,
  ],
  [
    "ready flavors",
    z.strictObject({ id: word, dose: z.string(), taste: word.optional(), words: words.optional() }),
    readyFlavors,
  ],
  [
    "units",
    z.strictObject({
      unit: word,
      dim: z.enum(["weight", "volume", "length", "time", "temperature", "percent", "money"]),
      per: z.number().positive(),
      // "unsigned" is a sum that nobody said a currency with: no word means it
      words: words.or(z.tuple([])),
      risky: words.optional(),
      source: z.string().min(2),
    }),
    units,
  ],
];

it.each(schemas)("%s have their shape, every row", (_, schema, rows) => {
  expect(rows.length).toBeGreaterThan(1);
  for (const each of rows)
    expect(schema.safeParse(each).error?.message, JSON.stringify(each)).toBeUndefined();
});

/** A table as [what it means, phrase]. */
type Meanings = readonly (readonly [string, string])[];
const meanings = (rows: readonly { id: string; words: readonly string[] }[]): Meanings =>
  rows.flatMap(({ id, words: all }) => all.map((each) => [id, each] as const));
const tables: Readonly<Record<string, Meanings>> = {
  ingredients: meanings(ingredients.map(({ name, words: all }) => ({ id: name, words: [name, ...all] }))),
  bases: meanings(bases),
  chocolates: meanings(chocolates),
  uses: meanings(uses),
  counts: meanings(counts),
  steps: meanings(steps),
  manners: meanings(manners),
  colors: colors.map((each) => [each, each] as const),
  tastes: meanings(tastes.map(({ taste, words: all = [] }) => ({ id: taste, words: [taste, ...all] }))),
  "ready flavors": meanings(readyFlavors.map(({ id, words: all = [] }) => ({ id, words: all }))),
  forms: meanings(forms.map(({ form, words: all }) => ({ id: form, words: all }))),
  symptoms: meanings(symptoms),
};

/** Tables in which one phrase may mean several things; the sentence decides. */
const shared: Readonly<Record<string, (phrase: string) => boolean>> = {
  // "powder" after a fruit, tea or coffee, "paste" after a nut or a fruit
  forms: (phrase) => ["powder", "paste"].includes(phrase),
  symptoms: () => true,
};

describe.each(Object.entries(tables))("%s", (name, table) => {
  it("give a phrase one meaning", () => {
    const seen = new Map<string, string>();
    const twice = table.flatMap(([id, phrase]) => {
      const key = wordsOf(phrase).join(" ");
      const other = seen.get(key);
      seen.set(key, id);
      return other !== undefined && other !== id && !shared[name]?.(key)
        ? [`"${key}": ${other} and ${id}`]
        : [];
    });
    expect(twice).toEqual([]);
  });

  it("hold no phrase that is nothing, or that a sentence can't hold", () => {
    for (const [, phrase] of table) {
      const inSentence = tokenise(normalise(phrase)).map(({ text }) => text);
      expect(inSentence.length, phrase).toBeGreaterThan(0);
      expect(wordsOf(phrase), phrase).toEqual(inSentence);
    }
  });
});

it("a flavor that is an ingredient too has each word in one of the two tables", () => {
  const twice = readyFlavors.flatMap(({ id, words: all = [] }) => {
    const row = ingredients.find((each) => each.name === id);
    return row ? all.filter((each) => each === row.name || row.words.includes(each)) : [];
  });
  expect(twice).toEqual([]);
});

it("each ingredient, taste, base and symptom stands in its table once", () => {
  for (const names of [
    ingredients.map(({ name }) => name),
    tastes.map(({ taste }) => taste),
    bases.map(({ id }) => id),
    symptoms.map(({ id }) => id),
    units.map(({ unit }) => unit),
  ])
    expect(names.filter((name, at) => names.indexOf(name) !== at)).toEqual([]);
});

describe("units", () => {
  it("each spelling means one unit", () => {
    const spelt = units.flatMap(({ unit, words: all, risky = [] }) =>
      [...all, ...risky].map((each) => [normalise(each), unit] as const),
    );
    const twice = spelt.filter(([spelling, unit]) =>
      spelt.some(([other, its]) => other === spelling && its !== unit),
    );
    // a bare c is a cup or a degree, by what stands before it
    expect(twice.map(([spelling]) => spelling).filter((spelling) => spelling !== "c")).toEqual([]);
  });

  it.each([
    // NIST SP 811, B.8
    ["oz", 28.349523125],
    ["lb", 453.59237],
    ["in", 25.4],
    // NIST Handbook 44, appendix C
    ["fl oz", 29.5735295625],
    ["cup", 236.5882365],
    ["tbsp", 14.78676478125],
    ["tsp", 4.92892159375],
    ["kg", 1000],
    ["mg", 0.001],
    ["l", 1000],
    ["cm", 10],
    ["h", 60],
    ["d", 1440],
  ])("%s is %d of its base", (unit, per) => {
    expect(units.find((each) => each.unit === unit)?.per).toBe(per);
  });

  it("the household measures fit into one another: 3 teaspoons, 16 tablespoons, 8 fluid ounces", () => {
    const per = (unit: string) => units.find((each) => each.unit === unit)?.per ?? Number.NaN;
    expect(per("tbsp")).toBeCloseTo(3 * per("tsp"), 9);
    expect(per("cup")).toBeCloseTo(16 * per("tbsp"), 9);
    expect(per("cup")).toBeCloseTo(8 * per("fl oz"), 9);
    expect(per("lb")).toBeCloseTo(16 * per("oz"), 9);
  });
});

describe("numbers and days", () => {
  it("say what they are", () => {
    expect(numbers.smallNumbers.seventeen).toBe(17);
    expect(Object.values(numbers.tens).every((value) => value % 10 === 0 && value >= 20 && value <= 90)).toBe(
      true,
    );
    expect(Object.values(numbers.partWords).every((value) => Number.isInteger(value) && value > 1)).toBe(
      true,
    );
    expect(Object.values(calendar.weekdays).every((day) => day >= 0 && day <= 6)).toBe(true);
    expect(Object.values(calendar.months).every((month) => month >= 1 && month <= 12)).toBe(true);
    expect(Object.values(calendar.namedTimes).every((minute) => minute > 0 && minute <= 1440)).toBe(true);
  });

  it("have every ready-made fraction of Unicode that has two digits", () => {
    // U+00BC-BE and U+2150-215E, The Unicode Standard, Number Forms
    for (const [from, to] of [
      [0xbc, 0xbe],
      [0x2150, 0x215e],
    ] as const)
      for (let code = from; code <= to; code++)
        expect(numbers.fractionSigns[String.fromCodePoint(code)], code.toString(16)).toMatch(/^\d\/\d{1,2}$/);
    for (const [sign, spelt] of Object.entries(numbers.fractionSigns))
      expect(sign.normalize("NFKC").replace("⁄", "/")).toBe(spelt);
  });
});

describe("talk", () => {
  it("every entry is one plain word", () => {
    for (const each of [
      ...everyday,
      ...functionWords,
      ...strangers,
      ...`${plainEnglish()} ${lookAlikes()}`.split(/\s+/).filter(Boolean),
    ])
      expect(each).toMatch(/^[a-z]+$/);
  });

  it("no slip is mended into itself, or away from a unit or a number", () => {
    const fixed = new Set([
      ...units.flatMap(({ words: all }) => all),
      ...[numbers.smallNumbers, numbers.tens, numbers.magnitudes].flatMap((table) => Object.keys(table)),
    ]);
    for (const [slip, right] of Object.entries(shortSlips)) {
      expect(right, slip).not.toBe(slip);
      expect(fixed.has(slip), slip).toBe(false);
    }
  });

  it("no slip is a word of the tables: they would never be found", () => {
    const used = new Set(
      Object.entries(tables).flatMap(([, table]) => table.flatMap(([, phrase]) => wordsOf(phrase))),
    );
    // "half n half" is found as "half and half"
    expect(Object.keys(shortSlips).filter((slip) => used.has(slip) && slip !== "n")).toEqual([]);
  });

  it("no stranger is a word of the calculators' own examples", () => {
    const own = new Set(tools.flatMap(({ examples }) => examples.flatMap(({ say }) => wordsOf(say))));
    expect([...strangers].filter((each) => own.has(each))).toEqual([]);
  });

  it("topics are calculators, each phrase for one of them", () => {
    const names = new Set(tools.map(({ name }) => name));
    expect(Object.keys(topics).filter((name) => !names.has(name))).toEqual([]);
    const all = Object.values(topics).flat();
    expect(all.filter((each, at) => all.indexOf(each) !== at)).toEqual([]);
  });
});

describe("what leans on another table finds it there", () => {
  it("forms and ready flavors name rows of the dose table", () => {
    for (const { dose } of [...forms, ...readyFlavors]) expect(doses.has(dose), dose).toBe(true);
    for (const { usual } of tastes) if (usual !== undefined) expect(doses.has(usual), usual).toBe(true);
  });

  it("praise is among the symptoms", () => {
    for (const each of praise) expect(symptoms.map(({ id }) => id)).toContain(each);
  });
});
