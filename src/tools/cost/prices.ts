/** Weights and what they cost: lines with their prices, packs, and the price that was asked for. */
import type { Memory, Reading } from "../contract/index.ts";
import { bareNumbers, type Weighed, weighed } from "../lib/find.ts";
import { each_g, nameOf } from "../lib/lines.ts";
import { inBase, unitRow } from "../lib/units.ts";
import type { CostInputs } from "./cost.ts";
import type { Draft } from "./draft.ts";
import { ofLineBefore } from "./line-again.ts";
import type { Sum } from "./money.ts";
import { isOf } from "./one-line.ts";

type PricedLine = NonNullable<CostInputs["lines"]>[number];

/** "$16 a kilo", "$4 for 500 g", "a 500 g bag at $4": the price of a weight, not a sum spent. */
export const isWeightPrice = (sum: Sum, reading: Reading) => pricePerGram(sum, reading) !== undefined;

function pricePerGram({ amount, value, per: on }: Sum, reading: Reading): number | undefined {
  // "eggs 30 ct each", behind a price by the kilo
  const one_g = amount.per ? undefined : pieceOf(amount.at, reading);
  if (one_g !== undefined) return value / one_g;
  const per = amount.per ?? on;
  if (per) return unitRow(per.unit).dim === "weight" ? value / inBase(per.value, per.unit) : undefined;
  const pack = packOf(amount.at, reading);
  return pack === undefined ? undefined : value / pack;
}

/** "eggs 30 ct each": what one of them weighs. */
function pieceOf([from, to]: readonly [number, number], { text, things }: Reading): number | undefined {
  if (!/^ ?(?:each|apiece|a piece|per piece|per egg|an egg|the piece)\b/.test(text.slice(to)))
    return undefined;
  const owner = things.findLast((each) => each.at[1] <= from && each.ingredient);
  const isBeside = owner && /^(?: |are|is|at|cost|costs|for|:|=)*$/.test(text.slice(owner.at[1], from));
  return isBeside ? each_g[owner.ingredient ?? ""] : undefined;
}

/** The weight that a price is for: "$4 for 500 g", "16 a kilo", "a 2 lb bag is $9". */
function packOf(at: readonly [number, number], reading: Reading): number | undefined {
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const behind = weights.find(
    (each) =>
      each.at[0] >= at[1] &&
      /^(?:\s*(?:for|per|a|an|each|the))*\s*$/.test(reading.text.slice(at[1], each.at[0])),
  );
  const before = weights.findLast(
    (each) =>
      each.at[1] <= at[0] &&
      /^\s*(?:bag|pack|packet|box|carton|tub|jar|bottle|sack)\b/.test(reading.text.slice(each.at[1])),
  );
  const pack = behind ?? before;
  return pack && inBase(pack.value, pack.unit);
}

/** Weights with the price that follows each; prices that stand without a weight, by ingredient. */
export function readLinesAndPrices(reading: Reading, money: readonly Sum[], memory: Memory): Draft {
  const priced = money.flatMap((sum) => {
    const price_per_g = pricePerGram(sum, reading);
    const pack_g = sum.amount.per || sum.per ? undefined : packOf(sum.amount.at, reading);
    return price_per_g === undefined
      ? []
      : [{ at: sum.amount.at, price_per_g, ...(pack_g !== undefined ? { pack_g } : {}) }];
  });
  if (memory.slot === "more_prices")
    return (
      namedPrices(reading, priced, memory) ??
      answeredPrice(priced[0]?.price_per_g ?? perKilo(reading, money), memory)
    );
  const packs = new Set(money.flatMap((sum) => (sum.amount.per ? [] : [packOf(sum.amount.at, reading)])));
  const weights = weighed(reading)
    .map((each) => ofPriced(each, reading, money))
    .filter(
      (each) =>
        // "butter 3.20, eggs 1.80": sums of money
        !money.some(({ amount }) => amount === each.amount) &&
        each.thing &&
        (each.thing.ingredient || each.thing.dose || each.thing.taste || each.thing.chocolate) &&
        !(packs.has(each.grams) && priced.length > 0 && weighed(reading).length === 1),
    );
  const taken = new Set<number>();
  const pack = paidFor(reading, money);
  if (pack) return { lines: [pack] };
  const apart = pricedApart(reading, priced, weights);
  if (apart) return { lines: apart };
  const lines = weights.map((each, at): PricedLine => {
    const until = weights[at + 1]?.amount.at[0] ?? Number.POSITIVE_INFINITY;
    const own = priced.findIndex(({ at: place }) => place === each.price?.amount.at);
    const found =
      own >= 0
        ? own
        : priced.findIndex(
            ({ at: [start] }, index) => !taken.has(index) && start > each.amount.at[0] && start < until,
          );
    const index = found >= 0 ? found : weights.length === 1 && priced.length === 1 ? 0 : -1;
    if (index >= 0) taken.add(index);
    const price = priced[index]?.price_per_g;
    const pack_g = priced[index]?.pack_g;
    return {
      name: each.thing ? nameOf(each.thing) : "",
      grams: each.grams,
      ...(price !== undefined ? { price_per_g: price } : {}),
      ...(pack_g !== undefined ? { pack_g } : {}),
    };
  });
  const owners = reading.things.filter((each) => each.ingredient || each.chocolate);
  const owned = priced.map(({ at, ...price }) => ({
    ...price,
    name: owners.findLast((each) => each.at[1] <= at[0]),
  }));
  // "flour 12 a kilo and sugar 1.5 a kilo, 130 g flour and 100 g sugar": prices first, each by its name
  const ofName = (line: PricedLine): PricedLine => {
    const found = owned.find((each) => each.name && nameOf(each.name) === line.name);
    return line.price_per_g !== undefined || !found ? line : { ...line, price_per_g: found.price_per_g };
  };
  if (lines.length > 0) return { lines: lines.map(ofName) };
  const named = reading.things.filter((each) => each.ingredient);
  const prices = priced.flatMap(({ at, ...price }) => {
    const owner = named.findLast((each) => each.at[1] <= at[0]) ?? named.find((each) => each.at[0] >= at[1]);
    return owner ? [{ name: nameOf(owner), ...price }] : [];
  });
  // "almond flour is $9 for a 500 g bag, what do 130 g cost": the weight that is no pack is of what was priced
  const loose = reading.amounts.find(
    (each) => each.dim === "weight" && !each.of && !packs.has(inBase(each.value, each.unit)),
  );
  if (loose && prices[0])
    return {
      lines: [{ ...prices[0], grams: inBase(loose.value, loose.unit) }],
    };
  if (prices.length > 0) return { prices };
  return ofLineBefore(reading, priced, money, memory) ?? {};
}

/** "butter is €0.95 per 100 g and white chocolate €1.60. I took 150 g of the butter ...": prices and weights apart, by their names. */
function pricedApart(
  { things, text }: Reading,
  priced: readonly { at: readonly [number, number]; price_per_g: number }[],
  weights: readonly Weighed[],
): PricedLine[] | undefined {
  const owners = things.filter((each) => each.ingredient || each.chocolate);
  const named = priced.flatMap(({ at, price_per_g }) => {
    // "$8 a kilo for butter"
    const behind = owners.find((each) => /^ (?:for|of) (?:the |my )?$/.test(text.slice(at[1], each.at[0])));
    const owner = behind ?? owners.findLast((each) => each.at[1] <= at[0]);
    return owner
      ? [{ owner, from: Math.min(owner.at[0], at[0]), to: Math.max(owner.at[1], at[1]), price_per_g }]
      : [];
  });
  const [first, last] = [named[0], named.at(-1)];
  const places = new Set(named.map(({ owner }) => owner));
  if (named.length < 2 || places.size < priced.length || !first || !last || weights.length === 0)
    return undefined;
  const isApart =
    weights.every(({ amount, thing }) => Math.max(amount.at[1], thing?.at[1] ?? 0) <= first.from) ||
    weights.every(({ amount, thing }) => Math.min(amount.at[0], thing?.at[0] ?? amount.at[0]) >= last.to);
  if (!isApart) return undefined;
  return weights.map(({ thing, grams }) => {
    const name = thing ? nameOf(thing) : "";
    const own = named.filter(({ owner }) => nameOf(owner) === name);
    // "the chocolate", where one was priced
    const found = own.length > 0 ? own : named.filter(({ owner }) => isOf(name, nameOf(owner)));
    const [one, ...others] = found;
    return one && others.length === 0
      ? { name: nameOf(one.owner), grams, price_per_g: one.price_per_g }
      : { name, grams };
  });
}

/** "powdered sugar 2.20/kg 130 g": a weight right behind a price is of what the price is for. */
function ofPriced(each: Weighed, reading: Reading, money: readonly Sum[]): Weighed & { price?: Sum } {
  const { amount, thing } = each;
  const sum = money.findLast(({ amount: { at } }) => at[1] <= amount.at[0]);
  const between = sum && reading.text.slice(sum.amount.at[1], amount.at[0]);
  const isBehind =
    between !== undefined && /^[ ,/]*(?:(?:per|a|the) )?(?:kg|kilo|lb|pound)?[ ,]*$/.test(between);
  const owner = reading.things.findLast(
    (other) => (other.ingredient || other.chocolate) && sum && other.at[1] <= sum.amount.at[0],
  );
  const isFree = !reading.amounts.some(
    (other) => other !== amount && other.dim === "weight" && other.of === owner,
  );
  return (!thing || thing === owner) &&
    sum &&
    pricePerGram(sum, reading) !== undefined &&
    isBehind &&
    owner &&
    isFree
    ? { ...each, thing: owner, price: sum }
    : each;
}

/** "10 lb of almond flour costs $95, what does 130 g cost": the sum is the price of the first weight. */
export function paidFor(reading: Reading, money: readonly Sum[]): PricedLine | undefined {
  const [sum] = money;
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const [bought, wanted] = weights;
  if (money.length !== 1 || !sum || sum.amount.per || weights.length !== 2 || !bought?.of || !wanted)
    return undefined;
  const between =
    reading.amounts.indexOf(bought) < reading.amounts.indexOf(sum.amount) &&
    reading.amounts.indexOf(sum.amount) < reading.amounts.indexOf(wanted);
  if (!between || (wanted.of && nameOf(wanted.of) !== nameOf(bought.of))) return undefined;
  return {
    name: nameOf(bought.of),
    grams: inBase(wanted.value, wanted.unit),
    price_per_g: sum.value / inBase(bought.value, bought.unit),
    pack_g: inBase(bought.value, bought.unit),
  };
}

/** A sum or a number alone, where a kilo's price was asked for. */
const perKilo = (reading: Reading, money: readonly Sum[]): number | undefined => {
  const value = money[0]?.value ?? bareNumbers(reading)[0]?.value;
  return value === undefined ? undefined : value / 1000;
};

/** "chocolate 12 a kilo, cream 5 a kilo": each price goes to the line that it names, whichever was asked for. */
function namedPrices(
  { things }: Reading,
  priced: readonly { at: readonly [number, number]; price_per_g: number }[],
  memory: Memory,
): Draft | undefined {
  const before = (memory.last?.inputs ?? {}) as Draft;
  const owners = things.filter((each) => each.ingredient || each.chocolate);
  const isFirst = priced[0] && owners[0] && owners[0].at[0] > priced[0].at[0];
  const prices = priced.map(({ at, price_per_g }) => {
    const owner = isFirst
      ? owners.find((each) => each.at[0] >= at[1])
      : owners.findLast((each) => each.at[1] <= at[0]);
    return { name: owner && nameOf(owner), price_per_g };
  });
  const names = new Set(prices.flatMap(({ name }) => name ?? []));
  if (!before.lines || names.size !== priced.length || names.size === 0) return undefined;
  const lines = before.lines.map((line) => {
    const own = prices.find(({ name }) => name !== undefined && isOf(name, line.name));
    return own && line.price_per_g === undefined ? { ...line, price_per_g: own.price_per_g } : line;
  });
  return lines.some((line, i) => line !== before.lines?.[i]) ? { ...before, lines } : undefined;
}

/** The price joins those that were said before; the lines stay. */
function answeredPrice(price_per_g: number | undefined, memory: Memory): Draft {
  if (price_per_g === undefined) return {};
  const before = (memory.last?.inputs ?? {}) as Draft;
  return { ...before, more_prices: [...(before.more_prices ?? []), price_per_g] };
}
