/**
 * The conversation, as pure steps: a turn is split into questions, each gets its calculator and its inputs, and the
 * answer is remembered for the next. Nothing is computed here and nothing is stored.
 */
import type { Memory, Outcome, Reading, Table, Tool } from "../tools/contract/index.ts";
import { weighing } from "../tools/lib/ounces.ts";
import { withoutBareHours } from "./bare-hour.ts";
import { score } from "./choose.ts";
import { clauses } from "./clauses.ts";
import { answersPending, choose, fullest, strange } from "./follow.ts";
import { compile, wordsOf } from "./lexicon.ts";
import { mender } from "./mend.ts";
import { withNames } from "./names.ts";
import { itemsOf, type Reader, readingOf } from "./read.ts";
import { recipeLines } from "./recipe-lines.ts";
import { isBare } from "./slots.ts";
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
}

export interface State {
  table: Table;
  last?: Topic;
  /** The input that was asked for, and whose. */
  pending?: Topic & { slot: string };
  /** Earlier topics, newest last, to come back to. */
  topics: Topic[];
  /** What was asked in the last turn, a calculator each. */
  turn?: { said: string; topics: Topic[] };
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
  return clauses(items, tools).map((part) => readingOf(asked, text, part, mended, reader));
}

/** Finds the calculator and its inputs for one question; several inputs where it asks several things of one. */
export function next(
  said: Reading,
  now: State,
  names: Names,
  { tools, reader }: Understanding,
): Step[] | Unread {
  const reading = withoutBareHours(withNames(said, names.formulas), now.last?.tool);
  const state = corrected(reading, returned(reading, now));
  const scores = score(reading, tools);
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
    names,
    recipe,
  });
  const answer = answersPending(reading, state, names, scores, tools, recipe);
  if (answer) {
    const { tool, inputs, filled } = answer;
    return [
      {
        tool,
        inputs,
        known: knownFrom(inputs, filled),
        reading,
        trace: () => [`answers ${tool.name}'s question`],
      },
    ];
  }
  if (state.last && weighing.has(state.last.tool) && inOz.test(reading.text)) {
    const { tool: name, inputs } = state.last;
    const tool = tools.find((each) => each.name === name);
    if (tool)
      return [
        {
          tool,
          inputs,
          known: knownFrom(inputs, {}),
          reading,
          unit: "oz",
          trace: () => ["asks for the same in ounces"],
        },
      ];
  }
  const noButter = state.last?.tool === "ganache" && withoutButter.test(reading.text);
  if (state.last && (noButter || onceMore.test(reading.mask))) {
    const tool = tools.find((each) => each.name === state.last?.tool);
    if (tool && readOnly.has(tool.name))
      return [
        {
          tool,
          inputs: state.last.inputs,
          known: knownFrom(state.last.inputs, {}),
          reading,
          trace: () => ["asks the same once more"],
        },
      ];
  }
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
  const pair =
    follows && forBoth.test(reading.mask) && tool.name === state.last?.tool ? state.row?.slice(-2) : [];
  const befores =
    pair?.length === 2 && drafted.length === 1
      ? pair.map((inputs) => ({ ...state, last: { tool: tool.name, inputs } }))
      : [state];
  return befores.flatMap((before) =>
    drafted.map((draft) => ({
      ...stepFrom(tool, draft, reading, before, follows, trace),
      ...(left.length > 0 ? { left } : {}),
    })),
  );
}

/**
 * "for 40 now", behind "batter for 32 macarons and the filling for them": what the last turn asked of several
 * calculators is asked of all of them again, where each was given what changes.
 */
function ofWholeTurn(reading: Reading, draft: Inputs, { turn }: State): Topic[] {
  const keys = Object.keys(draft);
  const every =
    turn && keys.length > 0 && turn.topics.every(({ inputs }) => keys.some((key) => key in inputs));
  const open = isBare(reading) || forBoth.test(reading.mask) || /(?:^| )all(?: |$)/.test(reading.mask);
  return every && open ? turn.topics : [];
}

/** "and in oz?": the answer before, in ounces. */
const inOz =
  /^(?:(?:and|or|now|ok|so|what about) )*(?:in|as) (?:oz|ounces|ounce)(?: (?:please|pls|then))? ?\??$/;

/** "and now?": the same question again, where asking it does nothing but answer. */
const onceMore = /^(?:and |so |ok |what about )*(?:now|once more|same again|the same again|and now)(?: \?)?$/;
/** A ganache is answered with and without. */
const withoutButter = /^(?:and |but |ok )*(?:without|no) (?:the |any )?butter(?: (?:please|pls|then))? ?\??$/;
const readOnly = new Set(
  "recall keep day buy cost dose scale shells fill ganache buttercream convert trouble method".split(" "),
);

/** "and at 4 percent for both": of the last two that were asked about. */
const forBoth = /(?:^| )(?:both|each of (?:them|those|these)|the two of them)(?: |$)/;

/** The state after an answer. A question that asked leaves its slot open; thanks and small talk change nothing. */
export function remember(
  state: State,
  step: Pick<Step, "tool" | "inputs"> & { reading?: Reading },
  outcome: Outcome,
): State {
  if (["help", "explain", "undo"].includes(step.tool.name)) return state;
  const last = { tool: step.tool.name, inputs: step.inputs };
  const topics = [...state.topics.filter((each) => each.tool !== last.tool), last].slice(-8);
  const { pending: _pending, ...kept } = state;
  if (outcome.status === "asking" && outcome.slot)
    return { ...kept, last, topics, pending: { ...last, slot: outcome.slot } };
  if (outcome.status === "declined") return { ...kept, ...(state.last ? {} : { last }) };
  if (outcome.status === "impossible" && outcome.slot)
    return { ...kept, last: { ...last, wrong: outcome.slot }, topics };
  const row = [...(state.last?.tool === last.tool ? (state.row ?? []) : []), last.inputs].slice(-4);
  const said = step.reading?.said ?? "";
  const before = state.turn?.said === said ? state.turn.topics.filter(({ tool }) => tool !== last.tool) : [];
  const turn = { said, topics: [...before, last] };
  return { table: laid(state.table, outcome.leaves), last, topics, row, turn };
}

/** The table with what an answer left on it; a weight is also kept under its thing's name. */
function laid(table: Table, leaves: Table | undefined): Table {
  const mass = leaves?.mass;
  const masses = mass?.thing ? { ...table.masses, [mass.thing]: mass.grams } : table.masses;
  return { ...table, ...leaves, ...(masses ? { masses } : {}) };
}

/**
 * "no wait, i've 250 g choc", said after something else: the earlier topic that was given a weight of just that is the
 * one that is corrected.
 */
function corrected(reading: Reading, state: State): State {
  if (!/^(?:(?:no|nope|oh|sorry|oops|actually|wait|hang on|hold on|i meant?) (?:, )?)+/.test(reading.text))
    return state;
  const said = reading.amounts.flatMap(({ dim, of }) =>
    dim === "weight" && of
      ? [of.chocolate || /chocolate/.test(of.ingredient ?? "") ? "chocolate_g" : `${of.ingredient}_g`]
      : [],
  );
  const [slot] = said;
  if (!slot || said.length > 1 || slot in (state.last?.inputs ?? {})) return state;
  const topic = state.topics.findLast(({ tool, inputs }) => tool !== state.last?.tool && slot in inputs);
  return topic ? { ...state, last: topic } : state;
}

/** Which calculators a mix is the matter of. */
const about: Readonly<Record<string, readonly string[]>> = {
  ganache: ["ganache"],
  buttercream: ["buttercream"],
  batter: ["shells", "scale", "split"],
  filling: ["fill"],
};

/** "back to the buttercream": the earlier topic that was about what is named becomes the last one again. */
function returned(reading: Reading, state: State): State {
  // "and the same percent in 300 g", after something else
  const dose = state.topics.findLast(({ tool }) => tool === "dose");
  if (
    dose &&
    state.last?.tool !== "dose" &&
    /\b(?:same|that) (?:percent|percentage|share|strength|dose)\b/.test(reading.text)
  )
    return { ...state, last: dose };
  if (
    !/^(?:(?:so|ok|and|now) )?(?:back to|going back to|return to|returning to|about) (?:the|my|that) /.test(
      reading.text,
    )
  )
    return state;
  const base = reading.things.find((thing) => thing.base)?.base ?? "";
  const topic = state.topics.findLast(
    ({ tool, inputs }) =>
      tool !== state.last?.tool && (inputs.base === base || about[base]?.includes(tool)) && base !== "",
  );
  return topic ? { ...state, last: topic } : state;
}
