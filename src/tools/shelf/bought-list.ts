/** "bought 2 kg almond flour for 28 dollars, a kilo icing sugar 3.20": several things, each with its weight and price. */
import type { Amount, Reading, Thing } from "../contract/index.ts";
import { says } from "../lib/find.ts";
import { nameOf } from "../lib/lines.ts";
import { currencySaid } from "../lib/money.ts";
import { inBase } from "../lib/units.ts";
import type { ShelfInputs } from "./shelf.ts";

type Entry = NonNullable<ShelfInputs["entries"]>[number];

/** All of them, or undefined where one has no weight or no price: then nothing is guessed. */
export function boughtList(reading: Reading): Entry[] | undefined {
  if (!says(reading, /(?:^| )(?:bought|picked up|just got)(?: |$)/)) return undefined;
  const things = reading.things.filter((each) => each.ingredient || each.chocolate);
  if (things.length < 2) return undefined;
  const entries = things.map((thing, at) => entryOf(reading, thing, things[at + 1]));
  return entries.every((each) => each !== undefined) ? entries : undefined;
}

function entryOf(reading: Reading, thing: Thing, next: Thing | undefined): Entry | undefined {
  const weight = reading.amounts.find((each) => each.dim === "weight" && each.of === thing);
  if (!weight) return undefined;
  const nextWeight = reading.amounts.find((each) => next && each.of === next);
  const from = Math.max(thing.at[1], weight.at[1]);
  const to = Math.min(next?.at[0] ?? Number.POSITIVE_INFINITY, nextWeight?.at[0] ?? Number.POSITIVE_INFINITY);
  const price =
    reading.amounts.find((each) => isPrice(each) && each.at[0] >= from && each.at[0] < to) ??
    clockPrice(reading, from, to);
  if (!price) return undefined;
  const grams = inBase(weight.value, weight.unit);
  const value = price.dim === "money" ? inBase(price.value, price.unit) : price.value;
  const per_g = price.per ? inBase(price.per.value, price.per.unit) : grams;
  const currency = currencySaid(price);
  return { name: nameOf(thing), grams, price_per_g: value / per_g, ...(currency ? { currency } : {}) };
}

/** "at 5.40" is an hour anywhere else. */
function clockPrice(reading: Reading, from: number, to: number): Amount | undefined {
  const when = reading.whens.find(
    (each) => /^\d+[.:]\d\d$/.test(each.text) && each.at[0] >= from && each.at[0] < to,
  );
  return (
    when && {
      dim: "number",
      value: Number(when.text.replace(":", ".")),
      unit: "",
      text: when.text,
      at: when.at,
    }
  );
}

const isPrice = ({ dim, unit, fraction, of }: Amount): boolean =>
  dim === "money" || (dim === "number" && unit === "" && !fraction && !of);
