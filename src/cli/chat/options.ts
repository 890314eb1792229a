/** What the chat needs from the command that opens it. */
import type { World } from "../../tools/contract/index.ts";
import type { Session } from "../session.ts";
import type { Opened } from "./first-frame.ts";

export interface ChatOptions {
  session: Session;
  /** The only clock. */
  now_ms(): number;
  /** Where the record is kept; named at the top. */
  home: string;
  /** The record is an invented one, gone when the chat is left. */
  isDemo?: boolean;
  /** Marks timers as rung in the record. */
  ring(timerIds: number[]): Promise<readonly number[]>;
  /** Questions of earlier sessions, the oldest first. */
  loadHistory(): Promise<readonly string[]>;
  /** Keeps lines that were just asked, behind the others. */
  keepHistory(lines: readonly string[]): Promise<void>;
  /** What stands at the top when the chat opens, a paragraph each; no world where the record can't be read. */
  intro(world: World | undefined): readonly string[];
  /** Sentences that work, for the likely end of a line. */
  examples: readonly string[];
  /** Reads answers and rings aloud from the start. */
  speak?: boolean;
  /** The first frame, where it was drawn before the chat was loaded. */
  opened?: Opened;
  stdin?: NodeJS.ReadStream;
  stdout?: NodeJS.WriteStream;
  env?: Readonly<Record<string, string | undefined>>;
}
