/**
 * "only two thirds of that ganache", behind a timer; "the same recipe off 110 g whites", behind what 145 °C is in F: of
 * the mix that is named, or that works from what is measured, with something of another kind between.
 */
import type { Reading } from "../../tools/contract/index.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { about, type State, type Topic } from "./state.ts";

interface Said {
  reading: Reading;
  state: State;
}

/** Calculators that weigh out no mix. */
const between: ReadonlySet<string> = new Set(
  "timer convert method keep trouble note recall cost day".split(" "),
);

const thatMix = /\b(?:that|the|this|my|our) (?:same )?(?:\w+ )?(?:ganache|buttercream|batter|filling)\b/;

/** "half of that ganache": only so much of what was worked out. */
const shareOfMix: Way<Said, Topic> = ({ reading: { text, amounts, things }, state: { past = [] } }) => {
  const base = things.find((thing) => thing.base)?.base;
  const isShare =
    amounts.length === 1 && amounts.every((each) => each.fraction !== undefined || each.unit === "times");
  const isMore = things.some(({ dose, taste, color }) => dose ?? taste ?? color);
  if (!base || !isShare || isMore || !thatMix.test(text)) return undefined;
  return past.findLast(({ tool }) => about[base]?.includes(tool));
};

const thatRecipe = /\b(?:the|that|this) (?:very )?(?:same )?(?:recipe|formula)\b|\bsame recipe\b/;

/** "the same recipe off 110 g whites". */
const recipeNamed: Way<Said, Topic> = ({ reading: { text, amounts, things }, state: { past = [] } }) =>
  thatRecipe.test(text) && amounts.length === 1 && !things.some((each) => each.base ?? each.formula)
    ? past.findLast(({ tool }) => tool === "scale" || tool === "buttercream")
    : undefined;

/** What goes into shells, and nothing of which a heat is asked. */
const ofShells = /^(?:whites|egg|almond flour|powdered sugar|granulated sugar)$/;

/** "110 g whites", "36 of them", behind a heat on the other scale. */
const afterHeat: Way<Said, Topic> = ({
  reading: { text, amounts, things },
  state: { last, turn, past = [] },
}) => {
  const [only, ...others] = amounts;
  const isHeat = last?.tool === "convert" && /^°/.test(String(last.inputs.unit ?? last.inputs.to ?? ""));
  if (!isHeat || !only || others.length > 0 || (turn?.topics.length ?? 0) < 2) return undefined;
  const name = only.of?.ingredient ?? things.find((thing) => thing.ingredient)?.ingredient;
  if (only.dim === "weight" && name && ofShells.test(name))
    return past.findLast(({ tool }) => tool === "scale");
  const counts = only.dim === "number" && only.unit === "" && / of (?:them|those|these)\b/.test(text);
  return counts ? past.findLast(({ inputs }) => "macarons" in inputs) : undefined;
};

/** What each mix can be worked out from. */
const worksFrom: Readonly<Record<string, RegExp>> = {
  scale: /^(?:whites|egg|almond flour|powdered sugar|granulated sugar|sugar)$/,
  buttercream: /^(?:whites|butter|granulated sugar|sugar)$/,
  ganache: /^cream$|chocolate/,
};
const asks =
  /\b(?:what|whats|how|which|why|shells|recipe|note|log|shelf|pantry|stock|timer|in (?:oz|g|ml|cups?))\b/;
/** So much of it came out of the eggs, is left, or was weighed. */
const turnedOut =
  /\b(?:only|just|came|come|got|get|gave|weighs?|weighed|have|ive|ended up|turned out|left|all|make it|its|actually|instead|broke|after all)\b/;

/** "only 88 g whites came out", behind a buttercream and the timer that was set with it: of that mix. */
const mixBefore: Way<Said, Topic> = ({ reading: { text, amounts, things }, state: { past = [] } }) => {
  const [only, ...others] = amounts;
  if (!only || others.length > 0 || text.length > 80 || asks.test(text) || !turnedOut.test(text))
    return undefined;
  if (only.dim !== "weight" && !(only.dim === "number" && only.unit === "" && !only.fraction))
    return undefined;
  // "the eggs only gave 88 g of whites"
  const [part, ...more] = things.filter(
    ({ ingredient, count }) => (ingredient !== "egg" && count !== "bowls") || things.length === 1,
  );
  const name = part?.ingredient ?? (part?.chocolate ? "chocolate" : undefined);
  if (!part || !name || more.length > 0 || (part.base ?? part.taste ?? part.dose)) return undefined;
  const mix = past.findLast(({ tool }) => !between.has(tool));
  return mix && worksFrom[mix.tool]?.test(name) ? mix : undefined;
};

/** The mix that is come back to, behind something of another kind. */
export function ofOtherKind(reading: Reading, state: State): Topic | undefined {
  const { last } = state;
  if (!last || !between.has(last.tool)) return undefined;
  return firstOf([shareOfMix, recipeNamed, afterHeat, mixBefore], { reading, state });
}
