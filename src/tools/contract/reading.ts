/**
 * What a sentence was found to hold. src/intents builds it; a calculator reads its inputs from it.
 * Everything carries its span, so that "how did you read that?" can show each piece.
 */

/** From and to, in characters of the normalised text. */
export type Span = readonly [number, number];

export type Dimension =
  | "weight"
  | "volume"
  | "length"
  | "time"
  | "temperature"
  | "percent"
  | "money"
  | "number";

/** A number with its unit as said. A range has `high` above `value`. */
export interface Amount {
  dim: Dimension;
  value: number;
  high?: number;
  /** The unit's name in the unit table: "g", "oz", "tsp", "°C", "%", "USD", or "" for a bare number. */
  unit: string;
  /** What it is an amount of: "230 g buttercream", "24 macarons". */
  of?: Thing;
  /** "a kilo" in "$16 a kilo". */
  per?: { unit: string; value: number };
  /** Said as "a third", "1/2": kept because a share reads differently from a weight. */
  fraction?: readonly [number, number];
  /** How it was worked out from what was said: "302 g in the bowl: 842 less the 540 that it weighs empty". */
  taken?: string;
  text: string;
  at: Span;
}

/** Something of the trade that was named. One word can be several things; each facet is set where it is. */
export interface Thing {
  /** The word table's own name for it. */
  id: string;
  /** An ingredient's name as figures use it: "almond flour", "cream". */
  ingredient?: string;
  /** A filling's name: "buttercream", "ganache", "filling", or "batter" for what shells are piped from. */
  base?: string;
  /** A taste: "pistachio". Set also for tastes that no table knows. */
  taste?: string;
  /** The row of the dose table: "flavor", "nut paste", "salt". */
  dose?: string;
  chocolate?: "dark" | "milk" | "white";
  use?: "loose" | "piping" | "firm";
  /** Something countable: macarons, shells, whites, trays, bowls, batches, boxes. */
  count?: string;
  step?: string;
  /** A saved recipe of the baker's own, by its name. */
  formula?: string;
  symptom?: string;
  color?: string;
  /** A bare unit: "in grams". */
  unit?: string;
  /** "raw", "sifted", "unsifted", "packed", "ground": how an ingredient is measured. */
  manner?: string;
  text: string;
  at: Span;
}

/** A moment as said, not yet held against the clock. */
export interface When {
  /** Days from today, when said as such: today 0, tomorrow 1, yesterday -1. */
  days?: number;
  /** 0 Sunday to 6 Saturday, with "last", "next" or "week" ("sunday week") where said. */
  weekday?: number;
  which?: "last" | "next" | "this" | "week";
  /** A calendar day, any part of it: "the 9th", "March 8", 2026-03-20. */
  day?: number;
  month?: number;
  year?: number;
  /** Minutes after midnight. `half` says whether am or pm was said, or settled by a 24 h time. */
  minute?: number;
  half?: "am" | "pm" | "24";
  part?: "morning" | "afternoon" | "evening" | "night";
  text: string;
  at: Span;
}

/** One question or order, read. `mask` is the sentence with each find replaced by a tag, for cues to match. */
export interface Reading {
  /** The sentence as typed, cleaned. */
  said: string;
  /** Lower case, typos mended. */
  text: string;
  /** "i have <g> <base:buttercream> how much <dose:flavor>" */
  mask: string;
  amounts: Amount[];
  things: Thing[];
  whens: When[];
  /** Words nobody knew, in order. */
  unknown: string[];
  /** "almnd" read as "almond". */
  mended: Mended[];
  /** What was told with a number of its own beside the question, and is no part of it. */
  beside?: readonly Beside[];
}

/** "my 7 year old": an age. */
export interface Beside {
  said: string;
  is: string;
}

/** A typo and what it was read as. */
export interface Mended {
  said: string;
  read: string;
  /** A number or a unit hangs on it, or a word was right English as it stood: said with the answer. */
  counts?: true;
  /** Left as it was typed, since it could be one number or another: no figure is given on it. */
  either?: string[];
}

/** One line of a written recipe. `said` are its own words: what isn't understood is named by them. */
export interface IngredientLine {
  said: string;
  is: "weighed" | "unweighed" | "heading" | "unread";
  name?: string;
  /** In g, what the recipe counts with: of a range, the middle. */
  grams?: number;
  low_g?: number;
  high_g?: number;
  /** How a range, a cup or a number of eggs was taken. */
  taken?: string[];
  /** Two amounts of one line that don't agree. */
  doubts?: string[];
  /** Why it isn't read. */
  why?: string;
}

/** A recipe's lines together, in the shape that the formula calculator takes. */
export interface RecipeRead {
  lines: { name: string; grams: number; low_g?: number; high_g?: number }[];
  unread: string[];
  unweighed: string[];
  taken: string[];
  doubts: string[];
}

/** What the conversation remembers when a question is read. */
export interface Memory {
  /** What earlier answers left on the table. */
  table: import("./answer.ts").Table;
  /** The calculator that answered or asked last, with the inputs it had. */
  last?: { tool: string; inputs: Record<string, unknown> };
  /** The input that was asked for. */
  slot?: string;
  /** This turn leans on the one before: it names too little to stand alone. */
  follows: boolean;
  /** How many a box held when boxes were last spoken of. */
  in_box?: number;
  /** Names of saved formulas, bottles and running timers, so that they can be recognised. */
  names: { formulas: string[]; bottles: string[]; timers: string[] };
  /** Reads text as the lines of a recipe; src/intents gives it, since calculators can't read words themselves. */
  recipe?: (text: string) => RecipeRead;
}
