/** Reads a dose question: which weights are the base, which is the flavor, and what is wanted. */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { says, type Weighed, weighed } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { asksAnew, isAnother } from "./anew.ts";
import { readWhichWeight } from "./bare-weight.ts";
import { readBase } from "./base-said.ts";
import type { DoseInputs } from "./dose.ts";
import {
  colorKind,
  colorsOfBatter,
  flavorsAsked,
  hueOf,
  isFlavor,
  nameOf,
  sameAgain,
} from "./flavor-said.ts";
import { readFlavorWeight } from "./flavor-weight.ts";
import { saidOfFood } from "./food-said.ts";
import { isOver, readLoose } from "./loose-said.ts";
import { forParts } from "./parts-said.ts";
import { forBowls, isBowl } from "./several-bowls.ts";
import { isFarOver, readShareOfBowl } from "./share-of-bowl.ts";
import { readSharesOf } from "./shares-said.ts";
import { readTimes } from "./times-said.ts";
import { readTwicePart } from "./twice-part.ts";
import { bowlBefore, unknownWeighed } from "./unknown-said.ts";
import { readShare, readSpoon, readStrength, readWant } from "./want-said.ts";

type Draft = Partial<DoseInputs>;

/** "is that too much cocoa for 300 g buttercream", behind spoons that were turned into grams: they are the flavor. */
function justConverted({ mask, amounts }: Reading, { last, table }: Memory): Draft {
  const isFlavor =
    last?.tool === "convert" &&
    table.mass !== undefined &&
    amounts.filter((each) => each.dim === "weight").length === 1 &&
    /^(?:(?:so|and|hm|ok|but) )*(?:is|would|will|was) (?:that|it|this) (?:be )?(?:too (?:much|little|strong|weak)|enough|ok|okay|fine|right|alright|a lot)(?: |$)|^(?:(?:so|and|hm|ok|but) )*(?:thats|that is|its) (?:far |way )?too (?:much|little) \S*<[^>]*dose=\S* (?:in|for) /.test(
      mask,
    );
  return isFlavor && table.mass ? { flavor_g: table.mass.grams, want: "check" } : {};
}

/** "i have put those 16.2 g in 300 g of buttercream", behind spoons that were turned into grams. */
function thoseInBowl(reading: Reading, { last, table }: Memory): Draft {
  const [first, second] = weighed(reading);
  const isIt =
    last?.tool === "convert" &&
    first &&
    second?.thing?.base !== undefined &&
    !first.thing &&
    table.mass !== undefined &&
    Math.abs(first.grams - table.mass.grams) < 0.06 * table.mass.grams;
  return isIt ? { flavor_g: first.grams, base_g: second.grams, base: second.thing?.base, want: "check" } : {};
}

/** What had been turned into grams, where the sentence names no flavor: "vanilla extract". */
function ofConverted(reading: Reading, memory: Memory): Draft {
  const thing = memory.table.mass?.thing;
  const isIt = [justConverted(reading, memory), thoseInBowl(reading, memory)].some(
    (each) => each.flavor_g !== undefined,
  );
  if (!thing || !isIt) return {};
  if (/ extract$/.test(thing)) return { dose: "extract", taste: thing.replace(/ extract$/, ""), name: thing };
  const row = doseRows.find((each) => each.name === thing);
  return row ? { dose: row.name, name: thing } : {};
}

/** One draft a flavor that is asked for; most questions name one or none. */
export const readDose = (reading: Reading, memory: Memory): Draft[] =>
  forBowls(forParts(readFlavors(reading, memory), reading, memory), reading, memory).map((draft) => ({
    ...(draft.flavor_g !== undefined && isOver(reading) ? asOver(draft) : draft),
    // "and for a fresh bowl of 160 g": nothing is in that one
    ...(draft.base_g !== undefined && draft.flavor_g === undefined && freshBowl.test(reading.text)
      ? { want: "flavor" as const, fresh: true }
      : {}),
    ...(draft.flavor_g === undefined && shouldHave.test(reading.text)
      ? { want: "flavor" as const, fresh: true }
      : {}),
    ...saidOfFood(reading),
    ...unitOfBowl(reading, draft),
    ...farOver(draft, memory),
  }));

/** "60 %", behind gel for a bowl: no dose. */
function farOver(draft: Draft, { last, follows }: Memory): Draft {
  const before = follows && last?.tool === "dose" ? (last.inputs as Draft) : {};
  const { percent, of_finished } = draft;
  return percent !== undefined && !of_finished && isFarOver({ ...before, ...draft }, percent)
    ? { far_over: true }
    : {};
}

/** The bowl was weighed in ounces or pounds. */
const unitOfBowl = ({ amounts }: Reading, { base_g }: Draft): Draft => {
  const said = amounts.find(
    ({ dim, unit, value }) =>
      dim === "weight" && (unit === "oz" || unit === "lb") && inBase(value, unit) === base_g,
  );
  return said ? { base_unit: said.unit as "oz" } : {};
};

/** "what should i have put in the 350 to begin with": the right dose for that bowl, whatever is in it. */
const shouldHave =
  /\b(?:what|how much) (?:should|ought) (?:i|we) (?:to )?(?:have )?(?:put|used?|added?|gone with|taken)\b.*\b(?:to (?:begin|start) with|first|originally|instead|at first|in the first place)\b|\b(?:what|how much) (?:should|ought) (?:i|we) (?:to )?have (?:put|used|added)\b/;

const freshBowl = /\b(?:fresh|new|clean|next) (?:bowl|batch|lot|one)\b/;

/** So much over what was meant: how much is in it in all is asked. */
const asOver = ({ flavor_g, ...draft }: Draft): Draft => ({ ...draft, more_g: flavor_g, want: "check" });

/** "whats that in grams", of so many spoons. */
function inGrams({ mask }: Reading, { last }: Memory): Draft | undefined {
  const { spoon, ...before } = last?.tool === "dose" ? (last.inputs as Draft) : {};
  return spoon && /(?:that|it|those) in \S*<unit=g>/.test(mask) ? { ...before, spoon: "g" } : undefined;
}

/** "i have 8 g of it, how much of that buttercream can i do", behind its dose. */
function enoughFor(reading: Reading, { last }: Memory): Draft | undefined {
  const before = last?.tool === "dose" ? (last.inputs as Draft) : undefined;
  const [only, ...others] = weighed(reading);
  const asked =
    /(?:have|got|ive|left|theres|there is|only) (?:only |just |about )?\S*<weight> (?:left )?of (?:it|that)(?: left)? .*how (?:much|many) (?:of )?(?:the |that |my )?\S*<[^>]*base=(?:buttercream|ganache|filling|batter|[^>]*filling)/;
  if (!before?.dose || !only || only.thing || others.length > 0 || !says(reading, asked)) return undefined;
  const base = reading.things.find((each) => each.base)?.base;
  return {
    ...flavorOf(before),
    base: base === "filling" ? before.base : (base ?? before.base),
    flavor_g: only.grams,
    asks_base: true,
    want: "base",
  };
}

function readFlavors(reading: Reading, memory: Memory): Draft[] {
  const enough = enoughFor(reading, memory);
  if (enough) return [enough];
  const grams = inGrams(reading, memory);
  if (grams) return [grams];
  const pairs = readPairs(reading) ?? readSharesOf(reading);
  if (pairs) return pairs;
  const settled =
    readWhichWeight(reading, memory) ??
    readTimes(reading, memory) ??
    readShareOfBowl(reading, memory) ??
    readTwicePart(reading, memory);
  if (settled) return [settled];
  // "ok skip the cocoa. hazelnut paste", "no paste left, kirsch instead"
  const isRefused = ({ at }: Thing) =>
    /\b(?:skip|forget|no|without|drop|leave out|scrap) (?:the |that |any )?$/.test(
      reading.text.slice(0, at[0]),
    );
  const rest = { ...reading, things: reading.things.filter((each) => !isRefused(each)) };
  const meant = flavorsAsked(rest).length > 0 ? flavorsAsked(rest) : flavorsAsked(reading);
  const asked = colorsOfBatter(reading, memory, meant).map((each) => colorKind(each, memory));
  // "its 260 g of caramel buttercream", where only the weight was asked for: what the bowl is, and no other flavor
  const describes = (each: Thing) =>
    reading.things.some((other) => other.base && other.at[0] > each.at[1] && other.at[0] - each.at[1] <= 1);
  const isAnswer = memory.slot === "base_g" && (memory.last?.inputs as Draft | undefined)?.dose !== undefined;
  const targets = isAnswer && asked.every(describes) ? [] : asked;
  const said = rebound(reading, weighed(reading)).map((each) =>
    each.thing && !each.thing.ingredient && !each.thing.base && each.thing.color
      ? { ...each, thing: undefined }
      : each,
  );
  const into = putIntoBowl(reading, memory, said);
  if (into) return [into];
  const bowl = readBase(reading, memory, said, targets);
  const weights = said.filter((each) => !isBowl(bowl, each));
  const common = {
    ...bowl,
    ...readShare(reading, memory),
    ...readWant(reading, memory),
    ...readSpoon(reading),
    ...(says(reading, /how many (?:\S+ )?\S*<count=drops/) ? { asks_drops: true } : {}),
    ...readStrength(reading, memory),
  };
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const unknown = unknownAsked(reading);
  // "how much for 250 ganache", right after a bottle was saved: of that bottle
  const bottle =
    memory.last?.tool === "shelf"
      ? (memory.last.inputs as { does?: string; taste?: string; form?: string })
      : undefined;
  if (targets.length === 0 && !unknown && bottle?.does === "bottle" && bottle.taste)
    return [
      {
        ...common,
        ...readLoose(reading, memory, weights, common, before),
        taste: bottle.taste,
        dose: bottle.form ?? "flavor",
      },
    ];
  if (targets.length === 0 && unknown) return [{ ...common, unknown }];
  const nameless = targets.length === 0 ? unknownWeighed(reading) : undefined;
  if (nameless)
    return [
      {
        ...(common.base_g === undefined && common.base === undefined ? bowlBefore(memory) : {}),
        ...common,
        ...nameless,
      },
    ];
  // "other way round: 5 g of it, how much buttercream"
  const isTurned = says(
    reading,
    /other way a?round|(?:in|the) reverse|inverse|backwards?(?: |$)|solve for x/,
  );
  const asksBase =
    isTurned ||
    (common.base_g === undefined &&
      says(
        reading,
        /how (?:big|large) (?:a|an) (?:bowl|batch)\S* (?:of )?\S*<[^>]*base|how (?:much|many|far) (?:of )?(?:plain |more |my |the |that |this )*\S*<[^>]*base|for how much (?:of )?(?:plain |my |the )*\S*<[^>]*base|(?:^| )\S*<(?:[^>]*,)?base[^>]*> (?:it|that|this|they|which) (?:can|could|will|would|does|do)(?: |$)|what (?:will|can|could|would) (?:it|that|this|they) (?:flavor|flavour|do|cover)|(?:which|what) (?:weight|amount|quantity) of (?:the |my )?\S*<(?:[^>]*,)?base/,
      ));
  // "how much of it for 12 oz of ganache", behind a bowl with some in it
  if (
    targets.length === 0 &&
    before?.dose &&
    common.base_g !== undefined &&
    says(reading, /how (?:much|many) of (?:it|that|the same|this) (?:for|in|into) /)
  )
    return [{ ...common, want: "flavor", fresh: true }];
  if (targets.length === 0) {
    const loose = readLoose(reading, memory, weights, common, before);
    const { flavor_g } = loose;
    // "and if it went into ganache, how much of that would it do": the way back again
    const isBack = before?.flavor_g !== undefined && before.base_g === undefined && weights.length === 0;
    if (isBack && common.want === "check") delete (common as Draft).want;
    const backward =
      flavor_g !== undefined &&
      before?.base_g !== undefined &&
      (isTurned ||
        (asksBase &&
          common.want !== "mend" &&
          says(
            reading,
            /will|would|can|could|does|do(?: |$)|(?:is|are) (?:the |my |that |those )?\S*<weight> (?:good|enough|right)/,
          )));
    // "how much buttercream would a 6 g sachet do", behind its dose: of the same flavor
    const ofSame = flavor_g !== undefined && asksBase && !backward;
    if (ofSame && before?.dose !== undefined) return [{ ...common, ...loose, ...flavorOf(before) }];
    return [
      backward
        ? {
            ...common,
            ...flavorOf(before),
            flavor_g,
            asks_base: true,
            ...(before.base ? { base: before.base } : {}),
          }
        : {
            ...common,
            ...loose,
            ...justConverted(reading, memory),
            ...thoseInBowl(reading, memory),
            ...ofConverted(reading, memory),
          },
    ];
  }
  const drafts = targets.map((target) => ({
    ...common,
    ...justConverted(reading, memory),
    ...(asksBase && readFlavorWeight(reading, weights, target).flavor_g !== undefined
      ? { asks_base: true, want: "base" as const }
      : {}),
    ...(sameAgain(target, memory) || isTheOne(target, before, reading)
      ? {}
      : { ...nameOf(ofTaste(target, before, memory), reading), ...hueOf(target, reading) }),
    ...(before?.percent !== undefined &&
    common.percent === undefined &&
    nameOf(target, reading).dose !== before.dose
      ? { by_table: true }
      : {}),
    ...(before?.end !== undefined && common.end === undefined ? { whole_range: true } : {}),
    ...((before?.want === "flavor" || putInBefore(reading, before)) &&
    readFlavorWeight(reading, weights, target).flavor_g !== undefined
      ? {
          want: "check" as const,
          ...(putInBefore(reading, before) ? { base_g: before?.base_g, base: before?.base } : {}),
        }
      : {}),
    ...(isAnother(target, reading, before) || asksAnew(reading, before, common)
      ? { want: "flavor" as const, fresh: true }
      : {}),
    ...readFlavorWeight(reading, weights, target),
    ...(targets.length === 1
      ? readLoose(
          reading,
          memory,
          weights,
          { ...common, ...readFlavorWeight(reading, weights, target) },
          before,
        )
      : {}),
  }));
  const asks =
    asksBase ||
    before?.base_g !== undefined ||
    targets.length > 1 ||
    says(reading, /<[^>]*base=|how (?:far|many)/);
  return asks ? drafts : drafts.map(ofBowl);
}

/** "i put 8 g gel", behind the dose for a bowl: into that bowl. */
const putInBefore = (reading: Reading, before: Draft | undefined): boolean =>
  before?.base_g !== undefined &&
  !reading.things.some((each) => each.base) &&
  weighed(reading).length === 1 &&
  says(
    reading,
    /(?:^| )i (?:have |ve )?(?:already )?(?:put|added|used|poured|tipped|stirred|dropped|squeezed|stuck\S*|popped|chucked|threw|splashed)(?: in| already)? \S*<weight>/,
  );

/** "i put already 8 g in this ganache, is too much?": of the flavor that was spoken of, into the bowl that was. */
function putIntoBowl(reading: Reading, { last }: Memory, weights: readonly Weighed[]): Draft | undefined {
  const before = last?.tool === "dose" ? (last.inputs as Draft) : undefined;
  const [only, ...others] = weights;
  if (before?.base_g === undefined || !only || others.length > 0 || (only.thing && isFlavor(only.thing)))
    return undefined;
  const said = says(
    reading,
    /(?:^| )i (?:have |ve |already |just )*(?:put|added|used|poured|tipped|stirred|dumped|dropped)(?: in| already)? \S*<weight> (?:in|into|to) (?:this|that|the|my) \S*<[^>]*base=/,
  );
  if (!said) return undefined;
  return {
    ...flavorOf(before),
    base_g: before.base_g,
    ...(before.base ? { base: before.base } : {}),
    flavor_g: only.grams,
    want: "check",
  };
}

/** The inputs that name a flavor. */
const flavorOf = ({ dose, taste, name, bare }: Draft): Draft => ({
  ...(dose ? { dose } : {}),
  ...(taste ? { taste } : {}),
  ...(name ? { name } : {}),
  ...(bare ? { bare } : {}),
});

/** "back to the espresso one": in the form that it had before. */
const isTheOne = (target: Thing, before: Draft | undefined, { text }: Reading): boolean =>
  before?.dose !== undefined &&
  target.taste !== undefined &&
  target.taste === before.taste &&
  !target.dose &&
  /\bthe $/.test(text.slice(0, target.at[0])) &&
  /^ (?:one|batch|bowl)\b/.test(text.slice(target.at[1]));

/** "only got extract, how much of that", behind vanilla paste: the same taste in another form. */
function ofTaste(target: Thing, before: Draft | undefined, memory: Memory): Thing {
  const form = ["extract", "oil", "vanilla paste", "nut paste", "zest"].includes(target.dose ?? "");
  const known = memory.last?.tool === "dose" && before?.taste && !target.taste && !target.ingredient && form;
  // "and paste", behind vanilla: that of its beans, and of no nut
  if (known && before.taste === "vanilla" && target.dose === "nut paste" && target.text === "paste")
    return { ...target, id: "vanilla bean paste", dose: "vanilla paste", taste: "vanilla" };
  return known
    ? {
        ...target,
        taste: before.taste,
        ingredient: target.dose?.startsWith(before.taste ?? "")
          ? target.dose
          : `${before.taste} ${target.dose}`,
      }
    : target;
}

/**
 * "buttercream 95 g violet flavor grams": one weight right behind the mix and before the flavor, with a unit or a
 * question asked at the end, is the mix's.
 */
function rebound(reading: Reading, weights: Weighed[]): Weighed[] {
  const [only] = weights;
  // "my bottle of mint flavor is down to 9 g, how big a bowl": what is left of the flavor
  const left = reading.things.find(isFlavor);
  if (
    weights.length === 1 &&
    only &&
    !only.thing &&
    left &&
    says(
      reading,
      /<[^>]*dose=\S* (?:is|are|has|got) (?:only |just |about |nearly )?(?:down to |got )?\S*<weight>/,
    )
  )
    return [{ ...only, thing: left }];
  if (weights.length !== 1 || !only?.thing || only.thing.base) return weights;
  const mix = reading.things.find(
    (each) => each.base && only.amount.at[0] - each.at[1] <= 2 && each.at[1] <= only.amount.at[0],
  );
  const asks = says(reading, /<unit=[^>]*>(?: \?)?$|(?:how much|amount|dose)(?: \?)?$/);
  return mix && asks && only.thing.at[0] > only.amount.at[0] ? [{ ...only, thing: mix }] : weights;
}

/** "150 g buttercream that's lemon and 200 g ganache that's mint, flavor for each": a dose a bowl. */
function readPairs(reading: Reading): Draft[] | undefined {
  // "flavor for 200 g buttercream, 150 g ganache and 300 g batter": the batter gets its answer too
  const withBatter = !reading.things.some((each) => each.color || /color/.test(each.dose ?? ""));
  const bowls = weighed(reading).filter(
    (each) =>
      each.thing?.base &&
      (each.thing.base !== "batter" || withBatter) &&
      // "5 g in the ganache" is no bowl of it
      !/ (?:in|into|to) /.test(reading.text.slice(each.amount.at[1], each.thing.at[0])),
  );
  if (bowls.length < 2 || reading.amounts.some((each) => each.dim === "percent")) return undefined;
  const ends = bowls.map((_, at) => bowls[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY);
  const starts = bowls.map((each, at) => (at === 0 ? 0 : each.amount.at[0]));
  const own = bowls.map((_, at) =>
    reading.things.filter(
      (each) =>
        isFlavor(each) &&
        (each.taste || each.ingredient) &&
        each.at[0] >= (starts[at] ?? 0) &&
        each.at[0] < (ends[at] ?? 0),
    ),
  );
  const before = bowls.map((each, at) =>
    reading.things.findLast(
      (thing) =>
        isFlavor(thing) &&
        (thing.taste || thing.ingredient) &&
        thing.at[1] <= each.amount.at[0] &&
        thing.at[0] >= (at === 0 ? 0 : (bowls[at - 1]?.amount.at[1] ?? 0)),
    ),
  );
  const chosen = own.every((each) => each.length > 0) ? own.map((each) => each[0]) : before;
  const tastes = reading.things.filter(isFlavor);
  const formed = tastes.filter((each) => each.dose);
  // "flavor both: ..., almond extract": the one that is named
  const particular = formed.filter((each) => each.taste || each.ingredient);
  const dosed = particular.length > 0 ? particular : formed;
  // "vanilla in both"
  const shared = dosed.length === 0 && tastes.length === 1 ? tastes : dosed;
  if (chosen.some((each) => !each) && shared.length !== 1) return undefined;
  return bowls.map((bowl, at) => ({
    base_g: bowl.grams,
    base: bowl.thing?.base,
    ...nameOf((chosen[at] ?? shared[0]) as Thing, reading),
  }));
}

/** "how strong should i go with lavender 180g": nobody stirs so much flavor into anything; the bowl is weighed. */
const ofBowl = ({ flavor_g, ...draft }: Draft): Draft =>
  flavor_g !== undefined && flavor_g >= mostFlavor_g && draft.base_g === undefined && draft.want === undefined
    ? { ...draft, base_g: flavor_g }
    : { ...draft, ...(flavor_g === undefined ? {} : { flavor_g }) };
const mostFlavor_g = 100;

/** "how much zibbelmus for 300 g buttercream": a word that no table has where the flavor stands. */
const unknownAsked = (reading: Reading): string | undefined =>
  reading.unknown.find(
    (word) =>
      new RegExp(`how (?:much|many)(?: g| grams)?(?: of)?(?: the| my| this)? ${word}(?: |$|[?,.])`).test(
        reading.text,
      ) ||
      // "xanthan gum for 300 g buttercream how much"
      new RegExp(
        `^(?:${word}(?: [a-z]+)?|[a-z]+ ${word}) (?:for|in|into) \\S*<weight> (?:of )?\\S*<[^>]*base=`,
      ).test(reading.mask),
  );
