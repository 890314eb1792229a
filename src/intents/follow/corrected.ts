/** What a correction puts right, where it isn't the question before. */
import { opening, takesBack, takingBack } from "../../../data/words/openers.ts";
import type { Reading } from "../../tools/contract/index.ts";
import { timesAnew } from "../../tools/lib/times-anew.ts";
import { firstOf, type Way } from "../../tools/lib/ways.ts";
import { isBare, sizes } from "../chosen/slots.ts";
import { about, type Inputs, type State, type Topic } from "./state.ts";

interface Said {
  reading: Reading;
  state: State;
}

/** "half that amount of smbc", behind the mix and its flavor. */
const mixOfTurn: Way<Said, Topic> = ({ reading, state: { turn, last } }) => {
  const [amount, ...others] = reading.amounts;
  const base = reading.things.find((thing) => thing.base)?.base;
  const isPart = others.length === 0 && (amount?.unit === "times" || amount?.fraction !== undefined);
  const asMuch = /\b(?:that|the) (?:amount|quantity|much) of\b|\bas much\b/.test(reading.text);
  if (!base || !turn || turn.topics.length < 2 || reading.things.length > 1 || !isPart || !asMuch)
    return undefined;
  const mix = turn.topics.find(({ tool }) => about[base]?.includes(tool));
  return mix?.tool === last?.tool ? undefined : mix;
};

const changes = ({ text }: Reading): boolean =>
  makesIt.test(text) || /\b(?:sorry|i mean|i meant)(?: \?)?$/.test(text);
const makesIt = new RegExp(`^${opening}make (?:that|it) |^(?:${takingBack})\\b`);

const withoutSorry = (reading: Reading): Reading => ({
  ...reading,
  mask: reading.mask.replace(/(?:^| )(?:sorry|oops|mean|meant)(?= |$)/g, ""),
});

/** The input that such an amount is of. */
function slotOf({ dim, of }: Reading["amounts"][number]): string | undefined {
  if (dim === "percent") return "percent";
  if (of?.ingredient === "whites" || of?.ingredient === "egg") return "whites_count";
  return of?.count === "macarons" ? "macarons" : undefined;
}

/**
 * "make that 3 egg whites", "4 % sorry", behind a turn that asked two things: the one of them that took such an amount,
 * where the last one didn't.
 */
const sibling: Way<Said, Topic> = ({ reading, state: { turn, last } }) => {
  const [amount, ...others] = reading.amounts;
  if (!turn || turn.topics.length < 2 || !amount || others.length > 0) return undefined;
  if (!changes(reading) || !isBare(withoutSorry(reading))) return undefined;
  const slot = slotOf(amount);
  return slot && !(slot in (last?.inputs ?? {}))
    ? turn.topics.find(({ inputs }) => slot in inputs)
    : undefined;
};

const putsRight = new RegExp(`^${takesBack}`);

/** "no sorry, the buttercream is 260", behind the dose of a ganache. */
const ofOtherMix: Way<Said, Topic> = ({ reading, state: { last, row } }) => {
  const base = reading.things.find((thing) => thing.base)?.base;
  const own = row?.findLast((inputs) => inputs.base === base);
  return putsRight.test(`${reading.mask} `) && base && own && last && last.inputs.base !== base
    ? { tool: last.tool, inputs: own }
    : undefined;
};

const withSoMuch =
  /^(?:(?:and|or|so|ok|now|what|how|about|if|with|for|from|its|i have|ive got|only|just) )+\S*<weight> (?:of )?\S*<[^>]*(?:ingredient|chocolate)=[^>]*>(?: (?:instead|then|now|please))*(?: \?)?$/;

/** "no wait, i've 250 g choc", said after something else: the earlier topic that was given a weight of just that. */
const ofIngredient: Way<Said, Topic> = ({ reading, state: { last, topics, turn } }) => {
  const said = reading.amounts.flatMap(({ dim, of }) =>
    dim === "weight" && of
      ? [of.chocolate || /chocolate/.test(of.ingredient ?? "") ? "chocolate_g" : `${of.ingredient}_g`]
      : [],
  );
  const [slot, ...others] = said;
  if (!slot || others.length > 0 || slot in (last?.inputs ?? {})) return undefined;
  // "and with 400 g butter?", behind the mix that takes 320 g of it and the salt for the lot
  const ofTurn = withSoMuch.test(reading.mask)
    ? turn?.topics.find(({ tool, inputs }) => tool !== last?.tool && slot in inputs)
    : undefined;
  if (ofTurn || !putsRight.test(`${reading.mask} `)) return ofTurn;
  return topics.findLast(({ tool, inputs }) => tool !== last?.tool && slot in inputs);
};

/** "no, 350", behind "double it": the weight that was doubled, where that was a ganache's or a bowl's. */
const ofDoubled: Way<Said, Topic> = ({ reading, state: { last, topics } }) => {
  const [amount, ...others] = reading.amounts;
  const isWeight = amount?.dim === "weight" || (amount?.dim === "number" && amount.unit === "");
  const isPlain = isWeight && !amount?.of && others.length === 0 && reading.things.length === 0;
  if (last?.tool !== "scale" || !("factor" in last.inputs) || !isPlain) return undefined;
  if (!putsRight.test(`${reading.mask} `)) return undefined;
  const before = topics.findLast(({ tool }) => tool !== "scale");
  return before?.tool === "ganache" ? before : undefined;
};

/** "double it", "times 1.5", "half of that": a turn that says nothing but how many times. */
const timesAlone =
  /^(?:[a-z]+,? )*(?:doubled?|tripled?|trebled?|halved?|half|twice|quarter|(?:times|x|by) ?\d[\d.,/]*|\d[\d.,/]* ?(?:x|times))(?: [a-z]+)*[ .!?]*$/;

/** How many times what was asked before the last question took. */
function timesIn(now: Inputs, before: Inputs): number | undefined {
  const slot = sizes.find((each) => typeof now[each] === "number" && typeof before[each] === "number");
  return slot === undefined ? undefined : (now[slot] as number) / (before[slot] as number);
}

/** "no, triple it", "and triple it?", behind "double it": three times what there was before that. */
const ofFactor: Way<Said, Topic> = ({ reading, state: { last, turn, row } }) => {
  const [amount, ...others] = reading.amounts;
  const isTimes =
    amount?.unit === "times" ||
    amount?.fraction !== undefined ||
    (amount?.dim === "number" && /\b(?:times|x|by) $/.test(reading.text.slice(0, amount.at[0])));
  const before = row?.at(-2);
  if (!last || !before || !isTimes || others.length > 0 || reading.things.length > 0) return undefined;
  // a recipe's own factor is put right where it is read
  if (last.tool === "scale" && "factor" in last.inputs) return undefined;
  const had = timesIn(last.inputs, before);
  const isAnew =
    putsRight.test(`${reading.mask} `) ||
    (amount !== undefined && timesAnew(reading.text, amount.value, had));
  return isAnew && timesAlone.test(turn?.text ?? "") ? { tool: last.tool, inputs: before } : undefined;
};

/** The state with the topic in front that this sentence puts right. */
export function corrected(reading: Reading, state: State): State {
  const topic = firstOf([mixOfTurn, sibling, ofOtherMix, ofIngredient, ofDoubled, ofFactor], {
    reading,
    state,
  });
  return topic ? { ...state, last: topic } : state;
}
