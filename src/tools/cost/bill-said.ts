/** A bill as a sentence says it: its sums, weights, hours, shares and numbers, over what was said of it before. */
import type { Memory, Reading } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { ofOneBox, packed } from "./box-sum.ts";
import { readBoxesSold } from "./boxes-sold.ts";
import { carry, changeTo } from "./carry.ts";
import type { Draft } from "./draft.ts";
import { leftOut, withoutExtras } from "./left-out.ts";
import { linesMeant } from "./lines-meant.ts";
import { readCounts, readMaking } from "./making.ts";
import { macaronsSaid, perBox, readBoxes, wholeOf } from "./many.ts";
import { sums } from "./money.ts";
import { isOf } from "./one-line.ts";
import { readLinesAndPrices } from "./prices.ts";
import { shareSaid } from "./said-share.ts";
import { readLabor, readShares } from "./shares.ts";
import { readSums } from "./sums.ts";
import { readWant } from "./want-said.ts";

/** @param before the bill of the turn before, whether this sentence goes on from it or not */
export function readBill(reading: Reading, memory: Memory, before: Draft): Draft {
  const money = packed(sums(reading), reading, before, memory);
  const goesOn = memory.follows ? before : {};
  const macarons = macaronsSaid(reading, money, memory);
  const part_of = wholeOf(reading, money, before, macarons);
  const box_of = perBox(reading);
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const draft: Draft = {
    ...ofOneBox(readSums(reading, money, memory), money, reading, box_of ?? goesOn.box_of),
    ...readLinesAndPrices(reading, money, memory),
    ...readLabor(reading, money, memory.slot, goesOn),
    ...readShares(withoutCount(reading, macarons), memory, before, money),
    ...leftOut(reading, before),
  };
  Object.assign(
    draft,
    readBoxes(reading, draft, before),
    readBoxesSold(reading, money, draft, before.sold_boxes === undefined ? goesOn : before),
    linesMeant({ reading, memory, draft, before }),
  );
  const counts = memory.slot === "more_prices" ? {} : ofPrice(readCounts(reading, money), draft);
  const said = offPrice({ ...draft, ...counts }, reading);
  const { lacks: _lacks, of_which: _which, ...had } = before;
  const carried = carry(
    had,
    {
      ...said,
      ...readMaking(reading, { ...goesOn, ...said }, formula),
      ...(macarons !== undefined ? { macarons } : {}),
      ...(part_of !== undefined ? { part_of } : {}),
      ...(box_of !== undefined ? { box_of } : {}),
      ...(formula ? { formula } : {}),
      ...readWant(reading, said, goesOn),
      // "it costs me 8.40", where that was asked for: the price is still what is wanted
      ...(memory.slot === "cost" && before.want === "price" && said.price === undefined
        ? { want: "price" as const }
        : {}),
    },
    memory.follows,
  );
  // "cost 0.65 each", behind a list of prices
  if (before.sizes && said.price === undefined && (memory.follows || memory.slot !== undefined))
    Object.assign(carried, { sizes: before.sizes, ...(before.holds ? { holds: before.holds } : {}) });
  const now = withoutExtras(withOnePackaging(carried, said), said, before, reading);
  return { ...now, ...changeTo(before, now, memory), ...lacking(said, now) };
}

/** "and if cream is 5 a kilo", of what has none in it. */
function lacking({ prices }: Draft, { lines }: Draft): Draft {
  const isIn = (name: string) => lines?.some((line) => isOf(name, line.name)) ?? true;
  const [first] = prices ?? [];
  return first && !prices?.some(({ name }) => isIn(name)) ? { lacks: first.name } : {};
}

/** "$2.50 a piece", behind a price: the one sum is of that side. */
const ofPrice = ({ cost_for, ...counts }: Draft, { price, cost, ingredients }: Draft): Draft =>
  cost_for !== undefined && price !== undefined && cost === undefined && ingredients === undefined
    ? { price_for: cost_for, ...counts }
    : { ...counts, ...(cost_for === undefined ? {} : { cost_for }) };

/** "20 at €1.80 each less 10 %": what a discount is off is a price. */
function offPrice(draft: Draft, reading: Reading): Draft {
  const { cost, cost_for, ...others } = draft;
  const isPrice =
    draft.discount_percent !== undefined &&
    cost !== undefined &&
    draft.price === undefined &&
    !says(reading, /cost|costs|spent|spend|paid|make|makes|made/);
  if (!isPrice) return draft;
  return { ...others, price: cost, ...(cost_for === undefined ? {} : { price_for: cost_for }) };
}

/** Packaging said for a box takes the place of one said for all of it, and the other way round. */
function withOnePackaging({ packaging, box_packaging, ...others }: Draft, said: Draft): Draft {
  const [ofAll, ofBox] = [said.packaging !== undefined, said.box_packaging !== undefined];
  return {
    ...others,
    ...(packaging !== undefined && (ofAll || !ofBox) ? { packaging } : {}),
    ...(box_packaging !== undefined && (ofBox || !ofAll) ? { box_packaging } : {}),
  };
}

/** "per macaron for 36": how many there are is no margin. */
const withoutCount = (reading: Reading, macarons: number | undefined): Reading => ({
  ...reading,
  amounts: reading.amounts.filter(
    (each) =>
      macarons === undefined ||
      each.dim !== "number" ||
      each.value !== macarons ||
      each === shareSaid(reading),
  ),
});
