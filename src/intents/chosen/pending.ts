/** Whether a turn answers the question that was asked, and what it fills in. */
import type { Memory, Reading, Tool } from "../../tools/contract/index.ts";
import type { Names } from "../converse.ts";
import type { Inputs, State } from "../follow/state.ts";
import { withoutRivals } from "../follow/step.ts";
import { type Score, stands } from "./choose.ts";
import { drafts, seenBy } from "./drafts.ts";
import { dimensionOf, fillSlot, isBare } from "./slots.ts";
import { isToldForNote } from "./told-note.ts";

/** An answer to the question that was asked: bare, or in a sentence that no other calculator claims. */
export function answersPending(
  reading: Reading,
  state: State,
  names: Names,
  scores: Score[],
  tools: readonly Tool[],
  recipe?: Memory["recipe"],
): { tool: Tool; inputs: Inputs; filled: Inputs } | undefined {
  const pending = state.pending;
  const tool = pending && tools.find((each) => each.name === pending.tool);
  if (!pending || !tool) return undefined;
  const last = { tool: pending.tool, inputs: pending.inputs };
  const read = (): Inputs =>
    drafts(tool, reading, {
      table: state.table,
      last,
      slot: pending.slot,
      follows: true,
      ...(state.in_box === undefined ? {} : { in_box: state.in_box }),
      names,
      ...(recipe ? { recipe } : {}),
    })[0] ?? {};
  // "make a note for me" / "mint batch, far too sweet": her words, whatever else they could be
  if (tool.name === "note" && pending.slot === "text" && isToldForNote(reading)) {
    const filled = read();
    if ("text" in filled) return { tool, filled, inputs: { ...pending.inputs, ...filled } };
  }
  const best = scores[0];
  // "300 g ganache just split", where a weight was asked for: a fault is a question of its own
  const isFault = reading.things.some((each) => each.symptom) && pending.slot !== "symptom";
  if (isFault && best && best.tool !== tool && best.points >= stands) return undefined;
  // "20 for saturday 3pm" is no price and no weight
  if (reading.whens.length > 0 && isMeasure(pending.slot)) return undefined;
  if (
    best &&
    best.points >= stands &&
    best.tool !== tool &&
    !isBare(reading) &&
    !isListFor(pending.slot, reading) &&
    !tellsBowl(pending.slot, reading)
  )
    return undefined;
  if (
    reading.unknown.length > 0 &&
    !isBare(reading) &&
    reading.unknown.length >= reading.mask.split(" ").length / 3
  )
    return undefined;
  // "batter for 24 macarons" says no number of bowls
  if (
    pending.slot === "equal" &&
    reading.amounts.some((each) => ["macarons", "shells"].includes(each.of?.count ?? ""))
  )
    return undefined;
  // "if i sell 6 for 15" is no price of the whites
  if (
    pending.slot === "more_prices" &&
    /(?:^| )(?:sell|sells|selling|charge|margin|markup|profit|what|whats|how|if)(?: |$)/.test(reading.mask)
  )
    return undefined;
  // "how much freeze dried raspberry": a question of its own, where a weight was asked for
  if (
    reading.amounts.length === 0 &&
    reading.whens.length === 0 &&
    /^(?:(?:and|so|ok) )*(?:how|what|which|when) /.test(reading.mask)
  )
    return undefined;
  const found = read();
  const filled =
    pending.slot in found || takesAll(found, reading)
      ? found
      : { ...found, ...fillSlot(seenBy(tool, reading, state.in_box), pending.inputs, pending.slot) };
  if (Object.keys(filled).length === 0) return undefined;
  // "batter for 24 macarons", where gel or powder was asked for: a question of its own
  if (!(pending.slot in filled) && best && best.tool !== tool && best.points >= stands) return undefined;
  // "too pink, can i fix it", where a weight was asked for: asked once more, the question would only be in the way
  const told = reading.amounts.length > 0 || reading.whens.length > 0 || isBare(reading);
  if (!(pending.slot in filled) && !told && isMeasure(pending.slot)) return undefined;
  return { tool, filled, inputs: { ...withoutRivals(pending.inputs, filled, tool), ...filled } };
}

/**
 * An answer to a question of ours behind which another was answered in the same turn: nothing but what was asked for,
 * since the sentence may go on from the answer as well.
 */
export function answersWaiting<Found extends { filled: Inputs }>(
  { said, mask, amounts }: Reading,
  state: State,
  answer: (asked: State) => Found | undefined,
): Found | undefined {
  const { waiting, pending, ...others } = state;
  if (!waiting || pending || waiting.of === said || !plainly.test(mask)) return undefined;
  const dim = dimensionOf(waiting.slot);
  // "for 30", behind what so many take: of that, where a weight was asked for
  const isBareNumber = amounts.every((each) => each.dim === "number" && each.unit === "");
  if (isBareNumber && dim !== "number" && !/^\S+$/.test(mask)) return undefined;
  const found = answer({ ...others, pending: waiting });
  return found && waiting.slot in found.filled ? found : undefined;
}

/** "320 g", "it's for 24 of them", "twelve minutes please". */
const plainly =
  /^(?:(?:oh|ah|ok|okay|so|well|right|sorry|yes|its|it is|thats|theres|about|around|roughly|for|make it|say|say about|let it run|set it|set it for|have|ive got|i have|got|the|of) )*\S*<[^>]+>(?: (?:(?:of )?(?:it|them|those|those)|of|the|\S*<(?:base|count|step)=[^>]*>|please|pls|then|thanks|ta|about|or so|in all|altogether|in the bowl))*(?: [.!])*$/;

/** Slots that take a weight, a share, a length, a heat or a price: none is said with a day or an hour. */
const isMeasure = (slot: string) =>
  ["weight", "percent", "length", "temperature"].includes(dimensionOf(slot) ?? "") || /price|cost/.test(slot);

/** The one weight that was said stands in an input already: "only got 70 cream" where grams of chocolate were asked for. */
const takesAll = (found: Inputs, { amounts }: Reading) =>
  amounts.length === 1 &&
  (amounts[0]?.dim === "weight" ||
    (amounts[0]?.dim === "number" && amounts[0].of?.ingredient !== undefined)) &&
  Object.entries(found).some(([key, value]) => key.endsWith("_g") && typeof value === "number");

/** "it is 180 g of dark chocolate and 150 g of cream", where the weight of a bowl was asked for. */
const tellsBowl = (slot: string, { mask }: Reading): boolean =>
  slot === "base_g" &&
  /^(?:(?:so|ok|well|oh|um) )*(?:its|it is|it has|it was|theres|there is|there are|with|made of|made with|from) (?:about |only )?\S*<weight> (?:of )?\S*<[^>]*(?:ingredient|chocolate)=/.test(
    mask,
  ) &&
  !/(?:^| )(?:how|what|whats|which|is it|enough|ok|why)(?: |$)|\?$/.test(mask);

/** A list of ingredients, where one was asked for: nothing but amounts, things and what joins them. */
const isListFor = (slot: string, reading: Reading) =>
  ["lines", "entries"].includes(slot) &&
  reading.amounts.length > 0 &&
  reading.mask.split(" ").every((each) => each.includes("<") || !/^[a-z]/.test(each) || listWords.has(each));

const listWords = new Set(
  "and of the its it is are has with contains there theres inside in them these some plus about then".split(
    " ",
  ),
);
