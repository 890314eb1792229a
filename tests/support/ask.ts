/** Sentences through the whole program but the terminal and the disk: a session over a record in memory. */
import { type Session, startSession } from "../../src/cli/session.ts";
import { next, questions, type Unread } from "../../src/intents/converse.ts";
import { freshState } from "../../src/intents/follow/state.ts";
import type { Step } from "../../src/intents/follow/step.ts";
import { understanding } from "../../src/intents/understanding.ts";
import { applyEffects } from "../../src/store/apply.ts";
import { emptyRecord, type RecordData } from "../../src/store/schema.ts";
import type { RecordStore } from "../../src/store/types.ts";
import type { Answer, Reading } from "../../src/tools/contract/index.ts";
import { tools } from "../../src/tools/registry.ts";
import { standing } from "./world.ts";

/** Compiled once a test file. */
const understood = understanding(tools);

/** A sentence in a fresh conversation: for each question its steps, or what it was taken for. */
export const steps = (sentence: string): (Step[] | Unread)[] =>
  questions(sentence, understood).map((reading) =>
    next(reading, freshState(), { formulas: [], bottles: [], timers: [] }, understood),
  );

/** How a sentence is read, a reading a question. */
export const readings = (sentence: string): Reading[] => questions(sentence, understood);

/** A record that lives in memory and carries effects out as the one on disk does. */
export function memoryStore(start: Partial<RecordData> = {}, now_ms = new Date(standing).getTime()) {
  let record: RecordData = { ...emptyRecord(), ...start };
  const store: RecordStore = {
    home: "memory",
    copies: () => [],
    late: () => undefined,
    async read() {
      return { ok: true, value: { record } };
    },
    async change(work) {
      const { effects, change, value } = work(record);
      record = applyEffects(record, effects, change, now_ms);
      return { ok: true, value };
    },
  };
  return { store, record: () => record };
}

export interface Baker {
  /** The answers to one turn. */
  ask(line: string): Promise<Answer[]>;
  /** The one answer to a turn; more or none is a failed test. */
  one(line: string): Promise<Answer>;
  session: Session;
  record(): RecordData;
  /** Files that answers handed over. */
  files: { name: string; text: string; bytes?: Uint8Array }[];
  /** Puts the clock to another local moment: "2026-03-14T13:00:00". */
  setClock(now: string): void;
}

/**
 * Starts a conversation.
 * @param now local moment at which the clock stands
 * @param texts files that can be read, by their paths
 */
export function baker({
  now = standing,
  record = {} as Partial<RecordData>,
  texts = {} as Record<string, string>,
} = {}): Baker {
  let now_ms = new Date(now).getTime();
  const memory = memoryStore(record, now_ms);
  const files: Baker["files"] = [];
  const session = startSession({
    store: memory.store,
    understanding: understood,
    now_ms: () => now_ms,
    async writeFile(name, content) {
      files.push(typeof content === "string" ? { name, text: content } : { name, text: "", bytes: content });
      return name;
    },
    makers: {
      paper: () => import("../../src/cli/paper/paper.ts"),
      csv: () => import("../../src/cli/csv/csv.ts"),
    },
    async readFile(path) {
      const text = texts[path];
      return text === undefined ? { ok: false, why: `There is no ${path}.` } : { ok: true, text };
    },
  });
  const ask = async (line: string) => (await session.ask(line)).answers;
  return {
    ask,
    session,
    files,
    record: memory.record,
    setClock: (moment) => {
      now_ms = new Date(moment).getTime();
    },
    async one(line) {
      const answers = await ask(line);
      if (answers.length !== 1 || !answers[0])
        throw new Error(`${answers.length} answers to "${line}": ${JSON.stringify(answers)}`);
      return answers[0];
    },
  };
}

/** The answers to the last turn of a conversation at that moment; a text may hold several turns, with "|" between. */
export async function lastAt(now: string, ...turns: string[]): Promise<Answer[]> {
  const { ask } = baker({ now });
  let answers: Answer[] = [];
  for (const turn of turns.flatMap((each) => each.split("|"))) answers = await ask(turn);
  return answers;
}

/** The same at the moment at which the tests' clock stands. */
export const lastOf = (...turns: string[]) => lastAt(standing, ...turns);

/** The one answer to the last turn; more or none is a failed test. */
export async function onlyOf(...turns: string[]): Promise<Answer> {
  const [answer, ...more] = await lastOf(...turns);
  if (!answer || more.length > 0)
    throw new Error(`${more.length + (answer ? 1 : 0)} answers to "${turns.at(-1)}"`);
  return answer;
}

/** A figure of the one answer to the last turn, by its name. */
export const figureOf = async (name: string, ...turns: string[]) =>
  (await onlyOf(...turns)).figures?.find((each) => each.name === name);

/** The answer to the last turn of a conversation, with its figures by name. */
export async function talk(...turns: string[]) {
  const { one } = baker();
  let answer = await one(turns[0] as string);
  for (const turn of turns.slice(1)) answer = await one(turn);
  const of = (name: string) => answer.figures?.find((each) => each.name === name);
  return { ...answer, of };
}

/** The one answer to the last turn, with its figures by name. */
export async function withFigures(...turns: string[]) {
  const answer = await onlyOf(...turns);
  const range = (name: string) => answer.figures?.find((each) => each.name === name);
  return { ...answer, range, value: (name: string) => range(name)?.value };
}
