/** Reads a question about money, and what it carries over from the one before. */
import { houseFormula } from "../../../data/rules/shells.ts";
import type { Memory, Reading } from "../contract/index.ts";
import { pointsBack, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { costOfSaid, readBoxesSold } from "./boxes-sold.ts";
import { carry, changeTo } from "./carry.ts";
import type { CostInputs } from "./cost.ts";
import { withoutExtras } from "./extras-off.ts";
import { readCounts, readMaking } from "./making.ts";
import { macaronsSaid, perBox, readBoxes, wholeOf } from "./many.ts";
import { sums } from "./money.ts";
import { orderedOf, pricedFor } from "./orders.ts";
import { ofOneBox, packed, withoutHours } from "./packed.ts";
import { costForSaid, readList } from "./price-list.ts";
import { readLinesAndPrices } from "./prices.ts";
import { resized } from "./resized.ts";
import { shareSaid } from "./said-share.ts";
import { readLabor, readShares } from "./shares.ts";
import { readSums } from "./sums.ts";

type Draft = Partial<CostInputs>;

/** "and without my hours", "leave the labour out". */
const withoutWork =
  /\b(?:(?:without|leave out|forget|minus|not counting) (?:the |my |any )?(?:hours?|time|work|labou?r|wages?)|leave (?:the |my )?(?:hours?|time|work|labou?r|wages?) out)\b/;

export function readCost(said: Reading, memory: Memory): Draft {
  const reading = withoutHours(said);
  const before: Draft = memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  if (memory.slot === "cost_for") return { ...before, cost_for: costForSaid(reading) };
  const listed = readList(reading, before);
  if (listed) return listed;
  if (memory.slot === "cost_of") return costOfSaid(reading, before);
  const order = orderedOf(reading, before);
  if (order) return order;
  const money = packed(sums(reading), reading, before, memory);
  if (memory.slot === "price_for" && before.ordered) return pricedFor(before, costForSaid(reading));
  // "6", where it was asked how many a box holds
  const held =
    memory.slot === "box_of" ? reading.amounts.find(({ dim }) => dim === "number")?.value : undefined;
  if (held !== undefined)
    return { ...before, boxed: undefined, macarons: held, box_of: held, price_for: held };
  if (memory.slot === "price_for") return { ...before, price_for: priceFor(reading, before) };
  const other = memory.follows && memory.slot === undefined ? resized(reading, before) : undefined;
  if (other) return { ...other, ...changeTo(before, other, memory) };
  const macarons = macaronsSaid(reading, money, memory);
  const part_of = wholeOf(reading, money, before, macarons);
  const box_of = perBox(reading);
  const draft: Draft = {
    ...ofOneBox(
      readSums(reading, money, memory),
      money,
      reading,
      box_of ?? (memory.follows ? before.box_of : undefined),
    ),
    ...readLinesAndPrices(reading, money, memory),
    ...readLabor(reading, money, memory.slot, memory.follows ? before : {}),
    ...readShares(withoutCount(reading, macarons), memory, before, money),
    ...((before.packaging ?? before.box_packaging) !== undefined &&
    /\b(?:without|leave out|forget|minus|no) (?:the |any )?(?:boxes|box|packaging|bags|ribbons?)\b/.test(
      reading.text,
    )
      ? { packaging: 0 }
      : {}),
    // "and without my hours"
    ...(before.labor_min !== undefined && withoutWork.test(reading.text) ? { labor_per_h: 0 } : {}),
    ...(before.labor !== undefined && withoutWork.test(reading.text) ? { labor: 0 } : {}),
  };
  // "what does 200 g of it cost", behind a price that was saved
  const shelf =
    memory.last?.tool === "shelf"
      ? (memory.last.inputs.entries as { name: string }[] | undefined)
      : undefined;
  const saved = shelf?.length === 1 && pointsBack(reading) ? shelf[0]?.name : undefined;
  const weight = reading.amounts.find((each) => each.dim === "weight" && !each.of);
  if (saved && weight && !draft.lines)
    draft.lines = [{ name: saved, grams: inBase(weight.value, weight.unit) }];
  Object.assign(
    draft,
    readBoxes(reading, draft, before),
    readBoxesSold(reading, money, draft, memory.follows || before.sold_boxes !== undefined ? before : {}),
  );
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const table = memory.table.recipe;
  const points =
    table?.length &&
    !draft.lines &&
    draft.cost === undefined &&
    draft.ingredients === undefined &&
    pointsBack(reading) &&
    memory.last?.tool !== "cost" &&
    says(reading, /cost|come to|run me/);
  // "plus 150 g whites at 5 a kilo", on top of what was priced before
  if (
    draft.lines &&
    before.lines &&
    /^(?:(?:and|ok|oh|also|i|ah|wait|no) )*(?:plus|add|with|also|forgot|left out|missed) /.test(reading.text)
  )
    draft.lines = [
      ...before.lines.filter(({ name }) => !draft.lines?.some((each) => each.name === name)),
      ...draft.lines,
    ];
  // "what does one house batch cost": the house formula once
  if (
    !draft.lines &&
    draft.cost === undefined &&
    /\b(?:one|a|the|per) house (?:batch|recipe|formula)\b/.test(reading.text)
  )
    draft.lines = houseFormula.map(({ name, parts }) => ({ name, grams: parts }));
  const counts = memory.slot === "more_prices" ? {} : readCounts(reading, money);
  // "20 at €1.80 each less 10 %": what a discount is off is a price
  if (
    draft.discount_percent !== undefined &&
    draft.cost !== undefined &&
    draft.price === undefined &&
    !says(reading, /cost|costs|spent|spend|paid|make|makes|made/)
  ) {
    draft.price = draft.cost;
    delete draft.cost;
    if (counts.cost_for !== undefined) counts.price_for = counts.cost_for;
    delete counts.cost_for;
  }
  const carried = carry(
    before,
    {
      ...draft,
      ...counts,
      ...readMaking(reading, { ...(memory.follows ? before : {}), ...draft }, formula),
      ...(macarons !== undefined ? { macarons } : {}),
      ...(part_of !== undefined ? { part_of } : {}),
      ...(box_of !== undefined ? { box_of } : {}),
      ...(formula ? { formula } : {}),
      ...(points ? { lines: table.map(({ name, grams }) => ({ name, grams })) } : {}),
      ...readWant(reading, draft, memory.follows ? before : {}),
      // "it costs me 8.40", where that was asked for: the price is still what is wanted
      ...(memory.slot === "cost" && before.want === "price" && draft.price === undefined
        ? { want: "price" as const }
        : {}),
    },
    memory.follows,
  );
  // "cost 0.65 each", behind a list of prices
  const ofList = before.sizes && draft.price === undefined && (memory.follows || memory.slot !== undefined);
  if (ofList)
    Object.assign(carried, { sizes: before.sizes, ...(before.holds ? { holds: before.holds } : {}) });
  const now = withoutExtras(withOnePackaging(carried, draft), draft, before, reading);
  return { ...now, ...changeTo(before, now, memory) };
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

/** "each", "for one", "all of them": for how many macarons the price is. */
const priceFor = ({ text }: Reading, { macarons }: Draft): number | undefined =>
  /\b(?:all|whole|lot|everything|together|batch)\b/.test(text)
    ? macarons
    : /\b(?:one|each|single|apiece|per|a macaron|1)\b/.test(text)
      ? 1
      : undefined;

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

function readWant(reading: Reading, draft: Draft, before: Draft): Draft {
  const shared =
    draft.margin_percent !== undefined ||
    draft.markup_percent !== undefined ||
    draft.food_cost_percent !== undefined;
  if (shared) return { want: "price" };
  // "what if it costs 10": the same question with another cost
  if (
    before.price !== undefined &&
    (draft.cost !== undefined || draft.price !== undefined) &&
    before.want !== "price" &&
    says(reading, /(?:^| )if /) &&
    !says(reading, /margin|mark ?-?up|food cost|profit/)
  )
    return before.want ? { want: before.want } : {};
  // "what if the cost goes up to 20", behind a price: what to charge then
  if (
    before.want === "price" &&
    before.margin_percent !== undefined &&
    draft.cost !== undefined &&
    says(
      reading,
      /cost(?:s)? (?:me )?(?:goes|went|go|rises|rose|is|was|were|comes|came|jumps|jumped|climbs) (?:up |down )?(?:to )?\S*</,
    )
  )
    return { want: "price" };
  if (says(reading, /break even/)) return { want: "break even" };
  if (says(reading, /mark ?-?up/)) return { want: "markup" };
  if (says(reading, /food cost/)) return { want: "food cost" };
  if (says(reading, /margin|profit|percent|(?:making|losing) (?:any |some )?money/))
    return { want: "margin" };
  if (
    says(reading, /charge|price|sell (?:it|them|that) for|should i (?:ask|sell)/) &&
    draft.price === undefined
  )
    return { want: "price" };
  if (says(reading, /cost|come to|run me|set me back|spend/))
    return draft.price !== undefined
      ? { want: "margin" }
      : draft.lines || draft.formula || draft.macarons !== undefined || says(reading, /what|how much/)
        ? { want: "cost" }
        : {};
  return draft.price !== undefined ? { want: "margin" } : {};
}
