/** "and at $11 a kilo", "and 400 g", behind what things cost: the one thing's other figure stays. */
import type { Memory, Reading } from "../contract/index.ts";
import { sameIngredient } from "../lib/lines.ts";
import { inBase } from "../lib/units.ts";
import type { Draft, Turn } from "./draft.ts";
import type { Sum } from "./money.ts";

interface PerGram {
  at: readonly [number, number];
  price_per_g: number;
  pack_g?: number;
}

/** "and at 9", behind so much a kilo. */
const bareAt =
  /^(?:(?:and|or|so|ok|now|then|but|what about|how about|what if|if|if its|say|try|,) )*at (\d+(?:\.\d+)?)(?: (?:then|instead|please))*[ ?.]*$/;

/**
 * The line before at another price or of another weight. Of several lines nobody knows which one is meant: it is asked.
 * @param priced the prices of a weight that were said, none of them with a name
 */
export function ofLineBefore(
  { amounts, things, text }: Reading,
  priced: readonly PerGram[],
  money: readonly Sum[],
  { last, follows, slot }: Memory,
): Draft | undefined {
  const before = (last?.tool === "cost" ? last.inputs : {}) as Draft;
  const { lines = [], margin_percent, markup_percent, price, currency } = before;
  if (!follows || slot !== undefined || things.length > 0 || price !== undefined) return undefined;
  if (margin_percent !== undefined || markup_percent !== undefined) return undefined;
  const [line, ...others] = lines;
  if (line?.price_per_g === undefined) return undefined;
  const same = currency !== undefined && money.every((each) => each.currency === "") ? { currency } : {};
  const [only, ...more] = priced;
  const bare = money.length === 0 && amounts.length === 1 ? bareAt.exec(text)?.[1] : undefined;
  const per =
    only && more.length === 0 && money.length === 1
      ? { price_per_g: only.price_per_g, ...(only.pack_g === undefined ? {} : { pack_g: only.pack_g }) }
      : bare !== undefined && line.pack_g === undefined
        ? { price_per_g: Number(bare) / 1000 }
        : undefined;
  if (per && others.length > 0) return { ...same, lines, of_which: per };
  const { pack_g: _pack, ...rest } = line;
  if (per) return { ...same, lines: [{ ...rest, ...per }] };
  const [weight, ...heavier] = amounts;
  const isWeight = weight?.dim === "weight" && weight.high === undefined && !weight.fraction;
  return money.length === 0 && heavier.length === 0 && others.length === 0 && isWeight
    ? { ...same, lines: [{ ...line, grams: inBase(weight.value, weight.unit) }] }
    : undefined;
}

/** "the butter", where it was asked which line the new price is of. */
export function pricedAnew({ reading, before: { of_which, ...before } }: Turn): Draft | undefined {
  const named = reading.things.find((each) => each.ingredient ?? each.chocolate);
  const name = named?.chocolate ? `${named.chocolate} chocolate` : named?.ingredient;
  if (!of_which || !name || !before.lines?.some((line) => sameIngredient(line.name, name))) return undefined;
  const lines = before.lines.map(({ pack_g, ...line }) =>
    sameIngredient(line.name, name)
      ? { ...line, ...of_which }
      : { ...line, ...(pack_g === undefined ? {} : { pack_g }) },
  );
  return { ...before, lines };
}
