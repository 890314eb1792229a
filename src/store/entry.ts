/** Entries and settings as they may be written: exactly what the schemas know, so that all of it is read again. */
import type { ListName } from "../tools/contract/answer.ts";
import { Bench } from "../tools/contract/record.ts";
import { isId } from "./ids.ts";
import { type Entry, entries } from "./schema.ts";

type Fields = Record<string, unknown>;

export type Fit<T> = { fits: true; value: T } | { fits: false; why: string };

/** An entry with `patch` laid over it; null or undefined in the patch takes a field out. */
export function fitEntry(list: ListName, fields: Fields, patch: Fields = {}): Fit<Entry> {
  const merged = withoutGaps({ ...fields, ...patch });
  const read = entries[list]().safeParse(merged);
  if (!read.success) return { fits: false, why: `${list}: ${read.error.issues.map(tell).join("; ")}` };
  if (!isId(read.data.id)) return { fits: false, why: `${list}: ${read.data.id} is no id` };
  // A field that the schema doesn't know would be gone at the next reading, without a word.
  const unknown = Object.keys(merged).find((key) => !Object.hasOwn(read.data, key));
  if (unknown !== undefined) return { fits: false, why: `${list}: no field ${unknown}` };
  return { fits: true, value: read.data };
}

/** The bench with one setting put, or taken out with null or undefined. */
export function fitSetting(bench: Bench, setting: string, value: unknown): Fit<Bench> {
  if (!Object.hasOwn(Bench().shape, setting)) return { fits: false, why: `bench: no setting ${setting}` };
  const read = Bench().safeParse(withoutGaps({ ...bench, [setting]: value }));
  if (!read.success) return { fits: false, why: `bench: ${read.error.issues.map(tell).join("; ")}` };
  return { fits: true, value: read.data };
}

const withoutGaps = (fields: Fields): Fields =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined && value !== null));

const tell = (issue: { path: PropertyKey[]; message: string }): string =>
  `${issue.path.join(".")} ${issue.message}`;
