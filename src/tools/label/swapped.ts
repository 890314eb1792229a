/** "swap the butter for hazelnut paste", "peanut butter in place of the walnut": which of the things said is to go. */
import type { Reading, Thing } from "../contract/index.ts";

const swap = /\b(?:swap|swapped|replace|replaced|exchange|change)\b.*?\b(?:for|with|by|to)\b/;

/** Where the words end that name what goes: all that stands before it goes. */
export function swapEnd({ text }: Reading): number | undefined {
  const found = swap.exec(text);
  return found ? found.index + found[0].length : undefined;
}

/** Whether a thing is the old one; undefined where nothing is put in another's place. */
export function oldIn(reading: Reading): ((thing: Thing) => boolean) | undefined {
  const behind = /\b(?:in place of|instead of|rather than|not)\b/.exec(reading.text)?.index;
  if (behind !== undefined) return ({ at }) => at[0] > behind;
  const end = swapEnd(reading);
  return end === undefined ? undefined : ({ at }) => at[0] < end;
}
