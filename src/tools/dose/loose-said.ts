/** What a weight or a number is that is bound to nothing: the flavor, the mix, or a percentage. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says, type Weighed } from "../lib/find.ts";
import { gramsOfVolume } from "../lib/portions.ts";
import { inBase } from "../lib/units.ts";
import { mostOf, readBareWeight } from "./bare-weight.ts";
import type { DoseInputs } from "./dose.ts";
import { isFlavor } from "./flavor-said.ts";
import { byVolume, liquidRows } from "./flavor-weight.ts";

type Draft = Partial<DoseInputs>;

/** Weights bound to nothing: in the bowl already, or the base, by what the words and the turn before settle. */
export function readLoose(
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
  const sameUnit = found.base_g === undefined ? inSameUnit(reading, before) : undefined;
  if (sameUnit) return sameUnit;
  // "how much raspberry powder for 150 of it": a part of what is on the table
  const ofIt = says(
    reading,
    /(?:^| )(?<!(?:put|went|tipped|poured|stirred|dropped|added|got|squeezed|stuck|popped|chucked|threw|splashed) )(?:for|in|into) (?:just |only |about )?\S*<(?:number|weight)> of (?:it|that|this|them)(?: |$)/,
  );
  const part_g =
    ofIt && memory.table.mass
      ? (weights.find((each) => !each.thing)?.grams ?? bareNumbers(reading)[0]?.value)
      : undefined;
  if (part_g !== undefined) return { base_g: part_g };
  // "11 g in so far", where the weight of the mix was asked for: it is no answer to that
  const inSoFar = weights.find((each) => !each.thing)?.grams;
  if (
    memory.slot === "base_g" &&
    inSoFar !== undefined &&
    says(reading, /<weight> in (?:so far|already)(?: |$)/)
  )
    return { flavor_g: inSoFar };
  const putIn = inSoFar ?? bareNumbers(reading)[0]?.value;
  if (
    memory.slot === "base_g" &&
    putIn !== undefined &&
    says(reading, /(?:^| )i (?:put|added|used|poured|dropped) \S*</)
  )
    return { flavor_g: putIn };
  // "no the max is 1.5": percent, as directions are
  const most = bareNumbers(reading)[0]?.value;
  if (
    most !== undefined &&
    most <= 10 &&
    bareNumbers(reading).length === 1 &&
    says(reading, /(?:^| )(?:max|maximum|limit) (?:is|was|dose is|says) \S*<number/)
  )
    return { percent: most };
  const drops = reading.amounts.find((each) => each.of?.count === "drops" && each.dim === "number");
  // the bowl stays: only the flavor has no weight
  const sameBowl =
    before?.base_g === undefined
      ? {}
      : { base_g: before.base_g, ...(before.base ? { base: before.base } : {}) };
  if (drops)
    return { ...sameBowl, unweighable: drops.text.includes("drop") ? drops.text : `${drops.text} drops` };
  const asksBack = says(
    reading,
    /how (?:much|far)(?: \S+){0,3} \S*<(?:[^>]*,)?base|how far|goes? how far|will (?:it|that|this) do|stretch/,
  );
  // "alright, just the buttercream" agrees, and judges nothing
  const told = {
    ...reading,
    mask: reading.mask.replace(/^(?:(?:ok|okay|alright|right|so|and|now) (?:, )?)+/, ""),
  };
  const inBowl = says(
    told,
    /in there|<(?:weight|number)> in (?:so far|already|now)|i (?:have )?(?:put|went with|added|used|poured|tipped|dumped|stirred|squeezed|stuck|popped|chucked|threw|splashed)|(?:is|was|would|will) (?:that|it|this)|would (?:\S+ )?\S*<(?:weight|number)\S* be(?: |$)|is (?:she|he) (?:right|correct)|(?:fell|went|dropped|landed|slipped) in|fell|verdict|enough|too (?:strong|weak|much|little)|already|inside the|(?:put|got|dropped|tipped) \S*<(?:number|weight)> (?:inside|in)(?: |$)|within the|in range|went in|alright|okay|overd|<(?:weight|number)> (?:is |be )?ok(?: |$)/,
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
  if (
    before &&
    into &&
    bowl &&
    says(
      reading,
      /<weight> (?:(?:had|has|have|went|gone|goes|go|put|were|was) )*(?:in|into|to|for) (?:(?:the|my|that|those|these|all|whole|full) )*\S*<weight>/,
    )
  )
    return { flavor_g: into.grams, base_g: bowl.grams, want: inBowl ? "check" : before.want };
  // "what percent is 9 g in 260"
  const whole = bowl?.grams ?? bareNumbers(reading)[0]?.value;
  if (
    into &&
    whole &&
    says(
      reading,
      /what (?:\S*<unit=%>|percentage|share) .*<weight> (?:\S+ )?(?:in|of|into) \S*<(?:weight|number)>|^(?:(?:so|and|is|are|would|will|was) )+\S*<weight> (?:in|into|to|of) \S*<(?:weight|number)>.* (?:ok|okay|enough|fine|alright|right|too)(?: |$)/,
    )
  )
    return { flavor_g: into.grams, base_g: whole, want: "check" };
  // "and if i keep 3 g aside"
  const aside =
    /(?:keep|keeping|put|set|hold|save|leave) (?:back )?\S*<(?:weight|number)> (?:of it )?(?:aside|back|for (?:later|next time))/.test(
      reading.mask,
    );
  if (
    aside &&
    loose !== undefined &&
    before?.flavor_g !== undefined &&
    before.base_g === undefined &&
    loose < before.flavor_g
  )
    return { flavor_g: before.flavor_g - loose };
  // "if i use half the 8 g"
  const share = reading.amounts.find((each) => each.fraction && each.dim === "number" && each.value < 1);
  if (
    share &&
    loose !== undefined &&
    before?.flavor_g === loose &&
    /^ (?:of )?the /.test(reading.text.slice(share.at[1]))
  )
    return { flavor_g: loose * share.value };
  // "so 370 g total": the bowl
  const inAll = weights.find(
    (each) =>
      !each.thing && /^ (?:in )?(?:total|all|altogether)\b/.test(reading.text.slice(each.amount.at[1])),
  );
  if (inAll && inAll.grams >= 60 && found.flavor_g === undefined) return { base_g: inAll.grams };
  const spoons = bareNumbers(reading)[0];
  const anew = inBowl || /\b(?:what if|if) (?:it|i|that)\b/.test(reading.text);
  if (before?.flavor_unit && spoons && spoons.value <= 12 && anew && weights.length === 0)
    return byVolume({ ...spoons, dim: "volume", unit: before.flavor_unit });
  const more = loose === undefined ? undefined : moreOfIt(reading, loose, before);
  if (more) return more;
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
  if (found.base_g !== undefined && says(reading, /(?:stays?|kept|keep|left|leave|leaving)\b.* \S*plain/))
    return {};
  // "matcha powder for that 500 g": the bowl on the table, weighed once more
  if (found.base_g !== undefined && Math.abs(found.base_g - loose) < 1e-9) return {};
  // "i put in 5 g, can i add 3 more"
  const extra = reading.amounts.find(
    (each) =>
      ["weight", "number"].includes(each.dim) && /^ (?:g )?more\b/.test(reading.text.slice(each.at[1])),
  );
  if (found.base_g !== undefined && found.flavor_g === undefined && extra && extra.value !== loose)
    return { flavor_g: loose + extra.value, want: "check" };
  // "230 g buttercream and 150 g, how much flavor": so much is no flavor that was put in
  const asksFlavor = says(
    reading,
    /how (?:much|many)(?: g| grams)?(?: of)?(?: the| my)? \S*<[^>]*(?:dose|taste)=/,
  );
  if (found.base_g !== undefined && asksFlavor && loose > found.base_g / 8) return {};
  if (found.base_g !== undefined)
    return found.flavor_g === undefined && found.percent === undefined ? { flavor_g: loose } : {};
  if (found.flavor_g !== undefined) return { base_g: loose };
  if (before) {
    const backward = before.flavor_g !== undefined && before.base_g === undefined;
    // "just the buttercream then, but 12 ounces": a bowl, and no flavor
    if (found.base !== undefined && before.base_g !== undefined && !inBowl && loose > before.base_g / 5)
      return { base_g: loose };
    // "in 200 g too much?", behind how much a flavor is enough for: the bowl it goes into
    if (
      backward &&
      says(
        reading,
        /^(?:(?:and|so|ok|if i put it|but|is it|it went|went|now) )*(?:in|into) (?:just |only |about )?\S*<(?:weight|number)>/,
      )
    )
      return { base_g: loose, ...(inBowl ? { want: "check" } : {}) };
    const bare = readBareWeight(reading, loose, before, mostOf(before));
    if (bare) return bare;
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

/** "and 12", behind the flavor for 8 oz: ounces again, another bowl. */
function inSameUnit(reading: Reading, before: Draft | undefined): Draft | undefined {
  const [only, ...others] = reading.amounts;
  const { base_g, base_unit } = before ?? {};
  if (base_g === undefined || !base_unit || before?.flavor_g !== undefined || !only || others.length > 0)
    return undefined;
  if (only.dim !== "number" || only.unit !== "" || only.fraction || only.of) return undefined;
  // "make it 3.5", where a percentage was said
  if (before?.percent !== undefined && only.value <= 10) return undefined;
  const grams = inBase(only.value, base_unit);
  const isBowl =
    /^(?:(?:and|ok|so|or|now|then|for|what|how|about|if|no|make|it|that|in) )*\S*<number>(?: (?:then|please|instead))*(?: \?)?$/;
  // so much less than the bowl before it may be of the flavor
  return isBowl.test(reading.mask) && grams >= base_g / 4 ? { base_g: grams, base_unit } : undefined;
}

/** "i added 2 g too much flavor": over what was wanted; how much is in it isn't said. */
export const isOver = ({ mask }: Reading): boolean =>
  /<weight> (?:of )?too (?:much|many)\b(?!.*<weight> \S*<[^>]*dose=)/.test(mask) &&
  /\b(?:added|put|used|poured|tipped|dropped)\b/.test(mask);

/** "dripped in 5 more": on top of what is in the bowl already. */
function moreOfIt({ mask }: Reading, loose: number, before: Draft | undefined): Draft | undefined {
  if (before?.base_g === undefined || loose <= 0) return undefined;
  const isMore =
    /<(?:weight|number)> (?:\S*<unit=g> )?more\b|\b(?:another|extra) \S*<(?:weight|number)>/.test(mask) &&
    !/\b(?:how|buttercream|ganache|plain)\b|<[^>]*base=/.test(mask);
  if (!isMore) return undefined;
  // "i can spare 100 g more", where 10 g went in: of the plain mix, to bring it down with
  const isPlain = /\b(?:have|ive|got|spare|left|theres|there is)\b/.test(mask);
  if (isPlain && before.flavor_g !== undefined && loose > before.flavor_g)
    return { base_g: before.base_g + loose, flavor_g: before.flavor_g, want: "check" };
  return before.flavor_g === undefined
    ? { more_g: loose, want: "check" }
    : { flavor_g: before.flavor_g + loose, want: "check" };
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
  // "enough for 20", where the bowl's weight was asked for: macarons, not grams
  const before = memory.last?.tool === "dose" ? (memory.last.inputs as Draft) : undefined;
  const nothingYet = before && before.base_g === undefined && before.flavor_g === undefined;
  if ((memory.slot === "base_g" || nothingYet) && bare.value < 25) return undefined;
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
