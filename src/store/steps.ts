/** Single steps on a record, forth and back. Records are never altered: each step gives a new one. */
import type { ListName } from "../tools/contract/answer.ts";
import { fitEntry, fitSetting } from "./entry.ts";
import type { Entry, RecordData, Step } from "./schema.ts";

/** The record after a step, and the step that leads back. Or why the step can't be taken. */
export type Taken = { fits: true; record: RecordData; back: Step } | { fits: false; why: string };

/** Takes one step. */
export function take(record: RecordData, step: Step): Taken {
  if (step.do === "set") return set(record, step.setting, step.value);
  if (step.do === "put") return put(record, step.list, step.entry);
  return step.do === "change"
    ? change(record, step.list, step.id, step.patch)
    : remove(record, step.list, step.id);
}

function put(record: RecordData, list: ListName, fields: Record<string, unknown>): Taken {
  const fit = fitEntry(list, fields);
  if (!fit.fits) return fit;
  const { id } = fit.value;
  const held: readonly Entry[] = record[list];
  // From the end, where almost every addition belongs: a long import looks at one entry each time.
  const at = held.findLastIndex((each) => each.id <= id) + 1;
  if (held[at - 1]?.id === id) return { fits: false, why: `${list}: ${id} is there already` };
  const last = Math.max(record.last_ids[list], id);
  return {
    fits: true,
    record: {
      ...record,
      last_ids: { ...record.last_ids, [list]: last },
      [list]: [...held.slice(0, at), fit.value, ...held.slice(at)],
    },
    back: { do: "remove", list, id },
  };
}

/** The way back names only the fields that were changed: a later change to another field outlasts an undo. */
function change(record: RecordData, list: ListName, id: number, patch: Record<string, unknown>): Taken {
  const old = find(record[list], id);
  if (!old) return { fits: false, why: `${list}: there is no ${id}` };
  if (Object.hasOwn(patch, "id") && patch.id !== id)
    return { fits: false, why: `${list}: an id never changes` };
  const fit = fitEntry(list, old, patch);
  if (!fit.fits) return fit;
  const before = Object.entries({ ...patch, ...old }).filter(([key]) => Object.hasOwn(patch, key));
  const undone = before.map(([key, value]) => [key, Object.hasOwn(old, key) ? value : null]);
  const held: readonly Entry[] = record[list];
  return {
    fits: true,
    record: { ...record, [list]: held.map((each) => (each === old ? fit.value : each)) },
    back: { do: "change", list, id, patch: Object.fromEntries(undone) },
  };
}

function remove(record: RecordData, list: ListName, id: number): Taken {
  const old = find(record[list], id);
  if (!old) return { fits: false, why: `${list}: there is no ${id}` };
  const held: readonly Entry[] = record[list];
  return {
    fits: true,
    record: { ...record, [list]: held.filter((each) => each !== old) },
    back: { do: "put", list, entry: { ...old } },
  };
}

function set(record: RecordData, setting: string, value: unknown): Taken {
  const fit = fitSetting(record.bench, setting, value);
  if (!fit.fits) return fit;
  const old = record.bench[setting as keyof RecordData["bench"]];
  return {
    fits: true,
    record: { ...record, bench: fit.value },
    back: { do: "set", setting, value: old ?? null },
  };
}

const find = (list: readonly Entry[], id: number): Entry | undefined => list.find((each) => each.id === id);
