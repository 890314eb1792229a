/** What is said of the ganache before: more of one part of it, how to mend it, another part of its composition. */

import { split } from "../../../data/rules/ganache.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, says, weighed } from "../lib/find.ts";
import { gramsOf } from "../lib/units.ts";
import type { GanacheInputs } from "./ganache.ts";
import { readWant } from "./want-said.ts";

type Draft = Partial<GanacheInputs>;

/** "melted in 30 g more dark choc", "too thin now, added 20 more cream": on top of what is in it. */
export function moreOfPart(reading: Reading, memory: Memory): Draft | undefined {
  const had = partsBefore(memory);
  const [only, ...others] = weighed(reading);
  if (!had || !only || others.length > 0 || says(reading, /how/)) return undefined;
  const more = /<(?:weight|number)> (?:more|extra)\b|\b(?:another|extra) \S*<(?:weight|number)>/;
  const adds =
    /^(?:(?:and|ok|so|then|now|if|what|i) )*(?:add|adding|added|plus|stir in|stirred in|put in|poured in) \S*<(?:weight|number)>/;
  if (!more.test(reading.mask) && !(adds.test(reading.mask) && memory.follows)) return undefined;
  const part =
    only.thing?.ingredient === "cream"
      ? "cream_g"
      : only.thing?.chocolate || /chocolate/.test(only.thing?.ingredient ?? "")
        ? "chocolate_g"
        : undefined;
  const still = /\bstill (?:too |very )?(runny|loose|soft|thin|liquid|stiff|firm|hard|thick)\b/.exec(
    reading.text,
  )?.[1];
  const { fault = still && (/^(?:stiff|firm|hard|thick)$/.test(still) ? "stiff" : "loose") } =
    readWant(reading);
  return (
    part && {
      ...had,
      [part]: had[part] + only.grams,
      added: { part, grams: only.grams },
      ...(fault ? { want: "mend", fault } : { want: "check" }),
    }
  );
}

const slips =
  /^(?:(?:oh|ah|uh|um|wait|no|nope|nah|sorry|actually|oops) )+(?:, )?(?:(?:its|it is|it was|make it|say|i meant?|sorry|actually|wait|only|just) )*\S*<(?:number|weight)>(?: (?:sorry|actually|instead|then))?(?: [.])?$/;

/**
 * "no, 30": of what was added last, or of the one weight that was said. Of two it is asked which, and "the cream"
 * answers that.
 */
export function putRight(reading: Reading, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  if (before?.want === "composition" && before.lines) return lineRight(reading, memory, before, before.lines);
  const { chocolate_g, cream_g, added, unsure_g } = before ?? {};
  if (chocolate_g === undefined || cream_g === undefined) return undefined;
  if (unsure_g !== undefined && memory.slot === "unsure_g") {
    const isCream = reading.things.some((each) => each.ingredient === "cream");
    const isChocolate = reading.things.some((each) => each.chocolate || each.ingredient === "chocolate");
    if (isCream === isChocolate) return undefined;
    return isCream ? { chocolate_g, cream_g: unsure_g } : { chocolate_g: unsure_g, cream_g };
  }
  const amount = reading.amounts.length === 1 ? reading.amounts[0] : undefined;
  if (!amount || amount.of || !slips.test(reading.mask)) return undefined;
  const grams = gramsOf(amount);
  if (added) {
    const had = { chocolate_g, cream_g };
    const next = { ...had, [added.part]: had[added.part] - added.grams + grams };
    return { ...next, added: { ...added, grams }, want: "check" };
  }
  return { chocolate_g, cream_g, unsure_g: grams };
}

/** "50 cream left, enough?", "ive only 20 choc left": what there is of what the mix before needs. */
export function haveOf(reading: Reading, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  const [only, ...more] = weighed(reading);
  const what = before?.fault === "stiff" ? /cream/ : /chocolate/;
  const name = only?.thing?.ingredient ?? (only?.thing?.chocolate ? "chocolate" : "");
  const hasIt = says(
    reading,
    /(?:only|just|ive|i have|theres|got) (?:only |just )?(?:got |have )?\S*<(?:weight|number)> .*left|<(?:weight|number)> (?:of )?\S+ left(?: ,)?(?: enough| ok| is (?:that|it) enough)?(?: \?)?$/,
  );
  if (before?.want !== "mend" || !only || more.length > 0 || !what.test(name) || !hasIt) return undefined;
  const { chocolate, chocolate_g, cream_g, fault, use } = before;
  return {
    want: "mend",
    ...(chocolate ? { chocolate } : {}),
    ...(fault ? { fault } : {}),
    ...(use ? { use } : {}),
    ...(chocolate_g === undefined ? {} : { chocolate_g }),
    ...(cream_g === undefined ? {} : { cream_g }),
    have_g: only.grams,
  };
}

/** "added 10 g cream, still split": what has gone into the split one, on top of what went in before. */
export function stirredIn(reading: Reading, memory: Memory): Draft | undefined {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  const [only, ...more] = [
    ...weighed(reading),
    ...bareNumbers(reading).map(({ value }) => ({ grams: value })),
  ];
  const hasSplit = before?.want === "split" && before.total_g !== undefined;
  // "still split after 3 additions": so many times what goes in at a time
  const times = reading.amounts.find((each) => each.dim === "number")?.value;
  if (hasSplit && times && says(reading, /after \S*<number> (?:additions|goes|times|rounds|tries)/))
    return {
      want: "split",
      total_g: before.total_g,
      stirred_g: (before.total_g ?? 0) * (split.atATime_percent / 100) * times,
    };
  const done =
    /(?:^| )(?:added|stirred|put|poured|used|tried|gave it|did|mixed|another|more)(?: in)?(?: |$)|\bstill (?:split|broken|grainy|greasy|oily)/;
  if (!hasSplit || !only || more.length > 0 || !says(reading, done)) return undefined;
  return { want: "split", total_g: before.total_g, stirred_g: (before.stirred_g ?? 0) + only.grams };
}

/** "no, 90", of a mix of several lines: it is asked of which, and its name answers that. */
function lineRight(
  reading: Reading,
  memory: Memory,
  { unsure_g }: Draft,
  lines: NonNullable<Draft["lines"]>,
): Draft | undefined {
  if (unsure_g !== undefined && memory.slot === "unsure_g" && reading.amounts.length === 0) {
    const [only, ...others] = lines.filter((each) =>
      reading.things.some(
        (thing) =>
          thing.ingredient === each.name ||
          (thing.chocolate && `${thing.chocolate} chocolate` === each.name) ||
          (thing.ingredient === "chocolate" && / chocolate$/.test(each.name)),
      ),
    );
    if (!only || others.length > 0) return undefined;
    const grams = unsure_g;
    return {
      want: "composition",
      lines: lines.map((each) => (each === only ? { ...each, grams } : each)),
      unsure_g: undefined,
    };
  }
  const [amount, ...more] = reading.amounts;
  const isSlip =
    slips.test(reading.mask) || /^(?:make it|make that|say|try) \S*<(?:number|weight)>$/.test(reading.mask);
  if (!amount || more.length > 0 || amount.of || !isSlip) return undefined;
  const grams = gramsOf(amount);
  return { want: "composition", lines: [...lines], unsure_g: grams };
}

/** "how do i thicken it", of the mix that was worked out last. */
export function mendBefore(reading: Reading, memory: Memory): Draft | undefined {
  const said =
    /^(?:(?:ok|so|and|now) )*how (?:do|can|could|should) i (thicken|firm|stiffen|loosen|soften|thin)\b/.exec(
      reading.mask,
    )?.[1];
  const { fault } = readWant(reading);
  // "how much choc do i add so that last one pipes"
  const adds =
    /how (?:much|many) (?:more )?\S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)\S* (?:do|should|must|can) i (?:add|melt in|stir in|put in)/.exec(
      reading.mask,
    )?.[1];
  const more = /how (?:much|many) more \S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)/.exec(
    reading.mask,
  )?.[1];
  if (more && weighed(reading).length === 0 && !reading.things.some((each) => each.use)) {
    const parts = partsBefore(memory);
    if (parts) return { ...parts, want: "mend", fault: more === "cream" ? "stiff" : "loose" };
  }
  if (adds && weighed(reading).length === 0) {
    const parts = partsBefore(memory);
    if (parts) return { ...parts, want: "mend", fault: adds === "cream" ? "stiff" : "loose" };
  }
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

/**
 * "how much cream then, for piping", of a mix that was judged: its chocolate stays. "and how much chocolate so that it
 * is firm", of one to be mended: more of that.
 */
export function forAnotherUse(reading: Reading, memory: Memory, use: string | undefined): Draft | undefined {
  const before = memory.last?.tool === "ganache" ? (memory.last.inputs as Draft) : undefined;
  const asked = /how (?:much|many) (?:\S+ )?\S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)/.exec(
    reading.mask,
  )?.[1];
  if (
    !use ||
    !asked ||
    weighed(reading).length > 0 ||
    /\bhow (?:much|many) .*\bhow (?:much|many) /.test(reading.mask)
  )
    return undefined;
  if (before?.chocolate_g === undefined || before.cream_g === undefined) return undefined;
  const { chocolate_g, cream_g } = before;
  if (before.want === "mend" || /\b(?:add|more|extra)\b/.test(reading.text))
    return { chocolate_g, cream_g, want: "mend", fault: asked === "cream" ? "stiff" : "loose" };
  return { want: "build", ...(asked === "cream" ? { chocolate_g } : { cream_g }) };
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

/** "and the sugar?" behind a composition: the same mix, another part of it. */
export function partAsked(reading: Reading, memory: Memory): GanacheInputs["part"] | undefined {
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
