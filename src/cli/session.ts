/** One conversation over the record: reads the world, understands, computes, carries effects out, remembers. */

import { type Names, questions } from "../intents/converse.ts";
import { withDerived } from "../intents/follow/derived.ts";
import { remember } from "../intents/follow/remember.ts";
import { freshState, type State } from "../intents/follow/state.ts";
import type { Step } from "../intents/follow/step.ts";
import { dictated, isDictating, recipeFromFile } from "../intents/recipe/dictation.ts";
import { rowsJoined } from "../intents/recipe/rows-joined.ts";
import { sanitise } from "../intents/text/normalise.ts";
import { told } from "../intents/told.ts";
import { withoutTalk } from "../intents/turn/without-talk.ts";
import type { Understanding } from "../intents/understanding.ts";
import type { RecordData } from "../store/schema.ts";
import type { RecordStore } from "../store/types.ts";
import type { Answer, Outcome, Reading, World } from "../tools/contract/index.ts";
import { answerFrom, declined, type Said, withoutSettled } from "./answers.ts";
import type { Limit } from "./files.ts";
import { handOver, type Makers } from "./hand-over.ts";
import { meantBy } from "./meant-by.ts";
import { notesFromFile } from "./notes-file.ts";
import { computeWith, settle } from "./outcome.ts";
import { tried } from "./tried.ts";
import { heardAnew } from "./two-of-one.ts";
import { isSound, understood } from "./understood.ts";
import { type Doubt, doubtOf, settled } from "./which-number.ts";

export interface Turn {
  asked: string;
  answers: Answer[];
}

export interface Session {
  /** Answers a line. A blank line starts a new conversation and has no answers. */
  ask(line: string): Promise<Turn>;
  /** The record now, for the timers on screen. */
  world(): Promise<World>;
  /** A recipe is being told line by line: a blank line ends it, and not the conversation. */
  isListing?(): boolean;
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
  /** A number that was asked about: which one it is. */
  let doubt: Doubt | undefined;
  /** How the questions of this turn were read; written out when it is asked for. */
  let read: Step[] = [];
  let notice: string | undefined;
  /** This turn has changed the record: it can't be taken another way. */
  let changed = false;

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
    changed = true;
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
  async function take(found: Step, world?: World): Promise<Answer> {
    const step = withDerived(found, state.table);
    const { outcome, inputs } = await runWith(step, world);
    state = remember(
      state,
      {
        tool: step.tool,
        inputs,
        reading: step.reading,
        known: step.known,
        ...(step.in_box === undefined ? {} : { in_box: step.in_box }),
        ...(step.from ? { from: step.from } : {}),
      },
      outcome,
    );
    read.push({ ...step, inputs });
    // what was taken back was never said: nothing is put right in its place
    if (step.tool.name === "undo" && outcome.status === "answered") last = undefined;
    if (!["explain", "help", "undo"].includes(step.tool.name)) {
      unread = undefined;
      const steps = read;
      last = {
        tool: step.tool.name,
        question: step.reading.said,
        answer: outcome,
        get readings() {
          return [...new Set(steps.flatMap((each) => told(each.reading, each)))];
        },
      };
    }
    return answerFrom(step.tool.name, outcome);
  }

  const questionsIn = (text: string, world: World): Reading[] =>
    questions(text, around.understanding, namesIn(world));

  /** Answers the questions of a text, one after the other. */
  async function answersTo(text: string, parts: readonly Reading[]): Promise<Answer[]> {
    const answers: Answer[] = [];
    const steps: Said[] = [];
    let rest = [...parts];
    let cuts = 0;
    for (let reading = rest[0]; reading; reading = rest[0]) {
      const world = await current();
      const names = namesIn(world);
      const hearing = { state, world, names, understanding: around.understanding };
      const taken = meantBy(reading, hearing);
      const anew = cuts < mostCuts ? heardAnew([reading, ...rest.slice(1)], taken, hearing) : undefined;
      rest = anew ?? rest.slice(1);
      if (anew) {
        cuts += 1;
        continue;
      }
      if (!Array.isArray(taken)) {
        unread = { question: reading.said, readings: told(reading) };
        const near = taken.near.map((tool) => tool.name);
        answers.push(declined(reading, near));
        continue;
      }
      for (const [at, step] of taken.entries()) {
        const answer = await take(step, at === 0 ? world : undefined);
        answers.push(answer);
        steps.push({
          answer,
          inputs: state.last?.inputs ?? {},
          sum: step.tool.sum,
          ...(step.repeats ? { repeats: step.repeats } : {}),
        });
        doubt ??= doubtOf(text, step.reading, [answer]);
      }
    }
    return withoutSettled(answers, steps);
  }

  /** Answers a text; where that wasn't understood, what is left of it without the talk around it, if that is. */
  async function answered(text: string): Promise<Answer[]> {
    const world = await current();
    const names = namesIn(world);
    const dry = (line: string, of = questionsIn(line, world)) =>
      tried(of, state, world, names, around.understanding);
    const again = (line: string) => answersTo(line, questionsIn(line, world));
    const parts = questionsIn(text, world);
    // what one question changed can't be taken another way: of several, all are looked at first
    if (parts.length > 1 && withoutTalk(text).length === 0) return answersTo(text, parts);
    if (parts.length > 1) {
      const whole = dry(text, parts);
      const shorter = whole.every(isSound) ? undefined : understood(text, whole, dry);
      return shorter === undefined ? answersTo(text, parts) : again(shorter);
    }
    const before = { state, last, unread };
    changed = false;
    const answers = await answersTo(text, parts);
    if (changed || answers.every(isSound)) return answers;
    const after = { state, last, unread };
    ({ state, last, unread } = before);
    const shorter = understood(text, answers, dry);
    if (shorter === undefined) {
      ({ state, last, unread } = after);
      return answers;
    }
    doubt = undefined;
    read = [];
    return again(shorter);
  }

  return {
    world: current,
    isListing: () => isDictating(state),
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
      const text = (doubt && settled(doubt, asked)) ?? asked;
      doubt = undefined;
      return { asked, answers: await answered(text) };
    },
  };
}

/** So often a turn is cut anew: nobody asks more at once, and a cut may lead to the parts it came from. */
const mostCuts = 4;

/** The store could not even be read. Caught at the one boundary in main. */
export class StoreFailure extends Error {
  constructor(
    message: string,
    readonly hint: string,
  ) {
    super(message);
  }
}

const namesIn = (world: World): Names => ({
  formulas: world.formulas.map((each) => each.name),
  bottles: world.bottles.map((each) => each.taste),
  timers: world.timers.filter((each) => each.state === "running").map((each) => each.label),
});
