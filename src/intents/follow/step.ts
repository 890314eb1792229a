/** A question understood: the inputs said now, those said before that still hold, and where each came from. */
import { takesBack } from "../../../data/words/openers.ts";
import type { Reading, Tool } from "../../tools/contract/index.ts";
import { fillSlot, multiplied } from "../chosen/slots.ts";
import type { Derived, Inputs, State, Topic } from "./state.ts";

/** Where an input came from. */
export type Known = Record<string, "said" | "remembered">;

export interface Step {
  tool: Tool;
  inputs: Inputs;
  known: Known;
  reading: Reading;
  /** Inputs with what earlier turns knew, should these alone not be enough. */
  fallback?: Inputs;
  /** How many a box holds, said in it. */
  in_box?: number;
  /** Weights and percentages that were said and are in no input: the sentence may have been misread. */
  left?: string[];
  /** Something else that was measured is in no input: there may be a second question in the sentence. */
  lost?: boolean;
  /** The weights of the answer in this unit, asked for afterwards. */
  unit?: "oz";
  /** What the answer is held against: "is that more than 600 g?". */
  against?: { value: number; unit: string };
  /** Inputs that are of what the question before it leaves on the table. */
  from?: Derived;
  /** Only what was answered before, once more. */
  repeats?: true;
  /** Why it was read so, for whoever looks into it. */
  trace(): string[];
}

export const knownFrom = (inputs: Inputs, said: Inputs): Known =>
  Object.fromEntries(Object.keys(inputs).map((key) => [key, key in said ? "said" : "remembered"]));

/** What the old inputs may still say when new ones are said. */
export function withoutRivals(before: Inputs, said: Inputs, tool: Tool): Inputs {
  const gone = new Set((tool.rivals ?? []).filter((group) => group.some((key) => key in said)).flat());
  return Object.fromEntries(Object.entries(before).filter(([key]) => !gone.has(key)));
}

/** The inputs of a question: in a follow-up what was said now over what was said before, rivals dropped. */
export function stepFrom(
  tool: Tool,
  draft: Inputs,
  reading: Reading,
  state: State,
  follows: boolean,
  trace: () => string[],
): Step {
  const before = state.last?.tool === tool.name ? state.last.inputs : undefined;
  const righted = follows && before ? putRight(draft, reading, before, state.last?.said) : undefined;
  const said = righted ?? (follows && before ? saidNow(tool, draft, reading, before) : draft);
  const { [state.last?.wrong ?? ""]: _wrong, ...sound } = before ?? {};
  const inputs = follows && before && !tool.alone ? { ...withoutRivals(sound, said, tool), ...said } : said;
  const topic = before ? undefined : state.topics.findLast((each) => each.tool === tool.name);
  // what the last turn asked of several calculators is still of all of them
  const isOfTurn = state.turn?.topics.some((each) => each.tool === tool.name) ?? false;
  const toBowl = /^(?:(?:ok|and|so|now|then) )*for the \S*<weight>/.test(reading.mask);
  const returns = isOfTurn || toBowl || /back to|again|earlier|as before|instead|same/.test(reading.text);
  // "how much flavor for my other ganache": none of what was said of the first
  const another = /(?:^| )(?:my other|a different|another) \S*<[^>]*base=/.test(reading.mask);
  const fallback =
    follows || another
      ? undefined
      : earlier(tool, said, before ? state.last : topic, before !== undefined || returns);
  // "and for the 180 g bowl" says nothing of what goes in: what was spoken of last
  if (toBowl && fallback) return { tool, inputs: fallback, known: knownFrom(fallback, said), reading, trace };
  return { tool, inputs, known: knownFrom(inputs, said), reading, ...(fallback ? { fallback } : {}), trace };
}

const corrects = new RegExp(
  `^${takesBack}(?:(?:its|it is|make it|say|only|just) )*\\S*<number>(?: (?:sorry|actually|instead|then))?(?: [.])?$`,
);

/** "in 35 mm" "no, 40": a bare number puts right the one number that was said last. */
function putRight(
  draft: Inputs,
  reading: Reading,
  before: Inputs,
  lastSaid: readonly string[] = [],
): Inputs | undefined {
  const numbers = lastSaid.filter((key) => typeof before[key] === "number");
  const [key, ...others] = numbers;
  if (key === undefined || others.length > 0 || reading.amounts.length !== 1) return undefined;
  if (!key.endsWith("_mm") || key in draft || !corrects.test(reading.mask)) return undefined;
  const filled = fillSlot(reading, before, key);
  return Object.keys(filled).length > 0 ? filled : undefined;
}

/** "double it", "half of that" multiply what was said before; a bare number takes the place of the one before. */
export function saidNow(tool: Tool, draft: Inputs, reading: Reading, before: Inputs): Inputs {
  const times = selfScaling.has(tool.name) ? undefined : multiplied(reading, before);
  // "double the rum", in a bowl that was weighed: what is in it was multiplied already, the bowl stays
  const isDone = tool.name === "dose" && typeof draft.flavor_g === "number" && draft.want === "check";
  if (times && !isDone) return { ...textOnly(draft), ...times };
  return Object.keys(draft).length === 0 ? fillSlot(reading, before, undefined) : draft;
}

/** Calculators for which a factor or a fraction is an input of their own. */
const selfScaling = new Set(["scale", "split", "convert", "timer", "day", "cost", "note"]);

const textOnly = (inputs: Inputs): Inputs =>
  Object.fromEntries(
    Object.entries(inputs).filter(([, value]) => typeof value === "string" || typeof value === "boolean"),
  );

/** Inputs that say what a weight is of: where they differ from before, the weight before isn't meant. */
const identities = ["base", "filling", "formula"];

/**
 * What an earlier question of the same calculator can lend. The last one lends freely; one from before another topic
 * only where the new question names something of it again.
 */
function earlier(tool: Tool, said: Inputs, topic: Topic | undefined, lends: boolean): Inputs | undefined {
  if (!topic) return undefined;
  const differs = (key: string) => key in said && key in topic.inputs && said[key] !== topic.inputs[key];
  if (lends ? identities.some(differs) : !sharesIdentity(said, topic.inputs)) return undefined;
  return { ...withoutRivals(topic.inputs, said, tool), ...said };
}

const sharesIdentity = (said: Inputs, before: Inputs) =>
  ["base", "taste", "formula", "filling", "chocolate"].some(
    (key) => said[key] !== undefined && said[key] === before[key],
  );
