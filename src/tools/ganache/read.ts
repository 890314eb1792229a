/** Reads a ganache question: which chocolate, what for, which weights, and what is wrong with it. */
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { bareNumbers, pointsBack, says, weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { onTable, readAim } from "./aim.ts";
import type { GanacheInputs } from "./ganache.ts";
import { readLines, readMix } from "./mix-said.ts";
import { pairSaid } from "./pair-said.ts";
import { ratioSaid } from "./ratio-said.ts";

type Draft = Partial<GanacheInputs>;

export function readGanache(reading: Reading, memory: Memory): Draft | Draft[] {
  const other = otherKind.exec(reading.text)?.[1];
  if (other) return { other };
  const mixed = mixedKinds(reading);
  if (mixed) return { mixed };
  const pair = pairSaid(reading);
  const kind = pair && kindOf(reading);
  const wanted = readWant(reading);
  if (pair)
    return { ...(kind ? { chocolate: kind } : {}), ...(wanted.want === "mend" ? wanted : {}), ...pair };
  const said = ratioSaid(reading);
  const read = withRatio(readOrder(said?.rest ?? reading, memory), said?.ratio);
  const grades = reading.amounts.flatMap((each) => (isGrade(each, reading) ? [each.value] : []));
  return grades.length === 0 || Array.isArray(read) || read.want === "target" ? read : { ...read, grades };
}

/** Chocolates that the book has no ratio for. */
const otherKind =
  /\b(ruby|blonde?|golden|caramelis?z?ed white|vegan|sugar.?free) (?:chocolate|choc|couverture)\b/;

/** "half dark, half milk in one ganache": two kinds in one bowl, whose ratio no book gives. */
function mixedKinds(reading: Reading): string[] | undefined {
  if (
    !/half (?:\S+ )?(?:and |& |, )?half|50 ?\/ ?50|(?:^| )(?:mix|blend|mixture) of|(?:^| )mixed/.test(
      reading.text,
    ) ||
    !says(reading, /<[^>]*base=ganache/)
  )
    return undefined;
  const kinds = reading.things.flatMap(
    (each) =>
      each.chocolate ??
      (each.ingredient === "milk" ? "milk" : each.color === "white" ? "white" : undefined) ??
      [],
  );
  const two = [...new Set(kinds)];
  return two.length > 1 ? two : undefined;
}

const withRatio = (read: Draft | Draft[], ratio: number | undefined): Draft | Draft[] =>
  ratio === undefined
    ? read
    : Array.isArray(read)
      ? read.map((each) => ({ ...each, ratio }))
      : { ...read, ...(read.want === "ratio" ? { want: "build" as const } : {}), ratio };

/** "70 % dark chocolate", "35 % cream": a grade, said right before the thing or right behind it. */
const isGrade = (amount: Amount, reading: Reading): boolean => {
  if (amount.dim !== "percent") return false;
  const near = reading.things.filter(
    (each) => each.chocolate || /chocolate|cream/.test(each.ingredient ?? ""),
  );
  return near.some(
    (each) =>
      /^ ?(?:(?:cocoa|cacao|fat|solids|of|the) ?)*$/.test(reading.text.slice(amount.at[1], each.at[0])) ||
      (each.at[1] <= amount.at[0] && /^ ?[(,]? ?$/.test(reading.text.slice(each.at[1], amount.at[0]))),
  );
};

function readOrder(reading: Reading, memory: Memory): Draft | Draft[] {
  const part = partAsked(reading, memory);
  if (part)
    return {
      want: "composition",
      part,
      ...((memory.last?.inputs as Draft | undefined)?.want === "target" ? onTable(memory, {}) : {}),
    };
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const aim = readAim(reading, memory);
  if (aim) return formula ? { ...aim, formula } : aim;
  if (formula && says(reading, /composition|water|fat|sugar|perishable/))
    return { want: "composition", formula };
  const several = readSeveral(reading);
  if (several) return several;
  const want = readWant(reading);
  const chocolate = kindOf(reading);
  const fills = says(
    reading,
    /(?:filling|macaron)\S* (?:\S+ )?\S*<[^>]*base=ganache|ganache\S* (?:filling|to fill)/,
  );
  const pours = says(reading, /(?:what|how much)[^?]* pour\S* (?:on|over|in|onto)(?: |$)/);
  const use =
    (fills && pours
      ? "piping"
      : reading.things.findLast((each) => each.use && !isRefused(reading, each))?.use) ??
    (says(reading, /(?:^| )(?:to|for) (?:fill|filling|sandwich)/) ? "piping" : undefined);
  const loosens =
    use === undefined &&
    asksChocolate(reading) &&
    reading.things.some((each) => each.symptom === "loose ganache");
  const common: Draft = {
    ...(chocolate ? { chocolate } : {}),
    ...(use ? { use } : loosens ? { use: "loose" as const } : {}),
    ...want,
  };
  // "250 g white and 100 g cream?" alone asks the same of another mix
  const alone = reading.mask.split(" ").every((word) => /<|^(?:and|with|plus|to|on|\?|,|&)$/.test(word));
  const before =
    (memory.follows || alone) && memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  const added = moreOfPart(reading, memory) ?? mendBefore(reading, memory);
  if (added) return added;
  const lines = readLines(reading);
  // "and with 300 g of the chocolate", of a mix with dark chocolate in it
  const [other] = lines.lines ?? [];
  const ownKind = before?.lines?.find((each) => /chocolate$/.test(each.name))?.name;
  if (before?.want === "composition" && before.lines && other?.name === "chocolate" && ownKind)
    return {
      ...common,
      want: "composition",
      lines: before.lines.map((each) => (each.name === ownKind ? { ...each, grams: other.grams } : each)),
    };
  // "and with 30 g butter in it"
  const [more] = lines.lines ?? [];
  if (
    before?.want === "composition" &&
    before.lines &&
    more &&
    lines.lines?.length === 1 &&
    says(
      reading,
      /^(?:(?:and|what|how|about|if|so|but) )*(?:with|plus|add|adding) |(?:put|add|added|stir|stirred|adding) \S*<weight>.* (?:as well|too|in)(?: |$)/,
    )
  ) {
    const rest = before.lines.filter((each) => each.name !== more.name);
    return { ...common, want: "composition", lines: [...rest, more] };
  }
  if (before?.want === "composition" && (lines.lines?.length ?? 0) > 1)
    return { ...common, want: "composition", ...lines };
  if (want.want === "composition") return { ...common, ...readMix(reading, memory) };
  return { ...common, ...readWeights(reading, memory, want.want === "split") };
}

/** "for a drip, not piping": the use that isn't meant. */
const isRefused = (reading: Reading, { at }: Thing) =>
  /(?:^| )(?:not|no|never|instead of|rather than)(?: for| a| to)* $/.test(reading.text.slice(0, at[0]));

/** "and the sugar?" behind a composition: the same mix, another part of it. */
function partAsked(reading: Reading, memory: Memory): GanacheInputs["part"] | undefined {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  if (
    !memory.follows ||
    !["composition", "moves", "target"].includes(before?.want ?? "") ||
    weighed(reading).length > 0 ||
    reading.amounts.some((each) => each.dim === "percent")
  )
    return undefined;
  if (says(reading, /composition|made of/)) return "all";
  return (["sugar", "fat", "water"] as const).find((each) =>
    says(reading, new RegExp(`(?:^| )${each}(?:<| |$)`)),
  );
}

/** "150 g dark for a drip and 150 g milk for filling, how much cream for each": one ganache a chocolate. */
function readSeveral(reading: Reading): Draft[] | undefined {
  const own = weighed(reading).filter((each) => each.thing?.chocolate);
  if (
    own.length < 2 ||
    new Set(own.map((each) => each.thing?.chocolate)).size < own.length ||
    weighed(reading).some((each) => each.thing?.ingredient === "cream")
  )
    return undefined;
  if (![undefined, "build"].includes(readWant(reading).want)) return undefined;
  const ends = own.map((_, at) => own[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY);
  return own.map(({ grams, thing, amount }, at) => {
    const use = reading.things.find(
      (each) => each.use && each.at[0] > amount.at[0] && each.at[0] < (ends[at] ?? 0),
    )?.use;
    return { chocolate: thing?.chocolate, chocolate_g: grams, ...(use ? { use } : {}) };
  });
}

/** The kind of chocolate: by name, or by "white" and "milk" where a ganache is spoken of. */
function kindOf(reading: Reading): GanacheInputs["chocolate"] {
  const named = reading.things.find((each) => each.chocolate)?.chocolate;
  if (named) return named;
  const before = (thing: Thing) =>
    reading.things.some(
      (each) =>
        (each.base === "ganache" ||
          each.step === "ganache sets" ||
          each.ingredient === "chocolate" ||
          each.use) &&
        each.at[0] >= thing.at[1] &&
        each.at[0] - thing.at[1] <= 2,
    ) ||
    // "a firm white one", of what there is cream for
    (reading.things.some((each) => each.use && thing.at[0] - each.at[1] === 1) &&
      reading.things.some((each) => each.ingredient === "cream"));
  // "ganache lait", as the trade's French has it
  const behind = (thing: Thing) =>
    reading.things.some((each) => each.base === "ganache" && thing.at[0] - each.at[1] === 1);
  const alone = (thing: Thing) =>
    !reading.amounts.some((each) => each.of === thing && each.dim !== "number") ||
    isChocolateHere(reading, thing);
  const white = reading.things.find((each) => each.color === "white");
  const besideCream =
    reading.things.some((each) => each.ingredient === "cream" || each.ingredient === "chocolate") &&
    !reading.things.some((each) => each.base === "batter" || each.count || each.base === "buttercream");
  if (white && (before(white) || besideCream || reading.things.length <= 2)) return "white";
  const milk = reading.things.find((each) => each.ingredient === "milk" && alone(each));
  if (milk && (before(milk) || behind(milk) || reading.things.length <= 2 || isChocolateHere(reading, milk)))
    return "milk";
  return undefined;
}

/** Cream was weighed and no chocolate: how much of that is to be worked out. */
const asksChocolate = (reading: Reading): boolean =>
  weighed(reading).some((each) => each.thing?.ingredient === "cream") &&
  !weighed(reading).some(
    ({ thing }) =>
      thing?.chocolate || /chocolate/.test(thing?.ingredient ?? "") || isChocolateHere(reading, thing),
  );

/** "how do i get my ganache thicker" */
const isToBe = (reading: Reading, how: RegExp): boolean =>
  new RegExp(`(?:^| )(?:get|make|getting|making) (?:\\S+ ){1,4}${how.source}(?: |$)`).test(reading.mask);

function readWant(reading: Reading): Draft {
  const verb = says(
    reading,
    /(?:^| )(?:loosen|soften|thin)\S* (?:it|this|that|down)|hard_?as|hard as|rock hard|like (?:a )?(?:brick|concrete|cement)/,
  )
    ? "stiff"
    : isToBe(reading, /(?:softer|looser|thinner|runnier)/)
      ? "stiff"
      : isToBe(reading, /(?:thicker|firmer|stiffer)/)
        ? "loose"
        : says(
              reading,
              /(?:^| )(?:thicken|firm|stiffen)\S* (?:it|this|that|up)|(?:came out|turned out|is|its|way|so|really|bit) (?:\S+ )?(?:thin|runny|liquid|loose|soupy|watery)(?:<| |$)/,
            )
          ? "loose"
          : undefined;
  const fault = reading.things.find(
    (each) => each.symptom === "loose ganache" || each.symptom === "stiff ganache",
  )?.symptom;
  if (
    says(
      reading,
      /(?:^| )water\S* activity|(?:^| )a _ w(?: |$)|(?:^| )fat content|what(?:s| is) the (?:fat|sugar\S*|water\S*)(?: |$)|percent ?wise|(?:in|by|as) (?:percent|percentages)(?: |$)|(?:percentage|percent|share|much|proportion)\S* (?:of )?(?:the )?(?:fat|water\S*|sugar\S*)(?: |$)|(?:^| )(?:fat|water|sugar) (?:percentage|percent|share|content|proportion)|composition|made of|(?:water|fat|sugar)\S* (?:\S+ ){0,3}(?:and|,|&) (?:\S+ ){0,2}(?:water|fat|sugar)|(?:^| )a ?w(?: |$)|how (?:fatty|watery|sweet) (?:is|are)|how (?:much|fatty|wet).*(?:(?:^| )fat(?: |$)|(?:^| )water)/,
    )
  )
    return { want: "composition" };
  if (weighed(reading).length === 0 && says(reading, /(?:^| )(?:ratio|proportions?)(?: |$)/))
    return { want: "ratio" };
  if (reading.things.some((each) => each.symptom === "split ganache")) return { want: "split" };
  if (
    (!fault || asksChocolate(reading)) &&
    says(reading, /how (?:much|many) (?:of )?(?:the )?\S*<[^>]*ingredient=(?:cream|chocolate)/)
  )
    return { want: "build" };
  const more = /how (?:much|many) (?:more|extra) \S*<[^>]*ingredient=(cream|chocolate)/.exec(
    reading.mask,
  )?.[1];
  const both = weighed(reading).some((each) => each.thing?.ingredient === "cream") && !asksChocolate(reading);
  if (more && both) return { want: "mend", fault: more === "cream" ? "stiff" : "loose" };
  // "too soft to roll, 260 dark and 150 cream"
  const isSoft = says(reading, /(?:^| )too_soft/) && both && weighed(reading).length > 1;
  if (isSoft && !fault) return { want: "mend", fault: "loose" };
  if (verb && !fault) return { want: "mend", fault: verb };
  if (fault) return { want: "mend", fault: fault === "loose ganache" ? "loose" : "stiff" };
  return {};
}

/** "melted in 30 g more dark choc", "too thin now, added 20 more cream": on top of what is in it. */
function moreOfPart(reading: Reading, memory: Memory): Draft | undefined {
  const had = partsBefore(memory);
  const [only, ...others] = weighed(reading);
  if (!had || !only || others.length > 0 || says(reading, /how/)) return undefined;
  if (!/<(?:weight|number)> (?:more|extra)\b|\b(?:another|extra) \S*<(?:weight|number)>/.test(reading.mask))
    return undefined;
  const part =
    only.thing?.ingredient === "cream"
      ? "cream_g"
      : only.thing?.chocolate || /chocolate/.test(only.thing?.ingredient ?? "")
        ? "chocolate_g"
        : undefined;
  const { fault } = readWant(reading);
  return (
    part && {
      ...had,
      [part]: had[part] + only.grams,
      ...(fault ? { want: "mend", fault } : { want: "check" }),
    }
  );
}

/** "how do i thicken it", of the mix that was worked out last. */
function mendBefore(reading: Reading, memory: Memory): Draft | undefined {
  const said =
    /^(?:(?:ok|so|and|now) )*how (?:do|can|could|should) i (thicken|firm|stiffen|loosen|soften|thin)\b/.exec(
      reading.mask,
    )?.[1];
  const { fault } = readWant(reading);
  // "its too stiff": the one that has just been worked out
  if (!said && fault && memory.follows && reading.amounts.length === 0) {
    const parts = partsBefore(memory);
    return parts && { ...parts, want: "mend", fault };
  }
  const had = said ? partsBefore(memory) : undefined;
  return (
    had && { ...had, want: "mend", fault: /^(?:thicken|firm|stiffen)$/.test(said ?? "") ? "loose" : "stiff" }
  );
}

/** Chocolate and cream of the ganache before, in g, as said or as worked out. */
function partsBefore(memory: Memory): { chocolate_g: number; cream_g: number } | undefined {
  if (memory.last?.tool !== "ganache") return undefined;
  const { chocolate_g, cream_g } = memory.last.inputs as Draft;
  if (chocolate_g !== undefined && cream_g !== undefined) return { chocolate_g, cream_g };
  const grams = (name: RegExp) => memory.table.recipe?.find((each) => name.test(each.name))?.grams;
  const [chocolate, cream] = [grams(/chocolate$/), grams(/^cream$/)];
  return chocolate === undefined || cream === undefined
    ? undefined
    : { chocolate_g: chocolate, cream_g: cream };
}

function readWeights(reading: Reading, memory: Memory, whole: boolean): Draft {
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
    else if (!thing && Object.keys(out).length === 0)
      out[
        whole ? "total_g" : isChopped(reading) || asksCream(reading) ? "chocolate_g" : looseSlot(memory)
      ] ??= grams;
    if (thing?.ingredient) lines.push({ name: thing.ingredient, grams });
  }
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
  if (macarons && Object.keys(out).length === 0) out.macarons = macarons.value;
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

/** "250 g white and 100 g cream", "and with 280 g white": milk and white are chocolates beside cream, or alone. */
const isChocolateHere = (reading: Reading, thing: Thing | undefined): boolean =>
  (thing?.color === "white" || thing?.ingredient === "milk") &&
  reading.things.every(
    (each) =>
      each === thing ||
      each.ingredient === "cream" ||
      each.base === "ganache" ||
      /ganache/.test(each.symptom ?? ""),
  );

/** "630 g dark piping ganache": the kind of the ganache, not a weight of chocolate. */
function describes(reading: Reading, chocolate: Thing): boolean {
  if (/choc/.test(chocolate.text)) return false;
  const mix = reading.things.find((each) => each.base === "ganache" && each.at[0] > chocolate.at[0]);
  const between = mix ? reading.text.slice(chocolate.at[1], mix.at[0]).trim() : "-";
  return between === "" || reading.things.some((each) => each.use && each.text === between);
}

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
  if (/chocolate$/.test(mass.thing) && asked) {
    const kind = (["dark", "milk", "white"] as const).find((each) => mass.thing.startsWith(each));
    return { chocolate_g: mass.grams, ...(kind ? { chocolate: kind } : {}) };
  }
  const isChocolate =
    pointsBack(reading) &&
    reading.things.some((each) => each.chocolate || each.ingredient === "chocolate") &&
    says(reading, /how much \S*<[^>]*ingredient=cream|(?:^|, )(?:the )?\S*<ingredient=cream> for /);
  if (isChocolate && mass.thing === "") return { chocolate_g: mass.grams };
  if (!["filling", "ganache", "", "ring", "center"].includes(mass.thing)) return {};
  // "half of that is dark ganache"
  const share = says(reading, /<number,fraction> (?:of )?(?:it|that|this|the \S*<base=filling>)(?: |$)/)
    ? reading.amounts.find((each) => each.fraction && (!each.of || each.of.base === "filling"))?.value
    : undefined;
  if (share !== undefined && share < 1) return { total_g: mass.grams * share };
  return pointsBack(reading) ||
    says(reading, /all of|the lot|for (?:the )?(?:filling|ring|center)/) ||
    readWant(reading).want === "split"
    ? { total_g: mass.grams }
    : {};
}
