/** What src/store promises. Everything else in the folder is how it keeps the promise. */
import type { Effect } from "../tools/contract/answer.ts";
import type { RecordData } from "./schema.ts";

/** Something went wrong with the record: said in a sentence, with what to try. Errors are values here. */
export interface StoreProblem {
  kind: "busy" | "full" | "read-only" | "damaged" | "newer" | "io";
  message: string;
  try: string;
  /** The file it is about. */
  file?: string;
}

export type Result<T> = { ok: true; value: T } | { ok: false; problem: StoreProblem };

/** What a piece of work asks of the record: the changes, how they are called, and what it found out. */
export interface Work<T> {
  effects: Effect[];
  /** Names the change for undo: "the 20 min timer". Without a name an undo passes it by (a timer that rang). */
  change?: string;
  value: T;
}

export interface RecordStore {
  /**
   * The record as it is on disk now. A damaged file is kept aside and named in `notice`; reading goes on without it.
   * Old notes are read from their files when `notes` is first looked at; that throws Failed where a file can't be
   * read. Timers are those that run and the recent ones.
   */
  read(): Promise<Result<{ record: RecordData; notice?: string }>>;
  /**
   * Runs `work` on the record under the lock and carries its effects out: acknowledged means written and flushed.
   * Work without effects writes nothing. On failure nothing changed, on disk or in memory.
   */
  change<T>(work: (record: RecordData) => Work<T>): Promise<Result<T>>;
  /** The local days that there are copies of, the oldest first: each the record as it was left on that day. */
  copies(): string[];
  /** What came up while old entries were read, once: a file of them that is damaged or missing. */
  late(): string | undefined;
  /** The folder that the record lives in. */
  readonly home: string;
}
