/** The rule tables: where each number comes from, and that the tables lean on one another without gaps. */
import { describe, expect, it } from "vitest";
import * as z from "zod";
import * as allergenRules from "../../data/rules/allergens.ts";
import * as buttercream from "../../data/rules/buttercream.ts";
import { doseRows } from "../../data/rules/doses.ts";
import * as ganache from "../../data/rules/ganache.ts";
import * as heat from "../../data/rules/heat.ts";
import * as keeping from "../../data/rules/keeping.ts";
import * as labels from "../../data/rules/labels.ts";
import { methodRows } from "../../data/rules/methods.ts";
import { notFoodRules } from "../../data/rules/not-food.ts";
import * as shells from "../../data/rules/shells.ts";
import { stepTimes } from "../../data/rules/step-times.ts";
import { troubleBasis, troubles } from "../../data/rules/troubles.ts";
import composition from "../../data/tables/composition.json" with { type: "json" };
import portions from "../../data/tables/portions.json" with { type: "json" };
import { ingredients } from "../../data/words/ingredients.ts";
import { praise, symptoms } from "../../data/words/symptoms.ts";

const basis = z.enum(["published", "common practice", "from memory", "arithmetic"]);

/** Every object in a value that says what it rests on. */
function based(value: unknown): { basis: unknown; source?: unknown }[] {
  if (Array.isArray(value)) return value.flatMap(based);
  if (typeof value !== "object" || value === null) return [];
  return [...("basis" in value ? [value as { basis: unknown }] : []), ...Object.values(value).flatMap(based)];
}

const modules = {
  allergenRules,
  buttercream,
  doseRows,
  ganache,
  heat,
  keeping,
  labels,
  methodRows,
  notFoodRules,
  shells,
  stepTimes,
  troubles,
};

describe("where a number comes from", () => {
  it.each(Object.entries(modules))("%s: a known basis, and a source where it is published", (_, module) => {
    for (const each of based(module)) {
      expect(basis.safeParse(each.basis).success, JSON.stringify(each)).toBe(true);
      if (each.basis === "published")
        expect(String(each.source ?? ""), JSON.stringify(each)).toMatch(/\S{3}/);
    }
  });

  it.each([
    ["doses", doseRows],
    ["methods", methodRows],
    ["times of steps", stepTimes],
    ["what is no food", Object.values(notFoodRules)],
    ["ratios of ganache", Object.values(ganache.ratios).flatMap((uses) => Object.values(uses))],
    ["keeping", Object.values(keeping.keepingRules)],
    ["heat", [heat.fanLower, heat.shellOven]],
    [
      "shells",
      [
        shells.shellBatter,
        shells.batterLoss,
        shells.fillingLoss,
        shells.spareShells,
        shells.bakedShare,
        shells.macaronFilling,
        shells.ringShare,
        shells.tray,
        shells.eggWhite,
      ],
    ],
  ] as const)("%s: every row says it", (_, rows) => {
    for (const row of rows)
      expect(basis.safeParse((row as { basis?: unknown }).basis).success, JSON.stringify(row)).toBe(true);
  });

  it("what a whole table rests on is said beside it", () => {
    for (const each of [troubleBasis, buttercream.buttercreamBasis])
      expect(basis.safeParse(each).success).toBe(true);
    for (const source of [
      allergenRules.usSource,
      allergenRules.euSource,
      ...Object.values(labels.orderSource),
      ...Object.values(labels.netSource),
      composition.source,
      portions.source,
    ])
      expect(source.length).toBeGreaterThan(10);
  });
});

describe("ranges run from low to high, and a default lies in its own", () => {
  it("doses", () => {
    for (const { id, buttercream: b, ganache: g, batter } of doseRows)
      for (const range of [b, g, batter])
        if (range) expect(range[0] > 0 && range[0] < range[1] && range[1] < 100, id).toBe(true);
  });

  it("ganache", () => {
    for (const { ratio, low, high } of Object.values(ganache.ratios).flatMap((uses) => Object.values(uses)))
      expect(low <= ratio && ratio <= high && low < high).toBe(true);
  });

  it("figures of methods and troubles", () => {
    const figures = [
      ...methodRows.flatMap(({ figures: all = [] }) => all),
      ...troubles.flatMap(({ causes }) => causes.flatMap(({ figure }) => figure ?? [])),
    ];
    for (const { name, value, low, high, unit } of figures) {
      expect(value !== undefined || (low !== undefined && high !== undefined), name).toBe(true);
      if (low !== undefined && high !== undefined)
        expect(low < high && low <= (value ?? low) && (value ?? high) <= high, name).toBe(true);
      expect(unit.length, name).toBeGreaterThan(0);
    }
  });
});

describe("troubles", () => {
  it("there is one for each symptom, and the other way round", () => {
    const asked = symptoms.map(({ id }) => id).filter((id) => !praise.includes(id));
    expect([...troubles.map(({ id }) => id)].sort()).toEqual([...asked].sort());
  });

  it("each has causes with a check and a change", () => {
    for (const { id, causes } of troubles) {
      expect(causes.length, id).toBeGreaterThan(1);
      for (const cause of causes)
        for (const text of [cause.cause, cause.check, cause.change])
          expect(text.length, id).toBeGreaterThan(5);
    }
  });
});

describe("the USDA tables", () => {
  const known = new Set(composition.rows.map(({ ndb }) => ndb));
  const measured = new Set(portions.rows.map(({ ndb }) => ndb));

  it("hold every number that an ingredient names", () => {
    for (const { name, ndb } of ingredients)
      if (ndb) expect([known.has(ndb), measured.has(ndb)], `${name} ${ndb}`).toEqual([true, true]);
  });

  it("hold the manner that an ingredient is usually measured in", () => {
    const missing = ingredients.filter(
      ({ ndb, manner }) =>
        manner && !portions.rows.some((row) => row.ndb === ndb && row.measure.includes(manner)),
    );
    expect(missing.map(({ name }) => name)).toEqual([]);
  });

  it("hold the rows that the rules are built on, USDA SR 28 and 26", () => {
    const portion = (ndb: string, measure: string) =>
      portions.rows.find((row) => row.ndb === ndb && row.measure === measure)?.grams;
    expect(portion("01124", "large")).toBe(33);
    expect(portion("19336", "cup unsifted")).toBe(120);
    expect(portion("12061", "cup, ground")).toBe(95);
    expect(portion("01053", "cup, fluid (yields 2 cups whipped)")).toBe(238);
  });

  it("are whole: each number once in composition, weights and counts above zero", () => {
    expect(known.size).toBe(composition.rows.length);
    for (const { description, amount, grams } of portions.rows)
      expect(amount > 0 && grams > 0, description).toBe(true);
  });

  it("add up to the whole, but for alcohol and what bubbles away", () => {
    for (const { description, water, protein, fat, ash, carbohydrate } of composition.rows) {
      const sum = water + protein + fat + ash + carbohydrate;
      if (/rum|vanilla extract|baking (?:soda|powder)|baking powder/i.test(description))
        expect(sum, description).toBeLessThan(101);
      else expect(Math.abs(sum - 100), description).toBeLessThan(1.5);
    }
  });
});

describe("allergens", () => {
  /** Words in a name that make an allergen sure, and names that only sound like it. */
  const sure: readonly (readonly [RegExp, string, RegExp])[] = [
    [
      /\b(?:milk|cream|butter|buttermilk|mascarpone|ricotta|yogurt)\b/,
      "milk",
      /coconut|cocoa butter|peanut|almond butter|hazelnut|pistachio|of tartar|marshmallow cream/,
    ],
    [/\b(?:egg|eggs|whites|yolk)\b/, "egg", /^$/],
    [/\balmonds?\b/, "almond", /^$/],
    [/\bhazelnuts?\b/, "hazelnut", /^$/],
    [/\bpistachios?\b/, "pistachio", /^$/],
    [/\bwalnuts?\b/, "walnut", /^$/],
    [/\bpecans?\b/, "pecan", /^$/],
    [/\bmacadamias?\b/, "macadamia", /^$/],
    [/\bcashews?\b/, "cashew", /^$/],
    [/\bpeanuts?\b/, "peanut", /^$/],
    [/\b(?:sesame|tahini)\b/, "sesame", /^$/],
    [/^flour$|\bwheat\b/, "wheat", /^$/],
    [/\b(?:milk|white) chocolate\b/, "milk", /^$/],
  ];

  it.each(sure)("what is named %s brings %s", (named, allergen, except) => {
    const brings = ingredients.filter(({ name }) => named.test(name) && !except.test(name));
    expect(brings.length).toBeGreaterThan(0);
    for (const { name, allergens } of brings) expect(allergens, name).toContain(allergen);
  });

  it("coconut is no tree nut, and cocoa butter no milk", () => {
    for (const { name, allergens } of ingredients.filter((each) => /coconut|cocoa butter/.test(each.name)))
      expect(allergens, name).toEqual([]);
  });

  it("chocolate, whatever its kind, says that its wrapper decides", () => {
    for (const { name, unsure } of ingredients.filter((each) => /chocolate$/.test(each.name)))
      expect(unsure, name).toMatch(/soy/);
  });

  it("every one that is named is in both laws' tables or known not to be", () => {
    const laws = new Map(allergenRules.allergens.map((row) => [row.id, row]));
    // FALCPA 2004 with the FASTER Act 2021 names wheat alone among cereals, and no lupin
    const euOnly = new Set(["oats", "rye", "barley", "lupin"]);
    for (const id of new Set(ingredients.flatMap(({ allergens }) => allergens))) {
      expect(Boolean(laws.get(id)?.us), id).toBe(!euOnly.has(id));
      expect(laws.get(id)?.eu, id).toBeTruthy();
    }
    for (const { usClass, euClass } of allergenRules.allergens) {
      if (usClass !== undefined) expect(allergenRules.usClasses as readonly string[]).toContain(usClass);
      if (euClass !== undefined) expect(allergenRules.euClasses as readonly string[]).toContain(euClass);
    }
  });

  it("the laws' lists have their lengths: nine, fourteen, twelve tree nuts, eight nuts", () => {
    // FALCPA 2004 and FASTER Act 2021; Regulation (EU) 1169/2011, Annex II; FDA allergen guidance, edition 5, 2025
    expect(allergenRules.usClasses).toHaveLength(9);
    expect(allergenRules.euClasses).toHaveLength(14);
    expect(allergenRules.usTreeNuts).toHaveLength(12);
    expect(allergenRules.euNuts).toHaveLength(8);
  });
});
