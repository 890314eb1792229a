/** The oven's heat and the times of a note, each to its step by the words beside it. */
import type { Amount } from "../contract/index.ts";
import { scaleOf } from "../lib/oven.ts";
import { isSign, type Piece } from "../lib/pieces.ts";
import { plain } from "../lib/show.ts";
import { celsius, inBase } from "../lib/units.ts";
import type { Facts } from "./facts.ts";

export interface Found {
  found: Partial<Facts>;
  /** Places of the pieces that were used. */
  taken: number[];
  assumed: string[];
}

/** What an oven for shells can have, in °C; above it a bare number is °F. */
const [coolest_c, hottest_c] = [90, 260];

/** The oven in °C: a temperature in reach of one, or a bare number behind "oven" or "baked at". */
export function ovenIn(some: readonly Piece[]): Found {
  const heats = some.flatMap((each, at) =>
    each.amount?.dim === "temperature" && !isElsewhere(some, at) ? [at] : [],
  );
  const at =
    heats.find((each) => isOven(heatOf(some[each]?.amount).c)) ??
    some.findIndex((_, i) => isBareHeat(some, i));
  const heat = heatOf(some[at]?.amount);
  return isOven(heat.c)
    ? { found: { oven_c: heat.c }, taken: [at], assumed: heat.assumed }
    : { found: {}, taken: [], assumed: [] };
}

const isOven = (value_c: number | undefined): value_c is number =>
  value_c !== undefined && value_c >= coolest_c && value_c <= hottest_c;

/** °C of an amount; where the scale isn't said, an oven's numbers tell it: up to 230 is °C. A range gives its middle. */
function heatOf(amount: Amount | undefined): { c?: number; assumed: string[] } {
  if (!amount) return { assumed: [] };
  const value = amount.high === undefined ? amount.value : (amount.value + amount.high) / 2;
  const middle =
    amount.high === undefined ? [] : [`the middle of ${plain(amount.value)} to ${plain(amount.high)}°`];
  if (amount.unit === "°C" || amount.unit === "°F")
    return { c: celsius(value, amount.unit), assumed: middle };
  const unit = scaleOf({ value });
  return { c: celsius(value, unit), assumed: [...middle, `${plain(value)} ${unit}`] };
}

const elsewhere = new Set([
  "syrup",
  "sugar",
  "whites",
  "cream",
  "milk",
  "water",
  "fridge",
  "room",
  "butter",
  "outside",
  "kitchen",
  "core",
]);
const isElsewhere = (some: readonly Piece[], at: number) =>
  some
    .slice(Math.max(0, at - 4), at)
    .some((each) => elsewhere.has(each.text) || each.thing?.base === "ganache");

/** "oven was at 165", "baked at 150": a number that only an oven has. */
function isBareHeat(some: readonly Piece[], at: number): boolean {
  const amount = some[at]?.amount;
  if (amount?.dim !== "number" || amount.unit !== "" || amount.fraction || amount.of) return false;
  if (amount.value < 100 || amount.value > 500) return false;
  if (isBesideTime(some, at)) return true;
  // "145 fan"
  if (["fan", "convection"].includes(some[at + 1]?.text ?? "")) return true;
  const from = Math.max(0, at - 6);
  const oven = some
    .slice(from, at)
    .findLastIndex(
      (each) => each.text === "oven" || each.thing?.step === "bake" || each.thing?.step === "preheat",
    );
  return oven >= 0 && some.slice(from + oven, at).every((each) => !isSign(each) || each.text === ":");
}

/** Heats that stand beside a time with no word of the oven, in °C and in °F: 100 or 200 may be macarons, or whites. */
const bareHeats = [
  [130, 190],
  [265, 375],
] as const;

/** "150 14 min", "14 min at 150", "145 for 13 min": the heat and the time of a bake, side by side. */
function isBesideTime(some: readonly Piece[], at: number): boolean {
  const value = some[at]?.amount?.value ?? 0;
  if (!bareHeats.some(([low, high]) => value >= low && value <= high)) return false;
  const isBake = (piece: Piece | undefined) =>
    piece?.amount?.dim === "time" && minutesOf(piece.amount) >= 5 && minutesOf(piece.amount) <= 30;
  const behind = /^(?:for|,|x)$/.test(some[at + 1]?.text ?? "") ? at + 2 : at + 1;
  const before = /^(?:at|@|,)$/.test(some[at - 1]?.text ?? "") ? at - 2 : at - 1;
  // "14 min, 150 pieces" counts something
  return (isBake(some[behind]) && behind <= at + 2) || (some[at - 1]?.text !== "," && isBake(some[before]));
}

const minutesOf = (amount: Amount) =>
  inBase(amount.high === undefined ? amount.value : (amount.value + amount.high) / 2, amount.unit);

/** Longer than this nobody bakes shells: the time is something else's. */
const longestBake_min = 120;

/** Baking and resting in min, maturing in h; `loose` are times of no step that was named. */
export function timesIn(some: readonly Piece[]): Found & { loose: number[] } {
  const out: Found & { loose: number[] } = { found: {}, taken: [], assumed: [], loose: [] };
  some.forEach((piece, at) => {
    const minutes = piece.amount?.dim === "time" ? minutesOf(piece.amount) : bareMinutes(some, at);
    if (minutes === undefined || minutes <= 0) return;
    // "1 min too long" says by how much, not how long
    const [next, behind] = [some[at + 1]?.text ?? "", some[at + 2]?.text ?? ""];
    if (next === "too" && /^(?:long|short|much|little|early|late)$/.test(behind)) return;
    if (/^(?:longer|shorter|over|under|late|early|less|more|extra)$/.test(next)) return;
    // "needed another 2 min"
    if (/(?:^| )(?:another|more|extra|further|less) /.test(piece.text)) return;
    if (/^(?:another|extra|further|by)$/.test(some[at - 1]?.text ?? "")) return;
    out.taken.push(at);
    if (piece.amount?.dim !== "time") out.assumed.push(`${plain(minutes)} min`);
    const step = stepOf(some, at, minutes);
    if (step === "bake") out.found.bake_min ??= minutes <= longestBake_min ? minutes : undefined;
    else if (step === "rest") out.found.rest_min ??= minutes;
    else if (step === "mature") out.found.mature_h ??= minutes / 60;
    else if (step === undefined) out.loose.push(minutes);
  });
  return out;
}

/** "rested 40", "baked 14 at 150": minutes. Behind "baked" alone a bare number may count macarons. */
function bareMinutes(some: readonly Piece[], at: number): number | undefined {
  const amount = some[at]?.amount;
  if (
    amount?.dim !== "number" ||
    amount.unit !== "" ||
    amount.fraction ||
    amount.of ||
    some[at + 1]?.text === "of"
  )
    return undefined;
  // "rested for 40", "and rest was 40"
  const isLinked = /^(?:for|was|were|is)$/.test(some[at - 1]?.text ?? "");
  const step = (isLinked ? some[at - 2] : some[at - 1])?.thing?.step;
  const heat = some[at + 2];
  const isHot =
    some[at + 1]?.text === "at" && (heat?.amount?.dim === "temperature" || isBareHeat(some, at + 2));
  // "baked 148 for 14"
  const before = some[at - 2];
  const isFor =
    some[at - 1]?.text === "for" && (before?.amount?.dim === "temperature" || isBareHeat(some, at - 2));
  if (isFor && amount.value >= 5 && amount.value <= 30) return amount.value;
  // "24 macs, rested 30 baked 15": how many there were is said already
  const counted = some.some(
    (each, i) =>
      each.amount?.of?.count === "macarons" ||
      (each.amount?.dim === "number" && some[i + 1]?.text === "of" && some[i + 2]?.text === "them"),
  );
  const next = some[at + 1];
  const ends = next === undefined || isSign(next) || next.text === "and";
  const isPlain =
    (ends || next.thing?.symptom !== undefined || /^(?:feet|tops|shells|bottoms|all)$/.test(next.text)) &&
    amount.value >= 8 &&
    amount.value <= 25;
  // "dried 40 min, baked 15": what is told of the bake are its times
  if (step === "bake" && isPlain && (counted || tellsTimes(some, at))) return amount.value;
  if (isStanding.test(some[at - 1]?.text ?? "") && ends && amount.value >= 10 && amount.value <= 240)
    return amount.value;
  if (step === "rest" && amount.value >= 5 && amount.value <= 240) return amount.value;
  return step === "bake" && isHot && amount.value >= 5 && amount.value <= 30 ? amount.value : undefined;
}

/** A rest or the oven's heat is told beside it, each with a number: "dried 40 min", "rested 30", "oven 150". */
const tellsTimes = (some: readonly Piece[], at: number): boolean =>
  some.some((each, i) => {
    const { amount } = each;
    if (i === at || !amount || (amount.fraction && amount.dim !== "time")) return false;
    const before = some[i - 1];
    const isRest = before?.thing?.step === "rest" || isStanding.test(before?.text ?? "");
    return (
      amount.dim === "temperature" ||
      (isRest && (amount.dim === "time" || amount.dim === "number")) ||
      (amount.dim === "time" && some[i + 1]?.thing?.step === "rest") ||
      isBareHeat(some, i)
    );
  });

/** What shells do while their skin forms. */
const isStanding = /^(?:dried|drying|sat|stood|standing|sitting)$/;

/** "150 14 min rest 35", "14 min at 150, rested 35": right beside the heat, and the step behind has a number of its own. */
function isOfHeat(some: readonly Piece[], at: number): boolean {
  const isHeat = (i: number) => some[i]?.amount?.dim === "temperature" || isBareHeat(some, i);
  const before = /^(?:for|,)$/.test(some[at - 1]?.text ?? "") ? at - 2 : at - 1;
  const behind = /^(?:at|@)$/.test(some[at + 1]?.text ?? "") ? at + 2 : at + 1;
  const own = some[at + 1]?.thing?.step;
  const isOther = own !== undefined && own !== "bake" && some[at + 2]?.amount === undefined;
  const named = some[at - 1]?.thing?.step ?? some[at - 2]?.thing?.step;
  return !isOther && (named === undefined || named === "bake") && (isHeat(before) || isHeat(behind));
}

/** The step that a time belongs to: named just before it, else just behind it, else baking where the oven's heat is near. */
function stepOf(some: readonly Piece[], at: number, minutes: number): string | undefined {
  if (isOfHeat(some, at) && minutes >= 5 && minutes <= 30) return "bake";
  for (let back = at - 1; back >= 0 && back >= at - 6; back--) {
    const each = some[back] as Piece;
    // "13 min in the oven and 55 min rest": its own step stands right behind it
    const own = some[at + 1]?.thing?.step;
    if (each.text === "and" && own) return own;
    if (each.thing?.step) return each.thing.step === "preheat" ? "other" : each.thing.step;
    // "dried 40 min", "sat 40 min before the oven"
    if (isStanding.test(each.text)) return "rest";
    if (each.amount?.dim === "time") break;
    if (isSign(each) && some[back - 1]?.amount?.dim !== "temperature") break;
  }
  for (let next = at + 1; next < some.length && next <= at + 5; next++) {
    const each = some[next] as Piece;
    if (each.thing?.step) return each.thing.step;
    if (["fridge", "overnight"].includes(each.text) && minutes >= 240) return "mature";
    if (each.text === "oven") return "bake";
    if (isSign(each) || each.text === "and" || each.amount?.dim === "time") break;
  }
  const near = some.slice(Math.max(0, at - 3), at + 4);
  return near.some((each) => each.amount?.dim === "temperature" || each.text === "oven") ? "bake" : undefined;
}
