/** Answers lines one after the other, however many come at once, and keeps their order. */
import type { Turn } from "../session.ts";
import { isLeaving } from "./leave.ts";
import { type OwnWord, ownWord } from "./own-words.ts";

export interface TurnsAround {
  ask(line: string): Promise<Turn>;
  /** A turn that was answered. */
  show(turn: Turn): void;
  /** A word for the chat itself. */
  own(word: OwnWord, line: string): Promise<void> | void;
  /** The baker ended a conversation with a blank line. */
  startOver(): void;
  /** After each answer, before the next question. */
  after(): Promise<void>;
  trouble(error: unknown): void;
  leave(): void;
}

export interface Turns {
  submit(lines: readonly string[]): void;
  /** Leaves when what was submitted before is answered. */
  leave(): void;
  /** Drops what waits; resolves when the answer under way has ended. */
  stop(): Promise<void>;
}

/** A queue of questions. A word like "bye" leaves in its turn, so that what was asked before is answered. */
export function startTurns(around: TurnsAround): Turns {
  let stopped = false;
  let talking = false;
  let last: Promise<void> = Promise.resolve();

  function go(): void {
    stopped = true;
    around.leave();
  }

  async function answer(line: string): Promise<void> {
    if (stopped) return;
    if (isLeaving(line)) return go();
    const word = ownWord(line);
    if (word) return around.own(word, line);
    // Enter on an empty line of a conversation that hasn't begun is nothing worth a word.
    const blank = line.trim() === "";
    if (blank && !talking) return;
    const turn = await around.ask(line);
    // A blank line that ends a list has an answer; one that ends a conversation has none.
    const over = blank && turn.answers.length === 0;
    talking = !over;
    if (over) around.startOver();
    else around.show(turn);
    await around.after();
  }

  return {
    submit(lines) {
      for (const line of lines)
        last = last.then(() => answer(line)).catch((error: unknown) => around.trouble(error));
    },
    leave() {
      last = last.then(() => (stopped ? undefined : go()));
    },
    stop() {
      stopped = true;
      return last;
    },
  };
}
