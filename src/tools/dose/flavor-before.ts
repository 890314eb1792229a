/** "no, powder after all": the flavor in whose place the last one came. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { type Draft, doseBefore, flavorOf } from "./draft.ts";

/** A form alone, and the rows that it may be short for. */
const shortFor: Readonly<Record<string, readonly string[]>> = {
  powder: ["fruit powder", "tea powder", "coffee powder", "cocoa powder", "other powder", "powder color"],
  "nut paste": ["nut paste", "vanilla paste", "fruit paste"],
};

/** @returns the flavor before the last, where the form alone names it and the last one is of another form */
export function flavorBefore(target: Thing, memory: Memory): Draft | undefined {
  const { was, dose: now } = doseBefore(memory) ?? {};
  const form = target.dose;
  if (!was?.dose || form === undefined || target.taste || target.ingredient) return undefined;
  const meant = shortFor[form] ?? [form];
  return meant.includes(was.dose) && !(now !== undefined && meant.includes(now)) ? flavorOf(was) : undefined;
}

/** "the hazelnut", behind hazelnut paste: the form that was spoken of, and no concentrated flavor of that taste. */
export function inFormBefore(target: Thing, memory: Memory, { text }: Reading): Draft | undefined {
  const before = doseBefore(memory);
  if (!before?.dose || !target.taste || target.dose || before.taste !== target.taste) return undefined;
  return /\b(?:the|that|this|my|same) $/.test(text.slice(0, target.at[0])) ? flavorOf(before) : undefined;
}

/** What is kept of the flavor that another takes the place of. */
export function replaced(before: Draft | undefined, named: Draft): Draft {
  if (before?.dose === undefined || named.dose === undefined) return {};
  const isSame = before.dose === named.dose && before.taste === named.taste;
  return isSame ? {} : { was: flavorOf(before) };
}
