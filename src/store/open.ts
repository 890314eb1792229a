/** Opens the record of a home folder. */
import { resolve } from "node:path";
import { Low } from "lowdb";
import type { Effect } from "../tools/contract/answer.ts";
import { nothingSeen, type RecordAdapter, readCopy, recordAdapter } from "./adapter.ts";
import { applyEffects } from "./apply.ts";
import { copiedDays, copyOf } from "./copies.ts";
import { type Files, makeFolder, nodeFiles } from "./files.ts";
import { unfolded, withoutParts } from "./fold.ts";
import { underLock } from "./lock.ts";
import { partsNeeded } from "./needed.ts";
import { findPlace, type Place } from "./place.ts";
import { Failed, problemOf } from "./problem.ts";
import { emptyRecord, type RecordData, type Step } from "./schema.ts";
import { stepsBetween } from "./steps-between.ts";
import { tidyStrays } from "./strays.ts";
import type { RecordStore, Result } from "./types.ts";

export interface StoreOptions {
  /** The clock, in ms since the epoch: dates the changes. */
  now_ms?: () => number;
  /** How long to wait for other writers before giving up as "busy", in ms. */
  wait_ms?: number;
  /** The file operations; tests make them fail. */
  files?: Files;
}

/**
 * Opens the store of a folder, which is made at the first change. Nothing is read or written yet.
 * Records that it hands out are frozen: they are what the next reader sees.
 */
export function openStore(home: string, options: StoreOptions = {}): RecordStore {
  const { now_ms = Date.now, wait_ms = 10_000, files = nodeFiles } = options;
  const folder = resolve(home);
  const seen = nothingSeen();
  let told: string | undefined;
  let tidied = false;
  let last: Promise<unknown> = Promise.resolve();

  /**
   * Reads under the lock and hands over, in the order of the calls. lowdb's own state lives for one piece of work
   * only: between two of them the file may be changed by others, and a failed write must leave nothing behind.
   */
  function locked<T>(
    work: (low: Low<RecordData>, adapter: RecordAdapter, place: Place) => Promise<T>,
  ): Promise<Result<T>> {
    const turn = last.then(() =>
      answering("write", folder, async () => {
        makeFolder(files, folder);
        const place = findPlace(files, folder);
        return underLock(files, place.lock, wait_ms, async () => {
          if (!tidied) tidyStrays(files, place);
          tidied = true;
          const { low, adapter } = await loaded(place);
          return work(low, adapter, place);
        });
      }),
    );
    last = turn.catch(() => undefined);
    return turn;
  }

  async function loaded(place: Place): Promise<{ low: Low<RecordData>; adapter: RecordAdapter }> {
    const adapter = recordAdapter(files, place, seen, now_ms());
    const low = new Low<RecordData>(adapter, emptyRecord());
    await low.read();
    return { low, adapter };
  }

  /** Keeps a damaged file aside and puts what could be read in its place. */
  const mend = () =>
    locked(async (low, adapter) => {
      if (adapter.damaged()) await low.write();
      return { record: adapter.whole(low.data), notice: adapter.notice() };
    });

  /** The record with the old entries that the effects reach into, and the effects with going back as its steps. */
  function prepared(record: RecordData, effects: readonly Effect[], adapter: RecordAdapter, place: Place) {
    let base = unfolded(record, adapter.broken(record), adapter.load);
    const steps: (Effect | Step)[] = [];
    for (const effect of effects) {
      if (effect.do !== "restore") {
        steps.push(effect);
        continue;
      }
      const then = readCopy(files, copyOf(place, effect.day));
      // Files of old entries that both name hold the same.
      const own = new Set(base.sealed.map(({ file }) => file));
      const shared = then.sealed.filter(({ file }) => own.has(file));
      const differing = (all: RecordData) => withoutParts(all.sealed, shared);
      base = unfolded(base, differing(base), adapter.load);
      steps.push(...stepsBetween(base, unfolded(then, differing(then), adapter.loadWhole)));
    }
    return { base: unfolded(base, partsNeeded(base, steps), adapter.load), steps };
  }

  return {
    home: folder,

    async read() {
      const first = await answering("read", folder, async () => {
        const { low, adapter } = await loaded(findPlace(files, folder));
        return { record: adapter.whole(low.data), notice: adapter.notice(), damaged: adapter.damaged() };
      });
      if (!first.ok) return first;
      const mended = first.value.damaged ? await mend() : first;
      // What can't be mended now (a full disk, a folder that is read only) can still be read.
      const { record, notice } = mended.ok ? mended.value : first.value;
      const notices = [told, notice].filter((each) => each !== undefined);
      told = undefined;
      return { ok: true, value: { record, ...(notices.length ? { notice: notices.join(" ") } : {}) } };
    },

    change(work) {
      return locked(async (low, adapter, place) => {
        const { effects, change, value } = work(adapter.whole(low.data));
        if (!effects.some((effect) => effect.do !== "write file")) return value;
        const { base, steps } = prepared(low.data, effects, adapter, place);
        const next = applyEffects(base, steps, change, now_ms());
        if (next === base) return value;
        low.data = { ...next, saved_ms: now_ms() };
        await low.write();
        // The next reading tells, as a change has no other way to.
        told = adapter.notice() ?? told;
        return value;
      });
    },

    copies() {
      try {
        return copiedDays(files, findPlace(files, folder));
      } catch {
        return [];
      }
    },

    late() {
      const all = seen.late.splice(0);
      return all.length ? all.join(" ") : undefined;
    },
  };
}

/** Turns what the system refused into a value. Bugs are thrown on. */
async function answering<T>(
  doing: "read" | "write",
  file: string,
  work: () => Promise<T>,
): Promise<Result<T>> {
  try {
    return { ok: true, value: await work() };
  } catch (error) {
    return { ok: false, problem: error instanceof Failed ? error.problem : problemOf(error, doing, file) };
  }
}
