/** The weights of a ganache: of chocolate, of cream or of the whole, said, meant by a bare number or on the table. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, diameter, otherPart, pointsBack, says, weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { shareSaid } from "../lib/shares.ts";
import type { GanacheInputs } from "./ganache.ts";
import { describes, isChocolateHere } from "./kind-said.ts";
import { readWant } from "./want-said.ts";

type Draft = Partial<GanacheInputs>;

export function readWeights(reading: Reading, memory: Memory, whole: boolean): Draft {
  const out: Draft = {};
  const lines: { name: string; grams: number }[] = [];
  for (const { grams, thing, estimate } of weighed(reading)) {
    const whole =
      says(reading, /(?:^| )(?:total|altogether|in all|all in|finished|in the end)(?: |$)/) &&
      weighed(reading).length === 1;
    if (
      thing?.chocolate &&
      (describes(reading, thing) || (whole && (memory.follows || says(reading, /<[^>]*base=ganache/))))
    )
      out.total_g ??= grams;
    else if (thing?.chocolate || isChocolateHere(reading, thing) || /chocolate/.test(thing?.ingredient ?? ""))
      out.chocolate_g ??= grams;
    else if (thing?.ingredient === "cream" || thing?.ingredient === "light whipping cream") {
      out.cream_g ??= grams;
      if (estimate) out.by_volume = true;
    } else if (thing?.base === "ganache" || thing?.base === "filling") out.total_g ??= grams;
    // "its milk chocolate, i have 300 g": of the chocolate that was named
    else if (
      !thing &&
      memory.slot === "chocolate" &&
      reading.things.some((each) => each.chocolate) &&
      !says(reading, /<[^>]*base=ganache/) &&
      says(reading, /(?:i have|ive got|i got|got|theres|there is|with) (?:only |just |about )?\S*<weight>/)
    )
      out.chocolate_g ??= grams;
    // "and with 210 g of it", behind so much cream
    else if (!thing && isOfCream(reading, memory)) out.cream_g ??= grams;
    else if (!thing && Object.keys(out).length === 0)
      out[
        whole ? "total_g" : isChopped(reading) || asksCream(reading) ? "chocolate_g" : looseSlot(memory)
      ] ??= grams;
    if (thing?.ingredient) lines.push({ name: thing.ingredient, grams });
  }
  // "what is 200 and 150 good for, its dark"
  const [first, second, ...further] = bareNumbers(reading);
  if (first && second && further.length === 0 && Object.keys(out).length === 0 && says(reading, /good for/))
    return { chocolate_g: first.value, cream_g: second.value };
  // "no wait, i have a whole cup", of the cream that was spoken of
  const spoon = reading.amounts.find((each) => each.dim === "volume" && !each.of);
  const creamBefore =
    memory.follows && memory.last?.tool === "ganache" && memory.last.inputs.cream_g !== undefined;
  if (spoon && creamBefore && Object.keys(out).length === 0) {
    const portion = gramsOfVolume("cream", spoon.value, spoon.unit);
    if (portion) return { cream_g: portion.grams, by_volume: true };
  }
  if (whole && lines.length > 1) return { total_g: lines.reduce((sum, each) => sum + each.grams, 0) };
  if (out.chocolate_g !== undefined && out.cream_g !== undefined) delete out.total_g;
  const macarons = reading.amounts.find((each) => each.of?.count === "macarons" && each.dim === "number");
  // "and the chocolate ones get dark ganache", of an order that was shared out
  const share = shareSaid(reading, memory.table.shares);
  const all = memory.table.macarons;
  if (share && all !== undefined && Object.keys(out).length === 0 && reading.amounts.length === 0)
    return { macarons: Math.round(all * share.share), of_macarons: all };
  if (macarons && Object.keys(out).length === 0) out.macarons = macarons.value;
  const size = out.macarons === undefined ? undefined : diameter(reading);
  if (size !== undefined) out.diameter_mm = size;
  // "all milk ganache", behind the filling that was worked out
  const { mass } = memory.table;
  if (
    Object.keys(out).length === 0 &&
    memory.last?.tool === "fill" &&
    mass?.thing === "filling" &&
    says(
      reading,
      /(?:^| )(?:all|only|just|everything|make it|as) (?:of it )?(?:in |as )?(?:\S+ )?\S*<[^>]*(?:chocolate|base=ganache)/,
    )
  )
    return { total_g: mass.grams };
  // "the milk ones need the same amount of chocolate"
  const same = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft).chocolate_g : undefined;
  if (
    Object.keys(out).length === 0 &&
    same !== undefined &&
    says(reading, /(?:same|that) (?:amount|weight|quantity|much)(?: of)? \S*<[^>]*ingredient=\S*chocolate/)
  )
    return { chocolate_g: same };
  if (Object.keys(out).length === 0)
    return { ...fromBareNumber(reading, memory), ...fromTable(reading, memory) };
  // a weight of one part said in reply keeps the other part said before
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  const hadBoth = before?.chocolate_g !== undefined && before.cream_g !== undefined;
  if (
    (hadBoth || before?.want === "mend") &&
    memory.follows &&
    out.total_g === undefined &&
    !says(reading, /how (?:much|many)/)
  ) {
    if (out.chocolate_g === undefined && before.chocolate_g !== undefined)
      out.chocolate_g = before.chocolate_g;
    if (out.cream_g === undefined && before.cream_g !== undefined) out.cream_g = before.cream_g;
  }
  return out;
}

const isOfCream = (reading: Reading, memory: Memory): boolean => {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  return (
    memory.follows &&
    before?.chocolate_g !== undefined &&
    before.cream_g !== undefined &&
    says(reading, /(?:^| )with (?:only |just )?\S*<weight> of (?:it|that)(?: |$)/)
  );
};

/** "dark chocolate 70% 200 g, how much cream": of the chocolate, since cream is asked for and no whole is spoken of. */
const asksCream = (reading: Reading) =>
  reading.things.some(
    (each) => (each.chocolate || each.ingredient === "chocolate") && /choc/.test(each.text),
  ) &&
  says(
    reading,
    /how (?:much|many) (?:heavy |whipping )?\S*<[^>]*ingredient=cream|<ingredient=cream> \?$|the \S*<ingredient=cream>(?: for \S+)? (?:would be|is|comes to|should be) (?:what|how)/,
  ) &&
  !says(reading, /<[^>]*base=ganache|(?:^| )(?:total|altogether|in all)(?: |$)/);

/** "175 g chopped", "the cream?": what is chopped, or what cream is asked for, is chocolate. */
const isChopped = (reading: Reading) =>
  says(reading, /(?:^| )(?:chop|chopped|chopping)(?:<| |$)|<weight>[^?]* (?:melted|broken up)(?:<| |$)/);

/** A weight of nothing named takes the place of the one said before; at first it is the total. */
function looseSlot(memory: Memory): "chocolate_g" | "cream_g" | "total_g" {
  const before = memory.follows && memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : {};
  const slots = (["chocolate_g", "cream_g", "total_g"] as const).filter((slot) => before[slot] !== undefined);
  return slots.length === 1 && slots[0]
    ? slots[0]
    : memory.slot === "chocolate_g" || memory.slot === "cream_g"
      ? memory.slot
      : "total_g";
}

/** "and for 300?": the number takes the place of the weight that was said before. */
function fromBareNumber(reading: Reading, memory: Memory): Draft {
  const bare = bareNumbers(reading)[0];
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  if (!bare || !memory.follows || !before) return {};
  // "sorry, 500 is only the chocolate"
  const named =
    /<number> (?:g )?(?:is|was|are) (?:only |just )?(?:the |of )?\S*<ingredient=(cream|(?:\w+_)?chocolate)/.exec(
      reading.mask,
    )?.[1];
  if (named) return { [named === "cream" ? "cream_g" : "chocolate_g"]: bare.value };
  const [, second] = bareNumbers(reading);
  // "and 300 to 200?", behind a ratio of two weights: two weights again
  if (second && before.chocolate_g !== undefined && before.cream_g !== undefined)
    return { chocolate_g: bare.value, cream_g: second.value };
  for (const slot of ["chocolate_g", "cream_g", "total_g"] as const)
    if (before[slot] !== undefined) return { [slot]: bare.value };
  return memory.slot?.endsWith("_g") ? { [memory.slot]: bare.value } : {};
}

/** "make all of that dark ganache": the filling on the table is the total. */
function fromTable(reading: Reading, memory: Memory): Draft {
  const mass = memory.table.mass;
  // "the ganache half is dark", behind a filling that was split
  const own = memory.table.parts?.find((each) => /(?:^| )ganache$/.test(each.name));
  const sizes = (memory.table.parts ?? []).map((each) => each.grams);
  const bySize =
    /\bthe (bigger|biggest|larger|largest|big|smaller|smallest|small) (?:one|part|half|bowl|bit)\b/.exec(
      reading.text,
    )?.[1];
  if (bySize && sizes.length > 1)
    return { total_g: /^(?:big|larg)/.test(bySize) ? Math.max(...sizes) : Math.min(...sizes) };
  const ofOther = reading.things.some((each) => each.base === "buttercream");
  const placed = /\b(ring|cent(?:er|re))\b/.exec(reading.text)?.[1]?.replace("centre", "center");
  const inPlace = memory.table.parts?.find((each) => each.name === placed);
  if (inPlace && !ofOther) return { total_g: inPlace.grams };
  if (memory.table.rest && !ofOther && otherPart.test(reading.text))
    return { total_g: memory.table.rest.grams };
  // "how much chocolate for that", behind a ganache center in a ring of buttercream: of the ganache alone
  const inIt = memory.table.parts?.filter((each) => each.of === "ganache") ?? [];
  if (inIt.length === 1 && inIt[0] && memory.last?.tool === "fill" && !ofOther)
    return { total_g: inIt[0].grams };
  if (own && says(reading, /<base=ganache> (?:half|part|bowl|one|bit|share|third|quarter)/))
    return { total_g: own.grams };
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  if (
    !mass ||
    (before &&
      Object.keys(before).some((key) => key.endsWith("_g")) &&
      mass.thing === "ganache" &&
      !readWant(reading).want)
  )
    return {};
  const asked = pointsBack(reading) || says(reading, /all of|the lot|the whole/);
  if (mass.thing === "cream" && asked) return { cream_g: mass.grams };
  const ofCream = says(reading, /(?:that|this) (?:much|amount of|quantity of) \S*<ingredient=cream>/);
  if (mass.thing === "" && ofCream) return { cream_g: mass.grams };
  if (/chocolate$/.test(mass.thing) && asked) {
    const kind = (["dark", "milk", "white"] as const).find((each) => mass.thing.startsWith(each));
    return { chocolate_g: mass.grams, ...(kind ? { chocolate: kind } : {}) };
  }
  const isChocolate =
    pointsBack(reading) &&
    reading.things.some((each) => each.chocolate || each.ingredient === "chocolate") &&
    says(reading, /how much \S*<[^>]*ingredient=cream|(?:^|, )(?:the )?\S*<ingredient=cream> for /);
  if (isChocolate && mass.thing === "") return { chocolate_g: mass.grams };
  const filling_g = memory.table.masses?.filling;
  if (
    filling_g !== undefined &&
    mass.thing !== "filling" &&
    says(reading, /(?:^| )the \S*<base=filling> (?:is|will be|are|all)(?: |$)/)
  )
    return { total_g: filling_g };
  if (!["filling", "ganache", "", "ring", "center"].includes(mass.thing)) return {};
  // "half of that is dark ganache"
  const share = says(reading, /<number,fraction> (?:of )?(?:it|that|this|the \S*<base=filling>)(?: |$)/)
    ? reading.amounts.find(
        (each) =>
          each.fraction &&
          (!each.of ||
            each.of.base === "filling" ||
            /^ of (?:it|that|this) /.test(reading.text.slice(each.at[1]))),
      )?.value
    : undefined;
  if (share !== undefined && share < 1) return { total_g: mass.grams * share, of_g: mass.grams };
  return pointsBack(reading) ||
    says(reading, /all of|the lot|for (?:the )?(?:filling|ring|center)/) ||
    // "in dark ganache, how much chocolate and cream", right behind the filling
    (mass.thing === "filling" &&
      (memory.last?.tool === "fill" || says(reading, /(?:^| )(?:the|my|this|that) \S*<base=filling>/))) ||
    readWant(reading).want === "split"
    ? { total_g: mass.grams }
    : {};
}
