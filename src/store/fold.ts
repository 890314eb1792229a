/** What of a record is old, and where it goes. Pure. */
import { fromOf, partOf } from "./parts.ts";
import { type Entry, type LongList, longLists, type RecordData, type Seal } from "./schema.ts";

const day_ms = 86_400_000;

/** Entries of a long list that go into a file of their own. */
export interface Fold {
  list: LongList;
  part: number;
  entries: Entry[];
}

/**
 * The old entries that stand in the record: those of all parts but the last two, so that a list keeps 128 to 256 of
 * them, as much as is read at every question. Timers that still matter stay, however old: one that runs until it is a
 * month over its time, one that rang or was stopped for two days.
 * @param now_ms ms since the epoch
 */
export function oldEntries(record: RecordData, now_ms: number): Fold[] {
  const folds: Fold[] = [];
  for (const list of longLists) {
    const firstKept = fromOf(Math.max(0, partOf(Math.max(1, record.last_ids[list])) - 1));
    let fold: Fold | undefined;
    for (const entry of record[list]) {
      if (entry.id >= firstKept) break;
      if ("due_ms" in entry && now_ms - entry.due_ms < (entry.state === "running" ? 30 : 2) * day_ms)
        continue;
      const part = partOf(entry.id);
      if (fold?.part !== part) {
        fold = { list, part, entries: [] };
        folds.push(fold);
      }
      fold.entries.push(entry);
    }
  }
  return folds;
}

/** The record without folded entries, and with the files that they went into; of a part the newer file counts. */
export function folded(record: RecordData, folds: readonly Fold[], seals: readonly Seal[]): RecordData {
  const gone = (list: LongList) =>
    new Set(folds.flatMap((fold) => (fold.list === list ? fold.entries.map(({ id }) => id) : [])));
  const [notes, timers] = [gone("notes"), gone("timers")];
  return {
    ...record,
    notes: record.notes.filter(({ id }) => !notes.has(id)),
    timers: record.timers.filter(({ id }) => !timers.has(id)),
    sealed: [...withoutParts(record.sealed, seals), ...seals].sort(inOrder),
  };
}

export const isSame = (seal: Pick<Seal, "list" | "from">, other: Pick<Seal, "list" | "from">): boolean =>
  seal.list === other.list && seal.from === other.from;

export function withoutParts(all: readonly Seal[], some: readonly Pick<Seal, "list" | "from">[]): Seal[] {
  const keys = new Set(some.map(({ list, from }) => `${list} ${from}`));
  return all.filter(({ list, from }) => !keys.has(`${list} ${from}`));
}

const inOrder = (one: Seal, other: Seal): number =>
  one.list === other.list ? one.from - other.from : one.list < other.list ? -1 : 1;

/** Two runs of entries as one in the order of their ids; where both have an id, `recent`'s counts. */
export function merged(old: readonly Entry[], recent: readonly Entry[]): Entry[] {
  const [last, first] = [old.at(-1)?.id ?? 0, recent[0]?.id ?? Number.POSITIVE_INFINITY];
  if (last < first) return [...old, ...recent];
  const own = new Set(recent.map(({ id }) => id));
  return [...old.filter(({ id }) => !own.has(id)), ...recent].sort((a, b) => a.id - b.id);
}

/** The record with these parts' entries back in it. */
export function unfolded(
  record: RecordData,
  seals: readonly Seal[],
  load: (seal: Seal) => readonly Entry[],
): RecordData {
  if (seals.length === 0) return record;
  const next: RecordData = { ...record, sealed: withoutParts(record.sealed, seals) };
  for (const list of longLists) {
    const old = seals.filter((seal) => seal.list === list).flatMap(load);
    if (old.length > 0) Object.assign(next, { [list]: merged(old, record[list]) });
  }
  return next;
}
