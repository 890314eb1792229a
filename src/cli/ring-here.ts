/** Rings timers in a terminal with no chat open: a bell and a line for each, until the process is ended. */
import type { RecordStore } from "../store/types.ts";
import { ringText } from "./chat/countdown.ts";
import { watchTimers } from "./chat/watch.ts";
import { ringIn } from "./ring-in.ts";
import type { Session } from "./session.ts";

/** After trouble with the record it is looked at again, in ms. */
const again_ms = 5000;

interface Around {
  session: Session;
  store: RecordStore;
  now_ms(): number;
  write(text: string): void;
  /** What isn't a ring. */
  tell(message: string): void;
}

/** Never resolves: Ctrl-C ends it. A timer that another window rings is left to that one. */
export function ringHere({ session, store, now_ms, write, tell }: Around): Promise<never> {
  const opened_ms = now_ms();
  let said = "";
  const watch = watchTimers({
    world: () => session.world(),
    now_ms,
    ring: (ids) => ringIn(store, now_ms, ids),
    show() {},
    announce(due) {
      for (const timer of due) write(`\u0007${ringText(timer, now_ms(), opened_ms)}\n`);
    },
    trouble(error) {
      const message = error instanceof Error ? error.message : String(error);
      if (message !== said) tell(message);
      said = message;
      setTimeout(() => void watch.look(), again_ms);
    },
    later(run, ms) {
      const timeout = setTimeout(run, ms);
      return () => clearTimeout(timeout);
    },
  });
  write("Timers ring here until Ctrl-C.\n");
  void watch.look();
  return new Promise(() => {});
}
