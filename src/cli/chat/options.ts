/** What the chat needs from the command that opens it. */
import type { Session } from "../session.ts";

export interface ChatOptions {
  session: Session;
  /** The only clock. */
  now_ms(): number;
  /** Where the record is kept; named at the top. */
  home: string;
  /** Marks timers as rung in the record. */
  ring(timerIds: number[]): Promise<void>;
  /** Questions of earlier sessions, the oldest first. */
  loadHistory(): Promise<readonly string[]>;
  /** Keeps the questions; called after each with all of them. */
  saveHistory(lines: readonly string[]): Promise<void>;
  /** What stands at the top when the chat opens, a paragraph each. */
  intro: readonly string[];
  stdin?: NodeJS.ReadStream;
  stdout?: NodeJS.WriteStream;
  env?: Readonly<Record<string, string | undefined>>;
}
