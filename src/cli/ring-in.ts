/** Marks timers as rung, so that of several windows one rings each. */
import type { RecordStore } from "../store/types.ts";

/** Gives the ids that were still to ring. Throws in words when the record can't be written. */
export async function ringIn(
  store: RecordStore,
  now_ms: () => number,
  timerIds: number[],
): Promise<number[]> {
  const done = await store.change((record) => {
    const ids = record.timers
      // one that was given more time meanwhile isn't due
      .filter(({ id, state, due_ms }) => timerIds.includes(id) && state === "running" && due_ms <= now_ms())
      .map(({ id }) => id);
    return {
      effects: ids.map((id) => ({ do: "change", list: "timers", id, patch: { state: "rung" } }) as const),
      value: ids,
    };
  });
  if (!done.ok) throw new Error(`${done.problem.message} ${done.problem.try}`);
  return done.value;
}
