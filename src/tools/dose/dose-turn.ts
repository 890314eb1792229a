/** What every flavor of a dose question shares, worked out once: the bowl, its weights, what is asked of it. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed, weighed } from "../lib/find.ts";
import { readBase } from "./base-said.ts";
import { type Draft, doseBefore } from "./draft.ts";
import { colorKind, colorsOfBatter, describesMix, flavorsAsked, isFlavor } from "./flavor-said.ts";
import { readShare } from "./percent-said.ts";
import { isBowl } from "./several-bowls.ts";
import { readSpoon } from "./spoon-asked.ts";
import { readStrength } from "./strength-said.ts";
import { asksEnoughFor, readWant } from "./want-said.ts";

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
    ...(says(reading, asksPercent) ? { asks_percent: true } : {}),
    ...readStrength(reading, memory),
  };
  const isTurned = says(reading, otherWay);
  const before = doseBefore(memory);
  return {
    reading,
    memory,
    before,
    targets,
    weights: said.filter((each) => !isBowl(bowl, each)),
    common: { ...common, ...turnedForward(reading, before, bowl, said), ...rangeOf(reading, before, said) },
    isTurned,
    asksBase:
      (isTurned && common.base_g === undefined) ||
      (common.base_g === undefined && (says(reading, howMuchBase) || asksEnoughFor(reading))),
  };
}

/** "what percentage of rose flavor should i put in 200 g": the range itself, beside its grams. */
const asksPercent =
  /(?:^| )(?:what|which) (?:percentage|percent|share|\S*<unit=%>) (?:of )?(?:the |my )?(?:(?:should|do|would|could|might|ought|does) |\S*<[^>]*(?:dose|taste)=)/;

/** "what percentage is that", behind a dose that is still to go in. */
const rangeOf = (reading: Reading, before: Draft | undefined, said: readonly Weighed[]): Draft =>
  said.length === 0 &&
  before?.base_g !== undefined &&
  before.flavor_g === undefined &&
  says(
    reading,
    /(?:^| )(?:what|which) (?:\S*<unit=%>|percentage|percent|share) (?:is|was|are|would|does|do) (?:that|it|this|those|they)(?: |$)/,
  )
    ? { asks_percent: true, want: "flavor" }
    : {};

/** "other way round: 5 g of it, how much buttercream". */
const otherWay =
  /other way (?:a?round|about|over)|turn(?:ed|ing)? (?:it |that |this )?(?:a?round|about|over)(?: |$)|vice versa|(?:in|the) reverse|inverse|backwards?(?: |$)|solve for x/;

/** "how much do i need", "what does it want": of the flavor, for a bowl that was weighed. */
const asksNeed =
  /(?:^| )(?:how (?:much|many)(?: g| grams)?(?: of (?:it|that))? (?:do|does|should|would|will|must|can) (?:i|we|it|that|this|one) (?:have to |need to )?(?:need|want|take|use|put|add|require|stir)|what (?:does|would|will|do) (?:it|that|this|i|we) (?:need|want|take|require)|how (?:much|many)(?: g| grams)? of (?:it|that|this)(?= (?:then|now|goes|go|please|[?])|$))(?: |$)/;

/** "other way round, theres 250 g of ganache", behind how much the flavor is enough for: what goes into so much. */
const turnedForward = (
  reading: Reading,
  before: Draft | undefined,
  { base_g }: Draft,
  said: readonly Weighed[],
): Draft =>
  before?.flavor_g !== undefined &&
  before.base_g === undefined &&
  base_g !== undefined &&
  !said.some((each) => isFlavor(each.thing)) &&
  (says(reading, otherWay) || says(reading, asksNeed))
    ? { want: "flavor", fresh: true }
    : {};

/** "how big a bowl of buttercream", "which weight of ganache", "what will it flavor". */
const howMuchBase =
  /how (?:big|large) (?:a|an) (?:bowl|batch)\S* (?:of )?\S*<[^>]*base|how (?:much|many|far) (?:of )?(?:plain |more |my |the |that |this )*\S*<[^>]*base|for how much (?:of )?(?:plain |my |the )*\S*<[^>]*base|(?:^| )\S*<(?:[^>]*,)?base[^>]*> (?:it|that|this|they|which) (?:can|could|will|would|does|do)(?: |$)|what (?:will|can|could|would) (?:it|that|this|they) (?:flavor|flavour|do|cover)|(?:which|what) (?:weight|amount|quantity|size|bowl|batch)(?:<\S*)?(?: of)?(?: a)? (?:the |my )?\S*<(?:[^>]*,)?base/;

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
    isHue(each) || isBowlBehind(reading, each) ? { ...each, thing: undefined } : each,
  );

const isHue = ({ thing }: Weighed) => Boolean(thing?.color && !thing.ingredient && !thing.base);

/** Nobody stirs in so much flavor: at the 5 % where its range ends, 100 g are for two kilos of buttercream. */
const mostFlavor_g = 100;

/** "matcha plus salt with 200 g": that weight is of what they go into. */
const isBowlBehind = ({ text }: Reading, { thing, amount, grams }: Weighed): boolean =>
  isFlavor(thing) &&
  grams >= mostFlavor_g &&
  amount.at[0] > thing.at[1] &&
  /\bwith (?:just |only |about )?$/.test(text.slice(thing.at[1], amount.at[0]));

/** A weight that stands beside another thing than the one it is of. */
function rebound(reading: Reading, weights: Weighed[]): Weighed[] {
  const [only, ...others] = weights;
  const named = bothNamedFirst(reading, weights);
  if (named) return named;
  if (!only || others.length > 0) return weights;
  // "my bottle of mint flavor is down to 9 g, how big a bowl": what is left of the flavor
  const left = only.thing ? undefined : reading.things.find(isFlavor);
  // "only 8 g of it. what weight of buttercream will that season": the mix is asked for, so the flavor was weighed
  if (left && ((left.at[0] < only.amount.at[0] && says(reading, howMuchBase)) || asksEnoughFor(reading)))
    return [{ ...only, thing: left }];
  // nobody flavors a bowl of so little
  const isFor = /\b(?:for|in|into|to|of|on) (?:just |only |about )?$/.test(
    reading.text.slice(0, only.amount.at[0]),
  );
  if (left && left.at[0] < only.amount.at[0] && only.grams < leastBowl_g && !isFor)
    return [{ ...only, thing: left }];
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
  if (mix && (asks || reading.mask.includes("<percent>"))) return [{ ...only, thing: mix }];
  // "my filling is 590 g strawberry, 3.5 percent": what the mix weighs, told with its verb
  const told = reading.things.find(
    (each) =>
      each.base &&
      each.at[1] <= only.amount.at[0] &&
      /^ (?:is|weighs|weighed|comes to|came to|is about|turned out)(?: (?:only|just|about))? $/.test(
        reading.text.slice(each.at[1], only.amount.at[0]),
      ),
  );
  return told && only.grams > mostToldFlavor_g ? [{ ...only, thing: told }] : weights;
}

/** The filling of one macaron and a half (7.2 g each). */
const leastBowl_g = 10;

/** Less than this may be a flavor that the mix is told to hold; a bowl of it would fill seven macarons (7.2 g each). */
const mostToldFlavor_g = 50;

/** "lemon flavor in already: 4 g buttercream 390 g": nothing stands behind the second weight, so both are named first. */
function bothNamedFirst(
  { things, text }: Reading,
  [first, second, ...more]: Weighed[],
): Weighed[] | undefined {
  if (!first || !second || more.length > 0) return undefined;
  const mix = things.find(
    (each) => each.base && each.at[0] >= first.amount.at[1] && each.at[1] <= second.amount.at[0],
  );
  const [flavor, ...others] = things.filter(isFlavor);
  if (!mix || !flavor || others.length > 0 || flavor.at[1] > first.amount.at[0]) return undefined;
  const isBeside = /^,? $/;
  return isBeside.test(text.slice(first.amount.at[1], mix.at[0])) &&
    isBeside.test(text.slice(mix.at[1], second.amount.at[0])) &&
    first.grams < second.grams
    ? [
        { ...first, thing: flavor },
        { ...second, thing: mix },
      ]
    : undefined;
}
