/** What a question about money takes over from the one before, and what it changes in it. */
import type { Memory } from "../contract/index.ts";
import { sameIngredient } from "../lib/lines.ts";
import { aimOf, aims } from "./aim.ts";
import type { Draft } from "./draft.ts";

/**
 * What the turn before still says. New lines start afresh; a new cost or price replaces what it makes void; a bare
 * "at 50 %?" keeps the rest. Without a cost of its own a question takes the one that was last spoken of.
 */
export function carry(before: Draft, said: Draft, follows: boolean): Draft {
  // "no, ingredients 11": the packaging and the hours stay
  const mended =
    follows &&
    before.ingredients !== undefined &&
    said.ingredients !== undefined &&
    Object.keys(said).every((key) => ["ingredients", "bare_sign", "currency"].includes(key));
  if (mended) return { ...before, ...said };
  const own =
    said.lines || said.cost !== undefined || said.ingredients !== undefined || said.formula !== undefined;
  if (!follows && own) return said;
  // "almond flour 15 a kilo, sugar 1.20, ..., what do 30 cost": a sum of its own, whatever was spent before
  const isAnew = (said.prices?.length ?? 0) > 1 && said.macarons !== undefined && !before.lines;
  if (isAnew) return { ...(before.currency ? { currency: before.currency } : {}), ...said };
  const { price, price_for, want: _want, was: _was, ...others } = before;
  const parts: Draft = Object.fromEntries(
    Object.entries(others).filter(([key]) => !aims.some((each) => each === key)),
  );
  const aim = aimOf(before);
  const newShare = aimOf(said) !== undefined;
  const kept: Draft =
    said.lines || said.formula !== undefined
      ? {}
      : own
        ? { ...(parts.currency && !said.currency ? { currency: parts.currency } : {}) }
        : withPrices(parts, said);
  // "65 %: what may it cost at most?" "70 %?": the price stays, since it was the cost that was asked
  const asksCost = follows && isOfCost(before) && !own;
  const keptPrice = price !== undefined && (!newShare || asksCost) && !said.lines ? { price } : {};
  const keptFor = price_for !== undefined && !newShare && !own ? { price_for } : {};
  const keptShare =
    !newShare && (said.price === undefined || asksCost) && !said.lines && aim ? { [aim]: before[aim] } : {};
  return {
    ...kept,
    ...keptPrice,
    ...keptFor,
    ...keptShare,
    ...ofMacarons(before, own),
    ...said,
    ...pricesToo(kept, said),
  };
}

/** A price and a margin, and nothing that it costs: how much it may cost was asked. */
const isOfCost = (before: Draft): boolean =>
  before.price !== undefined &&
  before.margin_percent !== undefined &&
  (["cost", "ingredients", "packaging", "box_packaging", "lines", "formula", "labor_min"] as const).every(
    (key) => before[key] === undefined,
  );

/** The macarons' own cost was asked before: what to charge for them goes by it. */
const ofMacarons = (before: Draft, own: unknown): Draft =>
  !own &&
  before.macarons !== undefined &&
  (before.fitted || before.want === "cost") &&
  !before.lines &&
  before.cost === undefined &&
  before.ingredients === undefined
    ? { fitted: true }
    : {};

/** "and if butter is 12 euro a kilo": the line of it is priced anew. */
function withPrices(parts: Draft, { prices }: Draft): Draft {
  if (!prices || !parts.lines) return parts;
  const lines = parts.lines.map((line) => {
    const found = prices.find((each) => sameIngredient(each.name, line.name));
    return found ? { ...found, name: line.name, grams: line.grams } : line;
  });
  return { ...parts, lines };
}

/** The prices of the other ingredients hold on. */
const pricesToo = ({ prices: old }: Draft, { prices }: Draft): Draft =>
  old && prices
    ? { prices: [...old.filter((each) => !prices.some(({ name }) => name === each.name)), ...prices] }
    : {};

/** What the answer before went by, where this one changes something in it. */
export function changeTo(before: Draft, now: Draft, memory: Memory): Draft {
  const { was: _older, ...rest } = before;
  // prices of a bake of its own: nothing in the sum before was changed
  if ((now.prices?.length ?? 0) > 1 && !rest.prices && !rest.lines) return {};
  if (!memory.follows || memory.slot !== undefined || Object.keys(rest).length === 0) return {};
  const changed = Object.keys(now).some(
    (key) => JSON.stringify(now[key as keyof Draft]) !== JSON.stringify((rest as Draft)[key as keyof Draft]),
  );
  // "and the sugar alone": another sum, and none that changed
  const [line, ...more] = now.lines ?? [];
  const isOther = line && more.length === 0 && rest.lines?.map(({ name }) => name).join() !== line.name;
  return changed && !(isOther && rest.lines) ? { was: rest } : {};
}
