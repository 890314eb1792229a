/** What every way of asking for a ganache looks at, worked out once. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed, weighed } from "../lib/find.ts";
import type { Way } from "../lib/ways.ts";
import type { GanacheInputs } from "./ganache.ts";
import { kindOf } from "./kind-said.ts";
import { readLines } from "./mix-said.ts";
import { asksChocolate, readWant } from "./want-said.ts";

export type Draft = Partial<GanacheInputs>;
export type Lines = NonNullable<GanacheInputs["lines"]>;
export type GanacheWay = Way<GanacheTurn, Draft | Draft[]>;

export interface GanacheTurn {
  reading: Reading;
  memory: Memory;
  weights: readonly Weighed[];
  /** The ganache that was asked for last. */
  last: Draft | undefined;
  /** The same, where this turn leans on it. */
  before: Draft | undefined;
  want: Draft;
  use: GanacheInputs["use"];
  /** Kind, use and want, which stand beside whatever weights there are. */
  common: Draft;
  /** Every weighed ingredient by name. */
  lines: Lines;
}

/** The inputs of the ganache that was asked for last, if nothing else came between. */
export const ganacheBefore = ({ last }: Memory): Draft | undefined =>
  last?.tool === "ganache" ? (last.inputs as Draft) : undefined;

const isPart = /<|^(?:and|with|plus|to|on|\?|,|&)$/;

export function ganacheTurn(reading: Reading, memory: Memory): GanacheTurn {
  const last = ganacheBefore(memory);
  // "250 g white and 100 g cream?" alone asks the same of another mix
  const isAlone = reading.mask.split(" ").every((word) => isPart.test(word));
  const want = readWant(reading);
  const chocolate = kindOf(reading);
  const use = usedFor(reading);
  const usual = use ?? (isTooLoose(reading) && asksChocolate(reading) ? "loose" : undefined);
  return {
    reading,
    memory,
    weights: weighed(reading),
    last,
    before: memory.follows || isAlone ? last : undefined,
    want,
    use,
    common: { ...(chocolate ? { chocolate } : {}), ...(usual ? { use: usual } : {}), ...want },
    lines: readLines(reading).lines ?? [],
  };
}

/** What is too loose is one to pour, where its chocolate is still to be worked out. */
const isTooLoose = ({ things }: Reading): boolean => things.some((each) => each.symptom === "loose ganache");

const fills = /(?:filling|macaron)\S* (?:\S+ )?\S*<[^>]*base=ganache|ganache\S* (?:filling|to fill)/;
const pours = /(?:what|how much)[^?]* pour\S* (?:on|over|in|onto)(?: |$)/;
const toFill = /(?:^| )(?:to|for) (?:fill|filling|sandwich)/;

/** "for a drip, not piping": the use that isn't meant. */
const isRefused = (reading: Reading, { at }: Thing): boolean =>
  /(?:^| )(?:not|no|never|instead of|rather than)(?: for| a| to)* $/.test(reading.text.slice(0, at[0]));

/** "how much cream do i pour over it": onto the chocolate that it is made of. */
const isMaking = ({ text }: Reading, { at, text: own }: Thing): boolean =>
  /^pour/.test(own) &&
  /\bcream (?:do|should|must|can|shall|would|will) (?:i|we|you) (?:need to |have to )?$/.test(
    text.slice(0, at[0]),
  ) &&
  /^(?: (?:over|on|onto|in|into))?(?: (?:it|that|this|them|(?:the |my )?(?:[\d.]+ ?(?:g|grams?|oz|kg)? )?(?:of )?(?:the |my )?(?:chopped )?(?:\w+ )?(?:choc\w*|couverture))\b|(?: then)? ?[?.]?$)/.test(
    text.slice(at[1]),
  );

/** "dripping off the spoon": what it does, and no use of it. */
const isRunning = ({ text }: Reading, { at, use }: Thing): boolean =>
  use === "loose" &&
  /^(?: straight| right| just| all| clean)* (?:off|from|out of) (?:the |my |a )?(?:\w+ )?(?:spoon|spatula|whisk|paddle|knife|bag|tip|nozzle)\b/.test(
    text.slice(at[1]),
  );

function usedFor(reading: Reading): GanacheInputs["use"] {
  // "how much cream do i pour over it, for a filling": poured to make it, piped to use it
  if (says(reading, fills) && says(reading, pours)) return "piping";
  const named = reading.things.findLast(
    (each) => each.use && !isRefused(reading, each) && !isMaking(reading, each) && !isRunning(reading, each),
  )?.use;
  return named ?? (says(reading, toFill) ? "piping" : undefined);
}
