/** The record on disk, checked on every read. A change of shape adds a migration, never a silent default. */
import * as z from "zod/mini";
import type { ListName } from "../tools/contract/answer.ts";
import { Bench, Bottle, Formula, Note, Plan, Stock, Timer } from "../tools/contract/record.ts";

export const version = 2;

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

const list = z.enum(listNames);
const fields = z.record(z.string(), z.unknown());

/**
 * One step back. `put` brings a removed entry back under the id it had; in a patch, and as a setting's value, null
 * stands for "was not there". What an entry may hold is checked when the step is taken, against its own schema.
 */
export const Step = z.discriminatedUnion("do", [
  z.object({ do: z.literal("put"), list, entry: fields }),
  z.object({ do: z.literal("change"), list, id: z.number(), patch: fields }),
  z.object({ do: z.literal("remove"), list, id: z.number() }),
  z.object({ do: z.literal("set"), setting: z.string(), value: z.unknown() }),
]);

/** One change that can be taken back: what it was called, and the steps that undo it, in the order to take them. */
export const Change = z.object({ name: z.string(), at_ms: z.number(), inverse: z.array(Step) });

/** The highest id that each list ever gave out. Ids are never given twice, not even after an undo. */
export const LastIds = z.object({
  timers: z.number(),
  notes: z.number(),
  bottles: z.number(),
  stock: z.number(),
  formulas: z.number(),
  plans: z.number(),
});

/** Every list stands in the order of its ids, which are whole numbers from 1 up, each there once. */
export const RecordData = z.object({
  version: z.literal(version),
  last_ids: LastIds,
  bench: Bench,
  timers: z.array(Timer),
  notes: z.array(Note),
  bottles: z.array(Bottle),
  stock: z.array(Stock),
  formulas: z.array(Formula),
  plans: z.array(Plan),
  changes: z.array(Change),
});

export type RecordData = z.infer<typeof RecordData>;
export type Change = z.infer<typeof Change>;
export type Step = z.infer<typeof Step>;
export type Entry = RecordData[ListName][number];

export const emptyRecord = (): RecordData => ({
  version,
  last_ids: { timers: 0, notes: 0, bottles: 0, stock: 0, formulas: 0, plans: 0 },
  bench: {},
  timers: [],
  notes: [],
  bottles: [],
  stock: [],
  formulas: [],
  plans: [],
  changes: [],
});
