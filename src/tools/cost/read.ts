/** Reads a question about money, and what it carries over from the one before. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, counted, pointsBack, says } from "../lib/find.ts";
import { inBase } from "../lib/units.ts";
import { carry, changeTo } from "./carry.ts";
import type { CostInputs } from "./cost.ts";
import { readCounts, readMaking } from "./making.ts";
import { type Sum, sums } from "./money.ts";
import { isWeightPrice, paidFor, readLinesAndPrices } from "./prices.ts";
import { readLabor, readShares } from "./shares.ts";

type Draft = Partial<CostInputs>;

/** "and without my hours", "leave the labour out". */
const withoutWork =
  /\b(?:(?:without|leave out|forget|minus|not counting) (?:the |my |any )?(?:hours?|time|work|labou?r|wages?)|leave (?:the |my )?(?:hours?|time|work|labou?r|wages?) out)\b/;

export function readCost(reading: Reading, memory: Memory): Draft {
  const before: Draft = memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  const money = sums(reading);
  const draft: Draft = {
    ...readSums(reading, money, memory),
    ...readLinesAndPrices(reading, money, memory),
    ...readLabor(reading, money),
    ...readShares(reading, memory, before, money),
    ...(before.packaging !== undefined &&
    /\b(?:without|leave out|forget|minus|no) (?:the |any )?(?:boxes|box|packaging|bags|ribbons?)\b/.test(
      reading.text,
    )
      ? { packaging: 0 }
      : {}),
    // "and without my hours"
    ...(before.labor_min !== undefined && withoutWork.test(reading.text) ? { labor_per_h: 0 } : {}),
    ...(before.labor !== undefined && withoutWork.test(reading.text) ? { labor: 0 } : {}),
  };
  const macarons =
    counted(withoutSums(reading, money), "macarons") ??
    perBox(reading) ??
    dozens(reading) ??
    costOf(withoutSums(reading, money)) ??
    eachOf(reading, money) ??
    answered(reading, memory);
  // "what does 200 g of it cost", behind a price that was saved
  const shelf =
    memory.last?.tool === "shelf"
      ? (memory.last.inputs.entries as { name: string }[] | undefined)
      : undefined;
  const saved = shelf?.length === 1 && pointsBack(reading) ? shelf[0]?.name : undefined;
  const weight = reading.amounts.find((each) => each.dim === "weight" && !each.of);
  if (saved && weight && !draft.lines)
    draft.lines = [{ name: saved, grams: inBase(weight.value, weight.unit) }];
  const boxes = boxesFilled(reading);
  const ofOne = says(reading, /(?:per|one(?:<number>)?|each|every|a single) \S*<count=boxes/);
  if (boxes !== undefined) draft.boxes = boxes;
  if (ofOne && (boxes ?? before.boxes) !== undefined) draft.per_box = true;
  // "sold 8 boxes of 6 at $15", "it cost me 40 in all": a box's price against its share of the cost
  const sold = boxesSold(reading);
  if (sold !== undefined && draft.price !== undefined) draft.boxes = sold;
  const wholeCost =
    draft.cost !== undefined && /\b(?:in all|in total|altogether|all in|all told)\b/.test(reading.text);
  if (wholeCost && draft.price === undefined && before.price !== undefined && before.boxes !== undefined)
    Object.assign(draft, { per_box: true, boxes: before.boxes });
  if (wholeCost && sold !== undefined && draft.price !== undefined) draft.per_box = true;
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
  const carried = carry(
    before,
    {
      ...draft,
      ...(memory.slot === "more_prices" ? {} : readCounts(reading, money)),
      ...readMaking(reading, { ...(memory.follows ? before : {}), ...draft }, formula),
      ...(macarons !== undefined ? { macarons } : {}),
      ...(formula ? { formula } : {}),
      ...(points ? { lines: table.map(({ name, grams }) => ({ name, grams })) } : {}),
      ...readWant(reading, draft, memory.follows ? before : {}),
    },
    memory.follows,
  );
  return { ...carried, ...changeTo(before, carried, memory) };
}

/** "2.50 a macaron" counts nothing. */
const withoutSums = (reading: Reading, money: readonly Sum[]): Reading => ({
  ...reading,
  amounts: reading.amounts.filter((each) => !money.some((sum) => sum.amount === each)),
});

/** "8 boxes of 6 at $15": eight, each at that price. */
const boxesSold = ({ amounts, mask }: Reading): number | undefined =>
  /<count=boxes>(?: of \S*<number>(?: \S*<count=macarons>)?)? at \S*<(?:money|number)>/.test(mask)
    ? amounts.find((each) => each.dim === "number" && each.of?.count === "boxes" && each.value > 1)?.value
    : undefined;

/** "the batch cost me 14 and fills 4 boxes". */
const boxesFilled = ({ amounts, text }: Reading): number | undefined =>
  amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      each.value > 1 &&
      /\b(?:fills?|filled|makes?|made|gives?|gave|packed into|goes into|in all) (?:about |up )?$/.test(
        text.slice(0, each.at[0]),
      ),
  )?.value;

/** "a dozen", "two dozen". */
const dozens = (reading: Reading): number | undefined =>
  reading.amounts.find((each) => each.dim === "number" && !each.of && /dozen/.test(each.text))?.value;

/** "cost of 24 if the ingredients are 8.40": macarons, since nothing else is sold. */
const costOf = ({ amounts, mask, text }: Reading): number | undefined =>
  // "what do 36 cost"
  amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.of &&
      /\b(?:do|does|would|will) (?:just |only )?$/.test(text.slice(0, each.at[0])) &&
      /^ (?:of (?:them|those|these) )?(?:cost|come to|run me)\b/.test(text.slice(each.at[1])),
  )?.value ?? ofMany({ amounts, mask, text });

const ofMany = ({ amounts, mask, text }: Pick<Reading, "amounts" | "mask" | "text">): number | undefined =>
  /(?:^| )(?:cost|price) (?:of|for) (?:(?:the|my|these|those|all|making) )*\S*<number>/.test(mask)
    ? amounts.find(
        (each) =>
          each.dim === "number" &&
          !each.of &&
          !each.fraction &&
          Number.isInteger(each.value) &&
          each.value > 1 &&
          /(?:cost|price) (?:of|for) (?:(?:the|my|these|those|all|making) )*$/.test(
            text.slice(0, each.at[0]),
          ),
      )?.value
    : undefined;

/** How many a box holds, where that was asked. */
const answered = (reading: Reading, memory: Memory): number | undefined =>
  memory.slot === "macarons" ? bareNumbers(reading)[0]?.value : undefined;

function readSums(reading: Reading, money: readonly Sum[], memory: Memory): Draft {
  const out: Draft = {};
  const codes = currenciesOf(money);
  if (codes[0]) out.currency = codes[0];
  if (codes.length > 1) out.mixed = codes.join(" and ");
  const signs = [...new Set(money.map((each) => each.bare).filter((each) => each !== undefined))];
  if (signs[0] !== undefined && codes.length < 2) out.bare_sign = signs[0];
  if (memory.slot === "more_prices")
    return out.bare_sign === undefined && out.currency ? { currency: out.currency } : {};
  const pack = paidFor(reading, money) !== undefined;
  const plainSums = pack ? [] : money.filter((each) => !isWeightPrice(each, reading));
  for (const { use, value, amount } of plainSums) {
    if (use === "rate" || use === undefined) continue;
    const boxes =
      use === "packaging" && eachBox.test(reading.text.slice(amount.at[1])) ? boxesOf(reading) : 1;
    // "thats another $3.50 in packaging": on top of what was said before
    const more =
      memory.follows && memory.last?.tool === "cost" && anotherSum.test(reading.text.slice(0, amount.at[0]))
        ? ((memory.last.inputs as Draft)[use] ?? 0)
        : 0;
    out[use] = (out[use] ?? 0) + more + value * boxes;
  }
  const loose = plainSums.filter((each) => each.use === undefined);
  if (loose.length > 0) {
    // "30 €", after a price: what was said last is said anew
    const before = memory.follows && memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
    const alone = loose.length === 1 && before.price !== undefined && sumAlone.test(reading.mask);
    // "it costs me $22 and she gave $40, what margin": one sum beside the cost that was named
    const beside =
      loose.length === 1 &&
      out.cost !== undefined &&
      out.price === undefined &&
      says(reading, /margin|mark ?-?up|profit/);
    const slot = memory.slot === "price" || alone || beside ? "price" : "cost";
    for (const each of loose) out[slot] = (out[slot] ?? 0) + each.value;
  }
  const bare =
    money.length === 0 && (memory.slot === "cost" || memory.slot === "price")
      ? bareNumbers(reading)[0]
      : undefined;
  if (bare && memory.slot) out[memory.slot as "cost"] = bare.value;
  // "and at 18?", behind a price
  const before = memory.follows && memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  const again = money.length === 0 && before.price !== undefined && numberAlone.test(reading.mask);
  if (again) out.price = reading.amounts[0]?.value;
  return out;
}

const anotherSum = /\b(?:another|an? extra|extra|an? additional|additional|plus|a further) $/;

/** "and at 18?": no share of anything, and no count. */
const numberAlone =
  /^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|its|say|only|just|hmm?|i charge|i (?:sell|sold) (?:it|them)) )*(?:at|for) \S*<number>(?: (?:instead|then|each|apiece|a piece|a box))?(?: [?])?$/;

/** "30 €", "and at £8.50?". */
const sumAlone =
  /^(?:(?:and|what about|how about|or|so|ok|no|then|what if|if|its|say|only|just|hmm?|i charge|i (?:sell|sold) (?:it|them)) )*(?:(?:at|for) )?\S*<money>(?: (?:instead|then))?(?: [?])?$/;

/** "packaging $1.20 a box, 6 boxes". */
const eachBox = /^ ?(?:a|per|for (?:a|each|every)|each) box\b/;
const boxesOf = (reading: Reading): number =>
  reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      !/box(?:es)? of $/.test(reading.text.slice(0, each.at[0])),
  )?.value ?? 1;

/** The currencies said; bare "cents" are those of the one that was named. */
function currenciesOf(money: readonly Sum[]): string[] {
  const named = money.filter((each) => each.amount.unit !== "USD cent");
  return [...new Set((named.length > 0 ? named : money).map((each) => each.currency).filter(Boolean))];
}

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
  if (says(reading, /mark ?-?up/)) return { want: "markup" };
  if (says(reading, /food cost/)) return { want: "food cost" };
  if (says(reading, /margin|profit|percent/)) return { want: "margin" };
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

/** "costs $16 to make 24, what do I charge each". */
function eachOf(reading: Reading, money: readonly Sum[]): number | undefined {
  if (!says(reading, /(?:^| )(?:each|apiece|a piece|per \S*<count=macarons>)(?: |$)/)) return undefined;
  return bareNumbers(reading).find(
    (each) => Number.isInteger(each.value) && each.value >= 2 && !money.some((sum) => sum.amount === each),
  )?.value;
}

/** "a box of six". */
function perBox(reading: Reading): number | undefined {
  return reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.of?.count === "boxes" &&
      Number.isInteger(each.value) &&
      /box(?:es)? of $/.test(reading.text.slice(0, each.at[0])),
  )?.value;
}
