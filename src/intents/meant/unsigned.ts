/**
 * "almond flour 12.99 per kg", "butter 3.49 for 250 g", "15 an hour": sums of money said without a sign, where the
 * words around them leave nothing else that they could be.
 */
import type { Amount, Thing, When } from "../../tools/contract/index.ts";
import { unitRow } from "../../tools/lib/units.ts";
import type { Item } from "../found/scan.ts";

/** The unit of a sum whose currency nobody said; the bench's stands in for it. */
const unsigned = "unsigned";

/** "if i sell it at 20 pounds": nobody sells by weight. */
const sells = /^(?:sell|sells|selling|sold|charge|charging|asking)$/;
/** "a box costs me four pounds fifty". */
const costs = /^(?:cost|costs|costing|spent|spend|paid|pay)$/;

/** What is paid for that is no food: "packaging 3 pounds", "7 pounds for the boxes", "ingredients came to 12 pounds". */
const paidFor =
  /^(?:ingredients|ingredient|packaging|packing|boxes|box|bags|ribbons?|stickers?|labels|wrapping|labou?r|work|wages?|groceries)$/;
/** Between what is paid for and its sum. */
const comesTo = new Set(
  "came come comes to was were is are cost costs me us about and ribbon the my a : of".split(" "),
);
const forWhat = new Set("for on of in the my".split(" "));

const isPounds = (items: readonly Item[], at: number): boolean => {
  const item = items[at];
  const next = items[at + 1];
  return (
    item?.is === "amount" &&
    item.amount.unit === "lb" &&
    /pounds?\.?$/.test(item.amount.text) &&
    ((["at", "for", "charge", "charging"].includes(wordOrSign(items[at - 1])) &&
      items.slice(Math.max(0, at - 5), at).some((each) => sells.test(wordOrSign(each)))) ||
      items.slice(Math.max(0, at - 2), at).some((each) => costs.test(wordOrSign(each))) ||
      isPaid(items, at)) &&
    !(next?.is === "thing" && Boolean(next.thing.ingredient ?? next.thing.base)) &&
    (wordOrSign(next) !== "of" || paidFor.test(said(items[at + 2])))
  );
};

/** "packaging came to 7 pounds", "7 pounds for packaging", "two hours at 15 pounds an hour". */
function isPaid(items: readonly Item[], at: number): boolean {
  let before = at - 1;
  while (at - before < 6 && comesTo.has(wordOrSign(items[before]))) before -= 1;
  if (paidFor.test(said(items[before]))) return true;
  let behind = at + 1;
  while (behind - at < 4 && forWhat.has(wordOrSign(items[behind]))) behind += 1;
  if (paidFor.test(said(items[behind]))) return true;
  const next = items[at + 1];
  const item = items[at];
  if (item?.is === "amount" && item.amount.per?.unit && unitRow(item.amount.per.unit).dim === "time")
    return true;
  const isHour = (each: Item | undefined) =>
    (each?.is === "amount" && /^(?:an|a|one|per|1) ?hour$/.test(each.amount.text)) || said(each) === "hour";
  if (isHour(next) || (wordOrSign(next) === "per" && isHour(items[at + 2]))) return true;
  // "an hour of my time is 16 pounds"
  return (
    wordOrSign(items[at - 1]) === "is" &&
    items
      .slice(Math.max(0, at - 6), at)
      .some((each) => ["time", "work", "labor", "labour"].includes(said(each)))
  );
}

/** The words of an item, whatever it was taken for. */
const said = (item: Item | undefined): string =>
  item?.is === "thing" ? item.thing.text : item?.is === "word" || item?.is === "sign" ? item.text : "";

/** The items with such numbers as money, "per kg" taken into them. Pure. */
export function withUnsigned(all: readonly Item[]): Item[] {
  const items = all.map((item, at) =>
    isPounds(all, at) && item.is === "amount"
      ? { ...item, amount: { ...item.amount, dim: "money" as const, unit: "GBP" } }
      : item,
  );
  const out: Item[] = [];
  for (let at = 0; at < items.length; at++) {
    const item = items[at] as Item;
    const wage =
      item.is === "when" ? (wageAt(items, at, item.when) ?? packedAt(items, at, item.when)) : undefined;
    if (wage) {
      out.push({ is: "amount", amount: wage });
      continue;
    }
    const found = isPlainNumber(item) ? sumAt(items, at, item.amount) : paidPer(items, at);
    out.push(found ? { is: "amount", amount: found.amount } : item);
    if (found) at = found.last;
  }
  return out;
}

/** "15 pounds per hour": pounds of money take what they are for with them. */
function paidPer(items: readonly Item[], at: number): { amount: Amount; last: number } | undefined {
  const item = items[at];
  if (item?.is !== "amount" || item.amount.dim !== "money" || item.amount.per) return undefined;
  if (!/pounds?\.?$/.test(item.amount.text)) return undefined;
  const joint = wordOrSign(items[at + 1]);
  const next = items[at + 2];
  if (joint === "per" || joint === "a" || joint === "an" || joint === "/") {
    const per = joint === "per" ? perOf(next) : unitAlone(next);
    return per && unitRow(per.unit).dim === "time"
      ? { amount: { ...item.amount, per }, last: at + 2 }
      : undefined;
  }
  const behind = items[at + 1];
  return behind?.is === "amount" && /^an hour$/.test(behind.amount.text)
    ? { amount: { ...item.amount, per: { unit: behind.amount.unit, value: 1 } }, last: at + 1 }
    : undefined;
}

const isPlainNumber = (item: Item): item is Item & { is: "amount" } =>
  item.is === "amount" &&
  item.amount.dim === "number" &&
  item.amount.unit === "" &&
  !item.amount.fraction &&
  item.amount.high === undefined;

/** "2 hours work at 18": what the hour is worth, and no hour of the day. */
function wageAt(items: readonly Item[], at: number, when: When): Amount | undefined {
  const said = /^(\d+(?:[.,]\d+)?)$/.exec(when.text)?.[1];
  const ofMoney = items.some((each) =>
    /^(?:ingredients?|packaging|margin|markup|cost|costs|price)$/.test(wordOrSign(each)),
  );
  const before = items[at - 2];
  const hours = before?.is === "amount" && before.amount.dim === "time" && before.amount.unit === "h";
  const worked =
    wordOrSign(items[at - 1]) === "at" &&
    (["work", "labour", "labor", "time"].includes(wordOrSign(before)) || (hours && ofMoney));
  const long = items
    .slice(Math.max(0, at - 5), at)
    .some((each) => each.is === "amount" && each.amount.dim === "time");
  if (!said || !worked || !long || when.half === "am" || when.half === "pm") return undefined;
  const number: Amount = {
    dim: "number",
    value: Number(said.replace(",", ".")),
    unit: "",
    text: said,
    at: [when.at[1] - said.length, when.at[1]],
  };
  return { ...asMoney(number), per: { unit: "h", value: 1 } };
}

/** "$9 ingredients, box at 1.20, 60 % margin": what the box costs, and no hour of the day. */
function packedAt(items: readonly Item[], at: number, when: When): Amount | undefined {
  const sum = /^(\d+[.,]\d\d)$/.exec(when.text)?.[1];
  const ofMoney = items.some(
    (each) =>
      /^(?:ingredients?|margin|markup|costs?|price)$/.test(wordOrSign(each)) ||
      (each.is === "amount" && each.amount.dim === "money"),
  );
  const isPacked = wordOrSign(items[at - 1]) === "at" && packing.test(said(items[at - 2]));
  if (!sum || !ofMoney || !isPacked || when.half === "am" || when.half === "pm") return undefined;
  return asMoney({
    dim: "number",
    value: Number(sum.replace(",", ".")),
    unit: "",
    text: sum,
    at: [when.at[1] - sum.length, when.at[1]],
  });
}

const packing = /^(?:box|boxes|bags?|ribbons?|stickers?|packaging|packing|wrapping)$/;

/** The sum that starts at a place, and the last item that is part of it. */
function sumAt(
  items: readonly Item[],
  at: number,
  amount: Amount,
): { amount: Amount; last: number } | undefined {
  const [joint, next] = [wordOrSign(items[at + 1]), items[at + 2]];
  // "12 a kilo", "6 a litre", where "a kilo" is a weight of its own
  const behind = items[at + 1];
  if (
    behind?.is === "amount" &&
    ["weight", "volume"].includes(behind.amount.dim) &&
    /^an? (?:kilo|kg|pound|lb|litre|liter|pint|quart)/.test(behind.amount.text)
  )
    return {
      amount: { ...asMoney(amount), per: { unit: behind.amount.unit, value: behind.amount.value } },
      last: at + 1,
    };
  // "18 an hour", which is no moment
  if (
    behind?.is === "amount" &&
    behind.amount.dim === "time" &&
    /^an hour$/.test(behind.amount.text) &&
    !/^(?:ago|later|before|after|more|from|and|long|each)$/.test(wordOrSign(items[at + 2]))
  )
    return {
      amount: { ...asMoney(amount), per: { unit: behind.amount.unit, value: behind.amount.value } },
      last: at + 1,
    };
  if (["per", "a", "an", "/"].includes(joint)) {
    const per = joint === "a" || joint === "an" ? unitAlone(next) : perOf(next);
    // "2 a kg" says a price; "14 a minute" might say anything
    const settled =
      per && (unitRow(per.unit).dim === "weight" || (unitRow(per.unit).dim === "time" && isHourly(per)));
    if (per && settled && !["g", "oz"].includes(per.value === 1 ? per.unit : ""))
      return { amount: { ...asMoney(amount), per }, last: at + 2 };
  }
  const isWeight = next?.is === "amount" && next.amount.dim === "weight" && !next.amount.fraction;
  if (joint === "for" && isWeight && hasCents(amount) && isOfGoods(items, at))
    return { amount: asMoney(amount), last: at };
  if (hasCents(amount) && isPaidForWeight(items, at)) return { amount: asMoney(amount), last: at };
  // "hourly rate 15"
  const before = [wordOrSign(items[at - 2]), wordOrSign(items[at - 1])].join(" ");
  return /(?:hourly|hour) (?:rate|wage|pay)$/.test(before)
    ? { amount: { ...asMoney(amount), per: { unit: "h", value: 1 } }, last: at }
    : undefined;
}

const isHourly = ({ unit, value }: { unit: string; value: number }) => unit === "h" && value === 1;

const hasCents = ({ text }: Amount) => /[.,]\d\d$/.test(text);

/** A price stands behind what is bought: "butter is 3.49 for 250 g". */
const isOfGoods = (items: readonly Item[], at: number): boolean => {
  const before = items.slice(Math.max(0, at - 3), at);
  // "2.50 for 250 g butter"
  const behind = items.slice(at + 3, wordOrSign(items[at + 3]) === "of" ? at + 5 : at + 4);
  return [...before, ...behind].some((each) => each.is === "thing" && Boolean(goods(each.thing)));
};

/** "bought 250 g butter for 2.50": a weight of goods, and what was paid for it at the end. */
const isPaidForWeight = (items: readonly Item[], at: number): boolean => {
  const [weight, of, thing] = [items[at - 4], items[at - 3], items[at - 2]];
  const amount = wordOrSign(of) === "of" ? weight : of;
  const next = items[at + 1];
  return (
    wordOrSign(items[at - 1]) === "for" &&
    thing?.is === "thing" &&
    Boolean(goods(thing.thing)) &&
    amount?.is === "amount" &&
    amount.amount.dim === "weight" &&
    (next === undefined ||
      next.is === "sign" ||
      /^(?:and|today|yesterday|again|please)$/.test(wordOrSign(next)))
  );
};

const goods = ({ ingredient, chocolate }: Thing) => ingredient ?? chocolate;

const unitAlone = (item: Item | undefined): Amount["per"] =>
  item?.is === "thing" && item.thing.unit ? { unit: item.thing.unit, value: 1 } : undefined;

/** "kg", "100 g", "hour". */
function perOf(item: Item | undefined): Amount["per"] {
  if (item?.is === "thing") return unitAlone(item);
  if (item?.is === "amount" && ["weight", "time"].includes(item.amount.dim) && item.amount.unit !== "")
    return { unit: item.amount.unit, value: item.amount.value };
  return undefined;
}

const asMoney = (amount: Amount): Amount => ({ ...amount, dim: "money", unit: unsigned });

const wordOrSign = (item: Item | undefined) => (item?.is === "word" || item?.is === "sign" ? item.text : "");
