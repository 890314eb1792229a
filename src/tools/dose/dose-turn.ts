/** What every flavor of a dose question shares, worked out once: the bowl, its weights, what is asked of it. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed, weighed } from "../lib/find.ts";
import { readBase } from "./base-said.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { colorKind, colorsOfBatter, describesMix, flavorsAsked, isFlavor } from "./flavor-said.ts";
import { readShare } from "./percent-said.ts";
import { isBowl } from "./several-bowls.ts";
import { readStrength } from "./strength-said.ts";
import { readSpoon, readWant } from "./want-said.ts";

export interface DoseTurn {
  reading: Reading;
  memory: Memory;
  /** The dose that was spoken of last. */
  before?: Draft;
  /** The flavors that are asked for. */
  targets: readonly Thing[];
  /** The weights that may be of a flavor: none of them is one of several bowls. */
  weights: readonly Weighed[];
  /** The inputs that hold for every flavor of the sentence. */
  common: Draft;
  /** "other way round". */
  isTurned: boolean;
  /** She asks how much of the mix a flavor is enough for. */
  asksBase: boolean;
}

export function doseTurn(reading: Reading, memory: Memory): DoseTurn {
  const targets = targetsOf(reading, memory);
  const said = weightsSaid(reading);
  const bowl = readBase(reading, memory, said, targets);
  const common: Draft = {
    ...bowl,
    ...readShare(reading, memory),
    ...readWant(reading, memory),
    ...readSpoon(reading),
    ...(says(reading, /how many (?:\S+ )?\S*<count=drops/) ? { asks_drops: true } : {}),
    ...readStrength(reading, memory),
  };
  const isTurned = says(reading, otherWay);
  return {
    reading,
    memory,
    before: doseBefore(memory),
    targets,
    weights: said.filter((each) => !isBowl(bowl, each)),
    common,
    isTurned,
    asksBase: isTurned || (common.base_g === undefined && says(reading, howMuchBase)),
  };
}

/** "other way round: 5 g of it, how much buttercream". */
const otherWay = /other way a?round|(?:in|the) reverse|inverse|backwards?(?: |$)|solve for x/;

/** "how big a bowl of buttercream", "which weight of ganache", "what will it flavor". */
const howMuchBase =
  /how (?:big|large) (?:a|an) (?:bowl|batch)\S* (?:of )?\S*<[^>]*base|how (?:much|many|far) (?:of )?(?:plain |more |my |the |that |this )*\S*<[^>]*base|for how much (?:of )?(?:plain |my |the )*\S*<[^>]*base|(?:^| )\S*<(?:[^>]*,)?base[^>]*> (?:it|that|this|they|which) (?:can|could|will|would|does|do)(?: |$)|what (?:will|can|could|would) (?:it|that|this|they) (?:flavor|flavour|do|cover)|(?:which|what) (?:weight|amount|quantity) of (?:the |my )?\S*<(?:[^>]*,)?base/;

/** The flavors that are asked for, colors in place of tastes where the bowl is of batter. */
function targetsOf(reading: Reading, memory: Memory): Thing[] {
  // "ok skip the cocoa. hazelnut paste", "no paste left, kirsch instead"
  const isRefused = ({ at }: Thing) =>
    /\b(?:skip|forget|no|without|drop|leave out|scrap) (?:the |that |any )?$/.test(
      reading.text.slice(0, at[0]),
    );
  const kept = flavorsAsked({ ...reading, things: reading.things.filter((each) => !isRefused(each)) });
  const meant = kept.length > 0 ? kept : flavorsAsked(reading);
  const asked = colorsOfBatter(reading, memory, meant).map((each) => colorKind(each, memory));
  // "its 260 g of caramel buttercream", where only the weight was asked for: what the bowl is, and no other flavor
  const isAnswer = memory.slot === "base_g" && (memory.last?.inputs as Draft | undefined)?.dose !== undefined;
  return isAnswer && asked.every((each) => describesMix(each, reading)) ? [] : asked;
}

/** Every weight of the sentence, in g; a hue is weighed by nobody. */
export const weightsSaid = (reading: Reading): Weighed[] =>
  rebound(reading, weighed(reading)).map((each) =>
    each.thing && !each.thing.ingredient && !each.thing.base && each.thing.color
      ? { ...each, thing: undefined }
      : each,
  );

/** A weight that stands beside another thing than the one it is of. */
function rebound(reading: Reading, weights: Weighed[]): Weighed[] {
  const [only, ...others] = weights;
  if (!only || others.length > 0) return weights;
  // "my bottle of mint flavor is down to 9 g, how big a bowl": what is left of the flavor
  const left = only.thing ? undefined : reading.things.find(isFlavor);
  if (
    left &&
    says(
      reading,
      /<[^>]*dose=\S* (?:is|are|has|got) (?:only |just |about |nearly )?(?:down to |got )?\S*<weight>/,
    )
  )
    return [{ ...only, thing: left }];
  // "buttercream 95 g violet flavor grams": right behind the mix, with a unit or a question at the end
  if (!only.thing || only.thing.base || only.thing.at[0] <= only.amount.at[0]) return weights;
  const mix = reading.things.find(
    (each) => each.base && only.amount.at[0] - each.at[1] <= 2 && each.at[1] <= only.amount.at[0],
  );
  const asks = says(reading, /<unit=[^>]*>(?: \?)?$|(?:how much|amount|dose)(?: \?)?$/);
  return mix && asks ? [{ ...only, thing: mix }] : weights;
}
