/** "12 boxes of 6": the macarons in them, for calculators that know of no boxes. */
import type { Amount, Reading, Thing } from "../../tools/contract/index.ts";

const counts = (reading: Reading) =>
  reading.amounts.filter((each) => each.dim === "number" && each.unit === "" && !each.fraction);

const boxesIn = (reading: Reading) => counts(reading).find((each) => each.of?.count === "boxes");

/** How many a box holds, where that was said: six in "12 boxes of 6" and in "boxes of six". Pure. */
export const inBox = (reading: Reading): number | undefined => sizeOf(reading)?.value;

const sizeOf = (reading: Reading): Amount | undefined =>
  counts(reading).find(
    (each) =>
      (!each.of || each.of.count === "macarons") &&
      /\bbox(?:es)? (?:of|with) $/.test(reading.text.slice(0, each.at[0])),
  );

/**
 * The reading with so many boxes as so many macarons; as it is where nobody said what a box holds.
 * @param known how many a box held when boxes were spoken of before
 */
export function boxed(reading: Reading, known: number | undefined): Reading {
  const boxes = boxesIn(reading);
  const size = sizeOf(reading);
  const each = size?.value ?? known;
  if (!boxes?.of || each === undefined) return reading;
  const value = boxes.value * each;
  const of: Thing = { ...boxes.of, id: "macarons", count: "macarons" };
  const all: Amount = { ...boxes, value, of, taken: `${value} macarons: ${boxes.value} boxes of ${each}` };
  return {
    ...reading,
    amounts: reading.amounts.flatMap((amount) =>
      amount === boxes ? [all] : amount === size ? [] : [amount],
    ),
    things: reading.things.map((thing) => (thing === boxes.of ? of : thing)),
    mask: reading.mask
      .replace(/<count=boxes>/g, "<count=macarons>")
      .replace(/(<count=macarons>) (?:of|with) \S+<number>(?: \S+<count=macarons>)?/, "$1"),
  };
}
