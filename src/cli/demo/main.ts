/** The demo's record: written anew into a folder of its own, and taken away at the end. Loaded by --demo alone. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { RecordStore } from "../../store/types.ts";
import { demoChanges } from "./record.ts";

export interface Demo {
  home: string;
  /** Puts the invented record in. Says in a sentence what broke. */
  fill(store: RecordStore, now_ms: number): Promise<string | undefined>;
  /** Takes the folder away with all that is in it. */
  remove(): void;
}

const signals = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/** Makes the folder. It is taken away however the process ends, but by a kill that can't be heard. */
export function openDemo(): Demo {
  const home = mkdtempSync(join(tmpdir(), "bowlside-demo-"));
  const remove = () => {
    for (const signal of signals) process.off(signal, ended);
    rmSync(home, { recursive: true, force: true });
  };
  const ended = (signal: NodeJS.Signals) => {
    remove();
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, ended);
  process.on("exit", remove);
  return {
    home,
    remove,
    async fill(store, now_ms) {
      for (const { effects, change } of demoChanges(now_ms)) {
        const done = await store.change(() => ({ effects, ...(change ? { change } : {}), value: undefined }));
        if (!done.ok) return `${done.problem.message} ${done.problem.try}`;
      }
      return undefined;
    },
  };
}
