/** What every way of saying the base looks at, worked out once. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed } from "../lib/find.ts";
import type { Way } from "../lib/ways.ts";
import { type Draft, doseBefore, doseLeanedOn } from "./draft.ts";

export interface BaseTurn {
  reading: Reading;
  memory: Memory;
  /** Every weight of the sentence, in g. */
  weights: readonly Weighed[];
  /** The mix that is named, and what figures call it. */
  mix?: Thing;
  base?: string;
  /** The weights that are of a mix or of a part of one. */
  parts: readonly Weighed[];
  /** The dose that was spoken of last. */
  before?: Draft;
  /** The same, where this turn leans on it. */
  earlier?: Draft;
}

export type BaseWay = Way<BaseTurn, Draft>;

const isMix = (each: Thing) => each.base !== undefined && each.base !== "meringue";

/** "i called it ganache but it is buttercream": the second one is meant. */
const corrects =
  /<[^>]*base=\S+ (?:but|sorry|no),? (?:(?:it|its|is|was|really|actually|in fact|i meant) )*\S*<[^>]*base=/;

export function baseTurn(
  reading: Reading,
  memory: Memory,
  weights: readonly Weighed[],
  targets: readonly Thing[],
): BaseTurn {
  const mix = says(reading, corrects) ? reading.things.findLast(isMix) : reading.things.find(isMix);
  const sameFlavor = (thing: Thing) => targets.some((each) => each.id === thing.id && Boolean(thing.dose));
  const parts = weights.filter(
    ({ thing }) =>
      thing &&
      !targets.includes(thing) &&
      !sameFlavor(thing) &&
      (thing.ingredient || thing.base || thing.chocolate),
  );
  return {
    reading,
    memory,
    weights,
    mix,
    base: mix?.base,
    parts,
    before: doseBefore(memory),
    earlier: doseLeanedOn(memory),
  };
}

/** A draft that also names the mix, where one is known. */
export const named = (draft: Draft, base: string | undefined): Draft => (base ? { ...draft, base } : draft);

const mixes = new Set([
  "buttercream",
  "ganache",
  "batter",
  "filling",
  "cream cheese filling",
  "mascarpone filling",
]);

/** The mix that lies on the table under a name that figures use, if it is one. */
export const mixOf = (thing: string | undefined): string | undefined =>
  thing !== undefined && mixes.has(thing) ? thing : undefined;

/** g of what was weighed, under the mix that the sentence names or else the one that it lay there as. */
export const taken = (base_g: number, { base }: BaseTurn, lay_as: string | undefined): Draft =>
  named({ base_g }, base ?? mixOf(lay_as));

/** One part of a mix that is summed from its parts. */
export const partOf = (each: Weighed) => ({
  name: each.thing?.ingredient ?? each.thing?.base ?? each.thing?.text ?? "",
  grams: each.grams,
});

/** A mix as the sum of its parts. */
export const summed = (parts: { name: string; grams: number }[]): Draft => ({
  parts,
  base_g: parts.reduce((sum, each) => sum + each.grams, 0),
});
