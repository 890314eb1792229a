/** One conversation over the record: reads the world, understands, computes, carries effects out, remembers. */

import { type Asked, askedFor, holds } from "../intents/asked-for.ts";
import { type Names, next, questions } from "../intents/converse.ts";
import { dictated, isDictating, recipeFromFile } from "../intents/dictation.ts";
import { sanitise } from "../intents/normalise.ts";
import { remember } from "../intents/remember.ts";
import { freshState, type State } from "../intents/state.ts";
import type { Step } from "../intents/step.ts";
import { told } from "../intents/told.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { RecordData } from "../store/schema.ts";
import type { RecordStore } from "../store/types.ts";
import type { Answer, Outcome, Reading, World } from "../tools/contract/index.ts";
import { checkInputs } from "../tools/lib/check.ts";
import { inBenchUnit, inOunces } from "../tools/lib/ounces.ts";
import type { Limit } from "./files.ts";
import { handOver, type Makers } from "./hand-over.ts";
import { nearMiss, topicNamed } from "./not-known.ts";
import { notesFromFile } from "./notes-file.ts";

export interface Turn {
  asked: string;
  answers: Answer[];
}

export interface Session {
  /** Answers a line. A blank line starts a new conversation and has no answers. */
  ask(line: string): Promise<Turn>;
  /** The record now, for the timers on screen. */
  world(): Promise<World>;
  /** What the store had to say about the record, such as a damaged file kept aside. */
  notice?(): string | undefined;
}

/** What a session needs from outside. `now_ms` is the only clock; `file` writes what an answer hands over. */
export interface Surroundings {
  store: RecordStore;
  understanding: Understanding;
  now_ms(): number;
  writeFile?(name: string, content: string | Uint8Array): Promise<string>;
  /** Make PDF and CSV of what answers hand over; loaded when they are needed. */
  makers?: Makers;
  /** Reads a text file that she named, or says why not. */
  readFile?(path: string, limit?: Limit): Promise<{ ok: true; text: string } | { ok: false; why: string }>;
}

/** Starts a conversation. Nothing is kept between sessions but the record. */
export function startSession(around: Surroundings): Session {
  let state: State = freshState();
  let last: World["last"];
  let unread: World["unread"];
  /** How the questions of this turn were read. */
  let read: string[] = [];
  let notice: string | undefined;

  const worldOf = (record: RecordData): World => ({
    now_ms: around.now_ms(),
    bench: record.bench,
    timers: record.timers,
    // read when a calculator looks: most never do
    get notes() {
      return record.notes;
    },
    bottles: record.bottles,
    stock: record.stock,
    formulas: record.formulas,
    plans: record.plans,
    get copies() {
      return {
        days: around.store.copies(),
        ...(record.saved_ms === undefined ? {} : { changed_ms: record.saved_ms }),
      };
    },
    ...(record.changes.at(-1) ? { undoable: record.changes.at(-1)?.name } : {}),
    ...(last ? { last } : {}),
    ...(unread ? { unread } : {}),
  });

  async function current(): Promise<World> {
    const read = await around.store.read();
    if (!read.ok) throw new StoreFailure(read.problem.message, read.problem.try);
    if (read.value.notice) notice = read.value.notice;
    return worldOf(read.value.record);
  }

  /** Computes, and where the answer changes the record, computes again under the lock so that nothing is lost. */
  async function run(step: Step, world?: World): Promise<Outcome> {
    const dry = computeWith(step, world ?? (await current()));
    if (!dry.effects?.length) return dry;
    const done = await around.store.change((record) => {
      const outcome = computeWith(step, worldOf(record));
      return {
        effects: outcome.effects ?? [],
        ...(outcome.change ? { change: outcome.change } : {}),
        value: outcome,
      };
    });
    // a plan is an answer even where it can't be kept
    if (!done.ok && !dry.change && dry.effects.every((effect) => "list" in effect && effect.list === "plans"))
      return { ...dry, cautions: [...(dry.cautions ?? []), `The plan isn't kept: ${done.problem.message}`] };
    if (!done.ok)
      return {
        status: "impossible",
        headline: `Not saved: ${done.problem.message}`,
        cautions: [done.problem.try],
      };
    return handOver(done.value, done.value.effects ?? [], around);
  }

  /** Runs a step; a text file that it needs is read first, and its lines take the file's place. */
  async function runWith(
    step: Step,
    world?: World,
  ): Promise<{ outcome: Outcome; inputs: Record<string, unknown> }> {
    const { outcome, inputs } = await settle(step, (each) => run(each, world));
    const { file, as } = outcome.wants ?? {};
    if (!file || !around.readFile) return { outcome, inputs };
    if (as === "notes") {
      const found = await notesFromFile(file, around, around.understanding);
      if (typeof found === "string") return { outcome: { status: "impossible", headline: found }, inputs };
      // what the file held isn't kept for the next turn
      return { outcome: await run({ ...step, inputs: { ...inputs, found } }), inputs };
    }
    const read = await around.readFile(file);
    const found = read.ok ? recipeFromFile(inputs, file, read.text, around.understanding) : read.why;
    if (typeof found === "string") return { outcome: { status: "impossible", headline: found }, inputs };
    return { outcome: await run({ ...step, inputs: found }), inputs: found };
  }

  /** Runs a step and remembers it. `world` is the record as just read, where nothing has changed it since. */
  async function take(step: Step, world?: World): Promise<Answer> {
    const { outcome, inputs } = await runWith(step, world);
    state = remember(
      state,
      {
        tool: step.tool,
        inputs,
        reading: step.reading,
        known: step.known,
        ...(step.in_box === undefined ? {} : { in_box: step.in_box }),
      },
      outcome,
    );
    read = [...new Set([...read, ...told(step.reading, { ...step, inputs })])];
    // what was taken back was never said: nothing is put right in its place
    if (step.tool.name === "undo" && outcome.status === "answered") last = undefined;
    if (!["explain", "help", "undo"].includes(step.tool.name)) {
      unread = undefined;
      last = {
        tool: step.tool.name,
        question: step.reading.said,
        answer: outcome,
        readings: read,
      };
    }
    return answerFrom(step.tool.name, outcome);
  }

  return {
    world: current,
    notice() {
      notice = around.store.late() ?? notice;
      return notice;
    },
    async ask(line) {
      read = [];
      const asked = sanitise(isDictating(state) ? line : rowsJoined(line));
      const dictation = dictated(asked, state, around.understanding);
      if (dictation) return { asked, answers: [await take(dictation)] };
      if (asked === "") {
        state = freshState();
        last = unread = undefined;
        return { asked, answers: [] };
      }
      const answers: Answer[] = [];
      const steps: Said[] = [];
      for (const reading of questions(asked, around.understanding)) {
        const world = await current();
        const found = next(reading, state, namesIn(world), around.understanding);
        if (!Array.isArray(found)) {
          unread = { question: reading.said, readings: told(reading) };
          answers.push(
            declined(
              reading,
              found.near.map((tool) => tool.name),
            ),
          );
          continue;
        }
        for (const [at, step] of found.entries()) {
          const answer = await take(step, at === 0 ? world : undefined);
          answers.push(answer);
          steps.push({ answer, inputs: state.last?.inputs ?? {} });
        }
      }
      return { asked, answers: withoutSettled(answers, steps) };
    },
  };
}

interface Said {
  answer: Answer;
  inputs: Record<string, unknown>;
}

/**
 * "I want a 65 % margin. My cost is $10.50": the first part alone would ask for what the second says. A question is left
 * out where a later part of the same turn was answered by the same calculator with all that it knew.
 */
const withoutSettled = (answers: readonly Answer[], steps: readonly Said[]): Answer[] =>
  answers.filter((answer) => {
    const at = steps.findIndex((each) => each.answer === answer);
    const own = steps[at];
    if (answer.status !== "asking" || !own) return true;
    return !steps
      .slice(at + 1)
      .some(
        ({ answer: later, inputs }) =>
          later.tool === answer.tool &&
          later.status === "answered" &&
          Object.entries(own.inputs).every(
            ([key, value]) => key === "want" || JSON.stringify(inputs[key]) === JSON.stringify(value),
          ),
      );
  });

/** A recipe of several rows in one turn: "recipe snowy shells:" and its lines below. Other turns stay as they are. */
const rowsJoined = (line: string): string =>
  /^[^\r\n]*\b(?:recipe|formula)\b[^\r\n]*[\r\n]/i.test(line)
    ? line
        .trim()
        .replace(/:?\s*[\r\n]+/, ": ")
        .replace(/\s*[\r\n]+\s*/g, "; ")
    : line;

/** The store could not even be read. Caught at the one boundary in main. */
export class StoreFailure extends Error {
  constructor(
    message: string,
    readonly hint: string,
  ) {
    super(message);
  }
}

function computeWith(step: Step, world: World): Outcome {
  const checked = checkInputs(step.tool, step.inputs);
  if (!checked.ok) return checked.outcome;
  const outcome = inBenchUnit(step.tool.name, step.tool.compute(checked.inputs, world), world);
  if (outcome.status === "answered" && step.left) return unsure(step.left);
  const asked = outcome.status === "answered" ? askedFor(step.reading) : undefined;
  if (!holds(step.tool.name, asked, outcome.figures)) return elsewhere(step.tool.name, asked);
  return withTaken(step.unit === "oz" ? inOunces(outcome) : outcome, step.reading);
}

/** What an amount was worked out from stands first of what was taken for the answer. */
function withTaken(outcome: Outcome, { amounts }: Reading): Outcome {
  const taken = amounts.flatMap((amount) => amount.taken ?? []);
  return outcome.status === "answered" && taken.length > 0
    ? { ...outcome, assumed: [...taken, ...(outcome.assumed ?? [])] }
    : outcome;
}

/** A weight that was said and isn't in the sum: no number is given until it is clear what it is for. */
function unsure(left: readonly string[]): Outcome {
  const question = `What is the ${left.join(" and the ")} for? I don't want to leave it out: say it once more, one thing at a time.`;
  return { status: "asking", headline: question, question };
}

/** An answer without a figure of what was asked for is another question's. */
function elsewhere(tool: string, asked: Asked | undefined): Outcome {
  const { said = "" } = asked ?? {};
  if (tool === "dose" && asked?.isIngredient)
    return {
      status: "declined",
      headline: `I have no rule for how much ${said} goes into that, so I give no figure. I dose flavors, extracts, pastes, powders, salt and color.`,
    };
  const question = `You asked for "${said}", and what I would work out holds no figure of it. What is it for, and how much of that is there?`;
  return { status: "asking", headline: question, question };
}

/** Runs a step; where it asks for what the turn before knew, runs it again with that. */
async function settle(
  step: Step,
  run: (step: Step) => Promise<Outcome>,
): Promise<{ outcome: Outcome; inputs: Record<string, unknown> }> {
  const outcome = await run(step);
  if (outcome.status !== "asking" || !step.fallback) return { outcome, inputs: step.inputs };
  const again = await run({ ...step, inputs: step.fallback });
  return again.status !== "asking"
    ? { outcome: again, inputs: step.fallback }
    : { outcome, inputs: step.inputs };
}

const namesIn = (world: World): Names => ({
  formulas: world.formulas.map((each) => each.name),
  bottles: world.bottles.map((each) => each.taste),
  timers: world.timers.filter((each) => each.state === "running").map((each) => each.label),
});

function answerFrom(tool: string, outcome: Outcome): Answer {
  const {
    slot: _slot,
    wants: _wants,
    leaves: _leaves,
    effects: _effects,
    change: _change,
    ...answer
  } = outcome;
  return { tool, ...answer };
}

function declined(reading: Reading, near: string[]): Answer {
  const about = near.map(topicNamed);
  const hint = about.length ? `Did you mean something about ${about.join(" or ")}? ` : "";
  return {
    tool: "help",
    status: "declined",
    headline: `${nearMiss(reading) || `${hint}I didn't understand that. `}I weigh, convert, time and note for macarons: try "230 g buttercream, how much flavor?" or "help".`,
  };
}
