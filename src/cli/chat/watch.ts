/** Keeps an eye on the timers: looks about once a second, also for what other windows set. */
import type { World } from "../../tools/contract/index.ts";
import type { Timer } from "../../tools/contract/record.ts";
import { dueTimers } from "./countdown.ts";

const tick_ms = 1000;
const shortest_ms = 200;
/** So long the record is waited for before a ring is heard without it, in ms: late is worse than twice. */
const patience_ms = 500;

export interface WatchAround {
  world(): Promise<World>;
  now_ms(): number;
  /** Marks timers as rung in the record. Gives those that were this window's to ring: another may have been first. */
  ring(timerIds: number[]): Promise<readonly number[]>;
  /** The running timers that aren't due, whenever they were looked at. */
  show(running: Timer[]): void;
  /** Timers that have just come due: bell and words. */
  announce(due: Timer[]): void;
  trouble(error: unknown): void;
  /** Runs something later; gives back how to call that off. */
  later(run: () => void, ms: number): () => void;
}

export interface Watch {
  /** Looks now: at the start and after every answer. Looks never overlap. */
  look(): Promise<void>;
  /** No more looks; the one that runs ends first. */
  stop(): Promise<void>;
}

/** Watches until stopped. A record that can't be read is named once, and read again after the next answer. */
export function watchTimers(around: WatchAround): Watch {
  // A timer that is set anew after it rang has another due time and rings again.
  const rung = new Set<string>();
  let stopped = false;
  let callOff = () => {};
  let last: Promise<void> = Promise.resolve();

  async function once(): Promise<void> {
    callOff();
    if (stopped) return;
    const { timers } = await around.world();
    const now_ms = around.now_ms();
    const due = dueTimers(timers, now_ms);
    const fresh = due.filter((timer) => !rung.has(keyOf(timer)));
    for (const timer of fresh) rung.add(keyOf(timer));
    const running = timers.filter((timer) => timer.state === "running" && !due.includes(timer));
    around.show(running);
    if (fresh.length > 0) {
      await ringOnce(fresh);
    }
    if (stopped) return;
    const left_ms = Math.min(...running.map((timer) => timer.due_ms)) - around.now_ms();
    callOff = around.later(() => void look(), running.length ? pause(left_ms) : tick_ms);
  }

  /** Rings what no other window has rung. A record that can't be written, or not soon, keeps no ring from being heard. */
  async function ringOnce(fresh: Timer[]): Promise<void> {
    const marked = around.ring(fresh.map((timer) => timer.id));
    let noMore = () => {};
    const late = new Promise<undefined>((resolve) => {
      noMore = around.later(() => resolve(undefined), patience_ms);
    });
    const own = await Promise.race([marked.catch(() => undefined), late]);
    noMore();
    const heard = own ? fresh.filter((timer) => own.includes(timer.id)) : fresh;
    if (heard.length > 0) around.announce(heard);
    await marked;
  }

  function look(): Promise<void> {
    last = last.then(once).catch((error: unknown) => around.trouble(error));
    return last;
  }

  return {
    look,
    stop() {
      stopped = true;
      callOff();
      return last;
    },
  };
}

/** To the soonest timer's next full second, so that its countdown skips none; no rush if the clock stands. */
function pause(left_ms: number): number {
  if (left_ms <= tick_ms + shortest_ms) return Math.max(shortest_ms, left_ms);
  const rest = left_ms % tick_ms;
  return rest < shortest_ms ? rest + tick_ms : rest;
}

const keyOf = (timer: Timer) => `${timer.id} ${timer.due_ms}`;
