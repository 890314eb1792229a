/** Reads a dose question: which weights are the base, which is the flavor, and what is wanted. */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { bareNumbers, pointsBack, says, type Weighed, weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { inBase } from "../lib/units.ts";
import type { DoseInputs } from "./dose.ts";

type Draft = Partial<DoseInputs>;

const isFlavor = (thing: Thing | undefined): thing is Thing =>
  Boolean(thing && (thing.dose || thing.taste) && !thing.base);

/** One draft a flavor that is asked for; most questions name one or none. */
export function readDose(reading: Reading, memory: Memory): Draft[] {
  const pairs = readPairs(reading);
  if (pairs) return pairs;
  const targets = flavorsAsked(reading).map((each) => colorKind(each, memory));
  const weights = rebound(reading, weighed(reading)).map((each) =>
    each.thing && !each.thing.ingredient && !each.thing.base && each.thing.color
      ? { ...each, thing: undefined }
      : each,
  );
  const common = {
    ...readBase(reading, memory, weights, targets),
    ...readShare(reading, memory),
    ...readWant(reading),
    ...readSpoon(reading),
    ...readStrength(reading),
  };
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const unknown = unknownAsked(reading);
  if (targets.length === 0 && unknown) return [{ ...common, unknown }];
  if (targets.length === 0) return [{ ...common, ...readLoose(reading, memory, weights, common, before) }];
  const asksBase =
    common.base_g === undefined &&
    says(
      reading,
      /how (?:much|many|far) (?:of )?(?:plain |more |my |the )*\S*<[^>]*base|(?:^| )\S*<(?:[^>]*,)?base[^>]*> (?:it|that|this|they|which) (?:can|could|will|would|does|do)(?: |$)|what (?:will|can|could|would) (?:it|that|this|they) (?:flavor|flavour|do|cover)|(?:which|what) (?:weight|amount|quantity) of (?:the |my )?\S*<(?:[^>]*,)?base/,
    );
  return targets.map((target) => ({
    ...common,
    ...(asksBase && readFlavorWeight(reading, weights, target).flavor_g !== undefined
      ? { asks_base: true }
      : {}),
    ...(sameAgain(target, memory) ? {} : nameOf(target, reading)),
    ...(before?.percent !== undefined &&
    common.percent === undefined &&
    nameOf(target, reading).dose !== before.dose
      ? { by_table: true }
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
}

/**
 * "buttercream 95 g violet flavor grams": one weight right behind the mix and before the flavor, with a unit or a
 * question asked at the end, is the mix's.
 */
function rebound(reading: Reading, weights: Weighed[]): Weighed[] {
  const [only] = weights;
  if (weights.length !== 1 || !only?.thing || only.thing.base) return weights;
  const mix = reading.things.find(
    (each) => each.base && only.amount.at[0] - each.at[1] <= 2 && each.at[1] <= only.amount.at[0],
  );
  const asks = says(reading, /<unit=[^>]*>(?: \?)?$|(?:how much|amount|dose)(?: \?)?$/);
  return mix && asks && only.thing.at[0] > only.amount.at[0] ? [{ ...only, thing: mix }] : weights;
}

/** "150 g buttercream that's lemon and 200 g ganache that's mint, flavor for each": a dose a bowl. */
function readPairs(reading: Reading): Draft[] | undefined {
  const bowls = weighed(reading).filter((each) => each.thing?.base && each.thing.base !== "batter");
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
  const dosed = tastes.filter((each) => each.dose);
  // "vanilla in both"
  const shared = dosed.length === 0 && tastes.length === 1 ? tastes : dosed;
  if (chosen.some((each) => !each) && shared.length !== 1) return undefined;
  return bowls.map((bowl, at) => ({
    base_g: bowl.grams,
    base: bowl.thing?.base,
    ...nameOf((chosen[at] ?? shared[0]) as Thing, reading),
  }));
}

/** "at half strength", "twice as strong as normal". */
function readStrength(reading: Reading): Draft {
  const half = /\bhalf (?:the )?(?:strength|as strong)\b/.test(reading.text);
  const twice = /\b(?:double|twice the) strength\b|\b(?:twice|double|two times|2x) as strong\b/.test(
    reading.text,
  );
  const thrice = /\b(?:triple|three times the) strength\b|\b(?:three times|3x|triple) as strong\b/.test(
    reading.text,
  );
  return half ? { strength: 0.5 } : twice ? { strength: 2 } : thrice ? { strength: 3 } : {};
}

/** "how much zibbelmus for 300 g buttercream": a word that no table has where the flavor stands. */
const unknownAsked = (reading: Reading): string | undefined =>
  reading.unknown.find((word) =>
    new RegExp(`how (?:much|many)(?: g| grams)?(?: of)?(?: the| my| this)? ${word}(?: |$|[?,.])`).test(
      reading.text,
    ),
  );

/** The flavors asked for: not the taste that only describes a mix ("300 g caramel buttercream, how much salt"). */
function flavorsAsked(reading: Reading): Thing[] {
  const replaced = /(?:instead of|rather than) /.exec(reading.text)?.index ?? Number.POSITIVE_INFINITY;
  // "whites that are left from the curd"
  const isAside = (each: Thing) =>
    /left (?:over )?from (?:the |a |my |making )*$/.test(reading.text.slice(0, each.at[0]));
  const flavors = reading.things.filter((each) => isFlavor(each) && each.at[0] < replaced && !isAside(each));
  const describes = (each: Thing) =>
    reading.things.some((other) => other.base && other.at[0] > each.at[1] && other.at[0] - each.at[1] <= 1);
  const loosePowder = flavors.find((each) => each.dose === "powder");
  const others = flavors.filter((each) => each !== loosePowder);
  if (loosePowder && others.length > 0) return [powdered(others.at(-1) as Thing)];
  const named = flavors.filter((each) => each.dose && !describes(each));
  const free = flavors.filter((each) => !each.dose && each.taste && !describes(each));
  if (named.length === 0) return dedupe(free.length > 0 ? free : flavors.slice(-1));
  const particular = named.filter((each) => each.taste || each.ingredient || !generic.has(each.dose ?? ""));
  // "want it peach, how much flavor": one flavor said twice
  if (particular.length === 0 && free.length > 0)
    return free.map((each) => ({ ...each, dose: named[0]?.dose }));
  // "how much vanilla, how much salt": asked for as plainly as what has a form
  const asked = free.filter((each) =>
    /how (?:much|many)(?: of)?(?: the| my)? $/.test(reading.text.slice(0, each.at[0])),
  );
  const all = [...asked, ...particular].sort((a, b) => a.at[0] - b.at[0]);
  return dedupe(particular.length > 0 ? all.filter((each) => !repeats(each, all)) : named);
}

/** Rows that a bare word names; beside a more particular word they say nothing new. */
const generic = new Set(["flavor", "extract", "oil", "color", "nut paste", "purée", "zest", "fruit powder"]);

/** "vanilla extract ... the extract", "should taste of vanilla, what weight of vanilla extract": one flavor said twice. */
const repeats = (each: Thing, all: readonly Thing[]) =>
  !each.ingredient &&
  all.some(
    (other) =>
      other !== each &&
      (each.taste
        ? each.dose === "flavor" && other.dose !== "flavor" && other.taste === each.taste
        : other.dose === each.dose && Boolean(other.taste || other.ingredient)),
  );

const powdered = (thing: Thing): Thing => ({
  ...thing,
  dose: thing.dose ?? (thing.ingredient ? "fruit powder" : "other powder"),
});

const dedupe = (things: Thing[]) =>
  things.filter(
    (each, at) => things.findIndex((other) => other.id === each.id && other.dose === each.dose) === at,
  );

/** "the powder kind": of the color that was spoken of. */
function colorKind(target: Thing, memory: Memory): Thing {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft).dose : undefined;
  return target.dose === "powder" && before && / color$|^color$/.test(before)
    ? { ...target, dose: "powder color", id: "powder color" }
    : target;
}

/** "the paste", "the gel": the form alone, of the flavor that was spoken of before. */
function sameAgain(target: Thing, memory: Memory): boolean {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (!before?.dose || target.taste || target.ingredient || !memory.follows) return false;
  const kin = (dose: string) => families.find((family) => family.includes(dose))?.[0] ?? dose;
  return kin(target.dose ?? "") === kin(before.dose);
}

const families = [
  ["nut paste", "vanilla paste", "fruit paste"],
  ["fruit powder", "tea powder", "coffee powder", "cocoa powder", "powder", "other powder"],
];

/** The inputs that a flavor is named by: its row of the dose table, its taste, its own name. */
export function nameOf(
  target: Pick<Thing, "id" | "taste" | "dose" | "ingredient" | "text">,
  reading: Reading,
): Draft {
  const ground =
    leaves.test(target.taste ?? "") && says(reading, /(?:^| )(?:ground|milled|powdered|sifted)(?:<| |$)/);
  const dose = target.dose ?? (ground ? "tea powder" : usualRow(target));
  const bare = target.dose === undefined || (target.dose === "flavor" && !/concentrat/.test(target.text));
  // "strawberry jam" doses as purée, but keeps its name
  const jam =
    dose === "purée" && /jam|jelly|curd|marmalade|preserve/.test(target.text) ? target.text : undefined;
  const own = jam ?? (target.ingredient && target.dose ? target.ingredient : undefined);
  return {
    dose,
    ...(target.taste ? { taste: target.taste } : {}),
    ...(own ? { name: own } : target.dose && !target.taste ? { name: target.id } : {}),
    ...(bare && dose === "flavor" ? { bare: true } : {}),
  };
}

const usualRow = (thing: Pick<Thing, "taste">): string =>
  spirits.has(thing.taste ?? "") ? "spirit" : teas.has(thing.taste ?? "") ? "tea powder" : "flavor";
const spirits = new Set([
  "rum",
  "kirsch",
  "brandy",
  "cognac",
  "whisky",
  "vodka",
  "gin",
  "tequila",
  "limoncello",
  "amaretto",
  "irish cream liqueur",
  "coffee liqueur",
  "orange liqueur",
  "cassis liqueur",
  "calvados",
]);
const teas = new Set(["matcha", "hojicha"]);
/** Teas that are a flavor unless they are said to be ground. */
const leaves = /earl grey|tea|chai|assam|darjeeling/;

function readBase(reading: Reading, memory: Memory, weights: Weighed[], targets: Thing[]): Draft {
  const fewer = partLeftOut(reading, memory);
  if (fewer) return fewer;
  const mix = reading.things.find((each) => each.base && each.base !== "meringue");
  const base = mix?.base;
  const parts = weights.filter(
    (each) =>
      each.thing &&
      !targets.includes(each.thing) &&
      !sameFlavor(each.thing, targets) &&
      (each.thing.ingredient || each.thing.base || each.thing.chocolate),
  );
  const cups = reading.amounts.find((each) => each.dim === "volume" && each.of?.base);
  if (cups) return { base, unweighable: `${cups.text} of ${cups.of?.base}` };
  const mixes = new Set(parts.flatMap((each) => (each.thing?.base ? [each.thing.base] : [])));
  if (mixes.size > 1) return {};
  if (parts.length > 0) {
    // "half of it", of a weight said in the same breath
    const share = says(reading, /<number,fraction> of (?:it|that|this)(?: |$)/)
      ? reading.amounts.find((each) => each.fraction && each.dim === "number" && !each.of)?.value
      : undefined;
    const base_g = parts.reduce((sum, each) => sum + each.grams, 0) * (share ?? 1);
    const corrected = correctParts(parts, memory);
    if (corrected) return corrected;
    const summed = parts.length > 1 ? { parts: parts.map(partOf) } : {};
    const kind = base ?? baseOfParts(parts);
    return { base_g, ...(kind ? { base: kind } : {}), ...summed };
  }
  const table = memory.table;
  const part = reading.amounts.find(
    (each) => (each.fraction || each.unit === "times") && each.dim === "number",
  );
  const earlier = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (
    part &&
    earlier?.base_g !== undefined &&
    !says(reading, /(?:that|this|the same) \S*<number,fraction/) &&
    says(reading, /of (?:that|it|the)|that much|(?:that|it)(?: |$)|as much/)
  )
    return { base_g: earlier.base_g * part.value };
  const named = table.parts?.find((each) =>
    reading.things.some((thing) => thing.color === each.name || thing.taste === each.name),
  );
  if (named && !reading.amounts.some((each) => each.dim === "weight"))
    return { base_g: named.grams, ...(base ? { base } : baseFrom(table.mass?.thing ?? "")) };
  const larger = /the (?:bigger|larger|biggest|largest|big) (?:part|half|bowl|one)/.test(reading.text);
  const smaller = /the (?:smaller|smallest|small|little) (?:part|half|bowl|one)/.test(reading.text);
  if ((larger || smaller) && table.parts?.length) {
    const sizes = table.parts.map((each) => each.grams);
    return {
      base_g: larger ? Math.max(...sizes) : Math.min(...sizes),
      ...(base ? { base } : baseFrom(table.mass?.thing ?? "")),
    };
  }
  const asksPart =
    /(?:in|for) (?:one|the other|each) half|the other (?:one|half)|one of (?:them|those|these|the (?:halves|parts|bowls|thirds|quarters))|each (?:bowl|part|half|third|one)|per bowl|in each|one (?:bowl|half|part|third)/.test(
      reading.text,
    );
  if (asksPart && table.part)
    return { base_g: table.part.grams, ...(base ? { base } : baseFrom(table.part.thing)) };
  const fits =
    table.mass &&
    (pointsBack(reading) ||
      (!base &&
        ["buttercream", "ganache"].includes(memory.last?.tool ?? "") &&
        says(reading, /(?:^| )(?:add|adding|flavou?r|put|with) /)) ||
      (base && (table.mass.thing === base || table.mass.thing === "filling" || table.mass.thing === "")));
  const ownWeight = weights.some((each) => !each.thing || isFlavor(each.thing)) && !pointsBack(reading);
  const asksBase =
    /how (?:much|many) (?:more |plain |extra |other )*\S*<base/.test(reading.mask) &&
    !/thats how (?:much|many)/.test(reading.mask);
  const whole =
    reading.amounts.find((each) => each.dim === "number" && (each.fraction || each.unit === "times"))
      ?.value ?? 1;
  const kept = base === undefined ? undefined : table.masses?.[base];
  const meant = /whole|all|the lot|entire|that|the/.test(reading.text);
  if (
    kept !== undefined &&
    base !== table.mass?.thing &&
    meant &&
    !ownWeight &&
    !asksBase &&
    memory.last?.tool !== "dose"
  )
    return { base_g: kept * whole, base };
  if (fits && table.mass && whole !== 1 && !ownWeight && !asksBase && memory.last?.tool !== "dose")
    return { base_g: table.mass.grams * whole, ...(base ? { base } : baseFrom(table.mass.thing)) };
  if (fits && table.mass && !ownWeight && !asksBase && memory.last?.tool !== "dose")
    return { base_g: table.mass.grams, ...(base ? { base } : baseFrom(table.mass.thing)) };
  return base ? { base } : {};
}

const partOf = (each: Weighed) => ({
  name: each.thing?.ingredient ?? each.thing?.base ?? each.thing?.text ?? "",
  grams: each.grams,
});

/** "without the butter?": a part of the sum said before is left out. */
function partLeftOut(reading: Reading, memory: Memory): Draft | undefined {
  const before =
    memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft).parts : undefined;
  if (!before || !says(reading, /(?:^| )(?:without|minus|leave out|leaving out|skip|drop|no)(?: |$)/))
    return undefined;
  const gone = reading.things.flatMap((each) => each.ingredient ?? []);
  const parts = before.filter((each) => !gone.includes(each.name));
  if (parts.length === 0 || parts.length === before.length) return undefined;
  return { parts, base_g: parts.reduce((sum, each) => sum + each.grams, 0) };
}

/** "the butter was 45, not 30": one part of a sum said before takes its new weight. */
function correctParts(parts: readonly Weighed[], memory: Memory): Draft | undefined {
  const before =
    memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft).parts : undefined;
  const first = parts[0] && partOf(parts[0]);
  if (!before || !first || !before.some((each) => each.name === first.name) || parts.length >= before.length)
    return undefined;
  const now = parts.map(partOf);
  const all = before.map((each) => now.find((other) => other.name === each.name) ?? each);
  return { parts: all, base_g: all.reduce((sum, each) => sum + each.grams, 0) };
}

const baseFrom = (thing: string): Draft =>
  ["buttercream", "ganache", "batter", "filling", "cream cheese filling", "mascarpone filling"].includes(
    thing,
  )
    ? { base: thing }
    : {};

const sameFlavor = (thing: Thing, targets: Thing[]) =>
  targets.some((each) => each.id === thing.id && Boolean(thing.dose));

/** Chocolate with anything is a ganache; mascarpone, cream cheese or butter without it a butter filling. */
function baseOfParts(parts: readonly Weighed[]): string | undefined {
  const names = parts.map((each) => each.thing?.ingredient ?? "");
  if (parts.some((each) => each.thing?.chocolate) || names.some((name) => /chocolate/.test(name)))
    return "ganache";
  if (names.includes("cream cheese")) return "cream cheese filling";
  if (names.includes("mascarpone")) return "mascarpone filling";
  if (names.includes("butter")) return "buttercream";
  return undefined;
}

function readFlavorWeight(reading: Reading, weights: Weighed[], target: Thing): Draft {
  // "2 vanilla beans", "zest of 1 lemon": they are counted, and no two weigh the same
  const pieces = reading.amounts.find(
    (each) => each.dim === "number" && each.of && (each.of === target || each.of.id === target.id),
  );
  const counts =
    target.dose === "zest" || /(?:beans?|pods?|bags?|sachets?|shots?|capsules?)$/.test(target.text);
  if (counts && pieces) return { unweighable: `${pieces.text} ${target.text}` };
  const own = weights.find(
    (each) =>
      each.thing &&
      !each.thing.base &&
      (each.thing === target || (each.thing.id === target.id && each.thing.taste === target.taste)),
  );
  // a spoon of a liquid flavor counts as water, whatever else the tables know of it
  if (own?.estimate && liquidRows.has(target.dose ?? "flavor")) return byVolume(own.amount);
  if (own) return { flavor_g: own.grams };
  const said = reading.amounts.find(
    (each) =>
      ["volume", "number"].includes(each.dim) && each.of && (each.of === target || each.of.id === target.id),
  );
  if (said?.dim === "volume" && !liquidRows.has(target.dose ?? "flavor"))
    return { unweighable: `${said.text} of ${target.text}` };
  return said ? byVolume(said) : {};
}

const liquidRows = new Set(doseRows.filter((row) => row.liquid).map((row) => row.id));

function byVolume(amount: Amount): Draft {
  if (amount.dim === "volume") return { flavor_g: inBase(amount.value, amount.unit), by_volume: true };
  return amount.unit === "" && !amount.fraction && amount.value > 0 ? { flavor_g: amount.value } : {};
}

/** Weights bound to nothing: in the bowl already, or the base, by what the words and the turn before settle. */
function readLoose(
  reading: Reading,
  memory: Memory,
  weights: Weighed[],
  found: Draft,
  before: Draft | undefined,
): Draft {
  if (memory.slot === "flavor_g" && found.flavor_g === undefined) {
    const answer =
      weights.find((each) => !each.thing || isFlavor(each.thing))?.grams ?? bareNumbers(reading)[0]?.value;
    if (answer !== undefined) return { flavor_g: answer };
  }
  const drops = reading.amounts.find((each) => each.of?.count === "drops");
  if (drops) return { unweighable: drops.text.includes("drop") ? drops.text : `${drops.text} drops` };
  const asksBack = says(
    reading,
    /how (?:much|far)(?: \S+){0,3} \S*<(?:[^>]*,)?base|how far|goes? how far|will (?:it|that|this) do|stretch/,
  );
  const inBowl = says(
    reading,
    /in there|i (?:have )?(?:put|added|used|poured|tipped|dumped|stirred)|(?:is|was|would|will) (?:that|it|this)|would (?:\S+ )?\S*<(?:weight|number)\S* be(?: |$)|is (?:she|he) (?:right|correct)|(?:fell|went|dropped|landed|slipped) in|fell|verdict|enough|too (?:strong|weak|much|little)|already|inside the|within the|in range|went in|alright|okay|overd/,
  );
  const at =
    before?.percent !== undefined &&
    found.percent === undefined &&
    bareNumbers(reading).length === 1 &&
    // a number as small as a percentage is one where a bowl was weighed
    (says(reading, /(?:^| )(?:at|to) \S*<number/) ||
      ((bareNumbers(reading)[0]?.value ?? 100) <= 10 && (before.base_g ?? 0) > 30))
      ? bareNumbers(reading)[0]?.value
      : undefined;
  if (at !== undefined) return { percent: at };
  const loose = weights.find((each) => !each.thing)?.grams ?? looseNumber(reading, memory);
  // "and 11 g in 200 g": flavor and base of another bowl
  const [into, bowl] = weights.filter((each) => !each.thing);
  if (before && into && bowl && says(reading, /<weight> (?:in|into|to|for) \S*<weight>/))
    return { flavor_g: into.grams, base_g: bowl.grams, want: before.want };
  // "what percent is 9 g in 260"
  const whole = bowl?.grams ?? bareNumbers(reading)[0]?.value;
  if (
    into &&
    whole &&
    says(
      reading,
      /what (?:\S*<unit=%>|percentage|share) .*<weight> (?:\S+ )?(?:in|of|into) \S*<(?:weight|number)>/,
    )
  )
    return { flavor_g: into.grams, base_g: whole, want: "check" };
  if (loose === undefined) {
    const volume = reading.amounts.find((each) => each.dim === "volume" && !each.of);
    // "put 5 teaspoons in": of the coffee that was spoken of, weighed by the table
    const solid = before?.dose !== undefined && !liquidRows.has(before.dose);
    if (volume && solid && found.flavor_g === undefined) {
      const portion = before.name ? gramsOfVolume(before.name, volume.value, volume.unit) : undefined;
      return portion ? { flavor_g: portion.grams } : { unweighable: volume.text };
    }
    return volume && found.flavor_g === undefined && !reading.things.some((each) => each.unit)
      ? byVolume(volume)
      : {};
  }
  if (found.base_g !== undefined)
    return found.flavor_g === undefined && found.percent === undefined ? { flavor_g: loose } : {};
  if (found.flavor_g !== undefined) return { base_g: loose };
  if (before) {
    const backward = before.flavor_g !== undefined && before.base_g === undefined;
    const nearFlavor =
      before.flavor_g &&
      before.base_g &&
      Math.abs(Math.log(loose / before.flavor_g)) < Math.abs(Math.log(loose / before.base_g));
    if (nearFlavor) return { flavor_g: loose };
    // "call it 3 grams", of 300: no bowl shrinks so much, and no flavor is more
    if (
      before.base_g !== undefined &&
      before.flavor_g === undefined &&
      loose > 0 &&
      loose < before.base_g / 12
    )
      return { flavor_g: loose, want: "check" };
    if (inBowl && before.base_g !== undefined) return { flavor_g: loose, want: "check" };
    return backward && found.base === undefined
      ? { flavor_g: loose }
      : backward
        ? { flavor_g: loose }
        : { base_g: loose };
  }
  return asksBack ? { flavor_g: loose } : { base_g: loose };
}

/** A bare number counts as grams only when it answers, or stands in for a number said before. */
function looseNumber(reading: Reading, memory: Memory): number | undefined {
  const bare = bareNumbers(reading)[0];
  if (!bare) return undefined;
  // "6 g of flavor in 150, ok?"
  const into =
    /(?:^| )(?:in|into|to) (?:about |roughly )?\S*<number> (?:, )?(?:.*)(?:ok|okay|enough|fine|alright|right|too)(?: |$)/.test(
      reading.mask,
    );
  if (into && reading.amounts.some((each) => each.dim === "weight")) return bare.value;
  // "matcha for 205"
  if (bare.value >= 10 && says(reading, /^(?:and |now )?\S*<[^>]*(?:dose|taste)=[^>]*> for \S*<number>/))
    return bare.value;
  if (
    memory.slot === "base_g" ||
    memory.slot === "flavor_g" ||
    (memory.follows && memory.last?.tool === "dose" && !countsBowls(reading, bare, memory))
  )
    return bare.value;
  return undefined;
}

/** "and the other two": bowls, where grams were said before. */
const countsBowls = (reading: Reading, bare: Amount, memory: Memory): boolean =>
  bare.value < 10 &&
  ((memory.last?.inputs as Draft | undefined)?.base_g ?? 0) >= 30 &&
  /(?:other|all|those|these|first|last|next|both) $/.test(reading.text.slice(0, bare.at[0]));

function readShare(reading: Reading, memory: Memory): Draft {
  const before = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const checked =
    before?.base_g !== undefined &&
    before.flavor_g !== undefined &&
    !reading.amounts.some((each) => each.dim === "weight");
  const share = reading.amounts.find(
    (each) => each.dim === "percent" && !/^\S*<chocolate/.test(each.of?.chocolate ?? ""),
  );
  if (!share) return {};
  const finished =
    /finished|final|altogether|of the (?:whole|total)|once mixed|in total/.test(reading.text) ||
    // the mask holds words mended, the text as typed
    /\bfinished\b/.test(reading.mask);
  const plainly = /of (?:the|my) (?:base|filling|buttercream|ganache|mix)\b/.test(reading.text);
  return {
    ...(checked ? { want: "flavor" as const } : {}),
    percent: share.value,
    ...(share.high !== undefined ? { percent_high: share.high } : {}),
    ...(finished ? { of_finished: true } : before?.of_finished && plainly ? { of_finished: false } : {}),
  };
}

function readWant(reading: Reading): Draft {
  const mend =
    /\b(?:rescues?|fix(?:es)?|saves?|dilutes?|(?<!\b(?:is|be|are)(?: then| the)? )correct|mend|tone it down|bring it (?:back|down)|balance it|weaken|put right|water it down|too much what now|undo the|repair|to get it back|to bring)\b/.test(
      reading.text,
    );
  const strong =
    /too (?:strong|much|intense|sharp|powerful)\b.*\b(?:what|how (?:much|many)) (?:do|should|can|must) i (?:add|put|mix)/.test(
      reading.text,
    );
  const more =
    strong ||
    /(?:how (?:much|many)(?: g| grams)?(?: of)?|what (?:mass|weight|amount) of|what) (?:more|extra|plain|additional) (?:plain |extra )?\S*(?:buttercream|ganache|filling|base|butter cream)/.test(
      reading.text,
    );
  const both = reading.amounts.filter((each) => each.dim === "weight").length > 1;
  const asksBase = both && /how (?:much|many) (?:plain |more |extra )*\S*<[^>]*base/.test(reading.mask);
  if (mend || more || asksBase) return { want: "mend" };
  if (
    says(
      reading,
      /(?:what|which) (?:\S*<unit=%>|percentage|share) (?:is|was|are|were) (?:that|it|this|in|there)/,
    )
  )
    return { want: "check" };
  if (
    /already|verdict|(?:inside|within) (?:the )?(?:range|limit)|in range|is (?:that|it|this) (?:ok|okay|alright|enough|too)|: ?ok\b|went in/.test(
      reading.text,
    )
  )
    return { want: "check" };
  return /(?:^| )(?:my (?:usual|normal|best|own)|as (?:i )?(?:usual|always)|like (?:usual|always)|i (?:usually|normally|always))(?: |$)/.test(
    reading.mask,
  )
    ? { usual: true }
    : {};
}

function readSpoon(reading: Reading): Draft {
  const unit = reading.things.find(
    (each) => each.unit === "tsp" || each.unit === "tbsp" || each.unit === "ml",
  )?.unit;
  return unit ? { spoon: unit as "tsp" } : {};
}
