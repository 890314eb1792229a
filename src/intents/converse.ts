/**
 * The conversation, as pure steps: a turn is split into questions, each gets its calculator and its inputs, and the
 * answer is remembered for the next. Nothing is computed here and nothing is stored.
 */
import type { Memory, Reading, Tool } from "../tools/contract/index.ts";
import { withBottles } from "./bottles.ts";
import { against, askedFor } from "./chosen/asked-for.ts";
import { score } from "./chosen/choose.ts";
import { seenBy } from "./chosen/drafts.ts";
import { elsewhere, isSigh } from "./chosen/elsewhere.ts";
import { losesSome } from "./chosen/lost.ts";
import { onlyHeard, onlyPraised } from "./chosen/only-heard.ts";
import { answersPending, answersWaiting } from "./chosen/pending.ts";
import { pointsAfter } from "./chosen/signs.ts";
import { withoutBareHours } from "./follow/bare-hour.ts";
import {
  allAgain,
  asksNoSum,
  goesOnFrom,
  isRoot,
  meantBehind,
  ofBoth,
  ofWholeTurn,
  sameAgain,
  shifted,
} from "./follow/behind.ts";
import { inBox } from "./follow/boxed.ts";
import { choose, fullest, strange } from "./follow/follow.ts";
import { type Inputs, isFirst, type State } from "./follow/state.ts";
import { knownFrom, type Step, stepFrom } from "./follow/step.ts";
import { wordsOf } from "./found/lexicon.ts";
import { withNames } from "./names.ts";
import { itemsOf, readingOf } from "./read.ts";
import { recipeLines } from "./recipe/recipe-lines.ts";
import { clauses } from "./turn/clauses.ts";
import { inOneBreath, ownText, withoutDropped } from "./turn/dropped.ts";
import type { Understanding } from "./understanding.ts";

/** A sentence that no calculator took. */
export interface Unread {
  reading: Reading;
  /** What it may have been about, the nearest first. */
  near: Tool[];
  trace(): string[];
}

export type Names = Memory["names"];

/** The words of all names that the baker gave. */
const wordsIn = (names: Names | undefined): ReadonlySet<string> =>
  new Set(Object.values(names ?? {}).flatMap((list) => list.flatMap(wordsOf)));

/** The questions of one turn, each as a reading. @param names that the baker gave: no typos */
export function questions(asked: string, { reader, tools }: Understanding, names?: Names): Reading[] {
  const { text, items, mended, beside } = itemsOf(asked, reader, wordsIn(names), true, names?.formulas);
  const parts = clauses(items, tools);
  const kept = withoutDropped(text, items, parts);
  return parts.map((part) => {
    const said = inOneBreath(kept, items, part);
    const own = parts.length > 1 ? ownText(said, items, part) : { text: said, items: part };
    return readingOf(asked, own.text, own.items, mended, reader, beside);
  });
}

/** The reading of a question of which other words are meant. */
function resaid(said: Reading, meant: string, { reader }: Understanding, names: Names): Reading {
  const { text, items } = itemsOf(meant, reader, wordsIn(names), true, names.formulas);
  return readingOf(said.said, text, items, said.mended, reader, said.beside);
}

/** Finds the calculator and its inputs for one question; several inputs where it asks several things of one. */
export function next(said: Reading, now: State, names: Names, understanding: Understanding): Step[] | Unread {
  const taken = ours(said, now, names, understanding);
  return notOurs(said, taken, now, understanding) ?? taken;
}

/** What is of another matter or of another bake is turned down by name, whoever would have taken its numbers. */
function notOurs(
  said: Reading,
  taken: readonly Step[] | Unread,
  now: State,
  { tools }: Understanding,
): Step[] | undefined {
  const help = tools.find(({ name }) => name === "help");
  if (!help) return undefined;
  const step = (reading: Reading, inputs: Inputs, why: string): Step[] => [
    { tool: help, inputs, known: knownFrom(inputs, inputs), reading, trace: () => [why] },
  ];
  if (isSigh(said)) return step(said, { talk: "nod" }, "a sigh, and nothing asked");
  if (!("near" in taken) && taken.every(({ tool }) => tool.name === "trouble") && onlyPraised(said))
    return step(said, { talk: "nod" }, "it went well, and nothing is asked");
  if ("near" in taken && onlyHeard(said)) return step(said, { talk: "nod" }, "heard, and nothing asked");
  const steps = "near" in taken ? [undefined] : taken;
  for (const each of steps) {
    const none = elsewhere(each?.reading ?? said, now, each?.tool.name);
    if (!none) continue;
    const near = each?.tool.name ?? ("near" in taken ? taken.near[0]?.name : undefined);
    const inputs = { elsewhere: none.name, kind: none.kind, ...(near ? { near } : {}) };
    return step(said, inputs, `none of ours: ${none.name}`);
  }
  return undefined;
}

function ours(said: Reading, now: State, names: Names, understanding: Understanding): Step[] | Unread {
  if (isFirst(now) && names.timers.length === 0) return nextOf(said, now, names, understanding);
  const every = ofAll(said, now, names, understanding);
  if (every) return every;
  const { text, topic, back } = meantBehind(said, now, names.timers);
  const asked = back && understanding.tools.find((each) => each.name === back.topic.tool);
  if (back && asked) {
    const { topic, rest } = back;
    const state = { ...now, last: topic, table: topic.table ?? now.table };
    if (rest !== "") return next(resaid(said, rest, understanding, names), state, names, understanding);
    const trace = () => [`comes back to what ${asked.name} was asked before`];
    return [{ tool: asked, inputs: topic.inputs, known: knownFrom(topic.inputs, {}), reading: said, trace }];
  }
  const reading = text === undefined ? said : resaid(said, text, understanding, names);
  return nextOf(reading, topic ? { ...now, last: topic } : now, names, understanding);
}

/** "both again for 240 g": each question of the last turn with what changes, where every one of them takes it whole. */
function ofAll(said: Reading, now: State, names: Names, understanding: Understanding): Step[] | undefined {
  const again = now.pending ? undefined : allAgain(said, now);
  if (!again) return undefined;
  const alike = again.restOf ? undefined : resaid(said, again.rest, understanding, names);
  const { turn: _turn, row: _row, waiting: _waiting, ...before } = now;
  const steps = again.topics.flatMap((topic): Step[] => {
    const tool = understanding.tools.find((each) => each.name === topic.tool);
    if (!tool) return [];
    const { inputs, from } = topic;
    const reading = alike ?? resaid(said, again.restOf?.(topic) ?? again.rest, understanding, names);
    const trace = () => [`asks ${tool.name} again, with what it is of now`];
    const taken = next(
      reading,
      { ...before, last: topic, table: topic.table ?? before.table },
      names,
      understanding,
    );
    const [step, ...others] = Array.isArray(taken) ? taken : [];
    const isOwn = step && others.length === 0 && step.tool === tool && isTaken(step, inputs);
    // "50 at 3.5 cm, both": so many are said of each, a weight is what the other one comes to
    if (isOwn && !(from && Object.values(from).includes("mass"))) return [step];
    return from ? [{ tool, inputs, known: knownFrom(inputs, {}), reading, from, trace }] : [];
  });
  return steps.length === again.topics.length && again.topics.some(isRoot) ? steps : undefined;
}

/** Nothing of it is left, and it isn't what was asked before. */
const isTaken = ({ inputs, left, lost }: Step, before: Inputs): boolean =>
  left === undefined && lost !== true && JSON.stringify(inputs) !== JSON.stringify(before);

/** The same of a question that comes back to no size before. */
function nextOf(said: Reading, now: State, names: Names, { tools, reader }: Understanding): Step[] | Unread {
  const own = withoutBareHours(withBottles(withNames(said, names.formulas), names.bottles), now.last?.tool);
  const before = now.pending ? undefined : tools.find((each) => each.name === now.last?.tool);
  const reading = before ? shifted(own, before, now.last?.inputs ?? {}) : own;
  const state = isFirst(now) ? now : goesOnFrom(reading, now);
  const asked = askedFor(reading);
  const scores = score(reading, tools)
    .map((each) => ({
      ...each,
      points:
        each.points +
        against(each.tool.name, asked) +
        pointsAfter(tools, each.tool, state.last?.tool, reading.mask),
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
  const answer =
    answersPending(reading, state, names, scores, tools, recipe) ??
    answersWaiting(said, state, (asked) => answersPending(reading, asked, names, scores, tools, recipe));
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
  const again = state.last && sameAgain(reading, state);
  const repeated = again && tools.find((each) => each.name === (again.tool ?? state.last?.tool));
  if (again && repeated && state.last)
    return [
      {
        tool: repeated,
        inputs: without(again.inputs ?? state.last.inputs, again.drop),
        known: knownFrom(state.last.inputs, {}),
        reading,
        ...(again.unit ? { unit: again.unit } : {}),
        ...(again.against ? { against: again.against } : {}),
        repeats: true,
        trace: () => [again.because],
      },
    ];
  const chosen =
    strange(reading, scores[0]?.points ?? 0) || (state.last && asksNoSum(reading, state.last.tool))
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
  const lost = losesSome(tool.name, reading, drafted);
  const befores =
    pair.length === 2 ? pair.map((inputs) => ({ ...state, last: { tool: tool.name, inputs } })) : [state];
  return befores.flatMap((before) =>
    drafted.map((draft) => ({
      ...stepFrom(tool, draft, seenBy(tool, reading, state.in_box), before, follows, trace),
      ...holds,
      ...(left.length > 0 ? { left } : {}),
      ...(lost ? { lost } : {}),
    })),
  );
}

const without = ({ ...inputs }: Inputs, key: string | undefined): Inputs => {
  if (key !== undefined) delete inputs[key];
  return inputs;
};
