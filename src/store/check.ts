/** Checks what a file holds, entry by entry: what can be read is read. */
import { isUtf8 } from "node:buffer";
import type { ListName } from "../tools/contract/answer.ts";
import { Bench } from "../tools/contract/record.ts";
import { frozen } from "./frozen.ts";
import { orderById } from "./ids.ts";
import { type Migration, migrate, type Raw } from "./migrations.ts";
import { salvageText } from "./salvage.ts";
import {
  Change,
  type Entry,
  emptyRecord,
  entries,
  listNames,
  type RecordData,
  Seal,
  version,
} from "./schema.ts";

export interface Checked {
  record: RecordData;
  /** "damaged": the file holds something that `record` doesn't. "newer": as well, and it isn't ours to replace. */
  state: "sound" | "damaged" | "newer";
  /** The version that the file says it has, where it says one. */
  version?: number;
}

/**
 * Reads the bytes of a file of old entries, those with ids from `from` to `to`. Never throws. `lost`: the file holds
 * something that `read` doesn't.
 */
export function checkPart(
  bytes: Buffer,
  { list, from, to }: Pick<Seal, "list" | "from" | "to">,
): { read: Entry[]; lost: boolean } {
  const { raw, whole } = parse(bytes);
  const found = readList(raw[list], (each) => entries[list]().safeParse(each));
  const fitting = (found.read as Entry[]).filter(({ id }) => id >= from && id <= to);
  const ordered = orderById(fitting, to);
  const strays = fitting.length !== found.read.length || ordered.mended;
  const more = Object.keys(raw).some((key) => key !== "version" && key !== list);
  return {
    read: ordered.list.filter(({ id }) => id <= to),
    lost: !whole || found.missed || strays || more || raw.version !== version,
  };
}

/** Reads a record's bytes. Never throws, whatever they are. `steps` are for tests of the migrations. */
export function checkRecord(bytes: Buffer, steps?: readonly Migration[]): Checked {
  const { raw, whole } = parse(bytes);
  if (typeof raw.version === "number" && raw.version > version) {
    return { record: gather(raw).record, state: "newer", version: raw.version };
  }
  const current = migrate(raw, steps);
  const { record, lost } = gather(current ?? raw);
  const state = whole && current && !lost ? "sound" : "damaged";
  return { record, state, ...(typeof raw.version === "number" ? { version: raw.version } : {}) };
}

function parse(bytes: Buffer): { raw: Raw; whole: boolean } {
  let text = "";
  try {
    // Some editors begin a text with an invisible mark. It says nothing and is no damage.
    text = bytes.toString("utf8").replace(/^\uFEFF/, "");
    const raw: unknown = JSON.parse(text);
    const isRecord = typeof raw === "object" && raw !== null && !Array.isArray(raw);
    // Bytes that are no text would be replaced on reading: the words that they stood for are lost.
    return isRecord ? { raw: raw as Raw, whole: isUtf8(bytes) } : { raw: {}, whole: false };
  } catch {
    return { raw: salvageText(text), whole: false };
  }
}

function gather(raw: Raw): { record: RecordData; lost: boolean } {
  const record = emptyRecord();
  let lost = Object.keys(raw).some((key) => key !== "saved_ms" && !Object.hasOwn(record, key));
  // A record that was never written has no moment of it.
  if (typeof raw.saved_ms === "number") record.saved_ms = raw.saved_ms;
  else lost ||= raw.saved_ms !== undefined;
  const seals = readList(raw.sealed, (each) => Seal().safeParse(each));
  record.sealed = seals.read as Seal[];
  lost ||= seals.missed;
  const sealedTo = (list: ListName) =>
    record.sealed.reduce((most, seal) => (seal.list === list ? Math.max(most, seal.to) : most), 0);
  const into = (list: ListName) => {
    const { read, missed } = readList(raw[list], (each) => entries[list]().safeParse(each));
    const before = isObject(raw.last_ids) ? Number(raw.last_ids[list]) : Number.NaN;
    const { list: ordered, last, mended } = orderById(read as Entry[], Math.max(before || 0, sealedTo(list)));
    // A last id that lags behind its list, as after adding an entry by hand, is simply brought up.
    lost ||= missed || mended || !(before >= 0 && before <= last);
    record.last_ids[list] = last;
    Object.assign(record, { [list]: ordered });
  };
  for (const name of listNames) into(name);
  for (const [setting, value] of Object.entries(isObject(raw.bench) ? raw.bench : {})) {
    const schema = Object.hasOwn(Bench().shape, setting) ? Bench().shape[setting as keyof Bench] : undefined;
    if (schema?.safeParse(value).success) Object.assign(record.bench, { [setting]: value });
    else lost = true;
  }
  lost ||= !isObject(raw.bench) || Object.keys(Object(raw.last_ids)).length !== listNames.length;
  const { read, missed } = readList(raw.changes, (each) =>
    isDeep(each, 12) ? { success: false } : Change().safeParse(each),
  );
  // With one step of the way back missing, the steps before it no longer lead anywhere.
  record.changes = missed ? [] : (read as Change[]);
  return { record: frozen(record), lost: lost || missed };
}

interface Parsed {
  success: boolean;
  data?: unknown;
}

function readList(raw: unknown, parse: (each: unknown) => Parsed): { read: unknown[]; missed: boolean } {
  if (!Array.isArray(raw)) return { read: [], missed: true };
  const read: unknown[] = [];
  let missed = false;
  for (const each of raw) {
    const { success, data } = parse(each);
    if (success) read.push(data);
    missed ||= !success || holdsMore(each, data);
  }
  return { read, missed };
}

/** Whether `raw` holds anything that reading it left out: a field that the schema doesn't know, at any depth. */
function holdsMore(raw: unknown, read: unknown): boolean {
  if (typeof raw !== "object" || raw === null || typeof read !== "object" || read === null)
    return raw !== read;
  for (const key of Object.keys(raw)) {
    if (!Object.hasOwn(read, key) || holdsMore((raw as Raw)[key], (read as Raw)[key])) return true;
  }
  return false;
}

function isDeep(value: unknown, levels: number): boolean {
  if (typeof value !== "object" || value === null) return false;
  return levels === 0 || Object.values(value).some((each) => isDeep(each, levels - 1));
}

const isObject = (value: unknown): value is Raw =>
  typeof value === "object" && value !== null && !Array.isArray(value);
