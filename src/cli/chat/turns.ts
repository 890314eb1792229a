/** Answers lines one after the other, however many come at once, and keeps their order. */
import type { Turn } from "../session.ts";
import { isLeaving } from "./leave.ts";
import { type OwnWord, ownWord } from "./own-words.ts";

export interface TurnsAround {
  ask(line: string): Promise<Turn>;
  /** A list is being told line by line: an empty line ends it. */
  isListing(): boolean;
  /** A turn that was answered. */
  show(turn: Turn): void;
  /** A word for the chat itself. */
  own(word: Exclude<OwnWord, "new conversation">, line: string): Promise<void> | void;
  /** The baker ended a conversation, and said so. */
  startOver(line: string): void;
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
  let last: Promise<void> = Promise.resolve();

  function go(): void {
    stopped = true;
    around.leave();
  }

  async function answer(line: string): Promise<void> {
    if (stopped) return;
    if (isLeaving(line)) return go();
    const word = ownWord(line);
    if (word === "new conversation") return startOver(line);
    if (word) return around.own(word, line);
    // Sticky fingers come onto Enter all the time: an empty line changes nothing, but where it ends a list.
    if (line.trim() === "" && !around.isListing()) return;
    around.show(await around.ask(line));
    await around.after();
  }

  /** To the session a blank line is a new conversation, behind one that ends a list. */
  async function startOver(line: string): Promise<void> {
    if (around.isListing()) around.show(await around.ask(""));
    await around.ask("");
    around.startOver(line);
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
