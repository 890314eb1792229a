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

/** "my hands are covered in batter": what sticks to them, and no bowl. */
const sticks =
  /\b(?:covered|coated|caked|smeared|sticky|full|dripping|plastered|splattered) (?:in|with|of) (?:the |my )?$/;
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
  const mixes = reading.things.filter(isMix);
  const bowls = mixes.filter(({ at }) => !sticks.test(reading.text.slice(Math.max(0, at[0] - 30), at[0])));
  const spokenOf = bowls.length > 0 ? bowls : mixes;
  const mix = says(reading, corrects) ? spokenOf.at(-1) : spokenOf[0];
  const sameFlavor = (thing: Thing) => targets.some((each) => each.id === thing.id && Boolean(thing.dose));
  const all = weights.filter(
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
    parts: ofOneBowl(reading, all, mix),
    before: doseBefore(memory),
    earlier: doseLeanedOn(memory),
  };
}

/** What shells are made of, and no finished filling takes; yolks that are counted weigh no bowl. */
const ofShells: ReadonlySet<string> = new Set(["whites", "almond flour", "egg yolk"]);
/** "how much ganache will 8 g of flavor do", "how far does 20 g go": the mix is what is asked for. */
const asksForMix =
  /\bhow (?:far (?:does|do|will|would|can)|much (?:\S+ )?(?:buttercream|ganache|filling|smbc|bc) (?:will|does|do|would|can) (?!i\b|we\b|you\b))/;
/** Where something else begins: another sentence, a question, what else is there. */
const ends =
  /[.;?!] |%|\bpercent|\b(?:also|how|what|which|need|needs|want|fine|ok|okay|alright|(?:dark|milk|white) (?:chocolate )?ganache|(?:is|was) (?:that|it|this)|(?:i|we)(?:'ve| have|ve)?(?= (?!(?:just |then )?(?:added|add|put|stirred|mixed|folded|whipped|beat)\b)))\b/;

/** A buttercream that was weighed whole takes up no raw whites, and nothing that another sentence weighs. */
function ofOneBowl({ text }: Reading, all: readonly Weighed[], mix: Thing | undefined): Weighed[] {
  const whole = all.find((each) => each.thing?.base);
  // "how far does 26 g go in buttercream, and i have 320 g cream": of a ganache, and no bowl of buttercream
  const isGanache = ({ thing }: Weighed) => Boolean(thing?.chocolate) || thing?.ingredient === "cream";
  const isOfShells = ({ thing }: Weighed) => !thing?.base && ofShells.has(thing?.ingredient ?? "");
  if (!whole) {
    const isForeign =
      (mix?.base === "buttercream" && all.every(isGanache)) ||
      (mix !== undefined && mix.base !== "batter" && (all.every(isOfShells) || asksForMix.test(text)));
    return isForeign ? [] : [...all];
  }
  const [from, to] = whole.amount.at;
  const isApart = ({ amount: { at } }: Weighed) =>
    ends.test(at[0] > to ? text.slice(to, at[0]) : text.slice(at[1], from));
  return all.filter((each) => each === whole || !(isApart(each) || isOfShells(each)));
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
