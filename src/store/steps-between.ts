/** The steps that lead from one record to another, so that going back to a copy is a change like any other. Pure. */
import { type Entry, listNames, type RecordData, type Step } from "./schema.ts";

/**
 * Steps that make `now` hold what `then` held. Timers are left out: one that was set since runs on, and one that rang
 * doesn't ring again.
 */
export function stepsBetween(now: RecordData, then: RecordData): Step[] {
  const steps: Step[] = [];
  const settings = new Set([...Object.keys(now.bench), ...Object.keys(then.bench)]) as Set<
    keyof RecordData["bench"]
  >;
  for (const setting of settings)
    if (!isSame(now.bench[setting], then.bench[setting]))
      steps.push({ do: "set", setting, value: then.bench[setting] ?? null });
  for (const list of listNames) {
    if (list === "timers") continue;
    const [before, after] = [byId(now[list]), byId(then[list])];
    for (const id of before.keys()) if (!after.has(id)) steps.push({ do: "remove", list, id });
    for (const [id, entry] of after) {
      const own = before.get(id);
      if (!own) steps.push({ do: "put", list, entry: { ...entry } });
      else if (!isSame(own, entry)) steps.push({ do: "change", list, id, patch: patchTo(own, entry) });
    }
  }
  return steps;
}

const byId = (entries: readonly Entry[]): Map<number, Entry> =>
  new Map(entries.map((each) => [each.id, each]));

/** Both were read by the same schema, which gives fields their order. */
const isSame = (one: unknown, other: unknown): boolean => JSON.stringify(one) === JSON.stringify(other);

function patchTo(own: Entry, wanted: Entry): Record<string, unknown> {
  const [from, to] = [own, wanted] as unknown as Record<string, unknown>[];
  const keys = new Set([...Object.keys(own), ...Object.keys(wanted)]);
  return Object.fromEntries(
    [...keys].filter((key) => !isSame(from?.[key], to?.[key])).map((key) => [key, to?.[key] ?? null]),
  );
}
