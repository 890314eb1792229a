/** Weights and doses of a note: "200 g buttercream", "4 % lemon flavor", "8 g mint in 200 g ganache". */
import { doseRows } from "../../../data/rules/doses.ts";
import type { Thing } from "../contract/index.ts";
import { isSign, type Piece } from "../lib/pieces.ts";
import { inBase } from "../lib/units.ts";
import type { Facts } from "./facts.ts";

export interface Weights {
  found: Partial<Facts>;
  /** Weighed flavors, with what they are called. */
  flavors: { flavor: string; grams: number }[];
  /** The one mix that flavors go into, where just one was weighed. */
  base_g?: number;
}

/** The shells' own powders and whites are weighed even where no unit is said; nothing else is. */
const bareWeighed = new Set(["whites", "almond flour", "powdered sugar", "granulated sugar", "sugar"]);

export function weightsIn(some: readonly Piece[], only?: string): Weights {
  const weighed = some.flatMap((each, at): { thing: Thing; grams: number }[] => {
    const amount = each.amount;
    if (isLeft(some, at)) return [];
    if (!amount?.of || amount.value <= 0) return [];
    const isBare =
      amount.dim === "number" &&
      amount.unit === "" &&
      bareWeighed.has(amount.of.ingredient ?? "") &&
      amount.value >= 20;
    if (amount.dim !== "weight" && !isBare) return [];
    return [{ thing: amount.of, grams: isBare ? amount.value : inBase(amount.value, amount.unit) }];
  });
  const weights = weighed.map(({ thing, grams }) => ({ name: nameOf(thing), grams }));
  const mixes = weighed.filter(({ thing }) => thing.base && thing.base !== "meringue");
  const fillings = mixes.filter(({ thing }) => thing.base !== "batter");
  const batter = mixes.find(({ thing }) => thing.base === "batter");
  return {
    found: {
      ...(weights.length ? { weights } : {}),
      ...(batter ? { batter_g: batter.grams } : {}),
      ...(fillings.length === 1 ? { filling_g: fillings[0]?.grams } : {}),
      ...leftIn(some, batter !== undefined, fillings.length === 1),
    },
    flavors: [
      ...weighed
        .filter(({ thing }) => isFlavor(thing))
        .map(({ thing, grams }) => ({ flavor: thing.taste ?? nameOf(thing), grams })),
      ...(only ? some.flatMap((_, at) => intoMix(some, at)).map((grams) => ({ flavor: only, grams })) : []),
    ],
    ...(mixes.length === 1 ? { base_g: mixes[0]?.grams } : {}),
  };
}

/** "a hazelnut batch: 12 g in 280 g of buttercream": a weight of nothing named that went into a mix, in g. */
function intoMix(some: readonly Piece[], at: number): number[] {
  const [amount, joint, mix] = [some[at]?.amount, some[at + 1]?.text, some[at + 2]?.amount];
  const goesIn = amount?.dim === "weight" && !amount.of && ["in", "into", "to"].includes(joint ?? "");
  return goesIn && mix?.of?.base ? [inBase(amount.value, amount.unit)] : [];
}

/** "18 g left in the bowl", "20 g of batter left over": what stayed, not what was made. */
function isLeft(some: readonly Piece[], at: number): boolean {
  if (some[at]?.amount?.dim !== "weight") return false;
  const before = some.slice(Math.max(0, at - 2), at);
  if (before.some((each) => each.text === "leftover") && !before.some(isSign)) return true;
  for (const each of some.slice(at + 1, at + 5)) {
    if (isSign(each) || each.amount) return false;
    if (stayed.has(each.text)) return true;
  }
  return false;
}

const stayed = new Set(["left", "leftover", "over", "remained", "remaining", "stayed", "stuck"]);

/** Of which mix it was left: the one named beside it, else the only one that was weighed. */
function leftIn(some: readonly Piece[], batter: boolean, filling: boolean): Partial<Facts> {
  const found: Partial<Facts> = {};
  some.forEach(({ amount }, at) => {
    if (!amount || amount.value < 0 || !isLeft(some, at)) return;
    const grams = inBase(amount.value, amount.unit);
    const named = amount.of?.base ?? some.slice(at + 1, at + 4).find((each) => each.thing?.base)?.thing?.base;
    if (named ? named === "batter" : batter && !filling) found.batter_left_g ??= grams;
    else if (named ? named !== "meringue" : filling && !batter) found.filling_left_g ??= grams;
  });
  return found;
}

const isFlavor = (thing: Thing) =>
  Boolean(
    !thing.base &&
      (thing.dose
        ? doseRows.some((row) => row.id === thing.dose)
        : thing.taste && thing.ingredient !== "almond flour"),
  );

const nameOf = (thing: Thing) => thing.base ?? thing.ingredient ?? thing.taste ?? thing.id;

/** Percentages as said, and those that two weights come to. */
export function dosesIn(
  some: readonly Piece[],
  flavors: readonly string[],
  weights: Weights,
): { flavor: string; percent: number }[] {
  const said = some.flatMap((each) => {
    const amount = each.amount;
    const of = amount?.dim === "percent" ? amount.of : undefined;
    if (!amount || !of || of.base || of.count || of.chocolate || amount.value <= 0 || amount.value >= 100)
      return [];
    const alone = flavors.length === 1 ? flavors[0] : undefined;
    const flavor = of.taste ?? (of.dose && !of.ingredient ? alone : undefined) ?? nameOf(of);
    return [{ flavor, percent: amount.high === undefined ? amount.value : (amount.value + amount.high) / 2 }];
  });
  const { base_g } = weights;
  const worked =
    base_g === undefined
      ? []
      : weights.flavors.map(({ flavor, grams }) => ({ flavor, percent: (grams / base_g) * 100 }));
  return [...said, ...worked.filter((each) => !said.some((other) => other.flavor === each.flavor))];
}
