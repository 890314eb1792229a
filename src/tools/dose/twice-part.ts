/** "double the green", behind the color for one part of a bowl: twice the part, or twice what goes into it? */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { namedPart } from "../lib/parts.ts";
import { type Draft, doseBefore } from "./draft.ts";

/** @returns what is to be asked: a range was worked out, so nothing was put in that could be doubled */
export function readTwicePart(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  const [times, ...others] = reading.amounts;
  const part = namedPart(reading, memory);
  if (before?.base_g === undefined || before.flavor_g !== undefined || !part) return undefined;
  if (times?.unit !== "times" || others.length > 0) return undefined;
  if (reading.things.some((each) => each.dose || each.base)) return undefined;
  return says(reading, /<factor> (?:of )?(?:the |that |my )?\S*<(?:[^>]*,)?(?:color|taste)=/)
    ? { twice: part.name }
    : undefined;
}
