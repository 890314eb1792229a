/** Bare answers and bare follow-ups: a number alone takes the place of the one it stands for. */

import type { Amount, Dimension, Reading } from "../../tools/contract/index.ts";
import { isOfQuality } from "../../tools/lib/find.ts";
import { celsius, inBase } from "../../tools/lib/units.ts";

type Inputs = Record<string, unknown>;

/** What kind of amount an input takes, from the unit in its name. */
export function dimensionOf(slot: string): Dimension | undefined {
  if (/_per_h$/.test(slot)) return "money";
  if (/_g$/.test(slot)) return "weight";
  if (/percent/.test(slot)) return "percent";
  if (/_mm$/.test(slot)) return "length";
  if (/_(?:min|h)$/.test(slot)) return "time";
  if (/_c$/.test(slot)) return "temperature";
  if (/^(?:macarons|shells|trays|whites|count|factor|value|parts|boxes)$/.test(slot)) return "number";
  return undefined;
}

/** The slots that a whole bowl's weight answers. */
const bowls = new Set(["base_g", "chocolate_g", "cream_g", "total_g"]);

const talk = new Set(
  "and for from the a of it its is about around roughly only just if what whats how no nope actually ok okay make that with at to in grams now sorry i meant mean have had got ive im say then so or please pls but not instead use try er um uh oh yes yeah diameter wide across size sized now then when also still really big maybe ones one each them those which would you could do does please same hmm wait there theres weighs".split(
    " ",
  ),
);

/** Nothing but an amount or a thing and talk around it: "230", "no, 250 g", "and for 300?", "white". */
export function isBare(reading: Reading): boolean {
  const rest = reading.mask
    .split(" ")
    .filter((each) => !each.includes("<") && /^[a-z]/.test(each) && !talk.has(each));
  return (
    rest.length === 0 &&
    reading.amounts.length + reading.things.length <= 3 &&
    reading.amounts.length + reading.things.length > 0
  );
}

/**
 * The one amount of a reading as the value of a slot: the slot that was asked for, else the first earlier input of
 * the same kind. A bare number takes what the earlier one was: grams stay grams, a count a count.
 */
export function fillSlot(reading: Reading, before: Inputs, slot: string | undefined): Inputs {
  const amounts = reading.amounts.filter((each) => each.unit !== "times");
  if (amounts.length !== 1) return {};
  const amount = amounts[0] as Amount;
  const slots = slot ? [slot] : Object.keys(before).filter((key) => typeof before[key] === "number");
  const fits = slots.find((key) => {
    const dim = dimensionOf(key);
    // "tray 1": the tray's number is none of its size
    if (amount.of?.count === "trays" && key !== "trays") return false;
    // how many are in them is not known
    if (amount.of?.count === "boxes" && key !== "boxes") return false;
    // "three colours" are bowls
    if (amount.of?.count === "bowls" && /^(?:macarons|shells|trays)$/.test(key)) return false;
    // "90 g cream" is one part of a mix, and no bowl of it
    if (key === "base_g" && amount.of?.ingredient && !amount.of.base) return false;
    // "enough for 20": no bowl holds so few grams
    if (slot && bowls.has(slot) && amount.dim === "number" && amount.value < 25) return false;
    // "the caramel half" is no half gram
    if (key.endsWith("_g") && amount.fraction && amount.value < 1) return false;
    // "and for 2 batches", "30 macs" are no weight
    if (
      key.endsWith("_g") &&
      amount.dim === "number" &&
      /^(?:batches|macarons|shells)$/.test(amount.of?.count ?? "")
    )
      return false;
    // "i only have 200 almond" is no number of macarons
    if (/^(?:macarons|shells|trays|boxes)$/.test(key) && (amount.of?.ingredient || amount.of?.base))
      return false;
    // "and 2?" may be a factor, "300" is a weight
    if (key === "factor" && amount.value > 20) return false;
    if (key.endsWith("_g") && !slot && isTooFew(amount, before[key])) return false;
    return dim !== undefined && (amount.dim === dim || (amount.dim === "number" && amount.unit === ""));
  });
  if (!fits) return {};
  const value = valueFor(fits, amount);
  return value === undefined ? {} : { [fits]: value };
}

/** "and the other two", where grams were said: so few are no weight in the place of that one. */
const isTooFew = ({ dim, value }: Amount, old: unknown): boolean =>
  dim === "number" && value < 10 && typeof old === "number" && value < old / 25;

function valueFor(slot: string, amount: Amount): number | undefined {
  const bare = amount.dim === "number";
  if (slot.endsWith("_g")) return bare ? amount.value : inBase(amount.value, amount.unit);
  if (slot.endsWith("_mm"))
    return bare ? (amount.value < 15 ? amount.value * 10 : amount.value) : inBase(amount.value, amount.unit);
  if (slot.endsWith("_min")) return bare ? amount.value : inBase(amount.value, amount.unit);
  if (slot.endsWith("_h")) return bare ? amount.value : inBase(amount.value, amount.unit) / 60;
  if (slot.endsWith("_c")) return bare ? amount.value : celsius(amount.value, amount.unit);
  return amount.value;
}

/** The inputs that say how much it is of, the most telling first: "double it", "half of that", "10 less". */
export const sizes = [
  "base_g",
  "total_g",
  "chocolate_g",
  "cream_g",
  "batter_g",
  "filling_g",
  "butter_g",
  "sugar_g",
  "whites_g",
  "whites_count",
  "macarons",
  "shells",
  "flavor_g",
];

/**
 * "double it", "half of that", "twice as much": the earlier weights and counts times the factor. Undefined where the
 * sentence holds another number, or nothing earlier can be multiplied.
 */
export function multiplied(reading: Reading, before: Inputs): Inputs | undefined {
  if (
    /other|in one|for one|each|in half|into|(?:in|for|with|to) (?:that|this|the same|the \S+|my \S+) (?:half|third|quarter)/.test(
      reading.text,
    )
  )
    return undefined;
  const [only, ...others] = reading.amounts;
  if (!only || others.length > 0 || only.dim !== "number" || !(only.unit === "times" || only.fraction))
    return undefined;
  if (isOfQuality(reading, only)) return undefined;
  // "pink for half the batter", behind a dose for buttercream: nothing of that bowl
  const base = reading.things.find((each) => each.base && each.base !== "filling")?.base;
  if (base && typeof before.base === "string" && base !== before.base) return undefined;
  // "less 10 percent cream": that part alone
  const part = reading.things.find((each) => each.ingredient === "cream" || each.chocolate)?.ingredient;
  const own = part === "cream" ? "cream_g" : part ? "chocolate_g" : undefined;
  const slots =
    own && typeof before[own] === "number" ? [own] : sizes.filter((slot) => typeof before[slot] === "number");
  const both =
    slots.includes("chocolate_g") && slots.includes("cream_g")
      ? ["chocolate_g", "cream_g"]
      : // "a third of it", of a bowl with its flavor in: both of them
        typeof before.base_g === "number" &&
          typeof before.flavor_g === "number" &&
          / of it\b/.test(reading.text)
        ? ["base_g", "flavor_g"]
        : slots.slice(0, 1);
  if (both.length === 0) return undefined;
  return Object.fromEntries(both.map((slot) => [slot, (before[slot] as number) * only.value]));
}
