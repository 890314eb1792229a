/** Water activity: measured and said, or what it can be estimated from. */
import type { Reading } from "../contract/index.ts";
import { readLines } from "../lib/lines.ts";
import { wordsOf } from "../lib/pieces.ts";
import type { Draft } from "./draft.ts";

export function activitySaid(reading: Reading): number | undefined {
  if (!/water activity|(?:^| )a ?w(?: |$)/.test(wordsOf(reading))) return undefined;
  return reading.amounts.find((each) => each.dim === "number" && each.value > 0 && each.value <= 1)?.value;
}

/** Chocolate with cream or butter, weighed: a filling whose water activity can be estimated. */
export function fillingSaid(reading: Reading): Draft {
  const { lines } = readLines(reading);
  const named = lines.filter((each) => each.thing?.ingredient || each.thing?.chocolate);
  if (named.length < 2 || !named.some((each) => /chocolate|butter|cream/.test(each.name))) return {};
  return { lines: named.map(({ name, grams }) => ({ name, grams })) };
}
