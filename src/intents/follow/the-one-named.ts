/**
 * "what about the lemon for 260", "and the powdered sugar if it's sifted", "no, triple the butter one": with something
 * else asked since, the question that what is named with "the" was in.
 */
import type { Reading, Thing } from "../../tools/contract/index.ts";
import type { Way } from "../../tools/lib/ways.ts";
import type { Inputs, State, Topic } from "./state.ts";

type Said = { reading: Reading; state: State };

/** Pointed at as what was spoken of. */
const points = /(?:^|[ ,.])(?:the|that|those|my) $/;
const isPointed = ({ text }: Reading, { at }: Thing): boolean =>
  points.test(text.slice(Math.max(0, at[0] - 8), at[0]));

/** Written down, rung, kept or sold: no other size of what was worked out. */
const otherMatter =
  /\b(?:note|log|noted|jot|record|rate|rated|timers?|alarm|min|mins|minutes?|hours?|remind|label|allergens?|keep|keeps|freeze|fridge|shelf|pantry|cost|price|plan|save|call)\b/;

/** Nothing is told by more words than this of what was asked before. */
const most = 16;
const isShort = ({ mask }: Reading): boolean => mask.split(" ", most + 1).length <= most;

/** "the lemon in ganache instead", behind a timer: the dose that it was asked in. */
export const tasteNamed: Way<Said, Topic> = ({ reading, state: { last, past = [] } }) => {
  const { text, things, amounts } = reading;
  const tasted = things.filter((each) => each.taste && !each.base);
  const [only, ...others] = tasted;
  if (!only?.taste || others.length > 0 || !isPointed(reading, only) || !isShort(reading)) return undefined;
  if (otherMatter.test(text)) return undefined;
  const isOf = ({ tool, inputs }: Topic) => tool === "dose" && inputs.taste === only.taste;
  if (last && isOf(last)) return undefined;
  // how much of it, or what it goes into, is what may have changed
  const changes =
    amounts.some(({ dim }) => dim === "weight" || dim === "number" || dim === "percent") ||
    things.some((each) => each.base);
  const isSameForm = ({ inputs }: Topic) => only.dose === undefined || only.dose === inputs.dose;
  const topic = changes ? past.findLast(isOf) : undefined;
  return topic && isSameForm(topic) ? topic : undefined;
};

/** "what about with powder color", behind a dose and a timer of one turn: no timer is called so, the dose is asked with it. */
export const doseOfTurn: Way<Said, Topic> = ({ reading, state: { last, turn } }) => {
  const { things, amounts, whens, mask } = reading;
  const named = things.filter((each) => each.dose && !each.base);
  if (last?.tool !== "timer" || named.length !== 1 || amounts.length > 0 || whens.length > 0)
    return undefined;
  if (!isShort(reading) || !asksWith.test(mask)) return undefined;
  return turn?.topics.findLast(({ tool, inputs }) => tool === "dose" && inputs.base_g !== undefined);
};
const asksWith =
  /^(?:(?:and|so|ok|but|or|what|about|how|if|its|it|is|was|were|i|we|use|used|with|for|in|take|took|of|a|the|instead) )+\S*<[^>]*dose=\S*(?: (?:instead|then|please|pls|now|in it|for it|\?))*$/;

const ingredientOf = ({ ingredient }: Inputs): unknown => ingredient;

/** "and the flour in oz", behind 2 cups of flour and 3 tbsp of butter: the one of them. */
export const convertedNamed: Way<Said, Topic> = ({ reading, state: { last, turn } }) => {
  const [only, ...others] = reading.things.filter((each) => each.ingredient);
  const all = turn?.all ?? [];
  if (!only || others.length > 0 || last?.tool !== "convert" || all.length < 2) return undefined;
  if (ingredientOf(last.inputs) === only.ingredient || !isPointed(reading, only)) return undefined;
  // an amount of its own says all there is to say
  if (reading.amounts.some(({ dim }) => dim === "weight" || dim === "volume")) return undefined;
  return all.findLast(({ tool, inputs }) => tool === "convert" && ingredientOf(inputs) === only.ingredient);
};

const oneOf = /^ (?:one|recipe|list|mix|lot|batch)\b/;

/** "no, triple the butter one", behind what 11 oz are: the recipe with that in it. */
export const recipeOf: Way<Said, Topic> = ({ reading, state: { last, past = [] } }) => {
  const { text, things, amounts } = reading;
  const only = things.find((each) => each.ingredient);
  const isTimes = amounts.length === 1 && amounts.every((each) => each.unit === "times" || each.fraction);
  if (!only?.ingredient || !isTimes || last?.tool === "scale" || !isPointed(reading, only)) return undefined;
  if (!oneOf.test(text.slice(only.at[1]))) return undefined;
  const hasIt = ({ lines }: Inputs) =>
    Array.isArray(lines) && lines.some((each: { name?: string }) => each.name === only.ingredient);
  return past.findLast(({ tool, inputs }) => tool === "scale" && hasIt(inputs));
};

const makesIt =
  /^(?:(?:ok|okay|so|no|and|fine|right|well|sorry|then|oh|actually) ?,? ?)*(?:make (?:it|that)|its|it's|it is|i meant|i mean|say|call it|do)\b/;

/** "ok make it 120 g ganache", behind a bowl of less than nothing and what 5 oz are: the bowl is put right. */
export const bowlRighted: Way<Said, Topic> = ({ reading, state: { last, topics } }) => {
  const base = reading.things.find((each) => each.base)?.base;
  const isWeighed = reading.amounts.length === 1 && reading.amounts.every(({ dim }) => dim === "weight");
  if (last?.tool === "dose" || !base || !isWeighed || !makesIt.test(reading.text)) return undefined;
  return topics.findLast(
    ({ tool, inputs }) =>
      tool === "dose" && inputs.base === base && typeof inputs.base_g === "number" && inputs.base_g <= 0,
  );
};
