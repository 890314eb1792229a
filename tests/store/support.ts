/** What the store's tests share: homes that go away again, entries, and file operations that fail on request. */
import * as fs from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { onTestFinished } from "vitest";
import { type Files, nodeFiles } from "../../src/store/files.ts";
import type { RecordData } from "../../src/store/schema.ts";
import type { RecordStore, Result, Work } from "../../src/store/types.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { noteNamed } from "./entries.ts";

export { noteNamed };

/** A fresh folder that is removed after the test. */
export function newHome(): string {
  const home = fs.mkdtempSync(join(tmpdir(), "record-test-"));
  onTestFinished(() => fs.rmSync(home, { recursive: true, force: true }));
  return home;
}

/** The file operations the store uses, each of which can be made to fail. */
export const operations: (keyof Files)[] = [
  "openSync",
  "writeFileSync",
  "fsyncSync",
  "closeSync",
  "renameSync",
  "linkSync",
  "unlinkSync",
  "readFileSync",
  "readdirSync",
  "lstatSync",
  "mkdirSync",
];

export const fileOf = (home: string): string => join(home, "record.json");

/** The record's own file as anyone else would read it. */
export const onDisk = (home: string): RecordData => JSON.parse(fs.readFileSync(fileOf(home), "utf8"));

/** All notes on disk, those in files of their own first, by other means than the store's. */
export function notesOnDisk(home: string): RecordData["notes"] {
  const { sealed, notes } = onDisk(home);
  const old = sealed
    .filter(({ list }) => list === "notes")
    .map(({ file }) => JSON.parse(fs.readFileSync(join(home, "record.parts", file), "utf8")).notes);
  return [...old, notes].flat();
}

export const addNote = (text: string): Effect => ({ do: "add", list: "notes", entry: noteNamed(text) });

/** A named piece of work that adds a note, or that carries other effects out. */
export const noting = (text: string) => (): Work<string> => ({
  effects: [addNote(text)],
  change: `the note "${text}"`,
  value: text,
});

export const doing = (effects: Effect[], change?: string) => (): Work<undefined> => ({
  effects,
  ...(change ? { change } : {}),
  value: undefined,
});

/** The value of a result that has to be one. */
export function got<T>(result: Result<T>): T {
  if (!result.ok) throw new Error(`${result.problem.kind}: ${result.problem.message}`);
  return result.value;
}

export const texts = (record: RecordData): string[] => record.notes.map((note) => note.text);

export const readTexts = async (store: RecordStore): Promise<string[]> =>
  texts(got(await store.read()).record);

export const systemError = (code: string, syscall: string): Error =>
  Object.assign(new Error(`${code}: made to fail, ${syscall}`), { code, syscall });

export interface Fault {
  files: Files;
  /** From call number `from` of the operation on, `times` calls fail with the code. */
  arm(operation: keyof Files, code: string, from?: number, times?: number): void;
  disarm(): void;
  fired(): number;
}

/** The real file operations, each of which can be made to fail. */
export function faultyFiles(base: Files = nodeFiles): Fault {
  let plan: { operation: keyof Files; code: string; from: number; times: number } | undefined;
  let calls = 0;
  let fired = 0;
  const files = { ...base } as Record<keyof Files, unknown>;
  for (const operation of Object.keys(base) as (keyof Files)[]) {
    if (typeof base[operation] !== "function") continue;
    files[operation] = (...args: unknown[]) => {
      if (plan?.operation === operation) {
        const call = calls++;
        if (call >= plan.from && call < plan.from + plan.times) {
          fired++;
          throw systemError(plan.code, operation.replace("Sync", ""));
        }
      }
      return (base[operation] as (...all: unknown[]) => unknown)(...args);
    };
  }
  return {
    files: files as unknown as Files,
    arm(operation, code, from = 0, times = 1) {
      plan = { operation, code, from, times };
      calls = 0;
      fired = 0;
    },
    disarm() {
      plan = undefined;
    },
    fired: () => fired,
  };
}

/** Without the flush to disk: for tests that write by the thousand and pull no plug. */
export const unflushed: Files = { ...nodeFiles, fsyncSync: () => undefined };
