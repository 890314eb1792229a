/** Reads the things that an order on the shelf is about: their weights, bags, prices. */
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { each_g, merged, mostCounted, nameOf, readLines } from "../lib/lines.ts";
import { currencySaid } from "../lib/money.ts";
import { inBase, unitRow } from "../lib/units.ts";
import type { Draft } from "./draft.ts";
import { notNames, partly, takes, wholly } from "./moves.ts";
import type { ShelfInputs } from "./shelf.ts";

type Entry = NonNullable<ShelfInputs["entries"]>[number];
export type Does = NonNullable<ShelfInputs["does"]>;

/** Ingredients with their weights; without a name the one that was spoken of before. */
export function entriesOf(
  reading: Reading,
  before: Draft | undefined,
  memory: Memory,
  does: Does | undefined,
): Entry[] {
  const bags = bagsOf(reading);
  if (bags) return [bags];
  const eggs = reading.amounts.find(
    ({ dim, unit, of }) => dim === "number" && unit === "" && of?.ingredient === "egg",
  );
  // "30 eggs" are counted, however many
  const lines = merged(
    readLines(reading).lines.map((each) =>
      each.name === "egg" && eggs?.value === each.grams
        ? { name: "egg", grams: each.grams * (each_g.egg ?? 1) }
        : // "minus 50 g": so much is taken
          { name: each.name, grams: Math.abs(each.grams) },
    ),
  );
  const known = lines
    .filter(
      // "used another 160": no ingredient of that name
      (each) => !notNames.test(each.name) && !isOrder.test(each.name),
    )
    .filter(
      (each) =>
        reading.things.some((thing) => nameOf(thing) === each.name) ||
        ((does === "add" || does === "use") && !reading.things.some((thing) => isBowlOf(thing, each.name))),
    );
  if (known.length > 0 && reading.things.some((each) => each.ingredient || each.taste || each.chocolate))
    return known;
  const names = [
    ...new Set(reading.things.filter((each) => each.ingredient || each.chocolate || each.taste).map(nameOf)),
  ];
  const weight = reading.amounts.find((each) => each.dim === "weight");
  const part = reading.amounts.find((each) => each.fraction);
  const name =
    names[0] ??
    (memory.follows || says(reading, /(?:^| )(?:it|that|left|there|another|used)(?: |$)/)
      ? before?.entries?.[0]?.name
      : undefined);
  const counted_g = each_g[name ?? ""];
  if (known.length > 0 && !name) return known;
  if (name === undefined) return [];
  // "and another 160", of what was spoken of
  const bare = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      !each.of &&
      !each.fraction &&
      (each.value >= 5 || counted_g !== undefined),
  );
  // "used the butter" is all of it; of what "reduce the butter", "it broke", "lost 3" take nothing is known
  const isAll =
    !says(reading, partly) &&
    !reading.amounts.some((each) => each.dim === "number" && !each.fraction) &&
    // "and the sugar", behind 260 g of the flour: how much of it isn't said
    !(before?.entries?.[0]?.grams !== undefined && !takes.test(reading.mask) && !says(reading, wholly)) &&
    (names.length > 0 || says(reading, wholly));
  const all = does === "use" && isAll ? { part: 1 } : {};
  const share = reading.amounts.find((each) => each.dim === "percent");
  // "and the same of the icing sugar", behind so much that was used
  const same =
    !weight && says(reading, /(?:^| )(?:the )?same (?:amount |weight |again )?(?:of|for|with) /)
      ? before?.entries?.[0]?.grams
      : undefined;
  const amount =
    same !== undefined
      ? { grams: same }
      : weight
        ? { grams: Math.abs(inBase(weight.value, weight.unit)) }
        : bare && (names.length === 0 || does === "use")
          ? { grams: gramsOf(bare.value, counted_g) }
          : part
            ? { part: part.value }
            : share && does === "use" && !says(reading, / to \S*<percent>/)
              ? { part: share.value / 100 }
              : all;
  return names.length > 1 ? names.map((each) => ({ name: each, ...all })) : [{ name, ...amount }];
}

/** "almond flour this week, 1 kg, put it in the pantry": what to do with it, and no ingredient of that name. */
const isOrder =
  /^(?:(?:could|can|would|will|you|please) )*(?:put|add|pop|stick|enter|note|log|store)(?:(?: (?:it|that|this|them|in|on|to|into|the|my|down|pantry|shelf|larder|cupboard|stock|please))*)$/;

/** A buttercream, a ganache: a bowl, and no stock by its own name where something goes into it. */
const isBowlOf = (thing: Thing, name: string): boolean => thing.base !== undefined && thing.text === name;

/** "no wait 5", of eggs: five of them. */
const gramsOf = (number: number, counted_g: number | undefined): number =>
  counted_g !== undefined && number <= mostCounted ? number * counted_g : number;

/** "2 bags of almond flour, 500 g each". */
function bagsOf(reading: Reading): Entry | undefined {
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  const number = reading.amounts.find(
    (each) => each.dim === "number" && each.unit === "" && !each.fraction && Number.isInteger(each.value),
  );
  const owner = reading.things.find((each) => each.ingredient || each.chocolate);
  const [weight] = weights;
  if (
    !number ||
    !owner ||
    !weight ||
    weights.length > 1 ||
    !says(reading, /(?:^| )each(?: |$)|(?:bags?|packs?|packets?|boxes|cartons|tubs|jars|blocks) /)
  )
    return undefined;
  return {
    name: nameOf(owner),
    grams: number.value * inBase(weight.value, weight.unit),
    pack_g: inBase(weight.value, weight.unit),
  };
}

/** "bought 2 bags of almond flour, 500 g each, 9 dollars a bag": what came, and what it cost. */
export function bought(reading: Reading): Entry | undefined {
  const [price] = prices(reading);
  const money = reading.amounts.find((each) => each.dim === "money");
  const weight = reading.amounts.find((each) => each.dim === "weight");
  if (!price || !money || !weight || !says(reading, /(?:^| )(?:bought|picked up|just got)(?: |$)/))
    return undefined;
  const bags = bagsOf(reading);
  const grams = bags?.grams ?? inBase(weight.value, weight.unit);
  // a price with no "a kilo" and no "a bag" is for all of it
  const isEach =
    money.per ||
    /^ ?(?:a|per|each|the) ?(?:bag|pack|packet|box|carton|tub|jar|block|kilo|one|$)/.test(
      reading.text.slice(money.at[1]),
    );
  const value = inBase(money.value, money.unit);
  return { ...price, ...(bags ?? {}), grams, ...(isEach ? {} : { price_per_g: value / grams }) };
}

/** "almond flour 16 a kilo, sugar 2 a kilo": as many things as prices, each with what it is for; else undefined. */
function pricesEach({ things, amounts }: Reading): Entry[] | undefined {
  const goods = things.filter((thing) => thing.ingredient || thing.chocolate);
  const sums = amounts.filter((amount) => amount.dim === "money");
  if (goods.length < 2 || goods.length !== sums.length) return undefined;
  const entries = goods.flatMap((thing, at): Entry[] => {
    const sum = sums[at] as Amount;
    const next = goods[at + 1]?.at[0] ?? Number.POSITIVE_INFINITY;
    const isOwn = sum.at[0] > thing.at[0] && sum.at[0] < next;
    if (!isOwn || !sum.per || unitRow(sum.per.unit).dim !== "weight") return [];
    const currency = currencySaid(sum);
    const price_per_g = inBase(sum.value, sum.unit) / inBase(sum.per.value, sum.per.unit);
    const per_g = inBase(sum.per.value, sum.per.unit);
    return [{ name: nameOf(thing), price_per_g, per_g, ...(currency ? { currency } : {}) }];
  });
  return entries.length === goods.length ? entries : undefined;
}

/** "icing sugar 2.20", behind "almond flour 14 per kilo": each for as much as the one before, else it is asked. */
function pricesLikeBefore(reading: Reading, before: Draft | undefined): Entry[] | undefined {
  const per_g = before?.does === "price" ? before.entries?.at(-1)?.per_g : undefined;
  const { amounts, things, mask } = reading;
  const goods = things.filter((thing) => thing.ingredient || thing.chocolate);
  const isUnitSaid = amounts.some((each) => each.per) || /<unit=|<weight|<volume/.test(mask);
  if (before?.does !== "price" || isUnitSaid || goods.length === 0 || goods.length !== amounts.length)
    return undefined;
  return goods.map((thing, at) => {
    const sum = amounts[at] as Amount;
    const value = sum.dim === "money" ? inBase(sum.value, sum.unit) : sum.value;
    const currency = currencySaid(sum) ?? before.entries?.at(-1)?.currency;
    const price = per_g === undefined ? {} : { price_per_g: value / per_g, per_g, as_before: true };
    return { name: nameOf(thing), ...price, ...(currency ? { currency } : {}) };
  });
}

/** "almond flour costs 16 a kilo", "$9 for a 2 lb bag of almond flour". */
export function prices(reading: Reading, before?: Draft): Entry[] {
  const next = pricesLikeBefore(reading, before);
  if (next) return next;
  const each = pricesEach(reading);
  if (each) return each;
  const owner = reading.things.find((thing) => thing.ingredient || thing.chocolate || thing.taste);
  const money =
    reading.amounts.find((each) => each.dim === "money") ??
    reading.amounts.find((each) => each.dim === "number" && each.unit === "" && !each.fraction);
  if (!owner || !money) return [];
  const weight = reading.amounts.find((each) => each.dim === "weight");
  const counted = forSoMany(reading, money, nameOf(owner));
  if (counted) return [counted];
  const perUnit = /(?:per|a|the|each|every|\/) \S*<unit=(kg|g|lb|oz)>/.exec(reading.mask)?.[1];
  const per =
    money.per && unitRow(money.per.unit).dim === "weight"
      ? inBase(money.per.value, money.per.unit)
      : perUnit && !weight
        ? inBase(1, perUnit)
        : weight
          ? inBase(weight.value, weight.unit)
          : undefined;
  if (per === undefined) return [{ name: nameOf(owner) }];
  const value = money.dim === "money" ? inBase(money.value, money.unit) : money.value;
  const currency = currencySaid(money);
  // "raspberry 25 g bottle 6.50": a flavor, and no berries
  const name =
    owner.taste && !owner.dose && !owner.chocolate && says(reading, /(?:^| )bottles?(?: |$)/)
      ? `${owner.taste} flavor`
      : nameOf(owner);
  const pack =
    weight && !money.per && says(reading, /(?:bag|pack|packet|box|carton|tub|jar|sack|block)(?: |$)/)
      ? { pack_g: per }
      : {};
  // a kilo, a pound: what the next prices may be for too
  const unitPrice = !("pack_g" in pack) && (money.per || perUnit) ? { per_g: per } : {};
  return [
    {
      name,
      price_per_g: value / per,
      ...pack,
      ...unitPrice,
      ...(currency ? { currency } : {}),
    },
  ];
}

/** "eggs cost $3.60 for 12 of them": large ones, each of its usual weight; of what has none nothing is known. */
function forSoMany({ text, amounts }: Reading, money: Amount, name: string): Entry | undefined {
  const number = amounts.find(
    ({ dim, at }) =>
      dim === "number" &&
      text.slice(money.at[1], at[0]) === " for " &&
      text.slice(at[1]).startsWith(" of them"),
  );
  const many = text.slice(money.at[1]).startsWith(" for one of them") ? 1 : number?.value;
  if (many === undefined || many <= 0) return undefined;
  const one_g = each_g[name];
  if (one_g === undefined) return { name };
  const currency = currencySaid(money);
  const price_per_g = inBase(money.value, money.unit) / (many * one_g);
  return { name, price_per_g, each_g: one_g, ...(currency ? { currency } : {}) };
}
