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

/** The mix that is come back to, behind something of another kind. */
export function ofOtherKind(reading: Reading, state: State): Topic | undefined {
  const { last } = state;
  if (!last || !between.has(last.tool)) return undefined;
  return firstOf([shareOfMix, recipeNamed, afterHeat], { reading, state });
}
