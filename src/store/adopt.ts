/** Finds files of old entries again that a damaged or missing record no longer names. */
import { join } from "node:path";
import type { Checked } from "./check.ts";
import { namesIn } from "./copies.ts";
import type { Files } from "./files.ts";
import { frozen } from "./frozen.ts";
import { fromOf, partOf, partSize, readPart } from "./parts.ts";
import type { Place } from "./place.ts";
import { emptyRecord, type LongList, type RecordData, Seal } from "./schema.ts";

/**
 * What was read of the record, with all files of old entries that nothing in it speaks of; of several for the same
 * ids the newest. Undefined where there is neither record nor such a file. Throws as node:fs.
 */
export function adopted(files: Files, place: Place, checked: Checked | undefined): Checked | undefined {
  const record = checked?.record ?? emptyRecord();
  const known = new Set(record.sealed.map(({ list, from }) => `${list} ${from}`));
  const newest = new Map<string, { seal: Seal; at_ms: number }>();
  for (const file of namesIn(files, place.parts)) {
    const seal = sealOf(file);
    const key = seal && `${seal.list} ${seal.from}`;
    if (!seal || !key || known.has(key)) continue;
    const at_ms = files.lstatSync(join(place.parts, file)).mtimeMs;
    if (at_ms >= (newest.get(key)?.at_ms ?? 0)) newest.set(key, { seal, at_ms });
  }
  if (newest.size === 0) return checked;
  const seals = [...newest.values()].map(({ seal }) => ({
    ...seal,
    count: readPart(files, place, seal).entries.length,
  }));
  return { ...checked, record: frozen(withSeals(record, seals)), state: "damaged" };
}

function withSeals(record: RecordData, seals: Seal[]): RecordData {
  const last = (list: LongList) =>
    Math.max(record.last_ids[list], ...seals.flatMap((seal) => (seal.list === list ? [seal.to] : [])));
  return {
    ...record,
    sealed: [...record.sealed, ...seals].sort((a, b) => a.list.localeCompare(b.list) || a.from - b.from),
    last_ids: { ...record.last_ids, notes: last("notes"), timers: last("timers") },
  };
}

/** What a file's name says that it holds. Its sum isn't known, so it is checked whenever it is read. */
function sealOf(file: string): Seal | undefined {
  const [, list, from, to] = /^([a-z]+)-(\d+)-(\d+)-/.exec(file) ?? [];
  const seal = Seal().safeParse({ list, from: Number(from), to: Number(to), count: 0, file });
  const fits = seal.success && fromOf(partOf(seal.data.from)) === seal.data.from;
  return fits && seal.data.to === seal.data.from + partSize - 1 ? seal.data : undefined;
}
