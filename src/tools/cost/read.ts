/** Reads a question about money, and what it carries over from the one before. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, counted, pointsBack, says, weighed } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import { inBase, unitRow } from "../lib/units.ts";
import { priceSlot } from "./answer.ts";
import type { CostInputs } from "./cost.ts";
import { type Sum, sums } from "./money.ts";

type Draft = Partial<CostInputs>;
type PricedLine = NonNullable<CostInputs["lines"]>[number];

export function readCost(reading: Reading, memory: Memory): Draft {
  const before: Draft = memory.last?.tool === "cost" ? (memory.last.inputs as Draft) : {};
  const money = sums(reading);
  const draft = { ...readSums(reading, money, memory), ...readLinesAndPrices(reading, money, memory), ...readLabor(reading, money), ...readShares(reading, memory, before) };
  const macarons = counted(reading, "macarons") ?? perBox(reading) ?? eachOf(reading, money);
  const formula = memory.names.formulas.find((name) => reading.text.includes(name.toLowerCase()));
  const table = memory.table.recipe;
  const points = table?.length && !draft.lines && draft.cost === undefined && draft.ingredients === undefined && pointsBack(reading) && memory.last?.tool !== "cost" && says(reading, /cost|come to|run me/);
  return carry(before, {
    ...draft,
    ...(macarons !== undefined ? { macarons } : {}),
    ...(formula ? { formula } : {}),
    ...(points ? { lines: table.map(({ name, grams }) => ({ name, grams })) } : {}),
    ...readWant(reading, draft),
  }, memory.follows);
}

/**
 * What the turn before still says. New lines start afresh; a new cost or price replaces what it makes void; a bare
 * "at 50 %?" keeps the rest. Without a cost of its own a question takes the one that was last spoken of.
 */
function carry(before: Draft, said: Draft, follows: boolean): Draft {
  const own = said.lines || said.cost !== undefined || said.ingredients !== undefined || said.formula !== undefined;
  if (!follows && own) return said;
  const { margin_percent, markup_percent, food_cost_percent, price, want: _want, ...parts } = before;
  const share = { ...(margin_percent !== undefined ? { margin_percent } : {}), ...(markup_percent !== undefined ? { markup_percent } : {}), ...(food_cost_percent !== undefined ? { food_cost_percent } : {}) };
  const newShare = said.margin_percent !== undefined || said.markup_percent !== undefined || said.food_cost_percent !== undefined;
  const kept: Draft = said.lines || said.formula !== undefined ? {} : own ? { ...(parts.currency && !said.currency ? { currency: parts.currency } : {}) } : parts;
  const keptPrice = price !== undefined && !newShare && !said.lines ? { price } : {};
  const keptShare = !newShare && said.price === undefined && !said.lines ? share : {};
  return { ...kept, ...keptPrice, ...keptShare, ...said };
}

function readSums(reading: Reading, money: readonly Sum[], memory: Memory): Draft {
  const out: Draft = {};
  const codes = [...new Set(money.map((each) => each.currency).filter(Boolean))];
  if (codes[0]) out.currency = codes[0];
  if (codes.length > 1) out.mixed = codes.join(" and ");
  const signs = [...new Set(money.map((each) => each.bare).filter((each) => each !== undefined))];
  if (signs[0] !== undefined && codes.length < 2) out.bare_sign = signs[0];
  const pack = paidFor(reading, money) !== undefined;
  const plainSums = pack ? [] : money.filter((each) => !isWeightPrice(each, reading));
  for (const { use, value } of plainSums) {
    if (use === "rate" || use === undefined) continue;
    out[use] = (out[use] ?? 0) + value;
  }
  const loose = plainSums.filter((each) => each.use === undefined);
  if (loose.length > 0) {
    const slot = memory.slot === "price" ? "price" : "cost";
    for (const each of loose) out[slot] = (out[slot] ?? 0) + each.value;
  }
  if (memory.slot?.startsWith(priceSlot)) return {};
  const bare = money.length === 0 && (memory.slot === "cost" || memory.slot === "price") ? bareNumbers(reading)[0] : undefined;
  if (bare && memory.slot) out[memory.slot as "cost"] = bare.value;
  return out;
}

/** "$16 a kilo", "$4 for 500 g", "a 500 g bag at $4": the price of a weight, not a sum spent. */
const isWeightPrice = (sum: Sum, reading: Reading) => pricePerGram(sum, reading) !== undefined;

function pricePerGram({ amount, value }: Sum, reading: Reading): number | undefined {
  if (amount.per) return unitRow(amount.per.unit).dim === "weight" ? value / inBase(amount.per.value, amount.per.unit) : undefined;
  const pack = packOf(amount.at, reading);
  return pack === undefined ? undefined : value / pack;
}

/** The weight that a price is for: "$4 for 500 g", "16 a kilo", "a 2 lb bag is $9". */
function packOf(at: readonly [number, number], reading: Reading): number | undefined {
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const behind = weights.find((each) => each.at[0] >= at[1] && /^(?:\s*(?:for|per|a|an|each|the))*\s*$/.test(reading.text.slice(at[1], each.at[0])));
  const before = weights.findLast((each) => each.at[1] <= at[0] && /^\s*(?:bag|pack|packet|box|carton|tub|jar|bottle|sack)\b/.test(reading.text.slice(each.at[1])));
  const pack = behind ?? before;
  return pack && inBase(pack.value, pack.unit);
}

/** Weights with the price that follows each; prices that stand without a weight, by ingredient. */
function readLinesAndPrices(reading: Reading, money: readonly Sum[], memory: Memory): Draft {
  const priced = money.flatMap((sum) => {
    const price_per_g = pricePerGram(sum, reading);
    return price_per_g === undefined ? [] : [{ at: sum.amount.at, price_per_g }];
  });
  const asked = memory.slot?.startsWith(priceSlot) ? memory.slot.slice(priceSlot.length) : undefined;
  if (asked !== undefined) return answeredPrice(priced[0]?.price_per_g ?? perKilo(reading, money), asked, memory);
  const packs = new Set(money.flatMap((sum) => (sum.amount.per ? [] : [packOf(sum.amount.at, reading)])));
  const weights = weighed(reading).filter((each) => each.thing && (each.thing.ingredient || each.thing.dose || each.thing.taste || each.thing.chocolate) && !(packs.has(each.grams) && priced.length > 0 && weighed(reading).length === 1));
  const taken = new Set<number>();
  const pack = paidFor(reading, money);
  if (pack) return { lines: [pack] };
  const lines = weights.map((each, at): PricedLine => {
    const until = weights[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY;
    const found = priced.findIndex(({ at: [start] }, index) => !taken.has(index) && start > each.amount.at[0] && start < until);
    const index = found >= 0 ? found : weights.length === 1 && priced.length === 1 ? 0 : -1;
    if (index >= 0) taken.add(index);
    const price = priced[index]?.price_per_g;
    return { name: each.thing ? nameOf(each.thing) : "", grams: each.grams, ...(price !== undefined ? { price_per_g: price } : {}) };
  });
  if (lines.length > 0) return { lines };
  const named = reading.things.filter((each) => each.ingredient);
  const prices = priced.flatMap(({ at, price_per_g }) => {
    const owner = named.findLast((each) => each.at[1] <= at[0]) ?? named.find((each) => each.at[0] >= at[1]);
    return owner ? [{ name: nameOf(owner), price_per_g }] : [];
  });
  // "almond flour is $9 for a 500 g bag, what do 130 g cost": the weight that is no pack is of what was priced
  const loose = reading.amounts.find((each) => each.dim === "weight" && !each.of && !packs.has(inBase(each.value, each.unit)));
  if (loose && prices[0]) return { lines: [{ name: prices[0].name, grams: inBase(loose.value, loose.unit), price_per_g: prices[0].price_per_g }] };
  return prices.length > 0 ? { prices } : {};
}

/** "10 lb of almond flour costs $95, what does 130 g cost": the sum is the price of the first weight. */
function paidFor(reading: Reading, money: readonly Sum[]): PricedLine | undefined {
  const [sum] = money;
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const [bought, wanted] = weights;
  if (money.length !== 1 || !sum || sum.amount.per || weights.length !== 2 || !bought?.of || !wanted) return undefined;
  const between = reading.amounts.indexOf(bought) < reading.amounts.indexOf(sum.amount) && reading.amounts.indexOf(sum.amount) < reading.amounts.indexOf(wanted);
  if (!between || (wanted.of && nameOf(wanted.of) !== nameOf(bought.of))) return undefined;
  return { name: nameOf(bought.of), grams: inBase(wanted.value, wanted.unit), price_per_g: sum.value / inBase(bought.value, bought.unit) };
}

/** A sum or a number alone, where a kilo's price was asked for. */
const perKilo = (reading: Reading, money: readonly Sum[]): number | undefined => {
  const value = money[0]?.value ?? bareNumbers(reading)[0]?.value;
  return value === undefined ? undefined : value / 1000;
};

/** The price joins those that were said before; the lines stay. */
function answeredPrice(price_per_g: number | undefined, name: string, memory: Memory): Draft {
  if (price_per_g === undefined) return {};
  const before = (memory.last?.inputs ?? {}) as Draft;
  return { ...before, prices: [...(before.prices ?? []), { name, price_per_g }] };
}

/** "two hours work at €15 an hour", "an hour and a half of my time at $18 an hour". */
function readLabor(reading: Reading, money: readonly Sum[]): Draft {
  const rate = money.find((each) => each.use === "rate");
  const time = reading.amounts.find((each) => each.dim === "time");
  const half = reading.amounts.find((each) => time && each.fraction && each.dim === "number" && /^\s*and\s*$/.test(reading.text.slice(time.at[1], each.at[0])));
  const min = time && inBase(time.value + (half?.value ?? 0), time.unit);
  return {
    ...(rate?.amount.per ? { labor_per_h: (rate.value / inBase(rate.amount.per.value, rate.amount.per.unit)) * 60 } : {}),
    ...(min !== undefined ? { labor_min: min } : {}),
  };
}

/** A percentage is the margin, unless markup or food cost is what it stands beside. */
function readShares(reading: Reading, memory: Memory, before: Draft): Draft {
  const times = reading.amounts.find((each) => each.unit === "times");
  if (times && says(reading, /cost|sell|price|charge|mark ?-?up/)) return { markup_percent: (times.value - 1) * 100 };
  const percent = reading.amounts.find((each) => each.dim === "percent");
  const last = before.markup_percent !== undefined ? "markup_percent" : before.food_cost_percent !== undefined ? "food_cost_percent" : "margin_percent";
  const named = says(reading, /mark ?-?up/) ? "markup_percent" : says(reading, /food cost/) ? "food_cost_percent" : says(reading, /margin|profit/) ? "margin_percent" : undefined;
  if (percent) return { [named ?? last]: percent.value };
  const bare = bareNumbers(reading)[0];
  const asked = memory.slot === "margin_percent";
  if (bare && (asked || (memory.follows && (named !== undefined || before.margin_percent !== undefined || before.markup_percent !== undefined || before.food_cost_percent !== undefined)) || (named !== undefined && says(reading, /<number> (?:margin|mark ?-?up)/)))) return { [named ?? last]: bare.value };
  return {};
}

function readWant(reading: Reading, draft: Draft): Draft {
  const shared = draft.margin_percent !== undefined || draft.markup_percent !== undefined || draft.food_cost_percent !== undefined;
  if (shared) return { want: "price" };
  if (says(reading, /mark ?-?up/)) return { want: "markup" };
  if (says(reading, /food cost/)) return { want: "food cost" };
  if (says(reading, /margin|profit|percent/)) return { want: "margin" };
  if (says(reading, /charge|price|sell (?:it|them|that) for|should i (?:ask|sell)/) && draft.price === undefined) return { want: "price" };
  if (says(reading, /cost|come to|run me|set me back|spend/)) return draft.price !== undefined ? { want: "margin" } : draft.lines || draft.formula || draft.macarons !== undefined || says(reading, /what|how much/) ? { want: "cost" } : {};
  return draft.price !== undefined ? { want: "margin" } : {};
}

/** "costs $16 to make 24, what do I charge each". */
function eachOf(reading: Reading, money: readonly Sum[]): number | undefined {
  if (!says(reading, /(?:^| )(?:each|apiece|a piece)(?: |$)/)) return undefined;
  return bareNumbers(reading).find((each) => Number.isInteger(each.value) && each.value >= 2 && !money.some((sum) => sum.amount === each))?.value;
}

/** "a box of six". */
function perBox(reading: Reading): number | undefined {
  return reading.amounts.find((each) => each.dim === "number" && each.of?.count === "boxes" && Number.isInteger(each.value) && /box(?:es)? of $/.test(reading.text.slice(0, each.at[0])))?.value;
}
