import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyEffects } from "../../src/store/apply.ts";
import { checkRecord } from "../../src/store/check.ts";
import { emptyRecord, listNames, type RecordData } from "../../src/store/schema.ts";
import { textOf } from "../../src/store/text.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addNote } from "./support.ts";

const apply = (record: RecordData, effects: Effect[], name: string | undefined = "it") =>
  applyEffects(record, effects, name, 7);
const undo: Effect = { do: "undo" };
const setTimer = (label: string): Effect => ({
  do: "add",
  list: "timers",
  entry: { label, set_ms: 0, due_ms: 60_000, state: "running" },
});

describe("laws under random changes", () => {
  const text = fc.string({ unit: "grapheme", maxLength: 8 });
  const number = fc.double({ noNaN: true, noDefaultInfinity: true }).map((each) => each + 0);
  const pick = fc.nat(1000);
  const optional = (value: fc.Arbitrary<unknown>) => fc.option(value, { nil: undefined });

  /** Effects by their rough place in a list, since which ids are there depends on what came before. */
  type Draft = (record: RecordData) => Effect | undefined;
  const someNote = (record: RecordData, nth: number) =>
    record.notes[nth % Math.max(1, record.notes.length)]?.id;
  const draft: fc.Arbitrary<Draft> = fc.oneof(
    text.map(
      (said): Draft =>
        () =>
          addNote(said),
    ),
    text.map(
      (label): Draft =>
        () =>
          setTimer(label),
    ),
    fc.tuple(text, number).map(
      ([name, grams]): Draft =>
        () => ({ do: "add", list: "stock", entry: { name, grams } }),
    ),
    fc
      .tuple(
        pick,
        fc.record(
          { rating: optional(number), text, problems: fc.array(text, { maxLength: 2 }) },
          { requiredKeys: [] },
        ),
      )
      .map(
        ([nth, patch]): Draft =>
          (record) => {
            const id = someNote(record, nth);
            return id === undefined ? undefined : { do: "change", list: "notes", id, patch };
          },
      ),
    pick.map(
      (nth): Draft =>
        (record) => {
          const id = someNote(record, nth);
          return id === undefined ? undefined : { do: "remove", list: "notes", id };
        },
    ),
    optional(number).map(
      (value): Draft =>
        () => ({ do: "set", setting: "oven_c", value }),
    ),
    optional(fc.constantFrom("g", "oz")).map(
      (value): Draft =>
        () => ({ do: "set", setting: "weight_unit", value }),
    ),
  );
  const changes = fc.array(fc.array(draft, { minLength: 1, maxLength: 4 }), { maxLength: 12 });

  /** Carries one change out, effect by effect drawn up against the record so far. */
  function carryOut(record: RecordData, drafts: Draft[]): RecordData {
    const effects: Effect[] = [];
    for (const each of drafts) {
      const effect = each(applyEffects(record, effects, undefined, 0));
      if (effect) effects.push(effect);
    }
    return apply(record, effects);
  }

  test("undoing every change restores every state on the way, exactly", () => {
    fc.assert(
      fc.property(changes, (sequence) => {
        const states = [emptyRecord()];
        for (const drafts of sequence) states.push(carryOut(states.at(-1) ?? emptyRecord(), drafts));
        let record = states.at(-1) ?? emptyRecord();
        const { last_ids } = record;
        for (let n = states.length - 2; n >= 0; n--) {
          // A change that came to nothing left no entry to undo.
          if (states[n] === states[n + 1]) continue;
          record = apply(record, [undo]);
          expect(record).toStrictEqual({ ...states[n], last_ids });
        }
      }),
      { numRuns: 300 },
    );
  });

  test("no id is ever given twice, whatever is removed or undone", () => {
    fc.assert(
      fc.property(fc.array(fc.oneof(draft, fc.constant("undo" as const)), { maxLength: 30 }), (sequence) => {
        let record = emptyRecord();
        let highest = 0;
        for (const each of sequence) {
          const before = new Set(record.notes.map(({ id }) => id));
          record = each === "undo" ? apply(record, [undo]) : carryOut(record, [each]);
          if (each === "undo") continue;
          for (const { id } of record.notes) {
            if (before.has(id)) continue;
            expect(id).toBeGreaterThan(highest);
            highest = id;
          }
        }
      }),
      { numRuns: 300 },
    );
  });

  test("what was written is read again, sound and to the last value", () => {
    fc.assert(
      fc.property(changes, (sequence) => {
        const record = sequence.reduce(carryOut, emptyRecord());
        const read = checkRecord(Buffer.from(textOf(record)));
        expect(read).toEqual({ record, state: "sound", version: record.version });
      }),
      { numRuns: 300 },
    );
  });

  test("a record is never altered: its old text is its text for ever", () => {
    fc.assert(
      fc.property(changes, (sequence) => {
        let record = emptyRecord();
        for (const drafts of sequence) {
          const before = textOf(record);
          const next = apply(carryOut(record, drafts), [undo]);
          expect(textOf(record)).toBe(before);
          record = next;
        }
        for (const list of listNames) expect(Array.isArray(record[list])).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});
