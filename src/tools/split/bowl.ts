/** The bowl that is split: its weight as it was said or lies on the table, and what it weighs empty. */
import type { Amount, Memory, Reading } from "../contract/index.ts";
import { bareNumbers, pointsBack, says } from "../lib/find.ts";
import { gramsOf, inBase } from "../lib/units.ts";
import type { Draft } from "./said.ts";

/** The bowl: the weight of batter or filling, the first bare weight, or what lies on the table. */
export function bowlOf(reading: Reading, memory: Memory): { draft: Draft; amount?: Amount } {
  const mixes = new Set(reading.things.flatMap((each) => each.base ?? []));
  // "half for ganache, half for buttercream": the parts, and not the bowl
  const mix = mixes.size > 1 ? undefined : [...mixes][0];
  const weights = reading.amounts.filter((each) => each.dim === "weight");
  // "450 buttercream g": a number of a mix beyond any number of bowls is its weight
  const bare = reading.amounts.find((each) => each.dim === "number" && each.of?.base && each.value > 40);
  if (bare && weights.length === 0)
    return { draft: { total_g: bare.value, thing: bare.of?.base }, amount: bare };
  // "half green, half plain, it weighs 520"
  const weighed = reading.amounts.find((each) => each.dim === "number" && !each.fraction && each.value > 40);
  if (weighed && weights.length === 0 && says(reading, /weighs? (?:about |around )?\S*<number>/))
    return { draft: { total_g: weighed.value, ...(mix ? { thing: mix } : {}) }, amount: weighed };
  // "split the 690 a third mint, rest plain"
  const named = reading.amounts.find(
    (each) =>
      each.dim === "number" &&
      each.unit === "" &&
      each.value > 40 &&
      /\bsplit (?:the|that|my|those) $/.test(reading.text.slice(0, each.at[0])),
  );
  if (named && weights.length === 0)
    return { draft: { total_g: named.value, ...(mix ? { thing: mix } : {}) }, amount: named };
  // "split batter 3 ways 612"
  const [large, ...larger] = bareNumbers(reading).filter((each) => each.value > 100);
  if (large && mix && larger.length === 0 && weights.length === 0 && bareNumbers(reading).length <= 2)
    return { draft: { total_g: large.value, thing: mix }, amount: large };
  // "split 480 in 3", with no mix named
  const parts = reading.amounts.filter((each) => each !== large);
  if (
    large &&
    parts.length === 1 &&
    parts[0]?.dim === "number" &&
    weights.length === 0 &&
    says(
      reading,
      /\S*<number> (?:split |divided? )?(?:(?:in|into|between|by|among) )?\S*<number>(?: (?:equal )?\S*count=bowls\S*)?/,
    )
  )
    return { draft: { total_g: large.value }, amount: large };
  // "150 g, 150 g and 100 g, out of 400 g"
  const outOf =
    weights.length > 2
      ? weights.findLast(({ at }) => /\bout of (?:(?:the|my|a|all) )?$/.test(reading.text.slice(0, at[0])))
      : undefined;
  const amount =
    outOf ??
    weights.find((each) => each.of?.base) ??
    weights.find((each) => !each.of) ??
    (weights.length === 1 && !memory.follows ? weights[0] : undefined);
  if (amount)
    return {
      draft: {
        total_g: inBase(amount.value, amount.unit),
        ...((amount.of?.base ?? mix) ? { thing: amount.of?.base ?? mix } : {}),
      },
      amount,
    };
  // "half the batter yellow", behind batter and filling
  const own = mix === undefined ? undefined : memory.table.masses?.[mix];
  const table = own === undefined ? wholeOnTable(memory) : { grams: own, thing: mix ?? "" };
  const fits =
    table &&
    memory.last?.tool !== "split" &&
    ((pointsBack(reading) && (!mix || table.thing === mix || ["filling", ""].includes(table.thing))) ||
      (mix && (table.thing === mix || table.thing === "filling")) ||
      // "four ways instead", behind what goes into each
      (!mix && memory.last?.tool === "dose" && says(reading, /\S*<number> ways?\S*/)) ||
      // "two colors even": what has just been worked out is colored
      (!mix && table.thing === "batter" && /\bcolou?rs\b/.test(reading.text)) ||
      // "half raspberry half plain", right behind a filling
      (!mix && ["buttercream", "ganache", "fill"].includes(memory.last?.tool ?? "")));
  if (fits) return { draft: { total_g: table.grams, thing: mix ?? table.thing } };
  return { draft: mix ? { thing: mix } : {} };
}

/** What lies on the table; of a part that was spoken of, the bowl that it is a part of. */
function wholeOnTable({ table, last }: Memory): Memory["table"]["mass"] {
  const { mass, parts = [] } = table;
  const isPart = parts.length > 1 && parts.some((each) => Math.abs(each.grams - (mass?.grams ?? 0)) < 1e-6);
  return mass && isPart && last?.tool === "dose"
    ? { ...mass, grams: parts.reduce((sum, each) => sum + each.grams, 0) }
    : mass;
}

export const asksScale = (reading: Reading): boolean =>
  says(
    reading,
    /(?:what|how much) .*(?:read|reads|say|says|show|shows|be on the scale|weigh with)|(?:scale|bowls?\S*) (?:\S+ )?(?:reads?|says?|shows?)/,
  );

/** "if the bowls weigh 120 g", "the bowl was 354 empty": g of one empty bowl. */
export function emptyBowl(reading: Reading): number | undefined {
  const amount = reading.amounts.find(
    (each) =>
      (each.dim === "weight" || (each.dim === "number" && each.unit === "" && each.value > 20)) &&
      (/\bbowls (?:are|were|weigh|weighed|each weigh)(?: (?:only|about|just))? $/.test(
        reading.text.slice(0, each.at[0]),
      ) ||
        /^ empty\b/.test(reading.text.slice(each.at[1]))),
  );
  return amount && gramsOf(amount);
}

/** "same split for 480": more than any number of bowls, a new weight for the shares said before. */
export const newTotal = (reading: Reading, memory: Memory): number | undefined => {
  // "actually 150 pink": a part, not the bowl
  if (reading.amounts[0]?.of?.color) return undefined;
  const shares = memory.last?.tool === "split" ? ((memory.last.inputs as Draft).weights ?? []) : [];
  // "make the coffee 170"
  if (reading.things.some((each) => shares.some(({ name }) => name === (each.color ?? each.taste))))
    return undefined;
  const before = memory.follows && memory.last?.tool === "split" ? (memory.last.inputs as Draft) : undefined;
  const [only, ...others] = reading.amounts;
  // "no 45", behind "60 % pink": the share, put right
  if (before?.percents && (only?.value ?? 0) < 100 && !/\b(?:for|of|from)\b/.test(reading.text))
    return undefined;
  return before?.total_g !== undefined && only?.dim === "number" && others.length === 0 && only.value > 40
    ? only.value
    : undefined;
};
