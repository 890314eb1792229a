/** Carries effects out on a record: pure, a new record comes out and the old one stays as it is. */
import type { Effect } from "../tools/contract/answer.ts";
import type { RecordData, Step } from "./schema.ts";
import { take } from "./steps.ts";

/** So many changes can be taken back, the latest first. */
export const undoDepth = 200;

/** More entries than this are never added at once. */
const longestRange = 1e6;

/**
 * The record after `effects`, in their order. With a `changeName` they can be taken back together; without one they
 * stay when an earlier change is taken back (a timer that has rung). `now_ms`: ms since the epoch. The same record
 * comes back when there was nothing to do: no effects, only files to write, nothing to undo.
 * Throws when an effect asks for what can't be (an id that isn't there, a field of the wrong type): that is a bug.
 */
export function applyEffects(
  record: RecordData,
  effects: readonly (Effect | Step)[],
  changeName: string | undefined,
  now_ms: number,
): RecordData {
  let current = record;
  const inverse: Step[] = [];
  for (const effect of effects) {
    // Going back to a copy comes as steps, drawn up by whoever has the copies.
    if (effect.do === "write file" || effect.do === "restore") continue;
    if (effect.do === "undo") {
      current = undo(current);
      continue;
    }
    const taken = take(current, stepOf(current, effect));
    if (!taken.fits) throw new Error(`An effect that can't be carried out: ${taken.why}`);
    current = taken.record;
    inverse.push(taken.back);
  }
  if (inverse.length === 0 || changeName === undefined) return current;
  const changes = [
    ...current.changes,
    { name: changeName, at_ms: now_ms, inverse: joined(inverse.reverse()) },
  ];
  return { ...current, changes: changes.slice(-undoDepth) };
}

/** Removals of neighbours as one: the way back from a thousand added notes is one step. */
function joined(steps: readonly Step[]): Step[] {
  const all: Step[] = [];
  for (const step of steps) {
    const last = all.at(-1);
    if (last?.do === "remove" && step.do === "remove" && last.list === step.list && last.id === step.id + 1)
      all.splice(-1, 1, { ...last, id: step.id, to: last.to ?? last.id });
    else all.push(step);
  }
  return all;
}

/** An addition is a step with an id: one above the highest that the list ever gave out. */
function stepOf(
  record: RecordData,
  effect: Exclude<Effect, { do: "undo" | "write file" | "restore" }> | Step,
): Step {
  if (effect.do !== "add") return effect;
  return { do: "put", list: effect.list, entry: { ...effect.entry, id: record.last_ids[effect.list] + 1 } };
}

/**
 * Takes the last change back. A step that can't be taken, because its entry was deleted by hand or is on a part of
 * the record that was damaged, is left out. What was undone is gone for good, but its ids are not given out again.
 */
function undo(record: RecordData): RecordData {
  const last = record.changes.at(-1);
  if (!last) return record;
  let current: RecordData = { ...record, changes: record.changes.slice(0, -1) };
  for (const step of last.inverse.flatMap(apart)) {
    const taken = take(current, step);
    if (taken.fits) current = taken.record;
  }
  return current;
}

function apart(step: Step): Step[] {
  if (step.do !== "remove" || step.to === undefined) return [step];
  const { list, id, to } = step;
  // A hand-edited range could be without end.
  const count = Math.min(Math.max(0, to - id + 1), longestRange);
  return Array.from({ length: count }, (_, n) => ({ do: "remove", list, id: to - n }));
}
