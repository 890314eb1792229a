/**
 * The conversation, as pure steps: a turn is split into questions, each gets its calculator and its inputs, and the
 * answer is remembered for the next. Nothing is computed here and nothing is stored.
 */
import type { Memory, Outcome, Reading, Table, Tool } from "../tools/contract/index.ts";
import { against, askedFor } from "./asked-for.ts";
import { withoutBareHours } from "./bare-hour.ts";
import { withBottles } from "./bottles.ts";
import { inBox } from "./boxed.ts";
import { score } from "./choose.ts";
import { clauses } from "./clauses.ts";
import { seenBy } from "./drafts.ts";
import { withoutDropped } from "./dropped.ts";
import { choose, fullest, strange } from "./follow.ts";
import { compile, wordsOf } from "./lexicon.ts";
import { mender } from "./mend.ts";
import { withNames } from "./names.ts";
import { answersPending } from "./pending.ts";
import { corrected, ofBoth, ofWholeTurn, returned, sameAgain } from "./reach.ts";
import { itemsOf, type Reader, readingOf } from "./read.ts";
import { recipeLines } from "./recipe-lines.ts";
import { shifted } from "./shifted.ts";
import { pointsAfter } from "./signs.ts";
import { type Inputs, knownFrom, type Step, stepFrom } from "./step.ts";
import { vocabulary } from "./vocabulary.ts";

export type { Inputs, Known, Step } from "./step.ts";

/** A sentence that no calculator took. */
export interface Unread {
  reading: Reading;
  /** What it may have been about, the nearest first. */
  near: Tool[];
  trace(): string[];
}

export interface Topic {
  tool: string;
  inputs: Inputs;
  /** The input that can't be: a number alone may take its place, but it isn't taken along. */
  wrong?: string;
  /** The inputs that the turn itself said: "no, 40" puts those right before any other. */
  said?: string[];
}

export interface State {
  table: Table;
  last?: Topic;
  /** The input that was asked for, and whose. */
  pending?: Topic & { slot: string };
  /** Earlier topics, newest last, to come back to. */
  topics: Topic[];
  /** What was asked in the last turn, a calculator each, and how often the last of them was. */
  turn?: { said: string; topics: Topic[]; times: number };
  /** What was answered, the latest last, each question with its inputs: "back to the lemon one". */
  past?: Topic[];
  /** How many a box holds: "no, 15 boxes" goes on from it. */
  in_box?: number;
  /** What the last calculator was asked in a row, newest last: "for both" is of the last two. */
  row?: Inputs[];
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
  const own = () =>
    tools
      .flatMap((tool) => [...tool.examples, ...tool.elsewhere])
      .flatMap(({ say }) => wordsOf(say))
      .filter((word) => /^[a-z]{3,}$/.test(word));
  const words = vocabulary(lexicon, own);
  return { reader: { lexicon, mender: mender(words) }, tools };
}

/** The questions of one turn, each as a reading. */
export function questions(asked: string, { reader, tools }: Understanding): Reading[] {
  const { text, items, mended } = itemsOf(asked, reader);
  const parts = clauses(items, tools);
  const kept = withoutDropped(text, items, parts);
  return parts.map((part) => readingOf(asked, kept, part, mended, reader));
}

/** Finds the calculator and its inputs for one question; several inputs where it asks several things of one. */
export function next(
  said: Reading,
  now: State,
  names: Names,
  { tools, reader }: Understanding,
): Step[] | Unread {
  const reading = shifted(
    withoutBareHours(withBottles(withNames(said, names.formulas), names.bottles), now.last?.tool),
    now.pending ? undefined : tools.find((each) => each.name === now.last?.tool),
    now.last?.inputs ?? {},
  );
  const state = corrected(reading, returned(reading, now));
  const asked = askedFor(reading);
  const scores = score(reading, tools)
    .map((each) => ({
      ...each,
      points:
        each.points + against(each.tool.name, asked) + pointsAfter(each.tool, state.last?.tool, reading.mask),
    }))
    .sort((a, b) => b.points - a.points);
  const told: string[] = [];
  // written when it is asked for: a calculator's cues come with its file
  const trace = () => [
    ...scores
      .filter((each) => each.points !== 0)
      .slice(0, 4)
      .map((each) => `${each.tool.name} ${each.points}: ${each.because().join("; ")}`),
    ...told,
  ];
  const recipe = (text: string) => recipeLines(text, reader);
  const memory = (follows: boolean): Memory => ({
    table: state.table,
    ...(state.last ? { last: state.last } : {}),
    follows,
    ...(state.in_box === undefined ? {} : { in_box: state.in_box }),
    names,
    recipe,
  });
  const held = inBox(reading);
  const holds = held === undefined ? {} : { in_box: held };
  const answer = answersPending(reading, state, names, scores, tools, recipe);
  if (answer) {
    const { tool, inputs, filled } = answer;
    return [
      {
        tool,
        inputs,
        known: knownFrom(inputs, filled),
        reading: seenBy(tool, reading, state.in_box),
        ...holds,
        trace: () => [`answers ${tool.name}'s question`],
      },
    ];
  }
  const again = sameAgain(reading, state);
  const repeated = again && tools.find((each) => each.name === state.last?.tool);
  if (again && repeated && state.last)
    return [
      {
        tool: repeated,
        inputs: without(again.inputs ?? state.last.inputs, again.drop),
        known: knownFrom(state.last.inputs, {}),
        reading,
        ...(again.unit ? { unit: again.unit } : {}),
        trace: () => [again.because],
      },
    ];
  const chosen = strange(reading, scores[0]?.points ?? 0)
    ? undefined
    : choose(reading, state, scores, tools, memory, told);
  if (!chosen) {
    const near = scores.filter((each) => each.points > 0).slice(0, 2);
    return { reading, near: near.map((each) => each.tool), trace };
  }
  const { tool, follows, drafted, left } = fullest(chosen, reading, memory, told);
  const all = follows && drafted.length === 1 ? ofWholeTurn(reading, drafted[0] ?? {}, state) : [];
  if (all.length > 1)
    return all.flatMap((topic) => {
      const own = tools.find((each) => each.name === topic.tool);
      return own ? [stepFrom(own, drafted[0] ?? {}, reading, { ...state, last: topic }, true, trace)] : [];
    });
  const pair = follows && drafted.length === 1 ? ofBoth(reading, tool.name, state) : [];
  const befores =
    pair.length === 2 ? pair.map((inputs) => ({ ...state, last: { tool: tool.name, inputs } })) : [state];
  return befores.flatMap((before) =>
    drafted.map((draft) => ({
      ...stepFrom(tool, draft, seenBy(tool, reading, state.in_box), before, follows, trace),
      ...holds,
      ...(left.length > 0 ? { left } : {}),
    })),
  );
}

const without = ({ ...inputs }: Inputs, key: string | undefined): Inputs => {
  if (key !== undefined) delete inputs[key];
  return inputs;
};

/** The state after an answer. A question that asked leaves its slot open; thanks and small talk change nothing. */
export function remember(
  state: State,
  step: Pick<Step, "tool" | "inputs" | "in_box"> & Partial<Pick<Step, "known" | "reading">>,
  outcome: Outcome,
): State {
  if (["help", "explain", "undo"].includes(step.tool.name)) return state;
  const known = step.known ?? {};
  const own = Object.keys(known).filter((key) => known[key] === "said");
  const last = { tool: step.tool.name, inputs: step.inputs, ...(own.length ? { said: own } : {}) };
  const topics = [...state.topics.filter((each) => each.tool !== last.tool), last].slice(-8);
  const in_box = step.in_box ?? state.in_box;
  const { pending: _pending, ...others } = state;
  const kept = { ...others, ...(in_box === undefined ? {} : { in_box }) };
  if (outcome.status === "asking" && outcome.slot)
    return { ...kept, last, topics, pending: { ...last, slot: outcome.slot } };
  if (outcome.status === "declined" || outcome.status === "asking")
    return { ...kept, ...(state.last ? {} : { last }) };
  if (outcome.status === "impossible" && outcome.slot)
    return { ...kept, last: { ...last, wrong: outcome.slot }, topics };
  const row = [...(state.last?.tool === last.tool ? (state.row ?? []) : []), last.inputs].slice(-4);
  const said = step.reading?.said ?? "";
  const now = state.turn?.said === said ? state.turn : undefined;
  const before = now?.topics.filter(({ tool }) => tool !== last.tool) ?? [];
  const times = now?.topics.at(-1)?.tool === last.tool ? now.times + 1 : 1;
  const turn = { said, topics: [...before, last], times };
  const past = [...(state.past ?? []), last].slice(-12);
  const table = laid(state.table, outcome.leaves);
  return { table, last, topics, row, turn, past, ...(in_box === undefined ? {} : { in_box }) };
}

/** The table with what an answer left on it; a weight is also kept under its thing's name. */
function laid(table: Table, leaves: Table | undefined): Table {
  const mass = leaves?.mass;
  const masses = mass?.thing ? { ...table.masses, [mass.thing]: mass.grams } : table.masses;
  // another number of macarons is another order: how the one before was shared out says nothing of it
  const isOther = leaves?.macarons !== undefined && leaves.macarons !== table.macarons;
  const { shares, ...others } = table;
  if (isOther && shares && !leaves.shares) return laid(others, leaves);
  const { rest: _rest, ...kept } = table;
  const recent = mass ? { recent: [...(table.recent ?? []), mass].slice(-2) } : {};
  return { ...(mass ? kept : table), ...recent, ...leaves, ...(masses ? { masses } : {}) };
}
