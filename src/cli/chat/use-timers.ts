import { useLayoutEffect, useMemo, useState } from "react";
import type { Timer } from "../../tools/contract/record.ts";
import { type Watch, type WatchAround, watchTimers } from "./watch.ts";

/** The running timers with the moment they were last looked at, and the watch that looks. */
export interface Timers {
  running: Timer[];
  now_ms: number;
  watch: Watch;
}

/**
 * Watches the timers while the chat is on the screen.
 * @param around what to read and whom to tell; the one from the first call is kept
 */
export function useTimers(around: Omit<WatchAround, "show" | "later">): Timers {
  const [seen, setSeen] = useState<{ running: Timer[]; now_ms: number }>({ running: [], now_ms: 0 });
  // biome-ignore lint/correctness/useExhaustiveDependencies: one watch for the life of the chat
  const watch = useMemo(
    () =>
      watchTimers({
        ...around,
        show: (running) =>
          setSeen((before) =>
            running.length + before.running.length === 0 ? before : { running, now_ms: around.now_ms() },
          ),
        later(run, ms) {
          const timeout = setTimeout(run, ms);
          return () => clearTimeout(timeout);
        },
      }),
    [],
  );
  useLayoutEffect(() => {
    void watch.look();
    return () => void watch.stop();
  }, [watch]);
  return { ...seen, watch };
}
