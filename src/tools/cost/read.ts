/** Reads a question about money, and what it carries over from the one before. */
import type { Memory, Reading } from "../contract/index.ts";
import { inBase } from "../lib/units.ts";
import { firstOf, type Way } from "../lib/ways.ts";
import { readBill } from "./bill-said.ts";
import { costOfSaid } from "./boxes-sold.ts";
import { changeTo } from "./carry.ts";
import type { Draft, Turn } from "./draft.ts";
import { withoutHours } from "./hours-off.ts";
import { pricedAnew } from "./line-again.ts";
import { withoutLine } from "./line-out.ts";
import { orderedOf, pricedFor } from "./orders.ts";
import { costForSaid, readList } from "./price-list.ts";
import { resized } from "./resized.ts";

/** "12", "each": the answer to a question of ours, put beside what it was asked of. */
const answers =
  (slot: string, read: (turn: Turn) => Draft | undefined): Way<Turn, Draft> =>
  (turn) =>
    turn.memory.slot === slot ? read(turn) : undefined;

/** "what does the pistachio filling cost", of a batch of which only the whole sum is known. */
const ofPart: Way<Turn, Draft> = ({ reading, memory, before }) => {
  const part = reading.things.find((each) => each.base && each.base !== "batter");
  const isKnown =
    before.lines !== undefined ||
    before.formula !== undefined ||
    memory.table.recipe !== undefined ||
    memory.names.formulas.some((name) => reading.text.includes(name.toLowerCase()));
  if (!part || isKnown || reading.amounts.length > 0 || !asksPart.test(reading.mask)) return undefined;
  const words = reading.text
    .slice(0, part.at[1])
    .split(/ the | my | our /)
    .at(-1);
  return { part: words ?? part.text };
};
const asksPart =
  /^(?:(?:and|so|ok|but|now|then) )*(?:(?:what|how much|whats)(?: (?:does|do|did|would|will|is))?(?: just| only)? (?:the|my|our) (?:\S+ ){0,3}\S*base=\S+(?: (?:alone|itself|by itself|only))* (?:costs?|come to|comes to|cost me)\b|(?:what|whats) (?:is )?the (?:cost|price) of (?:just |only )?(?:the|my|our) (?:\S+ ){0,3}\S*base=\S+(?: alone| itself)?(?: \?)?$)/;

const ways: readonly Way<Turn, Draft>[] = [
  ofPart,
  answers("cost_for", ({ reading, before }) => ({ ...before, cost_for: costForSaid(reading) })),
  answers("lacks", added),
  answers("of_which", pricedAnew),
  ({ reading, before }) => readList(reading, before),
  answers("cost_of", ({ reading, before }) => costOfSaid(reading, before)),
  ({ reading, memory, before }) => orderedOf(reading, before, memory.slot === undefined),
  answers("price_for", ({ reading, before }) =>
    before.ordered ? pricedFor(before, costForSaid(reading)) : undefined,
  ),
  answers("box_of", heldByBox),
  answers("price_for", ({ reading, before }) => ({ ...before, price_for: priceFor(reading, before) })),
  otherSize,
  withoutLine,
  ({ reading, memory, before }) => readBill(reading, memory, before),
];

export function readCost(said: Reading, memory: Memory): Draft {
  const before: Draft = memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  return withSameCount(firstOf(ways, { reading: withoutHours(said), memory, before }) ?? {});
}

/** "sells at 3 each if they cost me 90 cents": what costs less than one sells for is one's cost too, and no batch's. */
function withSameCount(draft: Draft): Draft {
  const { price, price_for, cost, cost_for, macarons, boxes } = draft;
  const isOnes =
    price_for === 1 &&
    cost_for === undefined &&
    macarons === undefined &&
    boxes === undefined &&
    !draft.boxed;
  return isOnes && price !== undefined && cost !== undefined && cost < price
    ? { ...draft, cost_for: 1 }
    : draft;
}

const aloneNumber = /^(?:(?:about|only|just|its|like) )*(\d+(?:\.\d+)?)(?: ?[.!])?$/;

/** "100 g", where it was asked how much of a thing goes in that was only priced. */
function added({ reading, before: { lacks, ...before } }: Turn): Draft | undefined {
  const [only, ...others] = reading.amounts;
  const grams = only?.dim === "weight" ? inBase(only.value, only.unit) : aloneNumber.exec(reading.text)?.[1];
  return lacks === undefined || grams === undefined || others.length > 0
    ? undefined
    : {
        ...before,
        lacks: undefined,
        lines: [...(before.lines ?? []), { name: lacks, grams: Number(grams) }],
      };
}

/** "6", where it was asked how many a box holds. */
function heldByBox({ reading, before }: Turn): Draft | undefined {
  const held = reading.amounts.find(({ dim }) => dim === "number")?.value;
  return held === undefined
    ? undefined
    : { ...before, boxed: undefined, macarons: held, box_of: held, price_for: held };
}

/** "each", "for one", "all of them": for how many macarons the price is. */
const priceFor = ({ text }: Reading, { macarons }: Draft): number | undefined =>
  /\b(?:all|whole|lot|everything|together|batch)\b/.test(text)
    ? macarons
    : /\b(?:one|each|single|apiece|per|a macaron|1)\b/.test(text)
      ? 1
      : undefined;

/** "and a box of 6", behind what a batch costs. */
function otherSize({ reading, memory, before }: Turn): Draft | undefined {
  const other = memory.follows && memory.slot === undefined ? resized(reading, before) : undefined;
  return other && { ...other, ...changeTo(before, other, memory) };
}
