/** "two bowls of buttercream, 150 g and 210 g, lemon flavor for the first": which of them is meant, now and later. */
import type { Memory, Reading } from "../contract/index.ts";
import type { Weighed } from "../lib/find.ts";
import { placeSaid } from "../lib/place.ts";
import type { DoseInputs } from "./dose.ts";

type Draft = Partial<DoseInputs>;

/** The bowl that is meant of several that were weighed, in this sentence or before it. */
export function readBowls(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft | undefined {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft).bowls : undefined;
  const here = bowlsSaid(reading, weights);
  const bowls = here ?? (weights.length === 0 ? before : undefined);
  if (!bowls) return undefined;
  const base = reading.things.find((each) => each.base)?.base;
  const current = here ? undefined : (memory.last?.inputs as Draft | undefined)?.base_g;
  const base_g =
    numbered(reading, bowls) ?? meant(reading.text, bowls) ?? theOther(reading.text, bowls, current);
  if (base_g === undefined) return here ? { bowls, ...(base ? { base } : {}) } : undefined;
  return { bowls, base_g, ...(base ? { base } : {}) };
}

/** The weights that stand for bowls, and so for no flavor. */
export const isBowl = (draft: Draft, { grams, thing }: Weighed): boolean =>
  draft.bowls !== undefined && !thing?.dose && draft.bowls.includes(grams);

/** Two weights and more behind "two bowls", none of them of a flavor. */
function bowlsSaid(reading: Reading, weights: readonly Weighed[]): number[] | undefined {
  const said =
    /\b(?:two|2|three|3|four|4|both|several|different|separate) (?:\w+ )?(?:bowls?|tubs?|pots?|jars?|batches|bags?)\b/;
  const ofMixes = weights.every(({ thing }) => !thing || (thing.base !== undefined && !thing.taste));
  return weights.length >= 2 && ofMixes && said.test(reading.text)
    ? weights.map(({ grams }) => grams)
    : undefined;
}

/** "for the 140 one". */
const numbered = (reading: Reading, bowls: readonly number[]): number | undefined =>
  reading.amounts.find((each) => each.dim === "number" && each.unit === "" && bowls.includes(each.value))
    ?.value;

/** "and the other one": of two, the one that wasn't meant just now. */
function theOther(text: string, bowls: readonly number[], current: number | undefined): number | undefined {
  const at = bowls.indexOf(current ?? Number.NaN);
  return bowls.length === 2 && at >= 0 && /\bthe other\b/.test(text) ? bowls[1 - at] : undefined;
}

function meant(text: string, bowls: readonly number[]): number | undefined {
  if (/\b(?:both|all of (?:it|them)|altogether|together|all (?:two|three|four)|all in one)\b/.test(text))
    return bowls.reduce((sum, each) => sum + each, 0);
  const at = placeSaid(text);
  if (at !== undefined) return bowls.at(at);
  if (/\bthe (?:big|bigger|biggest|large|larger|largest)\b/.test(text)) return Math.max(...bowls);
  return /\bthe (?:small|smaller|smallest|little)\b/.test(text) ? Math.min(...bowls) : undefined;
}
