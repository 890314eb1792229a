/** So much of the flavor that was spoken of: what went into the bowl, and what is left of it. */
import type { Memory, Reading } from "../contract/index.ts";
import { says, weighed } from "../lib/find.ts";
import { weightsSaid } from "./dose-turn.ts";
import { bowlOf, type Draft, doseBefore, flavorOf } from "./draft.ts";
import { isFlavor } from "./flavor-said.ts";
import { iPut, tellsPut } from "./told-put.ts";

const intoIt = new RegExp(`${iPut.source} (?:in|into|to) (?:this|that|the|my) \\S*<[^>]*base=`);

/** "i put 8 g gel", behind the dose for a bowl: into that bowl. */
export const putInBefore = (reading: Reading, before: Draft | undefined): boolean =>
  before?.base_g !== undefined &&
  !reading.things.some((each) => each.base) &&
  weighed(reading).length === 1 &&
  tellsPut(reading);

/** "i put already 8 g in this ganache, is too much?": of the flavor that was spoken of, into the bowl that was. */
export function putIntoBowl(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  if (before?.base_g === undefined || !says(reading, intoIt)) return undefined;
  const [only, ...others] = weightsSaid(reading);
  if (!only || others.length > 0 || isFlavor(only.thing)) return undefined;
  return { ...flavorOf(before), ...bowlOf(before), flavor_g: only.grams, want: "check" };
}

/** "i have 8 g of it, how much of that buttercream can i do", behind its dose. */
export function enoughFor(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseBefore(memory);
  const asked =
    /(?:have|got|ive|left|theres|there is|only) (?:only |just |about )?\S*<weight> (?:left )?of (?:it|that)(?: left)? .*how (?:much|many) (?:of )?(?:the |that |my )?\S*<[^>]*base=(?:buttercream|ganache|filling|batter|[^>]*filling)/;
  if (!before?.dose || !says(reading, asked)) return undefined;
  const [only, ...others] = weighed(reading);
  if (!only || only.thing || others.length > 0) return undefined;
  const base = reading.things.find((each) => each.base)?.base;
  return {
    ...flavorOf(before),
    base: base === "filling" ? before.base : (base ?? before.base),
    flavor_g: only.grams,
    asks_base: true,
    want: "base",
  };
}
