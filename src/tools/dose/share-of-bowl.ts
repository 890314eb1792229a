/** "60 % pink", behind the color for a bowl: so much of the bowl gets it, and no such dose of it. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { mostOf } from "./bare-weight.ts";
import { type Draft, doseLeanedOn } from "./draft.ts";

/** So many times the most of the table is no dose any more: a slip, or a share of the bowl. */
const farOver = 10;

/** True for a percentage that nobody stirs in. Pure. */
export const isFarOver = (inputs: Draft, share: number): boolean => {
  const { percent: _said, ...others } = inputs;
  const most = mostOf(others);
  return most !== undefined && share >= farOver * most;
};

/** @returns the part that is meant, with the whole bowl kept for "no, 40 %"; undefined where the words say no part */
export function readShareOfBowl(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseLeanedOn(memory);
  const whole_g = before?.whole_g ?? before?.base_g;
  const [share, ...others] = reading.amounts;
  if (!before || whole_g === undefined || !share || others.length > 0) return undefined;
  if (before.flavor_g !== undefined || share.dim !== "percent" || share.high !== undefined) return undefined;
  if (share.value >= 100 || !isFarOver(before, share.value)) return undefined;
  if (reading.things.some((each) => each.dose ?? each.taste)) return undefined;
  const colored = reading.things.some((each) => each.color && !each.base);
  const ofIt = says(reading, /<percent> of (?:(?:it|that|this|them)(?: |$)|(?:the |my )?\S*<[^>]*base=)/);
  const again = before.whole_g !== undefined;
  return colored || ofIt || again
    ? {
        base_g: (whole_g * share.value) / 100,
        whole_g,
        share: share.value,
        ...(before.base ? { base: before.base } : {}),
      }
    : undefined;
}
