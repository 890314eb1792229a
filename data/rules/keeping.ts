/** How long and how cold, with the source of each line. */
import type { Basis } from "../../src/tools/contract/answer.ts";

export interface KeepingRule {
  text: string;
  basis: Basis;
  source?: string;
}

/** At this or below, in the fridge. */
export const fridge = { limit_c: 5, limit_f: 41, source: "FDA Food Code 2022, 3-501.16" };

/** Out of the fridge, all spells added up. */
export const outside = { limit_h: 2, hot_h: 1, hot_c: 32, hot_f: 90, source: "USDA FSIS" };

/** Filled, in the fridge: the day of making is day 1. `best` is from memory. */
export const inFridge = { days: 7, best: 5, source: "FDA Food Code 2022, 3-501.17" };

/** Airtight and frozen. */
export const frozen = { at_c: -18, at_f: 0, months: 2, basis: "from memory" as Basis };

/** Whites and sugar heated to this are safe; below it pasteurised whites are. */
export const eggs = {
  safe_c: 71,
  safe_f: 160,
  heat: "USDA FSIS",
  pasteurised: "FDA Food Code 2022, 3-302.13",
};

/** Raw whites, covered: days in the fridge, months in the freezer. */
export const rawWhites = {
  low: 2,
  high: 4,
  months: 12,
  source: "FoodSafety.gov, Cold Food Storage Chart: raw egg whites",
};

/** Raw yolks, covered; frozen they turn to a paste. */
export const rawYolks = { low: 2, high: 4, source: "FoodSafety.gov, Cold Food Storage Chart: raw egg yolks" };

/** Fillings with fresh dairy or curd: what many keep to, inside the published outer limit. */
export const freshDairy = { low: 2, high: 3, basis: "from memory" as Basis };

/** The two published water-activity lines; above either a filling counts as perishable. */
export const activity = {
  line: 0.85,
  lineSource: "21 CFR 114.3",
  pHLine: 0.88,
  pH: 5,
  pHSource: "FDA Food Code 2022, 1-201.10 table B",
};

export const keepingRules = {
  fridge: { text: "cold holding at 5 °C (41 °F) or below", basis: "published", source: fridge.source },
  outside: {
    text: "out of the fridge 2 h in all, 1 h above 32 °C (90 °F)",
    basis: "published",
    source: outside.source,
  },
  inFridge: {
    text: "filled, in the fridge at 5 °C (41 °F) or below: 7 days counting the day of making as day 1; best within 5 (from memory)",
    basis: "published",
    source: inFridge.source,
  },
  clock: {
    text: "7 days counting the day of making as day 1; freezing stops the count and thawing starts it again",
    basis: "published",
    source: inFridge.source,
  },
  frozen: {
    text: "frozen at −18 °C (0 °F), airtight: best within 2 months; thaw in the closed box in the fridge",
    basis: "from memory",
  },
  eggs: {
    text: "whites and sugar heated to 71 °C (160 °F), or pasteurised whites",
    basis: "published",
    source: `${eggs.heat}; ${eggs.pasteurised}`,
  },
  whites: {
    text: "raw egg whites: 2-4 days in the fridge at 5 °C (41 °F) or below, 12 months in the freezer",
    basis: "published",
    source: rawWhites.source,
  },
  yolks: {
    text: "raw egg yolks: 2-4 days in the fridge at 5 °C (41 °F) or below; they don't freeze well",
    basis: "published",
    source: rawYolks.source,
  },
  activity: {
    text: "above a_w 0.85, or above 0.88 at a pH over 5, treat as perishable",
    basis: "published",
    source: `${activity.lineSource}; ${activity.pHSource}`,
  },
} satisfies Record<string, KeepingRule>;
