/** Records are shared between readers, so none of them may alter one. */
import { listNames, type RecordData } from "./schema.ts";

/** Freezes a record with its parts, lists and entries. What lies inside of an entry is left as it is. */
export function frozen(record: RecordData): RecordData {
  for (const list of listNames) {
    for (const entry of record[list]) Object.freeze(entry);
    Object.freeze(record[list]);
  }
  for (const part of [record.bench, record.last_ids, record.sealed, record.changes, ...record.changes])
    Object.freeze(part);
  return Object.freeze(record);
}
