/** Which old entries a change touches, so that their parts are brought back into the record first. Pure. */
import type { Effect } from "../tools/contract/answer.ts";
import type { RecordData, Seal, Step } from "./schema.ts";

/** The parts that effects, and the undo steps that they set going, reach into. */
export function partsNeeded(record: RecordData, effects: readonly (Effect | Step)[]): Seal[] {
  if (record.sealed.length === 0) return [];
  const touched: [list: string, id: number, to: number][] = [];
  let undone = 0;
  const note = (step: Effect | Step) => {
    if (step.do === "change" || step.do === "remove")
      touched.push([step.list, step.id, "to" in step ? (step.to ?? step.id) : step.id]);
    if (step.do === "put") touched.push([step.list, Number(step.entry.id), Number(step.entry.id)]);
  };
  for (const effect of effects) {
    note(effect);
    if (effect.do === "undo") {
      undone += 1;
      for (const step of record.changes.at(-undone)?.inverse ?? []) note(step);
    }
  }
  return record.sealed.filter((seal) =>
    touched.some(([list, id, to]) => list === seal.list && id <= seal.to && to >= seal.from),
  );
}
