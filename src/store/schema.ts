/** The record on disk, checked on every read. A change of shape adds a migration, never a silent default. */
import * as z from "zod/mini";
import type { ListName } from "../tools/contract/answer.ts";
import { later } from "../tools/contract/later.ts";
import { Bench, Bottle, Formula, Note, Plan, Stock, Timer } from "../tools/contract/record.ts";

export const version = 3;

/** The schema of an entry, by the list that it stands in. */
export const entries = {
  timers: Timer,
  notes: Note,
  bottles: Bottle,
  stock: Stock,
  formulas: Formula,
  plans: Plan,
};

export const listNames: readonly ListName[] = ["timers", "notes", "bottles", "stock", "formulas", "plans"];

const list = later(() => z.enum(listNames));
const fields = later(() => z.record(z.string(), z.unknown()));

/** Lists that grow for ever: what is old in them lies in files of its own, see parts.ts. */
export const longLists = ["notes", "timers"] as const;
export type LongList = (typeof longLists)[number];

/**
 * A file of old entries that the record goes on from: ids `from` to `to`, `count` of them. `crc` is the CRC-32 of its
 * bytes, where node could tell. The file's name can't lead out of its folder.
 */
export const Seal = later(() =>
  z.object({
    list: z.enum(longLists),
    from: z.number(),
    to: z.number(),
    count: z.number(),
    crc: z.optional(z.number()),
    file: z.string().check(z.regex(/^(?:notes|timers)-\d+-\d+-[0-9a-z-]+\.json$/)),
  }),
);

/**
 * One step back. `put` brings a removed entry back under the id it had; in a patch, and as a setting's value, null
 * stands for "was not there". What an entry may hold is checked when the step is taken, against its own schema.
 */
export const Step = later(() =>
  z.discriminatedUnion("do", [
    z.object({ do: z.literal("put"), list: list(), entry: fields() }),
    z.object({ do: z.literal("change"), list: list(), id: z.number(), patch: fields() }),
    // `to`: all ids from `id` up to it, so that taking back a thousand notes is one step
    z.object({ do: z.literal("remove"), list: list(), id: z.number(), to: z.optional(z.number()) }),
    z.object({ do: z.literal("set"), setting: z.string(), value: z.unknown() }),
  ]),
);

/** One change that can be taken back: what it was called, and the steps that undo it, in the order to take them. */
export const Change = later(() =>
  z.object({ name: z.string(), at_ms: z.number(), inverse: z.array(Step()) }),
);

/** The highest id that each list ever gave out. Ids are never given twice, not even after an undo. */
export const LastIds = later(() =>
  z.object({
    timers: z.number(),
    notes: z.number(),
    bottles: z.number(),
    stock: z.number(),
    formulas: z.number(),
    plans: z.number(),
  }),
);

/**
 * Every list stands in the order of its ids, which are whole numbers from 1 up, each there once. Here as in the file:
 * of the long lists only what is recent, the rest behind `sealed`.
 */
export const RecordData = later(() =>
  z.object({
    version: z.literal(version),
    last_ids: LastIds(),
    /** When it was last changed, ms since the epoch. */
    saved_ms: z.optional(z.number()),
    sealed: z.array(Seal()),
    bench: Bench(),
    timers: z.array(Timer()),
    notes: z.array(Note()),
    bottles: z.array(Bottle()),
    stock: z.array(Stock()),
    formulas: z.array(Formula()),
    plans: z.array(Plan()),
    changes: z.array(Change()),
  }),
);

export type RecordData = z.infer<ReturnType<typeof RecordData>>;
export type Seal = z.infer<ReturnType<typeof Seal>>;
export type Change = z.infer<ReturnType<typeof Change>>;
export type Step = z.infer<ReturnType<typeof Step>>;
export type Entry = RecordData[ListName][number];

export const emptyRecord = (): RecordData => ({
  version,
  last_ids: { timers: 0, notes: 0, bottles: 0, stock: 0, formulas: 0, plans: 0 },
  sealed: [],
  bench: {},
  timers: [],
  notes: [],
  bottles: [],
  stock: [],
  formulas: [],
  plans: [],
  changes: [],
});
