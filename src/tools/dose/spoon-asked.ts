/** The measure a dose is asked in: a spoon that is named, one that is meant, or grams again. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { type Draft, doseBefore } from "./draft.ts";

/** Spoons are meant though no size is said: a teaspoon, by which flavors are told. Common practice. */
const onlySpoons = [
  /\b(?:how many|in|only|just|by the|with|measuring|so) (?:measuring |my |the )*spoons?\b/,
  /\bspoons? (?:only|please|will do|it is|for me)\b|^(?:so |and |ok )*spoons? of\b/,
  // nothing to weigh with
  /\b(?:without|no|lost my|haven'?t got|don'?t have|do not have|don'?t own) (?:a |an |any |the |my |kitchen |working )*scales?\b/,
  /\bscales?\b(?: [a-z']+){0,3} (?:broken?|dead|died|kaput|bust(?:ed)?|flat)\b/,
  /\b(?:batter(?:y|ies)\b(?: [a-z']+){0,4} scales?|scales? batter(?:y|ies))\b(?: [a-z']+){0,4} (?:dead|died|flat|gone|empty)\b/,
];

/** @returns the spoon, the milliliters or the grams that are asked for; nothing where none is */
export function readSpoon(reading: Reading): Draft {
  const unit = reading.things.find(
    (each) => each.unit === "tsp" || each.unit === "tbsp" || each.unit === "ml",
  )?.unit;
  if (unit) return { spoon: unit as "tsp" };
  // "... be in grams", where spoons were asked for before
  if (says(reading, /(?:^| )in \S*<unit=g>/)) return { spoon: "g" };
  const said = reading.said.toLowerCase();
  return onlySpoons.some((each) => each.test(said)) ? { spoon: "tsp" } : {};
}

/** "whats that in grams", of so many spoons. */
export function inGrams({ mask }: Reading, memory: Memory): Draft | undefined {
  const { spoon, ...before } = doseBefore(memory) ?? {};
  return spoon && /(?:that|it|those) in \S*<unit=g>/.test(mask) ? { ...before, spoon: "g" } : undefined;
}
