/** Notes and the whole record as files of her own: CSV for a spreadsheet, JSON for everything else. */
import type { Effect, Outcome, World } from "../contract/index.ts";
import { localDay } from "../lib/days.ts";
import { counted, listed } from "../lib/show.ts";
import { columnName, noteColumns } from "./columns.ts";

export type As = "csv" | "json" | "pdf";

/** How an export is laid out; a change of it counts up. */
const layout = 1;

const named = (key: string) => noteColumns.find((each) => each.key === key)?.names[0] ?? columnName(key);

function notesFile({ notes, now_ms }: World, as: Exclude<As, "pdf">): Effect {
  const name = `notes-${localDay(now_ms)}.${as}`;
  if (as === "json") return { do: "write file", name, text: jsonOf({ notes: withoutIds(notes) }) };
  const rows = notes.map((note) => noteColumns.map((column) => column.write(note)));
  return {
    do: "write file",
    name,
    sheet: { columns: noteColumns.map(({ key }) => named(key).replaceAll(" ", "_")), rows },
  };
}

const jsonOf = (parts: Record<string, unknown>): string =>
  `${JSON.stringify({ bowlside: layout, ...parts }, null, 2)}\n`;

const withoutIds = (list: readonly { id: number }[]): Record<string, unknown>[] =>
  list.map(({ id: _id, ...fields }) => fields);

const parts = [
  ["notes", "note"],
  ["timers", "timer"],
  ["bottles", "bottle"],
  ["stock", "cupboard item"],
  ["formulas", "recipe"],
  ["plans", "planned day"],
] as const;

/** @param what all of the record, or its notes alone; a table holds notes alone */
export function answerExport(what: "notes" | "everything", as: As, world: World): Outcome {
  const count = world.notes.length;
  if (as === "pdf")
    return {
      status: "declined",
      headline:
        'Notes don\'t go onto paper; labels and batch sheets do. "export my notes as csv" writes them for a spreadsheet, which prints them.',
    };
  if (what === "notes") {
    if (count === 0)
      return {
        status: "impossible",
        headline: 'There is no note yet to export. "note: ..." writes one down.',
      };
    return {
      status: "answered",
      headline: `${counted(count, "note")} as ${as.toUpperCase()}`,
      figures: [{ name: "notes", value: count, unit: "notes" }],
      cautions: [privacy],
      effects: [notesFile(world, as)],
    };
  }
  const { bench, now_ms } = world;
  const lists = Object.fromEntries(parts.map(([name]) => [name, withoutIds(world[name])]));
  const held = parts.flatMap(([name, one]) => (world[name].length ? [counted(world[name].length, one)] : []));
  const set = Object.keys(bench).length;
  const all = [...held, ...(set ? [counted(set, "setting")] : [])];
  if (all.length === 0)
    return { status: "impossible", headline: "Your record is empty: there is nothing to export." };
  return {
    status: "answered",
    headline: `${listed(all)} as JSON`,
    cautions: [
      privacy,
      'From this file, "import notes from ..." takes the notes; to have all of it elsewhere, copy record.json.',
    ],
    effects: [
      { do: "write file", name: `record-${localDay(now_ms)}.json`, text: jsonOf({ ...lists, bench }) },
    ],
  };
}

const privacy = "The file is readable by you alone; whoever you hand it to reads all that is in it.";
