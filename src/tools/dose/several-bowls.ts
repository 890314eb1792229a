/** "two bowls of buttercream, 150 g and 210 g, lemon flavor for the first": which of them is meant, now and later. */
import { vessel, vessels } from "../../../data/words/vessels.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, type Weighed } from "../lib/find.ts";
import { placeSaid } from "../lib/place.ts";
import { type Draft, doseBefore, doseLeanedOn } from "./draft.ts";
import { inTurn, ofTurn } from "./of-turn.ts";

/** The bowl that is meant of several that were weighed, in this sentence or before it. */
export function readBowls(reading: Reading, memory: Memory, weights: readonly Weighed[]): Draft | undefined {
  const before = doseBefore(memory)?.bowls;
  const here = bowlsSaid(reading, weights) ?? bowlsNumbered(reading);
  const changed = here ? undefined : bowlChanged(reading, before, weights);
  if (changed) return changed;
  const bowls = here ?? (weights.length === 0 ? before : undefined);
  if (!bowls) return undefined;
  const base = reading.things.find((each) => each.base)?.base;
  const current = here ? undefined : (memory.last?.inputs as Draft | undefined)?.base_g;
  const base_g =
    (bowlsNumbered(reading) ? undefined : numbered(reading, bowls)) ??
    meant(reading.text, bowls) ??
    theOther(reading.text, bowls, current);
  if (base_g === undefined) return here ? { bowls, ...(base ? { base } : {}) } : undefined;
  return { bowls, base_g, ...(base ? { base } : {}) };
}

/** The weights that stand for bowls, and so for no flavor. */
export const isBowl = (draft: Draft, { grams, thing }: Weighed): boolean =>
  draft.bowls !== undefined && !thing?.dose && draft.bowls.includes(grams);

const saysBowls = inTurn(
  new RegExp(
    `\\b(?:two|2|three|3|four|4|both|several|different|separate) (?:\\w+ )?(?:${vessel}|${vessels})\\b`,
  ),
);

/** Two weights and more behind "two bowls", none of them of a flavor. */
function bowlsSaid(reading: Reading, weights: readonly Weighed[]): number[] | undefined {
  const ofMixes = weights.every(({ thing }) => !thing || (thing.base !== undefined && !thing.taste));
  return weights.length >= 2 && ofMixes && saysBowls(reading.text)
    ? weights.map(({ grams }) => grams)
    : undefined;
}

const counts = ["two", "three", "four", "five"];

const bowlCount = new RegExp(`\\b(two|three|four|five|[2-5]) (?:\\w+ )?(?:${vessel}|${vessels})\\b`);

/** How many bowls the turn speaks of, 0 where it doesn't say. */
const bowlsCounted = ofTurn((text): number => {
  const [, said] = bowlCount.exec(text) ?? [];
  return said === undefined ? 0 : counts.includes(said) ? counts.indexOf(said) + 2 : Number(said);
});

/** "3 bowls buttercream 120 150 180": as many bare weights as bowls. */
function bowlsNumbered(reading: Reading): number[] | undefined {
  const many = bowlsCounted(reading.text);
  const bare = bareNumbers(reading).filter((each) => each.value >= leastBowl_g);
  const isMix = reading.things.some((each) => each.base);
  return isMix && many > 1 && bare.length === many && !reading.amounts.some(({ dim }) => dim === "weight")
    ? bare.map((each) => each.value)
    : undefined;
}

const leastBowl_g = 40;

/** "no, 130 in the first": that bowl's weight put right. */
function bowlChanged(
  reading: Reading,
  bowls: readonly number[] | undefined,
  weights: readonly Weighed[],
): Draft | undefined {
  const [only, ...others] = reading.amounts;
  const grams = only?.dim === "weight" ? weights[0]?.grams : only?.value;
  const at = bowls && placeSaid(reading.text);
  if (!bowls || at === undefined || !only || others.length > 0 || grams === undefined) return undefined;
  const isWeight = only.dim === "weight" || (only.dim === "number" && only.unit === "" && !only.fraction);
  if (!isWeight || only.of?.taste || only.of?.dose || grams < leastBowl_g) return undefined;
  const place = at < 0 ? bowls.length + at : at;
  if (place >= bowls.length || bowls.includes(grams)) return undefined;
  return { bowls: bowls.map((each, i) => (i === place ? grams : each)), base_g: grams };
}

const forEach = new RegExp(`\\b(?:each|every(?: one| ${vessel})?|all of them)\\b`);

/** A draft a bowl, where it is asked for each of them; also for another flavor right behind that. */
export function forBowls(drafts: Draft[], { text, amounts }: Reading, memory: Memory): Draft[] {
  const [draft, ...others] = drafts;
  const before = doseLeanedOn(memory);
  const bowls = draft?.bowls ?? before?.bowls;
  if (!draft || others.length > 0 || !bowls || draft.base_g !== undefined) return drafts;
  const again = before?.each_bowl === true && amounts.length === 0 && Object.keys(draft).length > 0;
  if (draft.flavor_g !== undefined || !(forEach.test(text) || again)) return drafts;
  return bowls.map((base_g) => ({ ...draft, bowls, base_g, each_bowl: true }));
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
