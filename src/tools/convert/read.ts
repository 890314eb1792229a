/** Reads conversions: what of what is to be turned into which unit. Each amount with its target is one draft. */
import type { Amount, Memory, Reading, Thing } from "../contract/index.ts";
import { isWhitesCount, pointsBack } from "../lib/find.ts";
import { unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { withHalves } from "./halves.ts";
import { longerName, mannerIn, nameOf, unknownBehind } from "./named.ts";
import { ovenWanted } from "./oven.ts";
import { sumOf } from "./sum.ts";

type Draft = Partial<ConvertInputs>;

const measured = new Set(["weight", "volume", "length", "time", "temperature"]);
const byNumber = new Set(["whites", "egg", "egg yolk", "pasteurised whites"]);

/** The drafts of a sentence, what it leaves unsaid taken from the conversion before it. */
export function readConvert(reading: Reading, memory: Memory): Draft[] {
  const before =
    memory.last?.tool === "convert" && (memory.follows || memory.slot)
      ? (memory.last.inputs as Draft)
      : undefined;
  const answer = memory.slot && before ? answerTo(memory.slot, reading, before) : undefined;
  if (answer) return [answer];
  if (reading.amounts.some((each) => each.dim === "money")) return [{ exchange: true }];
  const sum = sumOf(reading);
  if (sum && !(before && !before.sum && isLoneFraction(reading))) return [{ ...sum }];
  const orders = ordersIn(reading);
  if (before && orders.length > 0) {
    const following = orders.filter((order) => continues(before, order));
    return following.length > 0 ? following.map((order) => follow(before, order)) : [{}];
  }
  if (orders.length > 0) return orders;
  if (before) return [changed(before, reading)];
  const to = targets(reading)[0];
  return to && pointsBack(reading) ? [{ that: true, to }] : to ? [{ to }] : [{}];
}

const isLoneFraction = (reading: Reading) =>
  reading.amounts.length === 1 && Boolean(reading.amounts[0]?.fraction);

/** The answer to a question of ours: the ingredient, how it is measured, the unit. */
function answerTo(slot: string, reading: Reading, before: Draft): Draft | undefined {
  const thing = reading.things.find((each) => each.ingredient);
  const manner = mannerIn(reading, thing);
  if (slot === "ingredient") {
    if (before.ingredient === "chocolate" && /(?:^| )milk</.test(reading.mask))
      return { ...before, ingredient: "milk chocolate" };
    if (thing) return { ...before, ...nameOf(thing), ...(manner ? { manner } : {}) };
    const words = reading.mask
      .replace(/<[^>]*>/g, "")
      .replaceAll("_", " ")
      .replace(/^(?:its|it is|of|the|some|oh|um|sorry) /, "");
    return reading.amounts.length === 0 && words ? { ...before, unknown: words } : undefined;
  }
  if (slot === "manner") return manner ? { ...before, manner } : undefined;
  if (slot === "unit" && before.value !== undefined) {
    const unit = targets(reading)[0] ?? reading.amounts.find((each) => measured.has(each.dim))?.unit;
    return unit ? { ...before, unit } : undefined;
  }
  return undefined;
}

/** Units that stand alone in the sentence: "in grams", "how many cups". */
const targets = (reading: Reading): string[] => unitThings(reading).map((each) => each.unit as string);

const unitThings = (reading: Reading): Thing[] =>
  reading.things.filter((each) => each.unit && each.unit !== "%" && measured.has(unitRow(each.unit).dim));

interface Group {
  amounts: Amount[];
  targets: string[];
  /** The unit stood first: "how many grams is a cup of flour and a cup of honey". */
  lead: boolean;
}

/** Amounts and target units in the order said; a target serves the amounts before it, or those behind it. */
function groupsIn(reading: Reading): Group[] {
  const amounts = withHalves(reading)
    .filter(convertible)
    .map((amount) => ({ at: amount.at[0], amount, unit: undefined }));
  const inside = (at: number) => amounts.some(({ amount }) => at >= amount.at[0] && at < amount.at[1]);
  const units = unitThings(reading)
    .filter((thing) => !inside(thing.at[0]))
    .map((thing) => ({ at: thing.at[0], amount: undefined, unit: thing.unit }));
  const groups: Group[] = [];
  for (const { amount, unit } of [...amounts, ...units].sort((a, b) => a.at - b.at)) {
    const group = groups.at(-1);
    if (amount) {
      if (!group || (group.targets.length > 0 && group.amounts.length > 0))
        groups.push({
          amounts: [amount],
          targets: group?.lead ? group.targets : [],
          lead: group?.lead ?? false,
        });
      else group.amounts.push(amount);
    } else if (unit) {
      if (!group || (group.lead && group.amounts.length > 0))
        groups.push({ amounts: [], targets: [unit], lead: true });
      else group.targets.push(unit);
    }
  }
  return groups.flatMap((group, i) => settle(group, groups[i + 1]));
}

/** "the recipe is in celsius, 145 c, my dial is fahrenheit": a unit that the amount has already is no target. */
function settle(group: Group, next: Group | undefined): Group[] {
  if (group.amounts.length === 0)
    return group.lead && next === undefined && group.targets.length > 0 ? [group] : [];
  const own = group.targets.filter((unit) => !group.amounts.every((amount) => amount.unit === unit));
  if (own.length > 0 || group.targets.length === 0) return [{ ...group, targets: own }];
  return [{ ...group, targets: next && next.amounts.length === 0 ? next.targets : group.targets }];
}

const convertible = (amount: Amount): boolean => measured.has(amount.dim) || isEggs(amount);

const isEggs = (amount: Amount) =>
  isWhitesCount(amount) ||
  (amount.dim === "number" &&
    amount.unit === "" &&
    !amount.fraction &&
    byNumber.has(amount.of?.ingredient ?? ""));

function ordersIn(reading: Reading): Draft[] {
  const groups = groupsIn(reading);
  const oven = ovenWanted(reading);
  const orders = groups.flatMap(({ amounts, targets: to }) => {
    const fitting = amounts.filter((amount) => to.length === 0 || to.some((unit) => canTurn(amount, unit)));
    return (fitting.length > 0 ? fitting : amounts).flatMap((amount) =>
      (to.length ? to : [undefined]).map((unit) => orderOf(reading, amount, unit, oven)),
    );
  });
  if (orders.length > 0) return orders;
  return bareOrders(
    reading,
    groups.flatMap((group) => group.targets),
    oven,
  );
}

/** "350 in celsius", "180 conventional to fan": a number whose unit the target gives away. */
function bareOrders(reading: Reading, to: string[], oven: Draft["oven"]): Draft[] {
  const bare = reading.amounts.filter((each) => each.dim === "number" && each.unit === "" && !each.of?.count);
  const heat = to.find((unit) => unitRow(unit).dim === "temperature");
  if (bare.length !== 1 || (to.length === 0 && !oven)) return [];
  const amount = bare[0] as Amount;
  return [
    {
      value: amount.value,
      ...(amount.high !== undefined ? { high: amount.high } : {}),
      ...(heat || oven ? { unit: "°" } : {}),
      ...(to[0] ? { to: to[0] } : {}),
      ...(oven ? { oven } : {}),
      ...(heat || oven ? {} : thingOf(reading, amount)),
    },
  ];
}

const kind = (unit: string) => unitRow(unit).dim;

/** Same kind, or weight and volume of something. */
function canTurn(amount: Amount, to: string): boolean {
  const from = isEggs(amount) ? "weight" : amount.dim;
  return (
    from === kind(to) || (["weight", "volume"].includes(from) && ["weight", "volume"].includes(kind(to)))
  );
}

function orderOf(reading: Reading, amount: Amount, to: string | undefined, oven: Draft["oven"]): Draft {
  const range = amount.high !== undefined ? { high: amount.high } : {};
  const target = to ? { to } : {};
  if (amount.dim === "temperature")
    return { value: amount.value, ...range, unit: amount.unit, ...target, ...(oven ? { oven } : {}) };
  if (isEggs(amount))
    return { value: amount.value, ...range, unit: "large", ...nameOf(amount.of as Thing), ...target };
  const named = ["weight", "volume"].includes(amount.dim) ? thingOf(reading, amount) : {};
  return { value: amount.value, ...range, unit: amount.unit, ...target, ...named };
}

/** What an amount is of: what it is bound to, the only ingredient in the sentence, or words that no table knows. */
function thingOf(reading: Reading, amount: Amount): Draft {
  const owned = reading.amounts.filter((each) => each !== amount).map((each) => each.of);
  const loose = reading.things.filter((each) => each.ingredient && !owned.includes(each));
  const thing = amount.of ?? (loose.length === 1 ? loose[0] : undefined);
  const longer = thing && longerName(reading, thing);
  if (longer) return { unknown: longer };
  if (thing) {
    const manner = mannerIn(reading, thing, amount);
    return { ...nameOf(thing), ...(manner ? { manner } : {}) };
  }
  const unknown = unknownBehind(reading, amount);
  return unknown ? { unknown } : {};
}

/** A time of which no unit is asked belongs to a timer, unless times are what was turned before. */
const continues = (before: Draft, order: Draft): boolean =>
  order.to !== undefined ||
  !order.unit ||
  order.unit === "large" ||
  kind(order.unit) !== "time" ||
  (before.unit !== undefined && before.unit !== "large" && kind(before.unit) === "time");

/** A new amount after a conversion: its target and its ingredient go on, where they still make sense. */
function follow(before: Draft, order: Draft): Draft {
  const from = order.unit === "large" ? "weight" : order.unit ? kind(order.unit) : undefined;
  const earlier =
    before.to ??
    (before.unit && from && before.unit !== "large" && kind(before.unit) !== from ? before.unit : undefined);
  const back =
    before.unit && before.to && before.to === order.unit && before.unit !== "large" && before.unit !== "°"
      ? before.unit
      : undefined;
  const to = order.to ?? (order.oven ? undefined : (back ?? earlier));
  const named = order.ingredient || order.unknown;
  const crossing = to && from && kind(to) !== from;
  const fits =
    to &&
    from &&
    (kind(to) === from ||
      (["weight", "volume"].includes(from) &&
        ["weight", "volume"].includes(kind(to)) &&
        (named || before.ingredient)));
  const kept =
    !named && before.ingredient && (crossing || !to) && ["weight", "volume"].includes(from ?? "")
      ? {
          ingredient: before.ingredient,
          ...(before.manner && !order.manner ? { manner: before.manner } : {}),
        }
      : {};
  const oven = from === "temperature" && !order.to && before.oven && !order.oven ? { oven: before.oven } : {};
  return { ...kept, ...oven, ...order, ...(to && (order.to || fits) && to !== order.unit ? { to } : {}) };
}

const turnWords = new Set(
  "and or but what whats about how if its it is for with the a of in to as same now then instead not no sorry actually make that so ok oh only use try say please pls them they were was i mean meant by both ? , .".split(
    " ",
  ),
);

/** Nothing but the new thing and words of turning to it: "what about honey", "and if it's sifted?". */
const turnsTo = (reading: Reading) =>
  reading.mask.split(" ").every((word) => /<[^>]*>$/.test(word) || turnWords.has(word)) &&
  !reading.things.some((each) => each.base || each.count);

/** A follow-up without an amount of its own: "and in ounces", "and sifted?", "what about honey", "and 400?". */
function changed(before: Draft, reading: Reading): Draft {
  if (!turnsTo(reading) && !ovenWanted(reading) && targets(reading).length === 0) return {};
  const to = targets(reading)[0];
  const thing = turnsTo(reading) ? reading.things.find((each) => each.ingredient) : undefined;
  const manner = mannerIn(reading, thing);
  const oven = ovenWanted(reading);
  const bare = reading.amounts.filter((each) => each.dim === "number" && each.unit === "" && !each.of);
  const value = bare.length === 1 ? bare[0]?.value : undefined;
  if (before.sum !== undefined)
    return value === undefined
      ? {}
      : { ...before, sum: before.sum.replace(/\d[\d.]*(?=\D*$)/, String(value)) };
  const { ingredient, manner: how, unknown, ...rest } = before;
  const named = thing
    ? nameOf(thing)
    : {
        ...(ingredient ? { ingredient } : {}),
        ...(unknown ? { unknown } : {}),
        ...(how ? { manner: how } : {}),
      };
  const said = {
    ...(to ? { to } : {}),
    ...(manner ? { manner } : {}),
    ...(value !== undefined ? { value, high: undefined } : {}),
    ...(oven && before.unit && kind(before.unit) === "temperature" ? { oven } : {}),
  };
  return thing || Object.keys(said).length > 0 ? { ...rest, ...named, ...said } : {};
}
