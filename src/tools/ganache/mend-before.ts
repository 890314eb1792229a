/** The ganache before, mended or made for another use: more of one part of it, or how much more it takes. */
import { says } from "../lib/find.ts";
import { isChocolate } from "./kind-said.ts";
import type { Draft, GanacheTurn, GanacheWay } from "./turn.ts";
import { faultMendedBy, runsOff } from "./want-said.ts";
import { readWeights } from "./weights-said.ts";

/** Chocolate and cream of the ganache before, in g, as said or as worked out. */
function partsBefore({ memory, last }: GanacheTurn): { chocolate_g: number; cream_g: number } | undefined {
  if (!last) return undefined;
  const worked = (name: RegExp) => memory.table.recipe?.find((each) => name.test(each.name))?.grams;
  const isSaid = last.chocolate_g !== undefined && last.cream_g !== undefined;
  const chocolate_g = isSaid ? last.chocolate_g : worked(/chocolate$/);
  const cream_g = isSaid ? last.cream_g : worked(/^cream$/);
  return chocolate_g === undefined || cream_g === undefined ? undefined : { chocolate_g, cream_g };
}

const leftOfIt =
  /(?:only|just|ive|i have|theres|got) (?:only |just )?(?:got |have )?\S*<(?:weight|number)> .*left|<(?:weight|number)> (?:of )?\S+ left(?: ,)?(?: enough| ok| is (?:that|it) enough)?(?: \?)?$/;

/** "50 cream left, enough?", "ive only 20 choc left": what there is of what the mix before needs. */
export const whatIsLeft: GanacheWay = ({ reading, last, weights: [only, ...more] }) => {
  if (last?.want !== "mend" || !only || more.length > 0 || !says(reading, leftOfIt)) return undefined;
  const name = only.thing?.ingredient ?? (only.thing?.chocolate ? "chocolate" : "");
  if (!(last.fault === "stiff" ? /cream/ : /chocolate/).test(name)) return undefined;
  const { chocolate, chocolate_g, cream_g, fault, use } = last;
  return {
    want: "mend",
    ...(chocolate ? { chocolate } : {}),
    ...(fault ? { fault } : {}),
    ...(use ? { use } : {}),
    ...(chocolate_g === undefined ? {} : { chocolate_g }),
    ...(cream_g === undefined ? {} : { cream_g }),
    have_g: only.grams,
  };
};

const isMore = /<(?:weight|number)> (?:more|extra)\b|\b(?:another|extra) \S*<(?:weight|number)>/;
const adds =
  /^(?:(?:and|ok|so|then|now|if|what|i) )*(?:add|adding|added|plus|stir in|stirred in|put in|poured in) \S*<(?:weight|number)>/;

/** "melted in 30 g more dark choc", "too thin now, added 20 more cream": on top of what is in it. */
export const moreOfPart: GanacheWay = (turn) => {
  const { reading, memory, want } = turn;
  const [only, ...others] = turn.weights;
  const had = partsBefore(turn);
  if (!had || !only || others.length > 0 || says(reading, /how/)) return undefined;
  if (!says(reading, isMore) && !(memory.follows && says(reading, adds))) return undefined;
  const part =
    only.thing?.ingredient === "cream" ? "cream_g" : isChocolate(only.thing) ? "chocolate_g" : undefined;
  const still = /\bstill (?:too |very )?(?:(runny|loose|soft|thin|liquid)|stiff|firm|hard|thick)\b/.exec(
    reading.text,
  );
  const fault = want.fault ?? (still ? (still[1] ? "loose" : "stiff") : undefined);
  return (
    part && {
      ...had,
      [part]: had[part] + only.grams,
      added: { part, grams: only.grams },
      ...(fault ? { want: "mend", fault } : { want: "check" }),
    }
  );
};

const howMuchMore = /how (?:much|many) more \S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)/;
const howMuchToAdd =
  /how (?:much|many) (?:more )?\S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)\S* (?:do|should|must|can) i (?:add|melt in|stir in|put in)/;
const howToMend =
  /^(?:(?:ok|so|and|now) )*how (?:do|can|could|should) i (?:(thicken|firm|stiffen)|loosen|soften|thin)\b/;

/** "how do i thicken it", "how much choc do i add so that last one pipes", "its too stiff", of the mix before. */
export const mendIt: GanacheWay = (turn) => {
  const { reading, memory, weights, want } = turn;
  const parts = partsBefore(turn);
  if (!parts) return undefined;
  const more = reading.things.some((each) => each.use) ? undefined : howMuchMore.exec(reading.mask);
  const part = (more ?? howMuchToAdd.exec(reading.mask))?.[1];
  if (part && weights.length === 0) return { ...parts, want: "mend", fault: faultMendedBy(part) };
  const verb = howToMend.exec(reading.mask);
  if (verb) return { ...parts, want: "mend", fault: verb[1] ? "loose" : "stiff" };
  // a fault alone is that of the one that has just been worked out
  return want.fault && memory.follows && reading.amounts.length === 0
    ? { ...parts, want: "mend", fault: want.fault }
    : undefined;
};

/**
 * "how much cream then, for piping", of a mix that was judged: its chocolate stays. "and how much chocolate so that it
 * is firm", of one to be mended: more of that.
 */
export const forAnotherUse: GanacheWay = ({ reading, last, weights, use, common }) => {
  const asked = /how (?:much|many) (?:\S+ )?\S*<[^>]*ingredient=(cream|(?:\w+_)?chocolate)/.exec(
    reading.mask,
  )?.[1];
  const asksTwice = says(reading, /\bhow (?:much|many) .*\bhow (?:much|many) /);
  if (!use || !asked || weights.length > 0 || asksTwice) return undefined;
  if (last?.chocolate_g === undefined || last.cream_g === undefined) return undefined;
  const { chocolate_g, cream_g } = last;
  if (last.want === "mend" || /\b(?:add|more|extra)\b/.test(reading.text))
    return { ...common, chocolate_g, cream_g, want: "mend", fault: faultMendedBy(asked) };
  return { ...common, want: "build", ...(asked === "cream" ? { chocolate_g } : { cream_g }) };
};

const asksWhatFor =
  /what (?:will|does|can|would) (?:that|it|this)|good for|ratio|what(?:s| is) (?:that|it|this)|(?:right|ok|okay|good|enough) (?:for|to) /;

/** "so its 210 dark and 180 cream now, what will that do": what it is good for, and no more to be mended. */
export const mendedNow: GanacheWay = ({ reading, memory, before, weights, want, common }) => {
  const isTold = before?.want === "mend" && want.want === undefined && weights.length > 1;
  if (!isTold || !says(reading, asksWhatFor)) return undefined;
  const now = readWeights(reading, memory, false);
  return now.chocolate_g !== undefined && now.cream_g !== undefined
    ? { ...common, ...now, want: "check" }
    : undefined;
};

const tooSoft = /too[_ ](?:soft|runny|loose|thin|wet)/;

/** "poured 170 cream in, too runny", of the chocolate that it was worked out for. */
export const pouredIn: GanacheWay = ({ reading, memory, last, want, common }) => {
  const chocolate_g = last?.chocolate_g;
  if (chocolate_g === undefined) return undefined;
  if (want.want !== "mend" && !says(reading, /(?:^| )(?:poured|added|tipped|put)(?: |$)/)) return undefined;
  const now = readWeights(reading, memory, want.want === "split");
  if (now.cream_g === undefined || now.chocolate_g !== undefined || now.total_g !== undefined)
    return undefined;
  const mend: Draft =
    says(reading, tooSoft) || runsOff.test(reading.mask) ? { want: "mend", fault: "loose" } : {};
  return {
    ...(last?.chocolate ? { chocolate: last.chocolate } : {}),
    ...common,
    chocolate_g,
    ...now,
    ...mend,
  };
};
