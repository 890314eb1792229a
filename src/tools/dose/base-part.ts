/** The flavor is for one part of what lies on the table: the pink one, the other half, each. */

import { vessel, vessels } from "../../../data/words/vessels.ts";
import { isOfQuality, otherPart, says } from "../lib/find.ts";
import { areEqual, goesInto, namedPart, otherOfTwo, partBySize } from "../lib/parts.ts";
import { type BaseWay, taken } from "./base-turn.ts";
import { isFlavor } from "./flavor-said.ts";
import { partsOf } from "./parts-said.ts";

/** "for each", "per bowl", "one of them": a part of what was split. */
export const asksPart = new RegExp(
  [
    `(?:in|for|into|to) (?:just |only )?(?:each|one|another(?: one)?|the (?:last|next|third|second|first)(?: (?:one|${vessel}))?|that one|(?:a single|a|that|a single one of the|just the one|every) ${vessel}|every one)(?: ?[,?]|$)`,
    `(?:in|for) (?:one|the other|each) half|the other (?:one|half|${vessel})|for one and .* for the other`,
    `one of (?:them|em|those|these|(?:the |those |these )?(?:\\w+ )?(?:halves|thirds|quarters|${vessels}))`,
    `(?:each|every|per) (?:${vessel}|half|third|one)|in each|(?:in|for|into|to) each of (?:them|those|these)|each (?:one |of (?:them|those|these|the \\w+) )?(?:(?:would|will|should|might|may) )?(?:then )?(?:gets?|takes?|needs?|wants?|requires?|calls? for)|one (?:single )?(?:${vessel}|half|third)`,
  ].join("|"),
);

/** "and the rest?", of a weight of which a part was taken. */
const theRest: BaseWay = (turn) => {
  const { rest } = turn.memory.table;
  return rest && turn.weights.length === 0 && otherPart.test(turn.reading.text)
    ? taken(rest.grams, turn, rest.thing)
    : undefined;
};

/** "and the other one gets powder", of two bowls of which one was flavored. */
const theOther: BaseWay = (turn) => {
  const { reading, memory, before, weights } = turn;
  const grams = weights.length === 0 ? otherOfTwo(reading, memory, before?.base_g) : undefined;
  return grams === undefined ? undefined : taken(grams, turn, memory.table.mass?.thing);
};

/** "powder color for it", behind "half the batter yellow". */
const theOneShare: BaseWay = (turn) => {
  const { reading, memory, base, weights } = turn;
  const shares =
    memory.last?.tool === "split"
      ? (memory.last.inputs.percents as { name?: string }[] | undefined)
      : undefined;
  const part =
    shares?.length === 1 ? memory.table.parts?.find((each) => each.name === shares[0]?.name) : undefined;
  return part && weights.length === 0 && !base && says(reading, /(?:^| )(?:for|in|into) (?:it|that)(?: |$)/)
    ? taken(part.grams, turn, memory.table.mass?.thing)
    : undefined;
};

/** "6 g raspberry powder in the raspberry half": judged against that half. */
const flavorInNamed: BaseWay = (turn) => {
  const { reading, memory, weights } = turn;
  const part = namedPart(reading, memory);
  const [only, ...more] = weights;
  return part && only?.thing && isFlavor(only.thing) && more.length === 0 && goesInto(reading, part.name)
    ? { ...taken(part.grams, turn, memory.table.mass?.thing), want: "check" }
    : undefined;
};

/** "for half of that", "twice as much": of the bowl that was spoken of. */
const shareOfBefore: BaseWay = ({ reading, memory, earlier, base }) => {
  // "i only use half of the batter", behind a dose for ganache: nothing of that bowl
  if (base !== undefined && base !== "filling" && earlier?.base !== undefined && base !== earlier.base)
    return undefined;
  // "it is double strength" is no part of the mix
  const share = reading.amounts.find(
    (each) =>
      (each.fraction || each.unit === "times") && each.dim === "number" && !isOfQuality(reading, each),
  );
  if (!share || earlier?.base_g === undefined || namedPart(reading, memory)) return undefined;
  // "for that half": what was worked out is the half already
  const isHalfAlready = /\b(?:that|this|the same) $/.test(reading.text.slice(0, share.at[0]));
  return !isHalfAlready && says(reading, /of (?:that|it|the)|that much|(?:that|it)(?: |$)|as much/)
    ? { base_g: earlier.base_g * share.value }
    : undefined;
};

/** "gel for the pink". */
const byName: BaseWay = (turn) => {
  const { reading, memory } = turn;
  const part = namedPart(reading, memory);
  return part && !reading.amounts.some((each) => each.dim === "weight")
    ? taken(part.grams, turn, memory.table.mass?.thing)
    : undefined;
};

/** "for the bigger half". */
const bySize: BaseWay = (turn) => {
  const grams = partBySize(turn.reading, turn.memory);
  return grams === undefined ? undefined : taken(grams, turn, turn.memory.table.mass?.thing);
};

/** "how much gel for the blue", of three colors that get the same. */
const oneOfEqual: BaseWay = (turn) => {
  const { reading, memory } = turn;
  const { parts, part } = memory.table;
  const isColor = reading.things.some((each) => each.color && !each.base && !each.dose);
  return memory.last?.tool === "split" && areEqual(parts) && part && isColor
    ? taken(part.grams, turn, part.thing)
    : undefined;
};

/** "how much in each". */
const each: BaseWay = (turn) => {
  const { reading, memory } = turn;
  const equal = partsOf(memory);
  const part =
    memory.table.part ??
    (areEqual(equal) && equal[0]
      ? { ...equal[0], thing: equal[0].of ?? (memory.last?.tool === "fill" ? "filling" : "batter") }
      : undefined);
  // the mask holds words mended, without what they are
  const mended = reading.mask.replace(/<[^>]*>/g, "");
  return part && (asksPart.test(reading.text) || asksPart.test(mended))
    ? taken(part.grams, turn, part.thing)
    : undefined;
};

/** "gel for the pink half", behind batter that nobody has parted yet: half of it. */
const halfByColor: BaseWay = (turn) => {
  const { reading, memory, weights } = turn;
  const batter = memory.table.masses?.batter;
  const isHalf = /(?:for|in|into) (?:the |my )?\S*<[^>]*color=[^>]*> half(?:<|_| |$)/.test(reading.mask);
  return isHalf && batter !== undefined && weights.length === 0 && !memory.table.parts?.length
    ? { ...taken(batter / 2, turn, "batter"), whole_g: batter, share: 50 }
    : undefined;
};

export const partWays: readonly BaseWay[] = [
  halfByColor,
  theRest,
  theOther,
  theOneShare,
  flavorInNamed,
  shareOfBefore,
  byName,
  bySize,
  oneOfEqual,
  each,
];
