/**
 * `npm run check:fuzz`: a million turns, or `--turns N`, from `--seed N` on. The turns run in a thread of their own; one
 * that takes longer than ten seconds counts as a hang, and is shown.
 */
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { parseArgs } from "node:util";
import { isMainThread, parentPort, Worker, workerData } from "node:worker_threads";
import { type Fault, fuzz } from "../support/fuzz.ts";
import type { Conversation } from "../support/judge.ts";

const hang_ms = 10_000;
/** So many turns have one seed, which is told with a fault. */
const chunk = 10_000;

type Message = { at: readonly string[] } | { faults: Fault[]; seed: number } | { end: true };

/** Sentences of the learned conversations, to be bent. */
function corpus(): string[] {
  const folder = join(process.cwd(), "tests/questions/learned");
  return readdirSync(folder)
    .flatMap((name) => readFileSync(join(folder, name), "utf8").split("\n").filter(Boolean))
    .flatMap((line) => (JSON.parse(line) as Conversation).turns.map(({ say }) => say));
}

async function work({ turns, seed }: { turns: number; seed: number }): Promise<void> {
  const post = (message: Message) => parentPort?.postMessage(message);
  const sentences = corpus();
  for (let done = 0; done < turns; done += chunk) {
    const own = seed + done / chunk;
    const faults = await fuzz(Math.min(chunk, turns - done), own, sentences, (at) => post({ at }));
    post({ faults, seed: own });
  }
  post({ end: true });
}

function watch(turns: number, seed: number): void {
  const worker = new Worker(new URL(import.meta.url), { workerData: { turns, seed } });
  const kinds = new Map<string, number>();
  let at: readonly string[] = [];
  let [since, started, chunks] = [Date.now(), Date.now(), 0];
  const ended = () => {
    clearInterval(timer);
    const all = [...kinds.values()].reduce((sum, each) => sum + each, 0);
    const seconds = Math.round((Date.now() - started) / 1000);
    console.log(`${turns} turns from seed ${seed} in ${seconds} s: ${all} faults`);
    process.exitCode = all > 0 ? 1 : 0;
  };
  const timer = setInterval(() => {
    if (Date.now() - since < hang_ms) return;
    console.log(`hangs at ${JSON.stringify(at)}`);
    kinds.set("hang", 1);
    void worker.terminate().then(ended);
  }, 1000);
  worker.on("error", (error) => {
    console.log(`ends at ${JSON.stringify(at)}: ${error.stack}`);
    kinds.set("end", 1);
    ended();
  });
  worker.on("message", (message: Message) => {
    if ("at" in message) [at, since] = [message.at, Date.now()];
    else if ("end" in message) ended();
    else {
      chunks += 1;
      if (chunks % 10 === 0) console.log(`${chunks * chunk} turns`);
      for (const { said, why } of message.faults) {
        const kind = why.replace(/\d+/g, "0").slice(0, 60);
        const before = kinds.get(kind) ?? 0;
        kinds.set(kind, before + 1);
        if (before < 3)
          console.log(
            `seed ${message.seed}: ${why}\n  ${said.map((each) => JSON.stringify(each)).join("\n  ")}`,
          );
      }
    }
  });
}

if (isMainThread) {
  const { values } = parseArgs({
    options: { turns: { type: "string", default: "1000000" }, seed: { type: "string", default: "1" } },
  });
  watch(Number(values.turns), Number(values.seed));
} else void work(workerData);
