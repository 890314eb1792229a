/** A small whole record to be damaged, and what becomes of it. */
import * as fs from "node:fs";
import { applyEffects } from "../../src/store/apply.ts";
import { openStore } from "../../src/store/open.ts";
import { emptyRecord, listNames, type RecordData } from "../../src/store/schema.ts";
import { textOf } from "../../src/store/text.ts";
import type { Effect } from "../../src/tools/contract/answer.ts";
import { addNote, fileOf, got, newHome, unflushed } from "./support.ts";

/** A record with something in each corner. */
const effects: Effect[] = [
  { do: "set", setting: "oven_c", value: 150 },
  { do: "add", list: "timers", entry: { label: "rest", set_ms: 1, due_ms: 2, state: "running" } },
  addNote('she said "notes": [ and } too'),
  addNote("second"),
  { do: "add", list: "stock", entry: { name: "almond flour", grams: 500 } },
  { do: "add", list: "formulas", entry: { name: "house", lines: [{ name: "sugar", grams: 100 }] } },
];
export const sample = applyEffects(emptyRecord(), effects, "the morning", 5);
export const sampleText = textOf(sample);

/** Reads a damaged file through a store and tells what became of it. */
export async function open(bytes: string | Uint8Array) {
  const home = newHome();
  fs.writeFileSync(fileOf(home), bytes);
  const store = openStore(home, { files: unflushed });
  const { record, notice } = got(await store.read());
  const names = fs.readdirSync(home).sort();
  return { home, store, record, notice, names };
}

/** Every entry of a record as text, to see whether one record's are all another's. */
export const entriesOf = (record: RecordData): Set<string> =>
  new Set(listNames.flatMap((list) => record[list].map((entry) => `${list} ${JSON.stringify(entry)}`)));

export const aside = "record.damaged-1.json";
