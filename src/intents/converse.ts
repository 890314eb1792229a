/**
 * The conversation, as pure steps: a turn is split into questions, each gets its calculator and its inputs, and the
 * answer is remembered for the next. Nothing is computed here and nothing is stored.
 */
import type { Memory, Outcome, Reading, Table, Tool } from "../tools/contract/index.ts";
import { faint, margin, type Score, score, stands } from "./choose.ts";
import { strangers } from "../../data/words/strangers.ts";
import { clauses } from "./clauses.ts";
import { compile, wordsOf } from "./lexicon.ts";
import { mender } from "./mend.ts";
import { itemsOf, type Reader, readingOf } from "./read.ts";
import { fillSlot, isBare } from "./slots.ts";
import { vocabulary } from "./vocabulary.ts";

export type Inputs = Record<string, unknown>;

/** Where an input came from. */
export type Known = Record<string, "said" | "remembered">;

/** A question understood: whose it is and with what. `tries` are less strict readings, used when the first asks. */
export interface Step {
  tool: Tool;
  inputs: Inputs;
  known: Known;
  reading: Reading;
  /** Inputs with what the turn before knew, should these alone not be enough. */
  fallback?: Inputs;
  trace: string[];
}

/** A sentence that no calculator took. */
export interface Unread {
  reading: Reading;
  /** What it may have been about, the nearest first. */
  near: Tool[];
  trace: string[];
}

export interface State {
  table: Table;
  last?: { tool: string; inputs: Inputs };
  /** The input that was asked for, and whose. */
  pending?: { tool: string; inputs: Inputs; slot: string };
  /** Earlier topics, newest last, to come back to. */
  topics: { tool: string; inputs: Inputs }[];
}

export type Names = Memory["names"];

export interface Understanding {
  reader: Reader;
  tools: readonly Tool[];
}

export const freshState = (): State => ({ table: {}, topics: [] });

/** Compiles the tables once; the calculators' own example phrases are words that typos are mended toward. */
export function understanding(tools: readonly Tool[]): Understanding {
  const lexicon = compile();
  const own = tools
    .flatMap((tool) => [...tool.examples.map((each) => each.say), ...tool.elsewhere.map((each) => each.say)])
    .flatMap(wordsOf);
  return {
    reader: {
      lexicon,
      mender: mender(
        vocabulary(
          lexicon,
          own.filter((word) => /^[a-z]{3,}$/.test(word)),
        ),
      ),
    },
    tools,
  };
}

/** The questions of one turn, each as a reading. */
export function questions(asked: string, { reader, tools }: Understanding): Reading[] {
  const { text, items, mended } = itemsOf(asked, reader);
  const parts = clauses(items, tools);
  return parts.map((part) => readingOf(asked, text, part, mended, reader));
}

const leans =
  /^(?:and|hm|hmm|er|um|ah|well|or|or|but|no|nope|nah|actually|ok|okay|also|same|now|then|what about|how about|what if|make it|make that|if|with|at|for|in|instead|so|plus|only|just|sorry|i mean|i meant|wait|hmm|oh|not|use|try|say|rather|yes|yeah|that|thats|it|its|they|theyre|theyve|theyd|them|those|these|this|without|half|double)(?: |$)/;
const pronoun =
  /(?:^| )(?:it|its|that|thats|them|they|those|these|this|one|ones|instead|same|again|each|both|there|rest)(?: |$)/;

/** Finds the calculator and its inputs for one question. */
export function next(
  reading: Reading,
  state: State,
  names: Names,
  { tools }: Understanding,
): Step[] | Unread {
  const scores = score(reading, tools);
  const trace = scores
    .filter((each) => each.points !== 0)
    .slice(0, 4)
    .map((each) => `${each.tool.name} ${each.points}: ${each.because.join("; ")}`);
  const answer = answersPending(reading, state, names, scores, tools);
  if (answer) return answer;
  const memory = (follows: boolean): Memory => ({
    table: state.table,
    ...(state.last ? { last: state.last } : {}),
    follows,
    names,
  });
  const chosen = strange(reading, scores[0]?.points ?? 0) ? undefined : choose(reading, state, scores, tools, memory, trace);
  if (!chosen)
    return {
      reading,
      near: scores
        .filter((each) => each.points > 0)
        .slice(0, 2)
        .map((each) => each.tool),
      trace,
    };
  const { tool, follows } = chosen;
  return drafts(tool, reading, memory(follows)).map((draft) =>
    stepFrom(tool, draft, reading, state, follows, trace),
  );
}

/**
 * A word of another matter with no sure sign of the trade, or a sentence of which hardly a word is known: better
 * declined than guessed at.
 */
function strange(reading: Reading, points: number): boolean {
  const words = reading.mask.split(" ").filter((each) => /^[a-z]/.test(each));
  const foreign = words.some((each) => strangers.has(each));
  if (foreign && points < 4) return true;
  if (foreign && reading.amounts.length === 0 && points < 6) return true;
  const lost = reading.unknown.length + reading.mended.length;
  return reading.amounts.length === 0 && reading.unknown.length >= 2 && lost >= 3 && lost >= words.length / 2;
}

function drafts(tool: Tool, reading: Reading, memory: Memory): Inputs[] {
  const read = tool.read(reading, memory);
  return (Array.isArray(read) ? read : [read]).map(dropUndefined);
}

const dropUndefined = (inputs: Inputs): Inputs =>
  Object.fromEntries(Object.entries(inputs).filter(([, value]) => value !== undefined));

/** The inputs of a follow-up: what was said now over what was said before, rivals of the new dropped from the old. */
function stepFrom(
  tool: Tool,
  draft: Inputs,
  reading: Reading,
  state: State,
  follows: boolean,
  trace: string[],
): Step {
  const before = state.last?.tool === tool.name ? state.last.inputs : undefined;
  const filled =
    follows && Object.keys(draft).length === 0 && before ? fillSlot(reading, before, undefined) : draft;
  const kept = before ? withoutRivals(before, filled, tool) : {};
  const inputs = follows ? { ...kept, ...filled } : filled;
  const known = Object.fromEntries(
    Object.keys(inputs).map((key) => [key, key in filled ? "said" : "remembered"]),
  ) as Known;
  return {
    tool,
    inputs,
    known,
    reading,
    ...(before && !follows ? { fallback: { ...kept, ...filled } } : {}),
    trace,
  };
}

/** What the old inputs may still say when new ones are said. */
export function withoutRivals(before: Inputs, said: Inputs, tool: Tool): Inputs {
  const gone = new Set((tool.rivals ?? []).filter((group) => group.some((key) => key in said)).flat());
  return Object.fromEntries(Object.entries(before).filter(([key]) => !gone.has(key)));
}

/** An answer to the question that was asked: bare, or in a sentence that no other calculator claims. */
function answersPending(
  reading: Reading,
  state: State,
  names: Names,
  scores: Score[],
  tools: readonly Tool[],
): Step[] | undefined {
  const pending = state.pending;
  const tool = pending && tools.find((each) => each.name === pending.tool);
  if (!pending || !tool) return undefined;
  const best = scores[0];
  if (best && best.points >= stands && best.tool !== tool && !isBare(reading)) return undefined;
  const memory: Memory = {
    table: state.table,
    last: { tool: pending.tool, inputs: pending.inputs },
    slot: pending.slot,
    follows: true,
    names,
  };
  const found = drafts(tool, reading, memory);
  const draft = found[0] ?? {};
  const filled =
    pending.slot in draft ? draft : { ...draft, ...fillSlot(reading, pending.inputs, pending.slot) };
  if (Object.keys(filled).length === 0) return undefined;
  const inputs = { ...withoutRivals(pending.inputs, filled, tool), ...filled };
  const known = Object.fromEntries(
    Object.keys(inputs).map((key) => [key, key in filled ? "said" : "remembered"]),
  ) as Known;
  return [{ tool, inputs, known, reading, trace: [`answers what ${tool.name} asked: ${pending.slot}`] }];
}

function choose(
  reading: Reading,
  state: State,
  scores: Score[],
  tools: readonly Tool[],
  memory: (follows: boolean) => Memory,
  trace: string[],
): { tool: Tool; follows: boolean } | undefined {
  const best = scores[0];
  const second = scores[1];
  const lastTool = state.last && tools.find((each) => each.name === state.last?.tool);
  const leaning = leans.test(`${reading.mask} `) || pronoun.test(reading.mask) || isBare(reading);
  if (lastTool && leaning) {
    const lastPoints = scores.find((each) => each.tool === lastTool)?.points ?? 0;
    const rival = best && best.tool !== lastTool ? best.points : 0;
    const bonus = isBare(reading) ? (leans.test(`${reading.mask} `) ? 5 : 3) : 2;
    if (lastPoints + bonus > rival - 1e-9 || rival < stands) {
      const said = drafts(lastTool, reading, memory(true));
      const before = state.last?.inputs ?? {};
      const takes =
        said.some((draft) => Object.entries(draft).some(([key, value]) => before[key] !== value)) ||
        Object.keys(fillSlot(reading, before, undefined)).length > 0;
      if (takes && (lastPoints + bonus >= faint || isBare(reading) || rival < faint)) {
        trace.push(`follows ${lastTool.name}`);
        return { tool: lastTool, follows: true };
      }
    }
  }
  if ((!best || best.points < faint) && lastTool && short(reading)) {
    // too little to stand alone, and it holds something that the last calculator takes
    const before = state.last?.inputs ?? {};
    if (
      drafts(lastTool, reading, memory(true)).some((draft) =>
        Object.entries(draft).some(([key, value]) => before[key] !== value),
      )
    )
      return { tool: lastTool, follows: true };
  }
  if (!best || best.points < faint) return undefined;
  if (second && best.points < stands && best.points - second.points < margin && best.tool !== lastTool) {
    const kept = scores.find((each) => each.tool === lastTool && best.points - each.points < margin);
    if (kept) return { tool: kept.tool, follows: true };
    if (best.points < stands - 0.5) return undefined;
  }
  return { tool: best.tool, follows: leaning && best.tool === lastTool };
}

const short = (reading: Reading) =>
  reading.mask.split(" ").length <= 9 && reading.amounts.length + reading.things.length > 0;

/** The state after an answer. A question that asked leaves its slot open; thanks and small talk change nothing. */
export function remember(state: State, step: Pick<Step, "tool" | "inputs">, outcome: Outcome): State {
  if (step.tool.name === "help" || step.tool.name === "explain" || step.tool.name === "undo") return state;
  const last = { tool: step.tool.name, inputs: step.inputs };
  const topics = [...state.topics.filter((each) => each.tool !== last.tool), last].slice(-8);
  const { pending: _pending, ...kept } = state;
  if (outcome.status === "asking" && outcome.slot)
    return { ...kept, last, topics, pending: { ...last, slot: outcome.slot } };
  if (outcome.status === "declined") return { ...kept, ...(state.last ? {} : { last }) };
  return { table: { ...state.table, ...outcome.leaves }, last, topics };
}
