/** The orders of a sentence: each amount that can be turned, with the unit it is wanted in and what it is of. */
import type { Amount, Reading, Span, Thing } from "../contract/index.ts";
import { isWhitesCount } from "../lib/find.ts";
import { ovenWanted } from "../lib/oven.ts";
import { unitRow } from "../lib/units.ts";
import type { ConvertInputs } from "./convert.ts";
import { withSharedUnits } from "./halves.ts";
import { longerName, mannerIn, nameOf, unknownBefore, unknownBehind } from "./named.ts";
import { scalesOf } from "./which-scale.ts";

type Draft = Partial<ConvertInputs>;

/** Kinds of amounts that have units to turn between. */
export const measured: ReadonlySet<string> = new Set(["weight", "volume", "length", "time", "temperature"]);
const byNumber = new Set(["whites", "egg", "egg yolk", "pasteurised whites"]);

/** Units that stand alone in the sentence: "in grams", "how many cups". */
export const targets = (reading: Reading): string[] => unitThings(reading).map((each) => each.unit as string);

const unitThings = (reading: Reading): Thing[] =>
  reading.things.filter(
    (each) =>
      each.unit &&
      each.unit !== "%" &&
      measured.has(unitRow(each.unit).dim) &&
      !isTool(each.unit, reading, each.at),
  );

const tools = new Set(["cup", "tbsp", "tsp"]);

/**
 * "my measuring cup is sticky", "the cup is in the dishwasher", "i only have a tablespoon": a thing in the drawer, no
 * measure and no unit that is wanted. "How many measuring cups" and "in cups" want one.
 */
function isTool(unit: string, { text }: Reading, [from, to]: Span): boolean {
  if (!tools.has(unit)) return false;
  const before = text.slice(0, from);
  const asks = /\b(?:how (?:many|much)|in|into|to|as)(?: (?:the|my|our|us|american))*(?: measuring)? $/.test(
    before,
  );
  if (asks) return false;
  const isOne = !text.slice(from, to).endsWith("s");
  return (
    /\bmeasuring $/.test(before) ||
    /\b(?:my|our|her|his) (?:\w+ )?$/.test(before) ||
    /^ measures?\b/.test(text.slice(to)) ||
    (isOne && /\b(?:the|that|this) (?:\w+ )?$/.test(before))
  );
}

/** "i only have a tablespoon", with nothing in it: no amount. */
const isToolAlone = (amount: Amount, { text }: Reading): boolean =>
  tools.has(amount.unit) &&
  amount.of === undefined &&
  /^an? \w+$/.test(amount.text) &&
  /\b(?:have|got|own|find|found|lost|using|need|bought|broke) $/.test(text.slice(0, amount.at[0])) &&
  !/^ (?:of|and)\b/.test(text.slice(amount.at[1]));

/** "3 tbsp butter in g and 300 g dark ganache": a mix beside an ingredient that is turned is another matter. */
const isMixBeside = (amount: Amount, { amounts }: Reading): boolean =>
  amount.of?.base !== undefined &&
  amounts.some((each) => each.of?.ingredient !== undefined && each.of.base === undefined);

interface Group {
  amounts: Amount[];
  targets: string[];
  /** The unit stood first: "how many grams is a cup of flour and a cup of honey". */
  lead: boolean;
}

/** Amounts and target units in the order said; a target serves the amounts before it, or those behind it. */
function groupsIn(reading: Reading): Group[] {
  const amounts = withSharedUnits(reading)
    .filter((amount) => convertible(amount) && !isToolAlone(amount, reading) && !isMixBeside(amount, reading))
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

/** One draft an amount and target; none where nothing can be turned. */
export function ordersIn(reading: Reading): Draft[] {
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
  const scales =
    heat && !oven
      ? scalesOf(
          reading,
          to.filter((unit) => unitRow(unit).dim === "temperature"),
        )
      : undefined;
  return [
    {
      value: amount.value,
      ...(amount.high !== undefined ? { high: amount.high } : {}),
      ...(heat || oven ? { unit: "°" } : {}),
      ...(to[0] ? { to: to[0] } : {}),
      ...scales,
      ...(oven ? { oven } : {}),
      ...(heat || oven ? {} : thingOf(reading, amount)),
    },
  ];
}

/** The dimension of a unit. */
export const kind = (unit: string) => unitRow(unit).dim;

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
  // "my ganache weighs 12 oz": a mix has a weight, whatever it is of
  if (amount.dim === "weight" && thing?.base && !thing.ingredient) return { mix: thing.base };
  const longer = thing && longerName(reading, thing);
  if (longer) return { unknown: longer };
  if (thing) {
    const manner = mannerIn(reading, thing, amount);
    return { ...nameOf(thing), ...(manner ? { manner } : {}) };
  }
  const unknown = unknownBehind(reading, amount) ?? unknownBefore(reading);
  return unknown ? { unknown } : {};
}
