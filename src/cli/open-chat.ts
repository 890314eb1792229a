/** What the chat is given: the session, the clock, and where its history is kept. */
import { mkdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { sanitise } from "../intents/normalise.ts";
import type { RecordStore } from "../store/types.ts";
import type { ChatOptions } from "./chat/options.ts";
import type { Session } from "./session.ts";

const keptLines = 500;

interface Parts {
  session: Session;
  store: RecordStore;
  now_ms(): number;
  env: Readonly<Record<string, string | undefined>>;
  stdin: NodeJS.ReadStream;
  stdout: NodeJS.WriteStream;
}

export function chatOptions({ session, store, now_ms, env, stdin, stdout }: Parts): ChatOptions {
  const file = join(store.home, "history.txt");
  return {
    session,
    now_ms,
    home: store.home,
    stdin,
    stdout,
    env,
    intro: [
      'Ask as you would say it: "I have 230 g buttercream, how much flavor?"',
      '"batter for 24 macarons", "start the rest timer", "note: pistachio batch, two hollow"',
      '"help" shows what else there is; "bye" leaves.',
    ],
    async ring(timerIds) {
      const done = await store.change((record) => ({
        effects: record.timers
          .filter((timer) => timerIds.includes(timer.id) && timer.state === "running")
          .map(
            (timer) => ({ do: "change", list: "timers", id: timer.id, patch: { state: "rung" } }) as const,
          ),
        value: undefined,
      }));
      if (!done.ok) throw new Error(`${done.problem.message} ${done.problem.try}`);
    },
    async loadHistory() {
      const text = await readFile(file, "utf8").catch(() => "");
      return text.split("\n").map(sanitise).filter(Boolean).slice(-keptLines);
    },
    async saveHistory(lines) {
      await mkdir(store.home, { recursive: true });
      await writeFile(file, `${lines.slice(-keptLines).join("\n")}\n`, { mode: 0o600 });
    },
  };
}
