/** "no, 30": a weight put right that names nothing. Where it isn't clear of which it is, that is asked. */
import type { Reading } from "../contract/index.ts";
import { gramsOf } from "../lib/units.ts";
import type { Draft, GanacheTurn, GanacheWay } from "./turn.ts";

const slips =
  /^(?:(?:oh|ah|uh|um|wait|no|nope|nah|sorry|actually|oops) )+(?:, )?(?:(?:its|it is|it was|make it|say|i meant?|sorry|actually|wait|only|just) )*\S*<(?:number|weight)>(?: (?:sorry|actually|instead|then))?(?: [.])?$/;
const sets = /^(?:make it|make that|say|try) \S*<(?:number|weight)>$/;

/** The one bare amount of the sentence, in g. */
function onlyWeight({ amounts: [amount, ...more] }: Reading): number | undefined {
  return amount && more.length === 0 && !amount.of ? gramsOf(amount) : undefined;
}

/** The weight of which it was asked what it is of. */
const askedAbout = ({ memory, last }: GanacheTurn): number | undefined =>
  memory.slot === "unsure_g" ? last?.unsure_g : undefined;

/** The lines of the mix before, where it was taken apart; else it is a matter of chocolate and cream. */
const linesOf = ({ last }: GanacheTurn): Draft["lines"] =>
  last?.want === "composition" ? last.lines : undefined;

/** "the butter", of a mix of several lines. */
const lineNamed: GanacheWay = (turn) => {
  const { reading } = turn;
  const [lines, grams] = [linesOf(turn), askedAbout(turn)];
  if (!lines || grams === undefined || reading.amounts.length > 0) return undefined;
  const [only, ...others] = lines.filter((each) =>
    reading.things.some(
      (thing) =>
        thing.ingredient === each.name ||
        (thing.chocolate && `${thing.chocolate} chocolate` === each.name) ||
        (thing.ingredient === "chocolate" && / chocolate$/.test(each.name)),
    ),
  );
  if (!only || others.length > 0) return undefined;
  const changed = lines.map((each) => (each === only ? { ...each, grams } : each));
  return { want: "composition", lines: changed, unsure_g: undefined };
};

/** "no, 90", of a mix of several lines: it is asked of which. */
const ofSomeLine: GanacheWay = (turn) => {
  const { reading } = turn;
  const [lines, grams] = [linesOf(turn), onlyWeight(reading)];
  const isSlip = slips.test(reading.mask) || sets.test(reading.mask);
  return lines && grams !== undefined && isSlip
    ? { want: "composition", lines: [...lines], unsure_g: grams }
    : undefined;
};

/** Chocolate and cream as they were said. */
function saidParts(turn: GanacheTurn): { chocolate_g: number; cream_g: number } | undefined {
  const { chocolate_g, cream_g } = turn.last ?? {};
  return linesOf(turn) || chocolate_g === undefined || cream_g === undefined
    ? undefined
    : { chocolate_g, cream_g };
}

/** "the cream". */
const partNamed: GanacheWay = (turn) => {
  const [had, grams] = [saidParts(turn), askedAbout(turn)];
  const { things } = turn.reading;
  const isCream = things.some((each) => each.ingredient === "cream");
  const isChocolate = things.some((each) => each.chocolate || each.ingredient === "chocolate");
  if (!had || grams === undefined || isCream === isChocolate) return undefined;
  return isCream ? { ...had, cream_g: grams } : { ...had, chocolate_g: grams };
};

/** "no, 30": of what was added last, where something was; else of the chocolate or the cream. */
const ofSomePart: GanacheWay = (turn) => {
  const { reading, last } = turn;
  const [had, grams] = [saidParts(turn), onlyWeight(reading)];
  if (!had || grams === undefined || askedAbout(turn) !== undefined || !slips.test(reading.mask))
    return undefined;
  const added = last?.added;
  if (!added) return { ...had, unsure_g: grams };
  return {
    ...had,
    [added.part]: had[added.part] - added.grams + grams,
    added: { ...added, grams },
    want: "check",
  };
};

export const rightWays: readonly GanacheWay[] = [lineNamed, ofSomeLine, partNamed, ofSomePart];
