/** The fillings of an order: which there are, what share of it all each takes, and what it is made of. Weights in g. */
import { buttercreamParts } from "../../../data/rules/buttercream.ts";
import { ratios } from "../../../data/rules/ganache.ts";
import { ringShare } from "../../../data/rules/shells.ts";
import { bases } from "../../../data/words/things.ts";
import type { Formula, Outcome, World } from "../contract/index.ts";
import type { Line } from "../lib/lines.ts";
import { listed, plain } from "../lib/show.ts";
import { fillingFor, type Own } from "../lib/sizing.ts";
import type { DayInputs } from "./day.ts";
import type { Filling } from "./order.ts";

/** A filling with its share: for how many macarons, of how many fillings in each. */
export interface Portion {
  filling: Filling;
  /** How figures name it: "ring", "center", "filling", or its own name. */
  part: string;
  grams: number;
}

/** "apricot ganache", "white chocolate ganache". */
export const fillingName = ({ base, of, flavor, chocolate, formula }: Filling): string =>
  formula ?? [of || flavor?.taste, chocolate && `${chocolate} chocolate`, base].filter(Boolean).join(" ");

/** The fillings in force: those that were named, else a buttercream and a ganache; a loose flavor goes into each. */
export function fillingsOf(inputs: Partial<DayInputs>): Filling[] {
  const named: Filling[] = inputs.fillings ?? [{ base: "ganache" }, { base: "buttercream" }];
  const { flavor } = inputs;
  return flavor ? named.map((each) => (each.flavor || each.of ? each : { ...each, flavor })) : named;
}

export const isRing = (portions: readonly Portion[]) => portions.some((each) => each.part === "ring");

/** Where fillings have numbers of their own, one without takes the rest; numbers that don't add up are said. */
export function shared(fillings: Filling[], macarons: number): Filling[] | Outcome {
  const own = fillings.flatMap((each) => each.macarons ?? []);
  if (own.length === 0) return fillings;
  const rest = macarons - own.reduce((sum, each) => sum + each, 0);
  const open = fillings.length - own.length;
  if (open === 0 && rest === 0) return fillings;
  if (open === 1 && rest > 0)
    return fillings.map((each) => (each.macarons === undefined ? { ...each, macarons: rest } : each));
  return {
    status: "impossible",
    headline: `${listed(own.map((each) => plain(each)))} of ${plain(macarons)} macarons: say for every filling how many it fills, so that they add up.`,
  };
}

/** Of two fillings 60 % are ring and 40 % center; fillings of so many macarons each take what those take. */
export function portionsOf(
  fillings: readonly Filling[],
  macarons: number,
  diameter_mm: number,
  own: Own,
): Portion[] {
  const all = fillingFor(macarons, diameter_mm, own);
  const [first, second] = fillings;
  if (fillings.every((each) => each.macarons !== undefined))
    return fillings.map((filling) => ({
      filling,
      part: fillings.length === 1 ? "filling" : fillingName(filling),
      grams: fillingFor(filling.macarons ?? 0, diameter_mm, own),
    }));
  if (first && !second) return [{ filling: first, part: "filling", grams: all }];
  if (first && second && fillings.length === 2) {
    const ring = ringOf(first, second);
    const center = ring === first ? second : first;
    return [
      { filling: ring, part: "ring", grams: (all * ringShare.value) / 100 },
      { filling: center, part: "center", grams: (all * (100 - ringShare.value)) / 100 },
    ];
  }
  return fillings.map((filling) => ({ filling, part: fillingName(filling), grams: all / fillings.length }));
}

/** The ring is what was said to be it, else the one that stands firmer: a butter filling around a ganache or jam. */
function ringOf(first: Filling, second: Filling): Filling {
  if (first.part === "ring" || second.part === "center") return first;
  if (second.part === "ring" || first.part === "center") return second;
  const isButter = ({ base }: Filling) => bases.find((each) => each.id === base)?.column === "buttercream";
  return !isButter(first) && isButter(second) ? second : first;
}

/** The recipe of her own that a filling goes by: the one that was named, or one of the filling's very name. */
export const recipeFor = (filling: Filling, { formulas }: Pick<World, "formulas">): Formula | undefined =>
  formulas.findLast((each) => each.name.toLowerCase() === fillingName(filling).toLowerCase());

/**
 * What a filling is made of: her own recipe, or the book's for a ganache and a buttercream. One that no rule makes, a
 * jam, is a line of its own: it has to be there all the same.
 */
export function linesOf(filling: Filling, total_g: number, world: Pick<World, "formulas">): Line[] {
  const own = recipeFor(filling, world)?.lines;
  if (own) return scaledTo(own, total_g);
  const { base, chocolate } = filling;
  if (base === "buttercream")
    return scaledTo(
      buttercreamParts.map(({ name, parts }) => ({ name, grams: parts })),
      total_g,
    );
  if (base !== "ganache") return [{ name: fillingName(filling), grams: total_g }];
  const { ratio } = ratios[chocolate ?? "dark"].piping;
  return [
    { name: `${chocolate ?? "dark"} chocolate`, grams: (total_g * ratio) / (ratio + 1) },
    { name: "cream", grams: total_g / (ratio + 1) },
  ];
}

/** Lines in their own proportions, brought to a weight. */
export function scaledTo(lines: readonly Line[], total_g: number): Line[] {
  const all = lines.reduce((sum, each) => sum + each.grams, 0);
  return lines.map(({ name, grams }) => ({ name, grams: (total_g * grams) / all }));
}
