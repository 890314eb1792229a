/** "its 8, not 11": the input that held the refused number takes the other one. */
import type { Memory, Reading } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import { type Draft, doseLeanedOn } from "./draft.ts";
import { ofTurn } from "./of-turn.ts";

const refusing = "\\b(?:not|instead of|rather than|and no|no longer)(?: the| those| a| that)?";
const refusedBefore = new RegExp(`${refusing} $`);

/** A number that was said and isn't meant; in the mask it no longer stands. */
const refusedIn = ofTurn((text) => {
  const [, said] = new RegExp(`${refusing} (\\d+(?:\\.\\d+)?)\\b`).exec(text) ?? [];
  return said === undefined ? undefined : Number(said);
});

const slots = ["flavor_g", "base_g"] as const;

/** @returns the one weight that was put right; undefined where the number refused is none of those before */
export function readNotThat(reading: Reading, memory: Memory): Draft | undefined {
  const before = doseLeanedOn(memory);
  // "not 250, 300": said first, the refused one still stands there
  const [only, ...others] = reading.amounts.filter(
    ({ at }) => reading.amounts.length === 1 || !refusedBefore.test(reading.text.slice(0, at[0])),
  );
  const refused = before && only ? refusedIn(reading.text) : undefined;
  if (!before || !only || others.length > 0 || refused === undefined || only.fraction) return undefined;
  if (only.dim !== "weight" && !(only.dim === "number" && only.unit === "")) return undefined;
  if (reading.things.some((each) => each.dose || each.taste || each.base || each.color)) return undefined;
  // "8 ounces, not 11": both in the unit of the one that stands
  const per = only.dim === "weight" ? gramsOf(only) / only.value : 1;
  const isIt = (grams: number | undefined) =>
    grams !== undefined && [refused, refused * per].some((each) => Math.abs(grams - each) < 1e-6);
  const [slot, ...more] = slots.filter((each) => isIt(before[each]));
  return slot && more.length === 0 ? { [slot]: gramsOf(only) } : undefined;
}
