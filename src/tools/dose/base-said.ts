/** The mix that is flavored: weighed, summed from its parts, or the one that the turns before left on the table. */
import type { Memory, Reading, Thing } from "../contract/index.ts";
import { isOfQuality, otherPart, pointsBack, says, type Weighed } from "../lib/find.ts";
import type { DoseInputs } from "./dose.ts";
import { isFlavor } from "./flavor-said.ts";
import { readBowls } from "./several-bowls.ts";

type Draft = Partial<DoseInputs>;

export function readBase(reading: Reading, memory: Memory, weights: Weighed[], targets: Thing[]): Draft {
  const bowls = readBowls(reading, memory, weights);
  if (bowls) return bowls;
  const fewer =
    partLeftOut(reading, memory) ??
    partBack(reading, memory) ??
    moreBase(reading, memory, weights) ??
    keptPlain(reading, memory, weights);
  if (fewer) return fewer;
  const isMix = (each: Thing) => each.base !== undefined && each.base !== "meringue";
  // "i called it ganache but it is buttercream"
  const mix = says(
    reading,
    /<[^>]*base=\S+ (?:but|sorry|no),? (?:(?:it|its|is|was|really|actually|in fact|i meant) )*\S*<[^>]*base=/,
  )
    ? reading.things.findLast(isMix)
    : reading.things.find(isMix);
  const base = mix?.base;
  const parts = weights.filter(
    (each) =>
      each.thing &&
      !targets.includes(each.thing) &&
      !sameFlavor(each.thing, targets) &&
      (each.thing.ingredient || each.thing.base || each.thing.chocolate),
  );
  // "only got 90 g cream": one part of a mix is no bowl of it
  const [lone, ...otherParts] = parts;
  const hadParts = memory.last?.tool === "dose" && memory.last.inputs.parts !== undefined;
  if (
    !mix &&
    !hadParts &&
    otherParts.length === 0 &&
    /(?:^| )(?:cream|milk)$/.test(lone?.thing?.ingredient ?? "")
  )
    return {};
  // "vanilla in the shells": in what they are piped from
  if (!mix && parts.length === 0 && says(reading, /(?:in|into) (?:the |my )?\S*<count=shells>(?: \?)?$/))
    return { base: "batter" };
  const cups = reading.amounts.find((each) => each.dim === "volume" && each.of?.base);
  if (cups) return { base, unweighable: `${cups.text} of ${cups.of?.base}` };
  const mixes = new Set(parts.flatMap((each) => (each.thing?.base ? [each.thing.base] : [])));
  if (mixes.size > 1) return {};
  // "thats my ganache, both together", of two weights that were turned into grams
  const [older, newer] = memory.last?.tool === "convert" ? (memory.table.recent ?? []) : [];
  if (
    mix &&
    older &&
    newer &&
    parts.length === 0 &&
    says(reading, /(?:both|the two|those two)(?: of them)? (?:together|in one)|together/)
  )
    return { base_g: older.grams + newer.grams, base };
  // "add 20 g butter", of a bowl that was weighed whole
  const bowl = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (
    lone?.thing?.ingredient &&
    otherParts.length === 0 &&
    !mix &&
    !hadParts &&
    bowl?.base_g !== undefined &&
    says(
      reading,
      /^(?:(?:and|ok|so|now|then|if i) )*(?:add|adding|added|plus|with|put(?: in)?|stir in) \S*<weight>/,
    )
  )
    return { base_g: bowl.base_g + lone.grams, ...(bowl.base ? { base: bowl.base } : {}) };
  if (parts.length > 0) {
    // "half of it", of a weight said in the same breath
    const share = says(reading, /<number,fraction> of (?:it|that|this)(?: |$)/)
      ? reading.amounts.find((each) => each.fraction && each.dim === "number" && !each.of)?.value
      : undefined;
    // "840 g batter in 3 bowls, how much gel color for one"
    const bowls = says(reading, /(?:in|into|between|over) \S*<number> (?:equal )?\S*<[^>]*count=bowls/)
      ? reading.amounts.find((each) => each.of?.count === "bowls")?.value
      : undefined;
    const ofOne = bowls && bowls > 1 && asksPart.test(reading.text) ? 1 / bowls : undefined;
    const base_g = parts.reduce((sum, each) => sum + each.grams, 0) * (share ?? ofOne ?? 1);
    const corrected = correctParts(parts, memory);
    if (corrected) return corrected;
    const summed = parts.length > 1 ? { parts: parts.map(partOf) } : {};
    const kind = base ?? baseOfParts(parts);
    return { base_g, ...(kind ? { base: kind } : {}), ...summed };
  }
  // "in the ganache too, i have 200 g of that"
  const ofThat = weights.find(
    (each) => !each.thing && /^ of (?:that|it|this|them)\b/.test(reading.text.slice(each.amount.at[1])),
  );
  const saidBehind = mix && ofThat && mix.at[1] <= ofThat.amount.at[0];
  if (base && ofThat && (saidBehind || /\b(?:have|ive|got|theres|there is)\b/.test(reading.text)))
    return { base_g: ofThat.grams, base };
  // "i forgot to weigh it": none of the weights before is meant
  if (/\b(?:forgot|didnt|havent|did not|have not|never) (?:to )?weigh/.test(reading.text))
    return base ? { base } : {};
  const table = memory.table;
  // "how much lemon flavor in the 250", of what was said before
  const before_g = Object.entries(memory.last?.inputs ?? {}).flatMap(([key, value]) =>
    key.endsWith("_g") && typeof value === "number" ? [value] : [],
  );
  const pointed = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.value >= 20 &&
      before_g.includes(each.value) &&
      /\b(?:in|for|into) (?:the|that|those|all) $/.test(reading.text.slice(0, each.at[0])),
  );
  if (pointed && weights.length === 0)
    return {
      base_g: pointed.value,
      ...(base ? { base } : baseFrom(table.mass?.thing || String(memory.last?.inputs.filling ?? ""))),
    };
  // "it is double strength" is no part of the mix
  const part = reading.amounts.find(
    (each) =>
      (each.fraction || each.unit === "times") && each.dim === "number" && !isOfQuality(reading, each),
  );
  const earlier = memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (table.rest && weights.length === 0 && otherPart.test(reading.text))
    return { base_g: table.rest.grams, ...(base ? { base } : baseFrom(table.rest.thing)) };
  const named = table.parts?.find((each) => isNamed(reading, each.name));
  // "and the other one gets powder", of two bowls of which one was flavored
  const two = table.parts?.length === 2 ? table.parts.map((each) => each.grams) : [];
  const at = two.indexOf(
    memory.last?.tool === "dose" ? Number((memory.last.inputs as Draft).base_g) : Number.NaN,
  );
  if (at >= 0 && weights.length === 0 && /\bthe other (?:one|half|bowl|part|lot)\b/.test(reading.text))
    return { base_g: two[1 - at], ...(base ? { base } : baseFrom(table.mass?.thing ?? "")) };
  // "powder color for it", behind "half the batter yellow"
  const shares =
    memory.last?.tool === "split"
      ? (memory.last.inputs.percents as { name?: string }[] | undefined)
      : undefined;
  const oneNamed =
    shares?.length === 1 ? table.parts?.find((each) => each.name === shares[0]?.name) : undefined;
  if (oneNamed && weights.length === 0 && !base && says(reading, /(?:^| )(?:for|in|into) (?:it|that)(?: |$)/))
    return { base_g: oneNamed.grams, ...baseFrom(table.mass?.thing ?? "") };
  const inNamed = named && { base_g: named.grams, ...(base ? { base } : baseFrom(table.mass?.thing ?? "")) };
  // "6 g raspberry powder in the raspberry half": judged against that half
  const [only, ...more] = weights;
  if (inNamed && only?.thing && isFlavor(only.thing) && more.length === 0 && isIn(reading, named.name))
    return { ...inNamed, want: "check" };
  if (
    part &&
    !named &&
    earlier?.base_g !== undefined &&
    !/\b(?:that|this|the same) $/.test(reading.text.slice(0, part.at[0])) &&
    says(reading, /of (?:that|it|the)|that much|(?:that|it)(?: |$)|as much/)
  )
    return { base_g: earlier.base_g * part.value };
  if (inNamed && !reading.amounts.some((each) => each.dim === "weight")) return inNamed;
  const larger = /(?:the|a) (?:bigger|larger|biggest|largest|big) (?:part|half|bowl|one)/.test(reading.text);
  const smaller = /(?:the|a) (?:smaller|smallest|small|little) (?:part|half|bowl|one)/.test(reading.text);
  if ((larger || smaller) && table.parts?.length) {
    const sizes = table.parts.map((each) => each.grams);
    return {
      base_g: larger ? Math.max(...sizes) : Math.min(...sizes),
      ...(base ? { base } : baseFrom(table.mass?.thing ?? "")),
    };
  }
  // "how much gel for the blue", of three colors that get the same
  const equalParts =
    table.parts &&
    table.parts.length > 1 &&
    table.parts.every((each) => Math.abs(each.grams - (table.parts?.[0]?.grams ?? 0)) < 1e-6);
  if (
    equalParts &&
    table.part &&
    memory.last?.tool === "split" &&
    reading.things.some((each) => each.color && !each.base && !each.dose)
  )
    return { base_g: table.part.grams, ...(base ? { base } : baseFrom(table.part.thing)) };
  // the mask holds words mended, without what they are
  const mended = reading.mask.replace(/<[^>]*>/g, "");
  if ((asksPart.test(reading.text) || asksPart.test(mended)) && table.part)
    return { base_g: table.part.grams, ...(base ? { base } : baseFrom(table.part.thing)) };
  // "with 5 g salt?", right behind the mix that was worked out
  const behindMix = ["ganache", "buttercream", "fill"].includes(memory.last?.tool ?? "");
  const withIt =
    behindMix &&
    /^(?:(?:and|ok|so|now) )*(?:with|plus) \S*<weight> (?:of )?\S*<[^>]*dose=/.test(reading.mask);
  if (withIt && table.mass) return { base_g: table.mass.grams, want: "check", ...baseFrom(table.mass.thing) };
  const fits =
    table.mass &&
    (pointsBack(reading) ||
      (!base &&
        (["buttercream", "ganache"].includes(memory.last?.tool ?? "") ||
          (memory.last?.tool === "fill" && ["buttercream", "ganache"].includes(table.mass.thing)) ||
          (memory.last?.tool === "shells" &&
            table.mass.thing === "batter" &&
            reading.things.some((each) => /color$/.test(each.dose ?? "")))) &&
        says(
          reading,
          /(?:^| )(?:add|adding|flavou?r|put|with|how much) |^(?:and |then |now |so )*\S*<[^>]*(?:dose|taste)=[^>]*>(?: (?:please|pls|then))?(?: \?)?$/,
        )) ||
      (base && (table.mass.thing === base || table.mass.thing === "filling" || table.mass.thing === "")));
  const ownWeight = weights.some((each) => !each.thing || isFlavor(each.thing)) && !pointsBack(reading);
  const asksBase =
    /how (?:much|many) (?:more |plain |extra |other )*\S*<base/.test(reading.mask) &&
    !/(?:thats|that is|this is|its|it is) how (?:much|many)/.test(reading.mask);
  const whole =
    reading.amounts.find(
      (each) =>
        each.dim === "number" &&
        (each.fraction || each.unit === "times") &&
        // "for that half": what was worked out is the half already
        !/\b(?:that|this) $/.test(reading.text.slice(0, each.at[0])),
    )?.value ?? 1;
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
  // "how much plain filling do i add", of a bowl that was named before
  const known = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (base === "filling" && known?.base && known.base_g !== undefined) return { base: known.base };
  return base ? { base } : {};
}

/** A part of what was split, by its color, its taste or what it is called. */
const isNamed = (reading: Reading, name: string): boolean =>
  (name === "with butter" &&
    /\bbutter (?:one|version|ganache)\b|\bwith (?:the )?butter\b/.test(reading.text)) ||
  reading.things.some(
    (thing) =>
      [thing.color, thing.taste, thing.base].includes(name) ||
      (thing.base !== undefined && name.endsWith(` ${thing.base}`)) ||
      (thing.taste !== undefined && name.startsWith(`${thing.taste} `)),
  ) ||
  isIn(reading, name);

const isIn = (reading: Reading, name: string): boolean =>
  new RegExp(
    `(?:for|in|into) (?:the |my |that |this )?${name === "center" ? "cent(?:er|re)" : name}[ <]`,
  ).test(`${reading.mask} `);

const partOf = (each: Weighed) => ({
  name: each.thing?.ingredient ?? each.thing?.base ?? each.thing?.text ?? "",
  grams: each.grams,
});

/** "only 100 g plain bc left so all of thats gone in": on top of the bowl that was spoken of, its flavor with it. */
function moreBase(reading: Reading, memory: Memory, weights: Weighed[]): Draft | undefined {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (before?.base_g === undefined) return undefined;
  const isPart = ({ thing }: Weighed) => thing?.ingredient !== undefined && !thing.taste && !thing.dose;
  const isPlain = (each: Weighed) =>
    each.thing?.base !== undefined ||
    isPart(each) ||
    /^(?: g| grams)?(?: more| extra)?(?: of)? (?:the )?plain\b/.test(reading.text.slice(each.amount.at[1]));
  const said = weights.length > 0 ? weights : bareGrams(reading);
  // "i add 60 g, now is good?", where plain mix was what had to be added
  const isAnswer =
    before.want === "mend" &&
    said.length === 1 &&
    !said[0]?.thing &&
    /\b(?:i|ive|i have|ill|we) (?:just )?(?:add|added|put|stirred|mixed)\b/.test(reading.text) &&
    !/\bhow (?:much|many)\b/.test(reading.text);
  const [added, ...others] = isAnswer ? said : said.filter(isPlain);
  if (!added || others.length > 0) return undefined;
  const goneIn =
    /\b(?:added|add|adding|stirred|stir|mixed|put|tipped|folded|beat|beaten|whisked|whipped)\b(?: in)? (?:another |all |the |just |only )*\S*<weight> .*(?:more|plain)|(?:gone|went|goes|all) in\b|\b(?:another|extra) \S*<(?:weight|number)>|<weight> more\b/.test(
      reading.mask,
    ) &&
    /what (?:percent|\S*<unit=%>|share)|now\b|where am i|enough|ok\b|then\b|^(?:(?:and|so|but|what) )*if i /.test(
      reading.mask,
    );
  // "oh and another 50 g butter went in"
  const asWell =
    isPart(added) &&
    /\b(?:another|extra|more|as well|too)\b|went in|goes in/.test(reading.mask) &&
    /^(?:and |now )*(?:with|plus) \S*<weight>|\b(?:put \S* ?\S*<weight> .* in(?:to)? (?:it|that|there|the bowl)|went in|goes in|gone in|beating|beat|adding|added|add|in as well|in too|stir\w*|melt\w*)\b/.test(
      reading.mask,
    );
  if (asWell)
    return {
      ...(before.parts ? summed([...before.parts, partOf(added)]) : { base_g: before.base_g + added.grams }),
      ...(before.flavor_g === undefined ? {} : { flavor_g: before.flavor_g, want: "check" as const }),
    };
  if (before.flavor_g === undefined) return undefined;
  return goneIn || isAnswer
    ? { base_g: before.base_g + added.grams, flavor_g: before.flavor_g, want: "check" }
    : undefined;
}

/** "another 30 of plain": grams, where a bowl was weighed in them. */
const bareGrams = (reading: Reading): Weighed[] =>
  reading.amounts.flatMap((amount) =>
    amount.dim === "number" && amount.unit === "" && !amount.fraction && amount.value >= 5
      ? [{ grams: amount.value, amount }]
      : [],
  );

/** "350 of that stays plain": the flavor is for the rest. */
function keptPlain(reading: Reading, memory: Memory, weights: Weighed[]): Draft | undefined {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  if (before?.base_g === undefined) return undefined;
  const said = says(reading, /(?:stays?|kept|keep|left|leave|leaving)\b.* \S*plain/);
  // "half the batter is staying plain"
  const part = reading.amounts.find((each) => each.fraction && each.dim === "number" && each.value < 1);
  const half =
    /<number,fraction> (?:of )?(?:(?:the|it|that|this|my) )?(?:\S*<base=\S+ )?(?:is |will be |are )?(?:staying|stays?|kept|left) \S*plain/;
  if (part && half.test(reading.mask)) return { base_g: before.base_g * (1 - part.value) };
  const grams =
    weights[0]?.grams ?? reading.amounts.find((each) => each.dim === "number" && each.value >= 20)?.value;
  if (!said || before?.base_g === undefined || grams === undefined || grams >= before.base_g)
    return undefined;
  return { base_g: before.base_g - grams };
}

/** "for each", "per bowl", "one of them": a part of what was split. */
const asksPart =
  /(?:in|for|into|to) (?:just |only )?(?:each|one|another(?: one)?|the (?:last|next|third|second|first)(?: one)?|that one|(?:a single|a|that) (?:bowl|tub|pot|jar|part|dish|portion))(?: ?[,?]|$)|(?:in|for) (?:one|the other|each) half|the other (?:one|half)|for one and .* for the other|one of (?:them|em|those|these|the (?:\w+ )?(?:halves|parts|bowls|tubs|thirds|quarters))|each (?:bowl|tub|pot|jar|part|half|third|one)|per (?:bowl|tub|pot|jar|part|portion)|in each|one (?:bowl|half|part|third)/;

/** "without the butter?": a part of the sum said before is left out. */
function partLeftOut(reading: Reading, memory: Memory): Draft | undefined {
  const before =
    memory.follows && memory.last?.tool === "dose" ? (memory.last.inputs as Draft).parts : undefined;
  if (!before || !says(reading, /(?:^| )(?:without|minus|leave out|leaving out|skip|drop|no)(?: |$)/))
    return undefined;
  const gone = reading.things.flatMap((each) => each.ingredient ?? []);
  const parts = before.filter((each) => !gone.includes(each.name));
  if (parts.length === 0 || parts.length === before.length) return undefined;
  const left_out = before.filter((each) => !parts.includes(each));
  return { ...summed(parts), left_out };
}

const summed = (parts: { name: string; grams: number }[]): Draft => ({
  parts,
  base_g: parts.reduce((sum, each) => sum + each.grams, 0),
});

/** "ok butter back in": a part that had been left out. */
function partBack(reading: Reading, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const isBack =
    before?.parts &&
    before.left_out &&
    says(reading, /<ingredient=\S* back(?: in| again)?(?: |$)|back with (?:the )?\S*<ingredient=/);
  return isBack && before.parts && before.left_out
    ? summed([...before.parts, ...before.left_out])
    : undefined;
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
