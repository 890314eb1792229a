/** A writer for the tests with real processes: adds notes to a home and says on standard output which are saved. */
import { writeSync } from "node:fs";
import { openStore } from "../../src/store/open.ts";
import { noteNamed } from "./entries.ts";

const [home = "", name = "", count = "0"] = process.argv.slice(2);
const store = openStore(home, { wait_ms: 60_000 });
for (let n = 0; n < Number(count); n++) {
  const text = `${name} ${n}`;
  const done = await store.change(() => ({
    effects: [{ do: "add", list: "notes", entry: noteNamed(text) }],
    change: text,
    value: text,
  }));
  if (!done.ok) throw new Error(`${done.problem.kind}: ${done.problem.message}`);
  // At once and in one piece: a line that was seen was saved before.
  writeSync(1, `${text}\n`);
}
